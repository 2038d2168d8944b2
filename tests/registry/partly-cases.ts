/**
 * Questions about vehicles that are known in part, one for each code that only they lead to.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import { checkFitPartly } from '../../src/usecases/check-fit-partly.js';
import { USUAL_KIT } from '../../src/usecases/kit-input.js';
import { resolveKitsPartly } from '../../src/usecases/resolve-kits-partly.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { flange, type Sketch, world } from '../rules/sketch.js';

const BOXES = {
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-like-a': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'box-c': { rear: flange('C') },
    'box-unread': { rear: flange() },
    'prop-a': { front: flange('A') },
    'prop-b': { front: flange('B') },
  },
  cars: {
    one: { box: 'box-a', prop: 'prop-a' },
    two: { box: 'box-a', prop: 'prop-a' },
  },
} satisfies Sketch;

const OTHER = { box: 'box-b', prop: 'prop-b' };

/** More than are asked one by one. */
const CROWD = Object.fromEntries(
  Array.from({ length: 201 }, (_, index) => [`car-${index}`, BOXES.cars.one]),
);

/** A question about whichever vehicle, of which nothing is known. */
export const ANY = {
  edition: null,
  lang: 'en',
  units: 'recorded',
  known: { make: null, model: null, variant: null, year: null, built: null },
  facts: {},
  fitted: {},
  adapters: {},
  measured: [],
  torque: null,
  use: null,
  ignorePresent: false,
} as const;

/** Of all vehicles that there are. */
export function partly(sketch: Sketch, part: string, changes: 'yes' | 'no' = 'no') {
  const asked = { ...ANY, part, position: null, with: {}, changes };
  return checkFitPartly(libraryOf(world(sketch).document), asked);
}

export function kitsPartly(sketch: Sketch, part: string) {
  const want = [{ part, position: null, hand: null, renew: false }];
  const asked = { ...ANY, ...USUAL_KIT, want };
  return resolveKitsPartly(libraryOf(world(sketch).document), asked);
}

/** Vehicles of a make of the demo, some of which have no bracket at an axle. */
function ofPlace() {
  const want = [{ part: 'bracket-20', position: 'axle-bracket', hand: null, renew: false }];
  const known = { ...ANY.known, make: 'Corrablyn' };
  return resolveKitsPartly(libraryOf(demoDocument()), { ...ANY, ...USUAL_KIT, known, want });
}

const WITH_OTHER = { ...BOXES, cars: { ...BOXES.cars, other: OTHER } };

export const PARTLY_CASES: Readonly<Partial<Record<ReasonCode, () => unknown>>> = {
  'each-fits': () => partly(BOXES, 'box-like-a'),
  'each-fits-with-changes': () => partly(BOXES, 'box-b', 'yes'),
  'each-unknown': () => partly(BOXES, 'box-unread'),
  'none-fits': () => partly(BOXES, 'box-c', 'yes'),
  depends: () => partly(WITH_OTHER, 'box-like-a'),
  'too-many-vehicles': () => partly({ ...BOXES, cars: CROWD }, 'box-like-a'),
  'each-proven': () => kitsPartly(BOXES, 'box-b'),
  'each-open': () => kitsPartly(BOXES, 'box-unread'),
  'no-way-for-any': () => kitsPartly(BOXES, 'box-c'),
  'ways-depend': () => kitsPartly(WITH_OTHER, 'box-b'),
  'no-such-place': ofPlace,
  'too-many-to-solve': () => kitsPartly({ ...BOXES, cars: CROWD }, 'box-b'),
};
