/**
 * The parts of the catalogue. A list says what is recorded, which never changes; one part whole
 * says what the program makes of its values and kinds too: to caches it is an answer.
 */

import {
  listPartsOperation,
  type PartsQuestion,
  partQuestionSchema,
  partsFilters,
  partsQuestionSchema,
  readPartOperation,
} from '../../contract/parts.js';
import type { PartsInput } from '../../usecases/list-parts.js';
import { JUDGED, RECORDED } from '../asked.js';
import { withItemProblems } from '../item-problems.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import { lifetimesOf, type Offers, offersFor } from '../naming.js';
import type { Service } from '../service.js';

type PartsListInput = PartsInput &
  Offers & {
    /** Names to look up in place of the list; null where it is the list. */
    readonly names: readonly string[] | null;
  };

export function mountParts(app: App, service: Service): void {
  const { listParts, lookUpParts, readPart } = service.useCases;
  mountList<PartsQuestion, PartsListInput>(app, service, {
    operation: listPartsOperation,
    schema: partsQuestionSchema,
    filters: (question) => {
      const filters = partsFilters(question);
      const { names } = filters;
      return names === null ? filters : { ...filters, ...offersFor(names, service) };
    },
    list: (library, { names, ...input }) => {
      if (names === null) return listParts(library, input);
      const { edition, lang, offers } = input;
      const asked = { edition, lang, names, ...(offers === undefined ? {} : { offers }) };
      return withItemProblems(lookUpParts(library, asked), listPartsOperation);
    },
    lifetimes: (input) => lifetimesOf(input, input.names === null ? RECORDED : JUDGED),
  });
  mountRead(app, service, {
    operation: readPartOperation,
    schema: partQuestionSchema,
    wishes: valueWishes,
    read: readPart,
    lifetimes: JUDGED,
  });
}
