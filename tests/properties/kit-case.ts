/**
 * Random small catalogues with trade in them, and a kit question to each. Most are rows of places
 * in which conversions are to be had; the rest are whatever a judge may meet.
 */

import fc from 'fast-check';
import type {
  CatalogueDocument,
  PartRecord,
  VehicleRecord,
} from '../../src/domain/catalogue/document.js';
import type { KitAsk } from '../oracle/kit-ask.js';
import { rows } from './kit-row.js';
import { tradePicks, withTrade } from './kit-trade.js';
import { askOf, type Told, wishPicks } from './kit-wish.js';
import { cases } from './small-document.js';
import type { Picked } from './small-frame.js';
import type { Vocabulary } from './small-rule.js';
import { weighted } from './small-value.js';
import { placedAt, seatPicks } from './small-vehicle.js';

export interface KitCase {
  readonly document: CatalogueDocument;
  readonly ask: KitAsk;
}

const MOST_PLACES = 4;

const wild = cases().filter(
  ({ document }) => (document.layouts?.[0]?.positions.length ?? 0) <= MOST_PLACES,
);

const picks = fc.record({
  base: fc.oneof({ weight: 4, arbitrary: rows() }, { weight: 1, arbitrary: wild }),
  said: weighted([2, 0], [1, 1], [1, 2]).chain((length) =>
    fc.array(fc.tuple(fc.nat({ max: 3 }), seatPicks), { minLength: length, maxLength: length }),
  ),
  hasSaidRow: weighted([6, false], [1, true]),
  most: fc.array(weighted([6, 1], [3, 0], [1, 2]), { minLength: 5, maxLength: 5 }),
  trade: tradePicks,
  wish: wishPicks,
});

export function kitCases(): fc.Arbitrary<KitCase> {
  // Small numbers mean nothing here, so there is no reason to draw them more often.
  return fc.noBias(picks.map(kitCaseOf));
}

function kitCaseOf({
  base,
  said: seats,
  hasSaidRow,
  most,
  trade,
  wish,
}: Picked<typeof picks>): KitCase {
  const { vehicle, torque, use, ignorePresent } = base.question;
  const saidAdapters = hasSaidRow ? base.question.saidAdapters : {};
  const shaped = withAdapters(base.document, most, saidAdapters);
  const words = wordsOf(shaped);
  const document = withTrade(shaped, trade, words);
  const positions = shaped.layouts?.[0]?.positions ?? [];
  const frame = { parts: shaped.parts ?? [] };
  const said = Object.fromEntries(
    seats.flatMap(([index, seat]) => {
      const position = positions[index];
      return position === undefined ? [] : [[position.id, placedAt(seat, position, frame)]];
    }),
  );
  const told = { vehicle, said, saidAdapters, torque, use, ignorePresent };
  return { document, ask: askOf(wish, told, document, words) };
}

function wordsOf({ layouts = [], parts = [] }: CatalogueDocument): Vocabulary {
  const [layout] = layouts;
  const take = <Item>(items: readonly Item[] | undefined, index: number): Item => {
    const item = items?.[index % items.length];
    if (item === undefined) throw new Error('there is nothing to name');
    return item;
  };
  const isAdapter = ({ roles }: PartRecord) => roles.includes('adapter');
  const adapters = parts.filter(isAdapter);
  const placed = parts.filter((part) => !isAdapter(part));
  return {
    place: (index) => take(layout?.positions, index).id,
    part: (index) => take(placed, index).id,
    mating: (index) => take(layout?.matings, index).id,
    adapter: (index) => take(adapters, index).id,
  };
}

/** No mating takes fewer than are there already. */
function withAdapters(
  document: CatalogueDocument,
  most: readonly number[],
  said: Told['saidAdapters'],
): CatalogueDocument {
  const there = [...(document.vehicles ?? []).map((one) => rowsOn(one)), said];
  const layouts = (document.layouts ?? []).map((layout) => {
    const matings = (layout.matings ?? []).map((mating, index) => {
      const lengths = there.map((row) => row[mating.id]?.length ?? 0);
      return { ...mating, adapters: Math.max(most[index] ?? 1, ...lengths) };
    });
    return { ...layout, matings };
  });
  return { ...document, layouts };
}

function rowsOn({ fitted }: VehicleRecord): Told['saidAdapters'] {
  return (fitted?.matings ?? {}) as Told['saidAdapters'];
}
