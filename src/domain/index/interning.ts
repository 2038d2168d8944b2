/**
 * Faces that allow the same values are one class: whatever meets one of them meets all. A
 * catalogue of a hundred thousand parts has a few thousand classes.
 *
 * What counts is the kind, the side, the set of values of each parameter, and what the evidence
 * may decide; not whose face it is, nor who measured it.
 */

import type { Catalogue, Face, ListItem, Part, Value } from '../catalogue/catalogue.js';
import { gradeOf } from '../check/state.js';
import type { Interval } from '../quantity/interval.js';
import type { PlanePoint } from '../quantity/plane-point.js';

export interface FaceEntry {
  readonly part: Part;
  readonly face: Face;
  readonly class: number;
}

export interface FaceClass {
  readonly id: number;
  readonly kind: string;
  readonly side: string | null;
  /** The first face of the class, which stands for all. */
  readonly part: Part;
  readonly face: Face;
}

export interface Interned {
  /** All recorded faces, parts in the order of the catalogue, absent ones left out. */
  readonly entries: readonly FaceEntry[];
  readonly classes: readonly FaceClass[];
}

export function internFaces(catalogue: Catalogue): Interned {
  const entries: FaceEntry[] = [];
  const classes: FaceClass[] = [];
  const byKey = new Map<string, number>();
  for (const part of catalogue.parts.values()) {
    for (const face of part.faces.values()) {
      if (face.kind === null) continue;
      const key = classKey(face);
      let id = byKey.get(key);
      if (id === undefined) {
        id = classes.length;
        byKey.set(key, id);
        classes.push({ id, kind: face.kind.id, side: face.side, part, face });
      }
      entries.push({ part, face, class: id });
    }
  }
  return { entries, classes };
}

/** Equal exactly for faces that allow the same values with evidence of the same grade. */
export function classKey(face: Face): string {
  const alternatives = face.alternatives.map((values) =>
    [...values]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([id, value]) => `${id}=${valueKey(value)}`)
      .join(';'),
  );
  return [face.kind?.id ?? '', face.side ?? '', ...alternatives].join('|');
}

/** Equal for parts that are alike in all that is recorded of them: faces, values, roles, hand. */
export function partKey({ roles, hand, spans, faces, values }: Part): string {
  const faceKeys = [...faces.values()].map((face) => {
    const need = face.isAbsent ? 'absent' : face.isOptional ? 'optional' : 'needed';
    return `${face.name} ${need} ${classKey(face)}`;
  });
  const valueKeys = [...values].map(([id, value]) => `${id}=${valueKey(value)}`);
  const own = [roles.join(), hand ?? '', spans?.join() ?? ''];
  return [...own, ...faceKeys.sort(), ...valueKeys.sort()].join(' & ');
}

/** Equal for values that allow the same, with evidence of the same grade. */
export function valueKey(value: Value): string {
  const grade = gradeOf(value.evidence.basis);
  switch (value.form) {
    case 'code':
      return `${grade} ${value.code}`;
    case 'number':
    case 'range':
      return `${grade} ${value.form} ${intervalKey(value.interval)}`;
    case 'points':
      return `${grade} points ${value.points.map(pointKey).sort().join(',')}`;
    case 'list':
    case 'set':
      return `${grade} ${value.form} ${value.items.map(itemKey).join(',')}`;
  }
}

function pointKey({ x, y }: PlanePoint): string {
  return `${intervalKey(x)} ${intervalKey(y)}`;
}

function itemKey({ interval, code }: ListItem): string {
  return code ?? (interval === null ? '?' : intervalKey(interval));
}

function intervalKey({ low, high, lowOpen, highOpen }: Interval): string {
  const from = low === null ? '' : low.toFraction();
  const to = high === null ? '' : high.toFraction();
  return `${lowOpen ? '(' : '['}${from},${to}${highOpen ? ')' : ']'}`;
}
