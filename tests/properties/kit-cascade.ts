/**
 * Holds the reasons of routes against an oracle that judges the whole vehicle: whether with only
 * the changes before a line made what its first reason names fails or is open, and whether some
 * group of changes could go back without anything failing or opening.
 */

import type { Occupant } from '../../src/domain/catalogue/catalogue.js';
import type { Configuration } from '../../src/domain/judge/configuration.js';
import type { Line } from '../../src/domain/kit/basket.js';
import type { Route, Why, WhyCode } from '../../src/domain/kit/route.js';
import type { Finding } from '../oracle/finding.js';
import { judgeScene } from '../oracle/judge.js';
import { rulesetOf } from '../oracle/kit-ask.js';
import {
  type Change,
  holdsBefore,
  meetsWishes,
  sceneWith,
  wishesIn,
} from '../oracle/kit-change.js';
import {
  type Choices,
  isIrredundant,
  judgeChange,
  presentOf,
  RULESET,
  WISHED,
} from '../oracle/kit-routes.js';
import type { PlaceValue } from '../oracle/kit-values.js';
import type { Hand, Scene } from '../oracle/scene.js';
import type { KitCase } from './kit-case.js';

/** Where a cascade begins: at the wish, or at the vehicle. */
export const ROOTS: ReadonlySet<WhyCode> = new Set([
  'wanted',
  'avoided',
  'present-fails',
  'limit',
  'load',
]);

/** What is wrong with the order of the reasons alone; empty where nothing is. */
export function unrooted({ why, basket }: Route): string[] {
  const keys = basket.lines.map(({ key }) => key);
  return keys.flatMap((key) => {
    const [first] = why.get(key) ?? [];
    if (first === undefined) return [`${key}: no reason`];
    const told = (why.get(key) ?? []).flatMap(({ after }) =>
      after === null || keys.includes(after) ? [] : [`${key}: after ${after}, which is no line`],
    );
    return [...told, ...fromRoot(key, why), ...circles(key, why)];
  });
}

/** Along the first reasons. */
function fromRoot(key: string, why: Route['why']): string[] {
  const passed = [key];
  for (;;) {
    const [first] = why.get(passed.at(-1) ?? '') ?? [];
    if (first === undefined) return [`${passed.join(' < ')}: no reason`];
    if (first.after === null) {
      return ROOTS.has(first.code) ? [] : [`${passed.join(' < ')}: begins with ${first.code}`];
    }
    if (passed.includes(first.after)) return [`${passed.join(' < ')}: goes round`];
    passed.push(first.after);
  }
}

/** Whether a line is, by any of the reasons, its own reason. */
function circles(key: string, why: Route['why']): string[] {
  const reached = new Set<string>();
  const queue = [key];
  for (const one of queue) {
    for (const { after } of why.get(one) ?? []) {
      if (after === key) return [`${key}: comes after itself, by ${one}`];
      if (after === null || reached.has(after)) continue;
      reached.add(after);
      queue.push(after);
    }
  }
  return [];
}

/** A place or a mating that a route changes. */
interface Unit {
  readonly id: string;
  readonly isMating: boolean;
}

export class Checked {
  readonly #one: KitCase;
  readonly #base: Scene;

  constructor(one: KitCase) {
    this.#one = one;
    this.#base = presentOf(one.document, one.ask);
  }

  /** Groups of changes that could go back; empty where none can. */
  redundant(route: Route): string[] {
    const { ask } = this.#one;
    const done = this.#changeOf(route);
    const isRedundant = (choices: Choices): boolean => {
      const validAs = (change: Change) =>
        meetsWishes(change, this.#base, ask)
          ? judgeChange(change, this.#base, ask, new Set(), choices)
          : null;
      const whole = validAs(done);
      if (whole === null) throw new Error('the oracle has no such route');
      return !isIrredundant(whole, validAs, this.#base);
    };
    // Both are meant where choices are open: each by itself, or all of them together.
    const isBoth = isRedundant('each') && isRedundant('together');
    return isBoth ? ['something can go back'] : [];
  }

  /** First reasons that are not so; empty where all are. */
  untrue(route: Route): string[] {
    const done = this.#changeOf(route);
    const now = this.#now(done);
    const lines = new Map(route.basket.lines.map((line) => [line.key, line]));
    const before = new Map<string, Unit>();
    const wrong: string[] = [];
    for (const [key, [first]] of route.why) {
      const unit = unitOf(lines.get(key));
      if (unit === null || first === undefined || before.has(nameOf(unit))) continue;
      if (first.code !== 'taken-out') {
        const made = withUnits(now, done, [...before.values()]);
        if (!this.#isSo(first, made)) wrong.push(`${key}: ${told(first)} is not so`);
      }
      before.set(nameOf(unit), unit);
    }
    return wrong;
  }

  #isSo({ code, constraint }: Why, made: Change): boolean {
    const { ask, document } = this.#one;
    const scene = sceneWith(made, this.#base);
    const { findings } = judgeScene(scene);
    const isWrong = ({ verdicts }: Finding): boolean =>
      verdicts.some(({ state, computed }) => [state, computed].some((one) => isBad(one)));
    if (code === 'wanted') {
      const loads = findings.filter(({ id }) => id.includes(WISHED));
      const wished = ask.wants.filter(({ is }) => is === 'load').length;
      return (
        !meetsWishes(made, this.#base, ask) ||
        wishesIn(scene, ask).some(({ outcome }) => isBad(outcome)) ||
        loads.length < wished ||
        loads.some(isWrong)
      );
    }
    if (constraint === null) return findings.some(isWrong);
    const demanded = rulesetOf(document, ask)?.demands.checks ?? [];
    const own = demanded.findIndex((raw) => (raw as { id?: string }).id === constraint.id);
    const name = code === 'limit' && own >= 0 ? `${RULESET}${own}` : constraint.id;
    const { form, hand } = constraint;
    return findings.some((finding) => {
      if (finding.form !== form || !isWrong(finding)) return false;
      return form === 'choice' || (finding.id === name && finding.hand === hand);
    });
  }

  /** Nothing changed, in the places and matings of a change. */
  #now({ places, rows }: Change): Change {
    return {
      places: new Map(
        [...places].map(([id, pieces]) => [
          id,
          pieces.map((piece) => {
            return { ...piece, holds: holdsBefore(piece, id, this.#base), isRenewed: false };
          }),
        ]),
      ),
      rows: new Map(
        [...rows.keys()].map((id) => [id, this.#base.adapters('present', id).parts] as const),
      ),
    };
  }

  #changeOf({ judgement: { configuration }, basket: { lines } }: Route): Change {
    const { layout, judged } = configuration;
    const places = [...layout.positions.keys()].map((id): [string, PlaceValue] => {
      const pieces = piecesAt(configuration, id).map(([hand, occupant]) => {
        const holds = occupant.is === 'part' ? occupant.part : occupant.is;
        const piece = { hand, holds, isRenewed: false };
        const isAdded = lines.some(
          (line) =>
            line.action === 'add' &&
            line.position === id &&
            line.part === holds &&
            (line.hand === null || line.hand === hand),
        );
        return { ...piece, isRenewed: isAdded && holds === holdsBefore(piece, id, this.#base) };
      });
      return [id, pieces];
    });
    const rows = [...layout.matings.keys()].map((id) => {
      return [id, judged.adapters.get(id)?.parts ?? []] as const;
    });
    return { places: new Map(places), rows: new Map(rows) };
  }
}

function piecesAt({ judged }: Configuration, id: string): [Hand | null, Occupant][] {
  const there = judged.seats.get(id);
  if (there === undefined) throw new Error(`nobody said what stands at ${id}`);
  if (!there.hands) return [[null, there.seat.occupant]];
  return [
    ['left', there.left.occupant],
    ['right', there.right.occupant],
  ];
}

function withUnits(now: Change, done: Change, units: readonly Unit[]): Change {
  const places = new Map(now.places);
  const rows = new Map(now.rows);
  for (const { id, isMating } of units) {
    if (isMating) rows.set(id, done.rows.get(id) ?? []);
    else places.set(id, done.places.get(id) ?? []);
  }
  return { places, rows };
}

/** Null for what changes nothing by itself. */
function unitOf(line: Line | undefined): Unit | null {
  if (line === undefined || ['open', 'extra', 'lot'].includes(line.action)) return null;
  const { position, mating } = line;
  if (position !== null) return { id: position, isMating: false };
  return mating === null ? null : { id: mating, isMating: true };
}

function nameOf({ id, isMating }: Unit): string {
  return `${isMating ? 'mating' : 'position'} ${id}`;
}

function isBad(state: string): boolean {
  return state === 'fails' || state === 'open';
}

function told({ code, after, constraint }: Why): string {
  return `${code} ${constraint?.form ?? ''} ${constraint?.id ?? ''} after ${after ?? 'nothing'}`;
}
