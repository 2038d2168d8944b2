/**
 * Compiles layouts: positions, matings, terms and checks of one vehicle architecture.
 */

import { compileChecks } from '../check/compile.js';
import type { Term } from '../check/term.js';
import { readHours } from './amount.js';
import type { Layout, Position } from './catalogue.js';
import { circlesOf } from './circles.js';
import { compileDriveline, NO_DRIVELINE } from './compile-driveline.js';
import { compileMatings } from './compile-mating.js';
import type { LayoutRecord, PositionRecord, Text } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import { loseUnread, namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';
import { type LayoutNames, LayoutScope } from './scope.js';

export type LayoutVocabulary = Omit<LayoutNames, 'id' | 'positions' | 'matings' | 'rawTerms'> & {
  readonly roleIds: ReadonlySet<string>;
};

export interface CompiledLayout {
  readonly layout: Layout;
  /** For the rules that speak of this layout. */
  readonly scope: LayoutScope;
}

export function compileLayout(
  record: LayoutRecord,
  vocabulary: LayoutVocabulary,
  pointer: string,
  list: FaultList,
): CompiledLayout {
  const { id } = record;
  const positions = compilePositions(record, vocabulary, at(pointer, 'positions'), list);
  const names = { id, positions, roles: vocabulary.roles };
  const matings = compileMatings(record.matings ?? [], names, at(pointer, 'matings'), list);
  const rawTerms = record.terms ?? {};
  const scope = new LayoutScope({ ...vocabulary, id, positions, matings, rawTerms }, pointer, list);
  compileTerms(record, scope, at(pointer, 'terms'), list);
  const taken = new Set(matings.keys());
  const checks = compileChecks(record.checks ?? [], scope, at(pointer, 'checks'), list, taken);
  const terms: ReadonlyMap<string, Term> = scope.terms;
  const termNames = compileTermNames(record, at(pointer, 'termNames'), list);
  const drives = record.driveline;
  const known = { layout: id, scope, positions, checks };
  const driveline =
    drives === undefined
      ? NO_DRIVELINE
      : compileDriveline(drives, known, at(pointer, 'driveline'), list);
  const unmated = record.unmated ?? 'open';
  const name = record.name ?? null;
  const built = { positions, matings, terms, termNames, checks, driveline };
  return { layout: { id, name, ...built, unmated }, scope };
}

function compileTerms(
  record: LayoutRecord,
  scope: LayoutScope,
  pointer: string,
  list: FaultList,
): void {
  const records = record.terms ?? {};
  const space = inside('layouts', record.id, 'terms');
  if (list.isUnread(pointer)) list.lost.addAll(space);
  loseUnread(records, space, list);
  for (const name of Object.keys(records)) {
    if (scope.positions.has(name)) {
      list.fault(at(pointer, name), 'duplicate-id', `A position is called "${name}" too.`);
    }
    // Compiles the term, which says its own faults; what it is called is known to be there.
    scope.resolve(name);
  }
}

function compileTermNames(
  { id, terms = {}, termNames = {} }: LayoutRecord,
  pointer: string,
  list: FaultList,
): Map<string, Text> {
  const names = new Map<string, Text>();
  const known = Object.keys(terms);
  for (const [term, name, place] of namedEntries(termNames, pointer)) {
    if (Object.hasOwn(terms, term)) {
      if (name !== undefined) names.set(term, name);
    } else if (!list.lost.excuses(inside('layouts', id, 'terms'), term, known)) {
      const text = `There is no term ${quoted(term)}.${list.guess(term, known)}`;
      list.fault(place, 'unknown-name', text);
    }
  }
  return names;
}

function compilePositions(
  layout: LayoutRecord,
  vocabulary: LayoutVocabulary,
  pointer: string,
  list: FaultList,
): Map<string, Position> {
  const positions = new Map<string, Position>();
  const records = [...present(layout.positions, pointer)];
  const space = inside('layouts', layout.id, 'positions');
  if (list.isUnread(pointer)) list.lost.addAll(space);
  for (let hole = layout.positions.length - records.length; hole > 0; hole -= 1) {
    list.lost.addNameless(space);
  }
  const ids = new Set<string>();
  for (const [{ id }, place] of records) {
    if (list.isUnread(at(place, 'id'))) list.lost.addNameless(space, id);
    else ids.add(id);
  }
  for (const [record, place, index] of records) {
    const { id } = record;
    checkPositionRoles(record, vocabulary, layout.id, at(place, 'roles'), list);
    const position = compilePosition(record, index, ids, layout.id, place, list);
    if (positions.has(id)) {
      list.fault(at(place, 'id'), 'duplicate-id', `Two positions are called ${quoted(id)}.`);
      list.lost.addDoubled(space, id);
      for (const sort of ['roles', 'counts', 'hands']) {
        list.lost.add(inside('layouts', layout.id, sort), id);
      }
    } else if (ids.has(id)) positions.set(id, position);
  }
  const pointers = new Map(records.map(([{ id }, place]) => [id, place]));
  checkCircles(positions, pointers, list);
  return positions;
}

function checkPositionRoles(
  record: PositionRecord,
  { roleIds }: LayoutVocabulary,
  layout: string,
  pointer: string,
  list: FaultList,
): void {
  for (const [role, place] of present(record.roles, pointer)) {
    if (roleIds.has(role)) continue;
    list.unknown(role, { sort: 'roles', pointer: place, known: roleIds });
  }
  const isPartly = list.isTouched(pointer) || record.roles.some((role) => !roleIds.has(role));
  if (isPartly) list.lost.add(inside('layouts', layout, 'roles'), record.id);
}

function compilePosition(
  record: PositionRecord,
  index: number,
  ids: ReadonlySet<string>,
  layout: string,
  pointer: string,
  list: FaultList,
): Position {
  const { id, name, optional = false } = record;
  if (id === 'fact') {
    list.fault(at(pointer, 'id'), 'reserved-id', '"fact" is where facts of the vehicle stand.');
  }
  const isHanded = record.handed ?? false;
  const count = record.count ?? (isHanded ? 2 : 1);
  if (list.isUnread(at(pointer, 'handed'))) {
    list.lost.add(inside('layouts', layout, 'hands'), id);
  } else if (isHanded && count !== 2) {
    const text = 'A handed position has a left and a right piece: "count" is 2.';
    list.fault(at(pointer, 'count'), 'wrong-count', text);
  }
  if (list.isTouched(at(pointer, 'count')) || list.isUnread(at(pointer, 'handed'))) {
    list.lost.add(inside('layouts', layout, 'counts'), id);
  }
  const behind = [...present(record.behind ?? [], at(pointer, 'behind'))];
  for (const [other, place] of behind) {
    if (other === id) {
      list.fault(place, 'same-position', 'A position is not behind itself.');
    } else if (!ids.has(other)) {
      const space = inside('layouts', layout, 'positions');
      list.unknown(other, { sort: 'positions', space, pointer: place, known: ids });
    }
  }
  const roles = [...present(record.roles, '')].map(([role]) => role);
  const others = behind.map(([other]) => other).filter((other) => other !== id);
  const labour = readHours(record.labour, at(pointer, 'labour'), list);
  const access = readHours(record.access, at(pointer, 'access'), list);
  const times = { behind: others, labour, access };
  return { id, name, roles, count, isHanded, isOptional: optional, ...times, index };
}

/** Positions behind one another in a circle could never be reached. */
function checkCircles(
  positions: ReadonlyMap<string, Position>,
  pointers: ReadonlyMap<string, string>,
  list: FaultList,
): void {
  const graph = new Map([...positions].map(([id, { behind }]) => [id, behind]));
  for (const circle of circlesOf(graph)) {
    const text = `These positions are behind one another: ${circle.join(', ')}.`;
    list.fault(at(pointers.get(circle.at(-2) ?? '') ?? '', 'behind'), 'circle', text);
  }
}
