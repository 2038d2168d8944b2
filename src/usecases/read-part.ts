/**
 * What is recorded of this part, and what is not?
 */

import type { Catalogue, Face, Kind, Part, Values } from '../domain/catalogue/catalogue.js';
import { cautionsOf } from './cautions.js';
import { withValuesHead } from './head.js';
import type { Library } from './library.js';
import { partEntry } from './list-parts.js';
import type { AlternativeView, InterfaceView, PartAnswer } from './part-view.js';
import { oneOf, type ReadValuesInput } from './read-one.js';
import { evidenceView, type RecordedValueView, valueView } from './record-views.js';
import { Speaker } from './speaker.js';

export function readPart(library: Library, input: ReadValuesInput): PartAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const part = oneOf(catalogue.parts, 'part', input);
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang, units: input.units });
  const faces = [...part.faces.values()];
  const groups = [
    ...part.roles.map((role) => catalogue.roles.get(role)?.caution ?? null),
    ...faces.map(({ kind }) => kind?.caution ?? null),
  ];
  return withValuesHead(edition, speaker, {
    ...partEntry(part, speaker),
    interfaces: faces.map((face) => interfaceView(face, speaker)),
    values: valueViews(part.values, speaker),
    notRecorded: missingOf(part, catalogue),
    evidence: evidenceView(part.evidence),
    cautions: cautionsOf(groups, speaker),
  });
}

function interfaceView(face: Face, speaker: Speaker): InterfaceView {
  const { name, kind, side, isOptional: optional, isAbsent: absent, alternatives } = face;
  return {
    interface: name,
    kind: kind?.id ?? null,
    kindName: kind === null ? null : speaker.text(kind.name),
    side,
    optional,
    absent,
    alternatives: alternatives.map((values) => alternativeView(values, face, speaker)),
    evidence: evidenceView(face.evidence),
  };
}

function alternativeView(values: Values, { kind, side }: Face, speaker: Speaker): AlternativeView {
  return {
    parameters: valueViews(values, speaker),
    notRecorded: kind === null ? [] : missingFrom(values, kind, side),
  };
}

/** What is optional may be left out, and so may that for which others do. */
function missingFrom(values: Values, { parameters }: Kind, side: string | null): string[] {
  const missing = [...parameters.values()].filter(({ id, of, isOptional, unless }) => {
    const isHere = of === null || of === side;
    const isSaid = unless.length > 0 && unless.every((other) => values.has(other));
    return isHere && !isOptional && !isSaid && !values.has(id);
  });
  return missing.map(({ id }) => id);
}

function valueViews(values: Values, speaker: Speaker): RecordedValueView[] {
  return [...values.values()].map((value) => valueView(value, speaker));
}

function missingOf(part: Part, { roles }: Catalogue): PartAnswer['notRecorded'] {
  const own = part.roles.flatMap((role) => roles.get(role) ?? []);
  const faces = own.flatMap((role) => [...(role.faces ?? [])]);
  const values = own.flatMap((role) => [...role.values.values()]);
  const recorded = values.filter(({ term }) => term === null).map(({ id }) => id);
  return {
    interfaces: [...new Set(faces)].filter((face) => !part.faces.has(face)),
    values: [...new Set(recorded)].filter((id) => !part.values.has(id)),
  };
}
