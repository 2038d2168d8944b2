/**
 * What to measure, look up or confirm: the fewest facts that decide what is open, and how finely.
 */

import { describe, expect, it } from 'vitest';
import { measureFor } from '../../src/domain/judge/measure.js';
import { flange, from, hole, pin, type Sketch, world } from './sketch.js';
import { factsOf, fitOf, judged, stateOf } from './world.js';

/** A hole over a pin, which may have between 0 and 0.2 mm of play. */
function pegs(bore: unknown, journal: unknown, more: Partial<Sketch> = {}) {
  return world({
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: hole('20.1 mm') },
      'box-b': { rear: hole(bore) },
      'prop-a': { front: pin(journal) },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a' } },
    ...more,
  });
}
const changed = { put: { box: 'box-b' } };
const asked = (bore: unknown, journal: unknown) => factsOf(judged(pegs(bore, journal), changed));

describe('the fewest facts that decide an open check are asked for', () => {
  it('one, where it decides whatever the other is', () => {
    expect(asked('20.10 ±0.20 mm', '20.00 ±0.05 mm')).toEqual(['box.rear.dia to-decide ±0.05']);
    expect(asked('20.10 ±0.05 mm', '20.00 ±0.20 mm')).toEqual(['prop.front.dia to-decide ±0.05']);
  });

  it('two, where one alone would not', () => {
    expect(asked('20.10 ±0.30 mm', '20.00 ±0.30 mm')).toEqual([
      'box.rear.dia to-decide ±0.05',
      'prop.front.dia to-decide ±0.05',
    ]);
  });

  it('none of what is exact, and none that something else decides already', () => {
    expect(asked('20.10 ±0.20 mm', '20.00 ±0 mm')).toEqual(['box.rear.dia to-decide ±0.1']);
    const cars = world({
      roles: { engine: { torque: 'engine', limit: 'torque' }, clutch: { torque: 'rating' } },
      places: ['engine', 'clutch'],
      checks: [
        {
          id: 'load',
          carries: 'clutch.torque',
          demand: { min: ['engine.torque', 'engine.limit'] },
        },
      ],
      parts: {
        'engine-a': { torque: '100 ±0 N.m', limit: '300 ±0 N.m' },
        'clutch-a': { torque: '400 N.m' },
        'clutch-b': { torque: '100 ±20 N.m' },
      },
      cars: { car: { engine: 'engine-a', clutch: 'clutch-a' } },
    });
    expect(factsOf(judged(cars, { put: { clutch: 'clutch-b' } }))).toEqual([
      expect.stringMatching(/^clutch\.torque to-decide /),
    ]);
  });

  it('none for what holds, fails, is given or only cautions', () => {
    expect(asked('20.10 ±0.01 mm', '20.00 ±0.01 mm')).toEqual([]);
    expect(asked('21.10 ±0.01 mm', '20.00 ±0.01 mm')).toEqual([]);
    expect(factsOf(judged(pegs('20.10 ±0.20 mm', '20.00 mm')))).toEqual([]);
    const caution = world({
      roles: { box: { length: 'length' } },
      places: ['box'],
      checks: [{ id: 'length', 'at-most': ['box.length', '600 mm'], severity: 'caution' }],
      parts: { 'box-a': { length: '500 mm' }, 'box-b': {} },
      cars: { car: { box: 'box-a' } },
    });
    expect(factsOf(judged(caution, changed))).toEqual([]);
  });

  it('a code that nobody recorded is looked up: it has no tolerance', () => {
    const cars = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: flange('A') },
        'box-b': { rear: flange() },
        'prop-a': { front: flange('A') },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    expect(factsOf(judged(cars, changed))).toEqual(['box.rear.pattern to-decide ±?']);
  });
});

describe('how finely: as far as the best estimate lies from the edge of what decides', () => {
  it('the tolerance is the next of 1, 2, 5, 10 … that is fine enough', () => {
    expect(asked('20.08 ±0.20 mm', '20.00 ±0.01 mm')).toEqual(['box.rear.dia to-decide ±0.05']);
    expect(asked('20.04 ±0.20 mm', '20.00 ±0.01 mm')).toEqual(['box.rear.dia to-decide ±0.02']);
    expect(asked('20.02 ±0.20 mm', '20.00 ±0.01 mm')).toEqual(['box.rear.dia to-decide ±0.01']);
  });

  it('a reading of that tolerance at the estimate decides, one on the edge may not', () => {
    const reading = (text: string) =>
      stateOf(judged(pegs(text, '20.00 ±0.01 mm'), changed), 'box-prop');
    expect(reading('20.04 ±0.20 mm')).toBe('open not-precise-enough');
    expect(reading('20.04 ±0.02 mm')).toBe('holds meets');
  });

  it('on the edge both ends count, and no tolerance is certain: none is named', () => {
    expect(asked('20.00 ±0.20 mm', '20.00 ±0.01 mm')).toEqual([
      'box.rear.dia to-decide ±?',
      'prop.front.dia to-decide ±?',
    ]);
  });

  it('an estimate that does not fit decides too: the tolerance at which it fails', () => {
    const cars = pegs('20.30 ±0.20 mm', '20.00 ±0.05 mm');
    expect(factsOf(judged(cars, changed))).toEqual(['box.rear.dia to-decide ±0.02']);
    const read = judged(pegs('20.30 ±0.02 mm', '20.00 ±0.05 mm'), changed);
    expect(stateOf(read, 'box-prop')).toBe('fails too-large');
  });

  it('the answer of fit says it in the unit of the trade, with the tool', () => {
    const shown = world({
      kinds: [
        {
          id: 'bore',
          sides: ['pin', 'hole'],
          parameters: { dia: { type: 'measured', unit: 'mm', tool: 'bore-gauge' } },
          checks: [{ clearance: ['hole.dia', 'pin.dia'], min: '0 mm', max: '0.2 mm' }],
        },
      ],
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: { kind: 'bore', side: 'hole', dia: '20.10 ±0.20 mm' } },
        'prop-a': { front: { kind: 'bore', side: 'pin', dia: '20.00 ±0.05 mm' } },
        'box-0': {},
      },
      cars: { car: { box: 'box-0', prop: 'prop-a' } },
    });
    expect(fitOf(shown, 'box-a').measure).toMatchObject([
      {
        on: { position: 'box', part: 'box-a', interface: 'rear', parameter: 'dia' },
        now: { low: '19.9', high: '20.3', unit: 'mm' },
        needed: { text: '±0.05 mm', low: '-0.05', high: '0.05', unit: 'mm' },
        tool: 'three-point bore gauge',
        purpose: 'to-decide',
        settles: ['box-prop'],
        helps: [],
      },
    ]);
  });
});

describe('one fact, however many places it opens', () => {
  const plan: Sketch = {
    roles: { box: { length: 'length' } },
    places: ['box', 'prop', 'lever'],
    matings: ['box.rear = prop.front', 'box.top = lever.foot'],
    parts: {
      'box-a': { rear: flange('A'), top: flange('T'), length: '500 mm' },
      'prop-a': { front: flange('A') },
      'lever-a': { foot: flange('T') },
      'lever-b': { foot: flange('T') },
    },
    cars: { car: { prop: 'prop-a', lever: 'lever-a' } },
  };

  it('what stands at a place opens all its matings, and is identified once', () => {
    const cars = world({ ...plan, cars: { car: { ...plan.cars.car, box: 'box-a' } } });
    const one = judged(cars, { put: { box: '?' } });
    expect(factsOf(one)).toEqual(['box to-decide ±?']);
    expect(measureFor(one)[0]).toMatchObject({
      touches: ['box-prop', 'box-lever'],
      settles: ['box-prop', 'box-lever'],
    });
  });

  it('also where a check of the layout reads one of its values', () => {
    const checks = [{ id: 'length', 'at-most': ['box.length', '600 mm'] }];
    const cars = world({ ...plan, checks, cars: { car: { ...plan.cars.car, box: 'box-a' } } });
    const one = judged(cars, { put: { box: '?' } });
    expect(stateOf(one, 'length')).toBe('open not-recorded');
    expect(factsOf(one)).toEqual(['box to-decide ±?']);
  });

  it('what the change does not touch is not asked for', () => {
    const one = judged(world(plan), { put: { lever: 'lever-b' } });
    expect(measureFor(one).map(({ touches }) => touches)).toEqual([['box-lever']]);
  });

  it('a length that two checks want is measured to the finer of both, and settles both', () => {
    const cars = world({
      roles: { box: { length: 'length' } },
      places: ['box'],
      checks: [
        { id: 'short', 'at-least': ['box.length', '450 mm'] },
        { id: 'long', 'at-most': ['box.length', '502 mm'] },
      ],
      parts: { 'box-a': { length: '500 mm' }, 'box-b': { length: '500 ±60 mm' } },
      cars: { car: { box: 'box-a' } },
    });
    const one = judged(cars, changed);
    expect(factsOf(one)).toEqual(['box.length to-decide ±2']);
    expect(measureFor(one)[0]?.settles).toEqual(['short', 'long']);
  });

  it('one that another constraint needs too helps there, and settles where it is alone', () => {
    const cars = world({
      roles: { box: { length: 'length' }, prop: { length: 'length' } },
      places: ['box', 'prop'],
      checks: [
        { id: 'own', 'at-most': ['box.length', '505 mm'] },
        { id: 'sum', 'at-most': [{ sum: ['box.length', 'prop.length'] }, '1010 mm'] },
      ],
      parts: {
        'box-a': { length: '400 mm' },
        'box-b': { length: '500 ±20 mm' },
        'prop-a': { length: '400 mm' },
        'prop-b': { length: '500 ±20 mm' },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    const facts = measureFor(judged(cars, { put: { box: 'box-b', prop: 'prop-b' } }));
    expect(
      facts.map(({ address, touches, settles }) => [address.position, touches, settles]),
    ).toEqual([
      ['box', ['own', 'sum'], ['own']],
      ['prop', ['sum'], []],
    ]);
  });
});

describe('what is there to confirm, and what is measured before ordering', () => {
  it('weak evidence is confirmed, a coarse measure is taken again', () => {
    expect(asked(from('inferred', '20.10 ±0.01 mm'), '20.00 ±0.01 mm')).toEqual([
      expect.stringMatching(/^box\.rear\.dia to-confirm ±/),
    ]);
    expect(asked(from('reported', '25 mm'), '20.00 ±0.01 mm')).toEqual([
      expect.stringMatching(/^box\.rear\.dia to-confirm ±/),
    ]);
  });

  it('that something may be set is confirmed too, alone or as the greatest of two', () => {
    const set = (choose: string[]) => ({ choose, evidence: { basis: 'reported' } });
    expect(asked('20.10 ±0.01 mm', set(['19.95 mm', '20.05 mm']))).toEqual([
      'prop.front.dia to-confirm ±?',
    ]);
    const cars = world({
      roles: { box: { length: 'length' }, prop: { length: 'length' } },
      places: ['box', 'prop'],
      checks: [{ id: 'room', 'at-most': [{ max: ['box.length', 'prop.length'] }, '12 mm'] }],
      parts: {
        'box-a': { length: '9 ±0 mm' },
        'prop-a': { length: '9 ±0 mm' },
        'prop-b': { length: set(['8 mm', '10 mm']) },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    expect(factsOf(judged(cars, { put: { prop: 'prop-b' } }))).toEqual([
      'prop.length to-confirm ±?',
    ]);
  });

  it('what is made to suit, but hangs on a measure, asks for that first', () => {
    const cars = world({
      roles: { body: { span: 'length' }, shaft: { length: 'length' } },
      places: ['body', 'shaft'],
      checks: [{ id: 'span', within: ['body.span', 'shaft.length'], tolerance: '1 mm' }],
      parts: {
        'body-a': { span: '1000 ±20 mm' },
        'shaft-a': { length: '1000 mm' },
        'shaft-made': { length: { choose: ['600 mm', '1900 mm'] } },
      },
      cars: { car: { body: 'body-a', shaft: 'shaft-a' } },
    });
    const one = judged(cars, { put: { shaft: 'shaft-made' } });
    expect(one.outcome).toBe('holds');
    expect(factsOf(one)).toEqual(['body.span to-order ±1']);
    const answer = fitOf(cars, 'shaft-made');
    expect(answer).toMatchObject({ verdict: 'fits', measure: [{ purpose: 'to-order' }] });
    expect(answer.positions[0]?.order).toMatchObject([{ value: null }]);
  });
});
