/**
 * What a question says of a vehicle, as the use-cases take it.
 */

import type { InspectQuestion } from '../contract/inspect.js';
import type { VehicleInput } from '../usecases/question.js';
import type { NamingSettled } from './naming.js';

export function vehicleInput(
  question: InspectQuestion,
  { head, lang, offers }: NamingSettled,
): VehicleInput {
  const { vehicle, facts, fitted, adapters, torque, use, ignorePresent, units } = question;
  return {
    // The number and not "the newest": another edition may be published in between.
    edition: head.number,
    lang,
    ...(offers === null ? {} : { offers }),
    vehicle,
    facts: facts ?? {},
    fitted: fitted ?? {},
    adapters: adapters ?? {},
    torque: torque ?? null,
    use: use ?? null,
    ignorePresent: ignorePresent ?? false,
    units: units ?? 'recorded',
  };
}
