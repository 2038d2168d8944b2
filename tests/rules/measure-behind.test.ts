/**
 * What is asked where more lies behind an open check than the two values that it compares: its
 * condition, the least or greatest of several, a number among a few.
 */

import { describe, expect, it } from 'vitest';
import { world } from './sketch.js';
import { factsOf, fitOf, judged, stateOf } from './world.js';

const changed = { put: { box: 'box-b' } };

describe('a check that may not apply', () => {
  /** A limit that holds for lorries only; which sort the box is, nobody has recorded. */
  const lorry = (bore: string) =>
    world({
      roles: { box: { length: 'length', sort: 'code' } },
      places: ['box'],
      checks: [
        {
          id: 'limit',
          'at-most': ['box.length', '600 mm'],
          when: { 'one-of': ['box.sort', ['lorry']] },
        },
      ],
      parts: { 'box-a': { length: '500 ±0 mm', sort: 'car' }, 'box-b': { length: bore } },
      cars: { car: { box: 'box-a' } },
    });

  it('is asked whether it applies, and no more where it would fail', () => {
    expect(factsOf(judged(lorry('700 ±1 mm'), changed))).toEqual(['box.sort to-decide ±?']);
  });

  it('is asked for its own values too where they would leave it open', () => {
    expect(factsOf(judged(lorry('600 ±10 mm'), changed))).toEqual([
      'box.sort to-decide ±?',
      'box.length to-decide ±?',
    ]);
  });
});

describe('the least or greatest of several', () => {
  const cars = (bore: unknown, more: object) =>
    world({
      roles: { box: { length: 'length', width: 'length', height: 'length' } },
      places: ['box'],
      checks: [{ id: 'room', 'at-least': [{ min: ['box.length', 'box.width'] }, 'box.height'] }],
      parts: {
        'box-a': { length: '9 mm', width: '9 mm', height: '1 mm' },
        'box-b': { length: bore, height: '500 ±0 mm', ...more },
      },
      cars: { car: { box: 'box-a' } },
    });

  it('asks for the one that nobody recorded', () => {
    expect(factsOf(judged(cars('600 ±1 mm', {}), changed))).toEqual([
      expect.stringMatching(/^box\.width to-decide /),
    ]);
  });

  it('asks for all that are too coarse, and not for what it is compared with', () => {
    const asked = factsOf(judged(cars('510 ±20 mm', { width: '510 ±20 mm' }), changed));
    expect(asked).toEqual(['box.length to-decide ±10', 'box.width to-decide ±10']);
  });
});

it('a number that must be one of a few, and nobody recorded, is asked for', () => {
  const cars = world({
    roles: { box: { gears: 'count' } },
    places: ['box'],
    checks: [{ id: 'gears', 'one-of': ['box.gears', [5, 6]] }],
    parts: { 'box-a': { gears: 5 }, 'box-b': {} },
    cars: { car: { box: 'box-a' } },
  });
  const judgement = judged(cars, changed);
  expect(stateOf(judgement, 'gears')).toBe('open not-recorded');
  expect(factsOf(judgement)).toEqual([expect.stringMatching(/^box\.gears to-decide /)]);
});

it('of several sets of facts that would do, those are asked for that are known least', () => {
  const cars = world({
    roles: { box: { nose: 'length', case: 'length', tail: 'length' } },
    places: ['box'],
    checks: [
      { id: 'length', 'at-most': [{ sum: ['box.nose', 'box.case', 'box.tail'] }, '300 mm'] },
    ],
    parts: {
      'box-a': { nose: '90 mm', case: '90 mm', tail: '90 mm' },
      'box-b': { nose: '100 ±0.2 mm', case: '100 ±0.2 mm', tail: '99.65 ±0.3 mm' },
    },
    cars: { car: { box: 'box-a' } },
  });
  // Any two of the three decide: 0.35 mm are left, and the third is known to 0.2 or 0.3.
  expect(factsOf(judged(cars, changed))).toEqual([
    expect.stringMatching(/^box\.case to-decide /),
    expect.stringMatching(/^box\.tail to-decide /),
  ]);
});

describe('a derived value', () => {
  const cars = (gears: unknown) =>
    world({
      roles: {
        box: {
          gears: 'ratios',
          'first-gear': { term: { max: 'gears' }, name: 'first gear' },
          limit: 'ratio',
        },
      },
      places: ['box'],
      checks: [{ id: 'first', 'at-most': ['box.first-gear', 'box.limit'] }],
      parts: {
        'box-a': { gears: ['3/1', '1/1'], limit: '4/1' },
        'box-b': { ...(gears === null ? {} : { gears }), limit: '4/1' },
      },
      cars: { car: { box: 'box-a' } },
    });

  it('is said by its own name', () => {
    const [view] = fitOf(cars(['5/1', '1/1']), 'box-b').positions;
    expect(view?.checks[0]?.text).toBe(
      'Too large: first gear 5 (the box “box-b”) against limit 4/1 (the box “box-b”).',
    );
  });

  it('is asked for by what it is computed from', () => {
    expect(factsOf(judged(cars(null), changed))).toEqual([
      expect.stringMatching(/^box\.gears to-decide /),
    ]);
    const [view] = fitOf(cars(null), 'box-b').positions;
    expect(view?.checks[0]?.text).toContain('Nobody has recorded the gears of');
  });
});

it('what no named tool tells so finely is measured with one that does', () => {
  const cars = world({
    kinds: [
      {
        id: 'fine',
        sides: ['pin', 'hole'],
        parameters: { dia: { type: 'measured', unit: 'mm', tool: 'caliper' } },
        checks: [{ clearance: ['hole.dia', 'pin.dia'], min: '0 mm', max: '0.04 mm' }],
      },
    ],
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: { kind: 'fine', side: 'hole', dia: '20.02 ±0 mm' } },
      'box-b': { rear: { kind: 'fine', side: 'hole', dia: '20.02 ±0.05 mm' } },
      'prop-a': { front: { kind: 'fine', side: 'pin', dia: '20 ±0 mm' } },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a' } },
  });
  expect(fitOf(cars, 'box-b').measure).toMatchObject([
    { needed: { text: '±0.02 mm' }, tool: 'micrometer' },
  ]);
});

it('what is recorded is not to be refined before it is known what stands beside it', () => {
  const cars = world({
    roles: { box: { length: 'length' }, prop: { length: 'length' } },
    places: ['box', 'prop'],
    checks: [{ id: 'span', 'at-most': [{ sum: ['box.length', 'prop.length'] }, '900 mm'] }],
    parts: { 'box-a': { length: '400 mm' }, 'box-b': { length: '401 ±1 mm' }, 'prop-a': {} },
    cars: { car: { box: 'box-a' } },
  });
  expect(factsOf(judged(cars, changed))).toEqual(['prop to-decide ±?']);
});
