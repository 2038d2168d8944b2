/**
 * The questions that the demo catalogue is there to answer, one entry each, in the order in which
 * its README tells them. What the answers must be is in `answers.test.ts`.
 */

import { askFit, askInspect, askMate } from './ask.js';

/** What the six-speed gearbox wants in front of the rear axle. */
const frontHalf = {
  flywheel: 'flywheel-late',
  clutch: 'clutch-late',
  'release-bearing': 'bearing-pull',
  linkage: 'linkage-cables',
  'front-half-shaft': 'front-shaft-hybrid',
  starter: 'starter-late',
  speedometer: 'speedometer-pulses',
};

/** The whole rear end of the second series, and wheels of one pattern all round. */
const rearEnd = {
  'rear-final-drive': 'axle-late',
  'axle-bracket': 'bracket-20',
  'rear-half-shaft': 'rear-shaft-late',
  'rear-hub': 'rear-hub-late',
  'rear-wheel': 'wheel-15-117',
  'front-hub': 'front-hub-117',
  'front-wheel': 'wheel-15-117',
};

const donorAxle = { 'rear-final-drive': 'axle-hulvane' };
const madeShaft = { 'prop-shaft': 'prop-made-two' };

export const fits = {
  'late-gearbox': askFit('lirren-1', 'gearbox-6-late'),
  'late-gearbox-and-axle': askFit('lirren-1', 'gearbox-6-late', {
    with: { 'rear-final-drive': 'axle-late' },
  }),
  'late-gearbox-and-rear-end': askFit('lirren-1', 'gearbox-6-late', {
    with: { ...frontHalf, ...madeShaft, ...rearEnd },
  }),
  'late-gearbox-and-tagged-axle': askFit('lirren-1', 'gearbox-6-late', {
    with: { ...frontHalf, ...madeShaft, ...rearEnd, 'rear-final-drive': 'axle-late-used' },
  }),
  'late-gearbox-and-donor-axle': askFit('lirren-1', 'gearbox-6-late', {
    with: { ...frontHalf, ...madeShaft, ...donorAxle },
  }),
  'late-axle-alone': askFit('lirren-1', 'axle-late'),
  'rebuilt-gearbox': askFit('lirren-1', 'gearbox-5-rebuilt'),
  'used-hub': askFit('lirren-1', 'front-hub-used'),
  'made-shaft': askFit('lirren-1', 'prop-made-two-65'),
  'made-shaft-in-one-piece': askFit('lirren-1', 'prop-made-one', {
    with: { gearbox: 'gearbox-6-late', ...frontHalf, ...rearEnd },
  }),
  'gap-in-the-records': askFit('hulvane', 'prop-made-two-65'),
  'stated-clutch': askFit('lirren-1', 'clutch-strong'),
  'stated-but-measured-shaft': askFit('lirren-1', 'prop-remade'),
  'stated-but-unlikely-wheel': askFit('lirren-2', 'wheel-15-106'),
  'left-half-shaft': askFit('lirren-1', 'rear-shaft-strong-left'),
  'half-shaft-without-rating': askFit('lirren-1', 'rear-shaft-remade-left'),
  'wheel-on-dual-drilled-hub': askFit('lirren-1', 'wheel-15-117', {
    fitted: { 'rear-hub': 'rear-hub-dual' },
  }),
  'clutch-for-400': askFit('lirren-1', 'clutch-strong', { torque: '400 N.m' }),
  'gearbox-without-control-unit': askFit('lirren-2', 'gearbox-6-lock'),
  'gearbox-with-control-unit': askFit('lirren-2', 'gearbox-6-lock', {
    with: { 'centre-control': 'control-centre' },
  }),
  'gearbox-of-the-hulvane': askFit('lirren-1', 'gearbox-5-hulvane'),
  'larger-wheel': askFit('lirren-1', 'wheel-16-106'),
  'larger-wheel-and-tyre': askFit('lirren-1', 'wheel-16-106', {
    position: 'rear-wheel',
    with: { 'rear-tyre': 'tyre-205-55-16' },
  }),
  'larger-wheels-all-round': askFit('lirren-1', 'wheel-16-106', {
    position: 'rear-wheel',
    with: {
      'rear-tyre': 'tyre-205-55-16',
      'front-wheel': 'wheel-16-106',
      'front-tyre': 'tyre-205-55-16',
    },
  }),
  'wheel-on-unknown-hub': askFit('hulvane', 'wheel-15-106'),
};

export const inspections = {
  'lirren-1-as-built': askInspect('lirren-1'),
  'lirren-2-as-built': askInspect('lirren-2'),
  'hulvane-as-built': askInspect('hulvane'),
  'late-gearbox-is-in': askInspect('lirren-1', { fitted: { gearbox: 'gearbox-6-late' } }),
  'flange-plate-is-in': askInspect('lirren-1', {
    fitted: {
      gearbox: 'gearbox-6-late',
      ...frontHalf,
      ...rearEnd,
      'prop-shaft': 'prop-made-two-65',
    },
    adapters: { 'gearbox-prop': ['adapter-70-65'] },
  }),
  'two-right-half-shafts': askInspect('lirren-1', {
    fitted: {
      'rear-half-shaft': { left: 'rear-shaft-early-right', right: 'rear-shaft-early-right' },
    },
  }),
  'tuned-to-400': askInspect('lirren-1', { torque: '400 N.m' }),
};

export const matings = {
  'flanges-without-plate': askMate('gearbox-6-late.rear', 'prop-early.front'),
  'flanges-with-plate': askMate('gearbox-6-late.rear', 'prop-early.front', ['adapter-70-65']),
  'hulvane-hub-as-built': askMate('rear-shaft-hulvane.outer', 'rear-hub-hulvane.drive'),
  'hulvane-hub-with-another-shaft': askMate('rear-shaft-late.outer', 'rear-hub-hulvane.drive'),
};
