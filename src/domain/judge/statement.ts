/**
 * Statements: what a maker or a shop asserts of a part on a vehicle. A statement settles what is
 * open about that part at its position, as long as everything else in it is as the works built
 * it or named in the statement's companions. It overrules no check: where the two disagree, the
 * answer is open, until a measured or built record has decided the check.
 *
 * That a part fits is not said of one that a work has made of it; that it does not may still be
 * true of that one, so it is open.
 */

import type { Statement } from '../catalogue/catalogue.js';
import { madeFrom } from '../catalogue/trade.js';
import type { Hand } from '../check/reading.js';
import { gradeOf, isFirstHand, outcomeOf } from '../check/state.js';
import { type Configuration, handsOf, isSeatChanged, type Seat, seatAt } from './configuration.js';
import type {
  CheckConstraint,
  ChoiceConstraint,
  Constraint,
  MatingConstraint,
  StatementConstraint,
} from './constraint.js';
import { NO_SCOPE, standingOf } from './standing.js';

/** The constraints as the statements leave them, and one for each statement that denies. */
export function applyStatements(
  configuration: Configuration,
  constraints: readonly Constraint[],
): Constraint[] {
  let settled = [...constraints];
  const denials: StatementConstraint[] = [];
  for (const statement of configuration.catalogue.statements) {
    if (!speaksHere(statement, configuration)) continue;
    if (statement.verdict === 'fits') {
      settled = settled.map((constraint) => settle(constraint, statement, configuration));
    } else {
      const denial = denialOf(statement, settled, configuration);
      if (denial !== null) denials.push(denial);
    }
  }
  return [...settled, ...denials];
}

/**
 * On a vehicle it names, with its part at its position and its companions beside it. That a part
 * does not fit is said only of one that is to be fitted, not of one that is there already.
 */
function speaksHere(
  statement: Statement,
  configuration: Configuration,
  means = meansOf(statement),
): boolean {
  const { vehicle, layout } = configuration;
  if (!statement.vehicles.includes(vehicle.id)) return false;
  const position = layout.positions.get(statement.position);
  if (position === undefined) return false;
  const isThere = handsOf(position).some(
    (hand) =>
      (statement.verdict === 'fits' || isSeatChanged(configuration, position.id, hand)) &&
      means(seatAt(configuration.judged, position.id, hand), statement.part),
  );
  if (!isThere) return false;
  return [...statement.with].every(([id, part]) => {
    const hands = layout.positions.get(id);
    if (hands === undefined) return false;
    return handsOf(hands).every((hand) => means(seatAt(configuration.judged, id, hand), part));
  });
}

type Means = (seat: Seat | undefined, part: string) => boolean;

/** The part itself; where a statement denies, one that has been made from it too. */
function meansOf({ verdict }: Statement): Means {
  return verdict === 'fits' ? holdsPart : holdsMadeFrom;
}

function holdsMadeFrom(seat: Seat | undefined, part: string): boolean {
  return seat?.occupant.is === 'part' && madeFrom(seat.occupant.part).includes(part);
}

function holdsPart(seat: Seat | undefined, part: string): boolean {
  return seat?.occupant.is === 'part' && seat.occupant.part === part;
}

type Statable = MatingConstraint | CheckConstraint | ChoiceConstraint;

function isStatable(constraint: Constraint): constraint is Statable {
  const { form } = constraint;
  return form === 'mating' || form === 'check' || form === 'choice';
}

/** Whether a constraint is about the part, with all else works-fitted or a companion. */
function concerns(
  constraint: Statable,
  statement: Statement,
  configuration: Configuration,
): boolean {
  if (!constraint.positions.includes(statement.position)) return false;
  const means = meansOf(statement);
  const { adapters } = configuration.judged;
  const isAsBuilt = (mating: string) => (adapters.get(mating)?.origin ?? 'works') === 'works';
  if (!constraint.matings.every(isAsBuilt)) return false;
  return constraint.positions.every((id) =>
    handsIn(id, constraint.hand, configuration).every((hand) => {
      const seat = seatAt(configuration.judged, id, hand);
      if (id === statement.position) return means(seat, statement.part);
      if (means(seat, statement.with.get(id) ?? '')) return true;
      return seat?.origin === 'works' && !isSeatChanged(configuration, id, hand);
    }),
  );
}

function handsIn(
  id: string,
  hand: Hand | null,
  { layout }: Configuration,
): readonly (Hand | null)[] {
  const position = layout.positions.get(id);
  if (position === undefined || !position.isHanded) return [null];
  return hand === null ? ['left', 'right'] : [hand];
}

function settle(
  constraint: Constraint,
  statement: Statement,
  configuration: Configuration,
): Constraint {
  if (!isStatable(constraint) || !concerns(constraint, statement, configuration)) return constraint;
  const grade = gradeOf(statement.evidence.basis);
  if (constraint.state === 'open' && constraint.computed === 'open' && grade === 'decides') {
    const { basis } = statement.evidence;
    return { ...constraint, state: 'holds', code: 'stated', basis, statement };
  }
  if (constraint.state !== 'fails' || grade === 'opens-only') return constraint;
  if (isFirstHand(failingBasis(constraint))) return { ...constraint, statement };
  // As with all that the question says is there already: what is open in it is as found.
  const { positions, matings, hand } = constraint;
  const standing = standingOf(configuration, { ...NO_SCOPE, positions, matings }, hand);
  const state = standing === 'said' ? 'given' : 'open';
  return { ...constraint, state, code: 'contradicts-statement', basis: null, statement };
}

/** The strongest record behind a failure: one measured failing check is enough. */
function failingBasis(constraint: Statable) {
  const failing = constraint.checks.filter(
    ({ outcome, check }) => outcome === 'fails' && check.severity === 'must',
  );
  const firstHand = failing.find(({ basis }) => isFirstHand(basis));
  return firstHand?.basis ?? failing[0]?.basis ?? null;
}

/**
 * A statement that the part does not fit: it fails what the records leave open or fail anyway,
 * contradicts records that hold, and yields to records that hold by measurement or building.
 */
function denialOf(
  statement: Statement,
  constraints: readonly Constraint[],
  configuration: Configuration,
): StatementConstraint | null {
  const about = constraints
    .filter(isStatable)
    .filter(({ severity }) => severity === 'must')
    .filter((constraint) => concerns(constraint, statement, configuration));
  const { basis } = statement.evidence;
  const isProven = about.length > 0 && about.every(({ state }) => outcomeOf(state) === 'holds');
  if (isProven && about.every((one) => one.state === 'given' || isFirstHand(one.basis)))
    return null;
  const code = denialCode(statement, isProven, configuration);
  const state = code === 'stated-not-to-fit' ? 'fails' : 'open';
  return {
    form: 'statement',
    id: statement.id,
    hand: null,
    positions: [statement.position],
    state,
    computed: state,
    severity: 'must',
    code,
    basis,
    checks: [],
    missing: [],
    statement,
  };
}

function denialCode(
  statement: Statement,
  isProven: boolean,
  configuration: Configuration,
): StatementConstraint['code'] {
  if (!speaksHere(statement, configuration, holdsPart)) return 'stated-before-work';
  if (isProven) return 'contradicts-statement';
  const isWeak = gradeOf(statement.evidence.basis) === 'opens-only';
  return isWeak ? 'evidence-too-weak' : 'stated-not-to-fit';
}
