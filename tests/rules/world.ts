/**
 * Asks the real judge about a sketched catalogue: one configuration, or the use-cases of fit and
 * inspection over an edition in memory.
 */

import type { Occupant, Position } from '../../src/domain/catalogue/catalogue.js';
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
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import { exactText } from '../../src/domain/quantity/rational.js';
import type { FitAnswer } from '../../src/usecases/answer.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import type { KitAnswer } from '../../src/usecases/kit-answer.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import type { Library } from '../../src/usecases/library.js';
import type { VehicleInput } from '../../src/usecases/question.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { libraryOf } from '../memory-store.js';
import type { Table, World } from './sketch.js';

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
    catalogue,
    pairsOf: catalogue,
    vehicle,
    layout,
    present,
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

/** The facts asked for: `place.face.parameter purpose ±needed`, `±?` where none is sure. */
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
  readonly measured?: VehicleInput['measured'];
  readonly torque?: string;
  readonly ignorePresent?: boolean;
  /** Changes around the part are looked for only where this says so. */
  readonly changes?: 'yes';
  readonly steps?: number;
}

const libraries = new WeakMap<World, Library>();

function libraryFor(one: World): Library {
  const library = libraries.get(one) ?? libraryOf(one.document);
  libraries.set(one, library);
  return library;
}

function questionOf(asked: Asked) {
  return {
    edition: null,
    lang: 'en',
    units: 'recorded' as const,
    vehicle: asked.on ?? 'car',
    use: null,
    facts: {},
    fitted: asked.fitted ?? {},
    adapters: asked.adapters ?? {},
    measured: asked.measured ?? [],
    torque: asked.torque ?? null,
    ignorePresent: asked.ignorePresent ?? false,
  };
}

/** The answer to: does this part fit? With nothing else changed, unless the question says so. */
export function fitOf(one: World, part: string, asked: Asked = {}): FitAnswer {
  return checkFit(libraryFor(one), {
    ...questionOf(asked),
    part,
    position: asked.position ?? null,
    with: asked.with ?? {},
    changes: asked.changes ?? 'no',
    ...(asked.steps === undefined ? {} : { steps: asked.steps }),
  });
}

/** The answer to: what does it take to have these parts on the vehicle? */
export function kitsOf(
  one: World,
  parts: readonly string[],
  asked: Asked = {},
  more: Partial<KitInput> = {},
): KitAnswer {
  const want = parts.map((part) => ({ part, position: null, hand: null, renew: false }));
  const question = { ...questionOf(asked), ...USUAL_KIT, want, ...more };
  return resolveKitQuestion(libraryFor(one), question);
}

/** The answer to: is the vehicle right as it stands? */
export function inspected(one: World, asked: Asked = {}) {
  return inspectVehicle(libraryFor(one), questionOf(asked));
}
