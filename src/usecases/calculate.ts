/**
 * One calculator asked once, and the list of them all. They are asked of no edition: what they
 * compute follows from what is given and from the program alone.
 */

import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import type { Outcome } from '../domain/check/state.js';
import type { AnyCalculation, Output, SourceBasis, Told } from '../domain/driveline/calculation.js';
import {
  type GivenTexts,
  readGiven,
  type TakenValue,
  usualOf,
} from '../domain/driveline/read-given.js';
import { CALCULATIONS, calculationNamed } from '../domain/driveline/registry.js';
import { ENGINE } from '../domain/engine.js';
import type { ShownValue } from '../domain/explain/reason.js';
import type { Language } from '../domain/explain/words.js';
import { spokenFor } from '../domain/explain/words.js';
import type { Interval } from '../domain/quantity/interval.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import type { CautionView } from './answer.js';
import { cautionsOf } from './cautions.js';
import { computed } from './computed.js';
import { Faults } from './faults.js';
import { ValueWriter } from './value-writer.js';

export type { AnyCalculation } from '../domain/driveline/calculation.js';
export { CALCULATIONS } from '../domain/driveline/registry.js';

export interface CalculateInput {
  readonly calculation: string;
  readonly given: GivenTexts;
  readonly lang: string;
  readonly units: ShownUnits;
}

/** A value that was given, and what it was taken for. */
export interface GivenView {
  input: string;
  name: string;
  value: ShownValue;
}

export interface ResultView {
  output: string;
  /** A result by its name; of an outcome what must be so, as a sentence. */
  name: string;
  /** One, or several in order; none of an outcome. */
  values: ShownValue[];
  outcome: Outcome | null;
  /** Which of several things it is; null where it is none of some. */
  code: string | null;
}

/** A result that would take more than was given. */
export interface NotFoundView {
  output: string;
  name: string;
  /** Inputs that are missing and that it may take. */
  needs: string[];
}

export interface WarningView {
  code: string;
  /** The input that it speaks of; null where it is the result. */
  input: string | null;
  text: string;
}

export interface SourceView {
  title: string;
  basis: SourceBasis;
}

export interface CalculationAnswer {
  engine: string;
  lang: string;
  units: ShownUnits;
  calculation: string;
  title: string;
  given: GivenView[];
  results: ResultView[];
  notFound: NotFoundView[];
  warnings: WarningView[];
  formulas: string[];
  assumptions: string[];
  validity: string[];
  sources: SourceView[];
  cautions: CautionView[];
}

export function calculate(input: CalculateInput): CalculationAnswer {
  const faults = new Faults();
  const { calculation: name } = input;
  const calculation = calculationNamed(name);
  if (calculation === undefined) {
    const meant = nearest(
      name,
      CALCULATIONS.map((one) => one.name),
    );
    faults.add('calculation', 'unknown-calculation', { name, meant });
    return faults.end();
  }
  const speaker = new Calculator(calculation, input);
  return speaker.answer(input.given, faults);
}

/** Says what one calculation takes and gives, in one language. */
class Calculator {
  readonly #calculation: AnyCalculation;
  readonly #lang: Language;
  readonly #values: ValueWriter;

  constructor(calculation: AnyCalculation, { lang, units }: CalculateInput) {
    this.#calculation = calculation;
    this.#lang = spokenFor(lang);
    this.#values = new ValueWriter({ lang: this.#lang, units });
  }

  answer(texts: GivenTexts, faults: Faults): CalculationAnswer {
    const calculation = this.#calculation;
    const { given, taken, unusual, faults: unread } = readGiven(calculation, texts);
    for (const fault of unread) {
      const at = fault.index === null ? fault.input : `${fault.input}.${fault.index}`;
      if (fault.is === 'unreadable') {
        faults.add(at, 'input-at-fault', {
          because: fault.because,
          text: fault.text,
          lang: FAULT_LANGUAGE,
        });
      } else {
        const { text } = this.#values.interval(fault.bounds, fault.dimension);
        faults.add(at, 'impossible-input', { bounds: text });
      }
    }
    faults.endIfAny();
    const { found, warnings, faults: amiss } = calculation.calculate(given);
    for (const { input, text } of amiss) {
      faults.add(input, 'input-at-fault', {
        because: 'malformed',
        text: this.#said(text),
        lang: this.#lang,
      });
    }
    faults.endIfAny();
    const outputs = Object.entries(calculation.outputs);
    return {
      engine: ENGINE,
      lang: this.#lang,
      units: this.#values.units,
      calculation: calculation.name,
      title: this.#said(calculation.title),
      given: taken.map((value) => this.#givenView(value)),
      results: outputs.flatMap(([output, shape]) => {
        const value = found[output];
        return value === undefined ? [] : [this.#resultView(output, shape, value)];
      }),
      notFound: outputs.flatMap(([output, { name, needs = [] }]) => {
        const missing = needs.filter((need) => given[need] === null);
        if (found[output] !== undefined || missing.length === 0) return [];
        return [{ output, name: this.#said(name), needs: missing }];
      }),
      warnings: [
        ...warnings.map((code) => this.#warning(code)),
        ...unusual.map((input) => this.#unusual(input)),
      ],
      formulas: [...calculation.formulas],
      assumptions: calculation.assumptions.map((one) => this.#said(one)),
      validity: calculation.validity.map((one) => this.#said(one)),
      sources: calculation.sources.map((one) => ({ ...one })),
      cautions: cautionsOf([calculation.caution], { lang: this.#lang }),
    };
  }

  #said(told: Told): string {
    return told[this.#lang];
  }

  #givenView({ input, text, interval, dimension }: TakenValue): GivenView {
    const shape = this.#calculation.inputs[input];
    if (shape === undefined) throw new Error(`${input} was read and is no input`);
    const type = shape.type === 'quantity' ? 'measured' : null;
    const value =
      shape.type === 'code'
        ? this.#values.word(this.#said(codeOf(shape.codes, text)))
        : this.#values.recorded({ text, interval, dimension, type });
    return { input, name: this.#said(shape.name), value };
  }

  #resultView(
    output: string,
    shape: Output,
    value: Interval | string | readonly (Interval | string)[],
  ): ResultView {
    const view: ResultView = {
      output,
      name: this.#said(shape.name),
      values: [],
      outcome: null,
      code: null,
    };
    if (shape.type === 'outcome') return { ...view, outcome: value as Outcome };
    if (shape.type === 'code') {
      const code = value as string;
      const word = this.#values.word(this.#said(codeOf(shape.codes, code)));
      return { ...view, values: [word], code };
    }
    const all: readonly (Interval | string)[] = [value].flat();
    return {
      ...view,
      values: all.map((one) => {
        if (typeof one === 'string') return this.#values.word(one);
        if (shape.type === 'text') throw new Error(`${output} is a text, and no number was wanted`);
        return computed(one, shape, this.#values);
      }),
    };
  }

  #warning(code: string): WarningView {
    const told = this.#calculation.warnings[code];
    if (told === undefined) throw new Error(`no warning is called ${code}`);
    return { code, input: null, text: this.#said(told) };
  }

  #unusual(input: string): WarningView {
    const shape = this.#calculation.inputs[input];
    if (shape === undefined || shape.type === 'code' || shape.type === 'text') {
      throw new Error(`${input} has no usual values`);
    }
    const usual = usualOf(shape);
    if (usual === null) throw new Error(`${input} has no usual values`);
    const { text } = this.#values.interval(usual, shape.dimension ?? '1');
    const name = this.#said(shape.name);
    return { code: 'unusual-input', input, text: UNUSUAL[this.#lang](name, text) };
  }
}

const UNUSUAL: Readonly<Record<Language, (name: string, usual: string) => string>> = {
  en: (name, usual) => `Look again: usual for “${name}” is ${usual}.`,
  de: (name, usual) => `Noch einmal nachsehen: Üblich für „${name}“ ist ${usual}.`,
};

function codeOf(codes: Readonly<Record<string, Told>>, code: string): Told {
  const told = codes[code];
  if (told === undefined) throw new Error(`${code} is none of ${Object.keys(codes).join(', ')}`);
  return told;
}
