/**
 * What is done at one place: what goes in, what is worked on, what comes out, and the labour of it.
 *
 * Both hands of a place that take the same article have one line together. Labour stands on what
 * goes in, or on what comes out where nothing goes in. To change a place takes no less time than
 * to get it out of the way; where only the latter is recorded, that much is counted and the line
 * still said to be untimed. Where getting it out of the way takes longer than one hand of it, all
 * labour of the place stands on its first line, since it cannot be told hand from hand.
 *
 * A part that fills several places is bought and worked on at the first of them.
 */

import type { Position } from '../catalogue/catalogue.js';
import { madeFrom } from '../catalogue/trade.js';
import type { Hand } from '../check/reading.js';
import { namesOf } from '../judge/worked-part.js';
import {
  add,
  compare,
  larger,
  multiply,
  type Rational,
  rational,
  ZERO,
} from '../quantity/rational.js';
import type { Line, SeatChange } from './basket.js';
import { type Draft, lineOf } from './drafts.js';
import type { Market } from './market.js';
import type { KitQuestion } from './question.js';

export interface PlaceJob {
  readonly drafts: readonly Draft[];
  /** Keys of lines whose labour is counted in part only. */
  readonly untimed: readonly string[];
  /** Something else stands there than before; a new piece of the same article is no change. */
  readonly isChanged: boolean;
  /** A work is needed that is not to be had. */
  readonly isImpossible: boolean;
}

/** What is done with one article, for one hand or for both. */
interface Task {
  readonly action: 'add' | 'work' | 'remove';
  /** Added: from outside, from what is there now, or by standing at another place already. */
  readonly how: 'bought' | 'present' | 'spans' | null;
  readonly part: string | null;
  readonly work: string | null;
  readonly hands: Hand[];
  pieces: number;
  /** So many pieces of it are timed here; the labour of the others stands on another line. */
  timed: number;
}

export function placeJob(
  changes: readonly SeatChange[],
  market: Market,
  question: KitQuestion,
): PlaceJob {
  const [first] = changes;
  if (first === undefined) throw new RangeError('a job is done at some place');
  const { position } = first;
  const tasks = new TaskList();
  for (const change of changes) addTasks(change, tasks, question);
  const pieces = Math.min(...changes.map((change) => change.pieces));
  const labour = labourOf(position, tasks.list, pieces);
  const drafts: Draft[] = [];
  const untimed: string[] = [];
  let isImpossible = false;
  for (const task of tasks.list) {
    const hours = labour.hours.get(task);
    const line = placeLine(task, position, hours === undefined ? ZERO : hours);
    if (task.action === 'work') {
      const worked = workLine(line, task, market, question);
      isImpossible ||= worked === null;
      if (worked !== null) drafts.push({ line: worked, need: null });
      continue;
    }
    const draft = lineOf(line, question.labourRate);
    if (labour.partial === task) untimed.push(draft.key);
    const good = task.how === 'bought' && task.part !== null ? market.goods(task.part, '1') : null;
    const need = good === null ? null : { good, units: good.scale * task.pieces, isExtra: false };
    drafts.push({ line: draft, need });
  }
  return { drafts, untimed, isChanged: changes.some(isOther), isImpossible };
}

/** The hours to get a place out of the way that is not changed itself, however many pieces. */
export function openLine({ id, access }: Position, { labourRate }: KitQuestion): Line {
  const said = { key: `open:${id}`, action: 'open', position: id, labourHours: access } as const;
  return lineOf(said, labourRate);
}

function isOther({ now, becomes }: SeatChange): boolean {
  return now.is !== 'part' || becomes.is !== 'part'
    ? now.is !== becomes.is
    : now.part !== becomes.part;
}

class TaskList {
  readonly list: Task[] = [];

  put(
    { hand, pieces }: SeatChange,
    what: Pick<Task, 'action' | 'part'> & Partial<Pick<Task, 'how' | 'work'>>,
  ): Task {
    const { action, part, how = null, work = null } = what;
    let task = this.list.find(
      (one) => one.action === action && one.part === part && one.work === work && one.how === how,
    );
    if (task === undefined) {
      task = { action, part, how, work, hands: [], pieces: 0, timed: 0 };
      this.list.push(task);
    }
    if (hand !== null && !task.hands.includes(hand)) task.hands.push(hand);
    task.pieces += pieces;
    return task;
  }
}

function addTasks(change: SeatChange, tasks: TaskList, { catalogue }: KitQuestion): void {
  const { position, now, becomes, pieces } = change;
  if (becomes.is === 'as-found')
    throw new RangeError(`${position.id}: nobody knows what to put in`);
  if (becomes.is === 'empty') {
    if (now.is === 'empty') return;
    const part = now.is === 'part' ? now.part : null;
    tasks.put(change, { action: 'remove', part }).timed += pieces;
    return;
  }
  const [base, ...works] = namesOf(becomes.part);
  const spans = catalogue.parts.get(base)?.spans ?? null;
  const isFirstPlace = spans === null || spans[0] === position.id;
  const isWorkedInPlace = now.is === 'part' && isMadeFrom(becomes.part, now.part);
  const isRemoved = now.is === 'part' && !isWorkedInPlace;
  const how = isWorkedInPlace ? 'present' : 'bought';
  let timed: Task | null = null;
  if (isFirstPlace || isWorkedInPlace)
    timed = tasks.put(change, { action: 'add', part: base, how });
  else if (!isRemoved) timed = tasks.put(change, { action: 'add', part: base, how: 'spans' });
  const done = now.is === 'part' && isWorkedInPlace ? namesOf(now.part).length - 1 : 0;
  for (const work of isFirstPlace ? works.slice(done) : []) {
    tasks.put(change, { action: 'work', part: base, work });
  }
  if (isRemoved) {
    const removed = tasks.put(change, { action: 'remove', part: now.part });
    timed ??= removed;
  }
  if (timed !== null) timed.timed += pieces;
}

function isMadeFrom(article: string, from: string): boolean {
  return article !== from && madeFrom(article).includes(from);
}

interface PlaceLabour {
  /** Null where it is not recorded; a task that is not here takes no time of its own. */
  readonly hours: ReadonlyMap<Task, Rational | null>;
  /** The task of whose labour only a part is recorded. */
  readonly partial: Task | null;
}

/** @param pieces Of one hand, or of the place where it has no hands. */
function labourOf(
  { labour, access }: Position,
  tasks: readonly Task[],
  pieces: number,
): PlaceLabour {
  const timed = tasks.filter((task) => task.timed > 0);
  const [first] = timed;
  if (first === undefined) return { hours: new Map(), partial: null };
  const each = (count: number): Rational | null =>
    labour === null ? null : multiply(labour, rational(count));
  const least = each(pieces);
  const isTogether = access !== null && (least === null || compare(access, least) > 0);
  if (!isTogether) {
    return { hours: new Map(timed.map((task) => [task, each(task.timed)])), partial: null };
  }
  let whole: Rational = ZERO;
  for (const task of timed) whole = add(whole, each(task.timed) ?? ZERO);
  const hours = new Map<Task, Rational>(timed.map((task) => [task, ZERO]));
  return {
    hours: hours.set(first, larger(whole, access)),
    partial: labour === null ? first : null,
  };
}

type SaidLine = Pick<Line, 'key' | 'action'> & Partial<Line>;

function placeLine(task: Task, { id, isHanded }: Position, labourHours: Rational | null): SaidLine {
  const { action, part, work, how, hands, pieces } = task;
  const [hand = null] = isHanded && hands.length === 1 ? hands : [];
  const name = action === 'work' ? work : part;
  const key = [action, id, name, hand].filter((word) => word !== null).join(':');
  const source = how === 'present' ? how : null;
  const quantity = rational(pieces);
  return { key, action, position: id, hand, part, work, quantity, source, labourHours };
}

/** Null where the work is not to be had. */
function workLine(
  line: SaidLine,
  { work: id, pieces }: Task,
  market: Market,
  { catalogue, labourRate }: KitQuestion,
): Line | null {
  const work = id === null ? undefined : catalogue.works.get(id);
  if (work === undefined) throw new RangeError(`no work ${id}`);
  const labourHours = work.labour === null ? null : multiply(work.labour, rational(pieces));
  const { signOff, isReversible } = work;
  const done = { ...line, labourHours, signOff, isReversible };
  const bought = market.work(work.id, pieces);
  if (bought === null) {
    return market.takesUnpricedWorks ? lineOf({ ...done, price: null }, labourRate) : null;
  }
  const { offer, packs, price } = bought;
  const leadDays = offer.record.leadDays ?? null;
  return lineOf({ ...done, offer, packs, unitPrice: offer.price, price, leadDays }, labourRate);
}
