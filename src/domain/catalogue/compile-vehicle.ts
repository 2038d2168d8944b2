/**
 * Compiles vehicles: what the works fitted where, in the words of their layout. A vehicle that is
 * like another has its layout, facts, evidence and fitted parts, and lays its own over them, fact
 * by fact and position by position.
 */

import type { Evidence, Layout, Vehicle } from './catalogue.js';
import { circlesOf } from './circles.js';
import {
  checkSpans,
  compileFitted,
  type Fitted,
  type FittedNames,
  type FittedRecords,
  optionsIn,
  sayUnknownValue,
  toldBy,
} from './compile-fitted.js';
import { checkMonths } from './compile-part.js';
import type { FittedAdapters, VehicleRecord } from './document.js';
import { evidenceWithin } from './evidence-within.js';
import { at, type FaultList } from './faults.js';
import { namedEntries, present } from './holes.js';
import { inside } from './lost-names.js';
import type { Entities } from './read-document.js';
import { compileVin } from './vin.js';

export interface VehicleNames extends FittedNames {
  readonly layouts: ReadonlyMap<string, Layout>;
  readonly layoutIds: ReadonlySet<string>;
}

/** A vehicle before its facts tell what is fitted: others may be like it, with other facts. */
interface Draft {
  /** Null where it cannot be used. */
  readonly layout: Layout | null;
  readonly facts: ReadonlyMap<string, string>;
  readonly evidence: Evidence;
  readonly fitted: Fitted;
  readonly adapters: ReadonlyMap<string, readonly string[]>;
}

/** By id, in the order of the document; without those whose layout cannot be used. */
export function compileVehicles(
  entities: Entities<VehicleRecord>,
  names: VehicleNames,
  inherited: Evidence,
  list: FaultList,
): Map<string, Vehicle> {
  const { records, ids, doubled } = entities;
  const named = new Map(
    records
      .filter(([{ id }]) => ids.has(id) && !doubled.has(id))
      .map((entry) => [entry[0].id, entry] as const),
  );
  checkNames(named, ids, list);
  const drafts = new Map<string, Draft>();
  const vehicles = new Map<string, Vehicle>();
  for (const entry of records) {
    for (const [record, pointer] of likenesses(entry, named, drafts)) {
      const base = named.get(record.like ?? '')?.[1];
      const under = base === undefined ? null : (drafts.get(base) ?? null);
      drafts.set(pointer, compileDraft(record, under, { ...names, inherited }, pointer, list));
    }
    const [record, pointer] = entry;
    const draft = drafts.get(pointer);
    const vehicle = draft === undefined ? null : finished(record, draft, names, pointer, list);
    if (vehicle !== null && named.has(record.id)) vehicles.set(record.id, vehicle);
  }
  return vehicles;
}

type Entry = readonly [record: VehicleRecord, pointer: string];

/** A record and those that it is like, as far as they are not compiled; the last one first. */
function likenesses(
  entry: Entry,
  named: ReadonlyMap<string, Entry>,
  done: ReadonlyMap<string, unknown>,
): Entry[] {
  const chain = new Map<string, Entry>();
  let here: Entry | undefined = entry;
  while (here !== undefined && !done.has(here[1]) && !chain.has(here[1])) {
    chain.set(here[1], here);
    here = named.get(here[0].like ?? '');
  }
  return [...chain.values()].reverse();
}

/** Whether the vehicles exist that vehicles name, and lead anywhere. */
function checkNames(
  named: ReadonlyMap<string, Entry>,
  ids: ReadonlySet<string>,
  list: FaultList,
): void {
  const like = new Map<string, readonly string[]>();
  const replaced = new Map<string, readonly string[]>();
  for (const [id, [record, pointer]] of named) {
    const base = record.like ?? null;
    like.set(id, base === null ? [] : [base]);
    const others = [...present(record.replacedBy ?? [], at(pointer, 'replacedBy'))];
    replaced.set(
      id,
      others.map(([other]) => other),
    );
    const all = base === null ? others : [[base, at(pointer, 'like')] as const, ...others];
    for (const [other, place] of all) {
      if (ids.has(other)) continue;
      list.unknown(other, { sort: 'vehicles', pointer: place, known: ids });
    }
  }
  const say = (field: 'like' | 'replacedBy', circle: readonly string[], text: string) => {
    const [first = ''] = circle;
    const place = at(named.get(first)?.[1] ?? '/vehicles', field);
    list.fault(place, 'circle', `${text}: ${circle.join(', ')}.`);
  };
  for (const circle of circlesOf(like)) say('like', circle, 'These vehicles are like one another');
  for (const circle of circlesOf(replaced)) {
    say('replacedBy', circle, "These vehicles took one another's place");
  }
}

function compileDraft(
  record: VehicleRecord,
  under: Draft | null,
  names: VehicleNames & { readonly inherited: Evidence },
  pointer: string,
  list: FaultList,
): Draft {
  const layout = compileLayoutOf(record, under, names, pointer, list);
  // What stands in another layout says nothing about this one.
  const base = under !== null && under.layout === layout ? under : null;
  checkMonths(record.built, at(pointer, 'built'), list);
  const facts = compileFacts(record, names, at(pointer, 'facts'), list);
  const place = at(pointer, 'fitted');
  const hasNone = record.fitted === undefined && !list.isUnread(place);
  if (hasNone && isLikeNone(record, pointer, list)) {
    list.missing(pointer, 'fitted', 'what the works fitted; or a vehicle that this one is "like"');
  }
  const { positions, matings } = fittedOf(record);
  const here = { ...names, layout };
  const fitted = compileFitted(positions, here, place, list);
  const adapters = compileAdapters(matings, layout, names, at(place, 'matings'), list);
  return {
    layout,
    facts: laidOver(base?.facts, facts, record.facts),
    evidence: evidenceWithin(base?.evidence ?? names.inherited, record.evidence),
    fitted: laidOver(base?.fitted, fitted, positions),
    adapters: laidOver(base?.adapters, adapters, matings),
  };
}

function fittedOf({ fitted = {} }: VehicleRecord) {
  const { matings = {}, ...positions } = fitted;
  return { positions: positions as FittedRecords, matings: matings as FittedAdapters };
}

function isLikeNone(record: VehicleRecord, pointer: string, list: FaultList): boolean {
  return (record.like ?? null) === null && !list.isUnread(at(pointer, 'like'));
}

/** What a record says takes the place of what is under it; even what of it cannot be used. */
function laidOver<Item>(
  under: ReadonlyMap<string, Item> | undefined,
  own: ReadonlyMap<string, Item>,
  records: Readonly<Record<string, unknown>> = {},
): Map<string, Item> {
  const inherited = [...(under ?? [])].filter(([name]) => !Object.hasOwn(records, name));
  return new Map([...inherited, ...own]);
}

/** Null where there is none that can be used. */
function compileLayoutOf(
  record: VehicleRecord,
  under: Draft | null,
  { layouts, layoutIds }: VehicleNames,
  pointer: string,
  list: FaultList,
): Layout | null {
  const place = at(pointer, 'layout');
  if (record.layout === undefined) {
    if (list.isUnread(place)) return null;
    if (isLikeNone(record, pointer, list)) {
      list.missing(pointer, 'layout', 'the layout that it has; or a vehicle that it is "like"');
    }
    return under?.layout ?? null;
  }
  const layout = layouts.get(record.layout) ?? null;
  if (layout === null && !layoutIds.has(record.layout)) {
    list.unknown(record.layout, { sort: 'layouts', pointer: place, known: layoutIds });
  }
  const other = under?.layout ?? null;
  if (layout !== null && other !== null && layout !== other) {
    const base = record.like ?? '';
    const text = `"${base}", which this vehicle is like, has the layout "${other.id}".`;
    list.fault(place, 'other-layout', text);
  }
  return layout;
}

/** Null where it has no layout; what does not hang on the layout is looked at even so. */
function finished(
  record: VehicleRecord,
  draft: Draft,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Vehicle | null {
  const vin = [...present(record.vin ?? [], at(pointer, 'vin'))].flatMap(
    ([one, place]) => compileVin(one, place, list) ?? [],
  );
  const { layout, facts, evidence, adapters } = draft;
  if (layout === null) return null;
  const fitted = toldBy(facts, draft.fitted);
  const own = fittedOf(record).positions;
  // With the very facts of the other vehicle, what is inherited is what that one says.
  const hasFacts = Object.keys(record.facts ?? {}).length > 0;
  const likeness = hasFacts ? at(pointer, 'like') : null;
  const places = { own, fitted: at(pointer, 'fitted'), like: likeness };
  checkSpans(fitted, { ...names, layout }, places, list);
  const { id, make, model, variant = null, like = null } = record;
  const [from = null, until = null] = record.built ?? [];
  const replacedBy = [...present(record.replacedBy ?? [], '')].map(([other]) => other);
  const head = { id, make, model, variant, built: [from, until] as const, vin };
  const saidFacts = new Set<string>();
  const options = optionsIn(draft.fitted);
  const here = { layout, like, replacedBy, evidence, fitted, options, adapters };
  return { ...head, facts, saidFacts, ...here };
}

function compileFacts(
  record: VehicleRecord,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, string> {
  const facts = new Map<string, string>();
  for (const [id, value, place] of namedEntries(record.facts ?? {}, pointer)) {
    const fact = names.facts.get(id);
    if (fact === undefined) {
      list.unknown(id, { sort: 'facts', pointer: place, known: names.facts.keys() });
    } else if (value !== undefined && !fact.values.has(value)) {
      sayUnknownValue(fact, value, place, list);
    } else if (value !== undefined) facts.set(id, value);
  }
  return facts;
}

function compileAdapters(
  records: FittedAdapters,
  layout: Layout | null,
  names: VehicleNames,
  pointer: string,
  list: FaultList,
): Map<string, readonly string[]> {
  const adapters = new Map<string, readonly string[]>();
  for (const [id, raw = [], place] of namedEntries(records, pointer)) {
    const parts = typeof raw === 'string' ? [[raw, place] as const] : [...present(raw, place)];
    if (layout !== null) checkMating(id, parts.length, layout, place, list);
    for (const [part, partPlace] of parts) checkAdapter(part, names, partPlace, list);
    const ids = parts.map(([part]) => part);
    adapters.set(id, ids);
  }
  return adapters;
}

function checkMating(
  id: string,
  count: number,
  layout: Layout,
  pointer: string,
  list: FaultList,
): void {
  const mating = layout.matings.get(id);
  if (mating === undefined) {
    const text = `"${layout.id}" has no mating "${id}".`;
    const space = inside('layouts', layout.id, 'matings');
    list.unknown(id, { sort: 'matings', space, pointer, known: layout.matings.keys(), text });
  } else if (
    count > mating.adapters &&
    !list.lost.has(inside('layouts', layout.id, 'adapters'), id)
  ) {
    const most = mating.adapters;
    const text = most === 0 ? 'no adapter' : `not ${count} adapters in a row, but ${most} at most`;
    list.fault(pointer, 'too-many-adapters', `"${id}" takes ${text}.`);
  }
}

/** An adapter is a part with two faces, between which it sits. */
function checkAdapter(id: string, names: VehicleNames, pointer: string, list: FaultList): void {
  const part = names.parts.get(id);
  if (part === undefined) {
    if (names.partIds.has(id)) return;
    list.unknown(id, { sort: 'parts', pointer, known: names.partIds });
  } else if (part.faces.size !== 2 && !list.lost.hasAny(inside('parts', id, 'faces'))) {
    const text = `"${id}" is no adapter: it has ${part.faces.size} faces on record, not two.`;
    list.fault(pointer, 'not-an-adapter', text);
  }
}
