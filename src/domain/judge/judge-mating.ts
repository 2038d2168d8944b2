/**
 * What a mating comes to: its joints, what the works have built, and where it stands.
 */

import type { CheckResult } from '../check/result.js';
import { allOf, type Basis, gradeOf, type Outcome, weaker } from '../check/state.js';
import type { Configuration } from './configuration.js';
import type { JointResult, MatingConstraint } from './constraint.js';
import { type BuiltPair, pairKey } from './evidence.js';
import type { Bench } from './judge.js';
import type { MatingPlan } from './mating.js';
import { NO_SCOPE, standingOf, stateOf } from './standing.js';

export function judgeMating(plan: MatingPlan, bench: Bench): MatingConstraint {
  const { configuration } = bench;
  const joints = plan.joints.map((_, index) => jointResult(plan, index, bench));
  const computed = allOf(joints.map(({ outcome }) => outcome));
  const decisive = joints.find(({ outcome }) => outcome === computed);
  const built = builtPairOf(plan, bench);
  const { mating, hand, ends, adapters } = plan;
  const positions = layoutOrder(configuration, [mating.ends[0].position, mating.ends[1].position]);
  const scope = { ...NO_SCOPE, positions, matings: [mating.id] };
  const standing = standingOf(configuration, scope, hand);
  const { ignorePresent } = configuration;
  const weighed = weighBuilt(computed, decisive?.code ?? 'meets', built);
  const state = stateOf(weighed.outcome, standing, { ignorePresent, isAsked: false });
  const ownBasis = joints.reduce<Basis | null>(
    (basis, joint) => weaker(basis, basisOf(joint)),
    null,
  );
  return {
    form: 'mating',
    id: mating.id,
    hand,
    positions,
    matings: [mating.id],
    state,
    computed,
    severity: 'must',
    code: weighed.code,
    basis: weighed.isBuilt ? (built?.basis ?? null) : state === 'open' ? null : ownBasis,
    checks: joints.flatMap(({ checks }) => checks),
    missing: plan.joints.flatMap((joint) => (joint.is === 'settled' ? joint.missing : [])),
    ends,
    adapters: adapters?.parts ?? [],
    joints,
    builtPair: built,
    statement: null,
  };
}

function layoutOrder(configuration: Configuration, ids: readonly string[]): string[] {
  const { positions } = configuration.layout;
  return [...ids].sort((a, b) => (positions.get(a)?.index ?? 0) - (positions.get(b)?.index ?? 0));
}

function basisOf({ checks }: JointResult): Basis | null {
  return checks
    .filter(({ check }) => check.severity === 'must')
    .reduce<Basis | null>((basis, result) => weaker(basis, result.basis), null);
}

function jointResult(plan: MatingPlan, index: number, bench: Bench): JointResult {
  const joint = plan.joints[index];
  if (joint === undefined) throw new Error('a plan has its joints');
  if (joint.is === 'settled') {
    const { ends, outcome, code } = joint;
    return { ends, kind: null, outcome, code, checks: [], notChecked: [] };
  }
  const { kind, silent } = joint.joint;
  const checks: CheckResult[] = [];
  for (const [at, planned] of bench.plan.checks.entries()) {
    if (planned.joint?.plan !== plan || planned.joint.index !== index) continue;
    const result = bench.results[at];
    if (result !== undefined && !('empty' in result)) checks.push(result);
  }
  const musts = checks.filter(({ check }) => check.severity === 'must');
  const outcome = allOf(musts.map((result) => result.outcome));
  const decisive = musts.find((result) => result.outcome === outcome);
  const code = outcome === 'holds' ? 'meets' : (decisive?.code ?? 'meets');
  const notChecked = [...kind.notChecked, ...silent];
  return { ends: joint.ends, kind, outcome, code, checks, notChecked };
}

/** What meets on some vehicle as the works built it; only articles can have met. */
function builtPairOf({ ends, adapters }: MatingPlan, bench: Bench): BuiltPair | null {
  const [a, b] = ends;
  if (a.occupant.is !== 'part' || b.occupant.is !== 'part') return null;
  const left = { part: a.occupant.part, interface: a.interface };
  const right = { part: b.occupant.part, interface: b.interface };
  return bench.pairs.get(pairKey(left, right, adapters?.parts ?? [])) ?? null;
}

export interface Weighed {
  readonly outcome: Outcome;
  readonly code: string;
  readonly isBuilt: boolean;
}

/** As-built evidence settles what is open and contradicts what fails; it overrules nothing. */
export function weighBuilt(computed: Outcome, code: string, built: BuiltPair | null): Weighed {
  if (built === null || computed === 'holds') return { outcome: computed, code, isBuilt: false };
  if (computed === 'fails') {
    return { outcome: 'open', code: 'contradicts-as-built', isBuilt: false };
  }
  if (gradeOf(built.basis) !== 'decides') return { outcome: 'open', code, isBuilt: false };
  return { outcome: 'holds', code: 'as-built', isBuilt: true };
}
