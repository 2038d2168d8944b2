/**
 * The registry of codes, in four stages: each code is listed once; it has a page, or a sentence in
 * each language; a test provokes it; and the source says it somewhere beside the lists and the
 * words. What no longer can be said is deleted, here as well.
 *
 * Left out: codes that a catalogue gives its own checks and rules, which are its own affair; and
 * how lines of a document come by their faults, for which see `tests/cli/lines.test.ts`.
 */

import { describe, expect, test } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import { LINE_FAULT_CODES } from '../../src/contract/ndjson-text.js';
import { problemSchema } from '../../src/contract/problem.js';
import { FAULT_EXAMPLES } from '../../src/contract/problems/fault-examples.js';
import { problemWords } from '../../src/contract/problems/words.js';
import { reasonDataList } from '../../src/contract/reason-codes.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { DOUBT_CODES, FAULT_CODES } from '../../src/domain/catalogue/fault-codes.js';
import { MOST_LISTED } from '../../src/domain/catalogue/faults.js';
import { CAUTION_GROUPS, REASON_CODES } from '../../src/domain/explain/reason.js';
import { say, sayCaution } from '../../src/domain/explain/words.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { PROBLEM_OF_FAULT, FAULT_CODES as REQUEST_FAULTS } from '../../src/http/fault-problems.js';
import { PROBLEM_CODES } from '../../src/http/problem.js';
import { problemPage } from '../../src/http/problem-page.js';
import { ERROR_OF } from '../../src/usecases/question-fault.js';
import { CART } from '../cli/catalogue.js';
import { changed, from, saidOf } from '../domain/catalogue/sample-document.js';
import { rigOf } from '../http/fixture.js';
import { provoke } from '../http/provocations.js';
import { demoDocument } from '../memory-store.js';
import { fileAt, filesOf, type SourceFile } from '../source-text.js';
import { FAULT_CASES, SHOP } from './fault-cases.js';
import { REASON_CASES } from './reason-cases.js';
import { saidOfCase, saidOfDemo } from './said-reasons.js';

const DEMO = demoDocument() as unknown as CatalogueDocument;

/** The codes that checks of a catalogue or of kinds have for themselves. */
function ownCodes(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(ownCodes);
  return 'code' in value && typeof value.code === 'string' ? [value.code, ...inner] : inner;
}

/** Documents of which no table has a row: none at all, and with more than can be listed. */
const MANY: Readonly<Record<string, () => ReturnType<typeof saidOf>>> = {
  'not-a-document': () => saidOf(5),
  'too-many-faults': () => saidOf(changed({ '/offers': times(MOST_LISTED + 1, () => 5) })),
  'too-many-doubts': () =>
    saidOf(changed({ '/parts': [...PARTS, ...times(MOST_LISTED + 1, spare)] })),
};

const PARTS = from('/parts') as unknown[];

/** A part with a face that meets nothing in any layout. */
function spare(index: number): object {
  const one = { kind: 'spline', side: 'shaft', teeth: 9 };
  return { id: `spare-${index}`, roles: ['adapter'], name: 'Spare', interfaces: { one } };
}

function times<Item>(count: number, item: (index: number) => Item): Item[] {
  return Array.from({ length: count }, (_, index) => item(index));
}

/** Lists of codes, tables of words, and examples: what stands there is not said by that. */
const LISTED =
  /fault-codes|question-fault|fault-problems|explain\/(reason|code-examples[a-z-]*|[a-z]+n)\./;

/** Source in which a code is no entry of a list or of a table of words. */
const SOURCE = filesOf('src', /\.ts$/).filter(({ path }) => !LISTED.test(path));
const DOORS = SOURCE.filter(({ path }) =>
  /^src\/(http\/(?!openapi)|batch|contract\/(json-text|form-faults|problems\/rules)\.)/.test(path),
);
const USE_CASES = SOURCE.filter(({ path }) => path.startsWith('src/usecases/'));
/** Who decides about parts, and who reads documents: some of their codes are called alike. */
const DECIDING = SOURCE.filter(({ path }) =>
  /^src\/domain\/(check|identify|judge|kit)\/(?!route\.ts$)/.test(path),
);
const READING = SOURCE.filter(({ path }) => /^src\/domain\/(?!(judge|kit)\/)/.test(path));

/** Whether one of the files has the code as a text; as a name of a field it is no saying. */
function isWritten(code: string, files: readonly SourceFile[]): boolean {
  return files.some(({ text }) => new RegExp(`'${code}'(?!:)`).test(text));
}

/** What each list of codes is of. */
const LISTS: Readonly<Record<string, readonly string[]>> = {
  'types of problems': PROBLEM_CODES,
  'faults of requests': REQUEST_FAULTS,
  'faults of documents': FAULT_CODES,
  'doubts of documents': DOUBT_CODES,
  'faults of documents in lines': LINE_FAULT_CODES,
  'reasons of answers': REASON_CODES,
  'groups of cautions': CAUTION_GROUPS,
};

describe.each(Object.entries(LISTS))('one: %s', (_, codes) => {
  test('are each listed once, in small letters and dashes', () => {
    expect(codes.length).toBeGreaterThan(0);
    expect([...new Set(codes)]).toEqual(codes);
    for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });
});

test('one: the codes of documents stand in the order of the alphabet', () => {
  for (const codes of [FAULT_CODES, DOUBT_CODES]) expect([...codes].sort()).toEqual(codes);
});

test('two: the page of faults has each code of documents in its place', () => {
  const page = fileAt('db/faults.md').text;
  const listed = [...page.matchAll(/^\| `([a-z-]+)` \| ([A-Z].+\.) \|$/gm)];
  const codes = [...FAULT_CODES, ...LINE_FAULT_CODES, ...DOUBT_CODES];
  expect(listed.map(([, code]) => code)).toEqual(codes);
  expect(new Set(listed.map(([, , meaning]) => meaning)).size).toBe(codes.length);
});

describe.each(SPOKEN_LANGUAGES)('two, in %s', (lang) => {
  const { problems, faults } = problemWords(lang);

  test.each(PROBLEM_CODES)('the problem %s has a page', (code) => {
    const page = problemPage(code, lang);
    expect(page.startsWith(`${problems[code].title}\n`)).toBe(true);
  });

  test.each(REQUEST_FAULTS)('the fault %s has a sentence, and a page that lists it', (code) => {
    const say = faults[code] as (data: unknown) => string;
    expect(say(FAULT_EXAMPLES[code]).length).toBeGreaterThan(10);
    expect(problemPage(PROBLEM_OF_FAULT[code], lang)).toContain(`\n    ${code}\n`);
  });

  test.each(REASON_CODES)(
    'the reason %s has a sentence, and is published with its data',
    (code) => {
      expect(say({ code, data: {} }, lang).length).toBeGreaterThan(3);
      expect(reasonDataList()).toMatch(new RegExp(`[:,] ${code}(,|$)`, 'm'));
    },
  );

  test('each group of cautions has a sentence of its own', () => {
    const said = CAUTION_GROUPS.map((group) => sayCaution(group, lang));
    expect(new Set(said).size).toBe(CAUTION_GROUPS.length);
  });
});

describe('three: a request has the fault', () => {
  test.each(REQUEST_FAULTS)('%s', async (code) => {
    const response = await provoke({
      code: PROBLEM_OF_FAULT[code],
      rig: { documents: [SHOP] },
      ...FAULT_CASES[code],
    });
    const problem = problemSchema.parse(await response.json());
    expect(problem.code).toBe(PROBLEM_OF_FAULT[code]);
    expect(problem.errors.map((fault) => fault.code)).toContain(code);
  });
});

describe('three: an answer says the reason', () => {
  const demo = saidOfDemo();
  const ofDemo = new Set(demo.map(({ code }) => code));

  test.each(REASON_CODES)('%s', (code) => {
    const said = code in REASON_CASES ? saidOfCase(code) : demo;
    expect(said.map((one) => one.code)).toContain(code);
  });

  test('small cases are for what the demo catalogue does not show', () => {
    expect(Object.keys(REASON_CASES).filter((code) => ofDemo.has(code))).toEqual([]);
  });

  test('no answer has a code that is nowhere declared', () => {
    const { rules = [] } = DEMO;
    const known = new Set<string>([
      ...REASON_CODES,
      ...CAUTION_GROUPS,
      ...[DEMO, BUILT_IN_KINDS].flatMap(ownCodes),
      ...rules.map(({ id }) => id),
    ]);
    expect([...ofDemo].filter((code) => !known.has(code))).toEqual([]);
  });
});

describe('three: an answer says the caution of a group that a role names', () => {
  test.each(CAUTION_GROUPS)('%s', async (caution) => {
    const roles = CART.roles.map((role) => (role.id === 'gearbox' ? { ...role, caution } : role));
    const { client } = rigOf({ documents: [{ ...CART, roles }] });
    const { body } = await client.get('/v1/fit?vehicle=cart-1&part=box-c').expect(200);
    expect(body.cautions.map(({ code }: { code: string }) => code)).toContain(caution);
  });
});

describe('three: fixtures of a kind have its own reasons', () => {
  test.each(BUILT_IN_KINDS.filter((kind) => ownCodes(kind).length > 0))(
    '$id',
    ({ id, ...kind }) => {
      const fixtures = filesOf(`tests/kinds/${id}`, /\.ts$/).map(({ text }) => text);
      const missing = ownCodes(kind).filter(
        (code) => !fixtures.some((text) => text.includes(`fails ${code}'`)),
      );
      expect(missing).toEqual([]);
    },
  );
});

describe('three: a document has the fault or doubt', () => {
  const TABLES = ['broken-forms', 'broken-meanings', 'doubtful-documents', 'ruined-document'];
  const texts = TABLES.map((name) => fileAt(`tests/domain/catalogue/${name}.txt`).text).join('\n');
  const said = (sort: 'fault' | 'doubt') =>
    [...texts.matchAll(/^(\w+) ([a-z-]+) /gm)].flatMap(([, word, code]) =>
      word === sort && code !== undefined ? [code] : [],
    );

  test.each(FAULT_CODES)('%s', (code) => {
    const found = MANY[code]?.().faults.map((fault) => fault.code) ?? said('fault');
    expect(found).toContain(code);
  });

  test.each(DOUBT_CODES)('%s', (code) => {
    const found = MANY[code]?.().warnings.map((doubt) => doubt.code) ?? said('doubt');
    expect(found).toContain(code);
  });

  test('and nothing has a code that is not listed', () => {
    expect(said('fault').filter((code) => !FAULT_CODES.some((one) => one === code))).toEqual([]);
    expect(said('doubt').filter((code) => !DOUBT_CODES.some((one) => one === code))).toEqual([]);
  });
});

describe('four: the source says it', () => {
  test.each(PROBLEM_CODES)('the problem %s, at a door or by one of its faults', (code) => {
    const isOfFault = Object.values(ERROR_OF).some((one) => one === code);
    expect(isOfFault || isWritten(code, DOORS)).toBe(true);
  });

  test.each(REQUEST_FAULTS)('the fault %s', (code) => {
    expect(isWritten(code, code in ERROR_OF ? USE_CASES : DOORS)).toBe(true);
  });

  test.each([...FAULT_CODES, ...DOUBT_CODES])('%s, of documents', (code) => {
    expect(isWritten(code, READING)).toBe(true);
  });

  test.each(REASON_CODES)('%s, of answers', (code) => {
    expect(isWritten(code, [...DECIDING, ...USE_CASES])).toBe(true);
  });

  test('a code that nobody says is found', () => {
    for (const files of [DOORS, USE_CASES, DECIDING, READING]) {
      expect(files.length).toBeGreaterThan(5);
      expect(isWritten('said-by-nobody', files)).toBe(false);
    }
  });
});
