/**
 * Kit questions to the cart with parts that go by several names.
 */

import { QuestionError } from '../../src/usecases/errors.js';
import { Faults } from '../../src/usecases/faults.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import { type AskedKitQuestion, kitQuestionOf } from '../../src/usecases/kit-question.js';
import { NAMED } from '../http/named-parts.js';
import { libraryOf } from '../memory-store.js';

export const library = libraryOf({
  ...NAMED,
  rulesets: [
    { id: 'class-a', valid: [null, null], cite: 'invented', demands: { keep: ['engine'] } },
  ],
});

/** Asks nothing of the cart. */
export const PLAIN = {
  vehicle: 'cart-1',
  fitted: {},
  adapters: {},
  measured: [],
  facts: {},
  torque: null,
  use: null,
  ignorePresent: false,
  edition: null,
  lang: 'en',
  units: 'recorded',
  ...USUAL_KIT,
} as const satisfies KitInput;

export function asked(more: Partial<KitInput> = {}): AskedKitQuestion {
  const input: KitInput = { ...PLAIN, ...more };
  return kitQuestionOf({ library, edition: library.edition(null), input }, new Faults());
}

/** The faults of a question, each as its field and its code. */
export function faultsOf(more: Partial<KitInput>): string[] {
  try {
    asked(more);
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return error.faults.map(({ at, code }) => `${at}: ${code}`);
  }
  return [];
}

export const wanted = (part: string | string[], more: object = {}) => ({
  part,
  position: null,
  hand: null,
  renew: false,
  ...more,
});

const NOWHERE = {
  part: null,
  position: null,
  hand: null,
  interface: null,
  parameter: null,
  fact: null,
};
export const read = (on: object, value: string | string[], tool: string | null = null) => ({
  on: { ...NOWHERE, ...on },
  value,
  tool,
});
export const priced = (of: 'part' | 'lot' | 'work' | 'sku', name: string, price: string) => {
  return { of, name, price, stock: null, leadDays: null, pack: null };
};
