/**
 * What a schema says of a value, as faults of the contract: each at its place, with the code that
 * the languages have a sentence for.
 */

import { limitNamed } from './limits.js';
import type { z } from './openapi-zod.js';
import type { Fault, ValueType } from './problems/fault.js';
import { RULES } from './problems/rules.js';

/** Where a field stands in what was sent, by its names from the outside in. */
export type FormPlace<Place extends object> = (path: readonly PropertyKey[]) => Place;

/** Every fault of the value; none where the schema takes it. */
export function formFaults<Place extends object>(
  parsed: z.ZodSafeParseResult<unknown>,
  value: unknown,
  placeOf: FormPlace<Place>,
): (Fault & Place)[] {
  if (parsed.success) return [];
  return parsed.error.issues.flatMap((issue) => faultsOf(issue, value, placeOf));
}

type Issue = z.core.$ZodIssue;

function faultsOf<Place extends object>(
  issue: Issue,
  value: unknown,
  placeOf: FormPlace<Place>,
): (Fault & Place)[] {
  const { path } = issue;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((name) => {
      return { ...placeOf([...path, name]), code: 'unknown-field', data: { name } };
    });
  }
  if (issue.code === 'invalid_union') {
    return likeliest(issue.errors).flatMap((inner) => {
      const whole = { ...inner, path: [...path, ...inner.path] } as Issue;
      return faultsOf(whole, value, placeOf);
    });
  }
  return [{ ...placeOf(path), ...faultOf(issue, valueAt(value, path) === undefined) }];
}

/** Of the forms that a field may have, the one that it misses least: of its type, if there is. */
function likeliest(forms: readonly (readonly Issue[])[]): readonly Issue[] {
  const ofType = forms.filter((issues) => !issues.some(isOfWhole));
  const [first = [], ...others] = ofType.length === 0 ? forms : ofType;
  return others.reduce((best, one) => (one.length < best.length ? one : best), first);
}

/** A list is none of some words, no more than it is a text. */
function isOfWhole({ code, path }: Issue): boolean {
  return (code === 'invalid_type' || code === 'invalid_value') && path.length === 0;
}

/** What zod calls the types that fields have. */
const TYPES: ReadonlyMap<string, ValueType> = new Map([
  ['string', 'text'],
  // Every number of a question is a whole one; zod says so only of a fraction.
  ['number', 'integer'],
  ['int', 'integer'],
  ['boolean', 'boolean'],
  ['object', 'object'],
  ['record', 'object'],
  ['array', 'list'],
]);

function faultOf(issue: Issue, isMissing: boolean): Fault {
  switch (issue.code) {
    case 'invalid_type': {
      if (isMissing) return { code: 'missing', data: {} };
      const type = TYPES.get(issue.expected);
      if (type === undefined) throw new Error(`no field is of the type ${issue.expected}`);
      return { code: 'wrong-type', data: { type } };
    }
    case 'too_small':
      if (issue.origin === 'string') return { code: 'empty-text', data: {} };
      if (issue.origin === 'array') return { code: 'empty-list', data: {} };
      return { code: 'too-small', data: { least: Number(issue.minimum) } };
    case 'too_big': {
      const limit = limitNamed(issue.message);
      const most = Number(issue.maximum);
      const data = limit === null ? { most } : { most, limit };
      if (issue.origin === 'string') return { code: 'too-long', data };
      return { code: issue.origin === 'array' ? 'too-many-items' : 'too-large', data };
    }
    case 'invalid_value':
      return { code: 'not-one-of', data: { values: issue.values.map(String) } };
    case 'invalid_key': {
      const [inner] = issue.issues;
      if (inner === undefined) throw new Error('a key is refused for nothing');
      return faultOf(inner, false);
    }
    default:
      return ruleOf(issue.message);
  }
}

/** Rules of the contract's own name the code of their fault, since zod has no words for it. */
function ruleOf(name: string | undefined): Fault {
  const rule = RULES.find(({ code }) => code === name);
  if (rule === undefined) throw new Error(`a rule of the contract has no code: ${name}`);
  return rule;
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
