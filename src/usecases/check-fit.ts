/**
 * Does this part fit this vehicle, and what else is needed? The vehicle as it is, with the part put
 * in its place; and where that does not do, what has to change around it.
 */

import type { Catalogue, Vehicle } from '../domain/catalogue/catalogue.js';
import type { ReasonData } from '../domain/explain/reason.js';
import { type Companion, type Fit, type FitAt, judgeFit, placesFor } from '../domain/judge/fit.js';
import type { Judgement } from '../domain/judge/judge.js';
import type { FitAnswer, FitPositionView, SaidReason } from './answer.js';
import { measureViews, notCheckedViews, orderViews } from './asides.js';
import { AskedParts, type FoundPart } from './asked-parts.js';
import { cautionViews, once, worksIn } from './cautions.js';
import { Faults } from './faults.js';
import {
  type ChangesSought,
  changesAround,
  changesSummary,
  type FitChanges,
} from './fit-changes.js';
import { withValuesHead } from './head.js';
import type { Edition, Library } from './library.js';
import { eachOf, namesIn, positionOf, torqueOf, type VehicleInput, vehicleOf } from './question.js';
import { factsMeasured, knownOf } from './readings.js';
import { Speaker } from './speaker.js';
import { judgedView } from './views.js';

/** A part, or one for each hand of a handed position. */
export type CompanionInput = string | { readonly left: string; readonly right: string };

export interface FitInput extends VehicleInput {
  readonly part: string;
  readonly position: string | null;
  /** Parts fitted beside it, by position; on a handed position one for each hand. */
  readonly with: Readonly<Record<string, CompanionInput>>;
  /** Whether changes around it are looked for; they are where that is left open. */
  readonly changes: 'yes' | 'no' | null;
  /** How many steps the search for them may take; as many as usual where that is left out. */
  readonly steps?: number;
}

/** The part alone, before a word is said of it, and what the names of the question led to. */
export interface JudgedFit {
  readonly input: FitInput;
  readonly edition: Edition;
  readonly vehicle: Vehicle;
  readonly found: FoundPart;
  readonly parts: AskedParts;
  readonly companions: ReadonlyMap<string, readonly Companion[]>;
  /** With the worked and the measured parts of the question. */
  readonly catalogue: Catalogue;
  readonly fit: Fit;
}

export function checkFit(library: Library, input: FitInput): FitAnswer {
  const judged = judgeAlone(library, input);
  const { edition, vehicle, found, companions, catalogue, fit } = judged;
  const speaker = new Speaker({
    catalogue,
    layout: vehicle.layout,
    lang: input.lang,
    units: input.units,
  });
  if (input.changes === 'no' || fit.isAdapter) return answerAlone(fit, judged, speaker);
  const { part } = found;
  const sought = { library, edition, input, part, companions: wantedBeside(companions) };
  return answerChanged(fit, changesAround(fit, sought, speaker), judged, speaker);
}

/** Throws `QuestionError` with every fault of the question. */
export function judgeAlone(library: Library, input: FitInput): JudgedFit {
  const edition = library.edition(input.edition);
  const faults = new Faults();
  const names = [input.part, ...Object.values(input.with).flatMap(eachOf), ...namesIn(input)];
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const facts = { ...input.facts, ...factsMeasured(edition.catalogue, input.measured, faults) };
  const vehicle = vehicleOf(edition, { ...input, facts }, faults);
  const found = parts.find(input.part, 'part');
  const torque = torqueOf(input.torque, faults);
  if (vehicle === null) return faults.end();
  if (input.position !== null) positionOf(vehicle, input.position, 'position', faults);
  const companions = companionsOf(parts, vehicle, input, faults);
  const { said, catalogue } = knownOf({ parts, vehicle, faults }, input);
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
  return { input, edition, vehicle, found, parts, companions, catalogue, fit };
}

/** By id; a part that is made for one hand goes to that one. */
function wantedBeside(
  companions: ReadonlyMap<string, readonly Companion[]>,
): ChangesSought['companions'] {
  const wanted = [...companions].map(([id, beside]) => {
    const parts = beside.map(({ part, hand }) => ({ id: part.id, hand: hand ?? part.hand }));
    return [id, parts] as const;
  });
  return new Map(wanted);
}

/** What the question says is fitted beside the part, resolved. */
export function companionsOf(
  parts: AskedParts,
  vehicle: Vehicle,
  input: Pick<FitInput, 'with'>,
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

type Asked = Pick<JudgedFit, 'input' | 'edition' | 'found' | 'parts'>;

/** The part alone: changes around it were not looked for. */
function answerAlone(fit: Fit, asked: Asked, speaker: Speaker): FitAnswer {
  const { positions, at, alone, verdict, isAmbiguous, isPresent } = fit;
  const best = positions.filter(({ position }) => at.includes(position.id));
  const judgements = best.map(({ judgement }) => judgement);
  const views = positions.map((one) => positionView(one, one.verdict, speaker));
  const measure = measureViews(judgements, speaker);
  const summary = aloneSummary(fit, views, { facts: measure.length, ...besideIn(asked) }, speaker);
  return withValuesHead(asked.edition, speaker, {
    changes: asked.input.changes === 'no' ? 'no' : 'yes',
    ...namesOf(asked, speaker),
    alone,
    verdict,
    complete: true,
    present: isPresent,
    ambiguous: isAmbiguous,
    at: [...at],
    summary,
    positions: views,
    currency: asked.edition.catalogue.currency,
    kit: null,
    conflict: null,
    measure,
    ...besides(judgements, speaker),
  });
}

/** The part with whatever has to change around it. */
function answerChanged(fit: Fit, changes: FitChanges, asked: Asked, speaker: Speaker): FitAnswer {
  const { verdict, rungs, at, isComplete, kit, judgements } = changes;
  const views = fit.positions.map((one, index) =>
    positionView(one, rungs[index]?.verdict ?? null, speaker),
  );
  const [of = null] = judgements;
  const own = of === null ? speaker : speaker.of(of.configuration.catalogue);
  const measure = measureViews(judgements, own);
  const places = at.map(({ position }) => position.id);
  const told = changes.first.map(({ position }) => position.id);
  const alone = changes.first.map(({ judgement }) => judgement);
  const facts = measureViews(alone, speaker).length;
  const isAlone = kit === null && changes.first.some(({ alone }) => alone !== 'fails');
  const summary =
    isAlone || views.length === 0
      ? aloneSummary({ ...fit, at: told }, views, { facts, ...besideIn(asked) }, speaker)
      : changesSummary(changes, placesNamed(views, told), speaker);
  return withValuesHead(asked.edition, speaker, {
    changes: 'yes',
    ...namesOf(asked, speaker),
    ...(kit === null ? {} : { offers: kit.offers }),
    alone: fit.alone,
    verdict,
    complete: isComplete,
    present: at.some(({ isPresent }) => isPresent),
    ambiguous: changes.isAmbiguous,
    at: places,
    summary,
    positions: views,
    currency: asked.edition.catalogue.currency,
    kit: kit?.view ?? null,
    conflict: changes.conflict,
    measure,
    ...besides(judgements, own),
  });
}

/** What the part and those beside it were called, and what they are. */
function namesOf({ input, found, parts }: Asked, speaker: Speaker) {
  const { part, resolvedBy, supersededBy } = found;
  return {
    asked: input.part,
    resolvedBy,
    vehicle: input.vehicle,
    part: part.id,
    name: speaker.text(part.name),
    supersededBy,
    offers: parts.offers,
    named: parts.namedViews(speaker),
  };
}

function besides(judgements: readonly Judgement[], speaker: Speaker) {
  return {
    notChecked: once(judgements.flatMap((one) => notCheckedViews(one, speaker))),
    cautions: cautionViews(judgements, speaker),
  };
}

/** What the change does not touch is given and not listed; the state of the rest is. */
function positionView(
  fit: FitAt,
  verdict: FitPositionView['verdict'],
  speaker: Speaker,
): FitPositionView {
  const { position, judgement, replaces, alone, isPresent } = fit;
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
function besideIn({ input }: Asked): { readonly beside: number } {
  return { beside: Object.keys(input.with).length };
}

/** It may not fit in its other places: who reads the summary alone is told which are meant. */
function placesNamed(
  positions: readonly FitPositionView[],
  at: readonly string[],
): Pick<ReasonData, 'names'> {
  if (positions.length <= 1) return {};
  return { names: positions.filter((one) => at.includes(one.position)).map(({ name }) => name) };
}

function aloneSummary(
  fit: Fit,
  positions: readonly FitPositionView[],
  { facts, beside }: { readonly facts: number; readonly beside: number },
  speaker: Speaker,
): SaidReason {
  const best = positions.filter(({ position }) => fit.at.includes(position));
  const places = placesNamed(positions, fit.at);
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
    const named = placesNamed(
      positions,
      there.map(({ position }) => position),
    );
    return speaker.said('fits-already-there', named);
  }
  const isOrdered = best.some(({ order }) => order.length > 0);
  const others = beside === 0 ? {} : { count: beside };
  const code = isOrdered ? 'fits-made-to-order' : 'fits';
  return speaker.said(code, { ...places, ...others });
}
