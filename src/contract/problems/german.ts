/**
 * All that German says of problems.
 */

import { LIMITS } from '../limits.js';
import { GERMAN_FAULTS, germanStop } from './german-faults.js';
import { GERMAN_LIMITS } from './german-limits.js';
import { GERMAN_PROBLEMS } from './german-problems.js';
import type { ProblemWords } from './problem-words.js';

export const GERMAN: ProblemWords = {
  problems: GERMAN_PROBLEMS,
  faults: GERMAN_FAULTS,
  limits: GERMAN_LIMITS,
  jsonStop: germanStop,
  others,
  page: {
    code: (code, status) => `Code ${code}, Status ${status}.`,
    again: {
      no: 'Noch einmal zu fragen hilft nicht.',
      later: 'Dieselbe Anfrage wird später vielleicht beantwortet.',
      'with-change': 'Noch einmal fragen, mit einer Änderung.',
    },
    request: {
      stops: {
        'breaking-off': 'Hier bricht die Verbindung ab.',
        'falling-silent': 'Mehr kommt nicht.',
      },
      more: (count) => `noch ${count} Zeichen`,
    },
    refused: 'So wird abgewiesen:',
    mended: 'Ohne den Fehler wird geantwortet:',
    meanwhile: 'Bis dahin wird auch abgewiesen, woran nichts falsch ist:',
    faults: 'Was „errors“ dann nennen kann, jeder Code mit einem Beispiel seines Satzes:',
  },
};

/** The exact number only where all are told: beyond that, not every one is looked for. */
function others(count: number): string {
  const most = LIMITS.faultsTold.value;
  if (count >= most) return `Und mehr als ${most - 1} weitere.`;
  return count === 1 ? 'Und ein weiterer Fehler.' : `Und ${count} weitere Fehler.`;
}
