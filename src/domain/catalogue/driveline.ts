/**
 * What a layout says of how its vehicles drive, compiled: terms of the dimensions that the formulas
 * take.
 */

import type { Term } from '../check/term.js';
import type { Text } from './document.js';

export interface DrivenAxle {
  readonly id: string;
  readonly name: Text;
  /** Turns of the gearbox output for one turn of its wheels. */
  readonly drive: Term;
  readonly circumference: Term;
  readonly mass: Term | null;
}

/**
 * Which terms of a layout say how it drives. What the layout does not say is null or not listed:
 * nothing is told of it then.
 */
export interface Driveline {
  readonly engineTorque: Term | null;
  readonly engineSpeed: Term | null;
  readonly topSpeed: Term | null;
  readonly clutchTorque: Term | null;
  /** A list, in the order of the gears. */
  readonly gears: Term | null;
  readonly axles: readonly DrivenAxle[];
  /** Torque at both wheels of an axle together, for one of the load. */
  readonly slips: readonly { readonly load: string; readonly axle: string; readonly after: Term }[];
  readonly shafts: readonly {
    readonly position: string;
    readonly axle: string;
    readonly drive: Term;
    readonly outer: Term;
    readonly inner: Term;
    readonly length: Term;
  }[];
  readonly joints: readonly {
    readonly id: string;
    readonly name: Text;
    readonly angle: Term;
    readonly other: Term | null;
  }[];
  readonly speedometer: { readonly shows: Term; readonly turns: Term } | null;
  readonly brakes: {
    readonly front: Term;
    readonly rear: Term;
    readonly frontShare: Term | null;
  } | null;
  readonly pedal: {
    readonly master: Term;
    readonly ratio: Term;
    readonly wheels: readonly { readonly area: Term; readonly travel: Term }[];
    readonly available: Term | null;
  } | null;
  readonly wheels: readonly {
    readonly position: string;
    readonly inset: Term;
    readonly width: Term;
    readonly diameter: Term;
    readonly spacer: Term | null;
  }[];
}
