/**
 * What may be opened to somebody: how much of an answer they are shown, and what they may ask.
 */

/** How much of an answer is shown, the least first. */
export const VIEWS = ['public', 'trade', 'full'] as const;
export type View = (typeof VIEWS)[number];

/**
 * What may be done. The views cap how much of an answer is shown, and each has those before it;
 * `batch` opens what is asked in many lines at once. The others are of doors that change something.
 */
export const SCOPES = [...VIEWS, 'batch', 'report', 'draft', 'publish', 'admin'] as const;
export type Scope = (typeof SCOPES)[number];

/** The widest of the views that the scopes open; null where they open none. */
export function widestView(scopes: Iterable<Scope>): View | null {
  const open = new Set<string>(scopes);
  return VIEWS.findLast((view) => open.has(view)) ?? null;
}

/** Whether one view shows no more than the other. */
export function isWithin(view: View, widest: View | null): boolean {
  return widest !== null && VIEWS.indexOf(view) <= VIEWS.indexOf(widest);
}

/** Whether a text is an origin as a browser sends it: scheme, host and port, nothing after them. */
export function isOrigin(text: string): boolean {
  return /^https?:\/\/[^*]+$/.test(text) && URL.canParse(text) && new URL(text).origin === text;
}
