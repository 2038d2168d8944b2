/**
 * A forest among the variables: as many of the relations between two of them as close no ring. On
 * a forest the least cost can be computed exactly, and what is least there is a bound for all.
 *
 * A relation of two places and one variable that is no place counts as one between the two places,
 * and the third as something in the middle of it, which may cost. A variable in the middle stands
 * in one edge only, so that its cost counts once. All other relations are left out of the forest.
 */

import type { Tables } from './tables.js';

export interface Joint {
  readonly middle: number;
  readonly relations: readonly number[];
}

export interface Edge {
  readonly ends: readonly [number, number];
  /** The relations between the two ends alone. */
  readonly relations: readonly number[];
  readonly joints: readonly Joint[];
}

export interface Forest {
  readonly edges: readonly Edge[];
  /**
   * By variable: the ways that lead to it. Way 2e leads along edge e from its first end to its
   * second, way 2e + 1 back.
   */
  readonly waysTo: readonly (readonly number[])[];
  /** By variable: whether it stands in the middle of an edge. */
  readonly isMiddle: readonly boolean[];
  /** By variable: the relations that read it alone. */
  readonly alone: readonly (readonly number[])[];
  /** The relations that are neither of one variable nor in an edge. */
  readonly outside: readonly number[];
}

interface Bundle {
  readonly ends: readonly [number, number];
  readonly relations: number[];
  readonly joints: Map<number, number[]>;
}

export function forestOf(tables: Tables): Forest {
  const group = tables.variables.map((_, variable) => variable);
  const groupOf = (variable: number): number => {
    const above = group[variable] ?? variable;
    return above === variable ? variable : groupOf(above);
  };
  const edges: Edge[] = [];
  const inEdge = new Set<number>();
  for (const { ends, relations, joints } of bundlesOf(tables)) {
    const [one, other] = [groupOf(ends[0]), groupOf(ends[1])];
    if (one === other) continue;
    group[one] = other;
    for (const relation of [...relations, ...[...joints.values()].flat()]) inEdge.add(relation);
    const middles = [...joints].map(([middle, read]) => ({ middle, relations: read }));
    edges.push({ ends, relations, joints: middles });
  }
  const waysTo: number[][] = tables.variables.map(() => []);
  edges.forEach(({ ends }, edge) => {
    waysTo[ends[1]]?.push(2 * edge);
    waysTo[ends[0]]?.push(2 * edge + 1);
  });
  const alone: number[][] = tables.variables.map(() => []);
  const outside: number[] = [];
  tables.tables.forEach(({ scope: [first, second] }, relation) => {
    if (first !== undefined && second === undefined) alone[first]?.push(relation);
    else if (!inEdge.has(relation)) outside.push(relation);
  });
  const middles = new Set(edges.flatMap(({ joints }) => joints.map(({ middle }) => middle)));
  const isMiddle = tables.variables.map((_, variable) => middles.has(variable));
  return { edges, waysTo, isMiddle, alone, outside };
}

/** What joins the same two variables, together; in the order of the relations. */
function bundlesOf(tables: Tables): Iterable<Bundle> {
  const middles = middlesOf(tables);
  const isMiddle = new Set(middles.values());
  const bundles = new Map<string, Bundle>();
  /** By variable in the middle: the two that it joins, as the first relation has it. */
  const joined = new Map<number, string>();
  tables.tables.forEach(({ scope }, relation) => {
    const middle = middles.get(relation);
    const ends = scope.filter((variable) => variable !== middle);
    const [one, other] = ends;
    if (one === undefined || other === undefined || ends.length !== 2) return;
    if (middle === undefined && ends.some((end) => isMiddle.has(end))) return;
    const key = ends.join();
    if (middle !== undefined && (joined.get(middle) ?? key) !== key) return;
    const bundle: Bundle = bundles.get(key) ?? {
      ends: [one, other],
      relations: [],
      joints: new Map<number, number[]>(),
    };
    bundles.set(key, bundle);
    if (middle === undefined) {
      bundle.relations.push(relation);
      return;
    }
    joined.set(middle, key);
    bundle.joints.set(middle, [...(bundle.joints.get(middle) ?? []), relation]);
  });
  return bundles.values();
}

/** By relation: the one of its three variables that is no place. */
function middlesOf(tables: Tables): Map<number, number> {
  const middles = new Map<number, number>();
  tables.tables.forEach(({ scope }, relation) => {
    const others = scope.filter((variable) => tables.variables[variable]?.isPlace === false);
    const [middle] = others;
    if (scope.length === 3 && others.length === 1 && middle !== undefined) {
      middles.set(relation, middle);
    }
  });
  return middles;
}
