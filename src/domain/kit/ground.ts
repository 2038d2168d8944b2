/**
 * What all questions about a vehicle as it stands have in common: what could be where, and the
 * relations of the vehicle. It is laid once, and kept for as many vehicles as are asked about.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import { type Load, loadsOf } from '../driveline/loads.js';
import type { Configuration } from '../judge/configuration.js';
import { type Judgement, judge } from '../judge/judge.js';
import { askedMatings } from './asked-adapters.js';
import type { KitQuestion } from './question.js';
import type { KitRelation } from './relation.js';
import { vehicleRelations } from './relations.js';
import { Scene } from './scene.js';

export interface Ground {
  readonly scene: Scene;
  readonly relations: readonly KitRelation[];
  readonly whole: WholeJudge;
}

/** So many configurations are kept of one vehicle; each may take a megabyte. */
const MOST_JUDGED = 8;

/** Judges configurations of the vehicle as a whole, each of them once. */
export class WholeJudge {
  readonly #known = new Map<string, Whole>();

  /** @param scene one of this vehicle, whatever its question wants. */
  at(scene: Scene, values: readonly number[]): Whole {
    const name = values.map((value, variable) => scene.articlesOf(variable, value)).join(' | ');
    let whole = this.#known.get(name);
    if (whole === undefined) {
      const configuration = scene.configuration(
        values.map((_, variable) => variable),
        values,
      );
      whole = new Whole(configuration);
      if (this.#known.size >= MOST_JUDGED) this.#known.clear();
      this.#known.set(name, whole);
    }
    return whole;
  }
}

/** A configuration with what is said of the whole of it, as far as somebody asks. */
export class Whole {
  readonly configuration: Configuration;
  #judgement: Judgement | null = null;
  #loads: readonly Load[] | null = null;

  constructor(configuration: Configuration) {
    this.configuration = configuration;
  }

  get judgement(): Judgement {
    this.#judgement ??= judge({ ...this.configuration, skipsGiven: true });
    return this.#judgement;
  }

  get loads(): readonly Load[] {
    this.#loads ??= loadsOf(this.configuration);
    return this.#loads;
  }
}

/** So many are kept of one edition; the one that was asked for longest ago goes first. */
const MOST_KEPT = 32;

const keptByEdition = new WeakMap<Catalogue, Map<string, Ground>>();

export function groundOf(question: KitQuestion): Ground {
  const key = keyOf(question);
  if (key === null) return lay(new Scene(question));
  const { catalogue } = question;
  const kept = keptByEdition.get(catalogue) ?? new Map<string, Ground>();
  keptByEdition.set(catalogue, kept);
  const known = kept.get(key);
  const ground = known === undefined ? lay(new Scene(question)) : known;
  kept.delete(key);
  kept.set(key, ground);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  return { ...ground, scene: new Scene(question, ground.scene) };
}

function lay(scene: Scene): Ground {
  return { scene, relations: vehicleRelations(scene), whole: new WholeJudge() };
}

/**
 * Null where the question says something of the vehicle, asks for something between its parts, or
 * brings records of its own.
 */
function keyOf(question: KitQuestion): string | null {
  const { catalogue, pairsOf, vehicle, said, torque, use, ignorePresent, workUpTo } = question;
  const isAsRecorded =
    catalogue === pairsOf &&
    said.seats.size === 0 &&
    said.adapters.size === 0 &&
    vehicle.saidFacts.size === 0 &&
    torque === null;
  const renews = question.wants.some((want) => want.is === 'part' && want.renews);
  if (!isAsRecorded || renews || askedMatings(question).size > 0) return null;
  return [vehicle.id, use ?? '', ignorePresent ? 'as it is' : '', workUpTo].join(' ');
}
