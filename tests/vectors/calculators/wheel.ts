/**
 * Check values of wheels: what another one moves, pitch circles, and centring.
 */

import type { Vector } from '../vector.js';

const GEOMETRY = { source: 'exact arithmetic or geometry', basis: 'arithmetic' } as const;
const CHORD = { calculation: 'pitch-circle', source: 'bolt-circle chord geometry' } as const;

const change = (id: string, output: string, near: number): Vector => ({
  ...GEOMETRY,
  id,
  calculation: 'wheel',
  given: { oldWidth: '7 in', oldInset: '45 mm', newWidth: '8 in', newInset: '35 mm' },
  output,
  expected: { near, within: 1e-9 },
});

const sine = (holes: number, near: number): Vector => ({
  ...CHORD,
  id: `wheel-03 (${holes} holes)`,
  given: { holes },
  output: 'sine',
  expected: { near, within: 5e-5 },
  basis: 'read',
});

const centring = (
  id: string,
  [spigot, bore]: readonly [string, string],
  [output, exactly]: readonly [string, string],
): Vector => ({
  id,
  calculation: 'wheel-centring',
  given: { spigot, bore },
  output,
  expected: { exactly },
  source: 'common practice, no source',
  basis: 'from memory',
});

export const WHEEL: readonly Vector[] = [
  change('wheel-05', 'inwards', 2.7),
  change('wheel-05 (outer)', 'outwards', 22.7),
  change('wheel-05 (track)', 'trackChange', 20),
  change('wheel-05 (scrub)', 'scrubRadiusChange', 10),
  {
    ...change('wheel-own-1', 'scrubRadiusChange', 10 - 6 * 0.2125565617),
    given: {
      oldWidth: '7 in',
      oldInset: '45 mm',
      newWidth: '8 in',
      newInset: '35 mm',
      tyreRadiusChange: '6 mm',
      kingpinInclination: '12 deg',
    },
    expected: { near: 10 - 6 * 0.2125565617, within: 1e-8 },
    source: 'table of tangents, tan 12 deg = 0.2125565617, and a drawing of the steering axis',
  },
  {
    ...change('wheel-own-2', 'innerReach', 136.6),
    source: 'half of 8 x 25.4 mm and 35 mm, by hand',
  },
  {
    ...change('wheel-own-3', 'outerReach', 66.6),
    source: 'half of 8 x 25.4 mm less 35 mm, by hand',
  },
];

export const PITCH_CIRCLE: readonly Vector[] = [
  {
    ...CHORD,
    id: 'wheel-02',
    given: { holes: 5 },
    output: 'factor',
    expected: { near: 1.7013016167040798, within: 1e-9 },
    basis: 'read, computed',
  },
  sine(3, 0.866),
  sine(4, 7071 / 10_000),
  sine(5, 0.5878),
  sine(6, 0.5),
  {
    ...CHORD,
    id: 'pitch-own-4',
    given: { holes: 5, chord: '1.76 in' },
    output: 'foundPitchCircle',
    expected: { near: 2.994 * 25.4, within: 0.0005 * 25.4 },
    basis: 'read',
  },
  {
    ...CHORD,
    id: 'pitch-own-1',
    given: { holes: 4, steps: 2, chord: '100 mm' },
    output: 'foundPitchCircle',
    expected: { exactly: '100' },
    source: 'opposite holes are a diameter apart',
    basis: 'arithmetic',
  },
  {
    ...CHORD,
    id: 'pitch-own-2',
    given: { holes: 6, pitchCircle: '139.7 mm' },
    output: 'foundChord',
    expected: { near: 69.85, within: 1e-12 },
    source: 'the side of a hexagon is the radius of its circle',
    basis: 'arithmetic',
  },
  {
    ...CHORD,
    id: 'pitch-own-3',
    given: { holes: 5, steps: 2 },
    output: 'sine',
    // sin 72 deg = sqrt(10 + 2 sqrt 5) / 4
    expected: { near: 0.9510565162951536, within: 1e-12 },
    source: 'the diagonal of a regular pentagon',
    basis: 'arithmetic',
  },
];

const LARGER = ['54.1 mm', '56.1 mm'] as const;

export const WHEEL_CENTRING: readonly Vector[] = [
  centring('wheel-06', LARGER, ['borePasses', 'holds']),
  centring('wheel-06 (hub)', LARGER, ['isHubCentric', 'fails']),
  centring('wheel-06 (ring)', LARGER, ['centring', 'ring-or-seats']),
  {
    ...centring('wheel-07', ['56.1 mm', '54.1 mm'], ['borePasses', 'fails']),
    ...GEOMETRY,
  },
  {
    ...centring('centring-own-1', LARGER, ['play', '2']),
    source: '56.1 less 54.1, by hand',
    basis: 'arithmetic',
  },
  centring('centring-own-2', ['66.6 mm', '66.7 mm'], ['centring', 'hub']),
  centring('centring-own-3', ['66.6 mm', '66.71 mm'], ['centring', 'ring-or-seats']),
];
