/**
 * One attempt to tell a receiver something: an HTTP POST. The address that is connected to is
 * checked where the connection asks for it, so that no name can lead elsewhere in between.
 * Redirects are not followed, and the answer is not read.
 */

import { type LookupAddress, lookup as systemLookup } from 'node:dns';
import { request as plainRequest, type RequestOptions } from 'node:http';
import { request as secureRequest } from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import type { NotTold } from '../usecases/ports.js';
import { isPublicAddress } from './addresses.js';

/** All addresses of a name, as `dns.lookup` gives them with `all`. */
export type Resolve = (
  hostname: string,
  done: (error: NodeJS.ErrnoException | null, addresses?: readonly LookupAddress[]) => void,
) => void;

export interface Attempt {
  readonly url: URL;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
  readonly allowsPrivate: boolean;
  /** Until it has been answered, from the start. */
  readonly timeoutMs: number;
  readonly resolve: Resolve;
}

export interface Attempted {
  readonly failure: NotTold | null;
  readonly status: number | null;
}

export const resolveBySystem: Resolve = (hostname, done) => {
  systemLookup(hostname, { all: true }, done);
};

class ForbiddenAddress extends Error {}

/** Never rejects: whatever a receiver does is what came of it. */
export async function attempt(asked: Attempt): Promise<Attempted> {
  const { url, allowsPrivate } = asked;
  const host = url.hostname.replace(/^\[(.*)\]$/, '$1');
  // An address that is written out is not looked up.
  if (isIP(host) !== 0 && !allowsPrivate && !isPublicAddress(host)) {
    return { failure: 'forbidden-address', status: null };
  }
  try {
    return resultOf(await statusOf(asked));
  } catch (error) {
    return { failure: failureOf(error), status: null };
  }
}

function statusOf(asked: Attempt): Promise<number> {
  const { url, headers, body, timeoutMs } = asked;
  const signal = AbortSignal.timeout(timeoutMs);
  const options: RequestOptions = {
    method: 'POST',
    headers: { ...headers, 'content-length': String(Buffer.byteLength(body)) },
    lookup: checkedLookup(asked),
    // A connection of its own: what one receiver leaves behind is no other one's.
    agent: false,
    signal,
  };
  const request = url.protocol === 'https:' ? secureRequest : plainRequest;
  return new Promise((resolve, reject) => {
    const sent = request(url, options, (response) => {
      resolve(response.statusCode ?? 0);
      // Nothing in it is of use, however long it goes on.
      response.destroy();
    });
    sent.on('error', (error) => reject(signal.aborted ? signal.reason : error));
    sent.end(body);
  });
}

/** Refused where any of the addresses is forbidden: which of them is connected to, nobody knows. */
function checkedLookup({ resolve, allowsPrivate }: Attempt): LookupFunction {
  return (hostname, { all }, done) => {
    // Node gives no list with an error, whatever its types say.
    resolve(hostname, (error, found = []) => {
      const [first] = found;
      if (first === undefined) {
        done(error ?? new Error('no address'), '', 0);
      } else if (!allowsPrivate && !found.every(({ address }) => isPublicAddress(address))) {
        done(new ForbiddenAddress('a forbidden address'), '', 0);
      } else if (all === true) done(null, [...found]);
      else done(null, first.address, first.family);
    });
  };
}

function resultOf(status: number): Attempted {
  if (status >= 200 && status < 300) return { failure: null, status };
  if (status === 410) return { failure: 'gone', status };
  return { failure: status >= 300 && status < 400 ? 'redirect' : 'status', status };
}

const UNKNOWN_HOST: ReadonlySet<string> = new Set(['ENOTFOUND', 'EAI_AGAIN', 'ENODATA']);

function failureOf(error: unknown): NotTold {
  if (error instanceof ForbiddenAddress) return 'forbidden-address';
  if (error instanceof DOMException && error.name === 'TimeoutError') return 'timeout';
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return UNKNOWN_HOST.has(code) ? 'unknown-host' : 'no-connection';
}
