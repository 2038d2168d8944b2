/**
 * Do these two faces meet? The smallest configuration there is: two places, one mating.
 */

import type { Catalogue, Layout, Part, Position, Vehicle } from '../catalogue/catalogue.js';
import { NO_DRIVELINE } from '../catalogue/compile-driveline.js';
import type { Use } from '../check/coupling.js';
import type { Adapters, Arrangement, Configuration, Seats } from './configuration.js';
import type { MatingConstraint } from './constraint.js';
import { type Judgement, judge } from './judge.js';

export interface MateEnd {
  readonly part: Part;
  readonly interface: string;
}

export interface MateQuestion {
  readonly a: MateEnd;
  readonly b: MateEnd;
  /** Adapters between them, in order from a to b. */
  readonly adapters?: readonly string[];
  readonly use?: Use | null;
}

export interface Meeting {
  readonly mating: MatingConstraint;
  readonly judgement: Judgement;
}

/** Judges one meeting. Parts need not be in the catalogue; their kinds are. */
export function judgeMeeting(catalogue: Catalogue, question: MateQuestion): Meeting {
  const { a, b, adapters = [], use = null } = question;
  const layout = meetingLayout(a, b, adapters.length);
  const between = adapters.flatMap((id) => catalogue.parts.get(id) ?? []);
  const parts = new Map([a.part, b.part, ...between].map((part) => [part.id, part]));
  const vehicle = bareVehicle(layout, catalogue);
  const inCatalogue: Catalogue = { ...catalogue, parts, statements: [], rules: new Map() };
  const configuration: Configuration = {
    catalogue: inCatalogue,
    vehicle,
    layout,
    pairsOf: catalogue,
    present: { seats: new Map([seat('a', null), seat('b', null)]), adapters: new Map() },
    judged: meetingArrangement(a, b, adapters),
    torque: null,
    use,
    ignorePresent: false,
  };
  const judgement = judge(configuration);
  const mating = judgement.constraints.find(
    (one): one is MatingConstraint => one.form === 'mating',
  );
  if (mating === undefined) throw new Error('two parts at one mating are always judged');
  return { mating, judgement };
}

function seat(position: string, part: string | null): [string, Seats] {
  const occupant = part === null ? ({ is: 'empty' } as const) : ({ is: 'part', part } as const);
  const origin = part === null ? 'works' : 'chosen';
  return [position, { hands: false, seat: { occupant, origin } }];
}

function meetingArrangement(a: MateEnd, b: MateEnd, adapters: readonly string[]): Arrangement {
  const between: Adapters = { parts: adapters, origin: 'chosen' };
  return {
    seats: new Map([seat('a', a.part.id), seat('b', b.part.id)]),
    adapters: new Map([['meeting', between]]),
  };
}

function meetingLayout(a: MateEnd, b: MateEnd, adapters: number): Layout {
  const place = (id: string, { part }: MateEnd, index: number): [string, Position] => [
    id,
    {
      id,
      name: part.name,
      roles: part.roles,
      count: 1,
      isHanded: false,
      isOptional: false,
      behind: [],
      labour: null,
      access: null,
      index,
    },
  ];
  const ends = [
    { position: 'a', interface: a.interface },
    { position: 'b', interface: b.interface },
  ] as const;
  return {
    id: 'meeting',
    name: null,
    positions: new Map([place('a', a, 0), place('b', b, 1)]),
    matings: new Map([
      ['meeting', { id: 'meeting', ends, adapters, quantity: 1, isHanded: false }],
    ]),
    terms: new Map(),
    checks: [],
    termNames: new Map(),
    driveline: NO_DRIVELINE,
    unmated: 'ignore',
  };
}

function bareVehicle(layout: Layout, catalogue: Catalogue): Vehicle {
  return {
    id: 'meeting',
    make: '',
    model: '',
    variant: null,
    built: [null, null],
    facts: new Map(),
    saidFacts: new Set(),
    vin: [],
    layout,
    like: null,
    replacedBy: [],
    evidence: catalogue.evidence,
    fitted: new Map(),
    options: new Map(),
    adapters: new Map(),
  };
}
