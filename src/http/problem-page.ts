/**
 * One page of plain text for each type of problem: what it means, whether to ask again, a request
 * that meets it with the same one mended, and every fault that it can name.
 */

import type { Language } from '../contract/language.js';
import { problemExample } from '../contract/problem-examples.js';
import type { Fault } from '../contract/problems/fault.js';
import { FAULT_EXAMPLES } from '../contract/problems/fault-examples.js';
import { type ProblemCode, typeOf } from '../contract/problems/problem-type.js';
import { problemWords, sayFault } from '../contract/problems/words.js';
import { requestText } from '../contract/sent-request.js';
import { FAULT_CODES, PROBLEM_OF_FAULT } from './fault-problems.js';
import { PROBLEM_CODES, PROBLEMS } from './problem.js';

/** Characters in a line of a page; a request keeps its own lines. */
const WIDTH = 72;

const INDENT = '    ';

/** Every type in a line: status, address and title. */
export function listPage(lang: Language): string {
  const { problems } = problemWords(lang);
  const lines = PROBLEM_CODES.map((code) => {
    return `${PROBLEMS[code].status} ${typeOf(code)} ${problems[code].title}\n`;
  });
  return lines.join('');
}

export function problemPage(code: ProblemCode, lang: Language): string {
  const { status, retry } = PROBLEMS[code];
  const { problems, page } = problemWords(lang);
  const { title, about } = problems[code];
  const { refused, mended } = problemExample(code);
  const sections = [
    title,
    page.code(code, status),
    wrapped(about),
    page.again[retry],
    mended === null ? page.meanwhile : page.refused,
    indented(requestText(refused, page.request)),
  ];
  if (mended !== null) sections.push(page.mended, indented(requestText(mended, page.request)));
  const faults = FAULT_CODES.filter((one) => PROBLEM_OF_FAULT[one] === code);
  if (faults.length > 0) sections.push(wrapped(page.faults));
  for (const fault of faults) {
    const example = { code: fault, data: FAULT_EXAMPLES[fault] } as Fault;
    sections.push(indented(`${fault}\n${wrapped(sayFault(example, lang))}`));
  }
  return `${sections.join('\n\n')}\n`;
}

function indented(text: string): string {
  return text.replace(/^(?=.)/gm, INDENT);
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
