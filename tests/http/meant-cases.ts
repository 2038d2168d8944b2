/** As many vehicles as may be meant and asked one by one, and one more: for each limit of those. */

import { expect } from 'vitest';
import { LIMITS, type LimitName } from '../../src/contract/limits.js';
import { flange, world } from '../rules/sketch.js';
import { json, rigOf } from './fixture.js';

/** Cars with the same gearbox, each with a shaft of its own behind it; or all with the same. */
function crowdOf(count: number, areAlike: boolean) {
  const shafts = Array.from({ length: count }, (_, index) => `prop-${areAlike ? 0 : index}`);
  const { document } = world({
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('A') },
      ...Object.fromEntries(shafts.map((shaft) => [shaft, { front: flange('A') }])),
    },
    cars: Object.fromEntries(shafts.map((prop, index) => [`car-${index}`, { box: 'box-a', prop }])),
  });
  return rigOf({ documents: [document] });
}

interface Told {
  readonly vehicles: readonly object[];
  readonly outcomes: readonly object[];
}

async function told(rig: ReturnType<typeof crowdOf>, question: string): Promise<Told> {
  return json(await rig.client.get(`${question}&year=2004`).expect(200)) as unknown as Told;
}

export const MEANT_CASES = {
  vehiclesJudged: async () => {
    const most = LIMITS.vehiclesJudged.value;
    for (const question of ['/v1/fit?part=box-b&changes=no', '/v1/kits?want=box-b']) {
      const taken = await told(crowdOf(most, true), question);
      expect(taken.vehicles).toHaveLength(most);
      const past = await told(crowdOf(most + 1, true), question);
      expect(past.vehicles).toEqual([]);
      expect(past.outcomes).toMatchObject([{ count: most + 1 }]);
    }
  },
  vehiclesSolved: async () => {
    const most = LIMITS.vehiclesSolved.value;
    for (const question of ['/v1/fit?part=box-b', '/v1/kits?want=box-b']) {
      const taken = await told(crowdOf(most, false), question);
      expect(taken.vehicles).toHaveLength(most);
      const past = await told(crowdOf(most + 1, false), question);
      expect(past.vehicles).toEqual([]);
      const alike = await told(crowdOf(most + 1, true), question);
      expect(alike.vehicles).toHaveLength(most + 1);
    }
    const judged = await told(crowdOf(most + 1, false), '/v1/fit?part=box-b&changes=no');
    expect(judged.vehicles).toHaveLength(most + 1);
  },
} satisfies Partial<Record<LimitName, () => Promise<void>>>;
