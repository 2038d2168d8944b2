/**
 * An example of each reason of a check, of a caution and of a mating.
 */

import type { CodeExample, Teller } from './example-teller.js';
import { FACES, PARAMETERS, PARTS, PLACES } from './example-world.js';
import type { CAUTION_CODES, CHECK_CODES, MATING_CODES, ReasonData } from './reason.js';

const TEETH_SAME = {
  en: 'Shaft and hub must have the same number of teeth.',
  de: 'Welle und Nabe müssen dieselbe Zähnezahl haben.',
};

const REGISTER_CENTRES = {
  en: 'The register centres the shaft: it must go in, with at most 0.10 mm of play.',
  de: 'Der Bund zentriert die Welle: Er muss hineingehen, mit höchstens 0,10 mm Spiel.',
};

const ONE_SPEED = {
  en: 'Both axles must be driven at one speed over the ground.',
  de: 'Beide Achsen müssen gleich schnell über den Boden laufen.',
};

const BOX_BEARS = {
  en: 'The gearbox must bear the torque of the engine.',
  de: 'Das Getriebe muss das Drehmoment des Motors ertragen.',
};

const EVERY_BOLT = {
  en: 'Every bolt must find its hole in both faces: all of them, not most.',
  de: 'Jede Schraube muss ihr Loch in beiden Flächen finden: alle, nicht die meisten.',
};

const OVER_SPIGOT = {
  en: 'The centre bore must go over the spigot of the hub.',
  de: 'Das Mittenloch muss über die Zentrierung der Nabe gehen.',
};

function teeth(t: Teller, onClutch: string): ReasonData {
  const { clutchPush, boxSix } = PARTS;
  const { disc, input } = FACES;
  return {
    left: t.onFace(boxSix, input, PARAMETERS.teeth, t.one('24', '')),
    right: t.onFace(clutchPush, disc, PARAMETERS.teeth, t.one(onClutch, '')),
    says: t.text(TEETH_SAME),
  };
}

function register(t: Teller, recess: readonly [string, string, string], play: string): ReasonData {
  const [text, low, high] = recess;
  return {
    left: t.onFace(PARTS.prop, FACES.propFront, PARAMETERS.register, {
      ...t.shown(text, [low, high]),
      unit: 'mm',
    }),
    right: t.onFace(PARTS.boxSix, FACES.boxRear, PARAMETERS.register, {
      ...t.shown('50 h7', ['49.975', '50']),
      unit: 'mm',
    }),
    says: t.text(REGISTER_CENTRES),
    margin: t.one(play, 'mm'),
  };
}

/** The holes of engine and gearbox. */
function holes(t: Teller): ReasonData {
  const count = t.word(t.text({ en: '7 points', de: '7 Punkte' }));
  return {
    left: t.onFace(PARTS.engine, FACES.housing, PARAMETERS.boltPlaces, count),
    right: t.onFace(PARTS.boxFive, FACES.housing, PARAMETERS.boltPlaces, count),
    says: t.text(EVERY_BOLT),
  };
}

function paths(t: Teller, margin: string): ReasonData {
  const length = { text: null, low: null, high: null, unit: 'mm' };
  return {
    left: t.term(PARAMETERS.frontPath, length),
    right: t.term(PARAMETERS.rearPath, length),
    says: t.text(ONE_SPEED),
    margin: t.share(margin),
  };
}

function load(t: Teller, torque: string, margin: string): ReasonData {
  return {
    left: t.ofPart(PARTS.boxSix, PARAMETERS.inputTorque, t.one('360', 'N.m')),
    right: t.ofPart(PARTS.engine, PARAMETERS.torque, t.one(torque, 'N.m')),
    says: t.text(BOX_BEARS),
    margin: t.one(margin, ''),
  };
}

function bore(t: Teller): ReasonData {
  return {
    left: t.onFace(PARTS.wheel, FACES.onWheel, PARAMETERS.bore, {
      ...t.shown('59 H8', ['59', '59.046']),
      unit: 'mm',
    }),
    right: t.onFace(PARTS.hubUsed, FACES.onHub, PARAMETERS.spigot, t.one('58.9', 'mm')),
    says: t.text(OVER_SPIGOT),
  };
}

function hubAndWheel(t: Teller): ReasonData {
  return {
    left: t.onFace(PARTS.hubLate, FACES.onHub, PARAMETERS.pcd, t.one('117', 'mm')),
    right: t.onFace(PARTS.wheelRear, FACES.onWheel, PARAMETERS.pcd, t.one('106', 'mm')),
    says: t.text({
      en: 'The pitch circles must agree within 0.2 mm.',
      de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
    }),
    margin: t.one('-10.8', 'mm'),
  };
}

function spigotPlay(t: Teller): string {
  return t.text({
    en: 'With more than 0.10 mm of play on the spigot the wheel needs a centring ring.',
    de: 'Mit mehr als 0,10 mm Spiel auf der Zentrierung braucht das Rad einen Zentrierring.',
  });
}

const checks: Readonly<Record<(typeof CHECK_CODES)[number], CodeExample>> = {
  equal: (t) => teeth(t, '24'),
  'one-of': (t) => ({
    left: t.onFace(PARTS.boxSix, FACES.input, PARAMETERS.family, t.word('iso-4156')),
  }),
  clears: (t) => register(t, ['50.05 ±0.01 mm', '50.04', '50.06'], '0.04'),
  coincides: holes,
  agrees: (t) => paths(t, '0.6'),
  carries: (t) => load(t, '250', '1.44'),
  'not-equal': (t) => teeth(t, '23'),
  'not-one-of': (t) => ({
    left: t.onFace(PARTS.boxSix, FACES.input, PARAMETERS.family, t.word('iso-4156')),
    says: t.text({
      en: 'This clutch disc comes with straight splines only.',
      de: 'Diese Kupplungsscheibe gibt es nur mit Keilprofil.',
    }),
  }),
  'too-small': (t) => register(t, ['47 H7', '47', '47.025'], '-3'),
  'too-large': (t) => register(t, ['50.2 mm', '50.2', '50.2'], '-0.125'),
  'too-weak': (t) => load(t, '400', '0.9'),
  'points-apart': (t) => ({
    ...holes(t),
    odd: {
      of: 'right',
      point: {
        text: t.text({ en: '53, 4 mm', de: '53 | 4 mm' }),
        x: t.one('53', 'mm'),
        y: t.one('4', 'mm'),
      },
      apart: t.shown('5 mm', ['5', null]),
    },
  }),
  'first-too-fast': (t) => paths(t, '9.1'),
  'first-too-slow': (t) => paths(t, '8.34'),
  'not-recorded': (t) => {
    const missing = t.onFace(PARTS.speedometer, FACES.speedometerSignal, PARAMETERS.pulses, null);
    return {
      left: t.onFace(PARTS.boxFive, FACES.speed, PARAMETERS.pulses, t.one('8', '')),
      right: missing,
      missing: [missing],
    };
  },
  'not-precise-enough': bore,
  'evidence-too-weak': (t) => ({
    left: t.onFace(PARTS.axleHulvane, FACES.axleFlange, PARAMETERS.pcd, t.one('84', 'mm')),
    right: t.onFace(PARTS.shaftLeft, FACES.shaftFlange, PARAMETERS.pcd, t.one('84', 'mm')),
    basis: 'inferred',
  }),
  'not-decided': (t) => bore(t),
  'too-many-choices': (t) => ({
    left: t.ofPart(PARTS.propMade, PARAMETERS.length, null),
    right: t.ofPart(PARTS.body, PARAMETERS.span, t.one('2254', 'mm')),
  }),
  'may-not-apply': (t) => hubAndWheel(t),
};

const cautions: Readonly<Record<(typeof CAUTION_CODES)[number], CodeExample>> = {
  'winds-up': (t) => paths(t, '2.68'),
  'may-wind-up': (t) => paths(t, '0.6'),
  'off-road-only': (t) => paths(t, '1.3'),
  'may-be-off-road-only': (t) => paths(t, '2'),
  'caution-fails': (t) => ({ text: spigotPlay(t) }),
  'caution-open': (t) => ({ text: spigotPlay(t) }),
  'engineer-signs': (t) => ({
    text: t.text({
      en: 'Pellory rear hub, driven, spigot 62, turn the spigot of the rear hub down to 59 h7',
      de:
        'hintere Nabe Pellory, angetrieben, Zentrierung 62, Zentrierung der hinteren Nabe auf ' +
        '59 h7 abdrehen',
    }),
  }),
  'workshop-signs': (t) => ({
    text: t.text({
      en: 'Lirren I rear final drive 43/11, gear set 43/12 with its own carrier, built in',
      de: 'hinterer Achsantrieb Lirren I 43/11, Radsatz 43/12 mit eigenem Korb, eingebaut',
    }),
  }),
  'work-first': (t) => ({
    text: t.text({
      en: 'Lirren II propeller shaft, shorten and balance the propeller shaft',
      de: 'Gelenkwelle Lirren II, Gelenkwelle kürzen und wuchten',
    }),
  }),
};

/** Engine and gearbox at the bell-housing. */
function atHousing(t: Teller): ReasonData {
  const a = t.face(PARTS.engine, FACES.housing);
  return { a, b: t.face(PARTS.boxSix, FACES.housing), part: a };
}

function atControl(t: Teller): ReasonData {
  const part = t.face(PARTS.boxClutched, FACES.gearboxControl);
  return { a: part, b: t.place(PLACES.centreControl), part };
}

function asBuilt(t: Teller): ReasonData {
  const a = t.face(PARTS.axleHulvane, FACES.axleFlange);
  return {
    a,
    b: t.face(PARTS.shaftHulvane, FACES.shaftFlange),
    part: a,
    vehicles: ['Brundivale Hulvane, 2.4, five-speed'],
  };
}

const matings: Readonly<Record<(typeof MATING_CODES)[number], CodeExample>> = {
  meets: atHousing,
  'as-built': asBuilt,
  'contradicts-as-built': asBuilt,
  'nothing-needed': (t) => {
    const part = t.face(PARTS.boxSix, FACES.gearboxControl);
    return { a: part, b: t.place(PLACES.centreControl), part };
  },
  'needed-empty': atControl,
  'needed-absent': (t) => ({ ...atControl(t), b: t.face(PARTS.control, FACES.gearboxControl) }),
  'face-not-recorded': (t) => {
    const part = t.face(PARTS.clutchStrong, FACES.disc);
    return { a: part, b: t.face(PARTS.boxFive, FACES.input), part };
  },
  'different-kinds': (t) => {
    const a = t.face(PARTS.axleLate, FACES.axleSpline);
    return { a, b: t.face(PARTS.shaftLeft, FACES.shaftFlange), part: a };
  },
  'same-side': (t) => {
    const a = t.face(PARTS.boxSix, FACES.boxRear);
    return { a, b: t.face(PARTS.propRemade, FACES.propFront), part: a };
  },
  stated: (t) => ({
    a: t.face(PARTS.clutchStrong, FACES.disc),
    b: t.face(PARTS.boxFive, FACES.input),
    basis: 'maker',
    statement: 'yarrowick-list',
    text: 'Yarrowick list 2026, page 14',
  }),
  'contradicts-statement': (t) => ({
    ...hubAndWheel(t),
    basis: 'maker',
    statement: 'fennuld-wheels',
    text: 'Fennuld list 2026, page 21',
  }),
};

export const CHECK_EXAMPLES = { ...checks, ...cautions, ...matings } as const;
