/**
 * What the names in a layout stand for, in one arrangement of one scene and for one hand:
 * `position.value`, `position.face.parameter`, `position.part`, `position.role`,
 * `mating.adapter.value`, `fact.id`, and the layout's own terms.
 */

import type {
  ParameterRecord,
  PartRecord,
  PositionRecord,
} from '../../src/domain/catalogue/document.js';
import { madeFrom } from './article.js';
import { faceOf, faceValue } from './face.js';
import {
  exactly,
  type Found,
  missing,
  nothingAt,
  oneOfWords,
  ownSlot,
  type Slot,
  specOf,
  sumOf,
  valueFound,
} from './found.js';
import type { Trust } from './outcome.js';
import type { ValueSpec } from './record.js';
import { basisOf, byId, type Hand, type Scene, type When } from './scene.js';
import { compute, type Finder } from './term.js';

export interface Reader {
  readonly scene: Scene;
  readonly when: When;
  readonly hand: Hand | null;
  readonly trust: Trust;
}

/** What stands for nothing at an empty place, by the place. */
export type Factors = Readonly<Record<string, unknown>>;

export function finderIn(reader: Reader, factors: Factors = {}): Finder {
  const { scene } = reader;
  const { terms = {}, matings = [] } = scene.layout;
  const find: Finder = (name) => {
    if (name in terms) return compute(terms[name], find);
    const found = findValue(name);
    const [factor] = found.empty.flatMap((place) => (place in factors ? [factors[place]] : []));
    return factor === undefined ? found : compute(factor, find);
  };
  const findValue: Finder = (name) => {
    const [first = '', second = '', third] = name.split('.');
    if (first === 'fact') return factFound(second, reader);
    if (third === undefined) return valueAt(first, second, reader);
    if (second === 'adapter' && matings.some(({ id }) => id === first)) {
      return sumOf(adapterValues(first, third, reader));
    }
    return faceValueAt(first, second, third, reader);
  };
  return find;
}

/** The adapters' values of a name such as `mating.adapter.rating`; null for other names. */
export function eachAdapter(name: string, reader: Reader): readonly Found[] | null {
  const [mating = '', word, value = ''] = name.split('.');
  const isMating = reader.scene.layout.matings?.some(({ id }) => id === mating) ?? false;
  return word === 'adapter' && isMating ? adapterValues(mating, value, reader) : null;
}

function factFound(fact: string, { scene, trust }: Reader): Found {
  const word = scene.fact(fact);
  const basis = basisOf(scene.document, scene.vehicle);
  const bases = word === null ? [] : [basis];
  if (word !== null && trust(basis)) return { ...exactly(word), bases };
  return { ...missing({ piece: 'fact', article: null, path: fact }, { type: 'code' }), bases };
}

function placeOf(position: PositionRecord, hand: Hand | null): string {
  return position.handed ? `${position.id} ${hand}` : position.id;
}

function valueAt(id: string, value: string, reader: Reader): Found {
  const { scene, when, hand } = reader;
  const position = scene.position(id);
  const { holds } = scene.seat(when, id, hand);
  if (holds === 'empty') return nothingAt(id);
  const part = typeof holds === 'object' ? holds : null;
  const piece = placeOf(position, hand);
  if (value === 'part' || value === 'role') return identityOf(value, part, position, piece);
  const spec = roleSpecAt(position, value, scene);
  const { torque } = scene.question;
  if (torque !== null && spec.askedAs === 'torque') return askedTorque(torque);
  const slot: Slot = { piece, article: part?.id ?? null, path: `values.${value}` };
  if (part === null) return missing(slot, spec);
  return ownValue(part, value, slot, reader, spec);
}

function roleSpecAt(position: PositionRecord, value: string, scene: Scene): ValueSpec {
  const specs = position.roles.map((role) => byId(scene.document.roles, role).values?.[value]);
  const spec = specs.find((one) => one !== undefined);
  if (spec === undefined) throw new Error(`no role at ${position.id} has ${value}`);
  return spec.term === undefined ? spec : { ...spec, type: 'ratio' };
}

/** A value of a part; one that its role derives from others is computed from those. */
function ownValue(
  part: PartRecord,
  value: string,
  slot: Slot,
  { scene, trust }: Reader,
  fallback: ValueSpec,
): Found {
  const spec = specOf(scene.document.roles ?? [], part, value);
  if (spec === undefined) return missing(slot, fallback);
  const basis = basisOf(scene.document, part);
  if (spec.term === undefined) {
    return valueFound(part.values?.[value], spec, basis, slot, trust);
  }
  return compute(spec.term, (name) => {
    const inner = specOf(scene.document.roles ?? [], part, name);
    if (inner === undefined) throw new Error(`nothing to derive ${value} from`);
    const path = `values.${name}`;
    return valueFound(part.values?.[name], inner, basis, { ...slot, path }, trust);
  });
}

function identityOf(
  word: 'part' | 'role',
  part: PartRecord | null,
  position: PositionRecord,
  piece: string,
): Found {
  if (part === null) {
    return missing({ piece, article: null, path: word }, { type: 'code' });
  }
  // What is said of a part may or may not be so of what was made from it.
  if (word === 'part') return oneOfWords(`${part.id} part`, madeFrom(part.id));
  const roles = part.roles.filter((role) => position.roles.includes(role));
  return oneOfWords(`${piece} ${word}`, roles);
}

function askedTorque(text: string): Found {
  const slot: Slot = { piece: 'question', article: null, path: 'torque' };
  const spec: ValueSpec = { type: 'measured', unit: 'N.m' };
  return { ...valueFound(text, spec, 'measured', slot, () => true), bases: [], isAsked: true };
}

function adapterValues(mating: string, value: string, reader: Reader): Found[] {
  const { scene, when, hand, trust } = reader;
  const isHanded = scene
    .mating(mating)
    .between.some((end) => scene.position(end.split('.')[0] ?? '').handed);
  return scene.adapters(when, mating).parts.map((id, index) => {
    const part = scene.part(id);
    const spec = specOf(scene.document.roles ?? [], part, value);
    const piece = `adapter ${mating} ${index} ${isHanded ? hand : null}`;
    const slot: Slot = { piece, article: id, path: `values.${value}` };
    if (spec === undefined) throw new Error(`${id} has no ${value}`);
    const basis = basisOf(scene.document, part);
    return valueFound(part.values?.[value], spec, basis, slot, trust);
  });
}

function faceValueAt(id: string, name: string, parameter: string, reader: Reader): Found {
  const { scene, when, hand, trust } = reader;
  const position = scene.position(id);
  const { holds } = scene.seat(when, id, hand);
  if (holds === 'empty') return nothingAt(id);
  const piece = placeOf(position, hand);
  const spec = anyParameter(parameter, scene);
  const path = `${name}.${parameter}`;
  if (typeof holds !== 'object') return missing({ piece, article: null, path }, spec);
  const face = faceOf(holds, name, scene.document);
  if (face === 'absent') return nothingAt(id);
  const slot: Slot = { piece, article: holds.id, path };
  // Of a face that nobody recorded nobody knows the kind: the value may be one of the piece.
  if (face === 'not-recorded') return missing(ownSlot(slot), spec);
  const kind = byId(scene.document.kinds, face.kind ?? '');
  if (kind.parameters[parameter] === undefined) return missing(slot, spec);
  return faceValue({ part: holds, name, piece, face }, kind, parameter, scene.document, trust);
}

/** What a parameter of this name is, in the first kind that has it. */
function anyParameter(parameter: string, { document }: Scene): ParameterRecord {
  const kind = document.kinds?.find(({ parameters }) => parameter in parameters);
  const spec = kind?.parameters[parameter];
  if (spec === undefined) throw new Error(`no kind has ${parameter}`);
  return spec;
}
