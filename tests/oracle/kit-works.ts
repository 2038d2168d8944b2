/**
 * Parts that are worked: `part+work` is a record of its own, with what the work gives in place of
 * what the part had, and without the ratings that the work voids.
 *
 * Left out: parameters that say the same in another way, which random works do not touch.
 */

import type {
  CatalogueDocument,
  InterfaceRecord,
  PartRecord,
  ValueRecord,
  WorkRecord,
} from '../../src/domain/catalogue/document.js';
import { judgeCondition } from './condition.js';
import { faceOf } from './face.js';
import { specOf } from './found.js';
import { viewOf } from './layout-check.js';
import type { Basis, Outcome } from './outcome.js';
import { basisOf, byId, Scene } from './scene.js';

/** What one work makes of a part; null where it cannot be done, or nobody knows whether it can. */
export function worked(
  part: PartRecord,
  work: WorkRecord,
  document: CatalogueDocument,
): PartRecord | null {
  if (appliesTo(part, work, document) !== 'holds') return null;
  const basis = basisOf(document, work);
  const interfaces: Record<string, InterfaceRecord> = { ...part.interfaces };
  for (const [name, given] of Object.entries(work.gives.interfaces ?? {})) {
    const face = faceOf(part, name, document);
    if (typeof face === 'string') return null;
    const { parameters } = byId(document.kinds, face.kind ?? '');
    const areMeant = Object.keys(given).every((id) => {
      const parameter = parameters[id];
      return parameter !== undefined && (parameter.of === undefined || parameter.of === face.side);
    });
    if (!areMeant) return null;
    interfaces[name] = laidOver(face, withBasis(given, basis));
  }
  const values = { ...part.values, ...withBasis(work.gives.values ?? {}, basis) };
  const roles = document.roles ?? [];
  const areKnown = Object.keys(work.gives.values ?? {}).every((value) =>
    specOf(roles, part, value),
  );
  if (!areKnown) return null;
  for (const rating of work.voids ?? []) delete values[rating];
  return { ...part, id: `${part.id}+${work.id}`, interfaces, values };
}

/** What is given takes the place of the same parameters, in every alternative of the face. */
function laidOver(face: InterfaceRecord, given: Values): InterfaceRecord {
  const { alternatives, ...common } = face;
  const laid: InterfaceRecord = { ...common, ...given };
  if (alternatives === undefined) return laid;
  const left = alternatives.map((own) =>
    Object.fromEntries(Object.entries(own).filter(([id]) => given[id] === undefined)),
  );
  return { ...laid, alternatives: left };
}

type Values = Readonly<Record<string, ValueRecord>>;

/** What a work gives has the evidence of the work, not of the part. */
function withBasis(values: Values, basis: Basis): Record<string, ValueRecord> {
  const entries = Object.entries(values).map(([id, value]): [string, ValueRecord] => {
    if (typeof value !== 'object') return [id, { is: value, evidence: { basis } }];
    if ('is' in value || 'choose' in value) return [id, { evidence: { basis }, ...value }];
    return [id, { is: value, evidence: { basis } }];
  });
  return Object.fromEntries(entries);
}

/** Its terms name the one part; that stands at the only place of a vehicle made up for it. */
function appliesTo(part: PartRecord, work: WorkRecord, document: CatalogueDocument): Outcome {
  const place = 'article';
  const alone: CatalogueDocument = {
    ...document,
    parts: [part],
    layouts: [{ id: place, positions: [{ id: place, name: place, roles: part.roles }] }],
    vehicles: [{ id: place, make: '', model: '', layout: place, fitted: { [place]: part.id } }],
  };
  const scene = new Scene(alone, {
    vehicle: place,
    said: {},
    chosen: {},
    saidAdapters: {},
    chosenAdapters: {},
    torque: null,
    use: null,
    ignorePresent: false,
  });
  return judgeCondition(placed(work.on, place), viewOf(scene, 'judged', null));
}

/** Puts the place before every name in a check of an article: `role` becomes `article.role`. */
function placed(raw: unknown, place: string): unknown {
  const named = (term: unknown): unknown =>
    typeof term === 'string' && !/^[-\d]/.test(term) ? `${place}.${term}` : term;
  const entries = Object.entries(raw as object).map(([word, of]): [string, unknown] => {
    if (word === 'all' || word === 'any') {
      return [word, (of as unknown[]).map((one) => placed(one, place))];
    }
    if (word === 'not') return [word, placed(of, place)];
    const [first, second] = of as [unknown, unknown];
    // What a name is compared with: among several words, or with another term.
    return [word, [named(first), word === 'one-of' ? second : named(second)]];
  });
  return Object.fromEntries(entries);
}

/** Every article that up to two different works make of a part, in the order of the catalogue. */
export function workedFrom(
  part: PartRecord,
  works: readonly WorkRecord[],
  document: CatalogueDocument,
): PartRecord[] {
  return works.flatMap((work, index) => {
    const once = worked(part, work, document);
    if (once === null) return [];
    const twice = works.slice(index + 1).flatMap((other) => worked(once, other, document) ?? []);
    return [once, ...twice];
  });
}
