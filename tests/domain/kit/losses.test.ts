/**
 * What a vehicle loses by a change: places, joints, ratings and counts; and what is no loss.
 */

import { expect, test } from 'vitest';
import { type Loss, lossesOf } from '../../../src/domain/kit/losses.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { ABSENT, flange, optional, world } from '../../rules/sketch.js';
import { judged, type Scene } from '../../rules/world.js';

const speed = optional(flange('S'));

const cart = world({
  roles: {
    box: { gears: 'ratios', 'gear-count': { term: { count: 'gears' } }, torque: 'rating' },
    shaft: { torque: 'rating', length: 'length' },
  },
  places: ['box', 'shaft<>', 'sensor?'],
  matings: ['box.speed = sensor.box +1'],
  parts: {
    'box-a': { gears: ['3/1', '2/1'], torque: '300 N.m', speed },
    'box-fewer': { gears: ['3/1'], torque: '300 N.m', speed },
    'box-weak': { gears: ['3/1', '2/1', '1/1'], torque: '290 N.m', speed },
    'box-deaf': { gears: ['3/1', '2/1'], torque: '300 N.m', speed: ABSENT },
    'box-silent': { torque: '400 N.m', speed },
    'shaft-a': { torque: '500 N.m', length: '400 ±1 mm' },
    'shaft-short': { torque: '500 N.m', length: '300 ±1 mm' },
    'shaft-untold': { length: '400 ±1 mm' },
    'sensor-a': { box: speed },
    'sensor-b': { box: speed },
    'lead-a': { roles: ['lead'], one: flange('S'), two: flange('S') },
  },
  cars: { car: { box: 'box-a', shaft: { left: 'shaft-a', right: 'shaft-a' }, sensor: 'sensor-a' } },
});

function told(loss: Loss): string {
  switch (loss.is) {
    case 'place-emptied':
      return `${loss.is} ${loss.position}: ${loss.part}`;
    case 'joint-lost':
      return `${loss.is} ${loss.ends.map(({ position }) => position).join(' ')}`;
    default: {
      const { position, hand, parameter } = loss.after.address;
      const [was, is] = [loss.before, loss.after].map(({ domain, recorded }) =>
        recorded && domain.low !== null ? exactText(domain.low) : '?',
      );
      const place = hand === null ? position : `${position}:${hand}`;
      return `${loss.is} ${place}.${parameter} ${was} ${is}`;
    }
  }
}

const losses = (scene: Scene) => lossesOf(judged(cart, scene).configuration).map(told);

test.each<readonly [string, Scene, readonly string[]]>([
  ['nothing changes', {}, []],
  [
    'a place is emptied, whose joint is then told by it',
    { put: { sensor: null } },
    ['place-emptied sensor: sensor-a'],
  ],
  ['fewer gears', { put: { box: 'box-fewer' } }, ['value-lower box.gear-count 2 1']],
  ['less torque, more gears', { put: { box: 'box-weak' } }, ['value-lower box.torque 299.5 289.5']],
  ['nothing for the sensor to read', { put: { box: 'box-deaf' } }, ['joint-lost box sensor']],
  ['gears that nobody recorded, more torque', { put: { box: 'box-silent' } }, []],
  ['another sensor', { put: { sensor: 'sensor-b' } }, []],
  ['another length', { put: { shaft: 'shaft-short' } }, []],
  [
    'a rating that nobody recorded, on one hand',
    { put: { shaft: { left: 'shaft-untold', right: 'shaft-a' } } },
    ['rating-unknown shaft:left.torque 499.5 ?'],
  ],
  [
    'what was not known before',
    { on: 'car', said: { shaft: '?' }, put: { shaft: 'shaft-untold' } },
    [],
  ],
  [
    'an adapter between',
    { put: { sensor: 'sensor-b' }, between: { 'box-sensor': ['lead-a'] } },
    [],
  ],
])('%s', (_, scene, expected) => {
  expect(losses(scene)).toEqual(expected);
});
