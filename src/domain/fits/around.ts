/**
 * What stands around a place of a vehicle, as far as the compiled index knows it: the recorded
 * faces that a part put in there has to meet.
 */

import type { Catalogue, Mating, Position, Vehicle } from '../catalogue/catalogue.js';
import type { Hand } from '../check/reading.js';
import type { CompiledIndex } from '../index/compiled-index.js';
import { asBuilt, handsOf, seatAt } from '../judge/configuration.js';
import type { Companion } from '../judge/fit.js';

/** A vehicle that a part is put into. */
export interface Recipient {
  /** With the articles that are fitted beside it. */
  readonly catalogue: Catalogue;
  readonly vehicle: Vehicle;
  /** What is fitted beside it, by position. */
  readonly beside: ReadonlyMap<string, readonly Companion[]>;
}

export interface Around {
  /** What stands at the place now, hand by hand. */
  readonly seats: readonly {
    readonly hand: Hand | null;
    /** Null where no article is recorded. */
    readonly article: string | null;
    /** A fact that nobody told says what it is. */
    readonly option: boolean;
  }[];
  readonly neighbours: readonly Neighbour[];
}

/** A recorded face across a joint in which nothing sits between. */
export interface Neighbour {
  /** The face of a part at the place that has to meet it. */
  readonly interface: string;
  /** Whose face it is, what it is called, and its class. */
  readonly article: string;
  readonly other: string;
  readonly to: number;
  /** The hands of the place that meet it. */
  readonly hands: ReadonlySet<Hand | null>;
}

export function aroundOf(index: CompiledIndex, recipient: Recipient, position: Position): Around {
  const built = asBuilt(recipient.vehicle);
  const seats = handsOf(position).map((hand) => {
    const seat = seatAt(built, position.id, hand);
    const article = seat?.occupant.is === 'part' ? seat.occupant.part : null;
    return { hand, article, option: seat?.option !== undefined };
  });
  return { seats, neighbours: neighboursOf(index, recipient, position) };
}

/** None where a part that is fitted beside it fills several places: it may be any of them. */
function neighboursOf(
  index: CompiledIndex,
  recipient: Recipient,
  position: Position,
): readonly Neighbour[] {
  const { vehicle, beside } = recipient;
  if ([...beside.values()].flat().some(({ part }) => part.spans !== null)) return [];
  return [...vehicle.layout.matings.values()].flatMap((mating) => {
    const isPlain = (vehicle.adapters.get(mating.id) ?? []).length === 0;
    const isKept = mating.ends.every((end) => !beside.has(end.position));
    return isPlain && isKept ? acrossFrom(index, recipient, position, mating) : [];
  });
}

/** A place that meets itself is left to the judge. */
function acrossFrom(
  index: CompiledIndex,
  { catalogue, vehicle }: Recipient,
  position: Position,
  { ends: [a, b] }: Mating,
): Neighbour[] {
  if (a.position === b.position) return [];
  const [own, other] = b.position === position.id ? [b, a] : [a, b];
  if (own.position !== position.id) return [];
  const beside = vehicle.layout.positions.get(other.position);
  const built = asBuilt(vehicle);
  return (beside === undefined ? [] : handsOf(beside)).flatMap((hand): Neighbour[] => {
    const occupant = seatAt(built, other.position, hand)?.occupant;
    const part = occupant?.is === 'part' ? catalogue.parts.get(occupant.part) : undefined;
    const to = part === undefined ? null : index.classOf(part.id, other.interface);
    if (part === undefined || part.spans !== null || to === null) return [];
    const hands = handsOf(position).filter((one) => one === null || hand === null || one === hand);
    return [
      {
        interface: own.interface,
        article: part.id,
        other: other.interface,
        to,
        hands: new Set(hands),
      },
    ];
  });
}
