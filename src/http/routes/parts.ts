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
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountParts(app: App, service: Service): void {
  const { listParts, readPart } = service.useCases;
  mountList<PartsQuestion, PartsInput>(app, service, {
    operation: listPartsOperation,
    schema: partsQuestionSchema,
    filters: partsFilters,
    list: listParts,
    lifetimes: RECORDED,
  });
  mountRead(app, service, {
    operation: readPartOperation,
    schema: partQuestionSchema,
    wishes: valueWishes,
    read: readPart,
    lifetimes: JUDGED,
  });
}
