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
import { madeFrom } from './article.js';
import type { Names } from './condition.js';
import { about, type Finding, type Verdict } from './finding.js';
import { endsOf } from './mating.js';
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

/** Whether such a part stands there, by the id of the position and the hand. */
type Holds = (id: string, hand: Hand | null, part: string | undefined) => boolean;

/** A denial means what has been made from the part too. */
function holdsIn(scene: Scene, { verdict }: Pick<StatementRecord, 'verdict'>): Holds {
  return (id, hand, part) => {
    const { holds } = scene.seat('judged', id, hand);
    if (typeof holds !== 'object' || part === undefined) return false;
    return verdict === 'fits' ? holds.id === part : madeFrom(holds.id).includes(part);
  };
}

function speaks(
  statement: StatementRecord,
  scene: Scene,
  holdsPart: Holds = holdsIn(scene, statement),
): boolean {
  const { vehicles, position: id, part, with: companions = {} } = statement;
  if (!vehicles.includes(scene.vehicle.id)) return false;
  // That a part does not fit is said of one to be fitted, not of one that is there already.
  const isThere = handsOf(scene.position(id)).some((hand) => {
    const isMeant = statement.verdict === 'fits' || scene.isChangedAt(id, hand);
    return isMeant && holdsPart(id, hand, part);
  });
  return (
    isThere &&
    Object.entries(companions).every(([other, beside]) =>
      handsOf(scene.position(other)).every((hand) => holdsPart(other, hand, beside)),
    )
  );
}

/** What it speaks of: what sits in a mating speaks of its two ends. */
function withEnds({ positions, matings, opened }: Names, scene: Scene): Names {
  const ends = matings.flatMap((id) => endsOf(scene.mating(id)).map(([position]) => position));
  return { positions: [...new Set([...positions, ...opened, ...ends])], matings, opened: [] };
}

function concerns(finding: Finding, statement: StatementRecord, scene: Scene): boolean {
  const { form, hand } = finding;
  const names = withEnds(finding.names, scene);
  if (form !== 'mating' && form !== 'check' && form !== 'choice') return false;
  if (!names.positions.includes(statement.position)) return false;
  const holdsPart = holdsIn(scene, statement);
  const areSeatsSo = names.positions.every((id) => {
    const hands = hand === null ? handsOf(scene.position(id)) : [hand];
    return hands.every((one) => {
      if (id === statement.position) return holdsPart(id, one, statement.part);
      if (holdsPart(id, one, statement.with?.[id])) return true;
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
    const names = withEnds(finding.names, scene);
    const isSaid = standingOf(scene, names, finding.hand) === 'said';
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
  // Of what a work has made of the part nobody said that it does not fit.
  const isOfPart = speaks(statement, scene, holdsIn(scene, { verdict: 'fits' }));
  const state: Outcome = isProven || !isOfPart || !decidesAgainst(basis) ? 'open' : 'fails';
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
