/**
 * The words of a layout for a condition that a question writes: the same that its rules have.
 */

import type { Catalogue, Layout } from './catalogue.js';
import type { FaultList } from './faults.js';
import { LayoutScope } from './layout-scope.js';

/** The faults of what is named go to the list. */
export function scopeOf(layout: Layout, catalogue: Catalogue, list: FaultList): LayoutScope {
  const { id, positions, matings, terms } = layout;
  const { roles, kinds, parts, facts } = catalogue;
  // The terms are compiled already, so what was written for them is asked for no more.
  const rawTerms = Object.fromEntries([...terms.keys()].map((name) => [name, '']));
  const partIds = new Set(parts.keys());
  const names = { id, positions, matings, rawTerms, roles, kinds, parts, partIds, facts };
  const scope = new LayoutScope(names, '', list);
  for (const [name, term] of terms) scope.terms.set(name, term);
  return scope;
}
