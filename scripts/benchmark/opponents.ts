/**
 * General solvers on the same problem: YALPS, the honest opponent in the same language, and HiGHS,
 * compiled to WebAssembly. Both are asked for the exact optimum, without any gap.
 */

import * as highsModule from 'highs';
import { solve } from 'yalps';
import type { LinearModel, Row } from './linear-model.js';

/** The least cost; null: nothing is allowed; `gave up`: no answer within the time given. */
export type Outcome = number | null | 'gave up';

export interface Answer {
  readonly cost: Outcome;
  /** By column, what it has. */
  readonly taken: (column: number) => number;
}

export type Opponent = (model: LinearModel, seconds: number) => Answer;

const NOTHING: Answer['taken'] = () => 0;
/** Names that stand for the cost, and for the rows and columns as numbers. */
const COST = -1;

export const yalps: Opponent = ({ columns, rows }, seconds) => {
  const terms: (readonly [number, number])[][] = columns.map(({ cost }) => [[COST, cost]]);
  rows.forEach((row, index) => {
    for (const [column, times] of row.terms) terms[column]?.push([index, times]);
  });
  const { status, result, variables } = solve(
    {
      direction: 'minimize',
      objective: COST,
      constraints: rows.map((row, index) => [index, ends(row)] as const),
      variables: terms.map((own, column) => [column, own] as const),
      binaries: columns.flatMap(({ isWhole }, column) => (isWhole ? [column] : [])),
    },
    {
      tolerance: 0,
      timeout: seconds * 1000,
      // Without an end to the pivots it goes round in circles on what costs nothing.
      maxPivots: 8192,
      maxIterations: Number.POSITIVE_INFINITY,
    },
  );
  if (status === 'infeasible') return { cost: null, taken: NOTHING };
  if (status !== 'optimal') return { cost: 'gave up', taken: NOTHING };
  const taken = new Map(variables);
  return { cost: Math.round(result), taken: (column) => taken.get(column) ?? 0 };
};

function ends({ low, high }: Row): { equal?: number; min?: number; max?: number } {
  if (low !== null && low === high) return { equal: low };
  return { ...(low === null ? {} : { min: low }), ...(high === null ? {} : { max: high }) };
}

export async function loadedHighs(): Promise<Opponent> {
  // The package declares itself as CommonJS, but is loaded as a module with a default export.
  const { default: load } = highsModule as unknown as typeof highsModule.default;
  const highs = await load();
  return (model, seconds) => {
    const answer = highs.solve(lpText(model), {
      mip_rel_gap: 0,
      mip_abs_gap: 0.5,
      time_limit: seconds,
    });
    if (answer.Status === 'Infeasible') return { cost: null, taken: NOTHING };
    if (answer.Status !== 'Optimal') return { cost: 'gave up', taken: NOTHING };
    const { Columns } = answer;
    return {
      cost: Math.round(answer.ObjectiveValue),
      taken: (column) => Columns[`x${column}`]?.Primal ?? 0,
    };
  };
}

function lpText({ columns, rows }: LinearModel): string {
  const cost = columns.flatMap((column, index) =>
    column.cost > 0 ? [`${column.cost} x${index}`] : [],
  );
  const lines = rows.map((row) => {
    const sum = row.terms.map(([column, times]) => `${times < 0 ? '-' : '+'} x${column}`).join(' ');
    return row.low === row.high ? `${sum} = ${row.high}` : `${sum} <= ${row.high}`;
  });
  const whole = columns.flatMap(({ isWhole }, index) => (isWhole ? [`x${index}`] : []));
  return [
    'Minimize',
    cost.length === 0 ? '0 x0' : cost.join(' + '),
    'Subject To',
    ...lines,
    'Binary',
    ...whole,
    'End',
  ].join('\n');
}
