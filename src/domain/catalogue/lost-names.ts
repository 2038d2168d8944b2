/**
 * Names that a faulty document has lost: of things that stand in it, but whose definition cannot
 * be used. Whoever names one of them has made no mistake, and is not told of one: its fault is
 * said where it is defined, once.
 */

import type { EntityList } from './document.js';
import { nearest } from './likeness.js';

/** Where a name is looked up: a list of the document, or one inside an entity. */
export type NameSpace = string;

/** The names of one sort inside one entity, such as the positions of a layout. */
export function inside(list: EntityList, id: string, sort: string): NameSpace {
  return `${list}/${id}/${sort}`;
}

/** So many unknown names are compared with all that are known. */
const MOST_COMPARED = 1000;

interface Lost {
  readonly names: Set<string>;
  /** How many things have no name at all: each can be what one unknown name means. */
  nameless: number;
  isAll: boolean;
  /** Unknown names that were looked for, and whether one that is known was probably meant. */
  readonly missed: Map<string, boolean>;
}

export class LostNames {
  readonly #spaces = new Map<NameSpace, Lost>();
  readonly #excused: ReadonlyMap<NameSpace, ReadonlySet<string>>;

  private constructor(excused: ReadonlyMap<NameSpace, ReadonlySet<string>>) {
    this.#excused = excused;
  }

  static none(): LostNames {
    return new LostNames(new Map());
  }

  /**
   * For a second reading of the document, once it is known which names nothing has: of those, as
   * many are excused as there are nameless things, and slips for known names last.
   */
  settled(): LostNames {
    const excused = new Map<NameSpace, Set<string>>();
    for (const [space, { nameless, missed }] of this.#spaces) {
      const names = [...missed].sort(([, a], [, b]) => Number(a) - Number(b));
      excused.set(space, new Set(names.slice(0, nameless).map(([name]) => name)));
    }
    return new LostNames(excused);
  }

  /** Whether a second reading would find fewer faults. */
  get isUnsettled(): boolean {
    return [...this.#spaces.values()].some(({ nameless, missed }) => nameless * missed.size > 0);
  }

  #at(space: NameSpace): Lost {
    const known = this.#spaces.get(space);
    if (known !== undefined) return known;
    const fresh: Lost = { names: new Set(), nameless: 0, isAll: false, missed: new Map() };
    this.#spaces.set(space, fresh);
    return fresh;
  }

  /** Loses the name of a thing that cannot be used. */
  add(space: NameSpace, name: string): void {
    this.#at(space).names.add(name);
  }

  /** Loses a thing that has no name, or one that cannot be its name. */
  addNameless(space: NameSpace, written = ''): void {
    const lost = this.#at(space);
    lost.nameless += 1;
    lost.names.add(written);
  }

  /**
   * Loses a name that two things have: nobody can say which of them is meant by it, nor what the
   * other one should have been called.
   */
  addDoubled(space: NameSpace, name: string): void {
    this.addNameless(space, name);
  }

  /** Loses whatever names there may be: nobody can tell which ones were meant. */
  addAll(space: NameSpace): void {
    this.#at(space).isAll = true;
  }

  /** Whether any name at all is lost there. */
  hasAny(space: NameSpace): boolean {
    return this.#spaces.has(space);
  }

  /**
   * Whether a name is one of those that are lost. The empty name stands for one that could not be
   * read, of which enough is said already.
   */
  has(space: NameSpace, name: string): boolean {
    if (name === '') return true;
    const lost = this.#spaces.get(space);
    return lost !== undefined && (lost.isAll || lost.names.has(name));
  }

  /**
   * Whether nobody is to blame for a name that nothing has: it is lost, or that of a nameless
   * thing. Which those are shows only when the whole document has been read, so a first reading
   * excuses none of them.
   */
  excuses(space: NameSpace, name: string, known: Iterable<string>): boolean {
    if (this.has(space, name) || this.#excused.get(space)?.has(name) === true) return true;
    const lost = this.#spaces.get(space);
    if (lost !== undefined && lost.nameless > 0 && !lost.missed.has(name)) {
      // Only the order in which they are excused hangs on it, so of very many it does not matter.
      const isSlip = lost.missed.size < MOST_COMPARED && nearest(name, known) !== null;
      lost.missed.set(name, isSlip);
    }
    return false;
  }
}
