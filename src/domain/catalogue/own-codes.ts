/**
 * The codes that checks of built-in kinds have for themselves where they fail.
 */

import { compileBuiltIn } from './compile.js';
import type { KindRecord, Text } from './document.js';

export interface OwnCode {
  readonly code: string;
  /** Id of the kind. */
  readonly kind: string;
  /** What the check says of itself. */
  readonly says: Text;
}

/** In the order of the kinds and of their checks, each once for each kind. */
export function ownCodes(kinds: readonly KindRecord[]): readonly OwnCode[] {
  const found = new Map<string, OwnCode>();
  for (const { id: kind, checks } of kinds.map(compileBuiltIn)) {
    for (const { code, text: says } of checks) {
      const key = `${kind} ${code}`;
      if (code === null || says === null || found.has(key)) continue;
      found.set(key, { code, kind, says });
    }
  }
  return [...found.values()];
}
