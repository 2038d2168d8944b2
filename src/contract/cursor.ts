/**
 * Where a list goes on, as one opaque text. It names the edition by number and hash, the list with
 * its filters, and the last entry that was given, so that pages of one list are pages of one
 * edition, whatever is published between them. It holds no secret and gives no authority: who
 * makes one up asks for nothing that a filter could not ask for.
 */

import type { EditionHead } from '../usecases/ports.js';
import { canonicalText, ordered } from './canonical.js';
import { z } from './openapi-zod.js';

export interface Cursor {
  readonly edition: number;
  /** Of the edition: a number alone could be that of another store. */
  readonly hash: string;
  /** The list and its filters, in their one form. */
  readonly list: string;
  /** The sort key of the last entry that was given. */
  readonly after: readonly string[];
}

/** A list with its filters, in their one form, by which its cursors know it. */
export function listName({ path }: { readonly path: string }, filters: object): string {
  return `${path}?${canonicalText(ordered(filters))}`;
}

/** The answer of a list with its next place as a text for clients; null at its end. */
export function withCursor<Answer extends { readonly next: readonly string[] | null }>(
  answer: Answer,
  { number: edition, hash }: Pick<EditionHead, 'number' | 'hash'>,
  list: string,
): Omit<Answer, 'next'> & { readonly next: string | null } {
  const { next: after } = answer;
  const next = after === null ? null : cursorText({ edition, hash, list, after });
  return { ...answer, next };
}

/** So much of a hash tells the editions of a catalogue apart. */
const HASH_DIGITS = 16;

const FORM = z.tuple([z.int().min(1), z.string(), z.string(), z.array(z.string()).min(1)]);

export function cursorText({ edition, hash, list, after }: Cursor): string {
  const bytes = new TextEncoder().encode(JSON.stringify([edition, shortened(hash), list, after]));
  return z.util.uint8ArrayToBase64url(bytes);
}

/** Null where the text is no cursor; its hash is as short as those that `isOf` compares. */
export function readCursor(text: string): Cursor | null {
  const read = FORM.safeParse(decoded(text));
  if (!read.success) return null;
  const [edition, hash, list, after] = read.data;
  return { edition, hash, list, after };
}

/** Whether the cursor was given out by an edition of this hash. */
export function isOf(cursor: Cursor, editionHash: string): boolean {
  return cursor.hash === shortened(editionHash);
}

function decoded(text: string): unknown {
  try {
    const bytes = z.util.base64urlToUint8Array(text);
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (error) {
    const isNoCursor =
      error instanceof SyntaxError ||
      error instanceof TypeError ||
      (error instanceof Error && error.name === 'InvalidCharacterError');
    if (isNoCursor) return null;
    throw error;
  }
}

function shortened(hash: string): string {
  return hash.replace(/^sha256-/, '').slice(0, HASH_DIGITS);
}
