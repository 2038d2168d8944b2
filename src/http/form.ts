/**
 * Holds the fields of a question against their schema, and says every fault in words: at which
 * parameter or field, what it is instead.
 */

import { echo } from '../contract/json-pointer.js';
import { LIMITS } from '../contract/limits.js';
import type { z } from '../contract/openapi-zod.js';
import type { FaultWire } from '../contract/problem.js';
import { Refusal } from './problem.js';

export type Place = Pick<FaultWire, 'pointer' | 'parameter'>;
export type PathPlace = (path: readonly PropertyKey[]) => Place;

export interface ReadFields {
  readonly value: unknown;
  /** Faults that were found before the schema was asked. */
  readonly faults: readonly FaultWire[];
}

/** The question, or a `Refusal` that names every fault. */
export function checkForm<Schema extends z.ZodType>(
  schema: Schema,
  { value, faults }: ReadFields,
  placeOf: PathPlace,
): z.infer<Schema> {
  const parsed = schema.safeParse(value);
  if (parsed.success && faults.length === 0) return parsed.data;
  const issues = parsed.success ? [] : parsed.error.issues;
  throw formRefusal([...faults, ...issues.flatMap((issue) => faultsOf(issue, value, placeOf))]);
}

export function formRefusal(faults: readonly FaultWire[]): Refusal {
  const [first] = faults;
  const where = first?.parameter ?? first?.pointer ?? '';
  const others = faults.length - 1;
  const detail = `${where === '' ? '' : `${echo(where)}: `}${first?.text ?? ''}${moreOf(others)}`;
  return new Refusal('invalid-request', detail, { faults });
}

const MOST_FAULTS = LIMITS.faultsTold.value;

/** The exact number only where all are told: beyond that, not every one is looked for. */
function moreOf(others: number): string {
  if (others === 0) return '';
  if (others >= MOST_FAULTS) return ` And more than ${MOST_FAULTS - 1} others.`;
  return ` And ${others} more fault${others === 1 ? '' : 's'}.`;
}

type Issue = z.core.$ZodIssue;

function faultsOf(issue: Issue, value: unknown, placeOf: PathPlace): FaultWire[] {
  const { path } = issue;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => {
      const text = `There is no field "${echo(key)}" here.`;
      return { ...placeOf([...path, key]), code: 'unknown-field', text };
    });
  }
  if (issue.code === 'invalid_union') {
    return likeliest(issue.errors).flatMap((inner) => {
      const whole = { ...inner, path: [...path, ...inner.path] } as Issue;
      return faultsOf(whole, value, placeOf);
    });
  }
  const [code, text] = saidOf(issue, valueAt(value, path) === undefined);
  return [{ ...placeOf(path), code, text }];
}

/** Of the forms that a field may have, the one that it misses least. */
function likeliest(forms: readonly (readonly Issue[])[]): readonly Issue[] {
  const [first = [], ...others] = forms;
  return others.reduce((best, one) => (one.length < best.length ? one : best), first);
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'an object',
  record: 'an object',
  array: 'a list',
};

function saidOf(issue: Issue, isMissing: boolean): readonly [string, string] {
  switch (issue.code) {
    case 'invalid_type':
      if (isMissing) return ['missing', 'It is missing.'];
      return ['wrong-type', `It is not ${TYPES[issue.expected] ?? issue.expected}.`];
    case 'too_small':
      if (issue.origin === 'string') return ['too-short', 'It is empty.'];
      if (issue.origin === 'array') return ['too-few', 'It is an empty list.'];
      return ['too-small', `It is less than ${issue.minimum}.`];
    case 'too_big':
      if (issue.origin === 'string') {
        return ['too-long', `It has more than ${issue.maximum} characters.`];
      }
      if (issue.origin === 'array') return ['too-many', `It has more than ${issue.maximum} items.`];
      return ['too-large', `It is more than ${issue.maximum}.`];
    case 'invalid_value':
      return ['not-one-of', `It is none of ${issue.values.map(String).join(', ')}.`];
    case 'invalid_key':
      return ['malformed', issue.issues[0]?.message ?? 'This is no name of a place.'];
    default:
      return ['malformed', issue.message];
  }
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let found = value;
  for (const step of path) {
    if (typeof found !== 'object' || found === null || !Object.hasOwn(found, step))
      return undefined;
    found = Reflect.get(found, step);
  }
  return found;
}
