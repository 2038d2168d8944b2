/**
 * Whether somebody asks what sits in a mating, be it a condition or a computed value. Only then is
 * it worth while to put in what neither face at the ends calls for.
 */

import { type Check, type Condition, termsOf, testsIn } from '../check/check.js';
import { leavesOf } from '../check/evaluator.js';
import type { KitQuestion } from './question.js';

/** The matings of which the question itself asks what sits in them. */
export function askedMatings({ wants, avoid, ruleset, vehicle }: KitQuestion): ReadonlySet<string> {
  const wanted = wants.flatMap((want) => (want.is === 'condition' ? [want.condition] : []));
  const conditions = [...wanted, ...avoid.conditions.map(({ condition }) => condition)];
  const checks = ruleset?.demands.get(vehicle.layout.id)?.checks ?? [];
  return new Set([...conditions.flatMap(matingsIn), ...checks.flatMap(matingsRead)]);
}

/** Those of which the layout of its vehicle asks it, and the rules for that. */
export function ruledMatings({ vehicle, catalogue }: KitQuestion): ReadonlySet<string> {
  const { layout } = vehicle;
  const rules = catalogue.rules.get(layout.id) ?? [];
  const conditions = rules.flatMap(({ when, needs, excludes }) =>
    [when, needs, excludes].filter((one) => one !== null),
  );
  return new Set([...conditions.flatMap(matingsIn), ...layout.checks.flatMap(matingsRead)]);
}

function matingsIn(condition: Condition): string[] {
  return testsIn(condition).flatMap((one) => {
    if (one.test === 'adapter') return one.mating;
    return one.test === 'check' ? matingsRead(one.check) : [];
  });
}

function matingsRead(check: Check): string[] {
  const references = termsOf(check).flatMap(leavesOf);
  return [
    ...references.flatMap(({ reference }) =>
      reference.of === 'adapter' ? [reference.mating] : [],
    ),
    ...(check.when === null ? [] : matingsIn(check.when)),
  ];
}
