/**
 * All that fits, asked over HTTP, as tests look at it.
 */

import { expect } from 'vitest';
import type { Rig } from './fixture.js';

export type Line = Record<string, unknown>;

/** What a feed answers, line by line. */
export async function linesOf({ app }: Rig, target: string): Promise<Line[]> {
  const response = await app.request(target);
  expect([target, response.status]).toEqual([target, 200]);
  const text = await response.text();
  expect(text.endsWith('\n')).toBe(true);
  return text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);
}

/** Without the first and the last line. */
export function middle(lines: readonly Line[]): Line[] {
  return lines.slice(1, -1);
}

export const FEED = '/v1/editions/1/fits';
