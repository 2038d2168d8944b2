/**
 * Scalars of GraphQL for the schemas of the contract, and names in the way of GraphQL.
 */

import {
  GraphQLBoolean,
  GraphQLFloat,
  GraphQLInt,
  GraphQLScalarType,
  GraphQLString,
} from 'graphql';
import { type JsonSchema, typeOf } from '../json-schema.js';

/** Anything that JSON can say; where REST has values of several types at one place. */
export const JSON_SCALAR = new GraphQLScalarType({
  name: 'JSON',
  description: 'Any value of JSON, as REST has it.',
});

const SCALARS: ReadonlyMap<string, GraphQLScalarType> = new Map<string, GraphQLScalarType>([
  ['string', GraphQLString],
  ['integer', GraphQLInt],
  ['number', GraphQLFloat],
  ['boolean', GraphQLBoolean],
]);

/** The scalar of a schema that is no list, object or union; any value where it has no type. */
export function scalarOf(schema: JsonSchema): GraphQLScalarType {
  return SCALARS.get(typeOf(schema) ?? '') ?? JSON_SCALAR;
}

/** `fits-with-changes` as `FITS_WITH_CHANGES`. */
export function enumName(word: string): string {
  return word.replaceAll('-', '_').toUpperCase();
}

export function capitalised(name: string): string {
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}
