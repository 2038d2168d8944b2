/**
 * What is picked of several is one thing wherever it is read: in two matings, and in a condition.
 */

import { describe, expect, it } from 'vitest';
import { by, flange, from, world } from './sketch.js';
import { judged, stateOf } from './world.js';

describe('alternatives of a face of which one must meet two others', () => {
  const either = { alternatives: [{ pattern: 'A' }, { pattern: 'B' }] };
  const cars = world({
    places: ['shaft<>', 'hub'],
    matings: ['shaft.end = hub.end'],
    parts: {
      'shaft-a': { end: flange('A') },
      'shaft-b': { end: flange('B') },
      'hub-a': { end: flange('A') },
      'hub-said': { end: flange(undefined, either), evidence: { basis: 'reported' } },
    },
    cars: { car: { shaft: 'shaft-a', hub: 'hub-a' } },
  });

  it('fail, however little is known of them: a face has one pattern, whichever it is', () => {
    const shaft = { left: 'shaft-a', right: 'shaft-b' };
    const one = judged(cars, { put: { shaft, hub: 'hub-said' } });
    expect(stateOf(one, 'hub.end.pattern')).toBe('fails no-common-choice');
    expect(judged(cars, { put: { hub: 'hub-said' } }).outcome).toBe('open');
  });
});

describe('a check of a kind whose condition reads what is picked', () => {
  const kind = {
    id: 'seat',
    sides: ['foot', 'pad'],
    parameters: {
      pattern: { type: 'code' },
      size: { type: 'designation', unit: 'mm' },
    },
    checks: [
      { id: 'fill', equal: ['foot.size', 'pad.size'], when: { 'one-of': ['pad.pattern', ['a']] } },
    ],
  };
  const foot = { end: { kind: 'seat', side: 'foot', size: '8 mm' } };
  const pad = (pattern: unknown) => ({
    end: { kind: 'seat', side: 'pad', size: '5 mm', pattern: from('inferred', pattern) },
  });
  const cars = world({
    kinds: [kind],
    places: ['leg', 'base'],
    matings: ['leg.end = base.end'],
    parts: {
      'leg-a': foot,
      'leg-b': foot,
      'base-c': pad('c'),
      'base-any': {
        end: { ...pad('c').end, pattern: { choose: { of: ['a', 'c'] }, ...by('inferred') } },
      },
    },
    cars: { car: { leg: 'leg-a', base: 'base-c' } },
  });

  it('does not apply where the pick rules it out, as little as where the record does', () => {
    const holding = ['base-c', 'base-any'].map((base) =>
      stateOf(judged(cars, { put: { leg: 'leg-b', base } }), 'leg-base'),
    );
    expect(holding).toEqual(['holds meets', 'holds meets']);
  });
});

describe('one of a few numbers, of what one may set', () => {
  const kind = {
    id: 'step',
    sides: ['post', 'hole'],
    parameters: { size: { type: 'measured', unit: 'mm' }, most: { type: 'measured', unit: 'mm' } },
    checks: [
      { id: 'stock', 'one-of': ['post.size', ['5 mm', '9 mm']] },
      { id: 'room', 'at-most': ['post.size', 'hole.most'] },
    ],
  };
  const post = (size: unknown) => ({ end: { kind: 'step', side: 'post', size, most: '1 ±0 mm' } });
  const hole = (most: string) => ({
    end: { kind: 'step', side: 'hole', size: '1 ±0 mm', most: `${most} ±0 mm` },
  });
  const cars = world({
    kinds: [kind],
    places: ['leg', 'base'],
    matings: ['leg.end = base.end'],
    parts: {
      'leg-6': post('6 ±0 mm'),
      'leg-set': post({ choose: ['4 mm', '10 mm'] }),
      'leg-short': post({ choose: ['6 mm', '8 mm'] }),
      'leg-wide': post('4 to 10 mm'),
      'base-4': hole('4'),
      'base-6': hole('6'),
      'base-9': hole('9'),
    },
    cars: { car: { leg: 'leg-6', base: 'base-6' } },
  });
  const outcome = (leg: string, base: string) => judged(cars, { put: { leg, base } }).outcome;

  it('holds where one of them can be set, and holds of all else that it is set for', () => {
    expect(outcome('leg-set', 'base-6')).toBe('holds');
    expect(outcome('leg-set', 'base-9')).toBe('holds');
  });

  it('fails where none can be set, or none with all else', () => {
    expect(outcome('leg-short', 'base-9')).toBe('fails');
    // Up to 4 mm there is room for, and neither 5 nor 9.
    expect(outcome('leg-set', 'base-4')).toBe('fails');
  });

  it('is open where it is what it is, and nobody knows', () => {
    expect(outcome('leg-wide', 'base-9')).toBe('open');
  });
});
