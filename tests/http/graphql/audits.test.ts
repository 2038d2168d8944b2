/**
 * The audits of the GraphQL over HTTP specification that `graphql-http` brings, of the service on a
 * port; and that there is one `graphql` among the packages, since two do not know each other.
 */

import { execFileSync } from 'node:child_process';
import { serverAudits } from 'graphql-http';
import { describe, expect, test } from 'vitest';
import { serve } from '../socket.js';

const audits = serverAudits({ url: 'http://127.0.0.1/graphql', fetchFn: fetch });

describe('GraphQL over HTTP', () => {
  test('has as many audits as are known', () => {
    expect(audits.length).toBeGreaterThanOrEqual(61);
  });

  test.each(audits.map(({ id, name }, index) => [id, name, index] as const))(
    '%s: %s',
    async (_id, _name, index) => {
      const { server } = await serve();
      const url = `${server.url}/graphql`;
      const result = await serverAudits({ url, fetchFn: fetch })[index]?.fn();
      expect(result).toMatchObject({ status: 'ok' });
    },
  );
});

test('there is one copy of graphql', () => {
  const args = ['ls', 'graphql', '--parseable', '--all'];
  const paths = execFileSync('npm', args, { encoding: 'utf8' }).trim().split('\n');
  expect(new Set(paths).size).toBe(1);
});
