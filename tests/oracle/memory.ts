/**
 * What has been worked out once, by all that it depends on. Many configurations of one vehicle
 * are judged one after the other, and most of what is in them has been judged before.
 */

export class Memory {
  readonly #known = new Map<string, unknown>();

  /** @param name all that the result depends on, in words. */
  once<Result>(name: string, work: () => Result): Result {
    if (this.#known.has(name)) return this.#known.get(name) as Result;
    const result = work();
    this.#known.set(name, result);
    return result;
  }
}

/** The same for what an object leads to that never changes. */
export function oncePer<Key extends object, Result>(work: (key: Key) => Result) {
  const known = new WeakMap<Key, { readonly result: Result }>();
  return (key: Key): Result => {
    const found = known.get(key) ?? { result: work(key) };
    known.set(key, found);
    return found.result;
  };
}

let numbered = 0;

/** Tells one object from every other. */
export const numberOf = oncePer((_: object) => {
  numbered += 1;
  return numbered;
});
