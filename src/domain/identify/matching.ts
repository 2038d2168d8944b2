/**
 * Gives each of some a slot of its own, for as many of them as can be (by augmenting paths), the
 * earlier slots of each first.
 */

/** @param wishes for each the slots that would do; null in the answer for one that has none. */
export function matched(wishes: readonly (readonly string[])[]): (string | null)[] {
  const holder = new Map<string, number>();
  const place = (one: number, tried: Set<string>): boolean => {
    for (const slot of wishes[one] ?? []) {
      if (tried.has(slot)) continue;
      tried.add(slot);
      const before = holder.get(slot);
      if (before !== undefined && !place(before, tried)) continue;
      holder.set(slot, one);
      return true;
    }
    return false;
  };
  for (const one of wishes.keys()) place(one, new Set());
  const slots = new Map([...holder].map(([slot, one]) => [one, slot]));
  return wishes.map((_, one) => slots.get(one) ?? null);
}
