/**
 * Every route of a kit question, by trying every configuration of the vehicle: what stands at
 * each place and sits in each mating. Each is judged as a whole. Those that are valid and have
 * nothing in them that could go back are told apart by what they change and by what is proven;
 * the cheapest of each kind is the route.
 */

import type { CatalogueDocument, LayoutRecord } from '../../src/domain/catalogue/document.js';
import { failsAlone, judgeScene } from './judge.js';
import { type KitAsk, rulesetOf } from './kit-ask.js';
import { costOf, subsetsOf } from './kit-bill.js';
import {
  type Change,
  changedIn,
  meetsWishes,
  nameOf,
  sceneWith,
  touchedIn,
  wishesIn,
} from './kit-change.js';
import { type Candidate, grouped, isHidden, type KitRoute } from './kit-order.js';
import { billOf } from './kit-takes.js';
import { addedTo, rowsIn, valuesAt, withWorkedParts } from './kit-values.js';
import { endsOf } from './mating.js';
import { byId, Scene } from './scene.js';

export interface OracleKits {
  /** In no order. */
  readonly routes: readonly KitRoute[];
  readonly configurations: number;
  readonly valid: number;
  readonly redundant: number;
  /** The forms of what fails in some of them, and the words of the checks among it. */
  readonly failed: ReadonlySet<string>;
}

/** Asked where trying would take too long. */
export class TooManyChanges extends Error {}

export interface Bounds {
  /** Configurations that there are. */
  readonly all: number;
  /** Those of them that are judged as a whole. */
  readonly configurations: number;
}

/**
 * Whether checks that share one choice are a constraint of their own, or all choices together are
 * one: that nothing opens that was not open can be meant of either.
 */
export type Choices = 'each' | 'together';

const FEW: Bounds = { all: 50_000, configurations: 2000 };

export function askKits(
  document: CatalogueDocument,
  ask: KitAsk,
  choices: Choices = 'each',
  bounds: Bounds = FEW,
): OracleKits {
  const base = presentOf(document, ask);
  const changes = allChanges(base, ask, bounds);
  const judged = new Map<string, Candidate>();
  const failed = new Set<string>();
  for (const change of changes) {
    const candidate = judgeChange(change, base, ask, failed, choices);
    if (candidate !== null) judged.set(keyOf(change), candidate);
  }
  const valid = [...judged.values()];
  const validAs = (change: Change) => judged.get(keyOf(change)) ?? null;
  const kept = valid.filter((one) => isIrredundant(one, validAs, base));
  const within = kept.filter((one) => isWithinLimits(one, ask));
  const routes = grouped(within, ask);
  return {
    routes: routes.filter((route) => !isHidden(route, routes)),
    configurations: changes.length,
    valid: valid.length,
    redundant: valid.length - kept.length,
    failed,
  };
}

/** With the checks of the ruleset among those of the layout, where each has a name of its own. */
export function presentOf(document: CatalogueDocument, ask: KitAsk): Scene {
  const demanded = rulesetOf(document, ask)?.demands.checks ?? [];
  const checks = demanded.map((raw, index) => ({ ...(raw as object), id: `${RULESET}${index}` }));
  const layouts = (document.layouts ?? []).map((layout) => {
    const loads = loadsWished(layout, ask);
    return { ...layout, checks: [...(layout.checks ?? []), ...checks, ...loads] };
  });
  const { vehicle, said, saidAdapters, torque, use, ignorePresent } = ask;
  return new Scene(withWorkedParts({ ...document, layouts }, ask), {
    vehicle,
    said,
    saidAdapters,
    torque,
    use,
    ignorePresent,
    chosen: {},
    chosenAdapters: {},
  });
}

export const RULESET = 'ruleset ';
export const WISHED = 'wished ';

/** The loads that are wished for, each asking for more than it does by itself. */
function loadsWished({ checks = [] }: LayoutRecord, { wants }: KitAsk): object[] {
  return wants.flatMap((want, index) => {
    if (want.is !== 'load') return [];
    const load = byId(checks as { readonly id: string; readonly demand: unknown }[], want.load);
    const demand = [load.demand].flat();
    return [
      { ...load, id: `${WISHED}${index}`, severity: 'must', demand: [...demand, want.atLeast] },
    ];
  });
}

function isDemanded(name: string): boolean {
  return name.startsWith(RULESET) || name.startsWith(WISHED);
}

/** All that meet the wishes and in which no mating fails whatever else there is. */
function allChanges(base: Scene, ask: KitAsk, bounds: Bounds): Change[] {
  const { positions, matings = [] } = base.layout;
  const values = new Map(positions.map((position) => [position.id, valuesAt(position, base, ask)]));
  const rows = new Map(matings.map((mating) => [mating.id, rowsIn(mating, base, ask)]));
  const sizes = [...values.values(), ...rows.values()].map(({ length }) => length);
  const all = sizes.reduce((product, size) => product * size, 1);
  if (all > bounds.all) throw new TooManyChanges();
  const isHopeless = (change: Change, mating: string, ends: readonly string[]): boolean => {
    const pieces = ends.map((id) => (change.places.get(id) ?? []).map(({ holds }) => holds).join());
    const name = `hopeless ${mating} ${change.rows.get(mating)?.join()} ${pieces.join(' ')}`;
    return base.memory.once(name, () => failsAlone(sceneWith(change, base), mating));
  };
  let changes: Change[] = [{ places: new Map(), rows: new Map() }];
  const placed = new Set<string>();
  for (const position of positions) {
    placed.add(position.id);
    changes = changes.flatMap(({ places, rows: before }) =>
      (values.get(position.id) ?? []).map((value) => {
        return { places: new Map([...places, [position.id, value]]), rows: before };
      }),
    );
    for (const mating of matings) {
      const ends = endsOf(mating).map(([id]) => id);
      if (!ends.includes(position.id) || !ends.every((id) => placed.has(id))) continue;
      changes = changes
        .flatMap(({ places, rows: before }) =>
          (rows.get(mating.id) ?? []).map((row) => {
            return { places, rows: new Map([...before, [mating.id, row]]) };
          }),
        )
        .filter((change) => !isHopeless(change, mating.id, ends));
    }
  }
  const wished = changes.filter((change) => meetsWishes(change, base, ask));
  if (wished.length > bounds.configurations) throw new TooManyChanges();
  return wished.map(({ places, rows: inAnyOrder }) => {
    const inOrder = matings.map(({ id }) => [id, inAnyOrder.get(id) ?? []] as const);
    return { places, rows: new Map(inOrder) };
  });
}

function keyOf(change: Change): string {
  const renewed = [...change.places.values()].map((pieces) => pieces.map((one) => one.isRenewed));
  return `${nameOf(change)} ${renewed.join()}`;
}

/** Null where something fails, or where what it takes cannot be had. */
export function judgeChange(
  change: Change,
  base: Scene,
  ask: KitAsk,
  failed: Set<string>,
  choices: Choices,
): Candidate | null {
  const scene = sceneWith(change, base);
  const { findings } = judgeScene(scene);
  const open = new Set<string>();
  for (const { form, id, severity, verdicts } of findings) {
    const [first] = verdicts;
    if (severity === 'caution' || first === undefined) continue;
    // What is demanded of a vehicle is demanded of all of it, touched or not.
    const state = id.split('+').some(isDemanded) ? first.computed : first.state;
    if (state === 'fails') {
      failed.add(form);
      for (const word of wordsOf(id, base)) failed.add(word);
      return null;
    }
    // Of two hands the worse counts: one of them known better is no reason for a change.
    const isJoined = form === 'choice' && choices === 'together';
    if (state === 'open') open.add(isJoined ? form : `${form} ${id}`);
  }
  // Where nothing carries a load, it has no margin.
  const isCarried = ask.wants.every(({ is }, index) => {
    return is !== 'load' || findings.some(({ id }) => id === `${WISHED}${index}`);
  });
  if (!isCarried) return null;
  for (const { name, outcome } of wishesIn(scene, ask)) {
    if (outcome === 'fails') return null;
    if (outcome === 'open') open.add(name);
  }
  const bill = billOf(change, scene, base);
  const cost = costOf(bill, scene.document, ask);
  if (cost === null) return null;
  const changed = changedIn(change, base);
  const emptied = changed.filter((id) =>
    change.places.get(id)?.some(({ holds }) => holds === 'empty'),
  );
  const usesUp = bill.goods.some(({ isExtra }) => isExtra);
  const grade = open.size > 0 || cost.isLimitUnknown ? 'open' : 'proven';
  const touched = touchedIn(change, base);
  return { change, grade, changed, touched, cost, open, emptied, usesUp };
}

/** The words of a check of the layout. */
function wordsOf(id: string, { layout }: Scene): string[] {
  const check = (layout.checks ?? []).find((one) => (one as { id?: string }).id === id);
  return Object.keys(check ?? {});
}

/**
 * Whatever is put back, alone or together, something fails or opens. A row of adapters goes back to
 * the one that is there now, or only what is new in it goes.
 *
 * @param validAs what a change comes to; null where it is not valid.
 */
export function isIrredundant(
  one: Candidate,
  validAs: (change: Change) => Candidate | null,
  base: Scene,
): boolean {
  const { places, rows } = one.change;
  const units = [
    ...one.touched.map((id) => ({ position: id })),
    ...[...rows].flatMap(([mating, row]) => {
      const now = base.adapters('present', mating).parts;
      const others = [now, withoutNew(row, now)].filter((one) => one.join() !== row.join());
      return others.map((other) => ({ mating, row: other }));
    }),
  ];
  return subsetsOf(units).every((group) => {
    if (group.length === 0) return true;
    const back = { places: new Map(places), rows: new Map(rows) };
    for (const unit of group) {
      if ('mating' in unit) {
        back.rows.set(unit.mating, unit.row);
        continue;
      }
      const pieces = (places.get(unit.position) ?? []).map((piece) => {
        const { holds } = base.seat('present', unit.position, piece.hand);
        const before = typeof holds === 'object' ? holds.id : holds;
        return { ...piece, holds: before, isRenewed: false };
      });
      back.places.set(unit.position, pieces);
    }
    const other = validAs(back);
    return other === null || [...other.open].some((name) => !one.open.has(name));
  });
}

function withoutNew(row: readonly string[], now: readonly string[]): string[] {
  const added = addedTo(row, now);
  return row.filter((id) => {
    const index = added.indexOf(id);
    if (index >= 0) added.splice(index, 1);
    return index < 0;
  });
}

function isWithinLimits({ changed, grade }: Candidate, ask: KitAsk): boolean {
  const { changesLimit, refusesUnknowns } = ask;
  const isKnown = grade === 'proven' || !refusesUnknowns;
  return isKnown && (changesLimit === null || changed.length <= changesLimit);
}
