/**
 * What `data` of a reason has, by its code, for the OpenAPI document: a schema that programs can
 * hold an answer against, and a list for people. Both are made of the one table of the domain.
 */

import { type DataFields, OWN_CODE_DATA, REASON_DATA } from '../domain/explain/reason-data.js';

/** Name of the component that whatever says a reason refers to. */
export const REASON_BY_CODE = 'ReasonByCode';

/** What a schema of something that says a reason adds: the data goes by the code. */
export const BY_CODE = { allOf: [{ $ref: `#/components/schemas/${REASON_BY_CODE}` }] };

interface CodesAlike extends DataFields {
  readonly codes: readonly string[];
}

/** The codes whose data have the same fields, in the order of the table. */
function codesAlike(): readonly CodesAlike[] {
  const byFields = new Map<string, CodesAlike>();
  for (const [code, fields] of Object.entries(REASON_DATA)) {
    const key = fieldsText(fields);
    const codes = [...(byFields.get(key)?.codes ?? []), code];
    byFields.set(key, { ...fields, codes });
  }
  return [...byFields.values()];
}

/** One form for all codes that are alike; the last is for codes of a catalogue's own. */
export function reasonByCodeSchema(): object {
  const known = Object.keys(REASON_DATA);
  return {
    description:
      'Which fields `data` has follows from `code`: some always, some perhaps, no others. A code ' +
      'that is not here is one that a catalogue gave its check.',
    anyOf: [
      ...codesAlike().map((alike) => formOf({ enum: alike.codes }, alike)),
      formOf({ not: { enum: known } }, OWN_CODE_DATA),
    ],
  };
}

function formOf(code: object, { always, perhaps }: DataFields): object {
  const data = {
    type: 'object',
    // What each of them is, `ReasonData` says.
    properties: Object.fromEntries([...always, ...perhaps].map((name) => [name, {}])),
    ...(always.length === 0 ? {} : { required: always }),
    additionalProperties: false,
  };
  const properties = { code: { type: 'string', ...code }, data };
  // Not every view shows the data; where it is shown, the object itself demands it.
  return { type: 'object', properties, required: ['code'] };
}

/** The same for people, a line for all codes that are alike. */
export function reasonDataList(): string {
  const lines = codesAlike().map((alike) => `- ${fieldsText(alike)}: ${alike.codes.join(', ')}`);
  return [...lines, `- ${fieldsText(OWN_CODE_DATA)}: codes of a catalogue's own`].join('\n');
}

function fieldsText({ always, perhaps }: DataFields): string {
  if (always.length + perhaps.length === 0) return 'nothing';
  return [...always.map((name) => `\`${name}\``), ...perhaps.map((name) => `\`${name}\`?`)].join(
    ' ',
  );
}
