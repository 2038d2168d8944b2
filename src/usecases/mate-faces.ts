/**
 * Do these two faces meet? Of recorded parts, or written out in the question.
 */

import type { Catalogue, Face, Part } from '../domain/catalogue/catalogue.js';
import { compileFace } from '../domain/catalogue/compile-part.js';
import type { InterfaceRecord } from '../domain/catalogue/document.js';
import { FAULT_LANGUAGE, FaultList, nearest } from '../domain/catalogue/faults.js';
import { readInterface } from '../domain/catalogue/read-interface.js';
import type { Use } from '../domain/check/coupling.js';
import { OUTCOMES, type Outcome } from '../domain/check/state.js';
import { partOfQuestion } from '../domain/explain/words.js';
import type { CompiledIndex } from '../domain/index/compiled-index.js';
import { judgeMeeting, type MateEnd, type Meeting } from '../domain/judge/mate.js';
import type { MateAnswer } from './answer.js';
import { measureViews, notCheckedViews } from './asides.js';
import { AskedParts, type NamingInput } from './asked-parts.js';
import { cautionViews } from './cautions.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { Library } from './library.js';
import type { ValuesInput } from './question.js';
import { Speaker } from './speaker.js';
import { matingView } from './views.js';

/** A recorded part with one of its faces (any, where none is named), or a face written out. */
export type MateEndInput =
  | { readonly part: string; readonly interface: string | null }
  | { readonly inline: unknown };

export interface MateInput extends NamingInput, ValuesInput {
  readonly a: MateEndInput;
  readonly b: MateEndInput;
  readonly adapters: readonly string[];
  readonly use: Use | null;
}

export function mateFaces(library: Library, input: MateInput): MateAnswer {
  const edition = library.edition(input.edition);
  const ends = [input.a, input.b].flatMap((end) => ('part' in end ? [end.part] : []));
  const faults = new Faults();
  const names = [...ends, ...input.adapters];
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const { catalogue } = parts;
  const a = endsOf(parts, input.a, 'a', faults);
  const b = endsOf(parts, input.b, 'b', faults);
  const adapters = input.adapters.map((name, index) => parts.adapter(name, `adapters.${index}`));
  faults.endIfAny();
  const { use } = input;
  const between = adapters.flatMap((part) => part?.id ?? []);
  const pairs = likeliest(a, b, edition.index);
  const meeting = bestOf(
    pairs.map(([x, y]) => judgeMeeting(catalogue, { a: x, b: y, adapters: between, use })),
  );
  const { mating, judgement } = meeting;
  const inquired = judgement.configuration.catalogue;
  const speaker = new Speaker({
    catalogue: inquired,
    layout: null,
    lang: input.lang,
    units: input.units,
  });
  const { outcome } = judgement;
  const codes = {
    holds: 'faces-meet',
    open: 'faces-may-meet',
    fails: 'faces-do-not-meet',
  } as const;
  return withValuesHead(edition, speaker, {
    state: outcome,
    summary: speaker.said(codes[outcome], {}),
    offers: parts.offers,
    named: parts.namedViews(speaker),
    mating: matingView(mating, speaker, null),
    measure: measureViews([judgement], speaker),
    notChecked: notCheckedViews(judgement, speaker),
    cautions: cautionViews([judgement], speaker),
  });
}

/** The faces that may be meant: the one that is named, or each face of the part. */
function endsOf(
  parts: AskedParts,
  input: MateEndInput,
  at: string,
  faults: Faults,
): readonly MateEnd[] {
  const { catalogue } = parts;
  if ('inline' in input) return inlineEnd(catalogue, input.inline, at, faults);
  const part = parts.part(input.part, at);
  if (part === null) return [];
  if (input.interface === null) {
    const faces = [...part.faces.values()].filter(({ isAbsent }) => !isAbsent);
    if (faces.length === 0) {
      faults.add(at, 'no-interface-recorded', { part: part.id });
    }
    return faces.map(({ name }) => ({ part, interface: name }));
  }
  // A face that its role declares and nobody recorded is open, and no mistake of the question.
  if (!part.faces.has(input.interface) && !isDeclared(catalogue, part, input.interface)) {
    const meant = nearest(input.interface, part.faces.keys());
    faults.add(`${at}.face`, 'unknown-interface', { part: part.id, name: input.interface, meant });
    return [];
  }
  return [{ part, interface: input.interface }];
}

function isDeclared({ roles }: Catalogue, part: Part, face: string): boolean {
  return part.roles.some((role) => roles.get(role)?.faces?.has(face) === true);
}

/** A face of a question, in the form of the catalogue document. */
function inlineEnd(
  catalogue: Catalogue,
  raw: unknown,
  at: string,
  faults: Faults,
): readonly MateEnd[] {
  const list = new FaultList();
  const record: InterfaceRecord | null = readInterface(raw, `/${at}/interface`, list);
  const kindIds = new Set(catalogue.kinds.keys());
  const { kinds, evidence } = catalogue;
  const names = { kinds, kindIds };
  const face =
    record === null ? null : compileFace('face', record, names, evidence, `/${at}/interface`, list);
  for (const { pointer, code: because, text } of list.faults) {
    faults.add(pointer, 'face-at-fault', { because, text, lang: FAULT_LANGUAGE });
  }
  return face === null ? [] : [{ part: inlinePart(face, at, catalogue), interface: face.name }];
}

function inlinePart(face: Face, at: string, { evidence }: Catalogue): Part {
  return {
    // No id of a catalogue has brackets, so this part is nobody else's.
    id: `(${at})`,
    roles: ['(question)'],
    name: partOfQuestion(at),
    maker: null,
    numbers: [],
    built: [null, null],
    supersededBy: null,
    hand: null,
    spans: null,
    faces: new Map([[face.name, face]]),
    values: new Map(),
    evidence,
  };
}

type Pair = readonly [MateEnd, MateEnd];

/** The pairs of faces that come out best by the index; all of them where it knows neither. */
function likeliest(a: readonly MateEnd[], b: readonly MateEnd[], index: CompiledIndex): Pair[] {
  const ranked = a.flatMap((x) =>
    b.map((y) => ({ pair: [x, y] as const, rank: OUTCOMES.indexOf(outcomeOf(x, y, index)) })),
  );
  const best = Math.min(...ranked.map(({ rank }) => rank));
  const kept = ranked.filter(({ rank }) => rank === best).map(({ pair }) => pair);
  const alike = kept.filter(([x, y]) => kindOf(x) === kindOf(y));
  return alike.length > 0 ? alike : kept;
}

/** What the index knows of two faces; a face that a question writes out is in no index. */
function outcomeOf(x: MateEnd, y: MateEnd, index: CompiledIndex): Outcome {
  const a = index.classOf(x.part.id, x.interface);
  const b = index.classOf(y.part.id, y.interface);
  return a === null || b === null ? 'open' : index.meets(a, b);
}

function bestOf(meetings: readonly Meeting[]): Meeting {
  const [first, ...others] = meetings;
  if (first === undefined) throw new Error('a question without two faces has a fault');
  return others.reduce((best, one) => (rankOf(one) < rankOf(best) ? one : best), first);
}

function rankOf({ judgement }: Meeting): number {
  return OUTCOMES.indexOf(judgement.outcome);
}

function kindOf({ part, interface: face }: MateEnd): string | null {
  return part.faces.get(face)?.kind?.id ?? null;
}
