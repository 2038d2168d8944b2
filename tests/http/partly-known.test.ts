/**
 * A vehicle that is known in part: what is said of all that may be meant is what the fit question
 * says of each, and what is to be asked leads to one answer.
 */

import { describe, expect, test } from 'vitest';
import { demoDocument } from '../memory-store.js';
import { flange, world } from '../rules/sketch.js';
import { json, rigOf } from './fixture.js';

const rig = rigOf({ documents: [demoDocument()] });

interface Meant {
  readonly vehicle: string;
  readonly alone: string;
  readonly verdict: string | null;
  readonly complete: boolean;
}

interface Wire extends Omit<Meant, 'alone'> {
  readonly vehicles: readonly Meant[];
  readonly counts: { readonly total: number };
  readonly outcomes: readonly { readonly verdict: string | null; readonly count: number }[];
  readonly settles: boolean;
  readonly summary: { readonly code: string };
  readonly ask: readonly {
    readonly field: string;
    readonly fact: string | null;
    readonly values: readonly { readonly value: string; readonly verdict: string | null }[];
  }[];
  readonly fit: unknown;
}

async function asked(search: string): Promise<Wire> {
  return json(await rig.client.get(`/v1/fit?${search}`).expect(200)) as unknown as Wire;
}

const LIRREN = 'make=corrablyn&model=LIRREN';

describe('what all that may be meant come to', () => {
  test.each([
    [`${LIRREN}&part=bracket-20`, 'fits', 'each-fits'],
    [`${LIRREN}&part=gearbox-6-late`, 'depends', 'depends'],
    ['make=corrablyn&part=wheel-15-117&changes=no', 'depends', 'depends'],
    ['make=corrablyn&year=2004&part=disc-215&changes=no', 'depends', 'depends'],
  ])('%s: %s', async (search, verdict, code) => {
    const answer = await asked(search);
    expect(answer).toMatchObject({ verdict, complete: true, fit: null, summary: { code } });
    const part = /part=[^&]+(&changes=no)?/.exec(search)?.[0] ?? '';
    for (const { vehicle, ...own } of answer.vehicles) {
      const one = await rig.client.get(`/v1/fit?vehicle=${vehicle}&${part}`).expect(200);
      const { alone, verdict: its, complete } = json(one);
      expect(own).toMatchObject({ alone, verdict: its, complete });
    }
    expect(answer.counts.total).toBe(answer.vehicles.length);
    const counted = answer.outcomes.reduce((sum, { count }) => sum + count, 0);
    expect(counted).toBe(answer.vehicles.length);
  });

  test('one alone is answered whole, as if it had been named', async () => {
    const { fit, vehicles } = await asked(`${LIRREN}&year=2003&part=bracket-20`);
    const named = await rig.client.get('/v1/fit?vehicle=lirren-1&part=bracket-20').expect(200);
    expect(vehicles.map(({ vehicle }) => vehicle)).toEqual(['lirren-1']);
    expect(fit).toEqual(json(named));
  });

  test('what is to be asked leads to what it says', async () => {
    const search = 'make=corrablyn&part=wheel-15-117&changes=no';
    const { ask, settles } = await asked(search);
    expect(settles).toBe(true);
    const [first] = ask;
    for (const { value, verdict } of first?.values ?? []) {
      const name = first?.fact === null ? first.field : `fact.${first?.fact ?? ''}`;
      const next = await asked(`${search}&${name}=${encodeURIComponent(value)}`);
      expect(next.verdict).toBe(verdict);
    }
    expect(first?.values.length).toBeGreaterThan(1);
  });

  test('a vehicle without such a place is meant, and the part does not fit it', async () => {
    const search = 'make=corrablyn&part=bracket-20&changes=no&position=axle-bracket';
    const { verdict, vehicles } = await asked(search);
    expect(verdict).toBe('depends');
    const having = vehicles.filter(({ alone }) => alone !== 'fails');
    expect(having.map(({ vehicle }) => vehicle)).toEqual(['lirren-1', 'lirren-2']);
    const lacking = vehicles.filter(({ alone }) => alone === 'fails');
    expect(lacking.length).toBeGreaterThan(0);
    for (const { verdict: own } of lacking) expect(own).toBe('does-not-fit');
  });

  test('what is said of a place that a vehicle has not leaves it open there', async () => {
    const search = 'make=corrablyn&part=brake-fluid-205&changes=no';
    const plain = await asked(search);
    const told = await asked(`${search}&fitted.rear-final-drive=unknown`);
    expect(told.vehicles.length).toBe(plain.vehicles.length);
    const open = told.vehicles.filter(({ verdict }) => verdict === 'unknown');
    expect(open.length).toBeGreaterThan(0);
    expect(told.verdict).toBe('depends');
  });

  test('in a body it is the same', async () => {
    const body = { make: 'Corrablyn', model: 'Lirren', part: 'bracket-20' };
    const answer = json(await rig.client.post('/v1/fit').send(body).expect(200));
    expect(answer).toEqual(await asked(`${LIRREN}&part=bracket-20`));
  });
});

interface KitsWire {
  readonly grade: string | null;
  readonly complete: boolean;
  readonly routes: readonly { readonly lines: readonly { readonly key: string }[] }[];
  readonly vehicles: readonly {
    readonly vehicle: string;
    readonly grade: string | null;
    readonly summary: object;
  }[];
  readonly counts: { readonly total: number };
  readonly outcomes: readonly object[];
  readonly settles: boolean;
  readonly summary: { readonly code: string };
  readonly ask: readonly {
    readonly field: string;
    readonly values: readonly { readonly value: string; readonly grade: string | null }[];
  }[];
  readonly kits: unknown;
}

async function askedKits(search: string): Promise<KitsWire> {
  return json(await rig.client.get(`/v1/kits?${search}`).expect(200)) as unknown as KitsWire;
}

describe('what the conversion takes on all that may be meant', () => {
  test('the ways are shown that all of them have, and no others', async () => {
    const answer = await askedKits(`${LIRREN}&want=bracket-20`);
    expect(answer).toMatchObject({ grade: 'proven', complete: true, ask: [], kits: null });
    for (const { vehicle, summary } of answer.vehicles) {
      const one = json(await rig.client.get(`/v1/kits?vehicle=${vehicle}&want=bracket-20`));
      expect(one.summary).toEqual(summary);
      expect(one.routes).toMatchObject(answer.routes);
      expect(answer.routes).toHaveLength((one.routes as object[]).length);
    }
  });

  test('where they are not the same, none is shown, and it is said what to ask', async () => {
    const search = `${LIRREN}&want=gearbox-6-late&routes=1`;
    const answer = await askedKits(search);
    expect(answer).toMatchObject({
      grade: 'depends',
      routes: [],
      outcomes: [{ grade: 'proven', count: 2 }],
      settles: true,
      summary: { code: 'ways-depend' },
    });
    const [question] = answer.ask;
    for (const { value, grade } of question?.values ?? []) {
      const told = `${question?.field ?? ''}=${encodeURIComponent(value)}`;
      const next = await askedKits(`${search}&${told}`);
      expect([next.grade, next.vehicles.length]).toEqual([grade, 1]);
    }
    expect(question?.values).toHaveLength(2);
  });

  test('one alone is answered whole, as if it had been named', async () => {
    const { kits } = await askedKits(`${LIRREN}&year=2003&want=bracket-20`);
    const named = await rig.client.get('/v1/kits?vehicle=lirren-1&want=bracket-20').expect(200);
    expect(kits).toEqual(json(named));
  });

  test('that none of them has a way is an answer', async () => {
    const { summary, outcomes, routes } = await askedKits(
      'make=corrablyn&model=vessimer&want=disc-215',
    );
    expect(summary).toEqual(expect.objectContaining({ code: 'no-way-for-any' }));
    expect([outcomes, routes]).toEqual([[{ grade: 'none', count: 2 }], []]);
  });

  test('in a body it is the same', async () => {
    const body = { make: 'Corrablyn', model: 'Lirren', want: [{ part: 'bracket-20' }] };
    const answer = json(await rig.client.post('/v1/kits').send(body).expect(200));
    expect(answer).toEqual(await askedKits(`${LIRREN}&want=bracket-20`));
  });
});

/** Nothing is recorded that tells the two apart but the shaft that the works fitted. */
const SHAFTS = world({
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front'],
  parts: {
    'box-unread': { rear: flange() },
    'box-like-a': { rear: flange('A') },
    'prop-a': { front: flange('A') },
    'prop-b': { front: flange('B') },
  },
  cars: {
    one: { box: 'box-unread', prop: 'prop-a' },
    two: { box: 'box-unread', prop: 'prop-b' },
  },
});

describe('what is fitted at a place', () => {
  const shafts = rigOf({ documents: [SHAFTS.document] });
  const answer = async (search: string) => {
    return json(await shafts.client.get(`${search}&year=2004`).expect(200)) as unknown as Wire;
  };

  test.each([
    ['/v1/fit?part=box-like-a&changes=no', 'verdict', ['fits', null]],
    ['/v1/fit?part=box-like-a', 'verdict', ['fits', 'fits-with-changes']],
  ])('settles %s, where nothing that is recorded does', async (search, field, expected) => {
    const { verdict, ask, settles } = await answer(search);
    expect([verdict, settles]).toEqual(['depends', true]);
    expect(ask).toMatchObject([
      {
        field: 'fitted',
        fact: null,
        position: 'prop',
        values: ['prop-a', 'prop-b'].map((value, index) => {
          return { value, count: 2, [field]: expected[index] };
        }),
      },
    ]);
    for (const [index, one] of ['prop-a', 'prop-b'].entries()) {
      const next = await answer(`${search}&fitted.prop=${one}`);
      expect([next.verdict, next.counts.total]).toEqual([expected[index], 2]);
      expect(next.ask).toEqual([]);
    }
  });

  test('settles which ways there are', async () => {
    const search = '/v1/kits?want=box-like-a';
    const asked = (await answer(search)) as unknown as KitsWire;
    expect(asked).toMatchObject({ grade: 'depends', settles: true, routes: [] });
    expect(asked.ask).toMatchObject([{ field: 'fitted', position: 'prop' }]);
    const keys = async (one: string) => {
      const next = (await answer(`${search}&fitted.prop=${one}`)) as unknown as KitsWire;
      expect([next.grade, next.counts.total, next.settles]).toEqual(['proven', 2, true]);
      return next.routes.map(({ lines }) => lines.map(({ key }) => key));
    };
    const [first] = await keys('prop-a');
    expect(first).not.toContain('add:prop:prop-a');
    expect((await keys('prop-b'))[0]).toContain('add:prop:prop-a');
  });

  test('is not asked for again once something was measured there', async () => {
    const body = {
      year: 2004,
      part: 'box-like-a',
      changes: 'no',
      measured: [{ on: { position: 'prop' }, value: 'prop-a' }],
    };
    const told = json(await shafts.client.post('/v1/fit').send(body).expect(200));
    expect([told.verdict, told.ask]).toEqual(['fits', []]);
  });
});

test.each([
  ['want=bracket-20', 400, 'missing', 'vehicle'],
  ['vehicle=lirren-1&want=bracket-20&year=2004', 400, 'not-beside-vehicle', 'year'],
  ['make=Nobody&want=bracket-20', 404, 'unknown-vehicle', 'make'],
  ['make=Corrablyn&want=nothing', 404, 'unknown-part', 'want'],
  ['make=Corrablyn&want=bracket-20&fact.x=y', 422, 'unknown-fact', 'fact.x'],
  ['make=Corrablyn&want=bracket-20&keep=x', 422, 'unknown-position', 'keep'],
])('kits: %s is refused', async (search, status, code, parameter) => {
  const problem = json(await rig.client.get(`/v1/kits?${search}`).expect(status));
  expect(problem.errors).toMatchObject([{ code, parameter }]);
});

test.each([
  ['part=bracket-20', 400, 'missing', 'vehicle'],
  ['vehicle=lirren-1&part=bracket-20&year=2004', 400, 'not-beside-vehicle', 'year'],
  ['make=Nobody&part=bracket-20', 404, 'unknown-vehicle', 'make'],
  ['model=Nothing&year=2004&part=bracket-20', 404, 'unknown-vehicle', 'model'],
  ['year=1900&part=bracket-20', 404, 'unknown-vehicle', 'year'],
  ['make=Corrablyn&part=nothing', 404, 'unknown-part', 'part'],
  ['make=Corrablyn&part=bracket-20&fact.x=y', 422, 'unknown-fact', 'fact.x'],
  ['make=Corrablyn&part=bracket-20&position=x', 422, 'unknown-position', 'position'],
])('%s is refused', async (search, status, code, parameter) => {
  const problem = json(await rig.client.get(`/v1/fit?${search}`).expect(status));
  expect(problem.errors).toMatchObject([{ code, parameter }]);
});
