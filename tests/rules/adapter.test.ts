/**
 * Adapters: parts with two faces inside a mating.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ABSENT, faultsOf, flange, hole, pin, type Sketch, world } from './sketch.js';
import { found, judged, stateOf } from './world.js';

const base: Sketch = {
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front +2'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'box-c': { rear: flange('C') },
    'box-silent': {},
    'prop-a': { front: flange('A') },
    'stub-ab': { near: flange('A'), far: flange('B') },
    'stub-bc': { near: flange('B'), far: flange('C') },
    'stub-a': { near: flange('A'), far: flange() },
    'stub-x': { near: flange('A'), far: ABSENT },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a' } },
};
const through = (box: string, adapters: readonly string[]) => ({
  put: { box },
  between: { 'box-prop': adapters },
});

describe('B7 an adapter has two faces, and is tried both ways round', () => {
  const cars = world(base);

  it('one stub serves a mating from either side', () => {
    expect(stateOf(judged(cars, through('box-b', ['stub-ab'])), 'box-prop')).toBe('holds meets');
    const mirrored = world({
      ...base,
      parts: { ...base.parts, 'prop-b': { front: flange('B') } },
      cars: { car: { box: 'box-a', prop: 'prop-b' } },
    });
    const one = judged(mirrored, { between: { 'box-prop': ['stub-ab'] } });
    expect(stateOf(one, 'box-prop')).toBe('holds meets');
  });

  it('two in a row serve in the order in which they stand', () => {
    expect(stateOf(judged(cars, through('box-c', ['stub-bc', 'stub-ab'])), 'box-prop')).toBe(
      'holds meets',
    );
    expect(stateOf(judged(cars, through('box-c', ['stub-ab', 'stub-bc'])), 'box-prop')).toBe(
      'fails not-equal',
    );
  });

  it('each joint on the way is shown', () => {
    const one = found(judged(cars, through('box-c', ['stub-bc', 'stub-ab'])), 'box-prop');
    if (one?.form !== 'mating') throw new Error('a mating was asked for');
    expect(one.joints.map(({ ends }) => ends.map((end) => end.adapter ?? end.position))).toEqual([
      ['box', 'stub-bc'],
      ['stub-bc', 'stub-ab'],
      ['stub-ab', 'prop'],
    ]);
  });

  it('what nobody recorded of it keeps the mating open, what is wrong fails it', () => {
    expect(judged(cars, through('box-b', ['stub-a'])).outcome).toBe('open');
    expect(judged(cars, through('box-c', ['stub-ab'])).outcome).toBe('fails');
    expect(judged(cars, through('box-silent', ['stub-ab'])).outcome).toBe('open');
  });

  it('a face that it lacks serves nothing', () => {
    expect(stateOf(judged(cars, through('box-a', ['stub-x'])), 'box-prop')).toBe(
      'fails needed-absent',
    );
  });

  it('with sides, only the way round that meets counts', () => {
    const pegs = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: hole('20.1 ±0 mm') },
        'box-b': { rear: pin('20.0 ±0 mm') },
        'prop-a': { front: pin('20.0 ±0 mm') },
        'sleeve-a': { one: hole('20.1 ±0 mm'), other: hole('20.1 ±0 mm') },
        'nipple-a': { one: pin('20.0 ±0 mm'), other: hole('20.1 ±0 mm') },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    expect(stateOf(judged(pegs, through('box-b', [])), 'box-prop')).toBe('fails same-side');
    expect(stateOf(judged(pegs, through('box-b', ['sleeve-a'])), 'box-prop')).toBe('holds meets');
    expect(stateOf(judged(pegs, through('box-b', ['nipple-a'])), 'box-prop')).toBe(
      'fails same-side',
    );
    expect(stateOf(judged(pegs, through('box-a', ['nipple-a'])), 'box-prop')).toBe('holds meets');
  });

  it('what is fitted has two faces, and no more in a row than the mating takes', () => {
    const fitted = (adapters: unknown): Sketch => ({
      ...base,
      cars: { car: { box: 'box-b', prop: 'prop-a', matings: { 'box-prop': adapters } } },
    });
    expect(faultsOf(fitted(['stub-ab', 'stub-ab', 'stub-ab']))).toEqual(['too-many-adapters']);
    expect(faultsOf(fitted('box-a'))).toEqual(['not-an-adapter']);
    expect(
      faultsOf({ ...fitted(['stub-ab', 'stub-ab']), matings: ['box.rear = prop.front'] }),
    ).toEqual(['too-many-adapters']);
    expect(faultsOf(fitted('stub-ab'))).toEqual([]);
  });

  it('on a handed mating one sits at each hand', () => {
    const shafts = world({
      places: ['axle', 'shaft<>'],
      matings: ['axle.out = shaft.in'],
      parts: {
        'axle-a': { out: flange('A') },
        'shaft-a': { in: flange('A') },
        'shaft-b': { in: flange('B') },
        'stub-ab': { near: flange('A'), far: flange('B') },
      },
      cars: { car: { axle: 'axle-a', shaft: 'shaft-a' } },
    });
    const one = judged(shafts, {
      put: { shaft: 'shaft-b' },
      between: { 'axle-shaft': ['stub-ab'] },
    });
    expect(stateOf(one, 'axle-shaft', 'left')).toBe('holds meets');
    expect(stateOf(one, 'axle-shaft', 'right')).toBe('holds meets');
  });
});

describe('B7 of all ways of turning adapters in a row', () => {
  /** Patterns of faces; a question mark is one that nobody recorded. */
  const PATTERNS = ['A', 'B', '?'];
  const faceOf = (pattern: string) => flange(pattern === '?' ? undefined : pattern);
  const kinds = PATTERNS.flatMap((near) => PATTERNS.map((far) => `${near}${far}`));
  const idOf = (patterns: string) => `stub-${patterns.toLowerCase().replaceAll('?', 'x')}`;
  const cars = world({
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front +4'],
    parts: {
      'box-a': { rear: flange('A') },
      'prop-b': { front: flange('B') },
      ...Object.fromEntries(
        kinds.map((patterns) => {
          const [near = '', far = ''] = patterns;
          return [idOf(patterns), { near: faceOf(near), far: faceOf(far) }];
        }),
      ),
    },
    cars: { car: { box: 'box-a', prop: 'prop-b' } },
  });

  interface Turned {
    readonly pattern: string;
    /** Article and face: what nobody recorded of one is the same on each piece of it. */
    readonly name: string;
  }

  /** 0 where two faces meet, 1 where nobody knows, 2 where they do not. */
  const rankOf = (a: Turned, b: Turned | undefined) => {
    if (b === undefined) throw new Error('faces come in pairs');
    if (a.pattern === '?' || b.pattern === '?') return a.name === b.name ? 0 : 1;
    return a.pattern === b.pattern ? 0 : 2;
  };

  /** Every way, the first adapter turned last; which are turned round, and how it comes out. */
  function ways(row: readonly string[]) {
    return Array.from({ length: 2 ** row.length }, (_, number) => {
      const turned = row.map((_, index) => ((number >> (row.length - 1 - index)) & 1) === 1);
      const faces = row.flatMap((one, index) => {
        const [near = '', far = ''] = one;
        const both = [
          { pattern: near, name: `${one}.near` },
          { pattern: far, name: `${one}.far` },
        ];
        return turned[index] ? both.reverse() : both;
      });
      const ends = [
        { pattern: 'A', name: 'box' },
        { pattern: 'B', name: 'prop' },
      ] as const;
      const all: readonly Turned[] = [ends[0], ...faces, ends[1]];
      const ranks = all.flatMap((a, index) => {
        return index % 2 === 0 ? [rankOf(a, all[index + 1])] : [];
      });
      return { turned, rank: Math.max(...ranks) };
    });
  }

  it('the best is taken, the first of equals', () => {
    let mended = 0;
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 4 }), (row) => {
        const all = ways(row);
        const best = Math.min(...all.map(({ rank }) => rank));
        const wanted = all.find(({ rank }) => rank === best);
        const one = found(judged(cars, { between: { 'box-prop': row.map(idOf) } }), 'box-prop');
        if (one?.form !== 'mating') throw new Error('a mating was asked for');
        expect(one.computed).toBe(['holds', 'open', 'fails'][best]);
        const turned = one.joints.slice(1).map(({ ends }) => ends[0].interface === 'near');
        expect(turned).toEqual(wanted?.turned);
        if (wanted?.turned.includes(true)) mended += 1;
      }),
      { numRuns: 300, examples: [[['AB', '?B', '?B', 'BB']]] },
    );
    expect(mended).toBeGreaterThan(20);
  });
});

describe('B7 the values of adapters count in the checks of the layout', () => {
  const cars = world({
    ...base,
    roles: {
      box: { length: 'length' },
      stub: { thickness: 'length', torque: 'rating' },
      engine: { torque: 'engine' },
    },
    places: ['engine', 'box', 'prop'],
    checks: [
      {
        id: 'span',
        within: [{ sum: ['box.length', 'box-prop.adapter.thickness'] }, '600 mm'],
        tolerance: '5 mm',
      },
      { id: 'stub-load', carries: 'box-prop.adapter.torque', demand: 'engine.torque' },
    ],
    parts: {
      'engine-a': { torque: '300 ±0 N.m' },
      'box-a': { rear: flange('A'), length: '600 mm' },
      'box-b': { rear: flange('B'), length: '580 ±1 mm' },
      'box-c': { rear: flange('C'), length: '570 ±1 mm' },
      'prop-a': { front: flange('A') },
      'stub-ab': { near: flange('A'), far: flange('B'), thickness: '20 ±1 mm', torque: '400 N.m' },
      'stub-bc': { near: flange('B'), far: flange('C'), thickness: '10 ±1 mm', torque: '200 N.m' },
      'stub-thin': { near: flange('A'), far: flange('B'), thickness: '5 ±1 mm' },
      'stub-silent': { near: flange('A'), far: flange('B') },
    },
    cars: { car: { engine: 'engine-a', box: 'box-a', prop: 'prop-a' } },
    rules: [
      {
        id: 'no-thin-stub',
        when: { mating: 'box-prop', adapter: 'stub-thin' },
        excludes: { changed: 'box' },
        because: 'It bends.',
      },
    ],
  });

  it('none is 0', () => {
    expect(stateOf(judged(cars, through('box-b', [])), 'span')).toBe('fails too-small');
  });

  it('one counts with its own, several with their sum', () => {
    expect(stateOf(judged(cars, through('box-b', ['stub-ab'])), 'span')).toBe('holds clears');
    expect(stateOf(judged(cars, through('box-b', ['stub-thin'])), 'span')).toBe('fails too-small');
    expect(stateOf(judged(cars, through('box-c', ['stub-bc', 'stub-ab'])), 'span')).toBe(
      'holds clears',
    );
    expect(stateOf(judged(cars, through('box-c', ['stub-ab'])), 'span')).toBe('fails too-small');
  });

  it('one that nobody recorded leaves the sum open', () => {
    expect(stateOf(judged(cars, through('box-b', ['stub-silent'])), 'span')).toBe(
      'open not-recorded',
    );
  });

  it('a load may name the mating: no adapter bears nothing, of several the weakest counts', () => {
    const load = (box: string, adapters: readonly string[]) =>
      stateOf(judged(cars, through(box, adapters)), 'stub-load');
    expect(load('box-b', [])).toBe('not judged');
    expect(load('box-b', ['stub-ab'])).toBe('holds carries');
    expect(load('box-c', ['stub-bc', 'stub-ab'])).toBe('fails too-weak');
    expect(load('box-b', ['stub-silent'])).toBe('open not-recorded');
  });

  it('a rule may speak of an adapter', () => {
    expect(stateOf(judged(cars, through('box-b', ['stub-thin'])), 'no-thin-stub')).toBe(
      'fails rule-excludes',
    );
    expect(stateOf(judged(cars, through('box-b', ['stub-ab'])), 'no-thin-stub')).toBe('not judged');
  });

  it('a mating that an adapter is taken out of is judged anew, and so is its sum', () => {
    const applied = {
      said: { box: 'box-b' },
      saidBetween: { 'box-prop': ['stub-ab'] },
      between: { 'box-prop': [] },
    };
    const one = judged(cars, applied);
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(stateOf(one, 'span')).toBe('fails too-small');
  });
});
