/**
 * Compiles what a layout says of how it drives: terms of the dimensions that the formulas take, of
 * positions, axles and loads that are there.
 */

import type { Check } from '../check/check.js';
import { compileTerm, type Scope, shapeOf, type Term } from '../check/term.js';
import { type Dimension, nameOf } from '../quantity/unit.js';
import type { Position } from './catalogue.js';
import type { DrivelineRecord } from './document-driveline.js';
import type { Driveline } from './driveline.js';
import { at, type FaultList, quoted } from './faults.js';
import { present } from './holes.js';
import { inside } from './lost-names.js';

export const NO_DRIVELINE: Driveline = {
  engineTorque: null,
  engineSpeed: null,
  topSpeed: null,
  clutchTorque: null,
  gears: null,
  axles: [],
  slips: [],
  shafts: [],
  joints: [],
  speedometer: null,
  brakes: null,
  pedal: null,
  wheels: [],
};

export interface DrivelineNames {
  readonly layout: string;
  readonly scope: Scope;
  readonly positions: ReadonlyMap<string, Position>;
  readonly checks: readonly Check[];
}

export function compileDriveline(
  record: DrivelineRecord,
  names: DrivelineNames,
  pointer: string,
  list: FaultList,
): Driveline {
  const place = new Place(names, pointer, list);
  return {
    engineTorque: place.maybe(record.engineTorque, 'torque', 'engineTorque'),
    engineSpeed: place.maybe(record.engineSpeed, 'rotation', 'engineSpeed'),
    topSpeed: place.maybe(record.topSpeed, 'speed', 'topSpeed'),
    clutchTorque: place.maybe(record.clutchTorque, 'torque', 'clutchTorque'),
    gears: place.gears(record.gears),
    axles: axlesOf(record, place),
    slips: slipsOf(record, place),
    shafts: shaftsOf(record, place),
    joints: jointsOf(record, place),
    ...pairsOf(record, place),
    pedal: pedalOf(record, place),
    wheels: wheelsOf(record, place),
  };
}

/** Where the record stands, and what its names are looked up in. */
class Place {
  readonly names: DrivelineNames;
  readonly pointer: string;
  readonly list: FaultList;

  constructor(names: DrivelineNames, pointer: string, list: FaultList) {
    this.names = names;
    this.pointer = pointer;
    this.list = list;
  }

  inside(...steps: readonly (string | number)[]): Place {
    const pointer = steps.reduce<string>((outer, step) => at(outer, step), this.pointer);
    return new Place(this.names, pointer, this.list);
  }

  /** A term of this dimension, or null with a fault. */
  term(raw: unknown, dimension: Dimension | null, field: string): Term | null {
    const pointer = at(this.pointer, field);
    const term = compileTerm(raw, this.names.scope, pointer, this.list);
    if (term === null) return null;
    const shape = shapeOf(term);
    if (shape.is !== 'number') {
      this.list.fault(pointer, 'not-a-number', 'One number is wanted here.');
      return null;
    }
    if (dimension === null || shape.dimension === dimension) return term;
    const text = `${nameOf(shape.dimension)} stands where ${nameOf(dimension)} is wanted.`;
    const sentence = `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
    this.list.fault(pointer, 'wrong-dimension', sentence);
    return null;
  }

  maybe(raw: unknown, dimension: Dimension | null, field: string): Term | null {
    return raw === undefined ? null : this.term(raw, dimension, field);
  }

  gears(raw: unknown): Term | null {
    if (raw === undefined) return null;
    const pointer = at(this.pointer, 'gears');
    const term = compileTerm(raw, this.names.scope, pointer, this.list);
    if (term === null) return null;
    const shape = shapeOf(term);
    if (shape.is === 'list' && shape.dimension === '1') return term;
    this.list.fault(pointer, 'not-a-list', 'The gears are a list of ratios.');
    return null;
  }

  position(id: string): boolean {
    const { layout, positions } = this.names;
    if (positions.has(id)) return true;
    const space = inside('layouts', layout, 'positions');
    const known = positions.keys();
    const pointer = at(this.pointer, 'position');
    this.list.unknown(id, { sort: 'positions', space, pointer, known });
    return false;
  }

  /** One of some names of the layout. */
  oneOf(id: string, known: readonly string[], field: string, what: string): boolean {
    if (known.includes(id)) return true;
    const text = `There is no ${what} ${quoted(id)}.${this.list.guess(id, known)}`;
    this.list.fault(at(this.pointer, field), 'unknown-name', text);
    return false;
  }
}

function each<Item>(
  items: readonly Item[] | undefined,
  place: Place,
  field: string,
): readonly (readonly [Item, Place])[] {
  const pointer = place.inside(field).pointer;
  return [...present(items ?? [], pointer)].map(
    ([item, , index]) => [item, place.inside(field, index)] as const,
  );
}

/** The terms of an item, or null where one of them could not be compiled. */
function whole<Terms extends Readonly<Record<string, Term | null>>>(
  terms: Terms,
): { readonly [Name in keyof Terms]: Term } | null {
  const isWhole = Object.values(terms).every((term) => term !== null);
  return isWhole ? (terms as { readonly [Name in keyof Terms]: Term }) : null;
}

function axlesOf({ axles }: DrivelineRecord, place: Place): Driveline['axles'] {
  return each(axles, place, 'axles').flatMap(([axle, there]) => {
    const terms = whole({
      drive: there.term(axle.drive, '1', 'drive'),
      circumference: there.term(axle.circumference, 'length', 'circumference'),
    });
    const mass = there.maybe(axle.mass, 'mass', 'mass');
    return terms === null ? [] : [{ id: axle.id, name: axle.name, mass, ...terms }];
  });
}

function axleNames({ axles }: DrivelineRecord): string[] {
  return [...present(axles ?? [], '')].map(([{ id }]) => id);
}

function slipsOf(record: DrivelineRecord, place: Place): Driveline['slips'] {
  const loads = place.names.checks.flatMap((one) => (one.primitive === 'carries' ? [one.id] : []));
  return each(record.slips, place, 'slips').flatMap(([{ load, axle, after: raw }, there]) => {
    const after = there.term(raw, '1', 'after');
    const names = [
      there.oneOf(load, loads, 'load', 'load'),
      there.oneOf(axle, axleNames(record), 'axle', 'axle'),
    ];
    return after === null || names.includes(false) ? [] : [{ load, axle, after }];
  });
}

function shaftsOf(record: DrivelineRecord, place: Place): Driveline['shafts'] {
  return each(record.shafts, place, 'shafts').flatMap(([shaft, there]) => {
    const { position, axle } = shaft;
    const terms = whole({
      drive: there.term(shaft.drive, '1', 'drive'),
      outer: there.term(shaft.outer, 'length', 'outer'),
      inner: there.term(shaft.inner, 'length', 'inner'),
      length: there.term(shaft.length, 'length', 'length'),
    });
    const names = [there.position(position), there.oneOf(axle, axleNames(record), 'axle', 'axle')];
    return terms === null || names.includes(false) ? [] : [{ position, axle, ...terms }];
  });
}

function jointsOf({ joints }: DrivelineRecord, place: Place): Driveline['joints'] {
  return each(joints, place, 'joints').flatMap(([joint, there]) => {
    const angle = there.term(joint.angle, 'angle', 'angle');
    const other = there.maybe(joint.other, 'angle', 'other');
    return angle === null ? [] : [{ id: joint.id, name: joint.name, angle, other }];
  });
}

/** Values that are only ever compared: of whatever dimension, but both of one. */
function pairsOf(
  { speedometer, brakes }: DrivelineRecord,
  place: Place,
): Pick<Driveline, 'speedometer' | 'brakes'> {
  const shown = speedometer && place.inside('speedometer');
  const braked = brakes && place.inside('brakes');
  const shows = shown?.term(speedometer?.shows, null, 'shows') ?? null;
  const front = braked?.term(brakes?.front, null, 'front') ?? null;
  const share = braked?.maybe(brakes?.frontShare, '1', 'frontShare') ?? null;
  const turns = shows && (shown?.term(speedometer?.turns, dimensionOf(shows), 'turns') ?? null);
  const rear = front && (braked?.term(brakes?.rear, dimensionOf(front), 'rear') ?? null);
  return {
    speedometer: shows === null || turns === null ? null : { shows, turns },
    brakes: front === null || rear === null ? null : { front, rear, frontShare: share },
  };
}

function dimensionOf(term: Term): Dimension {
  const shape = shapeOf(term);
  return shape.is === 'code' ? '1' : shape.dimension;
}

function pedalOf({ pedal }: DrivelineRecord, place: Place): Driveline['pedal'] {
  if (pedal === undefined) return null;
  const there = place.inside('pedal');
  const terms = whole({
    master: there.term(pedal.master, 'length^2', 'master'),
    ratio: there.term(pedal.ratio, '1', 'ratio'),
  });
  const available = there.maybe(pedal.available, 'length', 'available');
  const wheels = each(pedal.wheels, there, 'wheels').flatMap(([one, inner]) => {
    const found = whole({
      area: inner.term(one.area, 'length^2', 'area'),
      travel: inner.term(one.travel, 'length', 'travel'),
    });
    return found === null ? [] : [found];
  });
  return terms === null ? null : { ...terms, wheels, available };
}

function wheelsOf({ wheels }: DrivelineRecord, place: Place): Driveline['wheels'] {
  return each(wheels, place, 'wheels').flatMap(([wheel, there]) => {
    const { position } = wheel;
    const terms = whole({
      inset: there.term(wheel.inset, 'length', 'inset'),
      width: there.term(wheel.width, 'length', 'width'),
      diameter: there.term(wheel.diameter, 'length', 'diameter'),
    });
    const spacer = there.maybe(wheel.spacer, 'length', 'spacer');
    const isThere = there.position(position);
    return terms === null || !isThere ? [] : [{ position, spacer, ...terms }];
  });
}
