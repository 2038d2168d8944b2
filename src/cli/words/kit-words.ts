/**
 * What a language has to say around the routes of a kit.
 */

export interface KitWords {
  readonly on: (vehicle: string) => string;
  /** Heading of a route in the table. */
  readonly way: (number: number) => string;
  /** Stands above a route, before its sentence. */
  readonly wayOf: (number: number, count: number) => string;
  readonly grade: string;
  readonly grades: Readonly<Record<'proven' | 'open', string>>;
  /** What all vehicles come to that an answer leaves, as short as it gets. */
  readonly leadsTo: Readonly<Record<'proven' | 'open' | 'none' | 'depends' | 'unknown', string>>;
  readonly beatenBy: (number: number) => string;
  readonly more: string;
  /** What is certain of every route that is not listed. */
  readonly atLeast: (grade: 'proven' | 'open', cost: string) => string;
  /** Headings of lines, by what is done. */
  readonly actions: Readonly<Record<string, string>>;
  readonly recommended: string;
  readonly piece: (count: string) => string;
  readonly notKnownHowMuch: string;
  readonly between: (mating: string) => string;
  readonly money: (amount: string, currency: string | null) => string;
  /** What is said of the price where it is no number. */
  readonly sources: Readonly<Record<string, string>>;
  readonly hours: (hours: string) => string;
  readonly labour: (amount: string) => string;
  readonly packs: (packs: number, pack: string) => string;
  readonly leftOver: (parts: readonly string[]) => string;
  readonly signOff: (who: string) => string;
  readonly signers: Readonly<Record<string, string>>;
  readonly notReversible: string;
  readonly total: (cost: string, beside: readonly string[]) => string;
  readonly parts: (amount: string) => string;
  readonly works: (amount: string) => string;
  /** So many lines are not in the sum. */
  readonly unpriced: (lines: number) => string;
  readonly untimed: (lines: number) => string;
  /** A limit of which nobody can tell whether it is kept, and what is not known. */
  readonly limitNotKnown: (limit: string, why: readonly string[]) => string;
  readonly limits: Readonly<Record<string, string>>;
  readonly leadNotKnown: string;
  readonly orMore: (sum: string) => string;
  /** Heading of why each line is there, from what is asked for onwards. */
  readonly why: string;
  /** Above what a route makes of how the vehicle drives. */
  readonly outOfStep: string;
  readonly better: string;
  readonly worse: string;
  readonly loses: string;
  /** Heading of demands that contradict each other. */
  readonly conflict: string;
  /** Heading where one demand alone cannot be met. */
  readonly cannot: string;
  /** What is said of a conflict that may not be the smallest. */
  readonly notSmallest: string;
  /** Heading of what breaks the demands. */
  readonly because: string;
  readonly noPath: string;
  /** Heading of what could be taken back. */
  readonly waysOut: string;
  readonly moreWaysOut: string;
  readonly yes: string;
  readonly no: string;
  readonly nobody: string;
  readonly notKnown: string;
  /** A decimal, as people write it. */
  readonly decimal: (text: string) => string;
  readonly offers: (number: number) => string;
}
