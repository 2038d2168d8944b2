/**
 * Asks a calculator as a door does, for tests: texts in, exact ends out.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { AnyCalculation, OneValue } from '../../../src/domain/driveline/calculation.js';
import { type GivenTexts, readGiven } from '../../../src/domain/driveline/read-given.js';
import { calculationNamed } from '../../../src/domain/driveline/registry.js';
import type { Interval } from '../../../src/domain/quantity/interval.js';

export interface AskedResult {
  readonly calculation: AnyCalculation;
  readonly warnings: readonly string[];
  /** Whether it was found at all. */
  readonly has: (output: string) => boolean;
  readonly sets: (output: string) => readonly Interval[];
  readonly set: (output: string) => Interval;
  /** Of an outcome, a code or a text. */
  readonly word: (output: string) => string;
  readonly words: (output: string) => readonly string[];
  readonly outcome: (output: string) => Outcome;
}

/** @throws where a value is refused, with what is said of it. */
export function asked(name: string, texts: GivenTexts): AskedResult {
  const calculation = calculationNamed(name);
  if (calculation === undefined) throw new Error(`there is no calculator ${name}`);
  const { given, faults } = readGiven(calculation, texts);
  if (faults.length > 0)
    throw new Error(
      JSON.stringify(faults, (_, v: unknown) => (typeof v === 'bigint' ? String(v) : v)),
    );
  const { found, warnings, faults: amiss } = calculation.calculate(given);
  if (amiss.length > 0) throw new Error(amiss.map(({ text }) => text.en).join(' '));
  const valuesOf = (output: string): readonly OneValue[] => {
    const value = found[output];
    if (value === undefined) throw new Error(`${name} has not found ${output}`);
    return [value].flat() as readonly OneValue[];
  };
  const sets = (output: string) =>
    valuesOf(output).map((one) => {
      if (typeof one === 'string') throw new Error(`${output} is no set of numbers`);
      return one;
    });
  const words = (output: string) =>
    valuesOf(output).map((one) => {
      if (typeof one !== 'string') throw new Error(`${output} is a set of numbers`);
      return one;
    });
  const only = <One>(all: readonly One[], output: string): One => {
    const [first, ...more] = all;
    if (first === undefined || more.length > 0) throw new Error(`${output} is not one value`);
    return first;
  };
  return {
    calculation,
    warnings,
    has: (output) => found[output] !== undefined,
    sets,
    set: (output) => only(sets(output), output),
    words,
    word: (output) => only(words(output), output),
    outcome: (output) => only(words(output), output) as Outcome,
  };
}

/** The middle of a set, as a float for comparisons within a tolerance. */
export function about({ low, high }: Interval): number {
  if (low === null || high === null) throw new Error('the set has no ends');
  return (low.valueOf() + high.valueOf()) / 2;
}
