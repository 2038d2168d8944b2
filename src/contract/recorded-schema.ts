/**
 * One recorded value in JSON Schema: the grammar of quantities, points, amounts and codes, as
 * patterns. What such a pattern cannot see is told in `quantity-pattern.ts`.
 */

import { CODE_PATTERN, LONGEST_SCALAR } from '../domain/catalogue/grammar.js';
import {
  literalPattern,
  pointPattern,
  quantityPattern,
} from '../domain/quantity/quantity-pattern.js';

export type Schema = { readonly [keyword: string]: unknown };

export const refTo = (name: string): Schema => ({ $ref: `#/$defs/${name}` });

export const SAFE_INTEGER: Schema = {
  type: 'integer',
  minimum: Number.MIN_SAFE_INTEGER,
  maximum: Number.MAX_SAFE_INTEGER,
};

/** The codes of the reader, with the surplus spaces that it takes away. */
const SPACED_CODE_PATTERN = String.raw`^\s*${spaced(CODE_PATTERN.source.slice(1))}`;

function spaced(pattern: string): string {
  return pattern.replaceAll(' ', String.raw`\s`);
}

/** The definitions, by name. */
export const RECORDED: Schema = {
  quantity: {
    description:
      'A number with its unit: 114.3 mm, 43/12, 56.10 ±0.05 mm, 56.1 +0.05/-0.1 mm, ' +
      '600 to 610 mm, 50 H7. Decimals have a point, thousands no mark.',
    type: 'string',
    pattern: quantityPattern().source,
  },
  point: {
    description: 'Across and up, with the unit of both: 120.50, -45.00 mm.',
    type: 'string',
    pattern: pointPattern().source,
  },
  literal: {
    description: 'An exact number, with a space before its unit: 2, 6 h, 1.5 l, 0.5 %.',
    type: 'string',
    maxLength: LONGEST_SCALAR,
    pattern: literalPattern().source,
  },
  amount: {
    description: 'How much, or how long.',
    anyOf: [SAFE_INTEGER, refTo('literal')],
  },
  code: {
    description: 'A value that is known by name: M12x1.25.',
    type: 'string',
    pattern: SPACED_CODE_PATTERN,
  },
  scalar: {
    description: 'One recorded value; numbers that are not whole are written as text.',
    anyOf: [
      SAFE_INTEGER,
      {
        type: 'string',
        maxLength: LONGEST_SCALAR,
        anyOf: [refTo('quantity'), refTo('point'), refTo('code')],
      },
    ],
  },
};
