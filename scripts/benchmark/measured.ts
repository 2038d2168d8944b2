/** Times of one solver on the instances of a cell, and what is printed of them. */

export interface Times {
  readonly median: number;
  readonly max: number;
}

/**
 * How long it took, in milliseconds: by the clock, or by the processor where that is less, since
 * then other programs had the processor in between.
 */
export function timed<Result>(run: () => Result): { readonly ms: number; readonly result: Result } {
  const used = process.cpuUsage();
  const start = performance.now();
  const result = run();
  const clock = performance.now() - start;
  const { user, system } = process.cpuUsage(used);
  return { ms: Math.min(clock, (user + system) / 1000), result };
}

/** Of several rounds on each instance the shortest counts: what is longer, something else took. */
export function timesOf(rounds: readonly (readonly number[])[]): Times {
  const each = rounds.map((own) => Math.min(...own)).sort((a, b) => a - b);
  return { median: medianOf(each), max: each.at(-1) ?? 0 };
}

/** The middle of numbers that are in order; of two in the middle the greater. */
export function medianOf(ordered: readonly number[]): number {
  return ordered[Math.floor(ordered.length / 2)] ?? 0;
}
