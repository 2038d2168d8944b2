/**
 * What the lines of a basket come to. Every total is the sum of its lines, so that whoever adds
 * them up finds the same.
 */

import { add, type Rational, ZERO } from '../quantity/rational.js';
import { LIMITED, type Limited, type Line, type Totals } from './basket.js';
import type { KitQuestion, Money } from './question.js';

/** @param partly Keys of lines of whose labour only a part is recorded. */
export function totalsOf(
  lines: readonly Line[],
  changedPositions: number,
  partly: ReadonlySet<string>,
  question: KitQuestion,
): Totals {
  const { labourRate: rate } = question;
  const works = lines.filter(({ action }) => action === 'work');
  const bought = lines.filter(({ action }) => action !== 'work');
  const sums = { parts: sumOf(bought, 'price'), works: sumOf(works, 'price') };
  const labour = rate === null ? null : sumOf(lines, 'labourPrice');
  const hours = lines.reduce((sum: Rational, line) => add(sum, line.labourHours ?? ZERO), ZERO);
  const unpriced = keysOf(lines.filter(({ price }) => price === null));
  const untimed = keysOf(lines.filter((line) => line.labourHours === null || partly.has(line.key)));
  const leadDays = leadDaysOf(lines);
  const unknownLimits = unknownLimitsOf(question, {
    isUnpriced: unpriced.length > 0,
    isUntimed: untimed.length > 0,
    isLeadUnknown: leadDays === null,
  });
  const signOffs = works.map(({ signOff }) => signOff);
  return {
    ...sums,
    labourHours: hours,
    labour,
    cost: sums.parts + sums.works + (labour ?? 0),
    unpriced,
    untimed,
    changedPositions,
    leadDays,
    unknownLimits,
    signOff: (['engineer', 'workshop'] as const).find((one) => signOffs.includes(one)) ?? null,
    isReversible: lines.every((line) => line.isReversible),
  };
}

/** Limits that are set, and against which something stands that is not known. */
export function unknownLimitsOf(
  { limits, labourRate }: KitQuestion,
  known: {
    readonly isUnpriced: boolean;
    readonly isUntimed: boolean;
    readonly isLeadUnknown: boolean;
  },
): Limited[] {
  const { isUnpriced, isUntimed, isLeadUnknown } = known;
  const unknown = {
    cost: isUnpriced || (isUntimed && labourRate !== null),
    labourHours: isUntimed,
    leadDays: isLeadUnknown,
  };
  return LIMITED.filter((limit) => limits[limit] !== null && unknown[limit]);
}

function keysOf(lines: readonly Line[]): string[] {
  return lines.map(({ key }) => key);
}

function sumOf(lines: readonly Line[], field: 'price' | 'labourPrice'): Money {
  const sum = lines.reduce((before, line) => before + (line[field] ?? 0), 0);
  if (!Number.isSafeInteger(sum)) throw new RangeError('too dear to be added up');
  return sum;
}

/** Of all that is ordered; what is at hand is there at once. */
function leadDaysOf(lines: readonly Line[]): number | null {
  let days = 0;
  for (const { action, source, leadDays } of lines) {
    const isOrdered = action === 'work' || ['offer', 'lot', 'unpriced'].includes(source ?? '');
    if (!isOrdered) continue;
    if (leadDays === null) return null;
    days = Math.max(days, leadDays);
  }
  return days;
}
