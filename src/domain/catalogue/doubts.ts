/**
 * What is legal in a catalogue but doubtful: a face that no layout lets meet anything, a mating
 * that no two parts can satisfy, a face that a role declares and many parts do not record.
 */

import type { Catalogue, Face, Layout, Mating, Part, Position } from './catalogue.js';
import { at, type FaultList } from './faults.js';

/** Where each entity stands in its document, for pointers. */
export interface Places {
  readonly parts: {
    readonly records: readonly (readonly [unknown, string])[];
  };
  readonly layouts: {
    readonly records: readonly (readonly [unknown, string])[];
  };
}

export function findDoubts(catalogue: Catalogue, places: Places, list: FaultList): void {
  const pointers = new Map<string, string>();
  for (const [record, pointer] of [...places.parts.records, ...places.layouts.records]) {
    pointers.set(`${pointer.split('/')[1]}:${(record as { readonly id: string }).id}`, pointer);
  }
  doubtUnmatedFaces(catalogue, pointers, list);
  for (const layout of catalogue.layouts.values()) {
    const pointer = pointers.get(`layouts:${layout.id}`) ?? '/layouts';
    doubtImpossibleMatings(catalogue, layout, pointer, list);
    doubtUnrecordedFaces(catalogue, layout, pointer, list);
  }
}

/** The interface names that a part of this role can use in some layout or as an adapter. */
function matedNames(catalogue: Catalogue): Map<string, Set<string>> {
  const names = new Map<string, Set<string>>();
  for (const layout of catalogue.layouts.values()) {
    for (const { ends } of layout.matings.values()) {
      for (const end of ends) {
        for (const role of layout.positions.get(end.position)?.roles ?? []) {
          const known = names.get(role) ?? new Set();
          names.set(role, known.add(end.interface));
        }
      }
    }
  }
  return names;
}

function doubtUnmatedFaces(
  catalogue: Catalogue,
  pointers: ReadonlyMap<string, string>,
  list: FaultList,
): void {
  const mated = matedNames(catalogue);
  for (const part of catalogue.parts.values()) {
    if (!part.roles.some((role) => mated.has(role))) continue;
    for (const face of part.faces.values()) {
      const isMated = part.roles.some((role) => mated.get(role)?.has(face.name));
      if (isMated || face.isAbsent || face.isOptional) continue;
      const pointer = pointers.get(`parts:${part.id}`) ?? '/parts';
      const text = `No layout has a mating for the face "${face.name}" of this part.`;
      list.warn(at(at(pointer, 'interfaces'), face.name), 'face-on-no-mating', text);
    }
  }
}

function facesAt(catalogue: Catalogue, layout: Layout, id: string, name: string): Face[] {
  return partsAt(catalogue, layout, id).flatMap((part) => part.faces.get(name) ?? []);
}

function partsAt(catalogue: Catalogue, layout: Layout, id: string): Part[] {
  const position: Position | undefined = layout.positions.get(id);
  if (position === undefined) return [];
  return [...catalogue.parts.values()].filter((part) =>
    part.roles.some((role) => position.roles.includes(role)),
  );
}

/** A mating is possible where faces of one kind and opposite sides are on record at its ends. */
function doubtImpossibleMatings(
  catalogue: Catalogue,
  layout: Layout,
  pointer: string,
  list: FaultList,
): void {
  for (const [index, mating] of [...layout.matings.values()].entries()) {
    if (isPossible(catalogue, layout, mating)) continue;
    const text = `No two recorded parts could ever meet in "${mating.id}".`;
    list.warn(at(at(pointer, 'matings'), index), 'impossible-mating', text);
  }
}

function isPossible(catalogue: Catalogue, layout: Layout, mating: Mating): boolean {
  const [a, b] = mating.ends;
  const left = facesAt(catalogue, layout, a.position, a.interface);
  const right = facesAt(catalogue, layout, b.position, b.interface);
  if (left.length === 0 || right.length === 0) return true;
  return left.some((x) => right.some((y) => couldMeet(x, y) || mating.adapters > 0));
}

function couldMeet(x: Face, y: Face): boolean {
  if (x.kind === null || y.kind === null) return true;
  return x.kind.id === y.kind.id && (x.kind.sides === null || x.side !== y.side);
}

/** Faces that a role declares and parts leave out: nobody looked, so questions stay open. */
function doubtUnrecordedFaces(
  catalogue: Catalogue,
  layout: Layout,
  pointer: string,
  list: FaultList,
): void {
  for (const mating of layout.matings.values()) {
    for (const [index, end] of mating.ends.entries()) {
      const other = mating.ends[1 - index];
      const place = other === undefined ? undefined : layout.positions.get(other.position);
      if (place?.isOptional !== true) continue;
      const silent = partsAt(catalogue, layout, end.position).filter(
        (part) =>
          !part.faces.has(end.interface) &&
          part.roles.some((role) => catalogue.roles.get(role)?.faces?.has(end.interface) ?? true),
      );
      if (silent.length === 0) continue;
      const count = silent.length === 1 ? 'One part does' : `${silent.length} parts do`;
      const text =
        `${count} not record the face "${end.interface}", which would meet the optional ` +
        `position "${place.id}": recorded or "absent" would be better.`;
      list.warn(pointer, 'unrecorded-faces', text);
    }
  }
}
