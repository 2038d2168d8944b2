/**
 * What to say although a loop passes: by the band that its mismatch reaches.
 */

import type { Interval } from '../quantity/interval.js';
import { compare, negate, type Rational } from '../quantity/rational.js';
import type { Band } from './coupling.js';
import { mismatchOf, type Prepared } from './evaluate.js';
import type { Setting } from './evaluator.js';

/** From the gravest on. */
const CAUTIONS = ['off-road-only', 'may-be-off-road-only', 'winds-up', 'may-wind-up'] as const;

type Caution = (typeof CAUTIONS)[number];

/** The gravest caution of the couplings that it may have; null for none, and for other checks. */
export function cautionOf(prepared: Prepared, setting: Setting): Caution | null {
  if (prepared.check.primitive !== 'agree') return null;
  const mismatch = mismatchOf(prepared);
  if (mismatch === null) return null;
  const said = bandsOf(prepared, setting).map((band) => cautionIn(mismatch, band));
  return CAUTIONS.find((caution) => said.includes(caution)) ?? null;
}

/** The band of the coupling, or all of them where the coupling is not recorded. */
function bandsOf(prepared: Prepared, { couplings }: Setting): Band[] {
  const reading = prepared.readings.findLast((item) => item.form === 'code');
  const codes = reading?.form === 'code' ? reading.codes : null;
  return (codes ?? [...couplings.keys()]).flatMap((code) => couplings.get(code) ?? []);
}

function cautionIn(mismatch: Interval, { pass, warn }: Band): Caution | null {
  const beyondWarn = exceeds(mismatch, warn);
  if (beyondWarn === 'always') return 'off-road-only';
  if (beyondWarn === 'may') return 'may-be-off-road-only';
  const beyondPass = exceeds(mismatch, pass);
  if (beyondPass === 'never') return null;
  return beyondPass === 'always' ? 'winds-up' : 'may-wind-up';
}

function exceeds(mismatch: Interval, limit: Rational): 'always' | 'may' | 'never' {
  const { low, high } = mismatch;
  const above = (end: Rational | null) => end === null || compare(end, limit) > 0;
  const below = (end: Rational | null) => end === null || compare(negate(end), limit) > 0;
  if (low !== null && compare(low, limit) > 0) return 'always';
  if (high !== null && compare(negate(high), limit) > 0) return 'always';
  return above(high) || below(low) ? 'may' : 'never';
}
