/**
 * Texts that lack a language that most texts of the catalogue have: an answer in that language
 * would say them in another. Where fewer have it, its author has only begun with it, and need not
 * be told of each that is to come. What has no letter, such as "3.90", reads alike in all.
 */

import type { CatalogueDocument, Text } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import { isObject } from './read-text.js';
import { DOCUMENT_FIELDS, type Shape } from './shape.js';

interface Found {
  readonly pointer: string;
  readonly languages: ReadonlySet<string>;
}

/** Warns at each such text of a document without faults. */
export function doubtLanguages(document: CatalogueDocument, list: FaultList): void {
  const found: Found[] = [];
  const take = (text: Text, pointer: string): void => {
    const texts = typeof text === 'string' ? { [document.lang]: text } : text;
    if (!Object.values(texts).some((one) => /\p{L}/u.test(one))) return;
    found.push({ pointer, languages: new Set(Object.keys(texts)) });
  };
  visit(document, { is: 'object', fields: DOCUMENT_FIELDS }, '', take);
  const spoken = spokenIn(found);
  for (const { pointer, languages } of found) {
    const lacking = spoken.filter((one) => !languages.has(one)).map(quoted);
    if (lacking.length === 0) continue;
    const text = `It is not said in ${lacking.join(' or ')}, as most texts of the catalogue are.`;
    list.warn(pointer, 'text-lacks-language', text);
  }
}

/** The languages that more than half of the texts have. */
function spokenIn(found: readonly Found[]): string[] {
  const counts = new Map<string, number>();
  for (const language of found.flatMap(({ languages }) => [...languages])) {
    counts.set(language, (counts.get(language) ?? 0) + 1);
  }
  const most = [...counts].filter(([, count]) => 2 * count > found.length);
  return most.map(([language]) => language).sort();
}

type Take = (text: Text, pointer: string) => void;

function visit(raw: unknown, shape: Shape, pointer: string, take: Take): void {
  if (raw === undefined || raw === null) return;
  switch (shape.is) {
    case 'text':
      take(raw as Text, pointer);
      return;
    case 'list':
      for (const [index, one] of (raw as readonly unknown[]).entries()) {
        visit(one, shape.of, at(pointer, index), take);
      }
      return;
    case 'map':
      for (const [name, one] of Object.entries(raw)) visit(one, shape.of, at(pointer, name), take);
      return;
    case 'nullable':
      visit(raw, shape.of, pointer, take);
      return;
    case 'object':
      for (const [name, one] of Object.entries(raw)) {
        const of = Object.hasOwn(shape.fields, name) ? shape.fields[name]?.shape : shape.rest;
        if (of !== undefined) visit(one, of, at(pointer, name), take);
      }
      return;
    case 'check':
    case 'condition':
      visitCheck(raw, pointer, take);
      return;
    default:
    // The others hold no text.
  }
}

/** Checks and conditions have a grammar of their own; what they say stands in `text`. */
function visitCheck(raw: unknown, pointer: string, take: Take): void {
  if (Array.isArray(raw)) {
    for (const [index, one] of raw.entries()) visitCheck(one, at(pointer, index), take);
  } else if (isObject(raw)) {
    for (const [name, one] of Object.entries(raw)) {
      if (name === 'text') take(one as Text, at(pointer, name));
      else visitCheck(one, at(pointer, name), take);
    }
  }
}
