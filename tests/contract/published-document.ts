/**
 * The published document, and its schemas as a validator that is not ours reads them.
 */

import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { LINE_TYPES } from '../../src/contract/fit-batch.js';
import { OPERATIONS } from '../../src/contract/operations.js';

interface Media {
  readonly examples?: Readonly<Record<string, { readonly value: unknown }>>;
}
type Content = Readonly<Record<string, Media>>;
export interface Answered {
  readonly headers?: Readonly<Record<string, { readonly $ref: string }>>;
  readonly content?: Content;
}
interface Described {
  readonly requestBody?: { readonly content: Content };
  readonly responses: Readonly<Record<string, Answered>>;
}
export interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Described>>>>;
  readonly webhooks: Readonly<Record<string, { readonly post: Described }>>;
  readonly components: {
    readonly headers: Readonly<Record<string, { readonly required: boolean }>>;
  };
}

const file = new URL('../../openapi/openapi.json', import.meta.url);
const document = JSON.parse(readFileSync(file, 'utf8')) as Document;

const ajv = new Ajv2020({ strictSchema: true, allErrors: true, validateFormats: false });
// Words of OpenAPI: one that stands in schemas and decides nothing, and those around the schemas.
ajv.addVocabulary(['example', ...Object.keys(document)]);
ajv.addSchema(document, 'published', false, false);

/** The schema at a place of the document. */
export function schemaAt(...path: string[]): ValidateFunction {
  const steps = path.map((one) =>
    encodeURIComponent(one.replaceAll('~', '~0').replaceAll('/', '~1')),
  );
  return ajv.compile({ $ref: `published#/${steps.join('/')}` });
}

export function complaints(validate: ValidateFunction, value: unknown): unknown[] {
  validate(JSON.parse(JSON.stringify(value)));
  return (validate.errors ?? []).map(({ instancePath, message, params }) => [
    instancePath,
    message,
    params,
  ]);
}

export function describedOf(operationId: string): {
  path: string;
  method: string;
  said: Described;
} {
  const operation = OPERATIONS.find((one) => one.operationId === operationId);
  const { path = '', method = '' } = operation ?? {};
  const said = document.paths[path]?.[method];
  if (said === undefined) throw new Error(`nothing is published of ${operationId}`);
  return { path, method, said };
}

/** The message that a receiver is told something by. */
export function webhookCalled(name: string): Media {
  const content = document.webhooks[name]?.post.requestBody?.content ?? {};
  const [message] = Object.values(content);
  if (message === undefined) throw new Error(`nothing is published of ${name}`);
  return message;
}

/** What questions and answers of an operation are, and how its document says one of them. */
export function mediaTypesOf(operationId: string): readonly string[] {
  const isInLines = OPERATIONS.some((one) => one.operationId === operationId && one.lines);
  return isInLines ? LINE_TYPES : ['application/json'];
}

/** The objects in lines of NDJSON. */
export function objectsOf(lines: unknown): unknown[] {
  return String(lines)
    .split('\n')
    .filter((line) => line !== '')
    .map((line): unknown => JSON.parse(line));
}

export function responseSchema(
  operationId: string,
  status: number,
  mediaType: string,
): ValidateFunction {
  const { path, method } = describedOf(operationId);
  const at = ['paths', path, method, 'responses', String(status), 'content', mediaType, 'schema'];
  return schemaAt(...at);
}

/** What is wrong with the headers of an answer: not declared, not there, or not of their schema. */
export function headerComplaints({ headers }: Response, said: Answered | undefined): string[] {
  const declared = new Map(
    Object.entries(said?.headers ?? {}).map(([name, { $ref }]) => [name.toLowerCase(), $ref]),
  );
  const undeclared = [...headers.keys()].filter(
    (name) => name !== 'content-type' && !declared.has(name),
  );
  const faulty = [...declared].flatMap(([name, $ref]) => {
    const at = $ref.split('/').slice(1);
    const value = headers.get(name);
    if (value === null) return isRequired(at) ? [`${name} is missing`] : [];
    const isNumber = /^\d+$/.test(value) && name !== 'x-request-id';
    const found = complaints(schemaAt(...at, 'schema'), isNumber ? Number(value) : value);
    return found.length === 0 ? [] : [`${name}: ${value}`];
  });
  return [...undeclared.map((name) => `${name} is not declared`), ...faulty];
}

function isRequired([, , name = '']: readonly string[]): boolean {
  return document.components.headers[name]?.required ?? false;
}
