/**
 * What the demo answers about other conversions: what a workshop would order for each, added up by
 * hand from the price list. The main question is in `kits.test.ts`.
 */

import { describe, expect, test } from 'vitest';
import { askKits } from './ask.js';
import { added, bought, cents, leftOver, onlyRoute, opened, routeAt, sumOf } from './kit-lines.js';

const total = (priced: Readonly<Record<string, string>>) => sumOf(Object.values(priced));

describe('permanent four-wheel drive', () => {
  describe('a donor that cannot go in whole', () => {
    const donor = { lot: 'donor-lirren-2', whole: null };
    const gearbox = { part: 'gearbox-6-late', position: null, hand: null, renew: false };

    test('is bought for what can be used of it', () => {
      const answer = askKits('lirren-1', [], { want: [donor], routes: 1 })();
      expect(answer.question.want).toEqual([{ lot: 'donor-lirren-2', whole: false }]);
      const route = routeAt(answer, 0);
      expect(bought(route)['donor-lirren-2']).toBe('2590.00');
      expect(added(route, 'lot').length).toBeGreaterThan(0);
      expect(leftOver(route)).toContain('1 axle-late');
    });

    test('gives what another wish takes, and leaves what is kept', () => {
      const keep = ['rear-half-shaft'];
      const answer = askKits('lirren-1', [], { want: [gearbox, donor], keep, routes: 1 })();
      const route = routeAt(answer, 0);
      expect(added(route, 'lot')).toContain('gearbox-6-late');
      expect(route.changes).not.toContain('rear-half-shaft');
      expect(leftOver(route)).toContain('2 rear-shaft-late');
    });

    test('has no way where all of it is to be used', () => {
      const want = [{ ...donor, whole: true }];
      const answer = askKits('lirren-1', [], { want, routes: 1 })();
      expect([answer.complete, answer.routes]).toEqual([true, []]);
    });
  });

  test('nobody can put the early gearbox behind the late engine', () => {
    // It bears 280 N.m, and the engine gives 320.
    const answer = askKits('lirren-2', ['gearbox-5-early'])();
    expect([answer.complete, answer.routes, answer.more]).toEqual([true, [], false]);
  });

  test('a stronger clutch goes in alone, but the gearbox has to come out', () => {
    const route = onlyRoute(askKits('lirren-1', ['clutch-strong'])());
    const priced = {
      'clutch-strong': '310.00',
      // 2.2 l are three cans of 12.40.
      'gear-oil-75w90-gl5': '37.20',
      'hub-nut-lirren': '7.60',
      'prop-bolt-lirren': '12.80',
      'seal-38': '11.20',
    };
    expect(bought(route)).toEqual(priced);
    expect(cents(route.totals.cost)).toBe(total(priced));
    expect(opened(route)).toEqual(['gearbox', 'prop-shaft', 'front-half-shaft']);
    // 0.5 for the clutch, 4 + 0.8 + 0.7 to get there.
    expect(route.totals.labourHours).toBe('6');
    expect(route.recommended.map(({ part }) => part)).toEqual(['bearing-push']);
  });

  test('larger wheels come four at a time, with their tyres', () => {
    const route = onlyRoute(askKits('lirren-1', ['wheel-16-106@rear-wheel'])());
    // Four wheels at 128.00, four tyres at 84.00.
    expect(bought(route)).toEqual({ 'wheel-16-106': '512.00', 'tyre-205-55-16': '336.00' });
    expect(route.totals.cost).toBe('848.00');
  });
});

describe('part-time four-wheel drive', () => {
  test('a lower set behind brings one in front, with carriers and stronger half-shafts', () => {
    const route = routeAt(askKits('ordale-1', ['set-45-11@rear-gear-set'])(), 0);
    const priced = {
      // Used, at 310.00 each.
      'set-45-11': '620.00',
      'carrier-high': '240.00',
      // 3600 N.m are too little for 45/11: two at 210.00.
      'rear-axle-shaft-2': '420.00',
      'crown-bolts-10-9': '68.00',
      // 1.7 and 2.1 l are four cans of 9.40.
      'oil-80w90-gl5': '37.60',
    };
    expect(route.grade).toBe('proven');
    expect(bought(route)).toEqual(priced);
    expect(cents(route.totals.cost)).toBe(total(priced));
  });

  test('where only stock counts, the one used set is not bought twice', () => {
    const limits = {
      cost: null,
      changedPositions: null,
      labourHours: null,
      leadDays: null,
      inStock: true,
    };
    const answer = askKits('ordale-1', ['set-45-11@rear-gear-set'], { limits, routes: 2 })();
    // One used, and one of thick crown wheel that leaves the carrier in front.
    expect(bought(routeAt(answer, 0))).toMatchObject({
      'set-45-11': '310.00',
      'set-45-11-thick': '720.00',
      'carrier-high': '120.00',
    });
    // Or both new, at 640.00.
    expect(bought(routeAt(answer, 1))).toMatchObject({ 'set-45-11': '1280.00' });
  });

  test('two tyres at hand serve one axle of the two', () => {
    const wishes = ['tyre-225-75-16@front-tyre', 'tyre-225-75-16@rear-tyre'];
    const owned = [{ part: 'tyre-225-75-16', quantity: 2 }];
    const route = onlyRoute(askKits('ordale-1', wishes, { owned })());
    // Two at 129.00; four would be 516.00.
    expect(route.totals.cost).toBe('258.00');
    const tyres = route.lines.filter(({ action }) => action === 'add');
    expect(new Set(tyres.map(({ source, quantity }) => `${quantity.value} ${source}`))).toEqual(
      new Set(['2 offer', '2 owned']),
    );
  });

  test('the later transfer case takes a shaft that is shortened, and says how long', () => {
    const route = routeAt(askKits('ordale-1', ['transfer-2'])(), 0);
    const priced = {
      'transfer-2': '540.00',
      'transfer-lever-2': '75.00',
      'rear-prop-2': '160.00',
      'shorten-rear-shaft': '160.00',
      'cross-30-82': '64.00',
      'front-prop-2': '170.00',
      'slip-yoke-2': '115.00',
      'sleeve-26-28': '165.00',
      'transfer-plate-22': '195.00',
      // Gearbox and transfer case share 4.5 l: five cans of 8.90.
      'oil-80w90-gl4': '44.50',
    };
    expect(bought(route)).toEqual(priced);
    expect(cents(route.totals.cost)).toBe(total(priced));
    expect(route.order.map(({ value }) => value?.text)).toEqual(['843 ±40 mm']);
    expect(route.totals).toMatchObject({ signOff: 'workshop', reversible: false });
  });
});

describe('rear-wheel drive', () => {
  test('large front brakes take the rear ones and the wheels along, out of two lots', () => {
    const answer = askKits('vessimer-20', ['front-caliper-vessimer-28'])();
    const priced = {
      'brakes-vessimer-28': '590.00',
      'wheels-vessimer-17': '960.00',
      'fluid-dot4': '7.90',
      'banjo-washer-10': '1.40',
    };
    const proven = routeAt(answer, 0);
    expect([proven.grade, bought(proven)]).toEqual(['proven', priced]);
    expect(cents(proven.totals.cost)).toBe(total(priced));
    expect(leftOver(proven)).toEqual([]);
    // Cheaper with wheels of 16 inches, whose room was read with a tape: 185.6 ±1 less 182.0.
    const open = routeAt(answer, 1);
    expect([open.grade, open.totals.cost]).toEqual(['open', '1435.30']);
    expect(open.measure).toMatchObject([
      { on: { parameter: 'brake-room' }, needed: { text: '±0.2 mm' }, settlesRoutes: [1] },
    ]);
  });

  test('a rear end bought whole is used whole, once the slide of its shaft is measured', () => {
    const answer = askKits('vessimer-20', [], {
      want: [{ lot: 'rear-end-vessimer-28', whole: null }],
    })();
    const route = onlyRoute(answer);
    expect(route.grade).toBe('open');
    expect(added(route, 'lot')).toEqual([
      'prop-vessimer-28',
      'final-drive-vessimer-28',
      'gear-set-38-11',
      'half-shaft-vessimer-28-left',
      'half-shaft-vessimer-28-right',
    ]);
    expect(leftOver(route)).toEqual([]);
    const priced = {
      'rear-end-vessimer-28': '1050.00',
      'speedometer-vessimer-28': '70.00',
      'axle-oil-slip': '27.50',
      'half-shaft-ring-vessimer': '2.40',
      'hub-nut-vessimer': '6.80',
    };
    expect(bought(route)).toEqual(priced);
    expect(cents(route.totals.cost)).toBe(total(priced));
    expect(route.measure).toMatchObject([{ on: { part: 'prop-vessimer-28' } }]);
  });

  test('a rear end of which something is not to be used has to be asked for as that', () => {
    const rearEnd = { lot: 'rear-end-vessimer-28', whole: null };
    const avoid = [{ part: 'prop-vessimer-28' }];
    const whole = askKits('vessimer-20', [], { want: [rearEnd], avoid })();
    expect(whole.question.want).toEqual([{ ...rearEnd, whole: true }]);
    expect([whole.complete, whole.routes]).toEqual([true, []]);
    const want = [{ ...rearEnd, whole: false }];
    const route = routeAt(askKits('vessimer-20', [], { want, avoid, routes: 1 })(), 0);
    expect(leftOver(route)).toContain('1 prop-vessimer-28');
    expect(bought(route)['rear-end-vessimer-28']).toBe('1050.00');
  });

  test('the final drive alone leaves that shaft over, and has another made to length', () => {
    const route = routeAt(askKits('vessimer-20', ['final-drive-vessimer-28'])(), 0);
    expect([route.grade, route.totals.cost]).toEqual(['proven', '1586.70']);
    expect(leftOver(route)).toEqual(['1 prop-vessimer-28']);
    expect(route.order.map(({ value }) => value?.text)).toEqual(['1238 ±15 mm']);
  });
});

describe('engine across', () => {
  test('the cheapest proven way to drive the rear wheels wants an engineer to sign', () => {
    const route = routeAt(askKits('gallivet', ['take-off-20-47'])(), 0);
    const priced = {
      'take-off-20-47': '390.00',
      'bolt-m10-45': '12.80',
      'prop-gallivet': '240.00',
      'rear-drive-viscous': '380.00',
      'subframe-4': '195.00',
      'rear-shaft-gallivet-left': '110.00',
      'rear-shaft-gallivet-right': '110.00',
      'hub-rear-pellory': '140.00',
      // The spigots of two hubs, at 45.00.
      'turn-rear-spigot': '90.00',
      // Two behind, and two in front whose staked nuts have to come off.
      'hub-nut-24': '25.60',
      // Two cans of 13.80.
      'axle-oil-75w90': '27.60',
    };
    expect(bought(route)).toEqual(priced);
    expect(cents(route.totals.cost)).toBe(total(priced));
    expect(route.totals).toMatchObject({ signOff: 'engineer', reversible: false });
  });

  test('where nobody but a workshop may sign, new hubs take the place of turned ones', () => {
    const answer = askKits('gallivet', ['take-off-20-47'], { workUpTo: 'workshop' })();
    const [first, second] = answer.routes;
    // 1721.00 less 230.00 for two turned hubs, and 290.00 for two new ones.
    expect(first?.totals).toMatchObject({ cost: '1781.00', signOff: null });
    // The rear end of a Gallivet 4 for 1790.00, four nuts at 6.40 and two cans at 13.80.
    expect(second?.lines.map(({ lot }) => lot)).toContain('rear-end-gallivet-4');
    expect(second?.totals.cost).toBe('1843.20');
  });

  test('the early car wants another transaxle as well', () => {
    const route = routeAt(askKits('gallivet-early', ['rear-drive-47-20'], { routes: 1 })(), 0);
    expect(route.changes).toContain('transaxle');
    // 1843.20, and 520.00 with three cans of oil at 11.50 and two seals at 5.60.
    expect(route.totals.cost).toBe('2408.90');
  });
});
