/**
 * A question of REST as a query of GraphQL that selects everything, and what comes back as REST
 * would have said it: maps out of entries, words out of capitals, nothing where nothing is.
 */

import {
  type GraphQLField,
  type GraphQLInputType,
  type GraphQLOutputType,
  type GraphQLSchema,
  getNamedType,
  getNullableType,
  isEnumType,
  isInputObjectType,
  isLeafType,
  isListType,
  isObjectType,
  isUnionType,
} from 'graphql';
import { graphqlSchema } from '../../src/http/graphql/schema.js';

type Fields = Readonly<Record<string, unknown>>;

const schema: GraphQLSchema = graphqlSchema();

export function fieldOf(name: string, isOfEdition: boolean): GraphQLField<unknown, unknown> {
  const type = isOfEdition ? schema.getType('Edition') : schema.getQueryType();
  const field = isObjectType(type) ? type.getFields()[name] : undefined;
  if (field === undefined) throw new Error(`GraphQL has no field ${name}`);
  return field;
}

/** What is given, as a value of a variable. */
export function given(value: unknown, type: GraphQLInputType): unknown {
  const bare = getNullableType(type);
  if (value === null || value === undefined) return null;
  if (isListType(bare)) {
    const { ofType } = bare;
    const items = Array.isArray(value)
      ? value
      : Object.entries(value).map(([key, one]) => ({ key, value: one as unknown }));
    return items.map((one: unknown) => given(one, ofType));
  }
  if (isEnumType(bare)) {
    const found = bare.getValues().find((one) => one.value === value);
    if (found === undefined) throw new Error(`${bare.name} has no ${JSON.stringify(value)}`);
    return found.name;
  }
  if (!isInputObjectType(bare)) return value;
  const fields = bare.getFields();
  if (bare.isOneOf) {
    const key = formOf(value, Object.keys(fields), (name) => fields[name]?.type);
    const isWord = key === value;
    return { [key]: isWord ? true : given(value, fields[key]?.type as GraphQLInputType) };
  }
  const pairs = Object.entries(value as Fields).map(([name, one]) => {
    const own = fields[name];
    if (own === undefined) throw new Error(`${bare.name} has no ${name}`);
    return [name, given(one, own.type)] as const;
  });
  return Object.fromEntries(pairs);
}

/** Which form of a field the value has. */
function formOf(
  value: unknown,
  names: readonly string[],
  typeOf: (name: string) => GraphQLInputType | undefined,
): string {
  if (typeof value === 'string' && names.includes(value)) return value;
  const found = names.find((name) => {
    const type = getNullableType(typeOf(name));
    if (Array.isArray(value)) return isListType(type);
    if (typeof value !== 'object' || value === null) {
      return type !== undefined && isLeafType(type) && getNamedType(type).name === 'String';
    }
    if (!isInputObjectType(type)) return false;
    const own = Object.keys(type.getFields());
    return Object.keys(value).every((key) => own.includes(key));
  });
  if (found === undefined)
    throw new Error(`no form of ${names.join()} is ${JSON.stringify(value)}`);
  return found;
}

/** Selects everything that a type has, with a fragment for each type below it. */
export function everythingOf(type: GraphQLOutputType): { selected: string; fragments: string } {
  const fragments = new Map<string, string>();
  const selected = selectionOf(type, fragments);
  return { selected, fragments: [...fragments.values()].join(' ') };
}

function selectionOf(type: GraphQLOutputType, fragments: Map<string, string>): string {
  const named = getNamedType(type);
  if (isUnionType(named)) {
    // Forms may have a field of one name and of other types.
    const forms = named.getTypes().map((form) => {
      const fields = Object.values(form.getFields()).map(
        ({ name, type: own }) => `${form.name}_${name}: ${name} ${selectionOf(own, fragments)}`,
      );
      return `... on ${form.name} { ${fields.join(' ')} }`;
    });
    return `{ __typename ${forms.join(' ')} }`;
  }
  if (!isObjectType(named)) return '';
  const { name } = named;
  if (!fragments.has(name)) {
    fragments.set(name, '');
    const fields = Object.values(named.getFields()).map(
      (field) => `${field.name} ${selectionOf(field.type, fragments)}`,
    );
    fragments.set(name, `fragment every${name} on ${name} { ${fields.join(' ')} }`);
  }
  return `{ ...every${name} }`;
}

/** What REST says in place of it. */
export function asRest(value: unknown, type: GraphQLOutputType): unknown {
  const bare = getNullableType(type);
  if (value === null || value === undefined) return null;
  if (isListType(bare)) {
    const items = (value as readonly unknown[]).map((one) => asRest(one, bare.ofType));
    const item = getNamedType(bare.ofType);
    if (
      !item.name.endsWith('Entry') ||
      !isObjectType(item) ||
      !isEntry(Object.keys(item.getFields()))
    ) {
      return items;
    }
    return Object.fromEntries(
      (items as { key: string; value: unknown }[]).map((one) => [one.key, one.value]),
    );
  }
  if (isEnumType(bare)) return bare.getValue(value as string)?.value ?? null;
  if (isUnionType(bare)) {
    const { __typename: name, ...fields } = value as Fields & { readonly __typename: string };
    const form = bare.getTypes().find((one) => one.name === name);
    if (form === undefined) throw new Error(`${bare.name} has no ${name}`);
    const own = Object.entries(fields).map(
      ([alias, one]) => [alias.replace(`${name}_`, ''), one] as const,
    );
    return asRest(Object.fromEntries(own), form);
  }
  if (!isObjectType(bare)) return value;
  const fields = bare.getFields();
  return Object.fromEntries(
    Object.entries(value as Fields).map(([name, one]) => {
      const field = fields[name];
      return [name, field === undefined ? one : asRest(one, field.type)];
    }),
  );
}

function isEntry(names: readonly string[]): boolean {
  return names.join() === 'key,value';
}

/**
 * Where the two differ, as paths. A field that REST leaves out is null in GraphQL.
 */
export function differences(rest: unknown, graphql: unknown, at = ''): string[] {
  if (Array.isArray(rest) && Array.isArray(graphql)) {
    if (rest.length !== graphql.length) return [`${at}: ${rest.length} or ${graphql.length}`];
    return rest.flatMap((one, index) => differences(one, graphql[index], `${at}/${index}`));
  }
  if (isFields(rest) && isFields(graphql)) {
    const extra = Object.keys(graphql).filter((name) => !(name in rest) && graphql[name] !== null);
    const own = Object.keys(rest).filter((name) => name in graphql);
    const less = Object.keys(rest).filter((name) => !(name in graphql));
    return [
      ...less.map((name) => `${at}/${name}: in REST alone`),
      ...extra.map((name) => `${at}/${name}: in GraphQL alone`),
      ...own.flatMap((name) => differences(rest[name], graphql[name], `${at}/${name}`)),
    ];
  }
  return rest === graphql ? [] : [`${at}: ${JSON.stringify(rest)} or ${JSON.stringify(graphql)}`];
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
