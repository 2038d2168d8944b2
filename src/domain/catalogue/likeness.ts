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
  let best: string | null = null;
  let bestDistance = slipsAllowed(typed.length) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - typed.length) >= bestDistance) continue;
    const distance = slipsBetween(typed, candidate, bestDistance);
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

/**
 * Letters that are missing, surplus, wrong or swapped with the next (optimal string alignment).
 * Ends as soon as it is sure to reach `enough`.
 */
function slipsBetween(a: string, b: string, enough: number): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwap = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = isSwap ? (before[j - 2] ?? enough) + 1 : enough;
      next.push(Math.min(change, swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    if (Math.min(...next) >= enough) return enough;
    before = row;
    row = next;
  }
  return row[b.length] ?? 0;
}
