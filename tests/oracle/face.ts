/**
 * Faces of parts, and the values in them.
 *
 * A face that a part does not record is not recorded, unless all the roles of the part list their
 * faces and none lists this one: then such a part has no such face.
 */

import type {
  CatalogueDocument,
  InterfaceRecord,
  KindRecord,
  PartRecord,
} from '../../src/domain/catalogue/document.js';
import { type Found, picked, valueFound, valuesOfFace } from './found.js';
import type { Trust } from './outcome.js';
import { basisOf, byId } from './scene.js';

export function faceOf(
  part: PartRecord,
  name: string,
  document: CatalogueDocument,
): InterfaceRecord | 'absent' | 'not-recorded' {
  const face = part.interfaces?.[name];
  if (face !== undefined) return face.absent === true ? 'absent' : face;
  const roles = part.roles.map((id) => byId(document.roles, id));
  const mayHave = roles.some(({ faces }) => faces?.includes(name) ?? true);
  return mayHave ? 'not-recorded' : 'absent';
}

/** One recorded face of one piece. */
export interface FaceOfPiece {
  readonly part: PartRecord;
  readonly name: string;
  readonly face: InterfaceRecord;
  readonly piece: string;
}

/** A parameter of a face; what alternatives of the face lay down follows the one that is used. */
export function faceValue(
  { part, name, face, piece }: FaceOfPiece,
  kind: KindRecord,
  parameter: string,
  document: CatalogueDocument,
  trust: Trust,
): Found {
  const spec = kind.parameters[parameter];
  if (spec === undefined) throw new Error(`${kind.id} has no ${parameter}`);
  const basis = basisOf(document, part, face);
  const isShared = (face.alternatives ?? []).every((own) => own[parameter] === undefined);
  const alternatives = isShared ? valuesOfFace(face).slice(0, 1) : valuesOfFace(face);
  const options = alternatives.map((values, index) => {
    const path = `${name}.${parameter}${alternatives.length > 1 ? ` ${index}` : ''}`;
    const slot = { piece, article: part.id, path };
    return valueFound(values[parameter], spec, basis, slot, trust);
  });
  const [only] = options;
  return only !== undefined && options.length === 1
    ? only
    : picked(`alternative of ${piece} ${name}`, options);
}
