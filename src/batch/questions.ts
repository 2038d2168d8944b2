/**
 * Reads the question of a row: an object of NDJSON, or the fields of a row of CSV under the names
 * of its columns. Both come to the same fields, and are held against the same schema.
 */

import {
  CSV_TYPE,
  FIT_COLUMNS,
  type FitLine,
  fitLineSchema,
  type LineType,
  NDJSON_TYPE,
} from '../contract/fit-batch.js';
import { formFaults } from '../contract/form-faults.js';
import { echo, pointerTo } from '../contract/json-pointer.js';
import { readJson } from '../contract/json-text.js';
import { LIMITS } from '../contract/limits.js';
import { PLACE_PATTERN } from '../contract/question.js';
import { splitNames } from '../usecases/part-names.js';
import { fieldsOf } from './csv.js';
import { type LineFault, type LinePlace, LineRefused } from './line-refused.js';
import type { Row } from './rows.js';

/** A question of names alone, as most lines are: what it comes to is the same each time. */
export interface PlainLine {
  readonly ref: string | undefined;
  readonly vehicle: string;
  readonly part: string;
}

export interface QuestionReader {
  /** What a row says where it is seen at once; null where it must be read. */
  plain(row: Row): PlainLine | null;
  /** Throws `LineRefused`; null for a row that asks nothing. `sees` is told the `ref` first. */
  read(row: Row, sees: (ref: string) => void): FitLine | null;
  /** Where a field stands that the use-case calls so: `with.clutch`. */
  placeOf(at: string): LinePlace;
}

/** Three names at most, each a text without an escape. */
const NAME = '[ \\t]*"(ref|vehicle|part)"[ \\t]*:[ \\t]*"([^"\\\\\\u0000-\\u001f]*)"[ \\t]*';
const PLAIN = new RegExp(`^[ \\t]*\\{${NAME}(?:,${NAME})?(?:,${NAME})?\\}[ \\t]*$`);

const LONGEST_REF = LIMITS.refCharacters.value;

export class NdjsonQuestions implements QuestionReader {
  plain({ text }: Row): PlainLine | null {
    const found = PLAIN.exec(text);
    if (found === null) return null;
    let ref: string | undefined;
    let vehicle: string | undefined;
    let part: string | undefined;
    for (let at = 1; at < found.length; at += 2) {
      const value = found[at + 1];
      switch (found[at]) {
        // A name that stands twice is told as a fault, by whoever reads the line whole.
        case 'ref':
          if (ref !== undefined || value === undefined || value.length > LONGEST_REF) return null;
          ref = value;
          break;
        case 'vehicle':
          if (vehicle !== undefined) return null;
          vehicle = value;
          break;
        case 'part':
          if (part !== undefined) return null;
          part = value;
          break;
        default:
        // Fewer names than three.
      }
    }
    return vehicle === undefined || part === undefined ? null : { ref, vehicle, part };
  }

  read({ line, text, fault }: Row, sees: (ref: string) => void): FitLine | null {
    if (fault !== null) throw rowRefused(fault, NDJSON_TYPE);
    if (text.trim() === '') return null;
    const read = readJson(text, LIMITS.bodyValues.value);
    if (!read.isJson) {
      const data = { ...read.stop, line };
      throw new LineRefused('malformed-json', [{ code: 'not-json', data }]);
    }
    const { value, faults } = read;
    if (typeof value === 'object' && value !== null && 'ref' in value) seesRef(value.ref, sees);
    const [first] = faults;
    // Not held against the schema: that would be the work that the limit is there to spare.
    if (first?.code === 'too-many-values') throw new LineRefused('invalid-request', [first]);
    return held(value, faults, (path) => ({ pointer: pointerTo(path) }));
  }

  placeOf(at: string): LinePlace {
    return { pointer: pointerTo(at.split('.')) };
  }
}

function seesRef(ref: unknown, sees: (ref: string) => void): void {
  if (typeof ref === 'string' && fitLineSchema.shape.ref.safeParse(ref).success) sees(ref);
}

function held(
  value: unknown,
  faults: readonly LineFault[],
  placeOf: (path: readonly PropertyKey[]) => LinePlace,
): FitLine {
  const parsed = fitLineSchema.safeParse(value);
  if (parsed.success && faults.length === 0) return parsed.data;
  const all = [...faults, ...formFaults(parsed, value, placeOf)];
  throw new LineRefused('invalid-request', all);
}

/** One column: the field that it fills, and how its text becomes the value. */
interface Column {
  readonly name: string;
  readonly field: string;
  /** The place in the field, such as a position; null where the field has none. */
  readonly place: string | null;
  readonly reading: 'text' | 'boolean' | 'list';
}

export class CsvQuestions implements QuestionReader {
  readonly #columns: readonly Column[];
  readonly #refAt: number;
  readonly #vehicleAt: number;
  readonly #partAt: number;
  /** Where the columns are that most rows leave empty. */
  readonly #others: readonly number[];

  /** @throws LineRefused where the first row has no names of columns, with every fault of it. */
  constructor(header: Row) {
    this.#columns = columnsOf(header);
    const at = (name: string) => this.#columns.findIndex((column) => column.name === name);
    this.#refAt = at('ref');
    this.#vehicleAt = at('vehicle');
    this.#partAt = at('part');
    const names = [this.#refAt, this.#vehicleAt, this.#partAt];
    this.#others = [...this.#columns.keys()].filter((index) => !names.includes(index));
  }

  plain({ text }: Row): PlainLine | null {
    if (text.includes('"')) return null;
    const fields = text.split(',');
    if (fields.length !== this.#columns.length) return null;
    for (const at of this.#others) if (fields[at] !== '') return null;
    const ref = this.#refAt === -1 ? undefined : fields[this.#refAt];
    if (ref !== undefined && ref.length > LONGEST_REF) return null;
    const vehicle = fields[this.#vehicleAt] ?? '';
    const part = fields[this.#partAt] ?? '';
    return { ref: ref === '' ? undefined : ref, vehicle, part };
  }

  read({ text, fault }: Row, sees: (ref: string) => void): FitLine | null {
    if (fault !== null) throw rowRefused(fault, CSV_TYPE);
    if (text.trim() === '') return null;
    const fields = fieldsOf(text);
    if (typeof fields === 'string') throw malformed(fields);
    const ref = fields[this.#refAt];
    if (ref !== undefined && ref !== '') seesRef(ref, sees);
    if (fields.length !== this.#columns.length) throw malformed('count-of-fields');
    const value: Record<string, unknown> = {};
    for (const [index, { field, place, reading }] of this.#columns.entries()) {
      const text = fields[index] ?? '';
      if (text === '') continue;
      const read = readAs(text, reading);
      if (place === null) value[field] = read;
      else {
        value[field] ??= {};
        (value[field] as Record<string, unknown>)[place] = read;
      }
    }
    return held(value, [], (path) => this.#placeAt(path.map(String)));
  }

  placeOf(at: string): LinePlace {
    return this.#placeAt(at.split('.'));
  }

  #placeAt([field = '', place]: readonly string[]): LinePlace {
    const column = this.#columns.find((one) => {
      return one.field === field && (one.place === null || one.place === place);
    });
    return { parameter: column?.name ?? field };
  }
}

function malformed(rule: Extract<ReturnType<typeof fieldsOf>, string>): LineRefused {
  return new LineRefused('invalid-request', [{ code: 'malformed-row', data: { rule } }]);
}

function readAs(text: string, reading: Column['reading']): unknown {
  if (reading === 'list') return splitNames(text);
  if (reading === 'boolean') return text === 'true' ? true : text === 'false' ? false : text;
  return text;
}

/** The columns by the names in the first row. */
function columnsOf(header: Row): Column[] {
  if (header.fault !== null) throw rowRefused(header.fault, CSV_TYPE);
  const names = fieldsOf(header.text);
  if (typeof names === 'string') throw malformed(names);
  const faults: LineFault[] = [];
  const columns = new Map<string, Column>();
  for (const name of names) {
    const column = columnOf(name);
    const parameter = echo(name);
    if (column === null) faults.push({ parameter, code: 'unknown-column', data: { name } });
    else if (columns.has(name)) {
      faults.push({ parameter, code: 'repeated-column', data: { name } });
    } else columns.set(name, column);
  }
  for (const parameter of ['vehicle', 'part']) {
    if (!columns.has(parameter)) faults.push({ parameter, code: 'missing', data: {} });
  }
  if (faults.length > 0) throw new LineRefused('invalid-request', faults);
  return [...columns.values()];
}

function columnOf(name: string): Column | null {
  const { parameters, groups } = FIT_COLUMNS;
  const known = parameters.find((one) => one.name === name);
  if (known !== undefined) {
    const reading = known.reading === 'boolean' ? 'boolean' : 'text';
    return { name, field: name, place: null, reading };
  }
  const dot = name.indexOf('.');
  const group = groups.find(({ prefix }) => prefix === name.slice(0, dot));
  const place = name.slice(dot + 1);
  const isPlace = PLACE_PATTERN.test(place) && place.length <= LIMITS.placeCharacters.value;
  if (group === undefined || !isPlace) return null;
  return { name, field: group.field, place, reading: group.reading === 'list' ? 'list' : 'text' };
}

/** A row that is no text, as lines of JSON say it or rows of CSV. */
function rowRefused(fault: NonNullable<Row['fault']>, type: LineType): LineRefused {
  if (fault === 'not-utf-8') {
    return type === NDJSON_TYPE
      ? new LineRefused('malformed-json', [{ code: 'not-utf-8', data: {} }])
      : new LineRefused('invalid-request', [{ code: 'row-not-utf-8', data: {} }]);
  }
  const data = { most: LIMITS.batchLineBytes.value, limit: 'batchLineBytes' } as const;
  return new LineRefused('body-too-large', [{ code: fault, data }]);
}
