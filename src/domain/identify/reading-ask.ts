/**
 * To ask for one reading of a piece: what can be read at all, with which tool and how finely, and
 * what comes out of it.
 */

import type { Value, ValueSpec } from '../catalogue/catalogue.js';
import { gradeOf } from '../check/state.js';
import { compare, divide, type Rational, rational } from '../quantity/rational.js';
import { type Tool, toolOf } from '../quantity/tool.js';
import { formOf, itemsOf } from './compared.js';
import { type Has, type Outcome, outcomesOf } from './outcomes.js';
import type { ToldFace } from './piece-faces.js';

/** What is asked for. */
export type AskAt =
  | { readonly field: 'role' | 'hand' | 'number' }
  | {
      readonly field: 'measured';
      /** Of the part itself where it is null. */
      readonly face: Pick<ToldFace, 'interface' | 'kind' | 'side' | 'which'> | null;
      readonly spec: ValueSpec;
    };

export interface PieceAsk {
  readonly at: AskAt;
  /** Id of the tool that tells the outcomes apart; null where none is named. */
  readonly tool: string | null;
  /** How far a reading may be off to either side, in the base unit; null where it is exact. */
  readonly needed: Rational | null;
  readonly outcomes: readonly Outcome[];
}

/** By name and form, each once. */
export class Specs {
  readonly #found = new Map<string, ValueSpec>();

  add(spec: ValueSpec): void {
    const isReadable = !spec.isRating && !spec.isList && spec.type !== 'points';
    if (isReadable) this.#found.set(`${spec.id} ${formOf(spec)}`, spec);
  }

  beside(known: readonly { readonly id: string }[]): ValueSpec[] {
    const ids = new Set(known.map(({ id }) => id));
    return [...this.#found.values()].filter(({ id }) => !ids.has(id));
  }
}

/** What decides of these values; what decides nothing leaves the part in whatever comes out. */
export function itemsIn(
  values: readonly (Value | undefined)[],
  spec: ValueSpec,
): Pick<Has, 'items' | 'isOpen'> {
  const deciding = values.filter((value): value is Value => {
    if (value === undefined || formOf(value.spec) !== formOf(spec)) return false;
    return gradeOf(value.evidence.basis) !== 'opens-only';
  });
  const isOpen = values.length === 0 || deciding.length < values.length;
  return { items: deciding.flatMap(itemsOf), isOpen };
}

const TWO = rational(2);

export function measuredAsk(
  at: Extract<AskAt, { field: 'measured' }>,
  has: readonly Has[],
): PieceAsk {
  const { type, unit } = at.spec;
  const isMeasured = type === 'measured' || (type === 'designation' && unit !== '');
  const tools = toolsFor(at.spec);
  const finest = isMeasured ? (tools.at(-1)?.half ?? null) : null;
  const { outcomes, gap } = outcomesOf(has, finest);
  const needed = isMeasured && gap !== null ? divide(gap, TWO) : null;
  const suited = tools.find(({ half }) => {
    return needed === null || half === null || compare(half, needed) < 0;
  });
  return { at, tool: (suited ?? tools.at(-1))?.id ?? null, needed, outcomes };
}

interface ToolForValue {
  readonly id: string;
  /** How far it may be off; null where it does not tell such values by measuring. */
  readonly half: Rational | null;
}

/** The usual tool, and those that measure the same more finely. */
function toolsFor({ tool, dimension }: ValueSpec): ToolForValue[] {
  const tools: ToolForValue[] = [];
  let id = tool;
  let known: Tool | undefined = id === null ? undefined : toolOf(id);
  while (id !== null && known !== undefined && tools.every((one) => one.id !== id)) {
    tools.push({ id, half: known.uncertainty[dimension] ?? null });
    id = known.finer ?? null;
    known = id === null ? undefined : toolOf(id);
  }
  return tools;
}
