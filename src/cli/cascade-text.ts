/**
 * Why the lines of a route are there, as a tree: from what is asked for to what that makes
 * necessary, and so on. What comes out only makes room for what comes in, and is left out.
 */

import type { KitLineView, RouteView } from '../usecases/kit-answer.js';
import { called, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import type { CliWords } from './words/cli-words.js';

/** Columns for each step away from the wish. */
const STEP = 2;

/** @param said what was said of lines of other routes: it is not said again. */
export function sayCascade(
  { lines }: Pick<RouteView, 'lines'>,
  page: Page,
  words: CliWords,
  said: Set<string>,
): void {
  const told = lines.filter((line) => line.action !== 'remove');
  if (told.length === 0) return;
  page.say(words.kits.why, { indent: 2, tone: 'strong' });
  const left = new Set(told);
  const say = (line: KitLineView, depth: number): void => {
    left.delete(line);
    page.say(nodeText(line, words, said), { indent: 4 + depth * STEP, marker: '- ' });
    for (const next of told) {
      if (left.has(next) && parentOf(next) === line.key) say(next, depth + 1);
    }
  };
  const keys = new Set(told.map(({ key }) => key));
  for (const line of told) {
    const parent = parentOf(line);
    if (left.has(line) && (parent === null || !keys.has(parent))) say(line, 0);
  }
}

/** The line that first made it necessary. */
function parentOf({ why }: KitLineView): string | null {
  return why[0]?.after ?? null;
}

function nodeText(line: KitLineView, words: CliWords, said: Set<string>): string {
  const goods = line.lot ?? line.work ?? line.part;
  const name = goods === null ? line.name : called(line.name, goods, words);
  const texts = [...new Set(textsOf(line.why))].filter((text) => !said.has(`${line.key} ${text}`));
  for (const text of texts) said.add(`${line.key} ${text}`);
  return texts.length === 0 ? name : `${name}: ${texts.join(' ')}`;
}
