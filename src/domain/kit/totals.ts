/**
 * What the lines of a basket come to. Every total is the sum of its lines, so that whoever adds
 * them up finds the same.
 */

import { add, type Rational, ZERO } from '../quantity/rational.js';
import type { Line, Totals } from './basket.js';
import type { Money } from './question.js';

/** @param partly Keys of lines of whose labour only a part is recorded. */
export function totalsOf(
  lines: readonly Line[],
  changedPositions: number,
  partly: ReadonlySet<string>,
  rate: Money | null,
): Totals {
  const works = lines.filter(({ action }) => action === 'work');
  const bought = lines.filter(({ action }) => action !== 'work');
  const sums = { parts: sumOf(bought, 'price'), works: sumOf(works, 'price') };
  const labour = rate === null ? null : sumOf(lines, 'labourPrice');
  const hours = lines.reduce((sum: Rational, line) => add(sum, line.labourHours ?? ZERO), ZERO);
  const signOffs = works.map(({ signOff }) => signOff);
  return {
    ...sums,
    labourHours: hours,
    labour,
    cost: sums.parts + sums.works + (labour ?? 0),
    unpriced: keysOf(lines.filter(({ price }) => price === null)),
    untimed: keysOf(lines.filter((line) => line.labourHours === null || partly.has(line.key))),
    changedPositions,
    leadDays: leadDaysOf(lines),
    signOff: (['engineer', 'workshop'] as const).find((one) => signOffs.includes(one)) ?? null,
    isReversible: lines.every((line) => line.isReversible),
  };
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
