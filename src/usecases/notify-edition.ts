/**
 * What receivers are told of an edition that was published, as an event by CloudEvents 1.0. It says
 * the same whenever it is told again, so that whoever gets it twice knows it by its id.
 */

import { ENGINE } from '../domain/engine.js';
import type { Library } from './library.js';
import type { Notifier, Telling } from './ports.js';

/** CloudEvents 1.0, sections 3.1.1 and 3.1.2; its domain is the name of the program. */
export interface EditionPublished {
  specversion: '1.0';
  id: string;
  /** Where the editions of this catalogue are. */
  source: string;
  type: 'faying.edition.published';
  /** When it was published. */
  time: string;
  datacontenttype: 'application/json';
  data: {
    edition: number;
    /** The one before it; null where it is the first. */
    from: number | null;
    engine: string;
    counts: Readonly<Record<string, number>>;
    /** Where what is different from the one before is to be had. */
    fits: string;
  };
}

/** Throws `QuestionError` where there is no such edition; null is the newest. */
export function editionPublished(
  library: Library,
  number: number | null,
  service: string | null,
): EditionPublished {
  const { number: edition, hash, publishedAt, counts } = library.head(number);
  const from = edition === 1 ? null : edition - 1;
  const source = `${service ?? ''}/v1/editions`;
  const fits = `${source}/${edition}/fits`;
  return {
    specversion: '1.0',
    id: `edition-${edition}-${hash.slice('sha256-'.length, 'sha256-'.length + 16)}`,
    source,
    type: 'faying.edition.published',
    time: publishedAt,
    datacontenttype: 'application/json',
    data: {
      edition,
      from,
      engine: ENGINE,
      counts,
      fits: from === null ? fits : `${fits}?from=${from}`,
    },
  };
}

export interface NotifyAnswer {
  edition: number;
  told: readonly Telling[];
}

/** Tells all receivers; whom it could not tell can be told again. */
export async function notifyEdition(
  library: Library,
  number: number | null,
  notifier: Notifier,
): Promise<NotifyAnswer> {
  const event = editionPublished(library, number, notifier.service);
  const told = await notifier.tell({ id: event.id, body: JSON.stringify(event) });
  return { edition: event.data.edition, told };
}
