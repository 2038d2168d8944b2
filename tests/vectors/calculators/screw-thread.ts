/**
 * Check values of metric screw threads. One public copy prints 98.0 mm2 for M12x1, which the
 * formula does not give: `tests/domain/driveline/screw-thread.test.ts` holds that apart.
 */

import type { Vector } from '../vector.js';

const ISO_724 = { calculation: 'screw-thread', source: 'ISO 724', basis: 'read' } as const;
const AREA = { ...ISO_724, output: 'stressArea' } as const;

function diameters(id: string, thread: string, values: readonly number[]): Vector[] {
  const outputs = ['pitchDiameter', 'internalMinorDiameter', 'externalMinorDiameter'];
  return outputs.map((output, index) => ({
    ...ISO_724,
    id: `${id} (${output})`,
    given: { thread },
    output,
    expected: { near: values[index] ?? Number.NaN, within: 0.001 },
  }));
}

function area(id: string, thread: string, value: number, source: string): Vector {
  return {
    ...AREA,
    id: `${id} (${thread})`,
    given: { thread },
    expected: { near: value, within: 0.5 },
    source,
  };
}

/** Rows of the table of the standard that nobody had at hand. */
function recalled(vector: Vector): Vector {
  return { ...vector, basis: 'from memory' };
}

export const SCREW_THREAD: readonly Vector[] = [
  ...diameters('thread-01', 'M12x1.25', [11.188, 10.647, 10.466]),
  ...diameters('thread-02', 'M14x1.5', [13.026, 12.376, 12.16]),
  ...diameters('thread-03', 'M10x1', [9.35, 8.917, 8.773]),
  {
    ...ISO_724,
    id: 'thread-04',
    given: { thread: 'M12x1.25', other: 'M12x1.5' },
    output: 'mates',
    expected: { exactly: 'fails' },
    source: 'ISO 965',
    basis: 'from memory',
  },
  area('bolt-01', 'M8x1.25', 36.6, 'ISO 898-1'),
  area('bolt-01', 'M10x1.5', 58.0, 'ISO 898-1'),
  area('bolt-01', 'M12x1.75', 84.3, 'ISO 898-1'),
  area('bolt-01', 'M14x2', 115, 'ISO 898-1'),
  area('bolt-01', 'M16x2', 157, 'ISO 898-1'),
  area('bolt-02', 'M8x1', 39.2, 'ISO 724'),
  area('bolt-02', 'M10x1.25', 61.2, 'ISO 724'),
  area('bolt-02', 'M10x1', 64.5, 'ISO 724'),
  area('bolt-02', 'M12x1.5', 88.1, 'ISO 724'),
  area('bolt-02', 'M12x1.25', 92.1, 'ISO 724'),
  area('bolt-02', 'M14x1.5', 125, 'ISO 724'),
  ...diameters('thread-own-1', 'M6', [5.35, 4.917, 4.773]).map(recalled),
  ...diameters('thread-own-2', 'M8', [7.188, 6.647, 6.466]).map(recalled),
  ...diameters('thread-own-3', 'M20', [18.376, 17.294, 16.933]).map(recalled),
];
