/**
 * The example of a shop's page: the page as it is, its script, and the element, asked of the
 * service as it runs, up to what lies in the basket.
 */

import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningService, runningService } from '../running-service.js';
import { press, settledOnce, texts } from './page.js';

const PAGE = readFileSync('scripts/examples/product-page.html', 'utf8');
const WRITTEN_FOR = 'http://127.0.0.1:8080';

let service: RunningService;
beforeAll(async () => {
  service = await runningService();
});
afterAll(() => service.stop());

test('the page says that the part fits with changes, and fills the basket', async () => {
  const [, body = ''] = /<body>([\s\S]*)<\/body>/.exec(PAGE) ?? [];
  document.body.innerHTML = body.replaceAll(WRITTEN_FOR, service.url);
  const element = document.querySelector('faying-fit');
  if (element === null) throw new Error('the page has no element');
  const settled = settledOnce(element);
  // No types come with it: it is a script of a page, and exports nothing.
  const script = '../../../scripts/examples/product-page.js';
  await import(script);
  await settled;
  expect(texts(document, 'h1')).toEqual(['Lirren II six-speed gearbox']);
  expect(texts(document, '#numbers')).toEqual(['CBL-2G-6']);
  expect(texts(document, '.faying-verdict')).toEqual([
    'Fits, with nine other places changed, once the workshop has signed for the work.',
  ]);
  expect(texts(document, '#basket li')).toEqual([]);
  press(document, '.faying-add');
  const basket = texts(document, '#basket li');
  expect(basket).toContain('1 x F-1001: Lirren II six-speed gearbox');
  expect(basket).toContain('8 x F-1080: Lirren flywheel bolt, M12 x 1.25');
});

test('its policy lets nothing in but its own scripts and the service', () => {
  const [, policy = ''] = /Content-Security-Policy"\s+content="([^"]*)"/.exec(PAGE) ?? [];
  expect(policy).toBe(`default-src 'none'; script-src 'self'; connect-src ${WRITTEN_FOR}`);
  const scripts = [...PAGE.matchAll(/<script[^>]*>/g)].map(([tag]) => tag);
  expect(scripts).toEqual([
    '<script type="module" src="faying-fit.js">',
    '<script type="module" src="product-page.js">',
  ]);
  expect(PAGE).not.toMatch(/\sstyle=|<style|\son\w+=/);
});
