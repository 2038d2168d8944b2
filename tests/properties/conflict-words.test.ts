/**
 * What is said of a conflict, whatever was asked: every sentence says something, in both languages,
 * and calls parts and places by what a customer calls them, never by an id.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { conflictOf } from '../../src/domain/kit/conflict.js';
import type { KitQuestion } from '../../src/domain/kit/question.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { SaidReason } from '../../src/usecases/answer.js';
import type { AskedKit } from '../../src/usecases/asked-kit.js';
import type { ConflictView } from '../../src/usecases/conflict-answer.js';
import { kitBody } from '../../src/usecases/kit-views.js';
import { Speaker } from '../../src/usecases/speaker.js';
import { sha256 } from '../memory-store.js';
import { conflictCases } from './conflict-case.js';
import type { KitCase } from './kit-case.js';
import { questionOf } from './real-kits.js';

const CASES = 300;
const SEED = 7;

/** The same catalogue with names that are unlike the ids, and rules in whole sentences. */
function renamed(document: CatalogueDocument): CatalogueDocument {
  const name = (word: string, index: number): string => `${word} no. ${index + 1}`;
  const { layouts = [], lots = [], parts = [], rules = [] } = document;
  return {
    ...document,
    parts: parts.map((part, index) => ({ ...part, name: name('Article', index) })),
    rules: rules.map((rule) => ({ ...rule, because: 'It is so.' })),
    lots: lots.map((lot, index) => ({ ...lot, name: name('Bundle', index) })),
    layouts: layouts.map((layout) => ({
      ...layout,
      positions: layout.positions.map((at, index) => ({ ...at, name: name('Seat', index) })),
    })),
  };
}

interface Told {
  readonly at: string;
  readonly lang: string;
  readonly conflict: ConflictView;
  readonly summary: SaidReason;
  /** Ids of parts, lots and places. */
  readonly ids: readonly string[];
}

function tell(question: KitQuestion, ask: KitCase['ask'], at: string): Told[] {
  const kits = resolveKits(question);
  if (kits.routes.length > 0 || !kits.isComplete) return [];
  const found = conflictOf(question);
  const { catalogue, vehicle } = question;
  return SPOKEN_LANGUAGES.map((lang) => {
    const context = {
      question,
      asked: { avoid: ask.avoid.map((part) => ({ part })) } as unknown as AskedKit,
      origins: { edition: 1, offers: 1 },
      digest: sha256,
    };
    const speaker = new Speaker({ catalogue, layout: vehicle.layout, lang });
    const { conflict, summary } = kitBody(kits, found, context, speaker);
    if (conflict === null) throw new Error('the conflict is not told');
    const { parts, lots } = catalogue;
    const ids = [...parts.keys(), ...lots.keys(), ...vehicle.layout.positions.keys()];
    return { at, lang, conflict, summary, ids };
  });
}

function sentencesOf({ conflict, summary }: Told): SaidReason[] {
  const { demands, path, relaxations } = conflict;
  const dropped = relaxations.flatMap(({ drop }) => drop);
  return [summary, ...demands, ...(path ?? []), ...relaxations, ...dropped];
}

describe('the words of conflicts', () => {
  const told: Told[] = [];

  /** What is wrong, each with where and the sentence. */
  function wrongBy(isWrong: (text: string, one: Told) => boolean): string[] {
    return told.flatMap((one) =>
      sentencesOf(one)
        .filter(({ text }) => isWrong(text, one))
        .map(({ text }) => `${one.at} ${one.lang}: ${text}`),
    );
  }

  beforeAll(() => {
    const some = fc.sample(conflictCases(), { numRuns: CASES, seed: SEED });
    for (const [index, one] of some.entries()) {
      const question = questionOf({ ...one, document: renamed(one.document) });
      told.push(...tell(question, one.ask, `${SEED}/${index}`));
    }
  }, 600_000);

  it('are met often enough, of many sorts', () => {
    expect(told.length).toBeGreaterThan(0.2 * CASES);
    const codes = new Set(told.flatMap((one) => sentencesOf(one).map(({ code }) => code)));
    expect(codes.size).toBeGreaterThan(15);
  });

  it('are sentences, and say nothing that is not there', () => {
    expect(wrongBy((text) => !/^\P{Ll}.*\p{L}.*\.$/u.test(text))).toEqual([]);
    expect(wrongBy((text) => /undefined|\bnull\b|NaN|\[object|“”|„“| {2}/u.test(text))).toEqual([]);
  });

  it('never have an id of a part, a lot or a place', () => {
    const word = (id: string): RegExp => new RegExp(`(?<![\\w-])${id}(?![\\w-])`, 'u');
    expect(wrongBy((text, { ids }) => ids.some((id) => word(id).test(text)))).toEqual([]);
  });

  it('name each part that a demand is about, and each that would stand there', () => {
    const unnamed = told.flatMap((one) => {
      const { demands, path, relaxations } = one.conflict;
      const parts = [...demands, ...relaxations.flatMap(({ drop }) => drop)].flatMap((demand) => {
        const { part, names } = demand.data;
        const all = names ?? [part?.partName ?? part?.positionName ?? null];
        return all.flatMap((name) =>
          name === null || demand.text.toLowerCase().includes(name.toLowerCase()) ? [] : [demand],
        );
      });
      const steps = (path ?? []).filter(({ data: { names = [] }, text }) =>
        names.some((name) => !text.includes(name)),
      );
      return [...parts, ...steps].map(({ text }) => `${one.at} ${one.lang}: ${text}`);
    });
    expect(unnamed).toEqual([]);
  });
});
