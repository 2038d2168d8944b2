/**
 * The compiled index against what judging every pair of faces comes to.
 */

import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../../src/domain/catalogue/compile.js';
import { CompiledIndex } from '../../../src/domain/index/compiled-index.js';
import { judgeMeeting } from '../../../src/domain/judge/mate.js';
import { BUILT_IN_KINDS } from '../../../src/domain/kinds/registry.js';
import { demoDocument } from '../../memory-store.js';

function demo(): Catalogue {
  const { catalogue, faults } = compileDocument(demoDocument(), BUILT_IN_KINDS);
  if (catalogue === null) throw new Error(JSON.stringify(faults));
  return catalogue;
}

describe('the compiled index', () => {
  const catalogue = demo();

  it('has every recorded face in one class, and fewer classes than faces', () => {
    const index = new CompiledIndex(catalogue);
    const faces = [...catalogue.parts.values()].flatMap((part) =>
      [...part.faces.values()]
        .filter(({ kind }) => kind !== null)
        .map(({ name }) => [part.id, name] as const),
    );
    expect(index.faces).toBe(faces.length);
    expect(index.classes.length).toBeLessThan(faces.length);
    for (const [part, face] of faces) {
      const id = index.classOf(part, face);
      expect(id).not.toBeNull();
      const posted = index.facesOf(id ?? -1).map((entry) => `${entry.part.id}.${entry.face.name}`);
      expect(posted).toContain(`${part}.${face}`);
    }
  });

  it('says of every pair of classes what judging two of their faces comes to', () => {
    const index = new CompiledIndex(catalogue);
    index.complete();
    const seen = { holds: 0, open: 0, fails: 0 };
    for (const x of index.classes) {
      for (const y of index.classes) {
        if (x.kind !== y.kind) {
          expect(index.meets(x.id, y.id)).toBe('fails');
          continue;
        }
        const end = (part: typeof x.part, face: string) => ({ part, interface: face });
        const other = { ...y.part, id: `${y.part.id}-other` };
        const question = { a: end(x.part, x.face.name), b: end(other, y.face.name) };
        const judged = judgeMeeting(catalogue, question).mating.computed;
        expect(index.meets(x.id, y.id)).toBe(judged);
        seen[judged] += 1;
      }
    }
    expect(Math.min(seen.holds, seen.open, seen.fails)).toBeGreaterThan(0);
  });

  it('does not judge again what its columns say', () => {
    const first = new CompiledIndex(catalogue);
    first.complete();
    expect(first.judged).toBeGreaterThan(0);
    const again = new CompiledIndex(catalogue, first.columns());
    again.complete();
    expect(again.judged).toBe(0);
    expect(again.columns()).toEqual(first.columns());
  });

  it('refuses columns of another catalogue or with impossible cells', () => {
    const columns = new CompiledIndex(catalogue).columns();
    const { faceClass, meets } = columns;
    const short = { faceClass: faceClass.slice(1), meets };
    expect(() => new CompiledIndex(catalogue, short)).toThrow(RangeError);
    const odd = { faceClass, meets: meets.map(() => 9) };
    expect(() => new CompiledIndex(catalogue, odd)).toThrow(RangeError);
  });

  it('finds the partners of a class', () => {
    const index = new CompiledIndex(catalogue);
    const flange = index.classOf('prop-early', 'front');
    expect(flange).not.toBeNull();
    const partners = index
      .partnersOf(flange ?? -1, ['holds'])
      .flatMap((id) => index.facesOf(id))
      .map(({ part }) => part.id);
    expect(partners).toContain('gearbox-5-early');
    expect(partners).not.toContain('gearbox-6-late');
  });
});
