/**
 * Asks again what may be asked again: after 429 and 503, when `Retry-After` says (RFC 9110
 * section 10.2.3: seconds or a date), else after a while that doubles, and after a connection that
 * failed. The tries and the time they take are bounded, and waiting ends with the request's signal.
 */

export interface RetryOptions {
  /** Most tries of one question, the first among them; 4 where left out, 1 to never ask again. */
  readonly tries?: number;
  /** Most milliseconds for one question, all tries and waits together; 60 000 where left out. */
  readonly totalMs?: number;
}

/** The outside world as far as waiting goes, for those who test. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Rejects with the reason of the signal where it is aborted before or meanwhile. */
  wait(ms: number, signal: AbortSignal): Promise<void>;
  /** From 0 up to, and not including, 1. */
  random(): number;
}

export interface Trying extends Required<RetryOptions> {
  readonly fetch: (request: Request) => Promise<Response>;
  readonly clock: Clock;
}

export const USUAL_RETRY: Required<RetryOptions> = { tries: 4, totalMs: 60_000 };

/** Milliseconds to wait before the second try, where nobody says how long. */
const FIRST_WAIT_MS = 500;

const ASK_AGAIN: ReadonlySet<number> = new Set([429, 503]);

type Outcome = { readonly response: Response } | { readonly error: unknown };

/** The last answer there was, whatever its status; rejects where the last try had none. */
export async function fetchRepeatedly(request: Request, trying: Trying): Promise<Response> {
  const { clock, tries, totalMs } = trying;
  const started = clock.now();
  for (let tried = 1; ; tried += 1) {
    const outcome = await outcomeOf(trying.fetch(request.clone()));
    const { signal } = request;
    const waitMs = signal.aborted ? null : waitAfter(outcome, tried, clock);
    const isOver = tried >= tries || clock.now() - started + (waitMs ?? 0) > totalMs;
    if (waitMs === null || isOver) return settled(outcome);
    if ('response' in outcome) await outcome.response.body?.cancel();
    await clock.wait(waitMs, signal);
  }
}

/** Milliseconds from now on that an answer asks to wait; null where it does not say. */
export function retryAfterMs({ headers }: Response, now: number): number | null {
  const text = headers.get('retry-after')?.trim() ?? '';
  if (/^\d+$/.test(text)) return Number(text) * 1000;
  const at = Date.parse(text);
  return Number.isNaN(at) ? null : Math.max(0, at - now);
}

export const SYSTEM_CLOCK: Clock = {
  now: () => Date.now(),
  random: () => Math.random(),
  wait: (ms, signal) =>
    new Promise((resolve, reject) => {
      if (signal.aborted) return reject(reasonOf(signal));
      const aborted = (): void => {
        clearTimeout(timer);
        reject(reasonOf(signal));
      };
      const timer = setTimeout(() => {
        signal.removeEventListener('abort', aborted);
        resolve();
      }, ms);
      signal.addEventListener('abort', aborted, { once: true });
    }),
};

function reasonOf(signal: AbortSignal): Error {
  const reason: unknown = signal.reason;
  return reason instanceof Error ? reason : new Error('aborted', { cause: reason });
}

function outcomeOf(answering: Promise<Response>): Promise<Outcome> {
  return answering.then(
    (response) => ({ response }),
    (error: unknown) => ({ error }),
  );
}

function settled(outcome: Outcome): Response {
  if ('response' in outcome) return outcome.response;
  throw outcome.error;
}

/** Null where asking again is of no use. */
function waitAfter(outcome: Outcome, tried: number, clock: Clock): number | null {
  if ('response' in outcome) {
    if (!ASK_AGAIN.has(outcome.response.status)) return null;
    const said = retryAfterMs(outcome.response, clock.now());
    if (said !== null) return said;
  }
  // Somewhat at random, so that those who were refused together do not come back together.
  return FIRST_WAIT_MS * 2 ** (tried - 1) * (0.5 + clock.random() / 2);
}
