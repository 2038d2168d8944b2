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
import { QuestionError } from '../../usecases/errors.js';
import type { PartsInput } from '../../usecases/list-parts.js';
import type { LookUpAnswer } from '../../usecases/look-up-parts.js';
import { JUDGED, RECORDED } from '../asked.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import { lifetimesOf, type Offers, offersFor } from '../naming.js';
import { spokenTo } from '../negotiation.js';
import { itemProblemOf, type Place, refusalOf } from '../problem.js';
import { parameterCalled } from '../query.js';
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
      return withProblems(lookUpParts(library, asked));
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

/** The answer with the faults of names as problems, which are this door's to write. */
function withProblems({ items, ...answer }: LookUpAnswer) {
  const lang = spokenTo(answer.lang, null);
  return {
    ...answer,
    items: items.map((item) => {
      if (!('faults' in item)) return item;
      const [first, ...others] = item.faults;
      if (first === undefined) throw new Error(`"${item.asked}" is lost without a fault`);
      const refusal = refusalOf(new QuestionError([first, ...others]), placeOf);
      return { asked: item.asked, error: itemProblemOf(refusal, lang) };
    }),
  };
}

function placeOf(at: string): Place {
  return parameterCalled(at, listPartsOperation.query);
}
