/**
 * Reads the project's own source as text, for the tests that hold it to its rules.
 *
 * Models a TypeScript file as two things: its code with the inside of every comment, string,
 * template and regular expression blanked out (so that a word in prose is never taken for code),
 * and the list of modules that it imports. It follows the lexical grammar of ECMA-262, section 12,
 * as far as these tests need it. Left out: JSX, and an import hidden in code that is itself built
 * as text.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** One file: `path` is relative to the top of the project, with forward slashes. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** One import or re-export. `specifier` is null where it is computed at run time. */
export interface ImportOf {
  readonly specifier: string | null;
  readonly typeOnly: boolean;
}

const top = fileURLToPath(new URL('..', import.meta.url));
const notOurs = new Set(['node_modules', 'dist', 'coverage', '.git', '.demo']);

/** Every file of the project below `folder` (`''` for all), whose path matches `wanted`. */
export function filesOf(folder: string, wanted: RegExp): SourceFile[] {
  const found: SourceFile[] = [];
  for (const entry of readdirSync(join(top, folder), { withFileTypes: true })) {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory() && !notOurs.has(entry.name)) found.push(...filesOf(path, wanted));
    if (entry.isFile() && wanted.test(path)) found.push(fileAt(path));
  }
  return found.sort((one, other) => (one.path < other.path ? -1 : 1));
}

/** The file at a path relative to the top of the project. Throws where there is none. */
export function fileAt(path: string): SourceFile {
  return { path, text: readFileSync(join(top, path), 'utf8') };
}

/**
 * The code of a file, with every character inside a comment, string, template text or regular
 * expression replaced by a space. Delimiters of strings and all line breaks stay, so that each
 * position and each line number is that of the original.
 */
export function codeOf(text: string): string {
  const code: string[] = [];
  // One entry per open template: how many braces are open inside its present `${ }`.
  const templates: number[] = [];
  let at = 0;
  const keep = (length: number): void => {
    code.push(text.slice(at, at + length));
    at += length;
  };
  const blank = (length: number): void => {
    code.push(text.slice(at, at + length).replace(/[^\n]/g, ' '));
    at += length;
  };
  const template = (): void => {
    blank(templateText(text, at));
    if (text.startsWith('${', at)) {
      templates.push(0);
      keep(2);
    } else {
      keep(1);
    }
  };
  while (at < text.length) {
    const character = text.charAt(at);
    const depth = templates.at(-1);
    if (text.startsWith('//', at)) blank(until(text, at, '\n'));
    else if (text.startsWith('/*', at)) blank(until(text, at + 2, '*/') + 4);
    else if (character === "'" || character === '"') {
      keep(1);
      blank(stringText(text, at, character));
      keep(1);
    } else if (character === '`') {
      keep(1);
      template();
    } else if (character === '}' && depth === 0) {
      templates.pop();
      keep(1);
      template();
    } else if (character === '/' && regexMayStart(code.join(''))) {
      blank(regexText(text, at));
    } else {
      if (depth !== undefined && character === '{') templates[templates.length - 1] = depth + 1;
      if (depth !== undefined && character === '}') templates[templates.length - 1] = depth - 1;
      keep(1);
    }
  }
  return code.join('');
}

/** Every module that a file imports or re-exports, in the order of the text. */
export function importsOf(text: string): ImportOf[] {
  const code = codeOf(text);
  const found: { at: number; import: ImportOf }[] = [];
  const add = (at: number, quoteAt: number, typeOnly: boolean): void => {
    const quote = code.charAt(quoteAt);
    const literal = quote === "'" || quote === '"';
    const end = code.indexOf(quote, quoteAt + 1);
    const specifier = literal ? text.slice(quoteAt + 1, end) : null;
    found.push({ at, import: { specifier, typeOnly } });
  };
  const from = /(?<![.\w$])(?:import|export)\s+(type\s+(?!from\b))?[\w$\s{},*]*?\bfrom\s*(?=['"])/g;
  for (const match of code.matchAll(from)) {
    add(match.index, match.index + match[0].length, match[1] !== undefined);
  }
  for (const match of code.matchAll(/(?<![.\w$])import\s*(?=['"])/g)) {
    add(match.index, match.index + match[0].length, false);
  }
  for (const match of code.matchAll(/(?<![.\w$])(?:import|require)\s*\(\s*(?=\S)/g)) {
    add(match.index, match.index + match[0].length, false);
  }
  return found.sort((one, other) => one.at - other.at).map((entry) => entry.import);
}

function until(text: string, from: number, mark: string): number {
  const end = text.indexOf(mark, from);
  return (end === -1 ? text.length : end) - from;
}

function stringText(text: string, from: number, quote: string): number {
  let end = from;
  while (end < text.length && text.charAt(end) !== quote && text.charAt(end) !== '\n') {
    end += text.charAt(end) === '\\' ? 2 : 1;
  }
  return end - from;
}

function templateText(text: string, from: number): number {
  let end = from;
  while (end < text.length && text.charAt(end) !== '`' && !text.startsWith('${', end)) {
    end += text.charAt(end) === '\\' ? 2 : 1;
  }
  return end - from;
}

function regexText(text: string, from: number): number {
  let inClass = false;
  let end = from + 1;
  while (end < text.length && text.charAt(end) !== '\n') {
    const character = text.charAt(end);
    if (character === '\\') end += 1;
    else if (character === '[') inClass = true;
    else if (character === ']') inClass = false;
    else if (character === '/' && !inClass) return end + 1 - from;
    end += 1;
  }
  return end - from;
}

// After a value a slash divides; after an operator, an opening bracket or a keyword it opens a
// regular expression. A `)` is taken for the end of a value: `if (x) /re/.test(y)` is not written.
function regexMayStart(before: string): boolean {
  const code = before.trimEnd().slice(-20);
  return /(?:^|[(,=:[!&|?{};+\-*%~^<>]|(?:^|[^\w$.])(?:return|typeof|case|in|of|await|void))$/.test(
    code,
  );
}
