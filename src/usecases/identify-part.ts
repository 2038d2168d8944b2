/**
 * Which part is this piece on the bench: by what was counted, measured and read off it; and what to
 * find out next? What nobody recorded leaves no part out, and no match proves an identity.
 */

import type { Vehicle } from '../domain/catalogue/catalogue.js';
import { sayHand } from '../domain/explain/words.js';
import type { ToldAt } from '../domain/identify/finding.js';
import { type ToldPiece, type WeighedPart, weighed } from '../domain/identify/piece.js';
import { asksFor } from '../domain/identify/piece-ask.js';
import type { CautionView, SaidReason, ValuesHead } from './answer.js';
import { usualCautions } from './cautions.js';
import { Faults } from './faults.js';
import { withValuesHead } from './head.js';
import type { Edition, Library } from './library.js';
import { partEntry } from './list-parts.js';
import {
  compareKeys,
  type ListAnswer,
  type ListInput,
  pageOfSorted,
  type SortKey,
} from './listing.js';
import { partDirectory } from './part-directory.js';
import type { PartEntry } from './part-view.js';
import { type FindingView, findingView, type PieceAskView, pieceAskView } from './piece-views.js';
import { type ValuesInput, vehicleOf } from './question.js';
import { type PieceInput, readPiece } from './read-piece.js';
import { Speaker } from './speaker.js';

export interface IdentifyPartInput extends ListInput, ValuesInput, PieceInput {
  /** Id of the vehicle that it came off; null where that is not known. */
  readonly vehicle: string | null;
  /** Whether the parts that are left out are named. */
  readonly nameExcluded: boolean;
}

export interface PieceCandidate extends PartEntry {
  /** How much of what was told its record says, and how much of it it does not. */
  agreeing: number;
  open: number;
  /** How much of it cannot be so: nothing, of a part that it can be. */
  failing: number;
  why: FindingView[];
}

/** The parts that one thing leaves out; each where it is first left out. */
export interface ExcludedParts {
  field: ToldAt['field'];
  index: number | null;
  /** What was told. */
  name: string;
  count: number;
  /** The first of them; none where they were not asked for. */
  parts: ExcludedPart[];
}

export interface ExcludedPart extends SaidReason {
  id: string;
  name: string;
}

export interface IdentifyPartAnswer extends ValuesHead, ListAnswer<PieceCandidate> {
  summary: SaidReason;
  /** Where none is left, those that come nearest. */
  nearest: PieceCandidate[];
  excluded: ExcludedParts[];
  ask: PieceAskView[];
  warnings: SaidReason[];
  cautions: CautionView[];
}

const MOST_NEAR = 5;

/** So many of the parts that one thing leaves out are named. */
const MOST_EXCLUDED = 50;

export function identifyPart(library: Library, input: IdentifyPartInput): IdentifyPartAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const faults = new Faults();
  const vehicle = vehicleIn(edition, input, faults);
  const told = readPiece(input, vehicle, { catalogue, faults });
  faults.endIfAny();
  const directory = partDirectory(catalogue);
  const all = directory.all.map((part) => weighed(part, told, catalogue));
  const left = all.filter(({ failing }) => failing.length === 0).sort(likelierFirst);
  const { lang, units } = input;
  const speaker = new Speaker({ catalogue, layout: null, lang, units });
  const { rows, next, total } = pageOfSorted(left, keyOf, input);
  const near = total > 0 ? [] : [...all].sort(nearerFirst).slice(0, MOST_NEAR);
  const asks = asksFor(
    left.map(({ part }) => part),
    { told, catalogue, numbers: (text) => directory.likeNumber(text) },
  );
  return withValuesHead(edition, speaker, {
    summary: summaryOf(total, speaker),
    items: rows.map((one) => candidateView(one, speaker)),
    next,
    counts: { total },
    nearest: near.map((one) => candidateView(one, speaker)),
    excluded: excludedViews(all, input, speaker),
    ask: asks.map((ask) => pieceAskView(ask, speaker)),
    warnings: warningsOf(told, speaker),
    cautions: usualCautions(['general'], speaker),
  });
}

function vehicleIn(
  edition: Edition,
  { vehicle, lang }: IdentifyPartInput,
  faults: Faults,
): Vehicle | null {
  return vehicle === null ? null : vehicleOf(edition, { vehicle, facts: {}, lang }, faults);
}

/** More agrees than of any part that follows; then what no other part took the place of. */
function keyOf({ part, agreeing }: WeighedPart): SortKey {
  const fewer = String(MOST_TOLD - agreeing).padStart(String(MOST_TOLD).length, '0');
  return [fewer, part.supersededBy === null ? '0' : '1', part.id];
}

/** No question tells as much. */
const MOST_TOLD = 100_000;

function likelierFirst(a: WeighedPart, b: WeighedPart): number {
  return compareKeys(keyOf(a), keyOf(b));
}

function nearerFirst(a: WeighedPart, b: WeighedPart): number {
  return a.failing.length - b.failing.length || likelierFirst(a, b);
}

function summaryOf(count: number, speaker: Speaker): SaidReason {
  if (count === 0) return speaker.said('no-part-left', {});
  if (count === 1) return speaker.said('one-part-left', {});
  return speaker.said('several-parts-left', { count });
}

function candidateView(
  { part, findings, agreeing, failing }: WeighedPart,
  speaker: Speaker,
): PieceCandidate {
  const why = findings.map((one) => findingView(one, part, speaker));
  const open = findings.length - agreeing - failing.length;
  return { ...partEntry(part, speaker), agreeing, open, failing: failing.length, why };
}

function excludedViews(
  all: readonly WeighedPart[],
  input: IdentifyPartInput,
  speaker: Speaker,
): ExcludedParts[] {
  const found = new Map<string, ExcludedParts>();
  for (const { part, failing } of all) {
    const [first] = failing;
    if (first === undefined) continue;
    const { field, index } = first.at;
    const place = `${field}.${index ?? ''}`;
    const name = nameOf(first.at, input, speaker);
    const known = found.get(place) ?? { field, index, name, count: 0, parts: [] };
    known.count += 1;
    if (input.nameExcluded && known.parts.length < MOST_EXCLUDED) {
      const { code, data, text } = findingView(first, part, speaker);
      known.parts.push({ id: part.id, name: speaker.text(part.name), code, data, text });
    }
    found.set(place, known);
  }
  return ORDER.flatMap((field) => {
    const own = [...found.values()].filter((one) => one.field === field);
    return own.sort((a, b) => (a.index ?? 0) - (b.index ?? 0));
  });
}

/** In which things are told. */
const ORDER: readonly ToldAt['field'][] = ['role', 'hand', 'vehicle', 'numbers', 'measured'];

function nameOf({ field, index }: ToldAt, input: IdentifyPartInput, speaker: Speaker): string {
  const { role, hand, vehicle, numbers, measured } = input;
  switch (field) {
    case 'role': {
      const known = speaker.catalogue.roles.get(role ?? '');
      return known === undefined ? '' : speaker.text(known.name);
    }
    case 'hand':
      return hand === null ? '' : sayHand(hand, speaker.lang);
    case 'vehicle':
      return vehicle ?? '';
    case 'numbers':
      return numbers[index ?? 0] ?? '';
    case 'measured': {
      const { interface: face, kind, which, parameter } = measured[index ?? 0]?.on ?? {};
      return [face ?? kind, which, parameter].filter((one) => one != null).join('.');
    }
  }
}

function warningsOf({ numbers }: ToldPiece, speaker: Speaker): SaidReason[] {
  const unknown = numbers.filter(({ parts }) => parts.size === 0);
  return [
    speaker.said('match-is-no-proof', {}),
    ...unknown.map(({ text }) => speaker.said('number-of-no-part', { text })),
  ];
}
