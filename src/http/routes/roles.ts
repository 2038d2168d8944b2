/**
 * The roles of parts.
 */

import {
  listRolesOperation,
  readRoleOperation,
  roleQuestionSchema,
  rolesQuestionSchema,
} from '../../contract/roles.js';
import { RECORDED } from '../asked.js';
import { mountList, mountRead, valueWishes } from '../listed.js';
import type { App } from '../mount.js';
import type { Service } from '../service.js';

export function mountRoles(app: App, service: Service): void {
  const { listRoles, readRole } = service.useCases;
  mountList(app, service, {
    operation: listRolesOperation,
    schema: rolesQuestionSchema,
    filters: () => ({}),
    list: listRoles,
    lifetimes: RECORDED,
  });
  mountRead(app, service, {
    operation: readRoleOperation,
    schema: roleQuestionSchema,
    wishes: valueWishes,
    read: readRole,
    lifetimes: RECORDED,
  });
}
