/**
 * Lists of the demo catalogue, walked from page to page with any limit and any filter: every match
 * is there once, in order, and nothing else. What matches is told by a search over the document as
 * it is written, which shares no code with the lists. Whatever a page names can be read.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rigOf } from '../http/fixture.js';
import { demoDocument } from '../memory-store.js';

interface Named {
  readonly id: string;
}

interface PartWritten extends Named {
  readonly name: string | Readonly<Record<string, string>>;
  readonly roles: readonly string[];
  readonly maker?: string;
  readonly numbers?: readonly { readonly number: string; readonly of: string }[];
  readonly supersededBy?: string;
  readonly interfaces?: Readonly<Record<string, { readonly kind?: string }>>;
}

interface Page {
  readonly items: readonly Named[];
  readonly next: string | null;
  readonly counts: { readonly total: number };
}

const document = demoDocument() as unknown as {
  readonly parts: readonly PartWritten[];
  readonly roles: readonly Named[];
  readonly layouts: readonly Named[];
};
const demo = rigOf({ documents: [document] });

async function get(path: string): Promise<Record<string, unknown>> {
  const response = await demo.app.request(path);
  const answer = (await response.json()) as Record<string, unknown>;
  expect([path, response.status]).toEqual([path, 200]);
  return answer;
}

/** The ids of all pages in the order in which they came. */
async function walked(path: string, search: Readonly<Record<string, string>>) {
  const found: string[] = [];
  const limit = Number(search.limit);
  let cursor: Record<string, string> = {};
  for (;;) {
    const asked = new URLSearchParams({ ...search, ...cursor });
    const page = (await get(`${path}?${asked.toString()}`)) as unknown as Page;
    found.push(...page.items.map(({ id }) => id));
    if (page.next === null) return { found, total: page.counts.total };
    expect(page.items).toHaveLength(limit);
    cursor = { cursor: page.next };
  }
}

type Filter = Readonly<Partial<Record<'role' | 'kind' | 'maker' | 'number' | 'text', string>>> & {
  readonly superseded?: string;
};

function matches(part: PartWritten, filter: Filter): boolean {
  const { id, name, roles, maker, numbers = [], interfaces = {}, supersededBy } = part;
  const names = typeof name === 'string' ? [name] : Object.values(name);
  const hay = [id, ...names, maker ?? '', ...numbers.map(({ number }) => number)];
  const plain = hay.map(plainly);
  const words = filter.text === undefined ? [] : plainly(filter.text).split(/ +/);
  return (
    (filter.role === undefined || roles.includes(filter.role)) &&
    (filter.kind === undefined ||
      Object.values(interfaces).some(({ kind }) => kind === filter.kind)) &&
    (filter.maker === undefined || maker === filter.maker) &&
    (filter.number === undefined || numbers.some(({ number }) => number === filter.number)) &&
    (filter.superseded === undefined || String(supersededBy !== undefined) === filter.superseded) &&
    words.every((word) => plain.some((text) => text.includes(word)))
  );
}

/** The letters with marks that the demo has. */
const MARKED: Readonly<Record<string, string>> = { ä: 'a', ö: 'o', ü: 'u', ß: 'ss' };

function plainly(text: string): string {
  return Array.from(text.toLowerCase(), (letter) => MARKED[letter] ?? letter).join('');
}

/** Some of what one part is, and so something is found; or of what several are. */
const filters: fc.Arbitrary<Filter> = fc.oneof(
  { weight: 1, arbitrary: fc.constant<Filter>({}) },
  { weight: 4, arbitrary: anyPart().chain((part) => askedOf(part, part, part)) },
  {
    weight: 2,
    arbitrary: fc.tuple(anyPart(), anyPart(), anyPart()).chain((some) => askedOf(...some)),
  },
);

function anyPart(): fc.Arbitrary<PartWritten> {
  return fc.constantFrom(...document.parts);
}

function askedOf(a: PartWritten, b: PartWritten, c: PartWritten): fc.Arbitrary<Filter> {
  const kinds = Object.values(a.interfaces ?? {}).flatMap(({ kind }) => kind ?? []);
  const numbers = (b.numbers ?? []).map(({ number }) => number);
  const values = {
    ...(kinds.length === 0 ? {} : { kind: fc.constantFrom(...kinds) }),
    role: fc.constantFrom(...b.roles),
    ...(numbers.length === 0 ? {} : { number: fc.constantFrom(...numbers) }),
    ...(c.maker === undefined ? {} : { maker: fc.constant(c.maker) }),
    superseded: fc.constantFrom('true', 'false'),
    text: wordsOf(c),
  };
  return fc.record(values, { requiredKeys: [] });
}

/** A piece of what a part is called. */
function wordsOf({ name, id }: PartWritten): fc.Arbitrary<string> {
  const text = typeof name === 'string' ? name : (name.en ?? id);
  const bounds = fc.tuple(fc.nat(text.length), fc.integer({ min: 1, max: 12 }));
  return bounds.map(([from, length]) => text.slice(from, from + length).trim() || id);
}

const limits = fc.oneof(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 5 }));

describe('pages have every match once, in order', () => {
  test('of parts, whatever is asked of them', async () => {
    let some = 0;
    await fc.assert(
      fc.asyncProperty(filters, limits, async (filter, limit) => {
        const ids = document.parts.filter((part) => matches(part, filter)).map(({ id }) => id);
        const { found, total } = await walked('/v1/parts', { ...filter, limit: String(limit) });
        expect(found).toEqual([...ids].sort());
        expect(total).toBe(ids.length);
        if (ids.length > 0 && ids.length < document.parts.length) some += 1;
      }),
      { numRuns: 200, seed: 17 },
    );
    expect(some).toBeGreaterThan(50);
  });

  test.each([
    ['/v1/roles', document.roles],
    ['/v1/layouts', document.layouts],
  ])('%s', async (path, written) => {
    await fc.assert(
      fc.asyncProperty(limits, async (limit) => {
        const { found } = await walked(path, { limit: String(limit) });
        expect(found).toEqual(written.map(({ id }) => id).sort());
      }),
      { numRuns: 10, seed: 17 },
    );
  });
});

describe('whatever a page names can be read', () => {
  interface PartRead extends Named {
    readonly roles: readonly string[];
    readonly interfaces: readonly { readonly kind: string | null }[];
    readonly supersededBy: string | null;
    readonly lang: string;
  }

  test('each part as it stood in the list, and its roles, kinds and successor', async () => {
    const named = { roles: new Set<string>(), kinds: new Set<string>(), parts: new Set<string>() };
    let next: string | null = '/v1/parts?limit=200';
    while (next !== null) {
      const page = (await get(next)) as unknown as Page;
      for (const entry of page.items) {
        const part = (await get(`/v1/parts/${entry.id}`)) as unknown as PartRead;
        expect(part).toMatchObject(entry);
        for (const role of part.roles) named.roles.add(role);
        for (const { kind } of part.interfaces) if (kind !== null) named.kinds.add(kind);
        if (part.supersededBy !== null) named.parts.add(part.supersededBy);
      }
      next = page.next === null ? null : `/v1/parts?limit=200&cursor=${page.next}`;
    }
    expect([named.roles.size > 50, named.kinds.size > 20]).toEqual([true, true]);
    for (const [list, ids] of Object.entries(named)) {
      for (const id of ids) expect(await get(`/v1/${list}/${id}`)).toMatchObject({ id });
    }
  });

  test('each role, kind and layout, and the roles of its positions', async () => {
    for (const list of ['roles', 'kinds', 'layouts']) {
      const { items } = (await get(`/v1/${list}?limit=200`)) as unknown as Page;
      for (const { id } of items) {
        const whole = await get(`/v1/${list}/${id}`);
        expect(whole.id).toBe(id);
        const { positions = [] } = whole as { positions?: { roles: string[] }[] };
        for (const role of positions.flatMap(({ roles }) => roles)) await get(`/v1/roles/${role}`);
      }
    }
  });
});
