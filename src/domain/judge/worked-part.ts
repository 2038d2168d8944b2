/**
 * What a work makes of a part: the article `part+work`, with what the work gives laid over its
 * faces and values, and without the ratings that it voids. Articles are worked again in order:
 * `part+first+second`.
 *
 * Left out: whether the work can be undone, and who signs for it; the work itself says so.
 */

import { isSameSpec } from '../catalogue/article-scope.js';
import type {
  Catalogue,
  Face,
  Kind,
  Layout,
  Part,
  Position,
  Value,
  Values,
} from '../catalogue/catalogue.js';
import { NO_DRIVELINE } from '../catalogue/compile-driveline.js';
import type { Text } from '../catalogue/document.js';
import { ARTICLE, type Work } from '../catalogue/trade.js';
import type { Outcome } from '../check/state.js';
import { judgeCondition } from './condition.js';
import type { Arrangement, Configuration } from './configuration.js';
import { settingOf } from './judge.js';

/** Why a work makes nothing of a part. */
export type WorkReason =
  /** Its condition fails, or nobody knows whether it holds. */
  | { readonly code: 'not-for-this-part' | 'not-known-to-apply' }
  /** The part has no record of what the work would change. */
  | { readonly code: 'nothing-to-change'; readonly what: string };

export type Worked =
  | { readonly part: Part; readonly reason: null }
  | { readonly part: null; readonly reason: WorkReason };

/** Works on one part, where the condition of the work holds of it for sure. */
export function workedPart(part: Part, work: Work, catalogue: Catalogue): Worked {
  const outcome = appliesTo(part, work, catalogue);
  if (outcome !== 'holds') {
    const code = outcome === 'fails' ? 'not-for-this-part' : 'not-known-to-apply';
    return { part: null, reason: { code } };
  }
  const faces = new Map(part.faces);
  for (const [name, given] of work.gives.interfaces) {
    const face = workedFace(part.faces.get(name), name, given);
    if (typeof face === 'string') return nothingToChange(face);
    faces.set(name, face);
  }
  const values = new Map(part.values);
  for (const [name, value] of work.gives.values) {
    const spec = part.roles
      .map((role) => catalogue.roles.get(role)?.values.get(name))
      .find((found) => found !== undefined);
    if (spec === undefined || spec.term !== null || !isSameSpec(spec, value.spec)) {
      return nothingToChange(name);
    }
    values.set(name, { ...value, spec });
  }
  for (const rating of work.voids) {
    // What follows from other values is known as long as they are: it cannot be voided here.
    if (isDerived(rating, part, catalogue)) return nothingToChange(rating);
    values.delete(rating);
  }
  const name = joined(part.name, work.name, catalogue.lang);
  const own = { id: `${part.id}+${work.id}`, name, numbers: [], supersededBy: null };
  return { part: { ...part, ...own, faces, values }, reason: null };
}

function nothingToChange(what: string): Worked {
  return { part: null, reason: { code: 'nothing-to-change', what } };
}

function isDerived(value: string, { roles }: Part, catalogue: Catalogue): boolean {
  return roles.some(
    (role) => (catalogue.roles.get(role)?.values.get(value)?.term ?? null) !== null,
  );
}

/** The face with what is given in each of its alternatives; or what it has no place for. */
function workedFace(face: Face | undefined, name: string, given: Values): Face | string {
  if (face === undefined || face.isAbsent || face.kind === null) return name;
  const laid = new Map<string, Value>();
  for (const [parameter, value] of given) {
    const spec = face.kind.parameters.get(parameter);
    const isOther = spec !== undefined && spec.of !== null && spec.of !== face.side;
    if (spec === undefined || isOther || !isSameSpec(spec, value.spec)) {
      return `${name}.${parameter}`;
    }
    laid.set(parameter, { ...value, spec });
  }
  const { kind } = face;
  const alternatives = face.alternatives.map(
    (one) => new Map([...outdated(one, laid, kind), ...laid]),
  );
  return { ...face, alternatives };
}

/**
 * What a face still has once a work has given other values of it. Of a value that says what a
 * given one says in another way (`unless`), nobody knows whether it is still so: it is not on
 * record any more. An optional one may not just go, since its check would go with it: it is as
 * good as hearsay until somebody looks.
 */
function outdated(own: Values, given: Values, { parameters }: Kind): Values {
  const saysTheSame = (id: string, other: string): boolean =>
    parameters.get(id)?.unless.includes(other) === true ||
    parameters.get(other)?.unless.includes(id) === true;
  const kept = [...own].flatMap(([id, value]): [string, Value][] => {
    if (given.has(id) || ![...given.keys()].some((other) => saysTheSame(id, other))) {
      return [[id, value]];
    }
    if (parameters.get(id)?.isOptional !== true) return [];
    return [[id, { ...value, evidence: { ...value.evidence, basis: 'reported' } }]];
  });
  return new Map(kept);
}

/** "Front hub, re-drilled", in each language that either has. */
function joined(part: Text, work: Text, lang: string): Text {
  if (typeof part === 'string' && typeof work === 'string') return `${part}, ${work}`;
  const inLang = (text: Text, language: string): string =>
    typeof text === 'string'
      ? text
      : (text[language] ?? text[lang] ?? Object.values(text)[0] ?? '');
  const languages = [part, work].flatMap((text) =>
    typeof text === 'string' ? [lang] : Object.keys(text),
  );
  return Object.fromEntries(
    languages.map((one) => [one, `${inLang(part, one)}, ${inLang(work, one)}`]),
  );
}

/** Judges the condition of a work in a layout of one place, at which the part stands. */
function appliesTo(part: Part, work: Work, catalogue: Catalogue): Outcome {
  const parts = new Map([[part.id, part]]);
  const layout = layoutOf(part);
  const alone: Arrangement = {
    seats: new Map([
      [
        ARTICLE,
        { hands: false, seat: { occupant: { is: 'part', part: part.id }, origin: 'works' } },
      ],
    ]),
    adapters: new Map(),
  };
  const configuration: Configuration = {
    catalogue: { ...catalogue, parts },
    pairsOf: catalogue,
    vehicle: {
      id: ARTICLE,
      make: '',
      model: '',
      variant: null,
      built: [null, null],
      facts: new Map(),
      saidFacts: new Set(),
      vin: [],
      layout,
      like: null,
      replacedBy: [],
      evidence: part.evidence,
      fitted: new Map(),
      options: new Map(),
      adapters: new Map(),
    },
    layout,
    present: alone,
    judged: alone,
    torque: null,
    use: null,
    ignorePresent: false,
  };
  return judgeCondition(work.on, configuration, settingOf(configuration), null);
}

function layoutOf({ name, roles }: Part): Layout {
  const position: Position = {
    id: ARTICLE,
    name,
    roles,
    count: 1,
    isHanded: false,
    isOptional: false,
    behind: [],
    labour: null,
    access: null,
    index: 0,
  };
  return {
    id: ARTICLE,
    name: null,
    positions: new Map([[ARTICLE, position]]),
    matings: new Map(),
    terms: new Map(),
    checks: [],
    termNames: new Map(),
    driveline: NO_DRIVELINE,
    unmated: 'ignore',
  };
}

/** The part and the works that the id of an article names, in order. */
export function namesOf(article: string): readonly [part: string, ...works: string[]] {
  const [part = '', ...works] = article.split('+');
  return [part, ...works];
}

export type Article =
  | { readonly part: Part; readonly fault: null }
  | { readonly part: null; readonly fault: ArticleFault };

export type ArticleFault =
  | { readonly code: 'unknown-part' | 'unknown-work'; readonly name: string }
  | { readonly code: 'work-not-for-part'; readonly work: Work; readonly reason: WorkReason };

/** The part behind an id, worked as it says; or the first thing that is wrong with it. */
export function articleOf(id: string, catalogue: Catalogue): Article {
  const [name, ...works] = namesOf(id);
  let part = catalogue.parts.get(name);
  if (part === undefined) return { part: null, fault: { code: 'unknown-part', name } };
  for (const one of works) {
    const work = catalogue.works.get(one);
    if (work === undefined) return { part: null, fault: { code: 'unknown-work', name: one } };
    const worked: Worked = workedPart(part, work, catalogue);
    if (worked.part === null) {
      const { reason } = worked;
      return { part: null, fault: { code: 'work-not-for-part', work, reason } };
    }
    part = worked.part;
  }
  return { part, fault: null };
}

/** The catalogue with the worked articles of a question in it, as far as they can be made. */
export function withArticles(catalogue: Catalogue, ids: Iterable<string>): Catalogue {
  const worked = [...ids].flatMap((id) => {
    const { part } = id.includes('+') ? articleOf(id, catalogue) : { part: null };
    return part === null ? [] : [[id, part] as const];
  });
  if (worked.length === 0) return catalogue;
  return { ...catalogue, parts: new Map([...catalogue.parts, ...worked]) };
}
