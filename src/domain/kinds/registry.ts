/**
 * The one list of built-in kinds. A new kind is a file beside this one and a line here.
 */

import { ballJointTaper } from './ball-joint-taper.js';
import { bearingUnit } from './bearing-unit.js';
import { bellHousing } from './bell-housing.js';
import { boltedJoint } from './bolted-joint.js';
import { caliperMount } from './caliper-mount.js';
import { clutchCover } from './clutch-cover.js';
import { clutchDisc } from './clutch-disc.js';
import { clutchRelease } from './clutch-release.js';
import { connector } from './connector.js';
import { controlSignal } from './control-signal.js';
import { discHub } from './disc-hub.js';
import { finalDriveSet } from './final-drive-set.js';
import { flarePort } from './flare-port.js';
import { fluidGrade } from './fluid-grade.js';
import { flywheelCrank } from './flywheel-crank.js';
import { halfShaftInner } from './half-shaft-inner.js';
import { halfShaftOuter } from './half-shaft-outer.js';
import { hoseEnd } from './hose-end.js';
import { hubBearing } from './hub-bearing.js';
import { involuteSpline } from './involute-spline.js';
import type { BuiltInKind } from './kind.js';
import { mountPattern } from './mount-pattern.js';
import { parkingDrum } from './parking-drum.js';
import { pilotBearing } from './pilot-bearing.js';
import { propshaftFlange } from './propshaft-flange.js';
import { screwThread } from './screw-thread.js';
import { shiftLinkage } from './shift-linkage.js';
import { speedSignal } from './speed-signal.js';
import { starterRing } from './starter-ring.js';
import { straightSpline } from './straight-spline.js';
import { strutClevis } from './strut-clevis.js';
import { trackRodEnd } from './track-rod-end.js';
import { tyreRim } from './tyre-rim.js';
import { universalJoint } from './universal-joint.js';
import { wheelMount } from './wheel-mount.js';
import { wheelSpeedTarget } from './wheel-speed-target.js';

export const BUILT_IN_KINDS: readonly BuiltInKind[] = [
  ballJointTaper,
  bearingUnit,
  bellHousing,
  boltedJoint,
  caliperMount,
  clutchCover,
  clutchDisc,
  clutchRelease,
  connector,
  controlSignal,
  discHub,
  finalDriveSet,
  flarePort,
  fluidGrade,
  flywheelCrank,
  halfShaftInner,
  halfShaftOuter,
  hoseEnd,
  hubBearing,
  involuteSpline,
  mountPattern,
  parkingDrum,
  pilotBearing,
  propshaftFlange,
  screwThread,
  shiftLinkage,
  speedSignal,
  starterRing,
  straightSpline,
  strutClevis,
  trackRodEnd,
  tyreRim,
  universalJoint,
  wheelMount,
  wheelSpeedTarget,
];
