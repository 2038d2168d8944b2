/**
 * For codes of answers without a way that no question to the demo leads to, the smallest question
 * that does: to a car whose other gearbox wants another shaft behind it.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import type { KitAnswer } from '../../src/usecases/kit-answer.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import { flange, type Sketch, world } from '../rules/sketch.js';
import { type Asked, kitsOf } from '../rules/world.js';

const CAR = {
  roles: { engine: { torque: 'engine' }, box: { torque: 'rating' }, prop: { length: 'length' } },
  places: ['engine', 'box', 'prop'],
  matings: ['box.rear = prop.front'],
  checks: [{ id: 'strength', carries: 'box.torque', demand: 'engine.torque' }],
  parts: {
    'engine-a': { torque: '200 N.m' },
    'box-a': { rear: flange('A'), torque: '300 N.m' },
    'box-b': { rear: flange('B'), torque: '300 N.m' },
    'prop-a': { front: flange('A'), length: '1000 mm' },
    'prop-b': { front: flange('B'), length: '900 mm' },
    'prop-c': { front: flange('B'), length: '900 mm' },
  },
  cars: { car: { engine: 'engine-a', box: 'box-a', prop: 'prop-a' } },
} satisfies Sketch;

const SHOP = {
  currency: 'EUR',
  offers: ['box-b', 'prop-b', 'prop-c'].map((id) => ({
    id: `offer-${id}`,
    for: id,
    price: '100.00',
    supplier: id === 'box-b' ? 'Dale' : 'Hythe',
    stock: id === 'box-b' ? 1 : 0,
    leadDays: id === 'box-b' ? 1 : 9,
  })),
  lots: [{ id: 'crate', name: 'a crate of shafts', contains: [{ part: 'prop-b' }] }],
  rulesets: [
    {
      id: 'class-a',
      name: 'Class A',
      valid: [null, null],
      cite: 'rules of class A (invented)',
      demands: {
        keep: ['prop'],
        checks: [
          {
            id: 'long',
            'at-least': ['prop.length', '950 mm'],
            text: 'The shaft must be as long as that of the maker.',
          },
        ],
      },
    },
    {
      id: 'class-b',
      name: 'Class B',
      valid: [null, null],
      cite: 'rules of class B (invented)',
      demands: { checks: [{ id: 'wide', 'at-most': ['wheel.width', '7 in'] }] },
    },
  ],
};

/** A layout with words for class B; that of the car has none. */
const OTHER = {
  id: 'other',
  positions: [{ id: 'wheel', name: 'the wheel', roles: ['wheel'] }],
  matings: [],
};

const WHEEL = { wheel: { width: { type: 'measured', unit: 'in' } } };

const TEST_CAR = world({ ...CAR, roles: { ...CAR.roles, ...WHEEL }, layouts: [OTHER] });

const BARE = TEST_CAR.document as { layouts: { id: string; positions: object[] }[] };

/** The same with prices, lots and rulesets, and with an hour for each place. */
const TRADING = {
  ...TEST_CAR,
  document: {
    ...BARE,
    ...SHOP,
    layouts: BARE.layouts.map((layout) => ({
      ...layout,
      positions: layout.positions.map((position) => ({ ...position, labour: '1 h' })),
    })),
  },
};

type Case = () => KitAnswer;

/** What is asked beside the other gearbox. */
function other(more: Partial<KitInput>, asked: Asked = {}): Case {
  return () => kitsOf(TRADING, ['box-b'], asked, more);
}

/** What is asked without it. */
function alone(more: Partial<KitInput>, asked: Asked = {}): Case {
  return () => kitsOf(TRADING, [], asked, more);
}

function upTo(limits: Partial<KitInput['limits']>): Case {
  return other({ limits: { ...USUAL_KIT.limits, ...limits }, from: 'offered', labourRate: '50' });
}

const long = { position: 'prop', condition: { 'at-least': ['prop.length', '950 mm'] } };
const short = { position: 'prop', condition: { 'at-most': ['prop.length', '950 mm'] } };

const avoiding = other({ avoid: ['prop-b', 'prop-c'].map((part) => ({ part })) });
const supplied = other({ avoid: [{ supplier: 'Hythe' }], from: 'offered' });
const shortAvoided = other({ avoid: [short] });
const longWanted = alone(
  { want: [long], keep: ['box'], avoid: [{ part: 'prop-a' }] },
  {
    fitted: { box: 'box-b', prop: 'prop-b' },
  },
);
const crate = alone({ want: [{ lot: 'crate', whole: true }], keep: ['box'] });
const misfitted = alone({ keep: ['box', 'prop'] }, { fitted: { box: 'box-b' } });
const strong = alone({}, { torque: '400 N.m' });
const dear = upTo({ cost: '150.00' });
const places = upTo({ changedPositions: 1 });
const hours = upTo({ labourHours: '1.5' });
const days = upTo({ leadDays: 3 });
const stock = upTo({ inStock: true });
const kept = other({ ruleset: 'class-a' });
const checked = alone({ ruleset: 'class-a' }, { fitted: { box: 'box-b', prop: 'prop-b' } });
const unspoken = alone({ ruleset: 'class-b', unknowns: 'refuse' });

/** The search for what is possible then ends before it has found anything. */
const cutShort = other({ keep: ['prop'], steps: 6 });

export const CONFLICT_CASES: Readonly<Partial<Record<ReasonCode, Case>>> = {
  'no-way': strong,
  substitute: other({ lots: 'none' }),
  'demand-lot': crate,
  'demand-condition': longWanted,
  'demand-present': misfitted,
  'demand-avoid-part': avoiding,
  'demand-avoid-supplier': supplied,
  'demand-avoid-condition': shortAvoided,
  'demand-cost': dear,
  'demand-places': places,
  'demand-hours': hours,
  'demand-days': days,
  'demand-stock': stock,
  'demand-torque': strong,
  'demand-ruleset-keep': kept,
  'demand-ruleset-check': checked,
  'demand-ruleset-rest': unspoken,
  'drop-lot': crate,
  'drop-condition': longWanted,
  'drop-present': misfitted,
  'drop-avoid-part': avoiding,
  'drop-avoid-supplier': supplied,
  'drop-avoid-condition': shortAvoided,
  'drop-cost': dear,
  'drop-places': places,
  'drop-hours': hours,
  'drop-days': days,
  'drop-stock': stock,
  'drop-torque': strong,
  'drop-ruleset-keep': kept,
  'drop-ruleset-check': checked,
  'drop-ruleset-rest': unspoken,
  'way-out-so-far': cutShort,
};
