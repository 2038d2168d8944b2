/**
 * Tells receivers of a message by HTTP, each by itself: with waits that grow where one cannot be
 * told, and an end to it.
 */

import { setTimeout as sleep } from 'node:timers/promises';
import type { Message, Notifier, NotTold, Telling } from '../usecases/ports.js';
import { type Attempted, attempt, type Resolve, resolveBySystem } from './attempt.js';
import { signedHeaders } from './signature.js';

export interface Receiver {
  /** What it is called wherever something is said of it. */
  readonly name: string;
  readonly url: URL;
  /** The keys it may know: the new one first, while one is being replaced. */
  readonly secrets: readonly Uint8Array[];
  readonly allowsPrivate: boolean;
}

export interface WebhookSettings {
  readonly service: string | null;
  readonly receivers: readonly Receiver[];
}

/** How the world is met; tests give another. */
export interface Means {
  readonly resolve: Resolve;
  readonly now: () => Date;
  readonly wait: (ms: number) => Promise<void>;
  readonly timeoutMs: number;
}

/** Standard Webhooks 1.0.0 recommends 15 to 30 seconds. */
const TIMEOUT_MS = 15_000;

/** Before each attempt but the first: nobody waits longer than these and the timeouts. */
export const WAITS_MS = [1000, 5000, 25_000] as const;

const OF_THE_MACHINE: Means = {
  resolve: resolveBySystem,
  now: () => new Date(),
  wait: async (ms) => {
    await sleep(ms);
  },
  timeoutMs: TIMEOUT_MS,
};

/** What another attempt does not change: somebody has to do something first. */
const FINAL: ReadonlySet<NotTold> = new Set<NotTold>(['forbidden-address', 'redirect', 'gone']);

export function webhooks(
  { service, receivers }: WebhookSettings,
  means: Means = OF_THE_MACHINE,
): Notifier {
  return {
    service,
    tell: (message) => Promise.all(receivers.map((one) => tellOne(one, message, means))),
  };
}

async function tellOne(receiver: Receiver, message: Message, means: Means): Promise<Telling> {
  let attempts = 1;
  let last = await tryOnce(receiver, message, means);
  for (const ms of WAITS_MS) {
    if (last.failure === null || FINAL.has(last.failure)) break;
    await means.wait(ms);
    attempts += 1;
    last = await tryOnce(receiver, message, means);
  }
  return { receiver: receiver.name, ...last, attempts };
}

/** Signed anew: receivers refuse what was signed long ago. */
function tryOnce(
  { url, secrets, allowsPrivate }: Receiver,
  message: Message,
  { resolve, now, timeoutMs }: Means,
): Promise<Attempted> {
  const headers = {
    'content-type': 'application/cloudevents+json; charset=utf-8',
    'user-agent': 'faying',
    ...signedHeaders(message, secrets, now()),
  };
  return attempt({ url, headers, body: message.body, allowsPrivate, timeoutMs, resolve });
}
