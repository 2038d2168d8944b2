/**
 * Who may import whom. Each folder under `src/` is one layer of the house, and knows only the
 * layers that its row below names: what is not listed is forbidden. The domain is besides pure and
 * synchronous: no built-in module, clock, randomness, process or locale of the machine.
 *
 * Left out: `scripts/` and `tests/`, which may use every layer.
 */

import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { codeOf, filesOf, type ImportOf, importsOf, type SourceFile } from './source-text.js';

interface Layer {
  /** The files that this row speaks for. The first row that matches a path decides. */
  readonly of: RegExp;
  /** The files of the project that they may import. */
  readonly files: readonly RegExp[];
  /** The files of which they may import types alone. */
  readonly types?: readonly RegExp[];
  /** The packages and built-in modules that they may import. */
  readonly packages: readonly RegExp[];
}

const domain = /^src\/domain\//;
const usecases = /^src\/usecases\//;
const contract = /^src\/contract\//;
const batch = /^src\/batch\//;
const client = /^src\/client\//;
const builtIn = /^node:/;

const layers: readonly Layer[] = [
  { of: /^src\/(cli\/)?main\.ts$/, files: [/^src\//], packages: [/./] },
  { of: /^src\/config\.ts$/, files: [/^src\/domain\/access\.ts$/], packages: [builtIn, /^zod$/] },
  { of: /^src\/domain\/quantity\/rational\.ts$/, files: [domain], packages: [/^fraction\.js$/] },
  {
    // A kind knows the language of checks, and no other kind.
    of: /^src\/domain\/kinds\/(?!(kind|registry)\.ts$)/,
    files: [/^src\/domain\/(quantity|check)\//, /^src\/domain\/kinds\/kind\.ts$/],
    packages: [],
  },
  {
    // The solver reaches kinds through the compiled index only.
    of: /^src\/domain\/kit\//,
    files: [/^src\/domain\/(?!kinds\/)/],
    packages: [],
  },
  { of: domain, files: [domain], packages: [] },
  { of: usecases, files: [usecases, domain], packages: [] },
  {
    of: contract,
    files: [contract, domain, /^src\/usecases\/errors\.ts$/],
    types: [usecases],
    packages: [/^zod$/, /^@hono\/zod-openapi$/],
  },
  {
    of: /^src\/store\//,
    files: [/^src\/store\//, domain, /^src\/usecases\/ports\.ts$/],
    packages: [builtIn, /^drizzle-orm(\/|$)/, /^better-sqlite3$/],
  },
  {
    of: /^src\/notify\//,
    files: [/^src\/notify\//, /^src\/usecases\/ports\.ts$/],
    packages: [builtIn],
  },
  {
    of: batch,
    files: [batch, usecases, contract],
    packages: [/^node:timers\/promises$/, /^csv-parse\/sync$/, /^lru-cache$/],
  },
  {
    of: /^src\/http\//,
    files: [/^src\/http\//, usecases, contract, batch],
    packages: [builtIn, /^hono(\/|$)/, /^@hono\//, /^pino$/, /^lru-cache$/, /^graphql(-yoga)?$/],
  },
  {
    // It runs in browsers, and knows the service by its contract alone.
    of: client,
    files: [client, /^src\/domain\/quantity\//],
    packages: [/^openapi-fetch$/],
  },
  {
    of: /^src\/cli\//,
    files: [/^src\/cli\//, usecases, contract, batch],
    packages: [builtIn, /^commander$/],
  },
];

/** Imports that break the table and are borne with, as `importer -> imported`. */
const allowed: readonly string[] = [];

/** What the domain may not touch: [what it is, how it looks in code]. */
const impure: readonly (readonly [string, RegExp])[] = [
  ['the clock', /\bDate\s*\.\s*now\b|\bnew\s+Date\s*(\(\s*\)|;)|(?<![.\w$])performance\s*\./g],
  ['a timer', /(?<![.\w$])(setTimeout|setInterval|setImmediate|queueMicrotask)\s*\(/g],
  ['randomness', /\bMath\s*\.\s*random\b|(?<![.\w$])crypto\s*\./g],
  ['the process', /(?<![.\w$])process\s*(\?\.|[.[])|\bglobalThis\b/g],
  ['the terminal', /(?<![.\w$])console\s*[.[]/g],
  ['the network', /(?<![.\w$])fetch\s*\(/g],
  ['a promise', /\bPromise\b|(?<![.\w$])(async|await)\b(?!\s*[:?,}])/g],
  ['the locale', /\.\s*(localeCompare|toLocale\w+)\b|\bIntl\s*\./g],
];

describe('who may import whom', () => {
  const sources = filesOf('src', /\.[cm]?[jt]sx?$/);

  test('the source is there to be read', () => {
    expect(sources.length).toBeGreaterThan(0);
    expect(sources.flatMap((file) => importsOf(file.text)).length).toBeGreaterThan(0);
  });

  test('no layer imports what its row does not name', () => {
    expect(sources.flatMap(forbiddenImports)).toEqual([]);
  });

  test('the domain is pure and synchronous', () => {
    expect(sources.flatMap(impurities)).toEqual([]);
  });

  test('every exception is still needed', () => {
    const broken = new Set(sources.flatMap((file) => importsOf(file.text).map(lineOf(file))));
    expect(allowed.filter((line) => !broken.has(line))).toEqual([]);
  });
});

describe('a source that breaks the table is caught', () => {
  test.each([
    ['src/domain/judge/verdict.ts', "import { z } from 'zod';"],
    ['src/domain/judge/verdict.ts', "import { readFileSync } from 'node:fs';"],
    ['src/domain/judge/verdict.ts', "import Fraction from 'fraction.js';"],
    ['src/domain/judge/verdict.ts', "import type { Ports } from '../../usecases/ports.js';"],
    ['src/domain/judge/verdict.ts', "export * from '../../store/rows.js';"],
    ['src/domain/judge/verdict.ts', "import '../../config.js';"],
    ['src/domain/judge/verdict.ts', "const late = () => import('../../store/rows.js');"],
    ['src/domain/judge/verdict.ts', 'const late = (name: string) => import(name);'],
    ['src/domain/judge/verdict.ts', "const old = require('fs');"],
    ['src/domain/judge/verdict.ts', "import {\n  one,\n  type Other,\n} from '../../http/app.js';"],
    ['src/domain/judge/verdict.ts', "/* a */ import { b } /* from 'c' */ from 'd';"],
    ['src/domain/kinds/hook.ts', "import { wheelMount } from './wheel-mount.js';"],
    ['src/domain/kit/solve.ts', "import { kinds } from '../kinds/registry.js';"],
    ['src/usecases/check-fit.ts', "import { rows } from '../store/rows.js';"],
    ['src/usecases/check-fit.ts', "import { createHash } from 'node:crypto';"],
    ['src/contract/fit.ts', "import { checkFit } from '../usecases/check-fit.js';"],
    ['src/contract/fit.ts', "import { Hono } from 'hono';"],
    ['src/store/rows.ts', "import { checkFit } from '../usecases/check-fit.js';"],
    ['src/store/rows.ts', "import { z } from 'zod';"],
    ['src/notify/webhooks.ts', "import { checkFit } from '../usecases/check-fit.js';"],
    ['src/notify/webhooks.ts', "import { readConfig } from '../config.js';"],
    ['src/batch/rows.ts', "import { app } from '../http/app.js';"],
    ['src/batch/rows.ts', "import { judge } from '../domain/judge/judge.js';"],
    ['src/http/app.ts', "import { rows } from '../store/rows.js';"],
    ['src/http/app.ts', "import { table } from '../cli/table.js';"],
    ['src/http/app.ts', "import { judge } from '../domain/judge/verdict.js';"],
    ['src/http/app.ts', "import { sql } from 'drizzle-orm';"],
    ['src/cli/fit.ts', "import { app } from '../http/app.js';"],
    ['src/cli/fit.ts', "import { rows } from '../store/rows.js';"],
    ['src/client/client.ts', "import { readFile } from 'node:fs/promises';"],
    ['src/client/client.ts', "import { fitSchema } from '../contract/fit.js';"],
    ['src/client/client.ts', "import { judge } from '../domain/judge/judge.js';"],
    ['src/http/app.ts', "import { FayingClient } from '../client/client.js';"],
    ['src/cli/fit.ts', "import { webhooks } from '../notify/webhooks.js';"],
    ['src/config.ts', "import { app } from './http/app.js';"],
    ['src/main.ts', "import { oracle } from '../tests/oracle/kits.js';"],
    ['src/elsewhere/thing.ts', "import { one } from '../domain/judge/verdict.js';"],
  ])('%s: %s', (path, text) => {
    expect(forbiddenImports({ path, text })).toHaveLength(1);
  });

  test.each([
    ['Date.now()'],
    ['new Date()'],
    ['performance.now()'],
    ['setTimeout(done, 1)'],
    ['Math.random()'],
    ['crypto.randomUUID()'],
    ['process.env.HOME'],
    ['`at ${process.cwd()}`'],
    ['console.log(1)'],
    ["fetch('x')"],
    ['async () => 1'],
    ["'a'.localeCompare('b')"],
    ['new Intl.NumberFormat()'],
  ])('the domain with %s', (expression) => {
    const text = `export const found = ${expression};\n`;
    expect(impurities({ path: 'src/domain/judge/verdict.ts', text })).toHaveLength(1);
    expect(impurities({ path: 'src/store/rows.ts', text })).toEqual([]);
  });
});

describe('a source that keeps to the table passes', () => {
  test.each([
    [
      'src/main.ts',
      "import { app } from './http/app.js';\nimport { rows } from './store/rows.js';",
    ],
    ['src/cli/main.ts', "import { app } from '../http/app.js';\nimport 'commander';"],
    ['src/config.ts', "import { SCOPES } from './domain/access.js';"],
    ['src/domain/quantity/rational.ts', "import Fraction from 'fraction.js';"],
    ['src/domain/kinds/hook.ts', "import type { Kind } from './kind.js';"],
    ['src/domain/kinds/registry.ts', "import { hook } from './hook.js';"],
    ['src/usecases/check-fit.ts', "export { judge } from '../domain/judge/verdict.js';"],
    ['src/contract/fit.ts', "import type { Fit } from '../usecases/check-fit.js';"],
    ['src/store/rows.ts', "import { sql } from 'drizzle-orm/sqlite-core';"],
    ['src/http/app.ts', "import { fit } from '../contract/fit.js';\nimport 'hono/timing';"],
    ['src/client/client.ts', "import createClient from 'openapi-fetch';"],
    ['src/client/client.ts', "import { unitOf } from '../domain/quantity/unit.js';"],
    ['src/domain/judge/verdict.ts', "// import 'zod';\nexport const a = \"import 'zod'\";"],
    ['src/domain/judge/verdict.ts', "export const a = `${'}'} import 'zod' Date.now()`;"],
    [
      'src/domain/judge/verdict.ts',
      "export const a = /'/; // it's\nexport const b = 'Date.now()';",
    ],
    ['src/domain/judge/verdict.ts', 'export const a = { process: 1, async: 2 }.process / 2;'],
    ['src/domain/judge/verdict.ts', 'catalogue.import(document);'],
  ])('%s: %s', (path, text) => {
    expect(forbiddenImports({ path, text })).toEqual([]);
    expect(impurities({ path, text })).toEqual([]);
  });
});

function forbiddenImports(file: SourceFile): string[] {
  const layer = layers.find((row) => row.of.test(file.path));
  if (layer === undefined) return [`${file.path} belongs to no layer`];
  return importsOf(file.text)
    .filter((one) => !mayImport(layer, file, one))
    .map(lineOf(file))
    .filter((line) => !allowed.includes(line));
}

function mayImport(layer: Layer, file: SourceFile, one: ImportOf): boolean {
  if (one.specifier === null) return false;
  if (!one.specifier.startsWith('.')) return matches(layer.packages, one.specifier);
  const target = targetOf(file, one.specifier);
  return matches(layer.files, target) || (one.typeOnly && matches(layer.types ?? [], target));
}

function targetOf(file: SourceFile, specifier: string): string {
  return posix.join(posix.dirname(file.path), specifier).replace(/\.js$/, '.ts');
}

function lineOf(file: SourceFile): (one: ImportOf) => string {
  return ({ specifier }) => {
    if (specifier === null) return `${file.path} -> a module named at run time`;
    const imported = specifier.startsWith('.') ? targetOf(file, specifier) : specifier;
    return `${file.path} -> ${imported}`;
  };
}

function matches(patterns: readonly RegExp[], path: string): boolean {
  return patterns.some((pattern) => pattern.test(path));
}

function impurities(file: SourceFile): string[] {
  if (!domain.test(file.path)) return [];
  const code = codeOf(file.text);
  return impure.flatMap(([what, pattern]) =>
    [...code.matchAll(pattern)].map((match) => {
      const line = code.slice(0, match.index).split('\n').length;
      return `${file.path}:${line} touches ${what}: ${match[0].trim()}`;
    }),
  );
}
