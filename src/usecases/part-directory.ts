/**
 * The parts of a catalogue in the order of their ids, for lists: what is looked for is worked out
 * once for each catalogue, and not for each question.
 */

import type { Catalogue, Part } from '../domain/catalogue/catalogue.js';
import type { Text } from '../domain/catalogue/document.js';
import { folded } from '../domain/catalogue/folded.js';
import { type NumberOfPart, numberKey, PartNumbers } from '../domain/catalogue/part-number.js';
import { canBeNumber, isPartlyRead } from '../domain/identify/read-number.js';

/** What is known of the parts that are looked for; null where nothing is. */
export interface PartFilter {
  readonly role: string | null;
  /** A kind of interface that one of its faces is of. */
  readonly kind: string | null;
  readonly maker: string | null;
  /** A number as people write it, with `@` and whose it is behind it if need be. */
  readonly number: string | null;
  /** Words that all stand somewhere in its names, id, numbers or maker. */
  readonly text: string | null;
  /** Whether another one took its place. */
  readonly superseded: boolean | null;
}

/** The form in which words are compared. */
type Fold = (text: string) => string;

type Postings = ReadonlyMap<string, readonly Part[]>;

export class PartDirectory {
  readonly #fold: Fold;
  readonly #numbers: PartNumbers;
  readonly #sorted: readonly Part[];
  readonly #byRole: Postings;
  readonly #byKind: Postings;
  readonly #byMaker: Postings;
  /** The words of the parts in which any were looked for. */
  readonly #words = new Map<Part, string>();

  constructor({ parts }: Pick<Catalogue, 'parts'>, fold: Fold = folded) {
    this.#fold = fold;
    this.#sorted = [...parts.values()].sort(byId);
    this.#numbers = new PartNumbers(this.#sorted);
    this.#byRole = postings(this.#sorted, ({ roles }) => roles);
    this.#byKind = postings(this.#sorted, kindsOf);
    this.#byMaker = postings(this.#sorted, makersOf);
  }

  /** All of them, in the order of their ids. */
  get all(): readonly Part[] {
    return this.#sorted;
  }

  /** How many are of the role. */
  countOfRole(role: string): number {
    return this.#byRole.get(role)?.length ?? 0;
  }

  /** Those of the role, in the order of their ids. */
  ofRole(role: string): readonly Part[] {
    return this.#byRole.get(role) ?? [];
  }

  /** How many have a face of the kind. */
  countOfKind(kind: string): number {
    return this.#byKind.get(kind)?.length ?? 0;
  }

  /** The most plus signs that a number of one of them has. */
  get plusSignsOfNumbers(): number {
    return this.#numbers.plusSigns;
  }

  /** Those of a number, in the order of their ids. */
  ofNumber(number: string): readonly Part[] {
    return this.#numbers.find(number);
  }

  /** The numbers that one can be which somebody read, in part perhaps. */
  likeNumber(text: string): readonly NumberOfPart[] {
    return isPartlyRead(text) ? this.#numbers.like(text, canBeNumber) : this.#numbers.named(text);
  }

  /** A number that was probably meant; null where none is near. */
  nearNumber(number: string): string | null {
    return this.#numbers.near(number);
  }

  /** Those of which all of it is true, in the order of their ids. */
  find({ role, kind, maker, number, text, superseded }: PartFilter): readonly Part[] {
    const lists = [
      role === null ? null : (this.#byRole.get(role) ?? []),
      kind === null ? null : (this.#byKind.get(kind) ?? []),
      maker === null ? null : (this.#byMaker.get(numberKey(maker)) ?? []),
      number === null ? null : this.#numbers.find(number),
    ].filter((list) => list !== null);
    lists.sort((a, b) => a.length - b.length);
    const [fewest = this.#sorted, ...others] = lists;
    const sets = others.map((list) => new Set(list));
    const words = text === null ? [] : this.#fold(text).split(/\s+/u);
    if (sets.length === 0 && words.length === 0 && superseded === null) return fewest;
    return fewest.filter(
      (part) =>
        sets.every((set) => set.has(part)) &&
        (superseded === null || (part.supersededBy !== null) === superseded) &&
        this.#has(part, words),
    );
  }

  #has(part: Part, words: readonly string[]): boolean {
    if (words.length === 0) return true;
    const known = this.#words.get(part) ?? this.#fold(wordsOf(part));
    this.#words.set(part, known);
    return words.every((word) => known.includes(word));
  }
}

function byId(a: Part, b: Part): number {
  return a.id < b.id ? -1 : 1;
}

function kindsOf({ faces }: Part): string[] {
  return [...faces.values()].flatMap(({ kind }) => (kind === null ? [] : [kind.id]));
}

function makersOf({ maker }: Part): string[] {
  return maker === null ? [] : [numberKey(maker)];
}

/** Each on a line of its own, so that no word is found across two of them. */
function wordsOf({ id, name, maker, numbers }: Part): string {
  return [id, ...textsOf(name), maker ?? '', ...numbers.map(({ number }) => number)].join('\n');
}

function textsOf(text: Text): string[] {
  return typeof text === 'string' ? [text] : Object.values(text);
}

function postings(parts: readonly Part[], keysOf: (part: Part) => Iterable<string>): Postings {
  const found = new Map<string, Part[]>();
  for (const part of parts) {
    for (const key of new Set(keysOf(part))) {
      const known = found.get(key);
      if (known === undefined) found.set(key, [part]);
      else known.push(part);
    }
  }
  return found;
}

const KNOWN = new WeakMap<Catalogue, PartDirectory>();

/** The directory of a catalogue, which is made when it is first asked for. */
export function partDirectory(catalogue: Catalogue): PartDirectory {
  const known = KNOWN.get(catalogue);
  if (known !== undefined) return known;
  const directory = new PartDirectory(catalogue);
  KNOWN.set(catalogue, directory);
  return directory;
}
