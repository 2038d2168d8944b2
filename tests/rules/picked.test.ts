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
