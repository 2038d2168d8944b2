/**
 * Everything that can be wrong with a request, as codes with data: the faults of questions, and
 * those of the form in which they arrive. Codes are stable; each language has a sentence for each.
 */

import type { Scope, View } from '../../domain/access.js';
import type { Nothing, QuestionFaultData } from '../../usecases/question-fault.js';
import type { LimitName } from '../limits.js';

/** Where a text stops being JSON, and what stands there. */
export interface JsonStop {
  /** Both count from 1, the offset from 0. */
  readonly line: number;
  readonly column: number;
  readonly offset: number;
  readonly expected: JsonExpected;
  readonly found: JsonFound;
  /** The word or sign itself, where it is one that can be shown. */
  readonly sign: string | null;
}

export type JsonExpected =
  | 'value'
  | 'name'
  | 'colon'
  | 'comma-or-brace'
  | 'comma-or-bracket'
  | 'closing-quote'
  | 'escape'
  | 'end';

export type JsonFound =
  | 'end-of-text'
  | 'end-of-line'
  | 'space'
  | 'control-character'
  | 'single-quote'
  | 'double-quote'
  | 'sign';

/** What a value is of, or should be. */
export type ValueType = 'text' | 'integer' | 'boolean' | 'object' | 'list';

/** More than is taken: the most, and the name of the limit where it is one of the service's. */
export interface Passed {
  readonly most: number;
  readonly limit?: LimitName;
}

/** What keeps a row from being CSV (RFC 4180), or from being a row of its table. */
export type RowFault = 'quote-inside' | 'after-quote' | 'unclosed-quote' | 'count-of-fields';

/** What the text of a JSON value has wrong that the value does not show. */
export interface JsonFaultData {
  readonly 'repeated-name': { readonly name: string };
  readonly 'reserved-name': { readonly name: string };
  readonly 'too-deep': Passed;
  readonly 'too-many-values': Passed;
}

/** What only a door knows to be wrong. */
export interface DoorFaultData extends JsonFaultData {
  readonly 'unknown-parameter': { readonly name: string };
  readonly 'repeated-parameter': Nothing;
  readonly 'too-many-parameters': Passed;
  readonly 'malformed-encoding': Nothing;
  readonly 'unknown-field': { readonly name: string };
  readonly missing: Nothing;
  readonly 'wrong-type': { readonly type: ValueType };
  readonly 'empty-text': Nothing;
  readonly 'empty-list': Nothing;
  readonly 'too-long': Passed;
  readonly 'too-many-items': Passed;
  readonly 'too-many-places': Passed;
  readonly 'too-small': { readonly least: number };
  readonly 'too-large': Passed;
  readonly 'not-one-of': { readonly values: readonly string[] };
  readonly 'unseen-characters': Nothing;
  readonly 'not-a-place': { readonly most: number };
  readonly 'not-a-language-tag': Nothing;
  readonly 'not-a-month': Nothing;
  readonly 'not-an-edition': Nothing;
  /** A filter of lists, where names are looked up one by one. */
  readonly 'not-beside-names': Nothing;
  readonly 'not-beside-vehicle': Nothing;
  readonly 'not-a-cursor': Nothing;
  readonly 'cursor-of-another-list': Nothing;
  readonly 'cursor-of-another-edition': Nothing;
  readonly 'not-json': JsonStop;
  readonly 'not-utf-8': Nothing;
  readonly 'body-ended-early': Nothing;
  readonly 'body-too-large': Passed;
  readonly 'body-not-json-type': Nothing;
  readonly 'body-encoded': Nothing;
  /** Of a path that takes several types. */
  readonly 'body-type-not-taken': { readonly types: string };
  readonly 'coding-not-taken': { readonly codings: string };
  readonly 'not-gzip': Nothing;
  /** A compressed body comes to so many times its size that nobody can have meant it. */
  readonly 'expands-too-far': Passed;
  readonly 'line-too-long': Passed;
  readonly 'row-not-utf-8': Nothing;
  readonly 'malformed-row': { readonly rule: RowFault };
  readonly 'repeated-column': { readonly name: string };
  readonly 'unknown-column': { readonly name: string };
  readonly 'key-not-known': Nothing;
  /** What the key would have to open that nobody showed. */
  readonly 'no-key': { readonly scope: Scope };
  /** What the key that was shown does not open. */
  readonly 'scope-not-granted': { readonly scope: Scope };
  /** A key that pages have, on another page or on none. */
  readonly 'origin-not-granted': Nothing;
  /** What a question is about, its view shows none of; `least` does. */
  readonly 'question-not-in-view': { readonly view: View; readonly least: View };
  readonly 'edition-not-in-view': { readonly edition: number };
  /** Which vehicles a part fits, the public is told of those that it names. */
  readonly 'list-not-in-view': { readonly view: View; readonly field: string };
  /** What it asks for would tell what the view does not show. */
  readonly 'wish-not-in-view': { readonly view: View; readonly field: string };
  readonly 'url-too-long': Passed;
  readonly 'nothing-at-path': { readonly path: string };
  readonly 'unknown-problem': { readonly path: string };
  readonly 'method-not-taken': {
    readonly path: string;
    readonly method: string;
    readonly allow: string;
  };
  readonly 'type-not-accepted': { readonly type: string };
}

export interface FaultData extends QuestionFaultData, DoorFaultData {}

export type FaultCode = keyof FaultData;

/** A fault of one of the codes, or of any. */
export type FaultOf<Code extends FaultCode> = {
  readonly [One in Code]: { readonly code: One; readonly data: FaultData[One] };
}[Code];

export type Fault = FaultOf<FaultCode>;
