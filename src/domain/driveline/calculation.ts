/**
 * What a calculator is: the quantities that it takes and gives, its formulas, what they leave out,
 * where they hold and where they come from, as plain data beside one pure function.
 *
 * A number that is given without a spread is taken for exactly that number, since whoever asks
 * "what if" means it. What is written as a reading (`76 ±0.5 mm`, `2 to 3 mm`, `50 H7`) is a set of
 * values; so is the decimal of a ratio, which stands for all that rounds to it. What comes out is
 * then the set of all results. `read-given.ts` reads what is given, `registry.ts` lists them all.
 */

import type { Outcome } from '../check/state.js';
import type { Interval } from '../quantity/interval.js';
import type { Dimension } from '../quantity/unit.js';

/** Said to people, in every language that the program speaks. */
export interface Told {
  readonly en: string;
  readonly de: string;
}

/** What is asked of every input. */
interface InputShape {
  readonly name: Told;
  /** The calculation can be done without it, or does less. */
  readonly optional?: true;
  /** Several values, in order; how many at most. */
  readonly most?: number;
}

export interface QuantityInput extends InputShape {
  /** A ratio is exact as tooth counts, and a decimal of it is a rounded one. */
  readonly type: 'quantity' | 'ratio' | 'count';
  /** Of a quantity; ratios and counts are pure numbers. */
  readonly dimension?: Dimension;
  /** Values that cannot be: the function is never asked with one of them. */
  readonly above?: string;
  readonly least?: string;
  readonly greatest?: string;
  /** Outside of it a second look is worth while: a warning, never a refusal. */
  readonly usual?: readonly [string, string];
}

export interface CodeInput extends InputShape {
  readonly type: 'code';
  readonly codes: Readonly<Record<string, Told>>;
}

/** A designation such as `205/55R16` or `M12x1.25`; the calculator itself reads it. */
export interface TextInput extends InputShape {
  readonly type: 'text';
  /** What is written, for whoever has to be shown one. */
  readonly form: string;
}

export type Input = QuantityInput | CodeInput | TextInput;
export type Inputs = Readonly<Record<string, Input>>;

type OneGiven<Of extends Input> = Of extends { codes: infer Codes }
  ? keyof Codes & string
  : Of extends { type: 'text' }
    ? string
    : Interval;

type GivenAs<Of extends Input> = Of extends { most: number }
  ? readonly OneGiven<Of>[]
  : OneGiven<Of>;

/** What a calculation is asked with, by the names of its inputs; null where it is not told. */
export type Given<Of extends Inputs> = {
  readonly [Name in keyof Of]: Of[Name] extends { optional: true }
    ? GivenAs<Of[Name]> | null
    : GivenAs<Of[Name]>;
};

interface OutputShape {
  readonly name: Told;
  /** Inputs that may be left out, and then it is not found. */
  readonly needs?: readonly string[];
}

export interface QuantityOutput extends OutputShape {
  readonly type: 'quantity';
  readonly dimension: Dimension;
  /** Shown as so many per cent. */
  readonly percent?: true;
  /** Shown as a decimal, where nobody counts the teeth of such a quotient. */
  readonly decimal?: true;
  readonly list?: true;
}

/** Whether what `name` says, as a sentence, is so; `open` where the inputs leave it open. */
export interface OutcomeOutput extends OutputShape {
  readonly type: 'outcome';
}

/** Which of several things it is. */
export interface CodeOutput extends OutputShape {
  readonly type: 'code';
  readonly codes: Readonly<Record<string, Told>>;
}

/** A designation or a number of a table. */
export interface TextOutput extends OutputShape {
  readonly type: 'text';
  readonly list?: true;
}

export type Output = QuantityOutput | OutcomeOutput | CodeOutput | TextOutput;
export type Outputs = Readonly<Record<string, Output>>;

type OneFound<Of extends Output> = Of extends { type: 'quantity' }
  ? Interval
  : Of extends { type: 'outcome' }
    ? Outcome
    : Of extends { codes: infer Codes }
      ? keyof Codes & string
      : string;

/** What came out; left out where the inputs for it were not given. */
export type Found<Of extends Outputs> = {
  readonly [Name in keyof Of]?:
    | (Of[Name] extends { list: true } ? readonly OneFound<Of[Name]>[] : OneFound<Of[Name]>)
    | undefined;
};

/** How a source is known. */
export type SourceBasis = 'read' | 'arithmetic' | 'from-memory' | 'common-practice';

export interface Source {
  /** Standard or handbook with its part, the same in all languages; or what is common practice. */
  readonly title: string;
  readonly basis: SourceBasis;
}

/** What the function finds amiss with what it was given, by name. */
export interface GivenFault {
  readonly input: string;
  readonly text: Told;
}

export interface Calculation<Ins extends Inputs = Inputs, Outs extends Outputs = Outputs> {
  /** Last segment of its address. */
  readonly name: string;
  readonly title: Told;
  /** The question that it answers, in one sentence. */
  readonly about: Told;
  readonly inputs: Ins;
  readonly outputs: Outs;
  /** In the names of inputs and outputs, and of constants that they introduce. */
  readonly formulas: readonly string[];
  readonly assumptions: readonly Told[];
  /** Where the formulas hold, and where they do not. */
  readonly validity: readonly Told[];
  readonly sources: readonly Source[];
  /** What may have to be said of a result, by code. */
  readonly warnings: Readonly<Record<string, Told>>;
  /** The caution group of what is calculated. */
  readonly caution: string;
  /** Worked examples, as they are asked; the first stands in the published document. */
  readonly examples: readonly Example[];
  calculate(given: Given<Ins>): Result<Outs>;
}

export interface Example {
  /** kebab-case. */
  readonly name: string;
  readonly summary: string;
  readonly given: Readonly<Record<string, string | number | readonly (string | number)[]>>;
}

export interface Result<Outs extends Outputs = Outputs> {
  readonly found: Found<Outs>;
  /** Codes of `warnings`. */
  readonly warnings: readonly string[];
  /** Nothing is found of an input that cannot be read or cannot be. */
  readonly faults?: readonly GivenFault[];
}

/** A calculation of which only its data says what it takes and gives. */
export interface AnyCalculation extends Omit<Calculation, 'calculate'> {
  calculate(given: GivenByName): AnyResult;
}

export type OneValue = Interval | string;
export type GivenByName = Readonly<Record<string, OneValue | readonly OneValue[] | null>>;

export interface AnyResult {
  readonly found: Readonly<Record<string, OneValue | readonly OneValue[] | undefined>>;
  readonly warnings: readonly string[];
  readonly faults: readonly GivenFault[];
}

/** Declares a calculation, so that its function is checked against what it says it takes. */
export function calculation<const Ins extends Inputs, const Outs extends Outputs>(
  declared: Calculation<Ins, Outs>,
): AnyCalculation {
  return {
    ...declared,
    // Whoever calls has read the values by these very inputs (`read-given.ts`).
    calculate: (given) => ({ faults: [], ...declared.calculate(given as Given<Ins>) }),
  };
}
