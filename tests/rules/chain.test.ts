/**
 * Chains of factors: what cancels, what is one unknown, what an empty place does to them.
 */

import { describe, expect, it } from 'vitest';
import { exactText } from '../../src/domain/quantity/rational.js';
import { faultsOf, type Sketch, world } from './sketch.js';
import { found, judged, stateOf } from './world.js';

/** The mismatch of a loop in per cent, both ends; null where it has none. */
function mismatchOf(judgement: ReturnType<typeof judged>, id: string) {
  const margin = found(judgement, id)?.checks[0]?.margin ?? null;
  if (margin === null) return null;
  const { low, high } = margin.interval;
  return [low === null ? null : exactText(low), high === null ? null : exactText(high)];
}

const loop: Sketch = {
  roles: {
    transfer: { ratio: 'ratio', coupling: 'code' },
    axle: { ratio: 'ratio' },
  },
  places: ['transfer', 'front: axle', 'rear: axle'],
  terms: {
    'to-front': ['transfer.ratio', 'front.ratio'],
    'to-rear': ['transfer.ratio', 'rear.ratio'],
  },
  checks: [{ id: 'loop', agree: ['to-front', 'to-rear'], coupling: 'transfer.coupling' }],
  parts: {
    'transfer-a': { ratio: '2.0', coupling: 'locked' },
    'transfer-b': { ratio: '2.0', coupling: 'locked' },
    'axle-exact': { ratio: '39/10' },
    'axle-other': { ratio: '39/10' },
    'axle-3545': { ratio: '3.545' },
    'axle-twin': { ratio: '3.545' },
    'axle-silent': {},
    'axle-silent2': {},
  },
  cars: { car: { transfer: 'transfer-a', front: 'axle-3545', rear: 'axle-exact' } },
};

describe('C1 equal factors of one article cancel before there are intervals', () => {
  const cars = world(loop);
  const axles = (front: string, rear: string) => judged(cars, { put: { front, rear } });

  it('a transfer known as 2.0 in both chains, with exact 39/10 finals: no mismatch at all', () => {
    const one = axles('axle-exact', 'axle-other');
    expect(stateOf(one, 'loop')).toBe('holds agrees');
    expect(mismatchOf(one, 'loop')).toEqual(['0', '0']);
    expect(found(one, 'loop')?.checks[0]?.caution).toBeNull();
  });

  it('without the cancelling it would be 4.9 per cent either way, and open', () => {
    const apart = world({
      ...loop,
      places: ['transfer', 'second: transfer', 'front: axle', 'rear: axle'],
      terms: { ...loop.terms, 'to-rear': ['second.ratio', 'rear.ratio'] },
      cars: { car: { transfer: 'transfer-a', second: 'transfer-b', front: 'axle-3545' } },
    });
    const one = judged(apart, { put: { front: 'axle-exact', rear: 'axle-other' } });
    expect(stateOf(one, 'loop')).toBe('open not-precise-enough');
    const [low, high] = mismatchOf(one, 'loop') ?? [];
    // 1.95/2.05 - 1 and 2.05/1.95 - 1
    expect([low, high]).toEqual(['-200/41', '200/39']);
  });

  it('two axles of one article agree, whatever its ratio', () => {
    for (const axle of ['axle-3545', 'axle-silent']) {
      const one = axles(axle, axle);
      expect(stateOf(one, 'loop')).toBe('holds agrees');
      expect(mismatchOf(one, 'loop')).toEqual(['0', '0']);
    }
  });

  it('two articles that merely read the same do not cancel', () => {
    const one = axles('axle-3545', 'axle-twin');
    expect(stateOf(one, 'loop')).toBe('holds agrees');
    expect(mismatchOf(one, 'loop')).not.toEqual(['0', '0']);
    expect(stateOf(axles('axle-silent', 'axle-silent2'), 'loop')).toBe('open not-recorded');
  });

  it('a factor of both rating and demand cancels in a load too', () => {
    const cars = (rating: string) =>
      world({
        roles: {
          engine: { torque: 'engine' },
          box: { torque: 'rating', ratio: 'ratio' },
        },
        places: ['engine', 'box'],
        checks: [
          {
            id: 'load',
            carries: ['box.torque', 'box.ratio'],
            demand: ['engine.torque', 'box.ratio'],
          },
        ],
        parts: {
          'engine-a': { torque: '300 ±5 N.m' },
          'box-a': { torque: '300 N.m', ratio: '2.0' },
          'box-b': { torque: rating, ratio: '2.0' },
        },
        cars: { car: { engine: 'engine-a', box: 'box-a' } },
      });
    const load = (rating: string) =>
      stateOf(judged(cars(rating), { put: { box: 'box-b' } }), 'load');
    expect(load('310 ±5 N.m')).toBe('holds carries');
    expect(load('290 ±4 N.m')).toBe('fails too-weak');
    expect(load('309 ±5 N.m')).toBe('open not-precise-enough');
  });

  it('a length belongs to the piece: two pieces of one article differ', () => {
    const plan = (right: string): Sketch => ({
      roles: { bar: { length: 'length' } },
      places: ['left: bar', 'right: bar'],
      checks: [{ id: 'level', within: ['left.length', right], tolerance: '0.5 mm' }],
      parts: { 'bar-a': { length: '100 ±1 mm' }, 'bar-b': { length: '90 mm' } },
      cars: { car: { left: 'bar-b', right: 'bar-b' } },
    });
    const put = { left: 'bar-a', right: 'bar-a' };
    expect(stateOf(judged(world(plan('right.length')), { put }), 'level')).toBe(
      'open not-precise-enough',
    );
    expect(stateOf(judged(world(plan('left.length')), { put }), 'level')).toBe('holds clears');
  });
});

describe('C2 a place named twice is one unknown; constants and chains are factors too', () => {
  const lengths = (terms: Sketch['terms'], checks: readonly unknown[]) =>
    judged(
      world({
        roles: { bar: { length: 'length' }, gear: { ratio: 'ratio', coupling: 'code' } },
        places: ['bar', 'gear', 'twin: gear'],
        terms: terms ?? {},
        checks,
        parts: {
          'bar-a': { length: '100 ±10 mm' },
          'gear-a': { ratio: '2.0', coupling: 'locked' },
          'gear-b': { ratio: '4/1', coupling: 'locked' },
          'gear-c': { ratio: '2/1', coupling: 'locked' },
        },
        cars: { car: {} },
      }),
      { put: { bar: 'bar-a', gear: 'gear-a', twin: 'gear-b' } },
    );

  it('twice a length is the sum of it and itself, to the last bit', () => {
    const one = lengths({}, [
      {
        id: 'double',
        within: [{ sum: ['bar.length', 'bar.length'] }, ['2', 'bar.length']],
        tolerance: '0 mm',
      },
    ]);
    expect(stateOf(one, 'double')).toBe('holds clears');
  });

  it('a ratio squared is compared as a square', () => {
    const one = lengths({ squared: ['gear.ratio', 'gear.ratio'], straight: ['gear.ratio', '2'] }, [
      { id: 'square', agree: ['squared', 'straight'], coupling: 'gear.coupling' },
      {
        id: 'room',
        'at-least': [
          ['gear.ratio', 'gear.ratio'],
          ['gear.ratio', '1.95'],
        ],
      },
    ]);
    // 2 over 1.95 to 2.05: not 2.05 * 1.95 mixed.
    expect(mismatchOf(one, 'square')).toEqual(['-100/41', '100/39']);
  });

  it('a square against a multiple of its root is decided wherever the root alone decides', () => {
    const one = lengths({}, [
      {
        id: 'room',
        'at-least': [
          ['gear.ratio', 'gear.ratio'],
          ['gear.ratio', '1.95'],
        ],
      },
    ]);
    // 2.0 stands for 1.95 and more, so its square is 1.95 times itself and more.
    expect(stateOf(one, 'room')).toBe('holds clears');
  });

  it('a constant is a factor', () => {
    const one = lengths({ half: ['twin.ratio', '1/2'], two: ['2/1'] }, [
      { id: 'halved', agree: ['half', 'two'], coupling: 'gear.coupling' },
    ]);
    expect(mismatchOf(one, 'halved')).toEqual(['0', '0']);
  });

  it('a chain may name a chain, and what cancels in it cancels', () => {
    const one = lengths(
      { inner: ['gear.ratio', 'twin.ratio'], outer: ['inner', '1/4'], plain: ['gear.ratio'] },
      [{ id: 'nested', agree: ['outer', 'plain'], coupling: 'gear.coupling' }],
    );
    expect(mismatchOf(one, 'nested')).toEqual(['0', '0']);
  });

  it('a chain that names itself, at once or through others, is a fault', () => {
    const faults = (terms: Sketch['terms']) =>
      faultsOf({
        roles: { gear: { ratio: 'ratio' } },
        places: ['gear'],
        terms: terms ?? {},
        parts: {},
        cars: {},
      }).length;
    expect(faults({ a: ['gear.ratio', '2'] })).toBe(0);
    expect(faults({ a: ['a', 'gear.ratio'] })).toBeGreaterThan(0);
    expect(faults({ a: ['b', 'gear.ratio'], b: ['a', '2'] })).toBeGreaterThan(0);
  });
});

describe('C7 the sense of rotation is a check of its own, never part of the ratio', () => {
  const plan: Sketch = {
    roles: {
      box: { ratio: 'ratio', sense: 'code', coupling: 'code' },
      axle: { ratio: 'ratio', sense: 'code' },
    },
    places: ['box', 'front: axle', 'rear: axle'],
    checks: [
      { id: 'loop', agree: [['front.ratio'], ['rear.ratio']], coupling: 'box.coupling' },
      { id: 'sense', equal: ['front.sense', 'rear.sense'] },
    ],
    parts: {
      'box-a': { coupling: 'locked' },
      'axle-a': { ratio: '39/11', sense: 'left' },
      'axle-b': { ratio: '39/11', sense: 'right' },
      'axle-old': { ratio: '39/11', sense: 'left' },
    },
    cars: { car: { box: 'box-a', front: 'axle-old', rear: 'axle-old' } },
  };

  it('two axles of one ratio that turn apart agree in the loop and fail by their sense', () => {
    const one = judged(world(plan), { put: { front: 'axle-a', rear: 'axle-b' } });
    expect(stateOf(one, 'loop')).toMatch(/^(holds|given) /);
    expect(stateOf(one, 'sense')).toBe('fails not-equal');
  });

  it('a ratio below zero is a fault', () => {
    const parts = { ...plan.parts, 'axle-minus': { ratio: '-39/11' } };
    expect(faultsOf({ ...plan, parts })).toEqual(['out-of-range']);
  });
});
