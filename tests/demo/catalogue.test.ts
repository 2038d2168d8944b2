/**
 * The demo catalogue itself: it has no fault and no doubt, and it shows what the form can say.
 */

import { describe, expect, test } from 'vitest';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { lintDocument } from '../../src/usecases/publish-edition.js';
import { demoDocument } from '../memory-store.js';

const { catalogue } = compileDocument(demoDocument(), BUILT_IN_KINDS);
const parts = [...(catalogue?.parts.values() ?? [])];
const faces = parts.flatMap((part) => [...part.faces.values()]);
const values = [
  ...parts.flatMap((part) => [...part.values.values()]),
  ...faces.flatMap(({ alternatives }) => alternatives.flatMap((one) => [...one.values()])),
];

describe('the demo catalogue', () => {
  test('has no fault and no doubt', () => {
    const { faults, warnings } = lintDocument(demoDocument());
    expect({ faults, warnings }).toEqual({ faults: [], warnings: [] });
  });

  test('uses every built-in kind, and kinds of its own', () => {
    const used = new Set(faces.flatMap(({ kind }) => (kind === null ? [] : [kind.id])));
    expect(BUILT_IN_KINDS.filter(({ id }) => !used.has(id))).toEqual([]);
    const own = [...used].filter((id) => !BUILT_IN_KINDS.some((kind) => kind.id === id));
    expect(own.sort()).toEqual(['bolted-flange', 'control-plug', 'shift-coupling']);
  });

  test('has evidence of every basis', () => {
    const used = new Set(values.map(({ evidence }) => evidence.basis));
    expect([...used].sort()).toEqual([
      'built',
      'drawing',
      'inferred',
      'maker',
      'measured',
      'reported',
    ]);
  });

  test('has parts made to length, faces with alternatives and handed parts', () => {
    expect(values.some(({ form }) => form === 'range')).toBe(true);
    expect(faces.some(({ alternatives }) => alternatives.length > 1)).toBe(true);
    expect(parts.some(({ hand }) => hand === 'left')).toBe(true);
    expect(parts.some(({ hand }) => hand === 'right')).toBe(true);
  });

  test('never offers a body', () => {
    const offered = new Set((catalogue?.offers ?? []).map((offer) => offer.for));
    const bodies = parts.filter(({ roles }) => roles.includes('body-shell'));
    expect(bodies.length).toBe(3);
    expect(bodies.filter(({ id }) => offered.has(id))).toEqual([]);
  });

  test('has a place in the layout for every part but the adapter', () => {
    const layout = catalogue?.layouts.get('long-awd');
    const taken = [...(layout?.positions.values() ?? [])].flatMap((place) => place.roles);
    const homeless = parts.filter(({ roles }) => !roles.some((role) => taken.includes(role)));
    expect(homeless.map(({ id }) => id)).toEqual(['adapter-70-65']);
  });
});
