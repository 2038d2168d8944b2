/**
 * Every calculator, in the order in which lists show them: along the driveline, from the ratios to
 * the wheels and brakes, then what holds it together.
 */

import { axleLoop } from './axle-loop.js';
import { boltedJoint } from './bolted-joint.js';
import { brakeBalance } from './brake-balance.js';
import { brakeFluid } from './brake-fluid.js';
import { brakeTorque } from './brake-torque.js';
import type { AnyCalculation } from './calculation.js';
import { clutchCapacity } from './clutch-capacity.js';
import { clutchRelease } from './clutch-release.js';
import { discInRim } from './disc-in-rim.js';
import { drumBrakeTorque } from './drum-brake-torque.js';
import { fit } from './fit.js';
import { gearing } from './gearing.js';
import { pedalTravel } from './pedal-travel.js';
import { pitchCircle } from './pitch-circle.js';
import { planetaryCentre } from './planetary-centre.js';
import { plunge } from './plunge.js';
import { propellerShaft } from './propeller-shaft.js';
import { ratio } from './ratio.js';
import { screwThread } from './screw-thread.js';
import { shaft } from './shaft.js';
import { speedometer } from './speedometer.js';
import { spline } from './spline.js';
import { traction } from './traction.js';
import { tyre } from './tyre.js';
import { universalJoint } from './universal-joint.js';
import { vin } from './vin.js';
import { weakestLink } from './weakest-link.js';
import { wheel } from './wheel.js';
import { wheelCentring } from './wheel-centring.js';

export const CALCULATIONS: readonly AnyCalculation[] = [
  ratio,
  gearing,
  weakestLink,
  clutchCapacity,
  clutchRelease,
  spline,
  shaft,
  propellerShaft,
  universalJoint,
  plunge,
  planetaryCentre,
  axleLoop,
  speedometer,
  traction,
  tyre,
  wheel,
  pitchCircle,
  wheelCentring,
  discInRim,
  brakeTorque,
  drumBrakeTorque,
  brakeBalance,
  pedalTravel,
  brakeFluid,
  fit,
  screwThread,
  boltedJoint,
  vin,
];

export function calculationNamed(name: string): AnyCalculation | undefined {
  return CALCULATIONS.find((one) => one.name === name);
}
