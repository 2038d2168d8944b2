/**
 * What a kit question asks, in the words of documents: plain data, so that a question that shows
 * something shrinks and prints as it is.
 */

import type { CatalogueDocument, RulesetRecord } from '../../src/domain/catalogue/document.js';
import { partOf } from './article.js';
import { donorPieces } from './donor.js';
import { byId, type Hand, isDonorName, type Placed } from './scene.js';

export type KitWish =
  | {
      readonly is: 'part';
      /** Null for any one place. */
      readonly position: string | null;
      readonly hand: Hand | null;
      readonly parts: readonly string[];
      readonly renews: boolean;
    }
  /** All of it that has a place is put there, or at least one piece of it. */
  | { readonly is: 'lot'; readonly lot: string; readonly whole: boolean }
  /** So many times what a load of the layout asks for, a decimal. */
  | { readonly is: 'load'; readonly load: string; readonly atLeast: string }
  | { readonly is: 'condition'; readonly position: string; readonly condition: unknown };

export interface KitAsk {
  readonly vehicle: string;
  readonly said: Readonly<Record<string, Placed>>;
  readonly saidAdapters: Readonly<Record<string, readonly string[]>>;
  readonly wants: readonly KitWish[];
  readonly keep: readonly string[];
  /** Parts that are not added. */
  readonly avoid: readonly string[];
  readonly owned: Readonly<Record<string, number>>;
  readonly lots: readonly string[];
  readonly workUpTo: 'none' | 'workshop' | 'engineer';
  /** Ten-thousandths of the currency. */
  readonly costLimit: number | null;
  readonly changesLimit: number | null;
  readonly labourRate: number | null;
  readonly torque: string | null;
  readonly use: 'road' | 'off-road' | null;
  readonly ignorePresent: boolean;
  readonly ruleset: string | null;
  readonly refusesUnknowns: boolean;
  readonly from: 'recorded' | 'offered';
  readonly prefer: 'cost' | 'changed-positions' | 'labour-hours';
}

export function rulesetOf(document: CatalogueDocument, ask: KitAsk): RulesetRecord | null {
  return ask.ruleset === null ? null : byId(document.rulesets, ask.ruleset);
}

/** Positions that must stay as they are. */
export function keptIn(document: CatalogueDocument, ask: KitAsk): readonly string[] {
  return [...ask.keep, ...(rulesetOf(document, ask)?.demands.keep ?? [])];
}

/** So many of an article, as far as they are counted. */
export type Pieces = ReadonlyMap<string, number>;

export function addPieces(to: Map<string, number>, part: string, pieces: number): void {
  to.set(part, (to.get(part) ?? 0) + pieces);
}

/** So many pieces of an article in a lot. */
export interface LotPieces {
  readonly part: string;
  readonly pieces: number;
  /** Where it stands on the vehicle that is taken apart; null where it comes by itself. */
  readonly position: string | null;
}

/** What a lot has in it: the articles, and what stands on the vehicles that are taken apart. */
export function piecesOfLot(document: CatalogueDocument, lot: string): LotPieces[] {
  const alone = byId(document.lots, lot).contains.flatMap((item): LotPieces[] => {
    if (!('part' in item)) return [];
    return [{ part: item.part, pieces: Number(item.quantity ?? 1), position: null }];
  });
  const taken = donorPieces(document, lot).map(({ name, pieces, position }): LotPieces => {
    return { part: name, pieces, position };
  });
  return [...alone, ...taken];
}

export function contentsOf(document: CatalogueDocument, lot: string): Pieces {
  const contents = new Map<string, number>();
  for (const { part, pieces } of piecesOfLot(document, lot)) addPieces(contents, part, pieces);
  return contents;
}

/** Lots that may be bought, and those that must be. */
function lotsIn({ lots, wants }: KitAsk): string[] {
  return [...lots, ...wants.flatMap((want) => (want.is === 'lot' ? [want.lot] : []))];
}

/** Whether an article may be added at all; whether there are enough is another question. */
export function mayAdd(document: CatalogueDocument, ask: KitAsk, article: string): boolean {
  const part = partOf(article);
  if (ask.avoid.includes(part) || ask.avoid.includes(article)) return false;
  if (ask.from === 'recorded' && !isDonorName(part)) return true;
  const isOffered = (document.offers ?? []).some((offer) => offer.for === part);
  const isOwned = (ask.owned[part] ?? 0) > 0;
  return isOffered || isOwned || lotsIn(ask).some((lot) => contentsOf(document, lot).has(part));
}

/** A question about a vehicle that wants nothing, says nothing and allows no works. */
export const NOTHING_ASKED: Omit<KitAsk, 'vehicle'> = {
  said: {},
  saidAdapters: {},
  wants: [],
  keep: [],
  avoid: [],
  owned: {},
  lots: [],
  workUpTo: 'none',
  costLimit: null,
  changesLimit: null,
  labourRate: null,
  torque: null,
  use: null,
  ignorePresent: false,
  ruleset: null,
  refusesUnknowns: false,
  from: 'recorded',
  prefer: 'cost',
};
