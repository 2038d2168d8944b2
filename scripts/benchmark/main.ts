/**
 * `kit` measures the solver of kits against general solvers, all in one process and in turns, on
 * the same instances; `fits` the lists of what fits what against the judge; `stream` a batch
 * against a plain loop; `http` the service against a bare server. Any disagreement ends it with
 * exit code 1; a floor that was missed does only with --strict.
 */

import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type ConflictResult, conflictCells, measuredConflicts } from './conflict-cells.js';
import { measuredDemo } from './demo-question.js';
import { measureFits } from './fits.js';
import { floorsOf, httpFloors, streamFloors } from './floors.js';
import { type HttpExtent, measuredHttp } from './http.js';
import { loadedHighs, type Opponent, yalps } from './opponents.js';
import { type CellResult, type Extent, measuredCell, optimumCells } from './optimum-cells.js';
import * as report from './report.js';
import { measuredRoutes, type RouteResult, routeCells } from './route-cells.js';
import { measuredStreams, type StreamExtent } from './stream.js';

const USAGE = `Usage: scripts/bench kit|stream|http [--quick] [--json FILE] [--strict]
       scripts/bench fits [--quick]

  --quick      fewer cells and seeds, within a minute
  --json FILE  writes all figures there too
  --strict     exit code 1 where a floor is missed`;

const FULL: Extent = { seeds: 7, rounds: 3, seconds: 2 };
const QUICK: Extent = { seeds: 2, rounds: 2, seconds: 0.2 };
/** How long an opponent may take for ten routes. */
const ROUTES_FULL: Extent = { seeds: 3, rounds: 3, seconds: 10 };
const ROUTES_QUICK: Extent = { seeds: 2, rounds: 1, seconds: 1.5 };
/** How long an opponent may take for one proof. */
const CONFLICTS_FULL: Extent = { seeds: 5, rounds: 3, seconds: 4 };
const CONFLICTS_QUICK: Extent = { seeds: 2, rounds: 3, seconds: 1 };

const STREAM_FULL: StreamExtent = { lines: 200_000, rounds: 9 };
const STREAM_QUICK: StreamExtent = { lines: 50_000, rounds: 5 };

const HTTP_FULL: HttpExtent = { seconds: 5, rounds: 5 };
const HTTP_QUICK: HttpExtent = { seconds: 2, rounds: 3 };

interface BenchOptions {
  readonly quick: boolean;
  readonly strict: boolean;
  readonly json?: string;
}

async function kit(options: BenchOptions): Promise<boolean> {
  const { quick } = options;
  const machine = report.machine();
  const say = (line: string) => process.stdout.write(`${line}\n`);
  say(report.machineLine(machine));
  const highs = await loadedHighs();
  const opponents = new Map<string, Opponent>([
    ['YALPS', yalps],
    // It comes to an end where the other does not, and is given the time.
    ['HiGHS', (model, seconds) => highs(model, 20 * seconds)],
  ]);
  const demo = measuredDemo(quick ? 3 : 15);
  warmUp(opponents);

  say(`\n${report.CELL_HEAD}`);
  const cells: CellResult[] = [];
  for (const cell of optimumCells().filter(({ isQuick }) => isQuick || !quick)) {
    const result = measuredCell(cell, quick ? QUICK : FULL, opponents);
    cells.push(result);
    say(report.cellLine(result));
  }
  say(`\n${report.ROUTE_HEAD}`);
  const routes: RouteResult[] = [];
  for (const cell of routeCells().filter(({ isQuick }) => isQuick || !quick)) {
    const result = measuredRoutes(cell, quick ? ROUTES_QUICK : ROUTES_FULL, highs);
    routes.push(result);
    say(report.routeLine(result));
  }
  say(`\n${report.CONFLICT_HEAD}`);
  const conflicts: ConflictResult[] = [];
  for (const cell of conflictCells().filter(({ isQuick }) => isQuick || !quick)) {
    const result = measuredConflicts(cell, quick ? CONFLICTS_QUICK : CONFLICTS_FULL, highs);
    conflicts.push(result);
    say(report.conflictLine(result));
  }
  say(`\n${report.DEMO_HEAD}`);
  for (const one of demo) say(report.demoLine(one));

  const mismatches = [...cells, ...routes, ...conflicts].flatMap((result) => result.mismatches);
  const floors = floorsOf(cells, routes, conflicts);
  say('');
  for (const floor of floors) say(report.floorLine(floor));
  say(
    `load at the end ${report
      .machine()
      .load.map((one) => one.toFixed(1))
      .join(' ')}`,
  );
  say(mismatches.length === 0 ? 'All answers agree.' : `They disagree:\n${mismatches.join('\n')}`);
  if (options.json !== undefined) {
    const all = { machine, cells, routes, conflicts, demo, floors, mismatches };
    writeFileSync(options.json, `${JSON.stringify(all, null, 2)}\n`);
  }
  const areKept = floors.every(({ isKept }) => isKept);
  return mismatches.length === 0 && (areKept || !options.strict);
}

/** The lists of what fits what against the judge. */
function fits(options: BenchOptions): boolean {
  const say = (line: string) => process.stdout.write(`${line}\n`);
  say(report.machineLine(report.machine()));
  return measureFits(options.quick, say);
}

/** A batch of fit questions against a plain loop. */
async function stream(options: BenchOptions): Promise<boolean> {
  const machine = report.machine();
  const say = (line: string) => process.stdout.write(`${line}\n`);
  say(report.machineLine(machine));
  const { streams, judged } = await measuredStreams(options.quick ? STREAM_QUICK : STREAM_FULL);
  say(`\n${report.STREAM_HEAD}`);
  for (const one of streams) say(report.streamLine(one));
  say(`\n${report.judgedLine(judged)}`);
  const mismatches = streams.flatMap((one) => one.mismatches);
  const floors = streamFloors(streams);
  for (const floor of floors) say(report.floorLine(floor));
  say(mismatches.length === 0 ? 'All answers agree.' : `They disagree:\n${mismatches.join('\n')}`);
  if (options.json !== undefined) {
    const all = { machine, streams, judged, floors, mismatches };
    writeFileSync(options.json, `${JSON.stringify(all, null, 2)}\n`);
  }
  const areKept = floors.every(({ isKept }) => isKept);
  return mismatches.length === 0 && (areKept || !options.strict);
}

/** The service over HTTP against a server that looks at nothing. */
async function http(options: BenchOptions): Promise<boolean> {
  const machine = report.machine();
  const say = (line: string) => process.stdout.write(`${line}\n`);
  say(report.machineLine(machine));
  const results = await measuredHttp(options.quick ? HTTP_QUICK : HTTP_FULL);
  say(`\n${report.HTTP_HEAD}`);
  for (const one of results) say(report.httpLine(one));
  const mismatches = results.flatMap((one) => one.mismatches);
  const floors = httpFloors(results);
  say('');
  for (const floor of floors) say(report.floorLine(floor));
  say(mismatches.length === 0 ? 'All were answered.' : mismatches.join('\n'));
  if (options.json !== undefined) {
    const all = { machine, results, floors, mismatches };
    writeFileSync(options.json, `${JSON.stringify(all, null, 2)}\n`);
  }
  const areKept = floors.every(({ isKept }) => isKept);
  return mismatches.length === 0 && (areKept || !options.strict);
}

/** So that the first cell does not pay for compiling what all of them use. */
function warmUp(opponents: ReadonlyMap<string, Opponent>): void {
  for (const cell of optimumCells().filter(({ isQuick }) => isQuick)) {
    measuredCell(cell, { seeds: 2, rounds: 2, seconds: 0.2 }, new Map());
  }
  const [first] = optimumCells();
  if (first !== undefined) measuredCell(first, { seeds: 5, rounds: 2, seconds: 0.2 }, opponents);
}

const { values, positionals } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    strict: { type: 'boolean', default: false },
    json: { type: 'string' },
    help: { type: 'boolean', short: 'h', default: false },
  },
  allowPositionals: true,
});
const { json } = values;
const bench = new Map<string, (options: BenchOptions) => boolean | Promise<boolean>>([
  ['kit', kit],
  ['fits', fits],
  ['stream', stream],
  ['http', http],
]).get(positionals.join());
if (values.help) process.stdout.write(`${USAGE}\n`);
else if (bench === undefined) {
  process.stderr.write(`${USAGE}\n`);
  process.exitCode = 2;
} else if (!(await bench({ ...values, ...(json === undefined ? {} : { json }) }))) {
  process.exitCode = 1;
}
