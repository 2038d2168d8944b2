/**
 * How much of anything the service takes: the list says what holds, a request at each limit is
 * taken, and one past it is refused by the name of that limit.
 *
 * Length: one table of limits, with the requests that meet each.
 */

import { setTimeout as sleep } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import { limitsAnswerSchema } from '../../src/contract/limit-list.js';
import { LIMIT_NAMES, LIMITS, type LimitName } from '../../src/contract/limits.js';
import type { ProblemWire } from '../../src/contract/problem.js';
import { digestOf } from '../../src/http/question-key.js';
import { json, rigOf } from './fixture.js';
import { EXTENT_CASES } from './graphql/extent.js';
import { MEANT_CASES } from './meant-cases.js';
import { parts, raw, send, serve } from './socket.js';

const PATH = '/v1/limits';

describe('the list', () => {
  test('names every limit, in the language of the question', async () => {
    const { client } = rigOf();
    for (const lang of SPOKEN_LANGUAGES) {
      const response = await client.get(`${PATH}?lang=${lang}`).expect(200);
      const list = limitsAnswerSchema.parse(json(response));
      expect(list).toMatchObject({ lang, next: null, counts: { total: LIMIT_NAMES.length } });
      expect(list.items.map(({ name, value, unit }) => [name, { value, unit }])).toEqual(
        Object.entries(LIMITS),
      );
      for (const { about } of list.items) expect(about).toMatch(/^\p{Lu}.*\.$/u);
      expect(response.headers['content-language']).toBe(lang);
    }
    const [english, german] = await Promise.all(
      ['en', 'de'].map((lang) => client.get(PATH).set('accept-language', lang)),
    );
    const abouts = [english, german].map((response) => {
      return limitsAnswerSchema.parse(json(response ?? { text: '' })).items.map((one) => one.about);
    });
    const [first = [], second = []] = abouts;
    expect(first.filter((about, index) => about === second[index])).toEqual([]);
  });

  test('is there before anything is published, of no edition, and no later than that', async () => {
    const [before, after] = [rigOf({ documents: [] }), rigOf()];
    const early = await before.client.get(PATH).expect(200);
    const late = await after.client.get(PATH).expect(200);
    expect(late.text).toBe(early.text);
    expect(json(early)).not.toHaveProperty('edition');
    expect(early.headers).not.toHaveProperty('faying-edition');
    expect(early.headers['content-location']).toBe(`${PATH}?lang=en`);
    expect(early.headers['cache-control']).toBe('public, max-age=300');
    const etag = String(early.headers.etag);
    await before.client.get(PATH).set('if-none-match', etag).expect(304, '');
    await before.client.get(`${PATH}?lang=de`).set('if-none-match', etag).expect(200);
  });

  test.each(['limit=1', 'cursor=x', 'edition=1', 'lang=en&lang=de', 'name=bodyBytes'])(
    'takes no %s',
    async (search) => {
      const response = await rigOf().client.get(`${PATH}?${search}`).expect(400);
      expect(json(response).code).toBe('invalid-request');
    },
  );

  test('tells what this server was told, by another validator', async () => {
    const { server } = await serve({ limits: { arrivalMs: 20_000 } });
    const told = await fetch(`${server.url}${PATH}`);
    const { items } = limitsAnswerSchema.parse(await told.json());
    expect(items.find(({ name }) => name === 'arrivalMs')?.value).toBe(20_000);
    const usual = await rigOf().client.get(PATH);
    expect(told.headers.get('etag')).not.toBe(usual.headers.etag);
  });
});

/** What became of a request: the problem, or nothing where it was answered. */
type Outcome = Partial<ProblemWire> & { readonly answer?: Response };

/** Asks for so much of something. */
type Asking = (amount: number) => Promise<Outcome>;

const rig = rigOf();

async function outcome(response: Response): Promise<Outcome> {
  if (response.ok) return { answer: response };
  return (await response.json()) as ProblemWire;
}

async function get(path: string, headers: Record<string, string> = {}): Promise<Outcome> {
  return outcome(await rig.app.request(path, { headers }));
}

async function post(path: string, body: string | object): Promise<Outcome> {
  const text = typeof body === 'string' ? body : JSON.stringify(body);
  const headers = { 'content-type': 'application/json' };
  return outcome(await rig.app.request(path, { method: 'POST', headers, body: text }));
}

/** The problem of the only line of a batch. */
async function line(body: string): Promise<Outcome> {
  const headers = { 'content-type': 'application/x-ndjson' };
  const response = await rig.app.request('/v1/fit/batch', { method: 'POST', headers, body });
  const [, answer = ''] = (await response.text()).split('\n');
  return (JSON.parse(answer) as { error?: ProblemWire }).error ?? { answer: response };
}

/** A batch that comes to so many times what it is packed in, or a little more: by empty lines. */
async function packed(times: number): Promise<Outcome> {
  const rows = many(700, (n) => `cart-1,${digestOf([String(n)]).slice(0, 8)}`);
  const bodyOf = (empty: number) => Buffer.from(['vehicle,part', ...rows].join('\n'.repeat(empty)));
  const timesOf = (body: Buffer) => body.length / gzipSync(body).length;
  let empty = 1500;
  while (timesOf(bodyOf(empty)) < times) empty = Math.ceil(empty * 1.05);
  const body = gzipSync(bodyOf(empty));
  const headers = { 'content-type': 'text/csv', 'content-encoding': 'gzip' };
  const response = await rig.app.request('/v1/fit/batch', { method: 'POST', headers, body });
  const last = (await response.text()).split('\r\n').at(-2) ?? '';
  expect(last).toMatch(/^(end|error),/);
  return last.startsWith('end') ? { answer: response } : { code: 'body-too-large' };
}

const x = (count: number) => 'x'.repeat(count);
const many = <Value>(count: number, value: (index: number) => Value) =>
  Array.from({ length: count }, (_, index) => value(index));
const places = (count: number) => Object.fromEntries(many(count, (n) => [`p${n}`, 'none']));
const inspect = (more: object) => post('/v1/inspect', { vehicle: 'cart-1', ...more });
const kits = (more: object) => post('/v1/kits', { vehicle: 'cart-1', ...more });
const drive = (more: object) => post('/v1/driveline', { vehicle: 'cart-1', ...more });
/** Of a route that changes nothing. */
const KEY = `k1.${Buffer.from(
  JSON.stringify({ adapters: [], changes: [], question: { vehicle: 'cart-1' } }),
).toString('base64url')}`;
const priced = { part: 'box-a', price: '9.00' };
const face = (inline: object) =>
  post('/v1/mate', {
    a: { part: 'box-a' },
    b: { inline: { kind: 'cart-flange', side: 'recess', ...inline } },
  });
const sizes = (count: number) => ({
  register: { choose: { of: many(count, (n) => `${60 + n} mm`) } },
});
const holes = (count: number) => ({
  kind: 'bell-housing',
  side: undefined,
  'hole-positions': many(count, (n) => `${n * 20} ±0, 0 ±0 mm`),
});

/** Each limit, asked for in every way in which it can be passed. */
const REFUSED: Readonly<Partial<Record<LimitName, readonly Asking[]>>> = {
  urlBytes: [(n) => get(`/v1/parts?${'&'.repeat(n - '/v1/parts?'.length)}`)],
  headerBytes: [
    async (n) => {
      const { server } = await serve();
      const others = ['/livez', 'host', 'x', 'connection', 'close', 'x'].join('').length;
      const head = `GET /livez HTTP/1.1\r\nhost: x\r\nconnection: close\r\nx: ${x(n - others)}`;
      const { status, body } = parts(await raw(server, `${head}\r\n\r\n`));
      return status === 200 ? {} : JSON.parse(body);
    },
  ],
  headerCount: [
    async (n) => {
      const { server } = await serve();
      const others = ['host: x', 'connection: close'];
      const lines = [...others, ...many(n - others.length, (i) => `x${i}:`)];
      const head = `GET /livez HTTP/1.1\r\n${lines.join('\r\n')}\r\n\r\n`;
      const { status, body } = parts(await raw(server, head));
      return status === 200 ? {} : JSON.parse(body);
    },
  ],
  bodyBytes: [(n) => post('/v1/inspect', '{"vehicle":"cart-1"}'.padEnd(n))],
  batchLineBytes: [
    (n) => line('{"vehicle":"cart-1","part":"box-a"}'.padEnd(n)),
    async (n) => {
      const headers = { 'content-type': 'text/csv' };
      const body = `vehicle,part,ref${' '.repeat(n - 16)}`;
      const answer = await rig.app.request('/v1/fit/batch', { method: 'POST', headers, body });
      const problem = (await answer.json()) as ProblemWire;
      return problem.limit === undefined ? {} : problem;
    },
  ],
  refCharacters: [
    (n) => line(JSON.stringify({ vehicle: 'cart-1', part: 'box-a', ref: x(n) })),
    (n) => line(JSON.stringify({ vehicle: 'cart-1', part: 'box-a', ref: '🔧'.repeat(n) })),
  ],
  // The object, its vehicle and the list are values too.
  bodyValues: [(n) => inspect({ more: many(n - 3, () => 1) })],
  bodyLevels: [(n) => post('/v1/inspect', `{"vehicle":${'['.repeat(n - 1)}${']'.repeat(n - 1)}}`)],
  placesInUrl: [
    (n) => get(`/v1/fit?vehicle=cart-1&part=box-a&${many(n, (i) => `with.p${i}=x`).join('&')}`),
    (n) => get(`/v1/vehicles?${many(n, (i) => `fact.f${i}=x`).join('&')}`),
  ],
  placesInBody: [
    (n) => inspect({ fitted: places(n) }),
    (n) => inspect({ facts: places(n) }),
    (n) => kits({ fitted: places(n) }),
    (n) => post('/v1/fit', { vehicle: 'cart-1', part: 'box-a', with: places(n) }),
  ],
  adaptersInRow: [
    (n) => get(`/v1/mate?a=box-b&b=shaft-a&adapter=${many(n, () => 'plate-ab').join(',')}`),
    (n) => inspect({ adapters: { 'box-shaft': many(n, () => 'plate-ab') } }),
  ],
  nameCharacters: [
    (n) => get(`/v1/parts?text=${x(n)}`),
    (n) => get(`/v1/parts?text=${encodeURIComponent('🔧'.repeat(n))}`),
    (n) => get(`/v1/parts/${x(n)}`),
    (n) => inspect({ vehicle: x(n) }),
    (n) => inspect({ fitted: { engine: { left: 'none', right: x(n) } } }),
  ],
  namesLookedUp: [
    (n) => get(`/v1/parts?part=${many(n, () => 'box-a').join()}`),
    (n) => get(`/v1/vehicles/cart-1/fits?part=${many(n, () => 'box-a').join()}`),
    (n) => get(`/v1/parts/box-a/fits?vehicle=${many(n, () => 'cart-1').join()}`),
  ],
  fitsSolved: [
    (n) => get(`/v1/vehicles/cart-1/fits?changes=yes&limit=${n}`),
    (n) => get(`/v1/vehicles/cart-1/fits?changes=yes&part=${many(n, () => 'box-a').join()}`),
    (n) => get(`/v1/parts/box-a/fits?changes=yes&vehicle=${many(n, () => 'cart-1').join()}`),
  ],
  placeCharacters: [
    (n) => get(`/v1/fit?vehicle=cart-1&part=box-a&with.${x(n)}=box-b`),
    (n) => get(`/v1/fit?vehicle=cart-1&part=box-a&position=${x(n)}`),
    (n) => inspect({ fitted: { [x(n)]: 'none' } }),
  ],
  valueCharacters: [
    (n) => inspect({ torque: `${'400'.padEnd(n - 3)}N.m` }),
    (n) => face({ register: `${'60'.padEnd(n - 2)}mm` }),
    (n) => face({ pattern: x(n) }),
  ],
  languageTagCharacters: [(n) => get(`/v1/parts?lang=en${'-12345678'.repeat(3)}-${x(n - 30)}`)],
  numberDigits: [
    (n) => inspect({ torque: `1${'0'.repeat(n - 1)} N.m` }),
    (n) => face({ register: `60.${'0'.repeat(n - 2)} mm` }),
  ],
  faceAlternatives: [(n) => face({ alternatives: [sizes(10), sizes(n - 10)] })],
  facePoints: [(n) => face(holes(n))],
  wants: [
    (n) => kits({ want: many(n, () => ({ part: 'box-a' })) }),
    (n) => kits({ want: [{ part: many(n, () => 'box-a') }] }),
  ],
  wantsInUrl: [(n) => get(`/v1/kits?vehicle=cart-1&want=${many(n, () => 'box-a').join()}`)],
  kitEntries: [
    (n) => kits({ keep: many(n, () => 'engine') }),
    (n) => kits({ avoid: many(n, () => ({ part: 'box-b' })) }),
    (n) => kits({ owned: many(n, () => ({ part: 'box-b' })) }),
    (n) => kits({ lots: many(n, () => 'crate') }),
    (n) => kits({ measured: many(n, () => ({ on: {}, value: '1 mm' })) }),
    (n) => get(`/v1/kits?vehicle=cart-1&keep=${many(n, () => 'engine').join()}`),
  ],
  ownOffers: [(n) => kits({ offers: many(n, () => priced) })],
  ownedPieces: [(n) => kits({ owned: [{ part: 'box-b', quantity: n }] })],
  stockPieces: [(n) => kits({ offers: [{ ...priced, stock: n }] })],
  leadDays: [
    (n) => kits({ offers: [{ ...priced, leadDays: n }] }),
    (n) => get(`/v1/kits?vehicle=cart-1&limits.leadDays=${n}`),
  ],
  routes: [(n) => kits({ routes: n }), (n) => get(`/v1/kits?vehicle=cart-1&routes=${n}`)],
  drivenRoutes: [(n) => drive({ routes: Array.from({ length: n }, () => KEY) })],
  drivenLines: [(n) => drive({ lines: Array.from({ length: n }, () => ({ action: 'open' })) })],
  routeKeyCharacters: [(n) => drive({ routes: [KEY.padEnd(n, ' ')] })],
  kitSteps: [(n) => get(`/v1/kits?vehicle=cart-1&want=box-b&steps=${n}`)],
  listEntries: [(n) => get(`/v1/parts?limit=${n}`), (n) => get(`/v1/editions?limit=${n}`)],
  cursorCharacters: [(n) => get(`/v1/parts?cursor=${x(n)}`)],
};

/** Of those that are not passed by asking for one more: what becomes of more. */
const OTHERS: Readonly<Partial<Record<LimitName, () => Promise<void>>>> = {
  ...EXTENT_CASES,
  ...MEANT_CASES,
  arrivalMs: async () => {
    const { server } = await serve({ limits: { arrivalMs: 400 } });
    const head = 'POST /v1/inspect HTTP/1.1\r\nhost: x\r\nconnection: close\r\n';
    const sent = `${head}content-type: application/json\r\ncontent-length: 20\r\n\r\n{"vehicle"`;
    const inTime = send(server, sent);
    await sleep(50);
    inTime.socket.write(':"cart-1"}');
    expect(parts(await inTime.answer).status).toBe(200);
    const { status, body } = parts(await raw(server, sent));
    expect([status, JSON.parse(body)]).toEqual([
      408,
      expect.objectContaining({ limit: { name: 'arrivalMs', value: 400 } }),
    ]);
  },
  stallMs: async () => {
    const asked = 'GET /openapi.json HTTP/1.1\r\nhost: x\r\n\r\n'.repeat(30);
    const last = 'GET /livez HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n';
    const answers = async (stallMs: number, unread: number) => {
      const { server } = await serve({ limits: { stallMs } });
      const { socket, answer } = send(server, asked + last);
      socket.pause();
      await sleep(unread);
      socket.resume();
      return (await answer).split('HTTP/1.1 200 OK').length - 1;
    };
    expect(await answers(60_000, 500)).toBe(31);
    // A machine at work takes its time to begin: then what is unread is left so for longer.
    const counts: number[] = [];
    for (const unread of [500, 2000, 8000]) {
      counts.push(await answers(100, unread));
      if ((counts.at(-1) ?? 31) < 31) break;
    }
    expect(Math.min(...counts)).toBeLessThan(31);
  },
  gzipExpansion: async () => {
    expect((await packed(LIMITS.gzipExpansion.value * 0.9)).answer?.status).toBe(200);
    expect((await packed(LIMITS.gzipExpansion.value * 1.1)).code).toBe('body-too-large');
  },
  requestIdCharacters: async () => {
    const most = LIMITS.requestIdCharacters.value;
    const idOf = async (count: number) => {
      const { answer } = await get('/livez', { 'x-request-id': x(count) });
      return answer?.headers.get('x-request-id');
    };
    expect(await idOf(most)).toBe(x(most));
    expect(await idOf(most + 1)).not.toContain('x');
  },
  wishCharacters: async () => {
    const most = LIMITS.wishCharacters.value;
    const accepted = (count: number) =>
      get('/livez', { accept: `text/html,${'application/json'.padStart(count - 10)}` });
    expect((await accepted(most)).answer?.status).toBe(200);
    expect((await accepted(most + 1)).code).toBe('not-acceptable');
  },
  faultsTold: async () => {
    const most = LIMITS.faultsTold.value;
    const told = async (count: number) => (await inspect({ ...places(count) })).errors?.length;
    expect([await told(most), await told(most + 1)]).toEqual([most, most]);
  },
};

const askings = Object.entries(REFUSED).flatMap(([name, ways]) =>
  ways.map((ask, index) => [name as LimitName, index + 1, ask] as const),
);

test.each(askings)('%s is taken, and no more (%i)', async (name, _, ask) => {
  const { value } = LIMITS[name];
  const at = await ask(value);
  expect(at.limit).toBeUndefined();
  expect((at.errors ?? []).map(({ code }) => code)).not.toContain('unknown-parameter');
  const past = await ask(value + 1);
  expect([past.status, past.limit]).toEqual([expect.any(Number), { name, value }]);
  expect(past.status).toBeLessThan(500);
});

test.each(Object.entries(OTHERS))(
  'what becomes of more than %s',
  { timeout: 30_000 },
  async (_, show) => {
    await show();
  },
);

test('every limit has a case of one sort or the other', () => {
  expect([...Object.keys(REFUSED), ...Object.keys(OTHERS)].sort()).toEqual([...LIMIT_NAMES].sort());
});
