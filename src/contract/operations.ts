/**
 * Every operation of the service, in the order of the document.
 */

import { CALCULATE_OPERATIONS } from './calculate.js';
import { listCodesOperation } from './codes.js';
import { driveVehicleOperation } from './driveline.js';
import { listEditionsOperation, readEditionOperation } from './editions.js';
import { askFitOperation, checkFitOperation } from './fit.js';
import { fitBatchOperation } from './fit-batch.js';
import { exportFitsOperation } from './fits-feed.js';
import { listFittedVehiclesOperation } from './fitted-vehicles.js';
import { listFittingPartsOperation } from './fitting-parts.js';
import { liveOperation, readyOperation } from './health.js';
import { identifyPartOperation } from './identify-part.js';
import { identifyVehicleOperation } from './identify-vehicle.js';
import { inspectOperation } from './inspect.js';
import { listKindsOperation, readKindOperation } from './kinds.js';
import { askKitsOperation, findKitsOperation } from './kits.js';
import { listLayoutsOperation, readLayoutOperation } from './layouts.js';
import { listLimitsOperation } from './limit-list.js';
import { askMateOperation, mateFacesOperation } from './mate.js';
import type { Operation } from './operation.js';
import { listPartsOperation, readPartOperation } from './parts.js';
import { listRolesOperation, readRoleOperation } from './roles.js';
import { readVehicleOperation } from './vehicle.js';
import { listVehiclesOperation } from './vehicles.js';

export const OPERATIONS: readonly Operation[] = [
  checkFitOperation,
  askFitOperation,
  listFittingPartsOperation,
  listFittedVehiclesOperation,
  fitBatchOperation,
  exportFitsOperation,
  findKitsOperation,
  askKitsOperation,
  inspectOperation,
  driveVehicleOperation,
  mateFacesOperation,
  askMateOperation,
  listPartsOperation,
  identifyPartOperation,
  readPartOperation,
  listRolesOperation,
  readRoleOperation,
  listKindsOperation,
  readKindOperation,
  listVehiclesOperation,
  identifyVehicleOperation,
  readVehicleOperation,
  listLayoutsOperation,
  readLayoutOperation,
  ...CALCULATE_OPERATIONS,
  listEditionsOperation,
  readEditionOperation,
  listCodesOperation,
  listLimitsOperation,
  liveOperation,
  readyOperation,
];
