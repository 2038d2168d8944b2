/**
 * The checks of a layout, hand by hand, and what becomes of them where a change leaves their
 * values as they were.
 */

import {
  joinNames,
  judgeCondition,
  type Names,
  namesInCheck,
  namesInCondition,
  type View,
} from './condition.js';
import { bandsOf } from './coupling.js';
import { ALWAYS, always, decide } from './decide.js';
import type { Finding, Verdict } from './finding.js';
import type { Found } from './found.js';
import { compare, larger, smaller, textOf } from './fraction.js';
import { eachAdapter, finderIn, type Reader } from './layout-names.js';
import { handsOfMating } from './mating.js';
import {
  best,
  canDecide,
  type Outcome,
  type State,
  type Trust,
  trustAll,
  weigh,
  worst,
} from './outcome.js';
import { basisOfCheck, judgeAlone, type PlannedCheck } from './planned.js';
import { type Hand, handsOf, type Scene, type When } from './scene.js';
import { standingOf, stateOf } from './standing.js';
import { type RawCheck, type Trial, tryOut } from './trial.js';
import { type Dot, distinct, inEach, type Variable, withWords, worldsOf } from './variable.js';

/** Looks at one arrangement, for one hand; for both where `hand` is null and a check is handed. */
export function viewOf(scene: Scene, when: When, hand: Hand | null): View {
  return {
    judge: (raw) => {
      const hands = hand === null ? handsOfNames(scene, namesInCheck(raw, scene.layout)) : [hand];
      return best(hands.map((one) => judgeOnce(raw, scene, when, one)));
    },
    look: (test, id) => {
      if (test === 'empty') return isEmpty(scene, when, id);
      const isTouched = test === 'opened' ? scene.isOpened(id) : scene.isChanged(id);
      const isSo = when === 'judged' && isTouched;
      return isSo !== (test === 'kept') ? 'holds' : 'fails';
    },
    hasAdapter: (mating, part) => scene.adapters(when, mating).parts.includes(part),
  };
}

function isEmpty(scene: Scene, when: When, id: string): Outcome {
  return worst(
    handsOf(scene.position(id)).map((hand) => {
      const { holds } = scene.seat(when, id, hand);
      if (holds === 'as-found') return 'open';
      return holds === 'empty' ? 'holds' : 'fails';
    }),
  );
}

/** A check within a condition; it is not so where it names an empty place. */
function judgeOnce(raw: RawCheck, scene: Scene, when: When, hand: Hand | null): Outcome {
  const reader = { scene, when, hand };
  if (trialOf(raw, { ...reader, trust: trustAll }).empty.length > 0) return 'fails';
  return weigh((trust) => {
    const trial = trialOf(raw, { ...reader, trust });
    return decide([{ trial, condition: ALWAYS, isMeant: () => true }]);
  }).outcome;
}

/** Both hands, if anything named has two. */
export function handsOfNames(scene: Scene, names: Names): readonly (Hand | null)[] {
  const positions = names.positions.some((id) => scene.position(id).handed);
  const matings = names.matings.some((id) => handsOfMating(scene, scene.mating(id)).length > 1);
  return positions || matings ? ['left', 'right'] : [null];
}

function trialOf(raw: RawCheck, reader: Reader): Trial {
  const { document, question } = reader.scene;
  return tryOut(raw, {
    find: finderIn(reader),
    findWith: (factors) => finderIn(reader, factors),
    findEach: (name) => eachAdapter(name, reader),
    bands: bandsOf(document),
    isOnRoad: question.use === 'road',
  });
}

export interface LayoutCheck {
  readonly raw: RawCheck;
  readonly id: string;
  readonly scene: Scene;
  readonly hand: Hand | null;
  /** Everything that it reads, its condition included. */
  readonly names: Names;
  readonly applies: 'holds' | 'open';
  /** Null where the change has broken a loop by emptying a place of it. */
  readonly planned: PlannedCheck | null;
}

export function planLayoutChecks(scene: Scene): LayoutCheck[] {
  return ((scene.layout.checks ?? []) as readonly RawCheck[]).flatMap((raw) =>
    handsOfCheck(raw, scene).flatMap((hand) => {
      const { positions, matings, opened } = namesOfCheck(raw, scene);
      const isOpened = opened.map((id) => scene.isOpened(id)).join();
      const name = `check ${raw.id} ${hand} ${scene.standing(positions, matings)} ${isOpened}`;
      return scene.memory.once(name, () => planCheck(raw, scene, hand)) ?? [];
    }),
  );
}

function handsOfCheck(raw: RawCheck, scene: Scene): readonly (Hand | null)[] {
  return scene.memory.once(`hands of check ${raw.id}`, () =>
    handsOfNames(scene, namesInCheck(raw, scene.layout)),
  );
}

function namesOfCheck(raw: RawCheck, { layout, memory }: Scene): Names {
  return memory.once(`names in check ${raw.id}`, () =>
    joinNames([namesInCheck(raw, layout), namesInCondition(raw.when, layout)]),
  );
}

function planCheck(raw: RawCheck, scene: Scene, hand: Hand | null): LayoutCheck | null {
  const applies = appliesIn(raw, scene, 'judged', hand);
  if (applies === 'fails') return null;
  const id = String(raw.id);
  const names = namesOfCheck(raw, scene);
  const common = { raw, id, scene, hand, names, applies };
  const trialWith = (trust: Trust) => trialOf(raw, { scene, when: 'judged', hand, trust });
  if (trialWith(trustAll).empty.length > 0) {
    return isBroken(raw, scene, hand) ? { ...common, planned: null } : null;
  }
  const planned: PlannedCheck = {
    ...names,
    name: id,
    hand,
    severity: raw.severity ?? 'must',
    joint: null,
    memberWith: (trust) => {
      return { trial: trialWith(trust), condition: always(applies), isMeant: () => true };
    },
  };
  return { ...common, planned };
}

function appliesIn(raw: RawCheck, scene: Scene, when: When, hand: Hand | null): Outcome {
  return raw.when === undefined ? 'holds' : judgeCondition(raw.when, viewOf(scene, when, hand));
}

/** A loop that there was before the change emptied a place of it, or took a face away. */
function isBroken(raw: RawCheck, scene: Scene, hand: Hand | null): boolean {
  if (!('agree' in raw)) return false;
  const before = trialOf(raw, { scene, when: 'present', hand, trust: trustAll });
  return before.empty.length === 0;
}

/** @param outcomes what it may be shown to come to alone, best first. */
export function findCheck(check: LayoutCheck, outcomes: readonly Outcome[]): Finding {
  const { id, hand, names, raw, planned } = check;
  const severity = raw.severity ?? 'must';
  const base = { form: 'check', id, hand, severity, names } as const;
  if (planned === null) {
    const broken: Verdict = {
      computed: 'fails',
      state: 'fails',
      basis: null,
      failsFirstHand: false,
    };
    return { ...base, verdicts: [broken] };
  }
  const alone = judgeAlone(planned);
  const basis = basisOfCheck(planned, alone);
  const failsFirstHand = basis === 'measured' || basis === 'built';
  const verdicts = outcomes.map((computed) => {
    return { computed, state: stateOfCheck(check, planned, computed), basis, failsFirstHand };
  });
  return { ...base, verdicts };
}

/**
 * Where the values are the same, of the same articles or recorded as exactly equal, nothing is
 * new and the check is given. One that fails, and failed on the vehicle as built with values just
 * as wide, tells of bad records and is open.
 */
function stateOfCheck(check: LayoutCheck, planned: PlannedCheck, computed: Outcome): State {
  const { scene, hand, names } = check;
  const standing = standingOf(scene, names, hand);
  const { ignorePresent } = scene.question;
  const isAsked = planned.memberWith(trustAll).trial.sides.some((side) => side.isAsked);
  if (standing !== 'changed') return stateOf(computed, standing, { ignorePresent, isAsked });
  if (computed === 'holds' || isAsked) return computed;
  const decidingBefore = presentTrial(check, canDecide);
  const deciding = planned.memberWith(canDecide).trial;
  if (decidingBefore !== null && isSameChain(decidingBefore, deciding)) return 'given';
  const before = presentTrial(check, trustAll);
  const after = planned.memberWith(trustAll).trial;
  if (computed === 'open' || before === null) return computed;
  const isWorks = names.positions.every((id) =>
    handsIn(scene, id, hand).every((one) => scene.seat('present', id, one).origin === 'works'),
  );
  const isSaid = names.matings.some((id) => scene.adapters('present', id).origin === 'said');
  const isExcused = isWorks && !isSaid && failedBefore(check) && isAsWide(before, after);
  return isExcused ? 'open' : 'fails';
}

function handsIn(scene: Scene, id: string, hand: Hand | null): readonly (Hand | null)[] {
  return hand === null ? handsOf(scene.position(id)) : [hand];
}

/** The check on the vehicle as it is; null where it did not apply in the same way. */
function presentTrial({ raw, scene, hand, applies }: LayoutCheck, trust: Trust): Trial | null {
  if (appliesIn(raw, scene, 'present', hand) !== applies) return null;
  const trial = trialOf(raw, { scene, when: 'present', hand, trust });
  return trial.empty.length > 0 ? null : trial;
}

function failedBefore({ raw, scene, hand, applies }: LayoutCheck): boolean {
  const { outcome } = weigh((trust) => {
    const trial = trialOf(raw, { scene, when: 'present', hand, trust });
    return decide([{ trial, condition: always(applies), isMeant: () => true }]);
  });
  return outcome === 'fails';
}

/** Whether all sides come to the same whatever the unknowns are and whatever is chosen. */
function isSameChain(before: Trial, after: Trial): boolean {
  const words = [...before.words, ...after.words];
  const variables = distinct([...before.variables, ...after.variables]).map((variable) =>
    withWords(variable, words),
  );
  for (const world of worldsOf(variables, someValues)) {
    for (const [index, side] of before.sides.entries()) {
      const other = after.sides[index];
      if (other === undefined || !isSame(side.at(world), other.at(world))) return false;
    }
  }
  return true;
}

/** Three values tell two products of up to two equal factors apart. */
function someValues({ isNumber, ends, grid }: Variable): readonly Dot[] {
  return isNumber ? [...ends, ...grid.slice(ends.length, ends.length + 1)] : grid;
}

function isSame(a: Dot, b: Dot): boolean {
  if (typeof a === 'string' || typeof b === 'string') return a === b;
  return compare(a, b) === 0;
}

/** Whether each side allows the same values as before. */
function isAsWide(before: Trial, after: Trial): boolean {
  return before.sides.every((side, index) => {
    const other = after.sides[index];
    return other !== undefined && allowedBy(side) === allowedBy(other);
  });
}

/** The words, or the least and the greatest number, that a side may come to. */
function allowedBy(side: Found): string {
  const variables = side.variables.map((variable) => withWords(variable, side.words));
  const values = ({ isNumber, ends, grid }: Variable) => (isNumber ? ends : grid);
  const dots = inEach(variables, values, side.at);
  const numbers = dots.filter((dot) => typeof dot !== 'string');
  if (numbers.length < dots.length) return [...new Set(dots.map(String))].sort().join();
  return [numbers.reduce(smaller), numbers.reduce(larger)].map(textOf).join(' to ');
}
