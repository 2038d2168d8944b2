/**
 * An axle loop of given totals, judged by the real judge: the totals are values of parts, the
 * chains are terms of a layout, and the mismatch is the margin of its check.
 */

import { exactText } from '../../src/domain/quantity/rational.js';
import { world } from '../rules/sketch.js';
import { found, judged, stateOf } from '../rules/world.js';

export interface Loop {
  /** Total ratios from the common point to each axle, stage by stage, as recorded. */
  readonly front: readonly string[];
  readonly rear: readonly string[];
  /** The tyre of each axle, as width in mm, aspect in per cent and rim code in inches. */
  readonly tyres?: { readonly front: Tyre; readonly rear: Tyre };
}

export type Tyre = readonly [width: number, aspect: number, rim: number];

/** State, exact ends of the mismatch in per cent, and the values of both chains. */
export function judgeLoop({ front, rear, tyres }: Loop, coupling = 'locked') {
  const places = (side: string, stages: readonly string[]) =>
    stages.map((_, index) => `${side}-${index}: stage`);
  const factors = (side: string, stages: readonly string[]) =>
    stages.map((_, index) => `${side}-${index}.ratio`);
  const fitted = (side: string, stages: readonly string[]) =>
    stages.map((_, index) => [`${side}-${index}`, `stage-${side}-${index}`] as const);
  const parts = (side: string, stages: readonly string[]) =>
    stages.map((ratio, index) => [`stage-${side}-${index}`, { ratio }] as const);
  // A greater circumference turns less for the same way: each stands with the other axle's total.
  const wheel = (side: string) => (tyres === undefined ? [] : [`${side}-tyre.free-diameter`]);
  const loop = world({
    roles: { centre: { coupling: 'code' }, stage: { ratio: 'ratio' }, tyre: TYRE },
    places: [
      'centre',
      ...places('front', front),
      ...places('rear', rear),
      'front-tyre: tyre',
      'rear-tyre: tyre',
    ],
    terms: {
      'to-front': [...factors('front', front), ...wheel('rear')],
      'to-rear': [...factors('rear', rear), ...wheel('front')],
    },
    checks: [{ id: 'loop', agree: ['to-front', 'to-rear'], coupling: 'centre.coupling' }],
    parts: {
      'centre-a': { coupling },
      ...Object.fromEntries([...parts('front', front), ...parts('rear', rear)]),
      ...(tyres === undefined
        ? {}
        : { 'tyre-front': tyreOf(tyres.front), 'tyre-rear': tyreOf(tyres.rear) }),
    },
    cars: { car: {} },
  });
  const put = {
    centre: 'centre-a',
    ...Object.fromEntries([...fitted('front', front), ...fitted('rear', rear)]),
    ...(tyres === undefined ? {} : { 'front-tyre': 'tyre-front', 'rear-tyre': 'tyre-rear' }),
  };
  const judgement = judged(loop, { put });
  const { low, high } = found(judgement, 'loop')?.checks[0]?.margin?.interval ?? {};
  if (low == null || high == null) throw new Error('the loop has a mismatch with two ends');
  return {
    state: stateOf(judgement, 'loop'),
    percent: [exactText(low), exactText(high)] as const,
    decimal: [low.valueOf(), high.valueOf()] as const,
  };
}

/** Free diameter in mm: 25.4 times the rim code and twice the section height. */
const TYRE = {
  width: 'count',
  aspect: 'count',
  rim: 'count',
  'free-diameter': {
    term: {
      sum: [
        ['rim', '25.4'],
        ['width', 'aspect', '2', '1/100'],
      ],
    },
  },
};

function tyreOf([width, aspect, rim]: Tyre) {
  return { width, aspect, rim };
}

/** As named in the axle loop: which axle is overdriven. */
export function senseOf(percent: number): 'front_slower' | 'front_faster' | 'equal' {
  if (percent === 0) return 'equal';
  return percent < 0 ? 'front_slower' : 'front_faster';
}
