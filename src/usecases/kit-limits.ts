/**
 * The money and the hours of a kit question: what it may cost at most, and what an hour costs.
 */

import { moneyOf, moneyText } from '../domain/kit/money.js';
import type { Limits, Money } from '../domain/kit/question.js';
import { exactText, type Rational, rational } from '../domain/quantity/rational.js';
import type { AskedLimits } from './asked-kit.js';
import type { Faults } from './faults.js';
import type { KitLimitsInput } from './kit-input.js';
import type { Resolved } from './kit-wants.js';

/** A decimal: nobody plans a job by thirds of an hour. */
const HOURS_PATTERN = /^[0-9]{1,6}(\.[0-9]{1,4})?$/;

/** What an hour costs; null where nobody says. */
export function rateOf(text: string | null, faults: Faults): Resolved<Money, string> | null {
  return moneyAt('labourRate', text, faults);
}

export function limitsOf(input: KitLimitsInput, faults: Faults): Resolved<Limits, AskedLimits> {
  const { changedPositions, leadDays, inStock } = input;
  const cost = moneyAt('limits.cost', input.cost, faults);
  const labourHours = hoursAt('limits.labourHours', input.labourHours, faults);
  const domain: Limits = {
    cost: cost?.domain ?? null,
    changedPositions,
    labourHours,
    leadDays,
    inStock,
  };
  const asked: AskedLimits = {
    ...(cost === null ? {} : { cost: cost.asked }),
    ...(changedPositions === null ? {} : { changedPositions }),
    ...(labourHours === null ? {} : { labourHours: exactText(labourHours) }),
    ...(leadDays === null ? {} : { leadDays }),
    inStock,
  };
  return { domain, asked };
}

function moneyAt(at: string, text: string | null, faults: Faults): Resolved<Money, string> | null {
  if (text === null) return null;
  const money = moneyOf(text);
  if (money !== null) return { domain: money, asked: moneyText(money) };
  faults.add(at, 'not-a-price', {});
  return null;
}

function hoursAt(at: string, text: string | null, faults: Faults): Rational | null {
  if (text === null) return null;
  if (HOURS_PATTERN.test(text)) return rational(text);
  faults.add(at, 'not-hours', {});
  return null;
}
