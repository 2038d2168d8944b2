/**
 * What the phrases of every language ask of the data: whether there is a part, which end is empty,
 * whether both sides are values of one parameter. No words of any language.
 */

import type { Named, NamedValue, ReasonData, ShownValue } from './reason.js';

export function isPart(named: Named | undefined): boolean {
  return named !== undefined && named.part !== null;
}

/** Whether a value stands on a part or at a place; a fact or a computed value does not. */
export function isOfPart(value: NamedValue | undefined): value is NamedValue {
  return value !== undefined && (value.part !== null || value.position !== null);
}

/** A value that stands for itself: a margin, a tolerance, what to order. */
export function amount(value: ShownValue | undefined, otherwise: string): string {
  return value?.text ?? otherwise;
}

/** How nearly the two paths of a loop agree; null where that is exactly, or nobody can say. */
export function mismatch({ margin }: ReasonData): string | null {
  return margin?.text === '0 %' ? null : (margin?.text ?? null);
}

/** The end of a mating where nothing is fitted. */
export function emptyEnd({ a, b }: ReasonData): Named | undefined {
  return a?.part === null ? a : b;
}

/** The end of a mating beside the one that is spoken of; the second where that is not said. */
export function otherEnd({ a, b, part }: ReasonData): Named | undefined {
  const isB = part?.position === b?.position && part?.interface === b?.interface;
  return isB ? a : b;
}

/** The side of a check that is recorded on a part, where the other is what is missing. */
export function knownSide({ left, right, missing = [] }: ReasonData): NamedValue | null {
  const isMissing = (value: NamedValue | undefined) =>
    value !== undefined &&
    missing.some(
      (one) =>
        one.part === value.part &&
        one.position === value.position &&
        one.hand === value.hand &&
        one.parameter === value.parameter,
    );
  const isKnown = (value: NamedValue | undefined): value is NamedValue =>
    isOfPart(value) && value.part !== null && value.value?.text != null;
  if (isKnown(left) && isMissing(right)) return left;
  return isKnown(right) && isMissing(left) ? right : null;
}

/** Whether both sides of a check are called the same, so that it is enough to say it once. */
export function isSameParameter({ left, right }: ReasonData): boolean {
  return left?.parameterName !== null && left?.parameterName === right?.parameterName;
}

/** Whether a way out comes to nothing: no place is changed, and nothing is bought. */
export function isNothing({ places, price, unpriced = 0 }: ReasonData): boolean {
  return places === 0 && unpriced === 0 && !/[1-9]/.test(price?.low ?? '');
}
