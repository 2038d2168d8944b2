/**
 * Checks offers: each is for a part, a lot or a work that there is, which share one space of
 * names, and in a currency.
 */

import { readAmount } from './amount.js';
import type { OfferRecord } from './document.js';
import { at, type FaultList, quoted } from './faults.js';
import type { Entities, Lists } from './read-document.js';

/** The lists of what can be offered, in the order in which a name is looked for. */
const OFFERED = ['parts', 'lots', 'works'] as const;

const ONE = { parts: 'part', lots: 'lot', works: 'work' } as const;

/** What is bought must be one thing, so no two of the lists may have a name in common. */
export function checkOfferedNames(lists: Lists, list: FaultList): void {
  const taken = new Map<string, string>();
  for (const sort of OFFERED) {
    for (const [{ id }, pointer] of lists[sort].records) {
      const other = taken.get(id);
      const isNamed = lists[sort].ids.has(id);
      if (isNamed && other !== undefined && other !== ONE[sort]) {
        const said = 'an offer could not tell the two apart';
        const text = `A ${other} is called ${quoted(id)} too; ${said}.`;
        list.fault(at(pointer, 'id'), 'duplicate-id', text);
      }
      if (isNamed) taken.set(id, other ?? ONE[sort]);
    }
  }
}

export function compileOffers(
  { records }: Entities<OfferRecord>,
  lists: Lists,
  currency: string | null,
  list: FaultList,
): OfferRecord[] {
  if (records.length > 0 && currency === null && !list.isUnread('/currency')) {
    list.missing('', 'currency', 'offers have prices');
  }
  const known = new Set(OFFERED.flatMap((sort) => [...lists[sort].ids]));
  doubtSharedSkus(records, known, list);
  for (const [record, pointer] of records) {
    checkOffered(record.for, known, at(pointer, 'for'), list);
    if (record.pack !== undefined) readAmount(record.pack, at(pointer, 'pack'), list);
  }
  return records.map(([record]) => record);
}

/** A code that is of several things is of none of them to whoever asks by it. */
function doubtSharedSkus(
  records: Entities<OfferRecord>['records'],
  known: ReadonlySet<string>,
  list: FaultList,
): void {
  const offered = new Map<string, string>();
  for (const [{ sku, for: name }, pointer] of records) {
    if (sku === undefined || !known.has(name)) continue;
    const other = offered.get(sku) ?? name;
    offered.set(sku, other);
    if (other === name) continue;
    const text = `${quoted(sku)} does not tell this and ${quoted(other)} apart.`;
    list.warn(at(pointer, 'sku'), 'shared-sku', text);
  }
}

function checkOffered(
  name: string,
  known: ReadonlySet<string>,
  pointer: string,
  list: FaultList,
): void {
  if (known.has(name)) return;
  const isLost = ['lots', 'works'].some((sort) => list.lost.excuses(sort, name, known));
  if (isLost) return;
  const text = `There is no part, lot or work ${quoted(name)}.`;
  list.unknown(name, { sort: 'parts', pointer, known, text });
}
