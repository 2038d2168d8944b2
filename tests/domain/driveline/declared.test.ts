/**
 * What every calculator declares of itself holds: it can be read, asked with its own examples, and
 * what it gives is what it says it gives. A new one is found here by itself.
 */

import { describe, expect, test } from 'vitest';
import { readGiven } from '../../../src/domain/driveline/read-given.js';
import { CALCULATIONS } from '../../../src/domain/driveline/registry.js';
import { CAUTION_GROUPS } from '../../../src/domain/explain/reason.js';
import { calculate } from '../../../src/usecases/calculate.js';

const LANGUAGES = ['en', 'de'] as const;
const CAMEL_CASE = /^[a-z][a-zA-Z0-9]*$/;
const KEBAB_CASE = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

test('names are of one calculator each', () => {
  const names = CALCULATIONS.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
});

describe.each(CALCULATIONS.map((one) => [one.name, one] as const))('%s', (name, calculation) => {
  const { inputs, outputs, examples, warnings, sources, validity, assumptions } = calculation;

  test('is named and told in every language', () => {
    expect(name).toMatch(KEBAB_CASE);
    for (const input of [...Object.keys(inputs), ...Object.keys(outputs)]) {
      expect(input).toMatch(CAMEL_CASE);
    }
    for (const code of Object.keys(warnings)) expect(code).toMatch(KEBAB_CASE);
    const told = [
      calculation.title,
      calculation.about,
      ...Object.values(inputs).map((one) => one.name),
      ...Object.values(outputs).map((one) => one.name),
      ...Object.values(warnings),
      ...assumptions,
      ...validity,
    ];
    for (const each of told) {
      for (const lang of LANGUAGES) expect(each[lang].trim()).not.toBe('');
      expect(each.de).not.toBe(each.en);
    }
    for (const sentence of [...Object.values(warnings), ...assumptions, ...validity]) {
      for (const lang of LANGUAGES) expect(sentence[lang]).toMatch(/[.?]$/);
    }
    expect(CAUTION_GROUPS).toContain(calculation.caution);
  });

  test('shows formulas, limits and sources', () => {
    expect(calculation.formulas.length).toBeGreaterThan(0);
    expect(sources.length).toBeGreaterThan(0);
    expect(validity.length).toBeGreaterThan(0);
  });

  test('needs of an output only inputs that may be left out', () => {
    for (const { needs = [] } of Object.values(outputs)) {
      for (const need of needs) expect(inputs[need]?.optional).toBe(true);
    }
  });

  test('finds nothing that it does not declare, and says what is missing', () => {
    expect(examples.length).toBeGreaterThan(0);
    for (const { given: texts } of examples) {
      const { given, faults } = readGiven(calculation, texts);
      expect(faults).toEqual([]);
      const { found, warnings: said, faults: amiss } = calculation.calculate(given);
      expect(amiss).toEqual([]);
      expect(Object.keys(outputs)).toEqual(expect.arrayContaining(Object.keys(found)));
      expect(Object.keys(warnings)).toEqual(expect.arrayContaining([...said]));
      for (const [output, { needs = [] }] of Object.entries(outputs)) {
        if (found[output] !== undefined) continue;
        expect([output, needs.some((need) => given[need] === null)]).toEqual([output, true]);
      }
    }
  });

  test('takes nothing that it has no example of', () => {
    const shown = new Set(examples.flatMap(({ given }) => Object.keys(given)));
    expect(Object.keys(inputs).filter((input) => !shown.has(input))).toEqual([]);
  });

  test.each(LANGUAGES)('answers its examples in %s', (lang) => {
    for (const { given } of examples) {
      const answer = calculate({ calculation: name, given, lang, units: 'imperial' });
      expect(answer.lang).toBe(lang);
      expect(answer.results.length).toBeGreaterThan(0);
      for (const { values, outcome } of answer.results) {
        expect(values.length > 0 || outcome !== null).toBe(true);
      }
    }
  });
});
