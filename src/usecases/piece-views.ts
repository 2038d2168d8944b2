/**
 * What is said of a piece on the bench, as answers show it: findings, what is left out, and what
 * to find out next.
 */

import type { Part, Value, ValueSpec } from '../domain/catalogue/catalogue.js';
import { type Hand, NOWHERE } from '../domain/check/reading.js';
import type { Outcome as State } from '../domain/check/state.js';
import type { NamedValue, ShownValue } from '../domain/explain/reason.js';
import { sayHand, sayNoSuchFace } from '../domain/explain/words.js';
import { type Finding, stateOf, type ToldAt } from '../domain/identify/finding.js';
import type { Outcome } from '../domain/identify/outcomes.js';
import type { AskAt, PieceAsk } from '../domain/identify/reading-ask.js';
import { type Interval, isPoint } from '../domain/quantity/interval.js';
import { exactText, inProportion, ONE } from '../domain/quantity/rational.js';
import type { SaidReason } from './answer.js';
import { NONE, type PieceOn } from './read-piece.js';
import { valueView } from './record-views.js';
import type { Speaker } from './speaker.js';

/** What a part's record says of one thing that was told. */
export interface FindingView extends SaidReason {
  field: ToldAt['field'];
  index: number | null;
  state: State;
}

export interface PieceOutcomeView {
  /** As the question takes it; null for values that no exact text says. */
  value: string | null;
  /** It turns out to have no such face: `none` is told of the face, without the parameter. */
  noFace: boolean;
  /** All values that come out so; null where it is no number. */
  range: ShownValue | null;
  label: string;
  count: number;
  /** The first parts that are left then. */
  parts: string[];
}

export interface PieceAskView extends SaidReason {
  field: AskAt['field'];
  /** Where to read it, as the question takes it; null where it is no reading. */
  on: PieceOn | null;
  tool: string | null;
  toolName: string | null;
  needed: ShownValue | null;
  values: PieceOutcomeView[];
  /** How many outcomes there are beside those. */
  more: number;
}

/** Of the outcomes of one thing, so many are told, and so many parts of each by name. */
const MOST_OUTCOMES = 50;
const MOST_NAMED = 10;

export function findingView(finding: Finding, { id }: Part, speaker: Speaker): FindingView {
  const { field, index } = finding.at;
  return { field, index, state: stateOf(finding), ...saidFinding(finding, id, speaker) };
}

function saidFinding(finding: Finding, part: string, speaker: Speaker): SaidReason {
  const { code } = finding;
  switch (finding.about) {
    case 'piece':
      return speaker.said(code, {});
    case 'number':
      return speaker.said(code, { text: finding.number });
    case 'face': {
      const { face, kind } = finding;
      const named = speaker.named({ ...NOWHERE, part, interface: face });
      return speaker.said(code, {
        part: { ...named, kindName: named.kindName ?? kindName(kind, speaker) },
      });
    }
    case 'value': {
      const { face, parameter, both } = finding;
      const right = speaker.namedValue(
        { ...NOWHERE, part, interface: face, parameter },
        null,
        null,
      );
      const left: NamedValue = { ...right, part: null, partName: null };
      if (both === null) return speaker.said(code, { left });
      const [measured, recorded] = [both.measured, both.recorded].map((value) => {
        return shownValue(value, speaker);
      });
      return speaker.said(code, {
        left: { ...left, value: measured ?? null },
        right: { ...right, value: recorded ?? null },
      });
    }
  }
}

/** A value that follows from recorded ones has no text of its own. */
function shownValue(value: Value, speaker: Speaker): ShownValue {
  if (value.text !== '' || value.form !== 'number') return valueView(value, speaker).value;
  return speaker.values.known(value.interval, value.spec.dimension);
}

function kindName(id: string | null, speaker: Speaker): string | null {
  const kind = id === null ? undefined : speaker.catalogue.kinds.get(id);
  return kind === undefined ? null : speaker.text(kind.name);
}

export function pieceAskView(ask: PieceAsk, speaker: Speaker): PieceAskView {
  const { at, tool, needed, outcomes } = ask;
  const toolName = tool === null ? null : speaker.toolName(tool);
  const shown = outcomes.slice(0, MOST_OUTCOMES);
  const within =
    needed === null || at.field !== 'measured'
      ? null
      : speaker.values.within(needed, at.spec.dimension);
  return {
    field: at.field,
    on: onOf(at),
    tool,
    toolName,
    needed: within,
    values: shown.map((outcome) => outcomeView(outcome, at, speaker)),
    more: outcomes.length - shown.length,
    ...saidAsk(at, { needed: within, tool: toolName }, speaker),
  };
}

function onOf(at: AskAt): PieceOn | null {
  if (at.field !== 'measured') return null;
  const { face, spec } = at;
  const own = face ?? { interface: null, kind: null, side: null, which: null };
  const which = own.interface === null ? own.which : null;
  return { ...own, which, parameter: spec.id };
}

interface How {
  readonly needed: ShownValue | null;
  readonly tool: string | null;
}

function saidAsk(at: AskAt, { needed, tool }: How, speaker: Speaker): SaidReason {
  switch (at.field) {
    case 'role':
      return speaker.said('tell-role', {});
    case 'hand':
      return speaker.said('tell-hand', {});
    case 'number':
      return speaker.said('read-number', {});
    case 'measured': {
      const { face, spec } = at;
      const left: NamedValue = {
        ...speaker.named({ ...NOWHERE, interface: face?.interface ?? null }),
        kindName: kindName(face?.kind ?? null, speaker),
        parameter: spec.id,
        parameterName: speaker.specName(spec),
        value: null,
      };
      const how = {
        ...(needed === null ? {} : { needed }),
        ...(tool === null ? {} : { tool }),
      };
      return speaker.said(isMeasured(spec) ? 'measure-next' : 'find-next', { left, ...how });
    }
  }
}

function isMeasured({ type }: ValueSpec): boolean {
  return type === 'measured';
}

function outcomeView(outcome: Outcome, at: AskAt, speaker: Speaker): PieceOutcomeView {
  const { word, interval, parts } = outcome;
  const common = { count: parts.length, parts: parts.slice(0, MOST_NAMED).map(({ id }) => id) };
  if (interval === null || at.field !== 'measured') {
    const label = labelOf(word, at, speaker);
    return { value: word ?? NONE, noFace: word === null, range: null, label, ...common };
  }
  const range = speaker.values.interval(interval, at.spec.dimension);
  const value = exactValue(interval, at.spec, range.unit);
  return { value, noFace: false, range, label: range.text, ...common };
}

function labelOf(word: string | null, { field }: AskAt, speaker: Speaker): string {
  if (word === null) return sayNoSuchFace(speaker.lang);
  if (field === 'hand') return sayHand(word as Hand, speaker.lang);
  const role = field === 'role' ? speaker.catalogue.roles.get(word) : undefined;
  return role === undefined ? word : speaker.text(role.name);
}

/** What a question reads as just this value: a measured one is never exact. */
function exactValue(interval: Interval, { type }: ValueSpec, unit: string): string | null {
  const { low } = interval;
  if (low === null || !isPoint(interval) || type === 'measured') return null;
  if (type !== 'ratio') return `${exactText(low)} ${unit}`.trim();
  const [above, below] = inProportion([low, ONE]);
  return below === 1n ? String(above) : `${String(above)}/${String(below)}`;
}
