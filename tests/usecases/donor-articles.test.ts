/**
 * What nobody recorded of a vehicle that is taken apart: it comes out of its lot alone, meets what
 * it met on its vehicle, and of all else nobody knows.
 *
 * The wreck has a box that nobody recorded, then shaft-bb and axle-b; the cart has box-a, shaft-aa
 * and axle-a. Ends meet where they are alike.
 */

import { describe, expect, test } from 'vitest';
import type { CatalogueDocument, PartRecord } from '../../src/domain/catalogue/document.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import type { KitAnswer, RouteView } from '../../src/usecases/kit-answer.js';
import type { KitInput } from '../../src/usecases/kit-input.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { libraryOf } from '../memory-store.js';
import { PLAIN } from './kit-asking.js';

function part(id: string, role: string, ends: Readonly<Record<string, string>>): PartRecord {
  const faces = Object.entries(ends).map(([name, pattern]) => {
    return [name, { kind: 'joint', pattern }] as const;
  });
  return { id, name: id, roles: [role], interfaces: Object.fromEntries(faces) };
}

const POSITIONS = [
  { id: 'box', name: { en: 'Gearbox', de: 'Getriebe' }, roles: ['box'] },
  { id: 'shaft', name: { en: 'Shaft', de: 'Welle' }, roles: ['shaft'] },
  { id: 'axle', name: { en: 'Axle', de: 'Achse' }, roles: ['axle'] },
];

const MATINGS = [
  { id: 'box-shaft', between: ['box.rear', 'shaft.front'] as const },
  { id: 'shaft-axle', between: ['shaft.rear', 'axle.front'] as const },
];

const WRECK = {
  id: 'wreck',
  make: 'Marl',
  model: 'Wreck',
  layout: 'row',
  fitted: { shaft: 'shaft-bb', axle: 'axle-b' },
};

const WORLD: CatalogueDocument = {
  catalogue: 1,
  lang: 'en',
  currency: 'EUR',
  evidence: { basis: 'maker' },
  kinds: [
    {
      id: 'joint',
      name: 'joint',
      parameters: { pattern: { type: 'code' } },
      checks: [{ id: 'pattern', equal: 'pattern' }],
    },
  ],
  roles: [
    { id: 'box', name: 'box', faces: ['rear', 'top'] },
    { id: 'shaft', name: 'shaft', faces: ['front', 'rear'] },
    { id: 'axle', name: 'axle', faces: ['front'] },
  ],
  parts: [
    part('box-a', 'box', { rear: 'a' }),
    part('shaft-aa', 'shaft', { front: 'a', rear: 'a' }),
    part('shaft-bb', 'shaft', { front: 'b', rear: 'b' }),
    part('axle-a', 'axle', { front: 'a' }),
    part('axle-b', 'axle', { front: 'b' }),
  ],
  layouts: [{ id: 'row', positions: POSITIONS, matings: MATINGS, unmated: 'ignore' }],
  vehicles: [
    {
      id: 'cart',
      make: 'Marl',
      model: 'Cart',
      layout: 'row',
      fitted: { box: 'box-a', shaft: 'shaft-aa', axle: 'axle-a' },
    },
    WRECK,
  ],
  lots: [
    {
      id: 'donor',
      name: { en: 'one wreck', de: 'ein Wrack' },
      contains: [
        { vehicle: 'wreck', position: 'box' },
        { vehicle: 'wreck', position: 'shaft' },
        { vehicle: 'wreck', position: 'axle' },
      ],
    },
  ],
  offers: [{ id: 'o-donor', for: 'donor', price: '500.00' }],
};

const BOX = 'donor:donor:box';

function ask(more: Partial<KitInput> = {}, world: Partial<CatalogueDocument> = {}): KitAnswer {
  return resolveKitQuestion(libraryOf({ ...WORLD, ...world }), {
    ...PLAIN,
    vehicle: 'cart',
    ...more,
  });
}

const wanted = (id: string) => ({ part: id, position: null, hand: null, renew: false });

const SHAFT = { want: [wanted('shaft-bb')] };

function first({ routes }: KitAnswer): RouteView {
  const [route] = routes;
  if (route === undefined) throw new Error('there is no route');
  return route;
}

/** Where what of the lot is put in, and its name for people. */
function fromDonor({ lines }: RouteView): (string | null)[][] {
  return lines
    .filter(({ part: id }) => id?.startsWith('donor:') === true)
    .map(({ key, name, source, price, fromLot }) => [key, name, source, price, fromLot]);
}

describe('what nobody recorded of a donor', () => {
  test('goes in beside what it stood beside, and is paid for with the lot', () => {
    const route = first(ask(SHAFT));
    expect([route.grade, route.changes]).toEqual(['proven', ['box', 'shaft', 'axle']]);
    expect(fromDonor(route)).toEqual([
      [`add:box:${BOX}`, 'Gearbox of the donor ‘one wreck’, not recorded', 'lot', '0.00', 'donor'],
    ]);
    expect(route.totals.cost).toBe('500.00');
    expect(route.measure).toEqual([]);
  });

  test('has a name in German', () => {
    const [line] = fromDonor(first(ask({ ...SHAFT, lang: 'de' })));
    expect(line?.[1]).toBe('Getriebe aus dem Spender ‚ein Wrack‘, nicht erfasst');
  });

  test('is not known to meet anything else: one has to find out what it is, once', () => {
    const want = [{ position: 'box', condition: { changed: 'box' } }];
    const route = first(ask({ want, keep: ['shaft', 'axle'] }));
    expect([route.grade, route.changes]).toEqual(['open', ['box']]);
    expect(route.measure.map(({ on, code, text }) => [on.part, code, text])).toEqual([
      [
        BOX,
        'identify',
        'Find out which part this is: “Gearbox of the donor ‘one wreck’, not recorded”.',
      ],
    ]);
  });

  test('is left over where it has no use', () => {
    const route = first(ask({ want: [wanted('axle-b'), wanted('shaft-bb')], avoid: [] }));
    expect(fromDonor(route)).toHaveLength(1);
    const plates = [...(WORLD.parts ?? []), part('box-b', 'box', { rear: 'b' })];
    const want = [wanted('box-b'), wanted('shaft-bb')];
    const offers = [...(WORLD.offers ?? []), { id: 'o-box', for: 'box-b', price: '10.00' }];
    const other = first(ask({ want }, { parts: plates, offers }));
    const [lot] = other.lines.filter(({ action }) => action === 'lot');
    expect(lot?.leftOver.map(({ part: id, quantity }) => [id, quantity.value])).toEqual([
      [BOX, '1'],
    ]);
  });

  test('is not to be had without its lot', () => {
    expect(ask({ ...SHAFT, lots: 'none' }).routes).toEqual([]);
    expect(ask({ ...SHAFT, lots: ['donor'] }).routes).toHaveLength(1);
  });

  test('may be any part that a rule speaks of', () => {
    const rules = [
      {
        id: 'never',
        when: { 'one-of': ['box.part', ['box-a']] },
        excludes: { 'one-of': ['shaft.part', ['shaft-bb']] },
        because: 'they touch',
      },
    ];
    const route = first(ask(SHAFT, { rules }));
    expect(route.grade).toBe('open');
    expect(route.measure.map(({ on, code }) => [on.part, code])).toEqual([[BOX, 'identify']]);
  });

  test('may need what the other vehicle has no place for', () => {
    // On the wreck something sits on top of the box.
    const top = { id: 'top', name: 'Top', roles: ['axle'] };
    const lid = { id: 'box-top', between: ['box.top', 'top.front'] as const };
    const layouts = [
      { id: 'row', positions: POSITIONS, matings: MATINGS },
      { id: 'tall', positions: [...POSITIONS, top], matings: [...MATINGS, lid] },
    ];
    const of = (fitted: object) => ({
      layouts,
      vehicles: [
        ...(WORLD.vehicles ?? []).slice(0, 1),
        { ...WRECK, layout: 'tall', fitted: { ...WRECK.fitted, ...fitted } },
      ],
    });
    expect(first(ask(SHAFT, of({ top: 'axle-b' }))).grade).toBe('open');
    expect(first(ask(SHAFT, of({ top: null }))).grade).toBe('proven');
  });

  test('is itself on a vehicle on which it was put', () => {
    const fitted = { box: BOX, shaft: 'shaft-bb', axle: 'axle-b' };
    const answer = ask({ fitted });
    expect(answer.question.fitted).toEqual(fitted);
    const { grade, lines } = first(answer);
    expect([grade, lines]).toEqual(['proven', []]);
    const { want, keep, ...vehicle } = { ...PLAIN, vehicle: 'cart', fitted };
    const inspected = inspectVehicle(libraryOf(WORLD), vehicle);
    const joint = inspected.judged.matings.find(({ mating }) => mating === 'box-shaft');
    expect([joint?.state, joint?.code]).toEqual(['holds', 'as-built']);
  });
});

describe('of a pair, of two vehicles and of several roles', () => {
  const handed = (id: string) => ({ id, name: id, roles: ['axle'], handed: true });

  function world(contains: readonly object[], more: object = {}): Partial<CatalogueDocument> {
    const layouts = [
      { id: 'row', positions: [...POSITIONS, handed('wing')], unmated: 'ignore' as const },
      { id: 'any', positions: [{ id: 'box', name: 'Box', roles: ['box', 'shaft'] }] },
    ];
    const own = { wing: { left: 'axle-a', right: 'axle-a' } };
    const [cart] = WORLD.vehicles ?? [];
    if (cart === undefined) throw new Error('there is a cart');
    const other = { id: 'other', make: 'Marl', model: 'Other', layout: 'row', fitted: {} };
    const odd = { ...other, id: 'odd', layout: 'any' };
    const vehicles = [{ ...cart, fitted: { ...cart.fitted, ...own } }, WRECK, other, odd];
    const lots = [{ id: 'donor', contains: contains as never }];
    return { layouts, vehicles, lots, ...more };
  }

  const changed = (position: string) => ({
    want: [{ position, condition: { changed: position } }],
  });

  const parts = (answer: KitAnswer) =>
    answer.routes.map(({ lines }) =>
      lines.flatMap(({ part: id, hand }) => (id?.startsWith('donor:') ? [`${id} ${hand}`] : [])),
    );

  test('the left piece stays a left one', () => {
    const want = [{ lot: 'donor', whole: true }];
    const [both] = parts(ask({ want }, world([{ vehicle: 'wreck', position: 'wing' }])));
    expect(both).toEqual(['donor:donor:wing:left left', 'donor:donor:wing:right right']);
  });

  test('two boxes of one lot are two articles', () => {
    const answer = ask(
      { ...changed('box'), routes: 5 },
      world([
        { vehicle: 'wreck', position: 'box' },
        { vehicle: 'other', position: 'box' },
      ]),
    );
    const [route] = parts(answer);
    expect(['donor:donor:wreck/box null', 'donor:donor:other/box null']).toContain(route?.[0]);
    const [lot] = first(answer).lines.filter(({ action }) => action === 'lot');
    expect(lot?.leftOver).toHaveLength(1);
  });

  test('what may be a box or a shaft goes where either may stand', () => {
    const answer = ask(changed('box'), world([{ vehicle: 'odd', position: 'box' }]));
    expect(answer.routes).toEqual([]);
  });
});
