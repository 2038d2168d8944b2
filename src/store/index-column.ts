/**
 * A column of an edition's compiled index as a row, and back. Numbers are little-endian on disk,
 * whatever the machine. A column that has not changed since the edition before keeps its row.
 */

import { createHash } from 'node:crypto';
import { endianness } from 'node:os';
import type { IndexColumn } from '../usecases/ports.js';
import { damaged } from './store-fault.js';

export interface IndexColumnRow {
  readonly name: string;
  readonly type: string;
  readonly byte_order: string;
  readonly length: number;
  readonly sha256: string;
  readonly data: Buffer;
}

const BYTES = { uint8: 1, int32: 4 } as const;

export function indexColumnRow({ name, data }: IndexColumn): IndexColumnRow {
  // A copy: the caller's array stays as it is.
  const own = Buffer.from(new Uint8Array(data.buffer, data.byteOffset, data.byteLength));
  const bytes = littleEndian(own, data);
  return {
    name,
    type: data instanceof Int32Array ? 'int32' : 'uint8',
    byte_order: 'little',
    length: data.length,
    sha256: sha256Of(bytes),
    data: bytes,
  };
}

/** @throws StoreFault where the row is not what was stored. */
export function indexColumnOf(row: IndexColumnRow): IndexColumn {
  const { name, type, length, data } = row;
  if (type !== 'uint8' && type !== 'int32') {
    throw damaged(`the index column ${name} has the unknown type "${type}"`);
  }
  if (row.byte_order !== 'little') {
    throw damaged(`the index column ${name} has the unknown byte order "${row.byte_order}"`);
  }
  if (data.byteLength !== length * BYTES[type]) {
    throw damaged(`the index column ${name} has ${data.byteLength} bytes for ${length} elements`);
  }
  if (sha256Of(data) !== row.sha256) {
    throw damaged(`the index column ${name} does not agree with its hash`);
  }
  // A copy: a buffer of SQLite's binding need not begin where a number may begin.
  const bytes = Uint8Array.from(data);
  if (type === 'uint8') return { name, data: bytes };
  const numbers = new Int32Array(bytes.buffer, 0, length);
  littleEndian(Buffer.from(bytes.buffer), numbers);
  return { name, data: numbers };
}

/** The bytes of an array between this machine's order and the little-endian one, either way. */
function littleEndian(bytes: Buffer, array: Uint8Array | Int32Array): Buffer {
  return endianness() === 'BE' && array instanceof Int32Array ? bytes.swap32() : bytes;
}

function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
