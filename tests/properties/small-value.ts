/**
 * Random values with their evidence: picks by weight, bases, and records that may be missing.
 */

import fc from 'fast-check';
import type { EvidenceRecord, ValueRecord } from '../../src/domain/catalogue/document.js';

export type Basis = NonNullable<EvidenceRecord['basis']>;

/** One of several by weight; the first of them where a document shrinks. */
export function weighted<Value>(
  ...options: readonly (readonly [number, Value])[]
): fc.Arbitrary<Value> {
  return fc.oneof(...options.map(([weight, value]) => ({ weight, arbitrary: fc.constant(value) })));
}

export function bases(): fc.Arbitrary<Basis | null> {
  return weighted<Basis | null>(
    [20, null],
    [2, 'measured'],
    [1, 'built'],
    [1, 'drawing'],
    [2, 'inferred'],
    [2, 'reported'],
  );
}

export function evidenceOf(basis: Basis | null): { evidence?: EvidenceRecord } {
  return basis === null ? {} : { evidence: { basis } };
}

/** A value as it stands, or null where it is not recorded; now and then with its own evidence. */
export function recorded(
  values: fc.Arbitrary<ValueRecord | null>,
): fc.Arbitrary<ValueRecord | null> {
  return fc.tuple(values, bases()).map(([value, basis]) => {
    if (value === null || basis === null) return value;
    const isWhole = typeof value === 'object' && ('is' in value || 'choose' in value);
    return isWhole ? { ...value, evidence: { basis } } : { is: value, evidence: { basis } };
  });
}
