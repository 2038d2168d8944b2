/**
 * Questions that tell vehicles apart, as answers show them: with names, hints and labels.
 */

import { sayField, sayLookedAt, sayMonth } from '../domain/explain/words.js';
import type { Ask } from '../domain/identify/ask.js';
import type { SettlingAsk } from '../domain/identify/settling.js';
import type { Speaker } from './speaker.js';
import type { AskValueView, AskView } from './vehicle-view.js';

/** A question, whatever its answers lead to. */
type Asked = Pick<SettlingAsk<unknown>, 'field' | 'fact' | 'position'> & {
  readonly values: readonly { readonly value: string }[];
};

export function askView(ask: Ask, speaker: Speaker): AskView {
  const { labels, ...view } = askLabelled({ ...ask, position: null }, speaker);
  const values = ask.values.map(({ value, count }, index) => {
    return { value, label: labels[index] ?? value, count };
  });
  return { ...view, values };
}

/** A question of which each answer says what it leads to. */
export interface SettlingAskView<Leads> extends Omit<AskView, 'values'> {
  values: (AskValueView & Leads)[];
}

/** @param leadsTo what is said of the outcomes of all vehicles that an answer leaves. */
export function settlingViews<Outcome, Leads extends object>(
  asks: readonly SettlingAsk<Outcome>[],
  speaker: Speaker,
  leadsTo: (outcomes: readonly Outcome[]) => Leads,
): SettlingAskView<Leads>[] {
  return asks.map((ask) => {
    const { labels, ...view } = askLabelled(ask, speaker);
    const values = ask.values.map(({ value, outcomes }, index) => {
      const label = labels[index] ?? value;
      return { value, label, count: outcomes.length, ...leadsTo(outcomes) };
    });
    return { ...view, values };
  });
}

/** How many come to each outcome, in this order; none of those that nothing comes to. */
export function tallyOf<Outcome>(
  outcomes: readonly Outcome[],
  order: readonly Outcome[],
): (readonly [Outcome, number])[] {
  return order
    .map((one) => [one, outcomes.filter((other) => other === one).length] as const)
    .filter(([, count]) => count > 0);
}

/** What is asked for, and what each of its values is called. */
function askLabelled(
  asked: Asked,
  speaker: Speaker,
): Omit<AskView, 'values'> & { readonly labels: readonly string[] } {
  const { field, fact: id, position, values } = asked;
  if (field === 'fitted') return placeLabelled(asked, speaker);
  if (field !== 'fact') {
    const labels = values.map(({ value }) => (field === 'built' ? sayMonth(value) : value));
    return { field, fact: null, position, ...sayField(field, speaker.lang), labels };
  }
  const fact = speaker.catalogue.facts.get(id ?? '');
  if (fact === undefined) throw new Error(`the catalogue has no fact "${id}"`);
  return {
    field,
    fact: fact.id,
    position,
    name: speaker.text(fact.name),
    how: fact.how === null ? null : speaker.text(fact.how),
    labels: values.map(({ value }) => {
      const text = fact.values.get(value);
      return text === undefined ? value : speaker.text(text);
    }),
  };
}

function placeLabelled({ field, position, values }: Asked, speaker: Speaker) {
  const { how, nothing } = sayLookedAt(speaker.lang);
  return {
    field,
    fact: null,
    position,
    name: speaker.positionName(position) ?? position ?? '',
    how,
    labels: values.map(({ value }) =>
      value === 'none' ? nothing : (speaker.partName(value) ?? value),
    ),
  };
}
