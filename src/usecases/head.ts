/**
 * The head of every answer: from which edition, by which program, in which language.
 */

import { ENGINE } from '../domain/engine.js';
import type { AnswerHead } from './answer.js';
import type { Edition } from './library.js';
import type { Speaker } from './speaker.js';

export function headOf(edition: Edition, speaker: Speaker): AnswerHead {
  return { edition: edition.head.number, engine: ENGINE, lang: speaker.lang };
}
