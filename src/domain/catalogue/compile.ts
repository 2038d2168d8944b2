/**
 * A document becomes a catalogue: the shape is read, every reference resolved, every value
 * understood. All faults of a document are said at once, in the order of the document; what one
 * fault makes doubtful is passed over in silence, so that each fault is said once, where it is.
 */

import { type Band, type Couplings, DEFAULT_COUPLINGS } from '../check/coupling.js';
import { readLiteral } from '../check/term.js';
import { compare, sign } from '../quantity/rational.js';
import { ArticleScope } from './article-scope.js';
import type { Catalogue, Evidence, Fact, Kind, Layout } from './catalogue.js';
import { compileKind, compileRole } from './compile-kind.js';
import { compileLayout } from './compile-layout.js';
import { compileLot } from './compile-lot.js';
import { checkOfferedNames, compileOffers } from './compile-offer.js';
import { checkSuccession, compilePart } from './compile-part.js';
import { compileRules } from './compile-rule.js';
import { compileRuleset } from './compile-ruleset.js';
import { compileStatement } from './compile-statement.js';
import { compileVehicles } from './compile-vehicle.js';
import { compileWork } from './compile-work.js';
import type {
  BandRecord,
  CatalogueDocument,
  EntityList,
  FactRecord,
  KindRecord,
} from './document.js';
import { doubtLanguages } from './doubtful-texts.js';
import { findDoubts } from './doubts.js';
import type { DoubtCode, FaultCode } from './fault-codes.js';
import { at, type Fault, FaultList, inDocumentOrder, quoted } from './faults.js';
import { present, presentEntries } from './holes.js';
import type { LayoutScope } from './layout-scope.js';
import { inside } from './lost-names.js';
import { byId, type DocumentRead, type Entities, readDocument } from './read-document.js';

export interface Compiled {
  /** Null where the document has a fault, or is not all there. */
  readonly catalogue: Catalogue | null;
  readonly document: CatalogueDocument | null;
  readonly faults: readonly Fault[];
  readonly warnings: readonly Fault[];
}

/** How many entities of each list could not be read, and so have a name that nobody knows. */
export type Unread = ReadonlyMap<EntityList, number>;

/**
 * Compiles a parsed JSON value.
 *
 * @param builtIn the kinds that every catalogue has.
 * @param unread what is missing in it, for faults that are said by whoever read its text.
 */
export function compileDocument(
  raw: unknown,
  builtIn: readonly KindRecord[],
  unread: Unread = new Map(),
): Compiled {
  const first = new FaultList();
  const { lost } = first;
  const found = compileOnce(raw, builtIn, unread, first);
  const list = lost.isUnsettled ? new FaultList(lost.settled()) : first;
  const { read, catalogue } = list === first ? found : compileOnce(raw, builtIn, unread, list);
  const isClean = list.isClean && catalogue !== null && unread.size === 0;
  if (isClean) {
    findDoubts(catalogue, read?.lists ?? NOWHERE, list);
    doubtLanguages(raw as CatalogueDocument, list);
  }
  return {
    catalogue: isClean ? catalogue : null,
    document: isClean ? (raw as CatalogueDocument) : null,
    faults: [...inDocumentOrder(list.faults, raw), ...unlistedFaults(list)],
    warnings: [...inDocumentOrder(list.warnings, raw), ...unlistedDoubts(list)],
  };
}

/** Those beyond the longest list, counted. */
function unlistedFaults({ faults, faultCount }: FaultList): Fault[] {
  const count = faultCount - faults.length;
  const text = `There are more faults, ${count} of them, that are not listed.`;
  return count === 0 ? [] : [{ pointer: '', code: 'too-many-faults' satisfies FaultCode, text }];
}

function unlistedDoubts({ warnings, warningCount }: FaultList): Fault[] {
  const count = warningCount - warnings.length;
  const text = `There are more doubts, ${count} of them, that are not listed.`;
  return count === 0 ? [] : [{ pointer: '', code: 'too-many-doubts' satisfies DoubtCode, text }];
}

function compileOnce(
  raw: unknown,
  builtIn: readonly KindRecord[],
  unread: Unread,
  list: FaultList,
) {
  for (const [name, count] of unread) {
    for (let more = count; more > 0; more -= 1) list.lost.addNameless(name);
  }
  const read = readDocument(raw, list);
  return { read, catalogue: read === null ? null : compileAll(read, builtIn, list) };
}

const NOWHERE = { parts: { records: [] }, layouts: { records: [] } };

function compileAll(
  { head, lists }: DocumentRead,
  builtIn: readonly KindRecord[],
  list: FaultList,
): Catalogue {
  const { lang, currency = null } = head;
  const evidence: Evidence = head.evidence;
  const couplings = compileCouplings(head.couplings ?? {}, list);
  const facts = byId(lists.facts, (record, pointer) => compileFact(record, pointer, list));
  const kinds = compileKinds(lists.kinds, builtIn, list);
  const kindIds = new Set([...builtIn.map(({ id }) => id), ...lists.kinds.ids]);
  const roles = byId(lists.roles, (record, pointer) => compileRole(record, pointer, list));
  const roleIds = lists.roles.ids;
  const partIds = lists.parts.ids;
  const partNames = { kinds, kindIds, roles, roleIds, partIds };
  const parts = byId(lists.parts, (record, pointer) =>
    compilePart(record, partNames, evidence, pointer, list),
  );
  checkSuccession(parts, new Map(lists.parts.records.map(([{ id }, place]) => [id, place])), list);
  const vocabulary = { roles, roleIds, kinds, parts, partIds, facts };
  const compiled = byId(lists.layouts, (record, pointer) =>
    compileLayout(record, vocabulary, pointer, list),
  );
  const layouts = new Map<string, Layout>();
  const scopes = new Map<string, LayoutScope>();
  for (const [id, { layout, scope }] of compiled) {
    layouts.set(id, layout);
    scopes.set(id, scope);
  }
  const layoutIds = lists.layouts.ids;
  const names = { layouts, layoutIds, parts, partIds, facts };
  const vehicles = compileVehicles(lists.vehicles, names, evidence, list);
  const rules = compileRules(lists.rules.records, { scopes, layoutIds }, evidence, list);
  const statementNames = { ...names, vehicles, vehicleIds: lists.vehicles.ids };
  const statements = lists.statements.records.map(([record, pointer]) =>
    compileStatement(record, statementNames, evidence, pointer, list),
  );
  const lots = byId(lists.lots, (record, pointer) =>
    compileLot(record, statementNames, pointer, list),
  );
  const article = new ArticleScope({ roles, kinds, parts, partIds }, list);
  const works = byId(lists.works, (record, pointer) =>
    compileWork(record, article, evidence, pointer, list),
  );
  const rulesets = byId(lists.rulesets, (record, pointer) =>
    compileRuleset(record, scopes, pointer, list),
  );
  checkOfferedNames(lists, list);
  const offers = compileOffers(lists.offers, lists, currency, list);
  const vocabularyOf = { lang, currency, evidence, couplings, facts, kinds, roles };
  const recorded = { parts, layouts, vehicles, rules, statements };
  return { ...vocabularyOf, ...recorded, lots, works, rulesets, offers };
}

function compileCouplings(
  records: Readonly<Record<string, BandRecord>>,
  list: FaultList,
): Couplings {
  const couplings = new Map(DEFAULT_COUPLINGS);
  for (const [id, record, place] of presentEntries(records, '/couplings')) {
    const limits = (['pass', 'warn', 'refuse'] as const).map((key) => {
      if (list.isUnread(at(place, key))) return null;
      const read = readLiteral(record[key]);
      if (read !== null && read.dimension === '1' && sign(read.value) >= 0) return read.value;
      const text = `${quoted(record[key])} is no share of one, such as "0.5 %".`;
      list.fault(at(place, key), 'malformed', text);
      return null;
    });
    const [pass, warn, refuse] = limits;
    if (!pass || !warn || !refuse) continue;
    if (compare(pass, warn) > 0 || compare(warn, refuse) > 0) {
      list.fault(place, 'wrong-order', '"pass" is at most "warn", and "warn" at most "refuse".');
    }
    const band: Band = { pass, warn, refuse };
    couplings.set(id, band);
  }
  return couplings;
}

function compileFact(record: FactRecord, pointer: string, list: FaultList): Fact {
  const { id, name, how = null } = record;
  const place = at(pointer, 'values');
  const space = inside('facts', id, 'values');
  const values = new Map<string, FactRecord['name']>();
  const read = [...present(record.values, place)];
  if (list.isUnread(place)) list.lost.addAll(space);
  for (let hole = record.values.length - read.length; hole > 0; hole -= 1)
    list.lost.addNameless(space);
  for (const [value, valuePlace] of read) {
    if (list.isUnread(at(valuePlace, 'id'))) list.lost.addNameless(space, value.id);
    else if (values.has(value.id)) {
      const text = `Two values of this fact are called ${quoted(value.id)}.`;
      list.fault(at(valuePlace, 'id'), 'duplicate-id', text);
      list.lost.addDoubled(space, value.id);
    } else values.set(value.id, value.name);
  }
  return { id, name, values, how };
}

function compileKinds(
  entities: Entities<KindRecord>,
  builtIn: readonly KindRecord[],
  list: FaultList,
): Map<string, Kind> {
  const kinds = new Map<string, Kind>();
  for (const record of builtIn) kinds.set(record.id, compileBuiltIn(record));
  const own = byId(entities, (record, pointer) => {
    if (kinds.has(record.id)) {
      const text = `"${record.id}" is built in; call yours something else.`;
      list.fault(at(pointer, 'id'), 'duplicate-id', text);
      list.lost.addDoubled('kinds', record.id);
    }
    return compileKind(record, false, pointer, list);
  });
  for (const [id, kind] of own) {
    // Faces of a kind that is there twice may mean either.
    if (!kinds.delete(id)) kinds.set(id, kind);
  }
  return kinds;
}

export function compileBuiltIn(record: KindRecord): Kind {
  const own = new FaultList();
  const kind = compileKind(record, true, '', own);
  const [first] = own.faults;
  if (first === undefined) return kind;
  throw new Error(`built-in kind ${record.id}${first.pointer}: ${first.text}`);
}
