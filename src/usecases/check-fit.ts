/**
 * Does this part fit this vehicle? The vehicle as it is, with the part put in its place.
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import type { ReasonData } from '../domain/explain/reason.js';
import { type Companion, type Fit, type FitAt, judgeFit, placesFor } from '../domain/judge/fit.js';
import type { FitAnswer, FitPositionView, SaidReason } from './answer.js';
import { measureViews, notCheckedViews, orderViews } from './asides.js';
import { AskedParts, type FoundPart } from './asked-parts.js';
import { cautionViews, once, worksIn } from './cautions.js';
import { QuestionError } from './errors.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { Edition, Library } from './library.js';
import {
  eachOf,
  namesIn,
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
  const faults = new Faults();
  const names = [input.part, ...Object.values(input.with).flatMap(eachOf), ...namesIn(input)];
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const { catalogue } = parts;
  const vehicle = vehicleOf(edition, input, faults);
  const found = parts.find(input.part, 'part');
  const torque = torqueOf(input.torque, faults);
  if (vehicle === null) return faults.end();
  if (input.position !== null) positionOf(vehicle, input.position, 'position', faults);
  const companions = companionsOf(parts, vehicle, input, faults);
  const said = saidOf(parts, vehicle, input, faults);
  if (found === null) return faults.end();
  const { part } = found;
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
  return answerOf(fit, { input, edition, found, parts }, speaker);
}

function companionsOf(
  parts: AskedParts,
  vehicle: Vehicle,
  input: FitInput,
  faults: Faults,
): Map<string, readonly Companion[]> {
  const companions = new Map<string, readonly Companion[]>();
  for (const [id, companion] of Object.entries(input.with)) {
    const at = `with.${id}`;
    const position = positionOf(vehicle, id, at, faults);
    if (typeof companion === 'string') {
      const part = parts.part(companion, at);
      if (part !== null) companions.set(id, [{ part, hand: null }]);
      continue;
    }
    if (position !== null && !position.isHanded) {
      faults.add(at, 'not-handed', { position: id });
    }
    const pair = HANDS.flatMap((hand) => {
      const part = parts.part(companion[hand], `${at}.${hand}`);
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
  readonly found: FoundPart;
  readonly parts: AskedParts;
}

function answerOf(fit: Fit, asked: Asked, speaker: Speaker): FitAnswer {
  const { input, edition, found, parts } = asked;
  const { part, resolvedBy, supersededBy } = found;
  const best = fit.positions.filter(({ position }) => fit.at.includes(position.id));
  const judgements = best.map(({ judgement }) => judgement);
  const positions = fit.positions.map((one) => positionView(one, speaker));
  const measure = measureViews(judgements, speaker);
  return withValuesHead(edition, speaker, {
    changes: 'no',
    asked: input.part,
    resolvedBy,
    vehicle: input.vehicle,
    part: part.id,
    name: speaker.text(part.name),
    supersededBy,
    offers: parts.offers,
    named: parts.namedViews(speaker),
    alone: fit.alone,
    verdict: fit.verdict,
    complete: true,
    present: fit.isPresent,
    ambiguous: fit.isAmbiguous,
    at: [...fit.at],
    summary: summaryOf(fit, positions, { facts: measure.length, beside: besideIn(input) }, speaker),
    positions,
    kit: null,
    measure,
    notChecked: once(judgements.flatMap((one) => notCheckedViews(one, speaker))),
    cautions: cautionViews(judgements, speaker),
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
function besideIn({ with: companions }: FitInput): number {
  return Object.keys(companions).length;
}

/** It may not fit in its other places: who reads the summary alone is told which are meant. */
function namesOf(positions: readonly FitPositionView[]): Pick<ReasonData, 'names'> {
  return { names: positions.map(({ name }) => name) };
}

function summaryOf(
  fit: Fit,
  positions: readonly FitPositionView[],
  { facts, beside }: { readonly facts: number; readonly beside: number },
  speaker: Speaker,
): SaidReason {
  const best = positions.filter(({ position }) => fit.at.includes(position));
  const places = positions.length > 1 ? namesOf(best) : {};
  if (fit.positions.length === 0) {
    return speaker.said(fit.isAdapter ? 'goes-between' : 'no-position', {});
  }
  if (fit.alone === 'open') return speaker.said('unknown', { ...places, count: facts });
  if (fit.alone === 'fails') return speaker.said('not-alone', {});
  const signed = fit.positions.flatMap(({ position, judgement }) =>
    fit.at.includes(position.id) ? worksIn(judgement.configuration) : [],
  );
  const mustSign = signed.find(({ work }) => work.signOff !== null);
  if (mustSign !== undefined) {
    const names = [speaker.partName(mustSign.part) ?? mustSign.part];
    return speaker.said('fits-once-signed', { names, text: mustSign.work.signOff ?? '' });
  }
  if (fit.isPresent) {
    const there = best.filter(({ present }) => present);
    return speaker.said('fits-already-there', positions.length > 1 ? namesOf(there) : {});
  }
  const isOrdered = best.some(({ order }) => order.length > 0);
  const others = beside === 0 ? {} : { count: beside };
  const code = isOrdered ? 'fits-made-to-order' : 'fits';
  return speaker.said(code, { ...places, ...others });
}
