/**
 * Example requests that are refused: one at least for each problem of each operation. What every
 * operation refuses is made from a request that it answers, with one thing spoilt; what only some
 * refuse is written down here. As with the others, whoever prints the contract asks the service.
 */

import { EXAMPLE_REQUESTS, type ExampleRequest } from './examples.js';
import { LIMITS } from './limits.js';
import type { Operation } from './operation.js';
import type { ProblemCode } from './problems/problem-type.js';
import type { AskedRequest } from './sent-request.js';

export interface RefusedRequest extends ExampleRequest, AskedRequest {
  /** The code of the problem that it is refused with. */
  readonly code: ProblemCode;
  /** How it stands with the service that is asked, where not all is well. */
  readonly service?: ServiceState;
}

/** Nothing published; a store that cannot be read; a mistake of the program; about to stop. */
export type ServiceState = 'empty' | 'unreadable' | 'faulty' | 'stopping';

type Spoilt = Omit<RefusedRequest, 'operationId' | 'name' | 'code'>;
type Written = Pick<RefusedRequest, 'summary' | 'segment' | 'search' | 'body'>;

/** What is refused by some operations, by operation and code. */
const WRITTEN: Readonly<Record<string, Readonly<Partial<Record<ProblemCode, Written>>>>> = {
  checkFit: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      search: 'vehicle=lirren-9&part=linkage-cables',
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      search: 'vehicle=lirren&part=linkage-cables',
    },
    'unknown-part': {
      summary: 'A part with a letter missing',
      search: 'vehicle=lirren-1&part=linkage-cable',
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      search: 'vehicle=lirren-1&part=44%2F10+077',
    },
    'unknown-position': {
      summary: 'A position that the vehicle has not',
      search: 'vehicle=lirren-1&part=linkage-cables&position=gear-linkage',
    },
    'invalid-question': {
      summary: 'A torque without its unit',
      search: 'vehicle=lirren-1&part=linkage-cables&torque=400',
    },
    'changes-not-supported': {
      summary: 'Which changes would make it fit',
      search: 'vehicle=lirren-1&part=linkage-cables&changes=yes',
    },
  },
  askFit: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'lirren-9', part: 'control-centre' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren', part: 'control-centre' },
    },
    'ambiguous-part': {
      summary: 'What is on it is named by a number that two makers print',
      body: { vehicle: 'lirren-1', part: 'control-centre', fitted: { clutch: '44/10-077' } },
    },
    'unknown-part': {
      summary: 'What is on one side is not in the catalogue',
      body: {
        vehicle: 'lirren-1',
        part: 'linkage-cables',
        fitted: { 'rear-half-shaft': { left: 'rear-shaft-early-left', right: 'rear-shaft-9' } },
      },
    },
    'unknown-position': {
      summary: 'Something is said of a position that the vehicle has not',
      body: { vehicle: 'lirren-1', part: 'control-centre', fitted: { 'gear-box': 'unknown' } },
    },
    'invalid-question': {
      summary: 'An adapter at a mating that the vehicle has not',
      body: {
        vehicle: 'lirren-1',
        part: 'control-centre',
        adapters: { 'gearbox-to-prop': ['adapter-70-65'] },
      },
    },
    'changes-not-supported': {
      summary: 'Which changes would make it fit',
      body: { vehicle: 'lirren-1', part: 'control-centre', changes: 'yes' },
    },
  },
  inspectVehicle: {
    'unknown-vehicle': {
      summary: 'A vehicle that is not in the catalogue',
      body: { vehicle: 'hulvane-2' },
    },
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      body: { vehicle: 'lirren' },
    },
    'ambiguous-part': {
      summary: 'What is on it is named by a number that two makers print',
      body: { vehicle: 'hulvane', fitted: { clutch: 'number:44/10 077' } },
    },
    'unknown-part': {
      summary: 'What is on it is not in the catalogue',
      body: { vehicle: 'hulvane', fitted: { gearbox: 'gearbox-7' } },
    },
    'unknown-position': {
      summary: 'Something is said of a position that the vehicle has not',
      body: { vehicle: 'hulvane', fitted: { 'gear-box': 'none' } },
    },
    'invalid-question': {
      summary: 'A torque in a unit of power',
      body: { vehicle: 'hulvane', torque: '90 kW' },
    },
  },
  mateFaces: {
    'unknown-part': {
      summary: 'A part that is not in the catalogue',
      search: 'a=control-center&b=gearbox-6-late',
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      search: 'a=44%2F10.077&b=gearbox-6-late',
    },
    'unknown-interface': {
      summary: 'A face that the part has not',
      search: 'a=control-centre&b=gearbox-6-late&b.face=plug',
    },
    'invalid-question': {
      summary: 'A gearbox as an adapter',
      search: 'a=gearbox-6-late&b=prop-early&adapter=gearbox-5-early',
    },
  },
  askMate: {
    'unknown-part': {
      summary: 'A part that is not in the catalogue',
      body: { a: { part: 'linkage-cable' }, b: { part: 'gearbox-6-late' } },
    },
    'ambiguous-part': {
      summary: 'A number that two makers print',
      body: { a: { part: '44/10 077' }, b: { part: 'gearbox-6-late' } },
    },
    'unknown-interface': {
      summary: 'A face that the part has not',
      body: {
        a: { part: 'linkage-cables', interface: 'boxes' },
        b: { part: 'gearbox-6-late' },
      },
    },
    'invalid-question': {
      summary: 'A face that is written out with a value that is none',
      body: {
        a: { part: 'linkage-cables', interface: 'box' },
        b: { inline: { kind: 'shift-linkage', side: 'gearbox', gates: 'four' } },
      },
    },
  },
  listVehicles: {
    'invalid-question': {
      summary: 'A fact with two letters swapped',
      search: 'make=Corrablyn&fact.axle-tga=tag-390',
    },
    'unknown-layout': {
      summary: 'A layout that the catalogue has not',
      search: 'layout=long-wad',
    },
  },
  readVehicle: {
    'vehicle-replaced': {
      summary: 'A vehicle that was recorded roughly, until two took its place',
      segment: 'lirren',
    },
  },
  readEdition: {
    'unknown-edition': { summary: 'An edition to come', segment: '999' },
  },
  listParts: {
    'unknown-role': {
      summary: 'A role that the catalogue has not',
      search: 'role=gear-box',
    },
    'unknown-kind': {
      summary: 'A kind of face that there is not',
      search: 'kind=prop-shaft-flange',
    },
    'invalid-question': {
      summary: 'Two things at once that there are not',
      search: 'role=gear-box&kind=prop-shaft-flange',
    },
  },
};

/** One request for each of the problems that the operation can answer with. */
export function refusalsOf(operation: Operation, codes: readonly ProblemCode[]): RefusedRequest[] {
  const { operationId } = operation;
  const good = EXAMPLE_REQUESTS.find((one) => one.operationId === operationId);
  if (good === undefined) throw new Error(`${operationId} has no example in examples.ts`);
  return codes.map((code) => {
    const spoilt = WRITTEN[operationId]?.[code] ?? spoil(code, good, operation);
    if (spoilt !== null) return { ...spoilt, operationId, name: code, code };
    throw new Error(`${operationId} has no example of ${code} in refusals.ts`);
  });
}

/** A request that is answered, with one thing that is refused; null where none is known. */
function spoil(code: ProblemCode, good: ExampleRequest, operation: Operation): Spoilt | null {
  const { segment, search, body } = good;
  const request = {
    ...(segment === undefined ? {} : { segment }),
    ...(search === undefined ? {} : { search }),
    ...(body === undefined ? {} : { body }),
  };
  if (code.startsWith('unknown-') && operation.segment !== null && code !== 'unknown-edition') {
    return { summary: 'One that is not in the catalogue', segment: 'nowhere' };
  }
  const text = JSON.stringify(body ?? null);
  switch (code) {
    case 'invalid-request':
      return { summary: 'Something that nobody knows', ...request, ...withField(good, 'colour') };
    case 'invalid-cursor':
      return { summary: 'A cursor that nobody gave out', search: 'cursor=2' };
    case 'unknown-edition':
      return { summary: 'An edition to come', ...request, ...withField(good, 'edition') };
    case 'malformed-json':
      return { summary: 'A body that stops half-way', ...request, text: text.slice(0, -1) };
    case 'malformed-request':
      return { summary: 'A connection that breaks off', ...request, stop: 'breaking-off' };
    case 'body-too-large': {
      const long = text.padEnd(LIMITS.bodyBytes.value + 1);
      return { summary: 'A body of one byte too many', ...request, text: long };
    }
    case 'url-too-long': {
      const long = `${search ?? ''}&`.padEnd(LIMITS.urlBytes.value, 'x');
      return { summary: 'A URL without end', ...request, search: long };
    }
    case 'unsupported-media-type': {
      const headers = { 'content-type': 'application/xml' };
      return { summary: 'A body that says it is XML', ...request, headers };
    }
    case 'not-acceptable':
      return { summary: 'A client that takes XML alone', ...request, headers: XML_ALONE };
    case 'method-not-allowed':
      return { summary: 'A method that the path has not', ...request, method: 'DELETE' };
    case 'no-edition':
      return { summary: 'Before anything was published', ...request, service: 'empty' };
    case 'store-fault':
      return { summary: 'A damaged database', ...request, service: 'unreadable' };
    case 'internal-error':
      return { summary: 'A mistake of the program', ...request, service: 'faulty' };
    case 'stopping':
      return { summary: 'While it is being stopped', ...request, service: 'stopping' };
    default:
      return null;
  }
}

const XML_ALONE = { accept: 'application/xml' };

/** The question with one more field: a number that nothing has. */
function withField(
  { search, body }: ExampleRequest,
  name: string,
): Pick<Spoilt, 'search' | 'body'> {
  if (body !== undefined) return { body: { ...body, [name]: 999 } };
  return { search: `${search === undefined ? '' : `${search}&`}${name}=999` };
}
