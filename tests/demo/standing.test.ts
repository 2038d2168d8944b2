/**
 * What the demo catalogue answers about two faces and about vehicles as they stand, and how all
 * answers read: their sentences are prose that somebody has read, kept in `golden/`.
 */

import { describe, expect, test } from 'vitest';
import { check, inState, onlyPosition } from './found.js';
import { fits, inspections, matings } from './questions.js';
import { transcript } from './transcript.js';

describe('two faces', () => {
  test('meet through a plate, not without it', () => {
    expect(matings['flanges-without-plate']().state).toBe('fails');
    const { state, mating } = matings['flanges-with-plate']();
    expect(state).toBe('holds');
    expect(mating.adapters.map(({ part }) => part)).toEqual(['adapter-70-65']);
  });

  test('meet since the works put them together, though a size is not recorded', () => {
    const { state, mating } = matings['hulvane-hub-as-built']();
    expect(state).toBe('holds');
    expect(mating).toMatchObject({ code: 'as-built', computed: 'open', builtOn: ['hulvane'] });
    const other = matings['hulvane-hub-with-another-shaft']();
    expect(other.state).toBe('open');
    expect(other.measure).toMatchObject([{ on: { interface: 'drive', parameter: 'module' } }]);
  });
});

describe('a vehicle as it stands', () => {
  test.each(['lirren-1', 'lirren-2', 'hulvane'] as const)('%s is right as built', (id) => {
    const { state, judged, measure } = inspections[`${id}-as-built`]();
    expect(state).toBe('holds');
    expect(measure).toEqual([]);
    const all = [...judged.matings, ...judged.checks, ...judged.rules];
    expect(new Set(all.map((one) => one.state))).toEqual(new Set(['given']));
    expect(all.filter(({ computed }) => computed === 'fails')).toEqual([]);
  });

  test('the hulvane is right although a module is not recorded', () => {
    const { judged } = inspections['hulvane-as-built']();
    const hubs = judged.matings.filter(({ mating }) => mating === 'rear-shaft-hub');
    expect(hubs.map(({ state, computed }) => [state, computed])).toEqual([
      ['given', 'open'],
      ['given', 'open'],
    ]);
  });

  test('with the late gearbox in, it is wrong, and the loop says by how much', () => {
    const { state, judged } = inspections['late-gearbox-is-in']();
    expect(state).toBe('fails');
    expect(check(judged, 'axle-match')).toMatchObject({ state: 'fails', code: 'first-too-fast' });
  });

  test('with a flange plate in, the shaft to order is shorter by the plate', () => {
    const { state, order } = inspections['flange-plate-is-in']();
    expect(state).toBe('holds');
    // 1374 less 14.
    expect(order).toMatchObject([{ value: { text: '1360.0 ±1.9 mm' } }]);
  });

  test('tuned to 400 N.m it is too strong for gearbox, clutch and shafts', () => {
    const { state, judged } = inspections['tuned-to-400']();
    expect(state).toBe('fails');
    expect(inState('fails', judged)).toEqual([
      'gearbox-load: too-weak',
      'clutch-load: too-weak',
      'rear-shaft-load: too-weak',
      'front-shaft-load: too-weak',
    ]);
  });

  test('a stronger clutch does not help the rest to 400 N.m', () => {
    const answer = fits['clutch-for-400']();
    expect(answer).toMatchObject({ alone: 'fails', verdict: null });
    expect(inState('fails', onlyPosition(answer))).not.toContain('clutch-load: too-weak');
    expect(inState('fails', onlyPosition(answer))).toContain('gearbox-load: too-weak');
  });
});

describe('the sentences', () => {
  test.each(Object.entries({ ...fits, ...inspections, ...matings }))('of %s', async (id, ask) => {
    await expect(transcript(ask())).toMatchFileSnapshot(`golden/${id}.txt`);
  });
});
