/**
 * What is recorded of a value of a part itself, or follows from what is: how many gears there are,
 * from the list of them.
 *
 * Left out: what follows from values that one chooses from, of which a piece has one.
 */

import type { Catalogue, Evidence, Part, RoleValue, Value } from '../catalogue/catalogue.js';
import { leavesOf, type Setting } from '../check/evaluator.js';
import { NOWHERE } from '../check/reading.js';
import { derivedReading } from '../judge/readings.js';

type Known = Pick<Catalogue, 'roles' | 'couplings'>;

/** As the first role of the part that has such a value declares it. */
export function specOf(
  { roles: own }: Part,
  id: string,
  { roles }: Pick<Catalogue, 'roles'>,
): RoleValue | undefined {
  return own.map((role) => roles.get(role)?.values.get(id)).find((spec) => spec !== undefined);
}

/** Undefined where it is not recorded, or does not follow from what is. */
export function recordedOf(part: Part, id: string, catalogue: Known): Value | undefined {
  const role = part.roles.map((one) => catalogue.roles.get(one)).find((one) => one?.values.has(id));
  const spec = role?.values.get(id);
  if (role === undefined || spec === undefined) return undefined;
  return spec.term === null ? part.values.get(id) : derived(part, spec, role.values, catalogue);
}

function derived(
  part: Part,
  spec: RoleValue,
  specs: ReadonlyMap<string, RoleValue>,
  { couplings }: Known,
): Value | undefined {
  const leaves = spec.term === null ? [] : leavesOf(spec.term);
  const behind = leaves.map(({ reference }) => {
    return 'parameter' in reference ? part.values.get(reference.parameter) : undefined;
  });
  if (behind.some((value) => value === undefined || value.form === 'set')) return undefined;
  const where = {
    address: { ...NOWHERE, part: part.id },
    article: part.id,
    piece: part.id,
    path: `values.${spec.id}`,
  };
  const reading = derivedReading(part, spec, specs, where, settingWith(couplings));
  if (reading.form !== 'number' || !reading.recorded) return undefined;
  const evidence: Evidence = { basis: reading.basis ?? part.evidence.basis };
  return { form: 'number', interval: reading.domain, spec, evidence, tool: null, text: '' };
}

function settingWith(couplings: Setting['couplings']): Setting {
  return { couplings, use: null, trusts: () => true, picks: new Map(), narrowed: new Map() };
}
