/**
 * Who asks, and what that opens: a key in the header `Authorization` (RFC 6750), or nothing, which
 * opens what the service opens to everybody.
 *
 * A key is never looked for in a URL: URLs are written into logs, histories and caches.
 */

import { type Need, needOf } from '../contract/access.js';
import { isWithin, type Scope, type View, widestView } from '../contract/view.js';
import type { KeyRecord, KeyStore } from '../usecases/ports.js';
import type { Exchange } from './exchange.js';
import { type Place, Refusal } from './problem.js';

/** What a request may do. */
export interface Access {
  readonly scopes: ReadonlySet<Scope>;
  /** The widest view; null where none is open. */
  readonly view: View | null;
  /** Whether it showed a key, so that others may be opened less. */
  readonly hasKey: boolean;
}

export interface Keyring {
  readonly keys: KeyStore;
  /** What is opened to everybody. */
  readonly open: readonly Scope[];
}

/** Whether a key could open nothing more, as far as there are doors. */
export function isOpenToAll(open: readonly Scope[]): boolean {
  return open.includes('full') && open.includes('batch');
}

const BEARER = /^Bearer +([\x21-\x7e]+) *$/i;

/** What a request is opened, or why not: a key that is none opens nothing at all. */
export function accessOf({ headers }: Request, { keys, open }: Keyring): Access | Refusal {
  const sent = headers.get('authorization');
  if (sent === null) return { scopes: new Set(open), view: widestView(open), hasKey: false };
  const [, text] = BEARER.exec(sent) ?? [];
  const key = text === undefined ? null : keys.recognise(text);
  if (key === null) {
    const fault = { code: 'key-not-known', data: {} } as const;
    const error = text === undefined ? 'invalid_request' : 'invalid_token';
    return new Refusal('unknown-key', [fault], challenge(`error="${error}"`));
  }
  if (!isAtHome(key, headers.get('origin'))) {
    const fault = { code: 'origin-not-granted', data: {} } as const;
    return new Refusal('not-granted', [fault]);
  }
  const scopes = new Set([...open, ...key.scopes]);
  return { scopes, view: widestView(scopes), hasKey: true };
}

/** A key that pages have is good on those pages alone. */
function isAtHome({ origins }: KeyRecord, origin: string | null): boolean {
  return origins.length === 0 || (origin !== null && origins.includes(origin));
}

/** RFC 6750 section 3: how to show what is missing. */
function challenge(parameters: string) {
  return { headers: { 'www-authenticate': `Bearer realm="faying", ${parameters}` } };
}

/** Refuses whoever may not ask what is at this path of the contract. */
export function checkAccess(exchange: Exchange, path: string): void {
  const need = needOf(path);
  // What is open to anybody is open to who shows a key that is none.
  if (need.view === null) return;
  const access = grantedIn(exchange);
  const missing = missingFor(need, access);
  if (missing.length > 0) throw notGranted(access, missing);
}

function missingFor({ view, scope }: Need, access: Access): Scope[] {
  return [
    ...(view === null || isWithin(view, access.view) ? [] : [view]),
    ...(scope === undefined || access.scopes.has(scope) ? [] : [scope]),
  ];
}

/** Who showed no key may have one; who did needs another. */
function notGranted({ hasKey }: Access, scopes: readonly Scope[], place: Place = {}): Refusal {
  const code = hasKey ? 'scope-not-granted' : 'no-key';
  const faults = scopes.map((scope) => ({ ...place, code, data: { scope } }) as const);
  const said = `scope="${scopes.join(' ')}"`;
  if (!hasKey) return new Refusal('key-needed', faults, challenge(said));
  return new Refusal('not-granted', faults, challenge(`error="insufficient_scope", ${said}`));
}

/** The view that a question is answered in: the one it wishes for, or all that is open. */
export function viewFor(exchange: Exchange, wished: View | undefined, path: string): View {
  const access = grantedIn(exchange);
  const view = wished ?? access.view;
  if (view === null || !isWithin(view, access.view)) {
    throw notGranted(access, [view ?? 'public'], placeOf('view', exchange));
  }
  const { view: least } = needOf(path);
  if (least === null || isWithin(least, view)) return view;
  const fault = { code: 'question-not-in-view', data: { view, least } } as const;
  throw new Refusal('not-granted', [{ ...placeOf('view', exchange), ...fault }]);
}

/** Who is shown no more than everybody is shown no more than how it stands now. */
export function isKeptToNewest(exchange: Exchange): boolean {
  return !isWithin('trade', grantedIn(exchange).view);
}

export function checkNewest(
  exchange: Exchange,
  edition: number,
  newest: { readonly number: number } | null,
): void {
  // What has not been published yet is for the library to refuse.
  if (newest === null || edition >= newest.number) return;
  const fault = { code: 'edition-not-in-view', data: { edition } } as const;
  throw new Refusal('not-granted', [{ ...placeOf('edition', exchange), ...fault }]);
}

/** A whole list is not for everybody where `field` could name what is asked about. */
export function checkNamed(view: View, question: object, field: string): void {
  if (view !== 'public' || field in question) return;
  const fault = { code: 'list-not-in-view', data: { view, field } } as const;
  throw new Refusal('not-granted', [{ parameter: field, ...fault }]);
}

/** What somebody was answered by a key is kept by nobody on the way: the key may end. */
export function keptFor({ access }: Pick<Exchange, 'access'>, lifetime: string): string {
  const hasKey = !(access instanceof Error) && access.hasKey;
  return hasKey ? lifetime.replace(/^public/, 'private') : lifetime;
}

function grantedIn({ access }: Exchange): Access {
  if (access instanceof Error) throw access;
  return access;
}

/** A field that stands in the URL or in the body. */
function placeOf(field: string, { request, search }: Exchange): Place {
  const isInUrl = search.split('&').some((pair) => pair.startsWith(`${field}=`));
  if (isInUrl) return { parameter: field };
  // Of a list that goes on the edition stands in its cursor, of an edition in the path.
  return request.method === 'POST' || request.method === 'QUERY' ? { pointer: `/${field}` } : {};
}
