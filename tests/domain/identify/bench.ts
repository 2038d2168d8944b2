/**
 * A small catalogue of pieces that lie on a bench, and questions about them.
 */

import { type IdentifyPartInput, identifyPart } from '../../../src/usecases/identify-part.js';
import type { PieceOn, PieceReading } from '../../../src/usecases/read-piece.js';
import { libraryOf } from '../../memory-store.js';

const spline = (teeth?: number, side = 'shaft') => ({
  kind: 'spline',
  side,
  ...(teeth === undefined ? {} : { teeth }),
});

const ring = (pcd: string) => ({ kind: 'ring', pcd });

export const BENCH = {
  catalogue: 1,
  lang: 'en',
  evidence: { basis: 'maker' },
  kinds: [
    {
      id: 'spline',
      name: 'spline',
      sides: ['shaft', 'hub'],
      parameters: {
        teeth: { type: 'count', tool: 'count' },
        family: { type: 'code', tool: 'visual-check' },
        major: { type: 'measured', unit: 'mm', of: 'shaft', tool: 'caliper' },
      },
      checks: [{ equal: 'teeth' }],
    },
    {
      id: 'ring',
      name: 'bolt ring',
      parameters: { pcd: { type: 'designation', unit: 'mm', tool: 'caliper' } },
      checks: [{ equal: 'pcd' }],
    },
  ],
  roles: [
    {
      id: 'box',
      name: 'Box',
      faces: ['input', 'rear', 'plug'],
      values: {
        length: { type: 'measured', unit: 'mm', tool: 'tape' },
        gears: { type: 'ratio', list: true },
        'gear-count': { term: { count: 'gears' }, name: 'number of gears' },
        torque: { type: 'measured', unit: 'N.m', rating: true },
      },
    },
    { id: 'shaft', name: 'Shaft', faces: ['near', 'far'], values: {} },
    { id: 'odd', name: 'Oddment', values: {} },
  ],
  layouts: [{ id: 'cart', positions: [{ id: 'box', name: 'Box', roles: ['box'] }], matings: [] }],
  vehicles: [{ id: 'car', make: 'Tarn', model: 'Cart', layout: 'cart', fitted: { box: 'box-a' } }],
  parts: [
    {
      id: 'box-a',
      roles: ['box'],
      name: 'Box A',
      maker: 'Tarn',
      hand: 'left',
      numbers: [{ number: 'BX-10 A', of: 'maker' }],
      interfaces: {
        input: { ...spline(24), major: '25.00 mm', family: 'fine' },
        rear: ring('100 mm'),
        plug: { absent: true },
      },
      values: { length: '600 mm', gears: ['3', '2', '1'], torque: '200 N.m' },
    },
    {
      id: 'box-b',
      roles: ['box'],
      name: 'Box B',
      maker: 'Tarn',
      hand: 'right',
      numbers: [{ number: 'BX-20 B', of: 'maker' }],
      interfaces: {
        input: { ...spline(26), major: '27.00 mm', family: 'coarse' },
        rear: { kind: 'ring', alternatives: [{ pcd: '100 mm' }, { pcd: '110 mm' }] },
        plug: spline(9, 'hub'),
      },
      values: { length: '640 mm', gears: ['4', '3', '2', '1'], torque: '300 N.m' },
    },
    {
      id: 'box-c',
      roles: ['box'],
      name: 'Box C',
      maker: 'Orrel',
      numbers: [{ number: 'O-7', of: 'maker' }],
      interfaces: {
        input: spline(),
        rear: { kind: 'ring', pcd: { is: '120 mm', evidence: { basis: 'inferred' } } },
        plug: spline(9, 'hub'),
      },
      values: { length: { is: '700 mm', evidence: { basis: 'reported' } } },
    },
    {
      id: 'shaft-a',
      roles: ['shaft'],
      name: 'Shaft A',
      interfaces: { near: spline(24), far: spline(30) },
    },
    ...['20.00 mm', '21.00 mm'].map((major, index) => ({
      id: `shaft-${'bc'.charAt(index)}`,
      roles: ['shaft'],
      name: 'Shaft',
      interfaces: { near: { ...spline(24), major }, far: spline(30) },
    })),
    { id: 'odd-a', roles: ['odd'], name: 'Oddment' },
    ...['OD-1', 'OD-2'].map((number, index) => ({
      id: `odd-${'bc'.charAt(index)}`,
      roles: ['odd'],
      name: 'Oddment',
      maker: 'Tarn',
      numbers: [{ number, of: 'maker' }],
    })),
  ],
  offers: [],
};

const library = libraryOf(BENCH);

const NOTHING: IdentifyPartInput = {
  edition: null,
  lang: 'en',
  units: 'recorded',
  role: null,
  hand: null,
  vehicle: null,
  numbers: [],
  measured: [],
  nameExcluded: false,
  limit: 50,
  after: null,
};

/** What is answered to what somebody knows of a piece. */
export function asked(told: Partial<IdentifyPartInput>) {
  return identifyPart(library, { ...NOTHING, ...told });
}

const NOWHERE: PieceOn = { interface: null, kind: null, side: null, which: null, parameter: null };

/** One reading. */
export function read(
  on: Partial<PieceOn>,
  value: PieceReading['value'],
  tool: string | null = null,
): PieceReading {
  return { on: { ...NOWHERE, ...on }, value, tool };
}

/** Ids of the parts that it can be, in the order of the answer. */
export function leftBy(told: Partial<IdentifyPartInput>): string[] {
  return asked(told).items.map(({ id }) => id);
}

/** What is said of a part, whether it is left or not. */
export function saidOf(part: string, told: Partial<IdentifyPartInput>): string[] {
  const { items, excluded } = asked({ ...told, nameExcluded: true });
  const left = items.find(({ id }) => id === part);
  if (left !== undefined) return left.why.map(({ code }) => code);
  const out = excluded.flatMap(({ parts }) => parts).find(({ id }) => id === part);
  return out === undefined ? [] : [out.code];
}
