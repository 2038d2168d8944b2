/**
 * Why there is no way, as a person reads it: what is asked, what breaks it, and what would help.
 */

import type { ConflictView } from '../usecases/conflict-answer.js';
import type { Page } from './page.js';
import type { KitWords } from './words/kit-words.js';

export function sayConflict(conflict: ConflictView, page: Page, words: KitWords): void {
  const { demands, smallest, path, relaxations, more } = conflict;
  const list = (texts: readonly { readonly text: string }[]): void => {
    for (const { text } of texts) page.say(text, { indent: 2, marker: '- ' });
  };
  page.gap();
  page.say(demands.length === 1 ? words.cannot : words.conflict, { tone: 'strong' });
  list(demands);
  if (!smallest) page.say(words.notSmallest, { indent: 2 });
  if (path === null) page.say(words.noPath);
  else if (path.length > 0) {
    page.say(words.because, { tone: 'strong' });
    list(path);
  }
  if (relaxations.length === 0) return;
  page.say(words.waysOut, { tone: 'strong' });
  list(relaxations);
  if (more) page.say(words.moreWaysOut, { indent: 2 });
}
