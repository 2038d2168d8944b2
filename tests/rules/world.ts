/**
 * A small notation for catalogues of a few parts, and for asking the judge about them, so that a
 * test shows its whole world in a few lines.
 *
 *   places   'box'  'unit?' (may be empty)  'wheel*4' (count)  'shaft<>' (left and right)
 *            'box: manual, automatic' (roles, where they are not the name of the place)
 *   matings  'box.rear = prop.front'  'name: box.rear = prop.front +2 shared' (adapters in a row)
 *   parts    'box-a': its faces and values in one; the role is the word before the first dash
 *
 * Left out: prices, texts and languages. Everything is asked of the compiled document, by the
 * judge itself or by the use-case of fit.
 */

import type { Catalogue, Occupant, Position } from '../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { Use } from '../../src/domain/check/coupling.js';
import type { Hand } from '../../src/domain/check/reading.js';
import {
  type Arrangement,
  asBuilt,
  type Origin,
  overlay,
  type Seat,
  type Seats,
} from '../../src/domain/judge/configuration.js';
import type { Constraint } from '../../src/domain/judge/constraint.js';
import { type Judgement, judge } from '../../src/domain/judge/judge.js';
import { measureFor } from '../../src/domain/judge/measure.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import { exactText } from '../../src/domain/quantity/rational.js';
import type { FitAnswer } from '../../src/usecases/answer.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import type { Library } from '../../src/usecases/library.js';
import { libraryOf } from '../memory-store.js';

type Table<Item> = Readonly<Record<string, Item>>;

export interface Sketch {
  /** The values of each role; a word of `VALUES`, or a whole record. */
  readonly roles?: Table<Table<unknown>>;
  /** The faces that a role lists; a role that is not here lists none and may have any. */
  readonly faces?: Table<readonly string[]>;
  readonly kinds?: readonly unknown[];
  readonly places: readonly string[];
  readonly matings?: readonly string[];
  readonly terms?: Table<unknown>;
  readonly checks?: readonly unknown[];
  readonly unmated?: 'ignore';
  readonly parts: Table<Table<unknown>>;
  /** What the works fitted; a vehicle whose name is in `about` has more to it. */
  readonly cars: Table<Table<unknown>>;
  readonly about?: Table<unknown>;
  readonly layouts?: readonly unknown[];
  readonly rules?: readonly unknown[];
  readonly statements?: readonly unknown[];
  readonly facts?: readonly unknown[];
  readonly couplings?: Table<unknown>;
}

export interface World {
  readonly catalogue: Catalogue;
  readonly document: unknown;
  readonly warnings: readonly string[];
}

const VALUES: Table<unknown> = {
  code: { type: 'code' },
  count: { type: 'count' },
  ratio: { type: 'ratio' },
  ratios: { type: 'ratio', list: true },
  length: { type: 'measured', unit: 'mm' },
  torque: { type: 'measured', unit: 'N.m' },
  rating: { type: 'measured', unit: 'N.m', rating: true },
  engine: { type: 'measured', unit: 'N.m', askedAs: 'torque' },
};

/** Two kinds that every world has: patterns that must be equal, and a pin in a hole. */
const KINDS: readonly unknown[] = [
  {
    id: 'flange',
    parameters: { pattern: { type: 'code' } },
    checks: [{ equal: 'pattern' }],
  },
  {
    id: 'peg',
    sides: ['pin', 'hole'],
    parameters: { dia: { type: 'measured', unit: 'mm' } },
    checks: [{ id: 'play', clearance: ['hole.dia', 'pin.dia'], min: '0 mm', max: '0.2 mm' }],
  },
];

/** A flange of a pattern; without one, its pattern is not recorded. */
export function flange(pattern?: unknown, more: Table<unknown> = {}) {
  return { kind: 'flange', ...(pattern === undefined ? {} : { pattern }), ...more };
}

export function pin(dia?: unknown, more: Table<unknown> = {}) {
  return { kind: 'peg', side: 'pin', ...(dia === undefined ? {} : { dia }), ...more };
}

export function hole(dia?: unknown, more: Table<unknown> = {}) {
  return { kind: 'peg', side: 'hole', ...(dia === undefined ? {} : { dia }), ...more };
}

export function optional(face: Table<unknown>) {
  return { ...face, optional: true };
}

export const ABSENT = { absent: true };

export function by(basis: string) {
  return { evidence: { basis } };
}

/** A value of another basis than the document's. */
export function from(basis: string, is: unknown) {
  return { is, ...by(basis) };
}

/** @throws Error where the sketch has a fault: see `faultsOf` for sketches that shall have. */
export function world(sketch: Sketch): World {
  const document = documentOf(sketch);
  const { catalogue, faults, warnings } = compileDocument(document, BUILT_IN_KINDS);
  if (catalogue === null) throw new Error(JSON.stringify(faults, null, 1));
  return { catalogue, document, warnings: warnings.map(({ code }) => code) };
}

/** The codes of the faults for which a sketch is refused. */
export function faultsOf(sketch: Sketch): string[] {
  return compileDocument(documentOf(sketch), BUILT_IN_KINDS).faults.map(({ code }) => code);
}

function documentOf(sketch: Sketch): unknown {
  const { kinds = [], rules, statements, facts, couplings, about = {} } = sketch;
  const { terms, checks, unmated } = sketch;
  const positions = sketch.places.map(placeOf);
  const parts = Object.entries(sketch.parts).map(partOf);
  const used = [...positions, ...parts].flatMap(({ roles }) => roles);
  const names = new Set([...used, ...Object.keys(sketch.roles ?? {})]);
  const roles = [...names].map((id) => roleOf(id, sketch));
  const matings = (sketch.matings ?? []).map(matingOf);
  const layout = { id: 'layout', positions, matings, ...given({ terms, checks, unmated }) };
  const vehicles = Object.entries(sketch.cars).map(([id, fitted]) => {
    const more = (about[id] ?? {}) as Table<unknown>;
    return { id, make: 'Orrin', model: 'Test', layout: 'layout', fitted, ...more };
  });
  return {
    ...{ catalogue: 1, lang: 'en', evidence: { basis: 'maker' } },
    ...given({ couplings, rules, statements, facts }),
    ...{ kinds: [...KINDS, ...kinds], roles, parts, vehicles },
    layouts: [layout, ...(sketch.layouts ?? [])],
  };
}

function given(fields: Table<unknown>): Table<unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined));
}

function placeOf(text: string) {
  const match = /^([a-z0-9-]+)(\?)?(?:\*(\d+)|(<>))?(?:: (.+))?$/.exec(text);
  if (match === null) throw new Error(`no place: ${text}`);
  const [, id = '', isOptional, count, isHanded, roles = id] = match;
  const more = {
    optional: isOptional === undefined ? undefined : true,
    count: count === undefined ? undefined : Number(count),
    handed: isHanded === undefined ? undefined : true,
  };
  return { id, name: `the ${id}`, roles: roles.split(', '), ...given(more) };
}

function matingOf(text: string) {
  const match = /^(?:([a-z0-9-]+): )?(\S+) = (\S+)(?: \+(\d))?( shared)?$/.exec(text);
  if (match === null) throw new Error(`no mating: ${text}`);
  const [, name, left = '', right = '', adapters, shared] = match;
  const id = name ?? `${left.split('.')[0] ?? ''}-${right.split('.')[0] ?? ''}`;
  const more = {
    adapters: adapters === undefined ? undefined : Number(adapters),
    shared: shared === undefined ? undefined : true,
  };
  return { id, between: [left, right], ...given(more) };
}

function roleOf(id: string, { roles = {}, faces = {} }: Sketch) {
  const values = Object.entries(roles[id] ?? {}).map(([name, spec]) => [
    name,
    typeof spec === 'string' ? VALUES[spec] : spec,
  ]);
  return { id, name: id, values: Object.fromEntries(values), ...given({ faces: faces[id] }) };
}

const PART_FIELDS = ['roles', 'hand', 'spans', 'evidence'];

function partOf([id, record]: readonly [string, Table<unknown>]) {
  const entries = Object.entries(record);
  const own = entries.filter(([name]) => PART_FIELDS.includes(name));
  const rest = entries.filter(([name]) => !PART_FIELDS.includes(name));
  const interfaces = rest.filter(([, value]) => isFace(value));
  const values = rest.filter(([, value]) => !isFace(value));
  return {
    id,
    name: id,
    roles: (record.roles as string[] | undefined) ?? [id.split('-')[0] ?? id],
    ...Object.fromEntries(own),
    interfaces: Object.fromEntries(interfaces),
    values: Object.fromEntries(values),
  };
}

function isFace(value: unknown): boolean {
  return typeof value === 'object' && value !== null && ('kind' in value || 'absent' in value);
}

/** A part; null for nothing; '?' for what nobody recorded; or one for each hand. */
export type Placed = string | null | { readonly left: string | null; readonly right: string };

export interface Scene {
  /** The vehicle, `car` where left out. */
  readonly on?: string;
  /** What the question says is on the vehicle, and which adapters. */
  readonly said?: Table<Placed>;
  readonly saidBetween?: Table<readonly string[]>;
  /** The change: parts at places, adapters in matings. */
  readonly put?: Table<Placed>;
  readonly between?: Table<readonly string[]>;
  readonly torque?: string;
  readonly use?: Use;
  readonly ignorePresent?: boolean;
}

/** One configuration of a vehicle, judged. */
export function judged({ catalogue }: World, scene: Scene = {}): Judgement {
  const vehicle = catalogue.vehicles.get(scene.on ?? 'car');
  if (vehicle === undefined) throw new Error(`no vehicle ${scene.on}`);
  const { layout } = vehicle;
  const { said = {}, saidBetween = {}, put = {}, between = {} } = scene;
  const lay = (base: Arrangement, seats: Table<Placed>, rows: typeof between, origin: Origin) =>
    overlay(
      base,
      new Map(
        Object.entries(seats).map(([id, placed]) => {
          const position = layout.positions.get(id);
          if (position === undefined) throw new Error(`no place ${id}`);
          return [id, seatsOf(placed, position, origin)];
        }),
      ),
      new Map(Object.entries(rows).map(([mating, parts]) => [mating, { parts, origin }])),
    );
  const present = lay(asBuilt(vehicle), said, saidBetween, 'said');
  return judge({
    ...{ catalogue, pairsOf: catalogue, vehicle, layout, present },
    judged: lay(present, put, between, 'chosen'),
    torque: scene.torque === undefined ? null : torqueOf(scene.torque),
    use: scene.use ?? null,
    ignorePresent: scene.ignorePresent ?? false,
  });
}

function seatsOf(placed: Placed, position: Position, origin: Origin): Seats {
  const seat = (one: string | null): Seat => ({ occupant: occupantOf(one), origin });
  const isPair = typeof placed === 'object' && placed !== null;
  if (isPair) return { hands: true, left: seat(placed.left), right: seat(placed.right) };
  if (!position.isHanded) return { hands: false, seat: seat(placed) };
  return { hands: true, left: seat(placed), right: seat(placed) };
}

function occupantOf(placed: string | null): Occupant {
  if (placed === null) return { is: 'empty' };
  return placed === '?' ? { is: 'as-found' } : { is: 'part', part: placed };
}

function torqueOf(text: string) {
  const read = parseQuantity(text, { type: 'designation', dimension: 'torque' });
  if (isFault(read)) throw new Error(read.text);
  return { interval: read.interval, text };
}

/** The one constraint of a name, on one hand if it is judged by hand; undefined if not judged. */
export function found({ constraints }: Judgement, id: string, hand?: Hand): Constraint | undefined {
  const own = constraints.filter(
    (one) => one.id === id && (hand === undefined || one.hand === hand),
  );
  if (own.length > 1) throw new Error(`${id} is judged ${own.length} times`);
  return own[0];
}

/** State and reason of a constraint, such as `fails not-equal`; `not judged` where it is not. */
export function stateOf(judgement: Judgement, id: string, hand?: Hand): string {
  const one = found(judgement, id, hand);
  return one === undefined ? 'not judged' : `${one.state} ${one.code}`;
}

/** What the records alone come to, whatever is given. */
export function computedOf(judgement: Judgement, id: string, hand?: Hand): string | undefined {
  return found(judgement, id, hand)?.computed;
}

/** The facts asked for: `place.face.parameter purpose ±needed`, `±?` where no tolerance is sure. */
export function factsOf(judgement: Judgement): string[] {
  return measureFor(judgement).map(({ address, purpose, needed }) => {
    const { position, hand, mating, fact, interface: face, parameter } = address;
    const place = [position ?? mating ?? fact, hand].filter((word) => word !== null).join(':');
    const name = [place, face, parameter].filter((word) => word !== null).join('.');
    return `${name} ${purpose} ±${needed === null ? '?' : exactText(needed)}`;
  });
}

export interface Asked {
  readonly on?: string;
  readonly position?: string;
  readonly with?: Table<string>;
  readonly fitted?: Table<string | { readonly left: string; readonly right: string }>;
  readonly adapters?: Table<readonly string[]>;
  readonly torque?: string;
  readonly ignorePresent?: boolean;
}

const libraries = new WeakMap<World, Library>();

function libraryFor(one: World): Library {
  const library = libraries.get(one) ?? libraryOf(one.document);
  libraries.set(one, library);
  return library;
}

function questionOf(asked: Asked) {
  return {
    ...{ edition: null, lang: 'en', vehicle: asked.on ?? 'car', use: null },
    fitted: asked.fitted ?? {},
    adapters: asked.adapters ?? {},
    torque: asked.torque ?? null,
    ignorePresent: asked.ignorePresent ?? false,
  };
}

/** The answer to: does this part fit, with nothing else changed? */
export function fitOf(one: World, part: string, asked: Asked = {}): FitAnswer {
  return checkFit(libraryFor(one), {
    ...questionOf(asked),
    ...{ part, position: asked.position ?? null, with: asked.with ?? {}, changes: null },
  });
}

/** The answer to: is the vehicle right as it stands? */
export function inspected(one: World, asked: Asked = {}) {
  return inspectVehicle(libraryFor(one), questionOf(asked));
}
