/**
 * The same lines by both doors that take them: over HTTP and on the command line. Rows are the same
 * but for what HTTP adds to a problem; so are objects.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { openStore } from '../../src/store/sqlite.js';
import { freshDatabase, run } from '../cli/terminal.js';
import { publish, rigOf } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';

const database = freshDatabase();
beforeAll(() => {
  const store = openStore(database, { mode: 'create' });
  publish(store, demoDocument());
  store.close();
});

const rig = rigOf({ documents: [demoDocument()] });

const NDJSON = [
  '{"ref":"1","vehicle":"lirren-1","part":"linkage-cables"}',
  '{"ref":"2","vehicle":"lirren-1","part":"number:cbl 2k240@corrablyn"}',
  '{"ref":"3","vehicle":"lirren-1","part":"sku:F-1001"}',
  '{"vehicle":"lirren-1","part":"linkage-cables","fitted":{"gearbox":"unknown"}}',
  '{"vehicle":"lirren-1","part":"front-hub-used","measured":[{"on":{"part":"front-hub-used",' +
    '"interface":"wheel","parameter":"spigot"},"value":"56.10 ±0.05 mm"}]}',
  '{"ref":"6","vehicle":"lirren","part":"linkage-cables"}',
  '{"ref":"7","vehicle":"lirren-1","part":"44/10 077"}',
  '{"ref":"8","vehicle":"lirren-1","part":"linkage-cabels"}',
  '{"ref":"9","vehicle":"lirren-1","part":"linkage-cables","torque":"400","colour":1}',
  '{"ref":',
  '',
].join('\n');

const CSV = [
  'ref,part,vehicle,fitted.gearbox,adapter.gearbox-prop',
  '1,linkage-cables,lirren-1,,',
  '"2 ""b""",linkage-cables,lirren-1,unknown,adapter-70-65',
  '3,linkage-cables,lirren-9,,',
  '4,"x',
].join('\r\n');

/** HTTP says which status a problem has, and which limit was passed. */
function withoutHttp(value: unknown): unknown {
  const text = JSON.stringify(value, (key, one: unknown) => {
    return key === 'status' || (key === 'limit' && typeof one === 'object') ? undefined : one;
  });
  return JSON.parse(text);
}

describe.each([
  ['ndjson', 'application/x-ndjson', NDJSON],
  ['csv', 'text/csv', CSV],
] as const)('%s', (form, type, body) => {
  test.each([
    ['short', 'en'],
    ['full', 'de'],
  ])('%s, in %s', async (answers, lang) => {
    const search = `form=${answers}&lang=${lang}`;
    const asked = await rig.app.request(`/v1/fit/batch?${search}`, {
      method: 'POST',
      headers: { 'content-type': type, accept: 'application/x-ndjson' },
      body,
    });
    const words = ['--in', form, '--out', 'ndjson', '--form', answers, '--lang', lang];
    const { out, code } = await run(['batch', '-', ...words], {
      database,
      input: body,
      world: { untilStopped: () => new Promise<string>(() => undefined) },
    });
    const objects = (text: string) =>
      text
        .trimEnd()
        .split('\n')
        .map((line) => withoutHttp(JSON.parse(line)));
    const own = objects(out);
    expect(own.length).toBeGreaterThan(5);
    expect(own).toEqual(objects(await asked.text()));
    expect(code).toBe(3);
  });
});
