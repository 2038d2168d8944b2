/**
 * What is left of the lists and maps of a document that has been read: faulty items and entries
 * are holes, which keep the places and names of the others as they are in the document.
 */

import { at, type FaultList } from './faults.js';
import type { NameSpace } from './lost-names.js';
import { isId } from './read-text.js';

/** The items of a list that could be read, each with its place. */
export function* present<Item>(
  items: readonly Item[],
  pointer: string,
): Generator<[item: Item, pointer: string, index: number]> {
  for (const [index, item] of (items as readonly (Item | undefined)[]).entries()) {
    if (item !== undefined) yield [item, at(pointer, index), index];
  }
}

/** The entries of a map that could be read, each with its place. */
export function* presentEntries<Item>(
  map: Readonly<Record<string, Item>>,
  pointer: string,
): Generator<[name: string, item: Item, pointer: string]> {
  for (const [name, item] of Object.entries<Item | undefined>(map)) {
    if (item !== undefined) yield [name, item, at(pointer, name)];
  }
}

/**
 * The entries of a map that have a name, each with its place; without an item where that could
 * not be read, so that the name can be looked up even so.
 */
export function* namedEntries<Item>(
  map: Readonly<Record<string, Item>>,
  pointer: string,
): Generator<[name: string, item: Item | undefined, pointer: string]> {
  for (const [name, item] of Object.entries<Item | undefined>(map)) {
    if (isId(name)) yield [name, item, at(pointer, name)];
  }
}

/** Loses the names of the entries that could not be read. */
export function loseUnread(
  map: Readonly<Record<string, unknown>>,
  space: NameSpace,
  list: FaultList,
): void {
  for (const [name, item] of Object.entries(map)) {
    if (!isId(name)) list.lost.addNameless(space, name);
    else if (item === undefined) list.lost.add(space, name);
  }
}
