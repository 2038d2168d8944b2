/**
 * `faying inspect VEHICLE`: is this vehicle right as it stands?
 */

import type { Command } from 'commander';
import type { InspectAnswer } from '../usecases/answer.js';
import { inspectVehicle } from '../usecases/inspect-vehicle.js';
import { sayAsides, sayNames, sayOrders, sayVerdict } from './answer-text.js';
import { cautionTexts, sayFindings } from './finding.js';
import type { Page } from './page.js';
import { addVehicleOptions, type VehicleOptions, vehicleInput } from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import { wordsIn } from './words/words.js';

const EXAMPLES = `
Examples:
  $ faying inspect lirren-1
  $ faying inspect lirren-1 --fitted gearbox=gearbox-6-late --fitted prop-shaft=unknown
  $ faying inspect hulvane --measured rear-hub=rear-hub-late --measured "fact:subframe-ears=low"
`;

export function addInspect(program: Command, session: Session): void {
  const command = program
    .command('inspect')
    .summary('is this vehicle right as it stands?')
    .description('Judges a vehicle as it stands, with what you say is fitted to it.')
    .argument('<vehicle>', 'id of the vehicle');
  addStoreOptions(addVehicleOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((vehicle: string, options: VehicleOptions & StoreOptions) => {
      const input = vehicleInput(vehicle, options);
      const answer = session.ask(options, (library) => inspectVehicle(library, input));
      session.tell(answer, options, sayInspection);
    });
}

function sayInspection(answer: InspectAnswer, page: Page): void {
  const { summary, state, vehicle, judged, order } = answer;
  const words = wordsIn(answer.lang);
  sayVerdict(summary, state, page);
  page.say(words.vehicle(vehicle), { tone: 'faint' });
  sayNames(answer, page, words);
  page.gap();
  sayFindings(judged, page, words);
  if (state !== 'fails') sayOrders(order, page, words);
  sayAsides(answer, page, cautionTexts(judged, words));
}
