/**
 * Compiles what speaks of layouts without belonging to one: rules, and what rulesets demand. Each
 * is compiled for every layout that it speaks of, in the words of that layout.
 */

import type { ConditionScope } from '../check/compile.js';
import { type Fault, FaultList } from './faults.js';
import type { LayoutScope } from './layout-scope.js';
import { ANY_NAME } from './scope.js';

export interface Everywhere<Made> {
  /** The layouts that it names; null where it speaks of all that know its words. */
  readonly layouts: readonly string[] | null;
  /** Says its faults, and gives null where there are any or where it names what has. */
  readonly compile: (scope: ConditionScope, list: FaultList) => Made | null;
}

interface Attempt<Made> {
  readonly layout: string;
  readonly made: Made | null;
  readonly list: FaultList;
}

/**
 * What names no layouts has a fault only if no layout knows its words: those of the layout that
 * comes nearest to it. Where no layout can be asked, only its form is looked at.
 */
export function compileEverywhere<Made>(
  { layouts, compile }: Everywhere<Made>,
  scopes: ReadonlyMap<string, LayoutScope>,
  list: FaultList,
): readonly (readonly [layout: string, made: Made])[] {
  const attempts = (layouts ?? [...scopes.keys()]).flatMap((layout): Attempt<Made>[] => {
    const scope = scopes.get(layout);
    if (scope === undefined) return [];
    const own = new FaultList(list.lost);
    return [{ layout, made: compile(scope, own), list: own }];
  });
  if (attempts.length === 0) compile(ANY_NAME, list);
  const clean = attempts.filter((one) => one.list.isClean);
  if (layouts !== null || clean.length > 0) {
    sayOnce(layouts === null ? clean : attempts, list);
  } else if (!list.lost.hasAny('layouts')) {
    const [nearest] = attempts.toSorted((a, b) => a.list.faults.length - b.list.faults.length);
    if (nearest !== undefined) sayOnce([nearest], list);
  }
  return attempts.flatMap(({ layout, made }) => (made === null ? [] : [[layout, made] as const]));
}

/**
 * What several layouts say of one place, in the words of the first that says it, and with its
 * name where others have nothing to say.
 */
function sayOnce(attempts: readonly Attempt<unknown>[], list: FaultList): void {
  for (const { pointer, code, text } of saidOnce(attempts, (own) => own.faults)) {
    list.fault(pointer, code, text);
  }
  for (const { pointer, code, text } of saidOnce(attempts, (own) => own.warnings)) {
    list.warn(pointer, code, text);
  }
}

function saidOnce<Code extends string>(
  attempts: readonly Attempt<unknown>[],
  saidIn: (list: FaultList) => readonly Fault<Code>[],
): Fault<Code>[] {
  const said = new Map<string, { readonly fault: Fault<Code>; readonly layouts: string[] }>();
  for (const { layout, list } of attempts) {
    for (const fault of saidIn(list)) {
      const key = `${fault.code} ${fault.pointer}`;
      const known = said.get(key) ?? { fault, layouts: [] };
      known.layouts.push(layout);
      said.set(key, known);
    }
  }
  return [...said.values()].map(({ fault, layouts }) => {
    const [first = ''] = layouts;
    const where = layouts.length < attempts.length ? ` So it is in the layout "${first}".` : '';
    return { ...fault, text: `${fault.text}${where}` };
  });
}
