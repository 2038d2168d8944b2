/**
 * What is asked of every built-in kind, whatever it is about: that it says all that a reader may
 * ask for, that its fixtures show every check failing, and that neither the order of the ends nor
 * the unit of a length changes an answer.
 */

import { describe, expect, test } from 'vitest';
import type { Kind } from '../../src/domain/catalogue/catalogue.js';
import { compileKind } from '../../src/domain/catalogue/compile-kind.js';
import type { Text } from '../../src/domain/catalogue/document.js';
import { FaultList } from '../../src/domain/catalogue/faults.js';
import { type Check, type Condition, termsOf } from '../../src/domain/check/check.js';
import { leavesOf } from '../../src/domain/check/evaluator.js';
import { CAUTION_GROUPS } from '../../src/domain/explain/reason.js';
import { SPOKEN } from '../../src/domain/explain/words.js';
import type { BuiltInKind } from '../../src/domain/kinds/kind.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { isFault, TOOLS } from '../../src/domain/quantity/quantity.js';
import { add, exactText, rational, subtract } from '../../src/domain/quantity/rational.js';
import { toolFor } from '../../src/domain/quantity/tool.js';
import { unitOf } from '../../src/domain/quantity/unit.js';
import { filesOf } from '../source-text.js';
import { type Meeting, meet, verdictOf } from './bench.js';
import { allFixtures, type Fixture, without } from './fixture.js';
import { exactly, inInches, type Recorded } from './restating.js';

/** Codes of failing checks that no kind has to explain. */
const COMMON_CODES = ['not-equal', 'not-one-of', 'too-small', 'too-large'];

const files = await allFixtures();

function fixturesFor(id: string): readonly Fixture[] {
  return files.filter(({ kind }) => kind === id).flatMap(({ fixtures }) => fixtures);
}

function compiled(kind: BuiltInKind): Kind {
  const list = new FaultList();
  const result = compileKind(kind, true, '', list);
  expect([list.faults, list.warnings]).toEqual([[], []]);
  return result;
}

/** What an answer says, for comparing two answers. */
function told({ outcome, checks, silent }: Meeting) {
  const verdicts = Object.fromEntries([...checks].map(([id, result]) => [id, verdictOf(result)]));
  return { outcome, verdicts, silent: silent.map((text) => JSON.stringify(text)).sort() };
}

test('the registry has every kind that there is, each once and under its name', () => {
  const names = filesOf('src/domain/kinds', /\.ts$/)
    .map(({ path }) => path.replace(/^.*\//, '').replace(/\.ts$/, ''))
    .filter((name) => name !== 'kind' && name !== 'registry');
  expect(BUILT_IN_KINDS.map(({ id }) => id)).toEqual(names);
});

describe.each(BUILT_IN_KINDS.map((kind) => [kind.id, kind] as const))('%s', (id, kind) => {
  const fixtures = fixturesFor(id);

  test('compiles without a fault or a warning', () => {
    expect(compiled(kind).checks.length).toBe(kind.checks.length);
  });

  test('says its names and texts in every language, and no two of them alike', () => {
    const { checks } = compiled(kind);
    const texts: readonly (readonly [string, Text | null])[] = [
      ['name', kind.name],
      ...Object.entries(kind.sideNames ?? {}),
      ...Object.entries(kind.parameters).map(([key, { name }]) => [key, name ?? null] as const),
      ...checks.map((check) => [check.id, check.text] as const),
      ...kind.notChecked.map((text) => ['notChecked', text] as const),
    ];
    for (const [key, text] of texts) {
      expect([key, Object.keys(text ?? {})]).toEqual([key, SPOKEN]);
      for (const said of Object.values(text ?? {})) expect(said.trim().length).toBeGreaterThan(2);
    }
    for (const language of SPOKEN) {
      const names = Object.values(kind.parameters).map(({ name }) => inLanguage(name, language));
      expect(new Set(names).size).toBe(names.length);
    }
  });

  test('says its standard, its caution group and what it does not check', () => {
    expect(kind.standard.length).toBeGreaterThan(0);
    expect(CAUTION_GROUPS).toContain(kind.caution);
    expect(kind.notChecked.length).toBeGreaterThan(0);
  });

  test('says what each of its sides is', () => {
    expect(Object.keys(kind.sideNames ?? {})).toEqual([...(kind.sides ?? [])]);
  });

  test('has a tool for each parameter, and a usual range for each number', () => {
    for (const [parameter, { type, tool, unit, usual }] of Object.entries(kind.parameters)) {
      expect([parameter, Object.keys(TOOLS)]).toEqual([parameter, expect.arrayContaining([tool])]);
      if (type === 'code') continue;
      const dimension = unitOf(unit ?? '')?.dimension ?? '1';
      expect([parameter, isFault(toolFor(tool ?? '', dimension))]).toEqual([parameter, false]);
      expect([parameter, usual?.length]).toEqual([parameter, type === 'points' ? undefined : 2]);
    }
  });

  test('reads each parameter in some check', () => {
    const read = new Set(compiled(kind).checks.flatMap(readBy));
    expect([...read].sort()).toEqual(Object.keys(kind.parameters).sort());
  });

  test('has fixtures that show each check holding and each check failing', () => {
    const shown = new Set(
      fixtures.flatMap(({ checks }) =>
        Object.entries(checks).map(([check, verdict]) => `${check} ${verdict.split(' ')[0]}`),
      ),
    );
    const wanted = compiled(kind).checks.flatMap((check) => [
      `${check.id} holds`,
      `${check.id} fails`,
    ]);
    expect(wanted.filter((one) => !shown.has(one))).toEqual([]);
  });

  test('fails with codes that it declares, or that need no explanation', () => {
    const declared = new Map(compiled(kind).checks.map(({ id: check, code }) => [check, code]));
    for (const [check, verdict] of fixtures.flatMap(({ checks }) => Object.entries(checks))) {
      const [outcome, code = ''] = verdict.split(' ');
      if (outcome !== 'fails') continue;
      const own = declared.get(check) ?? null;
      expect(own === null ? COMMON_CODES : [own]).toContain(code);
    }
  });

  test('gives the same answer in whichever order its ends come', () => {
    for (const { faces } of fixtures) {
      const [left, right] = faces;
      expect(told(meet(right, left))).toEqual(told(meet(left, right)));
    }
  });

  test('gives the same answer in inches', () => {
    for (const { faces } of fixtures) {
      const [left, right] = faces;
      const restated = meet(inInches(kind, left), inInches(kind, right));
      expect(told(restated)).toEqual(told(meet(left, right)));
    }
  });

  test('is open without a parameter that is needed, and asks for it', () => {
    const proven = new Set<string>();
    for (const { faces, outcome } of fixtures) {
      if (outcome !== 'holds') continue;
      for (const [parameter, end] of needed(kind, faces)) {
        const [left, right] = faces;
        const meeting =
          end === 'left'
            ? meet(without(left, parameter), right)
            : meet(left, without(right, parameter));
        if (meeting.outcome === 'holds') continue;
        expect([parameter, meeting.outcome]).toEqual([parameter, 'open']);
        expect(meeting.asked).toContain(`${end}.${parameter}`);
        proven.add(parameter);
      }
    }
    const required = Object.entries(kind.parameters).filter(([, { optional }]) => !optional);
    expect([...proven].sort()).toEqual(required.map(([parameter]) => parameter).sort());
  });

  test('says which optional values it did not compare', () => {
    const [bare] = fixtures;
    if (bare === undefined) throw new Error('there are fixtures');
    const faces = bare.faces.map((face) => without(face, ...optionalOf(kind)));
    const [left, right] = faces;
    if (left === undefined || right === undefined) throw new Error('there are two faces');
    const silent = meet(left, right).silent.map((text) => JSON.stringify(text));
    const names = optionalOf(kind).map((key) => JSON.stringify(kind.parameters[key]?.name));
    expect(silent.sort()).toEqual(names.sort());
  });

  test('warns of a value outside its usual range, and of none within', () => {
    const [fixture] = fixtures;
    if (fixture === undefined) throw new Error('there are fixtures');
    for (const [parameter, { type, unit = '', usual, of }] of Object.entries(kind.parameters)) {
      if (usual === undefined || type === 'code') continue;
      const index = kind.sides === undefined || of === undefined ? 0 : kind.sides.indexOf(of);
      const [low, high] = usual.map((end) => rational(String(end).split(' ')[0] ?? ''));
      if (low === undefined || high === undefined) throw new Error('a range has two ends');
      const spec = { parameter, type, unit } as Recorded;
      const warned = [subtract(low, STEP), low, high, add(high, STEP)].map((value) => {
        if (value.compare(0) < 0) return true;
        const faces = fixture.faces.map((face, at) =>
          at === index ? { ...face, [parameter]: exactly(spec, value) } : face,
        );
        const [left, right] = faces;
        if (left === undefined || right === undefined) throw new Error('there are two faces');
        const { warnings } = meet(left, right);
        return warnings.some((text) => text === unusual(index, parameter));
      });
      expect([parameter, ...warned]).toEqual([parameter, true, false, false, true]);
    }
  });
});

const STEP = rational(1);

function unusual(index: number, parameter: string): string {
  return `unusual-value at /parts/${index}/interfaces/face/${parameter}`;
}

function inLanguage(text: Text | undefined, language: string): string | undefined {
  return typeof text === 'string' ? text : text?.[language];
}

function optionalOf({ parameters }: BuiltInKind): string[] {
  return Object.keys(parameters).filter((key) => parameters[key]?.optional === true);
}

/** The parameters that a kind needs and that these faces record, each with its end. */
function needed({ parameters }: BuiltInKind, faces: Fixture['faces']) {
  return Object.entries(parameters).flatMap(([parameter, { optional }]) => {
    if (optional === true) return [];
    return (['left', 'right'] as const)
      .filter((_, index) => faces[index]?.[parameter] !== undefined)
      .map((end) => [parameter, end] as const);
  });
}

/** The parameters that a check reads, its condition included. */
function readBy(check: Check): string[] {
  const own = termsOf(check)
    .flatMap(leavesOf)
    .flatMap(({ reference }) => (reference.of === 'side' ? [reference.parameter] : []));
  return [...own, ...(check.when === null ? [] : readIn(check.when))];
}

function readIn(condition: Condition): string[] {
  switch (condition.test) {
    case 'all':
    case 'any':
      return condition.of.flatMap(readIn);
    case 'not':
      return readIn(condition.of);
    case 'check':
      return readBy(condition.check);
    default:
      throw new Error(`a kind knows no positions: ${condition.test}`);
  }
}

test('lengths in inches are exact', () => {
  const [wheel] = BUILT_IN_KINDS.filter(({ id }) => id === 'wheel-mount');
  if (wheel === undefined) throw new Error('wheel-mount is built in');
  const face = { kind: 'wheel-mount', side: 'hub', pcd: '114.3 mm', spigot: '56.1 mm' };
  expect(inInches(wheel, face)).toEqual({
    ...face,
    pcd: '4.5 ±0 in',
    spigot: `${exactText(rational('561/254'))} ±${exactText(rational('1/508'))} in`,
  });
});
