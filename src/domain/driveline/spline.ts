/**
 * An involute spline: its diameters by its standard, whether the standard has its module, what its
 * teeth carry and how long they must engage. The formulas are in `spline-geometry.ts`.
 *
 * Left out: fit classes and tolerances, tip relief, crowned, helical and sliding splines.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf, anyOf, type Outcome } from '../check/state.js';
import { PI } from '../quantity/enclosure.js';
import {
  divideIntervals,
  type Interval,
  maximumInterval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { ONE, rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove, within } from './compare.js';
import {
  bearingTimesLength,
  moduleOfPitch,
  modulesOf,
  type Spline,
  type SplineAngle,
  type SplineFamily,
  type SplineRoot,
  shearTimesLength,
  splineDiameters,
} from './spline-geometry.js';

const HALF = rational('1/2');
/** The height of contact in modules: flat roots reach less high than fillet ones. */
const CONTACT = { flat: rational('0.9'), fillet: ONE } as const;

const LENGTH = { type: 'quantity', dimension: 'length', optional: true } as const;
const FACTOR = { type: 'quantity', dimension: '1', optional: true, above: '0' } as const;
const STRESS = {
  type: 'quantity',
  dimension: 'pressure',
  optional: true,
  above: '0 MPa',
} as const;

export const spline = calculation({
  name: 'spline',
  title: { en: 'Involute spline', de: 'Evolventen-Zahnwellenverbindung' },
  about: {
    en: 'Which diameters has this spline, how much torque do its teeth carry, at which length?',
    de: 'Welche Durchmesser hat diese Verzahnung, wie viel Drehmoment trägt sie, wie lang?',
  },
  inputs: {
    family: {
      type: 'code',
      name: { en: 'standard', de: 'Norm' },
      codes: {
        'iso-4156': { en: 'ISO 4156 or ANSI B92.2M, metric', de: 'ISO 4156 oder ANSI B92.2M' },
        'ansi-b92-1': { en: 'ANSI B92.1, inch', de: 'ANSI B92.1, in Zoll' },
        'din-5480': {
          en: 'DIN 5480, by reference diameter',
          de: 'DIN 5480, nach Bezugsdurchmesser',
        },
      },
    },
    teeth: {
      type: 'count',
      least: '6',
      greatest: '200',
      usual: ['10', '60'],
      name: { en: 'teeth', de: 'Zähnezahl' },
    },
    module: {
      ...LENGTH,
      above: '0 mm',
      usual: ['0.5 mm', '3 mm'],
      name: { en: 'module', de: 'Modul' },
    },
    pitch: {
      ...FACTOR,
      usual: ['8', '48'],
      name: {
        en: 'diametral pitch instead of the module, teeth to the inch',
        de: 'Diametral Pitch statt des Moduls, Zähne je Zoll',
      },
    },
    pressureAngle: {
      type: 'code',
      optional: true,
      name: { en: 'pressure angle, 30° if not told', de: 'Eingriffswinkel, sonst 30°' },
      codes: {
        '30': { en: '30 degrees', de: '30°' },
        '37.5': { en: '37.5 degrees', de: '37,5°' },
        '45': { en: '45 degrees', de: '45°' },
      },
    },
    root: {
      type: 'code',
      optional: true,
      name: { en: 'root at 30°, flat if not told', de: 'Zahnfuß bei 30°, sonst flach' },
      codes: {
        flat: { en: 'flat root', de: 'flacher Zahnfuß' },
        fillet: { en: 'fillet root', de: 'ausgerundeter Zahnfuß' },
      },
    },
    referenceDiameter: {
      ...LENGTH,
      above: '0 mm',
      usual: ['10 mm', '80 mm'],
      name: { en: 'reference diameter of DIN 5480', de: 'Bezugsdurchmesser nach DIN 5480' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      optional: true,
      above: '0 N.m',
      usual: ['50 N.m', '6000 N.m'],
      name: { en: 'torque', de: 'Drehmoment' },
    },
    engagedLength: {
      ...LENGTH,
      above: '0 mm',
      usual: ['8 mm', '80 mm'],
      name: { en: 'engaged length', de: 'tragende Länge' },
    },
    endFloat: {
      ...LENGTH,
      least: '0 mm',
      usual: ['0 mm', '5 mm'],
      name: {
        en: 'end float that may be lost of it, else 0',
        de: 'Axialspiel, das davon verloren geht, sonst 0',
      },
    },
    applicationFactor: {
      ...FACTOR,
      usual: ['1.2', '2'],
      name: {
        en: 'application factor Ka by the handbook',
        de: 'Anwendungsfaktor Ka nach dem Handbuch',
      },
    },
    distributionFactor: {
      ...FACTOR,
      usual: ['1', '3'],
      name: {
        en: 'load distribution factor Km by the handbook, else 1',
        de: 'Lastverteilungsfaktor Km nach dem Handbuch, sonst 1',
      },
    },
    lifeFactor: {
      ...FACTOR,
      usual: ['0.2', '2'],
      name: {
        en: 'fatigue life factor Kf by the handbook, else 1',
        de: 'Lebensdauerfaktor Kf nach dem Handbuch, sonst 1',
      },
    },
    allowableShear: {
      ...STRESS,
      usual: ['100 MPa', '400 MPa'],
      name: { en: 'shear stress that the teeth bear', de: 'Schubspannung, die Zähne tragen' },
    },
    allowableBearing: {
      ...STRESS,
      usual: ['5 MPa', '40 MPa'],
      name: { en: 'pressure that the flanks bear', de: 'Pressung, die die Flanken tragen' },
    },
  },
  outputs: {
    pitchDiameter: {
      type: 'quantity',
      dimension: 'length',
      needs: ['module', 'pitch'],
      name: { en: 'pitch diameter', de: 'Teilkreisdurchmesser' },
    },
    shaftMajor: {
      type: 'quantity',
      dimension: 'length',
      needs: ['module', 'pitch'],
      name: { en: 'greatest tip diameter of the shaft', de: 'größter Kopfkreis der Welle' },
    },
    shaftMinor: {
      type: 'quantity',
      dimension: 'length',
      needs: ['module', 'pitch'],
      name: { en: 'greatest root diameter of the shaft', de: 'größter Fußkreis der Welle' },
    },
    hubMajor: {
      type: 'quantity',
      dimension: 'length',
      needs: ['module', 'pitch'],
      name: { en: 'least root diameter of the hub', de: 'kleinster Fußkreis der Nabe' },
    },
    hubMinor: {
      type: 'quantity',
      dimension: 'length',
      needs: ['module', 'pitch'],
      name: { en: 'least tip diameter of the hub', de: 'kleinster Kopfkreis der Nabe' },
    },
    isStandard: {
      type: 'outcome',
      needs: ['module', 'pitch'],
      name: {
        en: 'The standard has this module at this pressure angle.',
        de: 'Die Norm kennt diesen Modul bei diesem Eingriffswinkel.',
      },
    },
    shearStress: {
      type: 'quantity',
      dimension: 'pressure',
      needs: ['module', 'pitch', 'torque', 'engagedLength', 'applicationFactor'],
      name: { en: 'shear stress in the teeth', de: 'Schubspannung in den Zähnen' },
    },
    bearingStress: {
      type: 'quantity',
      dimension: 'pressure',
      needs: ['module', 'pitch', 'torque', 'engagedLength', 'applicationFactor'],
      name: { en: 'pressure on the flanks', de: 'Pressung auf den Flanken' },
    },
    neededLength: {
      type: 'quantity',
      dimension: 'length',
      needs: [
        'module',
        'pitch',
        'torque',
        'applicationFactor',
        'allowableShear',
        'allowableBearing',
      ],
      name: { en: 'length that must engage', de: 'nötige tragende Länge' },
    },
    holds: {
      type: 'outcome',
      needs: [
        'module',
        'pitch',
        'torque',
        'engagedLength',
        'applicationFactor',
        'allowableShear',
        'allowableBearing',
      ],
      name: {
        en: 'The teeth engage for long enough.',
        de: 'Die Zähne tragen auf genügend Länge.',
      },
    },
  },
  formulas: [
    'pitchDiameter = teeth · module,   module = 25.4 / pitch   (mm)',
    'ISO 4156: shaftMajor, shaftMinor, hubMajor = module · (teeth + 1, − 1.5, + 1.5)' +
      '   (30° flat root; − 1.8, + 1.8 with fillet root)',
    'ISO 4156: (+ 0.9, − 1.4, + 1.4) at 37.5° and (+ 0.8, − 1.2, + 1.2) at 45°',
    'ISO 4156: hubMinor = 2 · √((D · cos α / 2)² + (D · sin α / 2 − hs / sin α)²) + 0.2 · module,' +
      '   hs = 0.6, 0.55, 0.5 modules',
    'ANSI B92.1: shaftMajor, hubMinor, hubMajor = (teeth + 1, − 1, + 1.35) / pitch' +
      '   (30° flat root; + 1.8 with fillet root)',
    'DIN 5480: shaftMajor, shaftMinor, hubMajor, hubMinor' +
      ' = referenceDiameter − (0.2, 2.2, 0, 2) · module',
    'length = engagedLength − endFloat',
    'shearStress = 4 · torque · Ka · Km / (pitchDiameter · teeth · length · t · Kf),' +
      '   t = π / 2 · module',
    'bearingStress = 2 · torque · Ka · Km / (pitchDiameter · teeth · length · h · Kf),' +
      '   h = 0.9 · module with flat root, module with fillet root',
    'neededLength = the length at which neither stress is above what is allowed',
  ],
  assumptions: [
    {
      en: 'Half of the teeth carry the shear, as the handbook takes it.',
      de: 'Die Hälfte der Zähne trägt den Schub, wie es das Handbuch annimmt.',
    },
    {
      en: 'Straight teeth, side fit, no deviation of the tooth thickness for a fit class.',
      de: 'Gerade Zähne, Flankenzentrierung, kein Abmaß der Zahndicke für eine Passung.',
    },
  ],
  validity: [
    {
      en: 'Fixed splines only: those that slide under torque bear far less pressure.',
      de: 'Nur für feste Verbindungen: Unter Last gleitende tragen viel weniger Pressung.',
    },
    {
      en: 'Equal teeth and a like diameter do not make two splines fit: the standard must be one.',
      de: 'Gleiche Zähnezahl und ähnlicher Durchmesser genügen nicht: Die Norm muss dieselbe sein.',
    },
    {
      en: 'The shaft below the teeth may give way before they do: look at its root diameter.',
      de: 'Die Welle unter den Zähnen kann eher nachgeben: den Fußkreis auf Torsion prüfen.',
    },
    {
      en: 'Factors and stresses are those of the handbook for the hardness and the duty.',
      de: 'Faktoren und Spannungen nach dem Handbuch für Härte und Einsatz wählen.',
    },
  ],
  sources: [
    { title: 'ISO 4156-1 and ANSI B92.2M, diameters and modules', basis: 'read' },
    { title: 'ISO 4156-1, flank height and form clearance of the hub', basis: 'from-memory' },
    { title: 'ANSI B92.1, diameters', basis: 'read' },
    { title: 'ANSI B92.1 and DIN 5480-1, list of pitches and modules', basis: 'from-memory' },
    { title: 'DIN 5480-1:2006, diameters', basis: 'from-memory' },
    { title: "Machinery's Handbook, shear in the teeth of splines", basis: 'read' },
    {
      title: "Machinery's Handbook, bearing of the flanks and height of contact",
      basis: 'from-memory',
    },
    { title: 'engaged length of one pitch diameter for hard parts', basis: 'common-practice' },
  ],
  warnings: {
    'not-standard': {
      en: 'The standard does not have this module, or may not: it may be one of another standard.',
      de: 'Die Norm kennt diesen Modul nicht oder vielleicht nicht: Es kann eine andere sein.',
    },
    'shaft-root-by-table': {
      en: 'This standard gives the root diameter of the shaft by ranges of pitch: see its table.',
      de: 'Den Fußkreis der Welle gibt diese Norm nach Pitch-Bereichen an: siehe Tabelle.',
    },
    'reference-off': {
      en: 'Teeth, module and reference diameter do not go together: count and measure again.',
      de: 'Zähnezahl, Modul und Bezugsdurchmesser passen nicht zusammen: noch einmal messen.',
    },
    'shorter-than-usual': {
      en: 'It engages, or may engage, on less than the usual length of one pitch diameter.',
      de: 'Sie trägt auf weniger als der üblichen Länge eines Teilkreisdurchmessers oder kann es.',
    },
    'no-factor': {
      en: 'Without an application factor nothing is said of stress: it is 1.2 to 2 in vehicles.',
      de: 'Ohne Anwendungsfaktor keine Spannung: In Fahrzeugen ist er 1,2 bis 2.',
    },
    overloaded: {
      en: 'The teeth bear, or may bear, more than they can.',
      de: 'Die Zähne tragen mehr, als sie können, oder könnten es.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'metric',
      summary: 'A clutch spline of 24 teeth and module 1 that carries 150 N.m',
      given: {
        family: 'iso-4156',
        teeth: 24,
        module: '1 mm',
        pressureAngle: '30',
        root: 'flat',
        torque: '150 N.m',
        engagedLength: '26 mm',
        endFloat: '1 mm',
        applicationFactor: '1.2',
        distributionFactor: '1',
        lifeFactor: '1',
        allowableShear: '275 MPa',
        allowableBearing: '35 MPa',
      },
    },
    {
      name: 'reference-diameter',
      summary: 'A spline that is named by its reference diameter',
      given: { family: 'din-5480', teeth: 38, module: '3 mm', referenceDiameter: '120 mm' },
    },
    {
      name: 'inch',
      summary: 'A spline of 24 teeth and pitch 24/48',
      given: { family: 'ansi-b92-1', teeth: 24, pitch: '24' },
    },
  ],
  calculate: (given) => {
    const shape = shapeOf(given);
    const faults = faultsOf(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    if (shape === null) return { found: {}, warnings: [] };
    const diameters = splineDiameters(shape);
    const isStandard = anyOf(modulesOf(shape).map((one) => within(shape.module, point(one))));
    const carried = carriedBy(shape, diameters.pitch, given);
    return {
      found: {
        pitchDiameter: diameters.pitch,
        shaftMajor: diameters.shaftMajor,
        shaftMinor: diameters.shaftMinor ?? undefined,
        hubMajor: diameters.hubMajor,
        hubMinor: diameters.hubMinor,
        isStandard,
        ...carried.found,
      },
      warnings: [
        ...(isStandard === 'holds' ? [] : ['not-standard']),
        ...(diameters.shaftMinor === null ? ['shaft-root-by-table'] : []),
        ...(isReferenceOff(shape) ? ['reference-off'] : []),
        ...carried.warnings,
      ],
    };
  },
});

interface Told {
  readonly family: SplineFamily;
  readonly teeth: Interval;
  readonly module: Interval | null;
  readonly pitch: Interval | null;
  readonly pressureAngle: SplineAngle | null;
  readonly root: SplineRoot | null;
  readonly referenceDiameter: Interval | null;
  readonly torque: Interval | null;
  readonly engagedLength: Interval | null;
  readonly endFloat: Interval | null;
  readonly applicationFactor: Interval | null;
  readonly distributionFactor: Interval | null;
  readonly lifeFactor: Interval | null;
  readonly allowableShear: Interval | null;
  readonly allowableBearing: Interval | null;
}

function shapeOf(given: Told): Spline | null {
  const module = given.module ?? (given.pitch && moduleOfPitch(given.pitch));
  if (module === null) return null;
  return {
    family: given.family,
    angle: given.pressureAngle ?? '30',
    root: given.root ?? 'flat',
    teeth: given.teeth,
    module,
    reference: given.referenceDiameter,
  };
}

/** Kf stands below the others, and each of them once. */
function factorOf({ applicationFactor, distributionFactor, lifeFactor }: Told): Interval | null {
  if (applicationFactor === null) return null;
  const one = point(ONE);
  const above = multiplyIntervals(applicationFactor, distributionFactor ?? one);
  return divideIntervals(above, lifeFactor ?? one);
}

function carriedBy(shape: Spline, diameter: Interval, given: Told) {
  const { torque, engagedLength, allowableShear, allowableBearing } = given;
  const factor = factorOf(given);
  const length = engagedLength && subtractIntervals(engagedLength, given.endFloat ?? point(ZERO));
  const isShort = length !== null && notAbove(diameter, length) !== 'holds';
  const short = isShort ? ['shorter-than-usual'] : [];
  if (torque === null) return { found: {}, warnings: short };
  if (factor === null) return { found: {}, warnings: [...short, 'no-factor'] };
  const load = { torque, diameter, teeth: shape.teeth, factor };
  const thickness = scaleInterval(multiplyIntervals(PI, shape.module), HALF);
  const height = scaleInterval(shape.module, CONTACT[shape.root]);
  const [shear, bearing] = [shearTimesLength(load, thickness), bearingTimesLength(load, height)];
  const neededLength =
    allowableShear &&
    allowableBearing &&
    maximumInterval(
      divideIntervals(shear, allowableShear),
      divideIntervals(bearing, allowableBearing),
    );
  const holds: Outcome | undefined =
    neededLength && length ? notAbove(neededLength, length) : undefined;
  return {
    found: {
      shearStress: length ? divideIntervals(shear, length) : undefined,
      bearingStress: length ? divideIntervals(bearing, length) : undefined,
      neededLength: neededLength ?? undefined,
      holds,
    },
    warnings: [...short, ...(holds === undefined || holds === 'holds' ? [] : ['overloaded'])],
  };
}

/**
 * How many modules the reference diameter of DIN 5480 is more than the teeth: 1.1 and twice the
 * profile shift, which lies from -0.05 to 0.45 (from memory).
 */
const SHIFT = { least: point(rational('1')), greatest: point(rational('2')) } as const;

function isReferenceOff({ family, teeth, module, reference }: Spline): boolean {
  if (family !== 'din-5480' || reference === null) return false;
  const modules = subtractIntervals(divideIntervals(reference, module), teeth);
  return allOf([notAbove(SHIFT.least, modules), notAbove(modules, SHIFT.greatest)]) === 'fails';
}

function faultsOf(given: Told): GivenFault[] {
  const { family, module, pitch, pressureAngle, referenceDiameter, engagedLength } = given;
  const endFloat = given.endFloat ?? point(ZERO);
  const faults: GivenFault[] = [];
  const say = (input: string, en: string, de: string) => faults.push({ input, text: { en, de } });
  if (module !== null && pitch !== null) {
    say(
      'pitch',
      'Give the module or the pitch, not both.',
      'Den Modul oder den Pitch angeben, nicht beide.',
    );
  }
  if (family === 'din-5480' && referenceDiameter === null) {
    say(
      'referenceDiameter',
      'A spline of DIN 5480 needs its reference diameter.',
      'Eine Verzahnung nach DIN 5480 braucht ihren Bezugsdurchmesser.',
    );
  }
  if (family === 'din-5480' && pressureAngle !== null && pressureAngle !== '30') {
    say('pressureAngle', 'DIN 5480 has 30 degrees only.', 'DIN 5480 kennt nur 30°.');
  }
  if (engagedLength !== null && isBelow(endFloat, engagedLength) !== 'holds') {
    say(
      'endFloat',
      'The end float must be less than the engaged length.',
      'Das Axialspiel muss kleiner sein als die tragende Länge.',
    );
  }
  return faults;
}
