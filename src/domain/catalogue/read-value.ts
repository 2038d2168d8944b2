/**
 * Reads the form of a recorded value: a scalar, a list, `{"is": …}` with its evidence, or
 * `{"choose": …}`. What it means is told by its type, in `value.ts`.
 */

import type { EvidenceRecord, Scalar, ValueRecord } from './document.js';
import { at, type FaultList, hint, quoted } from './faults.js';
import { isObject, readId, readScalar } from './read-text.js';

type ReadEvidence = (raw: unknown, pointer: string) => EvidenceRecord | undefined;

/**
 * The value, or undefined where nothing of it can be used. What is only said about it (who
 * measured it, with what) is left out where it is faulty. Faulty items of a list are holes.
 */
export function readValue(
  raw: unknown,
  readEvidence: ReadEvidence,
  pointer: string,
  list: FaultList,
): ValueRecord | undefined {
  if (!isObject(raw)) return readScalars(raw, pointer, list);
  const isChoice = Object.hasOwn(raw, 'choose');
  if (!isChoice && !Object.hasOwn(raw, 'is')) {
    const text = 'A value is a text, {"is": …} with evidence, or {"choose": …}.';
    list.fault(pointer, 'not-a-value', text);
    return undefined;
  }
  const known = isChoice ? ['choose', 'evidence'] : ['is', 'evidence', 'tool'];
  for (const key of Object.keys(raw)) {
    if (known.includes(key)) continue;
    const text = `A value has no ${quoted(key)}.${hint(key, known)}`;
    list.fault(at(pointer, key), 'unknown-field', text);
  }
  const evidence = Object.hasOwn(raw, 'evidence')
    ? readEvidence(raw.evidence, at(pointer, 'evidence'))
    : undefined;
  const about = evidence === undefined ? {} : { evidence };
  if (isChoice) {
    const choose = readChoice(raw.choose, at(pointer, 'choose'), list);
    return choose === undefined ? undefined : { choose, ...about };
  }
  const tool = Object.hasOwn(raw, 'tool') ? readId(raw.tool, at(pointer, 'tool'), list) : undefined;
  const is = readScalars(raw.is, at(pointer, 'is'), list);
  if (is === undefined) return undefined;
  return { is, ...about, ...(tool === undefined ? {} : { tool }) };
}

function readScalars(
  raw: unknown,
  pointer: string,
  list: FaultList,
): Scalar | readonly Scalar[] | undefined {
  if (!Array.isArray(raw)) return readScalar(raw, pointer, list);
  if (raw.length === 0) {
    list.fault(pointer, 'empty-list', 'A list of values may not be empty.');
    return undefined;
  }
  return readItems(raw, pointer, list);
}

/** Holes keep the places of the items behind them; `present` passes over them. */
function readItems(raw: readonly unknown[], pointer: string, list: FaultList): readonly Scalar[] {
  return raw.map((item, index) => readScalar(item, at(pointer, index), list)) as Scalar[];
}

type Choice = Extract<ValueRecord, { readonly choose: unknown }>['choose'];

function readChoice(raw: unknown, pointer: string, list: FaultList): Choice | undefined {
  const isSet = isObject(raw) && Object.keys(raw).length === 1 && Array.isArray(raw.of);
  const options: unknown = isSet ? raw.of : raw;
  if (!Array.isArray(options) || (!isSet && options.length !== 2) || options.length === 0) {
    const text = 'A choice is a range ["600 mm", "1900 mm"], or {"of": [one, or, another]}.';
    list.fault(pointer, 'not-a-choice', text);
    return undefined;
  }
  const items = readItems(options, isSet ? at(pointer, 'of') : pointer, list);
  return isSet ? { of: items } : (items as readonly [Scalar, Scalar]);
}
