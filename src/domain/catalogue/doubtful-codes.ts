/**
 * Codes that were probably meant to be one: of one parameter of one kind, they differ in nothing
 * but letter case, spaces and dashes. Codes are compared by name, so two such faces do not meet.
 */

import type { Catalogue, Face } from './catalogue.js';
import { at, type FaultList, quoted } from './faults.js';

/** Warns at each code that is spelt otherwise than the first of its sort. */
export function doubtSpelling(
  { parts }: Catalogue,
  pointers: ReadonlyMap<string, string>,
  list: FaultList,
): void {
  const first = new Map<string, string>();
  for (const part of parts.values()) {
    for (const face of part.faces.values()) {
      for (const [parameter, code] of codesOf(face)) {
        const key = `${face.kind?.id} ${parameter} ${code.toLowerCase().replaceAll(/[ -]/g, '')}`;
        const known = first.get(key) ?? code;
        first.set(key, known);
        if (known === code) continue;
        const place = at(at(pointers.get(part.id) ?? '/parts', 'interfaces'), face.name);
        const text =
          `${quoted(code)} is not ${quoted(known)}, as another face has it: codes are compared ` +
          'letter by letter. Were they meant to be one?';
        list.warn(at(place, parameter), 'nearly-equal-codes', text);
      }
    }
  }
}

/** The codes of a face that all of its alternatives share, by parameter. */
function codesOf({ alternatives }: Face): [parameter: string, code: string][] {
  const [one, ...others] = alternatives;
  return [...(one ?? [])].flatMap(([parameter, value]): [string, string][] => {
    const isShared = others.every((other) => other.get(parameter) === value);
    return value.form === 'code' && isShared ? [[parameter, value.code]] : [];
  });
}
