/**
 * A batch says of every part on every vehicle of the demo what `GET /v1/fit` says: whether it fits
 * alone, the verdict, and the codes of what fails or is open. The codes are gathered here from the
 * whole answer, by code that is not the batch's own.
 */

import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { rigOf } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';

const demo = demoDocument() as unknown as CatalogueDocument;
const { vehicles = [], parts = [] } = demo;

/** Each time with all its facts untold a vehicle may take a while. */
const PATIENCE = 600_000;

interface Told {
  readonly state: string;
  readonly code: string;
}

interface Position extends Readonly<Record<string, unknown>> {
  readonly position: string;
}

interface Answer {
  readonly part: string;
  readonly alone: string;
  readonly verdict: string | null;
  readonly at: readonly string[];
  readonly positions: readonly Position[];
  readonly summary: { readonly code: string };
}

/** Every list of a position whose entries have a state is one of constraints. */
function codesIn({ at, positions, summary }: Answer): string[] {
  if (positions.length === 0) return [summary.code];
  const codes = positions
    .filter(({ position }) => at.includes(position))
    .flatMap((one) => Object.values(one))
    .flatMap((value) => (Array.isArray(value) ? (value as Told[]) : []))
    .flatMap(({ state, code }) => (state === 'fails' || state === 'open' ? code : []));
  return [...new Set(codes)].sort();
}

describe.each(vehicles.map(({ id }) => id))('on %s', (vehicle) => {
  test('every part', { timeout: PATIENCE }, async () => {
    const rig = rigOf({ documents: [demo] });
    const body = parts
      .map(({ id: part }) => `${JSON.stringify({ ref: part, vehicle, part })}\n`)
      .join('');
    const headers = { 'content-type': 'application/x-ndjson' };
    const response = await rig.app.request('/v1/fit/batch', { method: 'POST', headers, body });
    const lines = (await response.text()).trimEnd().split('\n').slice(1, -1);
    expect(lines.length).toBe(parts.length);
    for (const [index, { id }] of parts.entries()) {
      const got = await rig.app.request(`/v1/fit?vehicle=${vehicle}&part=${id}&changes=no`);
      const line = JSON.parse(lines[index] ?? '') as Record<string, unknown>;
      if (got.status !== 200) {
        const { instance: _, errors, ...problem } = (await got.json()) as Record<string, unknown>;
        expect(line).toMatchObject({ ref: id, line: index + 1, error: problem });
        const inLine = (line.error as { errors: { pointer?: string }[] }).errors;
        // One says the parameter, the other the field.
        const bare = (all: unknown) => (all as object[]).map((one) => ({ ...one, parameter: 0 }));
        const placed = inLine.map(({ pointer: _pointer, ...one }) => one);
        expect(bare(placed)).toEqual(bare(errors));
        continue;
      }
      const answer = (await got.json()) as Answer;
      const { part, alone, verdict } = answer;
      const codes = codesIn(answer);
      expect(line).toEqual({ ref: id, line: index + 1, vehicle, part, alone, verdict, codes });
    }
  });
});

test('there is something of everything in it', () => {
  expect(vehicles.length).toBeGreaterThan(5);
  expect(parts.length).toBeGreaterThan(100);
  expect(codesIn({ ...NOWHERE, positions: [] })).toEqual(['no-position']);
  expect(codesIn(NOWHERE)).toEqual(['a', 'b']);
});

const NOWHERE: Answer = {
  part: 'x',
  alone: 'fails',
  verdict: null,
  at: ['one'],
  summary: { code: 'no-position' },
  positions: [
    {
      position: 'one',
      matings: [
        { state: 'fails', code: 'b' },
        { state: 'open', code: 'a' },
        { state: 'holds', code: 'c' },
      ],
    },
    { position: 'two', checks: [{ state: 'fails', code: 'd' }] },
  ],
};
