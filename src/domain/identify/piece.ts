/**
 * A piece on the bench: what somebody found out about it, and which recorded parts it can be.
 *
 * Each thing that is told has three outcomes for a part: its record agrees (`holds`), does not say
 * (`open`), or cannot be so (`fails`). What was measured and what is recorded are both sets of
 * values; they agree where they have one in common. So a piece that was measured truly is never
 * left out, and each thing more that is told leaves as many parts or fewer. As everywhere, what is
 * inferred can leave a part out but proves nothing, and what is only reported decides nothing.
 *
 * What a vehicle left the works with leaves no part out: the piece may have come to it since.
 * Faces are compared in `piece-faces.ts`.
 */

import type { Catalogue, Part } from '../catalogue/catalogue.js';
import type { Hand } from '../check/reading.js';
import { comparedWith, type ToldReading } from './compared.js';
import { type Finding, stateOf } from './finding.js';
import { faceFindings, type ToldFace } from './piece-faces.js';
import { recordedOf, specOf } from './piece-value.js';
import { numberCodeOf, type ToldNumber } from './read-number.js';

export interface ToldPiece {
  /** Id of a role. */
  readonly role: string | null;
  readonly hand: Hand | null;
  /** Ids of what the works may have fitted to the vehicle that it came off; null: of none. */
  readonly fitted: ReadonlySet<string> | null;
  readonly numbers: readonly ToldNumber[];
  /** Of the piece itself. */
  readonly values: readonly ToldReading[];
  readonly faces: readonly ToldFace[];
}

export interface WeighedPart {
  readonly part: Part;
  /** In the order of what was told: role, hand, vehicle, numbers, then as they were measured. */
  readonly findings: readonly Finding[];
  readonly agreeing: number;
  /** None where the piece can be the part. */
  readonly failing: readonly Finding[];
}

export type Known = Pick<Catalogue, 'roles' | 'couplings'>;

export function weighed(part: Part, told: ToldPiece, catalogue: Known): WeighedPart {
  const measured = [
    ...told.values.map((reading) => valueFinding(part, reading, catalogue)),
    ...faceFindings(part, told.faces, catalogue),
  ];
  measured.sort((a, b) => (a.at.index ?? 0) - (b.at.index ?? 0));
  const findings = [
    ...roleFindings(part, told),
    ...handFindings(part, told),
    ...worksFindings(part, told),
    ...told.numbers.map((number, index) => numberFinding(part, number, index)),
    ...measured,
  ];
  return {
    part,
    findings,
    agreeing: findings.filter((one) => stateOf(one) === 'holds').length,
    failing: findings.filter((one) => stateOf(one) === 'fails'),
  };
}

function roleFindings({ roles }: Part, { role }: ToldPiece): Finding[] {
  if (role === null) return [];
  const code = roles.includes(role) ? 'role-agrees' : 'other-role';
  return [{ at: { field: 'role', index: null }, about: 'piece', code }];
}

function handFindings(part: Part, { hand }: ToldPiece): Finding[] {
  if (hand === null) return [];
  const known = part.hand === hand ? 'hand-agrees' : 'other-hand';
  const code = part.hand === null ? 'hand-not-recorded' : known;
  return [{ at: { field: 'hand', index: null }, about: 'piece', code }];
}

function worksFindings({ id }: Part, { fitted }: ToldPiece): Finding[] {
  if (fitted === null) return [];
  const code = fitted.has(id) ? 'fitted-by-works' : 'not-fitted-by-works';
  return [{ at: { field: 'vehicle', index: null }, about: 'piece', code }];
}

export function numberFinding(part: Part, number: ToldNumber, index: number): Finding {
  const code = numberCodeOf(part, number);
  return { at: { field: 'numbers', index }, about: 'number', code, number: number.text };
}

/** A value that no role of the part declares is not recorded of it: it may have it all the same. */
function valueFinding(part: Part, reading: ToldReading, catalogue: Known): Finding {
  const { id } = reading;
  const recorded = specOf(part, id, catalogue) ? recordedOf(part, id, catalogue) : undefined;
  const at = { field: 'measured', index: reading.index } as const;
  return { at, about: 'value', face: null, ...comparedWith(reading, [recorded]) };
}
