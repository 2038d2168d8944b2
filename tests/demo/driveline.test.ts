/**
 * How the vehicles of the demo catalogue drive, worked out by hand beside each figure; and what is
 * refused on each count: critical speed, capacity, the loop, a rating that nobody recorded.
 */

import { describe, expect, test } from 'vitest';
import type { DrivelineInput, FigureRow } from '../../src/usecases/drive-vehicle.js';
import type { FigureView } from '../../src/usecases/figure-views.js';
import { askDriveline, askKits } from './ask.js';

type Asking = Partial<DrivelineInput>;

function driven(vehicle: string, more: Asking = {}) {
  const answer = askDriveline(vehicle, more)();
  const row = (figure: string): FigureRow => {
    const found = answer.figures.find((one) => one.figure === figure);
    if (found === undefined) throw new Error(`no figure is called ${figure}`);
    return found;
  };
  return { answer, row };
}

function line(position: string, part: string): NonNullable<DrivelineInput['lines']>[number] {
  return { action: 'add', position, part, mating: null, hand: null, work: null, source: null };
}

/** The middle of a figure, in its unit. */
function about(view: FigureView | null | undefined): number {
  const { low, high } = view?.value ?? {};
  if (low == null || high == null) throw new Error('the figure is not known');
  return (numberOf(low) + numberOf(high)) / 2;
}

function numberOf(text: string): number {
  const [over = '', under = '1'] = text.split('/');
  return Number(over) / Number(under);
}

const GEARBOX = { lines: [line('gearbox', 'gearbox-6-late')], grip: '0.9' };

describe('the first series with the gearbox of the second, and nothing else', () => {
  const { row, answer } = driven('lirren-1', GEARBOX);

  test('drives in six gears instead of five, at about the same speeds', () => {
    // 61/20 x (15 in + 2 x 195 mm x 0.6) = 1875.75 mm, and 6500 rpm x 1.87575 m x 0.06 by
    // 38/11 x 43/11.
    expect(about(row('gear-1-speed').before)).toBeCloseTo(54.172, 2);
    // The same by 40/11.
    expect(about(row('gear-1-speed').after[0])).toBeCloseTo(51.463, 2);
    expect(row('gear-6-speed').before).toBeNull();
    // 100 km/h x 43/11 x 14/19 / (0.06 x 1.87575 m); then by 3/4.
    expect(about(row('cruising').before)).toBeCloseTo(2559.3, 1);
    expect(about(row('cruising').after[0])).toBeCloseTo(2605.0, 1);
    expect(row('cruising').change).toEqual(['worse']);
  });

  test('is refused by the loop: the front is 1/11 too fast', () => {
    const { before, after, change } = row('axle-match');
    expect([before?.value?.low, before?.outcome]).toEqual(['0', 'holds']);
    expect([after[0]?.value?.low, after[0]?.value?.unit]).toEqual(['100/11', '%']);
    expect([after[0]?.outcome, change]).toEqual(['fails', ['worse']]);
  });

  test('loads the rear half-shafts more and the gearbox less', () => {
    // Rated 280 and 360 N.m; the engine gives 250.
    expect(about(row('gearbox-load').before)).toBeCloseTo(280 / 250, 2);
    expect(about(row('gearbox-load').after[0])).toBeCloseTo(360 / 250, 2);
    expect(row('gearbox-load').change).toEqual(['better']);
    expect(row('rear-shaft-load').change).toEqual(['worse']);
  });

  test('tells at which torque the tyres slip: a half-shaft is at its rating before', () => {
    // 0.9 x 980 kg x 9.80665 m/s2 x 1.87575 m / 2 pi / 2 shafts.
    expect(about(row('rear-shaft-load-slip').before)).toBeCloseTo(1291.1, 0);
  });

  test('bears no more torque: what was the gearbox is now the rear half-shaft', () => {
    // The old gearbox is the weakest: 280 N.m, and 280/1.5, 280/2 where the clutch is let in hard.
    expect(about(row('torque-road').before)).toBeCloseTo(280, 0);
    expect(about(row('torque-off-road').before)).toBeCloseTo(280 / 1.5, 0);
    expect(about(row('torque-competition').before)).toBeCloseTo(140, 0);
    // 1400 N.m x 2 / (40/11 x 12/11 x 43/11 x 2/3), by the rating and share of the records.
    expect(about(row('torque-road').after[0])).toBeLessThan(280);
    expect(row('torque-road').change).toEqual(['worse']);
  });

  test('names what it tells, and the usual cautions', () => {
    expect(answer.sections.map(({ section }) => section)).toEqual([
      'gearing',
      'loops',
      'loads',
      'torque',
      'shafts',
      'joints',
      'wheels',
    ]);
    expect(answer.cautions.map(({ group }) => group)).toEqual([
      'general',
      'driveline',
      'brakes',
      'wheels',
    ]);
    expect(answer.measure).toEqual([]);
  });
});

test('a propeller shaft in one piece is refused: it would whirl below the top speed', () => {
  const lines = [
    line('gearbox', 'gearbox-6-late'),
    line('prop-shaft', 'prop-made-one'),
    line('rear-final-drive', 'axle-late'),
  ];
  const { row } = driven('lirren-1', { lines });
  // 198 km/h x 43/12 / (0.06 x 1.87575 m); 0.7 x 1.21e8 x sqrt(76^2 + 70.8^2) / about 1374^2.
  const speed = row('prop-shaft-speed').after[0];
  expect(about(speed)).toBeCloseTo(6304.1, 0);
  expect(Math.abs(about(row('prop-shaft-limit').after[0]) - 4660)).toBeLessThan(30);
  expect(speed?.outcome).toBe('fails');
  expect(row('prop-shaft-speed').before?.outcome).toBe('holds');
});

test('a clutch is refused on capacity for 400 N.m', () => {
  const { row } = driven('lirren-1', { torque: '400 N.m' });
  const { before } = row('clutch-load');
  expect(before?.outcome).toBe('fails');
  expect(row('gearbox-load').before?.outcome).toBe('fails');
});

test('what no rating is recorded of is open, and asked for', () => {
  const { row, answer } = driven('hulvane');
  expect(row('clutch-load').before).toEqual({ value: null, outcome: 'open' });
  expect(row('torque-road').before?.value).toBeNull();
  const clutch = answer.measure.find(({ on }) => on.position === 'clutch');
  expect(clutch?.figures).toEqual(expect.arrayContaining(['clutch-load', 'torque-road']));
});

test('the balance of brakes and the travel of their pedal', () => {
  const small = { facts: { 'brake-pack': 'small' } };
  const { row } = driven('gallivet-4', small);
  const share = row('front-braking-share').before;
  expect(share?.value?.unit).toBe('%');
  expect(share?.outcome).toBe('holds');
  expect(row('pedal-travel').before?.outcome).toBe('holds');
  // Which brakes are there, a fact tells that nobody told.
  const { answer } = driven('gallivet-4');
  expect(answer.measure.map(({ on }) => on.fact)).toEqual(['brake-pack']);
});

describe('routes of a kit', () => {
  const kits = askKits('lirren-1', ['gearbox-6-late'], { routes: 2 })();
  const keys = kits.routes.flatMap(({ key }) => key ?? []);

  test('are driven side by side by their keys, as by their lines', () => {
    const byKey = driven('lirren-1', { routes: keys });
    expect(byKey.row('axle-match').after.map((view) => view?.outcome)).toEqual(['holds', 'holds']);
    const lines = kits.routes[0]?.lines ?? [];
    const byLines = driven('lirren-1', { lines });
    const first = byKey.answer.figures.map(({ figure, after }) => [figure, after[0]]);
    expect(byLines.answer.figures.map(({ figure, after }) => [figure, after[0]])).toEqual(first);
  });

  test('carry the short form: in step, what gets better and what gets worse', () => {
    const [route] = kits.routes;
    const { loops = [], better = [], worse = [] } = route?.driveline ?? {};
    expect(loops.map(({ figure, after }) => [figure, after?.outcome])).toEqual([
      ['axle-match', 'holds'],
    ]);
    expect(better.map(({ figure }) => figure)).toContain('gearbox-load');
    expect(worse.map(({ figure }) => figure)).toEqual(['cruising', 'rear-shaft-load']);
  });
});

test('a vehicle whose records say nothing has no figures, and nothing is assumed', () => {
  const { answer } = driven('hulvane', { fitted: { gearbox: 'unknown' } });
  const gears = answer.figures.filter(({ section }) => section === 'gearing');
  expect(gears.map(({ before }) => before?.value)).toEqual([null]);
  expect(answer.measure.map(({ on }) => on.position)).toContain('gearbox');
});
