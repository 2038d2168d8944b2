/**
 * An example of every reason, of the demo world, said in any language. A code without one does not
 * compile.
 */

import { ANSWER_EXAMPLES } from './code-examples-answers.js';
import { CHECK_EXAMPLES } from './code-examples-checks.js';
import { KIT_EXAMPLES } from './code-examples-kits.js';
import { PIECE_EXAMPLES } from './code-examples-pieces.js';
import { type CodeExample, Teller } from './example-teller.js';
import type { Reason, ReasonCode } from './reason.js';
import { numbersIn, say } from './words.js';

const CODE_EXAMPLES: Readonly<Record<ReasonCode, CodeExample>> = {
  ...CHECK_EXAMPLES,
  ...ANSWER_EXAMPLES,
  ...KIT_EXAMPLES,
  ...PIECE_EXAMPLES,
};

/**
 * All that the sentence of the example speaks of: beside the data of an answer what that shows
 * beside the reason too, such as both sides of a check.
 */
export function exampleOf(code: ReasonCode, lang: string): Reason {
  const said = (other: ReasonCode): string => say(exampleOf(other, lang), lang);
  const teller = new Teller({ lang, numbers: numbersIn(lang), said });
  return { code, data: CODE_EXAMPLES[code](teller) };
}
