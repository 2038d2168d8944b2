/**
 * What a layout of a catalogue document says of how its vehicles drive.
 */

import type { Text } from './document.js';

/** Which terms of a layout say how it drives; each is a term in the form of the others. */
export interface DrivelineRecord {
  readonly engineTorque?: unknown;
  readonly engineSpeed?: unknown;
  readonly topSpeed?: unknown;
  readonly clutchTorque?: unknown;
  readonly gears?: unknown;
  readonly axles?: readonly {
    readonly id: string;
    readonly name: Text;
    readonly drive: unknown;
    readonly circumference: unknown;
    readonly mass?: unknown;
  }[];
  readonly slips?: readonly {
    readonly load: string;
    readonly axle: string;
    readonly after: unknown;
  }[];
  readonly shafts?: readonly {
    readonly position: string;
    readonly axle: string;
    readonly drive: unknown;
    readonly outer: unknown;
    readonly inner: unknown;
    readonly length: unknown;
  }[];
  readonly joints?: readonly {
    readonly id: string;
    readonly name: Text;
    readonly angle: unknown;
    readonly other?: unknown;
  }[];
  readonly speedometer?: { readonly shows: unknown; readonly turns: unknown };
  readonly brakes?: {
    readonly front: unknown;
    readonly rear: unknown;
    readonly frontShare?: unknown;
  };
  readonly pedal?: {
    readonly master: unknown;
    readonly ratio: unknown;
    readonly wheels: readonly { readonly area: unknown; readonly travel: unknown }[];
    readonly available?: unknown;
  };
  readonly wheels?: readonly {
    readonly position: string;
    readonly inset: unknown;
    readonly width: unknown;
    readonly diameter: unknown;
    readonly spacer?: unknown;
  }[];
}
