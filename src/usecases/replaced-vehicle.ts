/**
 * A vehicle that more exact ones took the place of: which they are, and what to ask to tell them
 * apart. Whoever has kept its id is led on, and gets no answer about what is no longer kept up.
 */

import type { Catalogue, Vehicle } from '../domain/catalogue/catalogue.js';
import { asksFor } from '../domain/identify/ask.js';
import { askView } from './ask-views.js';
import type { Faults } from './faults.js';
import type { Edition } from './library.js';
import { Speaker } from './speaker.js';
import { latestYearOf, vehicleDirectory } from './vehicle-directory.js';
import { vehicleLabel } from './vehicle-label.js';

/** Tells the fault, and what to ask whoever asked. */
export function addReplaced(
  { head, catalogue }: Edition,
  vehicle: Vehicle,
  {
    at,
    lang,
    facts,
  }: {
    readonly at: string;
    readonly lang: string;
    /** What the question says already, which is not asked again. */
    readonly facts: ReadonlyMap<string, string>;
  },
  faults: Faults,
): void {
  const successors = vehicleDirectory(catalogue).among(successorsOf(vehicle, catalogue));
  const asks = asksFor(successors, {
    facts: catalogue.facts,
    known: { year: null, built: null, facts },
    latestYear: latestYearOf(head),
  });
  const speaker = new Speaker({ catalogue, layout: null, lang });
  const named = successors.map(({ vehicle: one }) => {
    return { vehicle: one.id, label: vehicleLabel(one, speaker.lang) };
  });
  faults.add(at, 'vehicle-replaced', { name: vehicle.id, candidates: named });
  faults.ask(asks.map((ask) => askView(ask, speaker)));
}

/** The vehicles at the end of each way on. Ways may meet, and each vehicle is passed once. */
function successorsOf(replaced: Vehicle, { vehicles }: Catalogue): Set<Vehicle> {
  // What is added while the set is walked through is walked through too.
  const passed = new Set([replaced]);
  for (const { replacedBy } of passed) {
    for (const id of replacedBy) {
      const next = vehicles.get(id);
      if (next !== undefined) passed.add(next);
    }
  }
  return new Set([...passed].filter(({ replacedBy }) => replacedBy.length === 0));
}
