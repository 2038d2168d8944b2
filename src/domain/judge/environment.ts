/**
 * Looks up what a layout's terms name, in one arrangement and for one hand.
 */

import type { Part, Position, RoleValue } from '../catalogue/catalogue.js';
import { madeFrom } from '../catalogue/trade.js';
import type { Environment, Setting } from '../check/evaluator.js';
import { type FactAddress, type Hand, NOWHERE, type Reading } from '../check/reading.js';
import type { Reference, TermShape } from '../check/term.js';
import { isPoint } from '../quantity/interval.js';
import {
  type Arrangement,
  adaptersIn,
  type Configuration,
  donorArticleAt,
  partAt,
  pieceOf,
  seatAt,
} from './configuration.js';
import { faceReading } from './meeting.js';
import { derivedReading, readingOf, unknownReading, type Where } from './readings.js';

export class LayoutEnvironment implements Environment {
  readonly #configuration: Configuration;
  readonly #arrangement: Arrangement;
  readonly #hand: Hand | null;
  readonly #setting: Setting;
  /** A check is read several times; references are the compiled layout's own. */
  readonly #known = new Map<Reference, Reading>();

  constructor(
    configuration: Configuration,
    arrangement: Arrangement,
    hand: Hand | null,
    setting: Setting,
  ) {
    this.#configuration = configuration;
    this.#arrangement = arrangement;
    this.#hand = hand;
    this.#setting = setting;
  }

  lookup(reference: Reference, shape: TermShape): Reading {
    let reading = this.#known.get(reference);
    if (reading === undefined) {
      reading = this.#find(reference, shape);
      this.#known.set(reference, reading);
    }
    return reading;
  }

  #find(reference: Reference, shape: TermShape): Reading {
    switch (reference.of) {
      case 'value':
        return this.#value(reference.position, reference.value, shape);
      case 'face':
        return this.#face(reference, shape);
      case 'part':
      case 'role':
        return this.#identity(reference.of, reference.position);
      case 'adapter':
        return this.#adapters(reference.mating, reference.value, shape);
      case 'fact':
        return this.#fact(reference.fact);
      case 'side':
        throw new Error('a layout has no sides');
    }
  }

  #handAt(position: Position | undefined): Hand | null {
    return position?.isHanded ? this.#hand : null;
  }

  #at(id: string) {
    const position = this.#configuration.layout.positions.get(id);
    const hand = this.#handAt(position);
    const seat = seatAt(this.#arrangement, id, hand);
    const part = partAt(this.#configuration, seat);
    const article = part?.id ?? donorArticleAt(this.#configuration, seat)?.id ?? null;
    const address: FactAddress = { ...NOWHERE, position: id, hand, part: article };
    const isEmpty = seat?.occupant.is === 'empty';
    return { position, hand, part, address, isEmpty };
  }

  #value(id: string, value: string, shape: TermShape): Reading {
    const { position, hand, part, address, isEmpty } = this.#at(id);
    if (isEmpty) return { form: 'empty', position: id };
    const { roles } = this.#configuration.catalogue;
    const here = { ...address, parameter: value };
    const path = `values.${value}`;
    const asked = this.#asked(position, value, here);
    if (asked !== null) return asked;
    if (part === null) {
      const piece = hand === null ? id : `${id}:${hand}`;
      return unknownReading(shape, { address: here, article: null, piece, path });
    }
    const where: Where = { address: here, article: part.id, piece: pieceOf(part, id, hand), path };
    const specs = part.roles.flatMap((role) => roles.get(role) ?? []);
    const spec = specs.map((role) => role.values.get(value)).find((found) => found !== undefined);
    if (spec === undefined) return unknownReading(shape, where);
    const own = specs.find((role) => role.values.has(value))?.values;
    return this.#recorded(part, spec, own ?? new Map(), where);
  }

  #recorded(
    part: Part,
    spec: RoleValue,
    own: ReadonlyMap<string, RoleValue>,
    where: Where,
  ): Reading {
    if (spec.term === null) return readingOf(part.values.get(spec.id), spec, where);
    return derivedReading(part, spec, own, where, this.#setting);
  }

  /** The question's torque, where the role says that a question may set it. */
  #asked(position: Position | undefined, value: string, address: FactAddress): Reading | null {
    const { torque, catalogue } = this.#configuration;
    if (torque === null || position === undefined) return null;
    const spec: RoleValue | undefined = position.roles
      .map((role) => catalogue.roles.get(role)?.values.get(value))
      .find((found) => found !== undefined);
    if (spec?.askedAs !== 'torque') return null;
    const { interval: domain, text } = torque;
    const key = isPoint(domain) ? null : 'asked torque';
    const common = {
      key,
      basis: null,
      address,
      text,
      tool: null,
      recorded: true,
      isAsked: true,
    } as const;
    const { dimension } = spec;
    return { ...common, form: 'number', domain, natural: domain, dimension };
  }

  #face(reference: Reference & { of: 'face' }, shape: TermShape): Reading {
    const { position: id, interface: name, parameter } = reference;
    const { hand, part, address, isEmpty } = this.#at(id);
    if (isEmpty) return { form: 'empty', position: id };
    const here = { ...address, interface: name, parameter };
    const path = `${name}.${parameter}`;
    const face = part?.faces.get(name);
    if (part === null || face === undefined) {
      const piece = hand === null ? id : `${id}:${hand}`;
      return unknownReading(shape, { address: here, article: part?.id ?? null, piece, path });
    }
    if (face.isAbsent) return { form: 'empty', position: id };
    const piece = pieceOf(part, id, hand);
    if (face.kind === null || !face.kind.parameters.has(parameter)) {
      return unknownReading(shape, { address: here, article: part.id, piece, path });
    }
    return faceReading({ part, face, piece, address }, face.kind, parameter);
  }

  #identity(of: 'part' | 'role', id: string): Reading {
    const { position, part, address, isEmpty } = this.#at(id);
    if (isEmpty) return { form: 'empty', position: id };
    const common = { form: 'code', key: null, basis: null, address, tool: null } as const;
    if (part === null) return { ...common, codes: null, text: null };
    // What is said of a part may or may not be true of what a work has made of it.
    if (of === 'part') return { ...common, key: part.id, codes: madeFrom(part.id), text: part.id };
    const codes = part.roles.filter((role) => position?.roles.includes(role));
    return { ...common, codes, text: codes.join(', ') };
  }

  #adapters(mating: string, value: string, shape: TermShape): Reading {
    const { catalogue } = this.#configuration;
    const adapters = adaptersIn(this.#arrangement, mating)?.parts ?? [];
    const items = adapters.map((id, index) => {
      const part = catalogue.parts.get(id);
      const address = { ...NOWHERE, mating, hand: this.#hand, part: id, parameter: value };
      const side = this.#hand === null ? '' : `:${this.#hand}`;
      const piece = `adapter ${mating} ${index}${side}`;
      const where: Where = { address, article: id, piece, path: `values.${value}` };
      const own = part?.roles
        .map((role) => catalogue.roles.get(role)?.values)
        .find((values) => values?.has(value) === true);
      const spec = own?.get(value);
      const reading =
        part === undefined || own === undefined || spec === undefined
          ? unknownReading(shape, where)
          : this.#recorded(part, spec, own, where);
      const { form } = reading;
      if (form === 'number' || form === 'range' || form === 'choice') return reading;
      throw new Error(`${value} of ${id} is no single number`);
    });
    return { form: 'several', items };
  }

  #fact(fact: string): Reading {
    const value = this.#configuration.vehicle.facts.get(fact);
    const address = { ...NOWHERE, fact };
    const codes = value === undefined ? null : [value];
    const { saidFacts, evidence } = this.#configuration.vehicle;
    const basis = saidFacts.has(fact) ? null : evidence.basis;
    return { form: 'code', key: null, basis, address, text: value ?? null, tool: null, codes };
  }
}
