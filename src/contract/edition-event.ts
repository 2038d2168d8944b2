/**
 * What a receiver is told when an edition is published: the body of the message, and the headers
 * that it is signed by.
 */

import type { EditionPublished } from '../usecases/notify-edition.js';
import { editionField, engineField } from './answer-head.js';
import { z } from './openapi-zod.js';
import type { Wire } from './wire.js';

export const editionEventSchema = z
  .strictObject({
    specversion: z.literal('1.0'),
    id: z.string().openapi({ description: 'The same whenever it is told again.' }),
    source: z.string().openapi({ description: 'Where the editions of this catalogue are.' }),
    type: z.literal('faying.edition.published'),
    time: z.iso.datetime().openapi({ description: 'When it was published; UTC.' }),
    datacontenttype: z.literal('application/json'),
    data: z.strictObject({
      edition: editionField.openapi({ description: 'The edition that was published.' }),
      from: editionField.nullable().openapi({
        description: 'The one before it; null where it is the first.',
      }),
      engine: engineField,
      counts: z.record(z.string(), z.int().min(0)).openapi({
        description: 'How many entities of each list it has.',
      }),
      fits: z.string().openapi({
        description:
          'Where what is different from the one before is to be had; a whole address where ' +
          'whoever runs the service said where it answers, else a path.',
      }),
    }),
  })
  .openapi('EditionPublished', {
    description: 'An edition has been published: CloudEvents 1.0, in the structured mode.',
  });

export type EditionPublishedWire = Wire<EditionPublished, z.infer<typeof editionEventSchema>>;

export const EVENT_TYPE = 'application/cloudevents+json';

const headersSchema = z.strictObject({
  'webhook-id': z.string().openapi({ description: 'The `id` of the event.' }),
  'webhook-timestamp': z.string().regex(/^\d+$/).openapi({
    description: 'Seconds since 1970 at which this attempt was made.',
  }),
  'webhook-signature': z.string().openapi({
    description:
      'Standard Webhooks 1.0.0: `v1,` and the HMAC-SHA256 of id, timestamp and body with dots ' +
      'between them, in base64; while a secret is being replaced, one for each, with spaces ' +
      'between.',
    example: 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
  }),
});

/** In the document it stands beside the paths. */
export const editionWebhook = {
  name: 'faying.edition.published',
  operationId: 'editionPublished',
  summary: 'An edition has been published',
  description: [
    'What whoever publishes sends to each receiver that it was told of. Check the signature over ' +
      'the bytes as they came, and that the timestamp is of now; then ask for `fits`. The same ' +
      'message may come again: it has the same `webhook-id`.',
    'Any status from 200 to 299 says that it was taken, 410 that no more are wanted. With ' +
      'others, or without an answer, it is sent again a few times. Redirects are not followed. ' +
      'Whoever cannot be reached learns the same from `GET /v1/editions/latest`.',
  ].join('\n\n'),
  headers: headersSchema,
  body: editionEventSchema,
} as const;
