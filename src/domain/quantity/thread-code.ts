/**
 * Metric threads by name: one way to write each, so that `M10x1.0`, `m10 x 1` and `M10×1` are one
 * thread, and a size without a pitch is the coarse thread of that size.
 *
 * Standards: ISO 965-1 for the name, whose pitch may be left out for a coarse thread; ISO 261 for
 * the coarse pitches (from memory). Left out: inch threads, tolerance classes, multiple starts.
 */

const METRIC = /^m ?(\d{1,3}(?:\.\d{1,2})?)(?: ?[x×] ?(\d{1,2}(?:\.\d{1,3})?))?$/i;

/** Coarse pitch in mm by nominal diameter in mm, ISO 261, first choices and those of vehicles. */
const COARSE: Readonly<Record<string, string>> = {
  '3': '0.5',
  '4': '0.7',
  '5': '0.8',
  '6': '1',
  '7': '1',
  '8': '1.25',
  '10': '1.5',
  '12': '1.75',
  '14': '2',
  '16': '2',
  '18': '2.5',
  '20': '2.5',
  '22': '2.5',
  '24': '3',
  '27': '3',
  '30': '3.5',
};

/** The name in its one form, `m10x1`; any other text as it is. */
export function canonicalThread(text: string): string {
  const [, size, written] = METRIC.exec(text) ?? [];
  if (size === undefined) return text;
  const diameter = shortest(size);
  const pitch = written === undefined ? COARSE[diameter] : shortest(written);
  return pitch === undefined ? `m${diameter}` : `m${diameter}x${pitch}`;
}

function shortest(digits: string): string {
  return digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits;
}
