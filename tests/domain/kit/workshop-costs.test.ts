/**
 * What routes cost and how they are graded by it, through the whole resolver: what is opened, and
 * limits against which something is not known.
 */

import { describe, expect, test } from 'vitest';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { resolveKits } from '../../../src/domain/kit/resolve.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { type Asked, money, question, type Sketch, shop } from './shop.js';

/** A part that is wanted at a place. */
function want(position: string, ...parts: string[]): NonNullable<Asked['wants']>[number] {
  return { is: 'part', position, hand: null, parts, renews: false };
}

function routesOf(sketch: Sketch, asked: Asked) {
  return resolveKits(question(shop(sketch), asked)).routes;
}

test('what is behind a place that is empty now is opened, the place itself is not', () => {
  const sketch: Sketch = {
    places: ['box 6h /4h >plate', 'plate 1h /2h >cover', 'cover 1h /0.5h'],
    parts: ['box-a', 'plate-a', 'cover-a'],
    donors: { car: { plate: null, cover: 'cover-a' } },
  };
  const [route] = routesOf(sketch, { wants: [want('box', 'box-a')] });
  expect(route?.basket.lines.map(({ key }) => key)).toEqual(['add:box:box-a', 'open:cover']);
});

const TWO: Sketch = {
  places: ['hub 1h', 'wheel'],
  parts: ['hub-a', 'hub-b', 'wheel-a', 'oil-a', 'oil-b'],
  rules: [
    {
      id: 'fill',
      when: { opened: 'hub' },
      consumes: { part: 'oil-a', quantity: '1' },
      because: 'It runs out.',
    },
  ],
};

function limited(limits: Partial<KitQuestion['limits']>, more: Asked = {}): Asked {
  return { ...more, limits: { ...limits } as KitQuestion['limits'] };
}

/** Each route as its grade, what is changed and the limits that are not known to be kept. */
function shortly(asked: Asked) {
  return routesOf(TWO, asked).map(({ grade, basket }) => {
    const parts = basket.lines.flatMap(({ action, part }) => (action === 'add' ? part : []));
    return [grade, parts.join(), basket.totals.unknownLimits.join()].join(' ').trim();
  });
}

describe('a limit', () => {
  const wants = [want('hub', 'hub-a', 'hub-b')];
  const oil = 'oil-a 4.00 in 1d';

  test('of cost is not known to be kept with a line that has no price', () => {
    const cost = limited({ cost: money('50.00') }, { wants });
    expect(shortly({ ...cost, offers: [oil] })).toEqual(['open hub-a cost']);
    expect(shortly({ ...cost, offers: ['hub-a 10.00'] })).toEqual(['open hub-a cost']);
    expect(shortly({ ...cost, offers: [oil, 'hub-b 46.00'] })).toEqual(['proven hub-b']);
    expect(shortly({ wants, offers: [oil] })).toEqual(['proven hub-a']);
    const refused = { ...cost, offers: [oil], refusesUnknowns: true };
    expect(shortly(refused)).toEqual([]);
    // The part with a price is beyond the limit; without a price it may be within.
    expect(shortly({ ...cost, offers: [oil, 'hub-b 47.00'] })).toEqual(['open hub-a cost']);
  });

  test('of cost is not known to be kept with labour that is paid and not recorded', () => {
    const wheel = limited(
      { cost: money('50.00') },
      { wants: [want('wheel', 'wheel-a')], offers: ['wheel-a 5.00'] },
    );
    expect(shortly(wheel)).toEqual(['proven wheel-a']);
    expect(shortly({ ...wheel, labourRate: '60.00' })).toEqual(['open wheel-a cost']);
  });

  test('of hours is not known to be kept with labour that nobody recorded', () => {
    const hours = { labourHours: rational('1') };
    const wheel = limited(hours, { wants: [want('wheel', 'wheel-a')] });
    expect(shortly(wheel)).toEqual(['open wheel-a labourHours']);
    expect(shortly(limited(hours, { wants }))).toEqual(['proven hub-a']);
  });

  test('of hours is not known to be kept where the time to open something is not recorded', () => {
    const opened = (access: string): Sketch => ({
      places: ['box 1h >cover', `cover 1h${access}`],
      parts: ['box-a', 'cover-a'],
      donors: { car: { cover: 'cover-a' } },
    });
    const asked = limited({ labourHours: rational('2') }, { wants: [want('box', 'box-a')] });
    const unknown = (sketch: Sketch) =>
      routesOf(sketch, asked).map(({ grade, basket }) => [grade, ...basket.totals.unknownLimits]);
    expect(unknown(opened(' /1h'))).toEqual([['proven']]);
    expect(unknown(opened(''))).toEqual([['open', 'labourHours']]);
    expect(unknown(opened(' /2h'))).toEqual([]);
  });

  test('of lead days is not known to be kept by what is used up and nobody offers', () => {
    const days = limited({ leadDays: 3 }, { wants });
    expect(shortly({ ...days, offers: ['hub-a 9.00 in 1d'] })).toEqual(['open hub-a leadDays']);
    expect(shortly({ ...days, offers: ['hub-a 9.00 in 1d', oil] })).toEqual(['proven hub-a']);
    // Sought by lead days, with no limit set: it is late, and not open.
    const soon = { wants, offers: ['hub-a 9.00 in 1d'], prefer: 'lead-days' } as const;
    expect(shortly(soon)).toEqual(['proven hub-a']);
  });
});

test('what must be avoided is not used up either', () => {
  const asked: Asked = { wants: [want('hub', 'hub-a')] };
  const avoid = (...parts: string[]) => {
    return { parts: new Set(parts), suppliers: new Set<string>(), conditions: [] };
  };
  expect(routesOf(TWO, { ...asked, avoid: avoid('oil-b') })).toHaveLength(1);
  expect(routesOf(TWO, { ...asked, avoid: avoid('oil-a') })).toEqual([]);
});

test('a route with something unpriced does not beat one where more is known', () => {
  const sketch: Sketch = { ...TWO, rules: [], matings: [] };
  const asked: Asked = {
    wants: [{ is: 'part', position: null, hand: null, parts: ['hub-a', 'wheel-a'], renews: false }],
    offers: ['wheel-a 9.00'],
    labourRate: '60.00',
  };
  const routes = routesOf(sketch, asked);
  const told = routes.map(({ changes, beatenBy }) => [changes.join(), beatenBy]);
  // The wheel is known by price and not by hours, the hub by hours and not by price.
  expect(told).toEqual([
    ['wheel', null],
    ['hub', null],
  ]);
});

test('what is worth having beside a route is told whatever the limit of cost', () => {
  const recommends = { part: 'oil-b', quantity: '2' };
  const rule = { id: 'spare', when: { opened: 'hub' }, recommends, because: 'It is at hand then.' };
  const asked = limited(
    { cost: money('50.00') },
    { wants: [want('hub', 'hub-a')], offers: ['hub-a 49.00', 'oil-b 40.00'] },
  );
  const [route] = routesOf({ ...TWO, rules: [rule] }, asked);
  expect(route?.recommended.map(({ key, price }) => [key, price])).toEqual([
    ['extra:oil-b', money('80.00')],
  ]);
});
