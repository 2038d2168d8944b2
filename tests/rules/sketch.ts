/**
 * A small notation for catalogues of a few parts, so that a test shows its whole world in a few
 * lines.
 *
 *   places   'box'  'unit?' (may be empty)  'wheel*4' (count)  'shaft<>' (left and right)
 *            'box: manual, automatic' (roles, where they are not the name of the place)
 *   matings  'box.rear = prop.front'  'name: box.rear = prop.front +2 shared' (adapters in a row)
 *   parts    'box-a': its faces and values in one; the role is the word before the first dash
 *
 * Left out: prices, texts and languages.
 */

import type { Catalogue } from '../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';

export type Table<Item> = Readonly<Record<string, Item>>;

export interface Sketch {
  /** The values of each role; a word of `VALUES`, or a whole record. */
  readonly roles?: Table<Table<unknown>>;
  /** The faces that a role lists; a role that is not here lists none and may have any. */
  readonly faces?: Table<readonly string[]>;
  readonly kinds?: readonly unknown[];
  readonly places: readonly string[];
  readonly matings?: readonly string[];
  readonly terms?: Table<unknown>;
  readonly checks?: readonly unknown[];
  readonly unmated?: 'ignore';
  readonly parts: Table<Table<unknown>>;
  /** What the works fitted; a vehicle whose name is in `about` has more to it. */
  readonly cars: Table<Table<unknown>>;
  readonly about?: Table<unknown>;
  readonly layouts?: readonly unknown[];
  readonly rules?: readonly unknown[];
  readonly statements?: readonly unknown[];
  readonly facts?: readonly unknown[];
  readonly couplings?: Table<unknown>;
}

export interface World {
  readonly catalogue: Catalogue;
  readonly document: unknown;
  readonly warnings: readonly string[];
}

const VALUES: Table<unknown> = {
  code: { type: 'code' },
  count: { type: 'count' },
  ratio: { type: 'ratio' },
  ratios: { type: 'ratio', list: true },
  length: { type: 'measured', unit: 'mm' },
  torque: { type: 'measured', unit: 'N.m' },
  rating: { type: 'measured', unit: 'N.m', rating: true },
  engine: { type: 'measured', unit: 'N.m', askedAs: 'torque' },
};

/** Two kinds that every world has: patterns that must be equal, and a pin in a hole. */
const KINDS: readonly unknown[] = [
  {
    id: 'flange',
    parameters: { pattern: { type: 'code' } },
    checks: [{ equal: 'pattern' }],
  },
  {
    id: 'peg',
    sides: ['pin', 'hole'],
    parameters: { dia: { type: 'measured', unit: 'mm' } },
    checks: [{ id: 'play', clearance: ['hole.dia', 'pin.dia'], min: '0 mm', max: '0.2 mm' }],
  },
];

/** A flange of a pattern; without one, its pattern is not recorded. */
export function flange(pattern?: unknown, more: Table<unknown> = {}) {
  return { kind: 'flange', ...(pattern === undefined ? {} : { pattern }), ...more };
}

export function pin(dia?: unknown, more: Table<unknown> = {}) {
  return { kind: 'peg', side: 'pin', ...(dia === undefined ? {} : { dia }), ...more };
}

export function hole(dia?: unknown, more: Table<unknown> = {}) {
  return { kind: 'peg', side: 'hole', ...(dia === undefined ? {} : { dia }), ...more };
}

export function optional(face: Table<unknown>) {
  return { ...face, optional: true };
}

export const ABSENT = { absent: true };

export function by(basis: string) {
  return { evidence: { basis } };
}

/** A value of another basis than the document's. */
export function from(basis: string, is: unknown) {
  return { is, ...by(basis) };
}

/** @throws Error where the sketch has a fault: see `faultsOf` for sketches that shall have. */
export function world(sketch: Sketch): World {
  const document = documentOf(sketch);
  const { catalogue, faults, warnings } = compileDocument(document, BUILT_IN_KINDS);
  if (catalogue === null) throw new Error(JSON.stringify(faults, null, 1));
  return { catalogue, document, warnings: warnings.map(({ code }) => code) };
}

/** The codes of the faults for which a sketch is refused. */
export function faultsOf(sketch: Sketch): string[] {
  return compileDocument(documentOf(sketch), BUILT_IN_KINDS).faults.map(({ code }) => code);
}

function documentOf(sketch: Sketch): unknown {
  const { kinds = [], rules, statements, facts, couplings, about = {} } = sketch;
  const { terms, checks, unmated } = sketch;
  const positions = sketch.places.map(placeOf);
  const parts = Object.entries(sketch.parts).map(partOf);
  const used = [...positions, ...parts].flatMap(({ roles }) => roles);
  const names = new Set([...used, ...Object.keys(sketch.roles ?? {})]);
  const roles = [...names].map((id) => roleOf(id, sketch));
  const matings = (sketch.matings ?? []).map(matingOf);
  const layout = { id: 'layout', positions, matings, ...given({ terms, checks, unmated }) };
  const vehicles = Object.entries(sketch.cars).map(([id, fitted]) => {
    const more = (about[id] ?? {}) as Table<unknown>;
    return { id, make: 'Orrin', model: 'Test', layout: 'layout', fitted, ...more };
  });
  return {
    catalogue: 1,
    lang: 'en',
    evidence: { basis: 'maker' },
    ...given({ couplings, rules, statements, facts }),
    kinds: [...KINDS, ...kinds],
    roles,
    parts,
    vehicles,
    layouts: [layout, ...(sketch.layouts ?? [])],
  };
}

function given(fields: Table<unknown>): Table<unknown> {
  return Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined));
}

function placeOf(text: string) {
  const match = /^([a-z0-9-]+)(\?)?(?:\*(\d+)|(<>))?(?:: (.+))?$/.exec(text);
  if (match === null) throw new Error(`no place: ${text}`);
  const [, id = '', isOptional, count, isHanded, roles = id] = match;
  const more = {
    optional: isOptional === undefined ? undefined : true,
    count: count === undefined ? undefined : Number(count),
    handed: isHanded === undefined ? undefined : true,
  };
  return { id, name: `the ${id}`, roles: roles.split(', '), ...given(more) };
}

function matingOf(text: string) {
  const match = /^(?:([a-z0-9-]+): )?(\S+) = (\S+)(?: \+(\d))?( shared)?$/.exec(text);
  if (match === null) throw new Error(`no mating: ${text}`);
  const [, name, left = '', right = '', adapters, shared] = match;
  const id = name ?? `${left.split('.')[0] ?? ''}-${right.split('.')[0] ?? ''}`;
  const more = {
    adapters: adapters === undefined ? undefined : Number(adapters),
    shared: shared === undefined ? undefined : true,
  };
  return { id, between: [left, right], ...given(more) };
}

function roleOf(id: string, { roles = {}, faces = {} }: Sketch) {
  const values = Object.entries(roles[id] ?? {}).map(([name, spec]) => [
    name,
    typeof spec === 'string' ? VALUES[spec] : spec,
  ]);
  return { id, name: id, values: Object.fromEntries(values), ...given({ faces: faces[id] }) };
}

const PART_FIELDS = ['roles', 'hand', 'spans', 'evidence'];

function partOf([id, record]: readonly [string, Table<unknown>]) {
  const entries = Object.entries(record);
  const own = entries.filter(([name]) => PART_FIELDS.includes(name));
  const rest = entries.filter(([name]) => !PART_FIELDS.includes(name));
  const interfaces = rest.filter(([, value]) => isFace(value));
  const values = rest.filter(([, value]) => !isFace(value));
  return {
    id,
    name: id,
    roles: (record.roles as string[] | undefined) ?? [id.split('-')[0] ?? id],
    ...Object.fromEntries(own),
    interfaces: Object.fromEntries(interfaces),
    values: Object.fromEntries(values),
  };
}

function isFace(value: unknown): boolean {
  return typeof value === 'object' && value !== null && ('kind' in value || 'absent' in value);
}
