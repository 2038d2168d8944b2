/** The tables that the benchmark prints, and what it says of the machine it ran on. */

import { readFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import type { ConflictResult } from './conflict-cells.js';
import type { DemoResult } from './demo-question.js';
import type { Floor } from './floors.js';
import type { HttpResult } from './http.js';
import type { Times } from './measured.js';
import type { CellResult } from './optimum-cells.js';
import type { RouteResult } from './route-cells.js';
import type { JudgedResult, StreamResult } from './stream.js';

const WIDTHS = [38, 15, 14, 9, 17, 7, 15, 6, 22, 8, 8, 7, 6];

export interface Machine {
  readonly processor: string;
  readonly cores: number;
  readonly load: readonly number[];
  readonly node: string;
  readonly packages: Readonly<Record<string, string>>;
}

export function machine(): Machine {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  const { version, devDependencies } = JSON.parse(text) as {
    version: string;
    devDependencies: Record<string, string>;
  };
  const { yalps = '', highs = '' } = devDependencies;
  return {
    processor: cpus()[0]?.model.trim() ?? 'not known',
    cores: cpus().length,
    load: loadavg(),
    node: process.version,
    packages: { faying: version, yalps, highs },
  };
}

export function machineLine({ processor, cores, load, node, packages }: Machine): string {
  const versions = Object.entries(packages).map(([name, version]) => `${name} ${version}`);
  const busy = load.map((one) => one.toFixed(1)).join(' ');
  return `${processor}, ${cores} cores, load ${busy}; Node ${node}; ${versions.join(', ')}`;
}

export const CELL_HEAD = row([
  'least cost',
  'own ms (max)',
  'collapse',
  'cold',
  'YALPS',
  '/own',
  'HiGHS',
  '/own',
  'agree',
  'none',
  'cells',
  'branch',
  'width',
]);

export function cellLine(result: CellResult): string {
  const { cell, own, collapse, cold, opponents, infeasible } = result;
  const yalps = opponents.find(({ name }) => name === 'YALPS');
  const highs = opponents.find(({ name }) => name === 'HiGHS');
  const of = (one: typeof yalps) =>
    one === undefined
      ? ['', '']
      : [`${one.gaveUp > 0 ? '>' : ''}${times(one.times)}`, one.ratio.toFixed(1)];
  const agreed = opponents.reduce((sum, one) => sum + one.agreed, 0);
  const gaveUp = opponents.reduce((sum, one) => sum + one.gaveUp, 0);
  const total = agreed + result.mismatches.length;
  return row([
    cell.name,
    times(own),
    collapse.toFixed(2),
    cold.toFixed(2),
    ...of(yalps),
    ...of(highs),
    `${agreed}/${total}${gaveUp > 0 ? ` (${gaveUp} gave up)` : ''}`,
    String(infeasible),
    String(result.cells),
    String(result.branches),
    String(result.width),
  ]);
}

export const ROUTE_HEAD = row([
  'first ten routes',
  'first ms (max)',
  'ten ms (max)',
  'cold',
  'HiGHS',
  '/own',
  '',
  '',
  'agree',
  'found',
  'steps',
  'cut',
]);

export function routeLine(result: RouteResult): string {
  const { cell, first, ten, cold, highs, found, steps, cut } = result;
  const [least, most] = found;
  const theirs =
    highs === null
      ? ['', '']
      : [`${highs.unfinished > 0 ? '>' : ''}${times(highs.times)}`, highs.ratio.toFixed(0)];
  const agreed = highs === null ? '' : `${highs.agreed}/${highs.agreed + result.mismatches.length}`;
  const unfinished = highs !== null && highs.unfinished > 0 ? ` (${highs.unfinished} partly)` : '';
  return row([
    cell.name,
    times(first),
    times(ten),
    cold.toFixed(1),
    ...theirs,
    '',
    '',
    `${agreed}${unfinished}`,
    least === most ? String(most) : `${least} to ${most}`,
    String(steps),
    String(cut),
  ]);
}

export const CONFLICT_HEAD = row([
  'conflicts',
  'none ms (max)',
  'why ms (max)',
  'HiGHS',
  'none ms',
  '/own',
  'least ms',
  '/own',
  'agree',
  'solves',
  'steps',
  'all',
  'size',
]);

export function conflictLine(result: ConflictResult): string {
  const { cell, proof, why, highs, possible, cut, solves, proofSteps, whySteps } = result;
  const { agreed, gaveUp } = highs;
  const besides = [
    ...(gaveUp > 0 ? [`${gaveUp} gave up`] : []),
    ...(possible > 0 ? [`${possible} have a way`] : []),
    ...(cut > 0 ? [`${cut} cut`] : []),
  ];
  const total = agreed + result.mismatches.length;
  return row([
    cell.name,
    times(proof),
    times(why),
    '',
    times(highs.proof),
    highs.proofRatio.toFixed(1),
    times(highs.least),
    highs.leastRatio.toFixed(1),
    `${agreed}/${total}${besides.length > 0 ? ` (${besides.join(', ')})` : ''}`,
    String(solves[0]),
    String(proofSteps[0]),
    String(whySteps[0]),
    `${span(result.conflictSize)}/${span(result.correctionSize)}`,
  ]);
}

function span([least, most]: readonly [number, number]): string {
  return least === most ? String(most) : `${least}-${most}`;
}

export const DEMO_HEAD = row([
  'demo: gearbox-6-late on lirren-1',
  'warm ms (max)',
  'cold ms',
  'routes',
  'steps',
  'asked',
  'relations',
  'complete',
]);

export function demoLine({ name, warm, cold, routes, ...counts }: DemoResult): string {
  const { steps, asked, relations, isComplete } = counts;
  const numbers = [routes, steps, asked, relations].map(String);
  return row([name, times(warm), cold.toFixed(1), ...numbers, isComplete ? 'yes' : 'no']);
}

export const HTTP_HEAD = row(['over HTTP', 'own /s', 'raw /s', 'ratio', 'bytes']);

export function httpLine({ name, own, raw, ratio, bytes }: HttpResult): string {
  return row([name, own.toFixed(0), raw.toFixed(0), ratio.toFixed(2), String(bytes)]);
}

export const STREAM_HEAD = row([
  'a batch, lines a second',
  'own',
  'least',
  'most',
  'plain loop',
  'least',
  'most',
  'ratio',
]);

export function streamLine({ name, lines, own, plain, ratio }: StreamResult): string {
  const rates = [own, plain].flatMap(({ median, least, most }) => [median, least, most]);
  const written = rates.map((rate) => `${(rate / 1000).toFixed(0)}k`);
  return row([`${name}, ${lines} lines`, ...written, ratio.toFixed(2)]);
}

export function judgedLine({ pairs, perSecond }: JudgedResult): string {
  return `Asked for the first time: ${perSecond.toFixed(0)} lines a second (${pairs} pairs).`;
}

export function floorLine({ name, measured, where, floor, isAtLeast, isKept }: Floor): string {
  const verdict = (isKept ? 'kept' : 'MISSED').padEnd(7);
  const limit = `${isAtLeast ? '>=' : '<='} ${floor.toFixed(2)}`;
  return `${verdict}${name}: ${measured.toFixed(2)} (${where}), ${limit}`;
}

function times({ median, max }: Times): string {
  return `${brief(median)} (${brief(max)})`;
}

function brief(ms: number): string {
  return ms >= 100 ? ms.toFixed(0) : ms.toFixed(ms >= 10 ? 1 : 2);
}

function row(fields: readonly string[]): string {
  const padded = fields.map((field, at) =>
    at === 0 ? field.padEnd(WIDTHS[0] ?? 0) : field.padStart(WIDTHS[at] ?? 0),
  );
  return padded.join(' ').trimEnd();
}
