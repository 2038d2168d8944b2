/**
 * What can be wrong with a question, as codes with data: programs read these, people read the
 * sentence that each language makes of them. A name that nothing has comes with what was probably
 * meant, where that can be guessed.
 */

import type { DoubtCode, FaultCode } from '../domain/catalogue/fault-codes.js';
import type { Action } from '../domain/kit/basket.js';
import type { QuantityFaultCode } from '../domain/quantity/fault.js';
import type { QuestionErrorCode } from './errors.js';

/** A code that says it all. */
export type Nothing = Readonly<Record<string, never>>;

/** A name that nothing has. */
export interface Unknown {
  readonly name: string;
  readonly meant: string | null;
}

/** A name that a vehicle's layout has not. */
export interface UnknownPlace extends Unknown {
  readonly vehicle: string;
}

/** A part that may be meant, by its id. */
export interface NamedPart {
  readonly part: string;
  readonly name: string;
  /** Null where nobody recorded who makes it. */
  readonly maker: string | null;
}

/** A vehicle that may be meant. */
export interface NamedVehicle {
  readonly vehicle: string;
  /** For people. */
  readonly label: string;
}

/** What the domain says of a text of the question, in the language of its own sentences. */
export interface Quoted<Code extends string> {
  readonly because: Code;
  readonly text: string;
  readonly lang: string;
}

/** The closed list of codes, each with its data. */
export interface QuestionFaultData {
  readonly 'no-edition': Nothing;
  readonly 'unknown-edition': { readonly edition: number };
  readonly 'unknown-vehicle': Unknown;
  /** More exact vehicles took its place; these are the ones that are kept up now. */
  readonly 'vehicle-replaced': {
    readonly name: string;
    readonly candidates: readonly NamedVehicle[];
  };
  readonly 'unknown-part': Unknown;
  /** The name is of several parts. */
  readonly 'ambiguous-part': {
    readonly name: string;
    readonly candidates: readonly NamedPart[];
  };
  /** The order code is of something else that is offered. */
  readonly 'sku-of-lot': { readonly name: string; readonly lot: string };
  readonly 'sku-of-work': { readonly name: string; readonly work: string };
  /** In a URL a plus sign is a space, so the part that is worked must be written with `%2B`. */
  readonly 'plus-read-as-space': { readonly name: string; readonly meant: string };
  readonly 'unknown-work': Unknown;
  readonly 'work-not-for-part': { readonly work: string };
  /** The record of the part lacks values that decide whether the work can be done on it. */
  readonly 'work-may-not-apply': { readonly work: string };
  readonly 'work-changes-nothing': { readonly work: string; readonly what: string };
  readonly 'unknown-lot': Unknown;
  readonly 'unknown-ruleset': Unknown;
  /** An order code that nothing is offered under. */
  readonly 'unknown-sku': Unknown;
  /** An order code of several things that are offered. */
  readonly 'ambiguous-sku': { readonly name: string; readonly candidates: readonly string[] };
  readonly 'unknown-layout': Unknown;
  readonly 'unknown-role': Unknown;
  readonly 'unknown-kind': Unknown;
  readonly 'unknown-fact': Unknown;
  readonly 'not-a-value-of-fact': {
    readonly fact: string;
    readonly value: string;
    readonly meant: string | null;
  };
  readonly 'unknown-position': UnknownPlace;
  readonly 'unknown-mating': UnknownPlace;
  readonly 'unknown-load': UnknownPlace;
  readonly 'not-handed': { readonly position: string };
  /** What is named beside the part would stand where the part itself goes. */
  readonly 'place-of-the-part': { readonly position: string };
  readonly 'too-many-adapters': { readonly mating: string; readonly most: number };
  readonly 'not-an-adapter': { readonly part: string };
  readonly 'unknown-interface': Unknown & { readonly part: string };
  readonly 'no-interface-recorded': { readonly part: string };
  /** Told by its place alone: a number of somebody's vehicle is repeated to nobody. */
  readonly 'no-sign-of-a-vin': { readonly place: number };
  readonly 'wrong-length-of-vin': { readonly length: number };
  readonly 'not-a-torque': Quoted<QuantityFaultCode>;
  readonly 'negative-torque': Nothing;
  readonly 'not-a-price': Nothing;
  readonly 'not-hours': Nothing;
  readonly 'not-a-margin': Nothing;
  /** What a price is for has a fault, as the price and stock list could have it. */
  readonly 'amount-at-fault': Quoted<FaultCode>;
  /** A condition has a fault, as a rule of the catalogue could have it. */
  readonly 'condition-at-fault': Quoted<FaultCode | DoubtCode>;
  /** What was measured is of no part's value and no fact. */
  readonly 'reading-of-nothing': Nothing;
  readonly 'reading-at-fault': Quoted<FaultCode>;
  /** What was found out to stand somewhere is neither one part nor none. */
  readonly 'reading-of-no-part': Nothing;
  /** Of the same fact, place or value of an article something else was found out, too. */
  readonly 'measured-twice': Nothing;
  /** Of a piece on the bench neither a value of it nor one of a face is named. */
  readonly 'reading-of-no-face': Nothing;
  /** One face is told to be of two kinds or sides. */
  readonly 'two-faces-in-one': Nothing;
  /** A face of a name that no part has. */
  readonly 'face-of-no-part': Unknown;
  readonly 'side-of-no-kind': Unknown;
  readonly 'parameter-of-no-kind': Unknown;
  readonly 'value-of-no-role': Unknown;
  /** Nothing of the number could be read. */
  readonly 'number-says-nothing': Nothing;
  /** Of two pieces that differ it is not said which one was measured. */
  readonly 'which-hand': { readonly position: string };
  /** Nothing is recorded at the position of which something could have been measured. */
  readonly 'no-part-there': { readonly position: string };
  /** A line of a kit does not say what it is done with. */
  readonly 'incomplete-line': { readonly action: Action; readonly needs: string };
  /** No line puts in the part on which a work is done. */
  readonly 'work-of-no-line': { readonly work: string };
  /** Two lines put different things into one place. */
  readonly 'filled-twice': { readonly position: string };
  readonly 'not-a-route-key': Nothing;
  readonly 'route-of-another-vehicle': { readonly vehicle: string };
  readonly 'not-a-grip': Nothing;
  readonly 'unknown-calculation': Unknown;
  /** What a calculator was given cannot be read. */
  readonly 'input-at-fault': Quoted<QuantityFaultCode>;
  /** There is no such value; what there can be is said as people read it. */
  readonly 'impossible-input': { readonly bounds: string };
  /** A face that the question writes out has a fault, as a catalogue document could have it. */
  readonly 'face-at-fault': Quoted<FaultCode>;
}

export type QuestionFaultCode = keyof QuestionFaultData;

/** One thing that is wrong with a question, and where. */
export type QuestionFault = {
  readonly [Code in QuestionFaultCode]: {
    /** Name of the question's field: `vehicle`, `with.clutch`; null where it is of no field. */
    readonly at: string | null;
    readonly code: Code;
    readonly data: QuestionFaultData[Code];
  };
}[QuestionFaultCode];

/** The problem that a question has whose faults are all of one kind. */
export const ERROR_OF: Readonly<Record<QuestionFaultCode, QuestionErrorCode>> = {
  'no-edition': 'no-edition',
  'unknown-edition': 'unknown-edition',
  'unknown-vehicle': 'unknown-vehicle',
  'vehicle-replaced': 'vehicle-replaced',
  'unknown-part': 'unknown-part',
  'ambiguous-part': 'ambiguous-part',
  'sku-of-lot': 'unknown-part',
  'sku-of-work': 'unknown-part',
  'plus-read-as-space': 'unknown-part',
  'unknown-work': 'invalid-question',
  'work-not-for-part': 'invalid-question',
  'work-may-not-apply': 'invalid-question',
  'work-changes-nothing': 'invalid-question',
  'unknown-lot': 'invalid-question',
  'unknown-ruleset': 'invalid-question',
  'unknown-sku': 'invalid-question',
  'ambiguous-sku': 'invalid-question',
  'unknown-layout': 'unknown-layout',
  'unknown-role': 'unknown-role',
  'unknown-kind': 'unknown-kind',
  'unknown-fact': 'invalid-question',
  'not-a-value-of-fact': 'invalid-question',
  'unknown-position': 'unknown-position',
  'unknown-mating': 'invalid-question',
  'unknown-load': 'invalid-question',
  'not-handed': 'invalid-question',
  'place-of-the-part': 'invalid-question',
  'too-many-adapters': 'invalid-question',
  'not-an-adapter': 'invalid-question',
  'unknown-interface': 'unknown-interface',
  'no-interface-recorded': 'unknown-interface',
  'no-sign-of-a-vin': 'invalid-question',
  'wrong-length-of-vin': 'invalid-question',
  'not-a-torque': 'invalid-question',
  'negative-torque': 'invalid-question',
  'not-a-price': 'invalid-question',
  'not-hours': 'invalid-question',
  'not-a-margin': 'invalid-question',
  'amount-at-fault': 'invalid-question',
  'condition-at-fault': 'invalid-question',
  'reading-of-nothing': 'invalid-question',
  'reading-at-fault': 'invalid-question',
  'reading-of-no-part': 'invalid-question',
  'measured-twice': 'invalid-question',
  'reading-of-no-face': 'invalid-question',
  'two-faces-in-one': 'invalid-question',
  'face-of-no-part': 'invalid-question',
  'side-of-no-kind': 'invalid-question',
  'parameter-of-no-kind': 'invalid-question',
  'value-of-no-role': 'invalid-question',
  'number-says-nothing': 'invalid-question',
  'which-hand': 'invalid-question',
  'no-part-there': 'invalid-question',
  'incomplete-line': 'invalid-question',
  'work-of-no-line': 'invalid-question',
  'filled-twice': 'invalid-question',
  'not-a-route-key': 'invalid-question',
  'route-of-another-vehicle': 'invalid-question',
  'not-a-grip': 'invalid-question',
  'unknown-calculation': 'unknown-calculation',
  'input-at-fault': 'invalid-question',
  'impossible-input': 'invalid-question',
  'face-at-fault': 'invalid-question',
};
