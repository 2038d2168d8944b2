/**
 * Which operation of the contract each field asks. To add a question is to add a line.
 */

import { listCodesOperation } from '../../contract/codes.js';
import { driveVehicleOperation } from '../../contract/driveline.js';
import { askFitOperation } from '../../contract/fit.js';
import { listFittedVehiclesOperation } from '../../contract/fitted-vehicles.js';
import { listFittingPartsOperation } from '../../contract/fitting-parts.js';
import { identifyPartOperation } from '../../contract/identify-part.js';
import { identifyVehicleOperation } from '../../contract/identify-vehicle.js';
import { inspectOperation } from '../../contract/inspect.js';
import { listKindsOperation, readKindOperation } from '../../contract/kinds.js';
import { askKitsOperation } from '../../contract/kits.js';
import { listLayoutsOperation, readLayoutOperation } from '../../contract/layouts.js';
import { listLimitsOperation } from '../../contract/limit-list.js';
import { askMateOperation } from '../../contract/mate.js';
import type { Operation } from '../../contract/operation.js';
import { listPartsOperation, readPartOperation } from '../../contract/parts.js';
import { listRolesOperation, readRoleOperation } from '../../contract/roles.js';
import { readVehicleOperation } from '../../contract/vehicle.js';
import { listVehiclesOperation } from '../../contract/vehicles.js';

export interface Question {
  readonly field: string;
  readonly operation: Operation;
  /** What it takes to answer, where a record that is read takes 1. */
  readonly cost: number;
  /** What it takes where changes around a part are looked for. */
  readonly costOfChanges?: number;
  /** One of the forms that the operation has: what it takes not, what it needs, what it gives. */
  readonly form?: {
    readonly without: readonly string[];
    readonly required: readonly string[];
    readonly answer: string;
  };
  /** The fields of its answer that no search for changes has a say in. */
  readonly aloneFields?: ReadonlySet<string>;
}

const KNOWN = ['make', 'model', 'variant', 'year', 'built'];

/** `positions` as far as no verdict is asked of them. */
const OF_PART_ALONE: ReadonlySet<string> = new Set([
  '__typename',
  'edition',
  'engine',
  'lang',
  'units',
  'asked',
  'resolvedBy',
  'vehicle',
  'part',
  'name',
  'supersededBy',
  'named',
  'alone',
]);

/** Of one part on one vehicle, as it is. */
const ALONE = 2;
/** Of a search for changes around it. */
const SEARCH = 20;
/** Of one of the entries of a list, of which only the verdict is told. */
const LISTED_SEARCH = 10;

/** What the catalogue answers: fields of an edition. */
export const EDITION_QUESTIONS: readonly Question[] = [
  {
    field: 'fit',
    operation: askFitOperation,
    cost: ALONE,
    costOfChanges: SEARCH,
    form: { without: KNOWN, required: ['vehicle'], answer: 'FitAnswer' },
    aloneFields: OF_PART_ALONE,
  },
  {
    field: 'fitPartly',
    operation: askFitOperation,
    cost: 5 * ALONE,
    costOfChanges: 2 * SEARCH,
    form: { without: ['vehicle'], required: [], answer: 'PartlyFitAnswer' },
  },
  {
    field: 'fittingParts',
    operation: listFittingPartsOperation,
    cost: 5,
    costOfChanges: LISTED_SEARCH,
  },
  {
    field: 'fittedVehicles',
    operation: listFittedVehiclesOperation,
    cost: 5,
    costOfChanges: LISTED_SEARCH,
  },
  {
    field: 'kits',
    operation: askKitsOperation,
    cost: SEARCH,
    form: { without: KNOWN, required: ['vehicle'], answer: 'KitAnswer' },
  },
  {
    field: 'kitsPartly',
    operation: askKitsOperation,
    cost: 2 * SEARCH,
    form: { without: ['vehicle'], required: [], answer: 'PartlyKitAnswer' },
  },
  { field: 'inspect', operation: inspectOperation, cost: ALONE },
  { field: 'driveline', operation: driveVehicleOperation, cost: 5 },
  { field: 'mate', operation: askMateOperation, cost: ALONE },
  { field: 'parts', operation: listPartsOperation, cost: 1 },
  { field: 'identifyPart', operation: identifyPartOperation, cost: 5 },
  { field: 'part', operation: readPartOperation, cost: 1 },
  { field: 'roles', operation: listRolesOperation, cost: 1 },
  { field: 'role', operation: readRoleOperation, cost: 1 },
  { field: 'kinds', operation: listKindsOperation, cost: 1 },
  { field: 'kind', operation: readKindOperation, cost: 1 },
  { field: 'vehicles', operation: listVehiclesOperation, cost: 1 },
  { field: 'vehicle', operation: readVehicleOperation, cost: 1 },
  { field: 'identifyVehicle', operation: identifyVehicleOperation, cost: 1 },
  { field: 'layouts', operation: listLayoutsOperation, cost: 1 },
  { field: 'layout', operation: readLayoutOperation, cost: 1 },
];

/** What the program answers, whatever is published: fields of the root. */
export const PROGRAM_QUESTIONS: readonly Question[] = [
  { field: 'codes', operation: listCodesOperation, cost: 1 },
  { field: 'limits', operation: listLimitsOperation, cost: 1 },
];
