/**
 * Asks the demo catalogue: each function gives a question that is put when it is called.
 */

import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import type { Library } from '../../src/usecases/library.js';
import { type MateInput, mateFaces } from '../../src/usecases/mate-faces.js';
import type { VehicleInput } from '../../src/usecases/question.js';
import { demoDocument, libraryOf } from '../memory-store.js';

const library = libraryOf(demoDocument());

const anew: Omit<VehicleInput, 'vehicle'> = {
  edition: null,
  lang: 'en',
  facts: {},
  fitted: {},
  adapters: {},
  torque: null,
  use: null,
  ignorePresent: false,
};

export function askFit(vehicle: string, part: string, more: Partial<FitInput> = {}) {
  return () =>
    checkFit(library, {
      ...anew,
      vehicle,
      part,
      position: null,
      with: {},
      changes: null,
      ...more,
    });
}

export function askInspect(vehicle: string, more: Partial<VehicleInput> = {}) {
  return inspectIn(library, vehicle, more);
}

/** The same of another library than that of the whole catalogue. */
export function inspectIn(where: Library, vehicle: string, more: Partial<VehicleInput>) {
  return () => inspectVehicle(where, { ...anew, vehicle, ...more });
}

export function askMate(a: string, b: string, adapters: MateInput['adapters'] = []) {
  const end = (face: string): MateInput['a'] => {
    const [part = '', name = null] = face.split('.');
    return { part, interface: name };
  };
  return () =>
    mateFaces(library, { edition: null, lang: 'en', a: end(a), b: end(b), adapters, use: null });
}
