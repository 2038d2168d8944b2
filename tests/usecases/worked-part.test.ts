/**
 * Parts that are worked, wherever a question names a part: `part+work`, `part+first+second`.
 *
 * Length: one shop, in which each rule of works is asked on its own.
 */

import { describe, expect, test } from 'vitest';
import { sayFault } from '../../src/contract/problems/words.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import { articleOf } from '../../src/domain/judge/worked-part.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { QuestionError } from '../../src/usecases/errors.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { mateFaces } from '../../src/usecases/mate-faces.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

const gearbox = { 'one-of': ['role', ['gearbox']] };

/** The cart, in a shop that can turn one register into another. */
const SHOP = {
  ...CART,
  works: [
    {
      id: 'turn',
      name: { en: 'turned', de: 'abgedreht' },
      on: gearbox,
      gives: { interfaces: { rear: { pattern: 'f1', register: '60.00 ±0.02 mm' } } },
      voids: ['torque'],
      signOff: 'engineer',
      evidence: { basis: 'drawing', by: 'bench 2' },
    },
    {
      id: 'prove',
      name: 'proved',
      on: { equal: ['rear.pattern', 'rear.pattern'] },
      gives: { values: { torque: '180 N.m' } },
      signOff: 'workshop',
    },
    {
      id: 'stretch',
      name: 'stretched',
      on: { all: [gearbox, { 'at-least': ['rear.register', '65 mm'] }] },
      gives: { interfaces: { rear: { register: '71.00 ±0.02 mm' } } },
    },
    { id: 'bore', name: 'bored', on: gearbox, gives: { interfaces: { one: { pattern: 'f1' } } } },
  ],
};

const library = libraryOf(SHOP);
const { catalogue } = compileDocument(SHOP, BUILT_IN_KINDS);

const COMMON = {
  edition: null,
  lang: 'en',
  units: 'recorded' as const,
  torque: null,
  use: null,
  ignorePresent: false,
  facts: {},
  measured: [],
};

function question(part: string, more: Partial<FitInput> = {}): FitInput {
  const vehicle = { vehicle: 'cart-1', fitted: {}, adapters: {}, measured: [] };
  return { position: null, with: {}, changes: 'no', ...COMMON, ...vehicle, part, ...more };
}

function asked(part: string, more: Partial<FitInput> = {}) {
  return checkFit(library, question(part, more));
}

function faultsOf(ask: () => unknown) {
  try {
    ask();
  } catch (error) {
    if (!(error instanceof QuestionError)) throw error;
    return error.faults.map((fault) => [fault.at, fault.code, sayFault(fault, 'en')]);
  }
  throw new Error('it was answered');
}

function article(id: string) {
  if (catalogue === null) throw new Error('the shop has faults');
  return articleOf(id, catalogue);
}

describe('a worked part', () => {
  test('has what the work gives, and no rating that it voids', () => {
    const { part } = article('box-b+turn');
    const values = part?.faces.get('rear')?.alternatives[0];
    expect(part).toMatchObject({ id: 'box-b+turn', roles: ['gearbox'], numbers: [] });
    expect(part?.name).toEqual({ en: 'box b, turned', de: 'box b, abgedreht' });
    expect(values?.get('pattern')).toMatchObject({ code: 'f1', evidence: { basis: 'drawing' } });
    expect(values?.get('register')).toMatchObject({
      text: '60.00 ±0.02 mm',
      evidence: { by: 'bench 2' },
    });
    expect(part?.values.has('torque')).toBe(false);
    expect(catalogue?.parts.get('box-b')?.values.has('torque')).toBe(true);
    const before = catalogue?.parts.get('box-b')?.faces.get('rear')?.alternatives[0];
    expect(before?.get('pattern')).toMatchObject({ code: 'f2' });
  });

  test('is worked again in the order of its name', () => {
    const { part } = article('box-b+turn+prove');
    expect(part?.id).toBe('box-b+turn+prove');
    expect(part?.values.get('torque')?.text).toBe('180 N.m');
    expect(article('box-b+prove+turn').part?.values.has('torque')).toBe(false);
  });

  test.each([
    ['box-a+stretch', 'not-for-this-part'],
    // Its register is not recorded.
    ['box-c+stretch', 'not-known-to-apply'],
    ['box-a+bore', 'nothing-to-change'],
    ['motor+turn', 'not-for-this-part'],
    ['box-b+turn+stretch', 'not-for-this-part'],
  ])('%s is none: %s', (id, code) => {
    expect(article(id)).toMatchObject({ part: null, fault: { reason: { code } } });
    expect(article('box-b+stretch').part?.id).toBe('box-b+stretch');
  });
});

describe('a question', () => {
  test('about one is answered like any other, and says who must sign', () => {
    expect(asked('box-b').alone).toBe('fails');
    const answer = asked('box-b+turn+prove');
    expect([answer.part, answer.name, answer.alone]).toEqual([
      'box-b+turn+prove',
      'box b, turned, proved',
      'holds',
    ]);
    const signs = answer.cautions.filter(({ code }) => /-signs$|^work-/.test(code));
    expect(signs.map(({ code, show }) => [code, show])).toEqual([
      ['engineer-signs', 'always'],
      ['workshop-signs', 'always'],
    ]);
    expect(signs[0]?.text).toBe('“box b, turned, proved”: an engineer must sign for the work.');
    expect(asked('box-b').cautions.some(({ code }) => /-signs$|^work-/.test(code))).toBe(false);
  });

  test('a rating that is void is not recorded, so the load is open', () => {
    expect(asked('box-b+turn').alone).toBe('open');
  });

  test('what is worked is on the vehicle, beside the part, and one of two faces', () => {
    const fitted = { gearbox: 'box-b+turn+prove' };
    const vehicle = { ...COMMON, vehicle: 'cart-1', fitted, adapters: {} };
    expect(inspectVehicle(library, vehicle).state).toBe('holds');
    const wrong = { ...vehicle, fitted: { gearbox: 'box-b' } };
    expect(inspectVehicle(library, wrong).state).toBe('fails');
    expect(asked('shaft-a', { with: fitted }).alone).toBe('holds');
    const b = { part: 'shaft-a', interface: 'front' };
    const mate = (part: string) =>
      mateFaces(library, { ...COMMON, a: { part, interface: 'rear' }, b, adapters: [] });
    expect([mate('box-b').state, mate('box-b+turn').state]).toEqual(['fails', 'holds']);
    expect(mate('box-b+turn').cautions.map(({ code }) => code)).toContain('engineer-signs');
  });

  test.each([
    ['box-z+turn', 'unknown-part', 'There is no part "box-z". Did you mean \'box-a\'?'],
    ['box-b+trun', 'unknown-work', 'There is no work "trun". Did you mean \'turn\'?'],
    ['box-b+', 'unknown-work', 'There is no work "".'],
    [
      'box-b turn',
      'plus-read-as-space',
      'There is no part "box-b turn". In a URL, write "%2B" for "+".',
    ],
    ['motor+turn', 'work-not-for-part', '"turn" cannot be done on this part.'],
    [
      'box-c+stretch',
      'work-may-not-apply',
      '"stretch" is not known to be possible on this part: its record lacks values.',
    ],
    [
      'box-a+bore',
      'work-changes-nothing',
      '"bore" changes "one", which is not recorded of this part.',
    ],
  ])('about %s says what is wrong with it', (part, code, text) => {
    expect(faultsOf(() => asked(part))).toEqual([['part', code, text]]);
    expect(faultsOf(() => asked('box-a', { fitted: { gearbox: part } }))).toEqual([
      ['fitted.gearbox', code, text],
    ]);
  });
});

describe('what a rule says of a part', () => {
  const ruled = (rule: object) => libraryOf({ ...SHOP, rules: [{ id: 'r', ...rule }] });
  const excluded = ruled({
    when: { 'one-of': ['gearbox.part', ['box-b']] },
    excludes: { changed: 'gearbox' },
    because: 'The box is too heavy.',
  });

  test('may or may not be true of what a work has made of it: it is open', () => {
    const ask = (part: string) => checkFit(excluded, question(part));
    expect(ask('box-b').positions[0]?.rules.map(({ state }) => state)).toEqual(['fails']);
    expect(ask('box-b+turn').positions[0]?.rules.map(({ state }) => state)).toEqual(['open']);
    expect(ask('box-d').positions[0]?.rules).toEqual([]);
  });

  test('is said where the rule names the worked part itself', () => {
    const named = ruled({
      when: { 'one-of': ['gearbox.part', ['box-b', 'box-b+turn']] },
      excludes: { changed: 'gearbox' },
      because: 'The box is too heavy.',
    });
    const { positions } = checkFit(named, question('box-b+turn'));
    expect(positions[0]?.rules.map(({ state }) => state)).toEqual(['fails']);
  });
});

test('a part that sits between two others is said to, where it has no place of its own', () => {
  expect(asked('plate-ab').summary).toMatchObject({ code: 'goes-between' });
  expect(asked('plate-ab').summary.text).toContain('with this as their adapter');
});

describe('what a work leaves behind', () => {
  const drilled = ['50 ±0, 0 ±0 mm', '-50 ±0, 0 ±0 mm'];
  const parameters = (circle: object, holes: object) => ({
    circle: { type: 'measured', unit: 'mm', ...circle },
    holes: { type: 'points', unit: 'mm', ...holes },
  });
  /** A gearbox that is drilled anew, on another circle, before a shaft with the old holes. */
  const drilledShop = (own: object, gives: object, front: object) => ({
    ...SHOP,
    kinds: [
      {
        id: 'cart-flange',
        parameters: own,
        checks: [
          { id: 'circle', clearance: ['a.circle', 'b.circle'], min: '-0.2 mm', max: '0.2 mm' },
          { id: 'holes', coincide: ['a.holes', 'b.holes'], tolerance: '0.2 mm' },
        ],
      },
    ],
    parts: CART.parts.flatMap((part): object[] => {
      const face = (values: object) => ({ kind: 'cart-flange', ...values });
      if (part.id === 'shaft-a') return [{ ...part, interfaces: { front: face(front) } }];
      if (!part.id.startsWith('box-')) return part.id.startsWith('plate') ? [] : [part];
      return [{ ...part, interfaces: { rear: face({ circle: '100 ±0 mm', holes: drilled }) } }];
    }),
    works: [
      { id: 'redrill', name: 'drilled', on: gearbox, gives: { interfaces: { rear: gives } } },
    ],
    offers: [],
  });
  const alone = (shop: object, part: string) => checkFit(libraryOf(shop), question(part)).alone;

  test('what said in another way what it gives is not on record any more', () => {
    const either = parameters({ unless: ['holes'] }, { unless: ['circle'] });
    const byCircle = drilledShop(either, { circle: '112 ±0 mm' }, { holes: drilled });
    expect([alone(byCircle, 'box-b'), alone(byCircle, 'box-b+redrill')]).toEqual(['holds', 'open']);
    const holes = ['56 ±0, 0 ±0 mm', '-56 ±0, 0 ±0 mm'];
    const byHoles = drilledShop(either, { holes }, { circle: '100 ±0 mm' });
    expect([alone(byHoles, 'box-b'), alone(byHoles, 'box-b+redrill')]).toEqual(['holds', 'open']);
    const both = drilledShop(either, { holes }, { circle: '112 ±0 mm', holes });
    expect(alone(both, 'box-b+redrill')).toBe('holds');
  });

  test('an optional value of that sort decides nothing, and is still asked for', () => {
    const optional = parameters({ unless: ['holes'] }, { optional: true });
    const front = { circle: '112 ±0 mm', holes: ['56 ±0, 0 ±0 mm', '-56 ±0, 0 ±0 mm'] };
    const shop = drilledShop(optional, { circle: '112 ±0 mm' }, front);
    const answer = checkFit(libraryOf(shop), question('box-b+redrill'));
    expect(answer.alone).toBe('open');
    expect(answer.measure.map(({ on }) => on.parameter)).toEqual(['holes']);
  });

  test('a rating that follows from other values cannot be voided', () => {
    const torque = { term: 'rated', rating: true };
    const roles = CART.roles.map((role) =>
      role.id === 'gearbox'
        ? { ...role, values: { rated: { type: 'measured', unit: 'N.m' }, torque } }
        : role,
    );
    const parts = CART.parts.map((part) =>
      part.id.startsWith('box-') ? { ...part, values: { rated: '200 N.m' } } : part,
    );
    const [turn] = SHOP.works;
    const { faults } = compileDocument({ ...SHOP, roles, parts, works: [turn] }, BUILT_IN_KINDS);
    expect(faults.map(({ pointer, code }) => [pointer, code])).toEqual([
      ['/works/0/voids/0', 'derived-value'],
    ]);
  });

  test('"none" tells nothing in what it gives, as on a part', () => {
    const gives = { interfaces: { rear: { pattern: 'none' } } };
    const works = [{ id: 'plane', name: 'planed', on: gearbox, gives }];
    const { faults } = compileDocument({ ...SHOP, works }, BUILT_IN_KINDS);
    expect(faults.map(({ pointer, code }) => [pointer, code])).toEqual([
      ['/works/0/gives/interfaces/rear/pattern', 'placeholder-code'],
    ]);
  });
});
