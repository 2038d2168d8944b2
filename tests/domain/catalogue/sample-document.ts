/**
 * A small but whole document without a fault, of an invented world: one layout, two gearboxes,
 * what stands around them, and one of everything that a document can say. Tests break it in one
 * place and look at what is said.
 *
 * Length: one document, which is read more easily in one piece.
 */

import { type Compiled, compileDocument } from '../../../src/domain/catalogue/compile.js';
import type { KindRecord } from '../../../src/domain/catalogue/document.js';
import type { Fault } from '../../../src/domain/catalogue/faults.js';

/** The sample's layout, for documents that have it once more. */
export const LAYOUT = {
  id: 'long-awd',
  name: 'Long, all wheels driven',
  positions: [
    { id: 'body', name: 'Body', roles: ['body'] },
    { id: 'engine', name: 'Engine', roles: ['engine'] },
    { id: 'gearbox', name: 'Gearbox', roles: ['gearbox'], labour: '6 h', access: '240 min' },
    { id: 'linkage', name: 'Linkage', roles: ['linkage'], optional: true },
    { id: 'prop-shaft', name: 'Prop shaft', roles: ['prop-shaft'], behind: [] },
    {
      id: 'final-drive',
      name: 'Final drive',
      roles: ['final-drive'],
      behind: ['prop-shaft', 'half-shaft'],
    },
    { id: 'half-shaft', name: 'Half-shaft', roles: ['half-shaft'], count: 2, handed: true },
  ],
  matings: [
    { id: 'engine-gearbox', between: ['engine.output', 'gearbox.input'], adapters: 0 },
    { id: 'gearbox-linkage', between: ['gearbox.linkage', 'linkage.box'], adapters: 0 },
    { id: 'gearbox-prop', between: ['gearbox.rear', 'prop-shaft.front'] },
    { id: 'prop-final', between: ['prop-shaft.rear', 'final-drive.input'] },
    { id: 'left-shaft', between: ['final-drive.left', 'half-shaft.inner'], shared: true },
    { id: 'right-shaft', between: ['final-drive.right', 'half-shaft.inner'], shared: true },
  ],
  terms: {
    front: ['gearbox.front-drive', '1/2'],
    rear: ['gearbox.rear-drive', 'final-drive.ratio', '0.1'],
    'shaft-torque': ['engine.torque', 'gearbox.first-gear', 'rear'],
  },
  checks: [
    { id: 'axle-match', agree: ['front', 'rear'], coupling: 'gearbox.coupling' },
    { id: 'shaft', carries: 'half-shaft.torque', demand: 'shaft-torque' },
    {
      id: 'span',
      within: [
        'body.span',
        {
          sum: ['gearbox.length', 'prop-shaft.length', 'gearbox-prop.adapter.thickness'],
        },
      ],
      tolerance: '40 mm',
    },
    { id: 'flanges', equal: ['gearbox.rear.holes', 'prop-shaft.rear.holes'] },
  ],
  unmated: 'open',
};

/** The only built-in kind of these tests, so that they do not hang on the real ones. */
export const SPLINE: KindRecord = {
  id: 'spline',
  sides: ['shaft', 'hub'],
  parameters: { teeth: { type: 'count', usual: [10, 40] } },
  checks: [{ equal: 'teeth' }],
};

const SAMPLE = {
  catalogue: 1,
  lang: 'en',
  currency: 'EUR',
  evidence: { basis: 'maker', source: 'list 2026-02' },
  couplings: { 'slow-clutch': { pass: '0.4 %', warn: '1 %', refuse: '3/100' } },
  facts: [
    {
      id: 'axle-tag',
      name: { en: 'Tag on the rear axle', de: 'Schild an der Hinterachse' },
      values: [
        { id: 'short', name: 'S' },
        { id: 'long', name: 'L' },
      ],
      how: 'Read the tag under the lower bolt of the cover.',
    },
    {
      id: 'shift',
      name: 'Shift',
      values: [
        { id: 'rod', name: 'By rod' },
        { id: 'cable', name: 'By cable' },
        { id: 'column', name: 'At the column' },
      ],
    },
  ],
  kinds: [
    {
      id: 'shift-coupling',
      name: 'shift coupling',
      standard: 'none',
      sides: ['box', 'lever'],
      parameters: {
        pattern: { type: 'code', name: 'pattern' },
        pin: { type: 'measured', unit: 'mm', of: 'box', tool: 'caliper', usual: ['4 mm', '20 mm'] },
        bore: { type: 'measured', unit: 'mm', of: 'lever' },
        turns: { type: 'ratio', optional: true },
        hole: { type: 'designation', unit: 'mm', optional: true },
      },
      checks: [
        { equal: 'pattern' },
        {
          clearance: ['lever.bore', 'box.pin'],
          min: '0 mm',
          max: '0.3 mm',
          severity: 'caution',
          text: 'The lever rattles.',
        },
        { equal: 'hole', when: { 'one-of': ['box.pattern', ['two-cable', 'rod']] } },
      ],
      notChecked: ['throw of the lever'],
      caution: 'driveline',
    },
    {
      id: 'flange',
      parameters: {
        holes: { type: 'count' },
        pcd: { type: 'designation', unit: 'mm' },
        register: { type: 'measured', unit: 'mm', tool: 'bore-gauge' },
      },
      checks: [{ equal: 'holes' }, { within: ['a.pcd', 'b.pcd'], tolerance: '0.2 mm' }],
    },
  ],
  roles: [
    {
      id: 'gearbox',
      name: 'Gearbox',
      caution: 'driveline',
      faces: ['input', 'rear', 'linkage'],
      values: {
        'front-drive': { type: 'ratio' },
        'rear-drive': { type: 'ratio' },
        gears: { type: 'ratio', list: true },
        'first-gear': { term: { max: 'gears' } },
        'gear-count': { term: { count: 'gears' } },
        coupling: { type: 'code' },
        length: { type: 'measured', unit: 'mm', tool: 'tape', usual: ['300 mm', '900 mm'] },
        'oil-fill': { type: 'measured', unit: 'l' },
        torque: { type: 'measured', unit: 'N.m', rating: true },
      },
    },
    {
      id: 'engine',
      name: 'Engine',
      faces: ['output'],
      values: { torque: { type: 'measured', unit: 'N.m', askedAs: 'torque' } },
    },
    { id: 'linkage', name: 'Linkage', faces: ['box'] },
    {
      id: 'prop-shaft',
      name: 'Prop shaft',
      faces: ['front', 'rear'],
      values: { length: { type: 'measured', unit: 'mm' } },
    },
    {
      id: 'final-drive',
      name: 'Final drive',
      faces: ['input', 'left', 'right'],
      values: { ratio: { type: 'ratio' } },
    },
    {
      id: 'half-shaft',
      name: 'Half-shaft',
      faces: ['inner'],
      values: { torque: { type: 'measured', unit: 'N.m', rating: true } },
    },
    {
      id: 'adapter',
      name: 'Adapter',
      values: { thickness: { type: 'measured', unit: 'mm' } },
    },
    { id: 'body', name: 'Body', faces: [], values: { span: { type: 'measured', unit: 'mm' } } },
  ],
  parts: [
    {
      id: 'gb5-a',
      roles: ['gearbox'],
      name: 'Five-speed',
      maker: 'Orrin Works',
      numbers: [{ number: '4410-055', of: 'Orrin Works' }],
      built: ['1998-01', '2005-12'],
      supersededBy: 'gb6-late',
      interfaces: {
        input: { kind: 'spline', side: 'shaft', teeth: 24 },
        rear: { kind: 'flange', holes: 4, pcd: '80 mm', register: '56.1 mm' },
        linkage: { kind: 'shift-coupling', side: 'box', pattern: 'rod', pin: '8.0 mm' },
      },
      values: {
        'front-drive': '43/12',
        'rear-drive': '3.583',
        gears: ['40/11', '45/19', '1.4', '1', '0.8'],
        coupling: 'open',
        length: { is: '598 mm', tool: 'tape' },
        'oil-fill': '2.4 l',
        torque: '250 N.m',
      },
    },
    {
      id: 'gb6-late',
      roles: ['gearbox'],
      name: { en: 'Six-speed, late', de: 'Sechsgang, spät' },
      evidence: { basis: 'drawing' },
      interfaces: {
        input: { kind: 'spline', side: 'shaft', teeth: '24' },
        rear: {
          kind: 'flange',
          alternatives: [
            { holes: 4, pcd: '80 mm' },
            { holes: 6, pcd: { choose: { of: ['86 mm', '90 mm'] } } },
          ],
          register: '57.0 ±0.1 mm',
        },
        linkage: { kind: 'shift-coupling', side: 'box', pattern: 'two-cable', pin: '8.0 mm' },
      },
      values: {
        'front-drive': '43/11',
        'rear-drive': {
          is: '43/11',
          evidence: { basis: 'measured', by: 'bench 2', on: '2026-03-01' },
        },
        gears: ['40/11', '45/19', '1.4', '1', '0.8', '0.65'],
        coupling: 'slow-clutch',
        length: '612 mm',
        torque: '360 N.m',
      },
    },
    {
      id: 'engine-2',
      roles: ['engine'],
      name: 'Two-litre engine',
      interfaces: { output: { kind: 'spline', side: 'hub', teeth: 24 } },
      values: { torque: '210 N.m' },
    },
    {
      id: 'link-rod',
      roles: ['linkage'],
      name: 'Rod linkage',
      interfaces: { box: { kind: 'shift-coupling', side: 'lever', pattern: 'rod', bore: '8 H7' } },
    },
    {
      id: 'prop-5',
      roles: ['prop-shaft'],
      name: 'Prop shaft',
      interfaces: {
        front: { kind: 'flange', holes: 4, pcd: '80 mm', register: '56 H7' },
        rear: { kind: 'flange', holes: 4, pcd: '80 mm' },
      },
      values: { length: { choose: ['600 mm', '1900 mm'] } },
    },
    {
      id: 'fd-39',
      roles: ['final-drive'],
      name: 'Final drive 3.9',
      interfaces: {
        input: { kind: 'flange', holes: 4, pcd: '80 mm' },
        left: { kind: 'spline', side: 'hub', teeth: 28 },
        right: { kind: 'spline', side: 'hub', teeth: 28 },
      },
      values: { ratio: '39/10' },
    },
    {
      id: 'hs-l',
      roles: ['half-shaft'],
      name: 'Half-shaft, left',
      hand: 'left',
      interfaces: { inner: { kind: 'spline', side: 'shaft', teeth: 28 } },
      values: { torque: '2000 N.m' },
    },
    {
      id: 'hs-r',
      roles: ['half-shaft'],
      name: 'Half-shaft, right',
      hand: 'right',
      interfaces: { inner: { kind: 'spline', side: 'shaft', teeth: 28 } },
      values: { torque: '2000 N.m' },
    },
    {
      id: 'stub',
      roles: ['adapter'],
      name: 'Flange adapter',
      interfaces: {
        one: { kind: 'flange', holes: 4, pcd: '80 mm' },
        two: { kind: 'flange', holes: 6, pcd: '86 mm' },
      },
      values: { thickness: '12 mm' },
    },
    { id: 'body-long', roles: ['body'], name: 'Long body', values: { span: '2100 ±3 mm' } },
  ],
  layouts: [LAYOUT],
  vehicles: [
    {
      id: 'tarn-2',
      make: 'Orrin',
      model: 'Tarn',
      variant: '2.0 long',
      built: ['2002-09', '2005-08'],
      facts: { 'axle-tag': 'long' },
      layout: 'long-awd',
      fitted: {
        body: 'body-long',
        engine: 'engine-2',
        gearbox: 'gb5-a',
        linkage: 'link-rod',
        'prop-shaft': 'prop-5',
        'final-drive': 'fd-39',
        'half-shaft': { left: 'hs-l', right: 'hs-r' },
        matings: { 'gearbox-prop': ['stub'] },
      },
    },
    {
      id: 'tarn-2-plain',
      make: 'Orrin',
      model: 'Tarn',
      vin: ['XKR**************', { pattern: 'XKS**************', from: '100000', to: '149999' }],
      facts: { 'axle-tag': 'short' },
      layout: 'long-awd',
      like: 'tarn-2',
      fitted: {
        gearbox: { by: 'shift', rod: 'gb5-a', cable: 'gb6-late' },
        linkage: { by: 'shift', rod: 'link-rod', cable: null },
        'half-shaft': { by: 'axle-tag', short: { left: 'hs-l', right: 'hs-r' } },
        matings: { 'prop-final': 'stub' },
      },
    },
    {
      id: 'tarn-2-any',
      make: 'Orrin',
      model: 'Tarn',
      like: 'tarn-2-plain',
      replacedBy: ['tarn-2', 'tarn-2-plain'],
    },
  ],
  rules: [
    {
      id: 'control',
      layouts: ['long-awd'],
      when: {
        all: [
          { changed: 'gearbox' },
          { 'one-of': ['gearbox.part', ['gb6-late']] },
          { not: { empty: 'linkage' } },
          { any: [{ equal: ['fact.axle-tag', 'fact.axle-tag'] }, { kept: 'engine' }] },
        ],
      },
      needs: { 'at-least': ['gearbox.gear-count', 6] },
      because: 'The later box needs its own linkage.',
    },
    {
      id: 'drain',
      when: { mating: 'gearbox-prop', adapter: 'stub' },
      note: 'Drain the oil first.',
      because: 'It runs out of the open flange.',
    },
    {
      id: 'oil',
      when: { opened: 'gearbox' },
      recommends: { position: 'linkage', part: 'link-rod', quantity: '1' },
      consumes: { part: 'stub', quantity: 'gearbox.oil-fill' },
      because: 'It is drained.',
    },
  ],
  statements: [
    {
      id: 'list-1',
      part: 'gb6-late',
      vehicles: ['tarn-2'],
      position: 'gearbox',
      with: { 'prop-shaft': 'prop-5' },
      verdict: 'fits',
      evidence: { basis: 'maker', source: 'list 2026-02' },
    },
  ],
  lots: [
    {
      id: 'shaft-set',
      contains: [
        { part: 'hs-l' },
        { part: 'stub', quantity: 2 },
        { vehicle: 'tarn-2', position: 'prop-shaft' },
      ],
    },
  ],
  works: [
    {
      id: 're-drill',
      name: { en: 'Re-drilled', de: 'Neu gebohrt' },
      on: { all: [{ 'one-of': ['role', ['gearbox']] }, { 'at-least': ['rear.pcd', '70 mm'] }] },
      gives: {
        interfaces: { rear: { holes: 6, pcd: '86 mm' } },
        values: { length: { is: '600 ±1 mm', evidence: { basis: 'measured' } } },
      },
      voids: ['torque'],
      labour: '2 h',
      signOff: 'engineer',
      reversible: false,
    },
  ],
  rulesets: [
    {
      id: 'class-a',
      name: 'Class A',
      valid: ['2007-01', null],
      cite: 'Rule book of the Tarn cup, 4.2',
      demands: { keep: ['engine'], checks: [{ 'at-most': ['gearbox.gear-count', 6] }] },
    },
  ],
  offers: [
    {
      id: 'offer-1',
      for: 'gb6-late',
      price: '1850.00',
      condition: 'used',
      stock: 2,
      leadDays: 3,
      supplier: 'own',
      sku: 'GB-6',
      pack: '1',
    },
  ],
};

/** A copy of the whole document. */
export function sampleDocument(): object {
  return structuredClone(SAMPLE);
}

/** By pointer (RFC 6901): what to put there. */
export type Changes = Readonly<Record<string, unknown>>;

/** Put somewhere, takes away what stands there. */
export const GONE = Symbol('gone');

/** Put somewhere, is a copy of what the sample has at another place. */
export function from(pointer: string): unknown {
  return structuredClone(valueAt(SAMPLE, pointer));
}

/** The sample with some things changed, one after the other. */
export function changed(changes: Changes): object {
  const document = sampleDocument();
  for (const [pointer, value] of Object.entries(changes)) put(document, pointer, value);
  return document;
}

function put(document: object, pointer: string, value: unknown): void {
  const end = pointer.lastIndexOf('/');
  const parent = valueAt(document, pointer.slice(0, end));
  const [step = ''] = stepsOf(pointer.slice(end));
  if (typeof parent !== 'object' || parent === null) throw new Error(`nothing at ${pointer}`);
  if (value === GONE) delete (parent as Record<string, unknown>)[step];
  else {
    // Defined, not assigned: "__proto__" is a name like any other here.
    const own = { value, writable: true, enumerable: true, configurable: true };
    Object.defineProperty(parent, step, own);
  }
}

/** What stands at a pointer; throws where there is nothing. */
export function valueAt(document: unknown, pointer: string): unknown {
  let value = document;
  for (const step of stepsOf(pointer)) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) {
      throw new Error(`nothing at ${pointer}`);
    }
    value = (value as Readonly<Record<string, unknown>>)[step];
  }
  return value;
}

function stepsOf(pointer: string): string[] {
  const steps = pointer.split('/').slice(1);
  return steps.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** All that is said of a document. */
export function saidOf(document: unknown): Pick<Compiled, 'faults' | 'warnings'> {
  return compileDocument(document, [SPLINE]);
}

/** The same in lines: where and what, and below it the words. Unseen characters by number. */
export function linesOf({ faults, warnings }: Pick<Compiled, 'faults' | 'warnings'>): string {
  const line = (sort: string) => (fault: Fault) =>
    `${sort} ${fault.code} ${fault.pointer}\n  ${fault.text}\n`;
  const lines = [...faults.map(line('fault')), ...warnings.map(line('doubt'))].join('');
  return lines.replace(/[^\P{C}\n]/gu, (character) => {
    return `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`;
  });
}
