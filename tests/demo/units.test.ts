/**
 * In which units and language values are told changes their texts, and nothing else of an answer.
 */

import { describe, expect, test } from 'vitest';
import { SHOWN_UNITS, type ShownUnits } from '../../src/domain/quantity/unit.js';
import { askMate } from './ask.js';
import { onlyPosition } from './found.js';
import { fits, inspections, matings } from './questions.js';

const questions = Object.entries({ ...fits, ...inspections, ...matings });

/** Whether a field is a text, or a value as a text says it. */
function isTold(field: string): boolean {
  return field === 'text' || field === 'said';
}

/** Everything but texts, and the word that says in which units they are. */
function untold(answer: object): unknown {
  return JSON.parse(
    JSON.stringify(answer, (key, value: unknown) =>
      isTold(key) || key === 'units' ? undefined : value,
    ),
  );
}

/** The texts of the same answer, one after the other. */
function texts(answer: object): string[] {
  const found: string[] = [];
  JSON.stringify(answer, (key, value: unknown) => {
    if (isTold(key) && typeof value === 'string') found.push(value);
    return value;
  });
  return found;
}

describe('the answers to the questions of the demo', () => {
  test.each(questions)('%s are the same in all units', (_, ask) => {
    const answers = SHOWN_UNITS.map((units) => ask('en', units));
    expect(answers.map(({ units }) => units)).toEqual(SHOWN_UNITS);
    const [recorded, ...others] = answers.map(untold);
    for (const other of others) expect(other).toEqual(recorded);
  });

  test('are told in inches and pounds where that is wished', () => {
    const told = texts(fits['late-gearbox']('en', 'imperial')).join(' ');
    expect(told).toContain('88.74 ±0.04 in');
    expect(told).toContain('265.15 to 265.9 lbf.ft');
    expect(told).toContain('0.5708 in to spare');
    expect(told).toContain('9.1 %');
    // A pitch circle is a name.
    expect(told).toContain('Pitch circle diameter 70 mm');
    expect(told).not.toMatch(/\d N\.m/);
  });

  test('are told with a decimal comma in German, and with a point in English', () => {
    const german = texts(fits['late-gearbox']('de')).join(' ');
    expect(german).toContain('34,20 mm');
    expect(german).toContain('Reserve 14,5 mm');
    expect(german).toContain('um 9,1 % zu schnell');
    expect(german).toContain('886,6 bis 890,3 Nm');
    expect(german).not.toMatch(/\d\.\d+ (mm|N\.m|%)/);
    expect(texts(fits['late-gearbox']('en')).join(' ')).toContain('886.6 to 890.3 N.m');
    expect(texts(fits['late-gearbox']('de', 'imperial')).join(' ')).toContain('88,74 ±0,04 Zoll');
  });

  test('ask for readings no coarser than are needed, whatever the units', () => {
    const needed = (units: ShownUnits) => fits['used-hub']('en', units).measure[0]?.needed;
    expect(needed('recorded')).toMatchObject({ text: '±0.1 mm', low: '-0.1', high: '0.1' });
    expect(needed('imperial')).toMatchObject({ text: '±0.0039 in', low: '-0.1', high: '0.1' });
  });

  test('tell no more in reserve than there is, whatever the units', () => {
    // 0.2 mm are 0.00787… in.
    const { checks } = askMate('gearbox-6-late.rear', 'prop-late.front')('en', 'imperial').mating;
    const pcd = checks.find(({ code, margin }) => code === 'clears' && margin?.low === '0.2');
    expect(pcd?.margin).toMatchObject({ text: '0.0078 in', low: '0.2', high: '0.2' });
    expect(pcd?.data.margin).toEqual(pcd?.margin);
  });

  test('order nothing that does not suit, whatever the units', () => {
    const order = (units: ShownUnits) =>
      onlyPosition(fits['late-gearbox-and-rear-end']('en', units)).order[0]?.value;
    expect(order('recorded')).toMatchObject({ text: '1374 ±2 mm', low: '1372', high: '1376' });
    // 1372 mm are 54.0157… in, and 1376 mm are 54.1732… in.
    expect(order('imperial')).toMatchObject({ text: '54.02 to 54.17 in', low: '1372', unit: 'mm' });
  });
});
