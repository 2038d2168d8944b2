/**
 * A kit question with every name looked up and every text understood. All faults are said at once.
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import { nearest } from '../domain/catalogue/faults.js';
import type { Seat, Seats } from '../domain/judge/configuration.js';
import type { Said } from '../domain/judge/fit.js';
import type { KitQuestion } from '../domain/kit/question.js';
import { canGoInWhole } from '../domain/kit/whole-lot.js';
import type { AskedKit } from './asked-kit.js';
import { AskedParts } from './asked-parts.js';
import type { Faults } from './faults.js';
import { KitContext } from './kit-context.js';
import { lotsOf, offersOf, ownedOf, partsAtHand } from './kit-goods.js';
import type { KitInput } from './kit-input.js';
import { limitsOf, rateOf } from './kit-limits.js';
import { avoidedOf, partsWanted, wantsOf } from './kit-wants.js';
import type { Edition, Library } from './library.js';
import { type FittedInput, namesIn, torqueOf, vehicleOf } from './question.js';
import { factsMeasured, knownOf } from './readings.js';
import type { Skus } from './skus.js';

export interface AskedKitQuestion {
  readonly question: KitQuestion;
  /** What the names of parts in it led to. */
  readonly parts: AskedParts;
  /** Number of the price and stock list that prices are taken from. */
  readonly offers: number;
  /** The question in its one form. */
  readonly asked: AskedKit;
}

export interface KitAsking {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: KitInput;
}

/** Ends with all faults as one where there is any. */
export function kitQuestionOf(asking: KitAsking, faults: Faults): AskedKitQuestion {
  const { library, edition, input } = asking;
  const list = library.skus(input.offers ?? null);
  const parts = new AskedParts(
    { library, edition, input: { ...input, offers: list.number } },
    [...partsWanted(input), ...partsAtHand(input), ...namesIn(input)],
    faults,
  );
  const facts = { ...input.facts, ...factsMeasured(edition.catalogue, input.measured, faults) };
  const vehicle = vehicleOf(edition, { ...input, facts }, faults);
  const simple = simpleOf(asking, faults);
  if (vehicle === null) return faults.end();
  const context = new KitContext(parts, vehicle, faults);
  const resolved = resolvedOf(input, list, context);
  faults.endIfAny();
  const places = {
    catalogue: resolved.catalogue,
    pairsOf: edition.catalogue,
    index: edition.index,
  };
  const supposed = { ...simple, ...resolved, vehicle, facts };
  const want = usedAsCanBe(input.want, { ...places, ...questionOf(input, supposed) }, resolved);
  const found = { ...supposed, want };
  return {
    question: { ...places, ...questionOf(input, found) },
    parts,
    offers: list.number,
    asked: { edition: edition.head.number, ...askedOf(input, found) },
  };
}

/** What can be told without the vehicle. */
function simpleOf({ edition: { catalogue }, input }: KitAsking, faults: Faults) {
  const { rulesets } = catalogue;
  const { ruleset: name } = input;
  const ruleset = name === null ? null : (rulesets.get(name) ?? null);
  if (name !== null && ruleset === null) {
    faults.add('ruleset', 'unknown-ruleset', { name, meant: nearest(name, rulesets.keys()) });
  }
  return {
    torque: torqueOf(input.torque, faults),
    rate: rateOf(input.labourRate, faults),
    limits: limitsOf(input.limits, faults),
    ruleset,
  };
}

function resolvedOf(input: KitInput, list: Skus, context: KitContext) {
  const want = wantsOf(input.want, context);
  for (const [index, id] of input.keep.entries()) context.hasPosition(id, `keep.${index}`);
  const avoid = avoidedOf(input.avoid, context);
  context.tellConditions();
  const owned = ownedOf(input.owned, context);
  const lots = lotsOf(input, context);
  const known = knownOf(context, input);
  const offers = offersOf(input, list, context);
  return { want, keep: [...new Set(input.keep)], avoid, owned, lots, offers, ...known };
}

/** The wishes with lots used whole where nothing is said of that and the vehicle can take them. */
function usedAsCanBe(
  inputs: KitInput['want'],
  question: KitQuestion,
  { want }: Pick<ReturnType<typeof resolvedOf>, 'want'>,
): typeof want {
  const budget = { left: question.steps };
  // Each wish was understood, so there are as many as were read.
  const whole = inputs.map((input) => {
    if (!('lot' in input)) return false;
    return input.whole ?? canGoInWhole(question, input.lot, budget);
  });
  return {
    domain: want.domain.map((one, at) =>
      one.is === 'lot' ? { ...one, whole: whole[at] === true } : one,
    ),
    asked: want.asked.map((one, at) =>
      'lot' in one ? { ...one, whole: whole[at] === true } : one,
    ),
  };
}

type Found = ReturnType<typeof simpleOf> &
  ReturnType<typeof resolvedOf> & {
    readonly vehicle: Vehicle;
    readonly facts: Readonly<Record<string, string>>;
  };

function questionOf(
  input: KitInput,
  { vehicle, said, want, keep, avoid, owned, lots, limits, offers, rate, ruleset, torque }: Found,
): Omit<KitQuestion, 'catalogue' | 'pairsOf' | 'index'> {
  const { workUpTo, use, ignorePresent, from, prefer, routes, steps } = input;
  return {
    vehicle,
    said,
    wants: want.domain,
    keep,
    avoid: avoid.domain,
    owned: owned.domain,
    lots: lots.domain,
    workUpTo,
    limits: limits.domain,
    torque,
    use,
    ignorePresent,
    labourRate: rate?.domain ?? null,
    ruleset,
    refusesUnknowns: input.unknowns === 'refuse',
    from,
    offers: offers.domain,
    prefer,
    routes,
    onlyUndominated: input.undominated,
    steps,
  };
}

function askedOf(input: KitInput, found: Found): Omit<AskedKit, 'edition'> {
  const { vehicle, facts, said, want, keep, avoid, owned, lots, limits, measured, offers } = found;
  const { torque, use, ruleset, lang, units, ignorePresent, workUpTo, unknowns, from } = input;
  const { offersMode, prefer, routes, undominated, steps } = input;
  return {
    lang,
    units,
    vehicle: vehicle.id,
    facts,
    fitted: fittedAsked(said, input),
    adapters: adaptersAsked(said),
    ...(torque === null ? {} : { torque }),
    ...(use === null ? {} : { use }),
    ignorePresent,
    want: want.asked,
    keep,
    avoid: avoid.asked,
    owned: owned.asked,
    lots: lots.asked,
    workUpTo,
    limits: limits.asked,
    ...(found.rate === null ? {} : { labourRate: found.rate.asked }),
    ...(ruleset === null ? {} : { ruleset }),
    unknowns,
    from,
    offers: offers.asked,
    offersMode,
    measured: [...measured],
    prefer,
    routes,
    undominated,
    steps,
  };
}

/** By position, as the question names them: a part that spans others is in those too. */
function fittedAsked({ seats }: Said, { fitted }: KitInput): Record<string, FittedInput> {
  const asked: Record<string, FittedInput> = {};
  for (const id of Object.keys(fitted)) {
    const said = seats.get(id);
    if (said !== undefined) asked[id] = seatsAsked(said);
  }
  return asked;
}

function seatsAsked(seats: Seats): FittedInput {
  if (!seats.hands) return seatAsked(seats.seat);
  const [left, right] = [seatAsked(seats.left), seatAsked(seats.right)];
  return left === right ? left : { left, right };
}

function seatAsked({ occupant }: Seat): string {
  if (occupant.is === 'part') return occupant.part;
  return occupant.is === 'empty' ? 'none' : 'unknown';
}

function adaptersAsked({ adapters }: Said): Record<string, string[]> {
  return Object.fromEntries([...adapters].map(([mating, { parts }]) => [mating, [...parts]]));
}
