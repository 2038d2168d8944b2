/**
 * One row of CSV (RFC 4180) and its fields. Without a quotation mark in it a row is its text cut at
 * the commas; of all others `csv-parse` says what is in them, or what is wrong.
 */

import { CsvError, parse } from 'csv-parse/sync';
import type { RowFault } from '../contract/problems/fault.js';

const RULES = {
  record_delimiter: ['\r\n', '\n'],
  relax_column_count: true,
  skip_empty_lines: false,
};

const FAULTS: ReadonlyMap<string, RowFault> = new Map([
  ['INVALID_OPENING_QUOTE', 'quote-inside'],
  ['CSV_INVALID_CLOSING_QUOTE', 'after-quote'],
  ['CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE', 'after-quote'],
  ['CSV_QUOTE_NOT_CLOSED', 'unclosed-quote'],
]);

/** The fields of a row without its line end; the word of a fault where it has one. */
export function fieldsOf(row: string): string[] | RowFault {
  if (!row.includes('"')) return row.split(',');
  try {
    return parse(row, RULES)[0] ?? [''];
  } catch (error) {
    const fault = error instanceof CsvError ? FAULTS.get(error.code) : undefined;
    if (fault === undefined) throw error;
    return fault;
  }
}

const NEEDS_QUOTES = /[",\r\n]/;

/** A field as it is written. */
export function field(text: string): string {
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** RFC 4180: rows end so. */
export const ROW_END = '\r\n';
