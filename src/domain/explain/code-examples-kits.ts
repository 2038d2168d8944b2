/**
 * An example of each reason of the answer to a kit question: its ways, their lines, what the
 * vehicle loses, what was demanded, and what would help where demands contradict each other.
 */

import type { CodeExample, Teller } from './example-teller.js';
import { FACES, PARAMETERS, PARTS, PLACES } from './example-world.js';
import type {
  CONFLICT_CODES,
  DEMAND_CODES,
  INSTEAD_CODES,
  KIT_CODES,
  LINE_CODES,
  LOSS_CODES,
  ReasonData,
} from './reason.js';

const kits: Readonly<Record<(typeof KIT_CODES)[number], CodeExample>> = {
  'ways-proven': (t) => ({
    count: 6,
    places: 10,
    price: t.money('2792.00'),
    more: true,
    cheapest: true,
  }),
  'ways-open': () => ({ count: 1, places: 2, unpriced: 1, facts: 1 }),
  'ways-so-far': (t) => ({ count: 2, places: 4, price: t.money('1240.50'), unpriced: 2 }),
  'nothing-to-change': () => ({}),
  'no-way': () => ({}),
  'no-way-together': () => ({ count: 2 }),
  'no-way-so-far': () => ({}),
  'each-proven': () => ({ count: 2 }),
  'each-open': () => ({ count: 2 }),
  'no-way-for-any': () => ({ count: 3 }),
  'ways-depend': () => ({ count: 4 }),
  'too-many-to-solve': () => ({ count: 60 }),
  'no-such-place': () => ({}),
  'route-proven': (t) => ({ places: 10, price: t.money('2792.00'), text: 'workshop' }),
  'route-open': (t) => ({ places: 2, price: t.money('480.00'), facts: 1 }),
};

const LOT = {
  en: 'Lirren II clutch kit, 240 mm',
  de: 'Kupplungssatz Lirren II, 240 mm',
};

const lines: Readonly<Record<(typeof LINE_CODES)[number], CodeExample>> = {
  wanted: () => ({}),
  avoided: (t) => ({ because: t.said('not-equal') }),
  'mating-fails': (t) => ({ because: t.said('too-small') }),
  rule: (t) => ({ because: t.said('rule-needs') }),
  loop: (t) => ({ because: t.said('first-too-fast') }),
  load: (t) => ({ because: t.said('too-weak') }),
  check: (t) => ({ because: t.said('too-large') }),
  place: (t) => ({ because: t.said('needed-place-empty') }),
  limit: () => ({}),
  'becomes-open': (t) => ({ because: t.said('not-recorded') }),
  'present-fails': (t) => ({ because: t.said('different-kinds') }),
  'adapter-avoided': (t) => ({ because: t.said('too-small') }),
  'donor-content': (t) => ({ text: t.text(LOT) }),
  consumed: (t) => ({
    because: t.text({
      en: 'The rear axle loses its oil: fill with fresh.',
      de: 'Die Hinterachse verliert ihr Öl: frisch einfüllen.',
    }),
  }),
  recommended: (t) => ({
    because: t.text({
      en: 'The gearbox is out anyway, and a worn bearing would bring it out again.',
      de:
        'Das Getriebe ist ohnehin draußen, und ein verschlissenes Lager holte es nochmals ' +
        'heraus.',
    }),
  }),
  'in-the-way': (t) => ({ part: t.part(PARTS.axle) }),
  'taken-out': (t) => ({ part: t.part(PARTS.boxSix) }),
};

const instead: Readonly<Record<(typeof INSTEAD_CODES)[number], CodeExample>> = {
  substitute: (t) => ({ part: t.loose(PARTS.propRemade) }),
  alternative: (t) => ({ part: t.loose(PARTS.axleHulvane), count: 1, price: t.money('-81.20') }),
};

const SUPPLIER = 'Yarrowick Clutches';

const CLASS = { en: 'Vale Cup, standard class', de: 'Vale Cup, Serienklasse' };

const CLUTCH_HOLDS = {
  en: 'The clutch must hold 1.2 times the torque of the engine.',
  de: 'Die Kupplung muss das 1,2-fache Motordrehmoment halten.',
};

const keptEngine = (t: Teller): ReasonData => ({
  part: t.part(PARTS.engine),
  text: t.text(CLASS),
});

const rimWidth = (t: Teller): ReasonData => ({
  because: t.text({
    en: 'The standard class allows rims up to 7.5 inches.',
    de: 'Die Serienklasse lässt Felgen bis 7,5 Zoll zu.',
  }),
  text: t.text(CLASS),
});

const demands: Readonly<Record<(typeof DEMAND_CODES)[number], CodeExample>> = {
  'demand-part': (t) => ({ part: t.loose(PARTS.boxSix) }),
  'demand-lot': (t) => ({ text: t.text(LOT) }),
  'demand-load': (t) => ({ text: t.text(CLUTCH_HOLDS), asked: t.one('1.5', '') }),
  'demand-condition': (t) => ({ part: t.place(PLACES.clutch) }),
  'demand-present': () => ({}),
  'demand-keep': (t) => ({ part: t.part(PARTS.axle) }),
  'demand-avoid-part': (t) => ({ part: t.loose(PARTS.propMade) }),
  'demand-avoid-supplier': () => ({ text: SUPPLIER }),
  'demand-avoid-condition': (t) => ({ part: t.place(PLACES.clutch) }),
  'demand-cost': (t) => ({ asked: t.money('2500.00') }),
  'demand-places': (t) => ({ asked: t.one('4', '') }),
  'demand-hours': (t) => ({ asked: t.one('12', 'h') }),
  'demand-days': (t) => ({ asked: t.one('10', '') }),
  'demand-stock': () => ({}),
  'demand-torque': (t) => ({ asked: t.one('400', 'N.m') }),
  'demand-ruleset-keep': keptEngine,
  'demand-ruleset-check': rimWidth,
  'demand-ruleset-rest': (t) => ({ text: t.text(CLASS) }),
  'demand-unknowns': () => ({}),
  'drop-part': (t) => ({ part: t.loose(PARTS.boxSix) }),
  'drop-lot': (t) => ({ text: t.text(LOT) }),
  'drop-load': (t) => ({ text: t.text(CLUTCH_HOLDS), asked: t.one('1.5', '') }),
  'drop-condition': (t) => ({ part: t.place(PLACES.clutch) }),
  'drop-present': () => ({}),
  'drop-keep': (t) => ({ part: t.part(PARTS.axle) }),
  'drop-avoid-part': (t) => ({ part: t.loose(PARTS.propMade) }),
  'drop-avoid-supplier': () => ({ text: SUPPLIER }),
  'drop-avoid-condition': (t) => ({ part: t.place(PLACES.clutch) }),
  'drop-cost': (t) => ({ asked: t.money('2500.00'), takes: t.money('2792.00') }),
  'drop-places': (t) => ({ asked: t.one('4', ''), takes: t.one('10', '') }),
  'drop-hours': (t) => ({ asked: t.one('12', 'h'), takes: t.one('16.5', 'h') }),
  'drop-days': (t) => ({ asked: t.one('10', ''), takes: t.one('14', '') }),
  'drop-stock': () => ({}),
  'drop-torque': (t) => ({ asked: t.one('400', 'N.m') }),
  'drop-ruleset-keep': keptEngine,
  'drop-ruleset-check': rimWidth,
  'drop-ruleset-rest': (t) => ({ text: t.text(CLASS) }),
  'drop-unknowns': () => ({}),
};

const conflicts: Readonly<Record<(typeof CONFLICT_CODES)[number], CodeExample>> = {
  'in-the-way-fails': (t) => ({
    because: t.said('first-too-fast'),
    names: [t.text(PARTS.boxSix.name), t.text(PARTS.axle.name)],
  }),
  'in-the-way-open': (t) => ({
    because: t.said('not-recorded'),
    names: [t.text(PARTS.boxFive.name)],
  }),
  'way-out-proven': (t) => ({
    names: [t.said('drop-cost')],
    places: 10,
    price: t.money('2792.00'),
  }),
  'way-out-open': (t) => ({
    names: [t.said('drop-keep'), t.said('drop-stock')],
    places: 6,
    price: t.money('1240.50'),
    unpriced: 1,
  }),
  'way-out-so-far': (t) => ({ names: [t.said('drop-part')] }),
};

const losses: Readonly<Record<(typeof LOSS_CODES)[number], CodeExample>> = {
  'place-emptied': (t) => ({ part: t.part(PARTS.control) }),
  'joint-lost': (t) => ({
    a: t.face(PARTS.boxClutched, FACES.gearboxControl),
    b: t.face(PARTS.control, FACES.controlBox),
  }),
  'value-lower': (t) => ({
    left: t.ofPart(PARTS.boxFive, PARAMETERS.inputTorque, t.one('280', 'N.m')),
    right: t.ofPart(PARTS.boxSix, PARAMETERS.inputTorque, t.one('360', 'N.m')),
  }),
  'rating-unknown': (t) => ({
    left: t.ofPart(PARTS.shaftHulvane, PARAMETERS.ratedTorque, null),
    right: t.ofPart(PARTS.shaftLeft, PARAMETERS.ratedTorque, t.one('1800', 'N.m')),
  }),
};

export const KIT_EXAMPLES = {
  ...kits,
  ...lines,
  ...instead,
  ...demands,
  ...conflicts,
  ...losses,
} as const;
