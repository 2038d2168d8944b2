/**
 * Fractions of big integers, as one would write them down on paper. Nothing is reduced before it
 * has to be shown: the sums here are short.
 */

export interface Fraction {
  readonly top: bigint;
  /** Above zero. */
  readonly bottom: bigint;
}

export function fraction(top: bigint | number, bottom: bigint | number = 1n): Fraction {
  return { top: BigInt(top), bottom: BigInt(bottom) };
}

/** Reads `43/12`, `-3.583` or `612`. */
export function readFraction(text: string): Fraction {
  const [whole = '', divisor = '1'] = text.split('/');
  const [before = '', after = ''] = whole.split('.');
  return fraction(BigInt(before + after), BigInt(divisor) * 10n ** BigInt(after.length));
}

export const ZERO = fraction(0n);
export const ONE = fraction(1n);
export const HALF = fraction(1n, 2n);

export function plus(a: Fraction, b: Fraction): Fraction {
  if (a.bottom === b.bottom) return { top: a.top + b.top, bottom: a.bottom };
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}

export function minus(a: Fraction, b: Fraction): Fraction {
  return plus(a, { top: -b.top, bottom: b.bottom });
}

export function times(a: Fraction, b: Fraction): Fraction {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}

/** @throws RangeError by BigInt when `b` is zero and the quotient is used. */
export function over(a: Fraction, b: Fraction): Fraction {
  if (b.top < 0n) return { top: -a.top * b.bottom, bottom: a.bottom * -b.top };
  return { top: a.top * b.bottom, bottom: a.bottom * b.top };
}

/** Below, at or above zero where `a` is below, at or above `b`. */
export function compare(a: Fraction, b: Fraction): number {
  const difference = a.top * b.bottom - b.top * a.bottom;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

export function smaller(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) <= 0 ? a : b;
}

export function larger(a: Fraction, b: Fraction): Fraction {
  return compare(a, b) >= 0 ? a : b;
}

/** Reduced, for comparing and for people. */
export function textOf({ top, bottom }: Fraction): string {
  let a = top < 0n ? -top : top;
  let b = bottom;
  while (b !== 0n) [a, b] = [b, a % b];
  return `${top / a}/${bottom / a}`;
}
