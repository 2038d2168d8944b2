/**
 * Random kit questions that ask for too much: those of the resolver with more demands on top, so
 * that many have no route.
 */

import fc from 'fast-check';
import { type KitCase, kitCases } from './kit-case.js';
import { weighted } from './small-value.js';

const more = fc.record({
  keep: fc.array(fc.nat({ max: 4 }), { maxLength: 3 }),
  avoid: fc.array(fc.nat({ max: 12 }), { maxLength: 3 }),
  changesLimit: weighted<number | null>([3, null], [1, 0], [1, 1]),
  costLimit: weighted<number | null>([4, null], [1, 300_000], [1, 1_000_000]),
  refusesUnknowns: weighted([3, false], [1, true]),
});

export function conflictCases(): fc.Arbitrary<KitCase> {
  return fc.noBias(
    fc.tuple(kitCases(), more).map(([{ document, ask }, picked]): KitCase => {
      const positions = document.layouts?.[0]?.positions ?? [];
      const parts = document.parts ?? [];
      const kept = picked.keep.flatMap((index) => positions[index]?.id ?? []);
      const avoided = picked.avoid.flatMap((index) => parts[index]?.id ?? []);
      return {
        document,
        ask: {
          ...ask,
          keep: [...new Set([...ask.keep, ...kept])],
          avoid: [...new Set([...ask.avoid, ...avoided])],
          changesLimit: picked.changesLimit ?? ask.changesLimit,
          costLimit: picked.costLimit ?? ask.costLimit,
          refusesUnknowns: picked.refusesUnknowns || ask.refusesUnknowns,
        },
      };
    }),
  );
}
