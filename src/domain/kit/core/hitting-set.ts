/**
 * The smallest set that has a member in common with each of some sets. Members are whole numbers
 * from 0; of sets as small as each other the one whose members come first is taken.
 */

/**
 * @param sets what is to be hit, each with at least one member.
 * @param passed sets that must not all be in the result.
 * @returns members, ascending; null where every set that hits all has a passed one in it.
 */
export function smallestHittingSet(
  sets: readonly (readonly number[])[],
  passed: readonly (readonly number[])[] = [],
): readonly number[] | null {
  let best: readonly number[] | null = null;
  const chosen = new Set<number>();
  const barred = new Set<number>();

  const go = (): void => {
    if (passed.some((set) => set.every((one) => chosen.has(one)))) return;
    const missed = sets.filter((set) => !set.some((one) => chosen.has(one)));
    if (best !== null && chosen.size + apartIn(missed, barred) > best.length) return;
    const [fewest] = missed
      .map((set) => set.filter((one) => !barred.has(one)))
      .sort((a, b) => a.length - b.length);
    if (fewest === undefined) {
      const found = [...chosen].sort((a, b) => a - b);
      if (best === null || comesFirst(found, best)) best = found;
      return;
    }
    for (const one of fewest) {
      chosen.add(one);
      go();
      chosen.delete(one);
      barred.add(one);
    }
    for (const one of fewest) barred.delete(one);
  };
  go();
  return best;
}

/** How many of the sets have no member in common, counted greedily: so many are needed more. */
function apartIn(sets: readonly (readonly number[])[], barred: ReadonlySet<number>): number {
  const seen = new Set<number>();
  let count = 0;
  for (const set of sets) {
    const left = set.filter((one) => !barred.has(one));
    if (left.some((one) => seen.has(one))) continue;
    for (const one of left) seen.add(one);
    count += 1;
  }
  return count;
}

/** Fewer members first; of as many, the one whose members come first. */
export function comesFirst(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return a.length < b.length;
  const at = a.findIndex((one, index) => one !== b[index]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
