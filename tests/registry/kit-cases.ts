/**
 * For codes of kit answers that no question to the demo leads to, the smallest change that does: of
 * a cart with a gearbox, a shaft and a sensor. What no small question leads to either is told of a
 * route that is written down by hand.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import type { Why } from '../../src/domain/kit/route.js';
import { lossViews } from '../../src/usecases/kit-losses.js';
import { Speaker } from '../../src/usecases/speaker.js';
import { ABSENT, flange, optional, type Sketch, world } from '../rules/sketch.js';
import { fitOf, found, judged, kitsOf, type Scene } from '../rules/world.js';
import { madeLine, madeRoute, type Telling, told } from '../usecases/made-kits.js';

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
    'sensor-a': { box: optional(flange('S')) },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a', sensor: 'sensor-a' } },
} satisfies Sketch);

const changed = judged(CART, { put: { box: 'box-b' } });
const clashing = judged(CART, { put: { box: 'box-c' } });

const WISH = 'add:box:box-b';
const LINE = 'add:prop:prop-c';

/** The line of a shaft has this reason. */
function why(code: Why['code'], more: Partial<Why> = {}) {
  const constraint = found(clashing, 'box-prop') ?? null;
  const lines = [madeLine(WISH), madeLine(LINE)];
  const own: Partial<Why> = { code, after: WISH, constraint, ...more };
  return () => told([madeRoute(changed, { lines, whys: { [LINE]: [own] } })], changed);
}

function route(telling: Telling) {
  return () => told([madeRoute(changed, { lines: [madeLine(WISH)] })], changed, telling);
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

/** With one more shaft. */
function boxesAnd(pattern?: string) {
  return world({ ...BOXES, parts: { ...BOXES.parts, 'prop-d': { front: flange(pattern) } } });
}

/** Whether a gearbox fits, where there is one more shaft. */
function fitWith(part: string, pattern?: string, steps?: number) {
  const more = steps === undefined ? {} : { steps };
  return () => fitOf(boxesAnd(pattern), part, { changes: 'yes', ...more });
}

/** A stronger engine, for which the gearbox is too weak. */
const STRONGER = world({
  roles: { engine: { torque: 'torque' }, box: { torque: 'rating' } },
  places: ['engine', 'box'],
  checks: [{ id: 'strength', carries: 'box.torque', demand: 'engine.torque' }],
  parts: {
    'engine-a': { torque: '200 N.m' },
    'engine-b': { torque: '300 N.m' },
    'box-a': { torque: '250 N.m' },
    'box-b': { torque: '350 N.m' },
  },
  cars: { car: { engine: 'engine-a', box: 'box-a' } },
});

export const KIT_CASES: Readonly<Partial<Record<ReasonCode, () => unknown>>> = {
  'fits-unless-alone': fitWith('box-c', 'D'),
  'may-fit-with-changes': fitWith('box-b'),
  'search-cut-short': fitWith('box-b', 'D', 1),
  'ways-open': () => kitsOf(boxesAnd(), ['box-b']),
  'ways-so-far': route({ kits: { isComplete: false } }),
  'no-way-so-far': () => kitsOf(boxesAnd('D'), ['box-b'], {}, { steps: 1 }),
  'route-open': () => kitsOf(boxesAnd(), ['box-b']),
  avoided: why('avoided'),
  load: () => kitsOf(STRONGER, ['engine-b']),
  place: why('place'),
  limit: why('limit', { constraint: null }),
  'becomes-open': () => kitsOf(boxesAnd('D'), ['box-c']),
  'place-emptied': lost({ put: { sensor: null } }),
  'joint-lost': lost({ put: { box: 'box-b' } }),
  'value-lower': lost({ put: { box: 'box-b' } }),
  'rating-unknown': lost({ put: { box: 'box-b' } }),
};
