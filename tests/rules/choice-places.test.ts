/**
 * Choices wherever a value may stand: in adapters, inside alternatives, on weak evidence.
 */

import { describe, expect, it } from 'vitest';
import { by, flange, from, hole, pin, world } from './sketch.js';
import { judged, stateOf } from './world.js';

describe('a choice anywhere that a value may stand', () => {
  it('a set of an adapter, summed with the others in the row', () => {
    const cars = world({
      roles: { spacer: { length: 'length' }, body: { room: 'length' } },
      places: ['body', 'box', 'prop'],
      matings: ['box.rear = prop.front +2'],
      checks: [{ id: 'room', equal: ['box-prop.adapter.length', 'body.room'] }],
      parts: {
        'body-a': { room: '35 ±0 mm' },
        'box-a': { rear: flange('A') },
        'prop-a': { front: flange('A') },
        'prop-b': { front: flange('A') },
        'spacer-a': {
          near: flange('A'),
          far: flange('A'),
          length: { choose: { of: ['10 ±0 mm', '20 ±0 mm', '25 ±0 mm'] } },
        },
        'spacer-b': { near: flange('A'), far: flange('A'), length: '15 ±0 mm' },
        'spacer-c': { near: flange('A'), far: flange('A'), length: '12 ±0 mm' },
      },
      cars: { car: { body: 'body-a', box: 'box-a', prop: 'prop-a' } },
    });
    const at = (...row: string[]) =>
      stateOf(judged(cars, { put: { prop: 'prop-b' }, between: { 'box-prop': row } }), 'room');
    expect(at('spacer-a', 'spacer-b')).toMatch(/^holds /);
    expect(at('spacer-a', 'spacer-c')).toMatch(/^fails /);
  });

  it('a set or a range inside an alternative of a face', () => {
    const pegs = (alternatives: unknown, pinDia: string) =>
      world({
        places: ['box', 'prop'],
        matings: ['box.rear = prop.front'],
        parts: {
          'box-a': { rear: hole('20.10 ±0.01 mm') },
          'box-b': { rear: { kind: 'peg', side: 'hole', alternatives } },
          'prop-a': { front: pin(pinDia) },
        },
        cars: { car: { box: 'box-a', prop: 'prop-a' } },
      });
    const state = (alternatives: unknown, pinDia: string) =>
      stateOf(judged(pegs(alternatives, pinDia), { put: { box: 'box-b' } }), 'box-prop');
    const set = [{ dia: '10.1 ±0 mm' }, { dia: { choose: { of: ['15.1 mm', '20.1 mm'] } } }];
    expect(state(set, '20.0 ±0 mm')).toMatch(/^holds /);
    expect(state(set, '15.0 ±0 mm')).toMatch(/^holds /);
    expect(state(set, '10.0 ±0 mm')).toMatch(/^holds /);
    expect(state(set, '12.0 ±0 mm')).toMatch(/^fails /);
    const range = [{ dia: '10.1 ±0 mm' }, { dia: { choose: ['14 mm', '16 mm'] } }];
    expect(state(range, '15.5 ±0 mm')).toMatch(/^holds /);
    expect(state(range, '10.0 ±0 mm')).toMatch(/^holds /);
    expect(state(range, '17.0 ±0 mm')).toMatch(/^fails /);
  });

  it('weak evidence for a set, or for values that something is derived from, opens', () => {
    const cars = (basis: string) =>
      world({
        roles: {
          box: { gears: 'ratios', first: { term: { max: ['gears'] } }, length: 'length' },
          body: { room: 'length' },
        },
        places: ['body', 'box'],
        checks: [
          { id: 'first', 'at-most': ['box.first', '5'] },
          { id: 'room', 'at-most': ['box.length', 'body.room'] },
        ],
        parts: {
          'body-a': { room: '600 ±0 mm' },
          'box-a': { gears: ['3', '2', '1'], length: '500 ±0 mm' },
          'box-b': {
            gears: from(basis, ['4', '2', '1']),
            length: { choose: { of: ['500 mm', '550 mm'] }, ...by(basis) },
          },
        },
        cars: { car: { body: 'body-a', box: 'box-a' } },
      });
    for (const basis of ['inferred', 'reported']) {
      const one = judged(cars(basis), { put: { box: 'box-b' } });
      expect(stateOf(one, 'first')).toBe('open evidence-too-weak');
      expect(stateOf(one, 'room')).toBe('open evidence-too-weak');
    }
    const known = judged(cars('maker'), { put: { box: 'box-b' } });
    expect(known.outcome).toBe('holds');
  });

  it('what weak evidence says one may set holds nothing either', () => {
    const cars = world({
      roles: { shaft: { length: 'length' } },
      places: ['shaft'],
      checks: [{ id: 'least', 'at-least': ['shaft.length', '500 mm'] }],
      parts: {
        'shaft-a': { length: '1000 mm' },
        'shaft-b': { length: { choose: ['600 mm', '1900 mm'], ...by('inferred') } },
      },
      cars: { car: { shaft: 'shaft-a' } },
    });
    expect(stateOf(judged(cars, { put: { shaft: 'shaft-b' } }), 'least')).toBe(
      'open evidence-too-weak',
    );
  });

  it('a check whose condition hangs on what is picked is judged with the pick', () => {
    const kind = {
      id: 'disc',
      parameters: {
        pattern: { type: 'code' },
        holes: { type: 'count' },
        width: { type: 'measured', unit: 'mm' },
      },
      checks: [
        { id: 'holes', equal: 'holes' },
        { id: 'width', equal: 'width', when: { equal: 'pattern' } },
      ],
    };
    const cars = (width: string, holesOfB: number) =>
      world({
        kinds: [kind],
        places: ['box', 'prop'],
        matings: ['box.rear = prop.front'],
        parts: {
          'box-a': {},
          'box-b': {
            rear: {
              kind: 'disc',
              width: '10 ±0 mm',
              alternatives: [
                { pattern: 'A', holes: 4 },
                { pattern: 'B', holes: holesOfB },
              ],
            },
          },
          'prop-a': { front: { kind: 'disc', pattern: 'A', holes: 4, width } },
        },
        cars: { car: { box: 'box-a', prop: 'prop-a' } },
      });
    const outcome = (width: string, holesOfB: number) =>
      judged(cars(width, holesOfB), { put: { box: 'box-b' } }).outcome;
    // Pattern A suits by its holes alone; only pattern B suits by its width too.
    expect(outcome('20 ±0 mm', 4)).toBe('holds');
    expect(outcome('20 ±0 mm', 5)).toBe('fails');
    expect(outcome('10 ±0 mm', 5)).toBe('holds');
  });
});
