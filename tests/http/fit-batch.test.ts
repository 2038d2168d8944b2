/**
 * A batch over HTTP: a question a line, an answer a line, in both forms and packed or not.
 *
 * Length: one line of a batch can go wrong in as many ways as a request can.
 */

import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitBatchLineSchema } from '../../src/contract/fit-batch.js';
import { LARGER_CART, publish, type Rig, rigOf } from './fixture.js';

const PATH = '/v1/fit/batch';
const NDJSON = 'application/x-ndjson';
const CSV = 'text/csv';

interface Sent {
  readonly body: string | Uint8Array | ReadableStream;
  readonly type?: string;
  readonly search?: string;
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

function send({ body, type = NDJSON, search = '', method = 'POST', headers }: Sent, rig: Rig) {
  return rig.app.request(PATH + search, {
    method,
    headers: { 'content-type': type, ...headers },
    body,
    duplex: 'half',
  } as RequestInit);
}

type Line = Readonly<Record<string, unknown>>;

function linesIn(text: string): Line[] {
  expect(text.endsWith('\n')).toBe(true);
  return text
    .slice(0, -1)
    .split('\n')
    .map((line) => fitBatchLineSchema.parse(JSON.parse(line)) as Line);
}

/** The lines between the first and the last one. */
async function asked(body: string | Uint8Array, search = '', rig = rigOf()): Promise<Line[]> {
  const response = await send({ body, search }, rig);
  expect(response.status).toBe(200);
  const lines = linesIn(await response.text());
  expect([Object.keys(lines[0] ?? {}), Object.keys(lines.at(-1) ?? {})]).toEqual([
    ['start'],
    ['end'],
  ]);
  return lines.slice(1, -1);
}

function question(more: object = {}): string {
  return JSON.stringify({ vehicle: 'cart-1', part: 'box-a', ...more });
}

describe('a line', () => {
  test('is answered in its place, and known again by its number and its ref', async () => {
    const refs = ['a', undefined, '', 'ä"\\\n🔧', 'x'.repeat(200)];
    const body = refs.map((ref) => question({ ref })).join('\n');
    expect(await asked(body)).toEqual(
      refs.map((ref, index) => ({
        ...(ref === undefined ? {} : { ref }),
        line: index + 1,
        vehicle: 'cart-1',
        part: 'box-a',
        alone: 'holds',
        verdict: 'fits',
        codes: [],
      })),
    );
  });

  test.each([
    ['is no JSON', '{"vehicle":', 'malformed-json', 'not-json'],
    ['is no object', '[]', 'invalid-request', 'wrong-type'],
    [
      'has a field that nobody knows',
      question({ ref: 'r', x: 1 }),
      'invalid-request',
      'unknown-field',
    ],
    ['has what holds for all lines', question({ edition: 1 }), 'invalid-request', 'unknown-field'],
    [
      'has a name twice',
      `${question().slice(0, -1)},"part":"box-b"}`,
      'invalid-request',
      'repeated-name',
    ],
    ['has no part', '{"vehicle":"cart-1"}', 'invalid-request', 'missing'],
    [
      'names a vehicle that nobody has',
      question({ vehicle: 'x' }),
      'unknown-vehicle',
      'unknown-vehicle',
    ],
    ['names a part that nobody has', question({ part: 'x' }), 'unknown-part', 'unknown-part'],
    [
      'names a place that is not',
      question({ position: 'x' }),
      'unknown-position',
      'unknown-position',
    ],
    [
      'has a ref that is too long',
      question({ ref: 'x'.repeat(201) }),
      'invalid-request',
      'too-long',
    ],
    ['has a torque without a unit', question({ torque: '9' }), 'invalid-question', 'not-a-torque'],
    ['is too long', question().padEnd(65_537), 'body-too-large', 'line-too-long'],
    ['is too deep', `{"with":${'['.repeat(40)}${']'.repeat(40)}}`, 'invalid-request', 'too-deep'],
  ])('that %s is an error, and the others are answered', async (_, line, code, fault) => {
    const [before, error, after] = await asked([question(), line, question()].join('\n'));
    expect([before, after]).toMatchObject([
      { line: 1, alone: 'holds' },
      { line: 3, alone: 'holds' },
    ]);
    expect(error).toMatchObject({ line: 2, error: { code } });
    const { errors } = (error as { error: { errors: { code: string }[] } }).error;
    expect(errors.map((one) => one.code)).toContain(fault);
  });

  test('that is no UTF-8 is an error', async () => {
    const body = Buffer.concat([Buffer.from(`${question()}\n"`), Buffer.from([0xff, 0x0a])]);
    const lines = await asked(Buffer.concat([body, Buffer.from(question())]));
    expect(lines).toMatchObject([{ line: 1 }, { error: { code: 'malformed-json' } }, { line: 3 }]);
  });

  test('says where a fault stands, and keeps its ref', async () => {
    const [error] = await asked(question({ ref: 'r', with: { engine: 'nothing' } }));
    expect(error).toMatchObject({ ref: 'r', error: { errors: [{ pointer: '/with/engine' }] } });
    const rows = 'ref,vehicle,part,with.engine\nr,cart-1,box-a,nothing\n';
    const response = await send({ body: rows, type: CSV, headers: { accept: NDJSON } }, rigOf());
    expect(linesIn(await response.text())[1]).toMatchObject({
      ref: 'r',
      line: 2,
      error: { errors: [{ parameter: 'with.engine' }] },
    });
  });

  test('that asks the same is judged once, and counted each time', async () => {
    const response = await send({ body: `${question()}\n`.repeat(5000) }, rigOf());
    const lines = linesIn(await response.text());
    expect(lines.length).toBe(5002);
    expect(lines.at(-1)).toMatchObject({
      end: { lines: 5000, answers: 5000, errors: 0, alone: { holds: 5000 } },
    });
  });
});

describe('all forms', () => {
  const object = `${question({ ref: 'a,"b"' })}\n${question({ part: 'box-z' })}\n`;
  const rows = 'ref,vehicle,part\r\n"a,""b""",cart-1,box-a\r\n,cart-1,box-z\r\n';

  test.each([
    [NDJSON, undefined, NDJSON],
    [NDJSON, '*/*', NDJSON],
    [NDJSON, 'text/csv', CSV],
    [NDJSON, 'text/*, application/x-ndjson;q=0.5', CSV],
    [CSV, undefined, CSV],
    [CSV, 'application/*', NDJSON],
    [CSV, 'application/x-ndjson;q=0.9, */*;q=0.1', NDJSON],
  ])('%s with Accept %s comes back as %s', async (type, accept, answered) => {
    const body = type === CSV ? rows : object;
    const response = await send(
      { body, type, headers: accept === undefined ? {} : { accept } },
      rigOf(),
    );
    expect(response.headers.get('content-type')).toMatch(
      answered === CSV ? /^text\/csv; charset=utf-8/ : /^application\/x-ndjson$/,
    );
    expect(response.headers.get('vary')).toContain('Accept');
    const text = await response.text();
    const first = type === CSV ? 2 : 1;
    if (answered === NDJSON) {
      expect(linesIn(text).slice(1, -1)).toMatchObject([
        { ref: 'a,"b"', line: first, alone: 'holds' },
        { line: first + 1, error: { code: 'unknown-part' } },
      ]);
      return;
    }
    const [header, start, answer, error, end] = text.split('\r\n');
    expect(header).toBe('kind,line,ref,vehicle,part,alone,verdict,codes,code,text,json');
    expect(start).toMatch(/^start,,,,,,,,,,"\{""edition"":1,/);
    expect(answer).toBe(`answer,${first},"a,""b""",cart-1,box-a,holds,fits,,,,`);
    expect(error).toMatch(new RegExp(`^error,${first + 1},,,,,,,unknown-part,`));
    expect(end).toMatch(/^end,,,,,,,,,,"\{""lines"":/);
  });

  test('of a row have the fields that a URL has', async () => {
    const names =
      'part,vehicle,ignorePresent,use,torque,fitted.engine,fact.axle-tag,adapter.box-shaft';
    const row = 'box-c,cart-1,true,road,90 N.m,unknown,,plate-ab';
    const body = `${names}\n${row}\nbox-a,cart-1,perhaps,,,,,\n`;
    const response = await send({ body, type: CSV, headers: { accept: NDJSON } }, rigOf());
    const [, answer, error] = linesIn(await response.text());
    const search = 'part=box-c&vehicle=cart-1&ignorePresent=true&use=road&torque=90%20N.m';
    const url = `/v1/fit?${search}&fitted.engine=unknown&adapter.box-shaft=plate-ab&changes=no`;
    const got = await rigOf().app.request(url);
    const { alone, verdict } = (await got.json()) as Line;
    expect([got.status, answer]).toMatchObject([200, { alone, verdict }]);
    const [plain] = await asked(question({ part: 'box-c' }));
    expect(plain?.codes).not.toEqual(answer?.codes);
    expect(error).toMatchObject({ error: { errors: [{ parameter: 'ignorePresent' }] } });
  });

  test('of rows may go over lines, end so or so, and begin with a mark', async () => {
    const body = '\ufeffvehicle,part,ref\ncart-1,box-a,"a\nb"\r\n\r\ncart-1,"box-a",c';
    const response = await send({ body, type: CSV, headers: { accept: NDJSON } }, rigOf());
    expect(linesIn(await response.text()).slice(1, -1)).toMatchObject([
      { ref: 'a\nb', line: 2 },
      { ref: 'c', line: 5 },
    ]);
  });

  test.each([
    ['cart-1,box"a', 'quote-inside'],
    ['"cart-1"x,box-a', 'after-quote'],
    ['cart-1,"box-a', 'unclosed-quote'],
    ['cart-1', 'count-of-fields'],
    ['cart-1,box-a,', 'count-of-fields'],
  ])('of a row that is none: %s', async (row, rule) => {
    const body = `vehicle,part\ncart-1,box-a\n${row}\n`;
    const response = await send({ body, type: CSV, headers: { accept: NDJSON } }, rigOf());
    expect(linesIn(await response.text()).slice(1, -1)).toMatchObject([
      { line: 2, alone: 'holds' },
      { line: 3, error: { code: 'invalid-request', errors: [{ data: { rule } }] } },
    ]);
  });

  test('the full form is the answer of GET, and is one with changes', async () => {
    const rig = rigOf();
    for (const changes of ['no', 'yes']) {
      const [line] = await asked(question(), `?form=full&changes=${changes}&lang=de`, rig);
      const url = `/v1/fit?vehicle=cart-1&part=box-a&changes=${changes}&lang=de`;
      expect(line).toEqual({ line: 1, answer: await (await rig.app.request(url)).json() });
      const [short] = await asked(question(), `?changes=${changes}`, rig);
      const { alone, verdict } = (line?.answer ?? {}) as Line;
      expect(short).toMatchObject({ alone, verdict });
    }
  });

  test('of nothing: no lines, and an end', async () => {
    expect(await asked('')).toEqual([]);
    expect(await asked('\n\r\n \n')).toEqual([]);
    const response = await send({ body: 'vehicle,part', type: CSV }, rigOf());
    expect((await response.text()).split('\r\n').map((row) => row.split(',')[0])).toEqual([
      'kind',
      'start',
      'end',
      '',
    ]);
  });
});

test('however the bytes are cut, the same bytes come back', async () => {
  const rig = rigOf();
  const ndjson = Buffer.from(
    `\ufeff${question({ ref: 'ä🔧' })}\r\n\n{"x"\n${question({ part: 'ü' })}\n${question()}`,
  );
  const csv = Buffer.from('\ufeffref,vehicle,part\r\n"ä\n🔧""",cart-1,box-a\n\n"x"y,,\nz,cart-1,ü');
  const bodies = [
    [ndjson, NDJSON],
    [csv, CSV],
  ] as const;
  for (const [bytes, type] of bodies) {
    const whole = await (await send({ body: bytes, type }, rig)).text();
    const cuts = fc.array(fc.nat({ max: bytes.length }), { maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(cuts, async (some) => {
        const at = [0, ...some.toSorted((a, b) => a - b), bytes.length];
        const chunks = at.slice(1).map((end, index) => bytes.subarray(at[index], end));
        const body = new ReadableStream({
          start(controller) {
            for (const one of chunks.filter(({ length }) => length > 0)) controller.enqueue(one);
            controller.close();
          },
        });
        expect(await (await send({ body, type }, rig)).text()).toBe(whole);
      }),
      { numRuns: 60 },
    );
  }
});

describe('packed', () => {
  test('both ways', async () => {
    const body = gzipSync(`${question()}\n`.repeat(3000));
    const headers = { 'content-encoding': 'gzip', 'accept-encoding': 'br, gzip;q=0.5' };
    const response = await send({ body, headers }, rigOf());
    expect(response.headers.get('content-encoding')).toBe('gzip');
    const text = gunzipSync(Buffer.from(await response.arrayBuffer())).toString();
    expect(linesIn(text).length).toBe(3002);
  });

  test.each([undefined, 'identity', 'br', 'gzip;q=0', '*;q=0'])(
    'not where the client does not take it: %s',
    async (coding) => {
      const headers = coding === undefined ? {} : { 'accept-encoding': coding };
      const response = await send({ body: question(), headers }, rigOf());
      expect(response.headers.get('content-encoding')).toBeNull();
      expect(linesIn(await response.text()).length).toBe(3);
    },
  );

  test('in several pieces one behind the other', async () => {
    const body = Buffer.concat([gzipSync(`${question()}\n`), gzipSync(question())]);
    const response = await send({ body, headers: { 'content-encoding': 'gzip' } }, rigOf());
    expect(linesIn(await response.text()).at(-1)).toMatchObject({ end: { answers: 2 } });
  });

  test('and broken in the middle ends with an error and without an end', async () => {
    const rig = rigOf();
    const lines = Array.from({ length: 40_000 }, (_, index) =>
      question({ ref: `${index * 7919}` }),
    );
    const packed = gzipSync(lines.join('\n'));
    const body = packed.subarray(0, packed.length - 30_000);
    const response = await send({ body, headers: { 'content-encoding': 'gzip' } }, rig);
    const answered = linesIn(await response.text());
    expect(answered.length).toBeGreaterThan(1000);
    expect(answered.at(-1)).toMatchObject({ error: { errors: [{ code: 'not-gzip' }] } });
    expect(answered.filter((line) => 'end' in line)).toEqual([]);
  });

  test('and coming to more than anybody means is given up', async () => {
    const bomb = gzipSync(Buffer.alloc(200_000_000, '\n'));
    const before = process.memoryUsage().rss;
    const response = await send({ body: bomb, headers: { 'content-encoding': 'gzip' } }, rigOf());
    const lines = linesIn(await response.text());
    expect(lines).toMatchObject([
      { start: {} },
      {
        error: {
          code: 'body-too-large',
          limit: { name: 'gzipExpansion', value: 200 },
          errors: [{ code: 'expands-too-far' }],
        },
      },
    ]);
    expect(process.memoryUsage().rss - before).toBeLessThan(150_000_000);
  });
});

describe('the edition', () => {
  test('is settled at the start, whatever is published meanwhile', async () => {
    const rig = rigOf();
    let isFirst = true;
    const body = new ReadableStream({
      pull(controller) {
        if (isFirst) controller.enqueue(Buffer.from(`${question()}\n`));
        else {
          // In this edition there is another part.
          publish(rig.store, LARGER_CART);
          controller.enqueue(Buffer.from(`${question({ part: 'box-e' })}\n${question()}`));
          controller.close();
        }
        isFirst = false;
      },
    });
    const response = await send({ body }, rig);
    expect(response.headers.get('faying-edition')).toBe('1');
    expect(linesIn(await response.text())).toMatchObject([
      { start: { edition: 1 } },
      { alone: 'holds' },
      { error: { code: 'unknown-part' } },
      { alone: 'holds' },
      { end: {} },
    ]);
    const [, now] = linesIn(await (await send({ body: question({ part: 'box-e' }) }, rig)).text());
    expect(now).not.toHaveProperty('error');
    const pinned = await asked(question({ part: 'box-e' }), '?edition=1', rig);
    expect(pinned).toMatchObject([{ error: { code: 'unknown-part' } }]);
  });
});

describe('the request', () => {
  test('is one by QUERY too, with the same answer, and nobody keeps either', async () => {
    const rig = rigOf();
    const [posted, queried] = await Promise.all(
      ['POST', 'QUERY'].map(async (method) => send({ body: question(), method }, rig)),
    );
    expect(await queried?.text()).toBe(await posted?.text());
    for (const response of [posted, queried]) {
      expect(response?.headers.get('cache-control')).toBe('no-store');
      expect(response?.headers.get('etag')).toBeNull();
      expect(response?.headers.get('accept-query')).toBe('application/x-ndjson, text/csv');
    }
  });

  test('is none by GET or HEAD', async () => {
    const { client } = rigOf();
    const got = await client.get(PATH).expect(405);
    expect(got.headers.allow).toBe('POST, QUERY, OPTIONS');
    await client.head(PATH).expect(405);
    await client.options(PATH).expect(204);
  });

  test('leaves one line in the log where it begins, and one where it ends', async () => {
    const rig = rigOf();
    await asked(`${question()}\n${question({ part: 'x' })}`, '', rig);
    expect(rig.lines.map(({ msg, answers, errors }) => [msg, answers, errors])).toEqual([
      ['answered', undefined, undefined],
      ['batch ended', 1, 1],
    ]);
  });
});
