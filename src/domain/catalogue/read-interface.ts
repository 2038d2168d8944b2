/**
 * Reads one interface on its own, in the form of the document: for faces that a question
 * writes out.
 */

import type { InterfaceRecord } from './document.js';
import type { FaultList } from './faults.js';
import { readShape } from './read.js';
import { INTERFACE } from './shape.js';

export function readInterface(
  raw: unknown,
  pointer: string,
  list: FaultList,
): InterfaceRecord | null {
  return readShape(INTERFACE, raw, pointer, list) ? (raw as InterfaceRecord) : null;
}
