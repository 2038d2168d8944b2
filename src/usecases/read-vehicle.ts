/**
 * What is recorded of this vehicle, what did the works fit, and what does nobody know?
 */

import type {
  Fact,
  FittedHere,
  Occupant,
  Position,
  Vehicle,
  WorksOption,
} from '../domain/catalogue/catalogue.js';
import { factsAbout, isOption, positionsToldBy } from '../domain/catalogue/vehicle-facts.js';
import type { VinPattern } from '../domain/catalogue/vin.js';
import { handsOf } from '../domain/judge/configuration.js';
import type { Hand } from './answer.js';
import { cautionsOf } from './cautions.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { Edition, Library } from './library.js';
import { vehicleEntry } from './list-vehicles.js';
import { oneOf, type ReadValuesInput } from './read-one.js';
import { evidenceView, valueView } from './record-views.js';
import { addReplaced } from './replaced-vehicle.js';
import { Speaker } from './speaker.js';
import type {
  AskableValueView,
  OccupantView,
  VehicleAnswer,
  VehicleFactView,
  VehiclePositionView,
  VinView,
  WorksAdaptersView,
  WorksOptionView,
} from './vehicle-view.js';

export function readVehicle(library: Library, input: ReadValuesInput): VehicleAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const vehicle = oneOf(catalogue.vehicles, 'vehicle', input);
  refuseReplaced(edition, vehicle, input);
  const { layout, like, vin, evidence } = vehicle;
  const speaker = new Speaker({ catalogue, layout, lang: input.lang, units: input.units });
  const pieces = [...layout.positions.values()].flatMap((position) =>
    handsOf(position).map((hand) => pieceOf(vehicle, position, hand)),
  );
  const positions = pieces.map((piece) => positionView(piece, speaker));
  return withValuesHead(edition, speaker, {
    ...vehicleEntry(vehicle, speaker),
    layoutName: layout.name === null ? null : speaker.text(layout.name),
    like,
    vin: vin.map(vinView),
    namedFacts: factsAbout(vehicle, catalogue).map((fact) => factView(fact, vehicle, speaker)),
    positions,
    adapters: adapterViews(vehicle, speaker),
    values: pieces.flatMap((piece) => askableValues(piece, speaker)),
    evidence: evidenceView(evidence),
    cautions: cautionsOf(
      positions.flatMap(({ cautionGroups }) => cautionGroups),
      speaker,
    ),
  });
}

/** Whoever has kept the id is led on to the vehicles that are kept up now. */
function refuseReplaced(edition: Edition, vehicle: Vehicle, { lang }: ReadValuesInput): void {
  if (vehicle.replacedBy.length === 0) return;
  const faults = new Faults();
  addReplaced(edition, vehicle, { at: 'id', lang, facts: new Map() }, faults);
  faults.end();
}

/** One piece of a position, with what is recorded to stand there. */
interface Piece {
  readonly position: Position;
  readonly hand: Hand | null;
  readonly occupant: Occupant;
  /** What a fact tells of it, whether or not the fact is recorded. */
  readonly option: WorksOption | null;
}

function pieceOf(vehicle: Vehicle, position: Position, hand: Hand | null): Piece {
  const fitted = occupantAt(vehicle.fitted.get(position.id), hand);
  const told = occupantAt(vehicle.options.get(position.id), hand);
  const occupant: Occupant = isOption(fitted) ? { is: 'as-found' } : fitted;
  return { position, hand, occupant, option: isOption(told) ? told : null };
}

function occupantAt(here: FittedHere | undefined, hand: Hand | null): Occupant | WorksOption {
  if (here === undefined) return { is: 'as-found' };
  if (!here.hands) return here.occupant;
  return hand === 'right' ? here.right : here.left;
}

function positionView(piece: Piece, speaker: Speaker): VehiclePositionView {
  const { position, hand, occupant, option } = piece;
  const groups = position.roles.map((role) => speaker.catalogue.roles.get(role)?.caution ?? null);
  return {
    position: position.id,
    name: speaker.text(position.name),
    hand,
    cautionGroups: [...new Set(groups.filter((group) => group !== null))],
    ...occupantView(occupant, speaker),
    option: option === null ? null : optionView(option, speaker),
  };
}

function occupantView(occupant: Occupant, speaker: Speaker): OccupantView {
  const part = occupant.is === 'part' ? occupant.part : null;
  return { occupant: occupant.is, part, partName: speaker.partName(part) };
}

function optionView({ fact, by }: WorksOption, speaker: Speaker): WorksOptionView {
  const views = [...by].map(([value, occupant]) => {
    const valueName = valueNameOf(fact, value, speaker);
    return { value, valueName, ...occupantView(occupant, speaker) };
  });
  return { fact, by: views };
}

function valueNameOf(fact: string, value: string, speaker: Speaker): string {
  const name = speaker.catalogue.facts.get(fact)?.values.get(value);
  return name === undefined ? value : speaker.text(name);
}

function factView(fact: Fact, vehicle: Vehicle, speaker: Speaker): VehicleFactView {
  const { id, name, how, values } = fact;
  const value = vehicle.facts.get(id) ?? null;
  return {
    fact: id,
    name: speaker.text(name),
    how: how === null ? null : speaker.text(how),
    value,
    valueName: value === null ? null : valueNameOf(id, value, speaker),
    values: [...values].map(([one, text]) => ({ value: one, name: speaker.text(text) })),
    positions: positionsToldBy(id, vehicle),
  };
}

function adapterViews({ layout, adapters }: Vehicle, speaker: Speaker): WorksAdaptersView[] {
  return [...layout.matings.values()].flatMap(({ id, ends }) => {
    const parts = adapters.get(id);
    if (parts === undefined) return [];
    return {
      mating: id,
      between: ends.map((end) => `${end.position}.${end.interface}`),
      adapters: parts.map((part) => ({ part, name: speaker.partName(part) ?? part })),
    };
  });
}

/** As a question's torque is taken: by what the roles of the position say. */
function askableValues({ position, hand, occupant }: Piece, speaker: Speaker): AskableValueView[] {
  if (occupant.is === 'empty') return [];
  const { parts, roles } = speaker.catalogue;
  const id = occupant.is === 'part' ? occupant.part : null;
  const specs = position.roles.flatMap((role) => [...(roles.get(role)?.values.values() ?? [])]);
  return specs.flatMap((spec, index) => {
    const isFirst = specs.findIndex((one) => one.id === spec.id) === index;
    if (spec.askedAs === null || !isFirst) return [];
    const value = id === null ? undefined : parts.get(id)?.values.get(spec.id);
    return {
      position: position.id,
      hand,
      part: id,
      partName: speaker.partName(id),
      parameter: spec.id,
      name: speaker.specName(spec),
      askedAs: spec.askedAs,
      recorded: value === undefined ? null : valueView(value, speaker),
    };
  });
}

function vinView({ pattern, serial }: VinPattern): VinView {
  if (serial === null) return { pattern, serial: [] };
  const { digits, from, to } = serial;
  return { pattern, serial: [from, to].map((end) => String(end).padStart(digits, '0')) };
}
