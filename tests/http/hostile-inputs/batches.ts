/**
 * Batches that nobody sends in earnest: types and codings that are others, packed bytes that are
 * none, columns without end, and lines that are no lines. What is wrong with a line is an error on
 * that line: then the batch is answered.
 */

import { deflateSync, gzipSync } from 'node:zlib';
import { type Inputs, post } from './bytes.js';

const TO = '/v1/fit/batch';
const NDJSON = 'application/x-ndjson';
const LINE = '{"vehicle":"cart-1","part":"box-a"}\n';

const lines = (body: string | Buffer, headers: Readonly<Record<string, string>> = {}, to = TO) =>
  post(body, {
    to,
    headers: Object.entries({ 'content-type': NDJSON, ...headers }).map((one) => one.join(': ')),
  });
const rows = (body: string | Buffer) => lines(body, { 'content-type': 'text/csv' });
const packed = (body: Buffer) => lines(body, { 'content-encoding': 'gzip' });

export const BATCHES: Inputs = {
  'lines that are said to be JSON': lines(LINE, { 'content-type': 'application/json' }),
  'lines in UTF-16': lines(LINE, { 'content-type': `${NDJSON}; charset=utf-16` }),
  'lines of no type': lines(LINE, { 'content-type': '' }),
  'lines for who takes JSON alone': lines(LINE, { accept: 'application/json' }),
  'lines packed by another coding': lines(deflateSync(LINE), { 'content-encoding': 'deflate' }),
  'lines packed twice': lines(gzipSync(gzipSync(LINE)), { 'content-encoding': 'gzip, gzip' }),
  'lines that are said to be packed': packed(Buffer.from(LINE)),
  'packed lines that end early': packed(gzipSync(LINE).subarray(0, 12)),
  'no bytes that are said to be packed': packed(Buffer.alloc(0)),
  'a bomb of rows without an end': lines(gzipSync(Buffer.alloc(50_000_000, 'x')), {
    'content-type': 'text/csv',
    'content-encoding': 'gzip',
  }),
  'a bomb of lines': packed(gzipSync(Buffer.alloc(50_000_000, '\n'))),
  'a parameter that lines have': lines(LINE, {}, `${TO}?part=box-a`),
  'a form that nobody knows': lines(LINE, {}, `${TO}?form=long`),
  'two editions': lines(LINE, {}, `${TO}?edition=1&edition=2`),
  'rows without a column': rows('\n\n\n'),
  'columns without end': rows(','.repeat(70_000)),
  'ten thousand columns': rows(Array.from({ length: 10_000 }, (_, at) => `with.p${at}`).join(',')),
  'a column that every object has': rows('vehicle,part,__proto__'),
  'a column of the prototype in a group': rows('vehicle,part,with.__proto__'),
  'a column with an escape sign': rows('vehicle,part,\u001b[2J'),
  'columns that are no UTF-8': rows(Buffer.from([0x76, 0xff, 0x0a])),
  'a quotation mark without end': rows(`vehicle,part\n"${LINE.repeat(5000)}`),
  'rows of quotation marks': rows(`vehicle,part\n${'"\n'.repeat(20_000)}`),
  'lines of nothing but brackets': lines(`${'['.repeat(60_000)}\n`.repeat(20)),
  'a line without end': lines('{"vehicle":"'.padEnd(3_000_000, 'x')),
  'lines of NUL': lines(Buffer.alloc(100_000)),
  'lines with lone surrogates': lines('{"vehicle":"\\ud800","part":"\\udfff"}\n'),
  'lines with a prototype': lines('{"__proto__":{"vehicle":"cart-1"},"part":"box-a"}\n'),
  'a ref that is an object': lines('{"ref":{},"vehicle":"cart-1","part":"box-a"}\n'),
};
