/**
 * One page of plain text for each type of problem: what `type` of a problem leads to.
 */

import { type ProblemCode, typeOf } from '../../contract/problems/problem-type.js';
import { problemWords } from '../../contract/problems/words.js';
import { type Exchange, textReply } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { PROBLEM_CODES, PROBLEMS, Refusal } from '../problem.js';
import { refuseParameters } from '../query.js';
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

function listProblems(exchange: Exchange): Response {
  refuseParameters(exchange.search);
  const lines = PROBLEM_CODES.map((code) => `${PROBLEMS[code].status} ${typeOf(code)}`);
  return textReply(exchange, `${lines.join('\n')}\n`);
}

function explainProblem(exchange: Exchange): Response {
  refuseParameters(exchange.search);
  const code = PROBLEM_CODES.find((known) => typeOf(known) === exchange.path);
  if (code === undefined) {
    const data = { path: exchange.path };
    throw new Refusal('unknown-problem', [{ code: 'unknown-problem', data }]);
  }
  return textReply(exchange, pageOf(code));
}

function pageOf(code: ProblemCode): string {
  const { status, retry } = PROBLEMS[code];
  const { problems, page } = problemWords('en');
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
