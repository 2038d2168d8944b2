/**
 * Writes a feed of what fits what: objects of NDJSON, or rows of CSV, in pieces. It holds no more
 * than the piece that is being written and the lines of one part.
 */

import type { LineType } from '../contract/fit-batch.js';
import { FEED_COLUMNS, type FitsFeedEnd } from '../contract/fits-feed.js';
import type { FeedForm, FeedLine, FitsFeed, FitsFeedStart } from '../usecases/fits-feed.js';
import { field, ROW_END } from './csv.js';
import { PIECE } from './fit-lines.js';

interface FeedWriter {
  start(start: FitsFeedStart): string;
  line(line: FeedLine): string;
  end(end: FitsFeedEnd): string;
}

const NDJSON: FeedWriter = {
  start: (start) => `${JSON.stringify({ start })}\n`,
  line: (line) => `${JSON.stringify(line)}\n`,
  end: (end) => `${JSON.stringify({ end })}\n`,
};

type Column = (typeof FEED_COLUMNS)[FeedForm][number];

/** The columns are of the form, which the start says. */
function csvWriter(form: FeedForm): FeedWriter {
  const columns: readonly Column[] = FEED_COLUMNS[form];
  const row = (fields: Partial<Record<Column, string>>) =>
    columns.map((name) => field(fields[name] ?? '')).join(',') + ROW_END;
  return {
    start: (start) =>
      columns.join(',') + ROW_END + row({ kind: 'start', json: JSON.stringify(start) }),
    line: (line) => row({ kind: 'fit', ...fieldsOf(line) }),
    end: (end) => row({ kind: 'end', json: JSON.stringify(end) }),
  };
}

function fieldsOf(line: FeedLine): Partial<Record<Column, string>> {
  const fields: Record<string, string> = {};
  for (const [name, value] of Object.entries(line)) {
    if (!Array.isArray(value)) fields[name] = String(value ?? '');
  }
  if (!('built' in line)) return fields;
  const [from, until] = line.built;
  return { ...fields, builtFrom: from ?? '', builtUntil: until ?? '' };
}

export class FeedLines {
  readonly #feed: FitsFeed;
  readonly #writer: FeedWriter;
  readonly #counts = { lines: 0, alone: { holds: 0, open: 0, fails: 0 }, gone: 0 };

  constructor(feed: FitsFeed, type: LineType) {
    this.#feed = feed;
    this.#writer = type === 'text/csv' ? csvWriter(feed.start.form) : NDJSON;
  }

  /** How many lines there were so far of what. */
  get counts(): FitsFeedEnd {
    return this.#counts;
  }

  /** Empty ones leave a turn to others. */
  *pieces(): Generator<string> {
    let piece = this.#writer.start(this.#feed.start);
    for (const lines of this.#feed.lines()) {
      if (lines.length === 0) yield '';
      for (const line of lines) {
        this.#count(line);
        piece += this.#writer.line(line);
        if (piece.length < PIECE) continue;
        yield piece;
        piece = '';
      }
    }
    yield piece + this.#writer.end(this.#counts);
  }

  #count(line: FeedLine): void {
    this.#counts.lines += 1;
    if ('gone' in line) this.#counts.gone += 1;
    else this.#counts.alone[line.alone] += 1;
  }
}
