/**
 * The layouts of the catalogue.
 */

import {
  layoutQuestionSchema,
  layoutsQuestionSchema,
  listLayoutsOperation,
  readLayoutOperation,
} from '../../contract/layouts.js';
import { RECORDED } from '../asked.js';
import { mountList, mountRead } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountLayouts(app: App, service: Service): void {
  const { listLayouts, readLayout } = service.useCases;
  mountList(app, service, {
    operation: listLayoutsOperation,
    schema: layoutsQuestionSchema,
    filters: () => ({}),
    list: listLayouts,
    lifetimes: RECORDED,
  });
  mountRead(app, service, {
    operation: readLayoutOperation,
    schema: layoutQuestionSchema,
    wishes: () => ({}),
    read: readLayout,
    lifetimes: RECORDED,
  });
}
