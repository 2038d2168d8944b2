/**
 * For each reason code that no question to the demo catalogue leads to, the smallest catalogue and
 * question that do, by the code.
 *
 * Length: one case for each code.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { CART } from '../cli/catalogue.js';
import { askFit, askKits } from '../demo/ask.js';
import { libraryOf } from '../memory-store.js';
import { flange, optional, pin, type Sketch, world } from '../rules/sketch.js';
import { fitOf, inspected } from '../rules/world.js';
import { CONFLICT_CASES } from './conflict-cases.js';
import { KIT_CASES } from './kit-cases.js';
import { PARTLY_CASES } from './partly-cases.js';
import { PIECE_CASES } from './piece-cases.js';

/** What a use-case answers. */
type Case = () => unknown;

/** A gearbox with a shaft behind it, and one more of each. */
const PAIR = {
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front'],
  cars: { car: { box: 'box-a', prop: 'prop-a' } },
} satisfies Partial<Sketch>;

/** The gearbox is changed, and this is what its face or value is compared with. */
function pair(more: Omit<Sketch, 'places' | 'cars'> & Partial<Sketch>): Case {
  return () => fitOf(world({ ...PAIR, ...more }), 'box-b');
}

/** No clutch on record is nearly as strong. */
const strongest = askKits('lirren-1', [], { want: [{ load: 'clutch-load', atLeast: '99' }] });

/** Which of two shafts stands behind the gearbox hangs on a fact that nobody told. */
function untold(patterns: { readonly a: string; readonly b: string }): Case {
  return pair({
    facts: [{ id: 'tag', name: 'Tag', values: ['x', 'y'].map((id) => ({ id, name: id })) }],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('B') },
      'prop-a': { front: flange(patterns.a) },
      'prop-b': { front: flange(patterns.b) },
    },
    cars: { car: { box: 'box-a', prop: { by: 'tag', x: 'prop-a', y: 'prop-b' } } },
  });
}

/** Two axles whose ratios must agree: the rear one's is given, the front one's is 1. */
function loop(rear: string): Case {
  const sketch: Sketch = {
    roles: { box: { coupling: 'code' }, axle: { ratio: 'ratio' } },
    places: ['box', 'axle'],
    checks: [{ id: 'loop', agree: [['1'], ['axle.ratio']], coupling: 'box.coupling' }],
    parts: {
      'box-a': { coupling: 'locked' },
      'axle-a': { ratio: '2/1' },
      'axle-b': { ratio: rear },
    },
    cars: { car: { box: 'box-a', axle: 'axle-a' } },
  };
  return () => fitOf(world(sketch), 'axle-b');
}

/** A unit that fills two places. */
const UNIT: Sketch = {
  places: ['box', 'transfer'],
  parts: {
    'box-a': {},
    'transfer-a': {},
    'unit-a': { roles: ['box', 'transfer'], spans: ['box', 'transfer'] },
  },
  cars: {
    car: { box: 'box-a', transfer: 'transfer-a' },
    joined: { box: 'unit-a', transfer: 'unit-a' },
  },
};

/** A shaft that is made to length, and a body whose length is known to twenty millimetres. */
function made(span: string): Case {
  const sketch: Sketch = {
    roles: { body: { span: 'length' }, shaft: { length: 'length' } },
    places: ['body', 'shaft'],
    checks: [{ id: 'span', within: ['body.span', 'shaft.length'], tolerance: '1 mm' }],
    parts: {
      'body-a': { span },
      'shaft-a': { length: '1000 mm' },
      'shaft-b': { length: { choose: ['600 mm', '1900 mm'] } },
    },
    cars: { car: { body: 'body-a', shaft: 'shaft-a' } },
  };
  return () => fitOf(world(sketch), 'shaft-b');
}

function stated(more: object): Case {
  const statement = { id: 'list', part: 'box-b', vehicles: ['car'], position: 'box' };
  return pair({
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange() },
      'prop-a': { front: flange('A') },
    },
    statements: [{ ...statement, evidence: { basis: 'maker' }, ...more }],
  });
}

/** Thirteen places of two sizes each: 8192 ways. */
function manyChoices(): Case {
  const names = Array.from({ length: 13 }, (_, index) => `shim-${index + 1}`);
  const shim = { thickness: { choose: { of: ['1 mm', '2 mm'] } } };
  return () =>
    fitOf(
      world({
        roles: { shim: { thickness: 'length' } },
        places: names.map((name) => `${name}: shim`),
        checks: [
          { id: 'stack', 'at-most': [{ sum: names.map((name) => `${name}.thickness`) }, '10 mm'] },
        ],
        parts: { 'shim-a': shim, 'shim-b': shim },
        cars: { car: Object.fromEntries(names.map((name) => [name, 'shim-a'])) },
      }),
      'shim-b',
      { position: 'shim-1' },
    );
}

/** A cart whose gearbox can be painted, which nobody need sign for, and what is stated of it. */
function painted(part: string): Case {
  const statement = { id: 'list', part: 'box-d', vehicles: ['cart-1'], position: 'gearbox' };
  const library = libraryOf({
    ...CART,
    evidence: { basis: 'maker' },
    statements: [{ ...statement, verdict: 'does-not-fit', evidence: { basis: 'maker' } }],
    works: [
      {
        id: 'paint',
        name: 'painted',
        on: { 'one-of': ['role', ['gearbox']] },
        gives: { interfaces: { rear: { pattern: 'f1' } } },
      },
    ],
  });
  const question: FitInput = {
    edition: null,
    lang: 'en',
    units: 'recorded',
    vehicle: 'cart-1',
    fitted: {},
    adapters: {},
    measured: [],
    facts: {},
    with: {},
    torque: null,
    use: null,
    ignorePresent: false,
    position: null,
    changes: 'no',
    part,
  };
  return () => checkFit(library, question);
}

export const REASON_CASES: Readonly<Partial<Record<ReasonCode, Case>>> = {
  ...KIT_CASES,
  ...CONFLICT_CASES,
  ...PARTLY_CASES,
  ...PIECE_CASES,
  'too-large': askFit('ordale-1', 'rear-prop-2+shorten-rear-shaft'),
  'work-first': painted('box-a+paint'),
  'rule-may-apply': askFit('hulvane', 'axle-late'),
  'no-mating-for-interface': askFit('lirren-1', 'front-hub-ordale-used+turn-hub-seat'),
  'fits-already-there': askFit('lirren-1', 'body-lirren-1'),
  'no-position': askFit('lirren-1', 'rear-prop-2'),
  'goes-between': askFit('lirren-1', 'adapter-70-65'),
  'stated-before-work': painted('box-d+paint'),
  'not-one-of': pair({
    roles: { box: { sort: 'code' } },
    checks: [{ id: 'sort', 'one-of': ['box.sort', ['s1', 's2']] }],
    parts: { 'box-a': { sort: 's1' }, 'box-b': { sort: 's3' }, 'prop-a': {} },
  }),
  'points-apart': pair({
    kinds: [
      {
        id: 'plate',
        parameters: { holes: { type: 'points', unit: 'mm', tool: 'caliper' } },
        checks: [{ id: 'holes', coincide: ['a.holes', 'b.holes'], tolerance: '0.5 mm' }],
      },
    ],
    parts: {
      'box-a': { rear: { kind: 'plate', holes: ['0 ±0, 0 ±0 mm', '50 ±0, 0 ±0 mm'] } },
      'box-b': { rear: { kind: 'plate', holes: ['0 ±0, 0 ±0 mm', '53 ±0, 4 ±0 mm'] } },
      'prop-a': { front: { kind: 'plate', holes: ['0 ±0, 0 ±0 mm', '50 ±0, 0 ±0 mm'] } },
    },
  }),
  'not-decided': () =>
    fitOf(
      world({
        roles: { box: { coupling: 'code', ratio: 'ratio' }, axle: { ratio: 'ratio' } },
        places: ['box', 'axle'],
        checks: [
          {
            id: 'loop',
            agree: [['box.ratio', 'box.ratio'], ['axle.ratio']],
            coupling: 'box.coupling',
          },
        ],
        parts: {
          'box-a': { coupling: 'locked', ratio: '2/1' },
          'box-b': { coupling: 'locked', ratio: { choose: ['1/1', '3/1'] } },
          'axle-a': { ratio: '4/1' },
        },
        cars: { car: { box: 'box-a', axle: 'axle-a' } },
      }),
      'box-b',
    ),
  'too-many-choices': manyChoices(),
  'may-not-apply': pair({
    roles: { box: { sort: 'code', length: 'length' }, prop: { length: 'length' } },
    checks: [
      {
        id: 'length',
        'at-most': ['box.length', 'prop.length'],
        when: { 'one-of': ['box.sort', ['s1']] },
      },
    ],
    parts: {
      'box-a': { sort: 's1', length: '500 mm' },
      'box-b': { length: '600 mm' },
      'prop-a': { length: '550 mm' },
    },
  }),
  'may-wind-up': loop('1.000 to 1.006'),
  'may-be-off-road-only': loop('1.006 to 1.020'),
  'contradicts-as-built': pair({
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('B') },
      'prop-a': { front: flange('A') },
    },
    cars: { ...PAIR.cars, sister: { box: 'box-b', prop: 'prop-a' } },
  }),
  'same-side': pair({
    parts: {
      'box-a': { rear: pin('20.0 ±0.01 mm') },
      'box-b': { rear: pin('20.0 ±0.01 mm') },
      'prop-a': { front: pin('20.0 ±0.01 mm') },
    },
  }),
  'chain-broken': () =>
    fitOf(
      world({
        ...UNIT,
        roles: { box: { coupling: 'code' }, transfer: { ratio: 'ratio' } },
        places: ['box', 'transfer?'],
        checks: [{ id: 'loop', agree: [['1'], ['transfer.ratio']], coupling: 'box.coupling' }],
      }),
      'box-a',
      { on: 'joined' },
    ),
  'fails-as-built-too': () =>
    fitOf(
      world({
        roles: { box: { coupling: 'code' }, axle: { ratio: 'ratio' } },
        places: ['box', 'axle'],
        checks: [{ id: 'loop', agree: [['1'], ['axle.ratio']], coupling: 'box.coupling' }],
        parts: {
          'box-a': { coupling: 'locked' },
          'axle-a': { ratio: '3.545' },
          'axle-b': { ratio: '3.545' },
        },
        cars: { car: { box: 'box-a', axle: 'axle-a' } },
      }),
      'axle-b',
    ),
  'demand-load': strongest,
  'drop-load': strongest,
  'ask-fact': untold({ a: 'A', b: 'B' }),
  'told-by-fact': untold({ a: 'A', b: 'B' }),
  'same-for-each-fact': untold({ a: 'B', b: 'B' }),
  'rule-open': pair({
    roles: { prop: { length: 'length' } },
    parts: { 'box-a': {}, 'box-b': {}, 'prop-a': {} },
    rules: [
      {
        id: 'short',
        when: { changed: 'box' },
        needs: { 'at-most': ['prop.length', '500 mm'] },
        because: 'Behind this gearbox there is room for a short shaft alone.',
      },
    ],
  }),
  'needed-place-empty': () => fitOf(world(UNIT), 'box-a', { on: 'joined' }),
  'wrong-role': () => inspected(world(UNIT), { fitted: { box: 'transfer-a' } }),
  'span-occupied': () => fitOf(world(UNIT), 'transfer-a', { with: { box: 'unit-a' } }),
  'no-place-to-span': () =>
    inspected(world({ ...UNIT, places: ['box'], cars: { car: { box: 'box-a' } } }), {
      fitted: { box: 'unit-a' },
    }),
  'stated-not-to-fit': stated({ verdict: 'does-not-fit' }),
  'face-on-no-mating': pair({
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('A'), sensor: optional(flange('S')) },
      'prop-a': { front: flange('A') },
    },
  }),
  'measure-to-order': made('1000 ±20 mm'),
  'order-after-measuring': made('1000 ±20 mm'),
};
