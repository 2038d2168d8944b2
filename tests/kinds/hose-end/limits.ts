/**
 * Just inside, exactly on and just outside each limit of a hose end.
 */

import type { Expected, Fixture } from '../fixture.js';
import { held, hose, port } from './fits.js';

function row(says: string, onHose: object, onPort: object, changed: Expected): Fixture {
  const isFailing = Object.values(changed).some((verdict) => verdict !== 'holds');
  return {
    says,
    faces: [
      { ...hose, ...onHose },
      { ...port, ...onPort },
    ],
    outcome: isFailing ? 'fails' : 'holds',
    checks: { ...held, ...changed },
  };
}

const tenExactly = { 'ring-thickness': '10 ±0 mm' };

function ofRing(thickness: string, verdict: string): Fixture {
  const changed = { 'ring-thickness': verdict };
  return row(`a ring of ${thickness}`, { 'ring-thickness': thickness }, tenExactly, changed);
}

function ofBore(bore: string, verdict: string): Fixture {
  const changed = { 'ring-bore': verdict };
  return row(`a bore of ${bore}`, { 'ring-bore': bore }, { 'bolt-diameter': '10 mm' }, changed);
}

function ofFace(face: string, verdict: string): Fixture {
  const washers = { 'washer-outer': '14 ±0 mm' };
  return row(`a face of ${face}`, washers, { 'face-diameter': face }, { 'washer-face': verdict });
}

export const fixtures: readonly Fixture[] = [
  ofRing('10.499 ±0 mm', 'holds'),
  ofRing('10.5 ±0 mm', 'holds'),
  ofRing('10.501 ±0 mm', 'fails ring-thickness-differs'),
  ofRing('9.501 ±0 mm', 'holds'),
  ofRing('9.5 ±0 mm', 'holds'),
  ofRing('9.499 ±0 mm', 'fails ring-thickness-differs'),
  ofBore('10.001 ±0 mm', 'holds'),
  ofBore('10 ±0 mm', 'holds'),
  ofBore('9.999 ±0 mm', 'fails bolt-does-not-pass'),
  ofFace('14.001 ±0 mm', 'holds'),
  ofFace('14 ±0 mm', 'holds'),
  ofFace('13.999 ±0 mm', 'fails washer-overhangs'),
  row('three washers are more than enough', { washers: 3 }, {}, { 'two-washers': 'holds' }),
  {
    ...row('two rings read to the millimetre', { 'ring-thickness': '10 mm' }, {}, {}),
    faces: [
      { ...hose, 'ring-thickness': '10 mm' },
      { ...port, 'ring-thickness': '10 mm' },
    ],
    outcome: 'open',
    checks: { ...held, 'ring-thickness': 'open not-precise-enough' },
  },
];
