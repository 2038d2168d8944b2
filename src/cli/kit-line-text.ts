/**
 * What a way takes as a person reads it: line by line, and what they come to.
 */

import type { KitLineView } from '../usecases/kit-answer.js';
import type { SharedLineView, SharedRouteView } from '../usecases/kits-partly-answer.js';
import { called, place, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import type { CliWords } from './words/cli-words.js';

/** What the words of a line need besides. */
export interface LineStyle {
  readonly page: Page;
  readonly words: CliWords;
  readonly currency: string | null;
}

/** Of one vehicle a line says also why it is there, and what would do in its place. */
type Line = SharedLineView & Partial<Pick<KitLineView, 'why' | 'substitutes' | 'alternatives'>>;

interface Taken extends Pick<SharedRouteView, 'totals'> {
  readonly lines: readonly Line[];
  readonly recommended: readonly Line[];
}

/** What is put in, done and taken out, and what that comes to. */
export function sayTaken(route: Taken, style: LineStyle): void {
  const { page, words } = style;
  const { kits } = words;
  for (const [action, lines] of byAction(route.lines)) {
    page.say(kits.actions[action] ?? action, { indent: 2, tone: 'strong' });
    for (const line of lines) sayLine(line, style);
  }
  if (route.recommended.length > 0) {
    page.say(kits.recommended, { indent: 2, tone: 'strong' });
    for (const line of route.recommended) {
      sayLine(line, style);
      for (const text of new Set(textsOf(line.why ?? []))) page.say(text, { indent: 6 });
    }
  }
  page.say(totalsText(route, style), { indent: 2, tone: 'strong' });
  for (const text of unknownLimitTexts(route, words)) page.say(text, { indent: 2 });
}

/** In the order in which they come. */
function byAction(lines: readonly Line[]): Map<string, Line[]> {
  const groups = new Map<string, Line[]>();
  for (const line of lines) groups.set(line.action, [...(groups.get(line.action) ?? []), line]);
  return groups;
}

function sayLine(line: Line, style: LineStyle): void {
  const { page, words } = style;
  const { kits } = words;
  page.say(lineText(line, style), { indent: 4, marker: '- ' });
  const { substitutes = [], alternatives = [], leftOver } = line;
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
function lineText(line: Line, style: LineStyle): string {
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

function quantityText({ value, unit }: Line['quantity'], { kits }: CliWords): string {
  if (value === null) return kits.notKnownHowMuch;
  const amount = kits.decimal(value);
  return unit === 'piece' ? kits.piece(amount) : `${amount} ${unit}`;
}

/** Only where what is bought is more than what is needed, or comes by the pack. */
function packsText({ offer }: Line, words: CliWords): string[] {
  if (offer === null || offer.packs === null) return [];
  const { pack, packs } = offer;
  if (pack.unit === 'piece' && pack.value === '1') return [];
  return [words.kits.packs(packs, quantityText(pack, words))];
}

/** Lines of no goods have no price, but for works: those that nobody offers say so. */
function priceText({ price, source, work }: Line, style: LineStyle): string[] {
  const { kits } = style.words;
  const from = work === null ? source : price === null ? 'unpriced' : 'offer';
  const said = from === null ? undefined : kits.sources[from];
  if (said !== undefined) return [said];
  return price === null || from === null ? [] : [moneyText(price, style)];
}

export function moneyText(amount: string, { words: { kits }, currency }: LineStyle): string {
  return kits.money(kits.decimal(amount), currency);
}

function totalsText({ totals }: Taken, style: LineStyle): string {
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
function unknownLimitTexts({ totals }: Taken, { kits }: CliWords): string[] {
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
