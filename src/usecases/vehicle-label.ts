/**
 * How a vehicle is called before people: by make, model and variant; and where several may be
 * meant, by the months in which it was built as well.
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import { sayBuilt } from '../domain/explain/words.js';

export function vehicleName({ make, model, variant }: Vehicle): string {
  return [`${make} ${model}`, variant].filter((words) => words !== null).join(', ');
}

/** `Corrablyn Lirren, first series, 03/2001 to 08/2005`. */
export function vehicleLabel(vehicle: Vehicle, lang: string): string {
  const built = sayBuilt(vehicle.built, lang);
  return [vehicleName(vehicle), built].filter((words) => words !== null).join(', ');
}
