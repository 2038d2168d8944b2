/**
 * The demo catalogue itself: it has no fault and no doubt, and it shows what the form can say.
 */

import { describe, expect, test } from 'vitest';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { CatalogueDocument, RuleRecord } from '../../src/domain/catalogue/document.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { lintDocument } from '../../src/usecases/publish-edition.js';
import { demoDocument } from '../memory-store.js';
import { connect, freshPath, open, publish } from '../store/database.js';
import { demo } from '../store/prepared.js';

const document = demoDocument() as unknown as CatalogueDocument;
const { catalogue } = compileDocument(document, BUILT_IN_KINDS);
const parts = [...(catalogue?.parts.values() ?? [])];
const faces = parts.flatMap((part) => [...part.faces.values()]);
const values = [
  ...parts.flatMap((part) => [...part.values.values()]),
  ...faces.flatMap(({ alternatives }) => alternatives.flatMap((one) => [...one.values()])),
];

/** The answer of a query to the catalogue once it is published. */
function queried(sql: string): unknown[] {
  const path = freshPath();
  const store = open(path);
  publish(store, demo);
  store.close();
  const connection = connect(path, { readonly: true });
  return connection.prepare(sql).pluck().all();
}

describe('the demo catalogue', () => {
  test('has no fault and no doubt', () => {
    const { faults, warnings } = lintDocument(demoDocument());
    expect({ faults, warnings }).toEqual({ faults: [], warnings: [] });
  });

  test('has makers, vehicles of four layouts and parts enough for a shop', () => {
    const makes = new Set([...(catalogue?.vehicles.values() ?? [])].map(({ make }) => make));
    expect(makes.size).toBeGreaterThanOrEqual(2);
    expect(catalogue?.layouts.size).toBe(4);
    const used = [...(catalogue?.vehicles.values() ?? [])].map(({ layout }) => layout.id);
    expect(new Set(used).size).toBe(4);
    expect(used.length).toBeGreaterThanOrEqual(8);
    expect(parts.length).toBeGreaterThanOrEqual(200);
  });

  test('uses every built-in kind, as a query shows, and one of its own', () => {
    const used = queried(
      'SELECT DISTINCT kind FROM interfaces WHERE until_edition IS NULL AND kind IS NOT NULL',
    );
    const known = [...BUILT_IN_KINDS.map(({ id }) => id), 'bolted-flange'];
    expect(new Set(used)).toEqual(new Set(known));
  });

  test('has evidence of every basis, readings with a tape and a tag, and gaps', () => {
    const used = new Set(values.map(({ evidence }) => evidence.basis));
    expect([...used].sort()).toEqual([
      'built',
      'drawing',
      'inferred',
      'maker',
      'measured',
      'reported',
    ]);
    const tools = new Set(values.map(({ tool }) => tool));
    expect([tools.has('tape'), tools.has('tag')]).toEqual([true, true]);
    const open = [...(catalogue?.vehicles.values() ?? [])].filter(
      ({ layout, fitted }) => fitted.size < layout.positions.size,
    );
    expect(open.length).toBeGreaterThan(0);
  });

  test('has parts made to length, faces with alternatives, absent faces and handed parts', () => {
    expect(values.some(({ form }) => form === 'range')).toBe(true);
    expect(values.some(({ form }) => form === 'points')).toBe(true);
    expect(faces.some(({ alternatives }) => alternatives.length > 1)).toBe(true);
    expect(faces.some(({ isAbsent }) => isAbsent)).toBe(true);
    expect(parts.some(({ hand }) => hand === 'left')).toBe(true);
    expect(parts.some(({ hand }) => hand === 'right')).toBe(true);
  });

  test('has a works option, vehicles that are like others, and handed pairs fitted', () => {
    const fitted = [...(catalogue?.vehicles.values() ?? [])].flatMap((one) => [
      ...one.fitted.values(),
    ]);
    expect(fitted.some((here) => !here.hands && here.occupant.is === 'option')).toBe(true);
    expect(fitted.some(({ hands }) => hands)).toBe(true);
    expect((document.vehicles ?? []).some(({ like }) => typeof like === 'string')).toBe(true);
  });

  test('has rules of every effect, and a statement that a measurement contradicts', () => {
    const effects = ['needs', 'excludes', 'recommends', 'consumes', 'note', 'caution'] as const;
    const has = (effect: (typeof effects)[number]) =>
      (document.rules ?? []).some((rule: RuleRecord) => rule[effect] !== undefined);
    expect(effects.filter((effect) => !has(effect))).toEqual([]);
    expect(document.statements?.length).toBeGreaterThanOrEqual(4);
  });

  test('has sets sold as one, donors, works that a workshop and an engineer sign, rulesets', () => {
    const lots = document.lots ?? [];
    const isDonor = (lot: (typeof lots)[number]) => lot.contains.some((one) => 'vehicle' in one);
    expect(lots.some((lot) => !isDonor(lot))).toBe(true);
    expect(lots.some(isDonor)).toBe(true);
    const signers = new Set((document.works ?? []).map(({ signOff }) => signOff));
    expect(signers.has('engineer')).toBe(true);
    expect(document.works?.length).toBeGreaterThanOrEqual(2);
    expect(document.rulesets?.length).toBeGreaterThanOrEqual(1);
  });

  test('has offers of several suppliers for parts, lots and works, and never of a body', () => {
    const offers = document.offers ?? [];
    expect(new Set(offers.map(({ supplier }) => supplier)).size).toBeGreaterThanOrEqual(3);
    const offered = new Set(offers.map((offer) => offer.for));
    const isOffered = ({ id }: { readonly id: string }) => offered.has(id);
    expect((document.lots ?? []).some(isOffered)).toBe(true);
    expect((document.works ?? []).some(isOffered)).toBe(true);
    const shells = ['body-shell', 'frame', 'cross-body', 'body-side'];
    const bodies = parts.filter(({ roles }) => roles.some((role) => shells.includes(role)));
    expect(bodies.length).toBeGreaterThanOrEqual(6);
    expect(bodies.filter(isOffered)).toEqual([]);
  });

  test('has no article number of one supplier for two things', () => {
    const named = (document.offers ?? []).map(({ supplier, sku }) => `${supplier} ${sku}`);
    expect(named.length).toBeGreaterThanOrEqual(200);
    expect(named.filter((one, at) => named.indexOf(one) !== at)).toEqual([]);
  });

  test('spells every code one way, or parts of two layouts would not meet for a capital', () => {
    const coded = values.flatMap((one) => (one.form === 'code' ? [one.code] : []));
    const spelt = new Set(coded);
    expect(spelt.size).toBeGreaterThanOrEqual(50);
    const folded = [...spelt].map((one) => one.toLowerCase());
    expect(folded.filter((one, at) => folded.indexOf(one) !== at)).toEqual([]);
  });

  test('has a place in a layout for every part but adapters and what is used up', () => {
    const places = [...(catalogue?.layouts.values() ?? [])].flatMap((layout) => [
      ...layout.positions.values(),
    ]);
    const taken = new Set(places.flatMap(({ roles }) => roles));
    const consumed = new Set(
      (document.rules ?? []).flatMap(({ consumes, recommends }) => [
        consumes?.part,
        recommends?.part,
      ]),
    );
    const homeless = parts.filter(
      ({ id, roles, faces: own }) =>
        !roles.some((role) => taken.has(role)) && own.size !== 2 && !consumed.has(id),
    );
    expect(homeless.map(({ id }) => id)).toEqual([]);
  });
});
