/**
 * What a language has to say to show a record of the catalogue.
 */

import type { EvidenceView } from '../../usecases/record-views.js';

export interface ShowWords {
  readonly headings: Readonly<Record<ShowHeading, string>>;
  /** A colon follows, and then what it is. */
  readonly labels: Readonly<Record<ShowLabel, string>>;
  /** Of a list without entries. */
  readonly none: string;
  /** Of a list that was cut short. */
  readonly shownOf: (shown: number, total: number) => string;
  /** How something is known. */
  readonly evidence: (evidence: EvidenceView) => string;
  /** What stands at a place, where no part is recorded. */
  readonly occupants: Readonly<Record<'empty' | 'as-found', string>>;
  /** Nobody recorded the fact that tells what stands at a place. */
  readonly toldBy: (fact: string) => string;
  readonly notRecorded: (ids: readonly string[]) => string;
  readonly side: (side: string) => string;
  /** Of a kind. */
  readonly builtIn: string;
  /** One of several ways in which a face can be. */
  readonly way: (number: number) => string;
  readonly notes: Readonly<Record<ShowNote, string>>;
  readonly usual: (range: string) => string;
  readonly unless: (others: readonly string[]) => string;
  readonly asked: (field: string) => string;
  readonly tool: (name: string) => string;
  readonly pieces: (count: number) => string;
  readonly behind: (positions: readonly string[]) => string;
  readonly labour: (hours: string) => string;
  readonly access: (hours: string) => string;
  readonly adapters: (most: number) => string;
  readonly and: (names: readonly string[]) => string;
}

export type ShowHeading =
  | 'adapters'
  | 'askable'
  | 'asks'
  | 'checks'
  | 'faces'
  | 'facts'
  | 'findOut'
  | 'fitted'
  | 'matings'
  | 'notRecorded'
  | 'parameters'
  | 'positions'
  | 'terms'
  | 'values';

export type ShowLabel =
  | 'built'
  | 'evidence'
  | 'faces'
  | 'hand'
  | 'layout'
  | 'like'
  | 'maker'
  | 'numbers'
  | 'parts'
  | 'roles'
  | 'sides'
  | 'spans'
  | 'standard'
  | 'supersededBy'
  | 'values'
  | 'vin';

/** What is said behind a name, between commas. */
export type ShowNote =
  | 'absent'
  | 'cautionOnly'
  | 'derived'
  | 'facesLeftOpen'
  | 'handed'
  | 'list'
  | 'mayBeAlone'
  | 'mayBeEmpty'
  | 'mayBeLeftOut'
  | 'noAdapters'
  | 'rating';
