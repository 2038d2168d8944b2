/**
 * The two linters of the OpenAPI document, every rule of theirs switched on. Neither asks the
 * network: the document refers to nothing outside itself.
 *
 * They are large and needed for one test alone, so they are loaded by name: a checkout without
 * them still compiles, and is told what to run.
 */

import { once } from 'node:events';
import { Worker } from 'node:worker_threads';

/** Such as `oas3-unused-component: components/schemas/A: ...`. */
export type Complaint = string;

interface Redocly {
  createConfig(config: { readonly extends: readonly string[] }): Promise<unknown>;
  lintFromString(lint: { readonly source: string; readonly config: unknown }): Promise<
    readonly {
      readonly ruleId: string;
      readonly message: string;
      readonly location: readonly { readonly pointer?: string }[];
    }[]
  >;
}

/** Megabytes of stack: about four times the usual, which is not enough. */
const STACK = 4;

/** `spectral:oas` with all rules, those too that are off where one asks for the usual ones. */
export async function bySpectral(document: object): Promise<readonly Complaint[]> {
  const thread = new Worker(new URL('./spectral-thread.mjs', import.meta.url), {
    workerData: document,
    resourceLimits: { stackSizeMb: STACK },
  });
  const [found] = (await once(thread, 'message')) as [readonly Complaint[]];
  return found;
}

/** `recommended-strict`: what others only warn of is an error there. */
export async function byRedocly(document: object): Promise<readonly Complaint[]> {
  const redocly = await load<Redocly>('@redocly/openapi-core');
  const config = await redocly.createConfig({ extends: ['recommended-strict'] });
  const found = await redocly.lintFromString({ source: JSON.stringify(document), config });
  return found.map(({ ruleId, location: [at], message }) => {
    return `${ruleId}: ${at?.pointer ?? ''}: ${message}`;
  });
}

async function load<Module>(name: string): Promise<Module> {
  try {
    return (await import(name)) as Module;
  } catch (error) {
    throw new Error(`${name} is not installed: run npm ci`, { cause: error });
  }
}
