/**
 * Questions that tell vehicles apart, as answers show them: with names, hints and labels.
 */

import { sayField, sayMonth } from '../domain/explain/words.js';
import type { Ask } from '../domain/identify/ask.js';
import type { Speaker } from './speaker.js';
import type { AskView } from './vehicle-view.js';

/** A question, whatever its answers lead to. */
type Asked = Pick<Ask, 'field' | 'fact'> & {
  readonly values: readonly { readonly value: string }[];
};

export function askView(ask: Ask, speaker: Speaker): AskView {
  const { labels, ...view } = askLabelled(ask, speaker);
  const values = ask.values.map(({ value, count }, index) => {
    return { value, label: labels[index] ?? value, count };
  });
  return { ...view, values };
}

/** What is asked for, and what each of its values is called. */
export function askLabelled(
  { field, fact: id, values }: Asked,
  speaker: Speaker,
): Omit<AskView, 'values'> & { readonly labels: readonly string[] } {
  if (field !== 'fact') {
    const labels = values.map(({ value }) => (field === 'built' ? sayMonth(value) : value));
    return { field, fact: null, ...sayField(field, speaker.lang), labels };
  }
  const fact = speaker.catalogue.facts.get(id ?? '');
  if (fact === undefined) throw new Error(`the catalogue has no fact "${id}"`);
  return {
    field,
    fact: fact.id,
    name: speaker.text(fact.name),
    how: fact.how === null ? null : speaker.text(fact.how),
    labels: values.map(({ value }) => {
      const text = fact.values.get(value);
      return text === undefined ? value : speaker.text(text);
    }),
  };
}
