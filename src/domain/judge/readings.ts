/**
 * Values of the catalogue as readings of the evaluator: which unknown each is, and what else a
 * person needs to know to measure it.
 *
 * Two pieces of one article share counts, ratios, codes and designations, since those belong to
 * the article; a measured length belongs to the piece.
 */

import type { ListItem, Part, RoleValue, Value, ValueSpec } from '../catalogue/catalogue.js';
import { naturalRange, shapeOfSpec } from '../catalogue/value.js';
import { Evaluator, type Setting } from '../check/evaluator.js';
import { rangeOf } from '../check/polynomial.js';
import type { CodeReading, FactAddress, NumberReading, Reading } from '../check/reading.js';
import { type Basis, weaker } from '../check/state.js';
import type { TermShape } from '../check/term.js';
import { EVERYTHING, type Interval, NON_NEGATIVE } from '../quantity/interval.js';

/** Where a value is read, and which piece of which article it belongs to. */
export interface Where {
  readonly address: FactAddress;
  /** Null for what nobody recorded: then only the piece tells unknowns apart. */
  readonly article: string | null;
  readonly piece: string;
  /** `values.length`, `rear.pitch-circle`: the place within the part. */
  readonly path: string;
}

function keyOf(where: Where, isShared: boolean): string {
  const { article, piece, path } = where;
  return isShared && article !== null ? `${article} ${path}` : `${piece}/${article ?? ''} ${path}`;
}

/** Measures belong to a piece, all else to the article. */
function isOfArticle({ type }: ValueSpec): boolean {
  return type !== 'measured' && type !== 'points';
}

/** A value as recorded, or the unknown that stands in its place. */
export function readingOf(value: Value | undefined, spec: ValueSpec, where: Where): Reading {
  if (value === undefined) return unrecorded(spec, where);
  const { address } = where;
  const { text } = value;
  const { tool } = spec;
  const { basis } = value.evidence;
  const key = keyOf(where, isOfArticle(spec));
  const natural = naturalRange(spec);
  const { dimension } = spec;
  switch (value.form) {
    case 'code':
      return { form: 'code', key, basis, address, text, tool, codes: [value.code] };
    case 'points':
      return { form: 'points', key, basis, address, text, tool, points: value.points, dimension };
    case 'number': {
      const domain = value.interval;
      const exact = { form: 'number', key, basis, address, text, tool } as const;
      return { ...exact, domain, natural, dimension, recorded: true };
    }
    case 'range': {
      const own = keyOf(where, false);
      const { interval: domain } = value;
      return { form: 'range', key: own, basis, address, text, tool, domain, natural, dimension };
    }
    case 'list': {
      const items = value.items.map((item, index) =>
        itemReading(item, `${key}#${index}`, spec, { address, basis, tool, text: item.text }),
      );
      const numbers = items.filter((item): item is NumberReading => item.form === 'number');
      return { form: 'list', key, basis, address, text, tool, items: numbers, natural, dimension };
    }
    case 'set': {
      const choice = keyOf(where, false);
      const options = value.items.map((item, index) =>
        itemReading(item, `${choice}#${index}`, spec, { address, basis, tool, text: item.text }),
      );
      return { form: 'choice', key: null, basis, address, text, tool, choice, options };
    }
  }
}

type Common = Pick<NumberReading, 'address' | 'basis' | 'text' | 'tool'>;

function itemReading(
  item: ListItem,
  key: string,
  spec: ValueSpec,
  common: Common,
): NumberReading | CodeReading {
  if (item.code !== null) return { ...common, form: 'code', key, codes: [item.code] };
  const domain = item.interval ?? naturalRange(spec);
  return {
    ...common,
    form: 'number',
    key,
    domain,
    natural: naturalRange(spec),
    dimension: spec.dimension,
    recorded: true,
  };
}

function unrecorded(spec: ValueSpec, where: Where): Reading {
  return unknownReading(shapeOfSpec(spec), where, isOfArticle(spec), naturalRange(spec), spec.tool);
}

/** Something that nobody recorded, of a shape. */
export function unknownReading(
  shape: TermShape,
  where: Where,
  isShared = false,
  natural: Interval = naturalOf(shape),
  tool: string | null = null,
): Reading {
  const key = keyOf(where, isShared);
  const common = { key, basis: null, address: where.address, text: null, tool };
  if (shape.is === 'code') return { ...common, form: 'code', codes: null };
  const { dimension } = shape;
  if (shape.is === 'points') return { ...common, form: 'points', points: null, dimension };
  if (shape.is === 'list') return { ...common, form: 'list', items: null, natural, dimension };
  return { ...common, form: 'number', domain: natural, natural, dimension, recorded: false };
}

function naturalOf(shape: TermShape): Interval {
  if (shape.is === 'code') return EVERYTHING;
  return ['length', 'angle', 'temperature'].includes(shape.dimension) ? EVERYTHING : NON_NEGATIVE;
}

/** The unknown behind a derived value (the greatest of the gears), as one reading. */
export function derivedReading(
  part: Part,
  value: RoleValue,
  specs: ReadonlyMap<string, RoleValue>,
  where: Where,
  setting: Setting,
): Reading {
  if (value.term === null) throw new Error(`${value.id} is not derived`);
  const read: Reading[] = [];
  const environment = {
    lookup: (reference: { readonly of: string; readonly parameter?: string }): Reading => {
      const id = reference.parameter ?? '';
      const spec = specs.get(id);
      if (spec === undefined) throw new Error(`no value ${id} to derive ${value.id} from`);
      const inner = {
        ...where,
        path: `values.${id}`,
        address: { ...where.address, parameter: id },
      };
      const reading = readingOf(part.values.get(id), spec, inner);
      read.push(reading);
      return reading;
    },
  };
  const evaluator = new Evaluator(environment, { ...setting, trusts: () => true });
  const domain = rangeOf(evaluator.number(value.term), evaluator.domains);
  let basis: Basis | null = null;
  for (const reading of read) if ('basis' in reading) basis = weaker(basis, reading.basis);
  const isShared = [...read].every(
    (reading) =>
      !('address' in reading) || specs.get(reading.address.parameter ?? '')?.type !== 'measured',
  );
  const recorded = read.every((reading) => basisKnown(reading));
  return {
    form: 'number',
    key: keyOf(where, isShared),
    basis,
    address: { ...where.address, parameter: value.id },
    behind: read,
    text: null,
    tool: null,
    domain,
    natural: naturalRange(value),
    dimension: value.dimension,
    recorded,
  };
}

function basisKnown(reading: Reading): boolean {
  if (reading.form === 'list') return reading.items !== null;
  if (reading.form === 'points') return reading.points !== null;
  if (reading.form === 'code') return reading.codes !== null;
  return reading.form !== 'number' || reading.recorded;
}
