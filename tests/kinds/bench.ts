/**
 * Lets two faces meet as a catalogue and a question would: the faces are parts of a small
 * document, which is compiled with the built-in kinds and judged by the real judge.
 */

import type { Catalogue } from '../../src/domain/catalogue/catalogue.js';
import { compileDocument } from '../../src/domain/catalogue/compile.js';
import type { InterfaceRecord, Text } from '../../src/domain/catalogue/document.js';
import type { CheckResult } from '../../src/domain/check/result.js';
import { isUnrecorded } from '../../src/domain/check/result.js';
import type { Outcome } from '../../src/domain/check/state.js';
import { judgeMeeting } from '../../src/domain/judge/mate.js';
import { measureFor } from '../../src/domain/judge/measure.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';

export interface Meeting {
  readonly outcome: Outcome;
  readonly code: string;
  /** The checks that apply, by id. */
  readonly checks: ReadonlyMap<string, CheckResult>;
  /** Which alternatives and sizes were picked for all checks together, as `part.parameter=pick`. */
  readonly picks: readonly string[];
  /** What the answer says was not compared, the kind's own list left out. */
  readonly silent: readonly Text[];
  /** What a person is asked to measure or look up, as `part.parameter`. */
  readonly asked: readonly string[];
  /** Warnings of the document, as `code at pointer`. */
  readonly warnings: readonly string[];
}

/** Judges two faces. @throws Error with the faults where one of them cannot be recorded so. */
export function meet(left: InterfaceRecord, right: InterfaceRecord): Meeting {
  const { catalogue, warnings } = catalogueOf(left, right);
  const [a, b] = [catalogue.parts.get('left'), catalogue.parts.get('right')];
  if (a === undefined || b === undefined) throw new Error('both parts are in the catalogue');
  const { mating, judgement } = judgeMeeting(catalogue, {
    a: { part: a, interface: 'face' },
    b: { part: b, interface: 'face' },
  });
  const { state, code, joints } = mating;
  const [joint] = joints;
  if (joint === undefined || state === 'given') throw new Error('one joint is judged');
  const known = joint.kind?.notChecked ?? [];
  return {
    outcome: state,
    code,
    checks: new Map(joint.checks.map((result) => [result.check.id, result])),
    picks: judgement.constraints.flatMap((one) => {
      if (one.form !== 'choice') return [];
      return one.choices.flatMap(({ address, pick }) => {
        const { part, interface: face, parameter } = address;
        return pick === null ? [] : [`${part}.${parameter ?? face}=${pick}`];
      });
    }),
    silent: joint.notChecked.filter((text) => !known.includes(text)),
    asked: measureFor(judgement).map(({ address }) => `${address.part}.${address.parameter}`),
    warnings,
  };
}

/** A catalogue of two parts, "left" and "right", each with one face. */
export function catalogueOf(
  left: InterfaceRecord,
  right: InterfaceRecord,
): { catalogue: Catalogue; warnings: readonly string[] } {
  const part = (id: string, face: InterfaceRecord) => {
    return { id, name: id, roles: ['piece'], interfaces: { face } };
  };
  const document = {
    catalogue: 1,
    lang: 'en',
    evidence: { basis: 'measured' },
    roles: [{ id: 'piece', name: 'Piece', faces: ['face'] }],
    parts: [part('left', left), part('right', right)],
  };
  // The kinds of these faces alone: thousands of meetings are tried, and no other kind matters.
  const kinds = BUILT_IN_KINDS.filter(({ id }) => id === left.kind || id === right.kind);
  const { catalogue, faults, warnings } = compileDocument(document, kinds);
  if (catalogue === null) {
    throw new Error(faults.map(({ pointer, text }) => `${pointer}: ${text}`).join('\n'));
  }
  return { catalogue, warnings: warnings.map(({ code, pointer }) => `${code} at ${pointer}`) };
}

/** A check as a fixture writes it: `holds`, or the outcome and its reason code. */
export function verdictOf({ outcome, code }: CheckResult): string {
  return outcome === 'holds' ? 'holds' : `${outcome} ${code}`;
}

/** The parameters that a check says nobody recorded, as `part.parameter`. */
export function unrecordedIn(result: CheckResult): string[] {
  return result.readings.flatMap((reading) => {
    if (!isUnrecorded(reading) || !('address' in reading)) return [];
    return [`${reading.address.part}.${reading.address.parameter}`];
  });
}
