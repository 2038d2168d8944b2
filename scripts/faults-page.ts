/**
 * Writes what every fault and doubt of a document means, for programs that read codes and for those
 * who write them: `db/faults.md`, by `npm run generate`.
 */

import { DOUBT_MEANINGS, FAULT_MEANINGS, LINE_MEANINGS } from './fault-meanings.js';

/** Markdown, in English, each sort in the order of its list. */
export function faultsPage(): string {
  const lines = [
    '# Faults and doubts of a document',
    '',
    'Written by `npm run generate` from `scripts/fault-meanings.ts`. With `--json` each fault and',
    'doubt has a code beside its sentence. Codes stay as they are; sentences may be put better. A',
    'fault refuses the document, a doubt does not.',
    '',
    ...table('Faults', FAULT_MEANINGS),
    ...table('Faults of a document in lines', LINE_MEANINGS),
    ...table('Doubts', DOUBT_MEANINGS),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function table(title: string, meanings: Readonly<Record<string, string>>): string[] {
  const rows = Object.entries(meanings).map(([code, meaning]) => `| \`${code}\` | ${meaning} |`);
  return [`## ${title}`, '', '| Code | What it means |', '| --- | --- |', ...rows, ''];
}
