/**
 * Which parts fit which vehicles over a whole catalogue, against the judge asked of each: over the
 * demo and over random small catalogues, in which every part and every vehicle has a double and
 * another that differs from it in one record, so that there are likes to be taken for one another.
 *
 * FAYING_CASES sets how many catalogues are drawn, FAYING_SEED which.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalogue } from '../../src/domain/catalogue/catalogue.js';
import type { CatalogueDocument, VehicleRecord } from '../../src/domain/catalogue/document.js';
import { FitsIndex } from '../../src/domain/fits/fits-index.js';
import { CompiledIndex } from '../../src/domain/index/compiled-index.js';
import { judgeFit } from '../../src/domain/judge/fit.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { compiled } from './real-judge.js';
import { cases } from './small-document.js';

const CASES = Number(process.env.FAYING_CASES ?? 60);
const SEED = Number(process.env.FAYING_SEED ?? 1);

const AS_RECORDED = {
  with: new Map(),
  said: { seats: new Map(), adapters: new Map() },
  torque: null,
  use: null,
  ignorePresent: false,
};

interface Compared {
  readonly pairs: number;
  readonly judged: number;
  readonly outcomes: ReadonlySet<string>;
}

/** Of all parts on all vehicles, one in so many. */
function compare(catalogue: Catalogue, name: string, oneIn: number): Compared {
  const fits = new FitsIndex(catalogue, new CompiledIndex(catalogue));
  const outcomes = new Set<string>();
  let pairs = 0;
  for (const [at, vehicle] of [...catalogue.vehicles.values()].entries()) {
    for (const [number, part] of [...catalogue.parts.values()].entries()) {
      if ((number + at) % oneIn !== 0) continue;
      const { positions } = judgeFit(catalogue, { vehicle, part, position: null, ...AS_RECORDED });
      const expected = positions.map(({ position, alone }) => `${position.id} ${alone}`);
      const found = fits.at(part, vehicle).map(({ position, alone }) => `${position.id} ${alone}`);
      expect(found, `${name}: ${part.id} on ${vehicle.id}`).toEqual(expected);
      pairs += positions.length;
      for (const { alone } of positions) outcomes.add(alone);
    }
  }
  return { pairs, judged: fits.judged, outcomes };
}

test('over the demo', () => {
  const { pairs, judged, outcomes } = compare(
    libraryOf(demoDocument()).edition(null).catalogue,
    'demo',
    4,
  );
  expect([...outcomes].sort()).toEqual(['fails', 'holds', 'open']);
  expect(judged).toBeLessThan(0.8 * pairs);
});

test('over random catalogues with doubles in them', () => {
  let [pairs, judged] = [0, 0];
  const outcomes = new Set<string>();
  for (let first = 0; first < CASES; first += 50) {
    const numRuns = Math.min(50, CASES - first);
    const some = fc.sample(cases(), { numRuns, seed: SEED * 1000 + first / 50 });
    for (const [index, { document }] of some.entries()) {
      const found = compare(compiled(doubled(document)), `case ${first + index}`, 1);
      pairs += found.pairs;
      judged += found.judged;
      for (const outcome of found.outcomes) outcomes.add(outcome);
    }
  }
  expect(outcomes.size).toBe(3);
  // A document of twenty parts names most of them somewhere, so there is little to be alike.
  expect(judged).toBeLessThan(0.8 * pairs);
}, 3_600_000);

/** Each part twice; each vehicle twice, and once more without what is recorded of one place. */
function doubled(document: CatalogueDocument): CatalogueDocument {
  const { parts = [], vehicles = [] } = document;
  return {
    ...document,
    parts: [...parts, ...parts.map((part) => ({ ...part, id: `${part.id}-double` }))],
    vehicles: [
      ...vehicles,
      ...vehicles.map((vehicle) => ({ ...vehicle, id: `${vehicle.id}-double` })),
      ...vehicles.map(withoutFirst),
    ],
  };
}

function withoutFirst(vehicle: VehicleRecord): VehicleRecord {
  const [, ...fitted] = Object.entries(vehicle.fitted ?? {});
  return { ...vehicle, id: `${vehicle.id}-less`, fitted: Object.fromEntries(fitted) };
}
