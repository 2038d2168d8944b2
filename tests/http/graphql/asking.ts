/** Asks the service by GraphQL, as clients do. */

import { type Rig, rigOf } from '../fixture.js';

export interface Result {
  readonly data?: Readonly<Record<string, unknown>> | null;
  readonly errors?: readonly {
    readonly message: string;
    readonly path?: readonly unknown[];
    readonly extensions?: {
      readonly code?: string;
      readonly limit?: { readonly name: string; readonly value: number };
    };
  }[];
}

/** Of a rig; of one over the cart where none is given. */
export async function asked(query: string, variables?: object, rig?: Rig): Promise<Result> {
  const { client } = rig ?? rigOf();
  const body = { query, ...(variables === undefined ? {} : { variables }) };
  return (await client.post('/graphql').send(body)).body as Result;
}

/** The limits that an answer says were passed, each once. */
export function limitsIn({ errors = [] }: Result): string[] {
  return [...new Set(errors.flatMap(({ extensions }) => extensions?.limit?.name ?? []))];
}
