/**
 * Reads what somebody types into a field, such as `56.1 mm` or `43/12`, by the very grammar that
 * the service reads it with: a form can say what is wrong while it is being typed.
 */

import { shownQuantity } from '../domain/quantity/format.js';
import { isFault, type NumberType, parseQuantity } from '../domain/quantity/quantity.js';
import type { UnitSystem } from '../domain/quantity/unit.js';

export type { NumberType, QuantityFaultCode } from '../domain/quantity/quantity.js';

export interface InputOptions {
  /** How exact the value is by its nature; `measured` where left out. */
  readonly type?: NumberType;
  /** Such as `length`, `torque` or `1`, which is a pure number; `length` where left out. */
  readonly dimension?: string;
  /** The tool it was read with, which may widen it, such as `caliper` or `tape`. */
  readonly tool?: string;
}

export type QuantityInput =
  | {
      readonly ok: true;
      /** As typed, with single spaces and the usual spelling of the unit: what to send. */
      readonly text: string;
      /** Everything it may be, from here on: a decimal or a fraction in `unit`. */
      readonly low: string | null;
      /** Everything it may be, up to here; equal to `low` where the value is exact. */
      readonly high: string | null;
      /** Symbol of the metric unit of both ends; empty for a pure number. */
      readonly unit: string;
    }
  | {
      readonly ok: false;
      /** Open. */
      readonly code: string;
      /** What is wrong and what would be right, in English. */
      readonly text: string;
    };

const EXACTLY: UnitSystem = 'metric';

/** Never throws. What it takes, the service takes for a value of this type and dimension. */
export function readQuantity(text: string, options: InputOptions = {}): QuantityInput {
  const { type = 'measured', dimension = 'length', tool } = options;
  const read = parseQuantity(text, { type, dimension, tool });
  if (isFault(read)) return { ok: false, code: read.code, text: read.text };
  const { low, high, unit } = shownQuantity(read.interval, read.dimension, EXACTLY);
  return { ok: true, text: read.text, low, high, unit };
}
