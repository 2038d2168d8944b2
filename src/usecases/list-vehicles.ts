/**
 * Which vehicles can be meant by what somebody knows of theirs, and what to ask next?
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import { asksFor } from '../domain/identify/ask.js';
import type { VehicleFilter } from '../domain/identify/candidate.js';
import { askView } from './ask-views.js';
import { Faults } from './faults.js';
import { withHead } from './head.js';
import type { Library } from './library.js';
import { type ListInput, pageOfSorted } from './listing.js';
import { factsOf } from './question.js';
import { checkOne } from './read-one.js';
import { Speaker } from './speaker.js';
import { keyOf, vehicleDirectory } from './vehicle-directory.js';
import { vehicleLabel } from './vehicle-label.js';
import type { VehicleEntry, VehiclesAnswer } from './vehicle-view.js';

export interface VehiclesInput extends ListInput, Omit<VehicleFilter, 'facts'> {
  /** Values by fact. */
  readonly facts: Readonly<Record<string, string>>;
  /** Those that others took the place of, too. */
  readonly replaced: boolean;
  /** Of the edition: see `latestYearOf`. */
  readonly latestYear: number;
}

/** In the order of make, model, months of building and id; names as they are compared. */
export function listVehicles(library: Library, input: VehiclesInput): VehiclesAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const faults = new Faults();
  const facts = factsOf(catalogue, input.facts, faults);
  const { layout, year, built, replaced: isReplacedToo } = input;
  if (layout !== null) checkOne(catalogue.layouts, 'layout', { id: layout, at: 'layout' }, faults);
  faults.endIfAny();
  const found = vehicleDirectory(catalogue).find({ ...input, facts }, { isReplacedToo });
  const { rows, next, total } = pageOfSorted(found, keyOf, input);
  const known = { year, built, facts };
  const asks = asksFor(found, { facts: catalogue.facts, known, latestYear: input.latestYear });
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  return withHead(edition, speaker, {
    items: rows.map(({ vehicle }) => vehicleEntry(vehicle, speaker)),
    next,
    counts: { total },
    ask: asks.map((ask) => askView(ask, speaker)),
  });
}

export function vehicleEntry(vehicle: Vehicle, speaker: Speaker): VehicleEntry {
  const { id, make, model, variant, built, layout, facts, replacedBy } = vehicle;
  return {
    id,
    label: vehicleLabel(vehicle, speaker.lang),
    make,
    model,
    variant,
    built: [...built],
    layout: layout.id,
    facts: Object.fromEntries(facts),
    replacedBy: [...replacedBy],
  };
}
