/**
 * Verdicts: what the vehicle comes to with the part in its place and nothing else changed.
 */

import { describe, expect, it } from 'vitest';
import { QuestionError } from '../../src/usecases/errors.js';
import { flange, type Sketch, world } from './sketch.js';
import { fitOf } from './world.js';

const plan: Sketch = {
  places: ['box', 'prop', 'axle'],
  matings: ['box.rear = prop.front', 'prop.rear = axle.in'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-same': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'box-silent': { rear: flange() },
    'prop-a': { front: flange('A'), rear: flange('X') },
    'prop-b': { front: flange('B'), rear: flange('X') },
    'prop-odd': { front: flange('A'), rear: flange('Y') },
    'axle-a': { in: flange('X') },
    'stub-ab': { near: flange('A'), far: flange('B') },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a', axle: 'axle-a' } },
};
const cars = world(plan);

describe('V1 a place gets its verdict from the vehicle with the part put there', () => {
  it('all holds or is given: fits', () => {
    expect(fitOf(cars, 'box-same')).toMatchObject({
      alone: 'holds',
      verdict: 'fits',
      summary: { code: 'fits' },
      positions: [{ position: 'box', replaces: ['box-a'], alone: 'holds', verdict: 'fits' }],
    });
  });

  it('nothing fails, something is open: unknown, with what would settle it', () => {
    const answer = fitOf(cars, 'box-silent');
    expect(answer).toMatchObject({ alone: 'open', verdict: 'unknown' });
    expect(answer.measure).toMatchObject([
      {
        on: { position: 'box', part: 'box-silent', interface: 'rear', parameter: 'pattern' },
        settles: ['box-prop'],
      },
    ]);
  });

  it('something fails: changes were not looked for, so there is no verdict', () => {
    expect(fitOf(cars, 'box-b')).toMatchObject({ alone: 'fails', verdict: null, kit: null });
  });

  it('something fails and something is open: it fails', () => {
    const silent = world({
      ...plan,
      parts: { ...plan.parts, 'prop-half': { front: flange('B'), rear: flange() } },
    });
    expect(fitOf(silent, 'prop-half')).toMatchObject({ alone: 'fails', verdict: null });
  });

  it('only what the part touches is judged: the rest is given and not listed', () => {
    const [place] = fitOf(cars, 'box-same').positions;
    expect(place?.matings.map(({ mating, state }) => [mating, state])).toEqual([
      ['box-prop', 'holds'],
    ]);
  });
});

describe('V2 a part fits where its place alone is changed, and no adapter is needed', () => {
  it('what would take an adapter does not fit alone', () => {
    expect(fitOf(cars, 'box-b').alone).toBe('fails');
    const stubbed = fitOf(cars, 'box-b', { adapters: { 'box-prop': ['stub-ab'] } });
    expect(stubbed.alone).toBe('holds');
  });

  it('what fits, once fitted, is there and fits', () => {
    const asked = { fitted: { box: 'box-same' } };
    expect(fitOf(cars, 'box-same', asked)).toMatchObject({ verdict: 'fits', present: true });
  });

  it('what is there leaves nothing to change', () => {
    const answer = fitOf(cars, 'box-a');
    expect(answer).toMatchObject({ verdict: 'fits', present: true, kit: null });
    expect(answer.positions[0]).toMatchObject({ replaces: [], matings: [], checks: [] });
  });
});

describe('V3 a part that is there already fits', () => {
  it('whatever the records say against it', () => {
    const bad = world({ ...plan, cars: { car: { box: 'box-b', prop: 'prop-a', axle: 'axle-a' } } });
    expect(fitOf(bad, 'box-b')).toMatchObject({
      alone: 'holds',
      verdict: 'fits',
      present: true,
      summary: { code: 'fits-already-there' },
    });
    const silent = world({ ...plan, cars: { car: { box: 'box-silent' } } });
    expect(fitOf(silent, 'box-silent')).toMatchObject({ verdict: 'fits', present: true });
  });

  it('unless the question only says that it is there, and it fails', () => {
    const asked = { fitted: { box: 'box-b' } };
    expect(fitOf(cars, 'box-b', asked)).toMatchObject({
      alone: 'fails',
      verdict: null,
      present: true,
    });
  });

  it('said to be there and open, it is as found on the car', () => {
    const asked = { fitted: { box: 'box-silent' } };
    expect(fitOf(cars, 'box-silent', asked)).toMatchObject({ verdict: 'fits', present: true });
  });
});

describe('V5 several places are judged each alone, and the best of them counts', () => {
  const axles = world({
    places: ['rear-axle: axle', 'front-axle: axle', 'rear-shaft: shaft', 'front-shaft: shaft'],
    matings: ['rear-axle.out = rear-shaft.in', 'front-axle.out = front-shaft.in'],
    parts: {
      'axle-r': { out: flange('R') },
      'axle-f': { out: flange('F') },
      'axle-s': { out: flange() },
      'shaft-r': { in: flange('R') },
      'shaft-f': { in: flange('F') },
      'shaft-r2': { in: flange('R') },
      'shaft-s': { in: flange() },
      'pump-a': {},
    },
    cars: {
      car: {
        'rear-axle': 'axle-r',
        'front-axle': 'axle-f',
        'rear-shaft': 'shaft-r',
        'front-shaft': 'shaft-f',
      },
      alike: {
        'rear-axle': 'axle-r',
        'front-axle': 'axle-r',
        'rear-shaft': 'shaft-r',
        'front-shaft': 'shaft-r',
      },
      half: {
        'rear-axle': 'axle-s',
        'front-axle': 'axle-f',
        'rear-shaft': 'shaft-s',
        'front-shaft': 'shaft-f',
      },
    },
  });
  const verdicts = (answer: ReturnType<typeof fitOf>) =>
    answer.positions.map(({ position, alone, verdict }) => [position, alone, verdict]);

  it('a half-shaft that fits at the rear and not at the front', () => {
    const answer = fitOf(axles, 'shaft-r2');
    expect(verdicts(answer)).toEqual([
      ['rear-shaft', 'holds', 'fits'],
      ['front-shaft', 'fails', null],
    ]);
    expect(answer).toMatchObject({
      alone: 'holds',
      verdict: 'fits',
      ambiguous: true,
      at: ['rear-shaft'],
    });
  });

  it('both alike: not ambiguous', () => {
    expect(fitOf(axles, 'shaft-r2', { on: 'alike' })).toMatchObject({
      verdict: 'fits',
      ambiguous: false,
      at: ['rear-shaft', 'front-shaft'],
    });
    expect(fitOf(axles, 'shaft-f', { on: 'alike' })).toMatchObject({
      alone: 'fails',
      verdict: null,
      ambiguous: false,
      at: ['rear-shaft', 'front-shaft'],
    });
  });

  it('open is better than failing, and worse than holding', () => {
    expect(fitOf(axles, 'shaft-r2', { on: 'half' })).toMatchObject({
      alone: 'open',
      verdict: 'unknown',
      ambiguous: true,
      at: ['rear-shaft'],
    });
    const best = fitOf(axles, 'shaft-f', { on: 'half', fitted: { 'front-shaft': 'shaft-r' } });
    expect(best).toMatchObject({ verdict: 'fits', ambiguous: true, at: ['front-shaft'] });
  });

  it('a place that is named is the only one', () => {
    const answer = fitOf(axles, 'shaft-r2', { position: 'front-shaft' });
    expect(verdicts(answer)).toEqual([['front-shaft', 'fails', null]]);
    expect(answer).toMatchObject({ ambiguous: false, at: ['front-shaft'] });
  });

  it('no place for such a part: does not fit', () => {
    expect(fitOf(axles, 'pump-a')).toMatchObject({
      alone: 'fails',
      verdict: 'does-not-fit',
      positions: [],
      at: [],
      summary: { code: 'no-position' },
    });
  });

  it('a place that takes no such part does not take it either', () => {
    expect(fitOf(axles, 'pump-a', { position: 'rear-shaft' }).alone).toBe('fails');
  });
});

describe('V6 what comes with the part is named by place', () => {
  it('with the right shaft beside it the box fits', () => {
    const answer = fitOf(cars, 'box-b', { with: { prop: 'prop-b' } });
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits' });
    expect(answer.positions.map(({ position }) => position)).toEqual(['box']);
  });

  it('and what its companion meets is judged too', () => {
    expect(fitOf(cars, 'box-same', { with: { prop: 'prop-odd' } })).toMatchObject({
      alone: 'fails',
      verdict: null,
    });
  });

  it('a companion never takes the place of the part that is asked about', () => {
    const twins = world({
      ...plan,
      places: ['box', 'prop', 'axle', 'spare: prop'],
      matings: [...(plan.matings ?? []), 'spare.front = axle.out'],
      parts: { ...plan.parts, 'axle-a': { in: flange('X'), out: flange('A') } },
      cars: { car: { ...plan.cars.car, spare: 'prop-a' } },
      unmated: 'ignore',
    });
    const asked = { position: 'spare', with: { spare: 'prop-a' } };
    const verdict = () => fitOf(twins, 'prop-b', asked).verdict;
    expect(fitOf(twins, 'prop-b', { position: 'spare' }).alone).toBe('fails');
    const answers = { refused: false, verdict: null as string | null };
    try {
      answers.verdict = verdict();
    } catch (error) {
      answers.refused = error instanceof QuestionError;
    }
    expect(answers.verdict === 'fits').toBe(false);
  });

  it('each place has a verdict of its own, beside the one over all of them', () => {
    const twins = world({
      ...plan,
      places: ['box', 'prop', 'axle', 'spare: prop'],
      cars: { car: { ...plan.cars.car, spare: 'prop-a' } },
    });
    const answer = fitOf(twins, 'prop-b');
    expect(answer.positions.map(({ position, verdict }) => [position, verdict])).toEqual([
      ['prop', null],
      ['spare', 'unknown'],
    ]);
    expect(answer.at).toEqual(['spare']);
  });
});
