/**
 * The vehicles of the catalogue.
 */

import {
  listVehiclesOperation,
  readVehicleOperation,
  type VehiclesQuestion,
  vehicleQuestionSchema,
  vehiclesQuestionSchema,
} from '../../contract/vehicles.js';
import { latestYearOf, type VehiclesInput } from '../../usecases/list-vehicles.js';
import type { ListInput } from '../../usecases/listing.js';
import { JUDGED } from '../asked.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountVehicles(app: App, service: Service): void {
  const { listVehicles, readVehicle } = service.useCases;
  mountList(app, service, {
    operation: listVehiclesOperation,
    schema: vehiclesQuestionSchema,
    filters: filtersOf,
    given: (head) => ({ latestYear: latestYearOf(head) }),
    list: listVehicles,
    // What is asked next, the program decides, in its own words.
    lifetimes: JUDGED,
  });
  mountRead(app, service, {
    operation: readVehicleOperation,
    schema: vehicleQuestionSchema,
    wishes: valueWishes,
    read: readVehicle,
    // What is recorded, in part in the program's own words: the months of its label, the cautions.
    lifetimes: JUDGED,
  });
}

function filtersOf(
  question: VehiclesQuestion,
): Omit<VehiclesInput, keyof ListInput | 'latestYear'> {
  const { make, model, variant, text, year, built, layout, facts, replaced } = question;
  return {
    make: make ?? null,
    model: model ?? null,
    variant: variant ?? null,
    text: text ?? null,
    year: year ?? null,
    built: built ?? null,
    layout: layout ?? null,
    facts: facts ?? {},
    replaced: replaced ?? false,
  };
}
