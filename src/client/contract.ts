/**
 * The contract as the client sees it: which paths there are, what each is asked with and what it
 * answers, all of it derived from the generated types.
 *
 * A list that the contract calls closed is a union here; an open one is a `string`, so that a
 * value that is new to a program is one of those that it does not know.
 */

import type { ParamsOption, RequestBodyOption } from 'openapi-fetch';
import type { components, paths } from './generated/openapi.js';

/** Every shape that the contract names. */
export type Schemas = components['schemas'];

/** Closed. */
export type Verdict = Schemas['Verdict'];
/** Closed: what a part comes to with nothing else changed, `alone`. */
export type Outcome = Schemas['Outcome'];
/** Closed: of a constraint. */
export type State = Schemas['State'];
/** Closed: of a route. */
export type Grade = Schemas['Grade'];

export type FitAnswer = Schemas['FitAnswer'];
export type PartlyFitAnswer = Schemas['PartlyFitAnswer'];
export type KitAnswer = Schemas['KitAnswer'];
export type Route = Schemas['Route'];
export type KitLine = Schemas['KitLine'];
export type Problem = Schemas['Problem'];
export type FitLine = Schemas['FitLine'];
export type FitBatchStart = Schemas['FitBatchStart'];
export type FitBatchEnd = Schemas['FitBatchEnd'];
/** What a line of a batch comes to: an answer in the short or the full form, or an error. */
export type FitBatchAnswer = Exclude<
  Schemas['FitBatchLine'],
  { start: FitBatchStart } | { end: FitBatchEnd }
>;

export type Method = 'get' | 'post';

/** Asked line by line, by `askBatch`. */
export type BatchPath = '/v1/fit/batch';

/** The paths that take a method. */
export type PathOf<Asked extends Method> = {
  [Path in keyof paths]: paths[Path] extends Readonly<Record<Asked, object>> ? Path : never;
}[Exclude<keyof paths, BatchPath>];

type OperationOf<Path extends keyof paths, Asked extends Method> = NonNullable<paths[Path][Asked]>;

/** What is asked with. The signal ends everything: the tries, the waits and the reading. */
export type InitOf<Path extends keyof paths, Asked extends Method> = ParamsOption<
  OperationOf<Path, Asked>
> &
  RequestBodyOption<OperationOf<Path, Asked>> & { readonly signal?: AbortSignal };

/** What is asked with, which may be left out where nothing in it has to be there. */
export type ArgumentsOf<Path extends keyof paths, Asked extends Method> =
  object extends InitOf<Path, Asked> ? [init?: InitOf<Path, Asked>] : [init: InitOf<Path, Asked>];

export type AnswerOf<Path extends keyof paths, Asked extends Method> =
  OperationOf<Path, Asked> extends {
    responses: { 200: { content: { 'application/json': infer Answer } } };
  }
    ? Answer
    : never;

/** What a page of a list is, whatever is in it. */
export interface Page {
  readonly items: readonly unknown[];
  readonly next: string | null;
}

/** The paths whose answers are pages. */
export type ListPath = {
  [Path in PathOf<'get'>]: AnswerOf<Path, 'get'> extends Page ? Path : never;
}[PathOf<'get'>];

export type ItemOf<Path extends ListPath> =
  AnswerOf<Path, 'get'> extends { items: (infer Item)[] } ? Item : never;

/** What holds for all lines of a batch. */
export type FitBatchQuestion = NonNullable<paths[BatchPath]['post']['parameters']['query']>;
