/**
 * How far a hydraulic clutch release moves its bearing, and how hard the pedal is.
 *
 * The pedal moves the master piston, its oil moves the slave, and a fork or, with a concentric
 * slave, nothing more moves the bearing. A push bearing goes towards the engine, a pull bearing
 * towards the gearbox, so the travel has a sign. Both ends matter: too little does not release,
 * too much bends the diaphragm spring beyond what it bears. No standard governs this; it is
 * geometry of pistons and levers.
 *
 * Left out: hoses that swell, air in the oil, play in pivots, the curve of the spring's force.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf } from '../check/state.js';
import {
  divideIntervals,
  type Interval,
  isWithin,
  maximumInterval,
  multiplyIntervals,
  negateInterval,
  POSITIVE,
  point,
  powerInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { ONE, rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove } from './compare.js';

export interface Hydraulics {
  /** In mm, as all diameters here. */
  readonly master: Interval;
  readonly slave: Interval;
  /** Of the bore in a ring-shaped piston; 0 of a plain one. */
  readonly slaveInner: Interval;
}

/** How many times smaller the area of the master is: that much less does the slave travel. */
export function areaRatio({ master, slave, slaveInner }: Hydraulics): Interval {
  const ring = subtractIntervals(powerInterval(slave, 2), powerInterval(slaveInner, 2));
  return divideIntervals(ring, powerInterval(master, 2));
}

export interface Pedal {
  /** In mm. */
  readonly travel: Interval;
  readonly freePlay: Interval;
  /** Travel of the pedal to that of the master piston. */
  readonly ratio: Interval;
}

/** In mm. A pedal that has no more than its play moves nothing. */
export function slaveTravel({ travel, freePlay, ratio }: Pedal, hydraulics: Hydraulics): Interval {
  const used = maximumInterval(subtractIntervals(travel, freePlay), point(ZERO));
  return divideIntervals(divideIntervals(used, ratio), areaRatio(hydraulics));
}

/** In mm; `forkRatio` is the travel of the slave to that of the bearing. */
export function bearingTravel(slave: Interval, forkRatio: Interval): Interval {
  return divideIntervals(slave, forkRatio);
}

/** What the pedal takes for a load at the bearing, both in N. */
export function pedalForce(
  load: Interval,
  hydraulics: Hydraulics,
  levers: {
    readonly forkRatio: Interval;
    readonly pedalRatio: Interval;
    readonly efficiency: Interval;
  },
): Interval {
  const gain = [levers.pedalRatio, areaRatio(hydraulics), levers.efficiency].reduce(
    multiplyIntervals,
    levers.forkRatio,
  );
  return divideIntervals(load, gain);
}

/** What the bearing of each type travels as a rule, in mm: common practice. */
export const USUAL_TRAVEL = {
  push: { least: point(rational(7)), greatest: point(rational(10)) },
  pull: { least: point(rational(6)), greatest: point(rational(9)) },
} as const;

/** The force at the pedal that is still common, in N: common practice. */
export const USUAL_PEDAL = point(rational(150));

const DIAMETER = { type: 'quantity', dimension: 'length', above: '0 mm' } as const;
const TRAVEL = { type: 'quantity', dimension: 'length', least: '0 mm' } as const;

export const clutchRelease = calculation({
  name: 'clutch-release',
  title: { en: 'Hydraulic clutch release', de: 'Hydraulische Kupplungsausrückung' },
  about: {
    en: 'How far do the pedal and its cylinders move the release bearing, and is that right?',
    de: 'Wie weit bewegen Pedal und Zylinder das Ausrücklager, und passt das?',
  },
  inputs: {
    type: {
      type: 'code',
      name: { en: 'type of release', de: 'Art der Ausrückung' },
      codes: {
        push: { en: 'push, towards the engine', de: 'gedrückt, zum Motor hin' },
        pull: { en: 'pull, towards the gearbox', de: 'gezogen, zum Getriebe hin' },
      },
    },
    pedalTravel: {
      ...TRAVEL,
      above: '0 mm',
      usual: ['90 mm', '180 mm'],
      name: { en: 'travel of the pedal pad', de: 'Weg der Pedalplatte' },
    },
    freePlay: {
      ...TRAVEL,
      optional: true,
      usual: ['2 mm', '20 mm'],
      name: { en: 'free play at the pedal pad, else 0', de: 'Leerweg am Pedal, sonst 0' },
    },
    pedalRatio: {
      type: 'ratio',
      above: '0',
      usual: ['4', '7'],
      name: { en: 'pedal ratio', de: 'Pedalübersetzung' },
    },
    masterDiameter: {
      ...DIAMETER,
      usual: ['14 mm', '26 mm'],
      name: { en: 'bore of the master cylinder', de: 'Bohrung des Geberzylinders' },
    },
    slaveDiameter: {
      ...DIAMETER,
      usual: ['15 mm', '70 mm'],
      name: {
        en: 'bore of the slave cylinder, or outer diameter of a concentric one',
        de: 'Bohrung des Nehmerzylinders, oder Außendurchmesser eines Zentralausrückers',
      },
    },
    slaveInnerDiameter: {
      ...DIAMETER,
      optional: true,
      usual: ['25 mm', '50 mm'],
      name: {
        en: 'inner diameter of a concentric slave',
        de: 'Innendurchmesser eines Zentralausrückers',
      },
    },
    forkRatio: {
      type: 'ratio',
      optional: true,
      above: '0',
      usual: ['1', '3'],
      name: {
        en: 'fork ratio, slave travel to bearing travel, 1 if not told',
        de: 'Gabelübersetzung, Weg des Nehmers zu dem des Lagers, sonst 1',
      },
    },
    leastTravel: {
      ...TRAVEL,
      optional: true,
      usual: ['4 mm', '12 mm'],
      name: {
        en: 'bearing travel that releases, as its maker says, else 7 mm push and 6 mm pull',
        de: 'Lagerweg zum Trennen nach Hersteller, sonst gedrückt 7 mm, gezogen 6 mm',
      },
    },
    greatestTravel: {
      ...TRAVEL,
      optional: true,
      usual: ['6 mm', '16 mm'],
      name: {
        en: 'bearing travel that the spring still bears, else 10 mm push and 9 mm pull',
        de: 'Lagerweg, den die Feder noch verträgt, sonst gedrückt 10 mm, gezogen 9 mm',
      },
    },
    releaseLoad: {
      type: 'quantity',
      dimension: 'force',
      optional: true,
      above: '0 N',
      usual: ['800 N', '3500 N'],
      name: { en: 'greatest load at the bearing', de: 'größte Kraft am Ausrücklager' },
    },
    efficiency: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.7', '0.95'],
      name: {
        en: 'efficiency from the pedal to the bearing, else 1',
        de: 'Wirkungsgrad vom Pedal zum Lager, sonst 1',
      },
    },
  },
  outputs: {
    slaveTravel: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'travel of the slave piston', de: 'Weg des Nehmerkolbens' },
    },
    bearingTravel: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'travel of the release bearing', de: 'Weg des Ausrücklagers' },
    },
    towardsGearbox: {
      type: 'quantity',
      dimension: 'length',
      name: {
        en: 'the same, towards the gearbox counted as positive',
        de: 'derselbe, zum Getriebe hin positiv gezählt',
      },
    },
    releases: {
      type: 'outcome',
      name: {
        en: 'The bearing travels far enough to release the clutch.',
        de: 'Das Lager geht weit genug, um die Kupplung zu trennen.',
      },
    },
    spares: {
      type: 'outcome',
      name: {
        en: 'It does not travel so far that the diaphragm spring suffers.',
        de: 'Es geht nicht so weit, dass die Membranfeder leidet.',
      },
    },
    fits: {
      type: 'outcome',
      name: { en: 'Both ends of the travel are right.', de: 'Beide Enden des Wegs stimmen.' },
    },
    pedalForce: {
      type: 'quantity',
      dimension: 'force',
      needs: ['releaseLoad'],
      name: { en: 'force at the pedal', de: 'Kraft am Pedal' },
    },
    isLight: {
      type: 'outcome',
      needs: ['releaseLoad'],
      name: {
        en: 'The pedal takes no more than 150 N.',
        de: 'Das Pedal braucht höchstens 150 N.',
      },
    },
  },
  formulas: [
    'areaRatio = (slaveDiameter² − slaveInnerDiameter²) / masterDiameter²',
    'slaveTravel = (pedalTravel − freePlay) / pedalRatio / areaRatio',
    'bearingTravel = slaveTravel / forkRatio',
    'towardsGearbox = bearingTravel   (pull)   or   −bearingTravel   (push)',
    'pedalForce = releaseLoad / (pedalRatio · areaRatio · forkRatio · efficiency)',
  ],
  assumptions: [
    {
      en: 'Oil without air, hoses that do not swell, pivots without play.',
      de: 'Öl ohne Luft, Schläuche, die nicht nachgeben, Lagerstellen ohne Spiel.',
    },
    {
      en: 'The ratios of pedal and fork are the same all the way.',
      de: 'Die Übersetzungen von Pedal und Gabel sind auf dem ganzen Weg gleich.',
    },
  ],
  validity: [
    {
      en: 'Cover, bearing and fork are all push or all pull: no adapter turns one into the other.',
      de: 'Druckplatte, Lager und Gabel sind alle gedrückt oder alle gezogen: kein Adapter hilft.',
    },
    {
      en: 'A little is lost in a real system: measure the travel at the bearing.',
      de: 'Im wirklichen System geht etwas verloren: den Weg am Lager messen.',
    },
    {
      en: 'The travel that the maker of the cover states counts before the usual one.',
      de: 'Der Weg, den der Hersteller der Druckplatte nennt, gilt vor dem üblichen.',
    },
  ],
  sources: [
    { title: 'geometry of pistons and levers', basis: 'arithmetic' },
    {
      title: 'bearing travel of 7 to 10 mm push and 6 to 9 mm pull, pedal force up to 150 N',
      basis: 'common-practice',
    },
  ],
  warnings: {
    'too-little-travel': {
      en: 'The clutch does not release, or may not: gears will grate.',
      de: 'Die Kupplung trennt nicht oder vielleicht nicht: Die Gänge werden kratzen.',
    },
    'too-much-travel': {
      en: 'The bearing goes, or may go, too far: set a stop at the pedal, or the spring suffers.',
      de: 'Das Lager geht zu weit oder kann es: Pedalanschlag setzen, sonst leidet die Feder.',
    },
    'usual-travel': {
      en: 'The limits of the travel are partly the usual ones: ask the maker of the cover.',
      de: 'Die Grenzen des Wegs sind zum Teil die üblichen: den Hersteller der Druckplatte fragen.',
    },
    'no-travel-left': {
      en: 'The free play takes, or may take, all of the pedal travel.',
      de: 'Der Leerweg frisst den ganzen Pedalweg oder kann es.',
    },
    'heavy-pedal': {
      en: 'The pedal takes, or may take, more than is common.',
      de: 'Das Pedal geht schwerer als üblich oder kann es.',
    },
    'no-fork': {
      en: 'No fork ratio is told, so the bearing goes as far as the slave.',
      de: 'Keine Gabelübersetzung ist gesagt: Das Lager geht so weit wie der Nehmer.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'fork',
      summary: 'A push bearing moved by a fork',
      given: {
        type: 'push',
        pedalTravel: '130 mm',
        freePlay: '5 mm',
        pedalRatio: '6/1',
        masterDiameter: '19.05 mm',
        slaveDiameter: '22.2 mm',
        forkRatio: '8/5',
        leastTravel: '7.5 mm',
        greatestTravel: '10 mm',
        releaseLoad: '1600 N',
        efficiency: '0.85',
      },
    },
    {
      name: 'concentric',
      summary: 'A concentric slave with measured diameters',
      given: {
        type: 'push',
        pedalTravel: '140 ±2 mm',
        pedalRatio: '6/1',
        masterDiameter: '19.05 mm',
        slaveDiameter: '47.6 ±0.1 mm',
        slaveInnerDiameter: '36.5 ±0.1 mm',
      },
    },
  ],
  calculate: (given) => {
    const hydraulics = hydraulicsOf(given);
    const faults = faultsOf(given, hydraulics);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const { type, leastTravel, greatestTravel, releaseLoad } = given;
    const pedal = {
      travel: given.pedalTravel,
      freePlay: given.freePlay ?? point(ZERO),
      ratio: given.pedalRatio,
    };
    const forkRatio = given.forkRatio ?? point(ONE);
    const slave = slaveTravel(pedal, hydraulics);
    const bearing = bearingTravel(slave, forkRatio);
    const releases = notAbove(leastTravel ?? USUAL_TRAVEL[type].least, bearing);
    const spares = notAbove(bearing, greatestTravel ?? USUAL_TRAVEL[type].greatest);
    const levers = {
      forkRatio,
      pedalRatio: given.pedalRatio,
      efficiency: given.efficiency ?? point(ONE),
    };
    const force = releaseLoad === null ? undefined : pedalForce(releaseLoad, hydraulics, levers);
    const isLight = force && notAbove(force, USUAL_PEDAL);
    const left = subtractIntervals(pedal.travel, pedal.freePlay);
    const isPlain = given.slaveInnerDiameter === null && given.forkRatio === null;
    return {
      found: {
        slaveTravel: slave,
        bearingTravel: bearing,
        towardsGearbox: type === 'pull' ? bearing : negateInterval(bearing),
        releases,
        spares,
        fits: allOf([releases, spares]),
        pedalForce: force,
        isLight,
      },
      warnings: [
        ...(isWithin(left, POSITIVE) ? [] : ['no-travel-left']),
        ...(releases === 'holds' ? [] : ['too-little-travel']),
        ...(spares === 'holds' ? [] : ['too-much-travel']),
        ...(leastTravel === null || greatestTravel === null ? ['usual-travel'] : []),
        ...(isLight === undefined || isLight === 'holds' ? [] : ['heavy-pedal']),
        ...(isPlain ? ['no-fork'] : []),
      ],
    };
  },
});

interface Told {
  readonly masterDiameter: Interval;
  readonly slaveDiameter: Interval;
  readonly slaveInnerDiameter: Interval | null;
  readonly leastTravel: Interval | null;
  readonly greatestTravel: Interval | null;
}

function hydraulicsOf({ masterDiameter, slaveDiameter, slaveInnerDiameter }: Told): Hydraulics {
  return {
    master: masterDiameter,
    slave: slaveDiameter,
    slaveInner: slaveInnerDiameter ?? point(ZERO),
  };
}

function faultsOf({ leastTravel, greatestTravel }: Told, hydraulics: Hydraulics): GivenFault[] {
  const ring = {
    input: 'slaveInnerDiameter',
    text: {
      en: 'The inner diameter of the slave must be smaller than the outer one.',
      de: 'Der Innendurchmesser des Nehmers muss kleiner sein als der äußere.',
    },
  };
  const ends = {
    input: 'greatestTravel',
    text: {
      en: 'The greatest travel must be at least the least one.',
      de: 'Der größte Weg muss mindestens so groß sein wie der kleinste.',
    },
  };
  const isRing = isWithin(areaRatio(hydraulics), POSITIVE);
  const isOrdered =
    leastTravel === null ||
    greatestTravel === null ||
    notAbove(leastTravel, greatestTravel) !== 'fails';
  return [...(isRing ? [] : [ring]), ...(isOrdered ? [] : [ends])];
}
