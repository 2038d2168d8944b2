/**
 * For each fault that a request can have, a request that has it: over a catalogue of a few parts,
 * vehicles and works.
 */

import { gzipSync } from 'node:zlib';
import { canonicalText } from '../../src/contract/canonical.js';
import { cursorText } from '../../src/contract/cursor.js';
import { LIMITS } from '../../src/contract/limits.js';
import type { FaultCode } from '../../src/contract/problems/fault.js';
import { CART } from '../cli/catalogue.js';
import { LARGER_CART } from '../http/fixture.js';
import { GARAGE } from '../http/garage.js';
import { empty, endingEarly, named, type Provocation } from '../http/provocations.js';
import { MemoryKeys } from '../memory-store.js';

const gearbox = { 'one-of': ['role', ['gearbox']] };

/** Works of which one can be done, one perhaps, and one to no purpose. */
export const SHOP = {
  ...GARAGE,
  works: [
    {
      id: 'turn',
      name: 'turned',
      on: gearbox,
      gives: { interfaces: { rear: { register: '60.00 ±0.02 mm' } } },
    },
    {
      id: 'stretch',
      name: 'stretched',
      on: { all: [gearbox, { 'at-least': ['rear.register', '65 mm'] }] },
      gives: { interfaces: { rear: { register: '71.00 ±0.02 mm' } } },
    },
    { id: 'bore', name: 'bored', on: gearbox, gives: { interfaces: { one: { pattern: 'f1' } } } },
  ],
};

type Case = Omit<Provocation, 'code' | 'says'>;

function inUrl(search: string): Case {
  return { url: `/v1/fit?vehicle=cart-1&${search}` };
}

function ofPart(more: string): Case {
  return inUrl(`part=box-a&${more}`);
}

function asked(more: object): Case {
  return { url: '/v1/fit', body: { vehicle: 'cart-1', part: 'box-a', ...more } };
}

function wished(more: object): Case {
  return { url: '/v1/kits', body: { vehicle: 'cart-1', ...more } };
}

/** What somebody found out about a piece. */
function onBench(body: object): Case {
  return { url: '/v1/parts/identify', body };
}

function read(on: object): Case {
  return onBench({ measured: [{ on, value: '24' }] });
}

/** A price of the asker's own. */
function priced(more: object): Case {
  return wished({ offers: [{ part: 'box-a', price: '9.00', ...more }] });
}

function measured(on: object): Case {
  return wished({ measured: [{ on, value: '60 mm' }] });
}

function driven(more: object): Case {
  return { url: '/v1/driveline', body: { vehicle: 'cart-1', ...more } };
}

/** The key of a route of another vehicle, as answers write them. */
const CART_2 = `k1.${Buffer.from(
  JSON.stringify({ adapters: [], changes: [], question: { vehicle: 'cart-2' } }),
).toString('base64url')}`;

function tube(diameter: string): Case {
  return { url: `/v1/calculate/propeller-shaft?${diameter}&innerDiameter=0mm&length=1374mm` };
}

function text(body: string): Case {
  return { url: '/v1/fit', body };
}

function batch(body: string, headers: Readonly<Record<string, string>> = {}): Case {
  return { url: '/v1/fit/batch', body, headers: { 'content-type': 'text/csv', ...headers } };
}

/** With the key of a page, from a page. */
function ofPage(origin: string): Pick<Case, 'headers' | 'rig'> {
  const keys = new MemoryKeys();
  const origins = ['https://shop.example'];
  const { text } = keys.addKey({ name: 'page', scopes: ['public'], origins }, '');
  return { rig: { keys, open: [] }, headers: { authorization: `Bearer ${text}`, origin } };
}

const ROW = 'vehicle,part\ncart-1,box-a\n';

const DEEP = LIMITS.bodyLevels.value + 1;
const PLACES = Array.from({ length: LIMITS.placesInBody.value + 1 }, (_, index) => `p-${index}`);
const TURN = `{"vehicle":"cart-1","part":"box-a"`;

/** A cursor of the list of roles, or of another one, given out by an edition that nobody has. */
function cursorOf(list = `/v1/roles?${canonicalText({})}`): Case {
  const cursor = cursorText({ edition: 1, hash: 'sha256-0', list, after: ['engine'] });
  return { url: `/v1/roles?cursor=${cursor}` };
}

export const FAULT_CASES: Readonly<Record<FaultCode, Case>> = {
  'no-edition': { ...ofPart(''), rig: empty },
  'unknown-edition': ofPart('edition=9'),
  'unknown-vehicle': { url: '/v1/fit?vehicle=cart-9&part=box-a' },
  'unknown-part': inUrl('part=box-z'),
  'vehicle-replaced': { url: '/v1/fit?vehicle=cart-rough&part=box-a', rig: named },
  'ambiguous-part': { ...inUrl('part=44%2F10077'), rig: named },
  'sku-of-lot': { ...inUrl('part=sku:C-1'), rig: named },
  'sku-of-work': { ...inUrl('part=sku:P,1%2B'), rig: named },
  'plus-read-as-space': inUrl('part=box-b+turn'),
  'unknown-work': inUrl('part=box-b%2Btrun'),
  'work-not-for-part': inUrl('part=motor%2Bturn'),
  'work-may-not-apply': inUrl('part=box-c%2Bstretch'),
  'work-changes-nothing': inUrl('part=box-a%2Bbore'),
  'unknown-lot': wished({ want: [{ lot: 'crate' }] }),
  'unknown-ruleset': wished({ ruleset: 'class-b' }),
  'unknown-sku': wished({ offers: [{ sku: 'GB', price: '9.00' }] }),
  'ambiguous-sku': { ...wished({ offers: [{ sku: 'X', price: '9.00' }] }), rig: named },
  'unknown-layout': { url: '/v1/layouts/carts' },
  'unknown-role': { url: '/v1/roles/gear-box' },
  'unknown-kind': { url: '/v1/kinds/cart-flanges' },
  'incomplete-line': driven({ lines: [{ position: 'gearbox' }] }),
  'work-of-no-line': driven({ lines: [{ action: 'work', position: 'gearbox', work: 'turn' }] }),
  'filled-twice': driven({
    lines: [
      { position: 'gearbox', part: 'box-a' },
      { position: 'gearbox', part: 'box-b' },
    ],
  }),
  'not-a-route-key': driven({ routes: ['k1.x'] }),
  'route-of-another-vehicle': driven({ routes: [CART_2] }),
  'not-a-grip': driven({ grip: '3' }),
  'unknown-calculation': { url: '/v1/calculate/propeler-shaft' },
  'input-at-fault': tube('outerDiameter=76kg'),
  'impossible-input': tube('outerDiameter=0mm'),
  'unknown-fact': ofPart('fact.axle-tga=a'),
  'not-a-value-of-fact': ofPart('fact.axle-tag=z'),
  'unknown-position': ofPart('position=gear-box'),
  'unknown-mating': ofPart('adapter.box-shafts=plate-ab'),
  'unknown-load': wished({ want: [{ load: 'box-troque', atLeast: '1.25' }] }),
  'not-handed': asked({ fitted: { gearbox: { left: 'box-a', right: 'box-a' } } }),
  'place-of-the-part': ofPart('with.gearbox=box-b'),
  'too-many-adapters': ofPart('adapter.box-shaft=plate-ab,plate-ab'),
  'not-an-adapter': ofPart('adapter.box-shaft=box-b'),
  'unknown-interface': { url: '/v1/mate?a=box-a&b=shaft-a&b.face=rear' },
  'no-interface-recorded': { url: '/v1/mate?a=box-a&b=motor' },
  'no-sign-of-a-vin': { url: '/v1/vehicles/identify', body: { vin: '0CBLRO00000000001' } },
  'wrong-length-of-vin': { url: '/v1/vehicles/identify', body: { vin: '0CBLR' } },
  'not-a-torque': ofPart('torque=9'),
  'negative-torque': ofPart('torque=-9%20N.m'),
  'not-a-price': priced({ price: '9,00' }),
  'not-a-margin': wished({ want: [{ load: 'box-torque', atLeast: '0' }] }),
  'not-hours': wished({ limits: { labourHours: '8 h' } }),
  'amount-at-fault': priced({ pack: '2 h' }),
  'condition-at-fault': wished({
    want: [{ position: 'gearbox', condition: { 'at-least': ['gearbox.gears', 6] } }],
  }),
  'reading-of-nothing': measured({ interface: 'rear', parameter: 'register' }),
  'reading-of-no-face': read({ side: 'shaft', parameter: 'teeth' }),
  'two-faces-in-one': onBench({
    measured: [
      { on: { interface: 'rear', kind: 'propshaft-flange', parameter: 'pcd' }, value: '90 mm' },
      { on: { interface: 'rear', kind: 'involute-spline', parameter: 'teeth' }, value: '24' },
    ],
  }),
  'face-of-no-part': read({ interface: 'raer', parameter: 'teeth' }),
  'side-of-no-kind': read({ kind: 'involute-spline', side: 'left', parameter: 'teeth' }),
  'parameter-of-no-kind': read({ kind: 'involute-spline', parameter: 'tooths' }),
  'value-of-no-role': read({ parameter: 'lenght' }),
  'number-says-nothing': onBench({ numbers: ['* - …'] }),
  'reading-of-no-part': {
    url: '/v1/inspect',
    body: { vehicle: 'cart-1', measured: [{ on: { position: 'gearbox' }, value: 'unknown' }] },
  },
  'measured-twice': wished({
    measured: ['box-a', 'box-b'].map((value) => ({ on: { position: 'gearbox' }, value })),
  }),
  'reading-at-fault': measured({ part: 'box-a', interface: 'rear', parameter: 'diameter' }),
  'which-hand': measured({ position: 'wheel-shaft', parameter: 'length' }),
  'no-part-there': wished({
    fitted: { gearbox: 'unknown' },
    measured: [{ on: { position: 'gearbox', parameter: 'torque' }, value: '9 N.m' }],
  }),
  'face-at-fault': {
    url: '/v1/mate',
    body: { a: { part: 'box-a' }, b: { inline: { kind: 'cart-flanges', side: 'recess' } } },
  },
  'repeated-name': text(`${TURN},"part":"box-b"}`),
  'reserved-name': text(`${TURN},"__proto__":{}}`),
  'too-deep': text(`${TURN},"with":${'['.repeat(DEEP)}${']'.repeat(DEEP)}}`),
  'too-many-values': text(`${TURN},"with":[${'1,'.repeat(LIMITS.bodyValues.value)}1]}`),
  'unknown-parameter': ofPart('colour=red'),
  'repeated-parameter': ofPart('part=box-b'),
  'too-many-parameters': ofPart(
    PLACES.slice(0, LIMITS.placesInUrl.value + 1)
      .map((place) => `with.${place}=box-a`)
      .join('&'),
  ),
  'malformed-encoding': ofPart('torque=%ff'),
  'unknown-field': asked({ colour: 'red' }),
  missing: { url: '/v1/fit?vehicle=cart-1' },
  'wrong-type': asked({ part: 7 }),
  'empty-text': inUrl('part='),
  'empty-list': asked({ adapters: { 'box-shaft': [] } }),
  'too-long': inUrl(`part=${'x'.repeat(LIMITS.nameCharacters.value + 1)}`),
  'too-many-items': asked({
    adapters: { 'box-shaft': PLACES.slice(0, LIMITS.adaptersInRow.value + 1) },
  }),
  'too-many-places': asked({ with: Object.fromEntries(PLACES.map((place) => [place, 'box-a'])) }),
  'too-small': ofPart('edition=0'),
  'too-large': { url: `/v1/parts?limit=${LIMITS.listEntries.value + 1}` },
  'not-one-of': ofPart('use=race'),
  'unseen-characters': inUrl('part=box%07'),
  'not-a-place': ofPart('position=Gearbox'),
  'not-a-language-tag': ofPart('lang=de_DE'),
  'not-a-month': { url: '/v1/vehicles?built=2004-13' },
  'not-an-edition': { url: '/v1/editions/first' },
  'not-beside-vehicle': { url: '/v1/fit?vehicle=cart-1&make=Tarn&part=box-a' },
  'not-beside-names': { url: '/v1/parts?part=box-a&role=gearbox' },
  'not-a-cursor': { url: '/v1/parts?cursor=2' },
  'cursor-of-another-list': cursorOf('/v1/parts?'),
  'cursor-of-another-edition': cursorOf(),
  'not-json': text(`${TURN} = 1}`),
  'not-utf-8': { url: '/v1/fit', body: new Blob([new Uint8Array([0x22, 0xff, 0x22])]).stream() },
  'body-ended-early': { url: '/v1/fit', body: endingEarly() },
  'body-too-large': text(TURN.padEnd(LIMITS.bodyBytes.value + 1)),
  'body-not-json-type': { ...asked({}), headers: { 'content-type': 'text/plain' } },
  'body-encoded': { ...asked({}), headers: { 'content-encoding': 'gzip' } },
  'body-type-not-taken': batch('', { 'content-type': 'application/json' }),
  'coding-not-taken': batch('', { 'content-encoding': 'br' }),
  'not-gzip': batch(ROW, { 'content-encoding': 'gzip' }),
  'expands-too-far': {
    ...batch('', { 'content-encoding': 'gzip' }),
    // Names of columns that go on and on.
    body: new Blob([gzipSync(Buffer.alloc(2_000_000, 'x'))]).stream(),
  },
  'line-too-long': batch('x'.repeat(LIMITS.batchLineBytes.value + 1)),
  'row-not-utf-8': {
    ...batch(''),
    body: new Blob([new Uint8Array([0xff, 0x0a])]).stream(),
  },
  'malformed-row': batch('"vehicle"x,part'),
  'repeated-column': batch('vehicle,part,part'),
  'unknown-column': batch('vehicle,part,colour'),
  'key-not-known': { ...ofPart(''), headers: { authorization: 'Bearer fy_none' } },
  'no-key': { ...ofPart(''), rig: { open: [] } },
  'scope-not-granted': { ...ofPart('view=trade'), ...ofPage('https://shop.example') },
  'origin-not-granted': { ...ofPart(''), ...ofPage('https://elsewhere.example') },
  'question-not-in-view': { url: '/v1/kinds?view=public' },
  'edition-not-in-view': {
    ...ofPart('edition=1'),
    rig: { documents: [CART, LARGER_CART], open: ['public'] },
  },
  'list-not-in-view': { url: '/v1/parts/box-a/fits?view=public' },
  'wish-not-in-view': { url: '/v1/kits?vehicle=cart-1&view=public&limits.cost=9' },
  'url-too-long': ofPart('x'.repeat(LIMITS.urlBytes.value)),
  'nothing-at-path': { url: '/v1/fits' },
  'unknown-problem': { url: '/problems/unknown-prat' },
  'method-not-taken': { ...ofPart(''), method: 'DELETE' },
  'type-not-accepted': { ...ofPart(''), headers: { accept: 'application/xml' } },
};
