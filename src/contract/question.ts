/**
 * The fields of questions. A question in a URL and one in a body have the same fields, and are
 * checked by the same schema. Here only the form is checked; whether there is such a vehicle is
 * for the use-case to say.
 */

import { CONTROL_PATTERN, ID_PATTERN, SURROGATE_PATTERN } from '../domain/catalogue/grammar.js';
import { SPOKEN_LANGUAGES } from './language.js';
import { atMost, LIMITS, type LimitName } from './limits.js';
import { z } from './openapi-zod.js';
import {
  A_LANGUAGE_TAG,
  A_PLACE,
  FEW_PLACES,
  NO_UNSEEN_CHARACTERS,
  type NOT_BESIDE_NAMES,
  type NOT_BESIDE_VEHICLE,
} from './problems/rules.js';
import { unitsField } from './units.js';
import { viewField } from './view.js';

const MOST_PLACES = LIMITS.placesInBody.value;

const LANGUAGE_TAG = /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/;

/** A name or a value; `longest` names the limit of its length. */
export function nameOf(longest: LimitName = 'nameCharacters') {
  return z
    .string()
    .min(1)
    .max(...atMost(longest))
    .refine((text) => !CONTROL_PATTERN.test(text) && !SURROGATE_PATTERN.test(text), {
      error: NO_UNSEEN_CHARACTERS.code,
    });
}

/** Names of several at once, in place of a list that is narrowed. */
export function namesField() {
  return z
    .array(nameOf())
    .min(1)
    .max(...atMost('namesLookedUp'))
    .optional();
}

/** What makes no difference to what is named one by one is refused there. */
export function refuseBeside(
  fields: readonly string[],
  question: object,
  context: z.RefinementCtx,
  { code }: typeof NOT_BESIDE_NAMES | typeof NOT_BESIDE_VEHICLE,
): void {
  for (const field of fields) {
    if (!(field in question)) continue;
    context.addIssue({ code: 'custom', path: [field], message: code });
  }
}

/** Positions and matings, as they stand in names of parameters and of fields. */
export const PLACE_PATTERN = ID_PATTERN;

const placeId = z
  .string()
  .max(...atMost('placeCharacters'))
  .regex(PLACE_PATTERN, { error: A_PLACE.code });

/** `propertyNames` is of OpenAPI 3.1; the types of the generator are of 3.0. */
const PLACES = {
  maxProperties: MOST_PLACES,
  propertyNames: { pattern: PLACE_PATTERN.source },
};

/** A map from positions, matings or facts. */
export function byPlace<Value extends z.ZodType>(value: Value) {
  return z
    .record(placeId, value)
    .refine((places) => Object.keys(places).length <= MOST_PLACES, {
      error: FEW_PLACES.code,
    })
    .openapi(PLACES);
}

const eachHand = z.strictObject({ left: nameOf(), right: nameOf() });

const companionSchema = z
  .union([nameOf(), eachHand])
  .openapi('Companion', { description: 'The name of a part, or of one for each hand.' });

export const fittedSchema = z.union([nameOf(), eachHand]).openapi('Fitted', {
  description:
    'The name of a part, `none` for an empty place, `unknown` where nobody knows; or what a line ' +
    'of a kit names by `donor:`. One word stands for both hands; `left` and `right` tell them ' +
    'apart.',
});

export const adaptersSchema = z
  .array(nameOf())
  .min(1)
  .max(...atMost('adaptersInRow'))
  .openapi({ description: 'Names of adapters in a row.' });

export const COMMON_FIELDS = {
  edition: z.int().min(1).optional().openapi({
    description: 'Number of the edition to ask; the newest where it is left out.',
    example: 1,
  }),
  lang: z
    .string()
    .max(...atMost('languageTagCharacters'))
    .regex(LANGUAGE_TAG, { error: A_LANGUAGE_TAG.code })
    .optional()
    .openapi({
      description:
        'Language of the sentences, as an RFC 5646 tag; spoken are ' +
        `${SPOKEN_LANGUAGES.join(' and ')}. It wins over \`Accept-Language\`; one that is not ` +
        'spoken gets English, and the answer says so in `lang`.',
      example: 'en',
    }),
  view: viewField,
};

/** Of questions whose answers show values. */
export const VALUES_FIELDS = {
  ...COMMON_FIELDS,
  units: unitsField,
};

/** A text that is a language tag, as `lang` takes it; undefined where it is none. */
export function languageTag(raw: unknown): string | undefined {
  const read = COMMON_FIELDS.lang.safeParse(raw);
  return read.success ? read.data : undefined;
}

export const vehicleField = nameOf().openapi({
  description: 'Id of the vehicle.',
  example: 'lirren-1',
});

export const partField = nameOf().openapi({
  description:
    'The part: its id, `number:` and a number of it (with `@` and whose number it is behind it ' +
    'if need be), or `sku:` and a code that it is offered under; without a word before it, an ' +
    'id, else a number. Numbers are compared without spaces, dots, dashes and case. One that is ' +
    'worked is `part+work`, in order of the works; in a URL, a plus sign is written `%2B`.',
  example: 'linkage-cables',
});

export const useField = z.enum(['road', 'off-road', 'competition']).optional().openapi({
  description: 'What the vehicle is used for; it decides how far two axles may disagree.',
});

export const positionField = placeId.optional().openapi({
  description: 'Position to put the part at; every one that takes it where this is left out.',
  example: 'linkage',
});

export const withField = byPlace(companionSchema).optional().openapi({
  description: 'Parts that are fitted beside it, by position.',
});
