/**
 * What fits what: the parts for a vehicle, and the vehicles for a part.
 */

import { usualFits } from '../../contract/fits.js';
import {
  type FittedVehiclesQuestion,
  fittedVehiclesFilters,
  fittedVehiclesQuestionSchema,
  listFittedVehiclesOperation,
} from '../../contract/fitted-vehicles.js';
import {
  type FittingPartsQuestion,
  fittingPartsFilters,
  fittingPartsQuestionSchema,
  listFittingPartsOperation,
} from '../../contract/fitting-parts.js';
import type { FittedVehiclesInput } from '../../usecases/list-fitted-vehicles.js';
import type { FittingPartsInput } from '../../usecases/list-fitting-parts.js';
import { JUDGED } from '../asked.js';
import { withItemProblems } from '../item-problems.js';
import { mountList } from '../listed.js';
import type { App } from '../mount.js';
import { lifetimesOf, offersFor, offersNow } from '../naming.js';
import type { Service } from '../service.js';

export function mountFits(app: App, service: Service): void {
  const { listFittingParts, listFittedVehicles } = service.useCases;
  mountList<FittingPartsQuestion, FittingPartsInput>(app, service, {
    operation: listFittingPartsOperation,
    schema: fittingPartsQuestionSchema,
    filters: (question) => {
      const filters = fittingPartsFilters(question);
      // Which way is the best one, prices decide.
      const isPriced = filters.donor !== null && filters.changes === 'yes';
      const named = offersFor([filters.names, filters.with], service);
      return { ...filters, ...(isPriced ? offersNow(service) : named) };
    },
    usual: usualFits,
    list: (library, input) =>
      withItemProblems(listFittingParts(library, input), listFittingPartsOperation),
    lifetimes: (input) => lifetimesOf(input),
  });
  mountList<FittedVehiclesQuestion, FittedVehiclesInput>(app, service, {
    operation: listFittedVehiclesOperation,
    schema: fittedVehiclesQuestionSchema,
    filters: fittedVehiclesFilters,
    usual: usualFits,
    list: (library, input) =>
      withItemProblems(listFittedVehicles(library, input), listFittedVehiclesOperation),
    lifetimes: JUDGED,
    namedInPublic: 'vehicle',
  });
}
