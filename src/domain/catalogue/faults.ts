/**
 * The faults of a document: all of them, each with the JSON pointer (RFC 6901) of the place and
 * a sentence that a parts person understands. A fault refuses the document; a warning does not.
 */

import type { DoubtCode, FaultCode } from './fault-codes.js';
import { nearest, quoted } from './likeness.js';
import { LostNames, type NameSpace } from './lost-names.js';

export { nearest, quoted } from './likeness.js';

export interface Fault<Code extends string = string> {
  /** RFC 6901 pointer into the document, '' for the whole. */
  readonly pointer: string;
  /** Stable kebab-case word for programs. */
  readonly code: Code;
  readonly text: string;
}

/** The language of the sentences in which a document or a value of one is faulted. */
export const FAULT_LANGUAGE = 'en';

/**
 * So many faults of one document are listed, and so many doubts; all are counted. It is more than
 * anybody reads, and keeps a document that is nothing but faults from filling the memory.
 */
export const MOST_LISTED = 10_000;

/**
 * So many are looked at for what was meant. Each is compared with all names that there are, and a
 * document with more has another trouble than its spelling.
 */
export const MOST_GUESSED = 1000;

/** What a name can be the name of, with the code of the fault that nothing has it. */
export const SORTS = {
  facts: { one: 'fact', code: 'unknown-fact' },
  kinds: { one: 'kind', code: 'unknown-kind' },
  roles: { one: 'role', code: 'unknown-role' },
  parts: { one: 'part', code: 'unknown-part' },
  layouts: { one: 'layout', code: 'unknown-layout' },
  vehicles: { one: 'vehicle', code: 'unknown-vehicle' },
  positions: { one: 'position', code: 'unknown-position' },
  matings: { one: 'mating', code: 'unknown-mating' },
  sides: { one: 'side', code: 'unknown-side' },
  parameters: { one: 'parameter', code: 'unknown-parameter' },
  values: { one: 'value', code: 'unknown-value' },
} as const;

export type Sort = keyof typeof SORTS;

/** A name that nothing has. */
export interface UnknownName {
  readonly sort: Sort;
  readonly pointer: string;
  /** What could have been meant. */
  readonly known: Iterable<string>;
  /** Where the name is looked up, if not in a list of the document. */
  readonly space?: NameSpace;
  /** Said instead of "There is no …". */
  readonly text?: string;
}

export class FaultList {
  /** The first that were found, `MOST_LISTED` at most. */
  readonly faults: Fault<FaultCode>[] = [];
  readonly warnings: Fault<DoubtCode>[] = [];
  readonly lost: LostNames;
  #faultCount = 0;
  #warningCount = 0;
  readonly #touched = new Set<string>();
  readonly #unread = new Set<string>();
  readonly #mostGuessed: number;

  /**
   * @param lost shared by lists that speak of one document.
   * @param mostGuessed for so many faults it is looked what was meant.
   */
  constructor(lost: LostNames = LostNames.none(), mostGuessed = MOST_GUESSED) {
    this.lost = lost;
    this.#mostGuessed = mostGuessed;
  }

  fault(pointer: string, code: FaultCode, text: string): void {
    this.#faultCount += 1;
    if (this.faults.length < MOST_LISTED) this.faults.push({ pointer, code, text });
    this.#touch(pointer);
  }

  warn(pointer: string, code: DoubtCode, text: string): void {
    this.#warningCount += 1;
    if (this.warnings.length < MOST_LISTED) this.warnings.push({ pointer, code, text });
  }

  /** How many faults were found, whether listed or not. */
  get faultCount(): number {
    return this.#faultCount;
  }

  /** How many doubts were found, whether listed or not. */
  get warningCount(): number {
    return this.#warningCount;
  }

  /** A field that must be there is not. */
  missing(pointer: string, field: string, text: string): void {
    this.fault(pointer, 'missing-field', `"${field}" is missing: ${text}.`);
    this.unread(at(pointer, field));
  }

  /** Says that nothing has this name, unless the fault lies with the thing itself. */
  unknown(name: string, { sort, pointer, known, space = sort, text }: UnknownName): void {
    // Gone through twice, which an iterator cannot be.
    const words = known instanceof Set ? known : [...known];
    if (this.lost.excuses(space, name, words)) return;
    const { one, code } = SORTS[sort];
    const said = text ?? `There is no ${one} ${quoted(name)}.`;
    this.fault(pointer, code, `${said}${this.guess(name, words)}`);
  }

  /** " Did you mean 'x'?" or nothing; nothing where there are many faults or doubts already. */
  guess(word: string, known: Iterable<string>): string {
    return this.#faultCount + this.#warningCount < this.#mostGuessed ? hint(word, known) : '';
  }

  /** What stands at this very place cannot be used: its faults are said, it is left out. */
  unread(pointer: string): void {
    this.#unread.add(pointer);
    this.#touch(pointer);
  }

  isUnread(pointer: string): boolean {
    return this.#unread.has(pointer);
  }

  /** Whether there is a fault at this place or anywhere below it. */
  isTouched(pointer: string): boolean {
    return this.#touched.has(pointer);
  }

  #touch(pointer: string): void {
    let place = pointer;
    while (!this.#touched.has(place)) {
      this.#touched.add(place);
      place = place.slice(0, Math.max(0, place.lastIndexOf('/')));
    }
  }

  get isClean(): boolean {
    return this.#faultCount === 0;
  }
}

/** Adds one step to a pointer, escaped as RFC 6901 says. */
export function at(pointer: string, step: string | number): string {
  return `${pointer}/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** " Did you mean 'x'?" or nothing. */
export function hint(word: string, known: Iterable<string>): string {
  const guess = nearest(word, known);
  return guess === null ? '' : ` Did you mean '${guess}'?`;
}

/** Faults in the order of their places in the document; those of one place as they were said. */
export function inDocumentOrder<Code extends string>(
  faults: readonly Fault<Code>[],
  document: unknown,
): Fault<Code>[] {
  const order = new KeyOrder();
  const placed = faults.map((fault) => ({ fault, path: order.pathOf(fault.pointer, document) }));
  return placed.sort((a, b) => comparePaths(a.path, b.path)).map(({ fault }) => fault);
}

/** The order in which the keys of each object were written. */
class KeyOrder {
  readonly #known = new Map<object, ReadonlyMap<string, number>>();

  pathOf(pointer: string, document: unknown): number[] {
    const path: number[] = [];
    let value = document;
    for (const escaped of pointer.split('/').slice(1)) {
      if (typeof value !== 'object' || value === null) break;
      const step = escaped.replaceAll('~1', '/').replaceAll('~0', '~');
      path.push(Array.isArray(value) ? Number(step) : (this.#keysOf(value).get(step) ?? -1));
      value = (value as Readonly<Record<string, unknown>>)[step];
    }
    return path;
  }

  #keysOf(value: object): ReadonlyMap<string, number> {
    const known = this.#known.get(value);
    if (known !== undefined) return known;
    const keys = new Map(Object.keys(value).map((key, index) => [key, index]));
    this.#known.set(value, keys);
    return keys;
  }
}

function comparePaths(a: readonly number[], b: readonly number[]): number {
  for (const [depth, step] of a.entries()) {
    const other = b[depth];
    if (other === undefined) return 1;
    if (step !== other) return step - other;
  }
  return a.length - b.length;
}

/** Terms that name one another, the first again at the end. */
export function sayCircle(terms: readonly string[]): string {
  if (terms.length === 2) return `${quoted(terms[0] ?? '')} is computed from itself.`;
  return `These terms are computed from one another: ${terms.join(', ')}.`;
}
