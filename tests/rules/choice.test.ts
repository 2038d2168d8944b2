/**
 * What one may set or order: a range, one of several sizes, one of several faces; each choice is
 * one value for all checks that use it.
 */

import { describe, expect, it } from 'vitest';
import { exactText } from '../../src/domain/quantity/rational.js';
import { flange, hole, pin, type Sketch, world } from './sketch.js';
import { fitOf, found, judged, stateOf } from './world.js';

/** A shaft made to length, between a box and a tunnel that both want something of it. */
function shaftWorld(shaft: unknown, checks: readonly unknown[], more: Sketch['parts'] = {}) {
  return world({
    roles: { shaft: { length: 'length' }, body: { span: 'length', clear: 'length' } },
    places: ['body', 'shaft'],
    checks,
    parts: {
      'body-a': { span: '1000 ±1 mm', clear: '990 ±0 mm' },
      'shaft-a': { length: '1000 mm' },
      'shaft-made': { length: shaft },
      ...more,
    },
    cars: { car: { body: 'body-a', shaft: 'shaft-a' }, silent: { shaft: 'shaft-a' } },
  });
}

const SPAN = { id: 'span', within: ['body.span', 'shaft.length'], tolerance: '5 mm' };
const CLEAR = { id: 'clear', 'at-most': ['shaft.length', 'body.clear'] };
const made = { put: { shaft: 'shaft-made' } };

function orderOf(judgement: ReturnType<typeof judged>, id: string) {
  const one = found(judgement, id);
  const orders = one?.form === 'choice' ? one.choices.map(({ order }) => order) : [];
  const [order] = orders.length > 0 ? orders : [...(one?.checks[0]?.orders.values() ?? [])];
  if (order === undefined || order === null) return order;
  const { low, high } = order;
  return [low === null ? null : exactText(low), high === null ? null : exactText(high)];
}

describe('a range that one may order holds where some value of it serves', () => {
  it('and says which values serve, whatever the rest measures', () => {
    const one = judged(shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN]), made);
    expect(stateOf(one, 'span')).toBe('holds clears');
    // 1001 - 5 to 999 + 5.
    expect(orderOf(one, 'span')).toEqual(['996', '1004']);
    expect(one.outcome).toBe('holds');
  });

  it('its ends are in it, and beyond them it fails', () => {
    const upTo = (high: string) =>
      stateOf(judged(shaftWorld({ choose: ['600 mm', high] }, [SPAN]), made), 'span');
    expect(upTo('996 mm')).toBe('holds clears');
    expect(upTo('995 mm')).toBe('open not-precise-enough');
    expect(upTo('994 mm')).toBe('open not-precise-enough');
    expect(upTo('993 mm')).toMatch(/^fails /);
  });

  it('where the rest is not recorded it is open: nobody knows whether the range reaches', () => {
    const cars = shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN]);
    expect(stateOf(judged(cars, { on: 'silent', ...made }), 'span')).toBe('open not-recorded');
  });

  it('but holds where the range reaches all that the rest may be; that is measured first', () => {
    const cars = shaftWorld(
      { choose: ['0 mm', '100 mm'] },
      [
        { id: 'long', 'at-least': [{ sum: ['body.span', 'shaft.length'] }, '1000 mm'] },
        { id: 'slack', 'at-most': [{ sum: ['body.span', 'shaft.length'] }, '1001 mm'] },
      ],
      { 'body-a': { span: '950 to 990 mm' } },
    );
    const one = judged(cars, made);
    expect(stateOf(one, 'shaft.length')).toBe('holds suits');
    expect(orderOf(one, 'shaft.length')).toBeNull();
  });

  it('one of several sizes is a choice among them', () => {
    const sizes = (...of: readonly string[]) =>
      stateOf(judged(shaftWorld({ choose: { of } }, [SPAN]), made), 'span');
    expect(sizes('900 mm', '1000 mm', '1100 mm')).toBe('holds clears');
    expect(sizes('900 mm', '995 mm')).toBe('open not-precise-enough');
    expect(sizes('900 mm', '1100 mm')).toMatch(/^fails /);
  });
});

describe('one choice serves all checks that use it, which are judged as one', () => {
  it('two that it can serve each, but not both: neither alone fails, together they do', () => {
    const one = judged(shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN, CLEAR]), made);
    const both = found(one, 'shaft.length');
    expect(stateOf(one, 'span')).not.toMatch(/^fails/);
    expect(stateOf(one, 'clear')).not.toMatch(/^fails/);
    expect(both).toMatchObject({ form: 'choice', state: 'fails', code: 'no-common-choice' });
    expect(one.outcome).toBe('fails');
  });

  it('the reason names the two that bound the empty range, among others that do not', () => {
    const loose = { id: 'short', 'at-least': ['shaft.length', '700 mm'] };
    const wide = { id: 'long', 'at-most': ['shaft.length', '1800 mm'] };
    const one = judged(
      shaftWorld({ choose: ['600 mm', '1900 mm'] }, [loose, SPAN, wide, CLEAR]),
      made,
    );
    const all = found(one, 'shaft.length');
    if (all?.form !== 'choice') throw new Error('a choice was asked for');
    expect([...all.between].sort()).toEqual(['clear', 'span']);
  });

  it('where there is a common value, that is what to order', () => {
    const roomier = { 'body-a': { span: '1000 ±1 mm', clear: '1000 ±0 mm' } };
    const one = judged(shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN, CLEAR], roomier), made);
    expect(stateOf(one, 'shaft.length')).toBe('holds suits');
    expect(orderOf(one, 'shaft.length')).toEqual(['996', '1000']);
    expect(one.outcome).toBe('holds');
  });

  it('where the common range hangs on a measure, it is open', () => {
    const close = { 'body-a': { span: '1000 ±1 mm', clear: '995 ±0 mm' } };
    const one = judged(shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN, CLEAR], close), made);
    expect(stateOf(one, 'shaft.length')).toBe('open not-precise-enough');
  });

  it('sizes that serve one check each serve none together', () => {
    const one = judged(shaftWorld({ choose: { of: ['985 mm', '1000 mm'] } }, [SPAN, CLEAR]), made);
    expect(one.outcome).toBe('fails');
  });

  it('a caution that the choice cannot suit as well does not make it fail', () => {
    const hint = { ...CLEAR, severity: 'caution' };
    const one = judged(shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN, hint]), made);
    expect(one.outcome).toBe('holds');
  });

  it('the answer of fit says what to order', () => {
    const cars = shaftWorld({ choose: ['600 mm', '1900 mm'] }, [SPAN]);
    const answer = fitOf(cars, 'shaft-made');
    expect(answer).toMatchObject({ verdict: 'fits', summary: { code: 'fits-made-to-order' } });
    expect(answer.positions[0]?.order).toMatchObject([
      { on: { position: 'shaft', parameter: 'length' }, value: { low: '996', high: '1004' } },
    ]);
  });
});

describe('a face with alternatives is a choice among them, one for all its values', () => {
  const cars = (hub: unknown, wheel: unknown) =>
    world({
      kinds: [
        {
          id: 'wheel-face',
          sides: ['hub', 'wheel'],
          parameters: {
            holes: { type: 'count' },
            pcd: { type: 'designation', unit: 'mm' },
          },
          checks: [{ equal: 'holes' }, { equal: 'pcd' }],
        },
      ],
      places: ['hub', 'wheel'],
      matings: ['hub.face = wheel.face'],
      parts: {
        'hub-a': { face: { kind: 'wheel-face', side: 'hub', holes: 5, pcd: '100 mm' } },
        'hub-b': { face: { kind: 'wheel-face', side: 'hub', ...(hub as object) } },
        'wheel-a': { face: { kind: 'wheel-face', side: 'wheel', ...(wheel as object) } },
      },
      cars: { car: { hub: 'hub-a', wheel: 'wheel-a' } },
    });
  const dual = {
    alternatives: [
      { holes: 4, pcd: '100 mm' },
      { holes: 5, pcd: '112 mm' },
    ],
  };
  const met = (wheel: unknown) => {
    const one = judged(cars(dual, wheel), { put: { hub: 'hub-b' } });
    return [one.outcome, found(one, 'hub-wheel')?.state];
  };

  it.each([[{ holes: 4, pcd: '100 mm' }], [{ holes: 5, pcd: '112 mm' }]])(
    'either of them meets: %o',
    (wheel) => {
      expect(met(wheel)[0]).toBe('holds');
    },
  );

  it('one value of the one and one of the other do not', () => {
    expect(met({ holes: 4, pcd: '112 mm' })[0]).toBe('fails');
    expect(met({ holes: 5, pcd: '100 mm' })[0]).toBe('fails');
  });

  it('two dual faces meet where one pair does', () => {
    const other = {
      alternatives: [
        { holes: 6, pcd: '100 mm' },
        { holes: 5, pcd: '112 mm' },
      ],
    };
    expect(met(other)[0]).toBe('holds');
  });

  it('one whose value nobody recorded leaves it open, if no other meets', () => {
    const silent = { alternatives: [{ holes: 4 }, { holes: 5, pcd: '112 mm' }] };
    const one = (wheel: unknown) => judged(cars(silent, wheel), { put: { hub: 'hub-b' } }).outcome;
    expect(one({ holes: 4, pcd: '100 mm' })).toBe('open');
    expect(one({ holes: 5, pcd: '112 mm' })).toBe('holds');
    expect(one({ holes: 6, pcd: '112 mm' })).toBe('fails');
  });

  it('each hand makes its own choice', () => {
    const shafts = world({
      places: ['axle', 'shaft<>', 'hub<>'],
      matings: ['axle.out = shaft.in', 'shaft.out = hub.in'],
      parts: {
        'axle-a': { out: flange('A') },
        'shaft-a': { in: flange('A'), out: flange('H') },
        'shaft-dual': {
          in: flange('A'),
          out: { kind: 'flange', alternatives: [{ pattern: 'H' }, { pattern: 'K' }] },
        },
        'hub-h': { in: flange('H') },
        'hub-k': { in: flange('K') },
      },
      cars: { car: { axle: 'axle-a', shaft: 'shaft-a', hub: { left: 'hub-h', right: 'hub-k' } } },
    });
    expect(judged(shafts, { put: { shaft: 'shaft-dual' } }).outcome).toBe('holds');
  });

  it('one face that two matings share makes one choice for both', () => {
    const shared = (lever: string) =>
      world({
        places: ['box', 'prop', 'lever'],
        matings: ['box.rear = prop.front shared', 'box.rear = lever.foot shared'],
        parts: {
          'box-a': { rear: flange('A') },
          'box-dual': {
            rear: { kind: 'flange', alternatives: [{ pattern: 'A' }, { pattern: 'B' }] },
          },
          'prop-a': { front: flange('A') },
          'lever-a': { foot: flange('A') },
          'lever-b': { foot: flange('B') },
        },
        cars: { car: { box: 'box-a', prop: 'prop-a', lever } },
      });
    const dualBox = { put: { box: 'box-dual' } };
    expect(judged(shared('lever-a'), dualBox).outcome).toBe('holds');
    expect(judged(shared('lever-b'), dualBox).outcome).toBe('fails');
  });

  it('a pin of two alternatives, each for a part of what a hole may be, serves all of it', () => {
    const pegs = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: hole('20.0 to 20.3 mm') },
        'box-b': { rear: hole('20.0 to 20.6 mm') },
        'prop-a': { front: pin('20.0 mm') },
        'prop-dual': {
          front: {
            kind: 'peg',
            side: 'pin',
            alternatives: [{ dia: '20.0 ±0 mm' }, { dia: '20.2 ±0 mm' }],
          },
        },
      },
      cars: {
        car: { box: 'box-a', prop: 'prop-a' },
        wide: { box: 'box-b', prop: 'prop-a' },
      },
    });
    expect(judged(pegs, { put: { prop: 'prop-dual' } }).outcome).toBe('holds');
    expect(judged(pegs, { on: 'wide', put: { prop: 'prop-dual' } }).outcome).toBe('open');
  });
});
