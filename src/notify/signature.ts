/**
 * How a message is signed: Standard Webhooks 1.0.0, symmetric. A receiver checks that it comes from
 * whoever knows the secret, is unchanged, and is new. While a secret is being replaced, a message
 * bears the signature of each.
 *
 * Left out: asymmetric signatures (`v1a`).
 */

import { createHmac } from 'node:crypto';
import type { Message } from '../usecases/ports.js';

/** The headers of a message that is sent now. */
export function signedHeaders(
  { id, body }: Message,
  secrets: readonly Uint8Array[],
  now: Date,
): Readonly<Record<string, string>> {
  const timestamp = String(Math.floor(now.getTime() / 1000));
  const signatures = secrets.map((secret) => {
    const digest = createHmac('sha256', secret).update(`${id}.${timestamp}.${body}`, 'utf8');
    return `v1,${digest.digest('base64')}`;
  });
  return {
    'webhook-id': id,
    'webhook-timestamp': timestamp,
    'webhook-signature': signatures.join(' '),
  };
}
