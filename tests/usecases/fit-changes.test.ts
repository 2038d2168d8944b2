/**
 * Does it fit, and what else is needed? The kit of the answer is the first route of the kit
 * question for the same part, byte for byte; and what is open is never said to fit.
 */

import { describe, expect, test } from 'vitest';
import type { FitAnswer } from '../../src/usecases/answer.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { type KitInput, USUAL_KIT, type WantInput } from '../../src/usecases/kit-input.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { demoDocument, libraryOf } from '../memory-store.js';
import { flange, type Sketch, world } from '../rules/sketch.js';
import { fitOf, kitsOf } from '../rules/world.js';

const demo = libraryOf(demoDocument());

const anew = {
  edition: null,
  lang: 'en',
  units: 'recorded' as const,
  facts: {},
  fitted: {},
  adapters: {},
  measured: [],
  torque: null,
  use: null,
  ignorePresent: false,
};

function ask(vehicle: string, part: string, more: Partial<FitInput> = {}): FitAnswer {
  const question = { ...anew, vehicle, part, position: null, with: {}, changes: null, ...more };
  return checkFit(demo, question);
}

function kits(vehicle: string, want: readonly WantInput[], more: Partial<KitInput> = {}) {
  return resolveKitQuestion(demo, { ...anew, ...USUAL_KIT, vehicle, want, ...more });
}

const plain = { hand: null, renew: false };

describe('of the demo catalogue', () => {
  test('the late gearbox fits with changes, and the kit is the first way of doing it', () => {
    const answer = ask('lirren-1', 'gearbox-6-late', { lang: 'de' });
    const want = [{ part: 'gearbox-6-late', position: 'gearbox', ...plain }];
    const asked = kits('lirren-1', want, { lang: 'de' });
    expect([answer.alone, answer.verdict, answer.complete]).toEqual([
      'fails',
      'fits-with-changes',
      true,
    ]);
    expect(JSON.stringify(answer.kit)).toBe(JSON.stringify(asked.routes[0]));
    expect(answer.offers).toBe(asked.offers);
    expect(answer.measure).toEqual([]);
    expect(answer.cautions).toEqual(answer.kit?.cautions);
  });

  test('a companion is wished for too, and torque and use count', () => {
    const more = { torque: '260 N.m', use: 'road' as const };
    const beside = { with: { clutch: 'clutch-late' } };
    const answer = ask('lirren-1', 'flywheel-late', { ...more, ...beside });
    const want = [
      { part: 'flywheel-late', position: 'flywheel', ...plain },
      { part: 'clutch-late', position: 'clutch', ...plain },
    ];
    expect(answer.verdict).toBe('fits-with-changes');
    expect(JSON.stringify(answer.kit)).toBe(JSON.stringify(kits('lirren-1', want, more).routes[0]));
  });

  test('what was measured counts in the kit as it does in the kit question', () => {
    const place = { hand: null, fact: null };
    const measured = [
      {
        on: {
          ...place,
          position: null,
          part: 'gearbox-6-late',
          interface: null,
          parameter: 'torque',
        },
        value: '410 N.m',
        tool: null,
      },
      {
        on: { ...place, position: 'prop-shaft', part: null, interface: null, parameter: null },
        value: 'none',
        tool: null,
      },
    ];
    const answer = ask('lirren-1', 'gearbox-6-late', { measured });
    const want = [{ part: 'gearbox-6-late', position: 'gearbox', ...plain }];
    const [first] = kits('lirren-1', want, { measured }).routes;
    expect(answer.kit).not.toBeNull();
    expect(JSON.stringify(answer.kit)).toBe(JSON.stringify(first));
    expect(answer.kit).not.toEqual(ask('lirren-1', 'gearbox-6-late').kit);
  });

  test('by a number the kit is that of the part that was found', () => {
    const named = ask('lirren-1', 'number:CBL-2G-6');
    expect(named.kit?.key).toBe(ask('lirren-1', 'gearbox-6-late').kit?.key);
  });

  test('work that somebody must sign is never said to fit just so', () => {
    const answer = ask('ordale-1', 'transfer-2');
    expect(answer.kit?.totals.signOff).toBe('workshop');
    expect(answer.summary.text).toContain('once the workshop has signed');
  });

  test('what fits as the vehicle is needs no kit', () => {
    const answer = ask('lirren-1', 'clutch-strong');
    expect([answer.verdict, answer.kit, answer.offers]).toEqual(['fits', null, null]);
  });

  test('with changes left aside nothing is looked for', () => {
    const answer = ask('lirren-1', 'gearbox-6-late', { changes: 'no' });
    expect([answer.changes, answer.verdict, answer.kit]).toEqual(['no', null, null]);
    expect(answer.summary.code).toBe('not-alone');
  });

  test('a part that goes between two others is told so, whatever is asked', () => {
    const answer = ask('lirren-1', 'adapter-70-65');
    expect([answer.verdict, answer.kit, answer.summary.code]).toEqual([null, null, 'goes-between']);
  });

  test('at several places each has a verdict of its own, and the kit is of the first', () => {
    const answer = ask('lirren-1', 'wheel-15-117');
    expect(answer.at).toEqual(['front-wheel', 'rear-wheel']);
    expect(answer.ambiguous).toBe(false);
    const want = [{ part: 'wheel-15-117', position: 'front-wheel', ...plain }];
    expect(JSON.stringify(answer.kit)).toBe(JSON.stringify(kits('lirren-1', want).routes[0]));
  });
});

/** A gearbox with a shaft behind it; the works have fitted box-c to prop-c. */
const SKETCH = {
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front +1'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'box-c': { rear: flange() },
    'box-d': { rear: flange('D') },
    'prop-a': { front: flange('A') },
    'prop-b': { front: flange('B') },
    'prop-c': { front: flange('C') },
    'prop-d': { front: flange() },
    'plate-ab': { roles: ['plate'], one: flange('A'), two: flange('B') },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a' }, sister: { box: 'box-c', prop: 'prop-c' } },
} satisfies Sketch;

const cart = world(SKETCH);

describe('of a cart', () => {
  const told = (answer: FitAnswer) => [answer.alone, answer.verdict, answer.summary.code];

  test('another shaft, or a plate between, makes it fit', () => {
    const answer = fitOf(cart, 'box-b', { changes: 'yes' });
    expect(told(answer)).toEqual(['fails', 'fits-with-changes', 'fits-with-changes']);
    expect(answer.kit?.grade).toBe('proven');
  });

  test('what is open alone stays unknown, though a change is proven: the kit says which', () => {
    const answer = fitOf(cart, 'box-c', { changes: 'yes' });
    expect(told(answer)).toEqual(['open', 'unknown', 'fits-unless-alone']);
    expect(answer.kit?.changes).toEqual(['box', 'prop']);
    // What decides whether it fits alone.
    expect(answer.measure.map(({ on }) => on.part)).toEqual(['box-c']);
  });

  test('a way that is not proven is unknown, and says what is open', () => {
    const answer = fitOf(cart, 'box-d', { changes: 'yes' });
    expect(told(answer)).toEqual(['fails', 'unknown', 'may-fit-with-changes']);
    expect(answer.kit?.grade).toBe('open');
    expect(answer.measure.map(({ on }) => on.part)).toContain('prop-d');
  });

  test('what it asks for, a question can answer: alone, and in the kit', () => {
    const read = (part: string, pattern: string) => {
      const place = { position: null, hand: null, fact: null };
      const on = {
        ...place,
        part,
        interface: part.startsWith('box') ? 'rear' : 'front',
        parameter: 'pattern',
      };
      return { measured: [{ on, value: pattern, tool: null }] };
    };
    const alone = fitOf(cart, 'box-c', { changes: 'yes', ...read('box-c', 'A') });
    expect(told(alone)).toEqual(['holds', 'fits', 'fits']);
    const changed = fitOf(cart, 'box-c', { changes: 'yes', ...read('box-c', 'B') });
    expect(told(changed)).toEqual(['fails', 'fits-with-changes', 'fits-with-changes']);
    const around = fitOf(cart, 'box-d', { changes: 'yes', ...read('prop-d', 'D') });
    expect(told(around)).toEqual(['fails', 'fits-with-changes', 'fits-with-changes']);
    const { routes } = kitsOf(cart, ['box-d'], read('prop-d', 'D'));
    expect(JSON.stringify(around.kit?.lines)).toBe(JSON.stringify(routes[0]?.lines));
  });

  test('without any way it does not fit in this edition', () => {
    const { 'prop-d': _left, ...parts } = SKETCH.parts;
    const answer = fitOf(world({ ...SKETCH, parts }), 'box-d', { changes: 'yes' });
    expect(told(answer)).toEqual(['fails', 'does-not-fit', 'does-not-fit']);
    expect([answer.complete, answer.kit]).toEqual([true, null]);
  });

  test('a search that ended early is never a verdict against it', () => {
    const answer = fitOf(cart, 'box-b', { changes: 'yes', steps: 1 });
    expect(answer.complete).toBe(false);
    expect(['unknown', 'fits-with-changes']).toContain(answer.verdict);
    const { 'prop-d': _left, ...parts } = SKETCH.parts;
    const none = fitOf(world({ ...SKETCH, parts }), 'box-d', { changes: 'yes', steps: 1 });
    expect(none.complete ? none.verdict : 'unknown').toBe(none.verdict);
  });
});
