/**
 * Compiles the matings of a layout: where which faces of two positions meet, and how often.
 */

import type { Mating, MatingEnd, Position, Role } from './catalogue.js';
import type { MatingRecord } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import { ID_PATTERN } from './grammar.js';
import { present } from './holes.js';
import { facelessness } from './layout-scope.js';
import { inside } from './lost-names.js';

export interface MatingNames {
  /** The id of the layout. */
  readonly id: string;
  readonly positions: ReadonlyMap<string, Position>;
  readonly roles: ReadonlyMap<string, Role>;
}

export function compileMatings(
  records: readonly MatingRecord[],
  names: MatingNames,
  pointer: string,
  list: FaultList,
): Map<string, Mating> {
  const matings = new Map<string, Mating>();
  const users = new Map<string, MatingUse>();
  const space = inside('layouts', names.id, 'matings');
  if (list.isUnread(pointer)) list.lost.addAll(space);
  for (let hole = records.length - [...present(records, '')].length; hole > 0; hole -= 1) {
    list.lost.addNameless(space);
  }
  for (const [record, place] of present(records, pointer)) {
    if (matings.has(record.id)) {
      const text = `Two matings are called ${quoted(record.id)}.`;
      list.fault(at(place, 'id'), 'duplicate-id', text);
      list.lost.addDoubled(space, record.id);
    }
    checkUses(record, users, place, list);
    const mating = compileMating(record, names, place, list);
    if (list.isUnread(at(place, 'adapters'))) {
      list.lost.add(inside('layouts', names.id, 'adapters'), record.id);
    }
    if (list.isUnread(at(place, 'id'))) list.lost.addNameless(space, record.id);
    else if (mating === null) list.lost.add(space, record.id);
    else matings.set(record.id, mating);
  }
  return matings;
}

interface MatingUse {
  readonly id: string;
  readonly isShared: boolean;
}

/** Several matings may use one interface only if all of them say so. */
function checkUses(
  record: MatingRecord,
  users: Map<string, MatingUse>,
  pointer: string,
  list: FaultList,
): void {
  const isShared = record.shared === true || list.isUnread(at(pointer, 'shared'));
  for (const [end, text] of record.between.entries()) {
    const other = users.get(text);
    if (other?.id === record.id) continue;
    users.set(text, { id: record.id, isShared });
    if (other === undefined || (other.isShared && isShared)) continue;
    const said =
      `${quoted(text)} already meets something in ${quoted(other.id)}; ` +
      'say "shared" at both, if it really serves both.';
    list.fault(at(at(pointer, 'between'), end), 'interface-used-twice', said);
  }
}

function compileMating(
  record: MatingRecord,
  names: MatingNames,
  pointer: string,
  list: FaultList,
): Mating | null {
  const [a, b] = record.between.map((text, index) =>
    compileEnd(text, names, at(at(pointer, 'between'), index), list),
  );
  if (a === null || a === undefined || b === null || b === undefined) return null;
  if (a.end.position === b.end.position) {
    const text = 'A mating joins two positions; this one names its own twice.';
    list.fault(at(pointer, 'between'), 'same-position', text);
    return null;
  }
  const [more, fewer] = [a.position, b.position].sort((x, y) => y.count - x.count);
  if (more === undefined || fewer === undefined) return null;
  const counts = inside('layouts', names.id, 'counts');
  const isSaid = [more, fewer].some(({ id }) => list.lost.has(counts, id));
  if (more.count % fewer.count !== 0 && !isSaid) {
    const text =
      `"${more.id}" has ${more.count} pieces and "${fewer.id}" ${fewer.count}: ` +
      'they cannot be shared out evenly.';
    list.fault(at(pointer, 'between'), 'wrong-count', text);
  }
  return {
    id: record.id,
    ends: [a.end, b.end],
    adapters: record.adapters ?? 1,
    quantity: more.count,
    isHanded: more.isHanded || fewer.isHanded,
  };
}

interface End {
  readonly end: MatingEnd;
  readonly position: Position;
}

function compileEnd(
  text: string,
  names: MatingNames,
  pointer: string,
  list: FaultList,
): End | null {
  const [id = '', face = '', ...more] = text.split('.');
  const position = names.positions.get(id);
  if (more.length > 0 || !ID_PATTERN.test(face)) {
    list.fault(pointer, 'malformed', `${quoted(text)} is not "position.interface".`);
    return null;
  }
  if (position === undefined) {
    const space = inside('layouts', names.id, 'positions');
    list.unknown(id, { sort: 'positions', space, pointer, known: names.positions.keys() });
    return null;
  }
  const isBlind = list.lost.has(inside('layouts', names.id, 'roles'), id);
  const faceless = isBlind ? null : facelessness(position, face, names.roles, list);
  if (faceless !== null) list.fault(pointer, 'unknown-face', faceless);
  return { end: { position: id, interface: face }, position };
}
