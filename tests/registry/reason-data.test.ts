/**
 * The data of reasons goes by their code: every reason in every answer has the fields that the
 * table declares for it and no others, and so says the published schema; and a sentence reads
 * nothing of the data that is not declared.
 */

import { describe, expect, test } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import { type NamedValue, REASON_CODES, type ReasonData } from '../../src/domain/explain/reason.js';
import { dataFieldsOf } from '../../src/domain/explain/reason-data.js';
import { say } from '../../src/domain/explain/words.js';
import { complaints, schemaAt } from '../contract/published-document.js';
import { REASON_CASES } from './reason-cases.js';
import { type Said, saidIn, saidOfDemo } from './said-reasons.js';

/** What a view shows beside a reason is no part of its data, though its sentence names it. */
const BESIDE = ['left', 'right', 'a', 'b'];

const published = schemaAt('components', 'schemas', 'ReasonByCode');

/** What is wrong with the data of what is said; a caution of an answer has none. */
function misfits(said: readonly Said[]): string[] {
  return said.flatMap(({ code, data }) => {
    if (data === undefined) return [];
    const { always, perhaps } = dataFieldsOf(code);
    const fields = Object.keys(data);
    const missing = always.filter((name) => !fields.includes(name));
    const undeclared = fields.filter(
      (name) => ![...always, ...perhaps].some((one) => one === name),
    );
    return [
      ...missing.map((name) => `${code} lacks ${name}`),
      ...undeclared.map((name) => `${code} has ${name}`),
    ];
  });
}

describe('every reason has the data of its code', () => {
  const demo = saidOfDemo();

  test('in the answers of the demo catalogue', () => {
    expect(demo.length).toBeGreaterThan(1000);
    expect([...new Set(misfits(demo))]).toEqual([]);
  });

  test.each(Object.entries(REASON_CASES))('in the small case of %s', (_, ask) => {
    expect(misfits(saidIn(ask()))).toEqual([]);
  });

  test('and the published schema says the same', () => {
    const shapes = new Map(
      demo.flatMap(({ code, data }) =>
        data === undefined ? [] : [[`${code} ${Object.keys(data).sort().join()}`, { code, data }]],
      ),
    );
    for (const [shape, said] of shapes) {
      expect([shape, complaints(published, said)]).toEqual([shape, []]);
      const more = { ...said, data: { ...said.data, order: 'x', names: [], because: '' } };
      expect([shape, complaints(published, more)]).not.toEqual([shape, []]);
    }
  });

  test('and one that is missing, or too many, is found', () => {
    const text = 'Said.';
    expect(misfits([{ code: 'rule-met', data: {}, text }])).toEqual(['rule-met lacks because']);
    const order = { text: '1', low: '1', high: '1', unit: '' };
    expect(misfits([{ code: 'own-code', data: { order }, text }])).toEqual(['own-code has order']);
  });
});

const VALUE = { text: '1 mm', low: '1', high: '1', unit: 'mm' };

const NAMED: NamedValue = {
  position: 'box',
  positionName: 'Gearbox',
  hand: 'left',
  part: 'box-a',
  partName: 'box a',
  interface: 'rear',
  kindName: 'flange',
  parameter: 'pilot',
  parameterName: 'pilot',
  value: VALUE,
};

/** Sentences turn on what is there: everything, as little as there can be. */
const GIVEN: readonly ReasonData[] = [
  {
    left: NAMED,
    right: NAMED,
    missing: [NAMED],
    choices: [NAMED],
    odd: { of: 'left', point: { text: '(1, 1) mm', x: VALUE, y: VALUE } },
    says: 'It must.',
    a: NAMED,
    b: NAMED,
    adapters: ['plate'],
    part: NAMED,
    margin: VALUE,
    vehicles: ['Cart'],
    basis: 'maker',
    because: 'So it is.',
    statement: 'list',
    between: ['one', 'two'],
    order: VALUE,
    text: 'Text',
    count: 2,
    needed: VALUE,
    tool: 'caliper',
    names: ['Gearbox'],
  },
  { left: NAMED, right: NAMED },
  {},
];

describe.each(SPOKEN_LANGUAGES)('a sentence in %s reads nothing else', (lang) => {
  test.each(REASON_CODES)('%s', (code) => {
    const read = new Set<string>();
    for (const given of GIVEN) {
      const get = (fields: ReasonData, name: keyof ReasonData) => {
        read.add(name);
        return fields[name];
      };
      const data = new Proxy(given, {
        get: (fields, name) => get(fields, name as keyof ReasonData),
      });
      say({ code, data }, lang);
    }
    const { always, perhaps } = dataFieldsOf(code);
    const declared = new Set<string>([...always, ...perhaps, ...BESIDE]);
    expect([...read].filter((name) => !declared.has(name))).toEqual([]);
  });
});
