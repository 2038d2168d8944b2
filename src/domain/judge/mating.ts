/**
 * What meets in one mating of a configuration, for one hand: the two ends, the adapters between
 * them, and for each joint either two faces to check or an outcome that needs no check.
 *
 *   left \ right   needed face   optional face   not recorded   absent   empty
 *   needed face    checks        checks          open           fails    fails
 *   optional face  checks        checks          open           holds    holds
 *   not recorded   open          open            open           open     holds at an optional
 *                                                                        position, else open
 *   absent         fails         holds           open           holds    holds
 */

import type { Face, Mating, Occupant, Part, Position } from '../catalogue/catalogue.js';
import type { Setting } from '../check/evaluator.js';
import { type FactAddress, type Hand, NOWHERE } from '../check/reading.js';
import { judgeGroup } from '../check/result.js';
import { OUTCOMES, type Outcome } from '../check/state.js';
import {
  type Adapters,
  type Arrangement,
  adaptersIn,
  type Configuration,
  donorArticleAt,
  partAt,
  pieceOf,
  type Seat,
  seatAt,
} from './configuration.js';
import type { End } from './constraint.js';
import { type FaceOf, type Joint, type Misfit, pairFaces } from './meeting.js';

/** What stands at one end of a joint. */
type EndState =
  | { readonly is: 'face'; readonly faceOf: FaceOf }
  | { readonly is: 'unrecorded'; readonly address: FactAddress }
  | { readonly is: 'absent' }
  | { readonly is: 'empty'; readonly isOptional: boolean };

interface Station {
  readonly end: End;
  readonly state: EndState;
}

export type JointPlan = { readonly ends: readonly [End, End] } & Settled;

type Settled =
  | { readonly is: 'checks'; readonly joint: Joint }
  | {
      readonly is: 'settled';
      readonly outcome: Outcome;
      readonly code: string;
      readonly missing: readonly FactAddress[];
    };

export interface MatingPlan {
  readonly mating: Mating;
  readonly hand: Hand | null;
  readonly ends: readonly [End, End];
  readonly adapters: Adapters | null;
  readonly joints: readonly JointPlan[];
}

/** Lays out one mating; null where there is nothing to judge: nothing is there, or one piece. */
export function planMating(
  configuration: Configuration,
  arrangement: Arrangement,
  mating: Mating,
  hand: Hand | null,
  setting: Setting,
): MatingPlan | null {
  const [left, right] = mating.ends.map((end) =>
    stationAt(configuration, arrangement, end.position, end.interface, hand),
  );
  if (left === undefined || right === undefined) throw new Error('a mating has two ends');
  const adapters = adaptersIn(arrangement, mating.id);
  // An adapter is something there, and needs what is at its ends.
  if (left.state.is === 'empty' && right.state.is === 'empty' && adapters === null) return null;
  if (isOnePiece(configuration, arrangement, mating, hand)) return null;
  const between = adapterTurns(configuration, mating, adapters, hand);
  const joints =
    between.length === 0 ? [jointOf(left, right)] : best(left, between, right, setting);
  return { mating, hand, ends: [left.end, right.end], adapters, joints };
}

/** A part that fills both positions meets nothing between them. */
function isOnePiece(
  configuration: Configuration,
  arrangement: Arrangement,
  mating: Mating,
  hand: Hand | null,
): boolean {
  const [a, b] = mating.ends;
  const part = partAt(configuration, seatAt(arrangement, a.position, hand));
  const other = partAt(configuration, seatAt(arrangement, b.position, hand));
  if (part === null || part.id !== other?.id || part.spans === null) return false;
  return part.spans.includes(a.position) && part.spans.includes(b.position);
}

function stationAt(
  configuration: Configuration,
  arrangement: Arrangement,
  id: string,
  face: string,
  hand: Hand | null,
): Station {
  const position = configuration.layout.positions.get(id);
  const own = position?.isHanded ? hand : null;
  const seat = seatAt(arrangement, id, own);
  const occupant: Occupant = seat?.occupant ?? { is: 'as-found' };
  const end: End = { position: id, interface: face, occupant, adapter: null };
  return { end, state: stateAt(configuration, position, seat, face, own) };
}

function stateAt(
  configuration: Configuration,
  position: Position | undefined,
  seat: Seat | undefined,
  name: string,
  hand: Hand | null,
): EndState {
  const id = position?.id ?? null;
  if (seat?.occupant.is === 'empty') {
    return { is: 'empty', isOptional: position?.isOptional ?? false };
  }
  const part = partAt(configuration, seat);
  const address = { ...NOWHERE, position: id, hand };
  if (part === null) {
    const article = donorArticleAt(configuration, seat)?.id ?? null;
    return { is: 'unrecorded', address: { ...address, part: article } };
  }
  const face = part.faces.get(name);
  const at = { ...address, part: part.id, interface: name };
  if (face === undefined) {
    return declares(configuration, part, name)
      ? { is: 'unrecorded', address: at }
      : { is: 'absent' };
  }
  if (face.isAbsent) return { is: 'absent' };
  const piece = pieceOf(part, id ?? '', hand);
  return { is: 'face', faceOf: { part, face, piece, address: at } };
}

/** Whether a part of these roles has such a face; a role that lists no faces may have any. */
function declares(configuration: Configuration, part: Part, face: string): boolean {
  return part.roles.some((id) => {
    const faces = configuration.catalogue.roles.get(id)?.faces ?? null;
    return faces === null || faces.has(face);
  });
}

/** An adapter, turned one way or the other: the face towards the left, and the one behind it. */
interface Turn {
  readonly enter: Station;
  readonly leave: Station;
}

/** Both ways of turning each adapter, from left to right. */
function adapterTurns(
  configuration: Configuration,
  mating: Mating,
  adapters: Adapters | null,
  hand: Hand | null,
): (readonly Turn[])[] {
  return (adapters?.parts ?? []).map((id, index) => {
    const part = configuration.catalogue.parts.get(id);
    const [first, second] = part?.faces.values() ?? [];
    if (part === undefined || first === undefined || second === undefined) {
      throw new Error(`${id} has not the two faces of an adapter`);
    }
    const side = hand === null ? '' : `:${hand}`;
    const piece = `adapter ${mating.id} ${index}${side}`;
    const station = (face: Face): Station => adapterStation(part, face, piece, mating.id, hand);
    return [
      { enter: station(first), leave: station(second) },
      { enter: station(second), leave: station(first) },
    ];
  });
}

function adapterStation(
  part: Part,
  face: Face,
  piece: string,
  mating: string,
  hand: Hand | null,
): Station {
  const end: End = {
    position: null,
    interface: face.name,
    occupant: { is: 'part', part: part.id },
    adapter: part.id,
  };
  if (face.isAbsent) return { end, state: { is: 'absent' } };
  const address = { ...NOWHERE, mating, hand, part: part.id, interface: face.name };
  return { end, state: { is: 'face', faceOf: { part, face, piece, address } } };
}

function jointOf(a: Station, b: Station): JointPlan {
  return { ends: [a.end, b.end], ...settle(a.state, b.state) };
}

function settled(outcome: Outcome, code: string, missing: readonly FactAddress[] = []): Settled {
  return { is: 'settled', outcome, code, missing };
}

/** The table at the head of this file. */
function settle(a: EndState, b: EndState): Settled {
  if (a.is === 'face' && b.is === 'face') {
    const pair: Joint | Misfit = pairFaces(a.faceOf, b.faceOf);
    return 'code' in pair ? settled('fails', pair.code) : { is: 'checks', joint: pair };
  }
  if (a.is === 'unrecorded' || b.is === 'unrecorded') {
    const other = a.is === 'unrecorded' ? b : a;
    const missing = [a, b].flatMap((end) => (end.is === 'unrecorded' ? [end.address] : []));
    if (other.is === 'empty' && other.isOptional) return settled('holds', 'nothing-needed');
    return settled('open', 'face-not-recorded', missing);
  }
  const face = a.is === 'face' ? a.faceOf.face : b.is === 'face' ? b.faceOf.face : null;
  if (face === null || face.isOptional) return settled('holds', 'nothing-needed');
  const isEmpty = a.is === 'empty' || b.is === 'empty';
  return settled('fails', isEmpty ? 'needed-empty' : 'needed-absent');
}

/** One way of turning a piece, with what can follow it on the right. */
interface Stop {
  readonly enter: Station;
  readonly steps: readonly Step[];
  /** How the rest of the way comes out, at its best. */
  readonly rank: number;
}

interface Step {
  readonly joint: JointPlan;
  readonly to: Stop;
  /** Of the joint and of all behind it. */
  readonly rank: number;
}

/**
 * The way of turning the adapters that comes out best, the first of equals. Each joint is judged by
 * itself, so how the rest comes out depends on the next piece alone: from right to left, four
 * joints for each adapter are enough, where there are 2^n ways of n adapters.
 */
function best(
  left: Station,
  between: readonly (readonly Turn[])[],
  right: Station,
  setting: Setting,
): readonly JointPlan[] {
  const stopBefore = ({ enter, leave }: Turn, following: readonly Stop[]): Stop => {
    const steps = following.map((to) => {
      const joint = jointOf(leave, to.enter);
      return { joint, to, rank: Math.max(rankOf(joint, setting), to.rank) };
    });
    return { enter, steps, rank: Math.min(...steps.map(({ rank }) => rank)) };
  };
  const last: Stop = { enter: right, steps: [], rank: 0 };
  const following = between.reduceRight<readonly Stop[]>(
    (stops, turns) => turns.map((turn) => stopBefore(turn, stops)),
    [last],
  );
  const start = stopBefore({ enter: left, leave: left }, following);
  const joints: JointPlan[] = [];
  let stop = start;
  while (stop !== last) {
    const step = stop.steps.find(({ rank }) => rank <= start.rank);
    if (step === undefined) throw new Error('a way that comes out best goes on to its end');
    joints.push(step.joint);
    stop = step.to;
  }
  return joints;
}

function rankOf(plan: JointPlan, setting: Setting): number {
  return OUTCOMES.indexOf(plan.is === 'settled' ? plan.outcome : outcomeOf(plan.joint, setting));
}

/** All checks as one, since one alternative of a face must serve them all. */
function outcomeOf(joint: Joint, setting: Setting): Outcome {
  const { checks, environment } = joint;
  const members = checks
    .filter(({ severity }) => severity === 'must')
    .map((check) => {
      return { check, environment, applies: (own: Setting) => joint.applies(check, own) };
    });
  return judgeGroup(members, setting).outcome;
}
