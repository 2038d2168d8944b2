/**
 * What to count, read off or measure next on a piece, so that fewer parts are left that it can be:
 * each thing that tells them apart, with the tool that does, how finely to read it, and what each
 * outcome leaves. To tell an outcome leaves just these parts.
 *
 * Left out: ratings, which nobody measures on a bench; lists and points, which are no single thing
 * to read.
 */

import type { Catalogue, Face, Part, Value, ValueSpec } from '../catalogue/catalogue.js';
import type { NumberOfPart } from '../catalogue/part-number.js';
import { numberKey } from '../catalogue/part-number.js';
import type { Hand } from '../check/reading.js';
import { formOf } from './compared.js';
import { stateOf } from './finding.js';
import { type Has, meanLeft, type Outcome, outcomesOf, tells } from './outcomes.js';
import type { ToldPiece } from './piece.js';
import { canHave, faceFindings, type ToldFace, valuesOn } from './piece-faces.js';
import { recordedOf, specOf } from './piece-value.js';
import { numberCodeOf, toldNumber } from './read-number.js';
import { type AskAt, itemsIn, measuredAsk, type PieceAsk, Specs } from './reading-ask.js';

/** With more parts than this, or more values of theirs, none is asked for: first the role. */
const MOST_COMPARED = 5000;
const MOST_VALUES = 100_000;

/** With more parts than this no number is asked for: each of them has another one. */
const MOST_NUMBERED = 100;

/** No more than these are told. */
const MOST_ASKS = 5;

type Known = Pick<Catalogue, 'roles' | 'couplings'>;

interface Context {
  readonly told: ToldPiece;
  readonly catalogue: Known;
  readonly numbers: (text: string) => readonly NumberOfPart[];
}

/** The best first: by how few parts are left on average, then by how easily it is found out. */
export function asksFor(parts: readonly Part[], context: Context): PieceAsk[] {
  const { told } = context;
  const all = [
    ...(told.role === null ? [roleAsk(parts)] : []),
    ...(told.hand === null ? [handAsk(parts)] : []),
    ...(told.numbers.length === 0 ? [numberAsk(parts, context)] : []),
    ...readingAsks(parts, context),
  ];
  const telling = all.filter(({ outcomes }) => tells(outcomes, parts.length));
  const ranked = telling.map((ask) => ({ ask, mean: meanLeft(ask.outcomes) }));
  ranked.sort((a, b) => a.mean - b.mean || effort(a.ask) - effort(b.ask));
  return ranked.slice(0, MOST_ASKS).map(({ ask }) => ask);
}

/** To say what one sees or count it takes less than to measure it. */
function effort({ at, tool, needed }: PieceAsk): number {
  if (at.field !== 'measured') return 0;
  if (tool === null) return 3;
  return needed === null ? 1 : 2;
}

function roleAsk(parts: readonly Part[]): PieceAsk {
  return worded({ field: 'role' }, parts, ({ roles }) => roles);
}

const HANDS: readonly Hand[] = ['left', 'right'];

/** A part of which no hand is recorded may be of either. */
function handAsk(parts: readonly Part[]): PieceAsk {
  const isTold = parts.some(({ hand }) => hand !== null);
  return worded({ field: 'hand' }, isTold ? parts : [], ({ hand }) =>
    hand === null ? HANDS : [hand],
  );
}

function worded(
  at: AskAt,
  parts: readonly Part[],
  read: (part: Part) => readonly string[],
): PieceAsk {
  const has = parts.map((part): Has => {
    const items = read(part).map((code) => ({ interval: null, code }));
    return { part, items, isOpen: false, face: 'there' };
  });
  return { at, tool: null, needed: null, outcomes: outcomesOf(has, null).outcomes };
}

/** Each number that one of the parts records, and the parts that it can be of. */
function numberAsk(parts: readonly Part[], { numbers: find }: Context): PieceAsk {
  const few = parts.length > MOST_NUMBERED ? [] : parts;
  const texts = few.flatMap(({ numbers }) => numbers.map(({ number }) => number));
  const found = new Map(texts.map((text) => [numberKey(text), text]));
  const outcomes = [...found.values()].sort().map((word): Outcome => {
    const number = toldNumber(word, find(word));
    const left = parts.filter((part) => numberCodeOf(part, number) !== 'other-number');
    return { word, interval: null, parts: left };
  });
  return { at: { field: 'number' }, tool: null, needed: null, outcomes };
}

/** Values of the parts themselves, and of their faces. */
function readingAsks(parts: readonly Part[], context: Context): PieceAsk[] {
  if (parts.length > MOST_COMPARED) return [];
  const values = valueSpecs(parts, context);
  const faces = facesToAsk(parts, context);
  const ofFaces = faces.reduce((sum, { specs }) => sum + specs.length, 0);
  if ((values.length + ofFaces) * parts.length > MOST_VALUES) return [];
  return [
    ...values.map((spec) => valueAsk(parts, spec, context)),
    ...faces.flatMap((asked) => parameterAsks(parts, asked, context)),
  ];
}

function valueSpecs(parts: readonly Part[], { told, catalogue }: Context): ValueSpec[] {
  const specs = new Specs();
  const roles = new Set(parts.flatMap((part) => part.roles));
  for (const id of roles) {
    for (const spec of catalogue.roles.get(id)?.values.values() ?? []) specs.add(spec);
  }
  return specs.beside(told.values);
}

function valueAsk(parts: readonly Part[], spec: ValueSpec, { catalogue }: Context): PieceAsk {
  const has = parts.map((part): Has => {
    const own = specOf(part, spec.id, catalogue);
    const value = own === undefined ? undefined : recordedOf(part, spec.id, catalogue);
    return { part, ...itemsIn([value], spec), face: 'there' };
  });
  return measuredAsk({ field: 'measured', face: null, spec }, has);
}

interface FaceToAsk {
  readonly told: ToldFace;
  readonly specs: readonly ValueSpec[];
}

/** Each face by its name, and those that were told by their kinds, with what was not read yet. */
function facesToAsk(parts: readonly Part[], { told }: Context): FaceToAsk[] {
  const byName = new Map<string, Specs>();
  const byKind = new Map<string, Specs>();
  const seen = new Set<string>();
  for (const { kind, name, side } of parts.flatMap(({ faces }) => [...faces.values()])) {
    const sort = `${name} ${kind?.id ?? ''} ${side ?? ''}`;
    if (kind === null || seen.has(sort)) continue;
    seen.add(sort);
    const [named, ofKind] = [byName.get(name) ?? new Specs(), byKind.get(kind.id) ?? new Specs()];
    byName.set(name, named);
    byKind.set(kind.id, ofKind);
    for (const spec of kind.parameters.values()) {
      if (spec.of !== null && side !== null && spec.of !== side) continue;
      named.add(spec);
      ofKind.add(spec);
    }
  }
  const named = [...byName].map(([name, specs]): FaceToAsk => {
    const none = { kind: null, side: null, which: 1, readings: [], none: null };
    const known = told.faces.find((one) => one.interface === name);
    const face = known ?? { interface: name, ...none };
    return { told: face, specs: specs.beside(face.readings) };
  });
  const ofKinds = told.faces.flatMap((face): FaceToAsk[] => {
    if (face.interface !== null) return [];
    return [{ told: face, specs: byKind.get(face.kind ?? '')?.beside(face.readings) ?? [] }];
  });
  return [...named, ...ofKinds].filter((one) => one.told.none === null);
}

/** One for each parameter that such a face can have and that was not read yet. */
function parameterAsks(
  parts: readonly Part[],
  { told, specs }: FaceToAsk,
  context: Context,
): PieceAsk[] {
  const { interface: name, kind, side, which } = told;
  const face = { interface: name, kind, side, which };
  if (name === null) {
    return specs.map((spec) => kindAsk({ field: 'measured', face, spec }, parts, told, context));
  }
  const seen = parts.map((part) => seenOn(part, name, context.catalogue));
  return specs.map((spec) => {
    const has = seen.map((one) => ('there' in one ? hasOn(one.part, one.there, spec) : one));
    return measuredAsk({ field: 'measured', face, spec }, has);
  });
}

/** The face, or what a part without it on record has, whatever is asked of it. */
function seenOn(
  part: Part,
  name: string,
  catalogue: Known,
): Has | { readonly part: Part; readonly there: Face } {
  const face = part.faces.get(name);
  if (face !== undefined && face.kind !== null) return { part, there: face };
  const isOpen = face === undefined && canHave(part, name, catalogue);
  return { part, items: [], isOpen, face: isOpen ? 'not-recorded' : 'absent' };
}

function hasOn(part: Part, face: Face, spec: ValueSpec): Has {
  const values = face.kind === null ? [] : valuesOn(face, face.kind, spec.id);
  return { part, ...itemsIn(values, spec), face: 'there' };
}

/** Which recorded face it is, nobody knows: so each outcome is told, and the parts are asked. */
function kindAsk(
  at: Extract<AskAt, { field: 'measured' }>,
  parts: readonly Part[],
  told: ToldFace,
  { told: { faces }, catalogue }: Context,
): PieceAsk {
  const { spec } = at;
  const has = parts.map((part): Has => {
    const own = [...part.faces.values()].filter(({ kind }) => kind?.id === told.kind);
    const values = own.flatMap((face) => (face.kind ? valuesOn(face, face.kind, spec.id) : []));
    return { part, items: itemsIn(values, spec).items, isOpen: false, face: 'there' };
  });
  const ask = measuredAsk(at, has);
  const outcomes = ask.outcomes.map((outcome): Outcome => {
    const read = {
      index: 0,
      id: spec.id,
      value: new Map([[formOf(spec), asValue(outcome, spec)]]),
    };
    const further = { ...told, readings: [...told.readings, read] };
    const group = faces.filter((one) => one.interface === null && one.kind === told.kind);
    const then = group.map((one) => (one === told ? further : one));
    const left = parts.filter((part) => {
      return faceFindings(part, then, catalogue).every((one) => stateOf(one) !== 'fails');
    });
    return { ...outcome, parts: left };
  });
  return { ...ask, outcomes };
}

function asValue({ word, interval }: Outcome, spec: ValueSpec): Value {
  const common = { spec, evidence: { basis: 'measured' }, tool: null, text: word ?? '' } as const;
  if (interval !== null) return { form: 'number', interval, ...common };
  return { form: 'code', code: word ?? '', ...common };
}
