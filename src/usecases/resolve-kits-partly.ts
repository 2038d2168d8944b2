/**
 * What does the conversion take on a vehicle of which only something is known? The question is
 * asked of every vehicle that it could be; where their routes differ, the fewest questions that
 * settle it.
 */

import { MOST_SOLVED } from '../domain/identify/candidate.js';
import { narrowingAsks, settlingAsks, type ToldBesides } from '../domain/identify/settling.js';
import type { SaidReason } from './answer.js';
import { settlingViews, tallyOf } from './ask-views.js';
import { once } from './cautions.js';
import type { QuestionError } from './errors.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { KitAnswer, KitLineView, RouteView } from './kit-answer.js';
import type { KitInput } from './kit-input.js';
import { kitQuestionOf } from './kit-question.js';
import type {
  GradeCount,
  KitGrade,
  LeadsToGrade,
  PartlyKitAnswer,
  PartlyKitGrade,
  SharedLineView,
  SharedRouteView,
} from './kits-partly-answer.js';
import type { Edition, Library } from './library.js';
import {
  type Alike,
  answersOf,
  askedEach,
  firstAnswer,
  type Meant,
  orNoPlace,
  type PartlyKnown,
  settlingContext,
  toldBesides,
  vehiclesMeant,
} from './meant-vehicles.js';
import { resolveKitQuestion } from './resolve-kits.js';
import { Speaker } from './speaker.js';
import { vehicleLabel } from './vehicle-label.js';

export interface PartlyKitInput extends Omit<KitInput, 'vehicle'>, PartlyKnown {}

export function resolveKitsPartly(library: Library, input: PartlyKitInput): PartlyKitAnswer {
  const edition = library.edition(input.edition);
  const meant = vehiclesMeant(edition, input);
  const list = library.skus(input.offers ?? null);
  const { number: offers } = list;
  // Of one state of the prices for all, whatever is published meanwhile.
  const asked = { library: library.holding(edition, list), edition, input, meant, offers };
  const alike = askedEach(meant, edition, { isSolved: true });
  return alike === null ? tooMany(asked) : solvedEach(alike, asked);
}

interface Asked {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: PartlyKitInput;
  readonly meant: Meant;
  readonly offers: number;
}

/** What a vehicle comes to; the same object for all that come to the very same. */
interface Outcome {
  readonly grade: KitGrade;
  readonly routes: readonly SharedRouteView[];
}

function solvedEach(alike: readonly Alike[], asked: Asked): PartlyKitAnswer {
  const { edition, meant } = asked;
  const answers = answersOf(meant, alike, (vehicle) =>
    resolveKitQuestion(asked.library, inputOf(vehicle, asked)),
  );
  const speaker = speakerFor(asked);
  const outcomeOf = outcomesByAnswer();
  const { all, given } = answers;
  const own = all.map(({ answer, noPlace }) =>
    noPlace === null ? outcomeOf(answer) : withoutPlace(noPlace),
  );
  const settled = all.map(({ candidate }, index) => {
    return { candidate, outcome: own[index] ?? NOTHING };
  });
  const again = {
    ...asked,
    most: MOST_SOLVED,
    read: factsIn(asked.input),
    places: given.flatMap((answer) => answer.routes.flatMap(({ changes }) => changes)),
    ask: (vehicle: string, told: ToldBesides) => {
      const question = { ...asked, input: toldBesides(asked.input, told) };
      return orNoPlace(
        () => outcomeOf(resolveKitQuestion(asked.library, inputOf(vehicle, question))),
        withoutPlace,
      );
    },
    notAsked: NOTHING,
    isOpen: () => false,
  };
  const { asks, isCertain } = settlingAsks(settled, settlingContext(again, alike));
  const [first] = given;
  const { grade, outcomes } = leadsTo(own);
  const isOne = all.length === 1;
  const body = {
    ...headOf(first.named, asked),
    grade,
    complete: given.every((answer) => answer.complete),
    more: given.some((answer) => answer.more),
    summary: isOne ? first.summary : summaryOf(grade, own, speaker),
    routes: grade === 'depends' ? [] : [...(own[0] ?? NOTHING).routes],
    conflict: all.every(({ answer }) => isSame(answer?.conflict ?? null, first.conflict))
      ? first.conflict
      : null,
    vehicles: all.map(({ candidate: { vehicle }, answer }, index) => {
      const { complete, summary } = answer ?? {
        complete: true,
        summary: speaker.said('no-such-place', {}),
      };
      const label = vehicleLabel(vehicle, speaker.lang);
      const { grade: reached } = own[index] ?? NOTHING;
      return { vehicle: vehicle.id, label, grade: reached, complete, summary };
    }),
    counts: { total: all.length },
    outcomes,
    ask: settlingViews(asks, speaker, leadsTo),
    settles: isCertain,
    cautions: once(given.flatMap((answer) => answer.routes.flatMap(({ cautions }) => cautions))),
    kits: isOne ? first : null,
  };
  const said = withValuesHead(edition, speaker, body);
  const textLang = [...said.textLang, ...given.flatMap((answer) => answer.textLang)];
  return { ...said, textLang: [...new Set(textLang)] };
}

function inputOf(vehicle: string, { edition, input, offers }: Asked): KitInput {
  const { known: _, ...question } = input;
  return { ...question, edition: edition.head.number, offers, vehicle };
}

/** Facts that its conditions read, which are written out as rules are. */
function factsIn({ want, avoid }: PartlyKitInput): Set<string> {
  const found = JSON.stringify([want, avoid]).matchAll(/\bfact\.([a-z0-9-]+)/g);
  return new Set([...found].map(([, fact = '']) => fact));
}

/** Nobody is searched for: the questions are those of the list of vehicles. */
function tooMany(asked: Asked): PartlyKitAnswer {
  const { library, edition, meant } = asked;
  const speaker = speakerFor(asked);
  // Whether the question has a fault, and what it names, any of them tells as well.
  const named = firstAnswer(meant, (vehicle) => {
    const asking = { library, edition, input: inputOf(vehicle, asked) };
    return kitQuestionOf(asking, new Faults()).parts.namedViews(speaker);
  });
  const { length: count } = meant.found;
  return withValuesHead(edition, speaker, {
    ...headOf(named, asked),
    grade: null,
    complete: false,
    more: false,
    summary: speaker.said('too-many-to-solve', { count }),
    routes: [],
    conflict: null,
    vehicles: [],
    counts: { total: count },
    outcomes: [{ grade: null, count }],
    ask: settlingViews(narrowingAsks(meant.found, meant.context), speaker, (left) =>
      leadsTo(left.map(() => NOTHING)),
    ),
    settles: false,
    cautions: [],
    kits: null,
  });
}

function speakerFor({ edition, input, meant }: Asked): Speaker {
  const { lang, units } = input;
  const layout = meant.found[0]?.vehicle.layout ?? null;
  return new Speaker({ catalogue: edition.catalogue, layout, lang, units });
}

function headOf(named: KitAnswer['named'], { edition, offers }: Asked) {
  const { currency } = edition.catalogue;
  return { offers, currency, tax: 'net' as const, named };
}

const NOTHING: Outcome = { grade: null, routes: [] };
const NONE: Outcome = { grade: 'none', routes: [] };

/**
 * There is no way of putting something where a vehicle has no place for it. What else the question
 * says of such a place cannot be so on that vehicle, which leaves open what it would take.
 */
function withoutPlace({ faults }: QuestionError): Outcome {
  return faults.every(({ at }) => at?.startsWith('want') === true) ? NONE : NOTHING;
}

/** What an answer comes to: one object for all that are the same. */
function outcomesByAnswer(): (answer: KitAnswer) => Outcome {
  const known = new Map<string, Outcome>();
  return (answer) => {
    const outcome = { grade: gradeOf(answer), routes: answer.routes.map(sharedRoute) };
    const key = JSON.stringify(outcome);
    const same = known.get(key) ?? outcome;
    known.set(key, same);
    return same;
  };
}

function gradeOf({ routes: [first], complete }: KitAnswer): KitGrade {
  return first?.grade ?? (complete ? 'none' : null);
}

function sharedRoute(route: RouteView): SharedRouteView {
  const { grade, changes, totals, order } = route;
  const lines = route.lines.map(sharedLine);
  return { grade, changes, lines, recommended: route.recommended.map(sharedLine), totals, order };
}

function sharedLine(line: KitLineView): SharedLineView {
  const { why: _why, substitutes: _substitutes, alternatives: _alternatives, ...shared } = line;
  return shared;
}

function isSame(a: KitAnswer['conflict'], b: KitAnswer['conflict']): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

const GRADES = ['proven', 'open', 'none', null] as const;

/** One for all of them only where all have the same routes. */
function leadsTo(outcomes: readonly Outcome[]): LeadsToGrade {
  const [first = NOTHING, ...others] = outcomes;
  const grades = outcomes.map(({ grade }) => grade);
  return {
    grade: others.every((one) => one === first) ? first.grade : 'depends',
    outcomes: tallyOf<KitGrade>(grades, GRADES).map(([grade, count]): GradeCount => {
      return { grade, count };
    }),
  };
}

const EACH = {
  proven: 'each-proven',
  open: 'each-open',
  none: 'no-way-for-any',
  depends: 'ways-depend',
} as const;

/** Of several vehicles. */
function summaryOf(
  grade: PartlyKitGrade,
  outcomes: readonly Outcome[],
  speaker: Speaker,
): SaidReason {
  if (grade === null) return speaker.said('no-way-so-far', {});
  const [route] = outcomes[0]?.routes ?? [];
  const isDone = route?.changes.length === 0 && route.lines.length === 0;
  if (isDone && grade !== 'depends') return speaker.said('nothing-to-change', {});
  return speaker.said(EACH[grade], { count: outcomes.length });
}
