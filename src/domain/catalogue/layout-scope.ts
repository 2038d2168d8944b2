/**
 * What names mean in a layout and its rules: positions and their values, faces, adapters, facts
 * and the layout's named terms.
 */

import type { ConditionScope } from '../check/compile.js';
import {
  compileTerm,
  DEEPEST_TERM,
  type Reference,
  type ResolvedName,
  type Term,
} from '../check/term.js';
import type { Fact, Kind, Mating, Part, Position, Role, ValueSpec } from './catalogue.js';
import { at, type FaultList, quoted, sayCircle } from './faults.js';
import { inside } from './lost-names.js';
import { shapeOfSpec } from './value.js';

export interface LayoutNames {
  /** The id of the layout. */
  readonly id: string;
  readonly positions: ReadonlyMap<string, Position>;
  readonly matings: ReadonlyMap<string, Mating>;
  readonly rawTerms: Readonly<Record<string, unknown>>;
  readonly roles: ReadonlyMap<string, Role>;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly facts: ReadonlyMap<string, Fact>;
}

/** A reference, why there is none, or null where the fault lies with what is named. */
type Found = ResolvedName | string | null;

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
  readonly #termNames: readonly string[];
  readonly #broken = new Set<string>();
  readonly #faces = new Map<string, Found>();

  constructor(names: LayoutNames, pointer: string, list: FaultList) {
    this.#names = names;
    this.#list = list;
    this.#pointer = pointer;
    this.positions = new Set(names.positions.keys());
    this.matings = new Set(names.matings.keys());
    this.parts = names.partIds;
    const { rawTerms } = names;
    this.#termNames = Object.keys(rawTerms).filter((term) => rawTerms[term] !== undefined);
  }

  bothSides(): null {
    return null;
  }

  isLost(sort: 'positions' | 'matings' | 'parts', name: string): boolean {
    const space = sort === 'parts' ? sort : inside('layouts', this.#names.id, sort);
    return this.#list.lost.excuses(space, name, this[sort]);
  }

  /** Whether the roles of a position are not all known, so that nobody can say what it may have. */
  #isBlind(position: string): boolean {
    return this.#list.lost.has(inside('layouts', this.#names.id, 'roles'), position);
  }

  knowsCode(reference: Reference, code: string): boolean {
    const { lost } = this.#list;
    if (reference.of === 'fact') {
      const fact = this.#names.facts.get(reference.fact);
      if (fact === undefined || fact.values.has(code)) return true;
      const space = inside('facts', reference.fact, 'values');
      return lost.excuses(space, code, fact.values.keys());
    }
    const { roles } = this.#names;
    if (reference.of === 'part') return this.parts.has(code) || this.isLost('parts', code);
    if (reference.of !== 'role') return true;
    return roles.has(code) || lost.excuses('roles', code, roles.keys());
  }

  codesOf(reference: Reference): Iterable<string> {
    if (reference.of === 'part') return this.parts;
    if (reference.of === 'role') return this.#names.roles.keys();
    if (reference.of !== 'fact') return [];
    return this.#names.facts.get(reference.fact)?.values.keys() ?? [];
  }

  resolve(name: string): Found {
    const words = name.split('.');
    const [first = '', second = '', third = ''] = words;
    if (words.some((word) => word === '') || words.length > 3) {
      const form = 'write "position.value" or "position.interface.parameter"';
      return `${quoted(name)} is no name: ${form}.`;
    }
    if (words.length === 1) return this.#term(first);
    if (words.length === 2) {
      return first === 'fact' ? this.#fact(second) : this.#value(first, second);
    }
    if (second === 'adapter' && !this.positions.has(first)) return this.#adapter(first, third);
    return this.#face(first, second, third);
  }

  #term(name: string): Found {
    const { rawTerms } = this.#names;
    if (!Object.hasOwn(rawTerms, name)) {
      const space = inside('layouts', this.#names.id, 'terms');
      if (this.#list.lost.excuses(space, name, this.#termNames)) return null;
      return `There is no term ${quoted(name)}.${this.#list.guess(name, this.#termNames)}`;
    }
    const known = this.terms.get(name);
    if (known !== undefined) return { name, term: known };
    if (this.#broken.has(name) || rawTerms[name] === undefined) return null;
    const place = at(at(this.#pointer, 'terms'), name);
    if (this.#open.has(name)) {
      this.#broken.add(name);
      const circle = [...this.#open, name].slice([...this.#open].indexOf(name));
      this.#list.fault(place, 'circle', sayCircle(circle));
      return null;
    }
    if (this.#open.size > DEEPEST_TERM) {
      const [outermost = name] = this.#open;
      const text = `Terms may name one another ${DEEPEST_TERM} deep at most.`;
      this.#list.fault(at(at(this.#pointer, 'terms'), outermost), 'too-deep', text);
      return null;
    }
    this.#open.add(name);
    const term = compileTerm(rawTerms[name], this, place, this.#list);
    this.#open.delete(name);
    if (term === null) {
      this.#broken.add(name);
      return null;
    }
    this.terms.set(name, term);
    return { name, term };
  }

  #fact(fact: string): Found {
    const { facts } = this.#names;
    if (facts.has(fact) || this.#list.lost.excuses('facts', fact, facts.keys())) {
      return { reference: { of: 'fact', fact }, shape: { is: 'code' } };
    }
    return `There is no fact ${quoted(fact)}.${this.#list.guess(fact, facts.keys())}`;
  }

  #position(id: string): Position | string | null {
    const position = this.#names.positions.get(id);
    if (position !== undefined) return position;
    if (this.isLost('positions', id)) return null;
    return `There is no position ${quoted(id)}.${this.#list.guess(id, this.positions)}`;
  }

  #value(id: string, value: string): Found {
    const position = this.#position(id);
    if (position === null || typeof position === 'string') return position;
    if (value === 'part' || value === 'role') {
      return { reference: { of: value, position: id }, shape: { is: 'code' } };
    }
    const roles = position.roles.flatMap((role) => this.#names.roles.get(role) ?? []);
    const specs = roles.flatMap((role) => role.values.get(value) ?? []);
    const spec = agreedSpec(specs);
    if (spec !== null) {
      return { reference: { of: 'value', position: id, value }, shape: shapeOfSpec(spec) };
    }
    if (specs.length > 0) {
      return `The roles at "${id}" have a value "${value}" of different types or units.`;
    }
    const { lost } = this.#list;
    const isLost =
      this.#isBlind(id) ||
      position.roles.some((role) => lost.has('roles', role)) ||
      roles.some((role) => this.#isLostValue(role, value));
    if (isLost) return null;
    const known = roles.flatMap((role) => [...role.values.keys()]);
    return `No role at "${id}" has a value ${quoted(value)}.${this.#list.guess(value, known)}`;
  }

  #adapter(mating: string, value: string): Found {
    if (!this.matings.has(mating)) {
      if (this.isLost('matings', mating)) return null;
      return `There is no mating ${quoted(mating)}.${this.#list.guess(mating, this.matings)}`;
    }
    const roles = [...this.#names.roles.values()];
    const specs = roles.flatMap((role) => role.values.get(value) ?? []);
    const spec = agreedSpec(specs);
    if (spec !== null && !spec.isList && spec.type !== 'code') {
      return { reference: { of: 'adapter', mating, value }, shape: shapeOfSpec(spec) };
    }
    if (specs.length > 0) {
      return `Adapters cannot add up "${value}": it is no single number of one unit.`;
    }
    const { lost } = this.#list;
    const isLost = lost.hasAny('roles') || roles.some((role) => this.#isLostValue(role, value));
    if (isLost) return null;
    const known = roles.flatMap((role) => [...role.values.keys()]);
    const meant = this.#list.guess(value, known);
    return `No role has a value ${quoted(value)}, so no adapter can.${meant}`;
  }

  #isLostValue(role: Role, value: string): boolean {
    const space = inside('roles', role.id, 'values');
    return this.#list.lost.excuses(space, value, role.values.keys());
  }

  #face(id: string, face: string, parameter: string): Found {
    const key = `${id}.${face}.${parameter}`;
    const known = this.#faces.get(key);
    if (known !== undefined) return known;
    const found = this.#findFace(id, face, parameter);
    this.#faces.set(key, found);
    return found;
  }

  /** What a face's parameter is, is told by the faces of that name that parts here have. */
  #findFace(id: string, face: string, parameter: string): Found {
    const position = this.#position(id);
    if (position === null || typeof position === 'string') return position;
    const { parts, kinds } = this.#names;
    const here = [...parts.values()]
      .filter((part) => part.roles.some((role) => position.roles.includes(role)))
      .flatMap((part) => part.faces.get(face)?.kind ?? []);
    const own = here.flatMap((kind) => kind.parameters.get(parameter) ?? []);
    const anywhere = [...kinds.values()].flatMap((kind) => kind.parameters.get(parameter) ?? []);
    const specs = own.length > 0 ? own : anywhere;
    const spec = agreedSpec(specs);
    const missing = this.#withoutFace(position, face);
    if (missing !== null) return missing;
    if (spec !== null) {
      const reference: Reference = { of: 'face', position: id, interface: face, parameter };
      return { reference, shape: shapeOfSpec(spec) };
    }
    if (own.length > 0) {
      return `The parts at "${id}" record "${face}.${parameter}" in different types or units.`;
    }
    if (this.#mayBeLost(parameter)) return null;
    const near = here.length > 0 ? here : [...kinds.values()];
    const names = near.flatMap((kind) => [...kind.parameters.keys()]);
    const said = `No part at "${id}" shows what ${quoted(`${face}.${parameter}`)} is`;
    return `${said}.${anywhere.length > 0 ? '' : this.#list.guess(parameter, names)}`;
  }

  /** A parameter that no kind is known to have can be one of a kind that has a fault. */
  #mayBeLost(parameter: string): boolean {
    const { lost } = this.#list;
    return (
      lost.hasAny('kinds') ||
      [...this.#names.kinds.values()].some(({ id, parameters }) =>
        lost.excuses(inside('kinds', id, 'parameters'), parameter, parameters.keys()),
      )
    );
  }

  /** Why no part here can have the face; null where one may. */
  #withoutFace(position: Position, face: string): string | null {
    if (this.#isBlind(position.id)) return null;
    return facelessness(position, face, this.#names.roles, this.#list);
  }
}

/**
 * Why nothing at a position can have a face: each of its roles lists its faces, and none of them
 * this one. Null where something may have it.
 */
export function facelessness(
  position: Position,
  face: string,
  roles: ReadonlyMap<string, Role>,
  list: FaultList,
): string | null {
  const listed: string[] = [];
  for (const id of position.roles) {
    const faces = roles.get(id)?.faces ?? null;
    if (faces === null || list.lost.has(inside('roles', id, 'faces'), face)) return null;
    listed.push(...faces);
  }
  if (listed.includes(face) || position.roles.length === 0) return null;
  return `No role at "${position.id}" has a face ${quoted(face)}.${list.guess(face, listed)}`;
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
