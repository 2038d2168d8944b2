/**
 * Asks the demo catalogue: each function gives a question that is put when it is called.
 */

import type { ShownUnits } from '../../src/domain/quantity/unit.js';
import type { FitAnswer, InspectAnswer, MateAnswer } from '../../src/usecases/answer.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import {
  type DrivelineAnswer,
  type DrivelineInput,
  driveVehicle,
} from '../../src/usecases/drive-vehicle.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import type { KitAnswer } from '../../src/usecases/kit-answer.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import type { Library } from '../../src/usecases/library.js';
import { type MateInput, mateFaces } from '../../src/usecases/mate-faces.js';
import type { ValuesInput, VehicleInput } from '../../src/usecases/question.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { demoDocument, libraryOf } from '../memory-store.js';

const library = libraryOf(demoDocument());

const anew: Omit<VehicleInput, 'vehicle'> = {
  edition: null,
  lang: 'en',
  units: 'recorded',
  facts: {},
  fitted: {},
  adapters: {},
  measured: [],
  torque: null,
  use: null,
  ignorePresent: false,
};

/** A question that can be put, in any language and units, and what it names. */
export type Asked<Input, Answer> = ((lang?: string, units?: ShownUnits) => Answer) & {
  readonly input: Input;
};

function asked<Input extends ValuesInput, Answer>(
  input: Input,
  ask: (input: Input) => Answer,
): Asked<Input, Answer> {
  return Object.assign((lang = input.lang, units = input.units) => ask({ ...input, lang, units }), {
    input,
  });
}

/** With nothing else changed, unless `changes` says so. */
export function askFit(vehicle: string, part: string, more: Partial<FitInput> = {}) {
  const here = { vehicle, part, position: null, with: {}, changes: 'no' as const };
  return asked<FitInput, FitAnswer>({ ...anew, ...here, ...more }, (input) =>
    checkFit(library, input),
  );
}

export function askDriveline(vehicle: string, more: Partial<DrivelineInput> = {}) {
  const here = { vehicle, lines: null, routes: [], grip: null };
  return asked<DrivelineInput, DrivelineAnswer>({ ...anew, ...here, ...more }, (input) =>
    driveVehicle(library, input),
  );
}

export function askInspect(vehicle: string, more: Partial<VehicleInput> = {}) {
  return inspectIn(library, vehicle, more);
}

/** The same of another library than that of the whole catalogue. */
export function inspectIn(where: Library, vehicle: string, more: Partial<VehicleInput>) {
  return asked<VehicleInput, InspectAnswer>({ ...anew, vehicle, ...more }, (input) =>
    inspectVehicle(where, input),
  );
}

/** Wishes are parts, with @ and a position behind it if need be. */
export function askKits(vehicle: string, wishes: readonly string[], more: Partial<KitInput> = {}) {
  const want = wishes.map((wish) => {
    const [part = '', position = null] = wish.split('@');
    return { part, position, hand: null, renew: false };
  });
  return asked<KitInput, KitAnswer>({ ...anew, ...USUAL_KIT, vehicle, want, ...more }, (input) =>
    resolveKitQuestion(library, input),
  );
}

export function askMate(a: string, b: string, adapters: MateInput['adapters'] = []) {
  const end = (face: string): MateInput['a'] => {
    const [part = '', name = null] = face.split('.');
    return { part, interface: name };
  };
  const ends = {
    edition: null,
    lang: 'en',
    units: 'recorded' as const,
    a: end(a),
    b: end(b),
    adapters,
    use: null,
  };
  return asked<MateInput, MateAnswer>(ends, (input) => mateFaces(library, input));
}
