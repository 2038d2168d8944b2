/**
 * A nightly script: a file with a fit question a line in, a file with an answer a line out, which
 * the site search is built of. What is broken off goes on where it ended, in the same edition.
 *
 *     node nightly.js http://127.0.0.1:8080 questions.ndjson answers.ndjson
 *
 * Exit code 1 where it was broken off: run again, it asks what has not been answered.
 */

import {
  appendFileSync,
  createReadStream,
  existsSync,
  readFileSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { createInterface } from 'node:readline';
import { BatchBrokenOff, FayingClient, type FitBatchAnswer, type FitLine } from 'faying/client';

/** Characters of answers that are written in one go. */
const PIECE = 65_536;

/** The file of answers: the edition in its first line, then an answer a line. */
class Answers {
  readonly #path: string;
  readonly #counts = new Map<string, number>();
  #text = '';
  edition: number | null = null;
  count = 0;

  constructor(path: string) {
    this.#path = path;
    if (!existsSync(path)) return;
    const whole = wholeLinesOf(readFileSync(path));
    // A piece of a line is no answer.
    truncateSync(path, Buffer.byteLength(whole));
    const [first, ...answers] = whole.split('\n').slice(0, -1);
    if (first !== undefined) this.edition = (JSON.parse(first) as { edition: number }).edition;
    for (const answer of answers) this.#counted(JSON.parse(answer) as FitBatchAnswer);
  }

  begin(edition: number): void {
    this.edition = edition;
    writeFileSync(this.#path, `${JSON.stringify({ edition })}\n`);
  }

  add(answer: FitBatchAnswer): void {
    this.#counted(answer);
    this.#text += `${JSON.stringify(answer)}\n`;
    if (this.#text.length >= PIECE) this.flush();
  }

  flush(): void {
    appendFileSync(this.#path, this.#text);
    this.#text = '';
  }

  summary(): string {
    return [...this.#counts].map(([what, count]) => `${count} ${what}`).join(', ');
  }

  #counted(answer: FitBatchAnswer): void {
    const what = 'error' in answer ? `refused (${answer.error.code})` : aloneOf(answer);
    this.#counts.set(what, (this.#counts.get(what) ?? 0) + 1);
    this.count += 1;
  }
}

function aloneOf(answer: Exclude<FitBatchAnswer, { error: object }>): string {
  return 'answer' in answer ? answer.answer.alone : answer.alone;
}

function wholeLinesOf(bytes: Buffer): string {
  return bytes.subarray(0, bytes.lastIndexOf('\n') + 1).toString('utf8');
}

/** The questions of a file behind so many, read as they are asked for. */
async function* questionsOf(path: string, done: number): AsyncGenerator<FitLine> {
  let line = 0;
  for await (const text of createInterface({ input: createReadStream(path) })) {
    line += 1;
    if (line > done) yield JSON.parse(text) as FitLine;
  }
}

async function newestEdition(client: FayingClient): Promise<number> {
  const params = { path: { number: 'latest' } };
  return (await client.get('/v1/editions/{number}', { params })).number;
}

async function run(baseUrl: string, from: string, to: string): Promise<number> {
  const answers = new Answers(to);
  const done = answers.count;
  const client = new FayingClient({ baseUrl });
  const edition = answers.edition ?? (await newestEdition(client));
  if (answers.edition === null) answers.begin(edition);
  console.log(`Edition ${edition}; ${done} questions have an answer already.`);
  try {
    for await (const answer of client.at(edition).askBatch(questionsOf(from, done))) {
      answers.add({ ...answer, line: answer.line + done });
    }
  } catch (error) {
    if (!(error instanceof BatchBrokenOff)) throw error;
    console.log(`Broken off behind line ${done + error.lastLine}. Run it again to go on.`);
    return 1;
  } finally {
    answers.flush();
  }
  console.log(`${answers.count} answered: ${answers.summary()}.`);
  return 0;
}

const [baseUrl, from, to] = process.argv.slice(2);
if (baseUrl === undefined || from === undefined || to === undefined) {
  console.error('nightly.js <address of the service> <file of questions> <file of answers>');
  process.exitCode = 2;
} else {
  process.exitCode = await run(baseUrl, from, to);
}
