/**
 * A speedometer: whether what it shows is in the band of UN Regulation 39, and what it shows after
 * tyres or what drives it have changed.
 *
 * Paragraph 5.3: what is shown is never below the true speed, and above it by at most a tenth of
 * that and 4 km/h. The band is a rule for type approval, and local rules say what it means for a
 * vehicle in use. What drives the speedometer turns with the wheels: smaller tyres and a shorter
 * driven ratio make it show more.
 *
 * Left out: the face of the instrument, its markings, and electronics that correct what they get.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { ONE, rational } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { notAbove } from './compare.js';
import { isTyreFault, toldCircumference } from './told-tyre.js';
import { percentMore } from './tyre-size.js';

/** Of the true speed, and km/h besides: UN Regulation 39, paragraph 5.3. */
const MOST_SHARE = rational('1.1');
const MOST_MORE = rational(4);

/** The most that may be shown at a true speed, in km/h. */
export function mostShown(trueSpeed: Interval): Interval {
  return addIntervals(scaleInterval(trueSpeed, MOST_SHARE), point(MOST_MORE));
}

/** Whether what is shown lies in the band. */
export function isInBand(shown: Interval, trueSpeed: Interval): Outcome {
  return allOf([notAbove(trueSpeed, shown), notAbove(shown, mostShown(trueSpeed))]);
}

export interface Change {
  /** Rolling circumference before over after. */
  readonly tyres: Interval;
  /** Driven ratio after over before. */
  readonly ratios: Interval;
}

/** What is shown at a speed at which so much was shown before. */
export function shownAfter(shown: Interval, { tyres, ratios }: Change): Interval {
  return multiplyIntervals(shown, multiplyIntervals(tyres, ratios));
}

const SPEED = { type: 'quantity', dimension: 'speed', most: 8 } as const;
const TYRE = { type: 'text', optional: true, form: '205/55R16' } as const;
const CIRCUMFERENCE = {
  type: 'quantity',
  dimension: 'length',
  optional: true,
  above: '0 mm',
  usual: ['1500 mm', '2700 mm'],
} as const;
const RATIO = { type: 'ratio', optional: true, usual: ['1/2', '8'] } as const;
const CHANGES = ['newTyre'];
const FINDINGS = {
  within: { en: 'within the band', de: 'im Bereich' },
  'under-reads': { en: 'it shows less than the true speed', de: 'sie zeigt weniger als gefahren' },
  'over-reads': { en: 'it shows too much', de: 'sie zeigt zu viel' },
  undecided: { en: 'what is given leaves it open', de: 'die Angaben lassen es offen' },
} as const;

type Finding = keyof typeof FINDINGS;

export const speedometer = calculation({
  name: 'speedometer',
  title: { en: 'Speedometer', de: 'Geschwindigkeitsanzeige' },
  about: {
    en: 'Does the speedometer show what UN Regulation 39 asks, also after a change?',
    de: 'Zeigt die Geschwindigkeitsanzeige, was UN-Regelung 39 verlangt, auch nach einem Umbau?',
  },
  inputs: {
    trueSpeed: {
      ...SPEED,
      above: '0 km/h',
      usual: ['20 km/h', '250 km/h'],
      name: { en: 'true speed', de: 'gefahrene Geschwindigkeit' },
    },
    shownSpeed: {
      ...SPEED,
      optional: true,
      least: '0 km/h',
      name: {
        en: 'what is shown at each of them, before the change',
        de: 'was jeweils angezeigt wird, vor dem Umbau',
      },
    },
    tyre: { ...TYRE, name: { en: 'tyre before', de: 'Reifen zuvor' } },
    circumference: {
      ...CIRCUMFERENCE,
      name: {
        en: 'rolling circumference before, if no tyre is told',
        de: 'Abrollumfang zuvor, wenn kein Reifen genannt ist',
      },
    },
    newTyre: { ...TYRE, name: { en: 'tyre afterwards', de: 'Reifen danach' } },
    newCircumference: {
      ...CIRCUMFERENCE,
      name: {
        en: 'rolling circumference afterwards, if no tyre is told',
        de: 'Abrollumfang danach, wenn kein Reifen genannt ist',
      },
    },
    drivenRatio: {
      ...RATIO,
      name: {
        en: 'ratio from the speedometer’s drive to the wheels before',
        de: 'Übersetzung vom Tachoantrieb zu den Rädern zuvor',
      },
    },
    newDrivenRatio: {
      ...RATIO,
      name: {
        en: 'ratio from the speedometer’s drive to the wheels afterwards',
        de: 'Übersetzung vom Tachoantrieb zu den Rädern danach',
      },
    },
  },
  outputs: {
    leastShown: {
      type: 'quantity',
      dimension: 'speed',
      list: true,
      name: { en: 'least that may be shown', de: 'kleinste zulässige Anzeige' },
    },
    mostShown: {
      type: 'quantity',
      dimension: 'speed',
      list: true,
      name: { en: 'most that may be shown', de: 'größte zulässige Anzeige' },
    },
    isInBand: {
      type: 'outcome',
      needs: ['shownSpeed'],
      name: {
        en: 'What is shown lies in the band at every speed.',
        de: 'Die Anzeige liegt bei jeder Geschwindigkeit im Bereich.',
      },
    },
    finding: {
      type: 'code',
      needs: ['shownSpeed'],
      codes: FINDINGS,
      name: { en: 'what it comes to', de: 'Befund' },
    },
    changeOfShown: {
      type: 'quantity',
      dimension: '1',
      percent: true,
      needs: CHANGES,
      name: { en: 'how much more is shown afterwards', de: 'wie viel mehr danach angezeigt wird' },
    },
    shownAfter: {
      type: 'quantity',
      dimension: 'speed',
      list: true,
      needs: ['shownSpeed', ...CHANGES],
      name: { en: 'shown afterwards', de: 'Anzeige danach' },
    },
    isInBandAfter: {
      type: 'outcome',
      needs: ['shownSpeed', ...CHANGES],
      name: {
        en: 'Afterwards, too, what is shown lies in the band at every speed.',
        de: 'Auch danach liegt die Anzeige bei jeder Geschwindigkeit im Bereich.',
      },
    },
    findingAfter: {
      type: 'code',
      needs: ['shownSpeed', ...CHANGES],
      codes: FINDINGS,
      name: { en: 'what it comes to afterwards', de: 'Befund danach' },
    },
  },
  formulas: [
    'leastShown = trueSpeed',
    'mostShown = 1.1 · trueSpeed + 4 km/h',
    'shownAfter = shownSpeed · (circumference / newCircumference) · (newDrivenRatio / drivenRatio)',
  ],
  assumptions: [
    {
      en: 'What drives the speedometer turns with the wheels, and nothing corrects what it shows.',
      de: 'Der Tachoantrieb dreht mit den Rädern, und nichts korrigiert die Anzeige.',
    },
    {
      en: 'Of tyres and driven ratio, what is not told stays as it is.',
      de: 'Von Reifen und Tachoantrieb bleibt, was nicht genannt ist, wie es ist.',
    },
  ],
  validity: [
    {
      en: 'The band is a rule for type approval: what holds in use, local rules decide.',
      de: 'Der Bereich gilt für die Typgenehmigung: Für den Betrieb gilt das Recht am Ort.',
    },
    {
      en: 'It is tested at 40, 80 and 120 km/h (from memory), on the tyres of the maker.',
      de: 'Geprüft wird bei 40, 80 und 120 km/h (aus dem Gedächtnis), mit Reifen ab Werk.',
    },
    {
      en: 'A true speed comes of distance and time; a tyre by its name is up to 1.5 % off.',
      de: 'Wahr ist, was Weg und Zeit ergeben; ein Reifen nach Namen weicht bis 1,5 % ab.',
    },
  ],
  sources: [
    { title: 'UN Regulation 39, 5.3', basis: 'read' },
    { title: 'turns of a wheel over a way', basis: 'arithmetic' },
    { title: 'ETRTO convention, rolling circumference = F x free diameter', basis: 'read' },
  ],
  warnings: {
    'shows-too-little': {
      en: 'It shows, or may show, less than the true speed: have it corrected before it drives.',
      de: 'Sie zeigt zu wenig oder vielleicht zu wenig: vor der Fahrt richtigstellen lassen.',
    },
    'shows-too-little-after': {
      en: 'After the change it shows, or may show, less than the true speed: adapt its drive.',
      de: 'Nach dem Umbau zeigt sie vielleicht oder sicher zu wenig: Tachoantrieb anpassen.',
    },
    'measured-beside-computed': {
      en: 'One tyre is measured and one computed by its name: 1.5 % may come of that alone.',
      de: 'Ein Reifen ist gemessen, einer nach dem Namen gerechnet: Das allein macht bis 1,5 %.',
    },
  },
  caution: 'electrical',
  examples: [
    {
      name: 'larger-tyres',
      summary: 'A speedometer before and after larger tyres',
      given: {
        trueSpeed: ['50 km/h', '100 km/h'],
        shownSpeed: ['52 km/h', '104 km/h'],
        tyre: '195/60R15',
        newTyre: '205/55R16',
      },
    },
    {
      name: 'another-axle',
      summary: 'Another final drive behind the speedometer’s drive, tyres as rolled out',
      given: {
        trueSpeed: ['60 mph'],
        shownSpeed: ['62 ±1 mph'],
        circumference: '1876 ±4 mm',
        newCircumference: '1927 ±4 mm',
        drivenRatio: '43/11',
        newDrivenRatio: '43/12',
      },
    },
  ],
  calculate: (given) => {
    const { trueSpeed, shownSpeed } = given;
    const change = changeOf(given);
    const faults = [...('faults' in change ? change.faults : []), ...lengthFaults(given)];
    if ('faults' in change || faults.length > 0) return { found: {}, warnings: [], faults };
    const before = shownSpeed === null ? undefined : judged(shownSpeed, trueSpeed);
    const factor = change.is;
    const shown =
      shownSpeed === null || factor === null
        ? undefined
        : shownSpeed.map((one) => shownAfter(one, factor));
    const after = shown && judged(shown, trueSpeed);
    return {
      found: {
        leastShown: trueSpeed,
        mostShown: trueSpeed.map(mostShown),
        isInBand: before?.outcome,
        finding: before?.finding,
        changeOfShown:
          factor === null
            ? undefined
            : percentMore(multiplyIntervals(factor.tyres, factor.ratios), point(ONE)),
        shownAfter: shown,
        isInBandAfter: after?.outcome,
        findingAfter: after?.finding,
      },
      warnings: [
        ...(before?.mayShowLess ? ['shows-too-little'] : []),
        ...(after?.mayShowLess ? ['shows-too-little-after'] : []),
        ...(change.isMixed ? ['measured-beside-computed'] : []),
      ],
    };
  },
});

interface Judged {
  readonly outcome: Outcome;
  readonly finding: Finding;
  readonly mayShowLess: boolean;
}

/** Of several speeds the gravest; to show too little is graver than to show too much. */
function judged(shown: readonly Interval[], trueSpeeds: readonly Interval[]): Judged {
  const pairs = shown.map((one, index) => [one, trueSpeeds[index] ?? one] as const);
  const outcome = allOf(pairs.map(([one, speed]) => isInBand(one, speed)));
  const notLess = allOf(pairs.map(([one, speed]) => notAbove(speed, one)));
  const notMore = allOf(pairs.map(([one, speed]) => notAbove(one, mostShown(speed))));
  return {
    outcome,
    finding: findingOf({ outcome, notLess, notMore }),
    mayShowLess: notLess !== 'holds',
  };
}

interface Sides {
  readonly outcome: Outcome;
  readonly notLess: Outcome;
  readonly notMore: Outcome;
}

function findingOf({ outcome, notLess, notMore }: Sides): Finding {
  if (notLess === 'fails') return 'under-reads';
  if (notMore === 'fails') return 'over-reads';
  return outcome === 'holds' ? 'within' : 'undecided';
}

interface Told {
  readonly trueSpeed: readonly Interval[];
  readonly shownSpeed: readonly Interval[] | null;
  readonly tyre: string | null;
  readonly newTyre: string | null;
  readonly circumference: Interval | null;
  readonly newCircumference: Interval | null;
  readonly drivenRatio: Interval | null;
  readonly newDrivenRatio: Interval | null;
}

type Changed =
  | { readonly faults: readonly GivenFault[] }
  | { readonly is: Change | null; readonly isMixed: boolean };

function changeOf(given: Told): Changed {
  const { drivenRatio, newDrivenRatio } = given;
  const before = toldCircumference(
    { tyre: 'tyre', circumference: 'circumference' },
    { tyre: given.tyre, measured: given.circumference },
  );
  const after = toldCircumference(
    { tyre: 'newTyre', circumference: 'newCircumference' },
    { tyre: given.newTyre, measured: given.newCircumference },
  );
  const faults = [before, after].flatMap((one) => (isTyreFault(one) ? [one] : []));
  if (before === null && after !== null) faults.push(alone('tyre'));
  if (before !== null && after === null) faults.push(alone('newTyre'));
  if (drivenRatio === null && newDrivenRatio !== null) faults.push(alone('drivenRatio'));
  if (drivenRatio !== null && newDrivenRatio === null) faults.push(alone('newDrivenRatio'));
  if (faults.length > 0 || isTyreFault(before) || isTyreFault(after)) return { faults };
  const tyres = before && after && divideIntervals(before, after);
  const ratios = drivenRatio && newDrivenRatio && divideIntervals(newDrivenRatio, drivenRatio);
  if (tyres === null && ratios === null) return { is: null, isMixed: false };
  return {
    is: { tyres: tyres ?? point(ONE), ratios: ratios ?? point(ONE) },
    isMixed: (given.tyre === null) !== (given.newTyre === null),
  };
}

function alone(input: string): GivenFault {
  return {
    input,
    text: {
      en: 'Tell both what it was before and what it is afterwards, or neither.',
      de: 'Beides nennen, was zuvor war und was danach ist, oder keines.',
    },
  };
}

function lengthFaults({ trueSpeed, shownSpeed }: Told): GivenFault[] {
  if (shownSpeed === null || shownSpeed.length === trueSpeed.length) return [];
  const [shown, speeds] = [shownSpeed.length, trueSpeed.length];
  return [
    {
      input: 'shownSpeed',
      text: {
        en: `Shown: ${shown}, true: ${speeds}. Each true speed has one that is shown.`,
        de: `Angezeigt: ${shown}, gefahren: ${speeds}. Zu jeder gefahrenen gehört eine angezeigte.`,
      },
    },
  ];
}
