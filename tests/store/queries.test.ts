/**
 * The tables say what the document says: each question that a person asks in SQL is answered a
 * second time out of the JSON, with nothing of the program in between. Over two editions, so that
 * a query for one never sees the other.
 *
 * Length: one test for each question, over the same two editions.
 */

import { describe, expect, test } from 'vitest';
import type {
  CatalogueDocument,
  ValueRecord,
  VehicleRecord,
} from '../../src/domain/catalogue/document.js';
import { prepareEdition } from '../../src/usecases/publish-edition.js';
import { demoDocument, sha256 } from '../memory-store.js';
import { connect, freshPath, open, publish } from './database.js';
import { demo, NEXT_DAY } from './prepared.js';

const first = demoDocument() as unknown as CatalogueDocument;

/** The first state without one part, and with another of another name. */
const later: CatalogueDocument = {
  ...first,
  parts: (first.parts ?? [])
    .filter(({ id }) => id !== 'wheel-16-106')
    .map((part) => (part.id === 'bracket-20' ? { ...part, name: 'bracket, longer' } : part)),
  offers: (first.offers ?? []).filter((offer) => offer.for !== 'wheel-16-106'),
};

const path = freshPath();
const store = open(path);
publish(store, demo);
publish(store, prepareEdition(later, sha256), { publishedAt: NEXT_DAY, note: 'one wheel less' });
store.close();
const connection = connect(path, { readonly: true });

type Line = readonly (string | number | null)[];

function ask(sql: string, edition?: number): Line[] {
  const query = connection.prepare(sql).raw();
  return (edition === undefined ? query.all() : query.all({ edition })) as Line[];
}

/** Lines in an order of their own, since neither side promises one. */
function sorted(lines: readonly Line[]): string[] {
  return lines.map((line) => JSON.stringify(line)).sort();
}

/** What was written where a value stands, without its evidence. */
function writtenAs(value: ValueRecord): string[] {
  if (Array.isArray(value)) return value.map(String);
  if (typeof value !== 'object') return [String(value)];
  return 'is' in value ? writtenAs(value.is) : [];
}

/** A vehicle with what it has of the one that it is like. */
function whole(vehicle: VehicleRecord): VehicleRecord {
  const other = (first.vehicles ?? []).find(({ id }) => id === vehicle.like);
  if (other === undefined) return vehicle;
  const { layout, facts, fitted } = whole(other);
  return {
    ...(layout === undefined ? {} : { layout }),
    ...vehicle,
    facts: { ...facts, ...vehicle.facts },
    fitted: { ...fitted, ...vehicle.fitted },
  };
}

/** What stands at a place, where a fact tells it. */
function told(record: unknown, facts: Readonly<Record<string, string>>): unknown {
  if (typeof record !== 'object' || record === null || !('by' in record)) return record;
  const value = facts[String(record.by)];
  return value === undefined
    ? undefined
    : Object.entries(record).find(([key]) => key === value)?.[1];
}

const LIVES = 'from_edition <= @edition AND (until_edition IS NULL OR until_edition > @edition)';

describe.each([
  [1, first],
  [2, later],
])('in edition %i', (edition, document) => {
  const { parts = [], vehicles = [], layouts = [] } = document;

  test('which parts are there, of whom and as what?', () => {
    const found = ask(
      `SELECT p.id, p.name, p.maker, group_concat(r.role, '+')
       FROM (SELECT * FROM parts WHERE ${LIVES}) p
       JOIN part_roles r ON r.part = p.id AND r.from_edition = p.from_edition
       GROUP BY p.id`,
      edition,
    );
    const nameOf = ({ name }: (typeof parts)[number]) =>
      typeof name === 'string' ? name : (name.en ?? null);
    const wanted = parts.map((part): Line => {
      return [part.id, nameOf(part), part.maker ?? null, part.roles.join('+')];
    });
    expect(wanted.length).toBeGreaterThan(50);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('whose number is this?', () => {
    const found = ask(`SELECT part, number, number_of FROM part_numbers WHERE ${LIVES}`, edition);
    const wanted = parts.flatMap(({ id, numbers = [] }) => {
      return numbers.map(({ number, of }): Line => [id, number, of]);
    });
    expect(wanted.length).toBeGreaterThan(10);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('which faces has it, of which kind, and which does it lack?', () => {
    const found = ask(
      `SELECT part, interface, alternative, kind, side, absent, optional
       FROM interfaces WHERE ${LIVES}`,
      edition,
    );
    const wanted = parts.flatMap(({ id, interfaces = {} }) =>
      Object.entries(interfaces).flatMap(([face, record]) =>
        (record.alternatives ?? [{}]).map((_, alternative): Line => {
          const { kind = null, side = null, absent = false, optional = false } = record;
          return [id, face, alternative, kind, side, Number(absent), Number(optional)];
        }),
      ),
    );
    // A face that is absent, one that is optional, and one of two: each is in the demo.
    expect(wanted.some(([, , alternative]) => alternative === 1)).toBe(true);
    expect(new Set(wanted.map((line) => line.slice(-2).join()))).toEqual(
      new Set(['0,0', '1,0', '0,1']),
    );
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('what is recorded of each face?', () => {
    const found = ask(
      `SELECT part, interface, alternative, parameter, text FROM interface_parameters
       WHERE ${LIVES}`,
      edition,
    );
    const words = ['kind', 'side', 'absent', 'optional', 'evidence', 'alternatives'];
    const wanted = parts.flatMap(({ id, interfaces = {} }) =>
      Object.entries(interfaces).flatMap(([face, record]) =>
        (record.alternatives ?? [{}]).flatMap((own, alternative) =>
          Object.entries({ ...record, ...own })
            .filter(([key]) => !words.includes(key))
            .flatMap(([key, value]) =>
              writtenAs(value as ValueRecord).map(
                (text): Line => [id, face, alternative, key, text],
              ),
            ),
        ),
      ),
    );
    expect(wanted.length).toBeGreaterThan(500);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('which values has it, in which order?', () => {
    const found = ask(
      `SELECT part, value, item, text FROM part_values WHERE form <> 'range' AND ${LIVES}`,
      edition,
    );
    const wanted = parts.flatMap(({ id, values = {} }) =>
      Object.entries(values).flatMap(([key, value]) =>
        writtenAs(value).map((text, item): Line => [id, key, item, text]),
      ),
    );
    expect(wanted.some(([, , item]) => item === 4)).toBe(true);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('which lengths may one choose?', () => {
    const found = ask(
      `SELECT part, value, low, high FROM part_values
       WHERE form = 'range' AND unit = 'mm' AND ${LIVES}`,
      edition,
    );
    const wanted = parts.flatMap(({ id, values = {} }) =>
      Object.entries(values).flatMap(([value, record]): Line[] => {
        if (typeof record !== 'object' || !('choose' in record)) return [];
        const ends = Array.isArray(record.choose) ? record.choose : [];
        const [low, high] = ends.map((end) => /^(\d+) mm$/.exec(String(end))?.[1]);
        return low === undefined || high === undefined ? [] : [[id, value, low, high]];
      }),
    );
    expect(wanted).toContainEqual(['prop-made-two', 'length', '900', '2000']);
    expect(wanted.length).toBeGreaterThan(4);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('what did the works fit, on which side, and what did they leave out?', () => {
    const found = ask(
      `SELECT vehicle, position, hand, part FROM fitted_parts WHERE ${LIVES}`,
      edition,
    );
    const handed = new Set(
      layouts.flatMap(({ id, positions }) =>
        positions.filter((one) => one.handed).map((one) => `${id} ${one.id}`),
      ),
    );
    const wanted = vehicles.map(whole).flatMap(({ id, layout, facts, fitted }) =>
      Object.entries(fitted ?? {}).flatMap(([position, record]): Line[] => {
        if (position === 'matings') return [];
        const here = told(record, facts ?? {});
        // A works option of which nobody knows the fact is as good as no record.
        if (here === undefined) return [];
        if (!handed.has(`${layout} ${position}`))
          return [[id, position, 'none', here as string | null]];
        const pair = typeof here === 'object' && here !== null ? here : { left: here, right: here };
        const { left, right } = pair as { left: string | null; right: string | null };
        return [
          [id, position, 'left', left],
          [id, position, 'right', right],
        ];
      }),
    );
    expect(wanted.some(([, , hand]) => hand === 'right')).toBe(true);
    expect(wanted.some(([, , , part]) => part === null)).toBe(true);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('which vehicles are there, built when, and what is known of them?', () => {
    const found = ask(
      `SELECT v.id, v.make, v.model, v.variant, v.layout, v.built_from, v.built_until,
         f.fact, f.value
       FROM (SELECT * FROM vehicles WHERE ${LIVES}) v
       LEFT JOIN vehicle_facts f ON f.vehicle = v.id AND f.from_edition = v.from_edition`,
      edition,
    );
    const wanted = vehicles.map(whole).flatMap((vehicle) => {
      const { id, make, model, variant = null, layout = '', built = [null, null] } = vehicle;
      const facts = Object.entries(vehicle.facts ?? {});
      const known: Line[] = facts.length === 0 ? [[null, null]] : facts;
      return known.map((fact): Line => [id, make, model, variant, layout, ...built, ...fact]);
    });
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('which rules are there, when do they apply, and why?', () => {
    const found = ask(
      `SELECT id, condition, needs, excludes, because FROM rules WHERE ${LIVES}`,
      edition,
    );
    const { rules = [] } = document;
    const read = found.map(([id, ...cells]) => {
      const [when, needs, excludes] = cells.slice(0, 3).map((cell) => JSON.parse(String(cell)));
      return { id, when, needs, excludes, because: cells[3] };
    });
    const wanted = rules.map(({ id, when, needs = null, excludes = null, because }) => {
      return {
        id,
        when,
        needs,
        excludes,
        because: typeof because === 'string' ? because : because.en,
      };
    });
    expect(wanted.length).toBeGreaterThan(4);
    const byId = <One extends { id: unknown }>(all: One[]) =>
      new Map(all.map((one) => [one.id, one]));
    expect(byId(read)).toEqual(byId(wanted));
  });

  test('which places meet where?', () => {
    const found = ask(
      `SELECT layout, mating, first_position || '.' || first_interface,
         second_position || '.' || second_interface, adapters
       FROM matings WHERE ${LIVES}`,
      edition,
    );
    const wanted = layouts.flatMap(({ id, matings = [] }) =>
      // Where nothing is said there may be one.
      matings.map(({ id: mating, between, adapters = 1 }): Line => {
        return [id, mating, ...between, adapters];
      }),
    );
    expect(wanted.length).toBeGreaterThan(5);
    expect(sorted(found)).toEqual(sorted(wanted));
  });

  test('who states that what fits on which vehicle?', () => {
    const found = ask(
      `SELECT s.id, s.part, s.position, s.verdict, v.vehicle
       FROM (SELECT * FROM statements WHERE ${LIVES}) s
       JOIN statement_vehicles v ON v.statement = s.id AND v.from_edition = s.from_edition`,
      edition,
    );
    const wanted = (document.statements ?? []).flatMap(
      ({ id, part, position, verdict, vehicles }) =>
        vehicles.map((vehicle): Line => [id, part, position, verdict, vehicle]),
    );
    expect(wanted.length).toBeGreaterThan(2);
    expect(sorted(found)).toEqual(sorted(wanted));
  });
});

describe('over the editions', () => {
  test('what came, and what went?', () => {
    expect(
      ask(`SELECT id, name, from_edition, until_edition FROM parts
           WHERE until_edition IS NOT NULL OR from_edition > 1 ORDER BY id, from_edition`),
    ).toEqual([
      ['bracket-20', 'bracket of the rear axle, 20 mm', 1, 2],
      ['bracket-20', 'bracket, longer', 2, null],
      ['wheel-16-106', '16-inch wheel 5 x 106', 1, 2],
    ]);
    expect(ask('SELECT number, note FROM editions ORDER BY number')).toEqual([
      [1, null],
      [2, 'one wheel less'],
    ]);
  });

  test('what is on offer now, and for how much?', () => {
    const found = ask('SELECT id, "for", price, stock, lead_days, supplier, sku FROM offers');
    const wanted = (later.offers ?? []).map((offer): Line => {
      const { stock = null, leadDays = null, supplier = null, sku = null } = offer;
      return [offer.id, offer.for, offer.price, stock, leadDays, supplier, sku];
    });
    expect(wanted.length).toBeGreaterThan(20);
    expect(sorted(found)).toEqual(sorted(wanted));
    expect(ask('SELECT number FROM offers_state')).toEqual([[2]]);
  });
});
