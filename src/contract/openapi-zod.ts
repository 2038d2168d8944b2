/**
 * zod, extended once with the metadata of OpenAPI. Every schema of the contract is made with it,
 * so that the document is derived from the very schemas that check.
 */

export { z } from '@hono/zod-openapi';
