/**
 * What the rows of an entity are made of beside its record: the compiled catalogue, in which its
 * values are read and its evidence is inherited, and the language that texts are shown in.
 */

import type { Catalogue, Evidence } from '../../domain/catalogue/catalogue.js';
import type { EvidenceRecord, Text } from '../../domain/catalogue/document.js';
import { textIn } from '../../domain/explain/language.js';

export class Projection {
  readonly catalogue: Catalogue;

  constructor(catalogue: Catalogue) {
    this.catalogue = catalogue;
  }

  /** In the catalogue's own language, where there is such a text. */
  text(text: Text): string {
    const { lang } = this.catalogue;
    return textIn(text, lang, lang).text;
  }

  textOrNull(text: Text | null | undefined): string | null {
    return text === null || text === undefined ? null : this.text(text);
  }

  /** Of a rule or a statement: its own, else the document's. */
  basis(own: EvidenceRecord | undefined): Evidence['basis'] {
    return own?.basis ?? this.catalogue.evidence.basis;
  }
}

/** The compiled form of a record. */
export function found<Compiled>(map: ReadonlyMap<string, Compiled>, id: string): Compiled {
  const compiled = map.get(id);
  if (compiled === undefined) throw new Error(`the catalogue is not of this document: no "${id}"`);
  return compiled;
}
