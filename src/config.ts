/**
 * What the service is told by its environment, read once. Faulty values are refused, all of them
 * at once: a service that starts with half of what was meant is worse than none.
 */

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
