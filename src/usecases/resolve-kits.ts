/**
 * What does the conversion take? The routes of a kit question, each with its lines and reasons.
 */

import { type Conflict, conflictOf } from '../domain/kit/conflict.js';
import type { KitQuestion } from '../domain/kit/question.js';
import { resolveKits } from '../domain/kit/resolve.js';
import type { Kits } from '../domain/kit/route.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { KitAnswer } from './kit-answer.js';
import type { KitInput } from './kit-input.js';
import { type AskedKitQuestion, kitQuestionOf } from './kit-question.js';
import { kitBody, type Telling } from './kit-views.js';
import type { Edition, Library } from './library.js';
import { Speaker } from './speaker.js';

export function resolveKitQuestion(library: Library, input: KitInput): KitAnswer {
  const edition = library.edition(input.edition);
  const { kits, asked, telling } = findKits(library, edition, input);
  const { catalogue, vehicle } = asked.question;
  const { lang, units } = input;
  const speaker = new Speaker({ catalogue, layout: vehicle.layout, lang, units });
  const body = kitBody(kits, conflictIn(kits, asked.question), telling, speaker);
  return withValuesHead(edition, speaker, {
    offers: asked.offers,
    currency: edition.catalogue.currency,
    tax: 'net',
    question: asked.asked,
    vehicle: vehicle.id,
    named: asked.parts.namedViews(speaker),
    ...body,
  });
}

/** Why there is no route; null where there is one, and where the search was cut short. */
export function conflictIn(kits: Kits, question: KitQuestion): Conflict | null {
  return kits.isComplete && kits.routes.length === 0 ? conflictOf(question) : null;
}

/** What was found, and what is needed to tell it. */
export interface FoundKits {
  readonly kits: Kits;
  readonly asked: AskedKitQuestion;
  readonly telling: Telling;
}

/** Ends with all faults of the question as one where there is any. */
export function findKits(library: Library, edition: Edition, input: KitInput): FoundKits {
  const asked = kitQuestionOf({ library, edition, input }, new Faults());
  const { question, offers } = asked;
  return {
    kits: resolveKits(question),
    asked,
    telling: {
      question,
      asked: asked.asked,
      origins: { edition: edition.head.number, offers },
      digest: library.digest,
    },
  };
}
