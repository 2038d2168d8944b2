/**
 * Compiles works: on which parts one can be done, what such a part has afterwards, and which of
 * its ratings nobody knows any more. What it makes of one part is `worked-part.ts`.
 */

import { compileCondition } from '../check/compile.js';
import { readHours } from './amount.js';
import type { ArticleScope } from './article-scope.js';
import type { Evidence, Value, ValueSpec, Values } from './catalogue.js';
import { refuseNone } from './compile-face.js';
import type { ValueRecord, WorkRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList, quoted } from './faults.js';
import { namedEntries, present } from './holes.js';
import type { Work } from './trade.js';
import { compileValue } from './value.js';

/** Null where nobody can say on what it can be done. */
export function compileWork(
  record: WorkRecord,
  scope: ArticleScope,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Work | null {
  const evidence = evidenceWithin(inherited, record.evidence);
  const isSaid = record.on === undefined;
  const on = isSaid ? null : compileCondition(record.on, scope, at(pointer, 'on'), list);
  const place = at(pointer, 'gives');
  const giving: Giving = { scope, evidence, list };
  const interfaces = givenFaces(record, at(place, 'interfaces'), giving);
  const values = givenValues(record.gives.values ?? {}, at(place, 'values'), giving);
  const faces: Readonly<Record<string, Records | undefined>> = record.gives.interfaces ?? {};
  const given = Object.values(faces).flatMap((face) => {
    return face === undefined ? ['unread'] : Object.keys(face);
  });
  const isNothing = given.length + Object.keys(record.gives.values ?? {}).length === 0;
  if (isNothing && !list.isTouched(place)) {
    const text = 'A work gives something: parameters of "interfaces", or "values".';
    list.fault(place, 'missing-field', text);
  }
  const voids = compileVoids(record, values, scope, at(pointer, 'voids'), list);
  const labour = readHours(record.labour, at(pointer, 'labour'), list);
  if (on === null) return null;
  const { id, name, signOff = null, reversible = false } = record;
  const gives = { interfaces, values };
  return { id, name, on, gives, voids, labour, signOff, isReversible: reversible, evidence };
}

interface Giving {
  readonly scope: ArticleScope;
  readonly evidence: Evidence;
  readonly list: FaultList;
}

type Records = Readonly<Record<string, ValueRecord>>;

function givenFaces(record: WorkRecord, pointer: string, giving: Giving): Map<string, Values> {
  const faces = new Map<string, Values>();
  for (const [face, raw, place] of namedEntries(record.gives.interfaces ?? {}, pointer)) {
    const { scope, list } = giving;
    if (raw === undefined) continue;
    const values = given(raw, place, (name) => scope.parameter(face, name), giving);
    for (const [name, value] of values) {
      const kinds = scope.kindsOf(face).filter(({ parameters }) => parameters.has(name));
      refuseNone(value, kinds, at(place, name), list);
    }
    faces.set(face, values);
  }
  return faces;
}

function givenValues(records: Records, pointer: string, giving: Giving): Values {
  const { scope, list } = giving;
  const spec = (name: string) => {
    const found = scope.value(name);
    if (found === null || typeof found === 'string' || found.term === null) return found;
    sayDerived(name, at(pointer, name), list);
    return null;
  };
  return given(records, pointer, spec, giving);
}

function sayDerived(name: string, pointer: string, list: FaultList): void {
  const text = `"${name}" is derived from other values and never recorded.`;
  list.fault(pointer, 'derived-value', text);
}

/** What is given, by name, as far as it means something. */
function given(
  records: Records,
  pointer: string,
  find: (name: string) => ValueSpec | string | null,
  { evidence, list }: Giving,
): Values {
  const values = new Map<string, Value>();
  for (const [name, raw, place] of namedEntries(records, pointer)) {
    const spec = find(name);
    if (typeof spec === 'string') list.fault(place, 'unknown-name', spec);
    if (spec === null || typeof spec === 'string' || raw === undefined) continue;
    const value = compileValue(raw, spec, evidence, place, list);
    if (value !== null) values.set(name, value);
  }
  return values;
}

function compileVoids(
  record: WorkRecord,
  values: Values,
  scope: ArticleScope,
  pointer: string,
  list: FaultList,
): string[] {
  const voids: string[] = [];
  for (const [name, place] of present(record.voids ?? [], pointer)) {
    const spec = scope.value(name);
    if (typeof spec === 'string') list.fault(place, 'unknown-name', spec);
    if (spec === null || typeof spec === 'string') continue;
    if (spec.term !== null) sayDerived(name, place, list);
    else if (!scope.mayBeRating(name)) {
      list.fault(place, 'not-a-rating', `${quoted(name)} is no rating; a work voids only those.`);
    } else if (values.has(name)) {
      list.fault(place, 'not-a-rating', `${quoted(name)} is given by this work, so it is known.`);
    } else voids.push(name);
  }
  return voids;
}
