/**
 * What names a route: a key by which it can be opened again, and a digest of what it is.
 *
 * The key is `k1.` and, in base64url (RFC 4648, section 5), the canonical JSON of
 *
 *   edition, offers, engine   where the answer came from
 *   question                  the question in its one form, without what stands at its default of
 *                             `k1`, without language and units, and without prices of the asker's
 *                             own and the rate of labour, which are nobody else's business
 *   changes                   [position, hand or null, part or null for an emptied place]
 *   adapters                  [mating, part, part …], none for a mating that has them taken out
 *
 * That is all that a route is made of: what is bought where, and what is opened, follows from it
 * and the price list. It is not compressed, since a compressor may give other bytes in its next
 * version; a key is therefore some 400 to 1100 characters long, and null where it would be longer
 * than an address has room for. It is signed by nobody and gives nobody any right.
 *
 * The digest is of the route as it was answered, its prices included, and of no word of any
 * language: two that agree in it were the same offer.
 */

import { canonicalJson } from '../domain/catalogue/canonical.js';
import type { Hand } from '../domain/check/reading.js';
import { ENGINE } from '../domain/engine.js';
import {
  adaptersIn,
  type Configuration,
  handsOf,
  isSeatChanged,
  sameAdapters,
  seatAt,
} from '../domain/judge/configuration.js';
import { LONGEST_KEY } from '../domain/kit/extent.js';
import type { AskedKit } from './asked-kit.js';
import type { KitLineView, RouteView } from './kit-answer.js';
import { USUAL_KIT } from './kit-input.js';
import type { Digest } from './ports.js';

/** Where an answer comes from. */
export interface Origins {
  readonly edition: number;
  readonly offers: number;
}

/** Fields of a question that change no route, or are not to be passed on. */
const NOT_IN_KEY: ReadonlySet<string> = new Set(
  'edition lang units labourRate offers offersMode routes steps'.split(' '),
);

export function routeKey(
  configuration: Configuration,
  question: AskedKit,
  origins: Origins,
): string | null {
  const text = canonicalJson({
    ...origins,
    engine: ENGINE,
    question: essentials(question),
    changes: changesOf(configuration),
    adapters: adaptersOf(configuration),
  });
  const key = `k1.${base64url(text)}`;
  return key.length > LONGEST_KEY ? null : key;
}

function essentials(question: AskedKit): Record<string, unknown> {
  const told = Object.entries(question).filter(([name, value]) => {
    if (NOT_IN_KEY.has(name)) return false;
    return canonicalJson(value) !== canonicalJson(USUAL[name] ?? null);
  });
  return Object.fromEntries(told);
}

/** What says nothing where a question has it. */
const USUAL: Readonly<Record<string, unknown>> = {
  ...USUAL_KIT,
  facts: {},
  fitted: {},
  adapters: {},
  ignorePresent: false,
  limits: { inStock: false },
};

function changesOf(configuration: Configuration): (string | null)[][] {
  const { layout, judged } = configuration;
  return [...layout.positions.values()].flatMap((position) =>
    handsOf(position).flatMap((hand) => {
      if (!isSeatChanged(configuration, position.id, hand)) return [];
      const occupant = seatAt(judged, position.id, hand)?.occupant;
      return [[position.id, hand, occupant?.is === 'part' ? occupant.part : null]];
    }),
  );
}

function adaptersOf({ layout, present, judged }: Configuration): string[][] {
  return [...layout.matings.keys()].flatMap((mating) => {
    const adapters = adaptersIn(judged, mating);
    if (sameAdapters(adaptersIn(present, mating), adapters)) return [];
    return [[mating, ...(adapters?.parts ?? [])]];
  });
}

/** What a key says that a route changes. */
export interface KeyedRoute {
  readonly vehicle: string;
  readonly changes: readonly (readonly [string, Hand | null, string | null])[];
  readonly adapters: readonly (readonly [string, ...string[]])[];
}

/** What a key holds, or null where it is none. Whether there are such parts, it does not tell. */
export function routeOfKey(key: string): KeyedRoute | null {
  if (!key.startsWith('k1.') || key.length > LONGEST_KEY) return null;
  const text = textOf(key.slice('k1.'.length));
  const read = text === null ? null : keyed(text);
  if (read === null || !isRecord(read) || !isRecord(read.question)) return null;
  const { question, changes, adapters } = read;
  const { vehicle } = question;
  if (typeof vehicle !== 'string' || !Array.isArray(changes) || !Array.isArray(adapters))
    return null;
  if (!changes.every(isChange) || !adapters.every(isInRow)) return null;
  return { vehicle, changes, adapters };
}

function keyed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isChange(value: unknown): value is KeyedRoute['changes'][number] {
  if (!Array.isArray(value) || value.length !== 3) return false;
  const change: readonly unknown[] = value;
  const [position, hand, part] = change;
  const isHand = hand === null || hand === 'left' || hand === 'right';
  return typeof position === 'string' && isHand && (part === null || typeof part === 'string');
}

function isInRow(value: unknown): value is KeyedRoute['adapters'][number] {
  return Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'string');
}

function textOf(encoded: string): string | null {
  if (!/^[\w-]*$/.test(encoded)) return null;
  const binary = atobOrNull(encoded.replaceAll('-', '+').replaceAll('_', '/'));
  if (binary === null) return null;
  try {
    const bytes = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}

function atobOrNull(text: string): string | null {
  // A rest of one character holds no whole byte.
  return text.length % 4 === 1 ? null : atob(text);
}

function base64url(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Of a route as it is shown, as far as it is no matter of language. */
export function routeDigest(
  route: Omit<RouteView, 'digest' | 'key'>,
  vehicle: string,
  origins: Origins,
  digest: Digest,
): string {
  const { grade, changes, lines, totals } = route;
  const content = { ...origins, engine: ENGINE, vehicle, grade, changes, totals };
  return `sha256-${digest(canonicalJson({ ...content, lines: lines.map(boughtIn) }))}`;
}

function boughtIn({ key, part, quantity, price, offer, source, ...more }: KitLineView) {
  const { fromLot, labourHours, labour, signOff, reversible } = more;
  const bought = offer === null ? null : { id: offer.id, packs: offer.packs };
  const cost = { quantity, price, offer: bought, source, fromLot, labourHours, labour };
  return { key, part, ...cost, signOff, reversible };
}
