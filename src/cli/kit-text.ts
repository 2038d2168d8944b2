/**
 * The routes of a kit as a person reads them: side by side in a table, then each with its lines.
 */

import type { KitAnswer, KitLineView, RouteView } from '../usecases/kit-answer.js';
import {
  called,
  place,
  sayMeasures,
  sayNames,
  sayOrders,
  sayOrigin,
  sayTexts,
  textsOf,
} from './answer-text.js';
import { sayCascade } from './cascade-text.js';
import { sayConflict } from './conflict-text.js';
import type { Page, Tone } from './page.js';
import { type Row, sayTable } from './table.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

/** What the words of a route need besides. */
interface Style {
  /** Why lines are there, as far as it has been said. */
  readonly said: Set<string>;
  readonly page: Page;
  readonly words: CliWords;
  readonly currency: string | null;
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
  for (const [action, lines] of byAction(route.lines)) {
    page.say(kits.actions[action] ?? action, { indent: 2, tone: 'strong' });
    for (const line of lines) sayLine(line, style);
  }
  if (route.recommended.length > 0) {
    page.say(kits.recommended, { indent: 2, tone: 'strong' });
    for (const line of route.recommended) {
      sayLine(line, style);
      for (const text of new Set(textsOf(line.why))) page.say(text, { indent: 6 });
    }
  }
  page.say(totalsText(route, style), { indent: 2, tone: 'strong' });
  for (const text of unknownLimitTexts(route, words)) page.say(text, { indent: 2 });
  sayCascade(route, page, words, said);
  sayDriving(route, page, words);
  if (route.loses.length > 0) {
    page.say(kits.loses, { indent: 2, tone: 'strong' });
    for (const text of textsOf(route.loses)) page.say(text, { indent: 4, marker: '- ' });
  }
  sayOrders(route.order, page, words, 2);
}

/** In the order in which they come. */
function byAction(lines: readonly KitLineView[]): Map<string, KitLineView[]> {
  const groups = new Map<string, KitLineView[]>();
  for (const line of lines) groups.set(line.action, [...(groups.get(line.action) ?? []), line]);
  return groups;
}

function sayLine(line: KitLineView, style: Style): void {
  const { page, words } = style;
  const { kits } = words;
  page.say(lineText(line, style), { indent: 4, marker: '- ' });
  const { substitutes, alternatives, leftOver } = line;
  for (const { part, text } of [...substitutes, ...alternatives]) {
    page.say(`${text} (${part})`, { indent: 6 });
  }
  if (leftOver.length === 0) return;
  const left = leftOver.map(({ part, name, quantity }) => {
    return `${called(name, part, words)}, ${quantityText(quantity, words)}`;
  });
  page.say(kits.leftOver(left), { indent: 6 });
}

/** `“Six-speed, late” (gearbox-6-late), Gearbox: 1 piece, 900.00 EUR, 6 h`. */
function lineText(line: KitLineView, style: Style): string {
  const { words } = style;
  const { kits } = words;
  const { name, action, position, positionName, mating, hand, signOff, reversible } = line;
  const goods = line.lot ?? line.work ?? line.part;
  const what = goods === null ? name : called(name, goods, words);
  const where =
    position === null || goods === null ? null : place(positionName ?? position, position);
  const places = [
    what,
    ...(where === null ? [] : [where]),
    ...(mating === null ? [] : [kits.between(mating)]),
    ...(hand === null ? [] : [words.hands[hand]]),
  ];
  const facts = [
    ...(goods === null || action === 'remove' ? [] : [quantityText(line.quantity, words)]),
    ...packsText(line, words),
    ...priceText(line, style),
    ...hoursText(line.labourHours, kits),
    ...(signOff === null ? [] : [kits.signOff(kits.signers[signOff] ?? signOff)]),
    ...(reversible ? [] : [kits.notReversible]),
  ];
  return facts.length === 0 ? places.join(', ') : `${places.join(', ')}: ${facts.join(', ')}`;
}

function hoursText(hours: string | null, kits: CliWords['kits']): string[] {
  return hours === null || hours === '0' ? [] : [kits.hours(kits.decimal(hours))];
}

function quantityText({ value, unit }: KitLineView['quantity'], { kits }: CliWords): string {
  if (value === null) return kits.notKnownHowMuch;
  const amount = kits.decimal(value);
  return unit === 'piece' ? kits.piece(amount) : `${amount} ${unit}`;
}

/** Only where what is bought is more than what is needed, or comes by the pack. */
function packsText({ offer }: KitLineView, words: CliWords): string[] {
  if (offer === null || offer.packs === null) return [];
  const { pack, packs } = offer;
  if (pack.unit === 'piece' && pack.value === '1') return [];
  return [words.kits.packs(packs, quantityText(pack, words))];
}

/** Lines of no goods have no price, but for works: those that nobody offers say so. */
function priceText({ price, source, work }: KitLineView, style: Style): string[] {
  const { kits } = style.words;
  const from = work === null ? source : price === null ? 'unpriced' : 'offer';
  const said = from === null ? undefined : kits.sources[from];
  if (said !== undefined) return [said];
  return price === null || from === null ? [] : [moneyText(price, style)];
}

function moneyText(amount: string, { words: { kits }, currency }: Style): string {
  return kits.money(kits.decimal(amount), currency);
}

function totalsText({ totals }: RouteView, style: Style): string {
  const { kits } = style.words;
  const { parts, works, labour, labourHours, cost, unpriced, untimed } = totals;
  const beside = [
    kits.parts(moneyText(parts, style)),
    ...(Number(works) === 0 ? [] : [kits.works(moneyText(works, style))]),
    ...(labour === null ? [] : [kits.labour(moneyText(labour, style))]),
    ...hoursText(labourHours, kits),
    ...(unpriced.length === 0 ? [] : [kits.unpriced(unpriced.length)]),
    ...(untimed.length === 0 ? [] : [kits.untimed(untimed.length)]),
  ];
  return kits.total(moneyText(cost, style), beside);
}

/** Each limit of which nobody can tell whether this way keeps it, and why. */
function unknownLimitTexts({ totals }: RouteView, { kits }: CliWords): string[] {
  const { unpriced, untimed, labour } = totals;
  const prices = unpriced.length === 0 ? [] : [kits.unpriced(unpriced.length)];
  const times = untimed.length === 0 ? [] : [kits.untimed(untimed.length)];
  // Without a rate no hour costs anything.
  const costs = [...prices, ...(labour === null ? [] : times)];
  const why: Record<string, readonly string[]> = {
    cost: costs,
    labourHours: times,
    leadDays: [kits.leadNotKnown],
  };
  return totals.unknownLimits.map((limit) =>
    kits.limitNotKnown(kits.limits[limit] ?? limit, why[limit] ?? []),
  );
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
