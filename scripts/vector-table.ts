/**
 * The table of check values: what each source says, what the calculator gives, and whether they
 * agree. Ends with 1 where one does not.
 */

import { VECTORS } from '../tests/vectors/calculators/index.js';
import { agrees, gotOf, type Vector } from '../tests/vectors/vector.js';

function row(vector: Vector): { cells: string[]; isGood: boolean } {
  const { id, calculation, output, source, basis } = vector;
  const got = gotOf(vector);
  const isGood = agrees(vector, got);
  const state = isGood ? 'agrees' : 'DIFFERS';
  const cells = [id, `${calculation}.${output}`, expectedText(vector), got.join(', '), state];
  return { cells: [...cells, `${source} (${basis})`], isGood };
}

function expectedText({ expected }: Vector): string {
  if ('exactly' in expected) return [expected.exactly].flat().join(', ');
  return `${[expected.near].flat().join(', ')} ±${expected.within}`;
}

const rows = VECTORS.map(row);
const table = [['id', 'what', 'expected', 'got', '', 'source'], ...rows.map(({ cells }) => cells)];
for (const cells of table) console.log(`| ${cells.join(' | ')} |`);
const different = rows.filter(({ isGood }) => !isGood).length;
console.log(`${rows.length} check values, ${different} differ`);
process.exitCode = different === 0 ? 0 : 1;
