/**
 * Words as people type them: equal without regard to case, to marks on letters (`é` and `e`), and
 * to spaces at their ends. What is no letter counts as it stands.
 *
 * Letters that are of one piece in Unicode, such as `ø`, have no mark that could be left out.
 */

/** The block of marks for Latin, Greek and Cyrillic letters, which NFD takes off the letters. */
const MARKS = /[\u0300-\u036f]/g;

/** The one form of a text by which it is compared; nothing to show anybody. */
export function folded(text: string): string {
  const bare = text.normalize('NFD').replaceAll(MARKS, '');
  // To small letters first: `ẞ` is its own capital, and `ß` has `SS`.
  return bare.toLowerCase().replaceAll(MARKS, '').toUpperCase().trim();
}
