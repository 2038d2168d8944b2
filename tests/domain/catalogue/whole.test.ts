/**
 * What a whole document compiles to where that is more than its words: vehicles that are like one
 * another, options that a fact tells, numbers of vehicles, times, amounts and rulesets.
 */

import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../../src/domain/catalogue/compile.js';
import { matchesVin, type VinPattern } from '../../../src/domain/catalogue/vin.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { type Changes, changed, GONE, linesOf, SPLINE } from './sample-document.js';

function compiled(changes: Changes = {}): Catalogue {
  const { catalogue, faults, warnings } = compileDocument(changed(changes), [SPLINE]);
  if (catalogue === null) throw new Error(linesOf({ faults, warnings }));
  return catalogue;
}

const vehicleIn = (catalogue: Catalogue, id: string) => {
  const vehicle = catalogue.vehicles.get(id);
  if (vehicle === undefined) throw new Error(`there is no ${id}`);
  return vehicle;
};

const part = (id: string) => ({ is: 'part', part: id });
const ROD_OR_CABLE = new Map([
  ['rod', part('gb5-a')],
  ['cable', part('gb6-late')],
]);

describe('a vehicle that is like another', () => {
  const plain = vehicleIn(compiled(), 'tarn-2-plain');
  const any = vehicleIn(compiled(), 'tarn-2-any');

  it('has its layout, and its own lies over the rest, place by place and fact by fact', () => {
    expect([plain.like, plain.layout.id, plain.variant]).toEqual(['tarn-2', 'long-awd', null]);
    expect(plain.facts).toEqual(new Map([['axle-tag', 'short']]));
    expect(plain.fitted.get('engine')).toEqual({ hands: false, occupant: part('engine-2') });
    const gearbox = { is: 'option', fact: 'shift', by: ROD_OR_CABLE };
    expect(plain.fitted.get('gearbox')).toEqual({ hands: false, occupant: gearbox });
    expect([...plain.adapters]).toEqual([
      ['gearbox-prop', ['stub']],
      ['prop-final', ['stub']],
    ]);
  });

  it('and so on along the chain', () => {
    expect([any.layout.id, any.facts, any.fitted, any.adapters]).toEqual([
      plain.layout.id,
      plain.facts,
      plain.fitted,
      plain.adapters,
    ]);
    expect(any.replacedBy).toEqual(['tarn-2', 'tarn-2-plain']);
  });

  it('whatever the order in which they stand', () => {
    const { vehicles } = changed({}) as { vehicles: { id: string }[] };
    const turned = compiled({ '/vehicles': vehicles.toReversed() });
    expect([...turned.vehicles.keys()]).toEqual(['tarn-2-any', 'tarn-2-plain', 'tarn-2']);
    expect(vehicleIn(turned, 'tarn-2-any').fitted).toEqual(any.fitted);
  });

  it('has its evidence too, so that nothing is known better by being copied', () => {
    const weak = { '/vehicles/0/evidence': { basis: 'reported' } };
    expect(vehicleIn(compiled(weak), 'tarn-2-any').evidence.basis).toBe('reported');
    const own = { ...weak, '/vehicles/2/evidence': { basis: 'measured' } };
    expect(vehicleIn(compiled(own), 'tarn-2-any').evidence.basis).toBe('measured');
  });

  it('a long chain of them is no trouble', () => {
    const { vehicles } = changed({}) as { vehicles: object[] };
    const chain = Array.from({ length: 5000 }, (_, index) => {
      const like = index === 0 ? 'tarn-2' : `v-${index - 1}`;
      return { id: `v-${index}`, make: 'Orrin', model: 'Tarn', like };
    });
    const all = compiled({ '/vehicles': [...chain.toReversed(), ...vehicles] });
    expect(vehicleIn(all, 'v-4999').fitted).toEqual(vehicleIn(all, 'tarn-2').fitted);
  });
});

describe('an option', () => {
  const at = (changes: Changes, position: string, id = 'tarn-2-any') =>
    vehicleIn(compiled(changes), id).fitted.get(position);

  it('is what its fact tells, once that is known', () => {
    const rod = { '/vehicles/2/facts': { shift: 'rod' } };
    expect(at(rod, 'gearbox')).toEqual({ hands: false, occupant: part('gb5-a') });
    const cable = { '/vehicles/2/facts': { shift: 'cable' } };
    expect(at(cable, 'gearbox')).toEqual({ hands: false, occupant: part('gb6-late') });
    expect(at(cable, 'linkage')).toEqual({ hands: false, occupant: { is: 'empty' } });
    expect(at(cable, 'gearbox', 'tarn-2-plain')).toMatchObject({ occupant: { is: 'option' } });
  });

  it('is not recorded for a value that it does not name', () => {
    expect(at({ '/vehicles/2/facts': { shift: 'column' } }, 'gearbox')).toBeUndefined();
    expect(at({ '/vehicles/2/facts': { 'axle-tag': 'long' } }, 'half-shaft')).toBeUndefined();
  });

  it('is one for each hand', () => {
    const pair = { hands: true, left: part('hs-l'), right: part('hs-r') };
    expect(at({}, 'half-shaft')).toEqual(pair);
    const unknown = { '/vehicles/0/facts': GONE, '/vehicles/1/facts': GONE };
    const option = (id: string) => ({
      is: 'option',
      fact: 'axle-tag',
      by: new Map([['short', part(id)]]),
    });
    const open = { hands: true, left: option('hs-l'), right: option('hs-r') };
    expect(at(unknown, 'half-shaft')).toEqual(open);
  });

  it('may hold a part that spans places, where each is an option of the same fact', () => {
    const spanning = {
      '/parts/0/spans': ['gearbox', 'linkage'],
      '/layouts/0/positions/3/roles/1': 'gearbox',
      '/vehicles/0/fitted/linkage': 'gb5-a',
      '/vehicles/1/fitted/linkage': { by: 'shift', rod: 'gb5-a', cable: null },
    };
    expect(at(spanning, 'linkage')).toMatchObject({ occupant: { is: 'option' } });
  });
});

describe('a pattern of identification numbers', () => {
  const { vin } = vehicleIn(compiled(), 'tarn-2-plain');
  const [open, range] = vin as readonly [VinPattern, VinPattern];

  it.each([
    [open, 'XKR12345678901234', true],
    [open, 'XKRABCDEFGH123456', true],
    [open, 'XKS12345678901234', false],
    [open, 'XKR1234567890123', false],
    [open, 'XKR123456789012345', false],
    [range, 'XKS12345678099999', false],
    [range, 'XKS12345678100000', true],
    [range, 'XKS12345678149999', true],
    [range, 'XKS12345678150000', false],
    [range, 'XKS1234567810000A', false],
    [range, 'XKR12345678120000', false],
  ])('%j and %s: %s', (pattern, number, is) => {
    expect(matchesVin(pattern, number)).toBe(is);
  });
});

describe('times, amounts and terms', () => {
  const { layouts, lots, works, rules } = compiled();

  it('are exact, in hours and in base units', () => {
    const { labour, access } = layouts.get('long-awd')?.positions.get('gearbox') ?? {};
    expect([labour, access].map((time) => exactText(time ?? never()))).toEqual(['6', '4']);
    expect(layouts.get('long-awd')?.positions.get('engine')).toMatchObject({
      labour: null,
      access: null,
    });
    expect(works.get('re-drill')).toMatchObject({ signOff: 'engineer', isReversible: false });
    const [one, two, place] = lots.get('shaft-set')?.contains ?? [];
    expect([one, two].map((item) => item?.is === 'part' && exactText(item.amount.value))).toEqual([
      '1',
      '2',
    ]);
    expect(place).toEqual({ is: 'position', vehicle: 'tarn-2', position: 'prop-shaft' });
  });

  it('of rules are those of the layout', () => {
    const oil = rules.get('long-awd')?.find(({ id }) => id === 'oil');
    expect(oil?.recommends).toMatchObject({ position: 'linkage', part: 'link-rod' });
    expect(oil?.consumes).toMatchObject({
      part: 'stub',
      quantity: { reference: { of: 'value', position: 'gearbox', value: 'oil-fill' } },
    });
  });
});

function never(): never {
  throw new Error('there is no such time');
}

describe('a ruleset', () => {
  const short = { id: 'short', positions: [{ id: 'engine', name: 'Engine', roles: ['engine'] }] };
  const demands = compiled({ '/layouts/1': short }).rulesets.get('class-a')?.demands;

  it('demands in each layout what that has words for, and says where that is not all', () => {
    expect(demands?.get('long-awd')).toMatchObject({
      keep: ['engine'],
      checks: [{ id: 'at-most-gear-count' }],
      isWhole: true,
    });
    expect(demands?.get('short')).toEqual({ keep: ['engine'], checks: [], isWhole: false });
  });
});
