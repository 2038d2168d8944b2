/**
 * Does this part fit this vehicle? The vehicle as it is, with the part put in its place.
 */

import type { Catalogue, Layout, Vehicle } from '../domain/catalogue/catalogue.js';
import { type Companion, type Fit, type FitAt, judgeFit, placesFor } from '../domain/judge/fit.js';
import type { FitAnswer, FitPositionView, SaidReason } from './answer.js';
import { measureViews, notCheckedViews, orderViews } from './asides.js';
import { cautionViews, once, worksIn } from './cautions.js';
import { QuestionError } from './errors.js';
import { withValuesHead } from './head.js';
import type { Edition, Library } from './library.js';
import {
  askedCatalogue,
  Faults,
  partOf,
  positionOf,
  saidOf,
  torqueOf,
  type VehicleInput,
  vehicleOf,
} from './question.js';
import { Speaker } from './speaker.js';
import { judgedView } from './views.js';

/** A part, or one for each hand of a handed position. */
export type CompanionInput = string | { readonly left: string; readonly right: string };

export interface FitInput extends VehicleInput {
  readonly part: string;
  readonly position: string | null;
  /** Parts fitted beside it, by position; on a handed position one for each hand. */
  readonly with: Readonly<Record<string, CompanionInput>>;
  readonly changes: 'yes' | 'no' | null;
}

export function checkFit(library: Library, input: FitInput): FitAnswer {
  refuseChanges(input);
  const edition = library.edition(input.edition);
  const named = [input.part, ...Object.values(input.with)];
  const catalogue = askedCatalogue(edition.catalogue, input, named);
  const faults = new Faults();
  const vehicle = vehicleOf(catalogue, input, faults);
  const part = partOf(catalogue, input.part, 'part', faults);
  const torque = torqueOf(input.torque, faults);
  if (vehicle === null) return faults.end();
  if (input.position !== null) positionOf(vehicle, input.position, 'position', faults);
  const companions = companionsOf(catalogue, vehicle, input, faults);
  const said = saidOf(catalogue, vehicle, input, faults);
  if (part === null) return faults.end();
  const places = input.position === null ? placesFor(part, vehicle) : [{ id: input.position }];
  const [only, ...others] = places;
  if (only !== undefined && others.length === 0 && companions.has(only.id)) {
    faults.add(`with.${only.id}`, 'place-of-the-part', { position: only.id });
  }
  faults.endIfAny();
  const { position, use, ignorePresent } = input;
  const question = { vehicle, part, position, with: companions, said, torque, use, ignorePresent };
  const fit = judgeFit(catalogue, question);
  const speaker = new Speaker({
    catalogue,
    layout: vehicle.layout,
    lang: input.lang,
    units: input.units,
  });
  return answerOf(fit, { input, edition, layout: vehicle.layout }, speaker);
}

function companionsOf(
  catalogue: Catalogue,
  vehicle: Vehicle,
  input: FitInput,
  faults: Faults,
): Map<string, readonly Companion[]> {
  const companions = new Map<string, readonly Companion[]>();
  for (const [id, companion] of Object.entries(input.with)) {
    const at = `with.${id}`;
    const position = positionOf(vehicle, id, at, faults);
    if (typeof companion === 'string') {
      const part = partOf(catalogue, companion, at, faults);
      if (part !== null) companions.set(id, [{ part, hand: null }]);
      continue;
    }
    if (position !== null && !position.isHanded) {
      faults.add(at, 'not-handed', { position: id });
    }
    const pair = HANDS.flatMap((hand) => {
      const part = partOf(catalogue, companion[hand], `${at}.${hand}`, faults);
      return part === null ? [] : [{ part, hand }];
    });
    companions.set(id, pair);
  }
  return companions;
}

const HANDS = ['left', 'right'] as const;

/** The resolver is not there yet: an answer must not claim that changes were looked for. */
function refuseChanges({ changes }: FitInput): void {
  if (changes !== 'yes') return;
  throw new QuestionError([{ at: 'changes', code: 'changes-not-supported', data: {} }]);
}

interface Asked {
  readonly input: FitInput;
  readonly edition: Edition;
  readonly layout: Layout;
}

function answerOf(fit: Fit, { input, edition, layout }: Asked, speaker: Speaker): FitAnswer {
  const best = fit.positions.filter(({ position }) => fit.at.includes(position.id));
  const judgements = best.map(({ judgement }) => judgement);
  const positions = fit.positions.map((one) => positionView(one, speaker));
  const measure = measureViews(judgements, speaker);
  return withValuesHead(edition, speaker, {
    changes: 'no',
    asked: input.part,
    vehicle: input.vehicle,
    part: input.part,
    name: speaker.partName(input.part) ?? input.part,
    alone: fit.alone,
    verdict: fit.verdict,
    complete: true,
    present: fit.isPresent,
    ambiguous: fit.isAmbiguous,
    at: [...fit.at],
    summary: summaryOf(
      fit,
      positions,
      { facts: measure.length, named: namedIn(input), asked: input.part, layout },
      speaker,
    ),
    positions,
    kit: null,
    measure,
    notChecked: once(judgements.flatMap((one) => notCheckedViews(one, speaker))),
    cautions: once(judgements.flatMap((one) => cautionViews(one, speaker))),
  });
}

/** What the change does not touch is given and not listed; the state of the rest is. */
function positionView(fit: FitAt, speaker: Speaker): FitPositionView {
  const { position, judgement, replaces, alone, verdict, isPresent } = fit;
  const touched = judgement.constraints.filter(({ state }) => state !== 'given');
  return {
    position: position.id,
    name: speaker.text(position.name),
    replaces: [...replaces],
    present: isPresent,
    alone,
    verdict,
    ...judgedView(touched, speaker, position.id),
    order: orderViews(judgement, speaker),
  };
}

/** How many other parts the question puts in. */
function namedIn({ with: companions }: FitInput): number {
  return Object.keys(companions).length;
}

/** Whether it has two faces, as what sits in a joint has, and some joint takes such a part. */
function isAdapter(part: string, layout: Layout, { catalogue }: Speaker): boolean {
  const faces = catalogue.parts.get(part)?.faces.size ?? 0;
  return faces === 2 && [...layout.matings.values()].some(({ adapters }) => adapters > 0);
}

function summaryOf(
  fit: Fit,
  positions: readonly FitPositionView[],
  {
    facts,
    named,
    asked,
    layout,
  }: {
    readonly facts: number;
    readonly named: number;
    readonly asked: string;
    readonly layout: Layout;
  },
  speaker: Speaker,
): SaidReason {
  const names = positions
    .filter(({ position }) => fit.at.includes(position))
    .map(({ name }) => name);
  if (fit.positions.length === 0) {
    return speaker.said(isAdapter(asked, layout, speaker) ? 'goes-between' : 'no-position', {});
  }
  if (fit.alone === 'open') return speaker.said('unknown', { count: facts });
  if (fit.alone === 'fails') return speaker.said('not-alone', {});
  const signed = fit.positions.flatMap(({ position, judgement }) =>
    fit.at.includes(position.id) ? worksIn(judgement.configuration) : [],
  );
  const mustSign = signed.find(({ work }) => work.signOff !== null);
  if (mustSign !== undefined) {
    const names = [speaker.partName(mustSign.part) ?? mustSign.part];
    return speaker.said('fits-once-signed', { names, text: mustSign.work.signOff ?? '' });
  }
  if (fit.isPresent) return speaker.said('fits-already-there', {});
  const isOrdered = positions.some(
    ({ position, order }) => fit.at.includes(position) && order.length > 0,
  );
  const others = named === 0 ? {} : { count: named };
  if (isOrdered) return speaker.said('fits-made-to-order', others);
  const places = fit.isAmbiguous || positions.length > 1 ? { names } : {};
  return speaker.said('fits', { ...places, ...others });
}
