/**
 * How far a tyre rolls, as somebody told it: by its designation, with the tread that is worn off,
 * or measured. One reading for all calculators that take either.
 */

import { type Interval, point } from '../quantity/interval.js';
import { ZERO } from '../quantity/rational.js';
import type { GivenFault } from './calculation.js';
import { freeDiameter, readTyre, rollingCircumference, tyreFault } from './tyre-size.js';

/** What the inputs are called, for a fault to name one. */
export interface TyreInputs {
  readonly tyre: string;
  readonly circumference: string;
  readonly wear?: string;
}

export interface ToldTyre {
  readonly tyre: string | null;
  readonly measured: Interval | null;
  readonly wear?: Interval | null;
}

/** Rolling circumference in mm; null where nothing is told. */
export function toldCircumference(
  inputs: TyreInputs,
  { tyre, measured, wear = null }: ToldTyre,
): Interval | GivenFault | null {
  if (tyre === null) {
    if (wear !== null) return wornAlone(inputs.wear ?? inputs.tyre);
    return measured;
  }
  if (measured !== null) return toldTwice(inputs.circumference);
  const size = readTyre(tyre);
  if (size === null) return tyreFault(inputs.tyre, tyre);
  const diameter = freeDiameter(size, { worn: wear ?? point(ZERO) });
  return rollingCircumference(diameter, size.construction);
}

export function isTyreFault(told: Interval | GivenFault | null): told is GivenFault {
  return told !== null && 'input' in told;
}

function toldTwice(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'Tell the designation of the tyre or what it rolls as measured, not both.',
      de: 'Größe des Reifens oder gemessenen Abrollumfang nennen, nicht beides.',
    },
  };
}

function wornAlone(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'Wear goes with the designation of the tyre; what was measured has it in it.',
      de: 'Der Verschleiß gehört zur Größe des Reifens; im gemessenen Umfang steckt er schon.',
    },
  };
}
