/**
 * Rules of style that no linter here checks, held by machine so that nobody has to remember them:
 * width and length, file names, headers, left-over notes, tests that would not run, and the
 * dependencies, each pinned, explained and free of any registry's address.
 *
 * Left out: the length of functions and whatever else `biome.json` and `.oxlintrc.json` already
 * hold; the form of commit subjects.
 */

import { describe, expect, test } from 'vitest';
import { codeOf, fileAt, filesOf, type SourceFile } from './source-text.js';

const widest = 100;
const longest = 300;
const testCalls = 'describe|suite|test|it|bench';
// Spelt in halves, so that this file does not find itself.
const leftover = new RegExp(`\\b(${['TO' + 'DO', 'FIX' + 'ME', 'XX' + 'X'].join('|')})\\b`);
/** Written by a generator: nobody reads it from above to below, and who changes it is undone. */
const generated = /^src\/client\/generated\//;
const vague = /^(utils?|helpers?|misc)$/;

const code = [
  ...['src', 'tests', 'scripts'].flatMap((folder) => filesOf(folder, /\.ts$/)),
  ...filesOf('', /^[^/]+\.ts$/),
].filter(({ path }) => !generated.test(path));
const prose = filesOf('', /(\.md|\/[a-z-]+|\.ya?ml|Dockerfile)$/);

describe('every source file', () => {
  test.each<[string, (file: SourceFile) => string[]]>([
    ['is at most 100 columns wide', tooWide],
    ['is at most 300 lines long, or says why not', tooLong],
    ['says what it is in a header comment', headless],
    ['has a name that says what is in it', illNamed],
    ['has no note left to finish it later', unfinished],
    ['runs all its tests', notRun],
  ])('%s', (_, complaints) => {
    expect(code.length).toBeGreaterThan(0);
    expect(code.flatMap(complaints)).toEqual([]);
  });

  test('and every page and script is finished too', () => {
    expect(prose.length).toBeGreaterThan(0);
    expect(prose.flatMap(unfinished)).toEqual([]);
  });
});

describe('a file that breaks a rule is caught', () => {
  const lines = (count: number): string => 'a();\n'.repeat(count);

  test.each<[string, (file: SourceFile) => string[], string, string]>([
    ['a wide line', tooWide, 'src/a.ts', `// ${'a'.repeat(98)}`],
    ['a long file', tooLong, 'src/a.ts', `/** What it is. */\n${lines(300)}`],
    ['a long file with no reason', tooLong, 'src/a.ts', `/** Length: long. */\n${lines(300)}`],
    ['a reason far below', tooLong, 'src/a.ts', `a();\n/** Length: one table. */\n${lines(300)}`],
    ['no header', headless, 'src/a.ts', "import { a } from './a.js';"],
    ['a vague name', illNamed, 'src/http/helpers.ts', ''],
    ['a vague folder', illNamed, 'src/utils/bolt.ts', ''],
    ['capitals in a name', illNamed, 'src/boltCircle.ts', ''],
    ['a note', unfinished, 'src/a.ts', `// ${'TO' + 'DO'}: later`],
    ['one test alone', notRun, 'tests/a.test.ts', "test.only('a', () => {});"],
    ['a skipped group', notRun, 'tests/a.test.ts', "describe.skip('a', () => {});"],
    ['a test to come', notRun, 'tests/a.test.ts', "test.concurrent.todo('a');"],
    ['a test under a condition', notRun, 'tests/a.test.ts', 'test.skipIf(slow)(name, run);'],
    ['a test that may fail', notRun, 'tests/a.test.ts', "it.fails('a', () => {});"],
  ])('%s', (_, complaints, path, text) => {
    expect(complaints({ path, text })).toHaveLength(1);
  });

  test.each<[string, (file: SourceFile) => string[], string, string]>([
    ['an address', tooWide, 'src/a.ts', `// See https://example.org/${'a'.repeat(98)}`],
    ['100 columns', tooWide, 'src/a.ts', 'é'.repeat(100)],
    ['300 lines', tooLong, 'src/a.ts', lines(300)],
    ['a reason', tooLong, 'src/a.ts', `/** Length: one table of the standard. */\n${lines(300)}`],
    ['a header below a shebang', headless, 'src/a.ts', '#!/usr/bin/env node\n// The entry.\n'],
    ['a name', illNamed, 'tests/kinds/wheel-mount/does-not-fit-pcd.test.ts', ''],
    ['a word in a string', notRun, 'tests/a.test.ts', "a('test.only(');"],
  ])('and %s is not', (_, complaints, path, text) => {
    expect(complaints({ path, text })).toEqual([]);
  });
});

describe('the dependencies', () => {
  const manifest: Manifest = JSON.parse(fileAt('package.json').text);
  const manifests = [
    manifest,
    ...manifest.workspaces.map((folder): Manifest => {
      return JSON.parse(fileAt(`${folder}/package.json`).text);
    }),
  ];
  const versions = manifests.flatMap(({ dependencies = {}, devDependencies = {} }) => [
    ...Object.entries(dependencies),
    ...Object.entries(devDependencies),
  ]);
  const names = [...new Set(versions.map(([name]) => name))].sort();

  test('are pinned to one version each', () => {
    const loose = versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version));
    expect(loose).toEqual([]);
  });

  test('are each explained by a sentence in DEVELOPERS.md, and no other is', () => {
    const page = fileAt('DEVELOPERS.md').text;
    expect([...explained(page)].sort()).toEqual(names);
    expect(
      explained('## Dependencies\n\n- `hono`\n- `zod`: no\n- `pino`: Writes a log.\n'),
    ).toEqual(['pino']);
  });

  test('are locked without the address of a registry', () => {
    const lock = fileAt('package-lock.json').text;
    expect(Object.keys(JSON.parse(lock).packages).length).toBeGreaterThan(names.length);
    expect(addressed(lock)).toEqual([]);
    const bad = { packages: { 'node_modules/a': { resolved: 'https://example.org/a.tgz' } } };
    expect(addressed(JSON.stringify(bad))).toEqual(['node_modules/a']);
  });
});

interface Manifest {
  readonly workspaces: readonly string[];
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

function tooWide({ path, text }: SourceFile): string[] {
  return text.split('\n').flatMap((line, index) => {
    const width = Array.from(line.replace(/https?:\/\/\S+/g, '')).length;
    return width > widest ? [`${path}:${index + 1} is ${width} columns wide`] : [];
  });
}

function tooLong({ path, text }: SourceFile): string[] {
  const length = text.trimEnd().split('\n').length;
  if (length <= longest || /\bLength:\s+\S+(\s+\S+){2,}/.test(headerOf(text))) return [];
  return [`${path} is ${length} lines long; say why in its header comment ("Length: ...")`];
}

function headless({ path, text }: SourceFile): string[] {
  return headerOf(text) === '' && !path.endsWith('.config.ts') ? [`${path} has no header`] : [];
}

/** The comment that a file begins with, after a shebang; empty where there is none. */
function headerOf(text: string): string {
  const body = text.replace(/^#!.*\n/, '').trimStart();
  return /^(\/\*[\s\S]*?\*\/|(\/\/.*(\n|$))+)/.exec(body)?.[0] ?? '';
}

function illNamed({ path }: SourceFile): string[] {
  const parts = path.split('/').map((part) => part.replace(/(\.\w+)+$/, ''));
  const ill = parts.filter((part) => vague.test(part) || !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(part));
  return ill.map((part) => `${path}: "${part}" is no kebab-case name of what is in it`);
}

function unfinished({ path, text }: SourceFile): string[] {
  return text.split('\n').flatMap((line, index) => {
    return leftover.test(line) ? [`${path}:${index + 1} is left to finish: ${line.trim()}`] : [];
  });
}

function notRun({ path, text }: SourceFile): string[] {
  if (!path.startsWith('tests/')) return [];
  const chained = `(${testCalls})(\\.\\w+)*\\.(only|skip|todo|skipIf|runIf|fails)\\b`;
  const some = new RegExp(`(?<![.\\w$])(${chained}|[fx](${testCalls})\\s*\\()`, 'g');
  return [...codeOf(text).matchAll(some)].map((match) => `${path} does not run: ${match[0]}`);
}

/** The packages that a list item under "Dependencies" explains: "- `name`: A sentence." */
function explained(page: string): string[] {
  const section = /^## Dependencies$([\s\S]*?)(?=^## |(?![\s\S]))/m.exec(page)?.[1] ?? '';
  const item = /^- `([^`]+)`[^\n]*:\s+(\S+(?:\s+\S+){2,})$/;
  return section
    .replace(/\n +/g, ' ')
    .split('\n')
    .flatMap((line) => (line.endsWith('.') ? (item.exec(line)?.[1] ?? []) : []));
}

/** The locked packages that name where they were downloaded from. */
function addressed(lock: string): string[] {
  const packages: Record<string, { resolved?: string }> = JSON.parse(lock).packages;
  return Object.entries(packages)
    .filter(([, { resolved }]) => resolved?.startsWith('http') ?? false)
    .map(([name]) => name);
}
