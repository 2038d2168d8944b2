/**
 * The answer to a kit question about a vehicle of which only something is known.
 *
 * The ways of doing it are those of all vehicles that may be meant only where every one of them has
 * the very same: the same places changed by the same lines, at the same prices, with the same parts
 * made to order, and each way proven for all of them or open for all. Why a line is there, what
 * holds and what has to be found out is said of one vehicle at a time, by its own answer. Where the
 * ways are not the same for all, none is shown; nor is one vehicle's way ever shown for another.
 */

import type { CautionView, NamedView, OrderView, SaidReason, ValuesHead } from './answer.js';
import type { SettlingAskView } from './ask-views.js';
import type { ConflictView } from './conflict-answer.js';
import type { KitAnswer, KitLineView, RouteView } from './kit-answer.js';

/**
 * The grade of the first route. `none`: this edition has no route. Null: the search was cut short
 * and had found none by then, or there were too many vehicles to search for each.
 */
export type KitGrade = RouteView['grade'] | 'none' | null;

export type PartlyKitGrade = KitGrade | 'depends';

export interface GradeCount {
  grade: KitGrade;
  count: number;
}

/** What all that an answer leaves come to: `depends` unless all have the very same routes. */
export interface LeadsToGrade {
  grade: PartlyKitGrade;
  /** Of the same grade the routes may still be others. */
  outcomes: GradeCount[];
}

/** A vehicle that may be meant, and what its own answer comes to. */
export interface MeantKits {
  vehicle: string;
  label: string;
  grade: KitGrade;
  complete: boolean;
  summary: SaidReason;
}

/** A line as far as it is the same for all. */
export type SharedLineView = Omit<KitLineView, 'why' | 'substitutes' | 'alternatives'>;

/** A route as far as it is the same for all. */
export interface SharedRouteView extends Pick<RouteView, 'grade' | 'changes' | 'totals'> {
  lines: SharedLineView[];
  recommended: SharedLineView[];
  order: OrderView[];
}

export interface PartlyKitAnswer extends ValuesHead {
  offers: number;
  currency: string | null;
  tax: 'net';
  named: NamedView[];
  grade: PartlyKitGrade;
  /** Every search came to its end. */
  complete: boolean;
  /** Some vehicle has more routes than were asked for. */
  more: boolean;
  summary: SaidReason;
  /** Those that all have; none where it depends. */
  routes: SharedRouteView[];
  /** Why there is no route, where that is the same for all. */
  conflict: ConflictView | null;
  /** In the order of `GET /v1/vehicles`; none where too many may be meant. */
  vehicles: MeantKits[];
  counts: { total: number };
  outcomes: GradeCount[];
  ask: SettlingAskView<LeadsToGrade>[];
  /** Whatever the answers to all questions of `ask` are, the same routes are left, or none. */
  settles: boolean;
  /** Of all routes of all vehicles. */
  cautions: CautionView[];
  /** The whole answer, where one vehicle alone can be meant. */
  kits: KitAnswer | null;
}
