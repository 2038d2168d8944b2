/**
 * Lists of what fits what over a catalogue of a hundred thousand parts and five thousand vehicles:
 * how long one takes, against the judge asked of each part or vehicle, and whether both agree.
 */

import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { Outcome } from '../../src/domain/check/state.js';
import { FitsIndex } from '../../src/domain/fits/fits-index.js';
import { CompiledIndex } from '../../src/domain/index/compiled-index.js';
import { judgeFit } from '../../src/domain/judge/fit.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { type Extent, largeCatalogue } from './large-catalogue.js';
import { medianOf, timed } from './measured.js';
import { Random } from './random.js';

const FULL: Extent = { parts: 100_000, vehicles: 5000, families: 200 };
const QUICK: Extent = { parts: 10_000, vehicles: 500, families: 100 };

/** So many lists of each sort are asked for, and so many pairs judged one by one. */
const LISTS = 15;
const PAIRS = 2000;

const AS_RECORDED = {
  position: null,
  with: new Map(),
  said: { seats: new Map(), adapters: new Map() },
  torque: null,
  use: null,
  ignorePresent: false,
};

/** Prints what it measures; true where all that was compared agrees. */
export function measureFits(isQuick: boolean, say: (line: string) => void): boolean {
  const extent = isQuick ? QUICK : FULL;
  const { catalogue, faults } = compileDocument(largeCatalogue(extent), BUILT_IN_KINDS);
  if (catalogue === null) throw new Error(`the catalogue has faults: ${faults[0]?.text ?? ''}`);
  const index = timed(() => new CompiledIndex(catalogue));
  const fits = timed(() => new FitsIndex(catalogue, index.result));
  const [parts, vehicles] = [[...catalogue.parts.values()], [...catalogue.vehicles.values()]];
  const random = new Random(7);
  const some = <One>(all: readonly One[]): One[] =>
    Array.from({ length: LISTS }, () => all[random.below(all.length)]).filter(
      (one) => one !== undefined,
    );
  const ofVehicles = some(vehicles).map(
    (vehicle) => timed(() => parts.map((part) => fits.result.at(part, vehicle))).ms,
  );
  const ofParts = some(parts).map(
    (part) => timed(() => vehicles.map((vehicle) => fits.result.at(part, vehicle))).ms,
  );
  let [agreed, judging] = [0, 0];
  const outcomes = new Map<Outcome, number>();
  for (let pair = 0; pair < PAIRS; pair += 1) {
    const part = parts[random.below(parts.length)];
    const vehicle = vehicles[random.below(vehicles.length)];
    if (part === undefined || vehicle === undefined) continue;
    const each = timed(() => judgeFit(catalogue, { vehicle, part, ...AS_RECORDED }).positions);
    judging += each.ms;
    const found = fits.result.at(part, vehicle);
    const isSame = each.result.every(({ alone }, at) => found[at]?.alone === alone);
    if (isSame && found.length === each.result.length) agreed += 1;
    for (const { alone } of found) outcomes.set(alone, (outcomes.get(alone) ?? 0) + 1);
  }
  const each = judging / PAIRS;
  const [perVehicle, perPart] = [ofVehicles, ofParts].map((all) =>
    medianOf(all.slice(1).toSorted((a, b) => a - b)),
  );
  const row = (name: string, first: number, median: number, count: number) =>
    say(
      `${name}: first ${first.toFixed(0)} ms, median of the rest ${median.toFixed(0)} ms; ` +
        `judged one by one ${((each * count) / median).toFixed(0)} times as long`,
    );
  say(`${parts.length} parts, ${vehicles.length} vehicles, ${index.result.classes.length} classes`);
  say(`index ${index.ms.toFixed(0)} ms, likes ${fits.ms.toFixed(0)} ms`);
  row('all parts for a vehicle', ofVehicles[0] ?? 0, perVehicle ?? 0, parts.length);
  row('all vehicles for a part', ofParts[0] ?? 0, perPart ?? 0, vehicles.length);
  say(
    `${agreed} of ${PAIRS} pairs agree (${[...outcomes].map((one) => one.join(' ')).join(', ')})`,
  );
  return agreed === PAIRS;
}
