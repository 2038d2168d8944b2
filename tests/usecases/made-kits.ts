/**
 * Routes made by hand over real configurations, for tests of what answers say of them: what is
 * changed is judged as always, and the lines and their reasons are written down.
 */

import { NOWHERE } from '../../src/domain/check/reading.js';
import { isChanged } from '../../src/domain/judge/configuration.js';
import type { Judgement } from '../../src/domain/judge/judge.js';
import type { Line, Totals } from '../../src/domain/kit/basket.js';
import type { KitQuestion } from '../../src/domain/kit/question.js';
import type { Kits, Route, Why } from '../../src/domain/kit/route.js';
import { ONE, ZERO } from '../../src/domain/quantity/rational.js';
import type { AskedKit } from '../../src/usecases/asked-kit.js';
import { type KitBody, kitBody } from '../../src/usecases/kit-views.js';
import { Speaker } from '../../src/usecases/speaker.js';
import { sha256 } from '../memory-store.js';

export { NOWHERE };

/** One piece, bought at no known price, unless more is said. */
export function madeLine(key: string, more: Partial<Line> = {}): Line {
  const [action = '', place = '', part = null] = key.split(':');
  const isBetween = action === 'adapter';
  return {
    key,
    action: action as Line['action'],
    position: isBetween ? null : place,
    mating: isBetween ? place : null,
    hand: null,
    part,
    lot: null,
    work: null,
    quantity: ONE,
    dimension: '1',
    source: 'unpriced',
    fromLot: null,
    offer: null,
    packs: null,
    over: null,
    unitPrice: null,
    price: null,
    labourHours: null,
    labourPrice: null,
    leadDays: null,
    leftOver: [],
    signOff: null,
    isReversible: true,
    ...more,
  };
}

const NOTHING_BOUGHT: Totals = {
  parts: 0,
  works: 0,
  labourHours: ZERO,
  labour: null,
  cost: 0,
  unpriced: [],
  untimed: [],
  changedPositions: 0,
  leadDays: 0,
  unknownLimits: [],
  signOff: null,
  isReversible: true,
};

export interface MadeRoute extends Partial<Omit<Route, 'basket' | 'why'>> {
  readonly lines?: readonly Line[];
  readonly totals?: Partial<Totals>;
  readonly whys?: Readonly<Record<string, readonly Partial<Why>[]>>;
}

export function madeRoute(judgement: Judgement, made: MadeRoute = {}): Route {
  const { lines = [], totals = {}, whys = {}, ...more } = made;
  const { configuration, outcome } = judgement;
  const changes = [...configuration.layout.positions.keys()].filter((id) =>
    isChanged(configuration, id),
  );
  const unpriced = lines.filter(({ source }) => source === 'unpriced').map(({ key }) => key);
  const counted = { unpriced, changedPositions: changes.length };
  return {
    grade: outcome === 'holds' ? 'proven' : 'open',
    judgement,
    changes,
    basket: { lines, totals: { ...NOTHING_BOUGHT, ...counted, ...totals } },
    why: new Map(
      Object.entries(whys).map(([key, own]) => [
        key,
        own.map((why) => ({ code: 'wanted', after: null, constraint: null, name: null, ...why })),
      ]),
    ),
    substitutes: new Map(),
    alternatives: new Map(),
    recommended: [],
    loads: [],
    weakest: null,
    beatenBy: null,
    ...more,
  };
}

export interface Telling {
  readonly lang?: string;
  readonly kits?: Partial<Kits>;
  readonly question?: Partial<KitQuestion>;
}

/** What the answer says of these routes. */
export function told(
  routes: readonly Route[],
  judgement: Judgement,
  telling: Telling = {},
): KitBody {
  const { lang = 'en', kits = {}, question = {} } = telling;
  const { catalogue, layout, vehicle } = judgement.configuration;
  const found: Kits = { routes, isComplete: true, hasMore: false, bound: null, steps: 1, ...kits };
  const context = {
    question: { offers: [], prefer: 'cost', ...question } as unknown as KitQuestion,
    asked: { edition: 1, lang, vehicle: vehicle.id } as unknown as AskedKit,
    origins: { edition: 1, offers: 1 },
    digest: sha256,
  };
  return kitBody(found, null, context, new Speaker({ catalogue, layout, lang }));
}
