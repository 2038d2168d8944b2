/**
 * What a relation reads of each variable, and which values are therefore alike to it: parts with
 * the same exact values are one class. What is there now is a class of its own, since what is not
 * changed is given.
 *
 * Where two places that are read could hold one article, values that are known only within limits
 * are told apart by article: two pieces of one share what they are, two of like records do not.
 */

import type { Part, Value } from '../catalogue/catalogue.js';
import { isDonorArticle } from '../catalogue/donor-article.js';
import { madeFrom } from '../catalogue/trade.js';
import { type Condition, type SimpleCondition, termsOf, testsIn } from '../check/check.js';
import { leavesOf } from '../check/evaluator.js';
import { gradeOf } from '../check/state.js';
import type { Reference, Term } from '../check/term.js';
import { classKey, partKey, valueKey } from '../index/interning.js';
import { isPoint } from '../quantity/interval.js';
import { occupantOf, optionsAt } from './candidates.js';
import type { Scene } from './scene.js';

interface ReadsOfPlace {
  /** The article itself counts. */
  isWhole: boolean;
  readonly references: Set<Reference>;
  /** Articles that are named; those made from them too. */
  readonly named: Set<string>;
}

export class Reads {
  readonly #scene: Scene;
  readonly #places = new Map<number, ReadsOfPlace>();
  readonly #matings = new Set<number>();
  readonly #named = new Set<string>();

  constructor(scene: Scene) {
    this.#scene = scene;
  }

  /** The variables that are read, ascending. */
  get scope(): number[] {
    return [...this.#places.keys(), ...this.#matings].sort((a, b) => a - b);
  }

  #at(position: string): ReadsOfPlace {
    const variable = this.#scene.placeVariable(position);
    let reads = this.#places.get(variable);
    if (reads === undefined) {
      reads = { isWhole: false, references: new Set(), named: new Set() };
      this.#places.set(variable, reads);
    }
    return reads;
  }

  /** Whether it is changed, or what is empty. */
  change(position: string): void {
    this.#at(position);
  }

  whole(position: string): void {
    this.#at(position).isWhole = true;
  }

  named(position: string, part: string): void {
    this.#at(position).named.add(part);
  }

  /** Whether a position is opened: by its own change, or by one of what it is in the way of. */
  opened(position: string): void {
    for (const { position: other } of this.#scene.places) {
      const isBehind = this.#scene.openedBy(new Set([other.id])).some(({ id }) => id === position);
      if (other.id === position || isBehind) this.change(other.id);
    }
  }

  /** The matings that are read, those in which nothing can sit too. */
  get matings(): ReadonlySet<string> {
    return this.#named;
  }

  mating(mating: string): void {
    this.#named.add(mating);
    const variable = this.#scene.matingVariable(mating);
    if (variable !== null) this.#matings.add(variable);
  }

  reference(reference: Reference): void {
    if (reference.of === 'adapter') this.mating(reference.mating);
    else if ('position' in reference) this.#at(reference.position).references.add(reference);
  }

  terms(terms: readonly Term[]): void {
    for (const { reference } of terms.flatMap(leavesOf)) this.reference(reference);
  }

  condition(condition: Condition): void {
    for (const one of testsIn(condition)) this.#test(one);
  }

  #test(one: SimpleCondition): void {
    switch (one.test) {
      case 'check':
        this.terms(termsOf(one.check));
        if (one.check.when !== null) this.condition(one.check.when);
        break;
      case 'adapter':
        this.mating(one.mating);
        break;
      case 'opened':
        this.opened(one.position);
        break;
      default:
        this.change(one.position);
    }
  }

  /** Equal for values of a variable that are alike in all that is read. */
  keyOf(variable: number, value: number): string {
    if (value === 0) return '0';
    const reads = this.#places.get(variable);
    if (reads === undefined) return this.#scene.row(variable, value).join('>');
    const { seats, renewed } = this.#scene.seatValue(variable, value);
    const { seats: now } = this.#scene.seatValue(variable, 0);
    const hands = seats.hands ? (['left', 'right'] as const) : [null];
    const keys = hands.map((hand) => {
      const occupant = occupantOf(seats, hand);
      if (occupant.is !== 'part') return occupant.is;
      // The one that may be there already is alike to no other.
      const mayBeThere = optionsAt(now, hand).includes(occupant.part);
      return mayBeThere ? occupant.part : this.#partKey(occupant.part, reads);
    });
    // Of a pair, the hand that stays is not changed.
    const staying = seats.hands ? this.#stays(variable, value) : '';
    return [...keys, staying, ...renewed.map((hand) => `new ${hand}`)].join('/');
  }

  /** What is there now, as far as it is read. */
  nowOf(variable: number): string {
    const reads = this.#places.get(variable);
    if (reads === undefined) return this.#scene.row(variable, 0).join('>');
    const { seats } = this.#scene.seatValue(variable, 0);
    const hands = seats.hands ? (['left', 'right'] as const) : [null];
    const keys = hands.map((hand) => {
      const occupant = occupantOf(seats, hand);
      return occupant.is === 'part' ? this.#partKey(occupant.part, reads) : occupant.is;
    });
    return keys.join('/');
  }

  /** The hands at which what is there now stays, of a place whose other hand is changed. */
  #stays(variable: number, value: number): string {
    const changed = this.#scene.seatChanges(variable, value).map(({ hand }) => hand);
    return (['left', 'right'] as const).filter((hand) => !changed.includes(hand)).join();
  }

  #partKey(id: string, reads: ReadsOfPlace): string {
    // Of what nobody identified, no two are alike.
    if (isDonorArticle(id)) return id;
    const part = this.#scene.catalogue.parts.get(id);
    if (part === undefined) throw new Error(`no part ${id} in this catalogue`);
    const isNamed = madeFrom(id).some((article) => reads.named.has(article));
    if (reads.isWhole || isNamed || part.spans !== null) return id;
    const keys = [...reads.references].map((reference) => this.#referenceKey(part, reference));
    if (keys.includes(null) && this.#mayMeetItsLike(part, reads)) return id;
    const all = [...reads.references].map(
      (reference, at) => keys[at] ?? this.#looseKey(part, reference),
    );
    return ['(', ...all].join('|');
  }

  /** Whether another place that is read could hold a piece of the same article. */
  #mayMeetItsLike(part: Part, own: ReadsOfPlace): boolean {
    return [...this.#places].some(([variable, reads]) => {
      const roles = this.#scene.places[variable]?.position.roles ?? [];
      return reads !== own && part.roles.some((role) => roles.includes(role));
    });
  }

  /** What a part has at a reference, known exactly or not. */
  #looseKey(part: Part, reference: Reference): string {
    if (reference.of === 'face') {
      const face = part.faces.get(reference.interface);
      return face === undefined ? `? ${part.roles.join()}` : classKey(face);
    }
    return reference.of === 'value' ? partKey(part) : part.id;
  }

  /** What a part has at a reference, in words; null where only the article tells it apart. */
  #referenceKey(part: Part, reference: Reference): string | null {
    switch (reference.of) {
      case 'value': {
        const { roles } = this.#scene.catalogue;
        const specs = part.roles.flatMap(
          (role) => roles.get(role)?.values.get(reference.value) ?? [],
        );
        const spec = specs[0];
        if (spec === undefined) return null;
        if (spec.term !== null) return exactKeys([...part.values.values()]);
        return exactKey(part.values.get(reference.value));
      }
      case 'face': {
        const face = part.faces.get(reference.interface);
        if (face === undefined) return null;
        if (face.isAbsent) return 'absent';
        if (face.alternatives.length !== 1) return null;
        const value = face.alternatives[0]?.get(reference.parameter);
        return value === undefined ? null : exactKey(value);
      }
      case 'role':
        return part.roles.join();
      default:
        return null;
    }
  }
}

function exactKeys(values: readonly Value[]): string | null {
  const keys = values.map((value) => exactKey(value));
  if (keys.some((key) => key === null)) return null;
  return values
    .map(({ spec }, index) => `${spec.id}=${keys[index] ?? ''}`)
    .sort()
    .join(';');
}

/** Null for what is known only within limits, or not at all, or may be chosen. */
function exactKey(value: Value | undefined): string | null {
  if (value === undefined || gradeOf(value.evidence.basis) !== 'decides') return null;
  const isExact =
    value.form === 'code' ||
    (value.form === 'number' && isPoint(value.interval)) ||
    (value.form === 'list' &&
      value.items.every(({ interval }) => interval === null || isPoint(interval)));
  return isExact ? `${value.evidence.basis} ${valueKey(value)}` : null;
}
