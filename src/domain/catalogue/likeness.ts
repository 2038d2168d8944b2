/**
 * How alike two words are, so that a fault can say what was probably meant; and how a word that
 * somebody typed is shown, so that no text of theirs can spoil the screen it is printed on.
 */

import { withUnseenShown } from '../quantity/fault.js';

/** Longest part of a typed word that is shown, in UTF-16 units. */
const LONGEST_SHOWN = 80;

/** The word in quotes, shortened; control and other unseen characters by their number. */
export function quoted(word: string): string {
  const short = word.length > LONGEST_SHOWN ? `${word.slice(0, LONGEST_SHOWN - 1)}…` : word;
  return `"${withUnseenShown(short)}"`;
}

/** The likeliest word that was meant, for "did you mean": a slip or two away, else none. */
export function nearest(word: string, known: Iterable<string>): string | null {
  const typed = word.toLowerCase();
  const rows = rowsFor(typed);
  let best: string | null = null;
  let bestDistance = slipsAllowed(typed.length) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - typed.length) >= bestDistance) continue;
    const distance = slipsBetween(candidate, typed, bestDistance, rows);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** In a short word one slip makes another word: a, b and c are never meant for one another. */
function slipsAllowed(length: number): number {
  if (length < 3) return 0;
  return length < 6 ? 1 : 2;
}

/** Three rows of a table, used by turns: one for all candidates, since there may be many. */
type Rows = readonly [Uint32Array, Uint32Array, Uint32Array];

function rowsFor({ length }: string): Rows {
  const row = (): Uint32Array => new Uint32Array(length + 1);
  return [row(), row(), row()];
}

/**
 * Letters that are missing, surplus, wrong or swapped with the next (optimal string alignment);
 * `enough` where they are as many or more. The lengths differ by less than that. What both words
 * begin and end with alike is passed over, and so are places that only `enough` slips lead to: in
 * each row those that are as far from its own.
 */
function slipsBetween(a: string, b: string, enough: number, rows: Rows): number {
  let [start, aEnd, bEnd] = [0, a.length, b.length];
  while (start < aEnd && start < bEnd && a[start] === b[start]) start += 1;
  while (aEnd > start && bEnd > start && a[aEnd - 1] === b[bEnd - 1]) {
    aEnd -= 1;
    bEnd -= 1;
  }
  const [height, length] = [aEnd - start, bEnd - start];
  const wide = enough - 1;
  let [before, row, next] = rows;
  for (let j = 0; j <= length; j += 1) row[j] = j;
  for (let i = 1; i <= height; i += 1) {
    const first = Math.max(1, i - wide);
    const last = Math.min(length, i + wide);
    let least = first === 1 ? i : enough;
    next[first - 1] = least;
    for (let j = first; j <= last; j += 1) {
      const [letter, other] = [a[start + i - 1], b[start + j - 1]];
      let slips = Math.min((row[j - 1] ?? 0) + (letter === other ? 0 : 1), (next[j - 1] ?? 0) + 1);
      if (j < i + wide) slips = Math.min(slips, (row[j] ?? 0) + 1);
      const isSwap = i > 1 && j > 1 && letter === b[start + j - 2] && a[start + i - 2] === other;
      if (isSwap) slips = Math.min(slips, (before[j - 2] ?? 0) + 1);
      next[j] = slips;
      if (slips < least) least = slips;
    }
    if (least >= enough) return enough;
    [before, row, next] = [row, next, before];
  }
  return row[length] ?? enough;
}
