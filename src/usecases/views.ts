/**
 * Constraints as judged, as answers show them: with names, values and sentences. Nothing is
 * decided here.
 */

import type { Statement } from '../domain/catalogue/catalogue.js';
import { NOWHERE } from '../domain/check/reading.js';
import type { CheckResult } from '../domain/check/result.js';
import type { Shown } from '../domain/check/shown.js';
import type { NamedValue, ReasonData } from '../domain/explain/reason.js';
import type { Constraint, End, MatingConstraint } from '../domain/judge/constraint.js';
import type {
  CheckView,
  ConstraintView,
  EndView,
  JudgedView,
  MatingView,
  SaidReason,
  SideView,
} from './answer.js';
import { checkData, choiceData } from './check-words.js';
import type { Speaker } from './speaker.js';
import { vehicleName } from './vehicle-label.js';

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

export function checkView(result: CheckResult, speaker: Speaker): CheckView {
  const { check, outcome: state, left, right, margin, basis, code } = result;
  const data = checkData(result, speaker);
  const said = bare(speaker.said(code, data));
  return {
    check: check.id,
    primitive: check.spelling,
    severity: check.severity,
    state,
    left: sideView(left, data.left, speaker),
    right: right === null ? null : sideView(right, data.right, speaker),
    margin: margin === null ? null : speaker.margin(margin),
    basis,
    ...said,
    caution: cautionOf(result, said, speaker),
  };
}

/** One side with its value exactly, and as the sentence names and says it. */
function sideView(side: Shown, named: NamedValue | undefined, speaker: Speaker): SideView {
  const { address, term } = side;
  const { position, hand, part, interface: face, parameter } = address;
  return {
    position,
    hand,
    part,
    name: speaker.partName(part),
    interface: face,
    parameter,
    parameterName: named?.parameterName ?? null,
    term,
    value: speaker.value(side),
    said: named?.value?.text ?? null,
  };
}

/** A reason whose two sides stand beside it in the view: its data need not say them again. */
function bare({ code, data, text }: SaidReason): SaidReason {
  const { left: _left, right: _right, a: _a, b: _b, ...rest } = data;
  return { code, data: rest, text };
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

/**
 * Why a constraint is in its state, with both sides and both ends in the data; or the facts that
 * nobody told, where it is told over all their values.
 */
export function reasonOf(constraint: Constraint, speaker: Speaker): SaidReason {
  const { supposed, code } = constraint;
  if (supposed === undefined) return speaker.said(code, ownDataOf(constraint, speaker));
  const names = supposed.facts.map((fact) => speaker.factName(fact));
  if (code === 'told-by-fact') return speaker.said(code, { names });
  const { text } = speaker.said(supposed.code, ownDataOf(constraint, speaker));
  return speaker.said(code, { names, text });
}

/** The data of the reason by itself, whatever facts it hangs on. */
export function ownDataOf({ supposed, ...constraint }: Constraint, speaker: Speaker): ReasonData {
  const itself = { ...constraint, code: supposed?.code ?? constraint.code };
  return itself.form === 'mating' ? matingData(itself, speaker) : constraintData(itself, speaker);
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
  const said = bare(reasonOf(constraint, speaker));
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
  const { joints, code, builtPair, statement, missing, adapters } = constraint;
  const isWhole = code === 'meets' && adapters.length > 0;
  const decisive = isWhole ? undefined : joints.find((joint) => joint.code === code);
  const [a, b] = decisive?.ends ?? constraint.ends;
  const check = decisiveCheck(constraint);
  const [absent] = missing;
  const needing = [a, b].find((end) => isNeeding(end, speaker)) ?? a;
  const part = absent === undefined ? speaker.namedEnd(needing) : speaker.named(absent);
  return {
    ...(check === undefined ? {} : checkData(check, speaker)),
    a: speaker.namedEnd(a),
    b: speaker.namedEnd(b),
    part,
    ...(isWhole ? { adapters: adapters.map((id) => speaker.partName(id) ?? id) } : {}),
    ...(builtPair === null
      ? {}
      : { vehicles: builtPair.vehicles.map((id) => nameOf(id, speaker)) }),
    ...statementData(statement),
  };
}

/** The check that a mating rests on; where a statement denies it, the one that fails. */
function decisiveCheck({ checks, code }: MatingConstraint): CheckResult | undefined {
  if (code !== 'contradicts-statement') {
    return checks.find((result) => result.code === code && result.outcome !== 'holds');
  }
  return checks.find(({ outcome, check }) => outcome === 'fails' && check.severity === 'must');
}

function nameOf(id: string, { catalogue }: Speaker): string {
  const vehicle = catalogue.vehicles.get(id);
  return vehicle === undefined ? id : vehicleName(vehicle);
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
  const { id, form, hand, positions, severity, state, computed, basis } = constraint;
  const said = bare(reasonOf(constraint, speaker));
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
