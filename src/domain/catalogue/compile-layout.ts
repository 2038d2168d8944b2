/**
 * Compiles layouts: positions, matings, terms and checks of one vehicle architecture.
 */

import type { Check } from '../check/check.js';
import { compileCheck } from '../check/compile.js';
import type { Term } from '../check/term.js';
import type { Layout, Mating, MatingEnd, Position } from './catalogue.js';
import type { LayoutRecord, MatingRecord, PositionRecord } from './document.js';
import { at, type FaultList, hint } from './faults.js';
import { type LayoutNames, LayoutScope } from './scope.js';

export type LayoutVocabulary = Omit<LayoutNames, 'positions' | 'matings' | 'rawTerms'> & {
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
  const place = at(pointer, 'positions');
  const positions = compilePositions(record.positions, vocabulary, place, list);
  const matings = compileMatings(record.matings ?? [], positions, at(pointer, 'matings'), list);
  const rawTerms = record.terms ?? {};
  const scope = new LayoutScope({ ...vocabulary, positions, matings, rawTerms }, pointer, list);
  for (const name of Object.keys(rawTerms)) compileNamedTerm(name, scope, pointer, list);
  const checks = compileChecks(record.checks ?? [], scope, at(pointer, 'checks'), list);
  for (const check of checks) {
    if (!matings.has(check.id)) continue;
    const text = `A mating and a check are both called "${check.id}".`;
    list.fault(at(pointer, 'checks'), 'duplicate-id', text);
  }
  const terms: ReadonlyMap<string, Term> = scope.terms;
  const unmated = record.unmated ?? 'open';
  const { id } = record;
  const name = record.name ?? null;
  return { layout: { id, name, positions, matings, terms, checks, unmated }, scope };
}

function compileNamedTerm(name: string, scope: LayoutScope, pointer: string, list: FaultList) {
  const place = at(at(pointer, 'terms'), name);
  if (scope.positions.has(name)) {
    list.fault(place, 'duplicate-id', `A position is called "${name}" too.`);
    return;
  }
  const found = scope.resolve(name);
  const said = list.faults.some((fault) => fault.pointer.startsWith(place));
  if (typeof found === 'string' && !said) list.fault(place, 'unknown-name', found);
}

function compilePositions(
  records: readonly PositionRecord[],
  vocabulary: LayoutVocabulary,
  pointer: string,
  list: FaultList,
): Map<string, Position> {
  const positions = new Map<string, Position>();
  const ids = new Set(records.map(({ id }) => id));
  for (const [index, record] of records.entries()) {
    const place = at(pointer, index);
    if (positions.has(record.id)) {
      list.fault(at(place, 'id'), 'duplicate-id', `Two positions are called "${record.id}".`);
      continue;
    }
    if (record.id === 'fact') {
      list.fault(at(place, 'id'), 'reserved-id', '"fact" is where facts of the vehicle stand.');
    }
    for (const [at_, role] of record.roles.entries()) {
      if (vocabulary.roleIds.has(role)) continue;
      const text = `There is no role "${role}".${hint(role, vocabulary.roleIds)}`;
      list.fault(at(at(place, 'roles'), at_), 'unknown-role', text);
    }
    positions.set(record.id, compilePosition(record, index, ids, place, list));
  }
  warnCircle(positions, pointer, list);
  return positions;
}

function compilePosition(
  record: PositionRecord,
  index: number,
  ids: ReadonlySet<string>,
  pointer: string,
  list: FaultList,
): Position {
  const isHanded = record.handed ?? false;
  const count = record.count ?? (isHanded ? 2 : 1);
  if (isHanded && count !== 2) {
    const text = 'A handed position has a left and a right piece: "count" is 2.';
    list.fault(at(pointer, 'count'), 'wrong-count', text);
  }
  for (const [at_, other] of (record.behind ?? []).entries()) {
    if (ids.has(other) && other !== record.id) continue;
    const text = `There is no other position "${other}".${hint(other, ids)}`;
    list.fault(at(at(pointer, 'behind'), at_), 'unknown-position', text);
  }
  const { id, name, roles, optional = false, behind = [] } = record;
  return { id, name, roles, count, isHanded, isOptional: optional, behind, index };
}

/** Positions behind one another in a circle could never be reached. */
function warnCircle(positions: ReadonlyMap<string, Position>, pointer: string, list: FaultList) {
  const done = new Set<string>();
  const visit = (id: string, path: readonly string[]): void => {
    if (path.includes(id)) {
      const circle = [...path.slice(path.indexOf(id)), id].join(', ');
      list.fault(pointer, 'circle', `These positions are behind one another: ${circle}.`);
      return;
    }
    if (done.has(id)) return;
    done.add(id);
    for (const next of positions.get(id)?.behind ?? []) visit(next, [...path, id]);
  };
  for (const id of positions.keys()) visit(id, []);
}

function compileMatings(
  records: readonly MatingRecord[],
  positions: ReadonlyMap<string, Position>,
  pointer: string,
  list: FaultList,
): Map<string, Mating> {
  const matings = new Map<string, Mating>();
  const users = new Map<string, MatingRecord>();
  for (const [index, record] of records.entries()) {
    const place = at(pointer, index);
    if (matings.has(record.id)) {
      list.fault(at(place, 'id'), 'duplicate-id', `Two matings are called "${record.id}".`);
    }
    const mating = compileMating(record, positions, place, list);
    if (mating === null) continue;
    for (const [end, text] of record.between.entries()) {
      const other = users.get(text);
      users.set(text, record);
      if (other === undefined || (other.shared === true && record.shared === true)) continue;
      const said = `"${text}" already meets something in "${other.id}"; say "shared" at both.`;
      list.fault(at(at(place, 'between'), end), 'interface-used-twice', said);
    }
    matings.set(record.id, mating);
  }
  return matings;
}

function compileMating(
  record: MatingRecord,
  positions: ReadonlyMap<string, Position>,
  pointer: string,
  list: FaultList,
): Mating | null {
  const ends = record.between.map((text, index): [MatingEnd, Position] | null => {
    const place = at(at(pointer, 'between'), index);
    const [id = '', face = '', ...more] = text.split('.');
    if (more.length > 0 || face === '') {
      list.fault(place, 'malformed', `"${text}" is not "position.interface".`);
      return null;
    }
    const position = positions.get(id);
    if (position === undefined) {
      const said = `There is no position "${id}".${hint(id, positions.keys())}`;
      list.fault(place, 'unknown-position', said);
      return null;
    }
    return [{ position: id, interface: face }, position];
  });
  const [a, b] = ends;
  if (a === null || a === undefined || b === null || b === undefined) return null;
  if (a[0].position === b[0].position) {
    const text = 'A mating joins two positions; this one names its own twice.';
    list.fault(at(pointer, 'between'), 'same-position', text);
    return null;
  }
  const [more, fewer] = a[1].count >= b[1].count ? [a[1], b[1]] : [b[1], a[1]];
  if (more.count % fewer.count !== 0) {
    const text = `${more.count} pieces cannot be shared out evenly to ${fewer.count}.`;
    list.fault(pointer, 'wrong-count', text);
  }
  return {
    id: record.id,
    ends: [a[0], b[0]],
    adapters: record.adapters ?? 1,
    quantity: more.count,
    isHanded: a[1].isHanded || b[1].isHanded,
  };
}

function compileChecks(
  raw: readonly unknown[],
  scope: LayoutScope,
  pointer: string,
  list: FaultList,
): Check[] {
  const checks: Check[] = [];
  for (const [index, item] of raw.entries()) {
    const check = compileCheck(item, scope, at(pointer, index), list);
    if (check === null) continue;
    if (checks.some(({ id }) => id === check.id)) {
      const text = `Two checks are called "${check.id}"; give one an "id" of its own.`;
      list.fault(at(pointer, index), 'duplicate-id', text);
    }
    checks.push(check);
  }
  return checks;
}
