/**
 * The sentences about demands that contradict each other, in English: each demand as it was made
 * and as it can be taken back, what is in its way, and what taking it back comes to.
 */

import { comesTo } from './english-kits.js';
import { and, fittedAs, label, lower, things, upper } from './english-phrases.js';
import { isNothing } from './phrases.js';
import type { ReasonData } from './reason.js';

function wanted({ part, names }: ReasonData): string {
  return names === undefined ? label(part) : `one of ${quoted(names)}`;
}

function quoted(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}

/** What stays where it is: one part, or one on either side; null where none is known there. */
function kept({ part, names }: ReasonData): { readonly is: string; readonly text: string } | null {
  if (names !== undefined) return { is: 'are', text: and(names.map((name) => `“${name}”`)) };
  return part?.part == null ? null : { is: 'is', text: label(part) };
}

function place({ part }: ReasonData): string {
  return `the place “${part?.positionName ?? part?.position ?? ''}”`;
}

const places = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 place' : `${text} places`;

const days = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 day' : `${text} days`;

const NONE = { text: null };

/** Of a check whose catalogue does not say in words what it is. */
const NO_WORDS = 'a check that nobody has put into words.';

/** The words of a check within another sentence. */
function whereItSays(text: string | undefined): string {
  return text === undefined ? `in ${bare(NO_WORDS)}` : `where it says “${bare(text)}”`;
}

function bare(text: string): string {
  return text.replace(/\.$/, '');
}

function keeps(d: ReasonData): string {
  const stays = kept(d);
  if (stays === null) return `At ${place(d)} nothing is to be changed.`;
  return `${upper(stays.text)} ${stays.is} to stay.`;
}

/** Without a full stop. */
function letsChange(d: ReasonData): string {
  const stays = kept(d);
  return stays === null ? `Allow a change at ${place(d)}` : `Let ${stays.text} be changed too`;
}

const demands = {
  'demand-part': (d: ReasonData) => `${upper(wanted(d))} is to go in.`,
  'demand-lot': (d: ReasonData) => `“${d.text}” is to be bought and used.`,
  'demand-load': (d: ReasonData) =>
    `With a margin of ${d.asked?.text} at least: ${d.text ?? NO_WORDS}`,
  'demand-condition': (d: ReasonData) =>
    `What is ${fittedAs(d.part)} is to meet the condition that was given.`,
  'demand-present': () =>
    'What is said to be on the vehicle, and does not go together, is to be put right.',
  'demand-keep': keeps,
  'demand-avoid-part': (d: ReasonData) => `${upper(label(d.part))} is not to be added.`,
  'demand-avoid-supplier': (d: ReasonData) => `Nothing is to come from ${d.text}.`,
  'demand-avoid-condition': (d: ReasonData) =>
    `What is newly ${fittedAs(d.part)} must not meet the condition that was given.`,
  'demand-cost': (d: ReasonData) => `It is to cost no more than ${d.asked?.text} net.`,
  'demand-places': (d: ReasonData) => `Places to be changed: ${d.asked?.text} at the most.`,
  'demand-hours': (d: ReasonData) => `It is to take no more than ${d.asked?.text} of labour.`,
  'demand-days': (d: ReasonData) => `All is to be there within ${days(d.asked ?? NONE)}.`,
  'demand-stock': () => 'Only what is in stock is to be bought.',
  'demand-torque': (d: ReasonData) => `Everything is to bear ${d.asked?.text} from the engine.`,
  'demand-ruleset-keep': (d: ReasonData) =>
    `“${d.text}” wants ${kept(d)?.text ?? place(d)} to stay as it is.`,
  'demand-ruleset-check': (d: ReasonData) => `“${d.text}” demands: ${d.because ?? NO_WORDS}`,
  'demand-ruleset-rest': (d: ReasonData) =>
    `“${d.text}” demands more than can be told of a vehicle of this build.`,
  'demand-unknowns': () => 'Nothing is to stay unknown.',
} as const;

/** `2838.00 EUR instead of 2500.00 EUR`; only what was asked where it is not known. */
function instead(
  { asked, takes }: ReasonData,
  say: (value: { readonly text: string | null }) => string,
): string {
  if (takes === undefined) return `more than ${say(asked ?? NONE)}`;
  return `${say(takes)} instead of ${asked?.text}`;
}

const plain = ({ text }: { readonly text: string | null }): string => text ?? '';

const drops = {
  'drop-part': (d: ReasonData) => `Do without ${wanted(d)}.`,
  'drop-lot': (d: ReasonData) => `Do without “${d.text}”.`,
  'drop-load': (d: ReasonData) => `Do without a margin of ${d.asked?.text} ${whereItSays(d.text)}.`,
  'drop-condition': (d: ReasonData) => `Ask nothing of what is ${fittedAs(d.part)}.`,
  'drop-present': () => 'Leave what is said to be on the vehicle as it is.',
  'drop-keep': (d: ReasonData) => `${letsChange(d)}.`,
  'drop-avoid-part': (d: ReasonData) => `Allow ${label(d.part)}.`,
  'drop-avoid-supplier': (d: ReasonData) => `Allow what comes from ${d.text}.`,
  'drop-avoid-condition': (d: ReasonData) => `Avoid nothing that is newly ${fittedAs(d.part)}.`,
  'drop-cost': (d: ReasonData) => `Spend ${instead(d, plain)}, net.`,
  'drop-places': (d: ReasonData) => `Change ${instead(d, places)}.`,
  'drop-hours': (d: ReasonData) => `Give it ${instead(d, plain)} of labour.`,
  'drop-days': (d: ReasonData) => `Wait ${instead(d, days)}.`,
  'drop-stock': () => 'Buy what is not in stock too.',
  'drop-torque': (d: ReasonData) =>
    `Go by what is recorded of the engine instead of ${d.asked?.text}.`,
  'drop-ruleset-keep': (d: ReasonData) => `${letsChange(d)}, against “${d.text}”.`,
  'drop-ruleset-check': (d: ReasonData) => `Go against “${d.text}” ${whereItSays(d.because)}.`,
  'drop-ruleset-rest': (d: ReasonData) => `Do without “${d.text}”.`,
  'drop-unknowns': () => 'Accept what is not known yet, and find it out first.',
} as const;

/** All that is taken back, in one breath. */
function together({ names = [] }: ReasonData): string {
  return names.map((text, index) => (index === 0 ? bare(text) : lower(bare(text)))).join(', and ');
}

function thenIs(way: string, d: ReasonData): string {
  const { facts = 0 } = d;
  const open = facts === 0 ? '' : `, with ${things(facts)} to find out`;
  return `then ${way} ${comesTo(d)}${open}`;
}

/** What would be put in, unless the sentence begins with it. */
function withNames({ names = [], because = '' }: ReasonData): string {
  const others = names.filter((name) => !because.startsWith(`“${name}”`));
  return others.length === 0 ? '' : `With ${quoted(others)}: `;
}

const NOTHING = 'then nothing has to be changed';

const conflicts = {
  'in-the-way-fails': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'Something does not go together.'}`,
  'in-the-way-open': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'It is not known whether everything goes together.'}`,
  'way-out-proven': (d: ReasonData) =>
    `${together(d)}: ${isNothing(d) ? NOTHING : thenIs('a proven way', d)}.`,
  'way-out-open': (d: ReasonData) =>
    isNothing(d)
      ? `${together(d)}: ${NOTHING}, but not all is proven.`
      : `${together(d)}: ${thenIs('a way that is not proven', d)}.`,
  'way-out-so-far': (d: ReasonData) =>
    `${together(d)}: then there is a way; the search for the best one was cut short.`,
} as const;

export const ENGLISH_CONFLICTS = { ...demands, ...drops, ...conflicts } as const;
