/**
 * Text for people: wrapped to the width of the terminal, with modest colour where there is a
 * terminal. Characters that would steer the terminal are shown as U+FFFD, since the texts of a
 * catalogue are written by others. Width is counted in code points; double-width scripts are
 * left out.
 */

import type { Output } from './world.js';

export type Tone = 'plain' | 'strong' | 'faint' | 'good' | 'bad' | 'doubtful';

/** Select Graphic Rendition parameters of ECMA-48, section 8.3.117. */
const SGR: Readonly<Record<Exclude<Tone, 'plain'>, string>> = {
  strong: '1',
  faint: '2',
  good: '1;32',
  bad: '1;31',
  doubtful: '1;33',
};

/** Wider lines are hard to read; narrower ones have no room for an indent. */
const WIDTH = { most: 100, least: 24 } as const;

export interface Line {
  /** Columns before the text. */
  readonly indent?: number;
  /** Stands before the first line; the others are indented by its width. */
  readonly marker?: string;
  readonly tone?: Tone;
}

export class Page {
  readonly #output: Output;
  /** In columns. */
  readonly width: number;
  readonly #isColoured: boolean;

  constructor(output: Output, env: Readonly<Record<string, string | undefined>>) {
    this.#output = output;
    const columns = output.columns ?? WIDTH.most;
    this.width = Math.max(WIDTH.least, Math.min(WIDTH.most, columns));
    const isRefused = (env.NO_COLOR ?? '') !== '' || env.TERM === 'dumb';
    this.#isColoured = output.isTerminal && !isRefused;
  }

  /** One paragraph, wrapped. */
  say(text: string, { indent = 0, marker = '', tone = 'plain' }: Line = {}): void {
    const hang = indent + widthOf(marker);
    const lines = wrap(harmless(text), this.width - hang);
    for (const [index, line] of lines.entries()) {
      const lead = index === 0 ? ' '.repeat(indent) + marker : ' '.repeat(hang);
      this.#output.write(`${lead}${this.#paint(line, tone)}\n`);
    }
  }

  /** One line as it is, however long: for what people copy, search or point at. */
  verbatim(text: string, tone: Tone = 'plain'): void {
    this.#output.write(`${this.#paint(harmless(text), tone)}\n`);
  }

  gap(): void {
    this.#output.write('\n');
  }

  #paint(text: string, tone: Tone): string {
    if (tone === 'plain' || !this.#isColoured) return text;
    return `\u001b[${SGR[tone]}m${text}\u001b[0m`;
  }
}

/** In code points. */
export function widthOf(text: string): number {
  return Array.from(text).length;
}

/** Control characters (general category Cc) and those that turn the direction of writing. */
export function harmless(text: string): string {
  return text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, (one) =>
    one === '\n' || one === '\t' ? ' ' : '\ufffd',
  );
}

/** Breaks at spaces; a word that is longer than the width keeps a line of its own. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line];
}
