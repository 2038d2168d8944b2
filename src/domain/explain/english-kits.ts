/**
 * The sentences about kits, in English: what a way of doing it comes to, why each of its lines is
 * there, and what the vehicle loses by it. What has no price is counted, never passed over.
 */

import {
  compared,
  label,
  ofPart,
  oneOf,
  owned,
  parameter,
  places,
  quoted,
  things,
  upper,
} from './english-phrases.js';
import type { ReasonData } from './reason.js';
import type { Compared } from './sentence.js';

const NUMBERS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

function number(count: number): string {
  return NUMBERS[count] ?? String(count);
}

function placesChanged({ places: count = 0 }: ReasonData): string {
  return count === 1 ? '1 place' : `${count} places`;
}

/** `3241.50 EUR net plus 2 lines unpriced`; null where no price is known. */
function cost({ price, unpriced = 0 }: ReasonData): string | null {
  if (price?.text == null) return null;
  return `${price.text} net${unpriced === 0 ? '' : ` plus ${unpriced} unpriced`}`;
}

/** `costs … and changes …`. */
export function comesTo(d: ReasonData): string {
  const known = cost(d);
  const changes = `changes ${placesChanged(d)}`;
  return known === null ? `${changes}, at a price not known` : `costs ${known} and ${changes}`;
}

/** The same in figures, for sentences that have more to say. */
export function inFigures(d: ReasonData): string {
  const { facts = 0 } = d;
  const open = facts === 0 ? null : `${facts} to find out`;
  return [cost(d) ?? 'price not known', placesChanged(d), open]
    .filter((text) => text !== null)
    .join(', ');
}

function toFindOut({ facts = 0 }: ReasonData): string | null {
  return facts === 0 ? null : `${things(facts)} to find out`;
}

function ways({ count = 0, more }: ReasonData): string {
  const said = `${number(count)} ${count === 1 ? 'way' : 'ways'}`;
  return upper(more === true ? `more than ${said}` : said);
}

function isOne({ count, more }: ReasonData): boolean {
  return count === 1 && more !== true;
}

/** Beside the part itself. */
function besides({ places: count = 0 }: ReasonData): string {
  if (count === 0) return 'with more parts and no other place changed';
  return `with ${number(count)} other ${count === 1 ? 'place' : 'places'} changed`;
}

function onceSigned({ text }: ReasonData): string {
  if (text === undefined) return '';
  return `, once ${text === 'engineer' ? 'an engineer' : 'the workshop'} has signed for the work`;
}

function firstSoFar({ count = 0 }: ReasonData): string {
  return count === 1 ? 'the only way so far' : `the first of ${number(count)} ways so far`;
}

const summaries = {
  'fits-with-changes': (d: ReasonData) => `Fits${places(d)}, ${besides(d)}${onceSigned(d)}.`,
  'fits-unless-alone': (d: ReasonData) =>
    `Not known whether it fits${places(d)} alone; ${besides(d)} it does${onceSigned(d)}.`,
  'may-fit-with-changes': (d: ReasonData) =>
    `Does not fit alone; not known whether it does ${besides(d)}: ` +
    `${toFindOut(d) ?? 'see what is open'}.`,
  'search-cut-short': () =>
    'Not known whether it fits: the search for changes ended at its limit of steps.',
  'does-not-fit': () => 'Does not fit: this edition of the catalogue has no way to make it fit.',
  'ways-proven': (d: ReasonData) =>
    isOne(d)
      ? `One way: it is proven, ${comesTo(d)}.`
      : `${ways(d)}; the ${d.cheapest === true ? 'cheapest' : 'first'} proven one ${comesTo(d)}.`,
  'ways-open': (d: ReasonData) =>
    isOne(d)
      ? `One way, not proven: ${inFigures(d)}.`
      : `${ways(d)}, none proven; the first: ${inFigures(d)}.`,
  'ways-so-far': (d: ReasonData) => `The search was cut short; ${firstSoFar(d)}: ${inFigures(d)}.`,
  'nothing-to-change': () => 'Nothing needs to be changed.',
  'no-way': () => 'This edition of the catalogue has no way of doing what is asked.',
  'no-way-together': (d: ReasonData) =>
    `Not all of this can be had together: ${number(d.count ?? 0)} demands contradict each other.`,
  'no-way-so-far': () => 'The search ended at its limit of steps, and had found no way by then.',
  'each-proven': (d: ReasonData) =>
    `There are proven ways, the same whichever of ${d.count ?? 0} vehicles it is.`,
  'each-open': (d: ReasonData) =>
    `There are ways, none proven, the same whichever of ${d.count ?? 0} vehicles it is.`,
  'no-way-for-any': (d: ReasonData) =>
    `This edition of the catalogue has no way, whichever of ${d.count ?? 0} vehicles it is.`,
  'ways-depend': (d: ReasonData) =>
    `What it takes depends on which of ${d.count ?? 0} vehicles it is.`,
  'too-many-to-solve': (d: ReasonData) =>
    `It could be any of ${d.count ?? 0} vehicles: say more of it to know what it takes.`,
  'no-such-place': () => 'This vehicle has no such place as was asked about.',
  'route-proven': (d: ReasonData) => `Proven: ${inFigures(d)}${onceSigned(d)}.`,
  'route-open': (d: ReasonData) => `Not proven: ${inFigures(d)}${onceSigned(d)}.`,
} as const;

/** What fails or is open without the line, said as the constraint says it. */
function because({ because: said }: ReasonData, otherwise: string): string {
  return said ?? otherwise;
}

const lines = {
  wanted: () => 'Asked for.',
  avoided: (d: ReasonData) => `Instead of what is to be avoided. ${because(d, '')}`,
  'mating-fails': (d: ReasonData) => because(d, 'Without it two faces do not meet.'),
  rule: (d: ReasonData) => because(d, 'A rule demands it.'),
  loop: (d: ReasonData) => because(d, 'Without it the two paths do not agree.'),
  load: (d: ReasonData) => because(d, 'Without it something is too weak.'),
  check: (d: ReasonData) => because(d, 'Without it a check fails.'),
  place: (d: ReasonData) => because(d, 'Without it a place is not filled as it must be.'),
  limit: (d: ReasonData) => because(d, 'Without it a limit that was set is passed.'),
  'becomes-open': (d: ReasonData) =>
    `Without it this is not known: ${because(d, 'whether everything goes together.')}`,
  'present-fails': (d: ReasonData) =>
    `Wrong on the vehicle as it stands: ${because(d, 'something does not go together.')}`,
  'adapter-avoided': (d: ReasonData) =>
    `Instead of an adapter: ${because(d, 'two faces do not meet without one.')}`,
  'donor-content': (d: ReasonData) =>
    d.text === undefined
      ? 'Comes with what is bought whole.'
      : `Comes with what is bought whole: ${quoted(d.text)}.`,
  consumed: (d: ReasonData) => because(d, 'Used up by the work.'),
  recommended: (d: ReasonData) => because(d, 'Worth having besides.'),
  'in-the-way': (d: ReasonData) =>
    d.part === undefined ? 'In the way of the work.' : `In the way of ${label(d.part)}.`,
  'taken-out': (d: ReasonData) =>
    d.part === undefined ? 'Comes out.' : `Comes out to make room for ${label(d.part)}.`,
} as const;

/** Dearer or cheaper by so much; null where a price is not known. */
function difference({ price }: ReasonData): string {
  if (price?.text == null) return 'price not known';
  if (price.text.startsWith('-')) return `${price.text.slice(1)} cheaper`;
  return /[1-9]/.test(price.low ?? '') ? `${price.text} dearer` : 'at the same price';
}

function pointsMore({ count = 0 }: ReasonData): string {
  return count === 0 ? '' : `, with ${things(count)} to find out`;
}

const instead = {
  substitute: (d: ReasonData) =>
    `${upper(label(d.part))} does just as well: alike in every face, value and rule.`,
  alternative: (d: ReasonData) =>
    `${upper(label(d.part))} would do here too: ${difference(d)}${pointsMore(d)}.`,
} as const;

const losses = {
  'place-emptied': (d: ReasonData) =>
    `${upper(label(d.part))} comes out, and nothing takes its place.`,
  'joint-lost': (d: ReasonData) =>
    `The joint of ${label(d.a)} and ${label(d.b)} is gone: ` +
    `${oneOf(d.a?.kindName ?? d.b?.kindName)}.`,
  'value-lower': (d: ReasonData) => `Less than before: ${compared(d)}.`,
  'rating-unknown': (d: ReasonData) =>
    `The ${parameter(d.left)}${ofPart(d.left)} is not known; before it was ${owned(d.right)}.`,
} as const;

export const ENGLISH_KITS = { ...summaries, ...lines, ...instead, ...losses } as const;

export const ENGLISH_COMPARED: Readonly<Record<Compared, string>> = {
  cost: 'Cost, net',
  unpriced: 'Lines without a price',
  changedPositions: 'Places changed',
  labourHours: 'Hours of labour',
  leadDays: 'Days until all is there',
  openPoints: 'Open points',
  weakest: 'Weakest part, its rating by its load',
  signOff: 'Who must sign',
  reversible: 'Can be undone',
};
