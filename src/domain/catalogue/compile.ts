/**
 * A document becomes a catalogue: the shape is read, every reference resolved, every value
 * understood. All faults of a document are said at once; an entity with a fault in its form is
 * known by its id, so that it does not cause further faults, but its content is not looked at.
 */

import { compileCondition } from '../check/compile.js';
import { type Band, type Couplings, DEFAULT_COUPLINGS } from '../check/coupling.js';
import { readLiteral } from '../check/term.js';
import { compare, sign } from '../quantity/rational.js';
import type {
  Catalogue,
  Evidence,
  Fact,
  Kind,
  Layout,
  Part,
  Role,
  Rule,
  Statement,
  Vehicle,
} from './catalogue.js';
import { compileKind, compileRole } from './compile-kind.js';
import { compileLayout } from './compile-layout.js';
import { compilePart } from './compile-part.js';
import { compileStatement, compileVehicle } from './compile-vehicle.js';
import type {
  BandRecord,
  CatalogueDocument,
  EntityList,
  FactRecord,
  KindRecord,
  LayoutRecord,
  OfferRecord,
  PartRecord,
  RoleRecord,
  RuleRecord,
  StatementRecord,
  VehicleRecord,
} from './document.js';
import { ENTITY_LISTS } from './document.js';
import { findDoubts } from './doubts.js';
import { at, type Fault, FaultList, hint } from './faults.js';
import { readShape } from './read.js';
import type { LayoutScope } from './scope.js';
import { DOCUMENT_FIELDS, ENTITY_SHAPES, HEAD_FIELDS } from './shape.js';

export interface Compiled {
  /** Null where the document has a fault. */
  readonly catalogue: Catalogue | null;
  readonly document: CatalogueDocument | null;
  readonly faults: readonly Fault[];
  readonly warnings: readonly Fault[];
}

/** The records of one list whose form is right, each with its place, and the ids of all. */
interface Readable<Record_> {
  readonly records: readonly (readonly [Record_, string])[];
  readonly ids: ReadonlySet<string>;
}

type Head = Omit<CatalogueDocument, EntityList>;

/**
 * Compiles a parsed JSON value.
 *
 * @param builtIn the kinds that every catalogue has.
 */
export function compileDocument(raw: unknown, builtIn: readonly KindRecord[]): Compiled {
  const list = new FaultList();
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    list.fault('', 'not-a-document', 'A catalogue document is a JSON object.');
    return { catalogue: null, document: null, faults: list.faults, warnings: [] };
  }
  const source = raw as Readonly<Record<string, unknown>>;
  const head = readHead(source, list);
  const lists = readLists(source, list);
  const catalogue = head === null ? null : compileAll(head, lists, builtIn, list);
  const isClean = list.isClean && catalogue !== null;
  return {
    catalogue: isClean ? catalogue : null,
    document: isClean ? (source as unknown as CatalogueDocument) : null,
    faults: list.faults,
    warnings: list.warnings,
  };
}

function readHead(source: Readonly<Record<string, unknown>>, list: FaultList): Head | null {
  const own = Object.entries(source).filter(([key]) => !Object.hasOwn(ENTITY_SHAPES, key));
  for (const [key] of own) {
    if (Object.hasOwn(HEAD_FIELDS, key)) continue;
    const text = `There is no field "${key}" here.${hint(key, Object.keys(DOCUMENT_FIELDS))}`;
    list.fault(at('', key), 'unknown-field', text);
  }
  const known = Object.fromEntries(own.filter(([key]) => Object.hasOwn(HEAD_FIELDS, key)));
  const isRead = readShape({ is: 'object', fields: HEAD_FIELDS }, known, '', list);
  if (!isRead) return null;
  const head = known as unknown as Head;
  if ((head.evidence as Partial<Evidence>).basis === undefined) {
    const text =
      '"basis" is missing: how what this document says is known, if nothing else is said.';
    list.fault('/evidence', 'missing-field', text);
    return null;
  }
  return head;
}

type Lists = { readonly [List in EntityList]: Readable<unknown> };

function readLists(source: Readonly<Record<string, unknown>>, list: FaultList): Lists {
  const entries = ENTITY_LISTS.map((name) => [name, readList(name, source, list)] as const);
  return Object.fromEntries(entries) as unknown as Lists;
}

function readList(
  name: EntityList,
  source: Readonly<Record<string, unknown>>,
  list: FaultList,
): Readable<unknown> {
  const raw = Object.hasOwn(source, name) ? source[name] : [];
  const records: [unknown, string][] = [];
  const ids = new Set<string>();
  if (!Array.isArray(raw)) {
    list.fault(at('', name), 'not-a-list', `"${name}" is a list.`);
    return { records, ids };
  }
  for (const [index, item] of raw.entries()) {
    const pointer = at(at('', name), index);
    const isRead = readShape(ENTITY_SHAPES[name], item, pointer, list);
    const id = idOf(item);
    if (id !== null && ids.has(id)) {
      list.fault(at(pointer, 'id'), 'duplicate-id', `"${id}" is there twice.`);
    }
    if (id !== null) ids.add(id);
    if (isRead) records.push([item, pointer]);
  }
  return { records, ids };
}

function idOf(item: unknown): string | null {
  if (typeof item !== 'object' || item === null || !('id' in item)) return null;
  return typeof item.id === 'string' ? item.id : null;
}

function compileAll(
  head: Head,
  lists: Lists,
  builtIn: readonly KindRecord[],
  list: FaultList,
): Catalogue {
  const evidence: Evidence = head.evidence;
  const couplings = compileCouplings(head.couplings ?? {}, list);
  const facts = compileFacts(lists.facts as Readable<FactRecord>, list);
  const kinds = compileKinds(lists.kinds as Readable<KindRecord>, builtIn, list);
  const kindIds = new Set([...kinds.keys(), ...lists.kinds.ids]);
  const roles = new Map<string, Role>();
  for (const [record, pointer] of (lists.roles as Readable<RoleRecord>).records) {
    roles.set(record.id, compileRole(record, pointer, list));
  }
  const roleIds = lists.roles.ids;
  const partIds = lists.parts.ids;
  const parts = new Map<string, Part>();
  for (const [record, pointer] of (lists.parts as Readable<PartRecord>).records) {
    const names = { kinds, kindIds, roles, roleIds, partIds };
    parts.set(record.id, compilePart(record, names, evidence, pointer, list));
  }
  const layouts = new Map<string, Layout>();
  const scopes = new Map<string, LayoutScope>();
  for (const [record, pointer] of (lists.layouts as Readable<LayoutRecord>).records) {
    const vocabulary = { roles, roleIds, kinds, parts, partIds, facts };
    const { layout, scope } = compileLayout(record, vocabulary, pointer, list);
    layouts.set(record.id, layout);
    scopes.set(record.id, scope);
  }
  const layoutIds = lists.layouts.ids;
  const vehicleNames = { layouts, layoutIds, parts, partIds, facts };
  const vehicles = new Map<string, Vehicle>();
  for (const [record, pointer] of (lists.vehicles as Readable<VehicleRecord>).records) {
    const vehicle = compileVehicle(record, vehicleNames, evidence, pointer, list);
    if (vehicle !== null) vehicles.set(record.id, vehicle);
  }
  const rules = compileRules(
    lists.rules as Readable<RuleRecord>,
    scopes,
    layoutIds,
    evidence,
    list,
  );
  const statements: Statement[] = [];
  for (const [record, pointer] of (lists.statements as Readable<StatementRecord>).records) {
    const names = { ...vehicleNames, vehicles, vehicleIds: lists.vehicles.ids };
    statements.push(compileStatement(record, names, evidence, pointer, list));
  }
  const offers = compileOffers(lists.offers as Readable<OfferRecord>, partIds, head, list);
  const { lang, currency = null } = head;
  const catalogue: Catalogue = {
    ...{ lang, currency, evidence, couplings, facts, kinds, roles, parts, layouts, vehicles },
    ...{ rules, statements, offers },
  };
  findDoubts(catalogue, lists, list);
  return catalogue;
}

function compileCouplings(
  records: Readonly<Record<string, BandRecord>>,
  list: FaultList,
): Couplings {
  const couplings = new Map(DEFAULT_COUPLINGS);
  for (const [id, record] of Object.entries(records)) {
    const place = at('/couplings', id);
    const limits = (['pass', 'warn', 'refuse'] as const).map((key) => {
      const read = readLiteral(record[key]);
      if (read !== null && read.dimension === '1' && sign(read.value) >= 0) return read.value;
      const text = `"${record[key]}" is no share of one, such as "0.5 %".`;
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

function compileFacts(lists: Readable<FactRecord>, list: FaultList): Map<string, Fact> {
  const facts = new Map<string, Fact>();
  for (const [record, pointer] of lists.records) {
    const values = new Map(record.values.map(({ id, name }) => [id, name]));
    if (values.size < record.values.length) {
      const text = 'Two values of this fact have one id.';
      list.fault(at(pointer, 'values'), 'duplicate-id', text);
    }
    const { id, name, how = null } = record;
    facts.set(id, { id, name, values, how });
  }
  return facts;
}

function compileKinds(
  lists: Readable<KindRecord>,
  builtIn: readonly KindRecord[],
  list: FaultList,
): Map<string, Kind> {
  const kinds = new Map<string, Kind>();
  for (const record of builtIn) {
    const own = new FaultList();
    kinds.set(record.id, compileKind(record, true, '', own));
    const [first] = own.faults;
    if (first !== undefined) {
      throw new Error(`built-in kind ${record.id}${first.pointer}: ${first.text}`);
    }
  }
  for (const [record, pointer] of lists.records) {
    if (kinds.get(record.id)?.isBuiltIn) {
      const text = `"${record.id}" is built in; call yours something else.`;
      list.fault(at(pointer, 'id'), 'duplicate-id', text);
      continue;
    }
    kinds.set(record.id, compileKind(record, false, pointer, list));
  }
  return kinds;
}

function compileRules(
  lists: Readable<RuleRecord>,
  scopes: ReadonlyMap<string, LayoutScope>,
  layoutIds: ReadonlySet<string>,
  inherited: Evidence,
  list: FaultList,
): Map<string, Rule[]> {
  const rules = new Map<string, Rule[]>([...scopes.keys()].map((id) => [id, []]));
  for (const [record, pointer] of lists.records) {
    for (const [index, id] of (record.layouts ?? []).entries()) {
      if (layoutIds.has(id)) continue;
      const text = `There is no layout "${id}".${hint(id, layoutIds)}`;
      list.fault(at(at(pointer, 'layouts'), index), 'unknown-layout', text);
    }
    const effects = [record.needs, record.excludes, record.note, record.caution];
    if (effects.every((effect) => effect === undefined)) {
      const text = 'A rule needs an effect: "needs", "excludes", "note" or "caution".';
      list.fault(pointer, 'missing-field', text);
    }
    compileRuleEverywhere(record, scopes, rules, inherited, pointer, list);
  }
  return rules;
}

/**
 * A rule is compiled for every layout it speaks of. Where it names none, it speaks of all
 * layouts that know its words, and has a fault only if no layout does.
 */
function compileRuleEverywhere(
  record: RuleRecord,
  scopes: ReadonlyMap<string, LayoutScope>,
  rules: ReadonlyMap<string, Rule[]>,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): void {
  const isNamed = record.layouts !== undefined;
  const wanted = record.layouts ?? [...scopes.keys()];
  let best: FaultList | null = null;
  let isUsed = false;
  for (const id of wanted) {
    const scope = scopes.get(id);
    if (scope === undefined) continue;
    const own = new FaultList();
    const rule = compileRule(record, scope, inherited, pointer, own);
    if (rule !== null && own.isClean) {
      rules.get(id)?.push(rule);
      isUsed = true;
    } else if (best === null || own.faults.length < best.faults.length || isNamed) best = own;
  }
  if (best === null || (isUsed && !isNamed)) return;
  for (const { pointer: place, code, text } of best.faults) list.fault(place, code, text);
}

function compileRule(
  record: RuleRecord,
  scope: LayoutScope,
  inherited: Evidence,
  pointer: string,
  list: FaultList,
): Rule | null {
  const condition = (key: 'when' | 'needs' | 'excludes') =>
    record[key] === undefined ? null : compileCondition(record[key], scope, at(pointer, key), list);
  const when = condition('when');
  const needs = condition('needs');
  const excludes = condition('excludes');
  if (when === null || !list.isClean) return null;
  const { id, note = null, caution = null, because } = record;
  const evidence = { ...inherited, ...record.evidence };
  return { id, when, needs, excludes, note, caution, because, evidence };
}

function compileOffers(
  lists: Readable<OfferRecord>,
  partIds: ReadonlySet<string>,
  head: Head,
  list: FaultList,
): OfferRecord[] {
  if (lists.records.length > 0 && head.currency === undefined) {
    list.fault('', 'missing-field', '"currency" is missing: offers have prices.');
  }
  for (const [record, pointer] of lists.records) {
    if (partIds.has(record.for)) continue;
    const text = `There is no part "${record.for}".${hint(record.for, partIds)}`;
    list.fault(at(pointer, 'for'), 'unknown-part', text);
  }
  return lists.records.map(([record]) => record);
}
