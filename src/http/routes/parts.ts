/**
 * The parts of the catalogue.
 */

import {
  listPartsOperation,
  type PartsQuestion,
  partsQuestionSchema,
} from '../../contract/parts.js';
import type { PartsInput } from '../../usecases/list-parts.js';
import { RECORDED } from '../asked.js';
import { mountList } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountParts(app: App, service: Service): void {
  const { listParts } = service.useCases;
  mountList<PartsQuestion, PartsInput>(app, service, {
    operation: listPartsOperation,
    schema: partsQuestionSchema,
    filters: ({ role, kind, maker, number, text, superseded }) => ({
      role: role ?? null,
      kind: kind ?? null,
      maker: maker ?? null,
      number: number ?? null,
      text: text ?? null,
      superseded: superseded ?? null,
    }),
    list: listParts,
    lifetimes: RECORDED,
  });
}
