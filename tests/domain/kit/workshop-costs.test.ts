/**
 * What routes cost and how they are graded by it, through the whole resolver: what is opened, and
 * limits against which something is not known.
 */

import { expect, test } from 'vitest';
import { resolveKits } from '../../../src/domain/kit/resolve.js';
import { type Asked, question, type Sketch, shop } from './shop.js';

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
