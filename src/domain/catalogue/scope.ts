/**
 * What names mean in a document: in a kind, the parameters of its two sides; in a role, the
 * part's own values; in a layout and its rules, positions, values, faces, adapters and facts.
 */

import type { ConditionScope } from '../check/compile.js';
import {
  compileTerm,
  type Reference,
  type ResolvedName,
  type Term,
  type TermShape,
} from '../check/term.js';
import type {
  Fact,
  Kind,
  Mating,
  Parameter,
  Part,
  Position,
  Role,
  ValueSpec,
} from './catalogue.js';
import { type FaultList, hint } from './faults.js';

const NONE: ReadonlySet<string> = new Set();

export function shapeOfSpec(spec: ValueSpec): TermShape {
  if (spec.type === 'code') return { is: 'code' };
  const { dimension } = spec;
  if (spec.isList) return { is: 'list', dimension };
  return { is: 'number', dimension, measured: spec.type === 'measured' };
}

/** The names of the two ends of a kind that has no sides. */
export const ENDS = ['a', 'b'] as const;

/** Names in a kind: `side.parameter`, and a bare parameter for both sides. */
export function kindScope(
  sides: readonly [string, string] | null,
  parameters: ReadonlyMap<string, Parameter>,
): ConditionScope {
  const names = sides ?? ENDS;
  return {
    positions: NONE,
    matings: NONE,
    parts: NONE,
    knowsCode: () => true,
    bothSides: (name) =>
      parameters.has(name) ? [`${names[0]}.${name}`, `${names[1]}.${name}`] : null,
    resolve: (name) => {
      const [side, word, ...more] = name.split('.');
      if (side === undefined || word === undefined || more.length > 0) {
        return `In a kind, names are "side.parameter": "${names[0]}.${name}"?`;
      }
      if (!names.includes(side)) return `There is no side "${side}".${hint(side, names)}`;
      const parameter = parameters.get(word);
      if (parameter === undefined) {
        return `There is no parameter "${word}".${hint(word, parameters.keys())}`;
      }
      if (parameter.of !== null && parameter.of !== side) {
        return `"${word}" belongs to the side "${parameter.of}", not to "${side}".`;
      }
      const reference: Reference = { of: 'side', side, parameter: word };
      return { reference, shape: shapeOfSpec(parameter) };
    },
  };
}

/** Names in a role's derived value: the part's other values. */
export function roleScope(specs: ReadonlyMap<string, ValueSpec>) {
  return {
    resolve: (name: string): ResolvedName | string => {
      const spec = specs.get(name);
      if (spec === undefined) {
        return `The role records no value "${name}".${hint(name, specs.keys())}`;
      }
      const reference: Reference = { of: 'side', side: 'own', parameter: name };
      return { reference, shape: shapeOfSpec(spec) };
    },
  };
}

export interface LayoutNames {
  readonly positions: ReadonlyMap<string, Position>;
  readonly matings: ReadonlyMap<string, Mating>;
  readonly rawTerms: Readonly<Record<string, unknown>>;
  readonly roles: ReadonlyMap<string, Role>;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly facts: ReadonlyMap<string, Fact>;
}

/** Names in a layout. Named terms are compiled when first met; a circle among them is a fault. */
export class LayoutScope implements ConditionScope {
  readonly positions: ReadonlySet<string>;
  readonly matings: ReadonlySet<string>;
  readonly parts: ReadonlySet<string>;
  readonly terms = new Map<string, Term>();
  readonly #names: LayoutNames;
  readonly #list: FaultList;
  readonly #pointer: string;
  readonly #open = new Set<string>();
  readonly #broken = new Set<string>();

  constructor(names: LayoutNames, pointer: string, list: FaultList) {
    this.#names = names;
    this.#list = list;
    this.#pointer = pointer;
    this.positions = new Set(names.positions.keys());
    this.matings = new Set(names.matings.keys());
    this.parts = names.partIds;
  }

  bothSides(): null {
    return null;
  }

  knowsCode(reference: Reference, code: string): boolean {
    const { roles, facts, partIds } = this.#names;
    if (reference.of === 'part') return partIds.has(code);
    if (reference.of === 'role') return roles.has(code);
    if (reference.of === 'fact') return facts.get(reference.fact)?.values.has(code) ?? false;
    return true;
  }

  resolve(name: string): ResolvedName | string {
    const words = name.split('.');
    const [first = '', second = '', third = ''] = words;
    if (words.some((word) => word === '') || words.length > 3) {
      return `"${name}" is no name: write "position.value" or "position.interface.parameter".`;
    }
    if (words.length === 1) return this.#term(first);
    if (words.length === 2) {
      return first === 'fact' ? this.#fact(second) : this.#value(first, second);
    }
    if (second === 'adapter' && this.matings.has(first)) return this.#adapter(first, third);
    return this.#face(first, second, third);
  }

  #term(name: string): ResolvedName | string {
    const { rawTerms } = this.#names;
    if (!Object.hasOwn(rawTerms, name)) {
      return `There is no term "${name}".${hint(name, Object.keys(rawTerms))}`;
    }
    const known = this.terms.get(name);
    if (known !== undefined) return { name, term: known };
    if (this.#open.has(name)) return `The term "${name}" is computed from itself.`;
    if (this.#broken.has(name)) return `The term "${name}" has a fault of its own.`;
    this.#open.add(name);
    const place = `${this.#pointer}/terms/${name}`;
    const term = compileTerm(rawTerms[name], this, place, this.#list);
    this.#open.delete(name);
    if (term === null) {
      this.#broken.add(name);
      return `The term "${name}" has a fault of its own.`;
    }
    this.terms.set(name, term);
    return { name, term };
  }

  #fact(fact: string): ResolvedName | string {
    if (!this.#names.facts.has(fact)) {
      return `There is no fact "${fact}".${hint(fact, this.#names.facts.keys())}`;
    }
    return { reference: { of: 'fact', fact }, shape: { is: 'code' } };
  }

  #position(id: string): Position | string {
    const position = this.#names.positions.get(id);
    return position ?? `There is no position "${id}".${hint(id, this.positions)}`;
  }

  #value(id: string, value: string): ResolvedName | string {
    const position = this.#position(id);
    if (typeof position === 'string') return position;
    if (value === 'part' || value === 'role') {
      return { reference: { of: value, position: id }, shape: { is: 'code' } };
    }
    const roles = position.roles.flatMap((role) => this.#names.roles.get(role) ?? []);
    const specs = roles.flatMap((role) => role.values.get(value) ?? []);
    const known = roles.flatMap((role) => [...role.values.keys()]);
    const spec = agreedSpec(specs);
    if (spec === null) {
      const odd = specs.length > 0 ? ' of one type and unit' : '';
      return `No role at "${id}" has a value "${value}"${odd}.${hint(value, known)}`;
    }
    return { reference: { of: 'value', position: id, value }, shape: shapeOfSpec(spec) };
  }

  #adapter(mating: string, value: string): ResolvedName | string {
    const specs = [...this.#names.roles.values()].flatMap((role) => role.values.get(value) ?? []);
    const spec = agreedSpec(specs);
    if (spec === null || spec.isList) {
      return `No role has a single value "${value}" of one type that adapters could add up.`;
    }
    return { reference: { of: 'adapter', mating, value }, shape: shapeOfSpec(spec) };
  }

  /** What a face's parameter is, is told by the faces of that name that parts here have. */
  #face(id: string, face: string, parameter: string): ResolvedName | string {
    const position = this.#position(id);
    if (typeof position === 'string') return position;
    const { parts, kinds } = this.#names;
    const own = [...parts.values()]
      .filter((part) => part.roles.some((role) => position.roles.includes(role)))
      .flatMap((part) => part.faces.get(face)?.kind?.parameters.get(parameter) ?? []);
    const anywhere = [...kinds.values()].flatMap((kind) => kind.parameters.get(parameter) ?? []);
    const spec = agreedSpec(own.length > 0 ? own : anywhere);
    if (spec === null) {
      return `No part at "${id}" shows what "${face}.${parameter}" is: no such face has it.`;
    }
    const reference: Reference = { of: 'face', position: id, interface: face, parameter };
    return { reference, shape: shapeOfSpec(spec) };
  }
}

/** The first of several specs, if all are of one type, dimension and form; null otherwise. */
function agreedSpec(specs: readonly ValueSpec[]): ValueSpec | null {
  const [first, ...others] = specs;
  if (first === undefined) return null;
  const alike = others.every(
    (spec) =>
      (spec.type === 'code') === (first.type === 'code') &&
      spec.dimension === first.dimension &&
      spec.isList === first.isList,
  );
  return alike ? first : null;
}
