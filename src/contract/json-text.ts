/**
 * A JSON text (RFC 8259) read so that its author can mend it: where it stops being JSON, by line
 * and column, and which names cannot count: those that stand twice in one object, of which
 * `JSON.parse` would silently drop the first, and `__proto__`, which checkers pass over.
 */

import { MOST_LISTED } from '../domain/catalogue/faults.js';
import { pointerTo } from './json-pointer.js';
import { LIMITS } from './limits.js';
import type {
  FaultOf,
  JsonExpected,
  JsonFaultData,
  JsonFound,
  JsonStop,
} from './problems/fault.js';

export type JsonFault = FaultOf<keyof JsonFaultData> & {
  /** RFC 6901 pointer. */
  readonly pointer: string;
};

export type ReadJson =
  | {
      readonly isJson: true;
      readonly value: unknown;
      /** The first that were found, `MOST_LISTED` at most. */
      readonly faults: readonly JsonFault[];
    }
  | { readonly isJson: false; readonly stop: JsonStop };

/** A text that goes on deeper inside is read, and faulted. */
const DEEPEST = LIMITS.bodyLevels.value;

/** More than `mostValues` values, those in lists and objects too, are a fault of the whole. */
export function readJson(text: string, mostValues = Number.POSITIVE_INFINITY): ReadJson {
  const scan = new Scan(text);
  const stop = scan.run();
  if (scan.values > mostValues) scan.tellTooMany(mostValues);
  if (stop !== null) return { isJson: false, stop: stopAt(text, stop) };
  return { isJson: true, value: JSON.parse(text) as unknown, faults: scan.faults };
}

interface Stop {
  readonly offset: number;
  readonly expected: JsonExpected;
}

function stopAt(text: string, { offset, expected }: Stop): JsonStop {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  const column = Array.from(before.slice(before.lastIndexOf('\n') + 1)).length + 1;
  return { line, column, offset, expected, ...foundAt(text, offset) };
}

function foundAt(text: string, offset: number): Pick<JsonStop, 'found' | 'sign'> {
  const rest = text.slice(offset, offset + 40);
  const [word = ''] = /^([\w$.+-]+|[\s\S])/u.exec(rest) ?? [];
  const found = foundIn(word);
  return { found, sign: found === 'sign' ? word : null };
}

function foundIn(word: string): JsonFound {
  if (word === '') return 'end-of-text';
  if (/^[\n\r]$/.test(word)) return 'end-of-line';
  if (/^\s$/.test(word)) return 'space';
  if (/^\p{C}$/u.test(word)) return 'control-character';
  return word === "'" ? 'single-quote' : word === '"' ? 'double-quote' : 'sign';
}

const SPACE = /[ \t\n\r]*/y;
/** A string without its closing quote; its class is all but quote, backslash and U+0000 to 001F. */
const UNCLOSED = /"[ !#-[\]-\uffff]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[ !#-[\]-\uffff]*)*/y;
const STRING = new RegExp(`${UNCLOSED.source}"`, 'y');
const SCALAR = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;

/** One open array or object. */
interface Frame {
  readonly names: Set<string> | null;
  /** The name, or the index, of what is being read. */
  step: string | number;
}

/** The grammar of RFC 8259, without recursion, so that no depth overflows the stack. */
class Scan {
  readonly faults: JsonFault[] = [];
  /** Arrays and objects are values, and so is what is in them. */
  values = 0;
  readonly #text: string;
  readonly #open: Frame[] = [];
  #at = 0;
  #isTooDeep = false;

  constructor(text: string) {
    this.#text = text;
  }

  /** Null where the whole text is one JSON value. */
  run(): Stop | null {
    let stop = this.#value();
    while (stop === null && this.#open.length > 0) stop = this.#afterValue();
    if (stop !== null) return stop;
    this.#skip(SPACE);
    return this.#at === this.#text.length ? null : this.#stop('end');
  }

  /** The first of all faults, since whoever mends that looks at a new text. */
  tellTooMany(most: number): void {
    this.faults.unshift({
      pointer: '',
      code: 'too-many-values',
      data: { most, limit: 'bodyValues' },
    });
  }

  /** A scalar, or the beginning of an array or object up to its first value. */
  #value(): Stop | null {
    for (;;) {
      this.values += 1;
      this.#skip(SPACE);
      if (this.#take('{')) {
        this.#enter({ names: new Set(), step: '' });
        if (this.#take('}')) return this.#leave();
        const stop = this.#name();
        if (stop !== null) return stop;
      } else if (this.#take('[')) {
        this.#enter({ names: null, step: 0 });
        if (this.#take(']')) return this.#leave();
      } else if (this.#text[this.#at] === '"') {
        return this.#skip(STRING) === null ? this.#badString() : null;
      } else {
        return this.#skip(SCALAR) === null ? this.#stop('value') : null;
      }
    }
  }

  #afterValue(): Stop | null {
    const frame = this.#open.at(-1);
    if (frame === undefined) throw new Error('a value inside nothing has nothing after it');
    const close = frame.names === null ? ']' : '}';
    if (this.#take(close)) return this.#leave();
    if (!this.#take(',')) return this.#stop(close === ']' ? 'comma-or-bracket' : 'comma-or-brace');
    if (typeof frame.step === 'number') frame.step += 1;
    else {
      const stop = this.#name();
      if (stop !== null) return stop;
    }
    return this.#value();
  }

  /** A member's name with its colon. */
  #name(): Stop | null {
    this.#skip(SPACE);
    if (this.#text[this.#at] !== '"') return this.#stop('name');
    const written = this.#skip(STRING);
    if (written === null) return this.#badString();
    const name = JSON.parse(written) as string;
    const frame = this.#open.at(-1);
    if (frame !== undefined) {
      frame.step = name;
      if (frame.names?.has(name) === true) this.#fault('repeated-name', { name });
      if (name === '__proto__') this.#fault('reserved-name', { name });
      frame.names?.add(name);
    }
    return this.#take(':') ? null : this.#stop('colon');
  }

  /** Said once, where it begins: what is inside is too deep as well. */
  #enter(frame: Frame): void {
    this.#open.push(frame);
    if (this.#open.length !== DEEPEST + 1 || this.#isTooDeep) return;
    this.#isTooDeep = true;
    this.#fault('too-deep', { most: DEEPEST, limit: 'bodyLevels' }, this.#open.slice(0, -1));
  }

  #leave(): null {
    this.#open.pop();
    return null;
  }

  #fault<Code extends keyof JsonFaultData>(
    code: Code,
    data: JsonFaultData[Code],
    around: readonly Frame[] = this.#open,
  ): void {
    if (this.faults.length === MOST_LISTED) return;
    const pointer = pointerTo(around.map(({ step }) => step));
    // The compiler does not see that code and data of one call belong together.
    this.faults.push({ pointer, code, data } as JsonFault);
  }

  #take(sign: string): boolean {
    this.#skip(SPACE);
    if (this.#text[this.#at] !== sign) return false;
    this.#at += 1;
    return true;
  }

  #skip(pattern: RegExp): string | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text);
    if (found === null) return null;
    this.#at += found[0].length;
    return found[0];
  }

  #stop(expected: JsonExpected): Stop {
    return { offset: this.#at, expected };
  }

  /** Where a string goes wrong: an escape that is none, a line break inside, or no end. */
  #badString(): Stop {
    this.#skip(UNCLOSED);
    const isEscape = this.#text[this.#at] === '\\';
    return this.#stop(isEscape ? 'escape' : 'closing-quote');
  }
}
