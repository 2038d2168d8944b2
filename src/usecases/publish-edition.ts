/**
 * Checks a document, and publishes it: all of it becomes one edition, or nothing is stored.
 */

import { canonicalDocument, canonicalJson } from '../domain/catalogue/canonical.js';
import type { Catalogue } from '../domain/catalogue/catalogue.js';
import { compileDocument, type Unread } from '../domain/catalogue/compile.js';
import type { CatalogueDocument } from '../domain/catalogue/document.js';
import { ENTITY_LISTS } from '../domain/catalogue/document.js';
import type { Fault } from '../domain/catalogue/faults.js';
import { FALLBACK_LANGUAGE } from '../domain/explain/words.js';
import { CompiledIndex } from '../domain/index/compiled-index.js';
import { asBuilt } from '../domain/judge/configuration.js';
import { judge } from '../domain/judge/judge.js';
import { BUILT_IN_KINDS } from '../domain/kinds/registry.js';
import { DocumentRefused } from './errors.js';
import { indexColumns } from './index-columns.js';
import type { Clock, Digest, EditionStore, PublishRequest, PublishResult } from './ports.js';
import { Speaker } from './speaker.js';
import { judgedView } from './views.js';

export interface LintReport {
  readonly faults: readonly Fault[];
  readonly warnings: readonly Fault[];
  /** How many entities of each list the document has; null where it has a fault. */
  readonly counts: Readonly<Record<string, number>> | null;
}

interface Checked extends LintReport {
  readonly catalogue: Catalogue | null;
  readonly document: CatalogueDocument | null;
}

/**
 * Every fault and every doubt of a document, without storing anything.
 *
 * @param unread entities whose text could not be read, which somebody else says.
 */
export function lintDocument(raw: unknown, unread?: Unread): LintReport {
  const { faults, warnings, counts } = check(raw, unread);
  return { faults, warnings, counts };
}

function check(raw: unknown, unread?: Unread): Checked {
  const compiled = compileDocument(raw, BUILT_IN_KINDS, unread);
  const { catalogue, document, faults, warnings } = compiled;
  if (catalogue === null || document === null) {
    return { catalogue: null, document: null, faults, warnings, counts: null };
  }
  const doubts = [...warnings, ...doubtVehicles(catalogue, document)];
  return { catalogue, document, faults, warnings: doubts, counts: countsOf(document) };
}

function countsOf(document: CatalogueDocument): Record<string, number> {
  return Object.fromEntries(ENTITY_LISTS.map((list) => [list, document[list]?.length ?? 0]));
}

/** What the works built must go together; where the records say it does not, one is wrong. */
function doubtVehicles(catalogue: Catalogue, document: CatalogueDocument): Fault[] {
  const doubts: Fault[] = [];
  for (const [index, { id }] of (document.vehicles ?? []).entries()) {
    const vehicle = catalogue.vehicles.get(id);
    if (vehicle === undefined) continue;
    const present = asBuilt(vehicle);
    const { layout } = vehicle;
    const configuration = { catalogue, pairsOf: catalogue, vehicle, layout, present };
    const more = { judged: present, torque: null, use: null, ignorePresent: false };
    const { constraints } = judge({ ...configuration, ...more });
    // As all faults and doubts of a document are, whatever language its texts are in.
    const speaker = new Speaker({ catalogue, layout, lang: FALLBACK_LANGUAGE });
    const failing = constraints.filter(
      (one) => one.computed === 'fails' && one.severity === 'must',
    );
    const view = judgedView(failing, speaker);
    const said = [...view.matings, ...view.checks, ...view.rules, ...view.choices, ...view.places];
    for (const { text } of said) {
      const pointer = `/vehicles/${index}/fitted`;
      doubts.push({ pointer, code: 'fails-as-built', text: `As the works built it: ${text}` });
    }
  }
  return doubts;
}

/** A document without a fault, in the form in which it is stored. */
export interface PreparedEdition {
  readonly content: Omit<PublishRequest, 'publishedAt' | 'note'>;
  readonly warnings: readonly Fault[];
}

/** Throws `DocumentRefused` where the document has a fault: before any store is touched. */
export function prepareEdition(raw: unknown, digest: Digest): PreparedEdition {
  const { catalogue, document, faults, warnings } = check(raw);
  if (catalogue === null || document === null) throw new DocumentRefused(faults, warnings);
  const canonical = canonicalJson(canonicalDocument(document));
  const stored = JSON.parse(canonical) as CatalogueDocument;
  // The index counts faces in the order in which they will be loaded again.
  const ordered = compileDocument(stored, BUILT_IN_KINDS).catalogue;
  if (ordered === null) throw new Error('a clean document has a clean canonical form');
  const index = new CompiledIndex(ordered);
  index.complete();
  const content = {
    document: stored,
    catalogue: ordered,
    hash: `sha256-${digest(canonical)}`,
    offers: document.offers ?? null,
    columns: indexColumns(index),
  };
  return { content, warnings };
}

export interface PublishAnswer extends PublishResult {
  readonly warnings: readonly Fault[];
}

export interface PublishDeps {
  readonly store: EditionStore;
  readonly clock: Clock;
}

export function publishEdition(
  { store, clock }: PublishDeps,
  { content, warnings }: PreparedEdition,
  note: string | null,
): PublishAnswer {
  const result = store.publish({ ...content, publishedAt: clock(), note });
  return { ...result, warnings };
}
