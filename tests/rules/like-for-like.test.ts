/**
 * What a change of article leaves as it was: a loop or a load sees values, not names.
 */

import { describe, expect, it } from 'vitest';
import { type Sketch, type World, world } from './sketch.js';
import { computedOf, fitOf, judged, stateOf } from './world.js';

const roles = {
  engine: { torque: 'engine' },
  box: { ratio: 'ratio', torque: 'rating', coupling: 'code', sense: 'code' },
  front: { ratio: 'ratio' },
  rear: { ratio: 'ratio', sense: 'code' },
};
const places = ['engine', 'box', 'front', 'rear'];
const terms = {
  'to-front': ['box.ratio', 'front.ratio'],
  'to-rear': ['rear.ratio'],
  load: ['engine.torque', 'box.ratio'],
};
const checks = [
  { id: 'loop', agree: ['to-front', 'to-rear'], coupling: 'box.coupling' },
  { id: 'load', carries: 'box.torque', demand: 'load' },
  { id: 'sense', equal: ['box.sense', 'rear.sense'] },
];

describe('A5 a chain with the same values of the same articles, or equal ones, is given', () => {
  const plan = {
    roles,
    places,
    terms,
    checks,
    parts: {
      'engine-a': { torque: '300 N.m' },
      'engine-b': { torque: '300 N.m' },
      'engine-big': { torque: '500 N.m' },
      'box-a': { ratio: '12/11', torque: '200 N.m', coupling: 'locked', sense: 'left' },
      'box-same': { ratio: '24/22', torque: '200 N.m', coupling: 'locked', sense: 'left' },
      'box-strong': { ratio: '12/11', torque: '400 N.m', coupling: 'locked', sense: 'left' },
      'box-weaker': { ratio: '12/11', torque: '190 N.m', coupling: 'locked', sense: 'left' },
      'box-free': { ratio: '12/11', torque: '200 N.m', coupling: 'open', sense: 'left' },
      'box-turned': { ratio: '12/11', torque: '200 N.m', coupling: 'locked', sense: 'right' },
      'box-other': { ratio: '10/11', torque: '200 N.m', coupling: 'locked', sense: 'left' },
      'box-right': { ratio: '1/1', torque: '400 N.m', coupling: 'locked', sense: 'left' },
      'front-a': { ratio: '3.545' },
      'front-same': { ratio: '3.545' },
      'front-silent': {},
      'rear-a': { ratio: '3.545', sense: 'left' },
      'rear-silent': { sense: 'left' },
      'rear-unread': {},
      'rear-unread2': {},
    },
    cars: {
      // As recorded, the loop is 9 per cent out and the box too weak: bad records.
      car: { engine: 'engine-a', box: 'box-a', front: 'front-a', rear: 'rear-a' },
      silent: { engine: 'engine-a', box: 'box-a', front: 'front-a', rear: 'rear-silent' },
      unread: { engine: 'engine-a', box: 'box-a', front: 'front-silent', rear: 'rear-unread' },
    },
  };
  const cars = world(plan);

  it('the records of this car deny its own loop, load: given all the same', () => {
    expect(['loop', 'load'].map((id) => computedOf(judged(cars), id))).toEqual(['fails', 'fails']);
    expect(judged(cars).outcome).toBe('holds');
  });

  it.each(['car', 'silent'])(
    '%s: another box of exactly equal ratio leaves the loop given',
    (on) => {
      expect(stateOf(judged(cars, { on, put: { box: 'box-same' } }), 'loop')).toMatch(/^given /);
    },
  );

  it('replacing a member by one of another value reopens the loop, which fails on its own', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-other' } }), 'loop')).toBe(
      'fails first-too-fast',
    );
    expect(judged(cars, { put: { box: 'box-right' } }).outcome).toBe('holds');
  });

  it('so does one whose decimal ratio merely reads the same: it may be another number', () => {
    const one = judged(cars, { on: 'silent', put: { front: 'front-same' } });
    expect(stateOf(one, 'loop')).toBe('open not-recorded');
  });

  it('and one whose ratio nobody recorded, beside one that nobody recorded either', () => {
    const one = judged(cars, { on: 'unread', put: { rear: 'rear-unread2' } });
    expect(stateOf(one, 'loop')).toBe('open not-recorded');
    expect(stateOf(one, 'sense')).toBe('open not-recorded');
  });

  it('bad records do not block a like-for-like change: then it is open', () => {
    const one = judged(cars, { put: { front: 'front-same' } });
    expect(stateOf(one, 'loop')).toBe('open fails-as-built-too');
    expect(computedOf(one, 'loop')).toBe('fails');
    expect(one.outcome).toBe('open');
  });

  it('a load too: an engine as strong as the present one, whose box is said to be too weak', () => {
    const one = judged(cars, { put: { engine: 'engine-b' } });
    expect(stateOf(one, 'load')).toBe('open fails-as-built-too');
    expect(stateOf(one, 'loop')).toMatch(/^given /);
  });

  it('but a stronger engine, or a weaker box, is not like for like', () => {
    for (const put of [{ engine: 'engine-big' }, { box: 'box-weaker' }]) {
      expect(stateOf(judged(cars, { put }), 'load')).toBe('fails too-weak');
    }
  });

  it('nor is the same failing loop under another coupling', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-free' } }), 'loop')).toBe(
      'fails first-too-slow',
    );
  });

  it('nothing is excused that failed because the question says so', () => {
    const scene = { said: { box: 'box-a' }, put: { front: 'front-same' } };
    const said = world({ ...plan, cars: { car: { ...plan.cars.car, box: 'box-right' } } });
    expect(stateOf(judged(said, scene), 'loop')).toBe('fails first-too-slow');
  });

  it('nor does an equal ratio mend a loop that fails because the question says so', () => {
    const right = { ...plan.cars.car, box: 'box-right', front: 'front-exact' };
    const parts = {
      ...plan.parts,
      'front-exact': { ratio: '3/1' },
      'front-equal': { ratio: '3/1' },
      'rear-a': { ratio: '3/1', sense: 'left' },
    };
    const said = world({ ...plan, parts, cars: { car: right } });
    expect(stateOf(judged(said, { said: { box: 'box-a' } }), 'loop')).toBe('fails first-too-slow');
    const scene = { said: { box: 'box-a' }, put: { front: 'front-equal' } };
    expect(judged(said, scene).outcome).toBe('fails');
  });

  it('a code that is the same by name is the same, another one is not', () => {
    const same = judged(cars, { put: { box: 'box-strong' } });
    expect(computedOf(same, 'sense')).toBe('holds');
    expect(stateOf(judged(cars, { put: { box: 'box-turned' } }), 'sense')).toBe('fails not-equal');
  });
});

describe('V4 a part is not refused for a fault of the present that it does not touch', () => {
  const cars = world({
    roles,
    places,
    terms,
    checks: checks.filter(({ id }) => id === 'loop'),
    parts: {
      'engine-a': { torque: '300 N.m' },
      'engine-b': { torque: '400 N.m' },
      'box-a': { ratio: '12/11', coupling: 'locked' },
      'box-same': { ratio: '12/11', coupling: 'locked' },
      'box-right': { ratio: '1/1', coupling: 'locked' },
      'box-wrong': { ratio: '10/11', coupling: 'locked' },
      'front-a': { ratio: '39/11' },
      'front-silent': {},
      'rear-a': { ratio: '39/11' },
    },
    cars: {
      failing: { engine: 'engine-a', box: 'box-a', front: 'front-a', rear: 'rear-a' },
      open: { engine: 'engine-a', box: 'box-a', front: 'front-silent', rear: 'rear-a' },
    },
  });

  it.each(['failing', 'open'])('%s loop: an engine, which is not in it, fits', (on) => {
    expect(fitOf(cars, 'engine-b', { on })).toMatchObject({ alone: 'holds', verdict: 'fits' });
  });

  it.each(['failing', 'open'])('%s loop: so does a box that changes nothing in it', (on) => {
    expect(fitOf(cars, 'box-same', { on })).toMatchObject({ alone: 'holds', verdict: 'fits' });
  });

  it('a box that does change it is judged on its own merits', () => {
    const on = 'failing';
    expect(fitOf(cars, 'box-right', { on })).toMatchObject({ alone: 'holds', verdict: 'fits' });
    expect(fitOf(cars, 'box-wrong', { on })).toMatchObject({ alone: 'fails', verdict: null });
    expect(fitOf(cars, 'box-right', { on: 'open' })).toMatchObject({
      alone: 'open',
      verdict: 'unknown',
    });
  });
});

describe('A5 like for like is what allows the same values', () => {
  const car = { pump: 'pump-a', pipe: 'pipe-a' };
  const cars = (checks: readonly unknown[], parts: Sketch['parts'] = {}) =>
    world({
      roles: { pump: { length: 'length', style: 'code' }, pipe: { length: 'length' } },
      places: ['pump', 'pipe'],
      checks,
      parts: {
        'pump-a': { length: '5 ±0 mm', style: 'a' },
        'pump-five': { length: { choose: { of: ['5 mm', '10 mm'] } }, style: 'a' },
        'pump-ten': { length: { choose: { of: ['10 mm', '5 mm'] } }, style: 'a' },
        'pump-long': { length: '6 ±0 mm', style: 'a' },
        'pump-either': { length: '5 ±0 mm', style: { choose: { of: ['a', 'b'] } } },
        'pipe-a': { length: '20 ±0 mm' },
        ...parts,
      },
      cars: { car, unread: { pump: 'pump-a' } },
    });
  const changedBy = (one: World, pump: string, on = 'car') =>
    stateOf(judged(one, { on, put: { pump } }), 'check');

  it('what there is to choose from counts, in whatever order it is written', () => {
    const one = cars([{ id: 'check', 'at-least': ['pump.length', '12 mm'] }]);
    expect(['pump-five', 'pump-ten'].map((pump) => changedBy(one, pump))).toEqual([
      'fails too-small',
      'fails too-small',
    ]);
  });

  it('and what stands beside something of which nobody recorded how long it is', () => {
    const sum = { sum: ['pump.length', 'pipe.length'] };
    const one = cars([{ id: 'check', within: ['pipe.length', sum], tolerance: '2 mm' }]);
    expect(changedBy(one, 'pump-long', 'unread')).toBe('fails too-small');
    expect(changedBy(one, 'pump-long')).toBe('fails too-small');
  });

  it('a choice that makes no difference leaves it given', () => {
    const longest = { max: ['pump.length', 'pipe.length'] };
    const one = cars([{ id: 'check', 'at-most': [longest, '12 mm'] }]);
    expect(changedBy(one, 'pump-five')).toMatch(/^given /);
  });

  it('so does one that only its condition reads, where that comes to the same', () => {
    const kept = { any: [{ 'one-of': ['pump.style', ['a', 'b']] }, { kept: 'pipe' }] };
    const one = cars([{ id: 'check', 'at-least': ['pump.length', '12 mm'], when: kept }]);
    expect(changedBy(one, 'pump-either')).toMatch(/^given /);
  });
});
