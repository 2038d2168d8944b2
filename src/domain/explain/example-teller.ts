/**
 * Makes the data of examples in one language: the names of the demo world, and values as that
 * language writes them.
 */

import type { Text } from '../catalogue/document.js';
import type { ExampleFace, ExampleParameter, ExamplePart, ExamplePlace } from './example-world.js';
import { textIn } from './language.js';
import type { NumberWords } from './number-words.js';
import { writeRecorded } from './numbers.js';
import type { Named, NamedValue, ReasonCode, ReasonData, ShownValue } from './reason.js';

/** What an example is of: the data of one reason. */
export type CodeExample = (tell: Teller) => ReasonData;

const NOBODY: Named = {
  position: null,
  positionName: null,
  hand: null,
  part: null,
  partName: null,
  interface: null,
  kindName: null,
};

export interface TellerOptions {
  readonly lang: string;
  readonly numbers: NumberWords;
  /** The sentence of the example of another code, in the same language. */
  readonly said: (code: ReasonCode) => string;
}

export class Teller {
  readonly #lang: string;
  readonly #numbers: NumberWords;
  /** As a line says what would not hold without it, and a way out what is taken back. */
  readonly said: (code: ReasonCode) => string;

  constructor({ lang, numbers, said }: TellerOptions) {
    this.#lang = lang;
    this.#numbers = numbers;
    this.said = said;
  }

  text(text: Text): string {
    return textIn(text, this.#lang, 'en').text;
  }

  /** A part at its place. */
  part(part: ExamplePart): Named {
    return {
      ...(part.place === null ? NOBODY : this.place(part.place)),
      hand: part.hand ?? null,
      part: part.part,
      partName: this.text(part.name),
    };
  }

  /** A part by itself. */
  loose(part: ExamplePart): Named {
    return this.part({ part: part.part, name: part.name, place: null });
  }

  /** A place where nothing is fitted, or nobody knows what. */
  place({ position, name }: ExamplePlace): Named {
    return { ...NOBODY, position, positionName: this.text(name) };
  }

  face(part: ExamplePart, { face, kind }: ExampleFace): Named {
    const kindName = kind === null ? null : this.text(kind);
    return { ...this.part(part), interface: face, kindName };
  }

  /** A value of a face. */
  onFace(
    part: ExamplePart,
    face: ExampleFace,
    parameter: ExampleParameter,
    value: ShownValue | null,
  ): NamedValue {
    return this.#value(this.face(part, face), parameter, value);
  }

  /** A value of the part itself. */
  ofPart(part: ExamplePart, parameter: ExampleParameter, value: ShownValue | null): NamedValue {
    return this.#value(this.part(part), parameter, value);
  }

  /** A fact of the vehicle, or a value that is computed. */
  term(parameter: ExampleParameter, value: ShownValue | null): NamedValue {
    return this.#value(NOBODY, parameter, value);
  }

  /** What is not known of a vehicle, which is of no part. */
  nobody(): Named {
    return NOBODY;
  }

  #value(
    named: Named,
    { parameter, name }: ExampleParameter,
    value: ShownValue | null,
  ): NamedValue {
    return { ...named, parameter, parameterName: this.text(name), value };
  }

  /** As somebody recorded it. */
  shown(text: string, [low, high]: readonly [string | null, string | null]): ShownValue {
    const unit = text.split(' ').at(-1) ?? '';
    return { text: writeRecorded(text, this.#numbers), low, high, unit };
  }

  /** One exact value: `one('47', 'mm')`. */
  one(value: string, unit: string): ShownValue {
    const text = unit === '' ? value : `${value} ${unit}`;
    return { text: writeRecorded(text, this.#numbers), low: value, high: value, unit };
  }

  /** Within its tolerance to either side. */
  give(half: string, unit: string): ShownValue {
    const text = `±${this.#numbers.digits(half)} ${unit}`;
    return { text, low: `-${half}`, high: half, unit };
  }

  /** A code, such as the name of a standard. */
  word(text: string): ShownValue {
    return { text, low: null, high: null, unit: '' };
  }

  /** A share in per cent. */
  share(value: string): ShownValue {
    return { text: `${this.#numbers.digits(value)} %`, low: value, high: value, unit: '%' };
  }

  money(value: string): ShownValue {
    return { text: `${this.#numbers.digits(value)} EUR`, low: value, high: value, unit: 'EUR' };
  }
}
