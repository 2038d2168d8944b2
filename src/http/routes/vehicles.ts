/**
 * The vehicles of the catalogue.
 */

import { readVehicleOperation, vehicleQuestionSchema } from '../../contract/vehicle.js';
import {
  listVehiclesOperation,
  vehiclesFilters,
  vehiclesQuestionSchema,
} from '../../contract/vehicles.js';
import { latestYearOf } from '../../usecases/vehicle-directory.js';
import { JUDGED } from '../asked.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountVehicles(app: App, service: Service): void {
  const { listVehicles, readVehicle } = service.useCases;
  mountList(app, service, {
    operation: listVehiclesOperation,
    schema: vehiclesQuestionSchema,
    filters: vehiclesFilters,
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
