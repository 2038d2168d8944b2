/**
 * What the works fitted hangs on a fact that nobody has told: it is one of a few, and all places
 * that the fact tells are so together.
 */

import { describe, expect, it } from 'vitest';
import { flange, world } from './sketch.js';
import { factsOf, fitOf, found, inspected, judged, kitsOf, stateOf } from './world.js';

const values = (...ids: string[]) => ids.map((id) => ({ id, name: id.toUpperCase() }));

const brakes = world({
  roles: { caliper: { offset: 'length' }, disc: { offset: 'length' }, hub: { depth: 'length' } },
  places: ['caliper', 'disc', 'hub', 'seat'],
  matings: ['caliper.disc = disc.caliper', 'disc.hub = hub.disc', 'hub.seat = seat.hub'],
  checks: [{ id: 'room', equal: ['hub.depth', { sum: ['caliper.offset', 'disc.offset'] }] }],
  facts: [
    { id: 'pack', name: 'Pack', values: values('small', 'large'), how: 'Look at the disc.' },
    { id: 'seats', name: 'Seats', values: values('low', 'high') },
  ],
  parts: {
    'caliper-s': { disc: flange('S'), offset: '10 ±0 mm' },
    'caliper-l': { disc: flange('L'), offset: '8 ±0 mm' },
    'disc-s': { caliper: flange('S'), hub: flange('H'), offset: '5 ±0 mm' },
    'disc-l': { caliper: flange('L'), hub: flange('H'), offset: '7 ±0 mm' },
    'disc-like-s': { caliper: flange('S'), hub: flange('H'), offset: '5 ±0 mm' },
    'hub-a': { disc: flange('H'), seat: flange('low'), depth: '15 ±0 mm' },
    'hub-b': { disc: flange('H'), seat: flange('low'), depth: '15 ±0 mm' },
    'hub-other': { disc: flange('N'), seat: flange('low'), depth: '15 ±0 mm' },
    'hub-deep': { disc: flange('H'), seat: flange('low'), depth: '17 ±0 mm' },
    'seat-low': { hub: flange('low') },
    'seat-high': { hub: flange('high') },
  },
  cars: {
    car: {
      caliper: { by: 'pack', small: 'caliper-s', large: 'caliper-l' },
      disc: { by: 'pack', small: 'disc-s', large: 'disc-l' },
      hub: 'hub-a',
      seat: 'seat-low',
    },
    both: {
      caliper: { by: 'pack', small: 'caliper-s', large: 'caliper-l' },
      disc: { by: 'pack', small: 'disc-s', large: 'disc-l' },
      hub: 'hub-a',
      seat: { by: 'seats', low: 'seat-low', high: 'seat-high' },
    },
  },
});

describe('what holds for each value of the fact holds', () => {
  const one = judged(brakes, { put: { hub: 'hub-b' } });

  it('a joint, whichever of the two is there', () => {
    expect(stateOf(one, 'disc-hub')).toBe('holds same-for-each-fact');
    expect(one.outcome).toBe('holds');
    expect(factsOf(one)).toEqual([]);
  });

  it('a check of several places, since one fact tells them together', () => {
    // 10 + 5 and 8 + 7 are 15; one of each would be 17, or 13.
    expect(stateOf(one, 'room')).toBe('holds same-for-each-fact');
  });

  it('nobody says that one of them is there', () => {
    const joint = found(one, 'disc-hub');
    expect(joint?.form === 'mating' && joint.ends.map(({ occupant }) => occupant.is)).toEqual([
      'as-found',
      'part',
    ]);
    const text = fitOf(brakes, 'hub-b').positions[0]?.matings[0]?.text;
    expect(text).toMatch(/^The same for each answer to Pack; for one of them: /);
  });
});

it('what fails for each value fails', () => {
  const one = judged(brakes, { put: { hub: 'hub-other' } });
  expect(stateOf(one, 'disc-hub')).toBe('fails same-for-each-fact');
  expect(stateOf(judged(brakes, { put: { hub: 'hub-deep' } }), 'room')).toBe(
    'fails same-for-each-fact',
  );
});

describe('what holds for one and fails for the other hangs on the fact', () => {
  it('it is open, and the fact is asked for, not what stands at its places', () => {
    const one = judged(brakes, { put: { disc: 'disc-like-s' } });
    expect(stateOf(one, 'caliper-disc')).toBe('open told-by-fact');
    expect(found(one, 'caliper-disc')?.supposed?.facts).toEqual(['pack']);
    expect(factsOf(one)).toEqual(['pack to-decide ±?']);
    const answer = fitOf(brakes, 'disc-like-s');
    expect(answer.verdict).toBe('unknown');
    expect(answer.positions[0]?.matings[0]?.text).toBe(
      'It hangs on what nobody has told of this vehicle: Pack.',
    );
    expect(answer.measure.map(({ code, on }) => [code, on.fact])).toEqual([['ask-fact', 'pack']]);
  });

  it('each constraint on the facts that have a say in it', () => {
    const one = judged(brakes, { on: 'both', put: { hub: 'hub-b', disc: 'disc-like-s' } });
    expect(found(one, 'hub-seat')?.supposed?.facts).toEqual(['seats']);
    expect(found(one, 'caliper-disc')?.supposed?.facts).toEqual(['pack']);
    expect(stateOf(one, 'disc-hub')).toBe('holds meets');
    expect(factsOf(one)).toEqual(['pack to-decide ±?', 'seats to-decide ±?']);
  });
});

describe('present is one of several', () => {
  it('what is not changed is given', () => {
    expect(judged(brakes).constraints.map(({ state }) => state)).toEqual(
      judged(brakes).constraints.map(() => 'given'),
    );
    expect(inspected(brakes).state).toBe('holds');
  });

  it('to put in one of them is a change, as long as it is not certain that it is there', () => {
    const answer = fitOf(brakes, 'disc-s');
    expect(answer).toMatchObject({ present: false, verdict: 'unknown' });
    const [route] = kitsOf(brakes, ['disc-s']).routes;
    expect(route?.changes).toContain('disc');
  });

  it('what it meets is given for the value that has it there already', () => {
    const one = judged(brakes, { put: { disc: 'disc-s', caliper: 'caliper-s' } });
    // For the small pack nothing is changed; for the large one the two are judged, and meet.
    expect(stateOf(one, 'caliper-disc')).toMatch(/^holds /);
  });

  it('what the question says stands there takes the place of all of them', () => {
    const said = { disc: 'disc-l', caliper: '?' };
    const one = judged(brakes, { said, put: { hub: 'hub-deep' } });
    expect(stateOf(one, 'disc-hub')).toBe('holds meets');
    expect(stateOf(one, 'room')).toBe('open not-recorded');
  });

  it('what it says is as the works fitted it, for each value that has it there', () => {
    const odd = world({
      places: ['caliper', 'disc'],
      matings: ['caliper.disc = disc.caliper'],
      facts: [{ id: 'pack', name: 'Pack', values: values('small', 'large') }],
      parts: {
        'caliper-l': { disc: flange('L') },
        'disc-s': { caliper: flange('S') },
        'disc-l': { caliper: flange('L') },
      },
      cars: {
        car: {
          caliper: { by: 'pack', small: 'caliper-l', large: 'caliper-l' },
          disc: { by: 'pack', small: 'disc-s', large: 'disc-l' },
        },
      },
    });
    const states = (said: Record<string, string>) =>
      judged(odd, { said }).constraints.map(({ id, state }) => `${id} ${state}`);
    expect(states({ caliper: 'caliper-l' })).toEqual(['caliper-disc given']);
    // Of the large ones that is another disc, and fails with the caliper.
    expect(states({ disc: 'disc-s' })).toEqual(['caliper-disc open']);
  });
});

describe('a kit', () => {
  it('is proven where it is for each value', () => {
    const [route] = kitsOf(brakes, ['hub-b']).routes;
    expect(route).toMatchObject({ grade: 'proven', changes: ['hub'] });
  });

  it('is open where it hangs on the fact, and proven where what hangs on it is changed too', () => {
    const { routes } = kitsOf(brakes, ['disc-like-s']);
    expect(routes.map(({ grade, changes }) => [grade, changes])).toEqual([
      ['proven', ['caliper', 'disc']],
      ['open', ['disc']],
    ]);
    expect(routes[1]?.measure.map(({ code, on }) => [code, on.fact])).toEqual([
      ['ask-fact', 'pack'],
    ]);
  });
});
