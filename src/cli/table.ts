/**
 * A table for people: a label in front of each row, its cells right-aligned under their headings.
 * Where the width does not hold all columns, they stand in blocks below one another.
 */

import { type Page, widthOf } from './page.js';

export interface Row {
  readonly label: string;
  readonly cells: readonly string[];
}

const GAP = 2;

export function sayTable(headings: readonly string[], rows: readonly Row[], page: Page): void {
  const label = Math.max(...rows.map((row) => widthOf(row.label)));
  const widths = headings.map((heading, column) =>
    Math.max(widthOf(heading), ...rows.map(({ cells }) => widthOf(cells[column] ?? ''))),
  );
  for (const [index, block] of blocksOf(widths, page.width - label).entries()) {
    if (index > 0) page.gap();
    const line = (start: string, cells: readonly string[]): string =>
      block
        .reduce(
          (text, column) => {
            const cell = cells[column] ?? '';
            const width = widths[column] ?? 0;
            return `${text}${' '.repeat(GAP + width - widthOf(cell))}${cell}`;
          },
          start.padEnd(label + start.length - widthOf(start)),
        )
        .trimEnd();
    page.verbatim(line('', headings), 'strong');
    for (const row of rows) page.verbatim(line(row.label, row.cells));
  }
}

/** Columns that stand side by side, at least one. */
function blocksOf(widths: readonly number[], room: number): number[][] {
  const blocks: number[][] = [];
  let left = 0;
  for (const [column, width] of widths.entries()) {
    const last = blocks.at(-1);
    left -= GAP + width;
    if (last !== undefined && left >= 0) last.push(column);
    else {
      blocks.push([column]);
      left = room - GAP - width;
    }
  }
  return blocks;
}
