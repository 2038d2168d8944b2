/**
 * The check values of all calculators.
 */

import type { Vector } from '../vector.js';
import { AXLE_LOOP } from './axle-loop.js';
import { BOLTED_JOINT } from './bolted-joint.js';
import {
  BRAKE_BALANCE,
  BRAKE_FLUID,
  BRAKE_TORQUE,
  DISC_IN_RIM,
  DRUM_BRAKE_TORQUE,
  PEDAL_TRAVEL,
} from './brake.js';
import { CLUTCH_CAPACITY } from './clutch-capacity.js';
import { CLUTCH_RELEASE } from './clutch-release.js';
import { FIT } from './fit.js';
import { GEARING } from './gearing.js';
import { PLUNGE } from './plunge.js';
import { PROPELLER_SHAFT } from './propeller-shaft.js';
import { RATIO } from './ratio.js';
import { SCREW_THREAD } from './screw-thread.js';
import { SHAFT } from './shaft.js';
import { SPEEDOMETER } from './speedometer.js';
import { SPLINE } from './spline.js';
import { TRACTION } from './traction.js';
import { TYRE } from './tyre.js';
import { UNIVERSAL_JOINT } from './universal-joint.js';
import { VIN } from './vin.js';
import { WEAKEST_LINK } from './weakest-link.js';
import { PITCH_CIRCLE, WHEEL, WHEEL_CENTRING } from './wheel.js';

export const VECTORS: readonly Vector[] = [
  TRACTION,
  WEAKEST_LINK,
  CLUTCH_CAPACITY,
  CLUTCH_RELEASE,
  SPLINE,
  SHAFT,
  PROPELLER_SHAFT,
  UNIVERSAL_JOINT,
  PLUNGE,
  RATIO,
  GEARING,
  AXLE_LOOP,
  SPEEDOMETER,
  TYRE,
  WHEEL,
  PITCH_CIRCLE,
  WHEEL_CENTRING,
  DISC_IN_RIM,
  BRAKE_TORQUE,
  DRUM_BRAKE_TORQUE,
  BRAKE_BALANCE,
  PEDAL_TRAVEL,
  BRAKE_FLUID,
  FIT,
  SCREW_THREAD,
  BOLTED_JOINT,
  VIN,
].flat();
