/**
 * What is legal in a catalogue but doubtful: a face that no layout lets meet anything, a mating
 * that no two parts can satisfy, a face that a role declares and many parts do not record, a
 * coupling for which there are no limits.
 */

import type { Term } from '../check/term.js';
import type { Catalogue, Face, Layout, Mating, Part } from './catalogue.js';
import { doubtSpelling } from './doubtful-codes.js';
import { at, type FaultList, hint, quoted } from './faults.js';

/** Where each entity stands in its document, for pointers. */
export interface Places {
  readonly parts: {
    readonly records: readonly (readonly [unknown, string])[];
  };
  readonly layouts: {
    readonly records: readonly (readonly [unknown, string])[];
  };
}

/** Warns of what is doubtful in a catalogue without faults. */
export function findDoubts(catalogue: Catalogue, places: Places, list: FaultList): void {
  const parts = placesOf(places.parts.records);
  const layouts = placesOf(places.layouts.records);
  const byRole = partsByRole(catalogue);
  doubtUnmatedFaces(catalogue, parts, list);
  doubtSpelling(catalogue, parts, list);
  doubtCouplings(catalogue, byRole, parts, list);
  for (const layout of catalogue.layouts.values()) {
    const pointer = layouts.get(layout.id) ?? '/layouts';
    const stage: Stage = { catalogue, layout, byRole, pointer, list };
    doubtImpossibleMatings(stage);
    doubtUnrecordedFaces(stage);
  }
}

interface Stage {
  readonly catalogue: Catalogue;
  readonly layout: Layout;
  readonly byRole: ReadonlyMap<string, readonly Part[]>;
  readonly pointer: string;
  readonly list: FaultList;
}

function placesOf(records: readonly (readonly [unknown, string])[]): Map<string, string> {
  return new Map(records.map(([record, place]) => [(record as { readonly id: string }).id, place]));
}

function partsByRole(catalogue: Catalogue): Map<string, Part[]> {
  const byRole = new Map<string, Part[]>();
  for (const part of catalogue.parts.values()) {
    for (const role of new Set(part.roles)) {
      const known = byRole.get(role);
      if (known === undefined) byRole.set(role, [part]);
      else known.push(part);
    }
  }
  return byRole;
}

/** The parts that may stand at a position. */
function partsAt({ layout, byRole }: Stage, id: string): Part[] {
  const roles = layout.positions.get(id)?.roles ?? [];
  return [...new Set(roles.flatMap((role) => byRole.get(role) ?? []))];
}

/** The interface names that a part of this role can use in some layout. */
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
      const pointer = pointers.get(part.id) ?? '/parts';
      const text = `No layout has a mating for the face "${face.name}" of this part.`;
      list.warn(at(at(pointer, 'interfaces'), face.name), 'face-on-no-mating', text);
    }
  }
}

/** A loop whose coupling has no limits stays open for ever. */
function doubtCouplings(
  catalogue: Catalogue,
  byRole: ReadonlyMap<string, readonly Part[]>,
  pointers: ReadonlyMap<string, string>,
  list: FaultList,
): void {
  const { couplings } = catalogue;
  const said = new Set<string>();
  for (const [role, value] of couplingValues(catalogue)) {
    for (const { id, values } of byRole.get(role) ?? []) {
      const recorded = values.get(value);
      const isKnown = recorded?.form !== 'code' || couplings.has(recorded.code);
      const place = at(at(pointers.get(id) ?? '/parts', 'values'), value);
      if (isKnown || said.has(place)) continue;
      said.add(place);
      const { code } = recorded;
      const guess = hint(code, couplings.keys());
      const text = `There are no limits for a coupling ${quoted(code)}.${guess}`;
      list.warn(place, 'unknown-coupling', text);
    }
  }
}

/** Role and value, wherever a layout asks that value for a coupling. */
function couplingValues(catalogue: Catalogue): [role: string, value: string][] {
  const found: [string, string][] = [];
  for (const layout of catalogue.layouts.values()) {
    for (const check of layout.checks) {
      const term = check.primitive === 'agree' ? bareTerm(check.coupling) : null;
      if (term?.op !== 'reference' || term.reference.of !== 'value') continue;
      const { position, value } = term.reference;
      for (const role of layout.positions.get(position)?.roles ?? []) found.push([role, value]);
    }
  }
  return found;
}

function bareTerm(term: Term): Term {
  return term.op === 'named' ? bareTerm(term.term) : term;
}

/** A mating is possible where faces of one kind and opposite sides are on record at its ends. */
function doubtImpossibleMatings(stage: Stage): void {
  const { layout, pointer, list } = stage;
  for (const [index, mating] of [...layout.matings.values()].entries()) {
    if (isPossible(stage, mating)) continue;
    const text = `No two recorded parts could ever meet in "${mating.id}".`;
    list.warn(at(at(pointer, 'matings'), index), 'impossible-mating', text);
  }
}

function isPossible(stage: Stage, mating: Mating): boolean {
  const [left, right] = mating.ends.map((end) =>
    partsAt(stage, end.position).flatMap((part) => part.faces.get(end.interface) ?? []),
  );
  if (left === undefined || left.length === 0) return true;
  if (right === undefined || right.length === 0) return true;
  return mating.adapters > 0 || left.some((x) => right.some((y) => couldMeet(x, y)));
}

function couldMeet(x: Face, y: Face): boolean {
  if (x.kind === null || y.kind === null) return true;
  return x.kind.id === y.kind.id && (x.kind.sides === null || x.side !== y.side);
}

/** Faces that a role declares and parts leave out: nobody looked, so questions stay open. */
function doubtUnrecordedFaces(stage: Stage): void {
  const { catalogue, layout, pointer, list } = stage;
  for (const [index, mating] of [...layout.matings.values()].entries()) {
    for (const [side, end] of mating.ends.entries()) {
      const other = mating.ends[1 - side];
      const place = other === undefined ? undefined : layout.positions.get(other.position);
      if (place?.isOptional !== true) continue;
      const silent = partsAt(stage, end.position).filter(
        (part) =>
          !part.faces.has(end.interface) &&
          part.roles.some((role) => catalogue.roles.get(role)?.faces?.has(end.interface) ?? true),
      );
      if (silent.length === 0) continue;
      const count = silent.length === 1 ? 'One part does' : `${silent.length} parts do`;
      const text =
        `${count} not record the face "${end.interface}", which would meet the optional ` +
        `position "${place.id}": recorded or "absent" would be better.`;
      list.warn(at(at(pointer, 'matings'), index), 'unrecorded-faces', text);
    }
  }
}
