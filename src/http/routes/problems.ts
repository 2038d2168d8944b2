/**
 * One page of plain text for each type of problem: what `type` of a problem leads to.
 */

import type { Language } from '../../contract/language.js';
import { z } from '../../contract/openapi-zod.js';
import { parameter, type QueryGrammar } from '../../contract/parameters.js';
import { type ProblemCode, typeOf } from '../../contract/problems/problem-type.js';
import { problemWords } from '../../contract/problems/words.js';
import { COMMON_FIELDS } from '../../contract/question.js';
import { type Exchange, spokenIn, textReply } from '../exchange.js';
import { checkForm } from '../form.js';
import { type App, mount } from '../mount.js';
import { PROBLEM_CODES, PROBLEMS, Refusal } from '../problem.js';
import { parameterAt, readQuery } from '../query.js';
import type { Service } from '../service.js';

/** Characters in a line of a page. */
const WIDTH = 72;

export function mountProblems(app: App, service: Service): void {
  const mediaType = 'text/plain';
  const list = { placeOf: null, answer: listProblems };
  const one = { placeOf: null, answer: explainProblem };
  mount(app, service, '/problems', { mediaType, get: list });
  mount(app, service, '/problems/:code', { mediaType, get: one });
}

/** What a page takes: the language that it is in. */
const QUERY: QueryGrammar = { parameters: [parameter('lang', COMMON_FIELDS.lang)], groups: [] };
const FIELDS = z.strictObject({ lang: COMMON_FIELDS.lang });

function checkQuery({ search }: Exchange): void {
  checkForm(FIELDS, readQuery(search, QUERY), (at) => parameterAt(at, QUERY));
}

function listProblems(exchange: Exchange): Response {
  checkQuery(exchange);
  const spoken = spokenIn(exchange);
  const { problems } = problemWords(spoken.lang);
  const lines = PROBLEM_CODES.map((code) => {
    return `${PROBLEMS[code].status} ${typeOf(code)} ${problems[code].title}\n`;
  });
  return textReply(exchange, lines.join(''), spoken);
}

function explainProblem(exchange: Exchange): Response {
  checkQuery(exchange);
  const code = PROBLEM_CODES.find((known) => typeOf(known) === exchange.path);
  if (code === undefined) {
    const data = { path: exchange.path };
    throw new Refusal('unknown-problem', [{ code: 'unknown-problem', data }]);
  }
  const spoken = spokenIn(exchange);
  return textReply(exchange, pageOf(code, spoken.lang), spoken);
}

function pageOf(code: ProblemCode, lang: Language): string {
  const { status, retry } = PROBLEMS[code];
  const { problems, page } = problemWords(lang);
  const { title, about } = problems[code];
  const head = `${title}\n\n${page.code(code, status)}`;
  return `${head}\n\n${wrapped(about)}\n\n${page.again[retry]}\n`;
}

function wrapped(text: string): string {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1) ?? '';
    if (last === '') lines[lines.length - 1] = word;
    else if (last.length + 1 + word.length <= WIDTH) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.join('\n');
}
