/** Kit questions to the demo catalogue, as a page asks them: one part wanted at one place. */

import type { Catalogue } from '../../../src/domain/catalogue/catalogue.js';
import { offerOf } from '../../../src/domain/kit/offered.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { demoDocument, libraryOf } from '../../memory-store.js';

const { catalogue } = libraryOf(demoDocument()).edition(null);

export interface Wish {
  readonly vehicle: string;
  readonly part: string;
  readonly position: string;
}

/** Of all parts at all places that take them on all vehicles, one in so many. */
export function demoWishes(oneIn: number): Wish[] {
  const all = [...catalogue.vehicles.values()].flatMap((vehicle) =>
    [...vehicle.layout.positions.values()].flatMap((position) =>
      partsFor(position.roles, catalogue).map((part): Wish => {
        return { vehicle: vehicle.id, part, position: position.id };
      }),
    ),
  );
  return all.filter((_, index) => index % oneIn === 0);
}

function partsFor(roles: readonly string[], { parts }: Catalogue): string[] {
  return [...parts.values()]
    .filter((part) => part.roles.some((role) => roles.includes(role)))
    .map(({ id }) => id);
}

export function demoQuestion(wish: Wish, more: Partial<KitQuestion> = {}): KitQuestion {
  const vehicle = catalogue.vehicles.get(wish.vehicle);
  if (vehicle === undefined) throw new Error(`no vehicle ${wish.vehicle}`);
  const { part, position } = wish;
  return {
    catalogue,
    pairsOf: catalogue,
    vehicle,
    said: { seats: new Map(), adapters: new Map() },
    wants: [{ is: 'part', position, hand: null, parts: [part], renews: false }],
    keep: [],
    avoid: { parts: new Set(), suppliers: new Set(), conditions: [] },
    owned: new Map(),
    lots: new Set(catalogue.lots.keys()),
    workUpTo: 'engineer',
    limits: {
      cost: null,
      changedPositions: null,
      labourHours: null,
      leadDays: null,
      inStock: false,
    },
    torque: null,
    use: null,
    ignorePresent: false,
    labourRate: null,
    ruleset: null,
    refusesUnknowns: false,
    from: 'recorded',
    offers: catalogue.offers.map(offerOf),
    prefer: 'cost',
    routes: 3,
    onlyUndominated: false,
    steps: 20_000,
    ...more,
  };
}
