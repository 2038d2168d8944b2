/**
 * What nobody recorded of what figures are made of: each once, with the figures that want it. Of a
 * part that nobody identified it is asked which part it is; and where a fact tells that, the fact.
 */

import { type FactAddress, NOWHERE, type Reading } from '../domain/check/reading.js';
import type { Figure } from '../domain/driveline/figure.js';
import { type Arrangement, seatAt } from '../domain/judge/configuration.js';
import { isUnidentified } from '../domain/judge/measure.js';
import type { MeasureView } from './answer.js';
import { measureView } from './asides.js';
import type { Speaker } from './speaker.js';

export interface FigureMeasureView extends MeasureView {
  /** Figures that are not known without it. */
  figures: string[];
}

interface Wanted {
  readonly address: FactAddress;
  readonly reading: Reading | null;
  readonly figures: Set<string>;
}

export function figureMeasures(
  figures: readonly Figure[],
  present: Arrangement,
  speaker: Speaker,
): FigureMeasureView[] {
  const wanted = new Map<string, Wanted>();
  for (const { key, missing } of figures) {
    for (const reading of missing) {
      if (!('address' in reading)) continue;
      const found = firstOf(reading, reading.address, present);
      const name = JSON.stringify(found.address);
      const known = wanted.get(name) ?? { ...found, figures: new Set<string>() };
      known.figures.add(key);
      wanted.set(name, known);
    }
  }
  return [...wanted.values()].map(({ address, reading, figures: keys }, index) => {
    const measure = { address, reading, purpose: 'to-decide', needed: null } as const;
    const view = measureView({ ...measure, touches: [], settles: [] }, index, speaker);
    return { ...view, figures: [...keys] };
  });
}

function firstOf(
  reading: Reading,
  address: FactAddress,
  present: Arrangement,
): Pick<Wanted, 'address' | 'reading'> {
  if (!isUnidentified(address)) return { address, reading };
  const { position, hand } = address;
  const option = position === null ? undefined : seatAt(present, position, hand)?.option;
  if (option !== undefined) return { address: { ...NOWHERE, fact: option.fact }, reading: null };
  return { address: { ...address, interface: null, parameter: null }, reading: null };
}
