/**
 * Adding a kind is one file, one line and one folder of fixtures: a copy of the project gets a
 * kind that nobody has thought of, and the conformance tests find it, hold it to all that they
 * hold the others to, and let it pass. Without its fixtures, or with a text that is lacking, they
 * do not.
 */

import { execFile } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';

const top = fileURLToPath(new URL('../..', import.meta.url));
const copy = mkdtempSync(join(tmpdir(), 'faying-kind-'));

const KIND = `/**
 * A towing eye and the pin that is pushed through it. Standard: none.
 */

import type { BuiltInKind } from './kind.js';

export const towingEye: BuiltInKind = {
  id: 'towing-eye',
  name: { en: 'towing eye', de: 'Abschleppöse' },
  standard: 'none',
  sides: ['eye', 'pin'],
  sideNames: { eye: { en: 'the eye', de: 'die Öse' }, pin: { en: 'the pin', de: 'der Bolzen' } },
  caution: 'general',
  parameters: {
    lock: {
      type: 'code',
      name: { en: 'how the pin is locked', de: 'Sicherung des Bolzens' },
      tool: 'visual-check',
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'eye',
      name: { en: 'bore of the eye', de: 'Bohrung der Öse' },
      tool: 'caliper',
      usual: ['10 mm', '40 mm'],
    },
    diameter: {
      type: 'measured',
      unit: 'mm',
      of: 'pin',
      name: { en: 'diameter of the pin', de: 'Durchmesser des Bolzens' },
      tool: 'caliper',
      usual: ['10 mm', '40 mm'],
    },
  },
  checks: [
    { equal: 'lock', text: { en: 'The lock must be the same.', de: 'Gleiche Sicherung nötig.' } },
    {
      id: 'play',
      clearance: ['eye.bore', 'pin.diameter'],
      min: '0.1 mm',
      max: '1 mm',
      text: { en: 'The pin must go in, with little play.', de: 'Der Bolzen braucht wenig Spiel.' },
    },
  ],
  notChecked: [{ en: 'load', de: 'Last' }],
};
`;

const FIXTURES = `/** Eyes and pins. */

import type { Fixture } from '../fixture.js';

const eye = { kind: 'towing-eye', side: 'eye', lock: 'clip', bore: '20.50 ±0 mm' };
const pin = { kind: 'towing-eye', side: 'pin', lock: 'clip', diameter: '20.00 ±0 mm' };
const held = { 'equal-lock': 'holds', play: 'holds' };

export const fixtures: readonly Fixture[] = [
  { says: 'half a millimetre of play', faces: [eye, pin], outcome: 'holds', checks: held },
  {
    says: 'another lock',
    faces: [eye, { ...pin, lock: 'screw' }],
    outcome: 'fails',
    checks: { ...held, 'equal-lock': 'fails not-equal' },
  },
  {
    says: 'a pin that is too thick by a thousandth',
    faces: [eye, { ...pin, diameter: '20.401 ±0 mm' }],
    outcome: 'fails',
    checks: { ...held, play: 'fails too-small' },
  },
  {
    says: 'a pin that is too thin by a thousandth',
    faces: [eye, { ...pin, diameter: '19.499 ±0 mm' }],
    outcome: 'fails',
    checks: { ...held, play: 'fails too-large' },
  },
  {
    says: 'a pin that somebody read with a tape',
    faces: [eye, { ...pin, diameter: { is: '20 mm', tool: 'tape' } }],
    outcome: 'open',
    checks: { ...held, play: 'open not-precise-enough' },
  },
];
`;

beforeAll(() => {
  for (const path of ['src', 'package.json', 'tsconfig.json', 'vitest.config.ts']) {
    cpSync(join(top, path), join(copy, path), { recursive: true });
  }
  cpSync(join(top, 'tests/source-text.ts'), join(copy, 'tests/source-text.ts'));
  cpSync(join(top, 'tests/kinds'), join(copy, 'tests/kinds'), {
    recursive: true,
    filter: (path) => !path.endsWith('on-the-spot.test.ts'),
  });
  symlinkSync(join(top, 'node_modules'), join(copy, 'node_modules'));
});
afterAll(() => rmSync(copy, { recursive: true }));

/** The one line: the kind in the list, with its import. */
function register(): void {
  const path = join(copy, 'src/domain/kinds/registry.ts');
  const text = readFileSync(path, 'utf8');
  const imports = [...text.matchAll(/^import \{ (\w+) \} from '\.\/([a-z0-9-]+)\.js';$/gm)];
  const [whole = '', name = ''] = imports.find(([, , id = '']) => id > 'towing-eye') ?? [];
  const lines = text
    .replace(whole, `import { towingEye } from './towing-eye.js';\n${whole}`)
    .replace(`\n  ${name},\n`, `\n  towingEye,\n  ${name},\n`);
  expect(lines.split('\n').length - text.split('\n').length).toBe(2);
  writeFileSync(path, lines);
}

interface Told {
  readonly passed: readonly string[];
  readonly failed: readonly string[];
}

/** What the tests of the copy say of the new kind. */
function runTests(): Promise<Told> {
  const words = [
    join(top, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--reporter=json',
    '-t',
    'towing-eye|registry|folder of fixtures|says the same',
  ];
  return new Promise((resolve, reject) => {
    const options = { cwd: copy, maxBuffer: 64 * 1024 * 1024 };
    execFile(process.execPath, words, options, (error, out) => {
      const start = out.indexOf('{');
      if (start < 0) return reject(error ?? new Error('the tests said nothing'));
      const { testResults } = JSON.parse(out.slice(start)) as {
        testResults: { assertionResults: { status: string; fullName: string }[] }[];
      };
      const all = testResults.flatMap(({ assertionResults }) => assertionResults);
      const named = (status: string) =>
        all.filter((one) => one.status === status).map(({ fullName }) => fullName);
      resolve({ passed: named('passed'), failed: named('failed') });
    });
  });
}

test('a kind is one file, one line and one folder', async () => {
  writeFileSync(join(copy, 'src/domain/kinds/towing-eye.ts'), KIND);
  register();
  const bare = await runTests();
  expect(bare.failed.join('\n')).toContain('has a folder of fixtures');
  expect(bare.failed.join('\n')).toContain('towing-eye has fixtures that show each check');

  mkdirSync(join(copy, 'tests/kinds/towing-eye'));
  writeFileSync(join(copy, 'tests/kinds/towing-eye/all.ts'), FIXTURES);
  const whole = await runTests();
  expect(whole.failed).toEqual([]);
  const own = whole.passed.filter((name) => name.includes('towing-eye'));
  expect(own.filter((name) => name.includes('all.ts')).length).toBe(6);
  for (const told of ['in inches', 'in whichever order', 'is open without', 'usual range']) {
    expect(own.some((name) => name.includes(told))).toBe(true);
  }

  const lacking = KIND.replace(", de: 'Bohrung der Öse'", '');
  writeFileSync(join(copy, 'src/domain/kinds/towing-eye.ts'), lacking);
  const poor = await runTests();
  expect(poor.failed.join('\n')).toContain('says its names and texts in every language');
}, 240_000);
