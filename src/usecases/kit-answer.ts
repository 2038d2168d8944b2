/**
 * The answer to a kit question, as every door gives it: routes, each with its lines, what they
 * come to, why each is there, and what is then still open.
 *
 * Money is a decimal text with at least two places, in the currency of the answer and without
 * tax. What is not known is null and counted, never 0. Closed words: grade, state, severity, hand.
 * Open words: actions, sources, codes, units, keys of the rows of a comparison.
 */

import type { Action } from '../domain/kit/basket.js';
import type {
  CautionView,
  Hand,
  JudgedView,
  MeasureView,
  NamedView,
  OrderView,
  SaidReason,
  ShownValue,
  ValuesHead,
} from './answer.js';
import type { AskedKit } from './asked-kit.js';
import type { ConflictView } from './conflict-answer.js';
import type { RouteDrivelineView } from './figure-views.js';

export interface QuantityView {
  /** A decimal, or a fraction where no decimal says it in full; null where nobody knows it. */
  value: string | null;
  /** `piece`, or what is poured or cut: `l`, `kg`, `mm`. */
  unit: string;
}

export interface OfferView {
  id: string;
  sku: string | null;
  /** What one price buys. */
  pack: QuantityView;
  /** Null where nobody knows how much it takes. */
  packs: number | null;
  /** What of the packs has no use here; null where nothing is left. */
  over: QuantityView | null;
  supplier: string | null;
  condition: string | null;
  stock: number | null;
  leadDays: number | null;
}

/** Why a line is there. */
export interface WhyView extends SaidReason {
  /** Key of the line that made it necessary; null where the wish itself did. */
  after: string | null;
  /** The mating, the check or the rule that would not hold without it. */
  constraint: string | null;
}

/** A part that does just as well. */
export interface SubstituteView extends SaidReason {
  part: string;
  name: string;
}

/** Another part at the place of a line, with everything else as it is. */
export interface OtherPartView extends SaidReason {
  part: string;
  name: string;
  /** Dearer by so much; below zero where it is cheaper, null where one price is not known. */
  priceDifference: string | null;
  openPoints: number;
}

export interface LeftOverView {
  part: string;
  name: string;
  quantity: QuantityView;
}

export interface KitLineView {
  /** The same for the same thing done, in every route, edition and language. */
  key: string;
  /** `add`, `adapter`, `lot`, `work`, `extra`, `remove`, `open`. */
  action: Action;
  position: string | null;
  positionName: string | null;
  mating: string | null;
  hand: Hand | null;
  /** An article; null for a lot, and for what is only opened. */
  part: string | null;
  lot: string | null;
  work: string | null;
  /** Of the part, the lot or the work; of the position where it is only opened. */
  name: string;
  maker: string | null;
  skus: string[];
  numbers: string[];
  quantity: QuantityView;
  /** Of one pack. */
  unitPrice: string | null;
  price: string | null;
  offer: OfferView | null;
  /** `offer`, `owned`, `lot`, `present`, `unpriced`; null for lines that are of no goods. */
  source: string | null;
  /** The lot that its goods come out of. */
  fromLot: string | null;
  labourHours: string | null;
  /** Money; null without a rate, or without hours. */
  labour: string | null;
  why: WhyView[];
  /** Parts that are alike in everything, the cheapest first. */
  substitutes: SubstituteView[];
  alternatives: OtherPartView[];
  leftOver: LeftOverView[];
  /** `workshop` or `engineer`. */
  signOff: string | null;
  reversible: boolean;
}

/** The sums of the lines. */
export interface KitTotalsView {
  /** All that is bought, as far as prices are known. */
  parts: string;
  works: string;
  labourHours: string;
  /** Null without a rate. */
  labour: string | null;
  cost: string;
  /** Keys of the lines whose price is not known. */
  unpriced: string[];
  /** Keys of the lines whose labour nobody recorded. */
  untimed: string[];
  changedPositions: number;
  leadDays: number | null;
  /** `cost`, `labourHours`, `leadDays`: limits of which nobody can tell whether they are kept. */
  unknownLimits: string[];
  signOff: string | null;
  reversible: boolean;
}

/** How much a load has in reserve, as the share of its rating in its demand. */
export interface LoadMarginView {
  /** Id of the check. */
  check: string;
  position: string;
  positionName: string | null;
  before: ShownValue | null;
  after: ShownValue | null;
}

export interface WeakestView {
  position: string;
  positionName: string | null;
  margin: ShownValue;
}

export interface KitMeasureView extends MeasureView {
  /** Which of the listed routes have nothing open any more once this is known. */
  settlesRoutes: number[];
}

/** `matings`, `checks` and the rest: what the changes of the route touch. */
export interface RouteView extends JudgedView {
  /**
   * What is needed to open this route again, packed; it stands for nothing else and gives nobody
   * any right. Null where it would be longer than an address has room for.
   */
  key: string | null;
  /** `sha256-` and 64 hex digits of what the route does and costs. */
  digest: string;
  grade: 'proven' | 'open';
  /** Which of the listed routes is no worse on any count and better on one. */
  beatenBy: number | null;
  summary: SaidReason;
  /** Positions, in layout order. */
  changes: string[];
  lines: KitLineView[];
  recommended: KitLineView[];
  totals: KitTotalsView;
  weakest: WeakestView | null;
  loads: LoadMarginView[];
  /** What it makes of how the vehicle drives; all of it is told by its own question. */
  driveline: RouteDrivelineView;
  /** What the vehicle has now and no more afterwards. */
  loses: SaidReason[];
  order: OrderView[];
  measure: KitMeasureView[];
  notChecked: SaidReason[];
  cautions: CautionView[];
}

export interface CompareRowView {
  key: string;
  /** For people. */
  name: string;
  /** One for each route; null where it is not known. */
  values: (string | number | boolean | null)[];
}

/** The listed routes side by side. */
export interface CompareView {
  /** Keys of the lines that all of them have. */
  same: string[];
  rows: CompareRowView[];
}

/** No route of this grade that is not listed costs less. */
export interface BoundView {
  grade: 'proven' | 'open';
  cost: string;
}

export interface KitAnswer extends ValuesHead {
  /** Of the price and stock list that prices are taken from. */
  offers: number;
  /** Null where the catalogue names none: it then has no prices either. */
  currency: string | null;
  tax: 'net';
  /** In its one form, with every default filled in: asked again, it gives the same answer. */
  question: AskedKit;
  vehicle: string;
  /** The parts that the question names. */
  named: NamedView[];
  summary: SaidReason;
  complete: boolean;
  /** There are more routes than were asked for. */
  more: boolean;
  /** Where the search is not complete, what it knows of what it has not seen. */
  bound: BoundView | null;
  routes: RouteView[];
  compare: CompareView;
  /** Why there is no route; null where there is one, and where the search was cut short. */
  conflict: ConflictView | null;
}
