/**
 * What a kit question wishes for, and what it will not have, resolved.
 */

import type { Condition } from '../domain/check/check.js';
import type { Avoided, Want } from '../domain/kit/question.js';
import { exactText, rational } from '../domain/quantity/rational.js';
import type { AskedAvoid, AskedCondition, AskedWant } from './asked-kit.js';
import type { KitContext } from './kit-context.js';
import type {
  AvoidInput,
  ConditionInput,
  KitInput,
  WantedLoadInput,
  WantedPartInput,
  WantInput,
} from './kit-input.js';

/** The names of parts that stand in the wishes. */
export function partsWanted({ want, avoid }: Pick<KitInput, 'want' | 'avoid'>): string[] {
  const wanted = want.flatMap((one) => ('part' in one ? namesOf(one) : []));
  return [...wanted, ...avoid.flatMap((one) => ('part' in one ? one.part : []))];
}

function namesOf({ part }: WantedPartInput): readonly string[] {
  return typeof part === 'string' ? [part] : part;
}

export interface Resolved<Domain, Asked> {
  readonly domain: Domain;
  readonly asked: Asked;
}

export function wantsOf(
  inputs: readonly WantInput[],
  context: KitContext,
): Resolved<Want[], AskedWant[]> {
  const found = inputs.flatMap((input, index) => wantOf(input, `want.${index}`, context) ?? []);
  return { domain: found.map(({ domain }) => domain), asked: found.map(({ asked }) => asked) };
}

function wantOf(
  input: WantInput,
  at: string,
  context: KitContext,
): Resolved<Want, AskedWant> | null {
  if ('part' in input) return wantedPart(input, at, context);
  if ('lot' in input) {
    const lot = context.lot(input.lot, `${at}.lot`);
    // Whether it can be used whole is looked at once all else is known.
    const whole = input.whole ?? true;
    return lot === null ? null : { domain: { is: 'lot', lot, whole }, asked: { lot, whole } };
  }
  if ('load' in input) return wantedLoad(input, at, context);
  const condition = context.condition(input, at);
  if (condition === null) return null;
  const { position } = input;
  return { domain: { is: 'condition', position, condition }, asked: askedCondition(input) };
}

/** A decimal above zero: how many times its demand a part is to carry. */
const MARGIN_PATTERN = /^(?!0+(\.0+)?$)[0-9]{1,3}(\.[0-9]{1,4})?$/;

function wantedLoad(
  { load: name, atLeast: text }: WantedLoadInput,
  at: string,
  context: KitContext,
): Resolved<Want, AskedWant> | null {
  const load = context.load(name, `${at}.load`);
  const isMargin = MARGIN_PATTERN.test(text);
  if (!isMargin) context.faults.add(`${at}.atLeast`, 'not-a-margin', {});
  if (load === null || !isMargin) return null;
  const atLeast = rational(text);
  return {
    domain: { is: 'load', load, atLeast },
    asked: { load, atLeast: exactText(atLeast) },
  };
}

function wantedPart(
  input: WantedPartInput,
  at: string,
  context: KitContext,
): Resolved<Want, AskedWant> | null {
  const { position, hand, renew } = input;
  const names = namesOf(input);
  const parts = names.flatMap((name, index) => {
    const place = typeof input.part === 'string' ? `${at}.part` : `${at}.part.${index}`;
    return context.parts.part(name, place)?.id ?? [];
  });
  const isPlaced = position === null || context.hasPosition(position, `${at}.position`);
  if (!isPlaced || parts.length < names.length) return null;
  const place = position === null ? null : context.vehicle.layout.positions.get(position);
  if (hand !== null && place?.isHanded === false) {
    context.faults.add(`${at}.hand`, 'not-handed', { position: place.id });
  }
  const ids = [...new Set(parts)];
  const asked = {
    part: ids,
    ...(position === null ? {} : { position }),
    ...(hand === null ? {} : { hand }),
    renew,
  };
  return { domain: { is: 'part', position, hand, parts: ids, renews: renew }, asked };
}

export function avoidedOf(
  inputs: readonly AvoidInput[],
  context: KitContext,
): Resolved<Avoided, AskedAvoid[]> {
  const parts = new Set<string>();
  const suppliers = new Set<string>();
  const conditions: { readonly position: string; readonly condition: Condition }[] = [];
  const asked = new Map<string, AskedAvoid>();
  for (const [index, input] of inputs.entries()) {
    const at = `avoid.${index}`;
    let one: AskedAvoid;
    if ('part' in input) {
      const part = context.parts.part(input.part, `${at}.part`);
      if (part === null) continue;
      parts.add(part.id);
      one = { part: part.id };
    } else if ('supplier' in input) {
      suppliers.add(input.supplier);
      one = { supplier: input.supplier };
    } else {
      const condition = context.condition(input, at);
      if (condition === null) continue;
      conditions.push({ position: input.position, condition });
      one = askedCondition(input);
    }
    asked.set(JSON.stringify(one), one);
  }
  return { domain: { parts, suppliers, conditions }, asked: [...asked.values()] };
}

/** What has been read as a condition is an object. */
function askedCondition({ position, condition }: ConditionInput): AskedCondition {
  return { position, condition: condition as AskedCondition['condition'] };
}
