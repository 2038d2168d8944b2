/**
 * Where something stands in a JSON text, as an RFC 6901 pointer.
 */

/** No pointer to a field that there is comes near this, in UTF-16 units. */
const LONGEST_POINTER = 1000;

/** Longest name that is repeated to whoever sent it. */
const LONGEST_ECHO = 64;

/** What a screen does not show, or shows by changing what stands around it. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu;

/**
 * The pointer, or that of the nearest place around it where names are so long that repeating them
 * for each fault would make more of a text than there was of it.
 */
export function pointerTo(steps: readonly PropertyKey[]): string {
  let pointer = '';
  for (const step of steps) {
    const name = String(step);
    if (pointer.length + name.length > LONGEST_POINTER) break;
    pointer += `/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
  }
  return pointer;
}

/** The same for a pointer that is written already. */
export function nearestTo(pointer: string): string {
  if (pointer.length <= LONGEST_POINTER) return pointer;
  return pointer.slice(0, Math.max(0, pointer.lastIndexOf('/', LONGEST_POINTER)));
}

/** A name as it was sent, cut where it is long, with a sign for what is not to be seen. */
export function echo(name: string): string {
  const cut = name.length <= LONGEST_ECHO ? name : `${name.slice(0, LONGEST_ECHO)}…`;
  return cut.replaceAll(UNSEEN, '\ufffd');
}
