/**
 * All that English says of problems.
 */

import { LIMITS } from '../limits.js';
import { ENGLISH_FAULTS, englishStop } from './english-faults.js';
import { ENGLISH_LIMITS } from './english-limits.js';
import { ENGLISH_PROBLEMS } from './english-problems.js';
import type { ProblemWords } from './problem-words.js';

export const ENGLISH: ProblemWords = {
  problems: ENGLISH_PROBLEMS,
  faults: ENGLISH_FAULTS,
  limits: ENGLISH_LIMITS,
  jsonStop: englishStop,
  others,
  page: {
    code: (code, status) => `Code ${code}, status ${status}.`,
    again: {
      no: 'Asking again does not help.',
      later: 'The same request may be answered later.',
      'with-change': 'Ask again with something changed.',
    },
    request: {
      stops: {
        'breaking-off': 'The connection breaks off here.',
        'falling-silent': 'Nothing more comes.',
      },
      more: (count) => `${count} characters more`,
    },
    refused: 'This is refused so:',
    mended: 'And this, with the mistake mended, is answered:',
    meanwhile: 'Until then this is refused too, though nothing is wrong with it:',
    faults: 'What "errors" can name then, each code with an example of its sentence:',
  },
};

/** The exact number only where all are told: beyond that, not every one is looked for. */
function others(count: number): string {
  const most = LIMITS.faultsTold.value;
  if (count >= most) return `And more than ${most - 1} others.`;
  return `And ${count} more fault${count === 1 ? '' : 's'}.`;
}
