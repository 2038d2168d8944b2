/**
 * Random small catalogues that are about nothing but which vehicles there are, and what may be
 * true of a vehicle by its record, worked out the plain way.
 */

import fc from 'fast-check';
import type { FactRecord, VehicleRecord } from '../../src/domain/catalogue/document.js';

const MONTHS = ['2001-03', '2001-12', '2002-01', '2003-06', '2004-08'] as const;

/** Names that are one but for case and marks stand beside others. */
const MAKES = ['Tarn', 'TÁRN', 'Ordale'] as const;
const MODELS = ['200', '300', 'Längs', 'langs '] as const;
const VARIANTS = ['late', 'Late', 'early', undefined] as const;

export const FACTS: readonly FactRecord[] = [
  { id: 'tag', name: 'Tag', values: ['a', 'b', 'c'].map((id) => ({ id, name: id })) },
  { id: 'pack', name: 'Pack', values: ['small', 'large'].map((id) => ({ id, name: id })) },
];

const facts = fc.record(
  {
    tag: fc.constantFrom('a', 'b', 'c'),
    pack: fc.constantFrom('small', 'large'),
  },
  { requiredKeys: [] },
);

const built = fc
  .tuple(fc.option(fc.constantFrom(...MONTHS)), fc.option(fc.constantFrom(...MONTHS)))
  .map(([a, b]): [string | null, string | null] =>
    a !== null && b !== null && a > b ? [b, a] : [a, b],
  );

const vehicle = fc.record({
  make: fc.constantFrom(...MAKES),
  model: fc.constantFrom(...MODELS),
  variant: fc.constantFrom(...VARIANTS),
  built,
  facts,
  isReplaced: fc.nat({ max: 9 }).map((one) => one === 0),
});

export interface Garage {
  readonly document: object;
  /** Without those that others took the place of. */
  readonly current: readonly VehicleRecord[];
}

export const garages: fc.Arbitrary<Garage> = fc
  .array(vehicle, { minLength: 1, maxLength: 9 })
  .map((drawn) => {
    const vehicles = drawn.map(({ isReplaced, variant, ...rest }, index): VehicleRecord => {
      const replacedBy = isReplaced && index > 0 ? ['v0'] : [];
      const named = variant === undefined ? {} : { variant };
      return { id: `v${index}`, layout: 'one', fitted: {}, ...rest, ...named, replacedBy };
    });
    const document = {
      catalogue: 1,
      lang: 'en',
      evidence: { basis: 'maker' },
      facts: FACTS,
      roles: [{ id: 'thing', name: 'Thing' }],
      layouts: [{ id: 'one', positions: [{ id: 'place', name: 'Place', roles: ['thing'] }] }],
      vehicles,
    };
    return { document, current: vehicles.filter((one) => one.replacedBy?.length === 0) };
  });

/** An answer to one question: a field or a fact, and its value. */
export interface Answer {
  readonly field: string;
  readonly fact: string | null;
  readonly value: string;
}

/** Whether an answer may be true of a vehicle, by its record alone. */
export function mayBe(record: VehicleRecord, { field, fact, value }: Answer): boolean {
  const [from, until] = record.built ?? [null, null];
  switch (field) {
    case 'make':
    case 'model':
      return plain(record[field]) === plain(value);
    case 'variant':
      return record.variant === undefined || plain(record.variant) === plain(value);
    case 'fact':
      return [undefined, value].includes(record.facts?.[fact ?? '']);
    case 'year':
      return (from?.slice(0, 4) ?? '') <= value && value <= (until?.slice(0, 4) ?? '9999');
    default:
      return (from ?? '') <= value && value <= (until ?? '9999-99');
  }
}

/** The names above without their case, their two sorts of marks and the space. */
function plain(name: string): string {
  return name.toLowerCase().replace('á', 'a').replace('ä', 'a').trim();
}
