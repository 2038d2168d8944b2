/**
 * Documents restated: one exact value in place of each record, other units, matings turned round,
 * something added that has nothing to do with the rest.
 */

import type {
  CatalogueDocument,
  InterfaceRecord,
  PartRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import { type Fraction, fraction, minus, plus, times } from '../oracle/fraction.js';
import { naturalSpan, readValue, type Span, type ValueSpec } from '../oracle/record.js';
import type { Question } from '../oracle/scene.js';
import { ROLE_VALUES } from './small-part.js';

/** A value of a part or of one of its faces; undefined where it is not recorded. */
export interface Place {
  readonly record: ValueRecord | undefined;
  readonly spec: ValueSpec;
  readonly path: string;
}

type Restate = (place: Place) => ValueRecord | undefined;

/** The document with every value of its parts restated, those that nobody recorded included. */
export function withValues(document: CatalogueDocument, restate: Restate): CatalogueDocument {
  const parts = (document.parts ?? []).map((part): PartRecord => {
    const values = restated(part.values ?? {}, ROLE_VALUES, part.id, restate);
    const faces = Object.entries(part.interfaces ?? {}).map(([name, face]) => {
      return [name, faceWith(face, `${part.id}.${name}`, document, restate)] as const;
    });
    return { ...part, values, interfaces: Object.fromEntries(faces) };
  });
  return { ...document, parts };
}

function restated(
  records: Readonly<Record<string, ValueRecord>>,
  specs: Readonly<Record<string, ValueSpec>>,
  path: string,
  restate: Restate,
): Record<string, ValueRecord> {
  const values = Object.entries(specs).flatMap(([id, spec]): [string, ValueRecord][] => {
    if (spec.term !== undefined) return [];
    const value = restate({ record: records[id], spec, path: `${path}.${id}` });
    return value === undefined ? [] : [[id, value]];
  });
  return Object.fromEntries(values);
}

function faceWith(
  face: InterfaceRecord,
  path: string,
  { kinds = [] }: CatalogueDocument,
  restate: Restate,
): InterfaceRecord {
  const parameters = kinds.find(({ id }) => id === face.kind)?.parameters;
  if (parameters === undefined) return face;
  const { kind, side, optional, evidence, alternatives, ...common } = face;
  const own = Object.entries(parameters).filter(([, { of }]) => of === undefined || of === side);
  const specs = Object.fromEntries(own) as Record<string, ValueSpec>;
  // What an alternative lays down is restated as it stands, and nothing is added to it.
  const each = alternatives?.map((records) => {
    const known = Object.entries(specs).filter(([id]) => records[id] !== undefined);
    return restated(records, Object.fromEntries(known), path, restate);
  });
  return {
    ...(kind === undefined ? {} : { kind }),
    ...(side === undefined ? {} : { side }),
    ...(optional === undefined ? {} : { optional }),
    ...(evidence === undefined ? {} : { evidence }),
    ...restated(common as Record<string, ValueRecord>, specs, path, restate),
    ...(each === undefined ? {} : { alternatives: each }),
  };
}

/** A number from 0 to 1 for each place, the same for the same place. */
export type Dice = (path: string) => Fraction;

export function diceOf(throws: readonly number[]): Dice {
  return (path) => {
    let sum = 7;
    for (let at = 0; at < path.length; at += 1) sum = (sum * 31 + path.charCodeAt(at)) % 9973;
    return fraction(throws[sum % throws.length] ?? 0, 4);
  };
}

const WORDS = ['a', 'b', 'open', 'locked'] as const;
/** Beyond what anybody records here a value is as good as any. */
const NEAR = fraction(20n);

/**
 * Every value known exactly: one of those that its record allows, or any at all where there is no
 * record. Choices stay choices; an optional value that is not recorded stays away.
 */
export function sampled(
  document: CatalogueDocument,
  dice: Dice,
  take: (span: Span, at: Fraction) => Fraction = within,
): CatalogueDocument {
  return withValues(document, ({ record, spec, path }) => {
    const at = dice(path);
    if (record === undefined) return spec.optional === true ? undefined : anyOf(spec, at, path);
    const recorded = readValue(record, spec, 'maker');
    if (recorded.is !== 'single' || typeof recorded.value === 'string') return record;
    const value = exactly(take(recorded.value, at), spec);
    const own = typeof record === 'object' && 'evidence' in record ? record.evidence : undefined;
    return own === undefined ? value : { is: value, evidence: own };
  });
}

function anyOf(spec: ValueSpec, at: Fraction, path: string): ValueRecord {
  if (spec.type === 'code') {
    const [first, second, ...couplings] = WORDS;
    const words = path.endsWith('.coupling') ? couplings : [first, second];
    return words[Number(at.top) % words.length] ?? first;
  }
  if (spec.list === true) return [exactly(plus(at, fraction(1n)), spec)];
  if (spec.type === 'count') return Number(at.top) + 3;
  return exactly(within(naturalSpan(spec), at), spec);
}

export function within({ low, high, lowOpen, highOpen }: Span, at: Fraction): Fraction {
  const from = low ?? minus(fraction(0n), NEAR);
  const to = high ?? NEAR;
  // An open end is not among the values: stay a sixteenth of the way off.
  const first = lowOpen ? fraction(1n, 16n) : fraction(0n);
  const last = highOpen ? fraction(15n, 16n) : fraction(1n);
  const share = plus(first, times(at, minus(last, first)));
  return plus(from, times(minus(to, from), share));
}

function exactly(value: Fraction, spec: ValueSpec): string {
  if (spec.type === 'ratio') return `${value.top}/${value.bottom}`;
  const decimal = decimalOf(value);
  const unit = spec.unit === undefined ? '' : ` ${spec.unit}`;
  return spec.type === 'measured' ? `${decimal} ±0${unit}` : `${decimal}${unit}`;
}

/** @throws Error where the fraction is none of a few decimals. */
export function decimalOf({ top, bottom }: Fraction): string {
  const places = 24n;
  const scaled = top * 10n ** places;
  if (scaled % bottom !== 0n) throw new Error(`${top}/${bottom} is no decimal`);
  const digits = scaled / bottom;
  const sign = digits < 0n ? '-' : '';
  const text = String(digits < 0n ? -digits : digits).padStart(Number(places) + 1, '0');
  const whole = text.slice(0, -Number(places));
  const rest = text.slice(-Number(places)).replace(/0+$/, '');
  return rest === '' ? `${sign}${whole}` : `${sign}${whole}.${rest}`;
}

/** The same from the other end: each mating, and the adapters in it. */
export function turned(
  document: CatalogueDocument,
  question: Question,
  turnRow = true,
): { readonly document: CatalogueDocument; readonly question: Question } {
  const row = (parts: string | readonly string[]) =>
    typeof parts === 'string' || !turnRow ? parts : [...parts].reverse();
  const rows = <Row extends string | readonly string[]>(all: Readonly<Record<string, Row>>) =>
    Object.fromEntries(Object.entries(all).map(([id, parts]) => [id, row(parts)]));
  const layouts = (document.layouts ?? []).map((layout) => ({
    ...layout,
    matings: (layout.matings ?? []).map((mating) => {
      const [a, b] = mating.between;
      return { ...mating, between: [b, a] as const };
    }),
  }));
  const vehicles = (document.vehicles ?? []).map((vehicle) => {
    const { matings, ...fitted } = vehicle.fitted ?? {};
    const between = matings as Readonly<Record<string, string | readonly string[]>> | undefined;
    const more = between === undefined ? {} : { matings: rows(between) };
    return { ...vehicle, fitted: { ...fitted, ...more } };
  });
  return {
    document: { ...document, layouts, vehicles },
    question: {
      ...question,
      saidAdapters: rows(question.saidAdapters) as Question['saidAdapters'],
      chosenAdapters: rows(question.chosenAdapters) as Question['chosenAdapters'],
    },
  };
}
