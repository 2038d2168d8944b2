/**
 * `--measured`: what was measured or found out since, in the words in which an answer asks for it.
 *
 * Left out: the tool. A value is taken with the tolerance that it is written with.
 */

import type { MeasuredInput, MeasuredOn } from '../usecases/question.js';
import { CommandFault } from './fault.js';
import type { Pair } from './question-options.js';

const NOWHERE: MeasuredOn = {
  position: null,
  hand: null,
  part: null,
  interface: null,
  parameter: null,
  fact: null,
};

/** One place that is named several times has a list: the gears of a gearbox, in this order. */
export function measuredOf(pairs: readonly Pair[]): MeasuredInput[] {
  const values = new Map<string, string[]>();
  for (const { key, value } of pairs) values.set(key, [...(values.get(key) ?? []), value]);
  return [...values].map(([key, list]) => {
    const [only, ...others] = list;
    const value = only === undefined || others.length > 0 ? list : only;
    return { on: { ...NOWHERE, ...placeOf(key) }, value, tool: null };
  });
}

function placeOf(key: string): Partial<MeasuredOn> {
  const [, sort, name] = /^(fact|part):(.+)$/.exec(key) ?? [];
  if (name === undefined) return ofPosition(key.split('.'), key);
  if (sort === 'fact') return { fact: name };
  const [part = '', ...steps] = name.split('.');
  if (steps.length === 0) throw unread(key);
  return { part, ...valueAt(steps, key) };
}

function ofPosition([position = '', ...steps]: string[], key: string): Partial<MeasuredOn> {
  const [hand, ...inner] = steps;
  if (hand !== 'left' && hand !== 'right') return { position, ...valueAt(steps, key) };
  return { position, hand, ...valueAt(inner, key) };
}

/** `parameter`, `face.parameter`; without either, the piece itself. */
function valueAt(steps: readonly string[], key: string): Partial<MeasuredOn> {
  const [first, second, ...others] = steps;
  if (others.length > 0 || steps.includes('')) throw unread(key);
  if (first === undefined) return {};
  return second === undefined ? { parameter: first } : { interface: first, parameter: second };
}

function unread(key: string): CommandFault {
  return new CommandFault('bad-usage', `--measured does not name one value: ${key}.`, {
    remedy:
      'Write position.face.parameter, position.parameter, position, part:id.face.parameter or ' +
      'fact:id before the equals sign.',
  });
}
