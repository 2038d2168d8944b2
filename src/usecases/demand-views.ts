/**
 * The demands of a kit question in words: as they were made, and as they could be taken back.
 */

import type { Layout } from '../domain/catalogue/catalogue.js';
import type { Text } from '../domain/catalogue/document.js';
import { NOWHERE } from '../domain/check/reading.js';
import type { ReasonData, ShownValue } from '../domain/explain/reason.js';
import { asBuilt, overlay, seatAt } from '../domain/judge/configuration.js';
import {
  type Demand,
  type DemandSort,
  LIMIT_NAMES,
  type LimitName,
} from '../domain/kit/demands.js';
import { moneyText } from '../domain/kit/money.js';
import type { KitQuestion, Want } from '../domain/kit/question.js';
import type { Route } from '../domain/kit/route.js';
import { point } from '../domain/quantity/interval.js';
import { type Rational, rational } from '../domain/quantity/rational.js';
import type { SaidReason } from './answer.js';
import type { AskedAvoid, AskedKit } from './asked-kit.js';
import type { DemandView, DroppedView } from './conflict-answer.js';
import type { Speaker } from './speaker.js';

export interface DemandTelling {
  readonly question: KitQuestion;
  /** In its one form, which says where each demand stands. */
  readonly asked: AskedKit;
}

export function demandView(demand: Demand, telling: DemandTelling, speaker: Speaker): DemandView {
  const said = saidOf('made', demand, {}, telling, speaker);
  return { demand: demand.is, at: atOf(demand, telling), ...said };
}

function saidOf(
  as: keyof CodesOf,
  demand: Demand,
  more: ReasonData,
  telling: DemandTelling,
  speaker: Speaker,
): SaidReason {
  const data = { ...dataOf(demand, telling, speaker), ...more };
  return speaker.said(codesOf(demand, telling)[as], data);
}

function codesOf({ is, name }: Demand, { question }: DemandTelling): CodesOf {
  if (is === 'want') return OF_WANTS[question.wants[Number(name)]?.is ?? 'part'];
  return is === 'limit' ? OF_LIMITS[limitNamed(name)] : CODES[is];
}

/** That a demand is made, and that it is taken back. */
interface CodesOf {
  readonly made: string;
  readonly dropped: string;
}

const OF_WANTS: Readonly<Record<Want['is'], CodesOf>> = {
  part: { made: 'demand-part', dropped: 'drop-part' },
  lot: { made: 'demand-lot', dropped: 'drop-lot' },
  load: { made: 'demand-load', dropped: 'drop-load' },
  condition: { made: 'demand-condition', dropped: 'drop-condition' },
};

const OF_LIMITS: Readonly<Record<LimitName, CodesOf>> = {
  cost: { made: 'demand-cost', dropped: 'drop-cost' },
  changedPositions: { made: 'demand-places', dropped: 'drop-places' },
  labourHours: { made: 'demand-hours', dropped: 'drop-hours' },
  leadDays: { made: 'demand-days', dropped: 'drop-days' },
  inStock: { made: 'demand-stock', dropped: 'drop-stock' },
};

const CODES: Readonly<Record<Exclude<DemandSort, 'want' | 'limit'>, CodesOf>> = {
  present: { made: 'demand-present', dropped: 'drop-present' },
  keep: { made: 'demand-keep', dropped: 'drop-keep' },
  'avoid-part': { made: 'demand-avoid-part', dropped: 'drop-avoid-part' },
  'avoid-supplier': { made: 'demand-avoid-supplier', dropped: 'drop-avoid-supplier' },
  'avoid-condition': { made: 'demand-avoid-condition', dropped: 'drop-avoid-condition' },
  torque: { made: 'demand-torque', dropped: 'drop-torque' },
  'ruleset-keep': { made: 'demand-ruleset-keep', dropped: 'drop-ruleset-keep' },
  'ruleset-check': { made: 'demand-ruleset-check', dropped: 'drop-ruleset-check' },
  'ruleset-rest': { made: 'demand-ruleset-rest', dropped: 'drop-ruleset-rest' },
  unknowns: { made: 'demand-unknowns', dropped: 'drop-unknowns' },
};

function limitNamed(name: string): LimitName {
  const known = LIMIT_NAMES.find((one) => one === name);
  if (known === undefined) throw new Error(`no limit ${name}`);
  return known;
}

function dataOf({ is, name }: Demand, telling: DemandTelling, speaker: Speaker): ReasonData {
  const { question } = telling;
  const { ruleset, torque, limits } = question;
  const cite = ruleset === null ? {} : { text: titleOf(ruleset, speaker) };
  switch (is) {
    case 'want':
      return wantData(question.wants[Number(name)], question.vehicle.layout, speaker);
    case 'keep':
      return placeData(name, question, speaker);
    case 'avoid-part':
      return { part: speaker.named({ ...NOWHERE, part: name }) };
    case 'avoid-supplier':
      return { text: name };
    case 'avoid-condition': {
      const position = question.avoid.conditions[Number(name)]?.position ?? null;
      return { part: speaker.named({ ...NOWHERE, position }) };
    }
    case 'limit': {
      const asked = measureOf(name, limits, speaker);
      return asked === null ? {} : { asked };
    }
    case 'torque':
      return torque === null ? {} : { asked: speaker.values.known(torque.interval, 'torque') };
    case 'ruleset-keep':
      return { ...placeData(name, question, speaker), ...cite };
    case 'ruleset-check':
      return { ...cite, ...checkData(name, question, speaker) };
    case 'ruleset-rest':
      return cite;
    case 'present':
    case 'unknowns':
      return {};
  }
}

function titleOf(
  { name, cite }: { readonly name: Text | null; readonly cite: string },
  speaker: Speaker,
): string {
  return name === null ? cite : speaker.text(name);
}

function wantData(want: Want | undefined, layout: Layout, speaker: Speaker): ReasonData {
  switch (want?.is) {
    case 'lot':
      return { text: speaker.lotName(want.lot) };
    case 'load': {
      const { load, atLeast } = want;
      const says = layout.checks.find(({ id }) => id === load)?.text ?? null;
      const asked = speaker.values.share(point(atLeast), 'ratio');
      return { asked, ...(says === null ? {} : { text: speaker.text(says) }) };
    }
    case 'condition':
      return { part: speaker.named({ ...NOWHERE, position: want.position }) };
    case 'part': {
      const { position, hand, parts } = want;
      const [part = null] = parts;
      return parts.length === 1
        ? { part: speaker.named({ ...NOWHERE, position, hand, part }) }
        : { names: parts.map((id) => speaker.partName(id) ?? id) };
    }
    case undefined:
      return {};
  }
}

/** A place with what stands there now: one part, or another one on either side. */
function placeData(position: string, { vehicle, said }: KitQuestion, speaker: Speaker): ReasonData {
  const present = overlay(asBuilt(vehicle), said.seats, said.adapters);
  const there = (['left', 'right'] as const).flatMap((hand) => {
    const occupant = seatAt(present, position, hand)?.occupant;
    return occupant?.is === 'part' ? [occupant.part] : [];
  });
  const [part = null, ...others] = new Set(there);
  if (others.length === 0) return { part: speaker.named({ ...NOWHERE, position, part }) };
  return {
    part: speaker.named({ ...NOWHERE, position }),
    names: [...new Set(there)].map((id) => speaker.partName(id) ?? id),
  };
}

function checkData(name: string, { ruleset, vehicle }: KitQuestion, speaker: Speaker): ReasonData {
  const checks = ruleset?.demands.get(vehicle.layout.id)?.checks ?? [];
  const check = checks.find(({ id }) => id === name);
  if (check === undefined || check.text === null) return {};
  return { because: speaker.text(check.text) };
}

interface Measured {
  readonly cost: number | null;
  readonly changedPositions: number | null;
  readonly labourHours: Rational | null;
  readonly leadDays: number | null;
}

/** A limit, or what a route takes of it; null where that is not known, or no number. */
function measureOf(name: string, measured: Measured, { values, catalogue }: Speaker) {
  const { cost, changedPositions, labourHours, leadDays } = measured;
  const count = (value: number | null): ShownValue | null =>
    value === null ? null : values.interval(point(rational(value)), '1');
  switch (name) {
    case 'cost':
      return cost === null ? null : values.money(moneyText(cost), catalogue.currency);
    case 'changedPositions':
      return count(changedPositions);
    case 'labourHours':
      return labourHours === null ? null : values.interval(point(labourHours), 'time');
    case 'leadDays':
      return count(leadDays);
    default:
      return null;
  }
}

/** Where a demand stands in the question of the answer. */
function atOf({ is, name }: Demand, { question, asked }: DemandTelling): string {
  const avoided = (test: (one: AskedAvoid) => boolean): string =>
    `avoid.${asked.avoid.findIndex(test)}`;
  switch (is) {
    case 'want':
      return `want.${name}`;
    case 'keep':
      return `keep.${question.keep.indexOf(name)}`;
    case 'avoid-part':
      return avoided((one) => 'part' in one && one.part === name);
    case 'avoid-supplier':
      return avoided((one) => 'supplier' in one && one.supplier === name);
    case 'avoid-condition': {
      const conditions = asked.avoid.filter((one) => 'condition' in one);
      const own = conditions[Number(name)];
      return avoided((one) => one === own);
    }
    case 'limit':
      return `limits.${name}`;
    case 'ruleset-keep':
    case 'ruleset-check':
    case 'ruleset-rest':
      return 'ruleset';
    case 'present':
      return 'fitted';
    case 'torque':
    case 'unknowns':
      return is;
  }
}

export function droppedView(
  demand: Demand,
  route: Route | null,
  telling: DemandTelling,
  speaker: Speaker,
): DroppedView {
  const takes =
    demand.is === 'limit' && route !== null ? takenOf(demand.name, route, speaker) : null;
  const said = saidOf('dropped', demand, takes === null ? {} : { takes }, telling, speaker);
  return { demand: demand.is, at: atOf(demand, telling), takes, ...said };
}

/** What a route takes of what was limited; null where a part of it is not known. */
function takenOf(name: string, { basket }: Route, speaker: Speaker): ShownValue | null {
  const { cost, changedPositions, labourHours, leadDays, unpriced, untimed } = basket.totals;
  const measured = {
    cost: unpriced.length === 0 ? cost : null,
    changedPositions,
    labourHours: untimed.length === 0 ? labourHours : null,
    leadDays,
  };
  return measureOf(name, measured, speaker);
}
