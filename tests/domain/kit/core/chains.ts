/**
 * Problems that are made like a driveline: places in a row, each with parts of three families, and
 * parts meet where they are of one family. The first place must come to family 1.
 */

import type {
  Problem,
  Relation,
  State,
  Variable,
} from '../../../../src/domain/kit/core/problem.js';

export const FAMILIES = 3;

export interface Chain {
  readonly places: number;
  /** Besides the one that is there. */
  readonly parts: number;
  /** Joints, by their first place, where any two parts meet. */
  readonly loose: readonly number[];
  /** Joints where an adapter from family 1 to family 0 may be put in, for this cost. */
  readonly adapters: ReadonlyMap<number, number>;
  /** Relations besides. */
  readonly more: readonly Relation[];
}

export function familyOf(value: number): number {
  return value % FAMILIES;
}

export function chain({ places, parts, loose, adapters, more }: Chain): Problem {
  const size = 1 + parts;
  const families = Array.from({ length: size }, (_, value) => familyOf(value));
  const variables: Variable[] = Array.from({ length: places }, (_, index) => ({
    name: `place ${index}`,
    size,
    isPlace: true,
  }));
  const relations: Relation[] = [
    {
      name: 'wish',
      scope: [0],
      classes: [families],
      ask: ([value = 0]) => ({ state: holdsWhere(familyOf(value) === 1), blame: [0] }),
    },
  ];
  for (let place = 0; place + 1 < places; place += 1) {
    if (loose.includes(place)) continue;
    const scope = [place, place + 1];
    const classes = [families, families];
    if (adapters.has(place)) {
      scope.push(variables.length);
      classes.push([0, 1]);
      variables.push({ name: `joint ${place}`, size: 2, isPlace: false });
    }
    relations.push({
      name: `joint ${place}`,
      scope,
      classes,
      ask: ([one = 0, other = 0, adapter = 0]) => {
        const meets = familyOf(one) === familyOf(other);
        const isAdapted = familyOf(one) === 1 && familyOf(other) === 0;
        return { state: holdsWhere(adapter === 0 ? meets : isAdapted), blame: scope };
      },
    });
  }
  const costs = [...adapters].sort(([one], [other]) => one - other).map(([, cost]) => [0, cost]);
  const atLeast = variables.map(({ isPlace }, index) =>
    isPlace
      ? Array.from({ length: size }, (_, value) => (value === 0 ? 0 : 100 + 7 * value + index))
      : (costs[index - places] ?? []),
  );
  const sum = (values: readonly number[]): number =>
    values.reduce((total, value, index) => total + (atLeast[index]?.[value] ?? 0), 0);
  return {
    variables,
    relations: [...relations, ...more],
    prices: { atLeast, floor: sum, exact: sum },
  };
}

export function holdsWhere(holds: boolean): State {
  return holds ? 2 : 0;
}
