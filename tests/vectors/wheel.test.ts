/**
 * Check values of wheels: on their hubs, and what another rim width and inset move. The second is
 * no computation of the kind: it is written as the terms and checks of a layout, as a catalogue
 * can write it.
 */

import { describe, expect, it } from 'vitest';
import { world } from '../rules/sketch.js';
import { found, judged } from '../rules/world.js';

describe('another rim width and inset', () => {
  // From 7 J at an inset of 45 mm to 8 J at 35 mm: half a width lies to each side of the middle.
  const change = world({
    roles: { rim: { width: 'count', inset: { type: 'designation', unit: 'mm' } } },
    places: ['old: rim', 'new: rim'],
    terms: {
      wider: [{ sum: ['new.width', ['old.width', '-1']] }, '12.7 mm'],
      outwards: { sum: ['old.inset', ['new.inset', '-1']] },
      'inner-intrusion': { sum: ['wider', ['outwards', '-1']] },
      'outer-protrusion': { sum: ['wider', 'outwards'] },
      'track-change': ['outwards', '2'],
      'scrub-change': 'outwards',
    },
    checks: ['inner-intrusion', 'outer-protrusion', 'track-change', 'scrub-change'].map((id) => ({
      id: `${id}-limit`,
      'at-most': [id, '0 mm'],
    })),
    parts: {
      'rim-7': { width: 7, inset: '45 mm' },
      'rim-8': { width: 8, inset: '35 mm' },
    },
    cars: { car: {} },
  });
  const judgement = judged(change, { put: { old: 'rim-7', new: 'rim-8' } });

  it.each([
    { of: 'inner-intrusion', expected: 2.700000000000017 },
    { of: 'outer-protrusion', expected: 22.700000000000003 },
    { of: 'track-change', expected: 20 },
    { of: 'scrub-change', expected: 10 },
  ])('wheel-05 (exact arithmetic or geometry; arithmetic): $of', ({ of, expected }) => {
    const { low, high } = found(judgement, `${of}-limit`)?.checks[0]?.left.interval ?? {};
    if (low == null || high == null) throw new Error('what the rims are is exact');
    for (const end of [low, high]) expect(Math.abs(end.valueOf() - expected)).toBeLessThan(1e-9);
  });
});

describe('a wheel on a hub', () => {
  function mount(spigot: string, bore: string) {
    const common = {
      kind: 'wheel-mount',
      holes: 5,
      pcd: '112 mm',
      seat: 'cone',
      'seat-angle': '60 deg',
    };
    const cars = world({
      places: ['hub', 'wheel'],
      matings: ['hub.wheel = wheel.hub'],
      parts: {
        'hub-a': {
          wheel: { ...common, side: 'hub', spigot, stud: '12 mm', 'stud-length': '28 mm' },
        },
        'wheel-a': {
          hub: {
            ...common,
            side: 'wheel',
            bore,
            'stud-hole': '13 mm',
            'seat-thickness': '9 mm',
          },
        },
      },
      cars: { car: {} },
    });
    const mating = found(judged(cars, { put: { hub: 'hub-a', wheel: 'wheel-a' } }), 'hub-wheel');
    return {
      state: `${mating?.state} ${mating?.code}`,
      check: (id: string) => {
        const check = mating?.checks.find((one) => one.check.id === id);
        return `${check?.outcome} ${check?.code}`;
      },
    };
  }

  it('wheel-06 (common practice, no source; from memory): passes, wants a centring ring', () => {
    const { state, check } = mount('54.1 mm', '56.1 mm');
    expect(state).toBe('holds meets');
    expect(check('bore')).toBe('holds clears');
    expect(check('centring')).toBe('fails needs-centring-ring');
  });

  it('wheel-07 (exact arithmetic or geometry; arithmetic): the bore does not pass', () => {
    const { state, check } = mount('56.1 mm', '54.1 mm');
    expect(state).toBe('fails bore-too-small');
    expect(check('bore')).toBe('fails bore-too-small');
  });
});
