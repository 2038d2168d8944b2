/**
 * Random answers told in all units: nothing but texts differs, and no text looks better than the
 * value beside it, of which the ends are exact.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Interval, interval, isWithin } from '../../src/domain/quantity/interval.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import { rational } from '../../src/domain/quantity/rational.js';
import { SHOWN_UNITS, type ShownUnits, toBase, unitOf } from '../../src/domain/quantity/unit.js';
import type { ShownValue } from '../../src/usecases/answer.js';
import { measureViews, notCheckedViews, orderViews } from '../../src/usecases/asides.js';
import { Speaker } from '../../src/usecases/speaker.js';
import { judgedView } from '../../src/usecases/views.js';
import { askJudge, compiled } from './real-judge.js';
import { type Case, cases } from './small-document.js';
import { imperial } from './units.js';

/** All that an answer tells of one judgement. */
function told({ document, question }: Pick<Case, 'document' | 'question'>) {
  const catalogue = compiled(document);
  const judgement = askJudge(catalogue, question);
  const { layout } = judgement.configuration;
  return (units: ShownUnits, lang: string) => {
    const speaker = new Speaker({ catalogue, layout, lang, units });
    return {
      judged: judgedView(judgement.constraints, speaker),
      order: orderViews(judgement, speaker),
      measure: measureViews([judgement], speaker),
      notChecked: notCheckedViews(judgement, speaker),
    };
  };
}

const TOLD = ['text', 'said'];

function untold(answer: object): unknown {
  return JSON.parse(
    JSON.stringify(answer, (key, value: unknown) => (TOLD.includes(key) ? undefined : value)),
  );
}

/** Every value of an answer, with the names of the fields that it stands in. */
function valuesIn(answer: object): [path: string, value: ShownValue][] {
  const found: [string, ShownValue][] = [];
  const visit = (path: string, one: unknown): void => {
    if (typeof one !== 'object' || one === null) return;
    if ('low' in one && 'high' in one) found.push([path, one as ShownValue]);
    for (const [name, inner] of Object.entries(one)) visit(`${path}.${name}`, inner);
  };
  visit('', answer);
  return found;
}

function setOf({ low, high, unit }: ShownValue): Interval {
  const known = unitOf(unit);
  if (known === undefined) throw new Error(`${unit} is no unit`);
  const end = (text: string | null) => (text === null ? null : toBase(rational(text), known));
  return interval(end(low), end(high));
}

/** What a text in inches or pound-feet says; null where it says none, or only about what. */
function saidIn({ text, unit }: ShownValue): Interval | null {
  const dimension = unitOf(unit)?.dimension;
  if (text === null || dimension === undefined || !/ (in|lbf\.ft)$/.test(text)) return null;
  const read = parseQuantity(text, { type: 'designation', dimension });
  const set = isFault(read) ? parseQuantity(text, { type: 'measured', dimension }) : read;
  return isFault(set) ? null : set.interval;
}

const drawn = fc.tuple(cases(), fc.boolean()).map(([one, isImperial]) => ({
  ...(isImperial ? imperial(one.document, one.question) : one),
  isImperial,
}));

test('nothing but texts depends on the units, in any language', () => {
  fc.assert(
    fc.property(drawn, (one) => {
      const tell = told(one);
      for (const lang of ['en', 'de']) {
        const [recorded, ...others] = SHOWN_UNITS.map((units) => untold(tell(units, lang)));
        for (const other of others) expect(other).toEqual(recorded);
      }
    }),
    { numRuns: 80 },
  );
});

test('what is converted is never told closer than it is known, and no order is wider', () => {
  const counts = { known: 0, ordered: 0 };
  fc.assert(
    fc.property(drawn, (one) => {
      fc.pre(!one.isImperial);
      const tell = told(one);
      const recorded = valuesIn(tell('recorded', 'en'));
      for (const [index, [path, value]] of valuesIn(tell('imperial', 'en')).entries()) {
        const said = saidIn(value);
        // A margin in one number, and how far a reading may be off, are cut off: never more.
        if (said === null || /\.(margin|needed|apart)$/.test(path)) continue;
        // What may be ordered, and all that is to be had: each end has its unit.
        const isRange = / mm to .* mm$| N\.m to .* N\.m$/.test(recorded[index]?.[1].text ?? '');
        const isOrder = isRange || /^\.order\.|\.choices\.\d+\.value$/.test(path);
        const set = setOf(value);
        const isSound = isOrder ? isWithin(said, set) : isWithin(set, said);
        expect(isSound, `${path}: ${JSON.stringify(value)}`).toBe(true);
        counts[isOrder ? 'ordered' : 'known'] += 1;
      }
    }),
    { numRuns: 300 },
  );
  // Both happen, or nothing was tried.
  expect(counts.known).toBeGreaterThan(150);
  expect(counts.ordered).toBeGreaterThan(5);
});
