/**
 * What a question says of a piece on the bench, read as values: each in every form that a
 * parameter of its name can have.
 *
 * A size that is a name (a designation) is that name, unless the question says with which tool it
 * was measured: then it is a reading, as wide as the tool makes it.
 */

import type { Catalogue, Kind, Value, ValueSpec, Vehicle } from '../domain/catalogue/catalogue.js';
import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import { compileValue } from '../domain/catalogue/value.js';
import type { Hand } from '../domain/check/reading.js';
import { formOf, type ToldValue } from '../domain/identify/compared.js';
import type { ToldPiece } from '../domain/identify/piece.js';
import type { ToldFace } from '../domain/identify/piece-faces.js';
import { saysAnything, type ToldNumber, toldNumber } from '../domain/identify/read-number.js';
import { toolOf } from '../domain/quantity/tool.js';
import type { Faults } from './faults.js';
import { partDirectory } from './part-directory.js';
import { faultList } from './quoted-faults.js';
import { checkOne } from './read-one.js';

/** Where something was read; null is not told. */
export interface PieceOn {
  /** The name of a face. */
  readonly interface: string | null;
  readonly kind: string | null;
  readonly side: string | null;
  /** Tells faces of one kind apart whose names are not known. */
  readonly which: number | null;
  /** Of the face; of the piece itself where no face is told. */
  readonly parameter: string | null;
}

export interface PieceReading {
  readonly on: PieceOn;
  readonly value: string | readonly string[];
  readonly tool: string | null;
}

export interface PieceInput {
  readonly role: string | null;
  readonly hand: Hand | null;
  readonly numbers: readonly string[];
  readonly measured: readonly PieceReading[];
}

/** The value of a face that the piece has not. */
export const NONE = 'none';

const MEASURED = { basis: 'measured' } as const;

interface Place {
  readonly catalogue: Catalogue;
  readonly faults: Faults;
}

export function readPiece(
  input: PieceInput,
  vehicle: Vehicle | null,
  { catalogue, faults }: Place,
): ToldPiece {
  const { role, hand, measured } = input;
  if (role !== null) checkOne(catalogue.roles, 'role', { id: role, at: 'role' }, faults);
  const numbers = input.numbers.flatMap((text, index) => {
    return readNumber(text, `numbers.${index}`, { catalogue, faults });
  });
  const reader = new Reader(catalogue, faults);
  for (const [index, reading] of measured.entries()) reader.read(reading, index);
  const { values, faces } = reader;
  return { role, hand, fitted: vehicle && partsOfWorks(vehicle), numbers, values, faces };
}

/** All that the works may have fitted, whatever facts tell it. */
function partsOfWorks({ fitted, adapters }: Vehicle): Set<string> {
  const occupants = [...fitted.values()].flatMap((here) =>
    here.hands ? [here.left, here.right] : [here.occupant],
  );
  const each = occupants.flatMap((one) => (one.is === 'option' ? [...one.by.values()] : [one]));
  const parts = each.flatMap((one) => (one.is === 'part' ? [one.part] : []));
  return new Set([...parts, ...[...adapters.values()].flat()]);
}

function readNumber(text: string, at: string, { catalogue, faults }: Place): ToldNumber[] {
  if (saysAnything(text)) return [toldNumber(text, partDirectory(catalogue).likeNumber(text))];
  faults.add(at, 'number-says-nothing', {});
  return [];
}

type Draft = { -readonly [Key in keyof ToldFace]: ToldFace[Key] };

/** Gathers what was read of one face. */
class Reader {
  readonly #catalogue: Catalogue;
  readonly #faults: Faults;
  readonly #faces = new Map<string, Draft>();
  readonly #texts = new Map<string, string>();
  readonly values: ToldPiece['values'][number][] = [];

  constructor(catalogue: Catalogue, faults: Faults) {
    this.#catalogue = catalogue;
    this.#faults = faults;
  }

  get faces(): readonly ToldFace[] {
    return [...this.#faces.values()];
  }

  read(reading: PieceReading, index: number): void {
    const { on, value } = reading;
    const at = `measured.${index}`;
    const { interface: name, kind, side, which, parameter } = on;
    const isOfFace = name !== null || kind !== null;
    const isNone = parameter === null && name !== null && value === NONE;
    if ((parameter === null && !isNone) || (!isOfFace && (side ?? which) !== null)) {
      this.#faults.add(at, 'reading-of-no-face', {});
      return;
    }
    if (!isOfFace) this.#readOwn(reading, parameter ?? '', index);
    else this.#readOnFace(reading, index);
  }

  #readOwn(reading: PieceReading, id: string, index: number): void {
    const at = `measured.${index}`;
    const specs = [...this.#catalogue.roles.values()].flatMap((role) => role.values.get(id) ?? []);
    if (specs.length === 0) {
      const known = [...this.#catalogue.roles.values()].flatMap(({ values }) => [...values.keys()]);
      const meant = nearest(id, known);
      this.#faults.add(`${at}.on.parameter`, 'value-of-no-role', { name: id, meant });
      return;
    }
    if (!this.#isNew(id, reading, at)) return;
    this.values.push({ index, id, value: this.#valueOf(specs, reading, at) });
  }

  #readOnFace(reading: PieceReading, index: number): void {
    const { on } = reading;
    const at = `measured.${index}`;
    const kinds = this.#kindsOf(on, `${at}.on`);
    if (kinds === null) return;
    const { interface: name, parameter: id } = on;
    const which = name === null ? (on.which ?? 1) : 1;
    const place = JSON.stringify(name === null ? [on.kind, which] : [name]);
    const face = this.#faceAt(place, { ...on, which }, at);
    if (face === null) return;
    if (id === null) {
      if (face.readings.length > 0) this.#faults.add(at, 'measured-twice', {});
      face.none ??= index;
      return;
    }
    const specs = kinds.flatMap((kind) => kind.parameters.get(id) ?? []);
    if (specs.length === 0) {
      const known = kinds.flatMap(({ parameters }) => [...parameters.keys()]);
      const meant = nearest(id, known);
      this.#faults.add(`${at}.on.parameter`, 'parameter-of-no-kind', { name: id, meant });
      return;
    }
    if (face.none !== null) this.#faults.add(at, 'measured-twice', {});
    else if (this.#isNew(`${place}${id}`, reading, at)) {
      const value = this.#valueOf(specs, reading, at);
      face.readings = [...face.readings, { index, id, value }];
    }
  }

  /** What the face can be of; null where the question names what there is not. */
  #kindsOf({ interface: name, kind: id, side }: PieceOn, at: string): Kind[] | null {
    const { kinds } = this.#catalogue;
    const faults = this.#faults;
    const before = faults.found.length;
    if (name !== null) this.#checkName(name, `${at}.interface`);
    const kind = id === null ? null : checkOne(kinds, 'kind', { id, at: `${at}.kind` }, faults);
    const possible = kind === null ? [...kinds.values()] : [kind].flatMap((one) => one ?? []);
    const sides = possible.flatMap((one) => one.sides ?? []);
    if (side !== null && kind !== undefined && !sides.includes(side)) {
      const meant = nearest(side, sides);
      faults.add(`${at}.side`, 'side-of-no-kind', { name: side, meant });
    }
    return faults.found.length > before ? null : possible;
  }

  #checkName(name: string, at: string): void {
    const { roles, parts } = this.#catalogue;
    const isListed = [...roles.values()].some(({ faces }) => faces?.has(name) ?? false);
    if (isListed || [...parts.values()].some(({ faces }) => faces.has(name))) return;
    const known = new Set([
      ...[...roles.values()].flatMap(({ faces }) => [...(faces ?? [])]),
      ...[...parts.values()].flatMap(({ faces }) => [...faces.keys()]),
    ]);
    this.#faults.add(at, 'face-of-no-part', { name, meant: nearest(name, known) });
  }

  /** What is told of a face so far; null where the question takes it for two things. */
  #faceAt(place: string, on: PieceOn & { which: number }, at: string): Draft | null {
    const { interface: name, kind, side, which } = on;
    const known = this.#faces.get(place);
    if (known === undefined) {
      const face = { interface: name, kind, side, which, readings: [], none: null };
      this.#faces.set(place, face);
      return face;
    }
    const isOther = (one: string | null, other: string | null) =>
      one !== null && other !== null && one !== other;
    if (isOther(known.kind, kind) || isOther(known.side, side)) {
      this.#faults.add(`${at}.on`, 'two-faces-in-one', {});
      return null;
    }
    known.kind ??= kind;
    known.side ??= side;
    return known;
  }

  /** Whether nothing was read there before; something else would be two values of one thing. */
  #isNew(place: string, { value, tool }: PieceReading, at: string): boolean {
    const text = JSON.stringify([value, tool]);
    const known = this.#texts.get(place);
    if (known === undefined) this.#texts.set(place, text);
    else if (known !== text) this.#faults.add(at, 'measured-twice', {});
    return known === undefined;
  }

  /** In each form in which it can be read; where it can be read in none, the first says why. */
  #valueOf(specs: readonly ValueSpec[], { value, tool }: PieceReading, at: string): ToldValue {
    const found = new Map<string, Value>();
    const byForm = new Map(specs.map((spec) => [formOf(spec), spec]));
    const lists = [...byForm].map(([form, spec]) => {
      const list = faultList();
      const record = tool === null ? value : { is: value, tool };
      const read = compileValue(record, readAsMeasured(spec, tool), MEASURED, '', list);
      if (read !== null && list.isClean) found.set(form, { ...read, spec });
      return list;
    });
    const [first] = lists;
    if (found.size > 0 || first === undefined) return found;
    for (const { code: because, text } of first.faults) {
      const fault = { because, text, lang: FAULT_LANGUAGE };
      this.#faults.add(`${at}.value`, 'reading-at-fault', fault);
    }
    return found;
  }
}

/** A designation that was measured is a reading of it. */
function readAsMeasured(spec: ValueSpec, tool: string | null): ValueSpec {
  const isMeasured = tool !== null && toolOf(tool)?.reading === 'measures';
  return isMeasured && spec.type === 'designation' ? { ...spec, type: 'measured' } : spec;
}
