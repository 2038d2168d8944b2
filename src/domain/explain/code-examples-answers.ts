/**
 * An example of each reason of a constraint and of the summary of an answer, and of what an answer
 * did not look at, wants measured and has made to order.
 */

import type { CodeExample, Teller } from './example-teller.js';
import { FACES, PARAMETERS, PARTS, PLACES } from './example-world.js';
import type {
  CONSTRAINT_CODES,
  MEASURE_CODES,
  NOT_CHECKED_CODES,
  ORDER_CODES,
  ReasonData,
  SUMMARY_CODES,
} from './reason.js';

/** A rule as the catalogue gives its reason. */
const NEEDS_BRACKET = {
  en:
    'The front ears of the second-series axle sit 20 mm higher than the subframe’s, so it needs ' +
    'a bracket.',
  de:
    'Die vorderen Laschen der Achse der zweiten Serie sitzen 20 mm höher als die des ' +
    'Fahrschemels: Sie braucht einen Halter.',
};

function rule(t: Teller): ReasonData {
  return { because: t.text(NEEDS_BRACKET) };
}

function madeToLength(t: Teller): ReasonData {
  const length = t.shown('1374 ±2 mm', ['1372', '1376']);
  return {
    between: ['prop-span', 'prop-whirl'],
    choices: [t.ofPart(PARTS.propMade, PARAMETERS.length, length)],
  };
}

const constraints: Readonly<Record<(typeof CONSTRAINT_CODES)[number], CodeExample>> = {
  'chain-broken': (t) => ({ part: t.place(PLACES.transfer) }),
  'fails-as-built-too': (t) => ({
    left: t.ofPart(PARTS.body, PARAMETERS.span, t.one('2254', 'mm')),
    right: t.term(PARAMETERS.drivelineLength, t.one('2292', 'mm')),
    says: t.text({
      en:
        'Gearbox, propeller shaft and rear axle together must be as long as the car, within ' +
        '4 mm.',
      de:
        'Getriebe, Gelenkwelle und Hinterachse müssen zusammen auf 4 mm so lang sein wie der ' +
        'Wagen.',
    }),
    margin: t.one('-34', 'mm'),
  }),
  'told-by-fact': (t) => ({ names: [t.text(PARAMETERS.ears.name)] }),
  'same-for-each-fact': (t) => ({
    names: [t.text(PARAMETERS.ears.name)],
    text: t.said('too-small'),
  }),
  suits: madeToLength,
  'no-common-choice': (t) => ({
    between: ['prop-span', 'prop-whirl'],
    choices: [t.ofPart(PARTS.propMadeOne, PARAMETERS.length, null)],
  }),
  'rule-met': rule,
  'rule-may-apply': rule,
  'rule-open': rule,
  'rule-needs': rule,
  'rule-excludes': (t) => ({
    because: t.text({
      en: 'The body is the vehicle: parts are fitted to it, it is not exchanged for a part.',
      de:
        'Die Karosserie ist das Fahrzeug: An sie wird angebaut, sie wird nicht wegen eines Teils ' +
        'getauscht.',
    }),
  }),
  'needed-place-empty': (t) => ({ part: t.place(PLACES.gearbox) }),
  'wrong-role': (t) => ({ part: t.part({ ...PARTS.starter, place: PLACES.gearbox }) }),
  'wrong-hand': (t) => ({ part: t.part(PARTS.shaftRight) }),
  'no-place-to-span': (t) => ({ part: t.part(PARTS.axle) }),
  'span-occupied': (t) => ({ part: t.part(PARTS.axle) }),
  'no-mating-for-interface': (t) => ({ part: t.face(PARTS.hubLate, FACES.onHub) }),
  'stated-not-to-fit': (t) => stated(t),
  'stated-before-work': (t) => stated(t),
};

function stated(_: Teller): ReasonData {
  return { statement: 'fennuld-list', basis: 'maker', text: 'Fennuld list 2026, page 3' };
}

const twoPlaces = (t: Teller): readonly string[] =>
  [PLACES.frontHub, PLACES.rearHub].map(({ name }) => t.text(name));

const summaries: Readonly<Record<(typeof SUMMARY_CODES)[number], CodeExample>> = {
  fits: (t) => ({ names: twoPlaces(t) }),
  'fits-made-to-order': () => ({ count: 2 }),
  'fits-already-there': (t) => ({ names: [t.text(PLACES.frontHub.name)] }),
  'fits-once-signed': (t) => ({
    names: [
      t.text({
        en: 'Lirren I propeller shaft, shorten and balance the propeller shaft',
        de: 'Gelenkwelle Lirren I, Gelenkwelle kürzen und wuchten',
      }),
    ],
    text: 'workshop',
  }),
  unknown: (t) => ({ names: [t.text(PLACES.rearWheel.name)], count: 4 }),
  'not-alone': () => ({}),
  'fits-with-changes': () => ({ places: 3 }),
  'fits-unless-alone': () => ({ places: 1 }),
  'may-fit-with-changes': () => ({ places: 2, facts: 1 }),
  'search-cut-short': () => ({}),
  'does-not-fit': () => ({}),
  'no-position': () => ({}),
  'goes-between': () => ({}),
  depends: () => ({ count: 4 }),
  'each-fits': () => ({ count: 2 }),
  'each-fits-with-changes': () => ({ count: 2 }),
  'each-unknown': () => ({ count: 3 }),
  'none-fits': () => ({ count: 3 }),
  'too-many-vehicles': () => ({ count: 60 }),
  'right-as-it-stands': () => ({}),
  'open-as-it-stands': () => ({}),
  'wrong-as-it-stands': () => ({}),
  'faces-meet': () => ({}),
  'faces-may-meet': () => ({}),
  'faces-do-not-meet': () => ({}),
};

const notChecked: Readonly<Record<(typeof NOT_CHECKED_CODES)[number], CodeExample>> = {
  'kind-does-not-check': (t) => ({
    a: t.face(PARTS.engine, FACES.housing),
    b: t.face(PARTS.boxSix, FACES.housing),
    text: t.text({
      en: 'bolt lengths, reach of the input shaft and pilot nose',
      de: 'Schraubenlängen, Länge von Eingangswelle und Führungszapfen',
    }),
  }),
  'position-not-recorded': (t) => ({ part: t.place(PLACES.flywheel) }),
  'face-on-no-mating': (t) => ({ part: t.face(PARTS.boxSix, FACES.gearboxControl) }),
};

const spigot = (t: Teller): ReasonData => ({
  left: t.onFace(PARTS.hubUsed, FACES.onHub, PARAMETERS.spigot, t.one('58.9', 'mm')),
  part: t.face(PARTS.hubUsed, FACES.onHub),
  needed: t.give('0.1', 'mm'),
  tool: t.text({ en: 'micrometer', de: 'Messschraube' }),
  basis: 'measured',
});

const measures: Readonly<Record<(typeof MEASURE_CODES)[number], CodeExample>> = {
  'measure-to-decide': spigot,
  'measure-to-order': (t) => ({
    left: t.ofPart(PARTS.body, PARAMETERS.span, null),
    part: t.part(PARTS.body),
    needed: t.give('2', 'mm'),
    tool: t.text({ en: 'steel tape', de: 'Stahlbandmaß' }),
  }),
  confirm: (t) => ({
    left: t.onFace(PARTS.axleHulvane, FACES.axleFlange, PARAMETERS.pcd, t.one('84', 'mm')),
    part: t.face(PARTS.axleHulvane, FACES.axleFlange),
    needed: t.give('0.2', 'mm'),
    tool: t.text({ en: 'vernier caliper', de: 'Messschieber mit Nonius' }),
    basis: 'inferred',
  }),
  'look-up': (t) => ({
    left: t.ofPart(PARTS.shaftLeft, PARAMETERS.ratedTorque, null),
    part: t.part(PARTS.shaftLeft),
  }),
  identify: (t) => ({
    left: { ...t.place(PLACES.frontHub), parameter: null, parameterName: null, value: null },
    part: t.place(PLACES.frontHub),
  }),
  'record-face': (t) => ({
    left: {
      ...t.face(PARTS.clutchStrong, FACES.disc),
      parameter: null,
      parameterName: null,
      value: null,
    },
    part: t.face(PARTS.clutchStrong, FACES.disc),
  }),
  'ask-fact': (t) => ({
    left: t.term(PARAMETERS.ears, null),
    part: t.nobody(),
    text: t.text({
      en: 'Measure from the tube of the subframe up to the middle of the front mounting hole.',
      de: 'Vom Rohr des Fahrschemels bis zur Mitte des vorderen Lochs messen.',
    }),
  }),
};

const orders: Readonly<Record<(typeof ORDER_CODES)[number], CodeExample>> = {
  'order-to-suit': (t) => {
    const order = t.shown('1374 ±2 mm', ['1372', '1376']);
    return { left: t.ofPart(PARTS.propMade, PARAMETERS.length, order), order };
  },
  'order-after-measuring': (t) => ({ left: t.ofPart(PARTS.propMade, PARAMETERS.length, null) }),
};

export const ANSWER_EXAMPLES = {
  ...constraints,
  ...summaries,
  ...notChecked,
  ...measures,
  ...orders,
} as const;
