/**
 * Points on a face, such as bolt holes: what is said and asked where they do not surely meet.
 */

import { describe, expect, it } from 'vitest';
import { world } from './sketch.js';
import { factsOf, fitOf, judged, stateOf } from './world.js';

const changed = { put: { box: 'box-b' } };

describe('points', () => {
  const plate = (...at: string[]) => ({ kind: 'plate', ...(at.length === 0 ? {} : { holes: at }) });
  const PLATES = {
    kinds: [
      {
        id: 'plate',
        parameters: { holes: { type: 'points', unit: 'mm', tool: 'caliper' } },
        checks: [{ id: 'holes', coincide: ['a.holes', 'b.holes'], tolerance: '0.5 mm' }],
      },
    ],
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    cars: { car: { box: 'box-a', prop: 'prop-a' } },
  };
  const plates = (...at: string[]) =>
    world({
      ...PLATES,
      parts: {
        'box-a': { rear: plate('0 ±0, 0 ±0 mm', '50 ±0, 0 ±0 mm') },
        'box-b': { rear: plate(...at) },
        'prop-a': { front: plate('0 ±0, 0 ±0 mm', '50 ±0, 0 ±0 mm') },
      },
    });

  it('that nobody recorded are asked for', () => {
    expect(factsOf(judged(plates(), changed))).toEqual(['box.rear.holes to-decide ±?']);
  });

  it('that are too coarse are asked for as finely as decides, from the coarse side alone', () => {
    const coarse = plates('50.1 ±1, 0 ±1 mm', '0 ±1, 0 ±1 mm');
    expect(stateOf(judged(coarse, changed), 'box-prop')).toBe('open not-precise-enough');
    expect(factsOf(judged(coarse, changed))).toEqual(['box.rear.holes to-decide ±0.2']);
    const fine = plates('50.1 ±0.2, 0 ±0.2 mm', '0 ±0.2, 0 ±0.2 mm');
    expect(stateOf(judged(fine, changed), 'box-prop')).toBe('holds meets');
  });

  it('that both are coarse are asked for where they are coarser than needed', () => {
    const cars = world({
      ...PLATES,
      parts: {
        'box-a': { rear: plate('0 ±0, 0 ±0 mm') },
        'box-b': { rear: plate('0 ±1, 0 ±1 mm') },
        'prop-a': { front: plate('0 ±0.01, 0 ±0.01 mm') },
      },
    });
    expect(factsOf(judged(cars, changed))).toEqual(['box.rear.holes to-decide ±0.2']);
  });

  const exactly = (mm: string) => ({ text: `${mm} mm`, low: mm, high: mm, unit: 'mm' });

  it('that are missed are said in a sentence, with how far the nearest is', () => {
    const [view] = fitOf(plates('0 ±0, 0 ±0 mm', '53 ±0, 4 ±0 mm'), 'box-b').positions;
    const [check] = view?.matings.flatMap(({ checks }) => checks) ?? [];
    expect(check?.data.odd).toEqual({
      of: 'left',
      point: { text: '53 ±0, 4 ±0 mm', x: exactly('53'), y: exactly('4') },
      // At least: the text is cut off.
      apart: { text: '5 mm', low: '5', high: null, unit: 'mm' },
    });
    expect(check?.text).toBe(
      'Holes 2 points (the box “box-b”) against 2 points (the prop “prop-a”); the one at ' +
        '53 ±0, 4 ±0 mm on the box “box-b” has none nearer than 5 mm.',
    );
  });

  it('that are known only so well are not the same because they are written alike', () => {
    const own = {
      id: 'own',
      coincide: ['box.rear.holes', 'prop.front.holes'],
      tolerance: '0.1 mm',
    };
    const cars = (at: string) =>
      world({
        ...PLATES,
        checks: [own],
        parts: {
          'box-a': { rear: plate(at) },
          'box-b': { rear: plate(at) },
          'prop-a': { front: plate('0 ±0, 0 ±0 mm') },
        },
      });
    expect(stateOf(judged(cars('0 ±1, 0 ±1 mm'), changed), 'own')).toBe('open not-precise-enough');
    expect(stateOf(judged(cars('0.2 ±0, 0 ±0 mm'), changed), 'own')).toBe('given points-apart');
  });

  it('of many alternatives are compared in seconds', { timeout: 15_000 }, () => {
    const row = (shift: number) =>
      Array.from({ length: 64 }, (_, at) => `${7 * at + shift} ±0.3, ${3 * at} ±0.3 mm`);
    const any = (shift: number) => ({
      kind: 'plate',
      alternatives: Array.from({ length: 16 }, (_, one) => ({ holes: row(shift + one / 8) })),
    });
    const cars = world({
      ...PLATES,
      parts: { 'box-a': {}, 'box-b': { rear: any(0) }, 'prop-a': { front: any(0.0625) } },
    });
    expect(fitOf(cars, 'box-b').alone).toBe('open');
  });

  describe('in alternatives, of which not all record them', () => {
    const kind = {
      id: 'plate',
      parameters: {
        name: { type: 'code', unless: ['holes'] },
        holes: { type: 'points', unit: 'mm', optional: true },
      },
      checks: [{ equal: 'name' }, { id: 'holes', coincide: ['a.holes', 'b.holes'] }],
    };
    const [here, there] = [['0 ±0, 0 ±0 mm'], ['9 ±0, 0 ±0 mm']];
    const verdict = (front: object, ...alternatives: object[]) => {
      const checks = kind.checks.map((one) => ({ ...one, ...(one.id && { tolerance: '0.5 mm' }) }));
      const cars = world({
        ...PLATES,
        kinds: [{ ...kind, checks }],
        parts: {
          'box-a': {},
          'box-b': { rear: { kind: 'plate', alternatives } },
          'prop-a': { front: { kind: 'plate', ...front } },
        },
      });
      return fitOf(cars, 'box-b').alone;
    };

    it('one that records what is wrong is not good because another is silent', () => {
      const both = { holes: here, name: 'x' };
      expect(verdict(both, { holes: here, name: 'y' }, { holes: there })).toBe('fails');
      expect(verdict(both, { name: 'y' }, { holes: there, name: 'x' })).toBe('fails');
      expect(verdict(both, { holes: there }, { name: 'x' })).toBe('holds');
      expect(verdict({ holes: here }, { holes: here }, { name: 'x' })).toBe('holds');
      expect(verdict({ holes: here }, { holes: there }, { name: 'x' })).toBe('open');
    });
  });
});
