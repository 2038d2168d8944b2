/**
 * What a question says was measured is laid over the records, whichever question it is; and every
 * fault of a kit question is said at its field, all of them at once.
 */

import { describe, expect, test } from 'vitest';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import { asked, faultsOf, library, priced, read, wanted } from './kit-asking.js';

describe('what was measured', () => {
  const rear = (more: Partial<KitInput>, part = 'box-a') =>
    asked(more).question.catalogue.parts.get(part)?.faces.get('rear')?.alternatives[0];

  test('stands in place of what is recorded of the part, as first-hand', () => {
    const register = { interface: 'rear', parameter: 'register' };
    for (const on of [{ part: 'box-a' }, { position: 'gearbox' }]) {
      const measured = [read({ ...on, ...register }, '61.50 mm', 'caliper')];
      const value = rear({ measured })?.get('register');
      expect(value).toMatchObject({ text: '61.50 mm', evidence: { basis: 'measured' } });
      expect(rear({ measured })?.get('pattern')).toMatchObject({ code: 'f1' });
      expect(asked({ measured }).asked.measured).toEqual([
        { on: { part: 'box-a', ...register }, value: '61.50 mm', tool: 'caliper' },
      ]);
    }
    expect(rear({})?.get('register')?.text).toBe('60.00 ±0.02 mm');
    expect(library.edition(null).catalogue.parts.get('box-a')).toBe(
      asked().question.catalogue.parts.get('box-a'),
    );
  });

  test('may be several values of one part, and of the part itself', () => {
    const measured = [
      read({ part: 'box-c', interface: 'rear', parameter: 'register' }, '60 mm'),
      read({ part: 'box-c', parameter: 'torque' }, '220 N.m'),
    ];
    expect(rear({ measured }, 'box-c')?.get('register')?.text).toBe('60 mm');
    const part = asked({ measured }).question.catalogue.parts.get('box-c');
    expect(part?.values.get('torque')?.text).toBe('220 N.m');
  });

  test('is at the position that the question says something of', () => {
    const measured = [read({ position: 'gearbox', parameter: 'torque' }, '9 N.m')];
    const { catalogue } = asked({ measured, fitted: { gearbox: 'box-b' } }).question;
    expect(catalogue.parts.get('box-b')?.values.get('torque')?.text).toBe('9 N.m');
    expect(catalogue.parts.get('box-a')?.values.get('torque')?.text).toBe('200 N.m');
  });

  test('is of what is worked, too: the work is done on the part as it was measured', () => {
    const measured = [
      read({ part: 'strong-box', interface: 'rear', parameter: 'register' }, '60 mm'),
    ];
    const { catalogue } = asked({ measured, want: [wanted('strong-box+polish')] }).question;
    const worked = catalogue.parts.get('strong-box+polish');
    expect(worked?.faces.get('rear')?.alternatives[0]?.get('register')?.text).toBe('60 mm');
    expect(worked?.values.get('torque')?.text).toBe('310 N.m');
  });
});

describe('which part stands somewhere', () => {
  const at = (position: string, value: string, hand: string | null = null) =>
    read({ position, hand }, value);
  const seats = (more: Partial<KitInput>) => {
    const { said } = asked(more).question;
    return [...said.seats].map(([id, here]) => {
      const told = here.hands ? [here.left, here.right] : [here.seat];
      return [
        id,
        ...told.map(({ occupant }) => (occupant.is === 'part' ? occupant.part : occupant.is)),
      ];
    });
  };

  test('is as if `fitted` said so, by whatever name of the part', () => {
    for (const name of ['box-b', 'number:W.9, 120', 'none']) {
      const fitted = asked({ fitted: { gearbox: name } }).question.said;
      expect(asked({ measured: [at('gearbox', name)] }).question.said).toEqual(fitted);
    }
  });

  test('wins over what `fitted` says, and is the place of a value that was measured too', () => {
    const measured = [
      read({ position: 'gearbox', parameter: 'torque' }, '9 N.m'),
      at('gearbox', 'box-b'),
    ];
    const { question, asked: form } = asked({ measured, fitted: { gearbox: 'unknown' } });
    expect(question.catalogue.parts.get('box-b')?.values.get('torque')?.text).toBe('9 N.m');
    expect(form.measured).toEqual([
      { on: { position: 'gearbox' }, value: 'box-b' },
      { on: { part: 'box-b', parameter: 'torque' }, value: '9 N.m' },
    ]);
  });

  test('may be of one hand: the other is as it was', () => {
    expect(seats({ measured: [at('wheel-shaft', 'none', 'left')] })).toEqual([
      ['wheel-shaft', 'empty', 'wheel-shaft-r'],
    ]);
    const fitted = { 'wheel-shaft': { left: 'unknown', right: 'none' } };
    expect(seats({ fitted, measured: [at('wheel-shaft', 'wheel-shaft-l', 'left')] })).toEqual([
      ['wheel-shaft', 'wheel-shaft-l', 'empty'],
    ]);
  });

  test('is one part or none, of a place that there is', () => {
    const measured = [
      at('gearbox', 'unknown'),
      { ...at('gearbox', ''), value: ['box-a', 'box-b'] },
      at('gearbox', '56 mm'),
      at('gear', 'box-a'),
      at('gearbox', 'box-a', 'left'),
      at('engine', 'motor'),
      at('engine', 'none'),
      at('wheel-shaft', 'none', 'left'),
      at('wheel-shaft', 'wheel-shaft-r'),
      read({ position: 'gearbox', interface: 'rear' }, '60 mm'),
    ];
    expect(faultsOf({ measured })).toEqual([
      'measured.0.value: reading-of-no-part',
      'measured.1.value: reading-of-no-part',
      'measured.2.value: unknown-part',
      'measured.3.on.position: unknown-position',
      'measured.4.on.hand: not-handed',
      'measured.6: measured-twice',
      'measured.8: measured-twice',
      'measured.9: reading-of-nothing',
    ]);
  });

  test('two readings of an article that differ are a fault; the same twice is none', () => {
    const torque = (value: string) => read({ part: 'box-a', parameter: 'torque' }, value);
    expect(faultsOf({ measured: [torque('9 N.m'), torque('9 N.m')] })).toEqual([]);
    expect(faultsOf({ measured: [torque('9 N.m'), torque('8 N.m')] })).toEqual([
      'measured.1: measured-twice',
    ]);
  });
});

describe('every fault is said at its field, all of them at once', () => {
  test('names', () => {
    const more = {
      vehicle: 'cart-1',
      want: [wanted('box-z'), wanted(['box-a', 'box-y']), wanted('box-a', { position: 'box' })],
      keep: ['gearbox', 'geer'],
      avoid: [{ part: 'X' }],
      owned: [{ part: 'q', quantity: 1 }],
      lots: ['crate', 'crates'],
      ruleset: 'class-b',
      ownOffers: [priced('part', 'r', '1'), priced('lot', 's', '1'), priced('work', 't', '1')],
    };
    expect(faultsOf(more).sort()).toEqual([
      'avoid.0.part: unknown-part',
      'keep.1: unknown-position',
      'lots.1: unknown-lot',
      'offers.0.part: unknown-part',
      'offers.1.lot: unknown-lot',
      'offers.2.work: unknown-work',
      'owned.0.part: unknown-part',
      'ruleset: unknown-ruleset',
      'want.0.part: unknown-part',
      'want.1.part.1: unknown-part',
      'want.2.position: unknown-position',
    ]);
  });

  test('money, hours and amounts', () => {
    const more = {
      limits: { ...USUAL_KIT.limits, cost: '-1', labourHours: '1/3' },
      labourRate: '1.00001',
      torque: '9',
      ownOffers: [{ ...priced('sku', 'GB', '1,5'), pack: '0' }, priced('sku', 'X', '1')],
    };
    expect(faultsOf(more).sort()).toEqual([
      'labourRate: not-a-price',
      'limits.cost: not-a-price',
      'limits.labourHours: not-hours',
      'offers.0.pack: amount-at-fault',
      'offers.0.price: not-a-price',
      'offers.0.sku: unknown-sku',
      'offers.1.sku: ambiguous-sku',
      'torque: not-a-torque',
    ]);
  });

  test('conditions, by pointers into them', () => {
    const checks = [
      { 'at-least': ['gearbox.gears', 6] },
      { 'one-of': ['gearbox.part', ['box-a', 'box-z']] },
      { changed: 'gear' },
      { all: [{ kept: 'engine' }, { 'at-most': ['gearbox.torque', '5 mm'] }] },
    ];
    const more = {
      want: checks.map((condition) => ({ position: 'gearbox', condition })),
      avoid: [{ position: 'box', condition: { empty: 'gearbox' } }],
    };
    expect(faultsOf(more).sort()).toEqual([
      '/want/0/condition/at-least/0: condition-at-fault',
      '/want/1/condition/one-of/1/1: condition-at-fault',
      '/want/2/condition/changed: condition-at-fault',
      '/want/3/condition/all/1/at-most: condition-at-fault',
      'avoid.0.position: unknown-position',
    ]);
  });

  test('what was measured', () => {
    const register = { interface: 'rear', parameter: 'register' };
    const more = {
      fitted: { gearbox: 'unknown' },
      measured: [
        read({ position: 'gearbox', ...register }, '60 mm'),
        read({ position: 'wheel-shaft', parameter: 'length' }, '60 mm'),
        read(register, '60 mm'),
        read({ part: 'box-a' }, '60 mm'),
        read({ part: 'box-a', ...register }, '60'),
        read({ part: 'box-a', interface: 'reer', parameter: 'register' }, '60 mm'),
        read({ part: 'box-a', parameter: 'torq' }, '60 N.m'),
        read({ part: 'box-z', parameter: 'torque' }, '60 N.m'),
        read({ fact: 'axle-tag' }, 'b'),
        read({ part: 'box-a', interface: 'rear', parameter: 'Register' }, '60 mm'),
      ],
    };
    expect(faultsOf(more).sort()).toEqual([
      'measured.0.on.position: no-part-there',
      'measured.1.on: which-hand',
      'measured.2: reading-of-nothing',
      'measured.3: reading-of-nothing',
      'measured.4.value: reading-at-fault',
      'measured.5.on.interface: unknown-interface',
      'measured.6.value: reading-at-fault',
      'measured.7.on.part: unknown-part',
      'measured.8.on.fact: unknown-fact',
      'measured.9: reading-of-nothing',
    ]);
  });

  test('to want and to avoid one part is none: that has no route', () => {
    expect(faultsOf({ want: [wanted('box-a')], avoid: [{ part: 'box-a' }] })).toEqual([]);
  });
});
