/**
 * What a query selects of an answer, as far as it decides what is asked.
 */

import { type GraphQLResolveInfo, Kind, type SelectionSetNode } from 'graphql';
import type { Question } from './questions.js';

/**
 * A search for changes is the dearest part of a fit, and is left out where no field is selected in
 * which it has a say.
 */
export function withChanges(
  { aloneFields }: Question,
  asked: Readonly<Record<string, unknown>>,
  info: GraphQLResolveInfo,
): Readonly<Record<string, unknown>> {
  if (aloneFields === undefined || asked.changes !== undefined) return asked;
  const selected = info.fieldNodes.flatMap(({ selectionSet }) => selectedIn(selectionSet, info));
  const isAlone = selected.every((path) => {
    const [field = '', ...inner] = path.split('.');
    return aloneFields.has(field) || (field === 'positions' && !inner.includes('verdict'));
  });
  return { ...asked, changes: isAlone ? 'no' : 'yes' };
}

/** What is selected, as far as two levels down: `positions.verdict`. */
function selectedIn(
  set: SelectionSetNode | undefined,
  info: Pick<GraphQLResolveInfo, 'fragments'>,
): string[] {
  return (set?.selections ?? []).flatMap((one): string[] => {
    if (one.kind === Kind.INLINE_FRAGMENT) return selectedIn(one.selectionSet, info);
    if (one.kind === Kind.FRAGMENT_SPREAD) {
      return selectedIn(info.fragments[one.name.value]?.selectionSet, info);
    }
    const { value: name } = one.name;
    const inner = name === 'positions' ? selectedIn(one.selectionSet, info) : [];
    return inner.length === 0 ? [name] : inner.map((field) => `${name}.${field}`);
  });
}
