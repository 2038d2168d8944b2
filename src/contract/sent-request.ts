/**
 * A request as it goes over the line, and as people read it: the text of HTTP/1.1 (RFC 9112)
 * without the headers that every client sends by itself, such as `Host`.
 */

import { addressOf, type ExampleRequest } from './examples.js';
import { OPERATIONS } from './operations.js';

export interface SentRequest {
  readonly method: string;
  /** Path and query. */
  readonly target: string;
  readonly headers: Readonly<Record<string, string>>;
  /** Null where there is none. */
  readonly body: string | null;
  /** Where not all of the body comes: how many of its characters do, and what happens then. */
  readonly stops?: { readonly after: number; readonly by: Stop };
}

/** The connection ends, or stays and nothing more comes. */
export type Stop = 'breaking-off' | 'falling-silent';

/** What is asked of an operation; nothing beyond an example request where it has an answer. */
export interface AskedRequest extends Omit<ExampleRequest, 'name' | 'summary'> {
  /** Where it is not the method of the operation. */
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  /** The body as it is sent, where it is not one that JSON writes. */
  readonly text?: string;
  /** Where not all of the body comes. */
  readonly stop?: Stop;
}

/** Characters of a body after which it stops where it stops. */
const BEFORE_STOP = 9;

export function sentRequest(request: AskedRequest): SentRequest {
  const { operationId, headers, body, lines, stop } = request;
  const operation = OPERATIONS.find((one) => one.operationId === operationId);
  if (operation === undefined) throw new Error(`no operation is called ${operationId}`);
  const target = addressOf(request, operation);
  const method = request.method ?? operation.method.toUpperCase();
  const { type = 'application/json', text, accept } = lines ?? {};
  const wished = accept === undefined ? {} : { accept };
  if (body === undefined && text === undefined) {
    return { method, target, headers: { ...wished, ...headers }, body: null };
  }
  return {
    method,
    target,
    headers: { 'content-type': type, ...wished, ...headers },
    body: request.text ?? text ?? JSON.stringify(body),
    ...(stop === undefined ? {} : { stops: { after: BEFORE_STOP, by: stop } }),
  };
}

/** What is said in a language where the text itself cannot be shown. */
export interface RequestWords {
  readonly stops: Readonly<Record<Stop, string>>;
  /** Of a text that is shown in part, how many characters are left out. */
  readonly more: (count: number) => string;
}

/** Nobody reads a longer piece to its end, nor needs to. */
const SHOWN_CHARACTERS = 400;
const SHOWN_OF_LONGER = 100;

/** The request as people read it, without a line feed at the end. */
export function requestText(request: SentRequest, words: RequestWords): string {
  const { method, target, headers, body, stops } = request;
  const shown = (text: string) => shortened(text, words);
  const head = [
    `${method} ${shown(target)} HTTP/1.1`,
    ...Object.entries(headers).map(([name, value]) => `${name}: ${shown(value)}`),
  ];
  if (body === null) return head.join('\n');
  const arrived = stops === undefined ? shown(body) : body.slice(0, stops.after);
  const end = stops === undefined ? [] : [`(${words.stops[stops.by]})`];
  return [...head, '', arrived, ...end].join('\n');
}

function shortened(text: string, { more }: RequestWords): string {
  if (text.length <= SHOWN_CHARACTERS) return text;
  return `${text.slice(0, SHOWN_OF_LONGER)}… (${more(text.length - SHOWN_OF_LONGER)})`;
}
