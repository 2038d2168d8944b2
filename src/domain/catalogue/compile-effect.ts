/**
 * Compiles what a rule recommends and what it uses up. Neither ever constrains anything.
 */

import { type ConditionScope, sayShape, unknownName } from '../check/compile-scope.js';
import { compileTerm, shapeOf, type Term } from '../check/term.js';
import { sign } from '../quantity/rational.js';
import { AMOUNT_DIMENSIONS } from './amount.js';
import type { ConsumesRecord, RecommendsRecord } from './document.js';
import { at, type FaultList } from './faults.js';
import type { Consumption, Recommendation } from './trade.js';

export function compileRecommendation(
  record: RecommendsRecord,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
): Recommendation | null {
  const before = list.faultCount;
  const { position = null, part = null } = record;
  const has = (key: string) => list.isUnread(at(pointer, key));
  if (position === null && part === null && !has('position') && !has('part')) {
    const text = 'Name what is recommended: a "position" that is worth filling, or a "part".';
    list.fault(pointer, 'missing-field', text);
  }
  const isPosition = position === null || isNamed('positions', position, scope, pointer, list);
  const isPart = part === null || isNamed('parts', part, scope, pointer, list);
  const isSilent = record.quantity === undefined;
  if (!isSilent && part === null && !has('part')) {
    list.fault(pointer, 'missing-field', '"part" is missing: of what it is so much.');
  }
  const place = at(pointer, 'quantity');
  const quantity = isSilent ? null : compileQuantity(record.quantity, scope, place, list);
  if (list.faultCount > before || !isPosition || !isPart) return null;
  return quantity === null && !isSilent ? null : { position, part, quantity };
}

export function compileConsumption(
  record: ConsumesRecord,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
): Consumption | null {
  const { part } = record;
  const isPart = isNamed('parts', part, scope, pointer, list);
  const place = at(pointer, 'quantity');
  // A quantity that is lacking is said where the shape is read.
  const isThere = record.quantity !== undefined;
  const quantity = isThere ? compileQuantity(record.quantity, scope, place, list) : null;
  return isPart && quantity !== null ? { part, quantity } : null;
}

/** Whether the layout has what is named; says so where nothing has. */
function isNamed(
  sort: 'positions' | 'parts',
  name: string,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
): boolean {
  if (scope[sort].has(name)) return true;
  const place = at(pointer, sort === 'parts' ? 'part' : 'position');
  unknownName({ raw: {}, scope, pointer: place, list }, sort, name);
  return false;
}

function compileQuantity(
  raw: unknown,
  scope: ConditionScope,
  pointer: string,
  list: FaultList,
): Term | null {
  const term = compileTerm(raw, scope, pointer, list);
  if (term === null) return null;
  const shape = shapeOf(term);
  if (shape.is !== 'number') {
    list.fault(pointer, 'not-a-number', `A quantity is one number, not ${sayShape(shape)}.`);
    return null;
  }
  if (!AMOUNT_DIMENSIONS.includes(shape.dimension)) {
    const said = 'a quantity is a number of pieces, a volume, a mass or a length';
    list.fault(pointer, 'wrong-dimension', `This is ${sayShape(shape)}; ${said}.`);
    return null;
  }
  if (term.op === 'literal' && sign(term.value) <= 0) {
    list.fault(pointer, 'out-of-range', 'A quantity is more than nothing.');
    return null;
  }
  return term;
}
