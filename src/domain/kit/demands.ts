/**
 * What a kit question demands, one by one: what may be in the way of an answer, and could be taken
 * back. What is owned, which lots there are, what an hour costs and what is preferred demand
 * nothing.
 */

import type { Demands, Ruleset } from '../catalogue/trade.js';
import type { KitQuestion, Limits } from './question.js';

/** In the order in which demands are told. */
export const DEMAND_SORTS = [
  'present',
  'want',
  'keep',
  'avoid-part',
  'avoid-supplier',
  'avoid-condition',
  'limit',
  'torque',
  'ruleset-keep',
  'ruleset-check',
  'ruleset-rest',
  'unknowns',
] as const;
export type DemandSort = (typeof DEMAND_SORTS)[number];

/**
 *   present           that what is said to be on the vehicle and does not go together is mended
 *   want              by its number in the question
 *   keep              by position
 *   avoid-part        by part; `avoid-supplier` by supplier, `avoid-condition` by its number
 *   limit             by the name of the limit
 *   torque            that the stated torque is carried, also by what is not changed
 *   ruleset-keep      by position; `ruleset-check` by the id of the check
 *   ruleset-rest      what the ruleset asks for and this layout has no words for
 *   unknowns          that nothing is open
 */
export interface Demand {
  readonly is: DemandSort;
  /** Empty where there is but one of the sort. */
  readonly name: string;
}

export function keyOfDemand({ is, name }: Demand): string {
  return `${is} ${name}`;
}

export type LimitName = keyof Limits;

export const LIMIT_NAMES: readonly LimitName[] = [
  'cost',
  'changedPositions',
  'labourHours',
  'leadDays',
  'inStock',
];

/** In the order of their sorts, and then in that of the question. */
export function demandsOf(question: KitQuestion): Demand[] {
  const { wants, keep, avoid, limits, torque, ruleset, vehicle, refusesUnknowns } = question;
  const demanded = ruleset?.demands.get(vehicle.layout.id);
  const names: Readonly<Record<DemandSort, readonly string[]>> = {
    present: isOverridden(question) ? [''] : [],
    want: wants.map((_, index) => `${index}`),
    keep,
    'avoid-part': [...avoid.parts],
    'avoid-supplier': [...avoid.suppliers],
    'avoid-condition': avoid.conditions.map((_, index) => `${index}`),
    limit: LIMIT_NAMES.filter((name) => limits[name] !== null && limits[name] !== false),
    torque: torque === null ? [] : [''],
    'ruleset-keep': demanded?.keep ?? [],
    'ruleset-check': demanded?.checks.map(({ id }) => id) ?? [],
    'ruleset-rest': ruleset === null || demanded?.isWhole === true ? [] : [''],
    unknowns: refusesUnknowns ? [''] : [],
  };
  return DEMAND_SORTS.flatMap((is) => names[is].map((name) => ({ is, name })));
}

function isOverridden({ said, ignorePresent }: KitQuestion): boolean {
  return !ignorePresent && (said.seats.size > 0 || said.adapters.size > 0);
}

/** The question with these demands taken back. */
export function without(question: KitQuestion, dropped: readonly Demand[]): KitQuestion {
  const keys = new Set(dropped.map(keyOfDemand));
  const stays = (is: DemandSort, name: string | number = ''): boolean =>
    !keys.has(keyOfDemand({ is, name: `${name}` }));
  const { wants, keep, avoid, limits, torque, ruleset, vehicle } = question;
  return {
    ...question,
    wants: wants.filter((_, index) => stays('want', index)),
    keep: keep.filter((position) => stays('keep', position)),
    avoid: {
      parts: new Set([...avoid.parts].filter((id) => stays('avoid-part', id))),
      suppliers: new Set([...avoid.suppliers].filter((id) => stays('avoid-supplier', id))),
      conditions: avoid.conditions.filter((_, index) => stays('avoid-condition', index)),
    },
    limits: {
      cost: stays('limit', 'cost') ? limits.cost : null,
      changedPositions: stays('limit', 'changedPositions') ? limits.changedPositions : null,
      labourHours: stays('limit', 'labourHours') ? limits.labourHours : null,
      leadDays: stays('limit', 'leadDays') ? limits.leadDays : null,
      inStock: limits.inStock && stays('limit', 'inStock'),
    },
    torque: stays('torque') ? torque : null,
    ruleset: ruleset === null ? null : relaxed(ruleset, vehicle.layout.id, stays),
    ignorePresent: question.ignorePresent || !stays('present'),
    refusesUnknowns: question.refusesUnknowns && stays('unknowns'),
  };
}

function relaxed(
  ruleset: Ruleset,
  layout: string,
  stays: (is: DemandSort, name?: string) => boolean,
): Ruleset {
  const demanded: Demands = ruleset.demands.get(layout) ?? { keep: [], checks: [], isWhole: false };
  const demands: Demands = {
    keep: demanded.keep.filter((position) => stays('ruleset-keep', position)),
    checks: demanded.checks.filter(({ id }) => stays('ruleset-check', id)),
    isWhole: demanded.isWhole || !stays('ruleset-rest'),
  };
  return { ...ruleset, demands: new Map([[layout, demands]]) };
}
