/**
 * How far the two axles of a loop may differ, by coupling, and what a part may be loaded with.
 */

import { describe, expect, it } from 'vitest';
import { type Sketch, world } from './sketch.js';
import { factsOf, found, judged, stateOf } from './world.js';

/**
 * The front total is 1, the rear total is the number given: the mismatch is that number less 1,
 * with its ends as written.
 */
function loop(rear: string, coupling: string | null, more: Partial<Sketch> = {}) {
  return world({
    roles: { box: { coupling: 'code' }, axle: { ratio: 'ratio' } },
    places: ['box', 'axle'],
    checks: [{ id: 'loop', agree: [['1'], ['axle.ratio']], coupling: 'box.coupling' }],
    parts: {
      'box-a': coupling === null ? {} : { coupling },
      'axle-a': { ratio: '2/1' },
      'axle-b': { ratio: rear },
    },
    cars: { car: { box: 'box-a', axle: 'axle-a' } },
    ...more,
  });
}

/** State and reason, then the caution that a loop passes with. */
function bandOf(rear: string, coupling: string | null, use?: 'road' | 'off-road', more = {}) {
  const scene = { put: { axle: 'axle-b' }, ...(use === undefined ? {} : { use }) };
  const one = judged(loop(rear, coupling, more), scene);
  const caution = found(one, 'loop')?.checks[0]?.caution ?? null;
  return caution === null ? stateOf(one, 'loop') : `${stateOf(one, 'loop')}, ${caution}`;
}

describe('C5 a loop holds, is open or fails by where its mismatch lies in the bands', () => {
  it.each(['locked', 'part-time', 'viscous', 'clutch'])(
    '%s: 0.5 per cent passes, to 1 is a caution, to 2 is for loose ground, above fails',
    (coupling) => {
      expect(bandOf('1/1', coupling)).toBe('holds agrees');
      expect(bandOf('1005/1000', coupling)).toBe('holds agrees');
      expect(bandOf('995/1000', coupling)).toBe('holds agrees');
      expect(bandOf('10051/10000', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('101/100', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('99/100', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('10101/10000', coupling)).toBe('holds agrees, off-road-only');
      expect(bandOf('102/100', coupling)).toBe('holds agrees, off-road-only');
      expect(bandOf('98/100', coupling)).toBe('holds agrees, off-road-only');
      expect(bandOf('10201/10000', coupling)).toBe('fails first-too-fast');
      expect(bandOf('9799/10000', coupling)).toBe('fails first-too-slow');
    },
  );

  it.each(['open', 'planetary'])(
    '%s: 1 per cent passes, to 3 is a caution, above fails',
    (coupling) => {
      expect(bandOf('101/100', coupling)).toBe('holds agrees');
      expect(bandOf('10101/10000', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('103/100', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('97/100', coupling)).toBe('holds agrees, winds-up');
      expect(bandOf('10301/10000', coupling)).toBe('fails first-too-fast');
      expect(bandOf('9699/10000', coupling)).toBe('fails first-too-slow');
    },
  );

  it.each([
    ['within pass, on its end', '0.995 to 1.005', 'holds agrees'],
    ['across pass', '1.000 to 1.006', 'holds agrees, may-wind-up'],
    ['across pass on both sides', '0.994 to 1.006', 'holds agrees, may-wind-up'],
    ['beyond pass, within warn', '1.006 to 1.010', 'holds agrees, winds-up'],
    ['across pass and warn', '1.000 to 1.015', 'holds agrees, may-be-off-road-only'],
    ['across warn', '1.006 to 1.020', 'holds agrees, may-be-off-road-only'],
    ['beyond warn, up to refuse', '1.011 to 1.020', 'holds agrees, off-road-only'],
    ['across refuse', '1.015 to 1.021', 'open not-precise-enough'],
    ['from refuse on', '1.020 to 1.030', 'open not-precise-enough'],
    ['across all of it', '0.970 to 1.030', 'open not-precise-enough'],
    ['beyond refuse', '1.021 to 1.030', 'fails first-too-fast'],
    ['beyond refuse, the other way', '0.970 to 0.979', 'fails first-too-slow'],
  ])('locked, %s (%s): %s', (_, rear, said) => {
    expect(bandOf(rear, 'locked')).toBe(said);
  });

  it('an end that is not reached does not count', () => {
    // 1.01 stands for 1.005 up to, not including, 1.015.
    expect(bandOf('1.01', 'open')).toBe('holds agrees, may-wind-up');
    const upTo = { couplings: { tight: { pass: '0.5 %', warn: '1.5 %', refuse: '1.5 %' } } };
    expect(bandOf('1.01', 'tight', undefined, upTo)).toMatch(/^holds agrees/);
  });

  it('on the road, what is fit for loose ground only fails', () => {
    expect(bandOf('101/100', 'locked', 'road')).toBe('holds agrees, winds-up');
    expect(bandOf('10101/10000', 'locked', 'road')).toBe('fails first-too-fast');
    expect(bandOf('1.006 to 1.020', 'locked', 'road')).toBe('open not-precise-enough');
    expect(bandOf('10101/10000', 'locked', 'off-road')).toBe('holds agrees, off-road-only');
    expect(bandOf('103/100', 'open', 'road')).toBe('holds agrees, winds-up');
  });

  it('a caution does not keep the configuration from being proven', () => {
    expect(judged(loop('102/100', 'locked'), { put: { axle: 'axle-b' } }).outcome).toBe('holds');
  });

  it('a coupling that nobody recorded: what all of them agree on, else open', () => {
    expect(bandOf('1/1', null)).toBe('holds agrees');
    expect(bandOf('105/100', null)).toBe('fails first-too-fast');
    expect(bandOf('1025/1000', null)).toBe('open not-recorded');
    const one = judged(loop('1025/1000', null), { put: { axle: 'axle-b' } });
    expect(factsOf(one)).toEqual(['box.coupling to-decide ±?']);
  });

  it('nor does such a loop pass without the caution of the strictest coupling it may have', () => {
    expect(bandOf('1008/1000', null)).toMatch(/^holds agrees, (winds-up|may-wind-up)$/);
    expect(bandOf('1015/1000', null)).toMatch(/^holds agrees, .*off-road-only$/);
    const more = { couplings: { fussy: { pass: '0.1 %', warn: '3 %', refuse: '3 %' } } };
    expect(bandOf('1015/1000', null, undefined, more)).toMatch(/^holds agrees, .*off-road-only$/);
  });

  it('a coupling of the catalogue has the limits that it says', () => {
    const couplings = { couplings: { loose: { pass: '1 %', warn: '4 %', refuse: '6 %' } } };
    expect(bandOf('106/100', 'loose', undefined, couplings)).toBe('holds agrees, off-road-only');
    expect(bandOf('1061/1000', 'loose', undefined, couplings)).toBe('fails first-too-fast');
  });
});

describe('C6 a load: the least rating against the greatest demand', () => {
  function load(rating: string | null, engine: string | null) {
    return world({
      roles: {
        engine: { torque: 'engine' },
        clutch: { torque: 'rating' },
        box: { torque: 'rating' },
      },
      places: ['engine', 'clutch', 'box'],
      checks: [
        { id: 'load', carries: 'clutch.torque', demand: 'engine.torque' },
        { id: 'box-load', carries: 'box.torque', demand: ['2', 'engine.torque'] },
        { id: 'apart', 'at-least': ['box.torque', '100 N.m'] },
      ],
      parts: {
        'engine-a': engine === null ? {} : { torque: engine },
        'engine-0': { torque: '10 ±0 N.m' },
        'clutch-a': rating === null ? {} : { torque: rating },
        'clutch-0': { torque: '20 ±0 N.m' },
        'box-a': { torque: '600 ±0 N.m' },
        'box-weak': { torque: '500 ±0 N.m' },
      },
      cars: {
        car: { engine: 'engine-0', clutch: 'clutch-0', box: 'box-a' },
        fitted: { engine: 'engine-a', clutch: 'clutch-a', box: 'box-a' },
      },
    });
  }
  const stateFor = (rating: string | null, engine: string | null) =>
    stateOf(
      judged(load(rating, engine), { put: { engine: 'engine-a', clutch: 'clutch-a' } }),
      'load',
    );

  it.each([
    ['300 ±0 N.m', '300 ±0 N.m', 'holds carries'],
    ['299.9 ±0 N.m', '300 ±0 N.m', 'fails too-weak'],
    ['320 ±10 N.m', '300 ±10 N.m', 'holds carries'],
    ['320 ±11 N.m', '300 ±10 N.m', 'open not-precise-enough'],
    ['280 ±10 N.m', '300 ±10 N.m', 'open not-precise-enough'],
    ['280 ±9 N.m', '300 ±10 N.m', 'fails too-weak'],
  ])('%s against %s: %s', (rating, engine, state) => {
    expect(stateFor(rating, engine)).toBe(state);
  });

  it('a rating or a torque that nobody recorded leaves it open, never strong enough', () => {
    expect(stateFor(null, '300 N.m')).toBe('open not-recorded');
    expect(stateFor('300 N.m', null)).toBe('open not-recorded');
  });

  it('the torque of the question stands in the place of the recorded one', () => {
    const cars = load('300 ±0 N.m', '250 ±0 N.m');
    const at = (torque: string) => stateOf(judged(cars, { on: 'fitted', torque }), 'load');
    expect(at('300 N.m')).toBe('holds carries');
    expect(at('301 N.m')).toBe('fails too-weak');
    const unrecorded = load('300 ±0 N.m', null);
    expect(stateOf(judged(unrecorded, { on: 'fitted', torque: '300 N.m' }), 'load')).toBe(
      'holds carries',
    );
  });

  it('and un-gives all loads of that engine: a present clutch may have to change', () => {
    const cars = load('300 ±0 N.m', '250 ±0 N.m');
    expect(judged(cars, { on: 'fitted' }).outcome).toBe('holds');
    const one = judged(cars, { on: 'fitted', torque: '301 N.m' });
    expect(stateOf(one, 'load')).toBe('fails too-weak');
    expect(stateOf(one, 'box-load')).toBe('fails too-weak');
    expect(stateOf(one, 'apart')).toMatch(/^given /);
    expect(one.outcome).toBe('fails');
  });

  it('even where the present one is as strong as nobody knows', () => {
    const cars = load(null, '250 ±0 N.m');
    const one = judged(cars, { on: 'fitted', torque: '250 N.m' });
    expect(stateOf(one, 'load')).toBe('open not-recorded');
    expect(factsOf(one)).toEqual(['clutch.torque to-decide ±?']);
  });

  it('also where the question says what is fitted, and leaves the present alone', () => {
    const cars = load('300 ±0 N.m', '250 ±0 N.m');
    const scene = { on: 'fitted', torque: '301 N.m', said: { box: 'box-weak' } };
    expect(judged(cars, scene).outcome).toBe('fails');
    expect(stateOf(judged(cars, { ...scene, ignorePresent: true }), 'box-load')).toBe(
      'fails too-weak',
    );
  });

  it('a demand beyond both ends counts by its worst hand', () => {
    const shafts = world({
      roles: { engine: { torque: 'engine' }, shaft: { torque: 'rating' } },
      places: ['engine', 'shaft<>'],
      checks: [{ id: 'load', carries: 'shaft.torque', demand: ['1/2', 'engine.torque'] }],
      parts: {
        'engine-a': { torque: '300 ±0 N.m' },
        'engine-b': { torque: '320 ±0 N.m' },
        'shaft-weak': { torque: '155 ±0 N.m' },
        'shaft-strong': { torque: '170 ±0 N.m' },
      },
      cars: { car: { engine: 'engine-a', shaft: { left: 'shaft-strong', right: 'shaft-weak' } } },
    });
    const one = judged(shafts, { put: { engine: 'engine-b' } });
    expect(stateOf(one, 'load', 'left')).toBe('holds carries');
    expect(stateOf(one, 'load', 'right')).toBe('fails too-weak');
    expect(one.outcome).toBe('fails');
  });
});
