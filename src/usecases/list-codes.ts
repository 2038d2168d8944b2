/**
 * Which codes can an answer carry, which data goes with each, and how is it said? It is asked of
 * no edition: what a catalogue gives its own checks and kinds, the catalogue says.
 */

import { ownCodes } from '../domain/catalogue/own-codes.js';
import { ENGINE } from '../domain/engine.js';
import { exampleOf } from '../domain/explain/code-examples.js';
import { textIn } from '../domain/explain/language.js';
import {
  CAUTION_GROUPS,
  CODE_GROUPS,
  LISTED_GROUPS,
  type ListedGroup,
  type ReasonCode,
  type ReasonData,
} from '../domain/explain/reason.js';
import {
  type DataField,
  type DataFields,
  OWN_CODE_DATA,
  REASON_DATA,
} from '../domain/explain/reason-data.js';
import { FALLBACK_LANGUAGE, say, sayCaution, spokenFor } from '../domain/explain/words.js';
import { BUILT_IN_KINDS } from '../domain/kinds/registry.js';
import type { SaidReason } from './answer.js';

export interface CodesInput {
  readonly lang: string;
  /** Null for all of them. */
  readonly group: ListedGroup | null;
}

export interface CodeEntry {
  code: string;
  group: ListedGroup;
  /** Id of the built-in kind whose check has it; null for all others. */
  kind: string | null;
  always: readonly DataField[];
  perhaps: readonly DataField[];
  example: SaidReason;
}

export interface CodesAnswer {
  engine: string;
  lang: string;
  items: CodeEntry[];
  next: null;
  counts: { total: number };
}

export function listCodes({ lang: wish, group }: CodesInput): CodesAnswer {
  const lang = spokenFor(wish);
  const groups = group === null ? LISTED_GROUPS : [group];
  const items = groups.flatMap((one) => entriesOf(one, lang));
  return { engine: ENGINE, lang, items, next: null, counts: { total: items.length } };
}

function entriesOf(group: ListedGroup, lang: string): CodeEntry[] {
  switch (group) {
    case 'usual-cautions':
      return CAUTION_GROUPS.map((code) => {
        const example = { code, data: {}, text: sayCaution(code, lang) };
        return { code, group, kind: null, always: [], perhaps: [], example };
      });
    case 'kinds':
      return ownCodes(BUILT_IN_KINDS).map(({ code, kind, says }) => {
        const data = { says: textIn(says, lang, FALLBACK_LANGUAGE).text };
        const example = { code, data, text: say({ code, data }, lang) };
        return { code, group, kind, ...OWN_CODE_DATA, example };
      });
    default:
      return CODE_GROUPS[group].map((code) => {
        const example = saidExample(code, lang);
        return { code, group, kind: null, ...REASON_DATA[code], example };
      });
  }
}

/** As answers give it: without what they show beside the reason. */
function saidExample(code: ReasonCode, lang: string): SaidReason {
  const reason = exampleOf(code, lang);
  return { code, data: declaredOf(reason.data, REASON_DATA[code]), text: say(reason, lang) };
}

function declaredOf(data: ReasonData, { always, perhaps }: DataFields): ReasonData {
  const fields: readonly string[] = [...always, ...perhaps];
  return Object.fromEntries(Object.entries(data).filter(([name]) => fields.includes(name)));
}
