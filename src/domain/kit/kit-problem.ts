/**
 * A kit question as the problem that is searched: variables with only the values worth looking
 * at, all relations, and what it costs.
 *
 * Of values that are alike to every relation and every rule, and are bought in the same plain
 * way, only the cheapest is searched; the others are told as its substitutes.
 */

import { madeFrom } from '../catalogue/trade.js';
import { ONE, type Rational } from '../quantity/rational.js';
import { addedAt, splitRow } from './added.js';
import { Billing } from './billing.js';
import { partsIn } from './candidates.js';
import { capacityRelations } from './capacity.js';
import type { Answer, Prices, Problem, Variable } from './core/problem.js';
import type { Tables } from './core/tables.js';
import { withDemanded } from './demanded-relations.js';
import type { Ground, Whole, WholeJudge } from './ground.js';
import type { PriceList } from './price.js';
import type { KitQuestion } from './question.js';
import type { KitRelation } from './relation.js';
import type { Scene } from './scene.js';
import { questionRelations } from './wishes.js';

/** A problem with all that has been asked of it. */
export interface Solved {
  readonly problem: KitProblem;
  readonly tables: Tables;
}

export class KitProblem implements Problem {
  readonly scene: Scene;
  readonly billing: Billing;
  readonly priceList: PriceList;
  readonly variables: readonly Variable[];
  readonly relations: readonly KitRelation[];
  readonly prices: Prices;
  readonly #whole: WholeJudge;
  /** By variable, by value of the problem: the value of the scene. */
  readonly #kept: readonly (readonly number[])[];
  /** By variable, by value of the problem: values of the scene that are alike, cheapest first. */
  readonly #alike: readonly ReadonlyMap<number, readonly number[]>[];

  /**
   * @param moreThan every load must leave more than this; null where it need not.
   * @param more relations beside those of the question and of the vehicle; they come last.
   */
  constructor(
    { scene, relations: ofVehicle, whole }: Ground,
    priceList: PriceList,
    moreThan: Rational | null = null,
    more: readonly KitRelation[] = [],
  ) {
    this.scene = scene;
    this.#whole = whole;
    this.priceList = priceList;
    this.billing = new Billing(scene);
    const relations = [
      ...questionRelations(scene),
      ...(moreThan === null ? [] : capacityRelations(scene, moreThan)),
      ...withDemanded(scene, ofVehicle),
      ...more,
    ];
    const chosen = Array.from({ length: scene.variables }, (_, variable) =>
      this.#choose(variable, relations),
    );
    this.#kept = chosen.map(({ kept }) => kept);
    this.#alike = chosen.map(({ alike }) => alike);
    this.variables = chosen.map(({ kept }, variable) => {
      const isPlace = variable < scene.places.length;
      const common = { name: scene.nameOf(variable), size: kept.length, isPlace };
      if (isPlace || scene.row(variable, 0).length === 0) return common;
      // What is taken out costs nothing, so what is left of a row is among the values.
      const less = kept.map((value) => Math.max(0, kept.indexOf(leftOf(scene, variable, value))));
      return { ...common, less };
    });
    this.relations = relations.map((relation) => this.#narrowed(relation));
    const atLeast = chosen.map(({ least }) => least);
    this.prices = {
      atLeast,
      floor: (values, decided) =>
        this.priceList.floor(this.billing.least(this.sceneValues(values), decided)),
      exact: (values) => this.priceList.cost(this.billing.bill(this.sceneValues(values))),
    };
  }

  /** The values of the scene behind values of the problem, by variable. */
  sceneValues(values: readonly number[]): number[] {
    return values.map((value, variable) => this.#sceneValue(variable, value));
  }

  /** The vehicle with these values of the problem, as a whole. */
  wholeAt(values: readonly number[]): Whole {
    return this.#whole.at(this.scene, this.sceneValues(values));
  }

  /** The value that is the same part without its last work; null where it is not worked. */
  withoutWork(variable: number, value: number): number | null {
    const own = this.#kept[variable] ?? [];
    const name = nameOf(this.scene, variable, own[value] ?? 0);
    const plain = name.slice(0, Math.max(0, name.lastIndexOf('+')));
    const found = own.findIndex(
      (one) => plain !== '' && nameOf(this.scene, variable, one) === plain,
    );
    return found < 0 ? null : found;
  }

  /** Values of the scene that do as well as this value of the problem, itself left out. */
  alikeTo(variable: number, value: number): readonly number[] {
    return this.#alike[variable]?.get(value) ?? [];
  }

  #sceneValue(variable: number, value: number): number {
    const found = this.#kept[variable]?.[value];
    if (found === undefined) throw new RangeError(`variable ${variable} has no value ${value}`);
    return found;
  }

  /** The values that are searched, with what each adds at least to the cost. */
  #choose(variable: number, relations: readonly KitRelation[]) {
    const own = relations.filter(({ scope }) => scope.includes(variable));
    const groups = new Map<string, { value: number; least: number; name: string }[]>();
    const isKept = isKeptPlace(this.scene, variable);
    for (let value = 1; value < this.scene.sizeOf(variable); value += 1) {
      const isRefused = isKept && !renewsOnly(this.scene, variable, value);
      if (isRefused || isAvoided(this.scene, variable, value)) continue;
      const least = this.#least(variable, value);
      if (least === Number.POSITIVE_INFINITY) continue;
      const classes = own.map(({ scope, classes: of }) => of[scope.indexOf(variable)]?.[value]);
      const plain = this.#isPlain(variable, value) ? '' : ` ${value}`;
      const priced = this.#isPriced(least) ? '' : ' unpriced';
      const key = `${classes.join()} ${this.billing.keyOf(variable, value)}${plain}${priced}`;
      const group = groups.get(key) ?? [];
      group.push({ value, least, name: nameOf(this.scene, variable, value) });
      groups.set(key, group);
    }
    const best = [...groups.values()].map((group) => [...group].sort(byLeast));
    best.sort(([a], [b]) => (a?.value ?? 0) - (b?.value ?? 0));
    const alike = new Map(
      best.map((group, index) => [index + 1, group.slice(1).map(({ value }) => value)] as const),
    );
    const kept = [0, ...best.flatMap(([first]) => first?.value ?? [])];
    return { kept, alike, least: [0, ...best.flatMap(([first]) => first?.least ?? [])] };
  }

  #least(variable: number, value: number): number {
    const adapter = this.scene.adapterChange(variable, value);
    if (adapter !== null) return this.priceList.atLeast(adapter);
    return this.priceList.atLeast(this.scene.seatChanges(variable, value));
  }

  /** Whether its price is known, where a limit of cost may keep out just those of a known price. */
  #isPriced(least: number): boolean {
    if (this.scene.question.limits.cost === null) return true;
    return this.priceList.lanesOf(least).unpriced === 0;
  }

  /** Bought piece by piece at an offer, or unpriced: nothing else bears on what it costs. */
  #isPlain(variable: number, value: number): boolean {
    return articlesAt(this.scene, variable, value).every((id) => isPlain(id, this.scene.question));
  }

  #narrowed(relation: KitRelation): KitRelation {
    const { scope } = relation;
    const classes = scope.map((variable, at) =>
      (this.#kept[variable] ?? []).map((value) => relation.classes[at]?.[value] ?? 0),
    );
    const sceneOf = (values: readonly number[]) =>
      values.map((value, at) => this.#sceneValue(scope[at] ?? 0, value));
    return {
      ...relation,
      classes,
      ask: (values): Answer => relation.ask(sceneOf(values)),
      judge: (values) => relation.judge(sceneOf(values)),
    };
  }
}

/** The question, or its ruleset, wants it left as it is. */
function isKeptPlace(scene: Scene, variable: number): boolean {
  const { keep, ruleset, vehicle } = scene.question;
  if (variable >= scene.places.length) return false;
  const demanded = ruleset?.demands.get(vehicle.layout.id)?.keep ?? [];
  const name = scene.nameOf(variable);
  return keep.includes(name) || demanded.includes(name);
}

/** A new piece of what is there keeps a place as it is. */
export function renewsOnly(scene: Scene, variable: number, value: number): boolean {
  const changes = scene.seatChanges(variable, value);
  return changes.every(
    ({ now, becomes }) => now.is === 'part' && becomes.is === 'part' && now.part === becomes.part,
  );
}

/** Whether something is put in that must not be; a part that is there already may be worked. */
export function isAvoided(
  scene: Scene,
  variable: number,
  value: number,
  parts: ReadonlySet<string> = scene.question.avoid.parts,
): boolean {
  if (parts.size === 0) return false;
  return addedAt(scene, variable, value).some((id) => madeFrom(id).some((one) => parts.has(one)));
}

/** The value of a mating that is left of a row where what is new in it goes. */
function leftOf(scene: Scene, variable: number, value: number): number {
  const { stays } = splitRow(scene, variable, value);
  for (let other = 0; other < scene.sizeOf(variable); other += 1) {
    if (scene.row(variable, other).join() === stays.join()) return other;
  }
  return value;
}

function articlesAt(scene: Scene, variable: number, value: number): readonly string[] {
  if (variable >= scene.places.length) return scene.row(variable, value);
  return partsIn(scene.seatValue(variable, value).seats);
}

/** Not owned, in no lot, not worked, and bought by the piece, however many are at hand. */
function isPlain(id: string, { owned, lots, limits, offers, catalogue }: KitQuestion): boolean {
  if (id.includes('+') || owned.has(id) || limits.inStock) return false;
  const isInLot = [...lots].some((lot) =>
    catalogue.lots.get(lot)?.contains.some((item) => item.is === 'position' || item.part === id),
  );
  if (isInLot) return false;
  return offers.every(
    ({ record, pack }) => record.for !== id || (pack.dimension === '1' && pack.value.equals(ONE)),
  );
}

/** The articles of a value: what its ties are broken by. */
export function nameOf(scene: Scene, variable: number, value: number): string {
  const joint = variable >= scene.places.length ? '>' : '+';
  return articlesAt(scene, variable, value).join(joint);
}

function byLeast(
  a: { readonly least: number; readonly name: string },
  b: { readonly least: number; readonly name: string },
): number {
  if (a.least !== b.least) return a.least - b.least;
  return a.name < b.name ? -1 : 1;
}
