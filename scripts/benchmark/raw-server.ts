/**
 * What Node alone makes of a request: answers every one with the same bytes, as JSON, and looks at
 * nothing of it. What the service is measured against.
 */

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

const [length = '1000'] = process.argv.slice(2);
const body = Buffer.from(JSON.stringify({ text: ''.padEnd(Number(length) - 11, 'x') }));

const server = createServer((request, response) => {
  request.on('data', () => undefined);
  request.on('end', () => {
    response.writeHead(200, { 'content-type': 'application/json', 'content-length': body.length });
    response.end(body);
  });
});
server.listen(0, '127.0.0.1', () => {
  const { port } = server.address() as AddressInfo;
  process.stdout.write(`${JSON.stringify({ url: `http://127.0.0.1:${port}` })}\n`);
});
