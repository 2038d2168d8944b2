/**
 * The service as one application: every path, mounted.
 */

import { Hono } from 'hono';
import { mountGraphql } from './graphql/door.js';
import { type App, mountRest } from './mount.js';
import { mountCalculate } from './routes/calculate.js';
import { mountCodes } from './routes/codes.js';
import { mountDocument } from './routes/document.js';
import { mountDriveline } from './routes/driveline.js';
import { mountEditions } from './routes/editions.js';
import { mountFit } from './routes/fit.js';
import { mountFitBatch } from './routes/fit-batch.js';
import { mountFits } from './routes/fits.js';
import { mountFitsFeed } from './routes/fits-feed.js';
import { mountHealth } from './routes/health.js';
import { mountIdentify } from './routes/identify.js';
import { mountInspect } from './routes/inspect.js';
import { mountKinds } from './routes/kinds.js';
import { mountKits } from './routes/kits.js';
import { mountLayouts } from './routes/layouts.js';
import { mountLimits } from './routes/limits.js';
import { mountMate } from './routes/mate.js';
import { mountParts } from './routes/parts.js';
import { mountProblems } from './routes/problems.js';
import { mountRoles } from './routes/roles.js';
import { mountVehicles } from './routes/vehicles.js';
import { type ServiceDeps, type ServiceEnv, serviceOf } from './service.js';

export function createApp(deps: ServiceDeps): App {
  const service = serviceOf(deps);
  const app = new Hono<ServiceEnv>();
  const groups = [
    mountFit,
    mountFits,
    mountFitBatch,
    mountFitsFeed,
    mountKits,
    mountInspect,
    mountDriveline,
    mountMate,
    mountIdentify,
    mountParts,
    mountRoles,
    mountKinds,
    mountVehicles,
    mountLayouts,
    mountCalculate,
    mountEditions,
    mountCodes,
    mountLimits,
    mountHealth,
    mountDocument,
    mountProblems,
    mountGraphql,
  ];
  for (const mountGroup of groups) mountGroup(app, service);
  mountRest(app, service);
  return app;
}
