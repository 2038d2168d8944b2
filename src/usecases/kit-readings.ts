/**
 * What a question says was measured: values that stand in place of the recorded ones, for this
 * question alone, as first-hand as a record of the catalogue that somebody measured.
 *
 * A value is of an article, wherever it is named by the question: what is read on the one piece of
 * this vehicle is taken for all pieces of that article.
 */

import type { Part } from '../domain/catalogue/catalogue.js';
import type { ValueRecord } from '../domain/catalogue/document.js';
import { FAULT_LANGUAGE, nearest } from '../domain/catalogue/faults.js';
import { type LaidReading, withReading } from '../domain/catalogue/laid-reading.js';
import { asBuilt, overlay, seatAt } from '../domain/judge/configuration.js';
import type { Said } from '../domain/judge/fit.js';
import type { AskedReading } from './asked-kit.js';
import type { KitContext } from './kit-context.js';
import type { KitInput, MeasuredInput } from './kit-input.js';
import type { Resolved } from './kit-wants.js';
import { faultList } from './quoted-faults.js';

/** The names of parts that were measured. */
export function partsMeasured({ measured }: Pick<KitInput, 'measured'>): string[] {
  return measured.flatMap(({ on }) => on.part ?? []);
}

/** The measured parts as they then are, by id. */
export function readingsOf(
  inputs: readonly MeasuredInput[],
  said: Said,
  context: KitContext,
): Resolved<Map<string, Part>, AskedReading[]> {
  const laid = new Map<string, Part>();
  const asked: AskedReading[] = [];
  for (const [index, input] of inputs.entries()) {
    const { on, value, tool } = input;
    const at = `measured.${index}`;
    if (on.fact !== null) {
      if (typeof value !== 'string') context.faults.add(at, 'reading-of-nothing', {});
      continue;
    }
    const named = partOf(input, at, said, context);
    const { parameter, interface: face } = on;
    if (named === null || parameter === null) {
      if (parameter === null) context.faults.add(at, 'reading-of-nothing', {});
      continue;
    }
    const part = laid.get(named.id) ?? named;
    if (face !== null && !hasFace(part, face, at, context)) continue;
    const record = recordOf(value, tool);
    const read = laidOver(part, { interface: face, parameter, record }, at, context);
    if (read === null) continue;
    laid.set(part.id, read);
    const place = { part: part.id, ...(face === null ? {} : { interface: face }), parameter };
    const own = typeof value === 'string' ? value : [...value];
    asked.push({ on: place, value: own, ...(tool === null ? {} : { tool }) });
  }
  return { domain: laid, asked };
}

function recordOf(value: MeasuredInput['value'], tool: string | null): ValueRecord {
  return tool === null ? value : { is: value, tool };
}

/** The part that was measured: the one that is named, else the one that stands at the place. */
function partOf(
  { on: { part, position: id, hand } }: MeasuredInput,
  at: string,
  said: Said,
  context: KitContext,
): Part | null {
  const { parts, vehicle, catalogue, faults } = context;
  if (part !== null) return parts.part(part, `${at}.on.part`);
  if (id === null) {
    faults.add(at, 'reading-of-nothing', {});
    return null;
  }
  if (!context.hasPosition(id, `${at}.on.position`)) return null;
  const present = overlay(asBuilt(vehicle), said.seats);
  const hands = hand === null ? (['left', 'right'] as const) : [hand];
  const found = hands.map((one) => seatAt(present, id, one)?.occupant);
  const ids = new Set(found.map((one) => (one?.is === 'part' ? one.part : null)));
  const [only = null, ...others] = ids;
  if (others.length > 0) faults.add(`${at}.on`, 'which-hand', { position: id });
  else if (only === null) faults.add(`${at}.on.position`, 'no-part-there', { position: id });
  return others.length > 0 || only === null ? null : (catalogue.parts.get(only) ?? null);
}

function hasFace({ id, faces }: Part, name: string, at: string, { faults }: KitContext): boolean {
  const face = faces.get(name);
  if (face !== undefined && face.kind !== null) return true;
  const meant = nearest(name, faces.keys());
  faults.add(`${at}.on.interface`, 'unknown-interface', { part: id, name, meant });
  return false;
}

function laidOver(
  part: Part,
  reading: LaidReading,
  at: string,
  { catalogue, faults }: KitContext,
): Part | null {
  const list = faultList();
  const read = withReading(part, reading, catalogue, list);
  for (const { code: because, text } of list.faults) {
    faults.add(`${at}.value`, 'reading-at-fault', { because, text, lang: FAULT_LANGUAGE });
  }
  // A name that no value can have is passed over by whoever reads records.
  if (read === null && list.isClean) faults.add(at, 'reading-of-nothing', {});
  return read;
}
