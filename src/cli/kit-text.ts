/**
 * The routes of a kit as a person reads them: side by side in a table, then each with its lines.
 */

import type { KitAnswer, RouteView } from '../usecases/kit-answer.js';
import { sayMeasures, sayNames, sayOrders, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import { sayCascade } from './cascade-text.js';
import { sayConflict } from './conflict-text.js';
import { type LineStyle, moneyText, sayTaken } from './kit-line-text.js';
import type { Page, Tone } from './page.js';
import { type Row, sayTable } from './table.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

interface Style extends LineStyle {
  /** Why lines are there, as far as it has been said. */
  readonly said: Set<string>;
}

export function sayKits(answer: KitAnswer, page: Page): void {
  const { routes, summary, vehicle, bound, more, currency } = answer;
  const words = wordsIn(answer.lang);
  const style: Style = { page, words, currency, said: new Set() };
  page.say(summary.text, { tone: toneOf(routes) });
  page.say(words.kits.on(vehicle), { tone: 'faint' });
  sayNames(answer, page, words);
  if (answer.conflict !== null) sayConflict(answer.conflict, page, words.kits);
  if (routes.some(({ lines }) => lines.length > 0)) {
    page.gap();
    sayTable(
      routes.map((_, index) => words.kits.way(index + 1)),
      rowsOf(answer, words),
      page,
    );
  }
  if (bound !== null) page.say(words.kits.atLeast(bound.grade, moneyText(bound.cost, style)));
  if (more) page.say(words.kits.more);
  for (const [index, route] of routes.entries()) sayRoute(route, index, routes.length, style);
  const all = (texts: (route: RouteView) => readonly { readonly text: string }[]) => [
    ...new Set(routes.flatMap((route) => textsOf(texts(route)))),
  ];
  sayTexts(
    words.answer.notChecked,
    all(({ notChecked }) => notChecked),
    page,
  );
  sayTexts(
    words.answer.cautions,
    all(({ cautions }) => cautions),
    page,
  );
  sayOrigin(answer, page, words.kits.offers(answer.offers));
}

function toneOf([first]: readonly RouteView[]): Tone {
  if (first === undefined) return 'bad';
  return first.grade === 'proven' ? 'good' : 'doubtful';
}

function rowsOf({ routes, compare }: KitAnswer, { kits }: CliWords): Row[] {
  const grade = { label: kits.grade, cells: routes.map((one) => kits.grades[one.grade]) };
  const rows = compare.rows.map(({ key, name, values }) => ({
    label: name,
    cells: values.map((value, index) => {
      const cell = cellOf(key, value, kits);
      // Hours that nobody recorded are none of the sum.
      const isMore = key === 'labourHours' && (routes[index]?.totals.untimed.length ?? 0) > 0;
      return isMore ? kits.orMore(cell) : cell;
    }),
  }));
  return [grade, ...rows];
}

type Cell = KitAnswer['compare']['rows'][number]['values'][number];

function cellOf(row: string, value: Cell, kits: CliWords['kits']): string {
  if (typeof value === 'boolean') return value ? kits.yes : kits.no;
  if (row === 'signOff')
    return value === null ? kits.nobody : (kits.signers[value] ?? String(value));
  if (value === null) return kits.notKnown;
  return typeof value === 'number' ? String(value) : kits.decimal(value);
}

function sayRoute(route: RouteView, index: number, count: number, style: Style): void {
  const { page, words } = style;
  const { kits } = words;
  page.gap();
  const tone = route.grade === 'proven' ? 'good' : 'doubtful';
  page.say(`${kits.wayOf(index + 1, count)} ${route.summary.text}`, { tone });
  if (route.beatenBy !== null) page.say(kits.beatenBy(route.beatenBy + 1), { indent: 2 });
  sayWhole(route, style);
  sayMeasures(route.measure, page, words.answer, 2);
}

/** What a part needs besides: one route, whatever others there are. */
export function sayKit(
  route: RouteView,
  currency: string | null,
  page: Page,
  words: CliWords,
): void {
  page.gap();
  const tone = route.grade === 'proven' ? 'good' : 'doubtful';
  page.say(`${words.fit.kit} ${route.summary.text}`, { tone });
  sayWhole(route, { page, words, currency, said: new Set() });
}

function sayWhole(route: RouteView, style: Style): void {
  const { page, words, said } = style;
  const { kits } = words;
  sayTaken(route, style);
  sayCascade(route, page, words, said);
  sayDriving(route, page, words);
  if (route.loses.length > 0) {
    page.say(kits.loses, { indent: 2, tone: 'strong' });
    for (const text of textsOf(route.loses)) page.say(text, { indent: 4, marker: '- ' });
  }
  sayOrders(route.order, page, words, 2);
}

/** What the route makes better and worse of how the vehicle drives, and what is out of step. */
function sayDriving({ driveline }: RouteView, page: Page, words: CliWords): void {
  const { kits } = words;
  const loops = driveline.loops.filter(({ after }) => after?.outcome !== 'holds');
  const lists = [
    [kits.outOfStep, loops],
    [kits.better, driveline.better],
    [kits.worse, driveline.worse],
  ] as const;
  for (const [heading, figures] of lists) {
    if (figures.length === 0) continue;
    page.say(heading, { indent: 2, tone: 'strong' });
    for (const { name, before, after } of figures) {
      const texts = [before, after].map((view) => view?.value?.text ?? words.driveline.unknown);
      page.say(`${name}: ${texts.join(' → ')}`, { indent: 4, marker: '- ' });
    }
  }
}
