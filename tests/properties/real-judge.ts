/**
 * The judge of the program, asked the way the oracle is asked.
 */

import type { Catalogue, Occupant, Position } from '../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import {
  type Adapters,
  asBuilt,
  type Configuration,
  type Origin,
  overlay,
  type Seat,
  type Seats,
} from '../../src/domain/judge/configuration.js';
import { type Judgement, judge } from '../../src/domain/judge/judge.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import type { Placed, Question } from '../oracle/scene.js';

/** @throws Error when the document has a fault: what these tests draw is always sound. */
export function compiled(document: CatalogueDocument): Catalogue {
  const { catalogue, faults } = compileDocument(document, []);
  if (catalogue === null) throw new Error(`the document has faults: ${JSON.stringify(faults)}`);
  return catalogue;
}

export function askJudge(catalogue: Catalogue, question: Question): Judgement {
  return judge(configurationOf(catalogue, question));
}

export function configurationOf(catalogue: Catalogue, question: Question): Configuration {
  const vehicle = catalogue.vehicles.get(question.vehicle);
  if (vehicle === undefined) throw new Error(`there is no ${question.vehicle}`);
  const { layout } = vehicle;
  const { said, chosen, saidAdapters, chosenAdapters } = question;
  const laid = (placed: Readonly<Record<string, Placed>>, origin: Origin) =>
    new Map(
      Object.entries(placed).map(([id, one]) => {
        const position = layout.positions.get(id);
        if (position === undefined) throw new Error(`there is no ${id}`);
        return [id, seatsOf(one, position, origin)] as const;
      }),
    );
  const present = overlay(asBuilt(vehicle), laid(said, 'said'), rowsOf(saidAdapters, 'said'));
  const judged = overlay(present, laid(chosen, 'chosen'), rowsOf(chosenAdapters, 'chosen'));
  return {
    catalogue,
    pairsOf: catalogue,
    vehicle,
    layout,
    present,
    judged,
    torque: question.torque === null ? null : torqueOf(question.torque),
    use: question.use,
    ignorePresent: question.ignorePresent,
  };
}

export function seatsOf(placed: Placed, position: Position, origin: Origin): Seats {
  const seat = (one: string | null): Seat => ({ occupant: occupantOf(one), origin });
  const isPair = typeof placed === 'object' && placed !== null;
  if (!position.isHanded) {
    if (isPair) throw new Error(`${position.id} has no hands`);
    return { hands: false, seat: seat(placed) };
  }
  const { left, right } = isPair ? placed : { left: placed, right: placed };
  return { hands: true, left: seat(left), right: seat(right) };
}

function occupantOf(placed: string | null): Occupant {
  if (placed === null) return { is: 'empty' };
  return placed === '?' ? { is: 'as-found' } : { is: 'part', part: placed };
}

export function rowsOf(
  rows: Readonly<Record<string, readonly string[]>>,
  origin: Origin,
): Map<string, Adapters> {
  return new Map(Object.entries(rows).map(([mating, parts]) => [mating, { parts, origin }]));
}

export function torqueOf(text: string) {
  const read = parseQuantity(text, { type: 'measured', dimension: 'torque' });
  if (isFault(read)) throw new Error(read.text);
  return { interval: read.interval, text };
}
