/**
 * What names mean in a kind (the parameters of its two sides) and in a role (the part's own
 * values); and a scope for rules of which no layout can say what their names mean.
 */

import type { ConditionScope } from '../check/compile.js';
import type { Reference, ResolvedName, Scope } from '../check/term.js';
import type { Parameter, ValueSpec } from './catalogue.js';
import { hint, MOST_GUESSED, quoted } from './faults.js';
import { shapeOfSpec } from './value.js';

export { type LayoutNames, LayoutScope } from './layout-scope.js';
export { shapeOfSpec } from './value.js';

const NONE: ReadonlySet<string> = new Set();

/** The names of the two ends of a kind that has no sides. */
export const ENDS = ['a', 'b'] as const;

/** Whether a name is one of those whose definition has a fault, which is said there. */
export type IsLost = (name: string) => boolean;

const NOTHING_LOST: IsLost = () => false;

/** " Did you mean 'x'?"; nothing where there are more names than anybody gave to one thing. */
function nearby(word: string, names: ReadonlyMap<string, unknown>): string {
  return names.size > MOST_GUESSED ? '' : hint(word, names.keys());
}

/** Names in a kind: `side.parameter`, and a bare parameter for both sides. */
export function kindScope(
  sides: readonly [string, string] | null,
  parameters: ReadonlyMap<string, Parameter>,
  lost: { readonly side: IsLost; readonly parameter: IsLost } = {
    side: NOTHING_LOST,
    parameter: NOTHING_LOST,
  },
): ConditionScope {
  const names: readonly [string, string] = sides ?? ENDS;
  return {
    positions: NONE,
    matings: NONE,
    parts: NONE,
    knowsCode: () => true,
    bothSides: (name) =>
      name.includes('.') ? null : [`${names[0]}.${name}`, `${names[1]}.${name}`],
    resolve: (name) => {
      const [side, word, ...more] = name.split('.');
      if (side === undefined || word === undefined || more.length > 0) {
        return `In a kind, names are "side.parameter", such as "${names[0]}.size".`;
      }
      if (!names.includes(side)) {
        const text = `There is no side ${quoted(side)}.${hint(side, names)}`;
        return lost.side(side) ? null : text;
      }
      const parameter = parameters.get(word);
      if (parameter === undefined) {
        const text = `There is no parameter ${quoted(word)}.${nearby(word, parameters)}`;
        return lost.parameter(word) ? null : text;
      }
      if (parameter.of !== null && parameter.of !== side) {
        if (lost.side(side)) return null;
        return `"${word}" belongs to the side "${parameter.of}", not to "${side}".`;
      }
      const reference: Reference = { of: 'side', side, parameter: word };
      return { reference, shape: shapeOfSpec(parameter) };
    },
  };
}

/** Names in a role's derived value: the part's other values. */
export function roleScope(
  specs: ReadonlyMap<string, ValueSpec>,
  isLost: IsLost = NOTHING_LOST,
): Scope {
  return {
    resolve: (name: string): ResolvedName | string | null => {
      const spec = specs.get(name);
      if (spec === undefined) {
        if (isLost(name)) return null;
        return `The role records no value ${quoted(name)}.${nearby(name, specs)}`;
      }
      const reference: Reference = { of: 'side', side: 'own', parameter: name };
      return { reference, shape: shapeOfSpec(spec) };
    },
  };
}

/** Takes every name for one that is lost, so that only the form of a condition is looked at. */
export const ANY_NAME: ConditionScope = {
  positions: NONE,
  matings: NONE,
  parts: NONE,
  isLost: () => true,
  knowsCode: () => true,
  bothSides: () => null,
  resolve: () => null,
};
