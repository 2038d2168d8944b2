/**
 * A kit question becomes what the search is asked: names looked up, texts understood, defaults
 * filled in.
 *
 * Left out: the search itself, and what a door checks of the form.
 */

import { describe, expect, test } from 'vitest';
import { USUAL_STEPS } from '../../src/domain/kit/extent.js';
import { exactText } from '../../src/domain/quantity/rational.js';
import { type KitInput, USUAL_KIT } from '../../src/usecases/kit-input.js';
import { asked, priced, wanted } from './kit-asking.js';

describe('what is asked', () => {
  test('is with its defaults a question of its own that asks the same', () => {
    expect(asked().asked).toEqual({
      edition: 1,
      lang: 'en',
      units: 'recorded',
      vehicle: 'cart-1',
      facts: {},
      fitted: {},
      adapters: {},
      ignorePresent: false,
      want: [],
      keep: [],
      avoid: [],
      owned: [],
      lots: 'all',
      workUpTo: 'engineer',
      limits: { inStock: false },
      unknowns: 'allow',
      from: 'recorded',
      offers: [],
      offersMode: 'over',
      measured: [],
      prefer: 'cost',
      routes: 3,
      undominated: false,
      steps: USUAL_STEPS,
    });
  });

  test('has parts by their ids, whatever they were called', () => {
    const { question, asked: echo } = asked({
      want: [
        wanted(['number:W9,120', 'sku:GB-7700', 'box-b'], { position: 'gearbox', renew: true }),
        { lot: 'crate', whole: true },
      ],
      avoid: [{ part: 'W.9, 120+polish' }, { supplier: 'Fennuld' }, { supplier: 'Fennuld' }],
      fitted: { gearbox: '44/10-070', 'wheel-shaft': { left: 'none', right: 'none' } },
      adapters: { 'box-shaft': ['plate-ab'] },
      ruleset: 'class-a',
    });
    expect(question.wants).toEqual([
      {
        is: 'part',
        position: 'gearbox',
        hand: null,
        parts: ['strong-box', 'box-b'],
        renews: true,
      },
      { is: 'lot', lot: 'crate', whole: true },
    ]);
    expect([...question.avoid.parts]).toEqual(['strong-box+polish']);
    expect(question.catalogue.parts.has('strong-box+polish')).toBe(true);
    expect([...question.avoid.suppliers]).toEqual(['Fennuld']);
    expect(question.ruleset?.id).toBe('class-a');
    expect(question.said.seats.get('gearbox')).toMatchObject({
      seat: { occupant: { part: 'old-box' }, origin: 'said' },
    });
    expect(echo).toMatchObject({
      want: [
        { part: ['strong-box', 'box-b'], position: 'gearbox', renew: true },
        { lot: 'crate', whole: true },
      ],
      avoid: [{ part: 'strong-box+polish' }, { supplier: 'Fennuld' }],
      fitted: { gearbox: 'old-box', 'wheel-shaft': 'none' },
      adapters: { 'box-shaft': ['plate-ab'] },
      ruleset: 'class-a',
    });
  });

  test('has money and hours as exact numbers', () => {
    const limits = { ...USUAL_KIT.limits, cost: '2500.5', labourHours: '12.50', leadDays: 0 };
    const { question, asked: echo } = asked({ limits, labourRate: '60' });
    expect(question.limits).toMatchObject({ cost: 25_005_000, leadDays: 0 });
    expect(exactText(question.limits.labourHours ?? never())).toBe('12.5');
    expect(question.labourRate).toBe(600_000);
    expect(echo).toMatchObject({
      labourRate: '60.00',
      limits: { cost: '2500.50', labourHours: '12.5', leadDays: 0, inStock: false },
    });
  });

  test('has a condition in the words of the layout', () => {
    const condition = { 'at-least': ['gearbox.torque', '250 N.m'] };
    const want = [{ position: 'gearbox', condition }];
    const { question, asked: echo } = asked({ want });
    expect(question.wants).toMatchObject([
      { is: 'condition', position: 'gearbox', condition: { test: 'check' } },
    ]);
    expect(echo.want).toEqual(want);
    expect(asked({ avoid: want }).question.avoid.conditions).toHaveLength(1);
  });

  test('counts what is at hand, one place full where no number is named', () => {
    const owned = [
      { part: 'strong-box', quantity: null },
      { part: 'number:W9,120', quantity: 2 },
      { part: 'wheel-shaft-l', quantity: null },
      { part: 'hook', quantity: null },
    ];
    const { question, asked: echo } = asked({ owned });
    expect([...question.owned]).toEqual([
      ['strong-box', 3],
      ['wheel-shaft-l', 1],
      ['hook', 1],
    ]);
    expect(echo.owned[0]).toEqual({ part: 'strong-box', quantity: 3 });
  });

  test('has the lots that may be bought, and always one that is wanted', () => {
    expect([...asked().question.lots]).toEqual(['crate']);
    expect([...asked({ lots: 'none' }).question.lots]).toEqual([]);
    expect([...asked({ lots: ['crate', 'crate'] }).question.lots]).toEqual(['crate']);
    const want = [{ lot: 'crate', whole: null }];
    expect([...asked({ lots: 'none', want }).question.lots]).toEqual(['crate']);
  });
});

function never(): never {
  throw new Error('this is there');
}

describe('prices', () => {
  const offered = (more: Partial<KitInput>) =>
    asked(more).question.offers.map(({ record, price }) => [record.for, price / 10_000]);

  test('are those of the price and stock list, whose number is told', () => {
    expect(asked().offers).toBe(1);
    expect(offered({})).toEqual([
      ['strong-box', 100],
      ['strong-box', 90],
      ['crate', 190],
      ['polish', 20],
      ['old-box', 20],
      ['hook', 20],
    ]);
  });

  test("of one's own stand in place of those of the same goods, or of all", () => {
    const own = [priced('part', 'number:W9,120', '80.00'), priced('work', 'polish', '1')];
    expect(offered({ ownOffers: own })).toEqual([
      ['crate', 190],
      ['old-box', 20],
      ['hook', 20],
      ['strong-box', 80],
      ['polish', 1],
    ]);
    expect(offered({ ownOffers: own, offersMode: 'replace' })).toEqual([
      ['strong-box', 80],
      ['polish', 1],
    ]);
    expect(asked({ ownOffers: own }).asked.offers).toEqual([
      { part: 'strong-box', price: '80.00' },
      { work: 'polish', price: '1.00' },
    ]);
  });

  test('under an order code are as they stand there, but for what is said', () => {
    const own = [{ ...priced('sku', 'C-1', '150.00'), stock: 3, pack: '2' }];
    const { question, asked: echo } = asked({ ownOffers: own });
    const [offer] = question.offers.filter(({ record }) => record.for === 'crate');
    expect(offer?.record).toEqual({
      id: '(offers.0)',
      for: 'crate',
      price: '150.00',
      sku: 'C-1',
      stock: 3,
      pack: '2',
    });
    expect(echo.offers).toEqual([{ sku: 'C-1', price: '150.00', stock: 3, pack: '2' }]);
  });
});
