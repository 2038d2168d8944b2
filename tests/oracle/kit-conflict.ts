/**
 * Why a kit question has no route, by trying every set of its demands: each is asked again without
 * the others, and whether it has a route then is left to the oracle that tries everything.
 *
 * Of the vehicle as it stands nothing is a demand: with all of them taken back it stays as it is.
 */

import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { type KitAsk, rulesetOf } from './kit-ask.js';
import type { KitRoute } from './kit-order.js';
import { askKits, type OracleKits } from './kit-routes.js';

export interface Asked {
  readonly document: CatalogueDocument;
  readonly ask: KitAsk;
}

interface OracleDemand {
  readonly key: string;
  readonly without: (asked: Asked) => Asked;
}

export interface OracleConflict {
  /** Keys of demands. */
  readonly conflict: readonly string[];
  /** The fewest demands to take back, all such sets, with the routes that there are then. */
  readonly smallest: readonly WayOut[];
  /** By demand of the conflict, how many must be taken back with it at the least. */
  readonly sizes: readonly number[];
}

export interface WayOut {
  readonly keys: readonly string[];
  readonly routes: readonly KitRoute[];
}

/** More demands than this make too many sets. */
const MOST_DEMANDS = 10;

export class TooManyDemands extends Error {}

export function demandsIn(asked: Asked): OracleDemand[] {
  const { document, ask } = asked;
  const withAsk = (key: string, change: (ask: KitAsk) => Partial<KitAsk>): OracleDemand => ({
    key,
    without: (from) => ({ ...from, ask: { ...from.ask, ...change(from.ask) } }),
  });
  const isSaid = Object.keys(ask.said).length + Object.keys(ask.saidAdapters).length > 0;
  const demanded = rulesetOf(document, ask)?.demands;
  return [
    ...(isSaid && !ask.ignorePresent ? [withAsk('present ', () => ({ ignorePresent: true }))] : []),
    ...ask.wants.map((want, index) =>
      withAsk(`want ${index}`, ({ wants }) => ({ wants: wants.filter((one) => one !== want) })),
    ),
    ...[...new Set(ask.keep)].map((id) =>
      withAsk(`keep ${id}`, ({ keep }) => ({ keep: keep.filter((one) => one !== id) })),
    ),
    ...[...new Set(ask.avoid)].map((id) =>
      withAsk(`avoid-part ${id}`, ({ avoid }) => ({ avoid: avoid.filter((one) => one !== id) })),
    ),
    ...(ask.costLimit === null ? [] : [withAsk('limit cost', () => ({ costLimit: null }))]),
    ...(ask.changesLimit === null
      ? []
      : [withAsk('limit changedPositions', () => ({ changesLimit: null }))]),
    ...(ask.torque === null ? [] : [withAsk('torque ', () => ({ torque: null }))]),
    ...(demanded?.keep ?? []).map((id) => ({
      key: `ruleset-keep ${id}`,
      without: (from: Asked) =>
        withRuleset(from, (demands) => ({
          ...demands,
          keep: (demands.keep ?? []).filter((one) => one !== id),
        })),
    })),
    ...(demanded?.checks ?? []).map((check, index) => ({
      key: `ruleset-check ${index}`,
      without: (from: Asked) =>
        withRuleset(from, (demands) => ({
          ...demands,
          checks: (demands.checks ?? []).filter((one) => one !== check),
        })),
    })),
    ...(ask.refusesUnknowns ? [withAsk('unknowns ', () => ({ refusesUnknowns: false }))] : []),
  ];
}

type RulesetDemands = NonNullable<CatalogueDocument['rulesets']>[number]['demands'];

function withRuleset(
  { document, ask }: Asked,
  change: (demands: RulesetDemands) => RulesetDemands,
): Asked {
  const rulesets = (document.rulesets ?? []).map((one) =>
    one.id === ask.ruleset ? { ...one, demands: change(one.demands) } : one,
  );
  return { ask, document: { ...document, rulesets } };
}

/** Ends with TooManyDemands, or as the oracle of routes does, where it would take too long. */
export function conflictBy(asked: Asked): OracleConflict {
  const demands = demandsIn(asked);
  if (demands.length > MOST_DEMANDS) throw new TooManyDemands();
  const known = new Map<string, OracleKits>();
  const keptOnly = (kept: ReadonlySet<number>): OracleKits => {
    const name = [...kept].sort((a, b) => a - b).join();
    let kits = known.get(name);
    if (kits === undefined) {
      const dropped = demands.filter((_, index) => !kept.has(index));
      const { document, ask } = dropped.reduce((from, one) => one.without(from), asked);
      kits = askKits(document, ask);
      known.set(name, kits);
    }
    return kits;
  };
  const all = demands.map((_, index) => index);
  const hasWay = (kept: ReadonlySet<number>): boolean => keptOnly(kept).routes.length > 0;
  const complement = (set: readonly number[]) => new Set(all.filter((one) => !set.includes(one)));
  const sets = setsOf(demands.length);
  const conflict = sets.find((set) => !hasWay(new Set(set)));
  if (conflict === undefined) throw new Error('there is a way');
  const isWayOut = (set: readonly number[]): boolean => hasWay(complement(set));
  const size = sets.find(isWayOut)?.length ?? 0;
  const keysOf = (set: readonly number[]) => set.map((index) => demands[index]?.key ?? '');
  return {
    conflict: keysOf(conflict),
    smallest: sets
      .filter((set) => set.length === size && isWayOut(set))
      .map((set) => ({
        keys: keysOf(set),
        routes: keptOnly(complement(set)).routes,
      })),
    // Of sets of which all must be dropped: more than one that is a way out already is none.
    sizes: conflict.map((demand) => {
      const minimal = sets.find(
        (set) =>
          set.includes(demand) && isWayOut(set) && set.every((one) => !isWayOut(less(set, one))),
      );
      return minimal?.length ?? 0;
    }),
  };
}

function less(set: readonly number[], out: number): number[] {
  return set.filter((one) => one !== out);
}

/** All sets of members below a number, small ones first, then those whose members come first. */
function setsOf(count: number): number[][] {
  const sets: number[][] = [[]];
  for (let first = 0; first < sets.length; first += 1) {
    const set = sets[first] ?? [];
    for (let next = (set.at(-1) ?? -1) + 1; next < count; next += 1) sets.push([...set, next]);
  }
  return sets;
}
