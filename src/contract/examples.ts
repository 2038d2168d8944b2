/**
 * Example requests to the demo catalogue. Their answers are never written down by hand: whoever
 * prints the contract asks the service.
 *
 * Length: one table, with a row for each question that the document shows.
 */

import { CALCULATE_EXAMPLES } from './calculate.js';
import { FIT_BATCH_EXAMPLES } from './fit-batch-examples.js';
import { FITS_FEED_EXAMPLES } from './fits-feed-examples.js';
import type { Operation } from './operation.js';

export interface ExampleRequest {
  readonly operationId: string;
  /** Name of the example, kebab-case. */
  readonly name: string;
  readonly summary: string;
  /** What the client fills in in the path, where something is. */
  readonly segment?: string;
  /** Parameters as a URL has them, for a question in a URL. */
  readonly search?: string;
  readonly body?: Readonly<Record<string, unknown>>;
  /** Where the answer is many lines, and the question in a body too. */
  readonly lines?: ExampleLines;
}

/** Of which media type the answer is to be, and the question, where it stands in a body. */
export type ExampleLines = { readonly accept: string } & (
  | { readonly type: string; readonly text: string }
  | { readonly type?: undefined; readonly text?: undefined }
);

export interface Example extends ExampleRequest {
  readonly status: number;
  /** What the service said: an answer, or a problem; the text of it, where it is many lines. */
  readonly answer: unknown;
}

const BEHIND_THE_GEARBOX = [
  'prop-shaft',
  'rear-final-drive',
  'rear-half-shaft',
  'front-half-shaft',
  'front-hub',
  'rear-hub',
  'front-wheel',
  'rear-wheel',
] as const;

export const EXAMPLE_REQUESTS: readonly ExampleRequest[] = [
  ...CALCULATE_EXAMPLES,
  ...FIT_BATCH_EXAMPLES,
  ...FITS_FEED_EXAMPLES,
  {
    operationId: 'checkFit',
    name: 'not-alone',
    summary: 'A linkage for another gearbox: it does not fit the vehicle as it stands',
    search: 'vehicle=lirren-1&part=linkage-cables&changes=no',
  },
  {
    operationId: 'checkFit',
    name: 'with-changes',
    summary: 'A hub for other wheels, with all that it takes',
    search: 'vehicle=lirren-1&part=front-hub-117',
  },
  {
    operationId: 'checkFit',
    name: 'fits',
    summary: 'A bracket at a place that is empty',
    search: 'vehicle=lirren-1&part=bracket-20',
  },
  {
    operationId: 'checkFit',
    name: 'unknown',
    summary: "The linkage again, where nobody knows which gearbox is in this customer's vehicle",
    search: 'vehicle=lirren-1&part=linkage-cables&fitted.gearbox=unknown&changes=no',
  },
  {
    operationId: 'checkFit',
    name: 'by-number',
    summary: 'The number on the part, as somebody typed it',
    search: 'vehicle=lirren-1&part=number%3Acbl+2k240%40corrablyn&changes=no',
  },
  {
    operationId: 'checkFit',
    name: 'whichever-it-is',
    summary: 'A model of which the part fits every vehicle',
    search: 'make=Corrablyn&model=Lirren&part=bracket-20',
  },
  {
    operationId: 'checkFit',
    name: 'depends',
    summary: 'A model of which it depends, and what to ask',
    search: 'make=Corrablyn&model=Lirren&part=linkage-cables&changes=no',
  },
  {
    operationId: 'askFit',
    name: 'unknown',
    summary: 'A control unit for a gearbox that nobody has looked at',
    body: {
      vehicle: 'lirren-1',
      part: 'control-centre',
      fitted: { gearbox: 'unknown' },
      changes: 'no',
    },
  },
  {
    operationId: 'listFittingParts',
    name: 'of-a-role',
    summary: 'The gearboxes, those that do not fit as it stands among them',
    segment: 'lirren-1',
    search: 'role=gearbox&limit=2',
  },
  {
    operationId: 'listFittingParts',
    name: 'of-a-page',
    summary: "Parts of a shop's page, by its order code and by id, and one that nobody knows",
    segment: 'lirren-1',
    search: 'part=sku%3AF-1001&part=bracket-20&part=gearbox-9',
  },
  {
    operationId: 'listFittingParts',
    name: 'out-of-a-donor',
    summary: 'What a donor has for it, and what comes with that',
    segment: 'lirren-1',
    search: 'donor=lirren-2&position=starter&changes=yes',
  },
  {
    operationId: 'listFittedVehicles',
    name: 'that-it-fits',
    summary: 'The vehicles that it fits as they are',
    segment: 'bracket-20',
    search: 'alone=holds',
  },
  {
    operationId: 'listFittedVehicles',
    name: 'by-model',
    summary: 'Model by model',
    segment: 'gearbox-6-late',
    search: 'group=model',
  },
  {
    operationId: 'findKits',
    name: 'one-part',
    summary: 'A bracket at a place that is empty: nothing else is needed',
    search: 'vehicle=lirren-1&want=bracket-20',
  },
  {
    operationId: 'findKits',
    name: 'no-way',
    summary: 'Another gearbox, but the rear axle and the front half-shafts stay as they are',
    search: 'vehicle=lirren-1&want=gearbox-6-late&keep=rear-final-drive,front-half-shaft',
  },
  {
    operationId: 'findKits',
    name: 'whichever-it-is',
    summary: 'The same bracket on a model of which all vehicles take it in the same way',
    search: 'make=Corrablyn&model=Lirren&want=bracket-20',
  },
  {
    operationId: 'findKits',
    name: 'depends',
    summary: 'A model of which it depends, and what to ask',
    search: 'make=Corrablyn&model=Lirren&want=linkage-cables&routes=1',
  },
  {
    operationId: 'askKits',
    name: 'lot-at-a-price',
    summary: "A stronger clutch kit at a price of one's own, with labour",
    body: {
      vehicle: 'gallivet',
      want: [{ lot: 'clutch-kit-215' }],
      offers: [{ lot: 'clutch-kit-215', price: '310.00', stock: 1, leadDays: 1 }],
      labourRate: '60.00',
      limits: { cost: '900.00' },
    },
  },
  {
    operationId: 'askKits',
    name: 'margin-of-a-load',
    summary: 'A clutch that carries half as much again as the engine asks for',
    body: { vehicle: 'lirren-1', want: [{ load: 'clutch-load', atLeast: '1.5' }], routes: 1 },
  },
  {
    operationId: 'inspectVehicle',
    name: 'half-known',
    summary: 'A vehicle of which nobody has looked at what is behind the gearbox',
    body: {
      vehicle: 'hulvane',
      fitted: Object.fromEntries(BEHIND_THE_GEARBOX.map((position) => [position, 'unknown'])),
    },
  },
  {
    operationId: 'driveVehicle',
    name: 'gearbox-alone',
    summary: 'Another gearbox alone: the axles are out of step, and the loads follow',
    body: {
      vehicle: 'lirren-1',
      lines: [{ action: 'add', position: 'gearbox', part: 'gearbox-6-late' }],
      grip: '0.9',
    },
  },
  {
    operationId: 'mateFaces',
    name: 'meet',
    summary: 'A control unit and the plug of a gearbox',
    search: 'a=control-centre&b=gearbox-6-late&b.face=control',
  },
  {
    operationId: 'mateFaces',
    name: 'do-not-meet',
    summary: 'A linkage and a gearbox for another one',
    search: 'a=linkage-cables&a.face=box&b=gearbox-5-early&b.face=linkage',
  },
  {
    operationId: 'mateFaces',
    name: 'in-inches',
    summary: 'A gearbox and a propeller shaft, with all lengths in inches but names of sizes',
    search: 'a=gearbox-6-late&a.face=rear&b=prop-late&b.face=front&units=imperial',
  },
  {
    operationId: 'askMate',
    name: 'written-out',
    summary: 'A linkage and the face of a gearbox that is in no catalogue',
    body: {
      a: { part: 'linkage-cables', interface: 'box' },
      b: {
        inline: {
          kind: 'shift-linkage',
          side: 'gearbox',
          type: 'cables',
          gates: 4,
          reverse: 'left-forward',
          'shift-sense': 'push',
          'gate-sense': 'pull',
          end: 'ball',
          'reverse-lock': 'built-in',
          'shift-travel': '24.0 ±0.5 mm',
        },
      },
    },
  },
  {
    operationId: 'listParts',
    name: 'of-a-role',
    summary: 'The first two gearboxes; `next` leads on',
    search: 'role=gearbox&limit=2',
  },
  {
    operationId: 'listParts',
    name: 'by-number',
    summary: 'A number as somebody typed it',
    search: 'number=cbl%202g6',
  },
  {
    operationId: 'listParts',
    name: 'by-names',
    summary: 'Three names at once: an order code, a number of two parts, and nothing there is',
    search: 'part=sku%3AF-1001&part=44%2F10+077&part=gearbox-9',
  },
  {
    operationId: 'identifyPart',
    name: 'a-few-readings',
    summary: 'A gearbox of which somebody counted the gears and read half a number',
    body: {
      role: 'gearbox',
      numbers: ['CBL-2G-6…'],
      measured: [{ on: { parameter: 'gear-count' }, value: '6', tool: 'count' }],
    },
  },
  {
    operationId: 'identifyPart',
    name: 'face-by-its-kind',
    summary: 'A shaft with a spline, off a vehicle; the others are named',
    body: {
      role: 'rear-half-shaft',
      vehicle: 'lirren-1',
      measured: [{ on: { kind: 'involute-spline', parameter: 'teeth' }, value: '25' }],
      nameExcluded: true,
      limit: 5,
    },
  },
  {
    operationId: 'identifyPart',
    name: 'none-left',
    summary: 'A measure that no part has: what comes nearest',
    body: {
      role: 'flywheel',
      measured: [{ on: { interface: 'clutch', parameter: 'pcd' }, value: '262.5 ±0.2 mm' }],
      limit: 5,
    },
  },
  {
    operationId: 'readPart',
    name: 'control-unit',
    summary: 'A control unit',
    segment: 'control-centre',
  },
  {
    operationId: 'readPart',
    name: 'made-to-length',
    summary: 'A shaft that is made to length, with two faces',
    segment: 'prop-made-one',
  },
  {
    operationId: 'listRoles',
    name: 'first-page',
    summary: 'The first two; `next` leads on',
    search: 'limit=2',
  },
  {
    operationId: 'readRole',
    name: 'gearbox',
    summary: 'What is recorded of a gearbox',
    segment: 'gearbox',
  },
  {
    operationId: 'listKinds',
    name: 'first-page',
    summary: 'The first two; `next` leads on',
    search: 'limit=2',
  },
  {
    operationId: 'readKind',
    name: 'propshaft-flange',
    summary: 'What is compared where a propeller shaft is bolted on',
    segment: 'propshaft-flange',
  },
  {
    operationId: 'listVehicles',
    name: 'make-first',
    summary: 'Nothing is known yet: the make comes first',
    search: 'limit=1',
  },
  {
    operationId: 'listVehicles',
    name: 'which-of-two',
    summary: 'One model, built in a year in which one series took over from the other',
    search: 'make=Corrablyn&model=Lirren&year=2005',
  },
  {
    operationId: 'identifyVehicle',
    name: 'by-number',
    summary: 'A number with one character that nobody could read',
    body: { vin: '0CBLRA*003*000017' },
  },
  {
    operationId: 'identifyVehicle',
    name: 'by-what-is-known',
    summary: 'A number of a model that was built in two series, and the month',
    body: { vin: '0CBGV000050041999', built: '2005-04' },
  },
  {
    operationId: 'readVehicle',
    name: 'gaps-in-the-records',
    summary: 'A vehicle of which some is not recorded',
    segment: 'hulvane',
  },
  {
    operationId: 'readVehicle',
    name: 'told-by-a-fact',
    summary: 'What the works fitted hangs on a fact, and nobody recorded that',
    segment: 'gallivet-4',
  },
  {
    operationId: 'listLayouts',
    name: 'first-page',
    summary: 'The first two; `next` leads on',
    search: 'limit=2',
  },
  {
    operationId: 'readLayout',
    name: 'transverse',
    summary: 'Engine and gearbox across the vehicle',
    segment: 'transverse',
  },
  { operationId: 'listEditions', name: 'one', summary: 'A catalogue that was published once' },
  { operationId: 'readEdition', name: 'latest', summary: 'The newest one', segment: 'latest' },
  {
    operationId: 'listCodes',
    name: 'what-to-order',
    summary: 'Those that say what is to be ordered',
    search: 'group=orders&lang=en',
  },
  {
    operationId: 'listLimits',
    name: 'in-english',
    summary: 'As a server has them that was started with none of its own',
    search: 'lang=en',
  },
  { operationId: 'isLive', name: 'live', summary: 'It lives' },
  { operationId: 'isReady', name: 'ready', summary: 'It can answer' },
];

/** Path and query of an example request. */
export function addressOf(
  { segment, search }: Pick<ExampleRequest, 'segment' | 'search'>,
  { path }: Pick<Operation, 'path'>,
): string {
  const filled = segment === undefined ? path : path.replace(/\{\w+\}/, segment);
  return search === undefined ? filled : `${filled}?${search}`;
}
