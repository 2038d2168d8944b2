/**
 * All that fits, over HTTP: its lines and rows, what narrows them, what is different from another
 * edition, and for how long it holds.
 */

import { gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { CART } from '../cli/catalogue.js';
import { FEED, type Line, linesOf, middle } from './feed.js';
import { rigOf } from './fixture.js';
import { GARAGE } from './garage.js';

const NDJSON = 'application/x-ndjson';

/** The same cart, with another shaft in it: which gearboxes fit is different then. */
const OTHER_SHAFT = {
  ...CART,
  parts: CART.parts
    .filter(({ id }) => id !== 'box-d')
    .map((part) =>
      part.id === 'shaft-a'
        ? {
            ...part,
            interfaces: {
              front: { kind: 'cart-flange', side: 'recess', pattern: 'f2', register: '70.10 mm' },
            },
          }
        : part,
    ),
};

describe('its lines', () => {
  const rig = rigOf({ documents: [GARAGE] });

  test('begin with what they are of, and end with the counts', async () => {
    const lines = await linesOf(rig, `${FEED}?role=gearbox&lang=de`);
    expect(lines[0]).toEqual({
      start: {
        edition: 1,
        from: null,
        engine: expect.any(String),
        lang: 'de',
        form: 'pairs',
        role: 'gearbox',
        alone: null,
        part: null,
        vehicle: null,
      },
    });
    const between = middle(lines);
    const alone = (word: string) => between.filter((line) => line.alone === word).length;
    expect(lines.at(-1)).toEqual({
      end: {
        lines: between.length,
        alone: { holds: alone('holds'), open: alone('open'), fails: alone('fails') },
        gone: 0,
      },
    });
    expect(Math.min(alone('holds'), alone('open'), alone('fails'))).toBeGreaterThan(0);
  });

  test('are in order of part, vehicle and position, without what was replaced', async () => {
    const lines = middle(await linesOf(rig, FEED));
    const keys = lines.map(({ part, vehicle, position }) => [part, vehicle, position].join(' '));
    expect(keys).toEqual([...new Set(keys)].sort());
    expect(keys).toContain('box-a cart-1 gearbox');
    expect(keys.filter((key) => key.includes('t2-rough'))).toEqual([]);
    expect(lines).toContainEqual({
      part: 'box-b',
      vehicle: 't2-early',
      position: 'gearbox',
      alone: 'fails',
      verdict: null,
    });
  });

  test.each([
    ['role=shaft', ({ position }: Line) => position === 'prop-shaft'],
    ['alone=holds,open', ({ alone }: Line) => alone !== 'fails'],
    ['alone=open', ({ verdict }: Line) => verdict === 'unknown'],
    ['part=box-b,box-a', ({ part }: Line) => part === 'box-a' || part === 'box-b'],
    ['vehicle=t3', ({ vehicle }: Line) => vehicle === 't3'],
    [
      'role=gearbox&part=box-a,motor&vehicle=s1,t3&alone=holds',
      ({ part }: Line) => part === 'box-a',
    ],
  ])('are those of all that %s lets through', async (search, isWanted) => {
    const all = middle(await linesOf(rig, FEED));
    const some = middle(await linesOf(rig, `${FEED}?${search}`));
    const asked = new URLSearchParams(search);
    const ids = (name: string) => asked.get(name)?.split(',');
    const expected = all
      .filter(isWanted)
      .filter(({ vehicle }) => ids('vehicle')?.includes(String(vehicle)) ?? true)
      .filter(({ alone }) => ids('alone')?.includes(String(alone)) ?? true);
    expect(some.length).toBeGreaterThan(0);
    expect(some).toEqual(expected);
  });

  test('are rows of CSV where the client wishes for them', async () => {
    const url = `${FEED}?part=box-b&vehicle=cart-1&lang=en`;
    const response = await rig.app.request(url, { headers: { accept: 'text/csv' } });
    expect(response.headers.get('content-type')).toBe('text/csv; charset=utf-8; header=present');
    const [header, start, row, end, rest] = (await response.text()).split('\r\n');
    expect(header).toBe('kind,part,vehicle,position,alone,verdict,gone,json');
    expect(start).toMatch(/^start,,,,,,,"\{""edition"":1,/);
    expect(row).toBe('fit,box-b,cart-1,gearbox,fails,,,');
    expect(end).toBe(
      'end,,,,,,,"{""lines"":1,""alone"":{""holds"":0,""open"":0,""fails"":1},""gone"":0}"',
    );
    expect(rest).toBe('');
  });
});

describe('what is different from another edition', () => {
  const rig = rigOf({ documents: [CART, OTHER_SHAFT] });
  const TWO = '/v1/editions/2/fits';

  test('is what is new, what has changed, and what is gone', async () => {
    const lines = await linesOf(rig, `${TWO}?from=1`);
    expect(lines[0]).toMatchObject({ start: { edition: 2, from: 1 } });
    const at = { vehicle: 'cart-1', position: 'gearbox' };
    expect(middle(lines)).toEqual([
      { part: 'box-b', ...at, alone: 'holds', verdict: 'fits' },
      { part: 'box-c', ...at, alone: 'fails', verdict: null },
      { part: 'box-d', ...at, gone: true },
    ]);
    expect(lines.at(-1)).toEqual({
      end: { lines: 3, alone: { holds: 1, open: 0, fails: 1 }, gone: 1 },
    });
  });

  test('is gone too where what is asked for has no such line any more', async () => {
    const at = { vehicle: 'cart-1', position: 'gearbox' };
    expect(middle(await linesOf(rig, `${TWO}?from=1&alone=fails`))).toEqual([
      { part: 'box-b', ...at, gone: true },
      { part: 'box-c', ...at, alone: 'fails', verdict: null },
    ]);
  });

  test('of what only the other edition had, is known by its name', async () => {
    expect(middle(await linesOf(rig, `${TWO}?from=1&part=box-d`))).toEqual([
      { part: 'box-d', vehicle: 'cart-1', position: 'gearbox', gone: true },
    ]);
    expect((await rig.app.request(`${TWO}?part=box-d`)).status).toBe(404);
  });

  test('is nothing of the same edition, and goes either way', async () => {
    expect(middle(await linesOf(rig, `${TWO}?from=2`))).toEqual([]);
    expect(middle(await linesOf(rig, `${FEED}?from=2&part=box-d`))).toMatchObject([
      { part: 'box-d', vehicle: 'cart-1' },
    ]);
  });

  test('of ranges has what tells one apart', async () => {
    const lines = middle(await linesOf(rig, `${TWO}?from=1&form=ranges&part=box-d`));
    expect(lines).toEqual([
      {
        part: 'box-d',
        make: 'Wainer',
        model: 'Cart',
        variant: null,
        built: [null, null],
        position: 'gearbox',
        alone: expect.any(String),
        gone: true,
      },
    ]);
    const rows = await rig.app.request(`${TWO}?from=1&form=ranges&part=box-d`, {
      headers: { accept: 'text/csv' },
    });
    expect((await rows.text()).split('\r\n')[2]).toMatch(/^fit,box-d,Wainer,Cart,.*,true,$/);
  });
});

describe('for how long it holds', () => {
  const rig = rigOf({ documents: [CART] });

  test('is said as of other answers, and what is there already is not made again', async () => {
    const pinned = await rig.app.request(FEED, { headers: { 'accept-language': 'de' } });
    expect(pinned.headers.get('cache-control')).toBe('public, max-age=86400');
    expect(pinned.headers.get('faying-edition')).toBe('1');
    expect(pinned.headers.get('vary')).toBe('Accept, Accept-Encoding, Accept-Language');
    expect(pinned.headers.get('content-location')).toBe(`${FEED}?lang=de`);
    const newest = await rig.app.request('/v1/editions/latest/fits?lang=de');
    expect(newest.headers.get('cache-control')).toMatch(/^public, max-age=30,/);
    expect(newest.headers.get('content-location')).toBe(`${FEED}?lang=de`);
    const etag = newest.headers.get('etag') ?? '';
    expect(etag).toBe(pinned.headers.get('etag'));
    const before = rig.judged.startFitsFeed;
    const headers = { 'if-none-match': etag, 'accept-language': 'de' };
    const again = await rig.app.request(FEED, { headers });
    expect([again.status, await again.text(), rig.judged.startFitsFeed]).toEqual([304, '', before]);
  });

  test('each of its forms has a validator of its own', async () => {
    const etags = new Set<string | null>();
    for (const [search, headers] of [
      ['', {}],
      ['', { accept: 'text/csv' }],
      ['', { 'accept-encoding': 'gzip' }],
      ['?lang=de', {}],
      ['?from=1', {}],
      ['?alone=holds', {}],
      ['?form=ranges', {}],
      ['?part=box-a', {}],
    ] as const) {
      const response = await rig.app.request(`${FEED}${search}`, { headers });
      etags.add(response.headers.get('etag'));
    }
    expect(etags.size).toBe(8);
    const twice = `${FEED}?part=box-b,box-a,box-b&alone=open,holds&form=pairs`;
    const once = `${FEED}?alone=holds,open&part=box-a,box-b`;
    const [a, b] = [await rig.app.request(twice), await rig.app.request(once)];
    expect(a.headers.get('etag')).toBe(b.headers.get('etag'));
    expect(await a.text()).toBe(await b.text());
    const place = `${FEED}?alone=holds%2Copen&lang=en&part=box-a%2Cbox-b`;
    expect([a, b].map(({ headers }) => headers.get('content-location'))).toEqual([place, place]);
  });

  test('packed, it has the same lines', async () => {
    const plain = await rig.app.request(FEED);
    const packed = await rig.app.request(FEED, { headers: { 'accept-encoding': 'gzip' } });
    expect(packed.headers.get('content-encoding')).toBe('gzip');
    const bytes = Buffer.from(await packed.arrayBuffer());
    expect(gunzipSync(bytes).toString()).toBe(await plain.text());
  });

  test('HEAD has its headers, and nothing is made', async () => {
    const response = await rig.app.request(FEED, { method: 'HEAD' });
    expect([response.status, await response.text()]).toEqual([200, '']);
    expect(response.headers.get('content-type')).toBe(NDJSON);
  });
});
