/**
 * Part numbers as people write them: `44/10 077`, `44/10-077` and `44/10.077` are one number, and
 * `ab 12` is `AB12`. Printed numbers differ in nothing but that from list to list.
 *
 * Two texts are one number where they agree after Unicode's compatibility decomposition (NFKD,
 * which finds the same texts alike as NFKC), without white space, dots, dashes of any sort and
 * signs that nobody sees, and without regard to case. The case is that of Unicode and of no
 * language: `ß` is `SS`, and the dotted and dotless i of Turkish are an `I` like any other, since
 * the one who types is not asked for his language. All other signs count: `/`, `,`, `+`, `@`,
 * accents.
 */

import type { Part } from './catalogue.js';
import { nearest } from './likeness.js';

/** What may stand between the signs of a number without changing it. */
const BETWEEN = /[\p{White_Space}\p{Dash}\p{Default_Ignorable_Code_Point}.·]/gu;

/** What is left of İ in small letters. */
const DOTTED_I = /i\u0307/g;

/** Equal for texts that are one number, and for names of makers that are one name. */
export function numberKey(text: string): string {
  // To capitals and back, since ß has two capitals, and ẞ none but itself.
  const small = text.normalize('NFKD').toLowerCase().replaceAll(DOTTED_I, 'i');
  return small.replaceAll(BETWEEN, '').toUpperCase().toLowerCase();
}

/** Whose number it is, where a record says so by this word: that of the part's own maker. */
const OWN = numberKey('maker');

export interface NumberOfPart {
  readonly part: Part;
  /** As recorded. */
  readonly number: string;
  /** Whose number it is; null where nobody recorded who makes the part. */
  readonly owner: string | null;
}

/** Whose number of the part it is; null where nobody recorded who makes the part. */
export function ownerOf({ maker }: Part, { of }: Part['numbers'][number]): string | null {
  return numberKey(of) === OWN ? maker : of;
}

/** The numbers of all parts, to be looked up. */
export class PartNumbers {
  readonly #byKey = new Map<string, NumberOfPart[]>();
  #plusSigns = 0;

  constructor(parts: Iterable<Part>) {
    for (const part of parts) for (const number of part.numbers) this.#add(part, number);
  }

  #add(part: Part, named: Part['numbers'][number]): void {
    const { number } = named;
    const key = numberKey(number);
    // What is nothing but dashes says as much as no number.
    if (key === '') return;
    const owned = { part, number, owner: ownerOf(part, named) };
    const signs = plusSignsIn(`${key}${numberKey(owned.owner ?? '')}`);
    this.#plusSigns = Math.max(this.#plusSigns, signs);
    const known = this.#byKey.get(key);
    if (known === undefined) this.#byKey.set(key, [owned]);
    else known.push(owned);
  }

  /** No text with more plus signs than that is a number of a part, whosever is behind it. */
  get plusSigns(): number {
    return this.#plusSigns;
  }

  /**
   * The parts of a number, each once, in the order of the catalogue. A number may have the name
   * of whose it is behind its last `@`; where the whole text is a number, it is that one.
   */
  find(text: string): readonly Part[] {
    return once(this.named(text));
  }

  /** The same as numbers, each with its part. */
  named(text: string): readonly NumberOfPart[] {
    return ofOwner(text, (number) => this.#owned(number));
  }

  /** Those that a number can be which was read in part; whose it is may stand behind it, too. */
  like(text: string, canBe: (read: string) => (key: string) => boolean): readonly NumberOfPart[] {
    return ofOwner(text, (number) => {
      const isAlike = canBe(number);
      return [...this.#byKey].flatMap(([key, owned]) => (isAlike(key) ? owned : []));
    });
  }

  /** A number that was probably meant, as it is recorded; null where none is near. */
  near(text: string): string | null {
    const [number, owner] = ownerIn(text);
    const key = nearest(numberKey(number), this.#byKey.keys());
    const [first] = key === null ? [] : (this.#byKey.get(key) ?? []);
    if (first === undefined) return null;
    return owner === null || first.owner === null ? first.number : `${first.number}@${first.owner}`;
  }

  #owned(number: string): readonly NumberOfPart[] {
    return this.#byKey.get(numberKey(number)) ?? [];
  }
}

/** How many plus signs are in it. */
export function plusSignsIn(text: string): number {
  return text.split('+').length - 1;
}

function ownerIn(text: string): readonly [number: string, owner: string | null] {
  const split = text.lastIndexOf('@');
  return split === -1 ? [text, null] : [text.slice(0, split), text.slice(split + 1)];
}

/** Where the whole text is no number, those of the owner who stands behind its last `@`. */
function ofOwner(
  text: string,
  find: (number: string) => readonly NumberOfPart[],
): readonly NumberOfPart[] {
  const whole = find(text);
  const [number, owner] = ownerIn(text);
  if (whole.length > 0 || owner === null) return whole;
  const key = numberKey(owner);
  return find(number).filter((one) => isOwner(one, key));
}

function isOwner({ owner }: NumberOfPart, key: string): boolean {
  return owner !== null && numberKey(owner) === key;
}

function once(owned: readonly NumberOfPart[]): readonly Part[] {
  return [...new Set(owned.map(({ part }) => part))];
}
