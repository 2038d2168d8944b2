/**
 * What a question says of a vehicle, as the use-cases take it.
 */

import type { NamingInput } from '../usecases/asked-parts.js';
import type { VehicleInput } from '../usecases/question.js';
import type { InspectQuestion } from './inspect.js';
import { measuredInput } from './measured.js';

export function vehicleInput(question: InspectQuestion, common: NamingInput): VehicleInput {
  return { ...besideVehicle(question, common), vehicle: question.vehicle };
}

/** All but which vehicle it is. */
export function besideVehicle(
  question: Omit<InspectQuestion, 'vehicle'>,
  common: NamingInput,
): Omit<VehicleInput, 'vehicle'> {
  const { facts, fitted, adapters, torque, use, ignorePresent, units } = question;
  return {
    ...common,
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
