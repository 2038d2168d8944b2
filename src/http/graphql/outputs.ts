/**
 * Answers as types of GraphQL: objects as they are, maps as lists of entries with a `key`, words of
 * closed lists as enumerations in capitals, words of lists that may grow as text.
 */

import {
  GraphQLEnumType,
  GraphQLError,
  type GraphQLFieldConfigMap,
  GraphQLList,
  GraphQLNonNull,
  GraphQLObjectType,
  type GraphQLOutputType,
  GraphQLString,
  GraphQLUnionType,
} from 'graphql';
import { hiddenFields } from '../../contract/views/fields.js';
import { type JsonSchema, type Read, type Schemas, typeOf } from '../json-schema.js';
import { capitalised, enumName, JSON_SCALAR, scalarOf } from './scalars.js';

type Answer = Readonly<Record<string, unknown>>;

/** Lists of words that are closed in v1; all others may grow. */
const CLOSED: ReadonlySet<string> = new Set([
  'Basis',
  'Grade',
  'NamedBy',
  'Outcome',
  'State',
  'Verdict',
]);

/** A type, and how a value of the answer becomes one of it; null for as it is. */
interface Output {
  readonly type: GraphQLOutputType;
  readonly resolve: ((value: unknown) => unknown) | null;
}

export class Outputs {
  readonly #schemas: Schemas;
  readonly #objects = new Map<string, GraphQLObjectType>();
  readonly #enums = new Map<string, GraphQLEnumType>();
  readonly #unions = new Map<string, GraphQLUnionType>();

  constructor(schemas: Schemas) {
    this.#schemas = schemas;
  }

  /** The type of a schema; `at` is what to call it if it has no name of its own. */
  typeOf(schema: JsonSchema, at: string): GraphQLOutputType {
    return this.#outputOf(schema, at).type;
  }

  /** The fields of an object, in the order of its schema, without some. */
  fieldsOf(
    schema: JsonSchema,
    at: string,
    without: readonly string[] = [],
  ): GraphQLFieldConfigMap<Answer, unknown> {
    const { schema: own, name: object } = this.#schemas.read(schema);
    const { properties = {}, required = [] } = own;
    const hidden = hiddenFields(object ?? at);
    const fields = Object.entries(properties)
      .filter(([name]) => !without.includes(name))
      .map(([name, property]): [string, GraphQLFieldConfigMap<Answer, unknown>[string]] => {
        const read = this.#schemas.read(property);
        const { type, resolve } = this.#outputOf(property, `${at}${capitalised(name)}`);
        const isSure = required.includes(name) && !read.isNullable;
        return [
          name,
          {
            type: isSure ? new GraphQLNonNull(type) : type,
            description: read.description,
            ...resolverOf(name, resolve, !hidden.has(name)),
          },
        ];
      });
    return Object.fromEntries(fields);
  }

  #outputOf(schema: JsonSchema, at: string): Output {
    const read = this.#schemas.read(schema);
    const { name, schema: own } = read;
    if (own.anyOf !== undefined) return this.#unionOf(read, name ?? at);
    if (own.enum !== undefined && typeOf(own) === 'string')
      return { type: this.#wordOf(read), resolve: null };
    switch (typeOf(own)) {
      case 'array':
        return this.#listOf(own, at);
      case 'object':
        return own.properties === undefined
          ? this.#entriesOf(own, at)
          : { type: this.#objectOf(own, name ?? at, read.description), resolve: null };
      default:
        return { type: scalarOf(own), resolve: null };
    }
  }

  #objectOf(schema: JsonSchema, name: string, description: string | null): GraphQLObjectType {
    const known = this.#objects.get(name);
    if (known !== undefined) return known;
    const made: GraphQLObjectType = new GraphQLObjectType({
      name,
      description,
      fields: () => this.fieldsOf(schema, name),
    });
    this.#objects.set(name, made);
    return made;
  }

  #listOf({ items = {} }: JsonSchema, at: string): Output {
    const { isNullable } = this.#schemas.read(items);
    const { type, resolve } = this.#outputOf(items, singular(at));
    const list = new GraphQLList(isNullable ? type : new GraphQLNonNull(type));
    if (resolve === null) return { type: list, resolve: null };
    return {
      type: list,
      resolve: (value) => (Array.isArray(value) ? value.map((one) => resolve(one)) : null),
    };
  }

  /** A map as a list: GraphQL has no objects whose fields nobody knows. */
  #entriesOf({ additionalProperties }: JsonSchema, at: string): Output {
    const isOpen = typeof additionalProperties !== 'object';
    if (isOpen || Object.keys(additionalProperties).length === 0) {
      return { type: JSON_SCALAR, resolve: null };
    }
    const name = `${at}Entry`;
    const { type } = this.#outputOf(additionalProperties, `${at}Value`);
    const { isNullable } = this.#schemas.read(additionalProperties);
    const entry =
      this.#objects.get(name) ??
      new GraphQLObjectType({
        name,
        description: 'One entry of what REST has as a map.',
        fields: {
          key: { type: new GraphQLNonNull(GraphQLString) },
          value: { type: isNullable ? type : new GraphQLNonNull(type) },
        },
      });
    this.#objects.set(name, entry);
    return {
      type: new GraphQLList(new GraphQLNonNull(entry)),
      resolve: (map) =>
        map === null ? null : Object.entries(map as Answer).map(([key, value]) => ({ key, value })),
    };
  }

  /** Words of lists that may grow are text: a client must take a new one for any other. */
  #wordOf({ name, schema, description }: Read): GraphQLOutputType {
    if (name === null || !CLOSED.has(name)) return GraphQLString;
    const known = this.#enums.get(name);
    if (known !== undefined) return known;
    const words = (schema.enum ?? []).flatMap((word) => word ?? []);
    const values = words.map((word) => [enumName(word), { value: word }] as const);
    const made = new GraphQLEnumType({ name, description, values: Object.fromEntries(values) });
    this.#enums.set(name, made);
    return made;
  }

  #unionOf({ schema, description }: Read, name: string): Output {
    const forms = (schema.anyOf ?? []).filter(({ type }) => type !== 'null');
    const reads = forms.map((one) => this.#schemas.read(one));
    if (reads.some(({ name: own, schema: one }) => own === null || one.properties === undefined)) {
      return { type: JSON_SCALAR, resolve: null };
    }
    const known = this.#unions.get(name);
    if (known !== undefined) return { type: known, resolve: null };
    const members = reads.map((read) => {
      const type = this.#objectOf(read.schema, read.name ?? '', read.description);
      return { type, required: read.schema.required ?? [] };
    });
    // The one with most fields first: another may have some of them.
    const tried = members.toSorted((a, b) => b.required.length - a.required.length);
    const made = new GraphQLUnionType({
      name,
      description,
      types: members.map(({ type }) => type),
      resolveType: (answer: Answer) =>
        tried.find(({ required }) => required.every((field) => field in answer))?.type.name,
    });
    this.#unions.set(name, made);
    return { type: made, resolve: null };
  }

  /** All objects and enumerations that were made, for those that only a union leads to. */
  get named(): readonly (GraphQLObjectType | GraphQLEnumType)[] {
    return [...this.#objects.values(), ...this.#enums.values()];
  }
}

/** What a view hides is not told as if nothing were recorded. */
function resolverOf(name: string, resolve: Output['resolve'], isOpen: boolean) {
  if (isOpen && resolve === null) return {};
  return {
    resolve: (answer: Answer) => {
      if (!isOpen && !(name in answer)) throw notShown(name);
      const value = answer[name] ?? null;
      return resolve === null ? value : resolve(value);
    },
  };
}

function notShown(field: string): GraphQLError {
  return new GraphQLError(`The view that this is answered in does not show "${field}".`, {
    extensions: { code: 'not-granted', status: 403 },
  });
}

function singular(name: string): string {
  return name.endsWith('s') && !name.endsWith('ss') ? name.slice(0, -1) : name;
}
