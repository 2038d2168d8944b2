/**
 * The changes around a part that would make it fit: the kit question that asking for the part comes
 * to, place by place, and what follows for the verdict.
 *
 * A place where the part fits as the vehicle is has no kit. The kit of any other place is the first
 * route of the kit question for the part and its companions there, with every default.
 */

import type { Position } from '../domain/catalogue/catalogue.js';
import { OUTCOMES } from '../domain/check/state.js';
import type { ReasonData } from '../domain/explain/reason.js';
import type { Fit, FitAt } from '../domain/judge/fit.js';
import type { Judgement } from '../domain/judge/judge.js';
import { type ChangedVerdict, overallOf, type Rung, rungOf } from '../domain/kit/fit-ladder.js';
import type { SaidReason } from './answer.js';
import type { FitInput } from './check-fit.js';
import type { ConflictView } from './conflict-answer.js';
import { conflictView } from './conflict-views.js';
import type { RouteView } from './kit-answer.js';
import { type KitInput, USUAL_KIT, type WantedPartInput } from './kit-input.js';
import { routeView } from './kit-views.js';
import type { Edition, Library } from './library.js';
import { conflictIn, type FoundKits, findKits } from './resolve-kits.js';
import type { Speaker } from './speaker.js';

/** What was looked for: the part at each place, and what stands beside it, by ids. */
export interface ChangesSought {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: FitInput;
  readonly part: WantedId;
  readonly companions: ReadonlyMap<string, readonly WantedId[]>;
}

export interface WantedId {
  readonly id: string;
  readonly hand: WantedPartInput['hand'];
}

export interface FitChanges {
  readonly verdict: ChangedVerdict;
  /** In the order of the places of the fit. */
  readonly rungs: readonly Rung[];
  readonly at: readonly FitAt[];
  /** Those of them where the part does best by itself: what is said in short is of these. */
  readonly first: readonly FitAt[];
  readonly isAmbiguous: boolean;
  readonly isComplete: boolean;
  readonly kit: FitKit | null;
  /** Why it does not fit, at the first of these places; null where it may. */
  readonly conflict: ConflictView | null;
  /** What the verdict rests on: the part alone, or with the changes of its kit. */
  readonly judgements: readonly Judgement[];
}

export interface FitKit {
  /** The place that the part is put in. */
  readonly position: string;
  readonly view: RouteView;
  /** Of the price and stock list that its prices are from. */
  readonly offers: number;
}

export function changesAround(fit: Fit, sought: ChangesSought, speaker: Speaker): FitChanges {
  const found = fit.positions.map(({ position, alone }) =>
    alone === 'holds' ? null : kitsAt(position, sought),
  );
  const rungs = fit.positions.map(({ alone }, index) => rungOf(alone, found[index]?.kits ?? null));
  const { verdict, at, isAmbiguous } = overallOf(rungs);
  const best = at.flatMap((index) => fit.positions[index] ?? []);
  const rank = OUTCOMES.find((outcome) => best.some(({ alone }) => alone === outcome));
  const first = best.filter(({ alone }) => alone === rank);
  const judgements = at.flatMap((index) => {
    const [own, rung] = [fit.positions[index], rungs[index]];
    if (own === undefined) return [];
    return own.alone === 'fails' ? (rung?.route?.judgement ?? own.judgement) : own.judgement;
  });
  const isComplete = rungs.every((rung) => rung.isComplete);
  const told = at.filter((index) => fit.positions[index]?.alone === rank);
  const kit = kitOf(fit, told, rungs, found, speaker);
  const conflict = verdict === 'does-not-fit' ? whyNot(at, found, speaker) : null;
  return { verdict, rungs, at: best, first, isAmbiguous, isComplete, kit, conflict, judgements };
}

function whyNot(
  at: readonly number[],
  found: readonly (FoundKits | null)[],
  speaker: Speaker,
): ConflictView | null {
  const [first] = at.flatMap((index) => found[index] ?? []);
  if (first === undefined) return null;
  const { kits, asked, telling } = first;
  const conflict = conflictIn(kits, asked.question);
  return conflict === null ? null : conflictView(conflict, telling, speaker);
}

function kitsAt(position: Position, sought: ChangesSought): FoundKits {
  const { library, edition, input, part, companions } = sought;
  const beside = [...companions].flatMap(([id, parts]) =>
    id === position.id ? [] : parts.map((one) => wanted(one, id, sought)),
  );
  const { with: _with, part: _part, position: _position, changes: _changes, ...common } = input;
  const want = [wanted(part, position.id, sought), ...beside];
  const { steps = USUAL_KIT.steps } = input;
  const question: KitInput = { ...common, ...USUAL_KIT, want, steps };
  return findKits(library, edition, question);
}

function wanted({ id, hand }: WantedId, position: string, { edition, input }: ChangesSought) {
  const { layout } = edition.catalogue.vehicles.get(input.vehicle) ?? {};
  const isHanded = layout?.positions.get(position)?.isHanded === true;
  return { part: id, position, hand: isHanded ? hand : null, renew: false };
}

/** Of the first of these places that has one. */
function kitOf(
  { positions }: Fit,
  at: readonly number[],
  rungs: readonly Rung[],
  found: readonly (FoundKits | null)[],
  speaker: Speaker,
): FitKit | null {
  const first = at.find((index) => rungs[index]?.route != null);
  const place = first === undefined ? undefined : positions[first]?.position;
  const kits = first === undefined ? null : (found[first] ?? null);
  if (kits === null || place === undefined) return null;
  const { telling, asked } = kits;
  const view = routeView(kits.kits, 0, telling, speaker);
  return { position: place.id, view, offers: asked.offers };
}

/** In one sentence; `names` are of the places that it is about, where there are others. */
export function changesSummary(
  { verdict, kit }: FitChanges,
  names: Pick<ReasonData, 'names'>,
  speaker: Speaker,
): SaidReason {
  if (verdict === 'does-not-fit') return speaker.said('does-not-fit', {});
  if (kit === null) return speaker.said('search-cut-short', {});
  const { changes, totals, measure, grade } = kit.view;
  const places = changes.filter((id) => id !== kit.position).length;
  const { signOff } = totals;
  const who = signOff === null ? names : { text: signOff };
  if (grade === 'open') {
    const facts = measure.filter(({ purpose }) => purpose !== 'to-order').length;
    return speaker.said('may-fit-with-changes', { places, ...(facts === 0 ? {} : { facts }) });
  }
  const code = verdict === 'unknown' ? 'fits-unless-alone' : 'fits-with-changes';
  return speaker.said(code, { places, ...who });
}
