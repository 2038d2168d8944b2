/**
 * One page of plain text for each type of problem: what `type` of a problem leads to.
 */

import { type Exchange, textReply } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { PROBLEM_CODES, PROBLEMS, type ProblemCode, Refusal, typeOf } from '../problem.js';
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
    throw new Refusal('unknown-problem', `There is no problem type ${exchange.path}.`);
  }
  return textReply(exchange, pageOf(code));
}

function pageOf(code: ProblemCode): string {
  const { status, title, retry, about } = PROBLEMS[code];
  const again = {
    no: 'Asking again does not help.',
    later: 'The same request may be answered later.',
    'with-change': 'Ask again with something changed.',
  };
  return `${title}\n\nCode ${code}, status ${status}.\n\n${wrapped(about)}\n\n${again[retry]}\n`;
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
