/**
 * The forms that a field of a catalogue document can have, and short ways to declare them.
 */

import { LANGUAGE_PATTERN } from './grammar.js';

export type Shape =
  | { readonly is: 'text' }
  | {
      readonly is: 'string';
      readonly max: number;
      readonly pattern?: string;
      readonly says?: string;
      /** An exact number with its unit; whoever uses it reads it, and says what is wrong. */
      readonly isAmount?: true;
    }
  | { readonly is: 'id' }
  | { readonly is: 'boolean' }
  | { readonly is: 'integer'; readonly min: number; readonly max: number }
  | { readonly is: 'enum'; readonly of: readonly (string | number)[] }
  | { readonly is: 'scalar'; readonly isAmount?: true }
  | { readonly is: 'value' }
  | { readonly is: 'term' }
  | { readonly is: 'check' }
  | { readonly is: 'condition' }
  | { readonly is: 'list'; readonly of: Shape; readonly min?: number; readonly max?: number }
  | { readonly is: 'map'; readonly of: Shape }
  | { readonly is: 'nullable'; readonly of: Shape }
  /** Told apart by what the value is: the first form that could be meant is the one that counts. */
  | { readonly is: 'either'; readonly of: readonly Shape[]; readonly says: string }
  | {
      readonly is: 'object';
      readonly fields: Fields;
      readonly rest?: Shape;
      /** The field by which it is told apart from other objects that could stand there. */
      readonly tag?: string;
    };

export interface Field {
  readonly shape: Shape;
  readonly required?: true;
  readonly says: string;
}

export type Fields = { readonly [name: string]: Field };

/** Longest list that is read. */
const LONGEST_LIST = 1_000_000;

const DAY_31 = '(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])';
const DAY_30 = '(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)';
const DAY_29 = '02-(?:0[1-9]|[12][0-9])';

export const TEXT: Shape = { is: 'text' };
export const ID: Shape = { is: 'id' };
export const BOOLEAN: Shape = { is: 'boolean' };
export const SCALAR: Shape = { is: 'scalar' };
export const VALUE: Shape = { is: 'value' };
export const AMOUNT: Shape = { is: 'scalar', isAmount: true };
export const NAME: Shape = { is: 'string', max: 200 };
export const MONTH: Shape = {
  is: 'string',
  max: 7,
  pattern: '^[0-9]{4}-(0[1-9]|1[0-2])$',
  says: 'a month, such as "2006-03"',
};
export const DATE: Shape = {
  is: 'string',
  max: 10,
  pattern: `^[0-9]{4}-(?:${DAY_31}|${DAY_30}|${DAY_29})$`,
  says: 'a day, such as "2026-03-01"',
};
export const LANGUAGE: Shape = {
  is: 'string',
  max: 8,
  pattern: LANGUAGE_PATTERN.source,
  says: 'a language, such as "en"',
};

export const list = (of: Shape, min = 0, max = LONGEST_LIST): Shape => ({
  is: 'list',
  of,
  min,
  max,
});
export const map = (of: Shape): Shape => ({ is: 'map', of });
export const nullable = (of: Shape): Shape => ({ is: 'nullable', of });
export const need = (shape: Shape, says: string): Field => ({ shape, required: true, says });
export const may = (shape: Shape, says: string): Field => ({ shape, says });
export const object = (fields: Fields, tag?: string): Shape =>
  tag === undefined ? { is: 'object', fields } : { is: 'object', fields, tag };
