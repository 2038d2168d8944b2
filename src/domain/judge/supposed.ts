/**
 * Works options of which nobody knows which it is. One fact tells all its places at once, so the
 * vehicle is supposed to be what each value of it says, in turn, and is judged as each of them: a
 * constraint holds if it holds for each, fails if it fails for each, and else hangs on the fact.
 *
 * What is put in at such a place is a change, as long as it is not certain that the very article
 * is there already. Where a value says that it is, a new piece of it is put in: that opens the
 * place, and what meets there is given, as it is for that vehicle.
 */

import type { Vehicle } from '../catalogue/catalogue.js';
import {
  type Arrangement,
  asBuilt,
  type Configuration,
  handsOf,
  isSeatChanged,
  overlay,
  type Seat,
  type Seats,
  seatAt,
} from './configuration.js';
import { withFacts } from './told-facts.js';

/** The vehicle as one value of each untold fact has it. */
export interface Supposal {
  readonly facts: ReadonlyMap<string, string>;
  readonly configuration: Configuration;
}

/** So many are judged at the most; facts beyond leave what they tell as found, which may be all. */
const MOST_SUPPOSED = 64;

/** One for each way in which the facts that nobody told may be; none where all is told. */
export function supposalsOf(configuration: Configuration): readonly Supposal[] {
  const facts = untoldIn(configuration.present);
  if (facts.size === 0) return [];
  return waysFor(configuration, facts).map((way) => {
    return { facts: way.told, configuration: supposed(configuration, way) };
  });
}

const untoldOfArrangement = new WeakMap<Arrangement, ReadonlySet<string>>();

/** The facts that tell what stands where, and that nobody told. */
function untoldIn(arrangement: Arrangement): ReadonlySet<string> {
  const known = untoldOfArrangement.get(arrangement);
  if (known !== undefined) return known;
  const facts = new Set<string>();
  for (const here of arrangement.seats.values()) {
    for (const { option } of here.hands ? [here.left, here.right] : [here.seat]) {
      if (option !== undefined) facts.add(option.fact);
    }
  }
  untoldOfArrangement.set(arrangement, facts);
  return facts;
}

interface Way {
  readonly told: ReadonlyMap<string, string>;
  readonly vehicle: Vehicle;
  /** What the works fitted to it then. */
  readonly built: Arrangement;
}

const waysOfVehicle = new WeakMap<Vehicle, Map<string, readonly Way[]>>();

function waysFor({ vehicle, catalogue }: Configuration, untold: ReadonlySet<string>) {
  const facts = [...catalogue.facts.values()].filter(({ id }) => untold.has(id));
  const known = waysOfVehicle.get(vehicle) ?? new Map<string, readonly Way[]>();
  waysOfVehicle.set(vehicle, known);
  const name = facts.map(({ id }) => id).join();
  let ways = known.get(name);
  if (ways === undefined) {
    let told: ReadonlyMap<string, string>[] = [new Map()];
    for (const { id, values } of facts) {
      if (told.length * values.size > MOST_SUPPOSED) continue;
      told = told.flatMap((one) =>
        [...values.keys()].map((value) => new Map([...one, [id, value]])),
      );
    }
    ways = told.map((one) => {
      const own = withFacts(vehicle, one);
      return { told: one, vehicle: own, built: asBuilt(own) };
    });
    known.set(name, ways);
  }
  return ways;
}

function supposed(configuration: Configuration, { told, vehicle, built }: Way): Configuration {
  const { layout, present: before, judged: after, renewed = new Set() } = configuration;
  const tell = (seat: Seat): Seat => {
    const value = seat.option === undefined ? undefined : told.get(seat.option.fact);
    if (seat.option === undefined) return seat;
    // Of a fact beyond the most, nobody supposes anything.
    if (value === undefined) return { occupant: seat.occupant, origin: seat.origin };
    return { occupant: seat.option.by.get(value) ?? seat.occupant, origin: seat.origin };
  };
  // Where the question says what that vehicle was built with, the works did fit it.
  const present = {
    ...before,
    seats: overlay(built, mapped(before.seats, tell)).seats,
  };
  const judged = {
    ...after,
    seats: overlay(present, mapped(after.seats, tell)).seats,
  };
  const found = { ...configuration, vehicle, present, judged };
  const anew = [...layout.positions.values()].filter((position) =>
    handsOf(position).some((hand) => {
      const isOption = seatAt(before, position.id, hand)?.option !== undefined;
      const isPutIn = isOption && isSeatChanged(configuration, position.id, hand);
      return isPutIn && !isSeatChanged(found, position.id, hand);
    }),
  );
  return { ...found, renewed: new Set([...renewed, ...anew.map(({ id }) => id)]) };
}

function mapped(seats: ReadonlyMap<string, Seats>, tell: (seat: Seat) => Seat) {
  return new Map(
    [...seats].map(([id, here]): [string, Seats] => [
      id,
      here.hands
        ? { hands: true, left: tell(here.left), right: tell(here.right) }
        : { hands: false, seat: tell(here.seat) },
    ]),
  );
}
