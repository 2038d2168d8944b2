/**
 * A kit question as a problem in which each demand is a relation that can be left out. Demands that
 * bear on prices, or on what is taken as given, make a problem of their own.
 */

import { donorArticles } from '../catalogue/donor-article.js';
import { LIMITED } from './basket.js';
import { freeOfCharge } from './core/feasible.js';
import { type Prices, STATE, type State } from './core/problem.js';
import { Tables } from './core/tables.js';
import { type Demand, type DemandSort, keyOfDemand, without } from './demands.js';
import { groundOf } from './ground.js';
import { isAvoided, KitProblem, renewsOnly } from './kit-problem.js';
import { PriceList } from './price.js';
import type { KitQuestion } from './question.js';
import type { Judged, KitRelation } from './relation.js';
import type { Scene } from './scene.js';

/** They bear on prices, or on what is taken as given. */
const ALWAYS: ReadonlySet<DemandSort> = new Set([
  'ruleset-check',
  'present',
  'avoid-supplier',
  'limit',
  'torque',
  'unknowns',
]);

/**
 * Whether without a demand the problem is another one. A check of a ruleset and a wished margin are
 * judged with what shares a choice with them; a wanted lot is bought, and nothing may use up a part
 * that is to be avoided.
 */
export function bearsOnAll({ is, name }: Demand, question: KitQuestion): boolean {
  if (ALWAYS.has(is)) return true;
  if (is === 'want') return ['load', 'lot'].includes(question.wants[Number(name)]?.is ?? '');
  const rules = question.catalogue.rules.get(question.vehicle.layout.id) ?? [];
  return is === 'avoid-part' && rules.some(({ consumes }) => consumes?.part === name);
}

/** A problem with the relations of all demands that are relations. */
export interface DemandBase {
  readonly problem: KitProblem;
  readonly tables: Tables;
  readonly leastState: State;
  readonly prices: Prices;
  readonly isPriced: boolean;
  readonly ofVehicle: readonly number[];
  /** By key of a demand. */
  readonly ofDemand: ReadonlyMap<string, readonly number[]>;
}

/**
 * The question without some of the demands that bear on all of it.
 *
 * @param demands all of them.
 * @param left those that it is without.
 */
export function baseOf(
  whole: KitQuestion,
  demands: readonly Demand[],
  left: readonly Demand[],
): DemandBase {
  const question = without(whole, left);
  const isLeft = new Set(left.map(keyOfDemand));
  const wants = demands.filter((one) => one.is === 'want' && !isLeft.has(keyOfDemand(one)));
  const filters = demands.filter((one) => one.is in FILTERS && !bearsOnAll(one, whole));
  const open = without(question, filters);
  const { limits, refusesUnknowns } = question;
  const ground = groundOf(open);
  const limited = LIMITED.filter((name) => limits[name] !== null);
  const mustKnow = new Set(refusesUnknowns ? limited : []);
  const priceList = new PriceList({ ...open, catalogue: ground.scene.catalogue }, mustKnow);
  const filtering = filters.flatMap((one) => filterRelations(ground.scene, one));
  const problem = new KitProblem(
    ground,
    priceList,
    null,
    filtering.map(({ relation }) => relation),
  );
  const tables = new Tables(problem);
  const isPriced =
    limited.length > 0 ||
    limits.changedPositions !== null ||
    limits.inStock ||
    open.avoid.parts.size > 0 ||
    question.from === 'offered' ||
    hasDonorArticles(question);
  const ofDemand = new Map<string, number[]>();
  const ofVehicle: number[] = [];
  const first = problem.relations.length - filtering.length;
  for (const [index, relation] of problem.relations.entries()) {
    const own = index < first ? demandOf(relation, open, wants) : filtering[index - first]?.demand;
    if (own === null || own === undefined) ofVehicle.push(index);
    else ofDemand.set(keyOfDemand(own), [...(ofDemand.get(keyOfDemand(own)) ?? []), index]);
  }
  const leastState = refusesUnknowns ? STATE.holds : STATE.open;
  const prices = isPriced ? problem.prices : freeOfCharge(tables);
  return { problem, tables, leastState, prices, isPriced, ofVehicle, ofDemand };
}

/** What nobody recorded is in its lot and nowhere else, so there may be too few of it. */
function hasDonorArticles({ catalogue, lots }: KitQuestion): boolean {
  return [...donorArticles(catalogue).values()].some(({ lot }) => lots.has(lot.id));
}

/** The demand that a relation of the question is of; null for one of the vehicle. */
function demandOf(
  { sort, id }: KitRelation,
  { ruleset }: KitQuestion,
  wants: readonly Demand[],
): Demand | null {
  switch (sort) {
    case 'want':
      return wants[Number(id.split('.')[0])] ?? null;
    case 'avoided':
      return { is: 'avoid-condition', name: id };
    case 'demand':
      return id === ruleset?.id
        ? { is: 'ruleset-rest', name: '' }
        : { is: 'ruleset-check', name: id };
    default:
      return null;
  }
}

type Forbids = (scene: Scene, variable: number, value: number, name: string) => boolean;

/** Demands that elsewhere keep values out from the first. */
export const FILTERS: Readonly<Partial<Record<DemandSort, Forbids>>> = {
  keep: changes,
  'ruleset-keep': changes,
  'avoid-part': (scene, variable, value, name) =>
    isAvoided(scene, variable, value, new Set([name])),
};

function changes(scene: Scene, variable: number, value: number, name: string): boolean {
  if (variable >= scene.places.length || scene.nameOf(variable) !== name) return false;
  return value > 0 && !renewsOnly(scene, variable, value);
}

function filterRelations(
  scene: Scene,
  demand: Demand,
): { readonly relation: KitRelation; readonly demand: Demand }[] {
  const forbids = FILTERS[demand.is];
  if (forbids === undefined) return [];
  return Array.from({ length: scene.variables }, (_, variable) => variable).flatMap((variable) => {
    const isOut = Array.from({ length: scene.sizeOf(variable) }, (_, value) =>
      value > 0 ? forbids(scene, variable, value, demand.name) : false,
    );
    if (!isOut.includes(true)) return [];
    const judge = ([value = 0]: readonly number[]): Judged => {
      const state = isOut[value] === true ? STATE.fails : STATE.holds;
      return { state, constraints: [], blame: null };
    };
    const id = `${keyOfDemand(demand)} ${scene.fullNameOf(variable)}`;
    const relation: KitRelation = {
      sort: 'kept',
      id,
      name: `kept ${id}`,
      scope: [variable],
      classes: [isOut.map(Number)],
      ask: (values) => ({ state: judge(values).state, blame: [variable] }),
      judge,
    };
    return [{ relation, demand }];
  });
}
