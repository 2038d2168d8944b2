/**
 * Takes out of an answer what a view does not show: by the schemas of the contract, object by
 * object, so that a field that stands at two places is shown or hidden at both.
 *
 * An answer is judged whole and then cut: what decides is the same for everybody.
 */

import type { View } from '../contract/view.js';
import { fieldsIn } from '../contract/views/fields.js';
import { type JsonSchema, Schemas, typeOf } from './json-schema.js';

/** Cuts a value; the value itself where nothing of it is hidden. */
type Cut = (value: unknown) => unknown;

type Fields = Readonly<Record<string, unknown>>;

const WHOLE: Cut = (value) => value;

export class Shown {
  readonly #schemas: () => Schemas;
  readonly #objects = new Map<string, Cut>();

  constructor(schemas: () => Schemas) {
    this.#schemas = schemas;
  }

  /** What a path answers with, cut for a view. */
  answer(path: string, view: View, answer: object): object {
    if (view === 'full') return answer;
    const schema = this.#schemas().answerAt(path);
    if (schema === null) throw new Error(`${path} answers with no JSON`);
    return this.#cut(schema, view)(answer) as object;
  }

  /** The same for an object of the contract, by its name. */
  object(name: string, view: View, value: object): object {
    if (view === 'full') return value;
    return this.#cut(this.#schemas().component(name), view)(value) as object;
  }

  #cut(schema: JsonSchema, view: View): Cut {
    const { name, schema: own } = this.#schemas().read(schema);
    const key = name === null ? null : `${view} ${name}`;
    const known = key === null ? undefined : this.#objects.get(key);
    if (known !== undefined) return known;
    if (own.anyOf !== undefined) return this.#oneOf(own.anyOf, view);
    switch (typeOf(own)) {
      case 'array':
        return this.#list(own, view);
      case 'object':
        if (own.properties === undefined) return this.#map(own, view);
        return this.#object(own, { name, key, view });
      default:
        return WHOLE;
    }
  }

  #object(
    { properties = {} }: JsonSchema,
    { name, key, view }: { name: string | null; key: string | null; view: View },
  ): Cut {
    const names = Object.keys(properties);
    // What has no name of its own is a part of what it stands in.
    const shown = name === null ? new Set(names) : fieldsIn(view, name);
    let cuts: (readonly [string, Cut])[] | null = null;
    const cut: Cut = (value) => {
      if (typeof value !== 'object' || value === null) return value;
      // Made when it is first used: an object may have others of its kind in it.
      cuts ??= names
        .filter((field) => shown.has(field))
        .map((field) => [field, this.#cut(properties[field] ?? {}, view)] as const);
      const left: Record<string, unknown> = {};
      for (const [field, inner] of cuts) {
        if (field in value) left[field] = inner((value as Fields)[field]);
      }
      return left;
    };
    if (key !== null) this.#objects.set(key, cut);
    return cut;
  }

  #list({ items = {} }: JsonSchema, view: View): Cut {
    const cut = this.#cut(items, view);
    if (cut === WHOLE) return WHOLE;
    return (value) => (Array.isArray(value) ? value.map(cut) : value);
  }

  #map({ additionalProperties }: JsonSchema, view: View): Cut {
    if (typeof additionalProperties !== 'object') return WHOLE;
    const cut = this.#cut(additionalProperties, view);
    if (cut === WHOLE) return WHOLE;
    return (value) => {
      if (typeof value !== 'object' || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, cut(one)]));
    };
  }

  /** Of several forms the one that has every field of the object, and lacks none that it needs. */
  #oneOf(forms: readonly JsonSchema[], view: View): Cut {
    const objects = forms
      .map((form) => ({ form, ...this.#schemas().read(form).schema }))
      .filter(({ properties }) => properties !== undefined);
    if (objects.length === 0) return WHOLE;
    return (value) => {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
      const found = objects.find(
        ({ properties = {}, required = [] }) =>
          required.every((field) => field in value) &&
          Object.keys(value).every((field) => field in properties),
      );
      if (found === undefined) throw new Error('an answer is of none of the forms it can have');
      return this.#cut(found.form, view)(value);
    };
  }
}

/** Of the whole program: the document is the same for all services in it. */
export function shownBySchemas(): Shown {
  made ??= new Shown(() => {
    schemas ??= new Schemas();
    return schemas;
  });
  return made;
}

let made: Shown | null = null;
let schemas: Schemas | null = null;
