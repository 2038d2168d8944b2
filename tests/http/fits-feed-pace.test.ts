/**
 * All that fits is made no faster than it is read, for each reader alone, and not at all for
 * whoever has gone.
 */

import { describe, expect, test } from 'vitest';
import { USE_CASES } from '../../src/http/service.js';
import type { FitsFeed } from '../../src/usecases/fits-feed.js';
import { CART } from '../cli/catalogue.js';
import { FEED } from './feed.js';
import { rigOf } from './fixture.js';

describe('how fast it is read', () => {
  const [cart] = CART.vehicles as [(typeof CART.vehicles)[number]];
  const MANY = 400;
  const BOXES = 40;
  const box = CART.parts.find(({ id }) => id === 'box-a') as (typeof CART.parts)[number];
  const LARGE = {
    ...CART,
    parts: [
      ...CART.parts,
      ...Array.from({ length: BOXES }, (_, index) => ({ ...box, id: `box-of-many-${index}` })),
    ],
    vehicles: Array.from({ length: MANY }, (_, index) => ({ ...cart, id: `cart-${index}` })),
  };
  const feeds: FitsFeed[] = [];
  const rig = rigOf({
    documents: [LARGE],
    useCases: {
      startFitsFeed: (...given) => {
        const feed = USE_CASES.startFitsFeed(...given);
        feeds.push(feed);
        return feed;
      },
    },
  });

  function readerOf(response: Response) {
    if (response.body === null) throw new Error('there is a body');
    return response.body.getReader();
  }

  async function rest(reader: ReturnType<typeof readerOf>): Promise<string> {
    let text = '';
    const decoder = new TextDecoder();
    for (;;) {
      const { value, done } = await reader.read();
      if (done) return text;
      text += decoder.decode(value, { stream: true });
    }
  }

  test('it is made, and each reader is alone', async () => {
    feeds.length = 0;
    const slow = readerOf(await rig.app.request(FEED));
    const fast = readerOf(await rig.app.request(FEED));
    const [slowFeed, fastFeed] = feeds as [FitsFeed, FitsFeed];
    // Nothing is made before somebody reads.
    expect([slowFeed.told, fastFeed.told]).toEqual([0, 0]);
    const decoder = new TextDecoder();
    const first = decoder.decode((await slow.read()).value);
    const wasTold = slowFeed.told;
    expect(wasTold).toBeGreaterThan(0);
    expect(wasTold).toBeLessThan(slowFeed.parts / 4);
    const whole = await rest(fast);
    expect(fastFeed.told).toBe(fastFeed.parts);
    // The other one has gone as far as it was read, and not a part further.
    expect(slowFeed.told).toBe(wasTold);
    expect(first + (await rest(slow))).toBe(whole);
    expect(whole.trimEnd().split('\n').length).toBe(2 + MANY * (BOXES + 4 + 1 + 1 + 2));
  });

  test('who goes away is worked for no more', async () => {
    feeds.length = 0;
    const reader = readerOf(await rig.app.request(FEED));
    await reader.read();
    await reader.cancel();
    const [feed] = feeds as [FitsFeed];
    const { told } = feed;
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(feed.told).toBe(told);
    expect(rig.lines.some(({ msg }) => msg === 'feed ended')).toBe(true);
  });

  test('what goes wrong on the way is in the log, and there is no end', async () => {
    const broken = rigOf({
      documents: [CART],
      useCases: {
        startFitsFeed: (...given) => {
          const feed = USE_CASES.startFitsFeed(...given);
          feed.lines = function* () {
            yield [];
            throw new Error('a mistake on the way');
          };
          return feed;
        },
      },
    });
    const response = await broken.app.request(FEED);
    await expect(response.text()).rejects.toThrow();
    const logged = broken.lines.find(({ msg }) => msg === 'internal-error');
    expect(JSON.stringify(logged)).toContain('a mistake on the way');
  });
});
