/**
 * Which codes an answer can carry: the list has each of them once, with the fields of its data and
 * an example in the language of the question, and is the same on the command line.
 */

import { describe, expect, test } from 'vitest';
import { codesAnswerSchema } from '../../src/contract/codes.js';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import {
  CAUTION_GROUPS,
  CODE_GROUPS,
  LISTED_GROUPS,
  REASON_CODES,
} from '../../src/domain/explain/reason.js';
import { dataFieldsOf, OWN_CODE_DATA } from '../../src/domain/explain/reason-data.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { run } from '../cli/terminal.js';
import { complaints, schemaAt } from '../contract/published-document.js';
import { json, rigOf } from './fixture.js';

const PATH = '/v1/codes';
const { client } = rigOf();

async function listed(search = '') {
  const response = await client.get(`${PATH}?${search}`).expect(200);
  return codesAnswerSchema.parse(json(response));
}

describe.each(SPOKEN_LANGUAGES)('the list in %s', (lang) => {
  const answer = listed(`lang=${lang}`);

  test('has every code of a reason once, group by group', async () => {
    const { items, next, counts } = await answer;
    expect([next, counts.total]).toEqual([null, items.length]);
    expect([...new Set(items.map(({ group }) => group))]).toEqual(LISTED_GROUPS);
    const of = (group: string) => items.filter((one) => one.group === group);
    for (const [group, codes] of Object.entries(CODE_GROUPS)) {
      expect(of(group).map(({ code }) => code)).toEqual(codes);
    }
    expect(of('usual-cautions').map(({ code }) => code)).toEqual(CAUTION_GROUPS);
  });

  test('has an example of each, with the data of its code', async () => {
    const reasons = (await answer).items.filter(({ group }) => group !== 'usual-cautions');
    const published = schemaAt('components', 'schemas', 'ReasonByCode');
    for (const { code, always, perhaps, example } of reasons) {
      const fields = dataFieldsOf(code);
      expect([code, always, perhaps]).toEqual([code, fields.always, fields.perhaps]);
      expect([code, example.code]).toEqual([code, code]);
      const shown: readonly string[] = Object.keys(example.data);
      expect([code, always.filter((name) => !shown.includes(name))]).toEqual([code, []]);
      const known = [...always, ...perhaps];
      expect([code, shown.filter((name) => !known.includes(name))]).toEqual([code, []]);
      expect([code, complaints(published, example)]).toEqual([code, []]);
      expect(example.text).toMatch(/^[“„\p{Lu}].*[.!?]$/u);
    }
  });

  test('has what each built-in kind gives its checks', async () => {
    const own = (await answer).items.filter(({ group }) => group === 'kinds');
    const given = BUILT_IN_KINDS.flatMap(({ id, checks }) => {
      const codes = (checks as { code?: string }[]).flatMap(({ code }) => code ?? []);
      return [...new Set(codes)].map((code) => [id, code]);
    });
    expect(given.length).toBeGreaterThan(100);
    expect(own.map(({ kind, code }) => [kind, code])).toEqual(given);
    for (const { perhaps, example } of own) {
      expect(perhaps).toEqual(OWN_CODE_DATA.perhaps);
      expect(example.text).toBe(example.data.says);
    }
  });

  test('is the same on the command line', async () => {
    const { text } = await client.get(`${PATH}?lang=${lang}`).expect(200);
    const { code, out, err } = await run(['codes', '--json', '--lang', lang]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toBe(`${text}\n`);
  });

  test('and as a page for people', async () => {
    const { items, engine } = await answer;
    const { code, out, err } = await run(['codes', '--lang', lang]);
    expect([code, err]).toEqual([0, '']);
    const page = out.replaceAll(/\s+/g, ' ');
    for (const one of items) {
      expect(page).toContain(one.example.text);
      expect(page).toContain(one.code);
    }
    expect(page).toMatch(new RegExp(`${engine.replaceAll('.', '\\.')}\\. $`));
  });
});

describe('a group', () => {
  test.each(LISTED_GROUPS)('%s is listed alone', async (group) => {
    const [whole, part] = [await listed('lang=de'), await listed(`group=${group}&lang=de`)];
    const items = whole.items.filter((one) => one.group === group);
    expect(part).toEqual({ ...whole, items, counts: { total: items.length } });
    const { out } = await run(['codes', '--group', group, '--lang', 'de', '--json']);
    expect(JSON.parse(out)).toEqual(part);
  });

  test('has a heading of its own on the command line', async () => {
    const { out } = await run(['codes', '--group', 'orders', '--lang', 'de']);
    expect(out).toMatch(/^Zu dem, was zu bestellen ist:\norder-to-suit\n {2}left order\n/);
    expect(out).toContain('„zweiteilige Gelenkwelle, Flansch 70 mm, auf Länge“');
    expect(out).not.toContain('“two-piece');
  });

  test('that is none is refused, by both doors', async () => {
    const response = await client.get(`${PATH}?group=screws`).expect(400);
    expect(json(response)).toMatchObject({ code: 'invalid-request' });
    const { code, out, err } = await run(['codes', '--group', 'screws']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('screws');
  });
});

test('is there before anything is published, of no edition, and no later than that', async () => {
  const [before, after] = [rigOf({ documents: [] }), rigOf()];
  const early = await before.client.get(PATH).expect(200);
  const late = await after.client.get(PATH).expect(200);
  expect(late.text).toBe(early.text);
  expect(json(early)).not.toHaveProperty('edition');
  expect(early.headers).not.toHaveProperty('faying-edition');
  expect(early.headers['content-location']).toBe(`${PATH}?lang=en`);
  expect(early.headers['content-language']).toBe('en');
  expect(early.headers['cache-control']).toBe('public, max-age=300');
});

test('is not sent again to who has it, in that language and of that group', async () => {
  const first = await client.get(`${PATH}?group=orders`).expect(200);
  expect(first.headers['content-location']).toBe(`${PATH}?group=orders&lang=en`);
  const again = (search: string) =>
    client.get(`${PATH}?${search}`).set('if-none-match', String(first.headers.etag));
  await again('group=orders').expect(304, '');
  await again('lang=en-GB&group=orders').expect(304, '');
  await again('group=orders&lang=de').expect(200);
  await again('group=measures').expect(200);
  await again('').expect(200);
});

test('speaks the language of the headers, where the question names none', async () => {
  const response = await client.get(PATH).set('accept-language', 'de').expect(200);
  expect(codesAnswerSchema.parse(json(response)).lang).toBe('de');
  expect(response.headers.vary).toContain('Accept-Language');
  const [german, english] = [await listed('lang=de'), await listed('lang=en')];
  const same = german.items.filter(
    ({ example }, index) => example.text === english.items[index]?.example.text,
  );
  expect(same).toEqual([]);
  expect(german.items.length).toBeGreaterThan(REASON_CODES.length);
});

test.each(['limit=1', 'cursor=x', 'edition=1', 'lang=en&lang=de', 'group=', 'code=fits'])(
  'takes no %s',
  async (search) => {
    const response = await client.get(`${PATH}?${search}`).expect(400);
    expect(json(response).code).toBe('invalid-request');
  },
);
