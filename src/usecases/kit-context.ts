/**
 * What the parts of a kit question are resolved against: the vehicle, the parts that are named,
 * and the words of its layout. Faults go to one list, each at its field.
 */

import type { Catalogue, Vehicle } from '../domain/catalogue/catalogue.js';
import { FAULT_LANGUAGE, type FaultList, nearest } from '../domain/catalogue/faults.js';
import type { LayoutScope } from '../domain/catalogue/layout-scope.js';
import { scopeOf } from '../domain/catalogue/question-scope.js';
import type { Condition } from '../domain/check/check.js';
import { compileCondition } from '../domain/check/compile.js';
import type { AskedParts } from './asked-parts.js';
import type { Faults } from './faults.js';
import type { ConditionInput } from './kit-input.js';
import { positionOf } from './question.js';
import { faultList } from './quoted-faults.js';

export class KitContext {
  readonly parts: AskedParts;
  readonly vehicle: Vehicle;
  readonly faults: Faults;
  readonly #list: FaultList = faultList();
  #scope: LayoutScope | null = null;

  constructor(parts: AskedParts, vehicle: Vehicle, faults: Faults) {
    this.parts = parts;
    this.vehicle = vehicle;
    this.faults = faults;
  }

  get catalogue(): Catalogue {
    return this.parts.catalogue;
  }

  hasPosition(id: string, at: string): boolean {
    return positionOf(this.vehicle, id, at, this.faults) !== null;
  }

  /** The id of a lot; null where there is none of it. */
  lot(id: string, at: string): string | null {
    const { lots } = this.catalogue;
    if (lots.has(id)) return id;
    this.faults.add(at, 'unknown-lot', { name: id, meant: nearest(id, lots.keys()) });
    return null;
  }

  /** The id of a load, which is a `carries` of the layout; null where it has none of it. */
  load(id: string, at: string): string | null {
    const { layout, id: vehicle } = this.vehicle;
    const loads = layout.checks.flatMap((one) => (one.primitive === 'carries' ? one.id : []));
    if (loads.includes(id)) return id;
    this.faults.add(at, 'unknown-load', { name: id, vehicle, meant: nearest(id, loads) });
    return null;
  }

  /** A condition of the question; null where it has a fault. */
  condition({ position, condition: raw }: ConditionInput, at: string): Condition | null {
    const isPlaced = this.hasPosition(position, `${at}.position`);
    const { layout } = this.vehicle;
    this.#scope ??= scopeOf(layout, this.catalogue, this.#list);
    const pointer = `/${at.replaceAll('.', '/')}/condition`;
    const condition = compileCondition(raw, this.#scope, pointer, this.#list);
    return isPlaced ? condition : null;
  }

  /**
   * Tells the faults of all conditions. A code that nothing recorded has is one of them: a rule may
   * wait for such a part, but whoever asks for it can be told.
   */
  tellConditions(): void {
    const { faults, warnings } = this.#list;
    const slips = warnings.filter(({ code }) => code === 'unknown-code');
    for (const { pointer, code: because, text } of [...faults, ...slips]) {
      const data = { because, text, lang: FAULT_LANGUAGE };
      this.faults.add(pointer, 'condition-at-fault', data);
    }
  }
}
