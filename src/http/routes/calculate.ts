/**
 * The calculators. They are asked of no edition, and can be had before there is one; what they
 * compute changes with the program alone.
 */

import { ENGINE_VERSION } from '../../contract/answer-head.js';
import {
  CALCULATE_PATH,
  type CalculationsWire,
  type CalculationWire,
  calculationPath,
  calculationQuery,
  calculationQuestion,
  calculationsQuestionSchema,
  listCalculationsOperation,
} from '../../contract/calculate.js';
import { ordered } from '../../contract/canonical.js';
import { LIMITS } from '../../contract/limits.js';
import type { QueryGrammar } from '../../contract/parameters.js';
import type { Frozen } from '../../contract/wire.js';
import {
  type AnyCalculation,
  CALCULATIONS,
  type CalculateInput,
} from '../../usecases/calculate.js';
import { listCalculations } from '../../usecases/list-calculations.js';
import { etagOf, unlessKnown } from '../asked.js';
import { type Exchange, type Headers, JSON_TYPE, spokenIn, vary } from '../exchange.js';
import { segmentOf } from '../listed.js';
import { type App, mount } from '../mount.js';
import { canonicalSearch, parameterCalled, questionInUrl } from '../query.js';
import { digestOf } from '../question-key.js';
import type { Service } from '../service.js';

/** They change with the program, which takes a moment. */
const LIFETIME = 'public, max-age=300';

export function mountCalculate(app: App, service: Service): void {
  mount(app, service, CALCULATE_PATH, {
    mediaType: JSON_TYPE,
    get: { placeOf: null, answer: listReply },
  });
  for (const calculation of CALCULATIONS) mountOne(app, service, calculation);
  // Whatever name is left is of no calculator, which the use-case says, with what may be meant.
  const unknown = {
    placeOf: null,
    answer: (exchange: Exchange) => refuseName(exchange, service),
  };
  mount(app, service, `${CALCULATE_PATH}/:name`, {
    mediaType: JSON_TYPE,
    get: unknown,
  });
}

function listReply(exchange: Exchange): Response {
  const { search } = exchange;
  const { query } = listCalculationsOperation;
  questionInUrl({ search }, query, calculationsQuestionSchema);
  const { lang, by } = spokenIn(exchange);
  const headers = {
    'cache-control': LIFETIME,
    'content-language': lang,
    'content-location': `${CALCULATE_PATH}?lang=${lang}`,
    etag: etagOf(digestOf([CALCULATE_PATH, ENGINE_VERSION, lang])),
    ...vary(exchange, by),
  };
  const answer = () =>
    JSON.stringify(listCalculations({ lang }) satisfies Frozen<CalculationsWire>);
  return unlessKnown(exchange, headers, answer);
}

type Asked = Omit<CalculateInput, 'calculation' | 'lang' | 'units'> & {
  readonly lang?: string;
  readonly units?: CalculateInput['units'];
};

function mountOne(app: App, service: Service, calculation: AnyCalculation): void {
  const path = calculationPath(calculation);
  const query = calculationQuery(calculation);
  const schema = calculationQuestion(calculation);
  const reply = (exchange: Exchange, fields: Readonly<Record<string, unknown>>): Response => {
    const { lang: _lang, units, ...given } = fields;
    const asked = { given, units } as Asked;
    return answerTo(exchange, service, { calculation, path, query, fields, asked });
  };
  mount(app, service, path, {
    mediaType: JSON_TYPE,
    get: {
      placeOf: (at) => parameterCalled(at, query),
      answer: (exchange) => reply(exchange, questionInUrl(exchange, query, schema)),
    },
  });
}

interface Question {
  readonly calculation: AnyCalculation;
  readonly path: string;
  readonly query: QueryGrammar;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly asked: Asked;
}

function answerTo(
  exchange: Exchange,
  { useCases }: Service,
  { calculation, path, query, fields, asked }: Question,
): Response {
  const { lang, by } = spokenIn(exchange);
  const units = asked.units ?? 'recorded';
  const input = { calculation: calculation.name, given: asked.given, lang, units };
  const text = () => JSON.stringify(useCases.calculate(input) satisfies Frozen<CalculationWire>);
  const headers = {
    'content-language': lang,
    ...placeOf(path, fields, query, lang),
    ...vary(exchange, by),
  };
  const etag = etagOf(digestOf([path, ENGINE_VERSION, JSON.stringify(ordered(input))]));
  return unlessKnown(exchange, { ...headers, 'cache-control': LIFETIME, etag }, text);
}

/** Where the same answer can be had by GET. */
function placeOf(
  path: string,
  fields: Readonly<Record<string, unknown>>,
  query: QueryGrammar,
  lang: string,
): Headers {
  const search = canonicalSearch(fields, query, { lang });
  if (search === null || path.length + 1 + search.length > LIMITS.urlBytes.value) return {};
  return { 'content-location': `${path}?${search}` };
}

function refuseName({ path }: Exchange, { useCases }: Service): never {
  const calculation = segmentOf(path, { path: `${CALCULATE_PATH}/{name}` });
  useCases.calculate({ calculation, given: {}, lang: 'en', units: 'recorded' });
  throw new Error(`${calculation} is a calculator without an address`);
}
