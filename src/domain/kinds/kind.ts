/**
 * The contract of a built-in interface kind: plain data in the same form in which a catalogue
 * declares kinds of its own, with nothing left out that a reader of an answer may ask for.
 */

import type { KindRecord, Text } from '../catalogue/document.js';

export interface BuiltInKind extends KindRecord {
  readonly name: Text;
  /** Governing standard and part; says so where there is none. */
  readonly standard: string;
  /** What each side is, by its id; left out where both ends are alike. */
  readonly sideNames?: { readonly [side: string]: Text };
  /** What two faces can still differ in although every check holds. */
  readonly notChecked: readonly Text[];
  /** The caution group of the joint. */
  readonly caution: string;
}
