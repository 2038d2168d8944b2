/**
 * What is asked of the car with its engine across, and what must be answered. A `gallivet` drives
 * its front wheels; all that drives the rear ones of a `gallivet-4` is to go in. What is asked of
 * brakes, gears, clutch and single parts is in `transverse-parts.ts`.
 *
 * By hand: its power take-off turns 20/47 of the front axle's speed, its rear axle 47/20, so
 * 20/47 x 47/20 = 1 exactly. Tyres of 195/65 R 15: 381 + 253.5 = 634.5 mm.
 */

import type { CompanionInput } from '../../src/usecases/check-fit.js';
import { askFit } from './ask.js';
import type { Told } from './told.js';
import { transverseParts } from './transverse-parts.js';

type Parts = Readonly<Record<string, CompanionInput>>;

const both = (part: string): CompanionInput => ({ left: part, right: part });
const mechanical: Parts = {
  'take-off-bolt': 'bolt-m10-45',
  'prop-shaft': 'prop-gallivet',
  'rear-final-drive': 'rear-drive-47-20',
  'rear-subframe': 'subframe-4',
  'rear-half-shaft': { left: 'rear-shaft-gallivet-left', right: 'rear-shaft-gallivet-right' },
  'rear-hub': 'hub-rear-driven',
  'rear-hub-nut': 'hub-nut-24',
};
const conversion: Parts = {
  ...mechanical,
  'coupling-control': 'control-gallivet',
  'rear-loom': 'loom-gallivet',
};
const pelloryDrive: Parts = {
  'rear-final-drive': 'rear-drive-pellory',
  'rear-half-shaft': both('rear-shaft-hybrid'),
};

/** The take-off with the whole conversion, some of it changed. */
function converted(changed: Parts, vehicle = 'gallivet') {
  return askFit(vehicle, 'take-off-20-47', { with: { ...conversion, ...changed } });
}

const driving: Readonly<Record<string, Told>> = {
  'take-off-alone': {
    ask: askFit('gallivet', 'take-off-20-47'),
    state: 'fails',
    fails: ['take-off-bolts: needed-empty', 'take-off-prop: needed-empty'],
  },
  'four-wheel-drive': {
    ask: converted({}),
    state: 'holds',
    margins: {
      'axle-match': ['0', '0'],
      // 1598 + 248 = 1846 exactly; 4 less 1 for the tape at the body, the shaft and the nose.
      'prop-span': ['1', '7'],
    },
    cautions: ['four-driven-wheels', 'staked-nuts'],
    summary: 'fits',
  },
  'viscous-coupling': {
    ask: askFit('gallivet', 'take-off-20-47', {
      with: { ...mechanical, 'rear-final-drive': 'rear-drive-viscous' },
    }),
    state: 'holds',
    cautions: ['four-driven-wheels', 'viscous-and-brakes'],
  },
  'drive-of-a-pellory': {
    ask: converted(pelloryDrive),
    state: 'fails',
    fails: ['axle-match: first-too-slow'],
    // 20/47 x 41/18 = 410/423: 13/423 = 3.073... % too slow.
    margins: { 'axle-match': ['-1300/423', '-1300/423'] },
  },
  'drive-and-shafts-of-a-pellory': {
    ask: converted({ ...pelloryDrive, 'rear-half-shaft': both('rear-shaft-pellory') }),
    state: 'fails',
    fails: ['axle-match: first-too-slow', 'rear-shaft-pushed: shaft-too-long'],
    // 468 ±1 less 469 ±1 less 2.
    margins: { 'rear-shaft-pushed': ['-5', '-1'] },
  },
  'both-ends-of-a-pellory': {
    ask: askFit('gallivet', 'take-off-18-41', {
      with: { ...conversion, ...pelloryDrive, 'prop-shaft': 'prop-cross-two' },
      adapters: { 'take-off-prop': ['adapter-70-65'] },
    }),
    state: 'open',
    open: ['transaxle-take-off: evidence-too-weak'],
    // 18/41 x 41/18 = 1. 1846 - 14 - 247 = 1585; 4 less 1 for the tape, 0.5 and 0.005.
    margins: { 'axle-match': ['0', '0'] },
    order: ['1585.0 ±2.4 mm'],
    measure: ['confirm take-off.transaxle.module known mating part'],
  },
  'both-ends-of-a-pellory-without-plate': {
    ask: askFit('gallivet', 'take-off-18-41', {
      with: { ...conversion, ...pelloryDrive, 'prop-shaft': 'prop-cross-two' },
    }),
    state: 'fails',
    fails: ['take-off-prop: pcd-differs'],
    open: ['transaxle-take-off: evidence-too-weak'],
    // 70 and 65 mm, of which 0.2 may differ.
    margins: { 'take-off-prop/pcd': ['-4.8', '-4.8'] },
    measure: ['confirm take-off.transaxle.module known mating part'],
  },
  'tagged-drive': {
    ask: converted({ 'rear-final-drive': 'rear-drive-47-20-used' }),
    state: 'holds',
    // 2.35 rounded or cut off: 2.345 to below 2.36. 20/47 of that less 1.
    margins: { 'axle-match': ['-10/47', '20/47'] },
  },
  'drive-with-half-a-tag': {
    ask: converted({ 'rear-final-drive': 'rear-drive-untold' }),
    state: 'open',
    open: ['axle-match: not-precise-enough'],
    // 2.3 rounded or cut off: 2.25 to below 2.4. 45/47 and 48/47 less 1.
    margins: { 'axle-match': ['-200/47', '100/47'] },
    measure: ['look-up rear-final-drive.ratio ±0.02 count'],
  },
  'shaft-in-one-piece': {
    ask: converted({ 'prop-shaft': 'prop-cross-one' }),
    state: 'fails',
    // 1846 - 248 = 1598 ±2 spans the car; a tube of 1444 at the most does not whirl.
    fails: ['prop-shaft.length: no-common-choice'],
  },
  'old-subframe': {
    ask: converted({ 'rear-subframe': 'subframe-2' }),
    state: 'fails',
    fails: ['final-drive-subframe: needed-absent'],
  },
  'short-bolts': {
    ask: converted({ 'take-off-bolt': 'bolt-m10-35' }),
    state: 'fails',
    fails: ['take-off-bolts: weaker-than-original'],
    // 8.8 for 10.9; and 13 ±0.5 mm of thread in aluminium, where M10 wants 1.5 x 10.
    margins: {
      'take-off-bolts/strength-class': ['-2.1', '-2.1'],
      'take-off-bolts/reach-in-casting': ['-2.5', '-1.5'],
    },
  },
  'control-as-delivered': {
    ask: converted({ 'coupling-control': 'control-uncoded' }),
    state: 'fails',
    fails: ['control-brakes: another-protocol'],
  },
  'control-coded': {
    ask: converted({ 'coupling-control': 'control-uncoded+code-coupling-control' }),
    state: 'holds',
    cautions: ['workshop-signs'],
    summary: 'fits-once-signed',
  },
  'hubs-of-a-pellory': {
    ask: converted({ 'rear-hub': 'hub-rear-pellory' }),
    state: 'fails',
    fails: ['rear-hub-disc: bore-too-small', 'rear-hub-wheel: bore-too-small'],
    // 59 H8 is 59 to 59.046, 62 h7 is 61.97 to 62.
    margins: { 'rear-hub-wheel/bore': ['-3', '-2.924'] },
  },
  'hubs-of-a-pellory-turned': {
    ask: converted({ 'rear-hub': 'hub-rear-pellory+turn-rear-spigot' }),
    state: 'holds',
    cautions: ['engineer-signs'],
    summary: 'fits-once-signed',
  },
  'drive-and-hubs-of-a-pellory': {
    ask: converted({ ...pelloryDrive, 'rear-hub': 'hub-rear-pellory+turn-rear-spigot' }),
    state: 'fails',
    fails: ['axle-match: first-too-slow'],
    margins: { 'axle-match': ['-1300/423', '-1300/423'] },
    cautions: ['engineer-signs'],
  },
  'both-ends-and-hubs-of-a-pellory': {
    ask: askFit('gallivet', 'take-off-18-41', {
      with: {
        ...conversion,
        ...pelloryDrive,
        'prop-shaft': 'prop-cross-two',
        'rear-hub': 'hub-rear-pellory+turn-rear-spigot',
      },
      adapters: { 'take-off-prop': ['adapter-70-65'] },
    }),
    state: 'open',
    open: ['transaxle-take-off: evidence-too-weak'],
    order: ['1585.0 ±2.4 mm'],
    measure: ['confirm take-off.transaxle.module known mating part'],
  },
  'used-hubs': {
    ask: converted({ 'rear-hub': 'hub-rear-driven-used' }),
    state: 'open',
    open: ['rear-hub-wheel: not-precise-enough'],
    // 59 to 59.046, less 58.5 ±1 by the tape: half a millimetre either way decides.
    margins: { 'rear-hub-wheel/bore': ['-0.5', '1.546'] },
    measure: ['measure-to-decide rear-hub.wheel.spigot ±0.5 mm micrometer'],
  },
  'early-car': {
    ask: converted({}, 'gallivet-early'),
    state: 'fails',
    fails: [
      'transaxle-take-off: needed-absent',
      'take-off-flange: needed-absent',
      'cover-cast-shut: rule-needs',
    ],
  },
  'early-car-and-transaxle': {
    ask: converted({ transaxle: 'transaxle-5' }, 'gallivet-early'),
    state: 'holds',
    cautions: ['seals-behind-transaxle'],
  },
};

export const transverse = { ...driving, ...transverseParts };
