/**
 * A smallest part of a list that still does what the whole list does, in the sense that no item
 * of it can be left out. What stands earlier in the list is rather kept.
 *
 * The method is known in the field as QuickXplain; written down here from memory. It halves the
 * list, and tests about as often as the result is long, times the logarithm of the list.
 */

/** Whether some of the items do it; if some do, so do more. Undefined: nobody can tell any more. */
type Does<Item> = (some: readonly Item[]) => boolean | undefined;

/**
 * @param items where the earlier ones are kept rather.
 * @returns items in the order of the list; none where nothing does it too; null where the test
 * could not tell any more.
 */
export function leastDoing<Item>(items: readonly Item[], does: Does<Item>): Item[] | null {
  const isTrivial = does([]);
  if (isTrivial === undefined) return null;
  return isTrivial || items.length === 0 ? [] : reduced([], false, items, does);
}

/** @param isMore whether the base has grown since it was last tested. */
function reduced<Item>(
  base: readonly Item[],
  isMore: boolean,
  rest: readonly Item[],
  does: Does<Item>,
): Item[] | null {
  if (isMore) {
    const isEnough = does(base);
    if (isEnough !== false) return isEnough === true ? [] : null;
  }
  if (rest.length === 1) return [...rest];
  const half = Math.floor(rest.length / 2);
  const [first, second] = [rest.slice(0, half), rest.slice(half)];
  const ofSecond = reduced([...base, ...first], true, second, does);
  if (ofSecond === null) return null;
  const ofFirst = reduced([...base, ...ofSecond], ofSecond.length > 0, first, does);
  return ofFirst === null ? null : [...ofFirst, ...ofSecond];
}
