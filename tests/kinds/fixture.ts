/**
 * What a fixture of a kind is: two faces in the form of a document, and all that is expected of
 * them. Each file in the folder of a kind exports some as `fixtures`.
 */

import { readdirSync } from 'node:fs';
import type { InterfaceRecord } from '../../src/domain/catalogue/document.js';
import type { Outcome } from '../../src/domain/check/state.js';

/** The checks that apply, by id: `holds`, or an outcome with its code (`fails not-equal`). */
export type Expected = Readonly<Record<string, string>>;

export interface Fixture {
  /** What it shows, in words of the trade. */
  readonly says: string;
  /** Where published numbers come from, and how far they can be trusted. */
  readonly source?: string;
  readonly faces: readonly [InterfaceRecord, InterfaceRecord];
  readonly outcome: Outcome;
  /** All checks that apply, and no others. */
  readonly checks: Expected;
  /** For an open one: the parameters that nobody recorded, as `left.teeth`, in any order. */
  readonly missing?: readonly string[];
}

export interface FixtureFile {
  readonly kind: string;
  readonly file: string;
  readonly fixtures: readonly Fixture[];
}

/** A face with some parameters not recorded. */
export function without(face: InterfaceRecord, ...parameters: string[]): InterfaceRecord {
  return Object.fromEntries(Object.entries(face).filter(([key]) => !parameters.includes(key)));
}

const here = new URL('.', import.meta.url);

/** The folders of fixtures: one for each kind. */
export function fixtureFolders(): string[] {
  return readdirSync(here, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();
}

/** All fixtures there are, read from the folders. */
export async function allFixtures(): Promise<FixtureFile[]> {
  const files: FixtureFile[] = [];
  for (const kind of fixtureFolders()) {
    const folder = new URL(`${kind}/`, here);
    for (const name of readdirSync(folder).sort()) {
      const module: unknown = await import(new URL(name, folder).href);
      files.push({ kind, file: `${kind}/${name}`, fixtures: fixturesIn(module) });
    }
  }
  return files;
}

function fixturesIn(module: unknown): readonly Fixture[] {
  if (typeof module !== 'object' || module === null || !('fixtures' in module)) return [];
  return Array.isArray(module.fixtures) ? (module.fixtures as Fixture[]) : [];
}
