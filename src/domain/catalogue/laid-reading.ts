/**
 * A value that somebody has measured, laid over the record of a part: it stands in place of what
 * was recorded of it, for whoever asks.
 *
 * A face that can be in several ways is measured as the one that it is, so the value stands in each
 * of them. Left out: a face that is not recorded at all, which one value does not make known.
 */

import type { Catalogue, Part, Values } from './catalogue.js';
import { compileParameters } from './compile-face.js';
import { compileOwnValue } from './compile-part.js';
import type { ValueRecord } from './document.js';
import type { FaultList } from './faults.js';

export interface LaidReading {
  /** A recorded face of the part; null for a value of the part itself. */
  readonly interface: string | null;
  readonly parameter: string;
  readonly record: ValueRecord;
}

const MEASURED = { basis: 'measured' } as const;

/** The part with the value; null where the value has a fault, which is then in the list. */
export function withReading(
  part: Part,
  { interface: name, parameter, record }: LaidReading,
  { roles }: Pick<Catalogue, 'roles'>,
  list: FaultList,
): Part | null {
  if (name === null) {
    const known = part.roles.flatMap((role) => roles.get(role) ?? []);
    const entry = [parameter, record, ''] as const;
    const value = compileOwnValue(entry, { known, isPartly: false }, MEASURED, list);
    if (value === null) return null;
    return { ...part, values: new Map([...part.values, [parameter, value]]) };
  }
  const face = part.faces.get(name);
  if (face === undefined || face.kind === null) return null;
  const records = { [parameter]: record };
  const laid: Values = compileParameters(records, face.kind, face.side, MEASURED, '', list);
  if (laid.size === 0) return null;
  const alternatives = face.alternatives.map((way) => new Map([...way, ...laid]));
  return { ...part, faces: new Map([...part.faces, [name, { ...face, alternatives }]]) };
}
