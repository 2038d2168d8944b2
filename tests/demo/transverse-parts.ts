/**
 * What is asked of the car with its engine across besides driving its rear wheels: brakes, gears,
 * more torque, and one part each for one point. Its driving of four wheels is in `transverse.ts`.
 */

import { askFit } from './ask.js';
import type { Told } from './told.js';

export const transverseParts: Readonly<Record<string, Told>> = {
  'large-front-brakes': {
    ask: askFit('gallivet', 'caliper-front-300', { with: { 'front-disc': 'disc-front-300' } }),
    state: 'fails',
    fails: ['front-brake-room: fouls-rim'],
    // 172.0 ±0.05 less 171.0 ±0.05 less 3.
    margins: { 'front-brake-room': ['-2.1', '-1.9'] },
  },
  'large-front-brakes-and-wheels': {
    ask: askFit('gallivet', 'caliper-front-300', {
      with: {
        'front-disc': 'disc-front-300',
        'front-wheel': 'wheel-16-cross',
        'front-tyre': 'tyre-205-55-16-91v',
        'rear-wheel': 'wheel-16-cross',
        'rear-tyre': 'tyre-205-55-16-91v',
      },
    }),
    state: 'holds',
    // 186.0 ±0.05 less 171.0 ±0.05 less 3. In front 2290 x 125.5 = 287 395, behind
    // 1018 x 108 = 109 944: 72.3 %; the maker chose 70.5 %, and a twentieth more is 74.0 %.
    margins: { 'front-brake-room': ['11.9', '12.1'] },
    cautions: ['bleed-brakes', 'instrument-after-tyres'],
  },
  'six-gears': {
    ask: askFit('gallivet', 'transaxle-6'),
    state: 'fails',
    fails: ['transaxle-lever: gate-missing'],
    // Three gates for five gears and reverse, four for six.
    margins: { 'transaxle-lever/gates': ['-1', '-1'] },
  },
  'six-gears-and-lever': {
    ask: askFit('gallivet', 'transaxle-6', { with: { 'gear-lever': 'lever-6' } }),
    state: 'holds',
  },
  'clutch-for-240': {
    ask: askFit('gallivet', 'cover-215-strong', { torque: '240 N.m' }),
    state: 'fails',
    fails: ['transaxle-load: too-weak', 'front-shaft-load: too-weak'],
    // 240 x 38/11 x 69/17 / 2 = 1682.57 N.m for 1450 ±0.5.
    margins: { 'front-shaft-load': ['542113/629280', '180829/209760'] },
  },
  'all-for-240': {
    ask: askFit('gallivet', 'cover-215-strong', {
      torque: '240 N.m',
      with: {
        transaxle: 'transaxle-6',
        'gear-lever': 'lever-6',
        'front-half-shaft': { left: 'front-shaft-strong-left', right: 'front-shaft-strong-right' },
      },
    }),
    state: 'holds',
    // 240 x 41/12 x 71/17 / 2 = 1712.35 N.m for 1900 ±0.5.
    margins: { 'front-shaft-load': ['64583/58220', '64617/58220'] },
  },
  'nut-of-another-pitch': {
    ask: askFit('gallivet', 'hub-nut-24-2'),
    state: 'open',
    fails: ['rear-shaft-nut: needed-empty'],
    open: ['front-shaft-nut: contradicts-statement'],
    measure: [
      'confirm front-half-shaft.nut.pitch thread-pitch gauge',
      'confirm front-hub-nut.stem.pitch thread-pitch gauge',
      'confirm front-half-shaft.nut.pitch thread-pitch gauge',
    ],
  },
  'stated-clutch-disc': { ask: askFit('gallivet', 'disc-215-yarrowick'), state: 'holds' },
  'remade-half-shaft': {
    ask: askFit('gallivet', 'front-shaft-fennuld-left'),
    state: 'open',
    open: ['front-shaft-load: not-recorded'],
    measure: ['look-up front-half-shaft.torque'],
  },
  'small-tyres-in-front': {
    ask: askFit('gallivet-4', 'tyre-185-65-15-88t', { position: 'front-tyre' }),
    state: 'fails',
    fails: ['axle-match: first-too-slow', 'same-tyres: tyres-differ'],
    // 381 + 240.5 = 621.5; over 634.5 that is 13/634.5 = 2.05 % too slow.
    margins: { 'axle-match': ['-2600/1269', '-2600/1269'] },
  },
  'ring-of-44': {
    ask: askFit('gallivet-4', 'rear-ring-44'),
    state: 'fails',
    fails: ['rear-ring-sensor: teeth-differ'],
  },
  'silicone-fluid': {
    ask: askFit('gallivet', 'fluid-dot5'),
    state: 'fails',
    fails: [
      'release-fluid: never-mixed',
      'front-caliper-fluid: never-mixed',
      'rear-caliper-fluid: never-mixed',
    ],
  },
  'axle-oil-in-the-gearbox': {
    ask: askFit('gallivet', 'gear-oil-75w90-gl5'),
    state: 'fails',
    fails: ['transaxle-oil: attacks-synchronisers'],
  },
};
