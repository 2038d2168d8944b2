/**
 * Compares what two judges say of one configuration, constraint by constraint.
 *
 * A choice is named by its checks; one of a single check only tells what suits it, which the
 * check has said itself. Where the rules leave open with which of several options a single check
 * is shown, the oracle gives more than one verdict, and any of them will do.
 */

import { nameOf } from '../../src/domain/judge/choice.js';
import type { Constraint } from '../../src/domain/judge/constraint.js';
import type { Judgement } from '../../src/domain/judge/judge.js';
import type { PlannedCheck } from '../../src/domain/judge/plan.js';
import type { Finding } from '../oracle/finding.js';
import type { OracleAnswer } from '../oracle/judge.js';

/** What a constraint is called, and every way in which it may be shown. */
interface Line {
  readonly name: string;
  readonly shown: readonly string[];
}

/** Every difference in words; empty where the two agree. */
export function differences(oracle: OracleAnswer, judgement: Judgement): string[] {
  const expected = byName(oracle.findings.map(lineOfFinding));
  const judged = judgement.constraints.filter((one) => !isOfOneCheck(one, judgement));
  const given = byName(judged.map((one) => lineOfConstraint(one, judgement)));
  const names = [...new Set([...expected.keys(), ...given.keys()])].sort();
  const lines = names.flatMap((name) => compared(name, expected.get(name), given.get(name)));
  if (oracle.outcome === judgement.outcome) return lines;
  return [
    ...lines,
    `the whole: ${oracle.outcome} by the oracle, ${judgement.outcome} by the judge`,
  ];
}

/** What a judgement says of each constraint, in an order that does not hang on the document's. */
export function linesOf(judgement: Judgement): string[] {
  const lines = judgement.constraints.map((one) => {
    const { name, shown } = lineOfConstraint(one, judgement);
    return `${name}: ${shown.join()}`;
  });
  return [...lines.sort(), judgement.outcome];
}

function byName(lines: readonly Line[]): Map<string, Line[]> {
  const named = new Map<string, Line[]>();
  for (const line of lines) named.set(line.name, [...(named.get(line.name) ?? []), line]);
  return named;
}

function compared(name: string, expected: readonly Line[] = [], given: readonly Line[] = []) {
  if (expected.length !== given.length) {
    return [`${name}: ${expected.length} by the oracle, ${given.length} by the judge`];
  }
  return expected.flatMap(({ shown }, index) => {
    const [is = ''] = given[index]?.shown ?? [];
    return shown.includes(is) ? [] : [`${name}: ${shown.join(' or ')} by the oracle, ${is}`];
  });
}

function lineOfFinding({ form, id, hand, severity, verdicts }: Finding): Line {
  const shown = verdicts.map(({ state, computed }) => `${severity} ${state} (${computed})`);
  return { name: nameOfLine(form, id.split('+'), hand), shown };
}

function lineOfConstraint(constraint: Constraint, judgement: Judgement): Line {
  const { form, hand, severity, state, computed } = constraint;
  const isChoice = form === 'choice';
  const ids = isChoice ? applyingChecks(constraint.group, judgement).map(nameOf) : [constraint.id];
  return { name: nameOfLine(form, ids, hand), shown: [`${severity} ${state} (${computed})`] };
}

/** Of the checks of a choice none comes first. */
function nameOfLine(form: string, ids: readonly string[], hand: string | null): string {
  return [form, [...ids].sort().join('+'), hand].join(' ');
}

/** One that says no more than its only check, which may not be worse than that check is alone. */
function isOfOneCheck(constraint: Constraint, judgement: Judgement): boolean {
  if (constraint.form !== 'choice' || constraint.state === 'open') return false;
  return constraint.state !== 'fails' && applyingChecks(constraint.group, judgement).length === 1;
}

function applyingChecks(group: number, { bench: { plan, results } }: Judgement): PlannedCheck[] {
  const members = plan.groups[group] ?? [];
  const applying = members.filter((index) => !('empty' in (results[index] ?? { empty: [] })));
  return applying.flatMap((index) => plan.checks[index] ?? []);
}
