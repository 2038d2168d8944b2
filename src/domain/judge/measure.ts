/**
 * What to measure, read, confirm or ask so that what is open gets decided, and what to measure
 * before something made to suit can be ordered.
 */

import { isDonorArticle } from '../catalogue/donor-article.js';
import type { Setting } from '../check/evaluator.js';
import { type NarrowingFact, narrow, narrowToOrder, type Purpose } from '../check/narrowing.js';
import { type FactAddress, NOWHERE, type Reading } from '../check/reading.js';
import { isUnrecorded } from '../check/result.js';
import { isFirstHand, type Outcome } from '../check/state.js';
import type { Rational } from '../quantity/rational.js';
import { checksIn, valueChecks } from './condition.js';
import type { Constraint } from './constraint.js';
import type { Judgement } from './judge.js';
import type { PlannedCheck } from './plan.js';
import { factsTelling, nameOfConstraint } from './supposed-constraints.js';
import { factBehind } from './told-facts.js';

export interface Measure {
  readonly address: FactAddress;
  /** What is recorded now; null where a whole face or article is not recorded. */
  readonly reading: Reading | null;
  readonly purpose: Purpose;
  /** Half-width in the base unit at which the best estimate decides; null if none is certain. */
  readonly needed: Rational | null;
  /** The constraints (ids) that it touches. */
  readonly touches: readonly string[];
  /** Those among them that it decides alone. */
  readonly settles: readonly string[];
}

interface Asked extends Omit<Measure, 'touches' | 'settles'> {
  readonly constraint: string;
  readonly isAlone: boolean;
}

/** The facts for all open constraints and all choices that still depend on something. */
export function measureFor(judgement: Judgement): Measure[] {
  const { suppositions } = judgement;
  const musts = judgement.constraints.filter(({ severity }) => severity === 'must');
  const askedOf = suppositions.length === 0 ? askedFor : askedOverAll;
  return merged(musts.flatMap((constraint) => askedOf(constraint, judgement)));
}

/** What a constraint is judged with. */
type Judged = Pick<Judgement, 'bench' | 'configuration'>;

function askedFor(constraint: Constraint, judged: Judged): Asked[] {
  const own = constraint.state === 'open' ? openFacts(constraint, judged) : [];
  const order = constraint.state === 'holds' ? orderFacts(constraint, judged) : [];
  return [...own, ...order].map((one) => byFact(one, judged));
}

/**
 * Where facts tell what the works fitted: those that it hangs on come first. What is asked for
 * each of their values is asked whatever they say; what only some of them ask for can wait.
 */
function askedOverAll(constraint: Constraint, { suppositions }: Judgement): Asked[] {
  const name = nameOfConstraint(constraint);
  const ways = suppositions.map((way) => {
    const own = way.constraints.find((one) => nameOfConstraint(one) === name);
    const asked = own === undefined ? [] : askedFor(own, way);
    return { facts: way.facts, state: own?.state ?? 'given', asked };
  });
  const wordsOf = ({ address }: Asked) => JSON.stringify(address);
  if (constraint.state !== 'open') return ways.flatMap(({ asked }) => asked);
  const facts = factsTelling(ways, ({ state, asked }) => [state, ...asked.map(wordsOf)].join());
  const [first, ...others] = ways;
  const common = (first?.asked ?? []).filter((one) =>
    others.every(({ asked }) => asked.some((other) => wordsOf(other) === wordsOf(one))),
  );
  const isSettled = ways.every(({ state }) => state !== 'open');
  return [
    ...facts.map((fact) => ({
      address: { ...NOWHERE, fact },
      reading: null,
      purpose: 'to-decide' as const,
      needed: null,
      constraint: constraint.id,
      isAlone: facts.length === 1 && isSettled,
    })),
    ...(isSettled
      ? []
      : common.map((one) => ({ ...one, isAlone: facts.length === 0 && one.isAlone }))),
  ];
}

/** Of a works option nobody has to look at the part: the fact tells which it is. */
function byFact(asked: Asked, { configuration }: Judged): Asked {
  const address = factBehind(asked.address, configuration);
  if (address === null) return asked;
  return { ...asked, address, reading: null, purpose: 'to-decide', needed: null };
}

function openFacts(constraint: Constraint, judgement: Judged): Asked[] {
  const missing = constraint.missing.map((address) => ({
    address,
    reading: null,
    purpose: 'to-decide' as const,
    needed: null,
  }));
  const facts = groupsOf(constraint, judgement).flatMap((members) =>
    factsBehind(members, judgement.bench.setting).map(({ reading, purpose, needed }) => ({
      address: reading.address,
      reading,
      purpose,
      needed,
    })),
  );
  const all = distinct([
    ...[...missing, ...facts, ...ruleFacts(constraint, judgement)].map(asFact),
    ...doubted(constraint),
  ]);
  const asked = all.some(isIdentity) ? all.filter(isGap) : all;
  const isAlone = asked.length === 1;
  return asked.map((fact) => ({ ...fact, constraint: constraint.id, isAlone }));
}

/** That nobody knows what stands somewhere. */
function isIdentity({ address, reading }: Fact): boolean {
  return reading === null && isUnidentified(address);
}

/** Nobody knows which part it is that stands there, or that a lot has of a place. */
export function isUnidentified({ position, part }: FactAddress): boolean {
  return position !== null && (part === null || isDonorArticle(part));
}

/** What is recorded need not be known more finely before it is known what stands beside it. */
function isGap({ reading, purpose }: Fact): boolean {
  return reading === null || purpose === 'to-confirm' || isUnrecorded(reading);
}

/**
 * The facts behind checks that are open. Where it is not known whether one applies, what its
 * condition reads comes first, and what it compares only as far as it would be open if it did.
 */
function factsBehind(members: readonly PlannedCheck[], setting: Setting): NarrowingFact[] {
  const unsure = members.filter((member) => member.applies(setting) === 'open');
  const supposed = members.map((member) =>
    unsure.includes(member) ? { ...member, applies: APPLIES } : member,
  );
  const conditions = unsure.flatMap(({ check, environment }) =>
    valueChecks(check.when === null ? [] : [check.when]).flatMap((one) =>
      narrow([{ check: one, environment }], setting),
    ),
  );
  return [...conditions, ...narrow(supposed, setting)];
}

const APPLIES = (): Outcome => 'holds';

type Fact = Omit<Measure, 'touches' | 'settles'>;

/** A value of what nobody has identified: the article is the fact, and tells all its values. */
function asFact(fact: Fact): Fact {
  if (!isUnidentified(fact.address)) return fact;
  const { position, hand, part } = fact.address;
  const address = { ...NOWHERE, position, hand, part };
  return { address, reading: null, purpose: 'to-decide', needed: null };
}

function distinct(facts: readonly Fact[]): Fact[] {
  const seen = new Set<string>();
  return facts.filter(({ address }) => {
    const key = JSON.stringify(address);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** The values that a rule's conditions leave open. */
function ruleFacts(constraint: Constraint, { configuration, bench }: Judged): Fact[] {
  if (constraint.form !== 'rule') return [];
  return checksIn(constraint.conditions, configuration, bench.setting).flatMap((member) =>
    narrow([member], bench.setting).map(({ reading, purpose, needed }) => {
      return { address: reading.address, reading, purpose, needed };
    }),
  );
}

const CONTRADICTIONS = ['contradicts-statement', 'contradicts-as-built', 'fails-as-built-too'];

/** Where records contradict one another, the values that fail and that nobody has measured. */
function doubted({ code, checks }: Constraint): Fact[] {
  if (!CONTRADICTIONS.includes(code)) return [];
  const failing = checks.filter(
    ({ outcome, check }) => outcome === 'fails' && check.severity === 'must',
  );
  return failing.flatMap(({ readings }) =>
    readings.flatMap((reading) => {
      if (!('address' in reading) || reading.basis === null || isFirstHand(reading.basis))
        return [];
      const { address } = reading;
      return [{ address, reading, purpose: 'to-confirm' as const, needed: null }];
    }),
  );
}

function orderFacts(constraint: Constraint, judgement: Judged): Asked[] {
  const facts = groupsOf(constraint, judgement).flatMap((members) =>
    narrowToOrder(members, judgement.bench.setting),
  );
  const isAlone = facts.length === 1;
  return facts.map(({ reading, purpose, needed }) => ({
    address: reading.address,
    reading,
    purpose,
    needed,
    constraint: constraint.id,
    isAlone,
  }));
}

/** The planned checks behind a constraint: each alone, or all of a shared choice together. */
function groupsOf(constraint: Constraint, { bench }: Judged): PlannedCheck[][] {
  const { plan, results } = bench;
  if (constraint.form === 'choice') {
    const members = plan.groups[constraint.group] ?? [];
    return [members.flatMap((index) => plan.checks[index] ?? [])];
  }
  if (constraint.form !== 'mating' && constraint.form !== 'check') return [];
  return plan.checks.flatMap((planned, index) => {
    const isOwn =
      constraint.form === 'mating'
        ? planned.joint?.plan.mating.id === constraint.id && planned.hand === constraint.hand
        : planned.joint === null &&
          planned.check.id === constraint.id &&
          planned.hand === constraint.hand;
    const result = results[index];
    if (!isOwn || result === undefined || 'empty' in result) return [];
    if (planned.check.severity !== 'must') return [];
    const isWanted = constraint.state === 'open' ? result.outcome === 'open' : true;
    return isWanted ? [[planned]] : [];
  });
}

function merged(asked: readonly Asked[]): Measure[] {
  const byAddress = new Map<string, Measure>();
  for (const { constraint, isAlone, ...fact } of asked) {
    const key = JSON.stringify(fact.address);
    const known = byAddress.get(key);
    const touches = [...new Set([...(known?.touches ?? []), constraint])];
    const settles = isAlone ? [...new Set([...(known?.settles ?? []), constraint])] : [];
    byAddress.set(key, {
      ...(known ?? fact),
      needed: finer(known?.needed ?? null, fact.needed),
      touches,
      settles: isAlone ? settles : (known?.settles ?? []),
    });
  }
  return [...byAddress.values()];
}

/** Of two tolerances the finer; one that is not certain says nothing. */
function finer(a: Rational | null, b: Rational | null): Rational | null {
  if (a === null) return b;
  if (b === null) return a;
  return a.compare(b) <= 0 ? a : b;
}
