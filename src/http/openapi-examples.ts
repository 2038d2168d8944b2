/**
 * The examples of the OpenAPI document, each written down once: what several operations say alike
 * becomes a component, to which they refer.
 */

import type { Example } from '../contract/examples.js';
import type { Operation } from '../contract/operation.js';

interface Shown {
  readonly summary: string;
  readonly value: unknown;
}

/** A field of a media type; nothing where there is no example. */
interface Field {
  readonly examples?: Readonly<Record<string, object>>;
}

export class Examples {
  readonly #examples: readonly Example[];
  /** The names of components, by what they show. */
  readonly #names = new Map<string, string>();
  readonly components: Readonly<Record<string, Shown>>;

  constructor(examples: readonly Example[]) {
    this.#examples = examples;
    const counts = new Map<string, number>();
    const components: Record<string, Shown> = {};
    for (const { name, summary, answer } of examples) {
      const shown = { summary, value: answer };
      const key = JSON.stringify(shown);
      const count = (counts.get(key) ?? 0) + 1;
      counts.set(key, count);
      if (count !== 2) continue;
      const alike = Object.keys(components).filter((one) => one.replace(/-\d+$/, '') === name);
      const own = alike.length === 0 ? name : `${name}-${alike.length + 1}`;
      components[own] = shown;
      this.#names.set(key, own);
    }
    this.components = components;
  }

  /** What the service says with this status; in lines of this type, where it has several. */
  answers(operation: Operation, status: number, type?: string): Field {
    return fieldOf(
      this.#of(operation, status)
        .filter(({ lines }) => type === undefined || lines?.accept === type)
        .map(({ name, summary, answer }) => {
          const shown = { summary, value: answer };
          const component = this.#names.get(JSON.stringify(shown));
          return [name, component === undefined ? shown : refTo('examples', component)];
        }),
    );
  }

  /** The questions in a body that have an answer. */
  questions(operation: Operation, type?: string): Field {
    return fieldOf(
      this.#of(operation, 200)
        .filter(({ lines }) => type === undefined || lines?.type === type)
        .map(({ name, summary, body, lines }) => {
          return [name, { summary, value: lines?.text ?? body }];
        }),
    );
  }

  #of({ operationId }: Operation, status: number): readonly Example[] {
    return this.#examples.filter((one) => one.operationId === operationId && one.status === status);
  }
}

function fieldOf(named: readonly (readonly [string, object])[]): Field {
  return named.length === 0 ? {} : { examples: Object.fromEntries(named) };
}

export interface Reference {
  readonly $ref: string;
}

export function refTo(kind: string, name: string): Reference {
  return { $ref: `#/components/${kind}/${name}` };
}
