/**
 * Records of the catalogue as a person reads them: labels, values, and what a kind or a role wants
 * to be told.
 */

import type { DeclaredCheckView } from '../usecases/catalogue-view.js';
import type { EvidenceView, RecordedValueView } from '../usecases/record-views.js';
import type { SpecView } from '../usecases/vocabulary-view.js';
import { called } from './answer-text.js';
import type { Page } from './page.js';
import type { CliWords } from './words/cli-words.js';
import type { ShowLabel, ShowWords } from './words/show-words.js';

/** What is shown, by name and id. */
export function sayTitle(name: string | null, id: string, page: Page, words: CliWords): void {
  page.say(`${called(name, id, words)}.`, { tone: 'strong' });
}

/** `Maker: Corrablyn.`; nothing where there is nothing to say. */
export function sayLabelled(
  label: ShowLabel,
  texts: readonly (string | null)[],
  page: Page,
  { show }: CliWords,
): void {
  const known = texts.filter((text) => text !== null);
  if (known.length > 0) page.say(`${show.labels[label]}: ${known.join(', ')}.`);
}

/** `register: 60.0 mm, by steel tape`; what it rests on where its owner rests on something else. */
export function valueText(
  { name, value, toolName, evidence }: RecordedValueView,
  owner: EvidenceView,
  { show }: CliWords,
): string {
  const notes = [
    ...(value.text === null ? [] : [value.text]),
    ...(toolName === null ? [] : [show.tool(toolName)]),
    ...otherEvidence(evidence, owner, show),
  ];
  return `${name}: ${notes.join(', ')}`;
}

/** What something rests on, unless that is what its owner rests on. */
export function otherEvidence(
  evidence: EvidenceView,
  owner: EvidenceView,
  { evidence: say }: ShowWords,
): string[] {
  return JSON.stringify(evidence) === JSON.stringify(owner) ? [] : [say(evidence)];
}

/** `pilot: pilot diameter, measured, mm, by caliper`, and what else is to be noted of it. */
export function specText(
  id: string,
  { name, type, unit, toolName, usual }: SpecView,
  notes: readonly string[],
  { show }: CliWords,
): string {
  const range = usual?.text ?? null;
  const form = [
    name,
    type,
    ...(unit === '' ? [] : [unit]),
    ...(toolName === null ? [] : [show.tool(toolName)]),
    ...(range === null ? [] : [show.usual(range)]),
  ];
  return `${id}: ${[...form, ...notes].join(', ')}`;
}

/** A check by its id, and what it says of itself; else how it compares. */
export function checkText(
  { check, primitive, severity, text }: DeclaredCheckView,
  { show }: CliWords,
): string {
  const note = severity === 'caution' ? ` (${show.notes.cautionOnly})` : '';
  return `${check}: ${text ?? primitive}${note}`;
}
