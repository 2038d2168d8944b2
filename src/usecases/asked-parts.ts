/**
 * The parts that a question names, by whatever name; works behind a name are done on the part.
 */

import type { Catalogue, Part } from '../domain/catalogue/catalogue.js';
import { nearest } from '../domain/catalogue/faults.js';
import { textIn } from '../domain/explain/language.js';
import { spokenFor } from '../domain/explain/words.js';
import { articleOf, namesOf, type WorkReason, withArticles } from '../domain/judge/worked-part.js';
import type { NamedView } from './answer.js';
import type { Faults } from './faults.js';
import type { Edition, Library } from './library.js';
import { isSku, type NamedBy, type PartName, PartNames } from './part-names.js';
import type { CommonInput } from './question.js';
import type { NamedPart } from './question-fault.js';
import type { Skus } from './skus.js';
import type { Speaker } from './speaker.js';

/** What a question in which parts are named has. */
export interface NamingInput extends CommonInput {
  /** Of the price and stock list; the newest where it is left out. */
  readonly offers?: number;
  /**
   * Whether it is looked what was probably meant by a name of nothing. It is, where this is left
   * out; who asks a million questions need not wait for it each time.
   */
  readonly guesses?: boolean;
}

export interface FoundPart {
  readonly part: Part;
  readonly resolvedBy: NamedBy;
  /** Id of the part that took its place. */
  readonly supersededBy: string | null;
}

interface NamedHere extends FoundPart {
  readonly at: string;
  readonly asked: string;
}

interface Found extends PartName {
  /** Of the part with its works; null where the name is not of one part. */
  readonly id: string | null;
}

/**
 * For so many names of a question it is looked what was meant: each is compared with all names that
 * there are, and more would keep everybody else waiting.
 */
const MOST_GUESSED = 50;

export class AskedParts {
  /** With the worked parts that the question names. */
  readonly catalogue: Catalogue;
  /** Of the price and stock list that was asked; null where no name needed it. */
  readonly offers: number | null;
  readonly #names: PartNames;
  readonly #found: ReadonlyMap<string, Found>;
  readonly #faults: Faults;
  readonly #lang: string;
  /** All that were found, and where they are named; those beside others again in `#named`. */
  readonly #places: { readonly part: Part; readonly at: string }[] = [];
  readonly #named: NamedHere[] = [];
  /** How many names may still be compared with all that there are. */
  #guesses: number;

  /** @param names every name of a part that the question has. */
  constructor({ library, edition, input }: Asking, names: readonly string[], faults: Faults) {
    const skus = skusOf(library, input.offers ?? null);
    this.#names = new PartNames(edition.catalogue, skus);
    this.#found = new Map(names.map((name) => [name, withId(this.#names.find(name))]));
    this.#faults = faults;
    this.#lang = spokenFor(input.lang);
    this.#guesses = input.guesses === false ? 0 : MOST_GUESSED;
    const ids = [...this.#found.values()].flatMap(({ id }) => id ?? []);
    this.catalogue = withArticles(edition.catalogue, ids);
    this.offers = names.some(isSku) ? skus().number : null;
  }

  /** What a name led to; null where it has a fault, which is then told. */
  find(name: string, at: string): FoundPart | null {
    const found = this.#found.get(name);
    if (found === undefined) throw new Error(`"${name}" was not announced as a name`);
    const part = found.id === null ? undefined : this.catalogue.parts.get(found.id);
    if (part === undefined) {
      this.#addFault(name, found, at);
      return null;
    }
    const supersededBy = found.parts[0]?.supersededBy ?? null;
    this.#places.push({ part, at });
    return { part, resolvedBy: found.by, supersededBy };
  }

  /** A part that the question names beside others. */
  part(name: string, at: string): Part | null {
    const found = this.find(name, at);
    if (found === null) return null;
    this.#named.push({ at, asked: name, ...found });
    return found.part;
  }

  /** A part that goes between two others. */
  adapter(name: string, at: string): Part | null {
    const part = this.part(name, at);
    if (part === null || part.faces.size === 2) return part;
    this.#faults.add(at, 'not-an-adapter', { part: part.id });
    return null;
  }

  /** What the names of parts beside others led to, in the order of the question. */
  namedViews(speaker: Speaker): NamedView[] {
    return this.#named.map(({ at, asked, part, resolvedBy, supersededBy }) => {
      const { id, name } = part;
      return { at, asked, part: id, name: speaker.text(name), resolvedBy, supersededBy };
    });
  }

  /** The catalogue with some parts as they were measured; what is worked is made of them anew. */
  laidOver(measured: ReadonlyMap<string, Part>): Catalogue {
    if (measured.size === 0) return this.catalogue;
    const laid = { ...this.catalogue, parts: new Map([...this.catalogue.parts, ...measured]) };
    const anew = this.#places.filter(({ part: { id } }) => {
      const [bare] = namesOf(id);
      return id !== bare && measured.has(bare) && !measured.has(id);
    });
    for (const { part, at } of anew) {
      if (articleOf(part.id, laid).part === null) this.#addWorkFault(part.id, at, laid);
    }
    return withArticles(
      laid,
      anew.map(({ part }) => part.id),
    );
  }

  #text({ name }: Part): string {
    return textIn(name, this.#lang, this.catalogue.lang).text;
  }

  #addFault(name: string, { parts, works, others }: Found, at: string): void {
    const [part, ...further] = parts;
    if (part === undefined) this.#addUnknown(name, others, at);
    else if (further.length > 0) this.#addAmbiguous(name, parts, works, at);
    else this.#addWorkFault([part.id, ...works].join('+'), at);
  }

  #addUnknown(name: string, others: readonly string[], at: string): void {
    const [other] = others;
    if (other !== undefined) {
      if (this.catalogue.lots.has(other)) this.#faults.add(at, 'sku-of-lot', { name, lot: other });
      else this.#faults.add(at, 'sku-of-work', { name, work: other });
      return;
    }
    // A plus sign in a URL is a space.
    const written = name.replaceAll(' ', '+');
    const meant = withId(this.#names.find(written));
    if (written !== name && meant.id !== null && articleOf(meant.id, this.catalogue).part) {
      this.#faults.add(at, 'plus-read-as-space', { name, meant: written });
      return;
    }
    // The sign may be one of the name itself, or stand before a work.
    const whole = this.#meantBy(name);
    const [bare = ''] = name.split('+');
    const named = whole !== null || bare === name ? name : bare;
    const guess = named === name ? whole : this.#meantBy(bare);
    this.#faults.add(at, 'unknown-part', { name: named, meant: guess });
  }

  #meantBy(name: string): string | null {
    this.#guesses -= 1;
    return this.#guesses < 0 ? null : this.#names.near(name);
  }

  #addAmbiguous(name: string, parts: readonly Part[], works: readonly string[], at: string): void {
    const candidates = parts.map((part): NamedPart => {
      const id = [part.id, ...works].join('+');
      return { part: id, name: this.#text(part), maker: part.maker };
    });
    this.#faults.add(at, 'ambiguous-part', { name, candidates });
  }

  /** What is wrong with a part that is worked: `hub-a+redrill`. */
  #addWorkFault(article: string, at: string, catalogue = this.catalogue): void {
    const { fault } = articleOf(article, catalogue);
    if (fault === null) throw new Error(`"${article}" is an article, but not in the catalogue`);
    if (fault.code === 'work-not-for-part') {
      this.#addWorkReason(fault.work.id, fault.reason, at);
      return;
    }
    const { name } = fault;
    const meant = nearest(name, this.catalogue.works.keys());
    this.#faults.add(at, 'unknown-work', { name, meant });
  }

  #addWorkReason(work: string, reason: WorkReason, at: string): void {
    switch (reason.code) {
      case 'not-for-this-part':
        this.#faults.add(at, 'work-not-for-part', { work });
        return;
      case 'not-known-to-apply':
        this.#faults.add(at, 'work-may-not-apply', { work });
        return;
      case 'nothing-to-change':
        this.#faults.add(at, 'work-changes-nothing', { work, what: reason.what });
    }
  }
}

export interface Asking {
  readonly library: Library;
  readonly edition: Edition;
  readonly input: NamingInput;
}

function withId(name: PartName): Found {
  const [part, ...others] = name.parts;
  const id = part === undefined || others.length > 0 ? null : [part.id, ...name.works].join('+');
  return { ...name, id };
}

/** One state of the list for all names of a question. */
function skusOf(library: Library, number: number | null): () => Skus {
  let known: Skus | null = null;
  return () => {
    known ??= library.skus(number);
    return known;
  };
}
