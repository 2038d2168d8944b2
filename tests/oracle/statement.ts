/**
 * Statements: what a maker or a shop asserts of a part on a vehicle. One speaks where its part is
 * at its position and its companions stand beside it. It is about the matings and checks
 * of that part, and the choices in them, whose other articles are as the works fitted them or are
 * its companions.
 *
 * It settles what is open and overrules nothing: where it contradicts the records the answer is
 * open, until somebody has measured or built what the records say.
 */

import type { StatementRecord } from '../../src/domain/catalogue/document.js';
import { about, type Finding, type Verdict } from './finding.js';
import { canDecide, isFirstHand, type Outcome } from './outcome.js';
import { basisOf, type Hand, handsOf, type Scene } from './scene.js';
import { standingOf } from './standing.js';

export function applyStatements(scene: Scene, findings: readonly Finding[]): Finding[] {
  let settled = [...findings];
  const denials: Finding[] = [];
  for (const statement of scene.document.statements ?? []) {
    if (!speaks(statement, scene)) continue;
    if (statement.verdict === 'fits') {
      settled = settled.map((finding) =>
        concerns(finding, statement, scene) ? affirmed(finding, statement, scene) : finding,
      );
    } else denials.push(...denial(statement, settled, scene));
  }
  return [...settled, ...denials];
}

function holdsPart(scene: Scene, id: string, hand: Hand | null, part: string | undefined): boolean {
  const { holds } = scene.seat('judged', id, hand);
  return typeof holds === 'object' && holds.id === part;
}

function speaks(statement: StatementRecord, scene: Scene): boolean {
  const { vehicles, position: id, part, with: companions = {} } = statement;
  if (!vehicles.includes(scene.vehicle.id)) return false;
  // That a part does not fit is said of one to be fitted, not of one that is there already.
  const isThere = handsOf(scene.position(id)).some((hand) => {
    const isMeant = statement.verdict === 'fits' || scene.isChangedAt(id, hand);
    return isMeant && holdsPart(scene, id, hand, part);
  });
  return (
    isThere &&
    Object.entries(companions).every(([other, beside]) =>
      handsOf(scene.position(other)).every((hand) => holdsPart(scene, other, hand, beside)),
    )
  );
}

function concerns(finding: Finding, statement: StatementRecord, scene: Scene): boolean {
  const { form, names, hand } = finding;
  if (form !== 'mating' && form !== 'check' && form !== 'choice') return false;
  if (!names.positions.includes(statement.position)) return false;
  const areSeatsSo = names.positions.every((id) => {
    const hands = hand === null ? handsOf(scene.position(id)) : [hand];
    return hands.every((one) => {
      if (id === statement.position) return holdsPart(scene, id, one, statement.part);
      if (holdsPart(scene, id, one, statement.with?.[id])) return true;
      return scene.seat('judged', id, one).origin === 'works';
    });
  });
  const areAdaptersSo = names.matings.every(
    (id) => scene.adapters('judged', id).origin === 'works',
  );
  return areSeatsSo && areAdaptersSo;
}

function affirmed(finding: Finding, statement: StatementRecord, scene: Scene): Finding {
  const basis = basisOf(scene.document, statement);
  const verdicts = finding.verdicts.map((verdict): Verdict => {
    const { state, computed, failsFirstHand } = verdict;
    if (state === 'open' && computed === 'open' && canDecide(basis)) {
      return { ...verdict, state: 'holds', basis };
    }
    const isContradicted = state === 'fails' && basis !== 'reported' && !failsFirstHand;
    if (!isContradicted) return verdict;
    // What is open in what is only said of the vehicle is as found on it.
    const isSaid = standingOf(scene, finding.names, finding.hand) === 'said';
    return { ...verdict, state: isSaid ? 'given' : 'open', basis: null };
  });
  return { ...finding, verdicts };
}

/** What says that the part does not fit, unless it is known at first hand that it does. */
function denial(statement: StatementRecord, findings: readonly Finding[], scene: Scene): Finding[] {
  const basis = basisOf(scene.document, statement);
  const verdicts = findings
    .filter(({ severity }) => severity === 'must')
    .filter((finding) => concerns(finding, statement, scene))
    .flatMap((finding) => finding.verdicts.slice(0, 1));
  const holding = verdicts.filter(({ state }) => state === 'holds' || state === 'given');
  const isProven = verdicts.length > 0 && holding.length === verdicts.length;
  const isKnown = holding.every((one) => one.state === 'given' || isFirstHand(one.basis));
  if (isProven && isKnown) return [];
  const state: Outcome = isProven || !decidesAgainst(basis) ? 'open' : 'fails';
  return [
    {
      form: 'statement',
      id: statement.id,
      hand: null,
      severity: 'must',
      names: about([statement.position]),
      verdicts: [{ computed: state, state, basis, failsFirstHand: false }],
    },
  ];
}

function decidesAgainst(basis: ReturnType<typeof basisOf>): boolean {
  return basis !== 'reported';
}
