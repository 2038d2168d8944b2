/**
 * The names that a part goes by: its id, its numbers, and the order codes it is offered under.
 *
 * `number:` and `sku:` say which of them is meant; a bare name is an id, else a number. Works may
 * stand behind any name, as in `number:44/10 077@Corrablyn+redrill`.
 */

import type { Catalogue, Part } from '../domain/catalogue/catalogue.js';
import { nearest } from '../domain/catalogue/faults.js';
import { partDirectory } from './part-directory.js';
import type { Skus } from './skus.js';

export type NamedBy = 'id' | 'number' | 'sku';

/** What a name is of: nothing, one part, or several that it does not tell apart. */
export interface PartName {
  readonly by: NamedBy;
  readonly parts: readonly Part[];
  /** Ids of the works behind the name, in order. */
  readonly works: readonly string[];
  /** Lots and works that the order code is of. */
  readonly others: readonly string[];
}

const PREFIXES = { sku: 'sku:', number: 'number:' } as const;

/** Whether the price and stock list must be asked what the name is of. */
export function isSku(name: string): boolean {
  return name.startsWith(PREFIXES.sku);
}

/** Whether the text says itself what sort of name it is: then it may have any sign in it. */
export function hasPrefix(name: string): boolean {
  return isSku(name) || name.startsWith(PREFIXES.number);
}

/** Ids with commas between; or one name that says what it is, and may have commas itself. */
export function splitNames(text: string): string[] {
  return hasPrefix(text) ? [text] : text.split(',');
}

export class PartNames {
  readonly #catalogue: Catalogue;
  readonly #skus: () => Skus;

  /** @param skus asked only where a name is an order code. */
  constructor(catalogue: Catalogue, skus: () => Skus) {
    this.#catalogue = catalogue;
    this.#skus = skus;
  }

  find(name: string): PartName {
    const [sort, text] = sortOf(name);
    if (sort === 'sku') {
      const skus = this.#skus();
      return this.#longest('sku', text, skus.plusSigns, (sku) => skus.find(sku));
    }
    const { parts } = this.#catalogue;
    if (sort === null) {
      // No id has a plus sign in it.
      const [id = '', ...works] = text.split('+');
      const part = parts.get(id);
      if (part !== undefined) return { by: 'id', parts: [part], works, others: [] };
    }
    const directory = partDirectory(this.#catalogue);
    const found = this.#longest('number', text, directory.plusSignsOfNumbers, (number) =>
      directory.ofNumber(number).map(({ id }) => id),
    );
    return sort === null && found.parts.length === 0 ? { ...found, by: 'id' } : found;
  }

  /** A name that was probably meant, in the form in which it was asked; null where none is near. */
  near(name: string): string | null {
    const [sort, text] = sortOf(name);
    // A code of something that is not in this edition is near to nothing but itself.
    const near = (known: string | null, prefix: string): string | null =>
      known === null || known === text ? null : `${prefix}${known}`;
    if (sort === 'sku') return near(this.#skus().near(text), PREFIXES.sku);
    const number = (): string | null => partDirectory(this.#catalogue).nearNumber(text);
    if (sort === 'number') return near(number(), PREFIXES.number);
    return nearest(text, this.#catalogue.parts.keys()) ?? near(number(), PREFIXES.number);
  }

  /**
   * Numbers and order codes may have plus signs in them: the longest beginning that is one counts,
   * and what is behind it are works. A name may have a hundred plus signs, of which only as many
   * are tried as any number or code has.
   */
  #longest(
    by: NamedBy,
    text: string,
    plusSigns: number,
    idsOf: (name: string) => readonly string[],
  ): PartName {
    const pieces = text.split('+');
    for (let count = Math.min(pieces.length, plusSigns + 1); count > 0; count -= 1) {
      const ids = idsOf(pieces.slice(0, count).join('+'));
      if (ids.length === 0) continue;
      const works = pieces.slice(count);
      const parts = ids.flatMap((id) => this.#catalogue.parts.get(id) ?? []);
      const others = ids.filter((id) => isOther(id, this.#catalogue));
      return { by, parts, works, others };
    }
    return { by, parts: [], works: [], others: [] };
  }
}

function isOther(id: string, { lots, works }: Catalogue): boolean {
  return lots.has(id) || works.has(id);
}

function sortOf(name: string): readonly [sort: 'number' | 'sku' | null, text: string] {
  for (const sort of ['sku', 'number'] as const) {
    const prefix = PREFIXES[sort];
    if (name.startsWith(prefix)) return [sort, name.slice(prefix.length)];
  }
  return [null, name];
}
