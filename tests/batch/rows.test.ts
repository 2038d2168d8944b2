/**
 * Bytes taken apart into rows: the same rows however the bytes are cut, and those that are none
 * told by their line.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Row, RowReader } from '../../src/batch/rows.js';
import { LIMITS } from '../../src/contract/limits.js';

const LONGEST = LIMITS.batchLineBytes.value;

function rowsOf(bytes: Uint8Array, cuts: readonly number[], takesQuotes: boolean): Row[] {
  const reader = new RowReader({ takesQuotes });
  const at = [0, ...cuts.map((cut) => cut % (bytes.length + 1)), bytes.length].sort(
    (a, b) => a - b,
  );
  const rows = at.slice(1).flatMap((end, index) => {
    return [...reader.push(bytes.subarray(at[index], end))].flat();
  });
  return [...rows, ...[...reader.end()].flat()];
}

function bytesOf(...pieces: readonly (string | readonly number[])[]): Uint8Array {
  return Buffer.concat(pieces.map((one) => Buffer.from(one as string)));
}

/** Line, the line behind it, and the text or the fault. */
function told(rows: readonly Row[]): (readonly [number, number, string])[] {
  return rows.map(({ line, next, text, fault }) => [line, next, fault ?? text] as const);
}

const piece = fc.oneof(
  fc.constantFrom('\n', '\r\n', '\n\n', '"', '""', ',', ' ', '{"a":1}', 'ä', '🔧', '\ufeff', '\r'),
  fc.constantFrom('x'.repeat(LONGEST - 1), 'ä'.repeat(LONGEST / 2), '"\n'.repeat(LONGEST / 2)),
  fc.string({ maxLength: 6 }),
);
const bytes = fc
  .array(fc.oneof({ weight: 9, arbitrary: piece }, { weight: 1, arbitrary: fc.constant([0xff]) }), {
    maxLength: 12,
  })
  .map((pieces) => bytesOf(...pieces));

describe.each([
  ['lines', false],
  ['rows', true],
] as const)('%s', (_, takesQuotes) => {
  test('are the same however the bytes are cut', () => {
    const cuts = fc.array(fc.nat(), { maxLength: 20 });
    fc.assert(
      fc.property(bytes, cuts, (all, some) => {
        const whole = rowsOf(all, [], takesQuotes);
        expect(rowsOf(all, some, takesQuotes)).toEqual(whole);
      }),
      { numRuns: 300 },
    );
  });

  test('are the same byte by byte', () => {
    const small = fc.array(fc.constantFrom('\n', '\r\n', '"', ',', 'ä', '🔧', '\ufeff', 'a'));
    fc.assert(
      fc.property(small, (pieces) => {
        const all = bytesOf(...pieces);
        const each = Array.from(all.keys());
        expect(rowsOf(all, each, takesQuotes)).toEqual(rowsOf(all, [], takesQuotes));
      }),
    );
  });

  test('are counted, blank ones too, and the last one needs no line feed', () => {
    const text = '\ufeffa\r\n\nb';
    expect(told(rowsOf(bytesOf(text), [], takesQuotes))).toEqual([
      [1, 2, 'a'],
      [2, 3, ''],
      [3, 4, 'b'],
    ]);
    expect(rowsOf(bytesOf('\ufeff'), [1, 2], takesQuotes)).toEqual([]);
    expect(told(rowsOf(bytesOf([0xef, 0xbb]), [1], takesQuotes))).toEqual([[1, 2, 'not-utf-8']]);
  });

  test('are as long as the limit, and no longer', () => {
    const at = 'x'.repeat(LONGEST);
    const all = bytesOf(`${at}\r\n${at}x\n${at}\n${at}xx`);
    const faults = rowsOf(all, [5, LONGEST + 3], takesQuotes).map(({ fault }) => fault);
    expect(faults).toEqual([null, 'line-too-long', null, 'line-too-long']);
  });

  test('that are no text leave those around them as they are', () => {
    const all = bytesOf('a\nb\n', [0xc3, 0x28], '\nc\nd');
    expect(told(rowsOf(all, [], takesQuotes)).map(([, , text]) => text)).toEqual([
      'a',
      'b',
      'not-utf-8',
      'c',
      'd',
    ]);
  });
});

test('a row goes over lines where it is in quotation marks, and keeps its first one', () => {
  const all = bytesOf('a,"b\n""c"",\n",d\r\ne\n"f\n');
  expect(told(rowsOf(all, [4, 7], true))).toEqual([
    [1, 4, 'a,"b\n""c"",\n",d'],
    [4, 5, 'e'],
    [5, 7, '"f\n'],
  ]);
});

test('a quotation mark that is never closed takes no more than the limit with it', () => {
  const line = `${'y'.repeat(99)}\n`;
  const rows = rowsOf(bytesOf(`"${line.repeat(2000)}`), [], true);
  expect(rows[0]).toMatchObject({ line: 1, fault: 'line-too-long' });
  expect(rows[0]?.next).toBe(Math.ceil(LONGEST / 100) + 1);
  expect(rows.length).toBe(2000 - Math.ceil(LONGEST / 100) + 1);
});

test('no more is kept than a row', () => {
  const reader = new RowReader({ takesQuotes: false });
  const chunk = Buffer.alloc(1_000_000, 'x');
  for (let count = 0; count < 200; count += 1) {
    for (const rows of reader.push(chunk)) expect(rows).toEqual([]);
  }
  expect(JSON.stringify([...reader.end()])).toContain('line-too-long');
});
