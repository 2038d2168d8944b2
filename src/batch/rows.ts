/**
 * Takes a stream of bytes apart into rows: lines of NDJSON, or rows of CSV, which go over several
 * lines where a field in quotation marks does. However the bytes are cut into chunks, the rows are
 * the same, and no more is kept than one row and one slice of a chunk.
 *
 * What a row says, is for others. A row that is too long is passed over to its next line feed; one
 * that is no UTF-8 is told so, and the rows around it are as they are.
 */

import { LIMITS } from '../contract/limits.js';

export interface Row {
  /** Its first line, counted from 1. */
  readonly line: number;
  /** The line behind its last one. */
  readonly next: number;
  /** Without its line end, which is LF or CRLF; empty where it has a fault. */
  readonly text: string;
  readonly fault: 'line-too-long' | 'not-utf-8' | null;
}

const LONGEST = LIMITS.batchLineBytes.value;

/** A chunk is worked on in such pieces, however large it comes. */
const SLICE_BYTES = 65_536;

const LINE_FEED = 0x0a;
const CARRIAGE_RETURN = 0x0d;
const COMMA = 0x2c;
const QUOTE = 0x22;
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf] as const;

/** Where in a row of CSV the next byte stands. */
type Inside = 'start' | 'field' | 'quotes' | 'after-quote';

const NOTHING = new Uint8Array(0);

export class RowReader {
  readonly #takesQuotes: boolean;
  readonly #decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  /** The first bytes, until it is known whether they are a byte order mark; null from then on. */
  #first: Uint8Array | null = NOTHING;
  /** What there is of a row that has not ended. */
  #begun: Uint8Array[] = [];
  #begunBytes = 0;
  /** Line feeds in it. */
  #begunLines = 0;
  #isTooLong = false;
  #inside: Inside = 'start';
  /** The line that the next row begins on. */
  #line = 1;

  constructor({ takesQuotes }: { readonly takesQuotes: boolean }) {
    this.#takesQuotes = takesQuotes;
  }

  /** The rows that end in this chunk, a slice of it at a time. */
  *push(chunk: Uint8Array): Generator<readonly Row[]> {
    const bytes = this.#first === null ? chunk : this.#behindMark(this.#first, chunk);
    for (let at = 0; at < bytes.length; at += SLICE_BYTES) {
      yield this.#rowsIn(bytes.subarray(at, at + SLICE_BYTES));
    }
  }

  /** The last row, where no line feed ends it. */
  *end(): Generator<readonly Row[]> {
    if (this.#first !== null) {
      const bytes = this.#first;
      this.#first = null;
      yield this.#rowsIn(bytes);
    }
    if (this.#begunBytes > 0 || this.#isTooLong) yield [this.#endRow(NOTHING)];
  }

  /** A byte order mark is let pass: some editors and spreadsheets write one. */
  #behindMark(first: Uint8Array, chunk: Uint8Array): Uint8Array {
    const bytes = joined([first, chunk]);
    const known = BYTE_ORDER_MARK.slice(0, bytes.length);
    if (known.some((byte, index) => byte !== bytes[index])) {
      this.#first = null;
      return bytes;
    }
    if (bytes.length < BYTE_ORDER_MARK.length) {
      this.#first = bytes;
      return NOTHING;
    }
    this.#first = null;
    return bytes.subarray(BYTE_ORDER_MARK.length);
  }

  #rowsIn(slice: Uint8Array): readonly Row[] {
    const rows: Row[] = [];
    let bytes = slice;
    if (this.#isTooLong) {
      const end = bytes.indexOf(LINE_FEED);
      if (end === -1) return rows;
      rows.push(this.#endRow(NOTHING));
      bytes = bytes.subarray(end + 1);
    }
    const isPlain =
      !this.#takesQuotes || (this.#inside !== 'quotes' && bytes.indexOf(QUOTE) === -1);
    if (isPlain) this.#addPlain(bytes, rows);
    else this.#addQuoted(bytes, rows);
    return rows;
  }

  /** Each line feed ends a row. */
  #addPlain(bytes: Uint8Array, rows: Row[]): void {
    const first = bytes.indexOf(LINE_FEED);
    const last = bytes.lastIndexOf(LINE_FEED);
    if (first !== -1) {
      rows.push(this.#endRow(bytes.subarray(0, first)));
      if (last > first) this.#addLines(bytes.subarray(first + 1, last), rows);
    }
    const rest = bytes.subarray(last + 1);
    if (rest.length > 0) this.#inside = rest.at(-1) === COMMA ? 'start' : 'field';
    this.#keep(rest);
  }

  /** Whole rows of one line each, none of them as long as a slice. */
  #addLines(bytes: Uint8Array, rows: Row[]): void {
    const text = this.#textOf(bytes);
    if (text === null) {
      let start = 0;
      for (let end = 0; end !== bytes.length; start = end + 1) {
        const found = bytes.indexOf(LINE_FEED, start);
        end = found === -1 ? bytes.length : found;
        rows.push(this.#endRow(bytes.subarray(start, end)));
      }
      return;
    }
    let line = this.#line;
    let start = 0;
    while (start <= text.length) {
      const found = text.indexOf('\n', start);
      const end = found === -1 ? text.length : found;
      const isCarried = end > start && text.charCodeAt(end - 1) === CARRIAGE_RETURN;
      const row = text.slice(start, isCarried ? end - 1 : end);
      rows.push({ line, next: line + 1, text: row, fault: null });
      line += 1;
      start = end + 1;
    }
    this.#line = line;
  }

  /** A line feed ends a row unless it stands in quotation marks. */
  #addQuoted(bytes: Uint8Array, rows: Row[]): void {
    let start = 0;
    let inside = this.#inside;
    for (let at = 0; at < bytes.length; at += 1) {
      const byte = bytes[at] ?? LINE_FEED;
      if (byte === LINE_FEED) {
        // Past the limit any line feed ends it, however the bytes were cut.
        const isOver = this.#begunBytes + at - start > LONGEST + 1;
        if (inside === 'quotes' && !isOver) {
          this.#begunLines += 1;
          continue;
        }
        rows.push(this.#endRow(bytes.subarray(start, at)));
        start = at + 1;
        inside = 'start';
      } else inside = insideAfter(inside, byte);
    }
    this.#inside = inside;
    this.#keep(bytes.subarray(start));
  }

  #keep(rest: Uint8Array): void {
    if (rest.length === 0) return;
    this.#begunBytes += rest.length;
    if (this.#begunBytes > LONGEST + 1) {
      this.#begun = [];
      this.#isTooLong = true;
    } else this.#begun.push(rest.slice());
  }

  /** The row that has begun, with what there is of it in this slice. */
  #endRow(rest: Uint8Array): Row {
    const line = this.#line;
    const next = line + this.#begunLines + 1;
    const isTooLong = this.#isTooLong;
    const whole = this.#begun.length === 0 ? rest : joined([...this.#begun, rest]);
    this.#begun = [];
    this.#begunBytes = 0;
    this.#begunLines = 0;
    this.#isTooLong = false;
    this.#inside = 'start';
    this.#line = next;
    const bytes = whole.at(-1) === CARRIAGE_RETURN ? whole.subarray(0, -1) : whole;
    if (isTooLong || bytes.length > LONGEST)
      return { line, next, text: '', fault: 'line-too-long' };
    const text = this.#textOf(bytes);
    return text === null
      ? { line, next, text: '', fault: 'not-utf-8' }
      : { line, next, text, fault: null };
  }

  #textOf(bytes: Uint8Array): string | null {
    try {
      return this.#decoder.decode(bytes);
    } catch (error) {
      if (error instanceof TypeError) return null;
      throw error;
    }
  }
}

function insideAfter(inside: Inside, byte: number): Inside {
  switch (inside) {
    case 'quotes':
      return byte === QUOTE ? 'after-quote' : 'quotes';
    case 'after-quote':
      if (byte === QUOTE) return 'quotes';
      return byte === COMMA ? 'start' : 'field';
    case 'start':
      if (byte === QUOTE) return 'quotes';
      return byte === COMMA ? 'start' : 'field';
    case 'field':
      return byte === COMMA ? 'start' : 'field';
  }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
