/**
 * The same question by every door: use-case, REST, GraphQL and command line. All questions that the
 * contract shows, those that are refused among them, over the demo; what each door was asked is
 * written down in `doors.md`.
 */

import { expect, test } from 'vitest';
import { EXAMPLE_REQUESTS, type ExampleRequest } from '../../src/contract/examples.js';
import type { Operation } from '../../src/contract/operation.js';
import { OPERATIONS } from '../../src/contract/operations.js';
import { REFUSED_QUESTIONS } from '../../src/contract/refused-questions.js';
import { sentRequest } from '../../src/contract/sent-request.js';
import {
  EDITION_QUESTIONS,
  PROGRAM_QUESTIONS,
  type Question,
} from '../../src/http/graphql/questions.js';
import { readQuery } from '../../src/http/query.js';
import { USE_CASES, type UseCases } from '../../src/http/service.js';
import { openStore } from '../../src/store/sqlite.js';
import { freshDatabase, run } from '../cli/terminal.js';
import { publish, rigOf } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';
import { wordsFor } from './as-command.js';
import { asRest, differences, everythingOf, fieldOf, given } from './as-graphql.js';

const database = freshDatabase();
const store = openStore(database, { mode: 'create' });
publish(store, demoDocument());

/** What the use-cases answered last. */
let judged: unknown = null;
const useCases = Object.fromEntries(
  Object.entries(USE_CASES).map(([name, use]) => [
    name,
    (...given: Parameters<typeof use>) => {
      judged = null;
      judged = Reflect.apply(use, null, given);
      return judged;
    },
  ]),
) as unknown as UseCases;

const rig = rigOf({ documents: [], store, useCases });

const requests: readonly ExampleRequest[] = [
  ...EXAMPLE_REQUESTS.filter(
    ({ operationId }) =>
      !/^(calculate|listCalculations|is|askFitBatch|exportFits)/.test(operationId),
  ),
  ...Object.entries(REFUSED_QUESTIONS)
    .filter(([operationId]) => !/^(calculate|askFitBatch|exportFits)/.test(operationId))
    .flatMap(([operationId, refused]) =>
      Object.entries(refused).map(([code, one]) => ({ operationId, name: code, ...one })),
    ),
];

const table: string[] = [];

test.each(requests.map((one) => [one.operationId, one.name, one] as const))(
  '%s: %s',
  async (operationId, name, request) => {
    const operation = OPERATIONS.find((one) => one.operationId === operationId);
    if (operation === undefined) throw new Error(`no operation ${operationId}`);
    const { method, target, body } = sentRequest(request);
    judged = null;
    const response = await rig.client[method === 'POST' ? 'post' : 'get'](target)
      .set('content-type', 'application/json')
      .send(body ?? undefined);
    const rest = JSON.parse(response.text) as Readonly<Record<string, unknown>>;
    const isAnswer = response.status === 200;
    const own = isAnswer && judged !== null ? JSON.stringify(withoutNext(judged)) : null;
    if (own !== null) expect(withoutNext(rest)).toEqual(JSON.parse(own));
    const question = request.body ?? questionIn(request, operation);
    const graphql = await byGraphql(operation, request.segment ?? null, question, rest, isAnswer);
    const command = await byCommand(operation, request.segment ?? null, question, rest, isAnswer);
    const said = isAnswer ? 'answered' : String(rest.code);
    const doors = [own !== null, true, graphql, command].map((asked) => (asked ? 'yes' : '–'));
    table.push(`| ${operationId} | ${name} | ${said} | ${doors.join(' | ')} |`);
  },
);

test('every door is asked most of them, and the table says which', async () => {
  const asked = (door: number) => table.filter((row) => row.split(' | ')[door] === 'yes').length;
  expect(table.length).toBe(requests.length);
  expect(table.filter((row) => row.split(' | ')[5] === 'yes').length).toBeGreaterThan(80);
  expect(asked(3)).toBeGreaterThan(30);
  const head = ['question', 'named', 'what comes', 'use-case', 'REST', 'GraphQL', 'command line'];
  const text = [
    '# The same questions by every door',
    '',
    'Every question that the contract shows, over the demo. "yes": the door was asked, and said',
    'the same as REST; a use-case says no problems itself, and not every question has a command.',
    '',
    `| ${head.join(' | ')} |`,
    `|${' --- |'.repeat(head.length)}`,
    ...table,
    '',
  ].join('\n');
  await expect(text).toMatchFileSnapshot('doors.md');
});

/**
 * A place in a list is a key to the use-case, and a text to clients; the faults of an item are made
 * a problem by the door.
 */
function withoutNext(answer: unknown): object {
  const { next, items, ...rest } = answer as {
    readonly next?: unknown;
    readonly items?: readonly (Lost | object)[];
  };
  if (next === undefined || items === undefined) return answer as object;
  const told = items.map((one) => {
    const { asked, faults = [], error } = one as Lost;
    const codes = [...faults, ...(error?.errors ?? [])].map(({ code }) => code);
    return codes.length === 0 ? one : { asked, codes };
  });
  return { ...rest, items: told, goesOn: next !== null };
}

interface Lost {
  readonly asked?: string;
  readonly faults?: readonly { readonly code: string }[];
  readonly error?: { readonly errors: readonly { readonly code: string }[] };
}

function questionIn({ search = '' }: ExampleRequest, { query }: Operation) {
  return readQuery(search, query).value as Readonly<Record<string, unknown>>;
}

function graphqlQuestion({ path }: Operation, question: object): [Question, boolean] | null {
  const all = [...EDITION_QUESTIONS, ...PROGRAM_QUESTIONS];
  const found = all.filter(({ operation }) => operation.path === path);
  const isPartly = /^\/v1\/(fit|kits)$/.test(path) && !('vehicle' in question);
  const one = found.find(({ field }) => !isPartly || field.endsWith('Partly'));
  return one === undefined ? null : [one, EDITION_QUESTIONS.includes(one)];
}

async function byGraphql(
  operation: Operation,
  id: string | null,
  question: Readonly<Record<string, unknown>>,
  rest: Readonly<Record<string, unknown>>,
  isAnswer: boolean,
): Promise<boolean> {
  const known = graphqlQuestion(operation, question);
  if (known === null) return false;
  const [{ field: name }, isOfEdition] = known;
  const field = fieldOf(name, isOfEdition);
  const { edition, lang, limit, cursor: _, ...asked } = question;
  const asks = {
    ...(id === null ? {} : { id }),
    ...asked,
    ...(limit === undefined ? {} : { first: limit }),
  };
  const args = Object.entries(asks).map(([key, value]) => {
    const argument = field.args.find((one) => one.name === key);
    if (argument === undefined) throw new Error(`${name} takes no ${key}`);
    return { key, type: String(argument.type), value: given(value, argument.type) };
  });
  const ofEdition = [
    ...(edition === undefined ? [] : [{ key: 'number', type: 'Int', value: edition }]),
    ...(lang === undefined ? [] : [{ key: 'lang', type: 'String', value: lang }]),
  ];
  const { selected, fragments } = everythingOf(field.type);
  const inner = `${name}${called(args)} ${selected}`;
  const all = isOfEdition ? [...args, ...ofEdition] : args;
  const declared = all.map(({ key, type }) => `$${key}: ${type}`).join(', ');
  const query = [
    `query ${declared === '' ? '' : `(${declared})`}`,
    isOfEdition ? `{ edition${called(ofEdition)} { ${inner} } }` : `{ ${inner} }`,
    fragments,
  ].join(' ');
  const variables = Object.fromEntries(all.map(({ key, value }) => [key, value]));
  const response = await rig.client.post('/graphql').send({ query, variables });
  const { data, errors } = response.body as {
    readonly data?: Readonly<Record<string, unknown>> | null;
    readonly errors?: readonly {
      readonly message: string;
      readonly extensions?: { readonly errors?: readonly { readonly code: string }[] };
    }[];
  };
  if (!isAnswer) {
    const { code, type, status, errors: faults } = rest;
    expect(errors).toMatchObject([{ extensions: { code, type, status } }]);
    const { errors: own = [] } = errors?.[0]?.extensions ?? {};
    expect(own.map((one) => one.code)).toEqual(
      ((faults ?? []) as readonly { code: string }[]).map((one) => one.code),
    );
    return true;
  }
  expect(errors?.map(({ message }) => message) ?? []).toEqual([]);
  const at = isOfEdition ? (data?.edition as Readonly<Record<string, unknown>>) : data;
  const answer = asRest(at?.[name], field.type) as Readonly<Record<string, unknown>>;
  const { items, counts, next: _next, ...others } = rest;
  const isList = 'nodes' in answer;
  expect(
    differences(isList ? others : rest, answer).filter((one) => !isOfPages(one, isList)),
  ).toEqual([]);
  if (isList) {
    expect(differences(items, answer.nodes)).toEqual([]);
    expect(answer.totalCount).toBe((counts as { total: number }).total);
    expect((answer.pageInfo as { hasNextPage: boolean }).hasNextPage).toBe(rest.next !== null);
  }
  return true;
}

/** Arguments that are variables of their own names. */
function called(args: readonly { readonly key: string }[]): string {
  return args.length === 0 ? '' : `(${args.map(({ key }) => `${key}: $${key}`).join(', ')})`;
}

/** What a connection has beside the fields of its answer. */
function isOfPages(difference: string, isList: boolean): boolean {
  return isList && /^\/(edges|nodes|pageInfo|totalCount|counts):/.test(difference);
}

async function byCommand(
  operation: Operation,
  id: string | null,
  question: Readonly<Record<string, unknown>>,
  rest: Readonly<Record<string, unknown>>,
  isAnswer: boolean,
): Promise<boolean> {
  const words = wordsFor(operation, id, question);
  if (words === null) return false;
  const { code, out, err } = await run(words, { database });
  if (isAnswer) {
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual(rest);
  } else {
    expect(code).toBe(2);
    expect(JSON.parse(err)).toMatchObject({ code: rest.code, type: rest.type });
  }
  return true;
}
