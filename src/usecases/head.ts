/**
 * The head of every answer: from which edition, by which program, in which language.
 */

import { ENGINE } from '../domain/engine.js';
import type { AnswerHead, ValuesHead } from './answer.js';
import type { Edition } from './library.js';
import type { Speaker } from './speaker.js';

/**
 * An answer with its head. The head comes last, since only then is it known which texts had to be
 * said in another language.
 */
export function withHead<Body extends object>(
  edition: Edition,
  speaker: Speaker,
  body: Body,
): AnswerHead & Body {
  const { lang, textLang } = speaker;
  return { edition: edition.head.number, engine: ENGINE, lang, textLang: [...textLang], ...body };
}

/** The same for an answer that shows values: in which units its texts have them. */
export function withValuesHead<Body extends object>(
  edition: Edition,
  speaker: Speaker,
  body: Body,
): ValuesHead & Body {
  return withHead(edition, speaker, { units: speaker.values.units, ...body });
}
