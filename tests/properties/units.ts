/**
 * Documents in inches and pound-feet, and the very same values in millimetres and newton metres.
 */

import type { CatalogueDocument, ValueRecord } from '../../src/domain/catalogue/document.js';
import { fraction, readFraction, times } from '../oracle/fraction.js';
import type { Question } from '../oracle/scene.js';
import { decimalOf, withValues } from './restated.js';

/** Exact by definition: the inch of 1959, the pound-force of the standard gravity. */
const METRIC = { in: '25.4', 'lbf.ft': '1.3558179483314004' } as const;

export type Factors = Readonly<Record<'in' | 'lbf.ft', string>>;

const IMPERIAL: Readonly<Record<string, keyof Factors>> = { mm: 'in', 'N.m': 'lbf.ft' };

type Restate = (number: string, unit: keyof Factors) => string;

/** Each millimetre of the drawn document taken for an inch, each newton metre for a pound-foot. */
export function imperial(document: CatalogueDocument, question: Question) {
  const same: Restate = (number, unit) => `${number} ${unit}`;
  return inUnits(document, question, same, same, same);
}

/**
 * What `imperial` gives, restated in millimetres and newton metres.
 *
 * @param factors those of the records; limits are restated as they must be.
 */
export function metric(document: CatalogueDocument, question: Question, factors: Factors = METRIC) {
  return inUnits(
    document,
    question,
    timesExactly(METRIC),
    timesExactly(factors),
    (number, unit) => {
      // A reading stands for all that rounds to it in its own unit.
      const decimals = number.split('.')[1]?.length ?? 0;
      const half = decimalOf(fraction(1n, 2n * 10n ** BigInt(decimals)));
      const exact = timesExactly(factors);
      return `${exact(number, unit).split(' ')[0]} ±${exact(half, unit)}`;
    },
  );
}

function timesExactly(factors: Factors): Restate {
  return (number, unit) => {
    const value = decimalOf(times(readFraction(number), readFraction(factors[unit])));
    return `${value} ${unit === 'in' ? 'mm' : 'N.m'}`;
  };
}

interface Asked {
  readonly document: CatalogueDocument;
  readonly question: Question;
}

function inUnits(
  document: CatalogueDocument,
  question: Question,
  limit: Restate,
  exact: Restate,
  reading: Restate,
): Asked {
  const named = (text: string) => textIn(text, exact, exact);
  const read = (text: string) => textIn(text, exact, reading);
  const parts = withValues(document, ({ record, spec }) => {
    if (record === undefined) return record;
    return recordIn(record, spec.type === 'measured' ? read : named, named);
  });
  const { kinds, layouts, rules } = document;
  const limited = (text: string) => textIn(text, limit, limit);
  const limits = textsIn({ kinds, layouts, rules }, limited) as Partial<CatalogueDocument>;
  const torque = question.torque === null ? null : read(question.torque);
  return { document: { ...parts, ...limits }, question: { ...question, torque } };
}

type Retell = (text: string) => string;

function recordIn(record: ValueRecord, read: Retell, named: Retell): ValueRecord {
  if (typeof record === 'string') return read(record);
  if (typeof record !== 'object' || Array.isArray(record)) return record;
  if ('choose' in record) return textsIn(record, named) as ValueRecord;
  // The widths of tools are their own, whatever the unit.
  if ('tool' in record) return record;
  return textsIn(record, read) as ValueRecord;
}

/** All texts in something, each told anew; those without a unit stay. */
function textsIn(value: unknown, retell: Retell): unknown {
  if (typeof value === 'string') return retell(value);
  if (Array.isArray(value)) return value.map((one) => textsIn(one, retell));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, one]) => [key, textsIn(one, retell)] as const);
  return Object.fromEntries(entries);
}

/** `10 mm`, `10 ±1 mm` and `9 to 11 mm`; the first alone is rounded where it is a reading. */
function textIn(text: string, exact: Restate, plain: Restate): string {
  const [, first = '', word = '', second = '', unit = ''] =
    /^(-?[\d.]+)(?:( ±| to )([\d.]+))? (mm|N\.m)$/.exec(text) ?? [];
  const to = IMPERIAL[unit];
  if (to === undefined) return text;
  if (word === '') return plain(first, to);
  const [from] = exact(first, to).split(' ');
  return `${from}${word}${exact(second, to)}`;
}
