/**
 * Questions to the demo catalogue that only some operations refuse: of names that nothing has, and
 * of what cannot be.
 *
 * Length: one table, with a row for each refusal of each operation.
 */

import { CALCULATE_REFUSED } from './calculate.js';
import type { ExampleRequest } from './examples.js';
import { FIT_BATCH_REFUSED } from './fit-batch-examples.js';
import { FITS_FEED_REFUSED } from './fits-feed-examples.js';
import type { ProblemCode } from './problems/problem-type.js';

/** What only some operations refuse. */
export type RefusedQuestion = Pick<
  ExampleRequest,
  'summary' | 'segment' | 'search' | 'body' | 'lines'
> & {
  readonly headers?: Readonly<Record<string, string>>;
};

const SPIGOT_OF_NO_FACE = {
  on: { part: 'front-hub-used', interface: 'wheels', parameter: 'spigot' },
  value: '56.10 ±0.05 mm',
};

/** What is refused by some operations, by operation and code. */
export const REFUSED_QUESTIONS: Readonly<
  Record<string, Readonly<Partial<Record<ProblemCode, RefusedQuestion>>>>
> = {
  ...CALCULATE_REFUSED,
  askFitBatch: FIT_BATCH_REFUSED,
  exportFits: FITS_FEED_REFUSED,
  checkFit: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      search: 'vehicle=lirren-9&part=linkage-cables',
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      search: 'vehicle=lirren&part=linkage-cables',
    },
    'unknown-part': {
      summary: 'A part with a letter missing',
      search: 'vehicle=lirren-1&part=linkage-cable',
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      search: 'vehicle=lirren-1&part=44%2F10+077',
    },
    'unknown-position': {
      summary: 'A position that the vehicle has not',
      search: 'vehicle=lirren-1&part=linkage-cables&position=gear-linkage',
    },
    'invalid-question': {
      summary: 'A torque without its unit',
      search: 'vehicle=lirren-1&part=linkage-cables&torque=400',
    },
  },
  listFittingParts: {
    'unknown-vehicle': { summary: 'A vehicle that is not in the catalogue', segment: 'lirren-9' },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      segment: 'lirren',
    },
    'unknown-part': {
      summary: 'What is to be fitted beside is not in the catalogue',
      segment: 'lirren-1',
      search: 'with.gearbox=gearbox-9',
    },
    'ambiguous-part': {
      summary: 'What is to be fitted beside is named by a number that two makers print',
      segment: 'lirren-1',
      search: 'with.clutch=44%2F10+077',
    },
    'unknown-position': {
      summary: 'A position that the vehicle has not',
      segment: 'lirren-1',
      search: 'position=gear-linkage',
    },
    'unknown-role': {
      summary: 'A role with a letter missing',
      segment: 'lirren-1',
      search: 'role=gearbo',
    },
    'invalid-question': {
      summary: 'A fact that nobody has heard of',
      segment: 'lirren-1',
      search: 'fact.paint=red',
    },
  },
  listFittedVehicles: {
    'unknown-part': { summary: 'A part with a letter missing', segment: 'gearbox-6-lat' },
    'unknown-layout': {
      summary: 'A layout that is not in the catalogue',
      segment: 'gearbox-6-late',
      search: 'layout=sideways',
    },
    'invalid-question': {
      summary: 'A fact that nobody has heard of',
      segment: 'gearbox-6-late',
      search: 'fact.paint=red',
    },
  },
  identifyPart: {
    'unknown-role': { summary: 'A role that is not there', body: { role: 'gear-box' } },
    'unknown-kind': {
      summary: 'A kind of face that is not there',
      body: { measured: [{ on: { kind: 'spline', parameter: 'teeth' }, value: '24' }] },
    },
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'lirren-9' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that two more exact ones took the place of',
      body: { vehicle: 'lirren' },
    },
    'invalid-question': {
      summary: 'A length without its unit, of a face that no part has',
      body: {
        measured: [
          { on: { parameter: 'length' }, value: '612' },
          { on: { interface: 'raer', parameter: 'pcd' }, value: '106 mm' },
        ],
      },
    },
  },
  identifyVehicle: {
    'invalid-question': {
      summary: 'A number with a letter that looks like a digit',
      body: { vin: '0CBLRO00030000017' },
    },
  },
  askFit: {
    'unknown-interface': {
      summary: 'Something was measured at a face that the part has not',
      body: { vehicle: 'lirren-1', part: 'front-hub-used', measured: [SPIGOT_OF_NO_FACE] },
    },
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'lirren-9', part: 'control-centre' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren', part: 'control-centre' },
    },
    'ambiguous-part': {
      summary: 'What is on it is named by a number that two makers print',
      body: { vehicle: 'lirren-1', part: 'control-centre', fitted: { clutch: '44/10-077' } },
    },
    'unknown-part': {
      summary: 'What is on one side is not in the catalogue',
      body: {
        vehicle: 'lirren-1',
        part: 'linkage-cables',
        fitted: { 'rear-half-shaft': { left: 'rear-shaft-early-left', right: 'rear-shaft-9' } },
      },
    },
    'unknown-position': {
      summary: 'Something is said of a position that the vehicle has not',
      body: { vehicle: 'lirren-1', part: 'control-centre', fitted: { 'gear-box': 'unknown' } },
    },
    'invalid-question': {
      summary: 'An adapter at a mating that the vehicle has not',
      body: {
        vehicle: 'lirren-1',
        part: 'control-centre',
        adapters: { 'gearbox-to-prop': ['adapter-70-65'] },
      },
    },
  },
  findKits: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      search: 'vehicle=lirren-9&want=bracket-20',
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      search: 'vehicle=lirren&want=bracket-20',
    },
    'unknown-part': {
      summary: 'A part with a letter missing',
      search: 'vehicle=lirren-1&want=braket-20',
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      search: 'vehicle=lirren-1&want=44%2F10+077',
    },
    'unknown-position': {
      summary: 'A place that the vehicle has not is to stay as it is',
      search: 'vehicle=lirren-1&want=bracket-20&keep=gear-box',
    },
    'invalid-question': {
      summary: 'A lot that there is not',
      search: 'vehicle=lirren-1&want=lot:axle-pair',
    },
  },
  askKits: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'gallivet-5', want: [{ lot: 'clutch-kit-215' }] },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren', want: [{ part: 'bracket-20' }] },
    },
    'unknown-part': {
      summary: 'What is at hand is not in the catalogue',
      body: { vehicle: 'gallivet', owned: [{ part: 'clutch-9' }] },
    },
    'ambiguous-part': {
      summary: 'One of two parts is named by a number that two makers print',
      body: { vehicle: 'lirren-1', want: [{ part: ['clutch-strong', '44/10-077'] }] },
    },
    'unknown-position': {
      summary: 'A part is wanted where the vehicle has no place',
      body: { vehicle: 'lirren-1', want: [{ part: 'gearbox-6-late', position: 'gear-box' }] },
    },
    'unknown-interface': {
      summary: 'Something was measured at a face that the part has not',
      body: {
        vehicle: 'lirren-1',
        measured: [SPIGOT_OF_NO_FACE],
      },
    },
    'invalid-question': {
      summary: 'A condition with a value that no gearbox has',
      body: {
        vehicle: 'lirren-1',
        want: [{ position: 'gearbox', condition: { 'at-least': ['gearbox.gears-count', 6] } }],
      },
    },
  },
  driveVehicle: {
    'unknown-interface': {
      summary: 'Something was measured at a face that the part has not',
      body: { vehicle: 'lirren-1', measured: [SPIGOT_OF_NO_FACE] },
    },
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'hulvane-2' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren' },
    },
    'ambiguous-part': {
      summary: 'What is put in is named by a number that two makers print',
      body: {
        vehicle: 'lirren-1',
        lines: [{ action: 'add', position: 'clutch', part: 'number:44/10 077' }],
      },
    },
    'unknown-part': {
      summary: 'What is put in is not in the catalogue',
      body: {
        vehicle: 'lirren-1',
        lines: [{ action: 'add', position: 'gearbox', part: 'gearbox-7' }],
      },
    },
    'unknown-position': {
      summary: 'Something is put where the vehicle has no place',
      body: {
        vehicle: 'lirren-1',
        lines: [{ action: 'add', position: 'gear-box', part: 'gearbox-6-late' }],
      },
    },
    'invalid-question': {
      summary: 'A grip that no tyre has',
      body: { vehicle: 'lirren-1', grip: '3' },
    },
  },
  inspectVehicle: {
    'unknown-interface': {
      summary: 'Something was measured at a face that the part has not',
      body: { vehicle: 'lirren-1', measured: [SPIGOT_OF_NO_FACE] },
    },
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'hulvane-2' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren' },
    },
    'ambiguous-part': {
      summary: 'What is on it is named by a number that two makers print',
      body: { vehicle: 'hulvane', fitted: { clutch: 'number:44/10 077' } },
    },
    'unknown-part': {
      summary: 'What is on it is not in the catalogue',
      body: { vehicle: 'hulvane', fitted: { gearbox: 'gearbox-7' } },
    },
    'unknown-position': {
      summary: 'Something is said of a position that the vehicle has not',
      body: { vehicle: 'hulvane', fitted: { 'gear-box': 'none' } },
    },
    'invalid-question': {
      summary: 'A torque in a unit of power',
      body: { vehicle: 'hulvane', torque: '90 kW' },
    },
  },
  mateFaces: {
    'unknown-part': {
      summary: 'A part that is not in the catalogue',
      search: 'a=control-center&b=gearbox-6-late',
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      search: 'a=44%2F10.077&b=gearbox-6-late',
    },
    'unknown-interface': {
      summary: 'A face that the part has not',
      search: 'a=control-centre&b=gearbox-6-late&b.face=plug',
    },
    'invalid-question': {
      summary: 'A gearbox as an adapter',
      search: 'a=gearbox-6-late&b=prop-early&adapter=gearbox-5-early',
    },
  },
  askMate: {
    'unknown-part': {
      summary: 'A part that is not in the catalogue',
      body: { a: { part: 'linkage-cable' }, b: { part: 'gearbox-6-late' } },
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      body: { a: { part: '44/10 077' }, b: { part: 'gearbox-6-late' } },
    },
    'unknown-interface': {
      summary: 'A face that the part has not',
      body: {
        a: { part: 'linkage-cables', interface: 'boxes' },
        b: { part: 'gearbox-6-late' },
      },
    },
    'invalid-question': {
      summary: 'A face that is written out with a value that is none',
      body: {
        a: { part: 'linkage-cables', interface: 'box' },
        b: { inline: { kind: 'shift-linkage', side: 'gearbox', gates: 'four' } },
      },
    },
  },
  listVehicles: {
    'invalid-question': {
      summary: 'A fact with two letters swapped',
      search: 'make=Corrablyn&fact.axle-tga=tag-390',
    },
    'unknown-layout': {
      summary: 'A layout that the catalogue has not',
      search: 'layout=long-wad',
    },
  },
  readVehicle: {
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      segment: 'lirren',
    },
  },
  readEdition: {
    'unknown-edition': { summary: 'An edition to come', segment: '999' },
  },
  listParts: {
    'unknown-role': {
      summary: 'A role that the catalogue has not',
      search: 'role=gear-box',
    },
    'unknown-kind': {
      summary: 'A kind of face that there is not',
      search: 'kind=prop-shaft-flange',
    },
    'invalid-question': {
      summary: 'Two things at once that there are not',
      search: 'role=gear-box&kind=prop-shaft-flange',
    },
  },
};
