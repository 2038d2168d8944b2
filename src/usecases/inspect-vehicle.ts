/**
 * Is this vehicle right as it stands, with what the question says is on it?
 */

import { asBuilt, type Configuration, overlay } from '../domain/judge/configuration.js';
import { judge } from '../domain/judge/judge.js';
import type { InspectAnswer } from './answer.js';
import { measureViews, notCheckedViews, orderViews } from './asides.js';
import { AskedParts } from './asked-parts.js';
import { cautionViews } from './cautions.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { Library } from './library.js';
import { namesIn, torqueOf, type VehicleInput, vehicleOf } from './question.js';
import { factsMeasured, knownOf } from './readings.js';
import { Speaker } from './speaker.js';
import { judgedView } from './views.js';

export function inspectVehicle(library: Library, input: VehicleInput): InspectAnswer {
  const edition = library.edition(input.edition);
  const faults = new Faults();
  const parts = new AskedParts({ library, edition, input }, namesIn(input), faults);
  const facts = { ...input.facts, ...factsMeasured(edition.catalogue, input.measured, faults) };
  const vehicle = vehicleOf(edition, { ...input, facts }, faults);
  const torque = torqueOf(input.torque, faults);
  if (vehicle === null) return faults.end();
  const { said, catalogue } = knownOf({ parts, vehicle, faults }, input);
  faults.endIfAny();
  const present = overlay(asBuilt(vehicle), said.seats, said.adapters);
  const { layout } = vehicle;
  const { use, ignorePresent } = input;
  const configuration: Configuration = {
    catalogue,
    pairsOf: catalogue,
    vehicle,
    layout,
    present,
    judged: present,
    torque,
    use,
    ignorePresent,
  };
  const judgement = judge(configuration);
  const speaker = new Speaker({ catalogue, layout, lang: input.lang, units: input.units });
  // What nobody recorded is given on the vehicle itself; that all is right, it does not say.
  // So is what fails by the records of a part that a statement says to fit.
  const hasGaps = judgement.constraints.some(
    ({ computed, state }) => computed === 'open' || (computed === 'fails' && state !== 'fails'),
  );
  const codes = {
    holds: hasGaps ? 'open-as-it-stands' : 'right-as-it-stands',
    open: 'open-as-it-stands',
    fails: 'wrong-as-it-stands',
  } as const;
  return withValuesHead(edition, speaker, {
    vehicle: vehicle.id,
    state: judgement.outcome,
    summary: speaker.said(codes[judgement.outcome], {}),
    offers: parts.offers,
    named: parts.namedViews(speaker),
    judged: judgedView(judgement.constraints, speaker),
    order: orderViews(judgement, speaker),
    measure: measureViews([judgement], speaker),
    notChecked: notCheckedViews(judgement, speaker),
    cautions: cautionViews([judgement], speaker),
  });
}
