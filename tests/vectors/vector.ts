/**
 * A check value of a calculator: what it is asked, what a source says must come out, and how near.
 * `tests/vectors/calculators.test.ts` holds each, `scripts/vectors` prints the table.
 */

import type { GivenTexts } from '../../src/domain/driveline/read-given.js';
import { about, asked } from '../domain/driveline/asked.js';

/** A number within a tolerance; or exactly a fraction, a word, or several of them. */
export type Expected =
  | { readonly near: number | readonly number[]; readonly within: number }
  | { readonly exactly: string | readonly string[] };

export interface Vector {
  readonly id: string;
  readonly calculation: string;
  readonly given: GivenTexts;
  readonly output: string;
  readonly expected: Expected;
  readonly source: string;
  /** How the figure is known. */
  readonly basis: 'read' | 'read, computed' | 'arithmetic' | 'from memory' | 'common practice';
}

/** What the calculator gives, in the form of what is expected. */
export function gotOf(vector: Vector): readonly (number | string)[] {
  const { calculation, given, output, expected } = vector;
  const result = asked(calculation, given);
  if ('near' in expected) return result.sets(output).map(about);
  const { outputs } = result.calculation;
  if (outputs[output]?.type !== 'quantity') return result.words(output);
  return result.sets(output).map(({ low, high }) => {
    const [from, to] = [low?.toFraction() ?? '…', high?.toFraction() ?? '…'];
    return from === to ? from : `${from} to ${to}`;
  });
}

export function agrees({ expected }: Vector, got: readonly (number | string)[]): boolean {
  if ('exactly' in expected) {
    const wanted = [expected.exactly].flat();
    return wanted.length === got.length && wanted.every((one, index) => one === got[index]);
  }
  const wanted = [expected.near].flat();
  return (
    wanted.length === got.length &&
    wanted.every((one, index) => Math.abs(Number(got[index]) - one) <= expected.within)
  );
}
