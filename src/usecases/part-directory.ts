/**
 * The parts of a catalogue in the order of their ids, for lists: what is looked for is worked out
 * once for each catalogue, and not for each question.
 */

import type { Catalogue, Part } from '../domain/catalogue/catalogue.js';

export class PartDirectory {
  readonly #byRole: ReadonlyMap<string, readonly Part[]>;
  readonly #byKind: ReadonlyMap<string, readonly Part[]>;

  constructor({ parts }: Pick<Catalogue, 'parts'>) {
    const sorted = [...parts.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
    this.#byRole = postings(sorted, ({ roles }) => roles);
    this.#byKind = postings(sorted, kindsOf);
  }

  /** Those that are of the role. */
  ofRole(role: string): readonly Part[] {
    return this.#byRole.get(role) ?? [];
  }

  /** Those that have a face of the kind. */
  ofKind(kind: string): readonly Part[] {
    return this.#byKind.get(kind) ?? [];
  }
}

function kindsOf({ faces }: Part): string[] {
  return [...faces.values()].flatMap(({ kind }) => (kind === null ? [] : [kind.id]));
}

function postings(
  parts: readonly Part[],
  keysOf: (part: Part) => Iterable<string>,
): ReadonlyMap<string, readonly Part[]> {
  const found = new Map<string, Part[]>();
  for (const part of parts) {
    for (const key of new Set(keysOf(part))) {
      const known = found.get(key);
      if (known === undefined) found.set(key, [part]);
      else known.push(part);
    }
  }
  return found;
}

const KNOWN = new WeakMap<Catalogue, PartDirectory>();

/** The directory of a catalogue, which is made when it is first asked for. */
export function partDirectory(catalogue: Catalogue): PartDirectory {
  const known = KNOWN.get(catalogue);
  if (known !== undefined) return known;
  const directory = new PartDirectory(catalogue);
  KNOWN.set(catalogue, directory);
  return directory;
}
