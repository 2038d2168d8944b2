/**
 * The kinds of interface. Those that are built in change with the program, so caches keep what is
 * said of them no longer than an answer.
 */

import {
  kindQuestionSchema,
  kindsQuestionSchema,
  listKindsOperation,
  readKindOperation,
} from '../../contract/kinds.js';
import { JUDGED } from '../asked.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountKinds(app: App, service: Service): void {
  const { listKinds, readKind } = service.useCases;
  mountList(app, service, {
    operation: listKindsOperation,
    schema: kindsQuestionSchema,
    filters: () => ({}),
    list: listKinds,
    lifetimes: JUDGED,
  });
  mountRead(app, service, {
    operation: readKindOperation,
    schema: kindQuestionSchema,
    wishes: valueWishes,
    read: readKind,
    lifetimes: JUDGED,
  });
}
