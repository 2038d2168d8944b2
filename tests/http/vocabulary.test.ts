/**
 * Kinds and roles over HTTP: what is built in and what the catalogue declares, whole and in both
 * languages of their texts, and for how long caches may keep them.
 */

import { describe, expect, test } from 'vitest';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { demoDocument } from '../memory-store.js';
import { json, rigOf } from './fixture.js';

const cart = rigOf();
const demo = rigOf({ documents: [demoDocument()] });

async function read({ client }: typeof cart, url: string) {
  return json(await client.get(url).expect(200));
}

describe('kinds', () => {
  test('of the program and of the catalogue are one list', async () => {
    const { items, counts } = await read(cart, '/v1/kinds?limit=200');
    const ids = [...BUILT_IN_KINDS.map(({ id }) => id), 'cart-flange'].sort();
    expect((items as { id: string }[]).map(({ id }) => id)).toEqual(ids);
    expect(counts).toEqual({ total: ids.length });
    expect(items).toContainEqual({
      id: 'cart-flange',
      name: 'cart flange',
      builtIn: false,
      caution: 'driveline',
      parts: 6,
    });
    expect(items).toContainEqual(
      expect.objectContaining({ id: 'wheel-mount', builtIn: true, parts: 0 }),
    );
  });

  test('one that the catalogue declares, whole', async () => {
    const { edition, engine, lang, textLang, units, cautions, ...kind } = await read(
      cart,
      '/v1/kinds/cart-flange',
    );
    expect([edition, typeof engine, lang, textLang]).toEqual([1, 'string', 'en', []]);
    expect(units).toBe('recorded');
    expect(kind).toEqual({
      id: 'cart-flange',
      name: 'cart flange',
      builtIn: false,
      caution: 'driveline',
      parts: 6,
      standard: null,
      sides: [
        { side: 'spigot', name: 'spigot' },
        { side: 'recess', name: 'recess' },
      ],
      parameters: [
        {
          parameter: 'pattern',
          name: 'pattern',
          type: 'code',
          unit: '',
          tool: null,
          toolName: null,
          usual: null,
          side: null,
          optional: false,
          unless: [],
        },
        {
          parameter: 'register',
          name: 'register',
          type: 'measured',
          unit: 'mm',
          tool: 'caliper',
          toolName: 'vernier caliper',
          usual: null,
          side: null,
          optional: false,
          unless: [],
        },
      ],
      checks: [
        { check: 'equal-pattern', primitive: 'equal', severity: 'must', text: null },
        {
          check: 'register',
          primitive: 'clearance',
          severity: 'must',
          text: 'The register must go in.',
        },
        {
          check: 'one-of-pattern',
          primitive: 'one-of',
          severity: 'caution',
          text: 'An old pattern.',
        },
      ],
      notChecked: ['length of the bolts'],
    });
    expect(cautions).toMatchObject([
      { group: 'general', show: 'always' },
      { group: 'driveline', show: 'always' },
    ]);
  });

  test('one that is built in says its sides, its usual ranges and what it leaves out', async () => {
    const kind = await read(demo, '/v1/kinds/wheel-mount');
    expect(kind).toMatchObject({
      builtIn: true,
      standard: expect.stringContaining('ISO 7575'),
      sides: [
        { side: 'hub', name: 'the hub with its studs or bolts' },
        { side: 'wheel', name: 'the wheel, seen from the hub' },
      ],
    });
    expect(kind.parameters).toContainEqual({
      parameter: 'spigot',
      name: 'spigot diameter of the hub',
      type: 'measured',
      unit: 'mm',
      tool: 'micrometer',
      toolName: 'micrometer',
      usual: { text: expect.stringContaining('mm'), low: '54', high: '115', unit: 'mm' },
      side: 'hub',
      optional: false,
      unless: [],
    });
    expect(kind.notChecked).toContain('rim width and inset');
    expect(kind.parts).toBeGreaterThan(3);
    expect(await read(demo, '/v1/kinds/bell-housing')).toMatchObject({ sides: [] });
  });

  test('are told in the language that is asked for', async () => {
    const kind = await read(demo, '/v1/kinds/wheel-mount?lang=de');
    expect(kind).toMatchObject({ lang: 'de', name: 'Radbefestigung' });
    const spigot = { name: 'Durchmesser der Nabenzentrierung', toolName: 'Messschraube' };
    expect(kind.parameters).toContainEqual(expect.objectContaining(spigot));
    expect(kind.notChecked).toContain('Felgenbreite und Einpresstiefe');
  });
});

describe('roles', () => {
  test('say how many parts are of them', async () => {
    const { items } = await read(cart, '/v1/roles');
    expect(items).toEqual([
      { id: 'engine', name: 'Engine', caution: null, parts: 1 },
      { id: 'gearbox', name: 'Gearbox', caution: 'driveline', parts: 4 },
      { id: 'plate', name: 'Plate', caution: null, parts: 1 },
      { id: 'shaft', name: 'Shaft', caution: 'driveline', parts: 1 },
      { id: 'wheel-shaft', name: 'Wheel shaft', caution: 'driveline', parts: 2 },
    ]);
  });

  test('one, whole: faces, values, what is a rating, what is derived', async () => {
    expect(await read(cart, '/v1/roles/gearbox')).toMatchObject({
      id: 'gearbox',
      faces: ['rear'],
      values: [
        {
          parameter: 'torque',
          name: 'torque',
          type: 'measured',
          unit: 'N.m',
          list: false,
          rating: true,
          derived: false,
          askedAs: null,
        },
      ],
      cautions: [{ group: 'general' }, { group: 'driveline' }],
    });
    expect(await read(cart, '/v1/roles/engine')).toMatchObject({ faces: null, cautions: [] });
    const { values } = await read(demo, '/v1/roles/gearbox');
    expect(values).toContainEqual(expect.objectContaining({ parameter: 'gears', list: true }));
    const derived = (values as { derived: boolean }[]).filter((one) => one.derived);
    expect(derived.length).toBeGreaterThan(0);
  });
});

describe('caches', () => {
  const immutable = 'public, max-age=31536000, immutable';
  const day = 'public, max-age=86400';

  test.each([
    ['/v1/roles', immutable],
    ['/v1/roles/gearbox', immutable],
    ['/v1/kinds', day],
    ['/v1/kinds/wheel-mount', day],
  ])('of a pinned edition: %s', async (path, kept) => {
    const { headers } = await cart.client.get(`${path}?edition=1`).expect(200);
    expect(headers['cache-control']).toBe(kept);
  });
});

describe('an id that is not there', () => {
  test.each([
    ['/v1/kinds/cart-flang', 'unknown-kind', `There is no kind "cart-flang". Did you mean`],
    ['/v1/roles/gearbx', 'unknown-role', `There is no role "gearbx". Did you mean 'gearbox'?`],
    ['/v1/layouts/crt', 'unknown-layout', `There is no layout "crt". Did you mean 'cart'?`],
  ])('%s', async (path, code, text) => {
    const response = await cart.client.get(path).expect(404);
    expect(json(response)).toMatchObject({
      code,
      errors: [{ parameter: 'id', code, text: expect.stringContaining(text) }],
    });
  });
});
