/**
 * Gears, engine speed and road speed: what each gear does, how the gears are stepped, and what
 * another gearbox, axle or tyre changes.
 *
 * A ratio multiplies; a step is one gear over the next, the spread the first over the top gear. The
 * formulas of speed are in `road-speed.ts`. No standard governs this.
 *
 * Left out: slip of tyres and converters, and whether the engine has the power for a speed.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { rootInterval } from '../quantity/enclosure.js';
import {
  divideIntervals,
  type Interval,
  isWithin,
  multiplyIntervals,
  NON_NEGATIVE,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { ONE, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow } from './compare.js';
import { roadSpeed, rotationAt } from './road-speed.js';
import { isTyreFault, toldCircumference } from './told-tyre.js';
import { percentMore } from './tyre-size.js';

/** Each gear over the next one. */
export function gearSteps(gears: readonly Interval[]): readonly Interval[] {
  return gears.slice(1).map((next, index) => divideIntervals(gears[index] ?? next, next));
}

/** The first over the top gear; of a single gear it is 1. */
export function gearSpread(gears: readonly Interval[]): Interval {
  const [first, top] = [gears[0], gears.at(-1)];
  if (first === undefined || top === undefined || gears.length === 1) return point(ONE);
  return divideIntervals(first, top);
}

/** The step with which all would be alike: the root of the spread, by one less than the gears. */
export function geometricStep(gears: readonly Interval[]): Interval {
  const steps = gears.length - 1;
  return steps < 2 ? gearSpread(gears) : rootInterval(gearSpread(gears), steps);
}

const GEARS = { type: 'ratio', most: 12, usual: ['1/2', '6'] } as const;
const AXLE = { type: 'ratio', optional: true, usual: ['5/2', '6'] } as const;
const TYRE = { type: 'text', optional: true, form: '205/55R16' } as const;
const CIRCUMFERENCE = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  usual: ['1500 mm', '2700 mm'],
} as const;
const RATIOS = { type: 'quantity', dimension: '1', decimal: true, list: true } as const;
const RATIO = { type: 'quantity', dimension: '1', decimal: true } as const;
const SPEEDS = { type: 'quantity', dimension: 'speed', list: true } as const;
const TURNS = { type: 'quantity', dimension: 'rotation', list: true } as const;
const AT_ENGINE = ['engineSpeed', 'finalDrive', 'circumference'];
const AT_ROAD = ['roadSpeed', 'finalDrive', 'circumference'];

export const gearing = calculation({
  name: 'gearing',
  title: { en: 'Gears, engine speed and road speed', de: 'Gänge, Drehzahl und Geschwindigkeit' },
  about: {
    en: 'How fast is each gear, how are the gears stepped, and what would others change?',
    de: 'Wie schnell ist jeder Gang, wie sind sie gestuft, und was würden andere ändern?',
  },
  inputs: {
    gears: { ...GEARS, name: { en: 'gears from the first on', de: 'Gänge vom ersten an' } },
    finalDrive: {
      ...AXLE,
      name: { en: 'final drive', de: 'Achsübersetzung' },
    },
    tyre: { ...TYRE, name: { en: 'tyre of the driven wheels', de: 'Reifen der Antriebsräder' } },
    circumference: {
      ...CIRCUMFERENCE,
      name: {
        en: 'rolling circumference, if no tyre is told',
        de: 'Abrollumfang, wenn kein Reifen genannt ist',
      },
    },
    engineSpeed: {
      type: 'quantity',
      dimension: 'rotation',
      optional: true,
      above: '0 rpm',
      usual: ['500 rpm', '12000 rpm'],
      name: { en: 'engine speed', de: 'Motordrehzahl' },
    },
    roadSpeed: {
      type: 'quantity',
      dimension: 'speed',
      optional: true,
      above: '0 km/h',
      usual: ['5 km/h', '350 km/h'],
      name: { en: 'road speed', de: 'Geschwindigkeit' },
    },
    newGears: {
      ...GEARS,
      optional: true,
      name: { en: 'gears afterwards, as before if not told', de: 'Gänge danach, sonst wie zuvor' },
    },
    newFinalDrive: {
      ...AXLE,
      name: {
        en: 'final drive afterwards, as before if not told',
        de: 'Achsübersetzung danach, sonst wie zuvor',
      },
    },
    newTyre: {
      ...TYRE,
      name: { en: 'tyre afterwards, as before if not told', de: 'Reifen danach, sonst wie zuvor' },
    },
    newCircumference: {
      ...CIRCUMFERENCE,
      name: {
        en: 'rolling circumference afterwards, if no tyre is told',
        de: 'Abrollumfang danach, wenn kein Reifen genannt ist',
      },
    },
  },
  outputs: {
    overall: {
      ...RATIOS,
      needs: ['finalDrive'],
      name: { en: 'ratio of gear and final drive', de: 'Übersetzung aus Gang und Achse' },
    },
    steps: { ...RATIOS, name: { en: 'step to the next gear', de: 'Sprung zum nächsten Gang' } },
    spread: { ...RATIO, name: { en: 'spread', de: 'Spreizung' } },
    geometricStep: {
      ...RATIO,
      name: { en: 'step if all were alike', de: 'Sprung, wenn alle gleich wären' },
    },
    roadSpeeds: {
      ...SPEEDS,
      needs: AT_ENGINE,
      name: { en: 'road speed in each gear', de: 'Geschwindigkeit in jedem Gang' },
    },
    engineSpeeds: {
      ...TURNS,
      needs: AT_ROAD,
      name: { en: 'engine speed in each gear', de: 'Motordrehzahl in jedem Gang' },
    },
    shaftSpeed: {
      type: 'quantity',
      dimension: 'rotation',
      needs: AT_ROAD,
      name: { en: 'speed ahead of the final drive', de: 'Drehzahl vor der Achsübersetzung' },
    },
    newOverall: {
      ...RATIOS,
      needs: ['newGears', 'finalDrive'],
      name: { en: 'afterwards: gear and final drive', de: 'danach: Gang und Achse' },
    },
    newSteps: {
      ...RATIOS,
      needs: ['newGears'],
      name: { en: 'afterwards: step to the next gear', de: 'danach: Sprung zum nächsten Gang' },
    },
    newSpread: {
      ...RATIO,
      needs: ['newGears'],
      name: { en: 'afterwards: spread', de: 'danach: Spreizung' },
    },
    newRoadSpeeds: {
      ...SPEEDS,
      needs: ['newGears', ...AT_ENGINE],
      name: {
        en: 'afterwards: road speed in each gear',
        de: 'danach: Geschwindigkeit in jedem Gang',
      },
    },
    newEngineSpeeds: {
      ...TURNS,
      needs: ['newGears', ...AT_ROAD],
      name: {
        en: 'afterwards: engine speed in each gear',
        de: 'danach: Motordrehzahl in jedem Gang',
      },
    },
    topGearChange: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: ['newGears'],
      name: {
        en: 'change of engine speed in top gear, below 0 it turns slower',
        de: 'Änderung der Drehzahl im höchsten Gang, unter 0 dreht er langsamer',
      },
    },
  },
  formulas: [
    'overall = gear · finalDrive',
    'step = gear / next gear;   spread = first gear / top gear',
    'geometricStep = spread ^ (1 / (number of gears − 1))',
    'roadSpeed = engineSpeed · circumference · 0.06 / overall   (km/h, rpm, m)',
    'engineSpeed = roadSpeed · overall / (0.06 · circumference)',
    'shaftSpeed = roadSpeed · finalDrive / (0.06 · circumference)',
    'topGearChange = 100 · (top gear · finalDrive / circumference, after over before, − 1)   (%)',
  ],
  assumptions: [
    {
      en: 'Nothing slips; of a tyre by its name the ETRTO’s rolling circumference is taken.',
      de: 'Ohne Schlupf; ein Reifen nach Namen rollt den Abrollumfang der ETRTO.',
    },
    {
      en: 'What lies between gearbox and final drive is 1:1; else it belongs into the final drive.',
      de: 'Zwischen Getriebe und Achse ist 1:1; sonst gehört es zur Achsübersetzung.',
    },
  ],
  validity: [
    {
      en: 'Tyres slip 1 to 3 % under drive, and makes differ by 1.5 %.',
      de: 'Reifen haben unter Antrieb 1 bis 3 % Schlupf, und Fabrikate weichen um 1,5 % ab.',
    },
    {
      en: 'A speed in a gear is where the engine turns so fast, whether it has the power or not.',
      de: 'Die Geschwindigkeit im Gang gilt für die Drehzahl, ob die Leistung reicht oder nicht.',
    },
  ],
  sources: [
    { title: 'kinematics of gears and wheels', basis: 'arithmetic' },
    { title: 'ETRTO convention, rolling circumference = F x free diameter', basis: 'read' },
    {
      title: 'Naunheimer, Automotive Transmissions: geometric and progressive steps',
      basis: 'from-memory',
    },
    { title: 'slip of 1 to 3 % under drive', basis: 'common-practice' },
  ],
  warnings: {
    'not-falling': {
      en: 'The gears do not fall from one to the next: look at their order.',
      de: 'Die Gänge werden nicht von einem zum nächsten kleiner: Reihenfolge ansehen.',
    },
    'steps-widen': {
      en: 'A later step is wider than the one before: the engine drops further there.',
      de: 'Ein späterer Sprung ist größer als der vorige: Dort fällt die Drehzahl tiefer.',
    },
    'no-slower-engine': {
      en: 'There are more gears, but in the top one the engine does not turn slower.',
      de: 'Es sind mehr Gänge, doch im höchsten dreht der Motor nicht langsamer.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'five-gears-and-six',
      summary: 'A box of five gears and one of six, at 110 km/h and at 6800 rpm',
      given: {
        gears: ['38/11', '35/18', '34/25', '31/32', '14/19'],
        finalDrive: '43/11',
        tyre: '195/60R15',
        engineSpeed: '6800 rpm',
        roadSpeed: '110 km/h',
        newGears: ['40/11', '45/19', '37/22', '39/31', '35/36', '3/4'],
      },
    },
    {
      name: 'another-axle-and-tyre',
      summary: 'The same gears with another final drive and another tyre, rolled out',
      given: {
        gears: ['38/11', '35/18', '34/25', '31/32', '14/19'],
        finalDrive: '43/11',
        circumference: '1876 ±4 mm',
        engineSpeed: '6800 rpm',
        newGears: ['38/11', '35/18', '34/25', '31/32', '14/19'],
        newFinalDrive: '43/12',
        newCircumference: '1927 ±4 mm',
      },
    },
    {
      name: 'another-tyre',
      summary: 'Another tyre alone',
      given: {
        gears: ['38/11', '35/18', '34/25', '31/32', '14/19'],
        finalDrive: '43/11',
        tyre: '195/60R15',
        roadSpeed: '110 km/h',
        newTyre: '205/55R16',
      },
    },
  ],
  calculate: (given) => {
    const rolls = rollingOf(given);
    if ('faults' in rolls) return { found: {}, warnings: [], faults: rolls.faults };
    const { gears, finalDrive } = given;
    const before: Line = { gears, finalDrive, circumference: rolls.before };
    const after = lineAfter(before, given, rolls.after);
    const now = driven(before, given);
    const then = after === null ? undefined : driven(after, given);
    const change = after === null ? undefined : topGearChange(before, after, given);
    return {
      found: {
        ...now,
        shaftSpeed: rotationAhead(given.roadSpeed, rolls.before, finalDrive),
        newOverall: then?.overall,
        newSteps: then?.steps,
        newSpread: then?.spread,
        newRoadSpeeds: then?.roadSpeeds,
        newEngineSpeeds: then?.engineSpeeds,
        topGearChange: change,
      },
      warnings: warningsOf(before, after, change),
    };
  },
});

interface Line {
  readonly gears: readonly Interval[];
  readonly finalDrive: Interval | null;
  readonly circumference: Interval | null;
}

interface Asked {
  readonly engineSpeed: Interval | null;
  readonly roadSpeed: Interval | null;
}

interface Changed {
  readonly newGears: readonly Interval[] | null;
  readonly newFinalDrive: Interval | null;
  readonly newTyre: string | null;
  readonly newCircumference: Interval | null;
}

function driven(
  { gears, finalDrive, circumference }: Line,
  { engineSpeed, roadSpeed: speed }: Asked,
) {
  const overall =
    finalDrive === null ? undefined : gears.map((gear) => multiplyIntervals(gear, finalDrive));
  const each = (given: Interval | null, formula: typeof roadSpeed) =>
    given === null || circumference === null
      ? undefined
      : overall?.map((one) => formula(given, one, circumference));
  return {
    overall,
    // A single gear has none.
    steps: gears.length > 1 ? gearSteps(gears) : undefined,
    spread: gearSpread(gears),
    geometricStep: geometricStep(gears),
    roadSpeeds: each(engineSpeed, roadSpeed),
    engineSpeeds: each(speed, rotationAt),
  };
}

function rotationAhead(
  speed: Interval | null,
  circumference: Interval | null,
  ratio: Interval | null,
): Interval | undefined {
  if (speed === null || circumference === null || ratio === null) return undefined;
  return rotationAt(speed, ratio, circumference);
}

function lineAfter(before: Line, given: Changed, circumference: Interval | null): Line | null {
  const { newGears, newFinalDrive, newTyre, newCircumference } = given;
  const isChanged = [newGears, newFinalDrive, newTyre, newCircumference].some(
    (one) => one !== null,
  );
  if (!isChanged) return null;
  return {
    gears: newGears ?? before.gears,
    finalDrive: newFinalDrive ?? before.finalDrive,
    circumference: circumference ?? before.circumference,
  };
}

/** What stays as it was cancels, so that only what changes makes the result a set. */
function topGearChange(before: Line, after: Line, given: Changed): Interval {
  const [was, becomes] = [before.gears.at(-1), after.gears.at(-1)];
  const factors = [
    given.newGears === null ? null : ([becomes, was] as const),
    given.newFinalDrive === null ? null : ([after.finalDrive, before.finalDrive] as const),
    given.newTyre === null && given.newCircumference === null
      ? null
      : ([before.circumference, after.circumference] as const),
  ];
  const whole = factors.reduce<Interval>((product, factor) => {
    const [over, under] = factor ?? [];
    return over && under ? multiplyIntervals(product, divideIntervals(over, under)) : product;
  }, point(ONE));
  return percentMore(whole, point(ONE));
}

type Rolling =
  | { readonly faults: readonly GivenFault[] }
  | { readonly before: Interval | null; readonly after: Interval | null };

interface Tyres extends Changed {
  readonly finalDrive: Interval | null;
  readonly tyre: string | null;
  readonly circumference: Interval | null;
}

function rollingOf(given: Tyres): Rolling {
  const before = toldCircumference(
    { tyre: 'tyre', circumference: 'circumference' },
    { tyre: given.tyre, measured: given.circumference },
  );
  const after = toldCircumference(
    { tyre: 'newTyre', circumference: 'newCircumference' },
    { tyre: given.newTyre, measured: given.newCircumference },
  );
  const faults = [before, after].flatMap((one) => (isTyreFault(one) ? [one] : []));
  if (given.newFinalDrive !== null && given.finalDrive === null) {
    faults.push(withoutFormer('finalDrive'));
  }
  if (after !== null && before === null) faults.push(withoutFormer('tyre'));
  if (faults.length > 0 || isTyreFault(before) || isTyreFault(after)) return { faults };
  return { before, after };
}

function withoutFormer(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'What it is afterwards is told: tell what it was before as well.',
      de: 'Genannt ist, was danach ist: auch nennen, was zuvor war.',
    },
  };
}

/** By how much a step may be wider than the one before without anybody feeling it. */
const UNFELT = rational('1.02');

function warningsOf(before: Line, after: Line | null, change: Interval | undefined): string[] {
  const lines = after === null ? [before] : [before, after];
  const isNotFalling = lines.some(({ gears }) =>
    gears.some((gear, index) => index > 0 && isBelow(gear, gears[index - 1] ?? gear) !== 'holds'),
  );
  const isWidening = lines.some(({ gears }) => {
    const steps = gearSteps(gears);
    return steps.some((step, index) => {
      const felt = scaleInterval(steps[index - 1] ?? step, UNFELT);
      return index > 0 && isBelow(felt, step) === 'holds';
    });
  });
  const isNoSlower =
    after !== null &&
    change !== undefined &&
    after.gears.length > before.gears.length &&
    isWithin(change, NON_NEGATIVE);
  return [
    ...(isNotFalling ? ['not-falling'] : []),
    ...(isWidening ? ['steps-widen'] : []),
    ...(isNoSlower ? ['no-slower-engine'] : []),
  ];
}
