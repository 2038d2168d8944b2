/**
 * Who stands where: the vehicle as it is now and as it would be with the change, position by
 * position and hand by hand. Parts that fill several positions are left out.
 */

import type {
  CatalogueDocument,
  LayoutRecord,
  MatingRecord,
  PartRecord,
  PiecesRecord,
  PositionRecord,
  VehicleRecord,
} from '../../src/domain/catalogue/document.js';
import { Memory } from './memory.js';
import type { Basis } from './outcome.js';

/** What a question puts at a position: as a record does; "?" is something that nobody knows. */
export type Placed = PiecesRecord;

export interface Question {
  readonly vehicle: string;
  /** What is on this vehicle instead of what the works fitted. */
  readonly said: Readonly<Record<string, Placed>>;
  /** What the change puts there. */
  readonly chosen: Readonly<Record<string, Placed>>;
  /** Adapters by mating. */
  readonly saidAdapters: Readonly<Record<string, readonly string[]>>;
  readonly chosenAdapters: Readonly<Record<string, readonly string[]>>;
  /** In N.m, written as a measured value. */
  readonly torque: string | null;
  readonly use: 'road' | 'off-road' | null;
  readonly ignorePresent: boolean;
  /** Positions at which the same article is put in anew. */
  readonly renewed?: readonly string[];
}

export type Hand = 'left' | 'right';
/** The vehicle as it is, or as it would be. */
export type When = 'present' | 'judged';
export type Origin = 'works' | 'said' | 'chosen';

/** What nobody recorded of a vehicle that is taken apart, by the name that its lot gives it. */
export type DonorName = `donor:${string}`;

export function isDonorName(name: string): name is DonorName {
  return name.startsWith('donor:');
}

export interface Seat {
  readonly holds: PartRecord | 'empty' | 'as-found' | DonorName;
  readonly origin: Origin;
  /** The fact that says which of several it is, where nobody told. */
  readonly toldBy: string | null;
}

/** What is taken for granted of facts that nobody told, by fact. */
export type Supposed = Readonly<Record<string, string>>;

export interface AdapterRow {
  readonly parts: readonly string[];
  readonly origin: Origin;
}

export class Scene {
  readonly document: CatalogueDocument;
  readonly question: Question;
  readonly vehicle: VehicleRecord;
  readonly layout: LayoutRecord;
  /** Shared by scenes that differ in nothing but what is chosen. */
  readonly memory: Memory;
  readonly supposed: Supposed;
  readonly #seats = new Map<string, Seat>();

  constructor(
    document: CatalogueDocument,
    question: Question,
    memory: Memory = new Memory(),
    supposed: Supposed = {},
  ) {
    this.document = document;
    this.memory = memory;
    this.supposed = supposed;
    this.question = question;
    this.vehicle = byId(document.vehicles, question.vehicle);
    this.layout = byId(document.layouts, this.vehicle.layout ?? '');
    const { said, chosen } = question;
    for (const position of this.layout.positions) {
      const { id } = position;
      const { placed, toldBy } = this.#fitted(id);
      this.#place('present', position, placed, 'works', toldBy);
      this.#place('judged', position, placed, 'works', toldBy);
      if (said[id] !== undefined) {
        this.#place('present', position, said[id], 'said');
        this.#place('judged', position, said[id], 'said');
      }
      if (chosen[id] !== undefined) this.#place('judged', position, chosen[id], 'chosen');
    }
  }

  /** What the works fitted; of several, the one of which a fact says so, if that is known. */
  #fitted(id: string): { readonly placed: Placed; readonly toldBy: string | null } {
    const fitted = (this.vehicle.fitted as Readonly<Record<string, unknown>> | undefined)?.[id];
    if (fitted === undefined) return { placed: '?', toldBy: null };
    if (typeof fitted !== 'object' || fitted === null || !('by' in fitted)) {
      return { placed: fitted as Placed, toldBy: null };
    }
    const fact = String(fitted.by);
    const value = this.fact(fact);
    if (value === null) return { placed: '?', toldBy: fact };
    const told = (fitted as Readonly<Record<string, Placed>>)[value];
    return { placed: told === undefined ? '?' : told, toldBy: null };
  }

  #place(
    when: When,
    position: PositionRecord,
    placed: Placed,
    origin: Origin,
    toldBy: string | null = null,
  ): void {
    for (const hand of handsOf(position)) {
      const isPair = typeof placed === 'object' && placed !== null;
      const one = isPair ? placed[hand ?? 'left'] : placed;
      const holds = this.#heldBy(one);
      const key = `${when} ${position.id} ${hand}`;
      const before = this.#seats.get(key);
      // A change puts nothing there that nobody knows: that is what stays.
      if (origin === 'chosen' && holds === 'as-found') continue;
      // What is said or chosen once more is as it was; something unknown is more than one of a few.
      const isSame = before?.holds === holds && before.toldBy === toldBy;
      if (!isSame) this.#seats.set(key, { holds, origin, toldBy });
    }
  }

  #heldBy(one: string | null): Seat['holds'] {
    if (one === null) return 'empty';
    if (one === '?') return 'as-found';
    return isDonorName(one) ? one : this.part(one);
  }

  part(id: string): PartRecord {
    return byId(this.document.parts, id);
  }

  position(id: string): PositionRecord {
    return byId(this.layout.positions, id);
  }

  mating(id: string): MatingRecord {
    return byId(this.layout.matings, id);
  }

  /** What stands there; of a position without hands, whichever hand is asked for. */
  seat(when: When, id: string, hand: Hand | null): Seat {
    const own = this.position(id).handed ? hand : null;
    const seat = this.#seats.get(`${when} ${id} ${own}`);
    if (seat === undefined) throw new Error(`nobody said what stands at ${id} ${own}`);
    return seat;
  }

  adapters(when: When, mating: string): AdapterRow {
    const { saidAdapters, chosenAdapters } = this.question;
    const works: AdapterRow = { parts: worksAdapters(this.vehicle, mating), origin: 'works' };
    const present = rowOver(works, saidAdapters[mating], 'said');
    return when === 'present' ? present : rowOver(present, chosenAdapters[mating], 'chosen');
  }

  /** Whether another article stands there, or none, or one where none was. */
  isChangedAt(id: string, hand: Hand | null): boolean {
    return this.seat('present', id, hand).holds !== this.seat('judged', id, hand).holds;
  }

  isChanged(id: string): boolean {
    return handsOf(this.position(id)).some((hand) => this.isChangedAt(id, hand));
  }

  /** Changed or renewed, or in the way of something that is. */
  isOpened(id: string): boolean {
    if (this.isChanged(id) || this.question.renewed?.includes(id) === true) return true;
    const inTheWayOf = this.layout.positions.filter(({ behind }) => behind?.includes(id));
    return inTheWayOf.some((position) => this.isOpened(position.id));
  }

  /** In words, all that is there at some places and between them after the change. */
  standing(
    positions: readonly string[],
    matings: readonly string[],
    only: Hand | null = null,
  ): string {
    const seats = positions.flatMap((id) =>
      (only === null ? handsOf(this.position(id)) : [only]).map((hand) => {
        const { holds } = this.seat('judged', id, hand);
        return `${id} ${typeof holds === 'object' ? `has ${holds.id}` : holds}`;
      }),
    );
    const rows = matings.map((id) => `${id} ${this.adapters('judged', id).parts.join('-')}`);
    return [...seats, ...rows].join();
  }

  /** The word of a fact, or null where nobody has found it out. */
  fact(id: string): string | null {
    return this.vehicle.facts?.[id] ?? this.supposed[id] ?? null;
  }
}

function rowOver(
  under: AdapterRow,
  parts: readonly string[] | undefined,
  origin: Origin,
): AdapterRow {
  return parts === undefined || parts.join() === under.parts.join() ? under : { parts, origin };
}

export function handsOf(position: PositionRecord): readonly (Hand | null)[] {
  return position.handed ? ['left', 'right'] : [null];
}

export function worksAdapters(vehicle: VehicleRecord, mating: string): readonly string[] {
  const row = (
    vehicle.fitted?.matings as Readonly<Record<string, string | string[]>> | undefined
  )?.[mating];
  if (row === undefined) return [];
  return typeof row === 'string' ? [row] : row;
}

export function basisOf(
  document: CatalogueDocument,
  ...inner: readonly ({ readonly evidence?: { readonly basis?: Basis } } | undefined)[]
): Basis {
  const own = inner.map((one) => one?.evidence?.basis).findLast((basis) => basis !== undefined);
  return own ?? document.evidence.basis;
}

export function byId<Item extends { readonly id: string }>(
  items: readonly Item[] | undefined,
  id: string,
): Item {
  const item = items?.find((one) => one.id === id);
  if (item === undefined) throw new Error(`there is no ${id}`);
  return item;
}
