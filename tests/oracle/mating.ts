/**
 * What meets in the matings of a scene: which faces, with which adapters between them, and which
 * checks these have to pass.
 *
 *                   needed face   optional face   not recorded   absent   empty
 *   needed face     checks        checks          open           fails    fails
 *   optional face   checks        checks          open           holds    holds
 *   not recorded    open          open            open           open     holds where the position
 *                                                                         is optional, else open
 *   absent          fails         holds           open           holds    holds
 */

import type {
  CatalogueDocument,
  InterfaceRecord,
  KindRecord,
  MatingRecord,
} from '../../src/domain/catalogue/document.js';
import { checksIn, judgeCondition, termsOf } from './condition.js';
import { ALWAYS, type Condition, decide, type Member, outcomesOf, withChoices } from './decide.js';
import { type FaceOfPiece, faceOf, faceValue } from './face.js';
import { OUTCOMES, type Outcome, type Trust, trustAll, weigh, worst } from './outcome.js';
import { groupsOf, judgeAlone, type PlannedCheck } from './planned.js';
import { byId, type Hand, handsOf, type Scene } from './scene.js';
import { type Finder, namesIn } from './term.js';
import { type RawCheck, type Trial, tryOut } from './trial.js';
import { type Dot, distinct, type World } from './variable.js';

type End =
  | (FaceOfPiece & { readonly is: 'face' })
  | { readonly is: 'not-recorded' }
  | { readonly is: 'absent' }
  | { readonly is: 'empty'; readonly isOptional: boolean };

export interface MatingPlan {
  readonly mating: MatingRecord;
  readonly hand: Hand | null;
  readonly positions: readonly [string, string];
  readonly adapters: readonly string[];
  /** Of joints that need no check. */
  readonly settled: readonly Outcome[];
  readonly checks: readonly PlannedCheck[];
}

export function planMatings(scene: Scene): MatingPlan[] {
  return (scene.layout.matings ?? []).flatMap((mating) => planMating(mating, scene));
}

/** For each hand. */
export function planMating(mating: MatingRecord, scene: Scene): MatingPlan[] {
  return handsOfMating(scene, mating).flatMap((hand) => {
    const there = scene.standing(positionsOf(mating), [mating.id], hand);
    const name = `mating ${mating.id} ${hand} ${there}`;
    return scene.memory.once(name, () => planFor(hand, mating, scene)) ?? [];
  });
}

function positionsOf(mating: MatingRecord): string[] {
  return endsOf(mating).map(([position]) => position);
}

/** `position.face` as two words. */
export function endsOf({ between }: MatingRecord): readonly [string, string][] {
  return between.map((end) => {
    const [position = '', face = ''] = end.split('.');
    return [position, face];
  });
}

export function handsOfMating(scene: Scene, mating: MatingRecord): readonly (Hand | null)[] {
  const positions = endsOf(mating).map(([id]) => scene.position(id));
  const handed = positions.find((position) => position.handed);
  return handed === undefined ? [null] : handsOf(handed);
}

/** Null where nothing stands at either end, and nothing sits between them. */
function planFor(hand: Hand | null, mating: MatingRecord, scene: Scene): MatingPlan | null {
  const [[from, face], [to, other]] = endsOf(mating) as [[string, string], [string, string]];
  const a = endAt(scene, from, face, hand);
  const b = endAt(scene, to, other, hand);
  const { parts } = scene.adapters('judged', mating.id);
  if (a.is === 'empty' && b.is === 'empty' && parts.length === 0) return null;
  const ways = waysBetween(scene, mating.id, parts, hand).map((between) => {
    const joints = pairsOf([a, ...between, b]);
    const settled = joints.flatMap(([x, y]) => settle(x, y) ?? []);
    const checks = joints.flatMap(([x, y], index) => {
      const place = { mating: mating.id, hand, positions: [from, to], index } as const;
      if (settle(x, y) !== null) return [];
      const name = `joint ${mating.id} ${hand} ${index} ${nameOfEnd(x)} ${nameOfEnd(y)}`;
      return scene.memory.once(name, () => jointChecks(scene.document, x, y, place));
    });
    const positions = [from, to] as const;
    return { mating, hand, positions, adapters: parts, settled, checks };
  });
  return bestWay(ways, scene);
}

function nameOfEnd(end: End): string {
  return end.is === 'face' ? `${end.part.id} ${end.name} ${end.piece}` : end.is;
}

function endAt(scene: Scene, id: string, name: string, hand: Hand | null): End {
  const position = scene.position(id);
  const { holds } = scene.seat('judged', id, hand);
  if (holds === 'empty') return { is: 'empty', isOptional: position.optional ?? false };
  if (typeof holds !== 'object') return { is: 'not-recorded' };
  const face = faceOf(holds, name, scene.document);
  if (face === 'absent' || face === 'not-recorded') return { is: face };
  return { is: 'face', part: holds, name, piece: position.handed ? `${id} ${hand}` : id, face };
}

/** The faces between the two ends, for each way of turning each adapter. */
function waysBetween(
  scene: Scene,
  mating: string,
  adapters: readonly string[],
  hand: Hand | null,
): End[][] {
  let ways: End[][] = [[]];
  for (const [index, id] of adapters.entries()) {
    const part = scene.part(id);
    const piece = `adapter ${mating} ${index} ${hand}`;
    const faces = Object.entries(part.interfaces ?? {}).map(([name, face]): End => {
      return face.absent === true ? { is: 'absent' } : { is: 'face', part, name, piece, face };
    });
    const turned = [faces, [...faces].reverse()];
    ways = ways.flatMap((way) => turned.map((pair) => [...way, ...pair]));
  }
  return ways;
}

function pairsOf(ends: readonly End[]): [End, End][] {
  const pairs: [End, End][] = [];
  for (let index = 0; index + 1 < ends.length; index += 2) {
    pairs.push([ends[index], ends[index + 1]] as [End, End]);
  }
  return pairs;
}

/** The table at the head; null where checks decide. */
function settle(a: End, b: End): Outcome | null {
  if (a.is === 'face' && b.is === 'face') return arePaired(a.face, b.face) ? null : 'fails';
  if (a.is === 'not-recorded' || b.is === 'not-recorded') {
    const other = a.is === 'not-recorded' ? b : a;
    return other.is === 'empty' && other.isOptional ? 'holds' : 'open';
  }
  const face = a.is === 'face' ? a.face : b.is === 'face' ? b.face : null;
  return face === null || face.optional === true ? 'holds' : 'fails';
}

/** Of one kind, and on its two sides where it has sides. */
function arePaired(a: InterfaceRecord, b: InterfaceRecord): boolean {
  return a.kind === b.kind && (a.side === undefined || a.side !== b.side);
}

interface JointPlace {
  readonly mating: string;
  readonly hand: Hand | null;
  readonly positions: readonly [string, string];
  readonly index: number;
}

function jointChecks(
  document: CatalogueDocument,
  a: End,
  b: End,
  place: JointPlace,
): PlannedCheck[] {
  if (a.is !== 'face' || b.is !== 'face') return [];
  const kind = byId(document.kinds, a.face.kind ?? '');
  const finderWith = (trust: Trust) => jointFinder(document, kind, a, b, trust);
  const { mating, hand, positions, index } = place;
  return (kind.checks as readonly RawCheck[]).flatMap((raw): PlannedCheck[] => {
    const condition = raw.when === undefined ? ALWAYS : conditionOf(raw.when, kind, finderWith);
    const isMeant = recordedWhereOptional(raw, kind, finderWith(trustAll));
    const isRuledOut = outcomesOf(condition).every((outcome) => outcome === 'fails');
    if (isRuledOut || isMeant === 'never') return [];
    return [
      {
        name: `${mating}/${raw.id}`,
        hand,
        severity: raw.severity ?? 'must',
        positions,
        matings: [mating],
        opened: [],
        joint: `${mating} ${hand} ${index}`,
        memberWith: (trust) => {
          return { trial: trialOf(raw, kind, finderWith(trust)), condition, isMeant };
        },
      },
    ];
  });
}

/** A check that names optional parameters applies only where they are recorded. */
function recordedWhereOptional(
  raw: RawCheck,
  kind: KindRecord,
  find: Finder,
): Member['isMeant'] | 'never' {
  const optional = namesIn(termsOf(bothSides(raw, kind)))
    .filter((name) => kind.parameters[name.split('.')[1] ?? '']?.optional === true)
    .map(find);
  const isNever = optional.some(
    (one) => !one.variables.some(({ isChoice }) => isChoice) && !one.isRecorded(new Map()),
  );
  if (isNever) return 'never';
  return (world) => optional.every(({ isRecorded }) => isRecorded(world));
}

/** Under each choice every check in it is judged on its own. */
function conditionOf(
  raw: unknown,
  kind: KindRecord,
  finderWith: (trust: Trust) => Finder,
): Condition {
  const trialWith = (check: RawCheck, trust: Trust) => trialOf(check, kind, finderWith(trust));
  const read = checksIn(raw).flatMap((check) => trialWith(check, trustAll).variables);
  const choices = distinct(read.filter(({ isChoice }) => isChoice));
  const outcomeIn = (world: World): Outcome => {
    const judge = (check: RawCheck): Outcome =>
      weigh((trust) => {
        const trial = withChoices(trialWith(check, trust), world);
        return decide([{ trial, condition: ALWAYS, isMeant: () => true }]);
      }).outcome;
    return judgeCondition(raw, { judge, look: () => 'fails', hasAdapter: () => false });
  };
  const known = new Map<string, Outcome>();
  const inOnce = (world: World): Outcome => {
    const name = choices.map(({ key }) => nameOf(world.get(key))).join();
    const outcome = known.get(name) ?? outcomeIn(world);
    known.set(name, outcome);
    return outcome;
  };
  return { choices, in: inOnce };
}

function trialOf(raw: RawCheck, kind: KindRecord, find: Finder): Trial {
  const terms = {
    find,
    findWith: () => find,
    findEach: () => null,
    bands: new Map(),
    isOnRoad: false,
  };
  return tryOut(bothSides(raw, kind), terms);
}

/** Different for different values of an unknown. */
function nameOf(dot: Dot | undefined): string {
  if (dot === undefined) return '?';
  return typeof dot === 'string' ? dot : `${dot.top}/${dot.bottom}`;
}

/** `"equal": "pattern"` is short for the pattern of either side. */
function bothSides(raw: RawCheck, { sides = ['a', 'b'] }: KindRecord): RawCheck {
  const { equal } = raw;
  if (typeof equal !== 'string') return raw;
  return { ...raw, equal: sides.map((side) => `${side}.${equal}`) };
}

/** Names in a kind: `side.parameter`; the ends of a kind without sides are `a` and `b`. */
function jointFinder(
  document: CatalogueDocument,
  kind: KindRecord,
  a: FaceOfPiece,
  b: FaceOfPiece,
  trust: Trust,
): Finder {
  const names = kind.sides ?? ['a', 'b'];
  const sideOf = (end: FaceOfPiece, index: number) => end.face.side ?? names[index];
  return (name) => {
    const [side, parameter = ''] = name.split('.');
    const end = [a, b].find((one, index) => sideOf(one, index) === side);
    if (end === undefined) throw new Error(`no side ${side}`);
    return faceValue(end, kind, parameter, document, trust);
  };
}

/** The way of turning the adapters that comes out best; the first of equals. */
function bestWay(ways: readonly MatingPlan[], scene: Scene): MatingPlan | null {
  const outcomes = ways.map(({ settled, checks }) => {
    const musts = checks.filter(({ severity }) => severity === 'must');
    const alone = musts.map((check) => judgeAlone(check).outcome);
    return worst([...settled, ...alone, ...groupsOf(musts, scene).map(({ outcome }) => outcome)]);
  });
  const ranked = [...OUTCOMES].reverse();
  const [first] = ranked.flatMap((outcome) => ways[outcomes.indexOf(outcome)] ?? []);
  return first ?? null;
}
