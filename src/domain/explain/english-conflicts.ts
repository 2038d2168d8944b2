/**
 * The sentences about demands that contradict each other, in English: each demand as it was made
 * and as it can be taken back, what is in its way, and what taking it back comes to.
 */

import { inFigures } from './english-kits.js';
import { fittedAs, label, lower, upper } from './english-phrases.js';
import type { ReasonData } from './reason.js';

function wanted({ part, names }: ReasonData): string {
  return names === undefined ? label(part) : `one of ${quoted(names)}`;
}

function quoted(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}

const places = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 place' : `${text} places`;

const days = ({ text }: { readonly text: string | null }): string =>
  text === '1' ? '1 day' : `${text} days`;

const NONE = { text: null };

/** Of a check whose catalogue does not say in words what it is. */
const NO_WORDS = 'a check that nobody has put into words.';

const demands = {
  'demand-part': (d: ReasonData) => `${upper(wanted(d))} is to go in.`,
  'demand-lot': (d: ReasonData) => `“${d.text}” is to be bought and used.`,
  'demand-load': (d: ReasonData) =>
    `With a margin of ${d.asked?.text} at least: ${d.text ?? NO_WORDS}`,
  'demand-condition': (d: ReasonData) =>
    `What is ${fittedAs(d.part)} is to meet the condition that was given.`,
  'demand-present': () =>
    'What is said to be on the vehicle, and does not go together, is to be put right.',
  'demand-keep': (d: ReasonData) => `${upper(label(d.part))} is to stay.`,
  'demand-avoid-part': (d: ReasonData) => `${upper(label(d.part))} is not to be added.`,
  'demand-avoid-supplier': (d: ReasonData) => `Nothing is to come from ${d.text}.`,
  'demand-avoid-condition': (d: ReasonData) =>
    `What is newly ${fittedAs(d.part)} must not meet the condition that was given.`,
  'demand-cost': (d: ReasonData) => `It is to cost no more than ${d.asked?.text} net.`,
  'demand-places': (d: ReasonData) => `No more than ${places(d.asked ?? NONE)} are to be changed.`,
  'demand-hours': (d: ReasonData) => `It is to take no more than ${d.asked?.text} of labour.`,
  'demand-days': (d: ReasonData) => `All is to be there within ${days(d.asked ?? NONE)}.`,
  'demand-stock': () => 'Only what is in stock is to be bought.',
  'demand-torque': (d: ReasonData) => `Everything is to bear ${d.asked?.text} from the engine.`,
  'demand-ruleset-keep': (d: ReasonData) => `“${d.text}” wants ${label(d.part)} kept.`,
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
  const limit = say(asked ?? NONE);
  return takes === undefined ? `more than ${limit}` : `${say(takes)} instead of ${limit}`;
}

const plain = ({ text }: { readonly text: string | null }): string => text ?? '';

const drops = {
  'drop-part': (d: ReasonData) => `Do without ${wanted(d)}.`,
  'drop-lot': (d: ReasonData) => `Do without “${d.text}”.`,
  'drop-load': (d: ReasonData) =>
    `Do without a margin of ${d.asked?.text} where it says: ${d.text ?? NO_WORDS}`,
  'drop-condition': (d: ReasonData) => `Ask nothing of what is ${fittedAs(d.part)}.`,
  'drop-present': () => 'Leave what is said to be on the vehicle as it is.',
  'drop-keep': (d: ReasonData) => `Let ${label(d.part)} be changed too.`,
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
  'drop-ruleset-keep': (d: ReasonData) => `Outside “${d.text}”: let ${label(d.part)} be changed.`,
  'drop-ruleset-check': (d: ReasonData) =>
    `Outside “${d.text}”, which demands: ${d.because ?? NO_WORDS}`,
  'drop-ruleset-rest': (d: ReasonData) => `Outside “${d.text}”.`,
  'drop-unknowns': () => 'Accept what is not known yet, and find it out first.',
} as const;

/** All that is taken back, in one breath. */
function together({ names = [] }: ReasonData): string {
  const parts = names.map((text, index) => {
    const bare = text.replace(/\.$/, '');
    return index === 0 ? bare : lower(bare);
  });
  return parts.join(', and ');
}

function thenIs(d: ReasonData): string {
  return d.places === 0 ? 'nothing has to be changed' : inFigures(d);
}

function withNames({ names = [] }: ReasonData): string {
  return names.length === 0 ? '' : `With ${quoted(names)}: `;
}

const conflicts = {
  'in-the-way-fails': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'Something does not go together.'}`,
  'in-the-way-open': (d: ReasonData) =>
    `${withNames(d)}${d.because ?? 'It is not known whether everything goes together.'}`,
  'way-out-proven': (d: ReasonData) => `${together(d)}: ${thenIs(d)}; proven.`,
  'way-out-open': (d: ReasonData) => `${together(d)}: ${thenIs(d)}; not proven.`,
  'way-out-so-far': (d: ReasonData) =>
    `${together(d)}: there is a way then; the search for the best one was cut short.`,
} as const;

export const ENGLISH_CONFLICTS = { ...demands, ...drops, ...conflicts } as const;
