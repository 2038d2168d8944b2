/**
 * The package as those who install it have it: a project of its own, which knows the client by
 * the `exports` of the package alone, is checked as strictly as compilers do, and runs the
 * examples against the service.
 */

import { execFile } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningService, runningService, serving } from './running-service.js';

interface Manifest {
  readonly files: readonly string[];
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

const MANIFEST = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;
const PROJECT = mkdtempSync(join(tmpdir(), 'faying-consumer-'));
const PACKAGE = join(PROJECT, 'node_modules', 'faying');

let service: RunningService;

beforeAll(async () => {
  mkdirSync(PACKAGE, { recursive: true });
  cpSync('package.json', join(PACKAGE, 'package.json'));
  cpSync('openapi', join(PACKAGE, 'openapi'), { recursive: true });
  // What the client needs at run time, and Node's types, which the examples use.
  for (const name of ['openapi-fetch', 'openapi-typescript-helpers', 'fraction.js', '@types']) {
    symlinkSync(resolve('node_modules', name), join(PROJECT, 'node_modules', name));
  }
  const build = MANIFEST.scripts['build:client'] ?? '';
  await ran('sh', ['-c', build.replaceAll(/\bdist\b/g, join(PACKAGE, 'dist'))], '.');
  writeFileSync(join(PROJECT, 'package.json'), '{ "type": "module" }');
  for (const name of ['workshop.ts', 'nightly.ts']) {
    cpSync(join('scripts', 'examples', name), join(PROJECT, name));
  }
  writeFileSync(join(PROJECT, 'page.ts'), OTHER_USES);
  const [, quoted = ''] = /```ts\n([^`]*)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
  expect(quoted).toContain("from 'faying/client'");
  writeFileSync(join(PROJECT, 'readme.ts'), quoted);
  service = await runningService();
});
afterAll(async () => {
  rmSync(PROJECT, { recursive: true });
  await service.stop();
});

interface Ran {
  readonly code: number;
  readonly out: string;
}

function ran(command: string, args: readonly string[], cwd = PROJECT): Promise<Ran> {
  const PATH = [resolve('node_modules/.bin'), process.env.PATH ?? ''].join(delimiter);
  const options = { cwd, env: { ...process.env, PATH } };
  return new Promise((done) => {
    execFile(command, args, options, (error, stdout, stderr) => {
      const code = typeof error?.code === 'number' ? error.code : Number(error !== null);
      done({ code, out: `${stdout}${stderr}` });
    });
  });
}

/** What the compiler should take, and what it should refuse. */
const OTHER_USES = `
import { FayingClient, FayingProblem, orderLines, readQuantity, type Verdict } from 'faying/client';
import { defineFayingFit, type AddedLine } from 'faying/client/element';

const client = new FayingClient({ baseUrl: '', key: 'k', lang: 'de', retry: { tries: 2 } });
const words: Record<NonNullable<Verdict>, string> = {
  fits: 'yes', 'fits-with-changes': 'with more', 'does-not-fit': 'no', unknown: '?', depends: '??',
};
const query = { vehicle: 'lirren-1', part: 'bracket-20', with: { 'with.clutch': 'clutch-late' } };
const fit = await client.get('/v1/fit', { params: { query } });
export const said: string = fit.verdict === null ? '-' : words[fit.verdict];
export const lines: (number | null)[] =
  'positions' in fit && fit.kit !== null ? orderLines(fit.kit.lines).map((one) => one.packs) : [];
for await (const { id } of client.items('/v1/vehicles')) id.toUpperCase();
export const code = (error: unknown): string =>
  error instanceof FayingProblem && error.code === 'not-in-this-version' ? 'new' : 'known';
export const low: string | null = ((read) => (read.ok ? read.low : null))(readQuantity('1 mm'));
defineFayingFit();
document.addEventListener('add', (event) => {
  (event as CustomEvent<AddedLine[]>).detail.map(({ sku, packs }) => [sku, packs]);
});
// @ts-expect-error a part is missing
await client.get('/v1/fit', { params: { query: { vehicle: 'lirren-1' } } });
// @ts-expect-error there is no such path
await client.get('/v1/nothing');
// @ts-expect-error a question must be there
await client.post('/v1/kits');
// @ts-expect-error it is no list
client.items('/v1/limits/{nothing}');
// @ts-expect-error the verdict has no such value
export const never: boolean = fit.verdict === 'maybe';
`;

const OLDER = createRequire(resolve('scripts/client-types/package.json'));
const TSC = resolve('node_modules/typescript/bin/tsc');
const OLDER_TSC = OLDER.resolve('typescript/bin/tsc');

const STRICT =
  '--strict --exactOptionalPropertyTypes --noUncheckedIndexedAccess --skipLibCheck false ' +
  '--target es2022 --lib es2023,dom,dom.iterable --types node ' +
  'workshop.ts nightly.ts page.ts readme.ts';

describe('a project that installs the package', () => {
  test.each([
    ['this compiler and Node', TSC, ['--module', 'nodenext', '--outDir', 'made']],
    ['this compiler and a bundler', TSC, ['--module', 'esnext', '--noEmit']],
    ['an older compiler', OLDER_TSC, ['--module', 'nodenext', '--noEmit']],
  ])('is right in its types for %s', async (_, compiler, options) => {
    const bundled = options.includes('esnext') ? ['--moduleResolution', 'bundler'] : [];
    const args = [compiler, ...STRICT.split(' '), ...options, ...bundled];
    expect(await ran(process.execPath, args)).toEqual({ code: 0, out: '' });
  });

  test('has every file that the package says it exports, among those that are packed', () => {
    const targets = Object.values(MANIFEST.exports).flatMap((target) =>
      typeof target === 'string' ? [target] : Object.values(target),
    );
    expect(targets.length).toBeGreaterThan(5);
    expect(targets.filter((target) => !existsSync(join(PACKAGE, target)))).toEqual([]);
    const packed = ['package.json', ...MANIFEST.files].map((name) => `./${name}`);
    const left = targets.filter((target) => !packed.some((name) => target.startsWith(name)));
    expect(left).toEqual([]);
    expect(Object.keys(MANIFEST.dependencies)).toContain('openapi-fetch');
  });
});

describe('the workshop', () => {
  const asks = (...words: string[]) =>
    ran(process.execPath, ['made/workshop.js', service.url, 'gearbox-6-late', ...words]);

  test('quotes a conversion, from the vehicle to the order', async () => {
    const { code, out } = await asks('make=Corrablyn', 'model=Lirren', 'year=2004');
    expect(out).toContain('Edition 1 of the catalogue.\nVehicle: Corrablyn Lirren, first series');
    expect(out).toContain('Lirren II six-speed gearbox: Fits, with nine other places changed');
    expect(out).toContain('Way 1. Proven: 2792.00 EUR net, 10 places');
    expect(out).toContain('\n  8 x F-1080: Lirren flywheel bolt, M12 x 1.25, 16.80 EUR\n');
    expect(out).toContain('\n! The maker’s figures come first');
    expect(code).toBe(0);
  });

  test('asks the customer where several vehicles may be meant', async () => {
    const { code, out } = await asks('make=Corrablyn');
    expect(out).toMatch(/\n\d+ vehicles may be meant\.\nAsk: Model\? .*Lirren/);
    expect(code).toBe(1);
  });

  test('says what is wrong with the question', async () => {
    const { code, out } = await asks('make=Corrablyn', 'year=soon');
    expect(out).toMatch(/^Edition 1 of the catalogue\.\ninvalid-\w+: .{10,}/);
    expect(code).toBe(2);
  });
});

describe('the nightly script', () => {
  const QUESTIONS = [
    ...Array.from({ length: 20 }, (_, at) => ({
      ref: `r${at}`,
      vehicle: 'lirren-1',
      part: ['bracket-20', 'gearbox-6-late', 'front-hub-used'][at % 3],
    })),
    { ref: 'last', vehicle: 'nobody-knows', part: 'bracket-20' },
  ];
  const asks = (url: string, to: string) =>
    ran(process.execPath, ['made/nightly.js', url, 'questions.ndjson', to]);
  const written = (name: string) => readFileSync(join(PROJECT, name), 'utf8');

  beforeAll(() => {
    const lines = QUESTIONS.map((question) => `${JSON.stringify(question)}\n`);
    writeFileSync(join(PROJECT, 'questions.ndjson'), lines.join(''));
  });

  test('writes an answer for each question, and counts them', async () => {
    const { code, out } = await asks(service.url, 'whole.ndjson');
    expect(out).toBe(
      'Edition 1; 0 questions have an answer already.\n' +
        '21 answered: 7 holds, 7 fails, 6 open, 1 refused (unknown-vehicle).\n',
    );
    expect(code).toBe(0);
    expect(written('whole.ndjson').split('\n')).toHaveLength(23);
  });

  test('goes on where it was broken off, with the same answers in the end', async () => {
    const whole = written('whole.ndjson').split('\n');
    const start = '{"start":{"edition":1}}\n';
    const some = whole.slice(1, 9).join('\n');
    const breaking = await serving((request, response) => {
      request.resume();
      if (request.method === 'GET') return response.end('{"number":1}');
      return response.write(`${start}${some}\n`, () => response.socket?.destroy());
    });
    const first = await asks(breaking.url, 'parts.ndjson');
    await breaking.stop();
    expect(first.out).toContain('Broken off behind line 8. Run it again to go on.');
    expect(first.code).toBe(1);
    // The machine fell over in the middle of a line.
    writeFileSync(join(PROJECT, 'parts.ndjson'), `${written('parts.ndjson')}{"line":9,"al`);
    const second = await asks(service.url, 'parts.ndjson');
    expect(second.out).toContain('Edition 1; 8 questions have an answer already.\n21 answered: ');
    expect(written('parts.ndjson')).toBe(written('whole.ndjson'));
    const third = await asks(service.url, 'parts.ndjson');
    expect(third).toEqual({ code: 0, out: second.out.replace('; 8 ', '; 21 ') });
  });
});
