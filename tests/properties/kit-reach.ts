/**
 * What the random kit questions are for: each thing that decides which routes there are, with the
 * share of all questions in which it must be met at least, in percent. Told by the oracle.
 */

import { worksOn } from '../oracle/article.js';
import { contentsOf } from '../oracle/kit-ask.js';
import type { Candidate, KitRoute } from '../oracle/kit-order.js';
import type { OracleKits } from '../oracle/kit-routes.js';
import { byId, isDonorName } from '../oracle/scene.js';
import type { KitCase } from './kit-case.js';

export interface AskedKits extends KitCase {
  readonly kits: OracleKits;
}

type Test = (asked: AskedKits) => boolean;
type Reached = readonly [name: string, least: number, test: Test];

const some =
  (test: (route: KitRoute) => boolean): Test =>
  ({ kits }) =>
    kits.routes.some(test);

/** Of the ways in which routes are done. */
const chosen =
  (test: (one: Candidate, asked: AskedKits) => boolean): Test =>
  (asked) =>
    asked.kits.routes.some(({ best }) => best.some((one) => test(one, asked)));

const atLeast =
  (count: number): Test =>
  ({ kits }) =>
    kits.routes.length >= count;

const asks =
  (test: (ask: KitCase['ask']) => boolean): Test =>
  ({ ask, kits }) =>
    test(ask) && kits.routes.length > 0;

function piecesIn({ change }: Candidate): string[] {
  return [...change.places.values()].flatMap((pieces) => pieces.map(({ holds }) => holds));
}

/** What has been bought whole, and is not all used. */
function hasLeftOvers({ cost, change }: Candidate, { document }: AskedKits): boolean {
  const used = [...piecesIn({ change } as Candidate), ...[...change.rows.values()].flat()];
  return cost.lots.some((lot) =>
    [...contentsOf(document, lot).keys()].some((part) => !used.includes(part)),
  );
}

const hasRange = ({ change }: Candidate, { document }: AskedKits): boolean => {
  const used = new Set([...piecesIn({ change } as Candidate), ...[...change.rows.values()].flat()]);
  return (document.parts ?? [])
    .filter(({ id }) => used.has(id))
    .some((part) => JSON.stringify(part).includes('"choose":["'));
};

/** Something that could not be seen from the matings alone fails in a configuration. */
const rulesOut =
  (form: string): Test =>
  ({ kits }) =>
    kits.failed.has(form);

export const REACHED_KITS: readonly Reached[] = [
  ['a route', 50, atLeast(1)],
  ['two routes', 12, atLeast(2)],
  ['three routes', 4, atLeast(3)],
  ['five routes', 0.4, atLeast(5)],
  ['no route at all', 10, ({ kits }) => kits.routes.length === 0],
  ['a wish that nothing meets', 2, ({ kits }) => kits.configurations === 0],
  ['a proven route', 25, some(({ grade }) => grade === 'proven')],
  ['an open route', 15, some(({ grade }) => grade === 'open')],
  [
    'a proven and an open route',
    3,
    ({ kits }) => new Set(kits.routes.map(({ grade }) => grade)).size > 1,
  ],
  ['a configuration that has more in it than it needs', 20, ({ kits }) => kits.redundant > 0],
  ['a route with nothing to change', 15, some(({ touched }) => touched.length === 0)],
  ['two positions changed', 10, some(({ touched }) => touched.length >= 2)],
  ['three positions changed', 2, some(({ touched }) => touched.length >= 3)],
  ['two ways as good as each other', 2, some(({ best }) => best.length > 1)],
  [
    'an adapter',
    4,
    chosen(({ change }) => [...change.rows.values()].some((row) => row.length > 0)),
  ],
  [
    'two adapters in a row',
    0.3,
    chosen(({ change }) => [...change.rows.values()].some((row) => row.length > 1)),
  ],
  ['a lot', 2, chosen(({ cost }) => cost.lots.length > 0)],
  [
    'something of a lot that nobody recorded',
    0.5,
    chosen((one) => piecesIn(one).some((id) => isDonorName(id))),
  ],
  ['a lot of which something is left over', 1, chosen(hasLeftOvers)],
  [
    'a part that is worked',
    1.5,
    chosen((one) => piecesIn(one).some((id) => worksOn(id).length > 0)),
  ],
  ['a place that is emptied', 1, chosen((one) => one.emptied.length > 0)],
  ['something owned', 2, chosen(({ cost }) => cost.ownedUsed.size > 0)],
  ['something without a price', 10, chosen(({ cost }) => cost.unpriced > 0)],
  ['labour', 5, chosen(({ cost }) => cost.hours.top > 0n)],
  ['something used up', 3, chosen(({ usesUp }) => usesUp)],
  ['something that one may order to length', 10, chosen(hasRange)],
  [
    'something bought anew',
    0.4,
    chosen(({ change }) =>
      [...change.places.values()].some((pieces) => pieces.some(({ isRenewed }) => isRenewed)),
    ),
  ],
  ['a mating that rules something out', 20, rulesOut('mating')],
  ['a check that rules something out', 10, rulesOut('check')],
  ['a loop that rules something out', 1.5, rulesOut('agree')],
  ['a load that rules something out', 0.5, rulesOut('carries')],
  ['a choice that rules something out', 0.4, rulesOut('choice')],
  ['a rule that rules something out', 8, rulesOut('rule')],
  ['a statement that rules something out', 0.3, rulesOut('statement')],
  ['a wish for a condition', 6, asks(({ wants }) => wants.some(({ is }) => is === 'condition'))],
  ['a wish for a margin', 0.3, asks(({ wants }) => wants.some(({ is }) => is === 'load'))],
  ['a wish for a lot', 1.5, asks(({ wants }) => wants.some(({ is }) => is === 'lot'))],
  ['two wishes', 2, asks(({ wants }) => wants.length > 1)],
  ['something said of the vehicle', 8, asks(({ said }) => Object.keys(said).length > 0)],
  ['adapters said of the vehicle', 1, asks((ask) => Object.keys(ask.saidAdapters).length > 0)],
  [
    'a vehicle of which a fact is not told that says what stands there',
    3,
    ({ document, ask, kits }) => {
      const { facts, fitted } = byId(document.vehicles, ask.vehicle);
      const isTold = facts?.trim !== undefined;
      return kits.routes.length > 0 && !isTold && JSON.stringify(fitted).includes('"by":');
    },
  ],
  ['something kept', 5, asks(({ keep }) => keep.length > 0)],
  ['something to be avoided', 5, asks(({ avoid }) => avoid.length > 0)],
  ['a limit of cost', 3, asks(({ costLimit }) => costLimit !== null)],
  ['a limit of changes', 2, asks(({ changesLimit }) => changesLimit !== null)],
  ['only what is offered', 4, asks(({ from }) => from === 'offered')],
  ['no unknowns', 2, asks(({ refusesUnknowns }) => refusesUnknowns)],
  ['a rule book', 1, asks(({ ruleset }) => ruleset !== null)],
  ['fewest changes', 5, asks(({ prefer }) => prefer === 'changed-positions')],
  ['fewest hours', 5, asks(({ prefer }) => prefer === 'labour-hours')],
  ['a torque', 5, asks(({ torque }) => torque !== null)],
  ['faults of the present vehicle left alone', 3, asks(({ ignorePresent }) => ignorePresent)],
];
