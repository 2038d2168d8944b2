/**
 * Questions as types of GraphQL, and how what is given comes to what REST takes: maps are lists of
 * entries with a `key`, and where a field has one of several forms, its type takes exactly one.
 */

import {
  GraphQLBoolean,
  GraphQLEnumType,
  GraphQLInputObjectType,
  type GraphQLInputType,
  GraphQLList,
  GraphQLNonNull,
  GraphQLString,
  getNamedType,
} from 'graphql';
import { type JsonSchema, type Read, type Schemas, typeOf } from '../json-schema.js';
import { capitalised, enumName, JSON_SCALAR, scalarOf } from './scalars.js';

type Given = Readonly<Record<string, unknown>>;

/** A type, and what REST has in place of a value of it. */
export interface Input {
  readonly type: GraphQLInputType;
  readonly toJson: (given: unknown) => unknown;
}

const AS_IT_IS = (given: unknown): unknown => given;

/** One of the forms that a field may have. */
interface Form {
  readonly key: string;
  readonly input: Input;
}

/** What a form is called, by the component that it is; else what it is of. */
const FORM_NAMES: ReadonlyMap<string, string> = new Map([
  ['WantedPart', 'part'],
  ['WantedLot', 'lot'],
  ['WantedLoad', 'load'],
  ['PlaceCondition', 'condition'],
  ['AvoidedPart', 'part'],
  ['AvoidedSupplier', 'supplier'],
  ['OwnOfferOfPart', 'part'],
  ['OwnOfferOfLot', 'lot'],
  ['OwnOfferOfWork', 'work'],
  ['OwnOfferUnderSku', 'sku'],
  ['RecordedEnd', 'recorded'],
  ['InlineEnd', 'inline'],
]);

/** What one name and several of them are called, by the type that takes them. */
const SCALAR_FORMS: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['FittedInput', ['part', 'parts']],
  ['CompanionInput', ['part', 'parts']],
  ['PartInput', ['name', 'names']],
  ['LotsInput', ['id', 'ids']],
]);

/** Words that stand for something else than a name, by the type that takes them. */
const WORDS: ReadonlyMap<string, readonly string[]> = new Map([
  ['FittedInput', ['none', 'unknown']],
  ['LotsInput', ['all', 'none']],
]);

export class Inputs {
  readonly #schemas: Schemas;
  readonly #objects = new Map<string, Input>();
  readonly #enums = new Map<string, GraphQLEnumType>();

  constructor(schemas: Schemas) {
    this.#schemas = schemas;
  }

  /** The fields of a question, each with what it becomes. */
  fieldsOf(
    question: JsonSchema,
    without: readonly string[],
    owner = '',
  ): ReadonlyMap<string, Input> {
    const { properties = {}, required = [] } = question;
    const fields = Object.entries(properties)
      .filter(([name]) => !without.includes(name))
      .map(([name, property]): [string, Input] => {
        const input = this.#inputOf(property, capitalised(name), owner);
        const { type, toJson } = input;
        return [name, { type: required.includes(name) ? new GraphQLNonNull(type) : type, toJson }];
      });
    return new Map(fields);
  }

  #inputOf(schema: JsonSchema, at: string, owner = ''): Input {
    const read = this.#schemas.read(schema);
    const { name, schema: own } = read;
    if (own.anyOf !== undefined)
      return this.#oneOf(read, `${name ?? this.#commonName(own) ?? at}Input`);
    if (own.enum !== undefined && typeOf(own) === 'string')
      return this.#wordOf(own, name ?? at, owner);
    switch (typeOf(own)) {
      case 'array':
        return this.#listOf(own, at, owner);
      case 'object':
        if (own.properties !== undefined) return this.#objectOf(own, `${name ?? at}Input`);
        return this.#entriesOf(own, at);
      default:
        return { type: scalarOf(own), toJson: AS_IT_IS };
    }
  }

  /** Two lists of words that are called alike are told apart by what they are asked of. */
  #wordOf({ enum: words = [] }: JsonSchema, called: string, owner: string): Input {
    const own = words.flatMap((word) => word ?? []);
    const isOther = (name: string) => {
      const known = this.#enums.get(name)?.getValues();
      return known !== undefined && known.map(({ value }) => String(value)).join() !== own.join();
    };
    const name = isOther(called) ? `${owner}${called}` : called;
    const values = own.map((word) => [enumName(word), { value: word }] as const);
    const type =
      this.#enums.get(name) ??
      new GraphQLEnumType({ name: `${name}Choice`, values: Object.fromEntries(values) });
    this.#enums.set(name, type);
    return { type, toJson: AS_IT_IS };
  }

  /** What the forms of a field that has no name of its own have in common in theirs. */
  #commonName({ anyOf = [] }: JsonSchema): string | null {
    const names = anyOf.map((form) => this.#schemas.read(form).name);
    const [first = null, ...others] = names;
    for (let from = 1; from < (first ?? '').length; from += 1) {
      const end = first?.slice(from) ?? '';
      if (/^[A-Z]/.test(end) && others.every((name) => name?.endsWith(end) === true)) return end;
    }
    return null;
  }

  #listOf({ items = {} }: JsonSchema, at: string, owner: string): Input {
    const { type, toJson } = this.#inputOf(items, at, owner);
    return {
      type: new GraphQLList(new GraphQLNonNull(type)),
      toJson: (given) => (Array.isArray(given) ? given.map((one) => toJson(one)) : given),
    };
  }

  #objectOf(schema: JsonSchema, name: string): Input {
    const known = this.#objects.get(name);
    if (known !== undefined) return known;
    const fields = this.fieldsOf(schema, []);
    const made: Input = {
      type: new GraphQLInputObjectType({
        name,
        fields: Object.fromEntries([...fields].map(([field, { type }]) => [field, { type }])),
      }),
      toJson: (given) => jsonOf(fields, given as Given),
    };
    this.#objects.set(name, made);
    return made;
  }

  /** A map, or a family of parameters, as a list of entries. */
  #entriesOf({ additionalProperties, patternProperties }: JsonSchema, at: string): Input {
    const [pattern] = Object.values(patternProperties ?? {});
    const value = pattern ?? additionalProperties;
    if (typeof value !== 'object' || Object.keys(value).length === 0) {
      return { type: JSON_SCALAR, toJson: AS_IT_IS };
    }
    const inner = this.#inputOf(value, at);
    // Entries that are called alike may have values of other types.
    const of = inner.type === GraphQLString ? '' : getNamedType(inner.type).name;
    const kind = of.replace(/Input$/, '');
    const name = `${at}${kind === at ? '' : kind}EntryInput`;
    const entry = this.#objects.get(name) ?? {
      type: new GraphQLInputObjectType({
        name,
        fields: {
          key: { type: new GraphQLNonNull(GraphQLString) },
          value: { type: new GraphQLNonNull(inner.type) },
        },
      }),
      toJson: AS_IT_IS,
    };
    this.#objects.set(name, entry);
    return {
      type: new GraphQLList(new GraphQLNonNull(entry.type)),
      toJson: (given) => {
        const entries = (given ?? []) as readonly {
          readonly key: string;
          readonly value: unknown;
        }[];
        return Object.fromEntries(entries.map((one) => [one.key, inner.toJson(one.value)]));
      },
    };
  }

  #oneOf({ schema }: Read, name: string): Input {
    const known = this.#objects.get(name);
    if (known !== undefined) return known;
    const words = WORDS.get(name) ?? [];
    const forms = [
      ...words.map((key): Form => ({ key, input: { type: GraphQLBoolean, toJson: () => key } })),
      ...(schema.anyOf ?? []).flatMap((form) => this.#formOf(form, name)),
    ];
    const byKey = new Map(forms.map(({ key, input }) => [key, input]));
    const made: Input = {
      type: new GraphQLInputObjectType({
        name,
        description: 'Exactly one of these.',
        isOneOf: true,
        fields: Object.fromEntries(forms.map(({ key, input: { type } }) => [key, { type }])),
      }),
      toJson: (given) => {
        const [[key, value] = []] = Object.entries(given as Given);
        return key === undefined ? given : byKey.get(key)?.toJson(value);
      },
    };
    this.#objects.set(name, made);
    return made;
  }

  #formOf(form: JsonSchema, at: string): Form[] {
    const { name, schema } = this.#schemas.read(form);
    const input = () => this.#inputOf(form, at.replace(/Input$/, 'Hands'));
    const [one, several] = SCALAR_FORMS.get(at) ?? ['text', 'texts'];
    switch (typeOf(schema)) {
      case 'null':
        return [];
      case 'string':
        // A word has a field of its own.
        return schema.enum === undefined ? [{ key: one, input: input() }] : [];
      case 'array':
        return [{ key: several, input: input() }];
      default: {
        const key = name === null ? undefined : FORM_NAMES.get(name);
        return [{ key: key ?? 'hands', input: input() }];
      }
    }
  }
}

/** What REST takes for what is given; what is left out is left out. */
export function jsonOf(fields: ReadonlyMap<string, Input>, given: Given): Record<string, unknown> {
  const pairs = Object.entries(given).flatMap(([name, value]): [string, unknown][] => {
    if (value === null || value === undefined) return [];
    const input = fields.get(name);
    return input === undefined ? [] : [[name, input.toJson(value)]];
  });
  return Object.fromEntries(pairs);
}
