/**
 * Wishes as a URL and a command line have them: `gearbox-6-late`, `gearbox-6-late@gearbox`,
 * `lot:clutch-kit-215`, `load:clutch-load=1.25`. A name that says itself what it is may have any
 * sign in it, so there is no place behind it.
 */

import type { KitQuestion } from './kit-question.js';

type Want = NonNullable<KitQuestion['want']>[number];

const LOT = 'lot:';
const LOAD = 'load:';

/** @param isWhole whether the text is a name to its end. */
export function wantIn(text: string, isWhole: (text: string) => boolean): Want {
  if (text.startsWith(LOT)) return { lot: text.slice(LOT.length) };
  if (text.startsWith(LOAD)) {
    const [load = '', ...atLeast] = text.slice(LOAD.length).split('=');
    return { load, atLeast: atLeast.join('=') };
  }
  const sign = isWhole(text) ? -1 : text.lastIndexOf('@');
  if (sign === -1) return { part: text };
  return { part: text.slice(0, sign), position: text.slice(sign + 1) };
}

/** The text that is read so; null where there is none. */
export function wantText(want: unknown, isWhole: (text: string) => boolean): string | null {
  const text = textOf(want);
  if (text === null) return null;
  const read = wantIn(text, isWhole);
  return JSON.stringify(sorted(read)) === JSON.stringify(sorted(want as Want)) ? text : null;
}

function textOf(want: unknown): string | null {
  if (typeof want !== 'object' || want === null) return null;
  if ('lot' in want) return `${LOT}${String(want.lot)}`;
  if ('load' in want && 'atLeast' in want) {
    return `${LOAD}${String(want.load)}=${String(want.atLeast)}`;
  }
  if (!('part' in want) || typeof want.part !== 'string') return null;
  return 'position' in want ? `${want.part}@${String(want.position)}` : want.part;
}

function sorted(want: Want): [string, unknown][] {
  return Object.entries(want).sort(([a], [b]) => (a < b ? -1 : 1));
}
