/**
 * For codes of kit answers, the smallest change that leads to each: a cart of gearbox and shaft,
 * with routes written down by hand.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import type { Why } from '../../src/domain/kit/route.js';
import { lossViews } from '../../src/usecases/kit-losses.js';
import { Speaker } from '../../src/usecases/speaker.js';
import { ABSENT, flange, optional, type Sketch, world } from '../rules/sketch.js';
import { fitOf, found, judged, type Scene } from '../rules/world.js';
import { type MadeRoute, madeLine, madeRoute, type Telling, told } from '../usecases/made-kits.js';

const CART = world({
  roles: { box: { gears: 'ratios', 'gear-count': { term: { count: 'gears' } }, torque: 'rating' } },
  places: ['box', 'prop', 'sensor?'],
  matings: ['box.rear = prop.front', 'box.speed = sensor.box'],
  parts: {
    'box-a': {
      rear: flange('A'),
      gears: ['3/1', '2/1'],
      torque: '300 N.m',
      speed: optional(flange('S')),
    },
    'box-b': { rear: flange('A'), gears: ['3/1'], speed: ABSENT },
    'box-c': { rear: flange('C'), gears: ['3/1', '2/1'], torque: '300 N.m', speed: ABSENT },
    'prop-a': { front: flange('A') },
    'prop-c': { front: flange() },
    'sensor-a': { box: optional(flange('S')) },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a', sensor: 'sensor-a' } },
} satisfies Sketch);

const changed = judged(CART, { put: { box: 'box-b' } });
const clashing = judged(CART, { put: { box: 'box-c' } });
const unknown = judged(CART, { put: { prop: 'prop-c' } });

const WISH = 'add:box:box-b';
const LINE = 'add:prop:prop-c';

/** The line of a shaft has this reason. */
function why(code: Why['code'], more: Partial<Why> = {}) {
  const constraint = found(clashing, 'box-prop') ?? null;
  const lines = [madeLine(WISH), madeLine(LINE)];
  const own: Partial<Why> = { code, after: WISH, constraint, ...more };
  return () => told([madeRoute(changed, { lines, whys: { [LINE]: [own] } })], changed);
}

function route(made: MadeRoute = {}, telling: Telling = {}, judgement = changed) {
  const lines = [madeLine(WISH)];
  return () => told([madeRoute(judgement, { lines, ...made })], judgement, telling);
}

function lost(scene: Scene) {
  const { configuration } = judged(CART, scene);
  const { catalogue, layout } = configuration;
  return () => lossViews(configuration, new Speaker({ catalogue, layout, lang: 'en' }));
}

/** A gearbox with a shaft behind it; the works have fitted box-c to prop-c. */
const BOXES = {
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'box-c': { rear: flange() },
    'prop-a': { front: flange('A') },
    'prop-c': { front: flange('C') },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a' }, sister: { box: 'box-c', prop: 'prop-c' } },
} satisfies Sketch;

/** Whether a gearbox fits, where there is one more shaft. */
function fitWith(part: string, pattern?: string, steps?: number) {
  const parts = { ...BOXES.parts, 'prop-d': { front: flange(pattern) } };
  const more = steps === undefined ? {} : { steps };
  return () => fitOf(world({ ...BOXES, parts }), part, { changes: 'yes', ...more });
}

const same = judged(CART);

export const KIT_CASES: Readonly<Partial<Record<ReasonCode, () => unknown>>> = {
  'fits-with-changes': fitWith('box-b', 'B'),
  'fits-unless-alone': fitWith('box-c', 'D'),
  'may-fit-with-changes': fitWith('box-b'),
  'search-cut-short': fitWith('box-b', 'D', 1),
  'does-not-fit': fitWith('box-b', 'D'),
  'ways-proven': route(),
  'ways-open': route({}, {}, unknown),
  'ways-so-far': route({}, { kits: { isComplete: false } }),
  'nothing-to-change': () => told([madeRoute(same)], same),
  'no-way': () => told([], same),
  'no-way-so-far': () => told([], same, { kits: { isComplete: false } }),
  'route-proven': route(),
  'route-open': route({}, {}, unknown),
  wanted: why('wanted'),
  avoided: why('avoided'),
  'mating-fails': why('mating-fails'),
  rule: why('rule'),
  loop: why('loop'),
  load: why('load'),
  check: why('check'),
  place: why('place'),
  limit: why('limit', { constraint: null }),
  'becomes-open': why('becomes-open', { constraint: found(unknown, 'box-prop') ?? null }),
  'present-fails': why('present-fails'),
  'adapter-avoided': why('adapter-avoided'),
  'donor-content': why('donor-content', { name: 'set' }),
  consumed: why('consumed', { name: 'oil' }),
  'in-the-way': why('in-the-way'),
  'taken-out': why('taken-out'),
  'place-emptied': lost({ put: { sensor: null } }),
  'joint-lost': lost({ put: { box: 'box-b' } }),
  'value-lower': lost({ put: { box: 'box-b' } }),
  'rating-unknown': lost({ put: { box: 'box-b' } }),
};
