/**
 * Just inside, exactly on and just outside each limit of a ring before its sensor.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { held, heldPoles, poleRing, poleSensor, ring, sensor } from './fits.js';

interface Limit {
  readonly says: string;
  readonly pair: readonly [InterfaceRecord, InterfaceRecord];
  readonly checks: Expected;
  readonly onRing: object;
  /** The parameter of the sensor that goes past the limit of a check. */
  readonly parameter: string;
  readonly check: string;
  readonly values: readonly (readonly [string, string])[];
}

const radial = { pair: [ring, sensor], checks: held, parameter: 'tip-circle' } as const;
const axial = { pair: [poleRing, poleSensor], checks: heldPoles } as const;

const limits: readonly Limit[] = [
  {
    ...radial,
    says: 'narrowest radial gap, 0.3 mm on each side',
    onRing: { diameter: '98 ±0 mm' },
    check: 'radial-room',
    values: [
      ['98.601', 'holds'],
      ['98.6', 'holds'],
      ['98.599', 'fails radial-gap-too-narrow'],
    ],
  },
  {
    ...radial,
    says: 'widest radial gap, 1.5 mm on each side',
    onRing: { diameter: '98 ±0 mm' },
    check: 'radial-gap',
    values: [
      ['100.999', 'holds'],
      ['101', 'holds'],
      ['101.001', 'fails radial-gap-too-wide'],
    ],
  },
  {
    ...axial,
    says: 'narrowest axial gap, 0.3 mm',
    onRing: { 'face-distance': '50 ±0 mm' },
    parameter: 'face-distance',
    check: 'axial-room',
    values: [
      ['50.301', 'holds'],
      ['50.3', 'holds'],
      ['50.299', 'fails axial-gap-too-narrow'],
    ],
  },
  {
    ...axial,
    says: 'widest axial gap, 1.5 mm',
    onRing: { 'face-distance': '50 ±0 mm' },
    parameter: 'face-distance',
    check: 'axial-gap',
    values: [
      ['51.499', 'holds'],
      ['51.5', 'holds'],
      ['51.501', 'fails axial-gap-too-wide'],
    ],
  },
  {
    ...axial,
    says: 'outer edge of the track',
    onRing: { diameter: '72 ±0 mm' },
    parameter: 'tip-circle',
    check: 'track-outside',
    values: [
      ['71.999', 'holds'],
      ['72', 'holds'],
      ['72.001', 'fails outside-the-track'],
    ],
  },
  {
    ...axial,
    says: 'inner edge of the track',
    onRing: { 'inner-diameter': '56 ±0 mm' },
    parameter: 'tip-circle',
    check: 'track-inside',
    values: [
      ['56.001', 'holds'],
      ['56', 'holds'],
      ['55.999', 'fails inside-the-track'],
    ],
  },
];

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap(({ says, pair, checks, onRing, parameter, check, values }) =>
    values.map(([value, verdict]): Fixture => {
      const [left, right] = pair;
      return {
        says: `${says}: sensor at ${value} mm`,
        faces: [
          { ...left, ...onRing },
          { ...right, [parameter]: `${value} ±0 mm` },
        ],
        outcome: verdict.split(' ')[0] as Outcome,
        checks: { ...checks, [check]: verdict },
      };
    }),
  ),
  {
    says: 'a tip circle by the steel tape cannot tell the gap',
    faces: [ring, { ...sensor, 'tip-circle': { is: '99 mm', tool: 'tape' } }],
    outcome: 'open',
    checks: { ...held, 'radial-room': 'open not-precise-enough' },
  },
];
