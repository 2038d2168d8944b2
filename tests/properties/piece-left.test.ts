/**
 * A piece that is told as its record has it, each value anywhere in its tolerance and each reading
 * off by no more than its tool may be, is always among the parts that it can be; and what is to be
 * found out next leaves just the parts that it says, held against asking again.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type {
  Face,
  ListItem,
  Part,
  Value,
  ValueSpec,
} from '../../src/domain/catalogue/catalogue.js';
import type { Interval } from '../../src/domain/quantity/interval.js';
import {
  add,
  divide,
  exactText,
  inProportion,
  multiply,
  ONE,
  type Rational,
  rational,
  subtract,
} from '../../src/domain/quantity/rational.js';
import { toolOf } from '../../src/domain/quantity/tool.js';
import { baseSymbol } from '../../src/domain/quantity/unit.js';
import { type IdentifyPartInput, identifyPart } from '../../src/usecases/identify-part.js';
import type { PieceAskView, PieceOutcomeView } from '../../src/usecases/piece-views.js';
import type { PieceOn, PieceReading } from '../../src/usecases/read-piece.js';
import { demoDocument, libraryOf } from '../memory-store.js';

const library = libraryOf(demoDocument());
const { catalogue } = library.edition(null);
const parts = [...catalogue.parts.values()];
const vehicles = [...catalogue.vehicles.values()].filter(({ replacedBy }) => {
  return replacedBy.length === 0;
});

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
  limit: 1000,
  after: null,
};

/** Draws from numbers that the property was given, again from the first after the last. */
class Draw {
  readonly #from: readonly number[];
  #drawn = 0;

  constructor(from: readonly number[]) {
    this.#from = from;
  }

  below(count: number): number {
    this.#drawn += 1;
    return (this.#from[this.#drawn % this.#from.length] ?? 0) % count;
  }

  one<Item>(items: readonly Item[]): Item {
    const item = items[this.below(items.length)];
    if (item === undefined) throw new Error('nothing to draw from');
    return item;
  }

  /** From nothing at all to all of it, in quarters. */
  share(): Rational {
    return divide(rational(this.below(5)), rational(4));
  }
}

const draws = fc.array(fc.nat({ max: 9_999 }), { minLength: 40, maxLength: 60 });

/** A true value of the piece. */
function within({ low, lowOpen, high, highOpen }: Interval, draw: Draw): Rational {
  const from = low ?? high ?? rational(1);
  // An open end is no value of it.
  const share = lowOpen || highOpen ? rational('0.5') : draw.share();
  return add(from, multiply(subtract(high ?? from, from), share));
}

function written(value: Rational, { type, dimension }: ValueSpec): string {
  if (type !== 'ratio') return `${exactText(value)} ${baseSymbol(dimension)}`.trim();
  const [above, below] = inProportion([value, ONE]);
  return `${String(above)}/${String(below)}`;
}

function readItem(
  { interval, code }: Pick<ListItem, 'interval' | 'code'>,
  spec: ValueSpec,
  draw: Draw,
) {
  if (interval === null) return { value: code ?? '', tool: null };
  const value = within(interval, draw);
  const tool = spec.tool === null ? undefined : toolOf(spec.tool);
  const half = tool?.uncertainty[spec.dimension] ?? rational(0);
  const isNamed = spec.type === 'designation' && draw.below(2) === 0;
  const isMeasured = spec.type === 'measured' || spec.type === 'designation';
  if (tool?.reading !== 'measures' || !isMeasured || isNamed) {
    // A reading without a tool is as fine as it is written: an exact one is written with its zero.
    const text = written(value, spec);
    const exact = spec.type === 'measured' ? text.replace(/( |$)/, ' ±0$1') : text;
    return { value: exact, tool: null };
  }
  const off = multiply(half, subtract(multiply(draw.share(), rational(2)), ONE));
  return { value: written(add(value, off), spec), tool: spec.tool };
}

function readValue(on: PieceOn, value: Value, draw: Draw): PieceReading {
  const { spec } = value;
  switch (value.form) {
    case 'points':
      return { on, value: value.points.map(({ text }) => text), tool: null };
    case 'list':
      return { on, value: value.items.map((one) => readItem(one, spec, draw).value), tool: null };
    case 'set':
      return { on, ...readItem(draw.one(value.items), spec, draw) };
    case 'code':
      return { on, ...readItem({ interval: null, code: value.code }, spec, draw) };
    default:
      return { on, ...readItem({ interval: value.interval, code: null }, spec, draw) };
  }
}

const NOWHERE: PieceOn = { interface: null, kind: null, side: null, which: null, parameter: null };

/** Some readings of a face, by its name or as one of its kind; each of any way that it can be. */
function readFace(face: Face, which: number, draw: Draw): PieceReading[] {
  const { name, kind, side, alternatives } = face;
  if (kind === null) {
    return draw.below(2) === 0
      ? [{ on: { ...NOWHERE, interface: name }, value: 'none', tool: null }]
      : [];
  }
  const own = draw.below(2) === 0 ? null : side;
  const on =
    draw.below(2) === 0
      ? { ...NOWHERE, interface: name, kind: draw.below(2) === 0 ? kind.id : null, side: own }
      : { ...NOWHERE, kind: kind.id, which, side: own };
  return [...kind.parameters.keys()].flatMap((parameter) => {
    const value = draw.one(alternatives).get(parameter);
    if (value === undefined || draw.below(3) > 0) return [];
    return [readValue({ ...on, parameter }, value, draw)];
  });
}

/** What somebody may have found out about a piece of the part. */
function toldOf(part: Part, draw: Draw): IdentifyPartInput {
  const faces = [...part.faces.values()].flatMap((face, index) => readFace(face, index + 1, draw));
  const values = [...part.values].flatMap(([parameter, value]) =>
    draw.below(3) > 0 ? [] : [readValue({ ...NOWHERE, parameter }, value, draw)],
  );
  const numbers = part.numbers.flatMap(({ number }) => (draw.below(3) === 0 ? [number] : []));
  return {
    ...NOTHING,
    role: draw.below(2) === 0 ? draw.one(part.roles) : null,
    hand: draw.below(2) === 0 ? part.hand : null,
    vehicle: draw.below(3) === 0 ? draw.one(vehicles).id : null,
    numbers: numbers.map((number) => {
      const place = draw.below(number.length);
      if (/[^\s.-]/u.test(number.slice(0, place)))
        return `${number.slice(0, place)}*${number.slice(place + 1)}`;
      return number;
    }),
    measured: [...faces, ...values],
  };
}

function leftBy(told: IdentifyPartInput): string[] {
  return identifyPart(library, told).items.map(({ id }) => id);
}

test.each(parts.map((part) => [part.id, part] as const))(
  '%s is among the parts that a piece of it can be',
  (id, part) => {
    fc.assert(
      fc.property(draws, (from) => {
        const told = toldOf(part, new Draw(from));
        const { items } = identifyPart(library, told);
        const own = items.find((one) => one.id === id);
        expect([own?.failing ?? told]).toEqual([0]);
      }),
      { numRuns: 2, endOnFailure: true },
    );
  },
);

/** The question with one outcome told beside what it says. */
function withOutcome(
  told: IdentifyPartInput,
  { field, on }: PieceAskView,
  { value, noFace, range }: PieceOutcomeView,
): IdentifyPartInput {
  const text = value ?? spread(range);
  if (field === 'role') return { ...told, role: text };
  if (field === 'hand') return { ...told, hand: text === 'left' ? 'left' : 'right' };
  if (field === 'number') return { ...told, numbers: [...told.numbers, text] };
  if (on === null) throw new Error('a reading is of some place');
  const place = noFace ? { ...on, parameter: null } : on;
  return { ...told, measured: [...told.measured, { on: place, value: text, tool: null }] };
}

/** A range with both of its ends, as a reading is written. */
function spread(range: PieceOutcomeView['range']): string {
  const [low, high] = [rational(range?.low ?? ''), rational(range?.high ?? '')];
  const half = divide(subtract(high, low), rational(2));
  return `${exactText(add(low, half))} ±${exactText(half)} ${range?.unit ?? ''}`.trim();
}

describe('what to find out next', () => {
  test('leaves just what each outcome says, and no part that is left is in none of them', () => {
    let asked = 0;
    fc.assert(
      fc.property(fc.nat({ max: parts.length - 1 }), draws, (index, from) => {
        const draw = new Draw(from);
        const [part] = parts.slice(index);
        if (part === undefined) throw new Error('there is such a part');
        const whole = toldOf(part, draw);
        const told = {
          ...whole,
          role: draw.below(3) > 0 ? draw.one(part.roles) : null,
          measured: whole.measured.slice(0, draw.below(3)),
        };
        const { ask, items } = identifyPart(library, told);
        const left = items.map(({ id }) => id).toSorted();
        for (const one of ask.filter(({ more }) => more === 0)) {
          asked += 1;
          const seen = new Set<string>();
          for (const outcome of one.values) {
            const then = leftBy(withOutcome(told, one, outcome));
            expect([one.text, outcome.label, then.length]).toEqual([
              one.text,
              outcome.label,
              outcome.count,
            ]);
            expect(then).toEqual(expect.arrayContaining(outcome.parts));
            for (const id of then) seen.add(id);
          }
          expect([one.text, [...seen].toSorted()]).toEqual([one.text, left]);
        }
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(asked).toBeGreaterThan(50);
  });
});
