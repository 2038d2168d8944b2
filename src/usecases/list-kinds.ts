/**
 * Which kinds of interface are there, built in or declared, and what does each want to be told?
 */

import type { Kind, Parameter, ValueSpec } from '../domain/catalogue/catalogue.js';
import { BUILT_IN_KINDS } from '../domain/kinds/registry.js';
import { cautionsOf } from './cautions.js';
import { withHead, withValuesHead } from './head.js';
import type { Library } from './library.js';
import { declaredCheck } from './list-layouts.js';
import { type ListAnswer, type ListInput, pageOf } from './listing.js';
import { type PartDirectory, partDirectory } from './part-directory.js';
import { oneOf, type ReadValuesInput } from './read-one.js';
import { Speaker } from './speaker.js';
import type { KindAnswer, KindEntry, ParameterView, SpecView } from './vocabulary-view.js';

/** In the order of their ids. */
export function listKinds(library: Library, input: ListInput): ListAnswer<KindEntry> {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const directory = partDirectory(catalogue);
  const { rows, next, total } = pageOf(catalogue.kinds.values(), ({ id }) => [id], input);
  const items = rows.map((kind) => entryOf(kind, directory, speaker));
  return withHead(edition, speaker, { items, next, counts: { total } });
}

export function readKind(library: Library, input: ReadValuesInput): KindAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const kind = oneOf(catalogue.kinds, 'kind', input);
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang, units: input.units });
  return withValuesHead(edition, speaker, {
    ...entryOf(kind, partDirectory(catalogue), speaker),
    standard: kind.standard,
    sides: sidesOf(kind, speaker),
    parameters: [...kind.parameters.values()].map((one) => parameterView(one, speaker)),
    checks: kind.checks.map((check) => declaredCheck(check, speaker)),
    notChecked: kind.notChecked.map((text) => speaker.text(text)),
    cautions: cautionsOf([kind.caution], speaker),
  });
}

function entryOf(kind: Kind, directory: PartDirectory, speaker: Speaker): KindEntry {
  const { id, name, isBuiltIn: builtIn, caution } = kind;
  const parts = directory.countOfKind(id);
  return { id, name: speaker.text(name), builtIn, caution, parts };
}

/** Only built-in kinds say what their sides are; the id of a side is a word too. */
function sidesOf({ id, sides, isBuiltIn }: Kind, speaker: Speaker): KindAnswer['sides'] {
  const builtIn = isBuiltIn ? BUILT_IN_KINDS.find((one) => one.id === id) : undefined;
  return (sides ?? []).map((side) => {
    const name = builtIn?.sideNames?.[side];
    return { side, name: name === undefined ? side.replaceAll('-', ' ') : speaker.text(name) };
  });
}

function parameterView(parameter: Parameter, speaker: Speaker): ParameterView {
  const { id, of: side, isOptional: optional, unless } = parameter;
  return {
    parameter: id,
    ...specView(parameter, speaker),
    side,
    optional,
    unless: [...unless],
  };
}

export function specView(spec: ValueSpec, speaker: Speaker): SpecView {
  const { type, unit, tool, usual } = spec;
  return {
    name: speaker.specName(spec),
    type,
    unit,
    tool,
    toolName: tool === null ? null : speaker.toolName(tool),
    usual: usual === null ? null : speaker.values.usual(usual, spec),
  };
}
