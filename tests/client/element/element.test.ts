/**
 * `<faying-fit>` in a document, asked of the service as it runs: what it shows for each verdict,
 * what it asks and offers, and that it writes no markup and no style.
 */

import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { AddedLine, FayingFitElement } from '../../../src/client/element.js';
import { type RunningService, runningService, serving } from '../running-service.js';
import { press, settledOnce, texts } from './page.js';

let service: RunningService;

beforeAll(async () => {
  service = await runningService();
});
afterAll(() => service.stop());
afterEach(() => document.body.replaceChildren());

/** An element with these attributes, once it has an answer or knows that there is none. */
async function shown(attributes: Readonly<Record<string, string>>): Promise<FayingFitElement> {
  const element = document.createElement('faying-fit');
  const all = { 'base-url': service.url, ...attributes };
  for (const [name, value] of Object.entries(all)) element.setAttribute(name, value);
  const settled = settledOnce(element);
  document.body.append(element);
  await settled;
  return element;
}

function addedBy(element: HTMLElement): AddedLine[][] {
  const added: AddedLine[][] = [];
  document.body.addEventListener(
    'add',
    (event) => {
      added.push((event as CustomEvent<AddedLine[]>).detail);
    },
    { once: true },
  );
  press(element, '.faying-add');
  return added;
}

const LIRREN = { make: 'Corrablyn', model: 'Lirren' };
const GENERAL = 'The maker’s figures come first';

describe('a vehicle that is known', () => {
  test('that the part fits shows the sentence and the cautions, and offers the part', async () => {
    const element = await shown({ vehicle: 'lirren-1', part: 'bracket-20' });
    expect(element.dataset).toMatchObject({ state: 'answered', verdict: 'fits' });
    expect(texts(element, '.faying-verdict')).toEqual(['Fits.']);
    expect(texts(element, '.faying-cautions li')[0]).toContain(GENERAL);
    expect(texts(element, '.faying-needed, .faying-measure, .faying-ask')).toEqual([]);
    const { name } = addedBy(element)[0]?.[0] ?? {};
    expect(name).toBe('bracket of the rear axle, 20 mm');
  });

  test('where it fits with changes has every line to buy, and no other', async () => {
    const element = await shown({ vehicle: 'lirren-1', part: 'sku:F-1001' });
    expect(element.dataset).toMatchObject({ verdict: 'fits-with-changes' });
    const needed = texts(element, '.faying-needed li');
    expect(needed).toContain('8 × Lirren flywheel bolt, M12 x 1.25');
    expect(needed).toContain('0.9 l axle oil 75W-90, GL-5');
    expect(needed).toContain('1 × Lirren II clutch kit, 240 mm');
    // In the kit, and taken out.
    expect(needed).not.toContain('1 × Lirren II pull clutch, 240 mm');
    expect(needed).not.toContain('1 × Lirren I flywheel');
    const [added] = addedBy(element);
    expect(added).toContainEqual({
      sku: 'F-1080',
      packs: 8,
      part: 'flywheel-bolt-lirren',
      lot: null,
      name: 'Lirren flywheel bolt, M12 x 1.25',
    });
    expect(added).toContainEqual(
      expect.objectContaining({ sku: 'Y-240-KIT', packs: 1, lot: 'clutch-kit-late' }),
    );
    expect(added?.map(({ sku }) => sku)).not.toContain('Y-240');
    expect(new Set(added?.map(({ sku }) => sku)).size).toBe(added?.length);
  });

  test('where nobody knows shows what to measure, and offers nothing', async () => {
    const element = await shown({ vehicle: 'lirren-1', part: 'front-hub-used' });
    expect(element.dataset).toMatchObject({ verdict: 'unknown' });
    expect(texts(element, '.faying-measure li')).toEqual([
      expect.stringMatching(/^Measure the spigot diameter of the hub/),
    ]);
    expect(texts(element, '.faying-add, .faying-needed')).toEqual([]);
  });

  test('is asked again when an attribute changes, and answers to the last one only', async () => {
    const element = await shown({ vehicle: 'lirren-1', part: 'front-hub-used' });
    const settled = settledOnce(element);
    element.setAttribute('part', 'no-such-part');
    element.setAttribute('part', 'bracket-20');
    await settled;
    expect(texts(element, '.faying-verdict')).toEqual(['Fits.']);
  });
});

describe('a vehicle that is known in part', () => {
  test('is asked for, until an answer settles it', async () => {
    const element = await shown({ ...LIRREN, part: 'front-hub-used' });
    expect(element.dataset).toMatchObject({ verdict: 'depends' });
    expect(texts(element, '.faying-question')).toEqual(['Variant']);
    expect(texts(element, '.faying-value')).toHaveLength(2);
    expect(texts(element, '.faying-add')).toEqual([]);
    const settled = settledOnce(element);
    press(element, '.faying-value', 'first series, two-litre, five-speed');
    await settled;
    expect(element.dataset).toMatchObject({ state: 'answered', verdict: 'unknown' });
    expect(texts(element, '.faying-measure li')).toHaveLength(1);
    expect(texts(element, '.faying-value, .faying-add')).toEqual([]);
  });

  test('that can only be one has the whole answer', async () => {
    const element = await shown({ ...LIRREN, year: '2004', part: 'bracket-20' });
    expect(element.dataset).toMatchObject({ verdict: 'fits' });
    expect(texts(element, '.faying-cautions li')[0]).toContain(GENERAL);
    expect(texts(element, '.faying-add')).toHaveLength(1);
  });
});

test('asks what its attributes say, with the key', async () => {
  const asked: unknown[] = [];
  const written = await serving(({ url, headers }, response) => {
    asked.push([url, headers.authorization]);
    response.statusCode = 404;
    response.end('{}');
  });
  const vehicle = { make: 'Corrablyn', model: 'Lirren', year: '2004', built: '2004-03' };
  const place = { part: 'a b', position: 'rear-hub', variant: '' };
  const settings = { 'base-url': written.url, 'api-key': 'k-1', lang: 'de', edition: '3' };
  await shown({ ...vehicle, ...place, ...settings });
  const query =
    'edition=3&lang=de&make=Corrablyn&model=Lirren&built=2004-03&position=rear-hub' +
    '&part=a%20b&year=2004';
  expect(asked).toEqual([[`/v1/fit?${query}`, 'Bearer k-1']]);
  await written.stop();
});

test('ends its question when it leaves the page', async () => {
  let isGone = false;
  const silent = await serving((_, response) => {
    response.once('close', () => {
      isGone = true;
    });
    element.remove();
  });
  const element = document.createElement('faying-fit');
  element.setAttribute('base-url', silent.url);
  element.setAttribute('part', 'b');
  document.body.append(element);
  await expect.poll(() => isGone).toBe(true);
  expect(element.dataset.state).toBe('asking');
  await silent.stop();
});

describe('where there is no answer', () => {
  test('the problem says why', async () => {
    const element = await shown({ vehicle: 'liren-1', part: 'bracket-20' });
    expect(element.dataset.state).toBe('failed');
    expect(element.dataset.verdict).toBeUndefined();
    expect(element.textContent).toBe('There is no vehicle "liren-1". Did you mean \'lirren-1\'?');
  });

  test('of a service it says that it cannot be said', async () => {
    const gateway = await serving((_, response) => {
      response.statusCode = 502;
      response.end('<h1>Bad gateway</h1>');
    });
    const element = await shown({ 'base-url': gateway.url, vehicle: 'a', part: 'b' });
    expect(element.textContent).toBe('Whether it fits cannot be said at the moment.');
    await gateway.stop();
  });

  test('and a verdict that is new offers nothing', async () => {
    const answer = {
      verdict: 'fits-on-sundays',
      lang: 'en',
      positions: [],
      kit: null,
      measure: [],
      summary: { text: 'Fits on Sundays.' },
      cautions: [],
      part: 'b',
      name: 'b',
      asked: 'b',
    };
    const newer = await serving((_, response) => {
      response.setHeader('content-type', 'application/json').end(JSON.stringify(answer));
    });
    const element = await shown({ 'base-url': newer.url, vehicle: 'a', part: 'b' });
    expect(texts(element, 'p')).toEqual(['Fits on Sundays.']);
    expect(texts(element, 'button')).toEqual([]);
    await newer.stop();
  });
});

test('it speaks the language of the page', async () => {
  document.documentElement.setAttribute('lang', 'de-AT');
  const element = await shown({ vehicle: 'lirren-1', part: 'sku:F-1001' });
  expect(texts(element, '.faying-title')).toEqual(['Dazu gehört', 'Bitte beachten']);
  expect(texts(element, '.faying-needed li')).toContainEqual(expect.stringMatching(/^0,9 l /));
  const other = await shown({ vehicle: 'lirren-1', part: 'bracket-20', lang: 'en' });
  expect(texts(other, '.faying-verdict')).toEqual(['Fits.']);
  document.documentElement.removeAttribute('lang');
});

describe('under the strictest policy', () => {
  test('texts stay texts', async () => {
    const hostile = '<img src=x onerror=alert(1)>';
    const answer = {
      verdict: 'fits',
      lang: 'en',
      positions: [],
      kit: null,
      part: 'b',
      asked: 'b',
      summary: { text: hostile },
      name: hostile,
      measure: [{ text: hostile }],
      cautions: [{ show: 'always', text: hostile }],
    };
    const evil = await serving((_, response) => {
      response.setHeader('content-type', 'application/json').end(JSON.stringify(answer));
    });
    const element = await shown({ 'base-url': evil.url, vehicle: 'a', part: 'b' });
    expect(element.querySelectorAll('img')).toHaveLength(0);
    expect(texts(element, '.faying-verdict, .faying-measure li')).toEqual([hostile, hostile]);
    await evil.stop();
  });

  test('nothing has a style, a handler in an attribute, or another name than its own', async () => {
    const element = await shown({ ...LIRREN, part: 'front-hub-used' });
    const names = [...element.querySelectorAll('*')].flatMap((one) => one.getAttributeNames());
    expect(new Set(names)).toEqual(new Set(['class', 'type']));
    expect(element.getAttribute('style')).toBeNull();
  });

  test('and its source has no way to write markup or to run a text', () => {
    const source = readFileSync('src/client/element.ts', 'utf8');
    expect(source).not.toMatch(
      /innerHTML|outerHTML|insertAdjacent|document\.write|\beval\b|style\./,
    );
    expect(source).not.toMatch(/createElement\('(style|script|link|iframe)'/);
  });
});
