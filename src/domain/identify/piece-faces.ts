/**
 * Faces of a piece on the bench: which recorded faces of a part they can be.
 *
 * A face is told by its name, or by its kind alone where somebody sees a spline and does not know
 * what the record calls it. What is told of faces of one kind, apart from each other, is of as
 * many faces, each of which some face of the part has to be; that it is a face which is told by
 * its name as well, nobody rules out. Where every role of a part lists its faces the part has no
 * others; a listed one that nobody recorded can be any.
 *
 * A parameter that the kind of the recorded face has not is not recorded of it.
 */

import type { Catalogue, Face, Kind, Part, Value } from '../catalogue/catalogue.js';
import type { Outcome } from '../check/state.js';
import { comparedWith, type ToldReading } from './compared.js';
import { type FaceCode, type FaceFinding, stateOf, type ToldAt } from './finding.js';
import { matched } from './matching.js';

export interface ToldFace {
  /** Its name; null where it is told by its kind, which then is not null. */
  readonly interface: string | null;
  readonly kind: string | null;
  readonly side: string | null;
  /** Tells faces of one kind apart whose names are not known; 1 for one that is named. */
  readonly which: number;
  readonly readings: readonly ToldReading[];
  /** Which reading says that the piece has no such face; null where none does. */
  readonly none: number | null;
}

type Roles = Pick<Catalogue, 'roles'>;

export function faceFindings(
  part: Part,
  told: readonly ToldFace[],
  catalogue: Roles,
): FaceFinding[] {
  const named = told.flatMap((one) => {
    return one.interface === null ? [] : namedFindings(part, one.interface, one, catalogue);
  });
  const kinds = new Set(told.flatMap((one) => (one.interface === null ? [one.kind] : [])));
  const ofKinds = [...kinds].flatMap((kind) => {
    const group = told.filter((one) => one.interface === null && one.kind === kind);
    return kindFindings(part, group, catalogue);
  });
  return [...named, ...ofKinds];
}

function measuredAt(index: number): ToldAt {
  return { field: 'measured', index };
}

/** The same of each reading of the face, and of that there is none. */
function saidOfAll(told: ToldFace, code: FaceCode, ofNone: FaceCode): FaceFinding[] {
  const { interface: face, kind } = told;
  const common = { about: 'face', face, kind } as const;
  const { readings, none } = told;
  return [
    ...readings.map(({ index }) => ({ at: measuredAt(index), code, ...common })),
    ...(none === null ? [] : [{ at: measuredAt(none), code: ofNone, ...common }]),
  ];
}

function namedFindings(part: Part, name: string, told: ToldFace, catalogue: Roles): FaceFinding[] {
  const face = part.faces.get(name);
  if (face === undefined) {
    return canHave(part, name, catalogue)
      ? saidOfAll(told, 'told-face-not-recorded', 'told-face-not-recorded')
      : saidOfAll(told, 'no-such-face', 'face-absent');
  }
  if (face.kind === null) return saidOfAll(told, 'no-such-face', 'face-absent');
  if (told.none !== null) return saidOfAll(told, 'face-there', 'face-there');
  const code = otherOf(face, face.kind, told);
  if (code !== null) return saidOfAll(told, code, code);
  return readingsOn(face, face.kind, told);
}

/** Whether it may have a face of the name that nobody recorded. */
export function canHave(part: Part, name: string, catalogue: Roles): boolean {
  const open = unrecordedFaces(part, catalogue);
  return open === null || open.includes(name);
}

function otherOf(
  face: Face,
  kind: Kind,
  told: Pick<ToldFace, 'kind' | 'side'>,
): 'other-kind' | 'other-side' | null {
  if (told.kind !== null && told.kind !== kind.id) return 'other-kind';
  const isOther = told.side !== null && face.side !== null && told.side !== face.side;
  return isOther ? 'other-side' : null;
}

function readingsOn(face: Face, kind: Kind, { readings }: ToldFace): FaceFinding[] {
  return readings.map((reading) => {
    const compared = comparedWith(reading, valuesOn(face, kind, reading.id));
    return { at: measuredAt(reading.index), about: 'value', face: face.name, ...compared };
  });
}

/** One for each way in which the face can be; none where its kind has no such parameter. */
export function valuesOn(face: Face, kind: Kind, id: string): readonly (Value | undefined)[] {
  const parameter = kind.parameters.get(id);
  const isOfSide = parameter?.of === null || face.side === null || parameter?.of === face.side;
  return parameter === undefined || !isOfSide ? [] : face.alternatives.map((way) => way.get(id));
}

/** Names of faces that its roles list and nobody recorded; null where it may have any. */
export function unrecordedFaces(
  { roles, faces }: Part,
  catalogue: Roles,
): readonly string[] | null {
  const listed = roles.map((role) => catalogue.roles.get(role)?.faces ?? null);
  if (listed.includes(null)) return null;
  const names = new Set(listed.flatMap((set) => [...(set ?? [])]));
  return [...names].filter((name) => !faces.has(name));
}

/** A recorded face that a told one may be. */
interface Near {
  readonly slot: string;
  readonly findings: readonly FaceFinding[];
  readonly agreeing: number;
  readonly failing: number;
}

/** Faces of one kind, each another one of the part. */
function kindFindings(part: Part, told: readonly ToldFace[], catalogue: Roles): FaceFinding[] {
  const near = told.map((one) => nearOf(part, one));
  const open = unrecordedFaces(part, catalogue);
  const taken = matched(
    near.map((faces, index) => {
      const recorded = faces.filter(({ failing }) => failing === 0).map(({ slot }) => slot);
      return [...recorded, ...(open ?? [String(index)]).map((name) => `open ${name}`)];
    }),
  );
  const used = new Set(taken);
  return told.flatMap((one, index) => {
    const slot = taken[index] ?? null;
    const faces = near[index] ?? [];
    const own = faces.find((face) => face.slot === slot);
    if (own !== undefined) return own.findings;
    if (slot !== null) return saidOfAll(one, 'told-face-not-recorded', 'told-face-not-recorded');
    // What comes nearest of what no other told face is.
    const nearest = faces.find((face) => !used.has(face.slot) && face.failing > 0);
    return nearest?.findings ?? saidOfAll(one, 'no-face-agrees', 'no-face-agrees');
  });
}

/** The likeliest first. */
function nearOf(part: Part, told: ToldFace): Near[] {
  const near = [...part.faces.values()].flatMap((face): Near[] => {
    const { kind, name } = face;
    if (kind === null || otherOf(face, kind, told) !== null) return [];
    const findings = readingsOn(face, kind, told);
    const count = (state: Outcome) => findings.filter((one) => stateOf(one) === state).length;
    const slot = `face ${name}`;
    return [{ slot, findings, agreeing: count('holds'), failing: count('fails') }];
  });
  return near.sort((a, b) => a.failing - b.failing || b.agreeing - a.agreeing);
}
