/**
 * What a document of GraphQL may ask for, held before anything is asked: how deep it goes, and how
 * many fields, directives and aliases it has. Tokens are counted while it is parsed, and costs
 * while it is answered.
 */

import {
  type ASTVisitor,
  type FragmentDefinitionNode,
  GraphQLError,
  Kind,
  type OperationDefinitionNode,
  type SelectionSetNode,
  type ValidationContext,
  type ValidationRule,
} from 'graphql';
import { LIMITS, type LimitName } from '../../contract/limits.js';

const DEPTH = LIMITS.graphqlLevels.value;
const FIELDS = LIMITS.graphqlFields.value;

interface Extent {
  readonly depth: number;
  /** With those of fragments, as often as they are spread. */
  readonly fields: number;
}

const NOTHING: Extent = { depth: 0, fields: 0 };

/** Refuses what is too deep or too wide, with all fragments spread. */
export const limitExtent: ValidationRule = (context: ValidationContext): ASTVisitor => {
  const known = new Map<FragmentDefinitionNode, Extent>();
  const under = new Set<FragmentDefinitionNode>();
  const extentOf = (set: SelectionSetNode | undefined): Extent => {
    let [depth, fields] = [0, 0];
    for (const one of set?.selections ?? []) {
      const inner =
        one.kind === Kind.FRAGMENT_SPREAD ? spread(one.name.value) : extentOf(one.selectionSet);
      const own = one.kind === Kind.FIELD ? 1 : 0;
      depth = Math.max(depth, inner.depth + own);
      fields += inner.fields + own + (one.directives?.length ?? 0);
      if (fields > FIELDS) break;
    }
    return { depth, fields };
  };
  const spread = (name: string): Extent => {
    const fragment = context.getFragment(name);
    // One that leads back to itself another rule refuses.
    if (fragment === null || fragment === undefined || under.has(fragment)) return NOTHING;
    let extent = known.get(fragment);
    if (extent === undefined) {
      under.add(fragment);
      extent = extentOf(fragment.selectionSet);
      under.delete(fragment);
      known.set(fragment, extent);
    }
    return extent;
  };
  return {
    OperationDefinition(node: OperationDefinitionNode) {
      const { depth, fields } = extentOf(node.selectionSet);
      if (depth > DEPTH) context.reportError(tooMuch('graphqlLevels', 'levels deep'));
      if (fields > FIELDS) context.reportError(tooMuch('graphqlFields', 'fields'));
    },
  };
};

/** The fault of a document that passes a limit. */
export function tooMuch(name: LimitName, what: string): GraphQLError {
  const { value } = LIMITS[name];
  return new GraphQLError(`The document has more than ${value} ${what}.`, {
    extensions: { code: 'invalid-request', status: 400, limit: { name, value } },
  });
}
