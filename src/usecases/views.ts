/**
 * Constraints as judged, as answers show them: with names, values and sentences. Nothing is
 * decided here.
 */

import type { Statement } from '../domain/catalogue/catalogue.js';
import { NOWHERE } from '../domain/check/reading.js';
import type { CheckResult } from '../domain/check/result.js';
import type { ReasonData } from '../domain/explain/reason.js';
import type {
  ChoiceConstraint,
  Constraint,
  End,
  MatingConstraint,
} from '../domain/judge/constraint.js';
import type {
  CheckView,
  ConstraintView,
  EndView,
  JudgedView,
  MatingView,
  SaidReason,
} from './answer.js';
import type { Speaker } from './speaker.js';

/** The constraints by form; `asked` is the position that the question is about. */
export function judgedView(
  constraints: readonly Constraint[],
  speaker: Speaker,
  asked: string | null = null,
): JudgedView {
  const matings: MatingView[] = [];
  const by: Record<ConstraintView['form'], ConstraintView[]> = {
    check: [],
    choice: [],
    rule: [],
    place: [],
    face: [],
    statement: [],
  };
  for (const constraint of constraints) {
    if (constraint.form === 'mating') matings.push(matingView(constraint, speaker, asked));
    else by[constraint.form].push(constraintView(constraint, speaker));
  }
  return {
    matings,
    checks: by.check,
    choices: by.choice,
    rules: by.rule,
    places: [...by.place, ...by.face],
    statements: by.statement,
  };
}

export function checkData(result: CheckResult, speaker: Speaker): ReasonData {
  const { check, left, right, margin } = result;
  const value = (shown: CheckResult['left']) =>
    speaker.namedValue(shown.address, speaker.value(shown).text, shown.term);
  const word = speaker.marginWord(margin);
  return {
    left: value(left),
    ...(right === null ? {} : { right: value(right) }),
    ...(check.text === null ? {} : { says: speaker.text(check.text) }),
    ...(word === undefined ? {} : { margin: word }),
  };
}

export function checkView(result: CheckResult, speaker: Speaker): CheckView {
  const { check, outcome: state, left, right, margin, basis, code } = result;
  const said = speaker.said(code, checkData(result, speaker));
  return {
    check: check.id,
    primitive: check.spelling,
    severity: check.severity,
    state,
    left: speaker.side(left),
    right: right === null ? null : speaker.side(right),
    margin: margin === null ? null : speaker.margin(margin),
    basis,
    ...said,
    caution: cautionOf(result, said, speaker),
  };
}

/** What a check warns of: a loop in its caution band, or a caution that does not hold. */
function cautionOf(result: CheckResult, said: SaidReason, speaker: Speaker): SaidReason | null {
  if (result.caution !== null) {
    return speaker.said(result.caution, checkData(result, speaker));
  }
  if (result.check.severity !== 'caution' || result.outcome === 'holds') return null;
  const code = result.outcome === 'fails' ? 'caution-fails' : 'caution-open';
  return speaker.said(code, { ...said.data, text: said.text });
}

function endView(end: End, speaker: Speaker): EndView {
  const part = end.occupant.is === 'part' ? end.occupant.part : null;
  return {
    position: end.position,
    positionName: speaker.positionName(end.position),
    part,
    name: speaker.partName(part),
    interface: end.interface,
    occupant: end.occupant.is,
  };
}

export function matingView(
  constraint: MatingConstraint,
  speaker: Speaker,
  asked: string | null,
): MatingView {
  const { id, hand, state, computed, ends, adapters, basis, builtPair, statement } = constraint;
  const said = speaker.said(constraint.code, matingData(constraint, speaker));
  const views = ends.map((end) => endView(end, speaker));
  const across = ends.findIndex((end) => end.position !== asked);
  return {
    mating: id,
    hand,
    state,
    computed,
    ends: views,
    other: asked === null ? null : (views[across] ?? null),
    adapters: adapters.map((part) => ({ part, name: speaker.partName(part) ?? part })),
    basis,
    builtOn: [...(builtPair?.vehicles ?? [])],
    statement: statement?.id ?? null,
    ...said,
    checks: constraint.checks.map((result) => checkView(result, speaker)),
  };
}

/** A mating is said by the check that decides it, with both parts' names beside. */
function matingData(constraint: MatingConstraint, speaker: Speaker): ReasonData {
  const { ends, joints, code, builtPair, statement, missing, checks } = constraint;
  const decisive = joints.find((joint) => joint.code === code);
  const [a, b] = decisive?.ends ?? ends;
  const named = [speaker.namedEnd(a), speaker.namedEnd(b)] as const;
  const check = checks.find((result) => result.code === code && result.outcome !== 'holds');
  const [absent] = missing;
  const needing = [a, b].find((end) => isNeeding(end, speaker)) ?? a;
  const part = absent === undefined ? speaker.namedEnd(needing) : speaker.named(absent);
  return {
    ...(check === undefined ? {} : checkData(check, speaker)),
    a: named[0],
    b: named[1],
    part,
    ...(builtPair === null ? {} : { vehicles: builtPair.vehicles }),
    ...statementData(statement),
  };
}

function isNeeding(end: End, speaker: Speaker): boolean {
  if (end.occupant.is !== 'part') return false;
  const face = speaker.catalogue.parts.get(end.occupant.part)?.faces.get(end.interface);
  return face !== undefined && !face.isAbsent && !face.isOptional;
}

function statementData(statement: Statement | null): ReasonData {
  if (statement === null) return {};
  const { id, evidence } = statement;
  const { basis, source } = evidence;
  return { statement: id, basis, ...(source === undefined ? {} : { text: source }) };
}

export function constraintView(
  constraint: Exclude<Constraint, MatingConstraint>,
  speaker: Speaker,
): ConstraintView {
  const { id, form, hand, positions, severity, state, computed, basis, code } = constraint;
  const said = speaker.said(code, constraintData(constraint, speaker));
  const statement = 'statement' in constraint ? (constraint.statement?.id ?? null) : null;
  return {
    id,
    form,
    hand,
    positions: [...positions],
    severity,
    state,
    computed,
    basis,
    statement,
    ...said,
    checks: constraint.checks.map((result) => checkView(result, speaker)),
  };
}

function constraintData(
  constraint: Exclude<Constraint, MatingConstraint>,
  speaker: Speaker,
): ReasonData {
  switch (constraint.form) {
    case 'check': {
      const [result] = constraint.checks;
      const { emptied } = constraint;
      return {
        ...(result === undefined ? {} : checkData(result, speaker)),
        ...(emptied === null
          ? {}
          : { part: speaker.named({ ...NOWHERE, position: emptied, hand: constraint.hand }) }),
        ...statementData(constraint.statement),
      };
    }
    case 'choice':
      return choiceData(constraint, speaker);
    case 'rule':
      return { because: speaker.text(constraint.because) };
    case 'place': {
      const [position = null] = constraint.positions;
      const { part, hand } = constraint;
      return { part: speaker.named({ ...NOWHERE, position, part, hand }) };
    }
    case 'face': {
      const [position = null] = constraint.positions;
      const { part, hand, interface: face } = constraint;
      return { part: speaker.named({ ...NOWHERE, position, part, hand, interface: face }) };
    }
    case 'statement':
      return statementData(constraint.statement);
  }
}

function choiceData(constraint: ChoiceConstraint, speaker: Speaker): ReasonData {
  const order = constraint.choices.find((choice) => choice.order !== null);
  if (order === undefined || order.order === null) return { between: constraint.between };
  const { text } = speaker.interval(order.order, order.dimension);
  return { between: constraint.between, order: text ?? '' };
}
