/**
 * Answers lists and reads of the catalogue: what every one of them does alike.
 */

import { type Cursor, isOf, listName, readCursor, withCursor } from '../contract/cursor.js';
import { USUAL_ENTRIES } from '../contract/list.js';
import type { z } from '../contract/openapi-zod.js';
import type { Operation } from '../contract/operation.js';
import type { Library } from '../usecases/library.js';
import type { ListInput } from '../usecases/listing.js';
import type { EditionHead } from '../usecases/ports.js';
import type { ValuesInput } from '../usecases/question.js';
import type { ReadInput } from '../usecases/read-one.js';
import { checkNamed } from './access.js';
import { type Asked, answerTo, type Lifetimes, type Settled, settle } from './asked.js';
import { pointerCalled, questionInBody } from './body.js';
import type { Exchange } from './exchange.js';
import { checkForm, formRefusal } from './form.js';
import { type App, mount } from './mount.js';
import { type Place, Refusal } from './problem.js';
import { decodeText, parameterAt, parameterCalled, questionInUrl, readQuery } from './query.js';
import type { Service } from './service.js';

interface ListQuestion extends Asked {
  readonly limit?: number | undefined;
  readonly cursor?: string | undefined;
}

export interface ListRoute<
  Question extends ListQuestion,
  Input extends ListInput,
  Given extends object = object,
> {
  readonly operation: Operation;
  readonly schema: z.ZodType<Question>;
  /** The filters of the question, as the use-case takes them. */
  readonly filters: (question: Question) => Omit<Input, keyof ListInput | keyof Given | 'id'>;
  /** Entries of a page where the question does not say; as of all lists where it is left out. */
  readonly usual?: (question: Question) => number;
  /** What else the use-case takes: what the answer depends on beside the edition's content. */
  readonly given?: (head: EditionHead) => Given;
  readonly list: (library: Library, input: Input) => { readonly next: readonly string[] | null };
  readonly lifetimes: Lifetimes | ((input: Input) => Lifetimes);
  /** The field that names entries one by one, where the public is shown no whole list. */
  readonly namedInPublic?: string;
}

export function mountList<
  Question extends ListQuestion,
  Input extends ListInput,
  Given extends object = object,
>(app: App, service: Service, route: ListRoute<Question, Input, Given>): void {
  const { operation, schema } = route;
  const { query, body } = operation;
  const answer = (exchange: Exchange, question: Question) =>
    answerList(exchange, service, route, question);
  if (body !== null) {
    mount(app, service, mountedAt(operation), {
      mediaType: 'application/json',
      ask: {
        placeOf: pointerCalled,
        answer: async (exchange) => answer(exchange, await questionInBody(exchange, schema)),
      },
    });
    return;
  }
  mount(app, service, mountedAt(operation), {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, query),
      answer: (exchange) => answer(exchange, questionInUrl(exchange, query, schema)),
    },
  });
}

function answerList<Question extends ListQuestion, Input extends ListInput, Given extends object>(
  exchange: Exchange,
  service: Service,
  {
    operation,
    filters: filtersOf,
    usual,
    given,
    list,
    lifetimes,
    namedInPublic,
  }: ListRoute<Question, Input, Given>,
  question: Question,
): Response {
  const { id, path } = placeIn(exchange, operation);
  const query = operation.body === null ? operation.query : null;
  const place = query === null ? pointerCalled('cursor') : OF_CURSOR;
  const filters = { ...filtersOf(question), ...(id === null ? {} : { id }) };
  const name = listName(operation, filters);
  const cursor = question.cursor === undefined ? null : cursorOf(question.cursor, name, place);
  const at = { exchange, path: operation.path, place };
  const settled = settledBy(cursor, question, service, at);
  const { head, lang, view } = settled;
  if (namedInPublic !== undefined) checkNamed(view, question, namedInPublic);
  const common: ListInput = {
    edition: head.number,
    lang,
    limit: question.limit ?? usual?.(question) ?? USUAL_ENTRIES,
    after: cursor?.after ?? null,
  };
  // The parts of the input: what all lists take, and what this one takes beside it.
  const input = { ...filters, ...given?.(head), ...common } as Input;
  const judge = (library: Library, asked: Input): object =>
    withCursor(list(library, asked), head, name);
  const edition = cursor?.edition ?? question.edition;
  const asked = edition === undefined ? question : { ...question, edition };
  return answerTo(service, exchange, settled, {
    path,
    template: operation.path,
    query,
    asked,
    lifetimes: typeof lifetimes === 'function' ? lifetimes(input) : lifetimes,
    input,
    judge,
  });
}

/** What the client filled in in the path, and the path with it in its one spelling. */
function placeIn(exchange: Exchange, operation: Operation) {
  const { segment, path } = operation;
  if (segment === null) return { id: null, path };
  const id = segmentOf(exchange.path, operation);
  return { id, path: path.replace(/\{\w+\}/, encodeURIComponent(id)) };
}

/** Where a cursor stands in a URL. */
const OF_CURSOR: Place = { parameter: 'cursor' };

/** Refuses what is no cursor of this list. */
export function cursorOf(text: string, list: string, place: Place = OF_CURSOR): Cursor {
  const cursor = readCursor(text);
  if (cursor?.list === list) return cursor;
  throw cursorRefusal(cursor === null ? 'not-a-cursor' : 'cursor-of-another-list', place);
}

/** Of a list that is asked: by what, at which path of the contract, and where its cursor stands. */
interface ListPlace {
  readonly exchange: Exchange;
  readonly path: string;
  readonly place: Place;
}

/** The edition of the cursor; the question may name it too, but no other. */
function settledBy(
  cursor: Cursor | null,
  asked: Asked,
  service: Service,
  { exchange, path, place }: ListPlace,
): Settled {
  if (cursor === null) return settle(service, exchange, asked, { path });
  const { edition } = asked;
  const head = service.library.find(cursor.edition);
  if (head === null || !isOf(cursor, head.hash) || (edition ?? head.number) !== head.number) {
    throw cursorRefusal('cursor-of-another-edition', place);
  }
  return settle(service, exchange, { ...asked, edition: head.number }, { path, isGoingOn: true });
}

export function cursorRefusal(
  code: 'not-a-cursor' | 'cursor-of-another-list' | 'cursor-of-another-edition',
  place: Place = OF_CURSOR,
): Refusal {
  return new Refusal('invalid-cursor', [{ ...place, code, data: {} }]);
}

interface ReadQuestion extends Asked {
  readonly id: string;
}

export interface ReadRoute<Question extends ReadQuestion, Input extends ReadInput> {
  readonly operation: Operation;
  readonly schema: z.ZodType<Question>;
  /** What else the question wishes, as the use-case takes it. */
  readonly wishes: (question: Question) => Omit<Input, keyof ReadInput>;
  readonly read: (library: Library, input: Input) => object;
  readonly lifetimes: Lifetimes;
}

/** What is asked of everything that has values. */
export function valueWishes({ units }: { readonly units?: ValuesInput['units'] | undefined }) {
  return { units: units ?? 'recorded' };
}

export function mountRead<Question extends ReadQuestion, Input extends ReadInput>(
  app: App,
  service: Service,
  route: ReadRoute<Question, Input>,
): void {
  const { operation } = route;
  mount(app, service, mountedAt(operation), {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, operation.query),
      answer: (exchange) => answerRead(exchange, service, route),
    },
  });
}

function answerRead<Question extends ReadQuestion, Input extends ReadInput>(
  exchange: Exchange,
  service: Service,
  { operation, schema, wishes, read: use, lifetimes }: ReadRoute<Question, Input>,
): Response {
  const { query } = operation;
  const read = readQuery(exchange.search, query);
  const id = segmentOf(exchange.path, operation);
  const value = { ...(read.value as object), id };
  const question = checkForm(schema, { ...read, value }, (at) => parameterAt(at, query));
  const { id: _, ...asked } = question;
  const settled = settle(service, exchange, asked, { path: operation.path });
  const path = operation.path.replace(/\{\w+\}/, encodeURIComponent(id));
  const common: ReadInput = { edition: settled.head.number, lang: settled.lang, id };
  // The parts of the input: what all reads take, and what this one takes beside it.
  const input = { ...wishes(question), ...common } as Input;
  return answerTo(service, exchange, settled, {
    path,
    template: operation.path,
    query,
    asked,
    lifetimes,
    input,
    judge: use,
  });
}

/** The path of an operation with a segment, as the framework spells it. */
export function mountedAt({ path }: Operation): string {
  return path.replace(/\{(\w+)\}/, ':$1');
}

/** What the client filled in in a path, decoded. A plus sign stands for itself there. */
export function segmentOf(path: string, { path: template }: Pick<Operation, 'path'>): string {
  const spelt = template.split('/');
  const at = spelt.findIndex((step) => step.startsWith('{'));
  const text = decodeText(path.split('/')[at] ?? '');
  if (text !== null) return text;
  const parameter = (spelt[at] ?? '').slice(1, -1);
  throw formRefusal([{ parameter, code: 'malformed-encoding', data: {} }]);
}
