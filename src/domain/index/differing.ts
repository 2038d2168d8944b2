/**
 * Two classes of faces that differ in a code that has to be equal: what most pairs of a large
 * catalogue come to, told without a judge.
 */

import type { Kind, Value } from '../catalogue/catalogue.js';
import { ENDS } from '../catalogue/scope.js';
import type { Check } from '../check/check.js';
import { gradeOf } from '../check/state.js';
import type { FaceClass } from './interning.js';

/** Both are of one kind, and on opposite sides where it has sides. */
export function differ({ face: x }: FaceClass, { face: y }: FaceClass): boolean {
  const { kind } = x;
  const [a, ...others] = x.alternatives;
  const [b, ...more] = y.alternatives;
  if (kind === null || a === undefined || b === undefined) return false;
  if (others.length > 0 || more.length > 0) return false;
  return equalOf(kind).some((parameter) => {
    const [left, right] = [codeOf(a.get(parameter)), codeOf(b.get(parameter))];
    return left !== null && right !== null && left !== right;
  });
}

/** A code that may fail a check; null for anything else. */
function codeOf(value: Value | undefined): string | null {
  if (value?.form !== 'code' || gradeOf(value.evidence.basis) === 'opens-only') return null;
  return value.code;
}

const equalByKind = new WeakMap<Kind, readonly string[]>();

/** The parameters that have to be equal on both sides, whatever else there is. */
function equalOf(kind: Kind): readonly string[] {
  let known = equalByKind.get(kind);
  if (known === undefined) {
    known = kind.checks.flatMap((check) => parameterOf(check, kind) ?? []);
    equalByKind.set(kind, known);
  }
  return known;
}

function parameterOf(check: Check, { sides }: Kind): string | null {
  if (check.primitive !== 'equal' || check.severity !== 'must' || check.when !== null) return null;
  const { left, right } = check;
  if (left.op !== 'reference' || right.op !== 'reference') return null;
  const [a, b] = [left.reference, right.reference];
  if (a.of !== 'side' || b.of !== 'side' || a.parameter !== b.parameter) return null;
  const [one, other] = sides ?? ENDS;
  const isAcross = (a.side === one && b.side === other) || (a.side === other && b.side === one);
  return isAcross ? a.parameter : null;
}
