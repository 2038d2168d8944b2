/**
 * A tyre by its designation: sizes, how far it rolls, what it bears and how fast it may run.
 * The formulas are in `tyre-size.ts`, the tables in `tyre-tables.ts`.
 *
 * Left out: pressure, tread, age, and whatever only the maker of the tyre or its list knows.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import { closed, type Interval, point, scaleInterval } from '../quantity/interval.js';
import { negate, type Rational, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove, within } from './compare.js';
import {
  freeDiameter,
  percentMore,
  type RimMillimetres,
  readTyre,
  rollingCircumference,
  rollingFactor,
  rollingRadius,
  sectionHeight,
  type TyreSize,
  tyreFault,
} from './tyre-size.js';
import { fullLoadSpeedOf, loadOf, type SpeedSymbol, speedOf } from './tyre-tables.js';

/** By how many per cent what rolls may change before brake and stability control must be asked. */
const ACCEPTED_CHANGE = rational(3);

const SPAN = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  usual: ['3 in', '14 in'],
} as const;

export const tyre = calculation({
  name: 'tyre',
  title: { en: 'Tyre by its designation', de: 'Reifen nach seiner Bezeichnung' },
  about: {
    en: 'How large is this tyre, how far does it roll, and what does it bear?',
    de: 'Wie groß ist dieser Reifen, wie weit rollt er, und was trägt er?',
  },
  inputs: {
    designation: {
      type: 'text',
      form: '205/55R16 91V',
      name: { en: 'designation on the side wall', de: 'Bezeichnung auf der Seitenwand' },
    },
    rimDiameter: {
      type: 'code',
      optional: true,
      name: {
        en: 'how the rim code becomes millimetres, by the inch if not told',
        de: 'wie aus der Felgenkennzahl Millimeter werden, sonst nach Zoll',
      },
      codes: {
        inch: { en: '25.4 mm for each of it', de: '25,4 mm je Einheit' },
        whole: { en: 'whole millimetres, as in UN R30', de: 'ganze Millimeter wie in UN-R 30' },
      },
    },
    wear: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      least: '0 mm',
      greatest: '20 mm',
      usual: ['0 mm', '7 mm'],
      name: { en: 'tread worn off, none if not told', de: 'abgefahrenes Profil, sonst keines' },
    },
    loadIndex: {
      type: 'count',
      optional: true,
      least: '50',
      greatest: '126',
      name: {
        en: 'load index, where the designation has none',
        de: 'Lastindex, wenn die Bezeichnung keinen hat',
      },
    },
    speedSymbol: {
      type: 'code',
      optional: true,
      name: {
        en: 'speed symbol, where the designation has none',
        de: 'Geschwindigkeitssymbol, wenn die Bezeichnung keines hat',
      },
      codes: {
        L: { en: 'L, 120 km/h', de: 'L: 120 km/h' },
        M: { en: 'M, 130 km/h', de: 'M: 130 km/h' },
        N: { en: 'N, 140 km/h', de: 'N: 140 km/h' },
        P: { en: 'P, 150 km/h', de: 'P: 150 km/h' },
        Q: { en: 'Q, 160 km/h', de: 'Q: 160 km/h' },
        R: { en: 'R, 170 km/h', de: 'R: 170 km/h' },
        S: { en: 'S, 180 km/h', de: 'S: 180 km/h' },
        T: { en: 'T, 190 km/h', de: 'T: 190 km/h' },
        U: { en: 'U, 200 km/h', de: 'U: 200 km/h' },
        H: { en: 'H, 210 km/h', de: 'H: 210 km/h' },
        V: { en: 'V, 240 km/h', de: 'V: 240 km/h' },
        W: { en: 'W, 270 km/h', de: 'W: 270 km/h' },
        Y: { en: 'Y, 300 km/h', de: 'Y: 300 km/h' },
      },
    },
    axleLoad: {
      type: 'quantity',
      dimension: 'mass',
      optional: true,
      above: '0 kg',
      usual: ['300 kg', '2000 kg'],
      name: { en: 'greatest load of the axle', de: 'zulässige Achslast' },
    },
    topSpeed: {
      type: 'quantity',
      dimension: 'speed',
      optional: true,
      above: '0 km/h',
      usual: ['80 km/h', '330 km/h'],
      name: { en: 'top speed of the vehicle', de: 'Höchstgeschwindigkeit des Fahrzeugs' },
    },
    rimWidth: { ...SPAN, name: { en: 'width of the rim', de: 'Maulweite der Felge' } },
    narrowestRim: {
      ...SPAN,
      name: {
        en: 'narrowest rim by the list of the tyre',
        de: 'schmalste Felge laut Liste des Reifens',
      },
    },
    widestRim: {
      ...SPAN,
      name: {
        en: 'widest rim by the list of the tyre',
        de: 'breiteste Felge laut Liste des Reifens',
      },
    },
    formerTyre: {
      type: 'text',
      optional: true,
      form: '195/65R15',
      name: { en: 'tyre that it takes the place of', de: 'Reifen, den er ersetzt' },
    },
  },
  outputs: {
    written: {
      type: 'text',
      name: { en: 'as the standards write it', de: 'in der Schreibweise der Normen' },
    },
    construction: {
      type: 'code',
      name: { en: 'construction', de: 'Bauart' },
      codes: {
        radial: { en: 'radial', de: 'Radialreifen' },
        bias: { en: 'bias-ply', de: 'Diagonalreifen' },
        'bias-belted': { en: 'bias-belted', de: 'Diagonal-Gürtelreifen' },
      },
    },
    sectionWidth: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'section width', de: 'Querschnittsbreite' },
    },
    sectionHeight: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'section height when new', de: 'Querschnittshöhe im Neuzustand' },
    },
    freeDiameter: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'free diameter', de: 'Außendurchmesser' },
    },
    rollingFactor: {
      type: 'quantity',
      dimension: '1',
      decimal: true,
      name: { en: 'factor F of this construction', de: 'Faktor F dieser Bauart' },
    },
    rollingCircumference: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'rolling circumference', de: 'Abrollumfang' },
    },
    rollingRadius: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'rolling radius', de: 'dynamischer Halbmesser' },
    },
    load: {
      type: 'quantity',
      dimension: 'mass',
      needs: ['loadIndex'],
      name: { en: 'load of one tyre', de: 'Tragfähigkeit eines Reifens' },
    },
    speed: {
      type: 'quantity',
      dimension: 'speed',
      needs: ['speedSymbol'],
      name: { en: 'speed of the tyre', de: 'Geschwindigkeit des Reifens' },
    },
    carriesAxle: {
      type: 'outcome',
      needs: ['loadIndex', 'axleLoad'],
      name: { en: 'Two of them carry the axle.', de: 'Zwei davon tragen die Achse.' },
    },
    ratedForSpeed: {
      type: 'outcome',
      needs: ['speedSymbol', 'topSpeed'],
      name: {
        en: 'The vehicle is not faster than the tyre may run.',
        de: 'Das Fahrzeug ist nicht schneller, als der Reifen laufen darf.',
      },
    },
    rimFits: {
      type: 'outcome',
      needs: ['rimWidth', 'narrowestRim', 'widestRim'],
      name: {
        en: 'The rim is as wide as the tyre may have it.',
        de: 'Die Felge ist so breit, wie der Reifen sie haben darf.',
      },
    },
    circumferenceChange: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: ['formerTyre'],
      name: {
        en: 'how much further it rolls than the former tyre',
        de: 'wie viel weiter er rollt als der ersetzte',
      },
    },
    changeAccepted: {
      type: 'outcome',
      needs: ['formerTyre'],
      name: {
        en: 'That is within the 3 % that brake and stability control usually accept.',
        de: 'Das liegt in den 3 %, die Brems- und Stabilitätsregelung meist hinnehmen.',
      },
    },
  },
  formulas: [
    'sectionHeight = sectionWidth · aspect ratio / 100',
    'freeDiameter = 25.4 · rim code + 2 · sectionHeight − 2 · wear   (mm; 16 may count as 406)',
    'rollingCircumference = rollingFactor · freeDiameter   (3.05 radial, 2.99 bias)',
    'rollingRadius = rollingCircumference / 2π',
    'axleLoad ≤ 2 · load',
    'circumferenceChange = 100 · (rollingCircumference / that of formerTyre when new − 1)   (%)',
  ],
  assumptions: [
    {
      en: 'The tyre is as large as its name; a rim seat is a hair smaller than 25.4 mm by code.',
      de: 'Der Reifen ist so groß wie sein Name; ein Felgensitz ist einen Hauch kleiner.',
    },
    {
      en: 'It rolls under its greatest load, at the rated pressure and 60 km/h.',
      de: 'Er rollt unter größter Last, mit Nenndruck und bei 60 km/h.',
    },
  ],
  validity: [
    {
      en: 'Tyres of different makes differ by 1.5 % to either side: rolling one out beats this.',
      de: 'Fabrikate weichen um 1,5 % nach oben und unten ab: Abrollen ist genauer.',
    },
    {
      en: 'A load index holds at the pressure of the standard; the maker of the vehicle says more.',
      de: 'Der Lastindex gilt beim Druck der Norm; mehr sagt der Fahrzeughersteller.',
    },
    {
      en: 'Not for light-truck and commercial sizes, which have tables of their own.',
      de: 'Nicht für Größen von Transportern und Lkw, die eigene Tabellen haben.',
    },
    {
      en: 'Approved sizes, tread and axle mixes are for local rules to decide.',
      de: 'Freigaben, Profil und Mischbereifung bestimmen die Vorschriften am Ort.',
    },
  ],
  sources: [
    { title: 'ISO 4000-1, designation, load index and speed symbol', basis: 'from-memory' },
    { title: 'ETRTO convention, rolling circumference = F x free diameter', basis: 'read' },
    { title: 'UN Regulation 30, rim diameters in whole millimetres', basis: 'from-memory' },
    {
      title: 'change of circumference within 3 %; 1.5 % between makes; two tyres to an axle',
      basis: 'common-practice',
    },
  ],
  warnings: {
    'bears-less-when-fast': {
      en: 'At such a speed the tyre bears less than its index says: ask its maker.',
      de: 'So schnell trägt der Reifen weniger, als sein Index sagt: den Hersteller fragen.',
    },
    'speed-of-maker': {
      en: 'Above its marking only the maker of the tyre can say how fast it may run.',
      de: 'Über die Kennzeichnung hinaus kann nur der Hersteller sagen, wie schnell er darf.',
    },
    'other-rim-code': {
      en: 'The former tyre sits on a rim of another code: wheels and brakes come into it.',
      de: 'Der ersetzte Reifen sitzt auf einer anderen Felge: Rad und Bremse gehören dazu.',
    },
    'not-radial': {
      en: 'Bias and radial tyres steer and roll differently: never mix them on a vehicle.',
      de: 'Diagonal- und Radialreifen lenken und rollen verschieden: nie am Fahrzeug mischen.',
    },
  },
  caution: 'wheels',
  examples: [
    {
      name: 'side-wall',
      summary: 'A tyre as it stands on its side wall, on an axle of 1100 kg',
      given: { designation: '205/55 R16 91V', axleLoad: '1100 kg', topSpeed: '215 km/h' },
    },
    {
      name: 'another-size',
      summary: 'A wider tyre in place of another, on a rim of 7 inches, with 2 mm worn off',
      given: {
        designation: '225/50ZR16',
        rimDiameter: 'whole',
        wear: '2 mm',
        loadIndex: 92,
        speedSymbol: 'W',
        formerTyre: '205/55R16',
        rimWidth: '7 in',
        narrowestRim: '6 in',
        widestRim: '8 in',
      },
    },
  ],
  calculate: (given) => {
    const { designation, rimDiameter, wear, formerTyre } = given;
    const size = readTyre(designation);
    if (size === null) return refused(tyreFault('designation', designation));
    const former = formerTyre === null ? null : readTyre(formerTyre);
    if (formerTyre !== null && former === null) return refused(tyreFault('formerTyre', formerTyre));
    const faults = faultsOf(size, given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const by = rimDiameter ?? 'inch';
    const diameter = freeDiameter(size, { worn: wear ?? point(rational(0)), by });
    const circumference = rollingCircumference(diameter, size.construction);
    const service = serviceOf(size, given);
    const change = former === null ? undefined : percentMore(circumference, newOne(former, by));
    return {
      found: {
        written: size.text,
        construction: size.construction,
        sectionWidth: point(size.width),
        sectionHeight: point(sectionHeight(size)),
        freeDiameter: diameter,
        rollingFactor: point(rollingFactor(size.construction)),
        rollingCircumference: circumference,
        rollingRadius: rollingRadius(circumference),
        ...service.found,
        rimFits: rimFits(given),
        circumferenceChange: change,
        changeAccepted: change && within(change, aroundNothing(ACCEPTED_CHANGE)),
      },
      warnings: [...service.warnings, ...warningsOf(size, former)],
    };
  },
});

function refused(fault: GivenFault) {
  return { found: {}, warnings: [], faults: [fault] };
}

function newOne(size: TyreSize, by: RimMillimetres): Interval {
  return rollingCircumference(freeDiameter(size, { by }), size.construction);
}

function aroundNothing(limit: Rational): Interval {
  return closed(negate(limit), limit);
}

function warningsOf(size: TyreSize, former: TyreSize | null): string[] {
  const otherRim = former !== null && !former.rimCode.equals(size.rimCode);
  return [
    ...(size.construction === 'radial' ? [] : ['not-radial']),
    ...(otherRim ? ['other-rim-code'] : []),
  ];
}

interface Service {
  readonly loadIndex: Interval | null;
  readonly speedSymbol: SpeedSymbol | null;
  readonly axleLoad: Interval | null;
  readonly topSpeed: Interval | null;
}

function serviceOf(size: TyreSize, given: Service) {
  const { axleLoad, topSpeed } = given;
  const index = size.loadIndex ?? indexOf(given.loadIndex);
  const symbol = size.speedSymbol ?? given.speedSymbol;
  const one = index === null ? null : loadOf(index);
  const load = one === null ? undefined : point(one);
  const speed = speedOfTyre(size, given.speedSymbol);
  const isFast =
    symbol !== null &&
    topSpeed !== null &&
    notAbove(topSpeed, point(fullLoadSpeedOf(symbol))) !== 'holds';
  return {
    found: {
      load,
      speed: speed ?? undefined,
      carriesAxle:
        load && axleLoad ? notAbove(axleLoad, scaleInterval(load, rational(2))) : undefined,
      ratedForSpeed: speed && topSpeed ? ratedFor(topSpeed, speed) : undefined,
    },
    warnings: [
      ...(isFast ? ['bears-less-when-fast'] : []),
      ...(speed?.high === null ? ['speed-of-maker'] : []),
    ],
  };
}

function indexOf(told: Interval | null): number | null {
  const { low } = told ?? { low: null };
  return low === null ? null : low.valueOf();
}

/** A symbol that is told goes before the bare ZR of a designation, which only says above 240. */
function speedOfTyre(size: TyreSize, told: SpeedSymbol | null): Interval | null {
  if (size.speedSymbol === null && told !== null) return speedOf(told);
  return size.speed;
}

/** Open where the tyre is faster than its marking can say, and the vehicle too. */
function ratedFor(topSpeed: Interval, speed: Interval): Outcome {
  const { low } = speed;
  if (speed.high !== null || low === null) return notAbove(topSpeed, speed);
  return notAbove(topSpeed, point(low)) === 'holds' ? 'holds' : 'open';
}

interface Rim {
  readonly rimWidth: Interval | null;
  readonly narrowestRim: Interval | null;
  readonly widestRim: Interval | null;
}

function rimFits({ rimWidth, narrowestRim, widestRim }: Rim): Outcome | undefined {
  if (rimWidth === null || narrowestRim === null || widestRim === null) return undefined;
  return allOf([notAbove(narrowestRim, rimWidth), notAbove(rimWidth, widestRim)]);
}

function faultsOf(size: TyreSize, given: Service & Rim): GivenFault[] {
  const { narrowestRim, widestRim, loadIndex, speedSymbol } = given;
  const isBackwards =
    narrowestRim !== null && widestRim !== null && notAbove(narrowestRim, widestRim) === 'fails';
  const otherIndex =
    size.loadIndex !== null && loadIndex !== null && indexOf(loadIndex) !== size.loadIndex;
  const otherSymbol =
    size.speedSymbol !== null && speedSymbol !== null && speedSymbol !== size.speedSymbol;
  return [
    ...(isBackwards ? [BACKWARDS] : []),
    ...(otherIndex ? [contradiction('loadIndex', String(size.loadIndex))] : []),
    ...(otherSymbol ? [contradiction('speedSymbol', size.speedSymbol)] : []),
  ];
}

const BACKWARDS: GivenFault = {
  input: 'widestRim',
  text: {
    en: 'The widest rim is narrower than the narrowest.',
    de: 'Die breiteste Felge ist schmaler als die schmalste.',
  },
};

function contradiction(input: string, written: string): GivenFault {
  return {
    input,
    text: {
      en: `The designation already says ${written}.`,
      de: `In der Bezeichnung steht schon ${written}.`,
    },
  };
}
