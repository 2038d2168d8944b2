/**
 * Questions by GraphQL: what is answered, and in what form.
 */

import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../src/contract/limits.js';
import { demoDocument } from '../../memory-store.js';
import { publish, rigOf } from '../fixture.js';
import { asked } from './asking.js';

const rig = rigOf({ documents: [demoDocument()] });

const ask = (query: string, variables?: object, own = rig) => asked(query, variables, own);

describe('an edition', () => {
  test('is the newest, or the one of a number, and none that there is not', async () => {
    const { data, errors } = await ask('{ edition { number } one: edition(number: 1) { number } }');
    expect([data, errors]).toEqual([{ edition: { number: 1 }, one: { number: 1 } }, undefined]);
    const none = await ask('{ edition(number: 9) { number } }');
    expect(none.data).toEqual({ edition: null });
    expect(none.errors).toMatchObject([{ extensions: { code: 'unknown-edition', status: 404 } }]);
  });

  test('has its maps as entries and its closed words in capitals', async () => {
    const { data } = await ask(`{ edition(lang: "de") {
      fit(vehicle: "lirren-1", part: "gearbox-6-late", changes: NO) { alone lang }
      vehicle(id: "gallivet") { facts { key value } }
    } }`);
    expect(data).toMatchObject({
      edition: {
        fit: { alone: 'FAILS', lang: 'de' },
        vehicle: { facts: expect.arrayContaining([{ key: 'brake-pack', value: 'small' }]) },
      },
    });
  });
});

describe('changes around a part', () => {
  test('are looked for where something is selected in which they have a say', async () => {
    const before = rig.judged.checkFit;
    const document = (selected: string) =>
      `{ edition { fit(vehicle: "lirren-1", part: "gearbox-6-late") { ${selected} } } }`;
    const alone = await ask(document('alone positions { position alone }'));
    expect(alone.data).toMatchObject({ edition: { fit: { alone: 'FAILS' } } });
    expect(rig.judged.checkFit).toBe(before + 1);
    const { data } = await ask(document('alone verdict changes kit { key }'));
    expect(data).toMatchObject({
      edition: { fit: { alone: 'FAILS', verdict: 'FITS_WITH_CHANGES', changes: 'yes' } },
    });
    const fragment = `fragment f on FitAnswer { positions { verdict } }`;
    const spread = await ask(`${document('...f')} ${fragment}`);
    expect(spread.data).toMatchObject({
      edition: { fit: { positions: [{ verdict: 'FITS_WITH_CHANGES' }] } },
    });
  });
});

describe('a list', () => {
  const page = `query ($first: Int, $after: String) { edition {
    vehicles(first: $first, after: $after) {
      totalCount nodes { id } edges { cursor node { id } } pageInfo { hasNextPage endCursor }
    }
  } }`;

  interface Page {
    readonly totalCount: number;
    readonly nodes: readonly { readonly id: string }[];
    readonly edges: readonly { readonly cursor: string; readonly node: { readonly id: string } }[];
    readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
  }

  async function pageOf(first: number, after: string | null): Promise<Page> {
    const { data, errors } = await ask(page, { first, after });
    expect(errors).toBeUndefined();
    return (data as { edition: { vehicles: Page } }).edition.vehicles;
  }

  test('goes on after every entry of it', async () => {
    const whole = await pageOf(200, null);
    const ids = whole.nodes.map(({ id }) => id);
    expect(whole.totalCount).toBe(ids.length);
    expect(whole.pageInfo.hasNextPage).toBe(false);
    const first = await pageOf(4, null);
    expect(first.nodes.map(({ id }) => id)).toEqual(ids.slice(0, 4));
    for (const [index, { cursor }] of first.edges.entries()) {
      const next = await pageOf(3, cursor);
      expect(next.nodes.map(({ id }) => id)).toEqual(ids.slice(index + 1, index + 4));
      const last = await pageOf(2, next.edges[0]?.cursor ?? null);
      expect(last.nodes.map(({ id }) => id)).toEqual(ids.slice(index + 2, index + 4));
    }
    expect((await pageOf(4, first.pageInfo.endCursor)).nodes[0]?.id).toBe(ids[4]);
  });

  test('does not go on in another edition, nor after what is no cursor', async () => {
    const own = rigOf({ documents: [demoDocument()] });
    const { data } = await ask('{ edition { parts(first: 1) { edges { cursor } } } }', {}, own);
    const [edge] = (data as { edition: { parts: { edges: { cursor: string }[] } } }).edition.parts
      .edges;
    publish(own.store, { ...demoDocument(), statements: [] });
    for (const [cursor, code] of [
      [edge?.cursor, 'cursor-of-another-edition'],
      ['nonsense', 'not-a-cursor'],
    ]) {
      const document = `{ edition { parts(after: "${cursor ?? ''}") { totalCount } } }`;
      const { errors } = await ask(document, {}, own);
      expect(errors).toMatchObject([
        { extensions: { code: 'invalid-cursor', errors: [{ code }] } },
      ]);
    }
  });

  test('of parts by name has its faults as values', async () => {
    const { data, errors } = await ask(`{ edition { parts(part: ["bracket-20", "nothing"]) {
      nodes { __typename ... on FoundPart { id } ... on LostName { asked error { code } } }
    } } }`);
    expect(errors).toBeUndefined();
    expect(data).toMatchObject({
      edition: {
        parts: {
          nodes: [
            { __typename: 'FoundPart', id: 'bracket-20' },
            { __typename: 'LostName', asked: 'nothing', error: { code: 'unknown-part' } },
          ],
        },
      },
    });
  });
});

describe('where a field has one of several forms', () => {
  test('exactly one is taken', async () => {
    const kits = (want: string) =>
      `{ edition { kits(vehicle: "lirren-1", want: [${want}]) { complete } } }`;
    expect((await ask(kits('{ part: { part: { name: "bracket-20" } } }'))).errors).toBeUndefined();
    for (const want of ['{}', '{ part: { part: { name: "x" } }, lot: { lot: "y" } }']) {
      const { errors } = await ask(kits(want));
      expect(errors?.[0]?.message).toMatch(/OneOf|exactly one|must be specified/i);
    }
  });

  test('what is fitted is a part, nothing, not known, or one for each hand', async () => {
    const fitted = `[
      { key: "gearbox", value: { unknown: true } },
      { key: "centre-control", value: { none: true } },
      { key: "rear-half-shaft", value: { hands: { left: "rear-shaft-late", right: "unknown" } } },
      { key: "clutch", value: { part: "clutch-late" } }
    ]`;
    const { data } = await ask(
      `{ edition { kits(vehicle: "lirren-1", fitted: ${fitted}, steps: 1) {
        question { fitted { key value } }
      } } }`,
    );
    expect(data).toMatchObject({
      edition: {
        kits: {
          question: {
            fitted: expect.arrayContaining([
              { key: 'gearbox', value: 'unknown' },
              { key: 'centre-control', value: 'none' },
              { key: 'clutch', value: 'clutch-late' },
            ]),
          },
        },
      },
    });
  });
});

describe('what GraphQL over HTTP leaves to a server', () => {
  test('several operations in one request are not taken', async () => {
    const response = await rig.client.post('/graphql').send([{ query: '{ __typename }' }]);
    expect(response.status).toBe(400);
  });

  test('a form of a page is not taken: nobody asks in the name of another', async () => {
    const response = await rig.client
      .post('/graphql')
      .type('text/plain')
      .send('{"query":"{ __typename }"}');
    expect(response.status).toBe(415);
  });

  test('what fails in the program itself is masked, and told to the log', async () => {
    const broken = rigOf({
      useCases: {
        inspectVehicle: () => {
          throw new TypeError('a secret');
        },
      },
    });
    const document = '{ edition { inspect(vehicle: "cart-1") { state } } }';
    for (let time = 0; time < 2; time += 1) {
      const { errors } = await ask(document, {}, broken);
      expect(errors).toMatchObject([{ extensions: { code: 'internal-error' } }]);
      expect(JSON.stringify(errors)).not.toContain('secret');
    }
    expect(JSON.stringify(broken.lines)).toContain('a secret');
  });

  test('a body that is too large is a problem as everywhere', async () => {
    const query = `{ __typename } #${'x'.repeat(LIMITS.bodyBytes.value)}`;
    const response = await rig.client.post('/graphql').send({ query });
    expect([response.status, response.type]).toEqual([413, 'application/problem+json']);
  });
});

describe('a document that was asked before', () => {
  const documents = [
    '{ edition { number fit(vehicle: "lirren-1", part: "bracket-20") { alone verdict } } }',
    '{ edition { fit(vehicle: "lirren-1", part: "nothing") { alone } number } }',
    '{ edition(number: 77) { number } __typename }',
    'query A { edition { number } } query B { edition { engine } }',
    'query ($id: String!) { edition { part(id: $id) { name interfaces { interface } } } }',
    '{ edition { vehicles(first: -1) { totalCount } } }',
  ];

  test.each(documents)('is answered alike the second time, without yoga: %s', async (query) => {
    const own = rigOf({ documents: [demoDocument()] });
    const variables = { id: 'bracket-20' };
    const send = async (operationName?: string) => {
      const { body, status } = await own.client
        .post('/graphql')
        .send({ query, variables, ...(operationName === undefined ? {} : { operationName }) });
      return { body, status };
    };
    for (const name of query.startsWith('query A') ? ['A', 'B', undefined, 'C'] : [undefined]) {
      const first = await send(name);
      expect(await send(name)).toEqual(first);
    }
    const { body: other } = await own.client
      .post('/graphql')
      .set('accept', 'application/json, text/html')
      .send({ query, variables, ...(query.startsWith('query A') ? { operationName: 'A' } : {}) });
    expect(await send(query.startsWith('query A') ? 'A' : undefined)).toMatchObject({
      body: other,
    });
  });
});
