/**
 * The examples of reasons: of the invented world as its catalogue and the kinds name it, and
 * without an id where people read, and with both parts where there
 * are two.
 */

import { describe, expect, test } from 'vitest';
import { exampleOf } from '../../../src/domain/explain/code-examples.js';
import { FACES, PARAMETERS, PARTS, PLACES } from '../../../src/domain/explain/example-world.js';
import { type Named, REASON_CODES, type ReasonData } from '../../../src/domain/explain/reason.js';
import { SPOKEN, say } from '../../../src/domain/explain/words.js';
import { BUILT_IN_KINDS } from '../../../src/domain/kinds/registry.js';
import { demoDocument } from '../../memory-store.js';

const DEMO: unknown = demoDocument();

/** The names of everything that has an id, by that, and all names there are. */
const byId = new Map<string, unknown[]>();
const names: unknown[] = [];

function gather(value: unknown): void {
  if (typeof value !== 'object' || value === null) return;
  if ('name' in value) {
    names.push(value.name);
    if ('id' in value && typeof value.id === 'string') {
      byId.set(value.id, [...(byId.get(value.id) ?? []), value.name]);
    }
  }
  if ('termNames' in value) names.push(...Object.values(value.termNames as object));
  for (const one of Object.values(value)) gather(one);
}

gather(DEMO);
gather(BUILT_IN_KINDS);

describe('the world of the examples is that of the demo', () => {
  test.each(Object.values(PARTS))('part $part', ({ part, name }) => {
    expect(byId.get(part)).toContainEqual(name);
  });

  test.each(Object.values(PLACES))('place $position', ({ position, name }) => {
    expect(byId.get(position)).toContainEqual(name);
  });

  test.each(Object.values(FACES))('face $face', ({ kind }) => {
    if (kind !== null) expect(names).toContainEqual(kind);
  });

  test.each(Object.values(PARAMETERS))('value $name.en', ({ name }) => {
    expect(names).toContainEqual(name);
  });
});

/** Every part and place that the data names. */
function namedIn(value: unknown): Named[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(namedIn);
  return 'partName' in value ? [value as Named, ...inner] : inner;
}

describe.each(SPOKEN)('in %s', (lang) => {
  test.each(REASON_CODES)('%s says no id', (code) => {
    const reason = exampleOf(code, lang);
    const ids = namedIn(reason.data).flatMap(({ part, position }) => [part, position]);
    const { statement, between = [] } = reason.data;
    const shown = [...ids, statement, ...between].filter(
      (id) => typeof id === 'string' && id.includes('-') && say(reason, lang).includes(id),
    );
    expect(shown).toEqual([]);
  });

  const pairs = REASON_CODES.map((code) => [code, pairIn(exampleOf(code, lang).data)] as const);

  test.each(pairs.filter(([, parts]) => parts.length === 2))(
    '%s names both parts',
    (code, parts) => {
      const text = say(exampleOf(code, lang), lang);
      expect([code, text, parts.filter((name) => !text.includes(name))]).toEqual([code, text, []]);
    },
  );

  test('pairs of parts are in more than a few', () => {
    expect(pairs.filter(([, parts]) => parts.length === 2).length).toBeGreaterThan(25);
  });
});

/** The names of the two parts that a reason is of; none where it is of one, or of no part. */
function pairIn({ a, b, left, right }: ReasonData): string[] {
  const ends = [[a, b] as const, [left, right] as const];
  const pair = ends.find(([first, second]) => first?.partName && second?.partName) ?? [];
  return pair.flatMap((one) => one?.partName ?? []);
}
