/**
 * The schemas of the OpenAPI document, as far as the doors look at them themselves: types of
 * GraphQL are made of them, and fields are shown or not by the names of objects in it.
 */

import type { Operation } from '../contract/operation.js';
import { openapiDocument } from './openapi.js';

export interface JsonSchema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly enum?: readonly (string | null)[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly patternProperties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: JsonSchema | boolean;
  readonly required?: readonly string[];
  readonly items?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
  readonly allOf?: readonly JsonSchema[];
}

interface ParameterObject {
  readonly name: string;
  readonly in: string;
  readonly required?: boolean;
  readonly description?: string;
  readonly schema: JsonSchema;
}

interface Content {
  readonly content?: Readonly<Record<string, { readonly schema: JsonSchema }>>;
}

interface OperationObject {
  readonly parameters?: readonly (ParameterObject | { readonly $ref: string })[];
  readonly requestBody?: Content;
  readonly responses: Readonly<Record<string, Content>>;
}

interface Document {
  readonly components: { readonly schemas: Readonly<Record<string, JsonSchema>> };
  readonly paths: Readonly<Record<string, Readonly<Record<string, OperationObject>>>>;
}

const JSON_TYPE = 'application/json';

/** A schema that only says in which codes a field of another may be. */
const BY_CODE = 'ReasonByCode';

/** A schema with what it refers to put in place, and whether it may be null. */
export interface Read {
  /** Of the component that it refers to. */
  readonly name: string | null;
  readonly schema: JsonSchema;
  readonly isNullable: boolean;
  readonly description: string | null;
}

export class Schemas {
  readonly #document = openapiDocument([], null) as Document;

  /** What an operation answers with. */
  answerOf({ path, method, operationId }: Operation): JsonSchema {
    const schema = this.#operation({ path, method }).responses['200']?.content?.[JSON_TYPE]?.schema;
    if (schema === undefined) throw new Error(`${operationId} has no answer`);
    return schema;
  }

  /** What a path answers with, by whichever method it is asked; null where it is not JSON. */
  answerAt(path: string): JsonSchema | null {
    const methods = Object.values(this.#document.paths[path] ?? {});
    const [answer] = methods.flatMap(
      ({ responses }) => responses['200']?.content?.[JSON_TYPE] ?? [],
    );
    return answer?.schema ?? null;
  }

  /** A schema by its name. */
  component(name: string): JsonSchema {
    return { $ref: `#/components/schemas/${name}` };
  }

  /** The fields of the body of an operation, or its parameters. */
  questionOf({ path, method, query }: Operation): JsonSchema {
    const { requestBody, parameters = [] } = this.#operation({ path, method });
    const body = requestBody?.content?.[JSON_TYPE]?.schema;
    if (body !== undefined) return this.read(body).schema;
    const own = parameters.flatMap((one) => ('$ref' in one || one.in === 'header' ? [] : [one]));
    // A family of parameters is called as the field that it fills.
    const fieldOf = (name: string) => query.groups.find(({ prefix }) => prefix === name)?.field;
    const properties = own.map(({ name, schema, description }): [string, JsonSchema] => [
      fieldOf(name) ?? name,
      description === undefined ? schema : { ...schema, description },
    ]);
    const required = own.filter((one) => one.required === true).map(({ name }) => name);
    return { type: 'object', properties: Object.fromEntries(properties), required };
  }

  #operation({ path, method }: Pick<Operation, 'path' | 'method'>): OperationObject {
    const operation = this.#document.paths[path]?.[method];
    if (operation === undefined) throw new Error(`the document has no ${method} ${path}`);
    return operation;
  }

  read(schema: JsonSchema, name: string | null = null): Read {
    const { $ref: ref, anyOf, allOf } = schema;
    if (ref !== undefined) {
      const own = ref.slice(ref.lastIndexOf('/') + 1);
      const found = this.#document.components.schemas[own];
      if (found === undefined) throw new Error(`the document has no schema ${own}`);
      return { ...this.read(found, own), name: own };
    }
    const [first, ...others] = (allOf ?? []).filter((one) => !isByCode(one));
    if (first !== undefined) {
      const read = this.read(first, name);
      const said = others.find(({ description }) => description !== undefined)?.description;
      return said === undefined ? read : { ...read, description: said };
    }
    const forms = anyOf?.filter(({ type }) => type !== 'null') ?? [];
    const [only, ...more] = forms;
    if (only !== undefined && more.length === 0) {
      const read = this.read(only, name);
      return { ...read, isNullable: true, description: schema.description ?? read.description };
    }
    const types = [schema.type ?? []].flat();
    const isNullable = types.includes('null') || (anyOf?.length ?? 0) > forms.length;
    return { name, schema, isNullable, description: schema.description ?? null };
  }
}

function isByCode({ $ref: ref, ...rest }: JsonSchema): boolean {
  return ref?.endsWith(`/${BY_CODE}`) === true && Object.keys(rest).length === 0;
}

/** The one type of a schema that is no union; null where it is of any. */
export function typeOf({ type }: JsonSchema): string | null {
  return [type ?? []].flat().find((one) => one !== 'null') ?? null;
}
