/**
 * What one entity of a list is called where it stands by itself.
 */

/** `vehicles` holds vehicles: each of them is a `vehicle`. */
export function entityWord(list: string): string {
  return list.replace(/s$/, '');
}
