/**
 * Headers that wish for something, and cursors that nobody gave out.
 */

import { type Cursor, cursorText, readCursor } from '../../../src/contract/cursor.js';
import { CART as CATALOGUE } from '../../cli/catalogue.js';
import { LARGER_CART, rigOf } from '../fixture.js';
import { CART, FIT, get, type Inputs, post } from './bytes.js';

const accepting = (type: string) => get(FIT, [`Accept: ${type}`]);

export const ACCEPTED: Inputs = {
  'HTML alone': accepting('text/html'),
  'XML, and any text': accepting('application/xml, text/*'),
  'JSON with weight 0, and anything else': accepting('application/json;q=0, */*'),
  'anything with weight 0': accepting('*/*;q=0'),
  'a problem alone': accepting('application/problem+json'),
  'JSON in capitals': accepting('APPLICATION/JSON'),
  'JSON with a weight of 2': accepting('application/json;q=2'),
  'JSON with a weight of nan': accepting('application/json;q=nan'),
  'JSON with a weight below zero': accepting('application/json;q=-1'),
  'JSON with a version': accepting('application/json;version=2'),
  'an empty wish': accepting(''),
  'signs that are no wish': accepting(';;;,,,==='),
  'JSON behind 1000 characters': accepting(`${'text/html,'.repeat(100)}application/json`),
  'HTML, to a problem page': get('/problems', ['Accept: text/html']),
  'JSON, to a problem page': get('/problems', ['Accept: application/json']),
  'a language of 10000 characters': get(FIT, [`Accept-Language: ${'x'.repeat(10_000)}`]),
  'a thousand languages': get(FIT, [`Accept-Language: ${'de;q=0.1,'.repeat(1000)}`]),
  'a language by the name of a method': get(FIT, ['Accept-Language: constructor, __proto__']),
  'a charset that nobody has': get(FIT, ['Accept-Charset: cow']),
  'a coding that nobody takes': get(FIT, ['Accept-Encoding: identity;q=0']),
  'an id of a request with a line break': get('/v1/kinds/x', ['X-Request-Id: a%0d%0ab']),
  'an id of a request of 10000 characters': get('/v1/kinds/x', [
    `X-Request-Id: ${'x'.repeat(10_000)}`,
  ]),
  'an id of a request in HTML': get('/v1/kinds/x', ['X-Request-Id: <b>']),
  'an id of a request by `__proto__`': get('/v1/kinds/x', ['X-Request-Id: __proto__']),
  'an origin that is null': get(FIT, ['Origin: null']),
  'a preflight of anybody': get(
    '/v1/fit',
    ['Origin: https://elsewhere.example', 'Access-Control-Request-Method: DELETE'],
    'OPTIONS',
  ),
  'a password': get(FIT, ['Authorization: Basic eDp5']),
  'a cookie': get(FIT, ['Cookie: session=__proto__; a=b']),
  'another address of the client': get(FIT, ['X-Forwarded-For: 127.0.0.1', 'Forwarded: for=_x']),
  'another host by a proxy': get(FIT, ['X-Forwarded-Host: elsewhere.example']),
  'another path by a proxy': get('/v1/kinds', ['X-Original-URL: /admin', 'X-Rewrite-URL: /admin']),
};

const rig = rigOf({ documents: [CATALOGUE, LARGER_CART] });

async function answered(target: string): Promise<Response> {
  return rig.app.request(target);
}

const etag = (await answered(FIT)).headers.get('etag') ?? '';
const known = (...headers: string[]) => get(FIT, headers);

export const CONDITIONS: Inputs = {
  'the validator of the answer': known(`If-None-Match: ${etag}`),
  'the same, said to be weak': known(`If-None-Match: W/${etag}`),
  'the same, without its quotes': known(`If-None-Match: ${etag.replaceAll('"', '')}`),
  'the same among a thousand others': known(`If-None-Match: ${'"x", '.repeat(1000)}${etag}`),
  'the same in two headers': known('If-None-Match: "x"', `If-None-Match: ${etag}`),
  'any validator': known('If-None-Match: *'),
  'any validator, of what is not there': get('/v1/parts/nope', ['If-None-Match: *']),
  'any validator, of a question at fault': get(`${FIT}&x=1`, ['If-None-Match: *']),
  'a validator that is none': known('If-None-Match: """,,,W/W/'),
  'an empty validator': known('If-None-Match: '),
  'a validator to be met': known('If-Match: "x"'),
  'a time since which nothing changed': known('If-Modified-Since: Wed, 01 Jan 2200 00:00:00 GMT'),
  'a time that is none': known('If-Unmodified-Since: never'),
  'a range of bytes': known('Range: bytes=0-9'),
  'a range that ends before it begins': known('Range: bytes=9-0'),
  'a thousand ranges': known(`Range: bytes=${'0-,'.repeat(1000)}0-`),
  'a preference that nobody has': known('Prefer: respond-async, wait=0, return=minimal'),
  'not from a cache': known('Cache-Control: no-cache', 'Pragma: no-cache'),
  'only from a cache': known('Cache-Control: only-if-cached'),
  'the validator with POST': post(CART, {
    headers: ['Content-Type: application/json', 'If-None-Match: *'],
  }),
  'any validator with QUERY': post(CART, {
    method: 'QUERY',
    headers: ['Content-Type: application/json', 'If-None-Match: *'],
  }),
  'the validator with HEAD': get(FIT, [`If-None-Match: ${etag}`], 'HEAD'),
};

const given = (await (await answered('/v1/parts?limit=1')).json()) as { next: string };
const filtered = (await (await answered('/v1/parts?limit=1&role=gearbox')).json()) as {
  next: string;
};
const good = readCursor(given.next);
if (good === null) throw new Error('a list gave out what is no cursor');
const made = (change: Partial<Cursor>) => cursorText({ ...good, ...change });
const page = (cursor: string, more = '') => get(`/v1/parts?cursor=${cursor}${more}`);

export const CURSORS: Inputs = {
  'the one that was given out': page(given.next),
  'cut by one character': page(given.next.slice(0, -1)),
  'cut to half': page(given.next.slice(0, given.next.length / 2)),
  'with a character too many': page(`${given.next}A`),
  'with a sign of equality behind it': page(`${given.next}=`),
  'in capitals': page(given.next.toUpperCase()),
  'a number': page('2'),
  'an empty one': page(''),
  'a text that is no base64': page('%F0%9F%92%A5'),
  'base64 of no UTF-8': page('_____w'),
  'base64 of no JSON': page('eA'),
  'of an empty list': page('W10'),
  'of an object': page('e30'),
  'of numbers alone': page(Buffer.from('[1,2,3,4]').toString('base64url')),
  'of lists 500 deep': page(Buffer.from('['.repeat(500)).toString('base64url')),
  'of `__proto__`': page(Buffer.from('{"__proto__":[]}').toString('base64url')),
  'of another list': get(`/v1/kinds?cursor=${given.next}`),
  'of another filter': page(filtered.next),
  'of another edition': page(given.next, '&edition=1'),
  'of an edition to come': page(made({ edition: 9 })),
  'of an edition of no number': page(made({ edition: 0 })),
  'of an edition of another store': page(made({ hash: '0123456789abcdef' })),
  'after an entry that is not there': page(made({ after: ['nope'] })),
  'after everything': page(made({ after: ['\uffff'] })),
  'after `__proto__`': page(made({ after: ['__proto__'] })),
  'after nothing': page(made({ after: [''] })),
  'after too many fields': page(made({ after: ['box-a', 'box-b', 'box-c'] })),
  'of 5000 characters': page('A'.repeat(5000)),
  twice: page(given.next, `&cursor=${given.next}`),
  'with another limit': page(given.next, '&limit=200'),
  'of the editions, after no number': get(
    `/v1/editions?cursor=${made({ list: '/v1/editions', after: ['x'] })}`,
  ),
};
