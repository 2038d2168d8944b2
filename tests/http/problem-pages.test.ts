/**
 * The pages of problems: each says in each language what the type means, shows a request that is
 * refused so and the same one mended, and names every fault of its type.
 */

import { describe, expect, test } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import { problemSchema } from '../../src/contract/problem.js';
import { problemExample } from '../../src/contract/problem-examples.js';
import { FAULT_EXAMPLES } from '../../src/contract/problems/fault-examples.js';
import { problemWords, sayFault } from '../../src/contract/problems/words.js';
import { requestText, type SentRequest } from '../../src/contract/sent-request.js';
import { FAULT_CODES, PROBLEM_OF_FAULT } from '../../src/http/fault-problems.js';
import { PROBLEM_CODES, PROBLEMS } from '../../src/http/problem.js';
import { json, rigOf } from './fixture.js';

const { client } = rigOf();

/** A text without what its lines are broken and moved in by. */
function plain(text: string): string {
  return text.replace(/\s+/g, ' ');
}

describe.each(SPOKEN_LANGUAGES)('in %s', (lang) => {
  const { problems, page: words } = problemWords(lang);

  test.each(PROBLEM_CODES)('%s', async (code) => {
    const page = await client.get(`/problems/${code}?lang=${lang}`).expect(200);
    expect(page.headers['content-type']).toBe('text/plain; charset=utf-8');
    expect(page.text).toMatch(/^\S.*\n\n/);
    const { title, about } = problems[code];
    const { status, retry } = PROBLEMS[code];
    const text = plain(page.text);
    for (const said of [title, words.code(code, status), about, words.again[retry]]) {
      expect(text).toContain(said);
    }
    const { refused, mended } = problemExample(code);
    const shown = (request: SentRequest) => plain(requestText(request, words.request));
    expect(text).toContain(shown(refused));
    if (mended === null) expect(text).toContain(words.meanwhile);
    else expect(text).toContain(`${words.mended} ${shown(mended)}`);
  });

  test('the list names them all', async () => {
    const page = await client.get(`/problems?lang=${lang}`).expect(200);
    const lines = page.text.trim().split('\n');
    expect(lines).toEqual(
      PROBLEM_CODES.map(
        (code) => `${PROBLEMS[code].status} /problems/${code} ${problems[code].title}`,
      ),
    );
  });

  test('each fault stands on the page of its type with its sentence, and on no other', async () => {
    const pages = await Promise.all(
      PROBLEM_CODES.map((code) => client.get(`/problems/${code}?lang=${lang}`)),
    );
    for (const code of FAULT_CODES) {
      const entry = `\n    ${code}\n    `;
      const on = PROBLEM_CODES.filter((_, index) => pages[index]?.text.includes(entry));
      expect([code, on]).toEqual([code, [PROBLEM_OF_FAULT[code]]]);
      const page = pages[PROBLEM_CODES.indexOf(PROBLEM_OF_FAULT[code])];
      const said = sayFault(
        { code, data: FAULT_EXAMPLES[code] } as Parameters<typeof sayFault>[0],
        lang,
      );
      expect(plain(page?.text ?? '')).toContain(`${code} ${said}`);
    }
  });
});

test('a type that is none has no page', async () => {
  const response = await client.get('/problems/nope').expect(404);
  expect(problemSchema.parse(json(response)).code).toBe('unknown-problem');
});

test('a page is the same as long as the program is, and is not sent twice', async () => {
  for (const path of ['/problems', '/problems/unknown-part', '/problems/unknown-part?lang=de']) {
    const first = await client.get(path).expect(200);
    const { etag = '' } = first.headers;
    expect(etag).toMatch(/^"[\w-]{22}"$/);
    expect((await client.get(path)).text).toBe(first.text);
    const again = await client.get(path).set('if-none-match', etag).expect(304);
    expect(again.text).toBe('');
    expect(again.headers['cache-control']).toBe(first.headers['cache-control']);
  }
  const [english, german] = await Promise.all(
    ['en', 'de'].map((lang) => client.get(`/problems/stopping?lang=${lang}`)),
  );
  expect(english?.headers.etag).not.toBe(german?.headers.etag);
});

test('no page is wider than a screen, but for what a request has in one line', async () => {
  for (const code of PROBLEM_CODES) {
    const { text } = await client.get(`/problems/${code}`);
    const wide = text.split('\n').filter((line) => line.length > 76);
    expect(wide.filter((line) => !/^ {4}(GET|POST|x-note|authorization|\{)/.test(line))).toEqual(
      [],
    );
  }
});
