/**
 * The calculators: a question, an address and worked examples of each, made of what each declares.
 *
 * They belong to the program and to no edition of the catalogue, as the codes of answers do.
 */

import type { AnyCalculation, Example, Input } from '../domain/driveline/calculation.js';
import { CALCULATIONS } from '../domain/driveline/registry.js';
import type { CalculationAnswer } from '../usecases/calculate.js';
import type { CalculationsAnswer } from '../usecases/list-calculations.js';
import { ANSWER_HEAD, engineField, VALUES_HEAD } from './answer-head.js';
import type { ExampleRequest } from './examples.js';
import { cautionSchema, outcomeSchema } from './judged.js';
import { listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter, type QueryGrammar } from './parameters.js';
import { COMMON_FIELDS, nameOf, VALUES_FIELDS } from './question.js';
import { orNull, shownValueSchema } from './reason.js';
import type { Wire } from './wire.js';

/** Where each calculator has its address, by its name. */
export const CALCULATE_PATH = '/v1/calculate';

const valueSchema = shownValueSchema;

const sourceSchema = z
  .strictObject({
    title: z.string().openapi({ description: 'Standard or handbook; or what is common practice.' }),
    basis: z.enum(['read', 'arithmetic', 'from-memory', 'common-practice']).openapi({
      description:
        'How it is known: `read` in the source or a copy of it, by `arithmetic` or geometry ' +
        'alone, `from-memory` of it, or `common-practice` without a source.',
    }),
  })
  .openapi('FormulaSource', { description: 'Where a formula or a number of it comes from.' });

const resultSchema = z
  .strictObject({
    output: z.string(),
    name: z.string().openapi({
      description: 'What it is; of an outcome what must be so, as a sentence.',
    }),
    values: z.array(valueSchema).openapi({
      description:
        'One, or several in order; none of an outcome. A set of values wherever an input is one, ' +
        'and where roots or angles leave a last digit open.',
    }),
    outcome: orNull(outcomeSchema),
    code: z.string().nullable().openapi({
      description: 'Which of several things it is; null where it is none of some.',
    }),
  })
  .openapi('CalculationResult', { description: 'What came out, by its name.' });

export const calculationAnswerSchema = z
  .strictObject({
    engine: engineField,
    lang: ANSWER_HEAD.lang,
    units: VALUES_HEAD.units,
    calculation: z.string().openapi({ example: 'propeller-shaft' }),
    title: z.string(),
    given: z
      .array(z.strictObject({ input: z.string(), name: z.string(), value: valueSchema }))
      .openapi({ description: 'What each value was taken for.' }),
    results: z.array(resultSchema),
    notFound: z
      .array(z.strictObject({ output: z.string(), name: z.string(), needs: z.array(z.string()) }))
      .openapi({
        description: 'What it could find besides, with the inputs that are missing for it.',
      }),
    warnings: z
      .array(
        z.strictObject({
          code: z.string().openapi({ description: 'Open: codes may be added.' }),
          input: z.string().nullable(),
          text: z.string(),
        }),
      )
      .openapi({
        description: 'Where an input or a result lies outside of what formula or practice allow.',
      }),
    formulas: z.array(z.string()),
    assumptions: z.array(z.string()),
    validity: z.array(z.string()).openapi({ description: 'Where the formulas hold, where not.' }),
    sources: z.array(sourceSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('CalculationAnswer', { description: 'What a calculator made of what it was given.' });

export type CalculationWire = Wire<CalculationAnswer, z.infer<typeof calculationAnswerSchema>>;

const calculationEntrySchema = z
  .strictObject({
    calculation: z.string(),
    title: z.string(),
    about: z.string().openapi({ description: 'The question that it answers.' }),
    inputs: z.array(
      z.strictObject({
        input: z.string(),
        name: z.string(),
        type: z.enum(['quantity', 'ratio', 'count', 'code', 'text']),
        unit: z.string().openapi({
          description: 'Unit that values are told in; any unit of its dimension is taken.',
        }),
        isOptional: z.boolean(),
        most: z.int().min(1).openapi({ description: 'How many values at most.' }),
        codes: z.array(z.strictObject({ code: z.string(), name: z.string() })),
      }),
    ),
    outputs: z.array(
      z.strictObject({ output: z.string(), name: z.string(), needs: z.array(z.string()) }),
    ),
    formulas: z.array(z.string()),
    sources: z.array(sourceSchema),
    example: z.record(z.string(), z.unknown()).openapi({
      description: 'Something to ask it with; several values stand with commas between in a URL.',
    }),
  })
  .openapi('CalculationEntry', { description: 'A calculator: what it takes, gives, and how.' });

const { items, next, counts } = listFields(
  calculationEntrySchema,
  'Along the driveline, from the ratios to wheels and brakes; then what holds it together.',
);

export const calculationsAnswerSchema = z
  .strictObject({ engine: engineField, lang: ANSWER_HEAD.lang, items, next, counts })
  .openapi('CalculationList', { description: 'The calculators, on one page.' });

export type CalculationsWire = Wire<CalculationsAnswer, z.infer<typeof calculationsAnswerSchema>>;

export const calculationsQuestionSchema = z.strictObject({ lang: COMMON_FIELDS.lang });

export const listCalculationsOperation: Operation = {
  method: 'get',
  path: CALCULATE_PATH,
  operationId: 'listCalculations',
  tag: 'calculate',
  summary: 'Which calculators are there?',
  description: 'Each with what it takes and gives, its formulas and their sources.',
  segment: null,
  query: { parameters: [parameter('lang', COMMON_FIELDS.lang)], groups: [] },
  body: null,
  answer: { schema: calculationsAnswerSchema, description: 'The calculators.' },
  errors: [],
};

const SAYING = { lang: COMMON_FIELDS.lang, units: VALUES_FIELDS.units };

/** What one calculator is asked with: the form of its inputs, in which language and units. */
export function calculationQuestion(calculation: AnyCalculation) {
  const fields = Object.entries(calculation.inputs).map(
    ([name, input]) => [name, fieldOf(input)] as const,
  );
  return z.strictObject({ ...Object.fromEntries(fields), ...SAYING });
}

function fieldOf(input: Input): z.ZodType {
  const many = input.most === undefined ? oneOf(input) : manyOf(oneOf(input), input.most);
  const described = many.openapi({ description: descriptionOf(input) });
  return input.optional === true ? described.optional() : described;
}

function manyOf(one: z.ZodType, most: number): z.ZodType {
  return z.array(one).min(1).max(most);
}

function oneOf(input: Input): z.ZodType {
  if (input.type === 'code') return z.enum(Object.keys(input.codes) as [string, ...string[]]);
  if (input.type === 'text') return nameOf('valueCharacters');
  return nameOf('valueCharacters');
}

const PLAIN = {
  quantity: 'A number with a unit, exact as it stands; or a reading such as `2.0 ±0.1 mm`.',
  ratio: 'Tooth counts such as `43/12`, exact; a decimal stands for all that rounds to it.',
  count: 'A whole number.',
} as const;

function descriptionOf(input: Input): string {
  const name = `${input.name.en.charAt(0).toUpperCase()}${input.name.en.slice(1)}.`;
  switch (input.type) {
    case 'code':
      return `${name} ${Object.entries(input.codes)
        .map(([code, told]) => `\`${code}\`: ${told.en}`)
        .join('; ')}.`;
    case 'text':
      return `${name} Such as \`${input.form}\`.`;
    default:
      return `${name} ${PLAIN[input.type]}`;
  }
}

/** How its question stands in a URL. */
export function calculationQuery(calculation: AnyCalculation): QueryGrammar {
  const named = Object.entries(calculation.inputs).map(([name, input]) =>
    parameter(name, fieldOf(input), input.most === undefined ? 'text' : 'list'),
  );
  const { lang, units } = SAYING;
  return { parameters: [...named, parameter('lang', lang), parameter('units', units)], groups: [] };
}

export function calculationPath({ name }: AnyCalculation): string {
  return `${CALCULATE_PATH}/${name}`;
}

function operationOf(calculation: AnyCalculation): Operation {
  const { name, title } = calculation;
  return {
    method: 'get',
    path: calculationPath(calculation),
    operationId: operationIdOf(name),
    tag: 'calculate',
    summary: title.en,
    description: documented(calculation),
    segment: null,
    query: calculationQuery(calculation),
    body: null,
    answer: { schema: calculationAnswerSchema, description: 'What came out, and how.' },
    errors: ['invalid-question'],
  };
}

function operationIdOf(name: string): string {
  const word = name.replace(/(^|-)([a-z])/g, (_, _dash, letter: string) => letter.toUpperCase());
  return `calculate${word}`;
}

/** The formulas with their limits and sources, for whoever reads the document. */
function documented({ about, formulas, assumptions, validity, sources }: AnyCalculation): string {
  return [
    about.en,
    listOf(
      'Formulas',
      formulas.map((one) => `\`${one}\``),
    ),
    listOf(
      'Assumed',
      assumptions.map(({ en }) => en),
    ),
    listOf(
      'Holds',
      validity.map(({ en }) => en),
    ),
    listOf(
      'Sources',
      sources.map(({ title, basis }) => `${title} (${basis})`),
    ),
  ].join('\n\n');
}

function listOf(title: string, lines: readonly string[]): string {
  return [`${title}:`, '', ...lines.map((line) => `- ${line}`)].join('\n');
}

export const CALCULATE_OPERATIONS: readonly Operation[] = [
  listCalculationsOperation,
  ...CALCULATIONS.map(operationOf),
];

/** The worked examples of all calculators. */
export const CALCULATE_EXAMPLES: readonly ExampleRequest[] = [
  { operationId: 'listCalculations', name: 'calculations', summary: 'All calculators', search: '' },
  ...CALCULATIONS.flatMap((calculation) =>
    calculation.examples.map(({ name, summary, given }) => ({
      operationId: operationIdOf(calculation.name),
      name,
      summary,
      search: searchOf(given),
    })),
  ),
];

function searchOf(given: Example['given']): string {
  return Object.entries(given)
    .map(([name, value]) => `${name}=${encodeURIComponent([value].flat().join(','))}`)
    .join('&');
}

/** Each asked with a value that nobody can read. */
export const CALCULATE_REFUSED = Object.fromEntries(
  CALCULATIONS.map((calculation) => {
    const { name, examples } = calculation;
    const search = searchOf({ ...examples[0]?.given, ...unreadable(calculation) });
    const refused = { summary: 'A value that cannot be read', search };
    return [operationIdOf(name), { 'invalid-question': refused }];
  }),
);

function unreadable({ name, inputs }: AnyCalculation): Example['given'] {
  const [input] = Object.entries(inputs).find(([, { type }]) => type !== 'code') ?? [];
  if (input === undefined) throw new Error(`${name} takes codes alone`);
  return { [input]: '?' };
}
