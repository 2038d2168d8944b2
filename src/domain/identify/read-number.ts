/**
 * Numbers as somebody read them off a piece, in part perhaps: `*` stands for a character that
 * could not be read, `…` (or three dots) for any number of them. They are compared as part numbers
 * are, without spaces, dots, dashes and case.
 *
 * A number names the part that records it. Of another part it is no number only if that records
 * its own number of the same owner: a part of which nobody recorded one may have any.
 */

import type { Part } from '../catalogue/catalogue.js';
import { type NumberOfPart, numberKey, ownerOf } from '../catalogue/part-number.js';

export interface ToldNumber {
  /** As it was read. */
  readonly text: string;
  /** Ids of the parts that record it. */
  readonly parts: ReadonlySet<string>;
  /** Who gave those numbers, in the form in which names are compared; null is not recorded. */
  readonly owners: ReadonlySet<string | null>;
}

export function toldNumber(text: string, found: readonly NumberOfPart[]): ToldNumber {
  return {
    text,
    parts: new Set(found.map(({ part }) => part.id)),
    owners: new Set(found.map(({ owner }) => (owner === null ? null : numberKey(owner)))),
  };
}

export function numberCodeOf(part: Part, { parts, owners }: ToldNumber) {
  if (parts.has(part.id)) return 'number-agrees';
  if (owners.size === 0 || owners.has(null)) return 'number-not-recorded';
  const own = new Set<string | null>();
  for (const number of part.numbers) {
    const owner = ownerOf(part, number);
    if (owner !== null) own.add(numberKey(owner));
  }
  return [...owners].every((owner) => own.has(owner)) ? 'other-number' : 'number-not-recorded';
}

/** The signs that were read, between those that were not; the first and last stand at the ends. */
type Pattern = readonly string[];

function patternOf(text: string): Pattern {
  return text.split(/…|\.{3,}/u).map(numberKey);
}

/** Whether a number says anything: one of unread characters alone may be any. */
export function saysAnything(text: string): boolean {
  return patternOf(text).some((signs) => signs.replaceAll('*', '') !== '');
}

/** Whether some of it could not be read. */
export function isPartlyRead(text: string): boolean {
  const pattern = patternOf(text);
  return pattern.length > 1 || pattern.some((signs) => signs.includes('*'));
}

/** Tells whether the key of a number can be that of this one. */
export function canBeNumber(text: string): (key: string) => boolean {
  const pattern = patternOf(text);
  const [first = '', ...others] = pattern;
  const last = others.pop();
  return (key) => {
    if (!isAlikeAt(key, first, 0)) return false;
    if (last === undefined) return key.length === first.length;
    let from = first.length;
    for (const signs of others) {
      const place = placeOf(key, signs, from);
      if (place === null) return false;
      from = place + signs.length;
    }
    const end = key.length - last.length;
    return end >= from && isAlikeAt(key, last, end);
  };
}

/** The first place from there on where these signs can stand. */
function placeOf(key: string, signs: string, from: number): number | null {
  for (let place = from; place + signs.length <= key.length; place += 1) {
    if (isAlikeAt(key, signs, place)) return place;
  }
  return null;
}

function isAlikeAt(key: string, signs: string, place: number): boolean {
  if (place + signs.length > key.length) return false;
  for (let index = 0; index < signs.length; index += 1) {
    const sign = signs[index];
    if (sign !== '*' && sign !== key[place + index]) return false;
  }
  return true;
}
