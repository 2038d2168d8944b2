/**
 * Questions that tell vehicles apart, as answers show them: with names, hints and labels.
 */

import { sayField, sayMonth } from '../domain/explain/words.js';
import type { Ask } from '../domain/identify/ask.js';
import type { Speaker } from './speaker.js';
import type { AskView } from './vehicle-view.js';

export function askView(ask: Ask, speaker: Speaker): AskView {
  const { field, values } = ask;
  if (field === 'fact') return factView(ask, speaker);
  const labelled = values.map(({ value, count }) => {
    const label = field === 'built' ? sayMonth(value) : value;
    return { value, label, count };
  });
  return { field, fact: null, ...sayField(field, speaker.lang), values: labelled };
}

function factView({ fact: id, values }: Ask, speaker: Speaker): AskView {
  const fact = speaker.catalogue.facts.get(id ?? '');
  if (fact === undefined) throw new Error(`the catalogue has no fact "${id}"`);
  const labelled = values.map(({ value, count }) => {
    const text = fact.values.get(value);
    return { value, label: text === undefined ? value : speaker.text(text), count };
  });
  return {
    field: 'fact',
    fact: fact.id,
    name: speaker.text(fact.name),
    how: fact.how === null ? null : speaker.text(fact.how),
    values: labelled,
  };
}
