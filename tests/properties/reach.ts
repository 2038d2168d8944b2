/**
 * What the random cases are for: each thing that a judge has to weigh, with the share of all
 * questions in which it must be met at least, in percent.
 */

import type { ValueRecord } from '../../src/domain/catalogue/document.js';
import type { Constraint } from '../../src/domain/judge/constraint.js';
import type { Judgement } from '../../src/domain/judge/judge.js';
import type { Question } from '../oracle/scene.js';
import type { Case } from './small-document.js';

export interface Asked {
  readonly document: Case['document'];
  readonly question: Question;
  readonly judgement: Judgement;
}

type Test = (asked: Asked) => boolean;
type Reached = readonly [name: string, least: number, test: Test];

const some =
  (test: (constraint: Constraint) => boolean): Test =>
  ({ judgement }) =>
    judgement.constraints.some(test);

const coded = (code: string) => some((one) => one.code === code);

const checked = (primitive: string) =>
  some(
    ({ form, checks }) =>
      form === 'check' && checks.some(({ check }) => check.primitive === primitive),
  );

/** Whether something recorded of a part that stands there, or sits between, is so. */
function recorded(test: (value: ValueRecord) => boolean): Test {
  return ({ document, judgement: { configuration } }) => {
    const { seats, adapters } = configuration.judged;
    const standing = [...seats.values()].flatMap((one) =>
      one.hands ? [one.left.occupant, one.right.occupant] : [one.seat.occupant],
    );
    const ids = new Set([
      ...standing.flatMap((one) => (one.is === 'part' ? [one.part] : [])),
      ...[...adapters.values()].flatMap(({ parts }) => parts),
    ]);
    return (document.parts ?? [])
      .filter(({ id }) => ids.has(id))
      .flatMap(({ values = {}, interfaces = {} }) => [
        ...Object.values(values),
        ...Object.values(interfaces).flatMap((face) => Object.values(face) as ValueRecord[]),
      ])
      .some(test);
  };
}

function choosing(from: 'range' | 'set'): Test {
  return recorded((value) => {
    if (typeof value !== 'object' || Array.isArray(value) || !('choose' in value)) return false;
    return 'of' in value.choose === (from === 'set');
  });
}

function placed(test: (position: { count: number; isOptional: boolean }) => boolean): Test {
  return ({ judgement }) => [...judgement.configuration.layout.positions.values()].some(test);
}

const hasUnidentified: Test = ({ judgement: { configuration } }) =>
  [...configuration.judged.seats.values()].some((one) => {
    const seats = one.hands ? [one.left, one.right] : [one.seat];
    return seats.some(({ occupant }) => occupant.is === 'as-found');
  });

const inRow = (count: number) =>
  some((one) => one.form === 'mating' && one.adapters.length === count);

/** Of a choice of several checks; what suits one alone is no matter of sharing. */
const isShared = (one: Constraint) => one.form === 'choice' && one.checks.length > 1;

const STATES = ['holds', 'open', 'fails', 'given'] as const;

function statesOf(form: Constraint['form'], least: number): Reached[] {
  return STATES.map((state) => [
    `a ${form} that is ${state}`,
    least,
    some((one) => one.form === form && one.state === state),
  ]);
}

export const REACHED: readonly Reached[] = [
  ...(['holds', 'open', 'fails'] as const).map((outcome): Reached => {
    return [`a whole that is ${outcome}`, 6, ({ judgement }) => judgement.outcome === outcome];
  }),
  ...statesOf('mating', 10),
  ...statesOf('check', 5),
  ...statesOf('choice', 0.3),
  ...statesOf('rule', 3),
  ['one adapter', 20, inRow(1)],
  ['two adapters in a row', 15, inRow(2)],
  ['a range to choose from', 30, choosing('range')],
  ['a set to choose from', 30, choosing('set')],
  ['a choice that several checks share', 2, some(isShared)],
  ['a loop', 8, checked('agree')],
  [
    'a loop with a word of caution',
    0.2,
    some(({ checks }) => checks.some(({ caution }) => caution !== null)),
  ],
  ['a load', 2, checked('carries')],
  ['a clearance', 15, checked('clearance')],
  ['an equality', 5, checked('equal')],
  ['one of several', 8, checked('one-of')],
  ['a pair of hands', 15, some(({ hand }) => hand !== null)],
  ['a counted place', 20, placed(({ count }) => count > 1)],
  ['an optional place', 30, placed(({ isOptional }) => isOptional)],
  ['a place that is emptied', 10, ({ question }) => Object.values(question.chosen).includes(null)],
  ['a needed place that is empty', 8, coded('needed-place-empty')],
  ['something nobody identified', 12, hasUnidentified],
  ['a value that nobody recorded', 15, coded('not-recorded')],
  ['a reading too coarse', 4, coded('not-precise-enough')],
  ['evidence too weak', 10, coded('evidence-too-weak')],
  ['a pair as built', 10, coded('as-built')],
  ['records against what was built', 8, coded('contradicts-as-built')],
  ['a statement that settles', 0.5, coded('stated')],
  ['a statement that denies', 0.4, some(({ form }) => form === 'statement')],
  ['records against a statement', 0.3, coded('contradicts-statement')],
  ['a rule that is met', 8, coded('rule-met')],
  ['a rule that needs', 3, coded('rule-needs')],
  ['a rule that excludes', 2, coded('rule-excludes')],
  ['a loop that the change breaks', 1, coded('chain-broken')],
  ['a check that failed as built too', 0.1, coded('fails-as-built-too')],
  ['something that hangs on a fact', 2, coded('told-by-fact')],
  ['the same for each value of a fact', 0.4, coded('same-for-each-fact')],
  ['a face on no mating', 20, some(({ form }) => form === 'face')],
  ['something said of the vehicle', 6, ({ question }) => Object.keys(question.said).length > 0],
  ['a torque asked for', 10, ({ question }) => question.torque !== null],
];
