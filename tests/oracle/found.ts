/**
 * What is found where a check names a value: something that has a value in every world, with the
 * unknowns and choices that it depends on; or nothing, where the place is empty.
 */

import type {
  InterfaceRecord,
  PartRecord,
  RoleRecord,
  ValueRecord,
} from '../../src/domain/catalogue/document.js';
import { type Fraction, fraction, larger, plus, smaller } from './fraction.js';
import type { Basis, Trust } from './outcome.js';
import {
  isExact,
  naturalSpan,
  type Recorded,
  readValue,
  type Span,
  type ValueSpec,
} from './record.js';
import {
  anyWord,
  type Dot,
  distinct,
  numberVariable,
  type Variable,
  type World,
  wordVariable,
} from './variable.js';

export interface Found {
  /** The names of empty places; where there is one, the rest says nothing. */
  readonly empty: readonly string[];
  readonly at: (world: World) => Dot;
  readonly variables: readonly Variable[];
  /** The single values of a list; null where it is no list, or a list that is not recorded. */
  readonly items: readonly Found[] | null;
  /** The words that it may be, as far as they are known. */
  readonly words: readonly string[];
  /** Of the recorded values behind it. */
  readonly bases: readonly Basis[];
  /** Whether anything is recorded there; alternatives may differ in that. */
  readonly isRecorded: (world: World) => boolean;
  /** Whether it is the torque that the question names. */
  readonly isAsked: boolean;
}

const PLAIN = {
  empty: [],
  variables: [],
  items: null,
  words: [],
  bases: [],
  isRecorded: () => true,
  isAsked: false,
} as const;

export function exactly(dot: Dot): Found {
  return { ...PLAIN, at: () => dot, words: typeof dot === 'string' ? [dot] : [] };
}

export function nothingAt(place: string): Found {
  const at = () => {
    throw new Error(`nothing stands at ${place}`);
  };
  return { ...PLAIN, empty: [place], at };
}

function following(variable: Variable): Found {
  const at = (world: World): Dot => {
    const value = world.get(variable.key);
    if (value === undefined) throw new Error(`no value for ${variable.key}`);
    return value;
  };
  return { ...PLAIN, at, variables: [variable] };
}

/** Where a value is read. */
export interface Slot {
  /** Tells this piece from all others, also of its article. */
  readonly piece: string;
  /** Null for what nobody identified. */
  readonly article: string | null;
  readonly path: string;
}

/**
 * Counts, ratios, designations and codes belong to the article and are the same in all pieces of
 * it; a measure belongs to the piece.
 */
function keyOf({ piece, article, path }: Slot, spec: ValueSpec): string {
  const isShared = article !== null && spec.type !== 'measured';
  return isShared ? `${article} ${path}` : `${piece} ${article} ${path}`;
}

export function missing(slot: Slot, spec: ValueSpec): Found {
  const key = keyOf(slot, spec);
  const variable =
    spec.type === 'code' ? anyWord(key) : numberVariable(key, naturalSpan(spec), false);
  return { ...following(variable), isRecorded: () => false };
}

/** Something that is one of a few words, nobody knows which. */
export function oneOfWords(key: string, words: readonly string[]): Found {
  const [only, ...others] = words;
  if (only !== undefined && others.length === 0) return exactly(only);
  return { ...following(wordVariable(key, words, false)), words };
}

function single(value: Span | string, key: string): Found {
  if (typeof value === 'string') return exactly(value);
  if (isExact(value) && value.low !== null) return exactly(value.low);
  return following(numberVariable(key, value, false));
}

/** A recorded value as far as its record is believed; missing where it is not, or there is none. */
export function valueFound(
  record: ValueRecord | undefined,
  spec: ValueSpec,
  inherited: Basis,
  slot: Slot,
  trust: Trust,
): Found {
  if (record === undefined) return missing(slot, spec);
  const recorded = readValue(record, spec, inherited);
  const bases = [recorded.basis];
  const isRecorded = () => true;
  if (!trust(recorded.basis)) {
    // Each piece makes its own choice, also where nobody believes what there is to choose from.
    const isChoice = recorded.is === 'range' || recorded.is === 'set';
    const unknown = missing(isChoice ? ownSlot(slot) : slot, spec);
    return { ...unknown, bases, isRecorded };
  }
  return { ...believed(recorded, spec, slot), bases, isRecorded };
}

/** That of the piece itself, whatever else is known of its article. */
export function ownSlot({ piece, article, path }: Slot): Slot {
  return { piece: `${piece} with its ${article}`, article: null, path };
}

function believed(recorded: Recorded, spec: ValueSpec, slot: Slot): Found {
  const key = keyOf(slot, spec);
  const choice = `choice of ${slot.piece} ${slot.article} ${slot.path}`;
  switch (recorded.is) {
    case 'single':
      return single(recorded.value, key);
    case 'range': {
      const variable = numberVariable(choice, recorded.span, true);
      // A range of one value is a choice too: it is judged with the others that name it.
      return following(variable);
    }
    case 'set': {
      const options = recorded.options.map((option, index) => single(option, `${choice} ${index}`));
      return picked(choice, options);
    }
    case 'list': {
      const items = recorded.items.map((item, index) => single(item, `${key} ${index}`));
      return { ...joined(items, () => fraction(0n)), items };
    }
  }
}

/** One of several, by a choice that other values may follow too. */
export function picked(choice: string, options: readonly Found[]): Found {
  const indices = options.map((_, index) => String(index));
  const pick = wordVariable(choice, indices, true);
  const optionIn = (world: World): Found => {
    const option = options[Number(world.get(choice))];
    if (option === undefined) throw new Error(`nothing was picked for ${choice}`);
    return option;
  };
  return {
    ...PLAIN,
    at: (world) => optionIn(world).at(world),
    variables: distinct([pick, ...options.flatMap(({ variables }) => variables)]),
    words: options.flatMap(({ words }) => words),
    bases: options.flatMap(({ bases }) => bases),
    isRecorded: (world) => optionIn(world).isRecorded(world),
  };
}

/** Computed from several. */
export function joined(parts: readonly Found[], compute: (values: readonly Dot[]) => Dot): Found {
  return {
    empty: parts.flatMap(({ empty }) => empty),
    at: (world) => compute(parts.map(({ at }) => at(world))),
    variables: distinct(parts.flatMap(({ variables }) => variables)),
    items: null,
    words: parts.flatMap(({ words }) => words),
    bases: parts.flatMap(({ bases }) => bases),
    isRecorded: (world) => parts.every(({ isRecorded }) => isRecorded(world)),
    isAsked: parts.some(({ isAsked }) => isAsked),
  };
}

export function asNumber(dot: Dot): Fraction {
  if (typeof dot === 'string') throw new Error(`${dot} is no number`);
  return dot;
}

export function sumOf(parts: readonly Found[]): Found {
  return joined(parts, (values) => values.map(asNumber).reduce(plus, fraction(0n)));
}

/** The least or the greatest of numbers and lists; of a list that nobody recorded, anything. */
export function extremeOf(which: 'min' | 'max', parts: readonly Found[]): Found {
  const flat = parts.flatMap((part) => part.items ?? [part]);
  const pickOne = which === 'min' ? smaller : larger;
  return joined(flat, (values) => values.map(asNumber).reduce(pickOne));
}

export function countOf(list: Found): Found {
  return list.items === null ? list : { ...list, at: () => fraction(list.items?.length ?? 0) };
}

/** The spec of a value of a part, from the first of its roles that has it. */
export function specOf(
  roles: readonly RoleRecord[],
  part: PartRecord,
  value: string,
): ValueSpec | undefined {
  return part.roles
    .map((id) => roles.find((role) => role.id === id)?.values?.[value])
    .find((spec) => spec !== undefined);
}

/** The values of a face under each of its alternatives; one, where it has none. */
export function valuesOfFace(face: InterfaceRecord): Readonly<Record<string, ValueRecord>>[] {
  const { kind, side, optional, absent, evidence, alternatives = [{}], ...common } = face;
  return alternatives.map((own) => ({ ...(common as Record<string, ValueRecord>), ...own }));
}
