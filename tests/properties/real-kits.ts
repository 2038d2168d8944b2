/**
 * The resolver of the program, asked the way the oracle is asked.
 */

import type { Layout, Occupant } from '../../src/domain/catalogue/catalogue.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import type { Seats } from '../../src/domain/judge/configuration.js';
import { offerOf } from '../../src/domain/kit/offered.js';
import type { KitQuestion, Want } from '../../src/domain/kit/question.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { Kits, Route } from '../../src/domain/kit/route.js';
import { rational } from '../../src/domain/quantity/rational.js';
import type { KitAsk } from '../oracle/kit-ask.js';
import { compiled, rowsOf, seatsOf, torqueOf } from './real-judge.js';

export interface RealAsk {
  readonly ask: KitAsk;
  readonly document: CatalogueDocument;
}

/** Enough for any of the small catalogues. */
export const MANY_STEPS = 10_000_000;

export function questionOf(
  { document, ask }: RealAsk,
  more: Partial<KitQuestion> = {},
): KitQuestion {
  const catalogue = compiled(document);
  const vehicle = catalogue.vehicles.get(ask.vehicle);
  if (vehicle === undefined) throw new Error(`there is no ${ask.vehicle}`);
  return {
    catalogue,
    pairsOf: catalogue,
    vehicle,
    said: { seats: saidSeats(ask, vehicle.layout), adapters: rowsOf(ask.saidAdapters, 'said') },
    wants: wantsOf(ask, document, vehicle.layout),
    keep: ask.keep,
    avoid: { parts: new Set(ask.avoid), suppliers: new Set(), conditions: [] },
    owned: new Map(Object.entries(ask.owned)),
    lots: new Set(ask.lots),
    workUpTo: ask.workUpTo,
    limits: {
      cost: ask.costLimit,
      changedPositions: ask.changesLimit,
      labourHours: null,
      leadDays: null,
      inStock: false,
    },
    torque: ask.torque === null ? null : torqueOf(ask.torque),
    use: ask.use,
    ignorePresent: ask.ignorePresent,
    labourRate: ask.labourRate,
    ruleset: ask.ruleset === null ? null : (catalogue.rulesets.get(ask.ruleset) ?? null),
    refusesUnknowns: ask.refusesUnknowns,
    from: ask.from,
    offers: (document.offers ?? []).map(offerOf),
    prefer: ask.prefer,
    routes: 20,
    onlyUndominated: false,
    steps: MANY_STEPS,
    ...more,
  };
}

function saidSeats({ said }: KitAsk, layout: Layout): Map<string, Seats> {
  const entries = Object.entries(said).map(([id, placed]) => {
    const position = layout.positions.get(id);
    if (position === undefined) throw new Error(`there is no ${id}`);
    return [id, seatsOf(placed, position, 'said')] as const;
  });
  return new Map(entries);
}

/** Conditions are read as those of rules are. */
function wantsOf({ wants }: KitAsk, document: CatalogueDocument, layout: Layout): Want[] {
  const idOf = (index: number) => `wish-${index}`;
  const asked = wants.flatMap((want, index) => {
    if (want.is !== 'condition') return [];
    return [{ id: idOf(index), when: want.condition, note: 'wished', because: 'it is wished' }];
  });
  const rules = asked.length === 0 ? null : compiled({ ...document, rules: asked }).rules;
  return wants.map((want, index) => {
    if (want.is === 'load') return { ...want, atLeast: rational(want.atLeast) };
    if (want.is !== 'condition') return want;
    const rule = rules?.get(layout.id)?.find(({ id }) => id === idOf(index));
    if (rule === undefined) throw new Error(`nobody read ${idOf(index)}`);
    return { is: 'condition', position: want.position, condition: rule.when };
  });
}

export function askReal(asked: RealAsk, more: Partial<KitQuestion> = {}): Kits {
  return resolveKits(questionOf(asked, more));
}

/** In words, all that stands and sits there once it is done. */
export function nameOfRoute({ judgement: { configuration } }: Route): string {
  const { layout, judged } = configuration;
  const seats = [...layout.positions.keys()].flatMap((id) => {
    const there = judged.seats.get(id);
    if (there === undefined) throw new Error(`nobody said what stands at ${id}`);
    if (!there.hands) return [`${id}=${wordOf(there.seat.occupant)}`];
    const { left, right } = there;
    return [`${id}:left=${wordOf(left.occupant)}`, `${id}:right=${wordOf(right.occupant)}`];
  });
  const rows = [...layout.matings.keys()].map((id) => {
    return `${id}=${(judged.adapters.get(id)?.parts ?? []).join('-')}`;
  });
  return [...seats, ...rows].join(' ');
}

function wordOf(occupant: Occupant): string {
  return occupant.is === 'part' ? occupant.part : occupant.is;
}
