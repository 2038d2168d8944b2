/**
 * What a question says of a vehicle, as the use-cases take it.
 */

import type { InspectQuestion } from '../contract/inspect.js';
import { measuredInput } from '../contract/measured.js';
import type { NamingInput } from '../usecases/asked-parts.js';
import type { VehicleInput } from '../usecases/question.js';

export function vehicleInput(question: InspectQuestion, common: NamingInput): VehicleInput {
  const { vehicle, facts, fitted, adapters, torque, use, ignorePresent, units } = question;
  return {
    ...common,
    vehicle,
    facts: facts ?? {},
    fitted: fitted ?? {},
    adapters: adapters ?? {},
    measured: measuredInput(question.measured),
    torque: torque ?? null,
    use: use ?? null,
    ignorePresent: ignorePresent ?? false,
    units: units ?? 'recorded',
  };
}
