/**
 * What the demo catalogue answers about parts. Each verdict was worked out by hand from the
 * records: what meets what, which lengths add up, how fast each axle turns.
 */

import { describe, expect, test } from 'vitest';
import { askFit } from './ask.js';
import { check, codes, inState, onlyPosition, positionOf } from './found.js';
import { fits, inspections } from './questions.js';

describe('the six-speed gearbox of the second series in the first', () => {
  test('fails alone, in eight places, the loop by the ratio of its transfer gears', () => {
    const answer = fits['late-gearbox']();
    expect(answer).toMatchObject({ alone: 'fails', verdict: null, at: ['gearbox'] });
    const gearbox = onlyPosition(answer);
    expect(gearbox.replaces).toEqual(['gearbox-5-early']);
    expect(inState('fails', gearbox)).toEqual([
      'clutch-gearbox: not-equal',
      'bearing-gearbox: not-equal',
      'gearbox-linkage: not-equal',
      'gearbox-front-shaft: not-equal',
      'gearbox-prop: pcd-differs',
      'gearbox-speedometer: not-equal',
      'axle-match: first-too-fast',
      'prop-span: length-differs',
    ]);
    expect(inState('open', gearbox)).toEqual([]);
    // (12/11 · 43/11) / (43/11) - 1 = 1/11.
    expect(check(gearbox, 'axle-match').checks[0]?.margin).toMatchObject({
      text: '9.1 %',
      unit: '%',
      low: '100/11',
      high: '100/11',
    });
    expect(codes(answer.cautions)).toEqual(['seals-behind-gearbox']);
  });

  test('with the axle of its own series closes the loop, but that axle brings more along', () => {
    const gearbox = onlyPosition(fits['late-gearbox-and-axle']());
    expect(check(gearbox, 'axle-match')).toMatchObject({ state: 'holds', code: 'agrees' });
    expect(check(gearbox, 'axle-match').checks[0]?.margin?.text).toBe('0 %');
    expect(inState('fails', gearbox)).toContain('final-drive-shaft: different-kinds');
    expect(inState('fails', gearbox)).toContain('late-axle-ears: rule-needs');
  });

  test('fits with the whole rear end, wheels of one pattern and a shaft made to length', () => {
    const answer = fits['late-gearbox-and-rear-end']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits', measure: [] });
    expect(answer.summary.code).toBe('fits-made-to-order');
    const { order } = onlyPosition(answer);
    // 2254 - 612 - 268 = 1374; 4 mm less 1 for the tape, thrice 0.5 for the lengths read.
    expect(order).toMatchObject([
      {
        code: 'order-to-suit',
        on: { part: 'prop-made-two', parameter: 'length' },
        value: { text: '1374 ±2 mm', low: '1372', high: '1376', unit: 'mm' },
      },
    ]);
    expect(codes(answer.cautions)).toContain('late-corner');
  });

  test('fits with an axle of which only the tag is known, cut or rounded', () => {
    const answer = fits['late-gearbox-and-tagged-axle']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits' });
    const [loop] = check(onlyPosition(answer), 'axle-match').checks;
    expect(loop?.margin?.text).toBe('-0.24 to 0.19 %');
  });

  test('is open with the axle of the other make, until one inferred size is confirmed', () => {
    const answer = fits['late-gearbox-and-donor-axle']();
    expect(answer).toMatchObject({ alone: 'open', verdict: 'unknown' });
    expect(inState('open', onlyPosition(answer))).toEqual(['final-drive-shaft: evidence-too-weak']);
    expect(answer.measure).toMatchObject([
      {
        code: 'confirm',
        purpose: 'to-confirm',
        on: { part: 'axle-hulvane', interface: 'side', parameter: 'pcd' },
        needed: { text: '±0.2 mm', low: '-0.2', high: '0.2', unit: 'mm' },
      },
    ]);
    expect(onlyPosition(answer).order[0]?.value?.text).toBe('1362 ±2 mm');
  });

  test('is what the late axle needs: without it the front turns too slowly', () => {
    const axle = onlyPosition(fits['late-axle-alone']());
    // 43/12 / (43/11) - 1 = -1/12.
    expect(check(axle, 'axle-match')).toMatchObject({ state: 'fails', code: 'first-too-slow' });
    expect(check(axle, 'axle-match').checks[0]?.margin?.low).toBe('-25/3');
  });
});

describe('one part', () => {
  test('fits plainly', () => {
    const answer = fits['rebuilt-gearbox']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits', present: false, measure: [] });
    expect(answer.summary.text).toBe('Fits.');
  });

  test('measured too coarsely is open, and the answer says what to measure how finely', () => {
    const answer = fits['used-hub']();
    expect(answer).toMatchObject({ alone: 'open', verdict: 'unknown' });
    const hub = onlyPosition(answer);
    expect(inState('open', hub)).toEqual(['front-hub-wheel: not-precise-enough']);
    // The spigot is 58.9 as read; 59 goes into a bore of 59 H8, so 0.1 decides.
    expect(answer.measure).toMatchObject([
      {
        code: 'measure-to-decide',
        on: { position: 'front-hub', interface: 'wheel', parameter: 'spigot' },
        now: { text: '58.9 mm', low: '57.9', high: '59.9', unit: 'mm' },
        needed: { text: '±0.1 mm' },
        tool: 'micrometer',
        settles: ['front-hub-wheel'],
      },
    ]);
  });

  test('made to order fits, and the answer says what to order', () => {
    const answer = fits['made-shaft']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits' });
    expect(onlyPosition(answer).order).toMatchObject([{ value: { text: '1412 ±2 mm' } }]);
  });

  test('that no one length suits is refused, and nothing is to be ordered', () => {
    const answer = fits['made-shaft-in-one-piece']();
    expect(answer.alone).toBe('fails');
    const shaft = onlyPosition(answer);
    expect(inState('fails', shaft)).toEqual(['prop-shaft.length: no-common-choice']);
    expect(shaft.order).toEqual([]);
  });

  test('fits a vehicle with a gap in its records that it does not touch', () => {
    const answer = fits['gap-in-the-records']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits', measure: [] });
    expect(inState('open', onlyPosition(answer))).toEqual([]);
  });

  test('is open on what nobody has identified, and the answer says what to find out', () => {
    const answer = fits['wheel-on-unknown-hub']();
    expect(answer).toMatchObject({ alone: 'open', at: ['front-wheel'], ambiguous: true });
    expect(answer.measure.map(({ code, on }) => [code, on.position])).toEqual([
      ['identify', 'front-hub'],
    ]);
  });
});

describe('a statement', () => {
  test('settles what nobody has recorded, and the answer says who states it', () => {
    const answer = fits['stated-clutch']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits' });
    expect(onlyPosition(answer).matings.find(({ code }) => code === 'stated')).toMatchObject({
      mating: 'clutch-gearbox',
      state: 'holds',
      computed: 'open',
      statement: 'yarrowick-list',
      basis: 'maker',
    });
  });

  test('does not help against what has been measured on both sides', () => {
    const answer = fits['stated-but-measured-shaft']();
    expect(answer).toMatchObject({ alone: 'fails', verdict: null });
    expect(inState('fails', onlyPosition(answer))).toEqual(['gearbox-prop: too-small']);
  });

  test('against records that nobody has measured leaves it open', () => {
    const answer = fits['stated-but-unlikely-wheel']();
    expect(answer).toMatchObject({ alone: 'open', verdict: 'unknown', at: ['rear-wheel'] });
    expect(inState('open', positionOf(answer, 'rear-wheel'))).toEqual([
      'rear-hub-wheel: contradicts-statement',
    ]);
  });
});

describe('sides, choices and optional places', () => {
  test('a left half-shaft goes to the left, and leaves the right alone', () => {
    const answer = fits['left-half-shaft']();
    expect(answer).toMatchObject({ alone: 'holds', verdict: 'fits' });
    const shaft = onlyPosition(answer);
    expect(shaft.replaces).toEqual(['rear-shaft-early-left']);
    const hands = [...shaft.matings, ...shaft.checks].map(({ hand }) => hand);
    expect(new Set(hands)).toEqual(new Set(['left']));
  });

  test('two right half-shafts are one too many', () => {
    const { state, judged } = inspections['two-right-half-shafts']();
    expect(state).toBe('fails');
    expect(inState('fails', judged)).toEqual(['rear-half-shaft:left: wrong-hand']);
  });

  test('a half-shaft without a rating is open, whatever its faces are', () => {
    const answer = fits['half-shaft-without-rating']();
    expect(answer).toMatchObject({ alone: 'open', verdict: 'unknown' });
    expect(inState('open', onlyPosition(answer))).toEqual(['rear-shaft-load: not-recorded']);
    expect(answer.measure).toMatchObject([{ code: 'look-up', on: { parameter: 'torque' } }]);
  });

  test('a wheel on a dual-drilled hub uses its other holes, and wants a ring', () => {
    const answer = fits['wheel-on-dual-drilled-hub']();
    expect(answer).toMatchObject({ verdict: 'fits', at: ['rear-wheel'], ambiguous: true });
    const [choice] = positionOf(answer, 'rear-wheel').choices;
    expect(choice?.data.choices).toMatchObject([
      { parameter: 'pcd', value: { text: '117 mm', low: '117', high: '117', unit: 'mm' } },
    ]);
    expect(positionOf(answer, 'front-wheel').alone).toBe('fails');
    const texts = answer.cautions.map(({ text }) => text).join('\n');
    expect(texts).toContain('centring ring');
    expect(texts).toContain('one stud pattern');
  });

  test('a gearbox that needs a control unit fits with one, not without', () => {
    const without = fits['gearbox-without-control-unit']();
    expect(inState('fails', onlyPosition(without))).toEqual(['gearbox-control: needed-empty']);
    expect(fits['gearbox-with-control-unit']()).toMatchObject({ alone: 'holds', verdict: 'fits' });
  });

  test('a wheel of another size wants another tyre', () => {
    const answer = fits['larger-wheel']();
    expect(answer).toMatchObject({ alone: 'fails', at: ['front-wheel', 'rear-wheel'] });
    const rear = positionOf(answer, 'rear-wheel');
    expect(inState('fails', rear)).toEqual(['rear-wheel-tyre: not-equal']);
  });

  test('and with it, on one axle alone, fails: that axle turns more slowly', () => {
    const answer = fits['larger-wheel-and-tyre']();
    expect(answer).toMatchObject({ alone: 'fails', at: ['rear-wheel'] });
    const rear = positionOf(answer, 'rear-wheel');
    expect(inState('fails', rear)).toEqual(['same-tyres: tyres-differ']);
    expect(codes(answer.cautions)).toEqual(['winds-up']);
    // (15 in + 2 x 195 x 0.60) / (16 in + 2 x 205 x 0.55) - 1: 615 against 631.9 mm.
    const [loop] = check(rear, 'axle-match').checks;
    expect(loop?.margin).toMatchObject({ text: '-2.68 %', low: '-16900/6319' });
  });

  test('and with it on all four corners fits, without a caution', () => {
    const answer = fits['larger-wheels-all-round']();
    expect(answer).toMatchObject({ verdict: 'fits', at: ['rear-wheel'] });
    expect(codes(answer.cautions)).toEqual([]);
    const [loop] = check(positionOf(answer, 'rear-wheel'), 'axle-match').checks;
    expect(loop?.margin?.text).toBe('0 %');
  });

  test('a gearbox of another make fails on its housing; what was only reported stays open', () => {
    const gearbox = onlyPosition(fits['gearbox-of-the-hulvane']());
    expect(inState('fails', gearbox)).toEqual([
      'engine-gearbox: not-equal',
      'clutch-gearbox: not-equal',
      'bearing-gearbox: bearing-does-not-go-on',
      'axle-match: first-too-fast',
      'prop-span: length-differs',
      'tunnel: tunnel-too-narrow',
      // Its viscous coupling can send all of the torque to one axle.
      'rear-shaft-load: too-weak',
      'front-shaft-load: too-weak',
    ]);
    expect(inState('open', gearbox)).toEqual(['gearbox-load: evidence-too-weak']);
  });
});

test('the summary of a part with several places says which it is about', () => {
  const told = (vehicle: string, part: string, lang: string) =>
    askFit(vehicle, part)(lang).summary.text;
  // On the rear hubs, which are not driven, it fails.
  expect(told('gallivet-early', 'hub-nut-24', 'en')).toBe(
    'This part is on the vehicle already as front hub nut.',
  );
  expect(told('hulvane', 'wheel-15-106', 'en')).toBe(
    'Not known whether it fits as front wheel: one thing to find out.',
  );
  expect(told('hulvane', 'wheel-15-106', 'de')).toBe(
    'Nicht bekannt, ob es am Einbauplatz „Vorderrad“ passt: eine Sache ist noch zu klären.',
  );
});

describe('a part that the vehicle has no place for', () => {
  test('goes between two others only where no vehicle has a place for it', () => {
    const plate = askFit('lirren-1', 'adapter-70-65')();
    expect(plate).toMatchObject({ alone: 'fails', verdict: null, positions: [] });
    expect(plate.summary.code).toBe('goes-between');
    // Two faces each, as what sits in a joint has, but with a place of their own elsewhere.
    for (const part of ['engine-gallivet', 'brake-hose-gallivet', 'gear-set-41-11']) {
      const answer = askFit('lirren-1', part)();
      expect(answer).toMatchObject({ alone: 'fails', verdict: 'does-not-fit', positions: [] });
      expect(answer.summary.code).toBe('no-position');
    }
  });
});
