/**
 * The compiled index as columns of the store. What meets what is decided by the program, so the
 * table carries the program's version; another program makes its own.
 */

import { ENGINE } from '../domain/engine.js';
import type { Columns, CompiledIndex } from '../domain/index/compiled-index.js';
import type { IndexColumn } from './ports.js';

const FACE_CLASS = 'face-class';
const MEETS = `meets-${ENGINE.replaceAll('.', '-')}`;

export function indexColumns(index: CompiledIndex): IndexColumn[] {
  const { faceClass, meets } = index.columns();
  return [
    { name: FACE_CLASS, data: faceClass },
    { name: MEETS, data: meets },
  ];
}

/** The columns that this program can use; null where it has to make its own. */
export function columnsOf(columns: readonly IndexColumn[]): Columns | null {
  const faceClass = columns.find(({ name }) => name === FACE_CLASS)?.data;
  const meets = columns.find(({ name }) => name === MEETS)?.data;
  if (!(faceClass instanceof Int32Array) || meets === undefined) return null;
  return meets instanceof Int32Array ? null : { faceClass, meets };
}
