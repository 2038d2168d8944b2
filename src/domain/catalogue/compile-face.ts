/**
 * Compiles the faces of parts against the kinds: sides, parameters, alternatives, and faces that
 * a part really has not.
 */

import type { Evidence, Face, Kind, Value, Values } from './catalogue.js';
import { INTERFACE_WORDS } from './compile-kind.js';
import type { InterfaceRecord, ValueRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList, hint, quoted } from './faults.js';
import { namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';
import { asksForNone, NONE } from './placeholder.js';
import { compileValue } from './value.js';

export interface FaceNames {
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly kindIds: ReadonlySet<string>;
}

/** Compiles one face; also used for faces given in a question. */
export function compileFace(
  name: string,
  raw: InterfaceRecord,
  names: FaceNames,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Face | null {
  const evidence = evidenceWithin(inherited, raw.evidence);
  if (raw.absent === true) return compileAbsent(name, raw, evidence, pointer, list);
  const kind = compileKindOf(raw, names, pointer, list);
  if (kind === null) return null;
  const side = compileSide(raw, kind, pointer, list);
  const read = (records: Readonly<Record<string, ValueRecord>>, place: string) =>
    compileParameters(records, kind, side, evidence, place, list);
  const common = read(valueRecords(raw), pointer);
  const recorded =
    raw.alternatives === undefined
      ? [common]
      : [...present(raw.alternatives, at(pointer, 'alternatives'))].map(
          ([own, place]) => new Map([...common, ...read(own, place)]),
        );
  const alternatives = spelledOut(recorded);
  if (alternatives === null) {
    const text = `With the sizes to choose among, these are more than ${MOST_ALTERNATIVES} ways.`;
    list.fault(at(pointer, 'alternatives'), 'too-many-alternatives', text);
    return null;
  }
  const isOptional = raw.optional ?? false;
  return { name, isOptional, isAbsent: false, kind, side, alternatives, evidence };
}

/** More ways in which one face can be are not tried. */
export const MOST_ALTERNATIVES = 100;

/**
 * Alternatives without a set in them: one that lets one choose among sizes is as many
 * alternatives. A set that all of them share is a choice beside them, and stays. Null where
 * that makes too many.
 */
function spelledOut(recorded: readonly Values[]): readonly Values[] | null {
  const [first] = recorded;
  const all: Values[] = [];
  for (const values of recorded) {
    let ways = [new Map<string, Value>()];
    for (const [id, value] of values) {
      const isShared = recorded.every((other) => other.get(id) === first?.get(id));
      const choices = isShared ? [value] : choicesOf(value);
      if (all.length + ways.length * choices.length > MOST_ALTERNATIVES) return null;
      ways = ways.flatMap((way) => choices.map((choice) => new Map([...way, [id, choice]])));
    }
    all.push(...ways);
    if (all.length > MOST_ALTERNATIVES) return null;
  }
  return all;
}

function choicesOf(value: Value): readonly Value[] {
  if (value.form !== 'set') return [value];
  const { spec, evidence, tool } = value;
  return value.items.flatMap(({ text, interval, code }): Value[] => {
    const common = { spec, evidence, tool, text };
    if (code !== null) return [{ ...common, form: 'code', code }];
    return interval === null ? [] : [{ ...common, form: 'number', interval }];
  });
}

function compileAbsent(
  name: string,
  raw: InterfaceRecord,
  evidence: Evidence,
  pointer: string,
  list: FaultList,
): Face {
  const others = Object.keys(raw).filter((key) => key !== 'absent' && key !== 'evidence');
  if (others.length > 0) {
    const words = others.map(quoted).join(', ');
    const text = `A face that is absent records nothing; leave out ${words}.`;
    list.fault(at(pointer, 'absent'), 'absent-face', text);
  }
  const none = { kind: null, side: null, alternatives: [] };
  return { name, isOptional: false, isAbsent: true, ...none, evidence };
}

function compileKindOf(
  raw: InterfaceRecord,
  { kinds, kindIds }: FaceNames,
  pointer: string,
  list: FaultList,
): Kind | null {
  const place = at(pointer, 'kind');
  if (raw.kind === undefined) {
    const isSaid = list.isUnread(place) || list.isUnread(at(pointer, 'absent'));
    if (isSaid) return null;
    list.missing(pointer, 'kind', 'which kind of interface this is; or {"absent": true}');
    return null;
  }
  const kind = kinds.get(raw.kind);
  if (kind !== undefined) return kind;
  if (!kindIds.has(raw.kind)) {
    list.unknown(raw.kind, { sort: 'kinds', pointer: place, known: kindIds });
  }
  return null;
}

function compileSide(
  raw: InterfaceRecord,
  kind: Kind,
  pointer: string,
  list: FaultList,
): string | null {
  const { side } = raw;
  const place = at(pointer, 'side');
  const isSaid = list.isUnread(place) || list.lost.hasAny(inside('kinds', kind.id, 'sides'));
  if (isSaid) return null;
  if (kind.sides === null) {
    if (side === undefined) return null;
    const text = `Both ends of "${kind.id}" are alike; leave "side" out.`;
    list.fault(place, 'side-not-wanted', text);
    return null;
  }
  if (side !== undefined && kind.sides.includes(side)) return side;
  const words = kind.sides.map((word) => `"${word}"`).join(' or ');
  if (side === undefined) list.missing(pointer, 'side', words);
  else {
    const text = `"${kind.id}" has no side "${side}": it is ${words}.${hint(side, kind.sides)}`;
    list.fault(place, 'unknown-side', text);
  }
  return null;
}

function valueRecords(raw: InterfaceRecord): Record<string, ValueRecord> {
  const own = Object.entries(raw).filter(([key]) => !INTERFACE_WORDS.includes(key));
  return Object.fromEntries(own) as Record<string, ValueRecord>;
}

/** The values of one way in which a face can be; also used for a value that was measured. */
export function compileParameters(
  records: Readonly<Record<string, ValueRecord>>,
  kind: Kind,
  side: string | null,
  evidence: Evidence,
  pointer: string,
  list: FaultList,
): Values {
  const values = new Map<string, Value>();
  for (const [id, record, place] of namedEntries(records, pointer)) {
    const parameter = kind.parameters.get(id);
    if (parameter === undefined) {
      const text = `"${kind.id}" has no parameter "${id}".`;
      const known = kind.parameters.keys();
      const space = inside('kinds', kind.id, 'parameters');
      list.unknown(id, { sort: 'parameters', space, pointer: place, known, text });
      continue;
    }
    if (parameter.of !== null && side !== null && parameter.of !== side) {
      const text = `"${id}" belongs to the side "${parameter.of}", and this is "${side}".`;
      list.fault(place, 'other-side', text);
      continue;
    }
    if (record === undefined) continue;
    const value = compileValue(record, parameter, evidence, place, list);
    if (value === null) continue;
    values.set(id, value);
    refuseNone(value, [kind], place, list);
  }
  return values;
}

/** Says that "none" tells nothing, where not all of the kinds that it may be of ask for it. */
export function refuseNone(
  value: Value,
  kinds: readonly Kind[],
  pointer: string,
  list: FaultList,
): void {
  if (!canBeNone(value) || kinds.every(asksForNone)) return;
  const text =
    `"${NONE}" may mean that nobody knows, yet two of it would be equal; leave out what is ` +
    'not recorded, and for what there really is none of take a word of its own ("plain").';
  list.fault(pointer, 'placeholder-code', text);
}

function canBeNone(value: Value): boolean {
  const isNone = (code: string | null) => code?.toLowerCase() === NONE;
  if (value.form === 'code') return isNone(value.code);
  return value.form === 'set' && value.items.some(({ code }) => isNone(code));
}
