/**
 * Random values survive the store: the record to the letter, and beside it the very ends that the
 * text allows, worked out here a second time from the numbers that the text was made of.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalJson } from '../../src/domain/catalogue/canonical.js';
import type { PreparedEdition } from '../../src/usecases/publish-edition.js';
import { CART } from '../cli/catalogue.js';
import { connect, freshPath, open, publish } from './database.js';
import { cart } from './prepared.js';

/** A number as numerator and denominator, the latter above zero. */
type Exact = readonly [bigint, bigint];

interface Wanted {
  readonly record: unknown;
  /** By item: null for a code. */
  readonly ends: readonly (readonly [Exact, Exact] | null)[];
}

const tens = (places: number) => 10n ** BigInt(places);

function decimal(digits: number, places: number): string {
  const text = String(digits).padStart(places + 1, '0');
  const whole = text.slice(0, text.length - places);
  return places === 0 ? whole : `${whole}.${text.slice(-places)}`;
}

/** Millimetres in one unit, as the trade fixes them: an inch is 25.4 mm. */
const UNITS = { mm: [1n, 1n], cm: [10n, 1n], in: [254n, 10n] } as const;

const tolerance = fc.oneof(
  fc.constant(null),
  fc.record({ digits: fc.integer({ min: 1, max: 99 }), places: fc.integer({ min: 0, max: 6 }) }),
);

/** `12.34 ±0.05 mm` or `12.34 mm`, which stands for all that is rounded to it. */
const measured = fc
  .record({
    digits: fc.integer({ min: 100_000, max: 2_000_000_000 }),
    places: fc.integer({ min: 0, max: 5 }),
    tolerance,
    unit: fc.constantFrom('mm', 'cm', 'in'),
  })
  .map(({ digits, places, tolerance: spread, unit }): Wanted => {
    const [up, down] = UNITS[unit];
    const around: Exact = spread
      ? [BigInt(spread.digits), tens(spread.places)]
      : [1n, 2n * tens(places)];
    const end = (sign: bigint): Exact => {
      const numerator = BigInt(digits) * around[1] + sign * around[0] * tens(places);
      return [numerator * up, tens(places) * around[1] * down];
    };
    const said = spread ? ` ±${decimal(spread.digits, spread.places)}` : '';
    return { record: `${decimal(digits, places)}${said} ${unit}`, ends: [[end(-1n), end(1n)]] };
  });

const teeth = fc.integer({ min: 1, max: 9_999 });
const ratioText = fc.tuple(teeth, teeth).map(([above, below]) => {
  const exact: Exact = [BigInt(above), BigInt(below)];
  return { text: `${above}/${below}`, ends: [exact, exact] as const };
});
const ratio = ratioText.map(({ text, ends }): Wanted => ({ record: text, ends: [ends] }));
const ratios = fc
  .array(ratioText, { minLength: 1, maxLength: 6 })
  .map(
    (all): Wanted => ({ record: all.map(({ text }) => text), ends: all.map(({ ends }) => ends) }),
  );
const code = fc
  .stringMatching(/^[a-z][a-z0-9]{2,11}$/)
  .map((word): Wanted => ({ record: `x-${word}`, ends: [null] }));
const range = fc.tuple(teeth, teeth).map(([least, more]): Wanted => {
  const [low, high] = [least, least + more];
  const ends = [[BigInt(low), 1n] as const, [BigInt(high), 1n] as const] as const;
  return { record: { choose: [`${low} mm`, `${high} mm`] }, ends: [ends] };
});

/** Names as people write them, in any script, and with what SQL and JSON mind. */
const name = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
  fc.constantFrom("O'Hara; DROP TABLE parts --", '"quoted" \\ and %_', '軸 ±½″', '🛞', 'a\u0301'),
);

const thing = fc.record({
  name: name.filter((text) => text.trim() === text && !/\p{C}|\p{Z}(?<! )/u.test(text)),
  values: fc.record(
    { size: measured, room: range, ratio, gears: ratios, mark: code },
    { requiredKeys: [] },
  ),
});

function prepared(things: readonly { name: string; values: Record<string, Wanted | undefined> }[]) {
  const role = {
    id: 'thing',
    name: 'Thing',
    values: {
      size: { type: 'measured', unit: 'mm' },
      room: { type: 'measured', unit: 'mm' },
      ratio: { type: 'ratio' },
      gears: { type: 'ratio', list: true },
      mark: { type: 'code' },
    },
  };
  const parts = things.map(({ name: text, values }, index) => ({
    id: `thing-${index}`,
    name: text,
    roles: ['thing'],
    values: Object.fromEntries(
      Object.entries(values).flatMap(([key, value]) => (value ? [[key, value.record]] : [])),
    ),
  }));
  return cart({ roles: [...CART.roles, role], parts: [...CART.parts, ...parts] });
}

/** The number of an exact text of the store, `56.05` or `43/12`. */
function exactOf(text: string): Exact {
  const [above = '', below = '1'] = text.split('/');
  const [whole = '', places = ''] = above.split('.');
  return [BigInt(whole + places), BigInt(below) * tens(places.length)];
}

const same = (a: Exact, b: Exact) => a[0] * b[1] === b[0] * a[1];

/** Whether a floating-point number is this one, but for its last digits. */
function isAbout(found: number | null, [above, below]: Exact): boolean {
  const wanted = Number((above * 10n ** 12n) / below) / 1e12;
  return found !== null && Math.abs(found - wanted) <= 1e-12 * Math.max(1, Math.abs(wanted));
}

interface Row {
  readonly item: number;
  readonly low: string | null;
  readonly high: string | null;
  readonly low_about: number | null;
  readonly high_about: number | null;
}

const path = freshPath();
const store = open(path);
const connection = connect(path, { readonly: true });
const rowsOf = connection.prepare<[string, string], Row>(
  'SELECT item, low, high, low_about, high_about FROM part_values' +
    ' WHERE until_edition IS NULL AND part = ? AND value = ? ORDER BY item',
);
const nameOf = connection
  .prepare<[string], string>('SELECT name FROM parts WHERE until_edition IS NULL AND id = ?')
  .pluck();

function checkEnds(part: string, key: string, { ends }: Wanted): void {
  const rows = rowsOf.all(part, key);
  expect(rows.map(({ item }) => item)).toEqual(ends.map((_, index) => index));
  for (const [index, wanted] of ends.entries()) {
    const row = rows[index] as Row;
    if (wanted === null) {
      expect([row.low, row.high, row.low_about, row.high_about]).toEqual([null, null, null, null]);
      continue;
    }
    const [low, high] = wanted;
    const agreeing = {
      low: same(exactOf(row.low ?? ''), low),
      high: same(exactOf(row.high ?? ''), high),
      lowAbout: isAbout(row.low_about, low),
      highAbout: isAbout(row.high_about, high),
    };
    const all = { low: true, high: true, lowAbout: true, highAbout: true };
    expect({ row, ...agreeing }).toEqual({ row, ...all });
  }
}

describe('random values', () => {
  test('come back to the letter, with the ends that their texts allow', () => {
    const kinds = new Set<string>();
    const property = fc.property(fc.array(thing, { minLength: 1, maxLength: 5 }), (things) => {
      const edition: PreparedEdition = prepared(things);
      const { edition: head } = publish(store, edition);
      const { document } = store.load(head.number);
      expect(canonicalJson(document)).toBe(canonicalJson(edition.content.document));
      expect(head.hash).toBe(edition.content.hash);
      for (const [index, { name: text, values }] of things.entries()) {
        expect(nameOf.get(`thing-${index}`)).toBe(text);
        for (const [key, value] of Object.entries(values)) {
          kinds.add(key);
          checkEnds(`thing-${index}`, key, value);
        }
      }
    });
    fc.assert(property, { numRuns: 40 });
    // Or the generator would have shown nothing.
    expect(kinds.size).toBe(5);
    expect(store.verify().disagreements).toEqual([]);
  });
});
