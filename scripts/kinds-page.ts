/**
 * Writes what every built-in kind of interface wants to be told of a face, for those who record
 * parts: `db/kinds.md`, by `npm run generate`.
 */

import type { Text } from '../src/domain/catalogue/document.js';
import { textIn } from '../src/domain/explain/language.js';
import type { BuiltInKind } from '../src/domain/kinds/kind.js';
import { TOOLS } from '../src/domain/quantity/tool.js';

/** Markdown, in English, kinds in the order of their names. */
export function kindsPage(kinds: readonly BuiltInKind[]): string {
  const lines = [
    '# The built-in kinds of interface',
    '',
    'Written by `npm run generate` from `src/domain/kinds/`. A face records what stands here under',
    'the name in the first column. What is *needed* leaves a joint open where nobody recorded it,',
    'as far as the form of the joint asks for it; what is *optional* is compared where both faces',
    'have it. Outside the usual range a value is doubted, not refused. A catalogue can declare',
    'kinds of its own besides.',
    '',
    ...kinds.map((kind) => `- [${english(kind.name)}](#${anchorOf(kind)}) (\`${kind.id}\`)`),
    '',
    ...kinds.flatMap(sectionOf),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

/** As a heading is linked to: small letters and dashes. */
function anchorOf({ id, name }: BuiltInKind): string {
  const heading = `${english(name)} ${id}`.toLowerCase();
  return heading.replaceAll(/[^a-z0-9 -]/g, '').replaceAll(' ', '-');
}

function sectionOf(kind: BuiltInKind): string[] {
  const { id, name, standard, sides, sideNames = {}, caution, notChecked } = kind;
  const said = (sides ?? []).map((side) => `\`${side}\`, ${english(sideNames[side] ?? side)}`);
  const ends = sides === undefined ? 'Both ends are alike.' : `Sides: ${said.join('; ')}.`;
  return [
    `## ${english(name)} \`${id}\``,
    '',
    `Standard: ${standard}. ${ends} Cautions: ${caution}.`,
    '',
    '| Parameter | What it is | Side | Value | Usual | Tool | |',
    '| --- | --- | --- | --- | --- | --- | --- |',
    ...Object.entries(kind.parameters).map(([key, parameter]) => rowOf(key, parameter)),
    '',
    `Not checked: ${notChecked.map(english).join('; ')}.`,
    '',
  ];
}

function rowOf(key: string, parameter: BuiltInKind['parameters'][string]): string {
  const { name, of, type, unit, usual, tool, optional, unless } = parameter;
  const value = unit === undefined ? type : `${type}, ${unit}`;
  const range = usual === undefined ? '' : usual.join(' to ');
  const by = tool === undefined ? '' : (TOOLS[tool]?.name.en ?? tool);
  const instead =
    unless === undefined ? '' : ` unless ${unless.map((one) => `\`${one}\``).join(', ')}`;
  const need = optional === true ? 'optional' : `needed${instead}`;
  const words = [`\`${key}\``, english(name ?? key), of ?? 'both', value, range, by, need];
  return `| ${words.join(' | ')} |`;
}

function english(text: Text): string {
  return textIn(text, 'en', 'en').text;
}
