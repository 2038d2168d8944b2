/**
 * How does this vehicle drive, and does it hold?
 */

import {
  type DrivelineQuestion,
  drivelineQuestionSchema,
  driveVehicleOperation,
} from '../../contract/driveline.js';
import { vehicleInput } from '../../contract/vehicle-input.js';
import type { NamingInput } from '../../usecases/asked-parts.js';
import type { DrivelineInput } from '../../usecases/drive-vehicle.js';
import type { LineInput } from '../../usecases/kit-change.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import type { Service } from '../service.js';

const { path } = driveVehicleOperation;

export function mountDriveline(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    ask: { placeOf: pointerCalled, answer: (exchange) => drive(exchange, service) },
  });
}

async function drive(exchange: Exchange, service: Service): Promise<Response> {
  const asked = await questionInBody(exchange, drivelineQuestionSchema);
  const { driveVehicle: judge } = service.useCases;
  return answerNaming(service, exchange, { path, query: null, asked, inputOf, judge });
}

function inputOf(question: DrivelineQuestion, common: NamingInput): DrivelineInput {
  const { lines, routes, grip, ...vehicle } = question;
  return {
    ...vehicleInput(vehicle, common),
    lines: lines === undefined ? null : lines.map(lineOf),
    routes: routes ?? [],
    grip: grip ?? null,
  };
}

type Line = NonNullable<DrivelineQuestion['lines']>[number];

function lineOf({ action, position, mating, hand, part, work, source }: Line): LineInput {
  return {
    action: action ?? (mating === undefined || mating === null ? 'add' : 'adapter'),
    position: position ?? null,
    mating: mating ?? null,
    hand: hand ?? null,
    part: part ?? null,
    work: work ?? null,
    source: source ?? null,
  };
}
