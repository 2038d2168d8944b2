/**
 * The key that stands for the answer of a question: a digest of everything that decides the bytes
 * of it. Two questions that differ in their order alone are one.
 */

import { hash } from 'node:crypto';
import { ENGINE_VERSION } from '../contract/answer-head.js';
import { canonicalText } from '../contract/canonical.js';
import type { View } from '../contract/view.js';

export interface Keyed {
  /** Of the edition that answers; its number, which answers name too, stands in the input. */
  readonly editionHash: string;
  readonly path: string;
  readonly mediaType: string;
  readonly view: View;
  /** What the use-case is asked, all of it: edition, language, defaults filled in. */
  readonly input: object;
}

/** 256 bits in base64url. Can be had before anything is judged. */
export function keyOf({ editionHash, path, mediaType, view, input }: Keyed): string {
  return digestOf([ENGINE_VERSION, editionHash, path, mediaType, view, canonicalText(input)]);
}

export function digestOf(parts: readonly string[]): string {
  return hash('sha256', JSON.stringify(parts), 'base64url');
}
