/**
 * How it is said which fields of an object are shown to whom.
 */

/** Names of fields, with spaces between. */
export interface ShownFields {
  /** To everybody who gets the object at all. */
  readonly public?: string;
  /** From the view `trade` on. */
  readonly trade?: string;
  /** In the view `full` alone. */
  readonly full?: string;
}

/** By the name that the object has in the document. */
export type ShownObjects = Readonly<Record<string, ShownFields>>;

const HEAD = 'edition engine lang';

/** The head of answers with texts of the catalogue, and of those that show values. */
export const TEXTS = `${HEAD} textLang`;
export const VALUES = `${TEXTS} units`;

/** The envelope of lists. */
export const PAGE = `${TEXTS} items next counts`;

/** A reason: what it is made of may be dimensions, what it says is for everybody. */
export const REASON: ShownFields = { public: 'code text', trade: 'data' };
