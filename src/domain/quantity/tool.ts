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

/** By language; each language that is spoken has one. */
export interface ToolName {
  readonly en: string;
  readonly [language: string]: string;
}

export interface Tool {
  readonly name: ToolName;
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

function lengthTool(name: ToolName, uncertaintyMm: string, finer?: string): Tool {
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
  tape: lengthTool({ en: 'steel tape', de: 'Stahlbandmaß' }, '1'),
  caliper: lengthTool(
    { en: 'vernier caliper', de: 'Messschieber mit Nonius' },
    '0.05',
    'digital-caliper',
  ),
  'digital-caliper': lengthTool(
    { en: 'digital caliper', de: 'Digitalmessschieber' },
    '0.03',
    'micrometer',
  ),
  micrometer: lengthTool({ en: 'micrometer', de: 'Messschraube' }, '0.01'),
  'bore-gauge': lengthTool(
    { en: 'three-point bore gauge', de: 'Dreipunkt-Innenmessgerät' },
    '0.01',
  ),
  'depth-gauge': lengthTool({ en: 'depth gauge', de: 'Tiefenmaß' }, '0.05'),
  'coordinate-machine': lengthTool(
    { en: 'coordinate measuring machine', de: 'Koordinatenmessgerät' },
    '0.01',
  ),
  'feeler-gauge': lengthTool({ en: 'feeler gauge', de: 'Fühlerlehre' }, '0.02'),
  'angle-finder': {
    name: { en: 'angle finder', de: 'Winkelmesser' },
    reading: 'measures',
    uncertainty: { angle: rational('0.1') },
    source: PRACTICE,
  },
  'pitch-gauge': {
    name: { en: 'thread-pitch gauge', de: 'Gewindelehre' },
    reading: 'exact',
    uncertainty: { length: NONE },
    source: PRACTICE,
  },
  'known-mate': {
    name: { en: 'known mating part', de: 'Vergleich mit bekanntem Gegenstück' },
    reading: 'exact',
    uncertainty: { '1': NONE, length: NONE, angle: NONE },
    source: PRACTICE,
  },
  'seat-sample': {
    name: { en: 'seat sample', de: 'Sitzmuster' },
    reading: 'exact',
    uncertainty: { length: NONE, angle: NONE },
    source: PRACTICE,
  },
  /** A good hand-held one, at twelve volts: half a per cent. */
  multimeter: {
    name: { en: 'multimeter', de: 'Multimeter' },
    reading: 'measures',
    uncertainty: { voltage: rational('0.06'), current: rational('0.05') },
    source: PRACTICE,
  },
  'punch-plate': {
    name: { en: 'punch plate', de: 'Lochschablone' },
    reading: 'exact',
    uncertainty: {},
    source: PRACTICE,
  },
  loupe: { name: { en: 'loupe', de: 'Lupe' }, reading: 'exact', uncertainty: {}, source: PRACTICE },
  'wiring-diagram': {
    name: { en: 'wiring diagram', de: 'Schaltplan' },
    reading: 'exact',
    uncertainty: {},
    source: PRACTICE,
  },
  /** What a standard has its maker emboss or print in full: a tyre, a rim, a can of fluid. */
  marking: {
    name: { en: 'marking on the part', de: 'Aufschrift am Teil' },
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
  'visual-check': {
    name: { en: 'visual check', de: 'Sichtprüfung' },
    reading: 'exact',
    uncertainty: {},
    source: PRACTICE,
  },
  count: {
    name: { en: 'count', de: 'Zählung' },
    reading: 'exact',
    uncertainty: { '1': NONE },
    source: PRACTICE,
  },
  tag: {
    name: { en: 'tag or plate', de: 'Typenschild oder Anhänger' },
    reading: 'printed',
    uncertainty: { '1': NONE },
    source: PRACTICE,
  },
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
      : `${/^[aeiou]/.test(tool.name.en) ? 'An' : 'A'} ${tool.name.en} does not tell ${what}.`;
  const suitable = Object.entries(TOOLS)
    .filter(([, each]) => Object.hasOwn(each.uncertainty, dimension))
    .map(([each]) => each);
  const advice =
    suitable.length === 0
      ? `No tool known here tells ${what}: leave the tool out.`
      : `Tools for ${what}: ${suitable.join(', ')}.`;
  return quantityFault('unknown-tool', `${read} ${advice}`);
}
