/**
 * What a change takes: the goods, the time at each place, the works, and what is used up.
 */

import type { PositionRecord } from '../../src/domain/catalogue/document.js';
import { isMadeFrom, partOf, worksOn } from './article.js';
import { judgeCondition } from './condition.js';
import {
  compare,
  type Fraction,
  fraction,
  larger,
  plus,
  readFraction,
  times,
  ZERO,
} from './fraction.js';
import { addPieces } from './kit-ask.js';
import { type Bill, type Goods, hoursOf } from './kit-bill.js';
import { type Change, holdsBefore, piecesAt } from './kit-change.js';
import { addedTo, type PlaceValue } from './kit-values.js';
import { viewOf } from './layout-check.js';
import { byId, handsOf, type Scene } from './scene.js';
import { outcomeOver } from './supposed.js';

/** What the change takes, as far as it costs something. */
export function billOf(change: Change, scene: Scene, base: Scene): Bill {
  const places = [...change.places].flatMap(([id, pieces]) => placeBill(id, pieces, base) ?? []);
  const touched = new Set(places.map(({ id }) => id));
  const opened = [...inTheWayOf(touched, base)]
    .filter((id) => !isEmptyNow(id, base))
    .map((id) => timeOf(base.position(id).access));
  const works = places.flatMap((place) => place.works);
  const adapters = [...change.rows].flatMap(([mating, row]) => {
    const added = addedTo(row, base.adapters('present', mating).parts);
    const joints = jointsIn(mating, base);
    return [...countsOf(added)].map(([part, count]) => piecesOf(part, count * joints));
  });
  return {
    goods: [...places.flatMap(({ goods }) => goods), ...adapters, ...usedUp(scene)],
    hours: [...places.flatMap(({ hours }) => hours), ...opened.map((time) => time ?? ZERO)],
    isUntimed:
      places.some((place) => place.isUntimed) ||
      opened.includes(null) ||
      works.some(({ work }) => byId(base.document.works, work).labour === undefined),
    works,
  };
}

/** Nothing has to be taken out of the way there. */
function isEmptyNow(id: string, base: Scene): boolean {
  return handsOf(base.position(id)).every(
    (hand) => base.seat('present', id, hand).holds === 'empty',
  );
}

function countsOf(names: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) addPieces(counts, name, 1);
  return counts;
}

/**
 * What is done at one place; null where nothing is. Both hands that take the same article have one
 * line together. To change a place takes no less time than to get it out of the way.
 */
function placeBill(id: string, there: PlaceValue, base: Scene): (Bill & { id: string }) | null {
  const position = base.position(id);
  const each = piecesAt(position);
  const goods = new Map<string, number>();
  const works = new Map<string, number>();
  /** By line, how many pieces its time is for. */
  const timed = new Map<string, number>();
  for (const piece of there) {
    const { holds, isRenewed } = piece;
    const before = holdsBefore(piece, id, base);
    if (holds === before && !isRenewed) continue;
    if (holds === 'empty' || holds === 'as-found') {
      addPieces(timed, `remove ${before}`, each);
      continue;
    }
    const isWorkedHere = isMadeFrom(holds, before);
    addPieces(timed, `add ${partOf(holds)} ${isWorkedHere}`, each);
    if (!isWorkedHere) addPieces(goods, partOf(holds), each);
    const done = worksOn(holds).slice(isWorkedHere ? worksOn(before).length : 0);
    for (const work of done) addPieces(works, `${partOf(holds)} ${work}`, each);
  }
  if (timed.size === 0) return null;
  return {
    id,
    goods: [...goods].map(([part, pieces]) => piecesOf(part, pieces)),
    hours: hoursAt(position, [...timed.values()]),
    isUntimed: position.labour === undefined,
    works: [...works].map(([name, pieces]) => ({ work: name.split(' ')[1] ?? '', pieces })),
  };
}

/** @param pieces of each line */
function hoursAt(position: PositionRecord, pieces: readonly number[]): Fraction[] {
  const [labour, access] = [timeOf(position.labour), timeOf(position.access)];
  const lines = pieces.map((count) => times(labour ?? ZERO, fraction(count)));
  if (access === null) return lines;
  const oneHand = times(labour ?? ZERO, fraction(piecesAt(position)));
  // It cannot be told which of the hands the rest is for.
  return compare(access, oneHand) > 0 ? [larger(access, lines.reduce(plus, ZERO))] : lines;
}

function piecesOf(part: string, pieces: number): Goods {
  return { part, quantity: fraction(pieces), unit: '', isExtra: false };
}

function timeOf(time: string | number | undefined) {
  return time === undefined ? null : hoursOf(String(time));
}

/** The larger of the counts at its two ends. */
function jointsIn(mating: string, base: Scene): number {
  const counts = base.mating(mating).between.map((end) => {
    const position = base.position(end.split('.')[0] ?? '');
    return position.count ?? (position.handed ? 2 : 1);
  });
  return Math.max(...counts);
}

/** What has to come out to get at what is changed, and is not changed itself. */
function inTheWayOf(touched: ReadonlySet<string>, base: Scene): Set<string> {
  const opened = new Set<string>();
  const visit = (id: string): void => {
    for (const other of base.position(id).behind ?? []) {
      if (!opened.has(other)) {
        opened.add(other);
        visit(other);
      }
    }
  };
  for (const id of touched) visit(id);
  return new Set([...opened].filter((id) => !touched.has(id)));
}

/** What rules use up, by article; one that only may speak uses up nothing. */
function usedUp(scene: Scene): Goods[] {
  const used = new Map<string, Goods>();
  for (const { when, consumes } of scene.document.rules ?? []) {
    if (consumes === undefined) continue;
    const speaks = outcomeOver(scene, (one) => judgeCondition(when, viewOf(one, 'judged', null)));
    if (speaks !== 'holds') continue;
    const [size = '', unit = ''] = String(consumes.quantity).split(' ');
    const name = `${consumes.part} ${unit}`;
    const before = used.get(name)?.quantity ?? ZERO;
    const quantity = plus(before, readFraction(size));
    used.set(name, { part: consumes.part, quantity, unit, isExtra: true });
  }
  return [...used.values()];
}
