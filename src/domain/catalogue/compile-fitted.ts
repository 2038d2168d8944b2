/**
 * Compiles what the works fitted at the positions of a vehicle: parts, nothing, or what a fact
 * tells.
 */

import type {
  Fact,
  FittedHere,
  Layout,
  Occupant,
  Part,
  Position,
  WorksOption,
} from './catalogue.js';
import type { FittedRecord, OptionRecord, PiecesRecord } from './document.js';
import { at, type FaultList } from './faults.js';
import { namedEntries } from './holes.js';
import { inside } from './lost-names.js';

export interface FittedNames {
  readonly parts: ReadonlyMap<string, Part>;
  readonly partIds: ReadonlySet<string>;
  readonly facts: ReadonlyMap<string, Fact>;
}

interface NamesHere extends FittedNames {
  readonly layout: Layout | null;
}

export type FittedRecords = Readonly<Record<string, FittedRecord>>;
export type Fitted = ReadonlyMap<string, FittedHere>;

/** What the record of one vehicle says itself; what facts tell is not looked up yet. */
export function compileFitted(
  records: FittedRecords,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): Fitted {
  const { layout } = names;
  const fitted = new Map<string, FittedHere>();
  for (const [id, raw, place] of namedEntries(records, pointer)) {
    const position = layout?.positions.get(id) ?? null;
    if (layout !== null && position === null) {
      const text = `"${layout.id}" has no position "${id}".`;
      const space = inside('layouts', layout.id, 'positions');
      const known = layout.positions.keys();
      list.unknown(id, { sort: 'positions', space, pointer: place, known, text });
    }
    if (raw === undefined) continue;
    const here = isOption(raw)
      ? compileOption(raw, position, names, place, list)
      : compilePieces(raw, position, names, place, list);
    if (here !== null) fitted.set(id, here);
  }
  return fitted;
}

function isOption(raw: FittedRecord): raw is OptionRecord {
  return typeof raw === 'object' && raw !== null && Object.hasOwn(raw, 'by');
}

/** What the works fitted for each value of a fact; null where any of it cannot be used. */
function compileOption(
  { by: fact, ...records }: OptionRecord,
  position: Position | null,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): FittedHere | null {
  const known = names.facts.get(fact);
  if (known === undefined) {
    const place = at(pointer, 'by');
    list.unknown(fact, { sort: 'facts', pointer: place, known: names.facts.keys() });
  }
  const found = new Map<string, Pieces>();
  const entries = [...namedEntries(records, pointer)];
  for (const [value, raw, place] of entries) {
    if (known !== undefined && !known.values.has(value)) {
      sayUnknownValue(known, value, place, list);
    }
    const pieces = raw === undefined ? null : compilePieces(raw, position, names, place, list);
    if (pieces !== null) found.set(value, pieces);
  }
  if (Object.keys(records).length === 0) {
    const text = 'An option names what is fitted for one value of its fact, or for several.';
    list.fault(pointer, 'missing-field', text);
  }
  if (known === undefined || position === null || found.size < entries.length) return null;
  const option = (piece: (pieces: Pieces) => Occupant): WorksOption => {
    const values = [...found].map(([value, pieces]) => [value, piece(pieces)] as const);
    return { is: 'option', fact, by: new Map(values) };
  };
  if (!position.isHanded) {
    return { hands: false, occupant: option((one) => (one.hands ? one.left : one.occupant)) };
  }
  const left = option((one) => (one.hands ? one.left : one.occupant));
  const right = option((one) => (one.hands ? one.right : one.occupant));
  return { hands: true, left, right };
}

export function sayUnknownValue(fact: Fact, value: string, pointer: string, list: FaultList): void {
  const text = `"${fact.id}" cannot be "${value}".`;
  const space = inside('facts', fact.id, 'values');
  list.unknown(value, { sort: 'values', space, pointer, known: fact.values.keys(), text });
}

/** Looks up what the facts of a vehicle tell; what they do not tell stays an option. */
export function toldBy(facts: ReadonlyMap<string, string>, fitted: Fitted): Fitted {
  const told = new Map<string, FittedHere>();
  const tell = (occupant: Occupant | WorksOption): Occupant | WorksOption => {
    const value = occupant.is === 'option' ? facts.get(occupant.fact) : undefined;
    if (occupant.is !== 'option' || value === undefined) return occupant;
    return occupant.by.get(value) ?? { is: 'as-found' };
  };
  for (const [id, here] of fitted) {
    const now: FittedHere = here.hands
      ? { hands: true, left: tell(here.left), right: tell(here.right) }
      : { hands: false, occupant: tell(here.occupant) };
    // What is not recorded is left out.
    if (occupantsOf(now).some(({ is }) => is !== 'as-found')) told.set(id, now);
  }
  return told;
}

/** What facts tell: a question may tell another fact than the record. */
export function optionsIn(fitted: Fitted): Fitted {
  const options = [...fitted].filter(([, here]) =>
    occupantsOf(here).some(({ is }) => is === 'option'),
  );
  return new Map(options);
}

/** What stands at a position without any fact. */
type Pieces =
  | { readonly hands: false; readonly occupant: Occupant }
  | { readonly hands: true; readonly left: Occupant; readonly right: Occupant };

/** What stands at a position; where there is no such position, only whether the parts exist. */
function compilePieces(
  raw: PiecesRecord,
  position: Position | null,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): Pieces | null {
  const isPair = typeof raw === 'object' && raw !== null;
  const hands = inside('layouts', names.layout?.id ?? '', 'hands');
  const isSaid = position === null || list.lost.has(hands, position.id);
  if (isPair && !isSaid && !position.isHanded) {
    const text = `"${position.id}" has no left and right; name one part.`;
    list.fault(pointer, 'not-handed', text);
  }
  const read = (part: string | null, hand: 'left' | 'right' | null, place = pointer) =>
    compileOccupant(part, position, hand, names, place, list);
  const isHanded = isSaid ? isPair : position.isHanded;
  if (!isPair && !isHanded) {
    const occupant = read(raw, null);
    return occupant === null ? null : { hands: false, occupant };
  }
  const before = list.faults.length;
  const left = isPair ? read(raw.left, 'left', at(pointer, 'left')) : read(raw, 'left');
  // One name for both hands has its faults once.
  if (!isPair && list.faults.length > before) return null;
  const right = isPair ? read(raw.right, 'right', at(pointer, 'right')) : read(raw, 'right');
  return left === null || right === null ? null : { hands: true, left, right };
}

function compileOccupant(
  id: string | null,
  position: Position | null,
  hand: 'left' | 'right' | null,
  names: NamesHere,
  pointer: string,
  list: FaultList,
): Occupant | null {
  if (id === null) return { is: 'empty' };
  const part = names.parts.get(id);
  if (part === undefined) {
    if (!names.partIds.has(id)) {
      list.unknown(id, { sort: 'parts', pointer, known: names.partIds });
    }
    return null;
  }
  if (position === null) return null;
  const isMisplaced = checkRole(part, position, names.layout, pointer, list);
  if (!isMisplaced && hand !== null && part.hand !== null && part.hand !== hand) {
    list.fault(pointer, 'wrong-hand', `"${id}" is made for the ${part.hand} side.`);
  }
  return { is: 'part', part: id };
}

/** Whether a part has none of the roles of a position; says so. */
export function checkRole(
  part: Part,
  position: Position,
  layout: Layout | null,
  pointer: string,
  list: FaultList,
): boolean {
  if (part.roles.some((role) => position.roles.includes(role))) return false;
  const isSaid =
    list.lost.has(inside('layouts', layout?.id ?? '', 'roles'), position.id) ||
    list.lost.hasAny(inside('parts', part.id, 'roles'));
  if (isSaid) return true;
  const wanted = position.roles.map((role) => `"${role}"`).join(' or ');
  const text = `"${part.id}" is no ${wanted}, so it cannot stand at "${position.id}".`;
  list.fault(pointer, 'wrong-role', text);
  return true;
}

/** Where what is said of a vehicle stands. */
export interface FittedPlaces {
  /** What its own record says. */
  readonly own: FittedRecords;
  readonly fitted: string;
  /** Said to be at fault for what is inherited; null where the other vehicle says it itself. */
  readonly like: string | null;
}

/** A part that spans positions fills all of them. */
export function checkSpans(
  fitted: Fitted,
  names: FittedNames & { readonly layout: Layout },
  { own, ...places }: FittedPlaces,
  list: FaultList,
): void {
  const { layout } = names;
  const placeOf = (...ids: readonly string[]) => {
    const id = ids.find((one) => Object.hasOwn(own, one));
    return id === undefined ? places.like : at(places.fitted, id);
  };
  for (const [id, here] of fitted) {
    for (const placed of partsOf(here)) {
      const { part } = placed;
      const spans = names.parts.get(part)?.spans ?? null;
      if (spans === null || !spans.includes(id)) continue;
      for (const other of spans) {
        if (!layout.positions.has(other)) {
          const text = `"${part}" also fills "${other}", which "${layout.id}" lacks.`;
          const space = inside('layouts', layout.id, 'positions');
          const pointer = placeOf(id);
          if (pointer !== null)
            list.unknown(other, { sort: 'positions', space, pointer, known: [], text });
          continue;
        }
        const there = fitted.get(other);
        const isUnread = there === undefined && Object.hasOwn(own, other);
        if (isUnread || (there !== undefined && isThere(placed, there))) continue;
        const text = `"${part}" fills "${other}" too; name it there as well.`;
        const pointer = placeOf(id, other);
        if (pointer !== null) list.fault(pointer, 'span-not-filled', text);
      }
    }
  }
}

function occupantsOf(here: FittedHere): readonly (Occupant | WorksOption)[] {
  return here.hands ? [here.left, here.right] : [here.occupant];
}

interface Placed {
  readonly part: string;
  /** It stands there only where a fact has this value. */
  readonly when: { readonly fact: string; readonly value: string } | null;
}

/** The parts at a position, each once; for each value that an option names. */
function partsOf(here: FittedHere): Placed[] {
  const placed = new Map<string, Placed>();
  const note = (occupant: Occupant, when: Placed['when']): void => {
    if (occupant.is !== 'part') return;
    placed.set(`${occupant.part} ${when?.value ?? ''}`, { part: occupant.part, when });
  };
  for (const occupant of occupantsOf(here)) {
    if (occupant.is !== 'option') note(occupant, null);
    else for (const [value, one] of occupant.by) note(one, { fact: occupant.fact, value });
  }
  return [...placed.values()];
}

function isThere({ part, when }: Placed, there: FittedHere): boolean {
  return occupantsOf(there).some((occupant) => {
    if (occupant.is !== 'option') return occupant.is === 'part' && occupant.part === part;
    if (occupant.fact !== when?.fact) return false;
    const told = occupant.by.get(when.value);
    return told?.is === 'part' && told.part === part;
  });
}
