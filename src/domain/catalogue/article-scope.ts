/**
 * What names mean to a work, which looks at one part and gives it other values: its role, the part
 * itself, its values, and the parameters of its faces. What a value is, is told by all roles that
 * have it; what a parameter is, by the faces of that name that parts have.
 */

import type { ConditionScope } from '../check/compile.js';
import type { Reference } from '../check/term.js';
import type { Kind, Parameter, Part, Role, RoleValue, ValueSpec } from './catalogue.js';
import { type FaultList, quoted } from './faults.js';
import { inside } from './lost-names.js';
import { ARTICLE } from './trade.js';
import { shapeOfSpec } from './value.js';

export interface ArticleNames {
  readonly roles: ReadonlyMap<string, Role>;
  readonly kinds: ReadonlyMap<string, Kind>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
}

/** What a name is, why there is no such thing, or null where the fault lies with what is named. */
type Found<Spec> = Spec | string | null;

const NONE: ReadonlySet<string> = new Set();

export class ArticleScope implements ConditionScope {
  readonly positions = NONE;
  readonly matings = NONE;
  readonly parts: ReadonlySet<string>;
  readonly #names: ArticleNames;
  readonly #list: FaultList;
  readonly #faces = new Map<string, Kind[]>();
  readonly #values = new Map<string, RoleValue[]>();

  constructor(names: ArticleNames, list: FaultList) {
    this.#names = names;
    this.#list = list;
    this.parts = names.partIds;
    for (const { faces } of names.parts.values()) {
      for (const { name, kind } of faces.values()) {
        const known = this.#faces.get(name) ?? [];
        if (kind !== null && !known.includes(kind)) known.push(kind);
        this.#faces.set(name, known);
      }
    }
    for (const { values } of names.roles.values()) {
      for (const [id, spec] of values) {
        this.#values.set(id, [...(this.#values.get(id) ?? []), spec]);
      }
    }
  }

  bothSides(): null {
    return null;
  }

  isLost(sort: 'positions' | 'matings' | 'parts', name: string): boolean {
    return sort === 'parts' && this.#list.lost.excuses('parts', name, this.parts);
  }

  knowsCode(reference: Reference, code: string): boolean {
    const { roles } = this.#names;
    if (reference.of === 'part') return this.parts.has(code) || this.isLost('parts', code);
    if (reference.of !== 'role') return true;
    return roles.has(code) || this.#list.lost.excuses('roles', code, roles.keys());
  }

  codesOf(reference: Reference): Iterable<string> {
    if (reference.of === 'part') return this.parts;
    return reference.of === 'role' ? this.#names.roles.keys() : [];
  }

  resolve(name: string) {
    const [first = '', second, ...more] = name.split('.');
    if (first === '' || second === '' || more.length > 0) {
      return `${quoted(name)} is no name: write "value" or "interface.parameter" of the part.`;
    }
    if (second !== undefined) {
      const spec = this.parameter(first, second);
      if (spec === null || typeof spec === 'string') return spec;
      const face = { interface: first, parameter: second };
      const reference: Reference = { of: 'face', position: ARTICLE, ...face };
      return { reference, shape: shapeOfSpec(spec) };
    }
    if (first === 'part' || first === 'role') {
      const reference: Reference = { of: first, position: ARTICLE };
      return { reference, shape: { is: 'code' as const } };
    }
    const spec = this.value(first);
    if (spec === null || typeof spec === 'string') return spec;
    const reference: Reference = { of: 'value', position: ARTICLE, value: first };
    return { reference, shape: shapeOfSpec(spec) };
  }

  /** The value of that name that parts can have. */
  value(name: string): Found<RoleValue> {
    const { lost } = this.#list;
    const specs = this.#values.get(name) ?? [];
    const spec = agreed(specs);
    if (spec !== null) return spec;
    if (specs.length > 0) return `Roles have a value ${quoted(name)} of different types or units.`;
    const isLost =
      lost.hasAny('roles') ||
      [...this.#names.roles.values()].some(({ id, values }) =>
        lost.excuses(inside('roles', id, 'values'), name, values.keys()),
      );
    if (isLost) return null;
    const said = `No role has a value ${quoted(name)}.`;
    return `${said}${this.#list.guess(name, this.#values.keys())}`;
  }

  /** Whether it is what some part can bear; true too where nobody can say. */
  mayBeRating(name: string): boolean {
    const isRating = this.#values.get(name)?.some((spec) => spec.isRating) ?? false;
    return isRating || this.#list.lost.hasAny('roles');
  }

  /** The parameter of faces of that name. */
  parameter(face: string, parameter: string): Found<Parameter> {
    const kinds = this.#faces.get(face);
    if (kinds === undefined) {
      if (this.#mayBeLostFace(face)) return null;
      const known = [...this.#faces.keys()];
      return `No part records a face ${quoted(face)}.${this.#list.guess(face, known)}`;
    }
    const specs = kinds.flatMap(({ parameters }) => parameters.get(parameter) ?? []);
    const spec = agreed(specs);
    if (spec !== null) return spec;
    const full = quoted(`${face}.${parameter}`);
    if (specs.length > 0) return `Parts record ${full} in different types or units.`;
    const { lost } = this.#list;
    const isLost =
      this.#mayBeLostFace(face) ||
      kinds.some(({ id, parameters }) =>
        lost.excuses(inside('kinds', id, 'parameters'), parameter, parameters.keys()),
      );
    if (isLost) return null;
    const known = kinds.flatMap(({ parameters }) => [...parameters.keys()]);
    return `No part shows what ${full} is.${this.#list.guess(parameter, known)}`;
  }

  /** The kinds of which parts record a face of that name. */
  kindsOf(face: string): readonly Kind[] {
    return this.#faces.get(face) ?? [];
  }

  #mayBeLostFace(face: string): boolean {
    const { lost } = this.#list;
    return (
      lost.hasAny('parts') ||
      lost.hasAny('kinds') ||
      [...this.#names.parts.keys()].some((id) => lost.has(inside('parts', id, 'faces'), face))
    );
  }
}

/** The first of several specs, if a value of it is one of all. */
function agreed<Spec extends ValueSpec>(specs: readonly Spec[]): Spec | null {
  const [first] = specs;
  return first !== undefined && specs.every((spec) => isSameSpec(spec, first)) ? first : null;
}

/** Whether a value of one spec is a value of the other, word for word. */
export function isSameSpec(a: ValueSpec, b: ValueSpec): boolean {
  return a.type === b.type && a.dimension === b.dimension && a.isList === b.isList;
}
