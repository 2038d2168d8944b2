/**
 * The entry `./client` of the package: everything that a program needs to ask the service.
 */

export { BatchBrokenOff, type FitBatch, type FitLines } from './batch.js';
export type * from './contract.js';
export { FayingClient, type FayingOptions, type FitBatchOptions } from './faying-client.js';
export { type OrderLine, orderLines } from './order-lines.js';
export { FayingProblem, UnexpectedAnswer } from './problem.js';
export { type InputOptions, type QuantityInput, readQuantity } from './quantity.js';
export type { Clock, RetryOptions } from './retry.js';
