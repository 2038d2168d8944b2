/**
 * The weakest link of a driveline: what reaches each element, and what each bears.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  axleShares,
  enginePath,
  greatestTorque,
  gripTorque,
  leastOf,
  torqueAt,
  tyrePath,
  wheelShare,
} from '../../../src/domain/driveline/torque-path.js';
import {
  addIntervals,
  closed,
  equalIntervals,
  isWithin,
  point,
} from '../../../src/domain/quantity/interval.js';
import { ONE, rational, ZERO } from '../../../src/domain/quantity/rational.js';
import { asked } from './asked.js';

const RUNS = { seed: 4011, numRuns: 200 };
const whole = fc.integer({ min: 1, max: 900 });
const at = (number: number) => point(rational(number));

/** A gearbox and a half-shaft behind an open rear axle: 3:1, then 4:1 and a half. */
const pair = {
  engineTorque: '300 N.m',
  drive: 'rear',
  element: ['gearbox', 'half-shaft'],
  place: ['all-torque', 'rear-wheel'],
  ratioBefore: ['3', '12'],
};
const tyres = { ratioAfter: ['4', '1'], rearLoad: '800 kg', grip: '0.8', rollingRadius: '300 mm' };

const link = (given: Parameters<typeof asked>[1]) => asked('weakest-link', { ...pair, ...given });

describe('the paths', () => {
  test('greatest torque takes the path back', () => {
    fc.assert(
      fc.property(whole, whole, whole, whole, (torque, ratio, share, shock) => {
        const path = { ratio: at(ratio), share: at(share), shock: at(shock) };
        const back = greatestTorque(enginePath(at(torque), path), path);
        expect(equalIntervals(back, at(torque))).toBe(true);
      }),
      RUNS,
    );
  });

  test('contain what comes of each value in what is told', () => {
    fc.assert(
      fc.property(whole, whole, whole, whole, (a, more, b, c) => {
        const spread = closed(rational(a), rational(a + more));
        const inside = at(a + Math.floor(more / 2));
        const path = (ratio: typeof inside) => ({ ratio, share: at(b), shock: at(c) });
        expect(isWithin(enginePath(at(b), path(inside)), enginePath(at(b), path(spread)))).toBe(
          true,
        );
        const tyre = (ratio: typeof inside) =>
          tyrePath({ ratio, grip: at(b), load: at(c), radius: at(a) });
        expect(isWithin(tyre(inside), tyre(spread))).toBe(true);
        expect(
          equalIntervals(tyre(at(1)), gripTorque({ grip: at(b), load: at(c), radius: at(a) })),
        ).toBe(true);
      }),
      RUNS,
    );
  });

  test.each([
    ['front', '1', '0'],
    ['rear', '0', '1'],
    ['open', '1/2', '1/2'],
    ['planetary', '2/5', '3/5'],
    ['locked', '1', '1'],
  ] as const)('%s shares %s to the front and %s to the rear', (drive, front, rear) => {
    const shares = axleShares(drive, point(rational('2/5')));
    expect(shares).toEqual({ front: point(rational(front)), rear: point(rational(rear)) });
  });

  test('share all of the torque and no more, unless something is locked', () => {
    for (const drive of ['front', 'rear', 'open', 'planetary'] as const) {
      const { front, rear } = axleShares(drive, point(rational('0.3')));
      expect(addIntervals(front, rear)).toEqual(point(ONE));
    }
    expect(addIntervals(wheelShare('open'), wheelShare('open'))).toEqual(point(ONE));
    expect(wheelShare('locked')).toEqual(point(ONE));
  });

  test('end at the tyres where these slip first, and only there', () => {
    expect(torqueAt(at(500), at(400))).toEqual(at(400));
    expect(torqueAt(at(300), at(400))).toEqual(at(300));
    expect(torqueAt(at(300), null)).toEqual(at(300));
    expect(leastOf([at(300), null])).toEqual(closed(ZERO, rational(300)));
  });
});

describe('the calculator', () => {
  test('gives the same in other units', () => {
    const metric = link({ ...tyres, rearLoad: '45.359237 kg', rollingRadius: '304.8 mm' });
    const imperial = link({ ...tyres, rearLoad: '100 lb', rollingRadius: '1 ft' });
    expect(imperial.sets('torque')).toEqual(metric.sets('torque'));
  });

  test.each([
    ['900 N.m', '1800 N.m', 'holds', ['gearbox', 'half-shaft'], [], []],
    ['900 N.m', '1799 N.m', 'fails', ['gearbox'], [], ['half-shaft']],
    ['900 N.m', '1700 to 1900 N.m', 'open', ['gearbox'], ['half-shaft'], []],
    ['900 N.m', 'unknown', 'open', ['gearbox'], ['half-shaft'], []],
    ['899 N.m', 'unknown', 'fails', [], ['half-shaft'], ['gearbox']],
    ['Unbekannt', '1800 N.m', 'open', ['half-shaft'], ['gearbox'], []],
  ])('ratings of %s and %s: %s', (box, shaft, outcome, holding, undecided, overloaded) => {
    const result = link({ rating: [box, shaft] });
    expect(result.outcome('holds')).toBe(outcome);
    expect(result.words('holding')).toEqual(holding);
    expect(result.words('undecided')).toEqual(undecided);
    expect(result.words('overloaded')).toEqual(overloaded);
  });

  test('leaves everything open where no rating is told', () => {
    const result = link({});
    expect(result.outcome('holds')).toBe('open');
    expect(result.has('weakest')).toBe(false);
    expect(result.warnings).toContain('unrated');
  });

  test('names the weakest, and with it all that may be weaker', () => {
    const both = link({ rating: ['900 N.m', '1200 N.m'] });
    expect(both.words('weakest')).toEqual(['half-shaft']);
    expect(both.set('greatestTorque')).toEqual(at(200));
    expect(both.warnings).not.toContain('unrated');
    const one = link({ rating: ['unknown', '1200 N.m'] });
    expect(one.words('weakest')).toEqual(['gearbox', 'half-shaft']);
    expect(one.set('greatestTorque')).toEqual(closed(ZERO, rational(200)));
    expect(one.warnings).toContain('unrated');
  });

  test('finds the greatest torque at which all still hold', () => {
    fc.assert(
      fc.property(whole, whole, (box, shaft) => {
        const rating = [`${box} N.m`, `${shaft} N.m`];
        const { low } = link({ rating }).set('greatestTorque');
        const torque = low?.toFraction() ?? '';
        expect(link({ rating, engineTorque: `${torque} N.m` }).outcome('holds')).toBe('holds');
        const more = low?.mul(1001).div(1000).toFraction() ?? '';
        expect(link({ rating, engineTorque: `${more} N.m` }).outcome('holds')).toBe('fails');
      }),
      RUNS,
    );
  });

  test('rises with shock, and a lock can only add to it', () => {
    const [box] = link({}).sets('fromEngine');
    const [shocked, shaft] = link({ shockFactor: '2' }).sets('fromEngine');
    expect(box).toEqual(at(900));
    expect(shocked).toEqual(at(1800));
    expect(shaft).toEqual(at(3600));
    const locked = link({ rearAxle: 'locked' });
    expect(locked.sets('fromEngine')).toEqual([at(900), at(3600)]);
    expect(locked.warnings).toContain('one-side');
    expect(link({ rearAxle: 'open' }).warnings).not.toContain('one-side');
  });

  test('says that tyres are left out, or that only they save an element', () => {
    expect(link({}).warnings).toContain('engine-side-only');
    // 400 kg on one wheel, 0.8, 300 mm: 941.4 N.m.
    const saved = link({ ...tyres, rating: ['900 N.m', '1000 N.m'] });
    expect(saved.outcome('holds')).toBe('holds');
    expect(saved.warnings).toEqual(['held-by-tyres']);
    expect(link({ ...tyres, rating: ['900 N.m', '1800 N.m'] }).warnings).toEqual([]);
    expect(link({ ...tyres, rating: ['900 N.m', '940 N.m'] }).outcome('holds')).toBe('fails');
  });

  test('takes both axles behind the centre, and each of them behind its own way', () => {
    const all = {
      ...tyres,
      drive: 'open',
      frontLoad: '400 kg',
      place: ['all-torque', 'front-axle'],
    };
    const [box, front] = link({ ...all, ratioAfter: ['1', '1'] }).sets('fromTyres');
    if (box === undefined || front === undefined) throw new Error('both are found');
    expect(box.low?.div(front.low ?? ONE).valueOf()).toBe(3);
    expect(link({ ...all, rearLoad: [] }).has('fromTyres')).toBe(false);
    expect(link({ ...all, drive: 'front' }).sets('fromTyres')[0]?.low).toEqual(front.low?.div(4));
  });

  test.each([
    [{ rating: ['?', '1 N.m'] }, /“\?” is no torque above 0/],
    [{ rating: ['0 N.m', '1 N.m'] }, /“0 N.m” is no torque above 0/],
    [{ rating: ['10 mm', '1 N.m'] }, /“10 mm” is no torque above 0/],
    [{ rating: ['10 N.m'] }, /one for each element: 2, and not 1/],
    [{ place: ['all-torque'] }, /one for each element: 2, and not 1/],
    [{ ratioBefore: ['1', '2', '3'] }, /one for each element: 2, and not 3/],
    [{ ratioAfter: ['1'] }, /one for each element: 2, and not 1/],
    [{ drive: 'front' }, /an axle that is not driven/],
    [{ drive: 'planetary' }, /needs the share of the front axle/],
    [{ drive: 'planetary', frontShare: '1' }, /above 0 and below 1/],
  ])('refuses %j', (given, said) => {
    expect(() => link(given)).toThrow(said);
  });
});
