/**
 * What stands beside the verdict in every answer: what to measure, what to order, what was not
 * checked, and the cautions.
 */

import { type FactAddress, NOWHERE } from '../domain/check/reading.js';
import type { ShownValue } from '../domain/explain/reason.js';
import { handsOf, isChanged, partAt, seatAt } from '../domain/judge/configuration.js';
import type { Constraint } from '../domain/judge/constraint.js';
import type { Judgement } from '../domain/judge/judge.js';
import { isUnidentified, type Measure, measureFor } from '../domain/judge/measure.js';
import { unmatedOptionalFaces } from '../domain/judge/place.js';
import type { Interval } from '../domain/quantity/interval.js';
import { toolOf } from '../domain/quantity/tool.js';
import type { MeasureView, OrderView, SaidReason } from './answer.js';
import { once } from './cautions.js';
import type { Speaker } from './speaker.js';

/** What would decide the open points of several judgements, each fact once. */
export function measureViews(judgements: readonly Judgement[], speaker: Speaker): MeasureView[] {
  const byAddress = new Map<string, Measure>();
  for (const own of judgements) {
    const ofThis = new Map<string, Measure>();
    for (const measure of measureFor(own).map(identifyFirst)) {
      const key = JSON.stringify(measure.address);
      const known = ofThis.get(key);
      ofThis.set(key, known === undefined ? measure : joined(known, measure));
    }
    for (const [key, measure] of ofThis) if (!byAddress.has(key)) byAddress.set(key, measure);
  }
  return [...byAddress.values()].map((measure, index) => measureView(measure, index, speaker));
}

/** Nobody measures a part that nobody has identified: which part it is comes first. */
function identifyFirst(measure: Measure): Measure {
  if (!isUnidentified(measure.address) || measure.address.parameter === null) return measure;
  const address = { ...measure.address, interface: null, parameter: null };
  return { ...measure, address, reading: null, purpose: 'to-decide', needed: null };
}

function joined(a: Measure, b: Measure): Measure {
  const touches = [...new Set([...a.touches, ...b.touches])];
  const settles = [...new Set([...a.settles, ...b.settles])];
  return { ...a, touches, settles };
}

export function measureView(measure: Measure, index: number, speaker: Speaker): MeasureView {
  const { address, reading, purpose, needed, touches, settles } = measure;
  const dimension =
    reading?.form === 'number' || reading?.form === 'points' ? reading.dimension : null;
  const now = nowOf(measure, speaker);
  const allowed =
    needed === null || dimension === null ? null : speaker.values.within(needed, dimension);
  const toolId = reading !== null && 'tool' in reading ? reading.tool : null;
  const fine = toolId === null ? null : fineEnough(toolId, dimension, needed);
  const tool = fine === null ? null : speaker.toolName(fine);
  // What is counted or read off is right or wrong, and never so much off.
  const isExact = toolId !== null && toolOf(toolId)?.reading === 'exact';
  const basis = reading !== null && 'basis' in reading ? reading.basis : null;
  const data = {
    left: speaker.namedValue(address, now, null),
    part: speaker.named(address),
    ...howToFindOut(address.fact, speaker),
    ...(allowed === null || isExact ? {} : { needed: allowed }),
    ...(tool === null ? {} : { tool }),
    ...(basis === null ? {} : { basis }),
  };
  const said = speaker.said(measureCode(measure), data);
  const helps = touches.filter((id) => !settles.includes(id));
  const on = speaker.fact(address);
  const settled = [...settles];
  return {
    id: `m${index + 1}`,
    on,
    now,
    needed: allowed,
    tool,
    purpose,
    settles: settled,
    helps,
    ...said,
  };
}

/** The tool of the record if it tells so finely, else a finer one of its sort; null for none. */
function fineEnough(
  id: string,
  dimension: string | null,
  needed: Measure['needed'],
): string | null {
  const tool = toolOf(id);
  if (tool?.reading !== 'measures' || dimension === null || needed === null) return id;
  const half = tool.uncertainty[dimension];
  if (half === undefined || half.compare(needed) <= 0) return id;
  return tool.finer === undefined ? null : fineEnough(tool.finer, dimension, needed);
}

/** How a person finds out a fact of the vehicle, where the catalogue says so. */
function howToFindOut(fact: string | null, speaker: Speaker): { readonly text?: string } {
  const how = fact === null ? undefined : speaker.catalogue.facts.get(fact)?.how;
  return how === undefined || how === null ? {} : { text: speaker.text(how) };
}

function nowOf({ reading }: Measure, speaker: Speaker): ShownValue | null {
  if (reading === null || !('text' in reading) || reading.text === null) return null;
  const text = speaker.readingText(reading);
  if (reading.form !== 'number') return speaker.values.word(text);
  return { ...speaker.values.interval(reading.domain, reading.dimension), text };
}

function measureCode({ address, reading, purpose }: Measure): string {
  if (purpose === 'to-confirm') return 'confirm';
  if (purpose === 'to-order') return 'measure-to-order';
  if (address.fact !== null) return 'ask-fact';
  if (reading === null) return address.interface === null ? 'identify' : 'record-face';
  const tool = reading.form === 'number' ? toolOf(reading.tool ?? '') : undefined;
  return tool?.reading === 'measures' ? 'measure-to-decide' : 'look-up';
}

/** What is made or set to suit; nothing where something fails, since nobody should order then. */
export function orderViews(judgement: Judgement, speaker: Speaker): OrderView[] {
  if (judgement.outcome === 'fails') return [];
  const orders = new Map<string, OrderView>();
  const unsettled = unsettledChoices(judgement, speaker);
  for (const constraint of judgement.constraints) {
    if (constraint.state !== 'holds') continue;
    for (const order of ordersOf(constraint, speaker)) {
      const key = JSON.stringify(order.on);
      if (unsettled.has(key)) continue;
      if (constraint.form === 'choice' || !orders.has(key)) orders.set(key, order);
    }
  }
  return [...orders.values()];
}

/** What one check alone would have made is not to be ordered while the others are open. */
function unsettledChoices({ constraints }: Judgement, speaker: Speaker): Set<string> {
  const unsettled = constraints.flatMap((one) =>
    one.form === 'choice' && one.state !== 'holds' ? one.choices : [],
  );
  return new Set(unsettled.map(({ address }) => JSON.stringify(speaker.fact(address))));
}

function ordersOf(constraint: Constraint, speaker: Speaker): OrderView[] {
  if (constraint.form === 'choice') {
    return constraint.choices.flatMap(({ address, order, dimension, pick }) => {
      if (pick !== null) return [];
      return [orderView(address, order, dimension, speaker)];
    });
  }
  return constraint.checks.flatMap((result) =>
    result.readings.flatMap((reading) => {
      if (reading.form !== 'range' || reading.key === null) return [];
      const order = result.orders.get(reading.key);
      if (order === undefined) return [];
      return [orderView(reading.address, order, reading.dimension, speaker)];
    }),
  );
}

function orderView(
  address: FactAddress,
  order: Interval | null,
  dimension: string,
  speaker: Speaker,
): OrderView {
  const value = order === null ? null : speaker.values.order(order, dimension);
  const left = speaker.namedValue(address, value, null);
  const data = { left, ...(value === null ? {} : { order: value }) };
  const code = value === null ? 'order-after-measuring' : 'order-to-suit';
  return { on: speaker.fact(address), value, ...speaker.said(code, data) };
}

/** What nobody looked at: what kinds leave out, places without a record, faces with no mate. */
export function notCheckedViews(judgement: Judgement, speaker: Speaker): SaidReason[] {
  const found = [
    ...kindGaps(judgement, speaker),
    ...unrecordedPlaces(judgement, speaker),
    ...unmatedFaces(judgement, speaker),
  ];
  return once(found);
}

function kindGaps({ constraints }: Judgement, speaker: Speaker): SaidReason[] {
  return constraints.flatMap((constraint) => {
    if (constraint.form !== 'mating' || constraint.state === 'given') return [];
    return constraint.joints.flatMap(({ ends: [a, b], notChecked }) => {
      if (notChecked.length === 0) return [];
      const text = notChecked.map((one) => speaker.text(one)).join(', ');
      const data = { a: speaker.namedEnd(a), b: speaker.namedEnd(b), text };
      return [speaker.said('kind-does-not-check', data)];
    });
  });
}

function unrecordedPlaces({ configuration }: Judgement, speaker: Speaker): SaidReason[] {
  const { layout, judged } = configuration;
  return [...layout.positions.values()].flatMap((position) => {
    const hands = handsOf(position);
    const isFound = hands.some(
      (hand) => seatAt(judged, position.id, hand)?.occupant.is === 'as-found',
    );
    if (!isFound) return [];
    const part = speaker.named({ ...NOWHERE, position: position.id });
    return [speaker.said('position-not-recorded', { part })];
  });
}

function unmatedFaces({ configuration }: Judgement, speaker: Speaker): SaidReason[] {
  const { layout, judged } = configuration;
  if (layout.unmated === 'ignore') return [];
  return [...layout.positions.values()].flatMap((position) => {
    if (!isChanged(configuration, position.id)) return [];
    const [hand = null] = handsOf(position);
    const part = partAt(configuration, seatAt(judged, position.id, hand));
    if (part === null) return [];
    return unmatedOptionalFaces(configuration, part, position).map((face) => {
      const address = { ...NOWHERE, position: position.id, part: part.id, interface: face };
      return speaker.said('face-on-no-mating', { part: speaker.named(address) });
    });
  });
}
