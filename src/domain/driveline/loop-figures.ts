/**
 * How far the axles of a vehicle are out of step: what the loops of its layout come to.
 */

import { isUnrecorded } from '../check/result.js';
import type { CheckConstraint } from '../judge/constraint.js';
import { judgeMeetings } from '../judge/judge.js';
import { type Bench, type Figure, figure } from './figure.js';

export function loopFigures({ configuration, layout }: Bench): Figure[] {
  const checks = layout.checks.filter(({ primitive }) => primitive === 'agree');
  if (checks.length === 0) return [];
  const own = { ...configuration, layout: { ...layout, matings: new Map(), checks } };
  return judgeMeetings(own).flatMap((one) => (one.form === 'check' ? loopFigure(one) : []));
}

function loopFigure({ id, computed, checks, hand }: CheckConstraint): Figure[] {
  const [result] = checks;
  if (result === undefined) return [];
  const { margin, readings } = result;
  return [
    figure({
      section: 'loops',
      key: hand === null ? id : `${id}-${hand}`,
      what: { code: 'axle-mismatch', of: id },
      told: 'percent',
      value: margin?.interval ?? null,
      outcome: computed,
      aim: 'none',
      missing: computed === 'open' ? readings.filter(isUnrecorded) : [],
    }),
  ];
}
