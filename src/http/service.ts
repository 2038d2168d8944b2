/**
 * What the door needs from outside, and the questions that it asks.
 */

import type { Logger } from 'pino';
import { type LimitsInForce, limitsInForce } from '../contract/limits.js';
import type { Scope } from '../contract/view.js';
import { calculate } from '../usecases/calculate.js';
import { checkFit } from '../usecases/check-fit.js';
import { checkFitPartly } from '../usecases/check-fit-partly.js';
import { driveVehicle } from '../usecases/drive-vehicle.js';
import { startFitBatch } from '../usecases/fit-batch.js';
import { startFitsFeed } from '../usecases/fits-feed.js';
import { identifyPart } from '../usecases/identify-part.js';
import { identifyVehicle } from '../usecases/identify-vehicle.js';
import { inspectVehicle } from '../usecases/inspect-vehicle.js';
import type { Library } from '../usecases/library.js';
import { listEditions, readEdition } from '../usecases/list-editions.js';
import { listFittedVehicles } from '../usecases/list-fitted-vehicles.js';
import { listFittingParts } from '../usecases/list-fitting-parts.js';
import { listKinds, readKind } from '../usecases/list-kinds.js';
import { listLayouts, readLayout } from '../usecases/list-layouts.js';
import { listParts } from '../usecases/list-parts.js';
import { listRoles, readRole } from '../usecases/list-roles.js';
import { listVehicles } from '../usecases/list-vehicles.js';
import { lookUpParts } from '../usecases/look-up-parts.js';
import { mateFaces } from '../usecases/mate-faces.js';
import type { EditionHead, KeyStore } from '../usecases/ports.js';
import { readPart } from '../usecases/read-part.js';
import { readVehicle } from '../usecases/read-vehicle.js';
import { resolveKitQuestion } from '../usecases/resolve-kits.js';
import { resolveKitsPartly } from '../usecases/resolve-kits-partly.js';
import { AnswerCache } from './answer-cache.js';
import { ofTurn } from './of-turn.js';
import { type Shown, shownBySchemas } from './shown.js';

/** The questions behind this door, so that a test can count how often one is asked. */
export const USE_CASES = {
  calculate,
  checkFit,
  checkFitPartly,
  listFittingParts,
  listFittedVehicles,
  startFitBatch,
  startFitsFeed,
  resolveKitQuestion,
  resolveKitsPartly,
  identifyPart,
  identifyVehicle,
  inspectVehicle,
  driveVehicle,
  mateFaces,
  listParts,
  lookUpParts,
  readPart,
  listRoles,
  readRole,
  listKinds,
  readKind,
  listVehicles,
  readVehicle,
  listLayouts,
  readLayout,
  listEditions,
  readEdition,
} as const;
export type UseCases = typeof USE_CASES;

export interface ServiceConfig {
  /** Origins of pages that may read answers in a browser; empty turns CORS off. */
  readonly corsOrigins: readonly string[];
  /** What everybody may do without a key. */
  readonly open: readonly Scope[];
  /** Bytes of answers that are kept to be given again; 0 keeps none. */
  readonly answerCacheBytes: number;
}

export interface ServiceDeps {
  readonly library: Library;
  readonly keys: KeyStore;
  readonly log: Logger;
  readonly config: ServiceConfig;
  readonly useCases?: UseCases;
  /** Milliseconds from any point in time, for the durations in the log. */
  readonly stopwatch?: () => number;
  readonly newRequestId?: () => string;
}

export type Service = Required<ServiceDeps> & {
  readonly answers: AnswerCache;
  /** The head of the newest edition, and the number of the price and stock list, of this turn. */
  readonly newest: () => EditionHead | null;
  readonly offersNumber: () => number;
  /** Origins of the pages that have a key. */
  readonly pages: () => readonly string[];
  readonly shown: Shown;
};

export function serviceOf(deps: ServiceDeps): Service {
  return {
    useCases: USE_CASES,
    stopwatch: () => performance.now(),
    newRequestId: () => crypto.randomUUID(),
    answers: new AnswerCache(deps.config.answerCacheBytes),
    newest: ofTurn(() => deps.library.newest()),
    offersNumber: ofTurn(() => deps.library.skus(null).number),
    pages: ofTurn(() => deps.keys.pages()),
    shown: shownBySchemas(),
    ...deps,
  };
}

/** Whether the service still takes requests; the server that listens changes it. */
export class Lifecycle {
  isStopping = false;
}

/** What hono hands through with each request; nothing where no server listens. */
export type ServiceEnv = { Bindings: { lifecycle?: Lifecycle; limits?: LimitsInForce } };

/** How it stands with the server at the time of a request. */
export interface ServerState {
  readonly isStopping: boolean;
  readonly limits: LimitsInForce;
}

/** Without a server the limits are those of the table. */
const USUAL_LIMITS = limitsInForce();

export function stateOf(env: ServiceEnv['Bindings'] | undefined): ServerState {
  return {
    isStopping: env?.lifecycle?.isStopping ?? false,
    limits: env?.limits ?? USUAL_LIMITS,
  };
}
