/**
 * A vehicle of which nobody knows what some facts say: one scene for each way in which it may be,
 * and what is found over all of them. What it comes to in each it comes to; else it is open.
 */

import type { Finding, Verdict } from './finding.js';
import { Memory } from './memory.js';
import { OUTCOMES, type Outcome, type State } from './outcome.js';
import { byId, handsOf, Scene, type Supposed } from './scene.js';

/** None where all is told. */
export function scenesOf(scene: Scene): Scene[] {
  const facts = new Set(
    scene.layout.positions.flatMap((position) =>
      handsOf(position).flatMap((hand) => scene.seat('present', position.id, hand).toldBy ?? []),
    ),
  );
  if (facts.size === 0) return [];
  let ways: Supposed[] = [{}];
  for (const fact of facts) {
    const values = byId(scene.document.facts, fact).values.map(({ id }) => id);
    ways = ways.flatMap((way) => values.map((value) => ({ ...way, [fact]: value })));
  }
  return ways.map((supposed) => sceneWhere(supposed, scene));
}

/** Where the very part is there already that is put in, a new piece of it is put in. */
function sceneWhere(supposed: Supposed, scene: Scene): Scene {
  const { document, question, memory, layout } = scene;
  const own = memory.once(`memory ${JSON.stringify(supposed)}`, () => new Memory());
  const told = new Scene(document, question, own, supposed);
  const anew = layout.positions.filter((position) =>
    handsOf(position).some((hand) => {
      const wasUntold = scene.seat('present', position.id, hand).toldBy !== null;
      const isPutIn = wasUntold && scene.isChangedAt(position.id, hand);
      return isPutIn && !told.isChangedAt(position.id, hand);
    }),
  );
  const renewed = [...(question.renewed ?? []), ...anew.map(({ id }) => id)];
  return new Scene(document, { ...question, renewed }, own, supposed);
}

/** Whether it is known which of several stands there, or there is but one; before any change. */
export function isToldAt(id: string, scene: Scene): boolean {
  return handsOf(scene.position(id)).every(
    (hand) => scene.seat('present', id, hand).toldBy === null,
  );
}

/** Of all that the vehicle may be: what it comes to for each; else it is open. */
export function outcomeOver(scene: Scene, ask: (one: Scene) => Outcome): Outcome {
  const scenes = scenesOf(scene);
  return scenes.length === 0 ? ask(scene) : alike(scenes.map(ask));
}

export function findingsOver(ways: readonly (readonly Finding[])[]): Finding[] {
  const named = ways.map(byName);
  const names = new Set(named.flatMap((way) => [...way.keys()]));
  return [...names].flatMap((name) => {
    const found = named.map((way) => way.get(name));
    const first = found.find((one) => one !== undefined);
    return first === undefined ? [] : [{ ...first, verdicts: verdictsOver(found) }];
  });
}

/** By what a finding is of; where one thing is wrong twice, each of them. */
function byName(findings: readonly Finding[]): Map<string, Finding> {
  const named = new Map<string, Finding>();
  for (const one of findings) {
    const name = `${one.form} ${one.id} ${one.hand}`;
    let times = 0;
    while (named.has(`${name} ${times}`)) times += 1;
    named.set(`${name} ${times}`, one);
  }
  return named;
}

/** What applies to only some ways is met by the others. */
const MET: Verdict = { computed: 'holds', state: 'given', basis: null, failsFirstHand: false };

/** Every way of showing one beside every way of showing the others. */
function verdictsOver(found: readonly (Finding | undefined)[]): Verdict[] {
  const all = found
    .map((one) => one?.verdicts ?? [MET])
    .reduce<Verdict[][]>(
      (rows, verdicts) => rows.flatMap((row) => verdicts.map((verdict) => [...row, verdict])),
      [[]],
    );
  return all.map((row) => ({
    ...MET,
    computed: alike(row.map(({ computed }) => computed)),
    state: stateOver(row.map(({ state }) => state)),
  }));
}

function stateOver(states: readonly State[]): State {
  const outcome = alike(states.map((state) => (state === 'given' ? 'holds' : state)));
  if (outcome !== 'holds') return outcome;
  return states.includes('holds') ? 'holds' : 'given';
}

function alike(outcomes: readonly Outcome[]): Outcome {
  return OUTCOMES.find((outcome) => outcomes.every((one) => one === outcome)) ?? 'open';
}
