/**
 * The head of every answer: the edition it came from, the program, the language.
 */

import { ENGINE } from '../domain/engine.js';
import { z } from './openapi-zod.js';
import { unitsSchema } from './units.js';

/** The version of what decides. It changes with every change of an answer or of its words. */
export const ENGINE_VERSION: string = ENGINE;

export const editionField = z.int().min(1).openapi({
  description: 'The edition of the catalogue that answered.',
  example: 1,
});

export const engineField = z.string().openapi({
  description: 'Version of the kinds, of the judge and of the words: of what decides.',
  example: ENGINE,
});

export const ANSWER_HEAD = {
  edition: editionField,
  engine: engineField,
  lang: z.string().openapi({ description: 'The language of the sentences.', example: 'en' }),
  textLang: z.array(z.string()).openapi({
    description:
      'Languages that texts of the catalogue in this answer are in beside `lang`, since it has ' +
      'none in `lang`; empty where it has them all.',
    example: [],
  }),
};

/** The head of answers that show values. */
export const VALUES_HEAD = {
  ...ANSWER_HEAD,
  units: unitsSchema.openapi({
    description:
      'In which units the texts have values; `low`, `high` and `unit` are metric always.',
    example: 'recorded',
  }),
};
