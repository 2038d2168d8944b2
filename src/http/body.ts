/**
 * Reads the body of a question: JSON in UTF-8, at most one megabyte, nothing else.
 */

import { pointerTo } from '../contract/json-pointer.js';
import { readJson } from '../contract/json-text.js';
import { LIMITS } from '../contract/limits.js';
import type { z } from '../contract/openapi-zod.js';
import type { Exchange } from './exchange.js';
import { checkForm, formRefusal, type ReadFields } from './form.js';
import { type Place, Refusal } from './problem.js';
import { refuseParameters } from './query.js';

/** The parameter of a media type that names the charset, as clients write it. */
const UTF_8 = /^charset=(utf-?8|"utf-?8")$/i;

const BODY_LIMIT = LIMITS.bodyBytes.value;

/** The question that a body asks, or a `Refusal` that names every fault. */
export async function questionInBody<Schema extends z.ZodType>(
  exchange: Exchange,
  schema: Schema,
): Promise<z.infer<Schema>> {
  refuseParameters(exchange.search);
  return checkForm(schema, await readBody(exchange), pointerAt);
}

/** Throws `Refusal` where there is no JSON to be had; what it says is for the schema. */
async function readBody({ request, said }: Exchange): Promise<ReadFields> {
  checkMediaType(request.headers);
  const text = decode(await bytesOf(request));
  const read = readJson(text, LIMITS.bodyValues.value);
  if (read.isJson) {
    const [first] = read.faults;
    // Not held against the schema: that would be the work that the limit is there to spare.
    if (first?.code === 'too-many-values') throw formRefusal([first]);
    const { value, faults } = read;
    if (typeof value === 'object' && value !== null && 'lang' in value) said.lang = value.lang;
    return { value, faults };
  }
  throw new Refusal('malformed-json', [{ code: 'not-json', data: read.stop }]);
}

function checkMediaType(headers: Headers): void {
  const [mediaType = '', ...parameters] = (headers.get('content-type') ?? '').split(';');
  const charsets = parameters.map((one) => one.trim()).filter((one) => /^charset=/i.test(one));
  const isUtf8 = charsets.length < 2 && charsets.every((one) => UTF_8.test(one));
  const coding = headers.get('content-encoding')?.trim().toLowerCase() ?? 'identity';
  if (mediaType.trim().toLowerCase() !== 'application/json' || !isUtf8) {
    throw unsupported('body-not-json-type', { accept: 'application/json' });
  }
  if (coding !== 'identity') {
    throw unsupported('body-encoded', { 'accept-encoding': 'identity' });
  }
}

/** What would be taken stands in the headers (RFC 9110 section 15.5.16). */
function unsupported(
  code: 'body-not-json-type' | 'body-encoded',
  headers: Readonly<Record<string, string>>,
): Refusal {
  return new Refusal('unsupported-media-type', [{ code, data: {} }], { headers });
}

/** The whole body, or a `Refusal` where it is larger than is taken. */
export async function bytesOf(request: Request): Promise<Uint8Array> {
  const length = request.headers.get('content-length');
  try {
    if (length === null) return await streamed(request);
    if (Number(length) > BODY_LIMIT) throw tooLarge();
    return new Uint8Array(await request.arrayBuffer());
  } catch (error) {
    if (error instanceof Refusal) throw error;
    const fault = { code: 'body-ended-early', data: {} } as const;
    throw new Refusal('malformed-request', [fault], { cause: error });
  }
}

/** A body of unknown length is counted as it comes, and given up where it is too much. */
async function streamed(request: Request): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  const reader: ReadableStreamDefaultReader<Uint8Array> | undefined = request.body?.getReader();
  for (;;) {
    const read = await reader?.read();
    if (read?.value === undefined) return Buffer.concat(chunks);
    size += read.value.length;
    if (size > BODY_LIMIT) {
      await reader?.cancel();
      throw tooLarge();
    }
    chunks.push(read.value);
  }
}

function tooLarge(): Refusal {
  const fault = {
    code: 'body-too-large',
    data: { most: BODY_LIMIT, limit: 'bodyBytes' },
  } as const;
  return new Refusal('body-too-large', [fault]);
}

/** A byte order mark is let pass: some editors write one. */
function decode(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new Refusal('malformed-json', [{ code: 'not-utf-8', data: {} }], { cause: error });
  }
}

/** RFC 6901 pointer to a field of the body. */
function pointerAt(path: readonly PropertyKey[]): Place {
  return { pointer: pointerTo(path) };
}

/** The same for the names by which use-cases call fields: `with.clutch`, `adapters.0`. */
export function pointerCalled(at: string): Place {
  return pointerAt(at.split('.'));
}
