/**
 * Whether two faces meet: the checks of their kind, with the values of both. This is the joint
 * itself; what a mating makes of empty and unrecorded ends, adapters and evidence is `mating.ts`.
 */

import type { Face, Kind, Parameter, Part, Values } from '../catalogue/catalogue.js';
import type { Text } from '../catalogue/document.js';
import { ENDS } from '../catalogue/scope.js';
import { shapeOfSpec } from '../catalogue/value.js';
import type { Check, Condition } from '../check/check.js';
import { termsOf } from '../check/check.js';
import type { NotApplying } from '../check/evaluate.js';
import { type Environment, leavesOf, type Setting } from '../check/evaluator.js';
import type { FactAddress, Reading } from '../check/reading.js';
import { type CheckResult, judgeCheck } from '../check/result.js';
import { allOf, anyOf, negation, type Outcome } from '../check/state.js';
import type { Reference } from '../check/term.js';
import { readingOf, type Where } from './readings.js';

/** One recorded face of one piece. */
export interface FaceOf {
  readonly part: Part;
  readonly face: Face;
  readonly piece: string;
  readonly address: FactAddress;
}

/** A joint that could be checked: both faces of one kind, on opposite sides. */
export interface Joint {
  readonly kind: Kind;
  readonly ends: readonly [FaceOf, FaceOf];
  readonly environment: Environment;
  /** The checks that may apply; those whose optional values nobody recorded are in `silent`. */
  readonly checks: readonly Check[];
  /** Whether one of them applies: its condition, and what the picked alternatives record. */
  readonly applies: (check: Check, setting: Setting) => Outcome;
  /** Names of the optional parameters that were not recorded. */
  readonly silent: readonly Text[];
}

/** Why two recorded faces cannot even be compared. */
export interface Misfit {
  readonly code: 'different-kinds' | 'same-side';
  readonly ends: readonly [FaceOf, FaceOf];
}

/** Pairs two recorded faces, or says why they are no pair. */
export function pairFaces(a: FaceOf, b: FaceOf): Joint | Misfit {
  const { kind } = a.face;
  if (kind === null || b.face.kind === null) throw new Error('an absent face cannot be paired');
  const ends = [a, b] as const;
  if (kind.id !== b.face.kind.id) return { code: 'different-kinds', ends };
  if (kind.sides !== null && a.face.side === b.face.side) return { code: 'same-side', ends };
  const environment = jointEnvironment(kind, ends);
  const applies = conditionIn({ ends, environment });
  const applying = kind.checks
    .filter((check) => !isRuledOut(check, ends, applies))
    .map((check) => ({ check, silent: silentOf(check, kind, environment, ALL_SILENT) }));
  const checks = applying.filter(({ silent }) => silent.length === 0).map(({ check }) => check);
  const silent = [...new Set(applying.flatMap((item) => item.silent))].map((id) =>
    nameOf(kind, id),
  );
  const isFixed = ends.every(({ face }) => face.alternatives.length === 1);
  const appliesTo = (check: Check, setting: Setting): Outcome => {
    if (isFixed) return applies(check.when, setting);
    const isSilentHere = silentOf(check, kind, environment, pickedSilent(setting)).length > 0;
    return isSilentHere ? 'fails' : applies(check.when, setting);
  };
  return { kind, ends, environment, checks, applies: appliesTo, silent };
}

function nameOf(kind: Kind, parameter: string): Text {
  return kind.parameters.get(parameter)?.name ?? parameter.replaceAll('-', ' ');
}

export function choiceOf(end: FaceOf): string {
  return `${end.piece} ${end.face.name}`;
}

function jointEnvironment(kind: Kind, ends: readonly [FaceOf, FaceOf]): Environment {
  const names = kind.sides ?? ENDS;
  const bySide = new Map(
    ends.map((end, index) => [end.face.side ?? names[index] ?? '', end] as const),
  );
  // A check is read several times; references are the compiled kind's own, so they tell it.
  const known = new Map<Reference, Reading>();
  return {
    lookup: (reference) => {
      if (reference.of !== 'side') throw new Error('a kind reads its two sides only');
      let reading = known.get(reference);
      if (reading === undefined) {
        const end = bySide.get(reference.side);
        if (end === undefined) throw new Error(`no face on the side ${reference.side}`);
        reading = faceReading(end, kind, reference.parameter);
        known.set(reference, reading);
      }
      return reading;
    },
  };
}

/** The value of one parameter of a face; a choice where the face has alternatives. */
export function faceReading(end: FaceOf, kind: Kind, parameter: string): Reading {
  const spec = kind.parameters.get(parameter);
  if (spec === undefined) throw new Error(`${kind.id} has no parameter ${parameter}`);
  const { face, part } = end;
  const where: Where = {
    address: { ...end.address, interface: face.name, parameter },
    article: part.id,
    piece: end.piece,
    path: `${face.name}.${parameter}`,
  };
  const values = face.alternatives.map((own: Values) => own.get(parameter));
  const [common] = values;
  // What all alternatives share is no matter of choosing among them.
  if (values.every((value) => value === common)) return readingOf(common, spec, where);
  const options = values.map((value, index) => {
    const reading = readingOf(value, spec, { ...where, path: `${where.path}#${index}` });
    const { form } = reading;
    if (form !== 'choice' && form !== 'list' && form !== 'several' && form !== 'empty')
      return reading;
    throw new Error('sets in alternatives were spelled out, and kinds have no lists');
  });
  return {
    form: 'choice',
    key: null,
    choice: choiceOf(end),
    options,
    basis: face.evidence.basis,
    address: where.address,
    text: null,
    tool: spec.tool,
  };
}

type Applies = (condition: Condition | null, setting: Setting) => Outcome;

/** Conditions of a kind read recorded values, and nothing of the question. */
const AS_RECORDED: Setting = {
  couplings: new Map(),
  use: null,
  trusts: () => true,
  picks: new Map(),
  narrowed: new Map(),
};

/** A condition that fails, whatever is picked: the check is none of this joint's. */
function isRuledOut(check: Check, ends: Joint['ends'], applies: Applies): boolean {
  if (check.when === null || ends.some(({ face }) => face.alternatives.length > 1)) return false;
  return applies(check.when, AS_RECORDED) === 'fails';
}

/** Of alternatives, which have to leave a value out for it to be silent. */
interface Silence {
  readonly isSilent: (reading: Reading) => boolean;
}

/** Whatever is picked: then a check is none of the joint's. */
const ALL_SILENT: Silence = {
  isSilent: (reading) =>
    reading.form === 'choice' ? reading.options.every(isUnsaid) : isUnsaid(reading),
};

/** The picked one; where none is picked yet, any of them. */
function pickedSilent({ picks }: Setting): Silence {
  return {
    isSilent: (reading) => {
      if (reading.form !== 'choice') return isUnsaid(reading);
      const pick = picks.get(reading.choice);
      const picked = pick === undefined ? undefined : reading.options[pick];
      return picked === undefined ? reading.options.some(isUnsaid) : isUnsaid(picked);
    },
  };
}

/** The parameters that a check names, that a face does not record and need not. */
function silentOf(check: Check, kind: Kind, environment: Environment, silence: Silence): string[] {
  return termsOf(check)
    .flatMap(leavesOf)
    .flatMap(({ reference, shape }) => {
      if (reference.of !== 'side') return [];
      const { parameter: id } = reference;
      const parameter = kind.parameters.get(id);
      if (parameter === undefined) return [];
      if (!silence.isSilent(environment.lookup(reference, shape))) return [];
      const isNotNeeded =
        parameter.isOptional || isSaidOtherwise(parameter, kind, environment, silence);
      return isNotNeeded ? [id] : [];
    });
}

/** Whether both faces record what says the same in another way. */
function isSaidOtherwise(
  { unless }: Parameter,
  kind: Kind,
  environment: Environment,
  silence: Silence,
): boolean {
  if (unless.length === 0) return false;
  return unless.every((id) => {
    const spec = kind.parameters.get(id);
    if (spec === undefined) return false;
    const sides = spec.of === null ? (kind.sides ?? ENDS) : [spec.of];
    return sides.every((side) => {
      const reference = { of: 'side', side, parameter: id } as const;
      const reading = environment.lookup(reference, shapeOfSpec(spec));
      // Before anything is picked, alternatives say it only if all of them do.
      if (silence === ALL_SILENT && reading.form === 'choice') {
        return !reading.options.some(isUnsaid);
      }
      return !silence.isSilent(reading);
    });
  });
}

function isUnsaid(reading: Reading): boolean {
  if (reading.form === 'code') return reading.codes === null;
  if (reading.form === 'points') return reading.points === null;
  return reading.form === 'number' && !reading.recorded;
}

/**
 * Whether a check of a kind applies in a joint. Its condition is a question of its own and weighs
 * all evidence itself, however little of it counts for the check. Where neither face leaves one of
 * several to be picked, that is the same for every pick, so it is judged once.
 */
export function conditionIn(joint: Pick<Joint, 'ends' | 'environment'>) {
  const isFixed = joint.ends.every(({ face }) => !hasPicks(face));
  const known = new Map<Condition, Outcome>();
  return (condition: Condition | null, setting: Setting): Outcome => {
    if (condition === null) return 'holds';
    const own = { ...setting, trusts: AS_RECORDED.trusts };
    if (!isFixed) return valueCondition(condition, joint.environment, own);
    let outcome = known.get(condition);
    if (outcome === undefined) {
      outcome = valueCondition(condition, joint.environment, own);
      known.set(condition, outcome);
    }
    return outcome;
  };
}

/** Whether one of several alternatives, or of several values, is to be picked. */
function hasPicks({ alternatives: [first, ...others] }: Face): boolean {
  const values = [...(first?.values() ?? [])];
  return others.length > 0 || values.some(({ form }) => form === 'set');
}

/** Judges the condition under which a check applies, where it is about values only. */
function valueCondition(condition: Condition, environment: Environment, setting: Setting): Outcome {
  switch (condition.test) {
    case 'all':
      return allOf(condition.of.map((one) => valueCondition(one, environment, setting)));
    case 'any':
      return anyOf(condition.of.map((one) => valueCondition(one, environment, setting)));
    case 'not':
      return negation(valueCondition(condition.of, environment, setting));
    case 'check': {
      const result = judgeCheck({ check: condition.check, environment }, setting);
      return 'empty' in result ? 'fails' : result.outcome;
    }
    default:
      throw new Error('a kind knows no positions');
  }
}

export function appliesResult(result: CheckResult | NotApplying): result is CheckResult {
  return !('empty' in result);
}
