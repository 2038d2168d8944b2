/**
 * The answers, as every door gives them. Closed words: state, alone, verdict, severity, basis.
 * Open words (a reader must take an unknown one as "other"): codes, groups, roles, kinds, units.
 */

import type { ReasonData, ShownValue } from '../domain/explain/reason.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import type { ConflictView } from './conflict-answer.js';
import type { RouteView } from './kit-answer.js';
import type { NamedBy } from './part-names.js';

export type { ShownValue } from '../domain/explain/reason.js';

export type Hand = 'left' | 'right';
export type Outcome = 'holds' | 'open' | 'fails';
export type State = Outcome | 'given';
export type Severity = 'must' | 'caution';
export type Basis = 'built' | 'measured' | 'drawing' | 'maker' | 'inferred' | 'reported';

export interface SaidReason {
  code: string;
  data: ReasonData;
  text: string;
}

export interface AnswerHead {
  edition: number;
  engine: string;
  lang: string;
  /** Languages that texts of the catalogue were taken from, since it has none in `lang`. */
  textLang: string[];
}

/** The head of answers that show values. */
export interface ValuesHead extends AnswerHead {
  units: ShownUnits;
}

/** One side of a check. Places that do not apply are null. */
export interface SideView {
  position: string | null;
  hand: Hand | null;
  part: string | null;
  name: string | null;
  interface: string | null;
  parameter: string | null;
  /** What the parameter, the fact or the term is called; null where none of them has a name. */
  parameterName: string | null;
  /** The layout's term, where the side is one. */
  term: string | null;
  value: ShownValue;
  /** The value for a sentence: in no more digits than are known; null where nobody recorded it. */
  said: string | null;
}

export interface CheckView extends SaidReason {
  check: string;
  primitive: string;
  severity: Severity;
  state: Outcome;
  left: SideView;
  right: SideView | null;
  margin: ShownValue | null;
  basis: Basis | null;
  caution: SaidReason | null;
}

export interface EndView {
  position: string | null;
  positionName: string | null;
  part: string | null;
  name: string | null;
  interface: string;
  /** `as-found`: something may be there, nobody recorded what. */
  occupant: 'part' | 'empty' | 'as-found';
}

export interface AdapterView {
  part: string;
  name: string;
}

export interface MatingView extends SaidReason {
  mating: string;
  hand: Hand | null;
  state: State;
  /** What the records alone come to. */
  computed: Outcome;
  ends: EndView[];
  /** The end across from the part that was asked about; null where the question is of no part. */
  other: EndView | null;
  adapters: AdapterView[];
  basis: Basis | null;
  /** Vehicles whose works fitted the two together. */
  builtOn: string[];
  statement: string | null;
  checks: CheckView[];
}

/** A check of the layout, a rule, a place, a face, a choice or a statement. */
export interface ConstraintView extends SaidReason {
  id: string;
  form: 'check' | 'choice' | 'rule' | 'place' | 'face' | 'statement';
  hand: Hand | null;
  positions: string[];
  severity: Severity;
  state: State;
  computed: Outcome;
  basis: Basis | null;
  statement: string | null;
  checks: CheckView[];
}

export interface OrderView extends SaidReason {
  on: FactView;
  /** What to order; null where something must be measured first. */
  value: ShownValue | null;
}

/** Where a value stands, for whoever measures or orders it. */
export interface FactView {
  position: string | null;
  hand: Hand | null;
  part: string | null;
  name: string | null;
  interface: string | null;
  parameter: string | null;
  fact: string | null;
  mating: string | null;
}

export interface MeasureView extends SaidReason {
  id: string;
  on: FactView;
  /** What is recorded now; null where nothing is. */
  now: ShownValue | null;
  /** How far a reading may be off, such as "±0.05 mm"; null where no tolerance is certain. */
  needed: ShownValue | null;
  tool: string | null;
  purpose: 'to-decide' | 'to-order' | 'to-confirm';
  /** Constraints that this fact alone settles. */
  settles: string[];
  /** Constraints that it helps to settle. */
  helps: string[];
}

export interface CautionView {
  code: string;
  group: string;
  show: 'always' | 'trade';
  text: string;
}

export interface JudgedView {
  matings: MatingView[];
  checks: ConstraintView[];
  choices: ConstraintView[];
  rules: ConstraintView[];
  places: ConstraintView[];
  statements: ConstraintView[];
}

export type Verdict = 'fits' | 'fits-with-changes' | 'does-not-fit' | 'unknown';

export interface FitPositionView extends JudgedView {
  position: string;
  name: string;
  replaces: string[];
  present: boolean;
  alone: Outcome;
  verdict: Verdict | null;
  order: OrderView[];
}

/** What one name of a question led to. */
export interface NamedView {
  /** The field that it stands in: `with.clutch`, `fitted.rear-half-shaft.left`. */
  at: string;
  /** As the question has it. */
  asked: string;
  part: string;
  name: string;
  resolvedBy: NamedBy;
  /** The part that took its place. */
  supersededBy: string | null;
}

/** What the names of parts in a question led to. */
export interface NamingView {
  /** Of the price and stock list, where an order code was looked up in it; else null. */
  offers: number | null;
  /** The parts that the question names, beside the one that it is about. */
  named: NamedView[];
}

export interface FitAnswer extends ValuesHead, NamingView {
  changes: 'yes' | 'no';
  /** The part as the question named it. */
  asked: string;
  resolvedBy: NamedBy;
  vehicle: string;
  part: string;
  name: string;
  /** The part that took its place. */
  supersededBy: string | null;
  alone: Outcome;
  /** Null where only changes around the part could make it fit, and those were not looked for. */
  verdict: Verdict | null;
  /** Nothing that was left out of a search could better the verdict. */
  complete: boolean;
  present: boolean;
  ambiguous: boolean;
  at: string[];
  summary: SaidReason;
  positions: FitPositionView[];
  /** What prices of the kit are in; null where the catalogue names none. */
  currency: string | null;
  /** The first route of the kit question for this part; null where nothing else is needed. */
  kit: RouteView | null;
  /** Why there is no way to make it fit; null where there is one, or nobody looked for it. */
  conflict: ConflictView | null;
  measure: MeasureView[];
  notChecked: SaidReason[];
  cautions: CautionView[];
}

export interface InspectAnswer extends ValuesHead, NamingView {
  vehicle: string;
  /** AND over all constraints; what is as the works built it counts as holding. */
  state: Outcome;
  summary: SaidReason;
  /** All constraints, the given ones too, with what the records alone come to. */
  judged: JudgedView;
  order: OrderView[];
  measure: MeasureView[];
  notChecked: SaidReason[];
  cautions: CautionView[];
}

export interface MateAnswer extends ValuesHead, NamingView {
  state: Outcome;
  summary: SaidReason;
  mating: MatingView;
  measure: MeasureView[];
  notChecked: SaidReason[];
  cautions: CautionView[];
}
