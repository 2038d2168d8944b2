/**
 * The compiled index of an edition: interned faces, a table of which classes meet which, and
 * postings from a class to the faces that have it.
 *
 * It answers "what could meet this?" without looking at every part, and can be written as
 * columns of numbers and read back: the columns must fit the catalogue that they are read for.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import type { Outcome } from '../check/state.js';
import { judgeMeeting } from '../judge/mate.js';
import { differ } from './differing.js';
import { type FaceClass, type FaceEntry, type Interned, internFaces } from './interning.js';

/** What a cell of the table says; `unknown` cells have not been judged yet. */
const CELL = { unknown: 0, fails: 1, open: 2, holds: 3 } as const;
const OUTCOMES: readonly (Outcome | null)[] = [null, 'fails', 'open', 'holds'];

/** Up to so many pairs of classes are judged when an edition is published; others when asked. */
const JUDGED_AT_ONCE = 20_000;

export interface Columns {
  /** The class of each face, in the order of the catalogue. */
  readonly faceClass: Int32Array;
  /** Row-major table of classes by classes, see `CELL`. */
  readonly meets: Uint8Array;
}

export class CompiledIndex {
  readonly #catalogue: Catalogue;
  readonly #interned: Interned;
  readonly #meets: Uint8Array;
  readonly #starts: Int32Array;
  readonly #postings: Int32Array;
  readonly #classOf = new Map<string, number>();
  /** How many pairs have been judged: what tests count. */
  judged = 0;

  constructor(catalogue: Catalogue, columns: Columns | null = null) {
    this.#catalogue = catalogue;
    this.#interned = internFaces(catalogue);
    const { entries, classes } = this.#interned;
    const size = classes.length * classes.length;
    this.#meets = columns === null ? new Uint8Array(size) : fitting(columns, this.#interned);
    this.#starts = new Int32Array(classes.length + 1);
    this.#postings = new Int32Array(entries.length);
    this.#post();
    for (const { part, face, class: id } of entries) {
      this.#classOf.set(`${part.id} ${face.name}`, id);
    }
  }

  get faces(): number {
    return this.#interned.entries.length;
  }

  get classes(): readonly FaceClass[] {
    return this.#interned.classes;
  }

  /** Counting sort of the faces by class. */
  #post(): void {
    const { entries, classes } = this.#interned;
    for (const entry of entries)
      this.#starts[entry.class + 1] = at(this.#starts, entry.class + 1) + 1;
    for (let id = 0; id < classes.length; id += 1) {
      this.#starts[id + 1] = at(this.#starts, id + 1) + at(this.#starts, id);
    }
    const next = this.#starts.slice();
    for (const [index, entry] of entries.entries()) {
      const place = at(next, entry.class);
      this.#postings[place] = index;
      next[entry.class] = place + 1;
    }
  }

  /** The class of a recorded face, or null where the part has no such face. */
  classOf(part: string, face: string): number | null {
    return this.#classOf.get(`${part} ${face}`) ?? null;
  }

  /** The faces of a class, in the order of the catalogue. */
  facesOf(id: number): FaceEntry[] {
    const { entries } = this.#interned;
    const found = this.#postings.subarray(at(this.#starts, id), at(this.#starts, id + 1));
    return [...found].flatMap((index) => entries[index] ?? []);
  }

  /** Whether two classes meet, by their recorded values alone; as-built evidence not counted. */
  meets(a: number, b: number): Outcome {
    const cell = a * this.classes.length + b;
    const known = OUTCOMES[at(this.#meets, cell)] ?? null;
    if (known !== null) return known;
    const outcome = this.#judge(a, b);
    this.#meets[cell] = CELL[outcome];
    this.#meets[b * this.classes.length + a] = CELL[outcome];
    return outcome;
  }

  #judge(a: number, b: number): Outcome {
    const x = this.classes[a];
    const y = this.classes[b];
    if (x === undefined || y === undefined) throw new RangeError(`no such classes: ${a}, ${b}`);
    if (!couldMeet(x, y) || differ(x, y)) return 'fails';
    this.judged += 1;
    // Two pieces, even of one article: a name that no catalogue can hold keeps them apart.
    const other = { ...y.part, id: `(${y.part.id})` };
    const question = {
      a: { part: x.part, interface: x.face.name },
      b: { part: other, interface: y.face.name },
    };
    return judgeMeeting(this.#catalogue, question).mating.computed;
  }

  /** The classes that meet this one, or may. */
  partnersOf(id: number, outcomes: readonly Outcome[] = ['holds', 'open']): number[] {
    return this.classes
      .filter((other) => outcomes.includes(this.meets(id, other.id)))
      .map((other) => other.id);
  }

  /** Judges all pairs that could meet, unless there are too many; then they are judged lazily. */
  complete(): void {
    const pairs = this.classes.flatMap((x) =>
      this.classes
        .filter((y) => y.id >= x.id && couldMeet(x, y) && !differ(x, y))
        .map((y) => [x.id, y.id] as const),
    );
    if (pairs.length > JUDGED_AT_ONCE) return;
    for (const [a, b] of pairs) this.meets(a, b);
  }

  columns(): Columns {
    const faceClass = Int32Array.from(this.#interned.entries, (entry) => entry.class);
    return { faceClass, meets: this.#meets.slice() };
  }
}

function at(column: Int32Array | Uint8Array, index: number): number {
  const value = column[index];
  if (value === undefined) throw new RangeError(`column of ${column.length} has no ${index}`);
  return value;
}

function couldMeet(x: FaceClass, y: FaceClass): boolean {
  return x.kind === y.kind && (x.side === null || x.side !== y.side);
}

/** The table of stored columns, if they are of this very catalogue. Throws a RangeError if not. */
function fitting({ faceClass, meets }: Columns, { entries, classes }: Interned): Uint8Array {
  const isSame =
    faceClass.length === entries.length &&
    entries.every((entry, index) => faceClass[index] === entry.class);
  if (!isSame || meets.length !== classes.length * classes.length) {
    throw new RangeError('the columns of the index are of another catalogue');
  }
  if (meets.some((cell) => cell >= OUTCOMES.length)) {
    throw new RangeError('the table of the index holds what no cell can be');
  }
  return meets.slice();
}
