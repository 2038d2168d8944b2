/**
 * What the program is told by its environment, read once: the service, and whoever publishes of
 * those who are told of it. Faulty values are refused, all of them at once: a service that starts
 * with half of what was meant is worse than none.
 */

import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { isOrigin, SCOPES, type Scope } from './domain/access.js';

export interface Config {
  /** 0 for any port that is free. */
  readonly port: number;
  readonly host: string;
  /** Path of the SQLite file. */
  readonly database: string;
  /** Origins of pages that may read answers in a browser; none where it is empty. */
  readonly corsOrigins: readonly string[];
  /** What everybody may do without a key; nothing where it is empty. */
  readonly open: readonly Scope[];
  readonly logLevel: LogLevel;
  /** Bytes of answers that are kept in memory to be given again; 0 keeps none. */
  readonly answerCacheBytes: number;
}

/** The levels of pino, the most talkative first. */
export const LOG_LEVELS = ['trace', 'debug', 'info', 'warn', 'error', 'fatal', 'silent'] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

export class ConfigFault extends Error {
  /** One sentence for each value that is refused. */
  readonly faults: readonly string[];

  constructor(faults: readonly string[]) {
    super(faults.join(' '));
    this.name = 'ConfigFault';
    this.faults = faults;
  }
}

const DEFAULTS: Config = {
  port: 8080,
  host: '127.0.0.1',
  database: './faying.sqlite',
  corsOrigins: [],
  open: ['public'],
  logLevel: 'info',
  answerCacheBytes: 64_000_000,
};

type Environment = Readonly<Record<string, string | undefined>>;

/** Throws `ConfigFault`. A variable that is empty counts as left out. */
export function readConfig(env: Environment): Config {
  const faults: string[] = [];
  const read = <Value>(name: string, fallback: Value, reading: (text: string) => Value | null) => {
    const text = env[name]?.trim() ?? '';
    if (text === '') return fallback;
    const value = reading(text);
    if (value !== null) return value;
    faults.push(`${name} is "${text}"; it is ${MEANT[name] ?? 'something else'}.`);
    return fallback;
  };
  const config: Config = {
    port: read('FAYING_PORT', DEFAULTS.port, portOf),
    host: read('FAYING_HOST', DEFAULTS.host, hostOf),
    database: read('FAYING_DATABASE', DEFAULTS.database, (path) => path),
    corsOrigins: read('FAYING_CORS_ORIGINS', DEFAULTS.corsOrigins, originsOf),
    open: read('FAYING_OPEN', DEFAULTS.open, scopesOf),
    logLevel: read('FAYING_LOG_LEVEL', DEFAULTS.logLevel, levelOf),
    answerCacheBytes: read('FAYING_ANSWER_CACHE_BYTES', DEFAULTS.answerCacheBytes, bytesOf),
  };
  if (faults.length > 0) throw new ConfigFault(faults);
  Object.freeze(config.corsOrigins);
  Object.freeze(config.open);
  return Object.freeze(config);
}

/** What changes something wants a key, whatever anybody says. */
const OPENABLE: readonly Scope[] = SCOPES.slice(0, SCOPES.indexOf('batch') + 1);

const MEANT: Readonly<Record<string, string>> = {
  FAYING_PORT: 'a port from 0 to 65535',
  FAYING_HOST: 'a host name or address without a port',
  FAYING_CORS_ORIGINS: 'a list of origins such as https://shop.example, with commas between',
  FAYING_OPEN: `one or more of ${OPENABLE.join(', ')}, with commas between, or none`,
  FAYING_ANSWER_CACHE_BYTES: 'a number of bytes, at most 12 digits; 0 keeps no answers',
  FAYING_LOG_LEVEL: `one of ${LOG_LEVELS.join(', ')}`,
};

function portOf(text: string): number | null {
  return /^\d{1,5}$/.test(text) && Number(text) <= 65_535 ? Number(text) : null;
}

/** A name, an IPv4 address, or an IPv6 address without brackets. */
function hostOf(text: string): string | null {
  return /^[A-Za-z0-9]([A-Za-z0-9.-]*[A-Za-z0-9])?$|^[0-9a-fA-F:.]*:[0-9a-fA-F:.]*$/.test(text)
    ? text
    : null;
}

function originsOf(text: string): readonly string[] | null {
  const origins = text.split(',').map((one) => one.trim());
  return origins.every(isOrigin) ? [...new Set(origins)] : null;
}

function scopesOf(text: string): readonly Scope[] | null {
  if (text === 'none') return [];
  const named = text.split(',').map((one) => one.trim());
  const scopes = OPENABLE.filter((scope) => named.includes(scope));
  return scopes.length === named.length ? scopes : null;
}

function bytesOf(text: string): number | null {
  return /^\d{1,12}$/.test(text) ? Number(text) : null;
}

function levelOf(text: string): LogLevel | null {
  return LOG_LEVELS.find((level) => level === text) ?? null;
}

/** Who is told when an edition is published. */
export interface WebhookConfig {
  /** Where the service answers, without a slash at its end; null where nobody said. */
  readonly service: string | null;
  readonly receivers: readonly {
    readonly name: string;
    readonly url: URL;
    readonly secrets: readonly Uint8Array[];
    readonly allowsPrivate: boolean;
  }[];
}

const WEBHOOKS = 'FAYING_WEBHOOKS';

/**
 * Reads the file that `FAYING_WEBHOOKS` names; null where it names none. Throws `ConfigFault`, in
 * which no value of the file stands: it has secrets in it.
 */
export function readWebhooks(env: Environment): WebhookConfig | null {
  const path = env[WEBHOOKS]?.trim() ?? '';
  if (path === '') return null;
  const read = webhookSchema.safeParse(jsonIn(path));
  if (!read.success) {
    throw new ConfigFault(
      read.error.issues.map(({ path: at, message }) => `${WEBHOOKS}: ${placeOf(at)} ${message}.`),
    );
  }
  const { service = null, receivers } = read.data;
  return Object.freeze({ service, receivers });
}

function jsonIn(path: string): unknown {
  const text = textIn(path);
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    // What it says of the text may have a secret in it.
    throw new ConfigFault([`${WEBHOOKS}: ${path} is no JSON.`]);
  }
}

function textIn(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code === '') throw error;
    throw new ConfigFault([`${WEBHOOKS}: ${path} cannot be read (${code}).`]);
  }
}

function placeOf(path: readonly PropertyKey[]): string {
  const [first, ...others] = path.map((step) => (typeof step === 'number' ? `[${step}]` : step));
  if (first === undefined) return 'the file';
  return [first, ...others.map((step) => (String(step)[0] === '[' ? step : `.${String(step)}`))]
    .map(String)
    .join('');
}

const SECRET = /^whsec_([A-Za-z0-9+/]+={0,2})$/;

/** Standard Webhooks 1.0.0: from 24 to 64 bytes. */
const SECRET_BYTES = { least: 24, most: 64 } as const;

function keyIn(secret: string): Uint8Array | null {
  const [, text = ''] = SECRET.exec(secret) ?? [];
  const key = Buffer.from(text, 'base64');
  const { least, most } = SECRET_BYTES;
  const isWhole = key.length >= least && key.length <= most && key.toString('base64') === text;
  return isWhole ? new Uint8Array(key) : null;
}

const secretSchema = z.string({ error: 'is no text' }).transform((secret, context) => {
  const key = keyIn(secret);
  if (key !== null) return key;
  const message = 'is not "whsec_" and from 24 to 64 bytes in base64';
  context.issues.push({ code: 'custom', message, input: undefined });
  return z.NEVER;
});

const nameSchema = z
  .string({ error: 'is no text' })
  .regex(/^[\w.-]{1,60}$/, { error: 'is not of letters, digits, dots and dashes, at most 60' });

const urlSchema = z.string({ error: 'is no text' }).transform((text, context) => {
  const url = URL.canParse(text) ? new URL(text) : null;
  const isWeb = url !== null && /^https?:$/.test(url.protocol);
  if (isWeb && url.username === '' && url.password === '') return url;
  const message = 'is no address with https://, without a user in it';
  context.issues.push({ code: 'custom', message, input: undefined });
  return z.NEVER;
});

const receiverSchema = z
  .strictObject(
    {
      name: nameSchema,
      url: urlSchema,
      secrets: z.array(secretSchema, { error: 'is no list' }).min(1, { error: 'is empty' }),
      allowPrivate: z.boolean({ error: 'is neither true nor false' }).optional(),
    },
    { error: 'is not what it should be: name, url, secrets and perhaps allowPrivate' },
  )
  .refine(
    ({ url, allowPrivate }) =>
      !(url instanceof URL) || url.protocol === 'https:' || allowPrivate === true,
    {
      path: ['url'],
      error: 'has http://, which only allowPrivate lets be',
      // Whatever else is wrong with it: all is told at once.
      when: ({ value }) => typeof value === 'object' && value !== null,
    },
  )
  .transform(({ allowPrivate: allowsPrivate = false, ...receiver }) => {
    return { ...receiver, allowsPrivate };
  });

const webhookSchema = z.strictObject(
  {
    service: z
      .string({ error: 'is no text' })
      .regex(/^https?:\/\/[^\s?#]*[^\s?#/]$/, {
        error: 'is no address with https:// or http://, without a slash at its end',
      })
      .optional(),
    receivers: z
      .array(receiverSchema, { error: 'is no list' })
      .refine((all) => new Set(all.map(({ name }) => name)).size === all.length, {
        error: 'has two of one name',
      }),
  },
  { error: 'is not what it should be: receivers, and perhaps service' },
);
