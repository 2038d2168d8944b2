/**
 * Which part is this piece: the question over HTTP, its pages, what a client may keep, and faults
 * at the fields that have them.
 */

import { describe, expect, test } from 'vitest';
import { demoDocument } from '../memory-store.js';
import { json, rigOf } from './fixture.js';

const rig = rigOf({ documents: [demoDocument()], answerCacheBytes: 1_000_000 });
const PATH = '/v1/parts/identify';

interface Wire {
  readonly items: readonly { readonly id: string }[];
  readonly next: string | null;
  readonly counts: { readonly total: number };
  readonly warnings: readonly { readonly code: string; readonly text: string }[];
  readonly ask: readonly { readonly text: string; readonly on: object | null }[];
  readonly errors: readonly object[];
}

async function asked(body: object, status = 200): Promise<Wire> {
  const response = await rig.client.post(PATH).send(body).expect(status);
  return json(response) as unknown as Wire;
}

describe('the question', () => {
  test('has pages, each of the same question', async () => {
    const told = { role: 'gearbox', limit: 2 };
    const ids: string[] = [];
    let cursor: string | null = null;
    do {
      const page: Wire = await asked({ ...told, ...(cursor === null ? {} : { cursor }) });
      ids.push(...page.items.map(({ id }) => id));
      expect(page.counts.total).toBe(5);
      cursor = page.next;
    } while (cursor !== null);
    expect(ids).toEqual((await asked({ role: 'gearbox' })).items.map(({ id }) => id));
    const { next } = await asked(told);
    const { errors } = await asked({ role: 'wheel', cursor: next }, 400);
    expect(errors).toMatchObject([{ pointer: '/cursor', code: 'cursor-of-another-list' }]);
  });

  test('takes what it asks for as it is', async () => {
    const [ask] = (await asked({ role: 'gearbox' })).ask;
    const { counts } = await asked({
      role: 'gearbox',
      measured: [{ on: ask?.on, value: '574 mm', tool: 'tape' }],
    });
    expect(counts.total).toBe(2);
  });

  test('by QUERY has an answer that a client may keep', async () => {
    const send = async (more: Record<string, string>) =>
      rig.app.request(PATH, {
        method: 'QUERY',
        body: JSON.stringify({ role: 'gearbox', edition: 1 }),
        headers: { 'content-type': 'application/json', ...more },
      });
    const first = await send({});
    const etag = first.headers.get('etag') ?? '';
    expect([first.status, etag === '']).toEqual([200, false]);
    expect((await send({ 'if-none-match': etag })).status).toBe(304);
  });

  test('says in each language that a match is no proof', async () => {
    const words = { en: 'proves no identity', de: 'beweist nicht' };
    for (const [lang, text] of Object.entries(words)) {
      const [first] = (await asked({ role: 'wheel', lang })).warnings;
      expect(first?.code).toBe('match-is-no-proof');
      expect(first?.text).toContain(text);
    }
  });

  test('is answered where nothing is left, too', async () => {
    const { counts, items } = await asked({ role: 'wheel', numbers: ['CBL-2G-6'], hand: 'left' });
    expect(counts.total).toBe(items.length);
    const none = await asked({
      role: 'gearbox',
      measured: [{ on: { parameter: 'gear-count' }, value: '11' }],
    });
    expect([none.counts.total, none.items, none.ask]).toEqual([0, [], []]);
  });
});

test('every fault stands at its field, all of them at once', async () => {
  const { errors } = await asked(
    {
      numbers: ['…'],
      measured: [
        { on: { interface: 'raer', parameter: 'pcd' }, value: '1 mm' },
        { on: { parameter: 'length' }, value: '612' },
        { on: { interface: 'rear', kind: 'wheel-mount', parameter: 'pcd' }, value: '1 mm' },
        { on: { interface: 'rear', kind: 'bell-housing', parameter: 'pattern' }, value: 'x' },
      ],
    },
    422,
  );
  expect(errors).toMatchObject([
    { pointer: '/numbers/0', code: 'number-says-nothing' },
    { pointer: '/measured/0/on/interface', code: 'face-of-no-part', data: { meant: 'rear' } },
    { pointer: '/measured/1/value', code: 'reading-at-fault' },
    { pointer: '/measured/3/on', code: 'two-faces-in-one' },
  ]);
});
