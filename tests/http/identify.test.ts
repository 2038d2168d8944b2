/**
 * Which vehicle is this: what leaves one out and what does not, that a number proves nothing of
 * what is fitted, and that nobody keeps it.
 */

import { describe, expect, test } from 'vitest';
import { demoDocument } from '../memory-store.js';
import { json, rigOf } from './fixture.js';

const rig = rigOf({ documents: [demoDocument()], answerCacheBytes: 1_000_000 });

interface Wire {
  readonly candidates: readonly {
    readonly id: string;
    readonly why: readonly { readonly field: string; readonly recorded: boolean }[];
  }[];
  readonly counts: { readonly total: number };
  readonly excluded: readonly { readonly field: string; readonly count: number }[];
  readonly ask: readonly { readonly field: string }[];
  readonly warnings: readonly { readonly code: string }[];
  readonly vin: object | null;
}

async function asked(body: object): Promise<Wire> {
  const response = await rig.client.post('/v1/vehicles/identify').send(body).expect(200);
  return json(response) as unknown as Wire;
}

const idsOf = ({ candidates }: Wire) => candidates.map(({ id }) => id);

const byText = (a: string, b: string) => (a < b ? -1 : 1);

const EVERY = 10;

describe('a number', () => {
  test('leaves out whose recorded pattern it has not, and nobody without one', async () => {
    const answer = await asked({ vin: '0cblra-0003 0000017' });
    expect(idsOf(answer)).toContain('lirren-1');
    expect(idsOf(answer)).toContain('hulvane');
    expect(idsOf(answer)).not.toContain('lirren-2');
    expect(idsOf(answer)).not.toContain('gallivet');
    expect(answer.excluded).toMatchObject([{ field: 'vin', count: EVERY - answer.counts.total }]);
    const [lirren] = answer.candidates.filter(({ id }) => id === 'lirren-1');
    expect(lirren?.why).toMatchObject([{ field: 'vin', recorded: true }]);
    expect(idsOf(answer)[0]).toBe('lirren-1');
    const [hulvane] = answer.candidates.filter(({ id }) => id === 'hulvane');
    expect(hulvane?.why).toMatchObject([{ field: 'vin', recorded: false }]);
  });

  test.each([
    ['0CBGV000000041999', ['gallivet-early']],
    ['0CBGV000000042000', ['gallivet']],
    ['0CBGV00000004****', ['gallivet', 'gallivet-early']],
    ['0CBGV000000*41999', ['gallivet', 'gallivet-early']],
    ['*CBLR*00000000001', ['lirren-1', 'lirren-2']],
  ])('%s: its serial may be that of %j', async (vin, ids) => {
    const { candidates } = await asked({ vin });
    const matched = candidates.filter(({ why }) => why[0]?.recorded === true);
    expect(matched.map(({ id }) => id).toSorted(byText)).toEqual(ids);
  });

  test('says its parts, its check digit, the years that it may mean', async () => {
    // The sample that 49 CFR 565.15 prints, as the vectors have it.
    const { vin } = await asked({ vin: '1G4AH59H45G118341' });
    expect(vin).toEqual({
      maker: '1G4',
      description: 'AH59H4',
      indicator: '5G118341',
      checkDigit: '4',
      checkDigitAgrees: true,
      modelYears: [2005],
    });
  });

  test('never proves what is fitted, and the answer says so', async () => {
    const codes = (await asked({ vin: '0CBLRA00030000017' })).warnings.map(({ code }) => code);
    expect(codes).toContain('proves-no-part');
    expect((await asked({ make: 'Corrablyn' })).warnings).toEqual([]);
  });

  test.each([
    ['0CBLRO00030000017', 'no-sign-of-a-vin', { place: 6 }],
    ['0CBLR', 'wrong-length-of-vin', { length: 5 }],
  ])('%s is refused without being repeated', async (vin, code, data) => {
    const response = await rig.client.post('/v1/vehicles/identify').send({ vin }).expect(422);
    expect(json(response).errors).toMatchObject([{ pointer: '/vin', code, data }]);
    expect(response.text).not.toContain(vin);
  });

  test('is kept by nobody: not in the log, no cache, no validator', async () => {
    const vin = '0CBLRA00030077777';
    for (const method of ['POST', 'QUERY']) {
      const response = await rig.app.request('/v1/vehicles/identify', {
        method,
        body: JSON.stringify({ vin }),
        headers: { 'content-type': 'application/json' },
      });
      expect(response.status).toBe(200);
      expect(response.headers.get('cache-control')).toBe('no-store');
      expect(response.headers.has('etag')).toBe(false);
      expect(response.headers.has('content-location')).toBe(false);
      expect(await response.text()).not.toContain(vin);
    }
    const before = rig.judged.identifyVehicle;
    await asked({ vin });
    expect(rig.judged.identifyVehicle).toBe(before + 1);
    expect(JSON.stringify(rig.lines)).not.toContain(vin);
  });
});

describe('whatever else is told', () => {
  test('leaves as many as the list of vehicles does', async () => {
    for (const body of [{}, { make: 'corrablyn' }, { year: 2005 }, { built: '2004-06' }]) {
      const search = new URLSearchParams(Object.entries(body).map(([k, v]) => [k, String(v)]));
      const list = json(await rig.client.get(`/v1/vehicles?limit=50&${search.toString()}`));
      const { items, ask } = list as unknown as { items: { id: string }[]; ask: object[] };
      const answer = await asked(body);
      expect(idsOf(answer).toSorted(byText)).toEqual(items.map(({ id }) => id).toSorted(byText));
      expect(answer.ask).toEqual(ask);
    }
  });

  test('one thing more never adds a vehicle, and each is counted once', async () => {
    const things = [
      ['make', 'Corrablyn'],
      ['vin', '0CBGV000050041999'],
      ['year', 2005],
      ['facts', { 'brake-pack': 'small' }],
    ] as const;
    let [left, body] = [idsOf(await asked({})), {}];
    for (const [field, value] of things) {
      body = { ...body, [field]: value };
      const answer = await asked(body);
      expect(left).toEqual(expect.arrayContaining(idsOf(answer)));
      const excluded = answer.excluded.reduce((sum, { count }) => sum + count, 0);
      expect(excluded + answer.counts.total).toBe(EVERY);
      left = idsOf(answer);
    }
    expect(left).toContain('gallivet-early');
    expect(left).not.toContain('gallivet');
  });
});
