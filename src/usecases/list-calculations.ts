/**
 * Which calculators are there, what does each take and give, and by which formulas? They are asked
 * of no edition.
 */

import type { AnyCalculation, Example, Input } from '../domain/driveline/calculation.js';
import { CALCULATIONS } from '../domain/driveline/registry.js';
import { ENGINE } from '../domain/engine.js';
import { type Language, spokenFor } from '../domain/explain/words.js';
import { baseSymbol } from '../domain/quantity/unit.js';
import type { SourceView } from './calculate.js';

export interface CalculationInputView {
  input: string;
  name: string;
  type: Input['type'];
  /** Symbol of the unit in which values of a quantity are told; empty for all others. */
  unit: string;
  isOptional: boolean;
  /** How many values at most. */
  most: number;
  /** What it can be, where it is one of some codes. */
  codes: { code: string; name: string }[];
}

export interface CalculationEntry {
  calculation: string;
  title: string;
  about: string;
  inputs: CalculationInputView[];
  outputs: { output: string; name: string; needs: string[] }[];
  formulas: string[];
  sources: SourceView[];
  /** Something to ask it with. */
  example: Example['given'];
}

export interface CalculationsAnswer {
  engine: string;
  lang: string;
  items: CalculationEntry[];
  next: null;
  counts: { total: number };
}

export function listCalculations({ lang: wish }: { readonly lang: string }): CalculationsAnswer {
  const lang = spokenFor(wish);
  const items = CALCULATIONS.map((one) => entryOf(one, lang));
  return { engine: ENGINE, lang, items, next: null, counts: { total: items.length } };
}

function entryOf(calculation: AnyCalculation, lang: Language): CalculationEntry {
  const { name, title, about, inputs, outputs, formulas, sources, examples } = calculation;
  const [example] = examples;
  if (example === undefined) throw new Error(`${name} has no example`);
  return {
    calculation: name,
    title: title[lang],
    about: about[lang],
    inputs: Object.entries(inputs).map(([input, shape]) => inputView(input, shape, lang)),
    outputs: Object.entries(outputs).map(([output, shape]) => ({
      output,
      name: shape.name[lang],
      needs: [...(shape.needs ?? [])],
    })),
    formulas: [...formulas],
    sources: sources.map((one) => ({ ...one })),
    example: example.given,
  };
}

function inputView(input: string, shape: Input, lang: Language): CalculationInputView {
  const codes = shape.type === 'code' ? Object.entries(shape.codes) : [];
  const dimension = 'dimension' in shape ? (shape.dimension ?? '1') : '1';
  return {
    input,
    name: shape.name[lang],
    type: shape.type,
    unit: baseSymbol(dimension),
    isOptional: shape.optional === true,
    most: shape.most ?? 1,
    codes: codes.map(([code, name]) => ({ code, name: name[lang] })),
  };
}
