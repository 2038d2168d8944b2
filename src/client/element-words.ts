/**
 * What the element says of its own, around the sentences of an answer, in every language. Neither
 * language may lack a word: the compiler sees to it.
 */

export interface ElementWords {
  readonly asking: string;
  readonly failed: string;
  readonly needed: string;
  readonly measure: string;
  readonly ask: string;
  readonly cautions: string;
  readonly add: string;
  /** Between the whole part of a number and its decimals. */
  readonly point: string;
}

const WORDS = {
  en: {
    asking: 'Asking whether it fits …',
    failed: 'Whether it fits cannot be said at the moment.',
    needed: 'Needed for it',
    measure: 'To be measured first',
    ask: 'Which vehicle is it?',
    cautions: 'Please note',
    add: 'Put all of it into the basket',
    point: '.',
  },
  de: {
    asking: 'Es wird gefragt, ob es passt …',
    failed: 'Ob es passt, lässt sich gerade nicht sagen.',
    needed: 'Dazu gehört',
    measure: 'Vorher zu messen',
    ask: 'Welches Fahrzeug ist es?',
    cautions: 'Bitte beachten',
    add: 'Alles davon in den Warenkorb',
    point: ',',
  },
} as const satisfies Readonly<Record<string, ElementWords>>;

/** English for a language that is not spoken. */
export function elementWords(lang: string): ElementWords {
  return /^de\b/i.test(lang) ? WORDS.de : WORDS.en;
}
