/**
 * Writes what comes back: objects of NDJSON, or rows of CSV. Of an answer the part that does not
 * hang on the line is written apart (`tail`), so that it can be kept for the next line that asks
 * the same.
 */

import { ANSWER_COLUMNS, type FitBatchEnd, type LineType } from '../contract/fit-batch.js';
import type { FitAnswer } from '../usecases/answer.js';
import type { FitBatchStart, ShortFit } from '../usecases/fit-batch.js';
import { field, ROW_END } from './csv.js';

/** A problem of one line, as far as a row shows it. */
export interface LineProblem {
  readonly code: string;
  readonly detail: string;
}

export interface AnswerWriter {
  start(start: FitBatchStart): string;
  end(end: FitBatchEnd): string;
  answerTail(answer: ShortFit | FitAnswer): string;
  problemTail(problem: LineProblem): string;
  /** A line: what was asked by, and one of the tails. */
  line(kind: 'answer' | 'error', line: number, ref: string | undefined, tail: string): string;
}

const NDJSON: AnswerWriter = {
  start: (start) => `${JSON.stringify({ start })}\n`,
  end: (end) => `${JSON.stringify({ end })}\n`,
  answerTail: (answer) =>
    isShort(answer) ? JSON.stringify(answer).slice(1) : `"answer":${JSON.stringify(answer)}}`,
  problemTail: (problem) => `"error":${JSON.stringify(problem)}}`,
  line: (_, line, ref, tail) => {
    const known = ref === undefined ? '' : `"ref":${JSON.stringify(ref)},`;
    return `{${known}"line":${line},${tail}\n`;
  },
};

const HEADER = ANSWER_COLUMNS.join(',') + ROW_END;

/** The fields behind `kind`, `line` and `ref`. */
type Fields = Partial<Record<(typeof BEHIND)[number], string>>;

const BEHIND = ['vehicle', 'part', 'alone', 'verdict', 'codes', 'code', 'text', 'json'] as const;

function tailOf(fields: Fields): string {
  return BEHIND.map((name) => field(fields[name] ?? '')).join(',') + ROW_END;
}

const CSV: AnswerWriter = {
  start: (start) => `${HEADER}start,,,${tailOf({ json: JSON.stringify(start) })}`,
  end: (end) => `end,,,${tailOf({ json: JSON.stringify(end) })}`,
  answerTail: (answer) => {
    const { vehicle, part, alone, verdict } = answer;
    const common = { vehicle, part, alone, verdict: verdict ?? '' };
    if (isShort(answer)) return tailOf({ ...common, codes: answer.codes.join(' ') });
    const { code, text } = answer.summary;
    return tailOf({ ...common, code, text, json: JSON.stringify(answer) });
  },
  problemTail: (problem) => {
    const { code, detail: text } = problem;
    return tailOf({ code, text, json: JSON.stringify(problem) });
  },
  line: (kind, line, ref, tail) => `${kind},${line},${ref === undefined ? '' : field(ref)},${tail}`,
};

export const WRITERS: Readonly<Record<LineType, AnswerWriter>> = {
  'application/x-ndjson': NDJSON,
  'text/csv': CSV,
};

function isShort(answer: ShortFit | FitAnswer): answer is ShortFit {
  return 'codes' in answer;
}
