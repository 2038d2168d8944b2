/**
 * The faults of a document: all of them, each with the JSON pointer (RFC 6901) of the place and
 * a sentence that a parts person understands. A fault refuses the document; a warning does not.
 */

export interface Fault {
  /** RFC 6901 pointer into the document, '' for the whole. */
  readonly pointer: string;
  /** Stable kebab-case word for programs. */
  readonly code: string;
  readonly text: string;
}

export class FaultList {
  readonly faults: Fault[] = [];
  readonly warnings: Fault[] = [];

  fault(pointer: string, code: string, text: string): void {
    this.faults.push({ pointer, code, text });
  }

  warn(pointer: string, code: string, text: string): void {
    this.warnings.push({ pointer, code, text });
  }

  get isClean(): boolean {
    return this.faults.length === 0;
  }
}

/** Adds one step to a pointer, escaped as RFC 6901 says. */
export function at(pointer: string, step: string | number): string {
  return `${pointer}/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** The likeliest word that was meant, for "did you mean": one or two letters away, else none. */
export function nearest(word: string, known: Iterable<string>): string | null {
  let best: string | null = null;
  let bestDistance = 3;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= bestDistance) continue;
    const distance = editDistance(word, candidate);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Levenshtein distance, row by row. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** " Did you mean 'x'?" or nothing. */
export function hint(word: string, known: Iterable<string>): string {
  const guess = nearest(word, known);
  return guess === null ? '' : ` Did you mean '${guess}'?`;
}
