/**
 * Statements: what they settle, what they contradict, and of what they prove nothing.
 */

import { describe, expect, it } from 'vitest';
import { by, flange, from, type Sketch, world } from './sketch.js';
import { computedOf, found, judged, stateOf } from './world.js';

/** A box that nobody recorded on a car that is recorded, and one whose flange differs. */
const plan = {
  roles: { box: { length: 'length' }, body: { room: 'length' } },
  places: ['body', 'box', 'prop', 'lever'],
  matings: ['box.rear = prop.front', 'box.top = lever.foot', 'prop.rear = lever.head'],
  checks: [{ id: 'room', 'at-least': ['body.room', 'box.length'] }],
  parts: {
    'body-a': { room: '600 mm' },
    'box-a': { rear: flange('A'), top: flange('T'), length: '500 mm' },
    'box-b': {},
    'box-c': { rear: flange('C'), top: flange('T'), length: '500 mm' },
    'prop-a': { front: flange('A'), rear: flange('R') },
    'prop-b': { front: flange('A'), rear: flange() },
    'prop-c': { front: flange('A'), rear: flange('R') },
    'lever-a': { foot: flange('T'), head: flange('R') },
    'stub-aa': { near: flange('A'), far: flange('A') },
  },
  cars: {
    car: { body: 'body-a', box: 'box-a', prop: 'prop-a', lever: 'lever-a' },
    twin: { body: 'body-a', box: 'box-a', prop: 'prop-a', lever: 'lever-a' },
  },
};

function stated(more: Readonly<Record<string, unknown>> = {}, parts = {}) {
  const statement = {
    id: 'list',
    part: 'box-b',
    vehicles: ['car'],
    position: 'box',
    verdict: 'fits',
    ...more,
  };
  return world({ ...plan, parts: { ...plan.parts, ...parts }, statements: [statement] });
}

describe('A11 a statement settles what is open about its part at its place', () => {
  const ids = ['box-prop', 'box-lever', 'room'];

  it('without it, all is open', () => {
    const states = ids.map((id) => stateOf(judged(world(plan), { put: { box: 'box-b' } }), id));
    expect(states).toEqual([
      'open face-not-recorded',
      'open face-not-recorded',
      'open not-recorded',
    ]);
  });

  it('with it, the matings and the checks hold, and its evidence is shown', () => {
    const cars = stated({ evidence: { basis: 'drawing', source: 'list 7' } });
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(ids.map((id) => stateOf(one, id))).toEqual(ids.map(() => 'holds stated'));
    expect(found(one, 'room')).toMatchObject({
      computed: 'open',
      basis: 'drawing',
      statement: { id: 'list', evidence: { basis: 'drawing', source: 'list 7' } },
    });
    expect(one.outcome).toBe('holds');
  });

  it('it speaks of its vehicles alone, of its part alone, and where it stands alone', () => {
    expect(judged(stated(), { on: 'twin', put: { box: 'box-b' } }).outcome).toBe('open');
    const other = stated({ part: 'box-c' });
    expect(judged(other, { put: { box: 'box-b' } }).outcome).toBe('open');
    const elsewhere = stated({ part: 'prop-b', position: 'prop' });
    expect(judged(elsewhere, { put: { box: 'box-b' } }).outcome).toBe('open');
  });

  it('with another part changed it proves nothing of that one', () => {
    const one = judged(stated(), { put: { box: 'box-b', prop: 'prop-c' } });
    expect(ids.map((id) => stateOf(one, id))).toEqual([
      'open face-not-recorded',
      'holds stated',
      'holds stated',
    ]);
  });

  it('nor with one that the question says is there', () => {
    const one = judged(stated(), { said: { prop: 'prop-c' }, put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('open face-not-recorded');
    expect(stateOf(one, 'box-lever')).toBe('holds stated');
  });

  it('nor of an adapter that is put between', () => {
    const one = judged(stated(), { put: { box: 'box-b' }, between: { 'box-prop': ['stub-aa'] } });
    expect(stateOf(one, 'box-prop')).toMatch(/^open /);
  });

  it('unless it names that part beside its own', () => {
    const cars = stated({ with: { prop: 'prop-c' } });
    const both = judged(cars, { put: { box: 'box-b', prop: 'prop-c' } });
    expect(ids.map((id) => stateOf(both, id))).toEqual(ids.map(() => 'holds stated'));
    const said = judged(cars, { said: { prop: 'prop-c' }, put: { box: 'box-b' } });
    expect(stateOf(said, 'box-prop')).toBe('holds stated');
  });

  it('and then it says nothing where another part stands there', () => {
    const cars = stated({ with: { prop: 'prop-c' } });
    expect(judged(cars, { put: { box: 'box-b' } }).outcome).toBe('open');
    expect(judged(cars, { put: { box: 'box-b', prop: 'prop-b' } }).outcome).toBe('open');
  });

  it('what its companion leaves open beside its own part stays open', () => {
    const cars = stated({ with: { prop: 'prop-b' } });
    const one = judged(cars, { put: { box: 'box-b', prop: 'prop-b' } });
    expect(stateOf(one, 'box-prop')).toBe('holds stated');
    expect(stateOf(one, 'prop-lever')).toBe('open not-recorded');
  });

  it('nor where the part beside it is one that the works fitted, named again', () => {
    const one = judged(stated(), { put: { box: 'box-b', prop: 'prop-a' } });
    expect(stateOf(one, 'box-prop')).toBe('holds stated');
  });

  it('it holds too where its part is there already and its companion is what is new', () => {
    const cars = stated({ with: { prop: 'prop-b' } });
    const said = judged(cars, { said: { box: 'box-b' }, put: { prop: 'prop-b' } });
    expect(stateOf(said, 'box-prop')).toBe('holds stated');
    const works = stated({ part: 'box-a', with: { prop: 'prop-s' } }, { 'prop-s': {} });
    const fitted = judged(works, { put: { prop: 'prop-s' } });
    expect(stateOf(fitted, 'box-prop')).toBe('holds stated');
  });

  it('it settles what weak evidence leaves open', () => {
    const cars = stated({}, { 'box-b': { rear: flange(from('inferred', 'A')) } });
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('holds stated');
  });

  it.each(['inferred', 'reported'])('a statement that is %s itself settles nothing', (basis) => {
    expect(judged(stated(by(basis)), { put: { box: 'box-b' } }).outcome).toBe('open');
  });
});

describe('A11 a statement never overrules a check', () => {
  const differing = { part: 'box-c' };

  it('where they disagree, nobody knows', () => {
    const one = judged(stated(differing), { put: { box: 'box-c' } });
    expect(stateOf(one, 'box-prop')).toBe('open contradicts-statement');
    expect(computedOf(one, 'box-prop')).toBe('fails');
    expect(one.outcome).toBe('open');
  });

  it('nor does anybody where the part is said to be on the car already', () => {
    expect(judged(stated(differing), { said: { box: 'box-c' } }).outcome).not.toBe('fails');
  });

  it.each(['measured', 'built'])('until a record that is %s settles it', (basis) => {
    const cars = stated(differing, {
      'box-c': { rear: flange(from(basis, 'C')), top: flange('T'), length: '500 mm' },
      'prop-a': { front: flange(from('measured', 'A')), rear: flange('R') },
    });
    const one = judged(cars, { put: { box: 'box-c' } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(found(one, 'box-prop')).toMatchObject({ statement: { id: 'list' } });
  });

  it.each(['drawing', 'maker', 'inferred'])('a record that is %s does not', (basis) => {
    const cars = stated(differing, {
      'box-c': { rear: flange(from(basis, 'C')), top: flange('T'), length: '500 mm' },
      'prop-a': { front: flange(from('measured', 'A')), rear: flange('R') },
    });
    expect(judged(cars, { put: { box: 'box-c' } }).outcome).toBe('open');
  });

  it.each(['inferred', 'reported'])('a statement that is %s takes no failure back', (basis) => {
    const cars = stated({ ...differing, evidence: { basis } });
    expect(judged(cars, { put: { box: 'box-c' } }).outcome).not.toBe('holds');
  });
});

describe('A11 a statement that a part does not fit', () => {
  const denied = { verdict: 'does-not-fit' };
  const right = { 'box-b': { rear: flange('A'), top: flange('T'), length: '500 mm' } };
  const bench = (basis: string) => ({
    'body-a': { room: from(basis, '600 mm') },
    'box-b': {
      rear: flange(from(basis, 'A')),
      top: flange(from(basis, 'T')),
      length: from(basis, '500 mm'),
    },
    'prop-a': { front: flange(from(basis, 'A')), rear: flange('R') },
    'lever-a': { foot: flange(from(basis, 'T')), head: flange('R') },
  });

  it('fails what the records leave open', () => {
    const one = judged(stated(denied), { put: { box: 'box-b' } });
    expect(stateOf(one, 'list')).toBe('fails stated-not-to-fit');
    expect(one.outcome).toBe('fails');
  });

  it('contradicts records that hold: nobody knows', () => {
    const one = judged(stated(denied, right), { put: { box: 'box-b' } });
    expect(stateOf(one, 'list')).toBe('open contradicts-statement');
    expect(one.outcome).toBe('open');
  });

  it.each(['measured', 'built'])('yields to records that are %s', (basis) => {
    const one = judged(stated(denied, bench(basis)), { put: { box: 'box-b' } });
    expect(stateOf(one, 'list')).toBe('not judged');
    expect(one.outcome).toBe('holds');
  });

  it('only opens what it says where it is reported', () => {
    const one = judged(stated({ ...denied, ...by('reported') }), { put: { box: 'box-b' } });
    expect(stateOf(one, 'list')).toBe('open evidence-too-weak');
  });

  it('says nothing of the part where it is fitted already', () => {
    const cars = stated({ ...denied, part: 'box-a' });
    expect(judged(cars).outcome).toBe('holds');
  });
});

describe('A11 a statement settles checks that share a choice, too', () => {
  const made: Sketch = {
    roles: { shaft: { length: 'length' }, body: { span: 'length', clear: 'length' } },
    places: ['body', 'shaft'],
    checks: [
      { id: 'span', within: ['body.span', 'shaft.length'], tolerance: '5 mm' },
      { id: 'clear', 'at-most': ['shaft.length', 'body.clear'] },
    ],
    parts: {
      'body-a': {},
      'shaft-a': { length: '1000 mm' },
      'shaft-made': { length: { choose: ['600 mm', '1900 mm'] } },
    },
    cars: { car: { body: 'body-a', shaft: 'shaft-a' } },
  };
  const statement = {
    id: 'list',
    part: 'shaft-made',
    vehicles: ['car'],
    position: 'shaft',
    verdict: 'fits',
  };

  it('a shaft made to length, for a body that nobody measured', () => {
    const put = { shaft: 'shaft-made' };
    expect(judged(world(made), { put }).outcome).toBe('open');
    expect(judged(world({ ...made, statements: [statement] }), { put }).outcome).toBe('holds');
  });
});
