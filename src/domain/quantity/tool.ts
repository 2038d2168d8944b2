/**
 * The workshop's tools: how finely each tells a value.
 *
 * The figures are what a careful person gets on a bench, not what a certificate states: common
 * practice, without a published source. They widen a reading, they never narrow it.
 */

import type { QuantityFault } from './fault.js';
import { quantityFault } from './fault.js';
import type { Rational } from './rational.js';
import { rational } from './rational.js';
import type { Dimension } from './unit.js';
import { nameOf } from './unit.js';

export interface Tool {
  readonly name: string;
  /**
   * `measures`: a reading may be off by the uncertainty. `exact`: it tells one of a list of names,
   * or nothing, so a number read with it is that number. `printed`: somebody else printed the
   * number and may have rounded it or cut it off.
   */
  readonly reading: 'measures' | 'exact' | 'printed';
  /**
   * Half-width of a reading in the base unit, for each dimension that the tool can tell; none for
   * a tool that tells codes alone.
   */
  readonly uncertainty: Readonly<Record<Dimension, Rational>>;
  readonly source: string;
  /** Id of the tool that measures the same things more finely, where there is one. */
  readonly finer?: string;
}

const PRACTICE = 'common practice, no source';
const NONE = rational(0);
/** More of an unknown id would not help the reader. */
const LONGEST_ID = 64;

function lengthTool(name: string, uncertaintyMm: string, finer?: string): Tool {
  return {
    ...(finer === undefined ? {} : { finer }),
    name,
    reading: 'measures',
    uncertainty: { length: rational(uncertaintyMm) },
    source: PRACTICE,
  };
}

/** The known tools by id. */
export const TOOLS: Readonly<Record<string, Tool>> = {
  tape: lengthTool('steel tape', '1'),
  caliper: lengthTool('vernier caliper', '0.05', 'digital-caliper'),
  'digital-caliper': lengthTool('digital caliper', '0.03', 'micrometer'),
  micrometer: lengthTool('micrometer', '0.01'),
  'bore-gauge': lengthTool('three-point bore gauge', '0.01'),
  'depth-gauge': lengthTool('depth gauge', '0.05'),
  'coordinate-machine': lengthTool('coordinate measuring machine', '0.01'),
  'feeler-gauge': lengthTool('feeler gauge', '0.02'),
  'angle-finder': {
    name: 'angle finder',
    reading: 'measures',
    uncertainty: { angle: rational('0.1') },
    source: PRACTICE,
  },
  'pitch-gauge': {
    name: 'thread-pitch gauge',
    reading: 'exact',
    uncertainty: { length: NONE },
    source: PRACTICE,
  },
  'known-mate': {
    name: 'known mating part',
    reading: 'exact',
    uncertainty: { '1': NONE, length: NONE, angle: NONE },
    source: PRACTICE,
  },
  'seat-sample': {
    name: 'seat sample',
    reading: 'exact',
    uncertainty: { length: NONE, angle: NONE },
    source: PRACTICE,
  },
  /** A good hand-held one, at twelve volts: half a per cent. */
  multimeter: {
    name: 'multimeter',
    reading: 'measures',
    uncertainty: { voltage: rational('0.06'), current: rational('0.05') },
    source: PRACTICE,
  },
  'punch-plate': { name: 'punch plate', reading: 'exact', uncertainty: {}, source: PRACTICE },
  loupe: { name: 'loupe', reading: 'exact', uncertainty: {}, source: PRACTICE },
  'wiring-diagram': { name: 'wiring diagram', reading: 'exact', uncertainty: {}, source: PRACTICE },
  /** What a standard has its maker emboss or print in full: a tyre, a rim, a can of fluid. */
  marking: {
    name: 'marking on the part',
    reading: 'exact',
    uncertainty: {
      '1': NONE,
      length: NONE,
      mass: NONE,
      speed: NONE,
      temperature: NONE,
      voltage: NONE,
      current: NONE,
      viscosity: NONE,
    },
    source: PRACTICE,
  },
  'visual-check': { name: 'visual check', reading: 'exact', uncertainty: {}, source: PRACTICE },
  count: { name: 'count', reading: 'exact', uncertainty: { '1': NONE }, source: PRACTICE },
  tag: { name: 'tag or plate', reading: 'printed', uncertainty: { '1': NONE }, source: PRACTICE },
};

/** The tool of an id, or undefined; ids that only look like object members are not tools. */
export function toolOf(id: string): Tool | undefined {
  return Object.hasOwn(TOOLS, id) ? TOOLS[id] : undefined;
}

/**
 * The tool of an id if it can tell values of a dimension, or a fault that names those that can.
 */
export function toolFor(id: string, dimension: Dimension): Tool | QuantityFault {
  const tool = toolOf(id);
  if (tool !== undefined && Object.hasOwn(tool.uncertainty, dimension)) return tool;
  const what = nameOf(dimension);
  const read =
    tool === undefined
      ? `“${id.slice(0, LONGEST_ID)}” is no tool known here.`
      : `${/^[aeiou]/.test(tool.name) ? 'An' : 'A'} ${tool.name} does not tell ${what}.`;
  const suitable = Object.entries(TOOLS)
    .filter(([, each]) => Object.hasOwn(each.uncertainty, dimension))
    .map(([each]) => each);
  const advice =
    suitable.length === 0
      ? `No tool known here tells ${what}: leave the tool out.`
      : `Tools for ${what}: ${suitable.join(', ')}.`;
  return quantityFault('unknown-tool', `${read} ${advice}`);
}
