/**
 * The pages of the demo tell the truth: the table of vehicles is that of the catalogue, the checks
 * are all of a layout, each answer is the one given, with its numbers, and each sum adds up.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { demoDocument } from '../memory-store.js';
import { frame4x4 } from './frame-4x4.js';
import { fits, inspections, matings } from './questions.js';
import { rearIrs } from './rear-irs.js';
import { type Ask, stateOf, type Told } from './told.js';
import { transcript } from './transcript.js';
import { transverse } from './transverse.js';

const page = readFileSync(new URL('../../db/demo/README.md', import.meta.url), 'utf8');
const document = demoDocument() as unknown as CatalogueDocument;
const offers = document.offers ?? [];
const lots = document.lots ?? [];

const asked = (table: Readonly<Record<string, Told>>): Readonly<Record<string, Ask>> =>
  Object.fromEntries(Object.entries(table).map(([id, { ask }]) => [id, ask]));

const questions: Readonly<Record<string, Readonly<Record<string, Ask>>>> = {
  'long-awd': { ...fits, ...inspections, ...matings },
  'frame-4x4': asked(frame4x4),
  'rear-irs': asked(rearIrs),
  transverse: asked(transverse),
};

const sections = new Map(
  page.split('\n## ').flatMap((text) => {
    const id = /^[^\n]*\(`([a-z0-9-]+)`\)\n/u.exec(text)?.[1];
    return id === undefined ? [] : [[id, text] as const];
  }),
);

/** The rows of the tables whose first column has this head. */
function rows(text: string, head: string): string[][] {
  const tables = text.split('\n\n').filter((one) => one.startsWith(`| ${head} |`));
  const lines = tables.flatMap((table) => table.trim().split('\n').slice(2));
  return lines.map((line) =>
    line
      .slice(1, -1)
      .split('|')
      .map((cell) => cell.trim()),
  );
}

const named = (cell: string): string[] =>
  [...cell.matchAll(/`([^`]+)`/gu)].map(([, id = '']) => id);

/** Every row under such a head, with its layout, its question and the other cells. */
function every(head: string): [layout: string, question: string, second: string, third: string][] {
  return [...sections].flatMap(([layout, text]) =>
    rows(text, head).map(([first = '', second = '', third = '']) => {
      return [layout, named(first)[0] ?? '', second, third] as [string, string, string, string];
    }),
  );
}

function askOf(layout: string, question: string): Ask {
  const ask = questions[layout]?.[question];
  if (ask === undefined) throw new Error(`nobody asks ${question} of ${layout}`);
  return ask;
}

/** The parts that a vehicle was built with, those of the vehicle that it is like among them. */
function partsOf(id: string) {
  const vehicle = document.vehicles?.find((one) => one.id === id);
  const like = document.vehicles?.find((one) => one.id === vehicle?.like);
  const fitted = Object.values({ ...like?.fitted, ...vehicle?.fitted });
  return (document.parts ?? []).filter((part) => fitted.includes(part.id));
}

/** How an answer in the page begins, by what the program says. */
const openings = {
  fit: { holds: /^Fits\b/u, fails: /^Does not fit alone\b/u, open: /^Not known\b/u },
  mate: { holds: /^They meet\b/u, fails: /^They do not meet\b/u, open: /^Not known\b/u },
};

describe('the world', () => {
  test('is told vehicle by vehicle', () => {
    const told = rows(page, 'Vehicle');
    expect(told.map(([id = '']) => named(id)[0])).toEqual(
      (document.vehicles ?? []).map(({ id }) => id),
    );
    for (const [index, vehicle] of (document.vehicles ?? []).entries()) {
      const [, what, built, layout = ''] = told[index] ?? [];
      const [from, to] = vehicle.built ?? [];
      expect(what).toContain(`${vehicle.make} ${vehicle.model}`);
      expect(built).toBe(`${from} to ${to ?? 'today'}`);
      const like = document.vehicles?.find(({ id }) => id === vehicle.like);
      expect(named(layout)).toEqual([vehicle.layout ?? like?.layout]);
    }
  });

  test('has the torque and the ratios that are told of a vehicle', () => {
    for (const [id = '', what = ''] of rows(page, 'Vehicle')) {
      const parts = partsOf(named(id)[0] ?? '');
      const torque = /(\d+ N\.m)/u.exec(what)?.[1];
      const engine = parts.find((part) => part.roles.some((role) => /engine/u.test(role)));
      if (torque !== undefined) expect(engine?.values?.torque).toBe(torque);
      const ratios = JSON.stringify(parts);
      for (const [, ratio] of what.matchAll(/(\d+\/\d+)/gu)) expect(ratios).toContain(`"${ratio}"`);
    }
  });

  test('has four layouts, about three hundred parts, and the suppliers named', () => {
    expect([...sections.keys()]).toEqual((document.layouts ?? []).map(({ id }) => id));
    expect(Math.round((document.parts?.length ?? 0) / 100)).toBe(3);
    expect(document.vehicles).toHaveLength(11);
    expect(new Set((document.vehicles ?? []).map(({ make }) => make)).size).toBe(3);
    for (const { supplier } of offers) expect(page).toContain(supplier);
  });
});

describe('what must add up', () => {
  test.each([...sections])('in %s is all of its checks, each once', (layout, text) => {
    const told = rows(text, 'What must add up').flatMap(([, checks = '']) => named(checks));
    const checks = document.layouts?.find(({ id }) => id === layout)?.checks ?? [];
    const ids = checks.map((one) => (one as { id: string }).id);
    expect(ids.length).toBeGreaterThanOrEqual(14);
    expect([...told].sort((a, b) => a.localeCompare(b))).toEqual(
      [...ids].sort((a, b) => a.localeCompare(b)),
    );
  });
});

describe('the answers', () => {
  test.each(every('Ask'))('%s: %s', (layout, question, what, told) => {
    const ask = askOf(layout, question);
    const answer = ask();
    expect(told).toMatch(openings['mating' in answer ? 'mate' : 'fit'][stateOf(answer)]);
    const input = JSON.stringify(ask.input);
    expect(named(what).filter((id) => !input.includes(`"${id}"`))).toEqual([]);
    const said = transcript(answer);
    const numbers = told.match(/±?\d+(?:\.\d+)?/gu) ?? [];
    expect(numbers.filter((one) => !said.includes(one))).toEqual([]);
  });

  test('are about ten a layout', () => {
    for (const id of sections.keys()) {
      const told = every('Ask').filter(([layout]) => layout === id);
      expect(told.length).toBeGreaterThanOrEqual(8);
    }
  });
});

type Bill = Map<string, number>;

function add(bill: Bill, id: string, quantity: number): void {
  bill.set(id, (bill.get(id) ?? 0) + quantity);
}

/** In cents, so that nothing is lost in binary. */
function cheapest(id: string): number {
  const prices = offers.filter((offer) => offer.for === id).map(({ price }) => price);
  expect([id, prices.length > 0]).toEqual([id, true]);
  return Math.min(...prices.map((price) => Math.round(Number(price) * 100)));
}

function countAt(layout: string, position: string): number {
  const found = document.layouts?.find(({ id }) => id === layout);
  return Number(found?.positions.find(({ id }) => id === position)?.count ?? 1);
}

function addFitted(bill: Bill, layout: string, position: string, fitted: unknown): void {
  const count = countAt(layout, position);
  if (typeof fitted === 'string') {
    for (const id of fitted.split('+')) add(bill, id, count);
    return;
  }
  const { left, right } = fitted as { left: string; right: string };
  add(bill, left, count / 2);
  add(bill, right, count / 2);
}

/** What the parts of a question come to, and the works on them. */
function neededFor(layout: string, ask: Ask): Bill {
  const bill: Bill = new Map();
  const { input } = ask;
  if (!('part' in input)) throw new Error('only a change is paid for');
  const place = 'positions' in ask() ? (ask() as { at: string[] }).at : [];
  expect(place).toHaveLength(1);
  addFitted(bill, layout, place[0] ?? '', input.part);
  for (const [position, part] of Object.entries(input.with)) {
    addFitted(bill, layout, position, part);
  }
  for (const parts of Object.values(input.adapters)) for (const id of parts) add(bill, id, 1);
  return bill;
}

/** What is in a lot; a donor's place gives all that stands there. */
function addLot(bill: Bill, lot: (typeof lots)[number], quantity: number): void {
  for (const one of lot.contains) {
    if ('part' in one) {
      add(bill, one.part, quantity * Number(one.quantity ?? 1));
      continue;
    }
    const donor = document.vehicles?.find(({ id }) => id === one.vehicle);
    const fitted = donor?.fitted?.[one.position];
    addFitted(bill, donor?.layout ?? '', one.position, fitted);
  }
}

describe('the sums', () => {
  test.each(every('Way'))('%s: %s by %s', (layout, question, parts, sum) => {
    const bought: Bill = new Map();
    const loose = new Set<string>();
    let cents = 0;
    for (const [, quantity, id = ''] of parts.matchAll(/(\d+) x `([^`]+)`/gu)) {
      cents += Number(quantity) * cheapest(id);
      const lot = lots.find((one) => one.id === id);
      if (lot !== undefined) addLot(bought, lot, Number(quantity));
      else {
        add(bought, id, Number(quantity));
        loose.add(id);
      }
    }
    expect(sum).toBe((cents / 100).toFixed(2));
    const needed = neededFor(layout, askOf(layout, question));
    expect([...needed].filter(([id, count]) => (bought.get(id) ?? 0) < count)).toEqual([]);
    expect([...loose].filter((id) => bought.get(id) !== needed.get(id))).toEqual([]);
  });

  test('are least where the page says so', () => {
    const least = (of: string) => {
      const ways = every('Way').filter(([layout]) => layout === of);
      return [...ways].sort(([, , , a], [, , , b]) => Number(a) - Number(b))[0]?.[1];
    };
    expect(least('frame-4x4')).toBe('tyres-all-round');
    expect(least('transverse')).toBe('drive-and-hubs-of-a-pellory');
  });
});
