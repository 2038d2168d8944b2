/**
 * Words that tell nothing never make two faces match: no catalogue and no question can record them.
 */

import { describe, expect, it } from 'vitest';
import { compileDocument } from '../../../src/domain/catalogue/compile.js';
import { isPlaceholder } from '../../../src/domain/catalogue/placeholder.js';
import { BUILT_IN_KINDS } from '../../../src/domain/kinds/registry.js';
import { QuestionError } from '../../../src/usecases/errors.js';
import { mateFaces } from '../../../src/usecases/mate-faces.js';
import { libraryOf } from '../../memory-store.js';

/** Two parts whose faces have a pattern each; without one, it is not recorded. */
function twoFaces(left: unknown, right: unknown) {
  return compileDocument(documentOf(left, right), BUILT_IN_KINDS);
}

function documentOf(left: unknown, right: unknown) {
  const part = (id: string, pattern: unknown) => {
    const recorded = pattern === undefined ? {} : { pattern };
    return { id, name: id, roles: ['piece'], interfaces: { face: { kind: 'plug', ...recorded } } };
  };
  return {
    catalogue: 1,
    lang: 'en',
    evidence: { basis: 'measured' },
    kinds: [
      { id: 'plug', parameters: { pattern: { type: 'code' } }, checks: [{ equal: 'pattern' }] },
    ],
    roles: [{ id: 'piece', name: 'Piece', faces: ['face'] }],
    parts: [part('left', left), part('right', right)],
  };
}

const TELLS_NOTHING = [
  'unknown, UNKNOWN, Unknown., n/a, N/A, n.a., tbd, TBD, T.B.D., tba, todo, none, None, NONE, nil',
  'null, undefined, other, any, unbekannt, k.A., inconnu, not known, not-known, Not_Recorded',
  'to be  confirmed, keine Angabe,  unknown ',
].flatMap((row) => row.split(', '));

describe('two faces with the same word that tells nothing', () => {
  it.each(TELLS_NOTHING)('%j: are refused, both', (word) => {
    const { catalogue, faults } = twoFaces(word, word);
    expect(catalogue).toBeNull();
    expect(faults.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'placeholder-code /parts/0/interfaces/face/pattern',
      'placeholder-code /parts/1/interfaces/face/pattern',
    ]);
  });

  it.each(['?', '??', '-', '--', '.', '_', '*', '/', '(unknown)', '<none>', '＿'])(
    '%j: are refused, since a code begins with a letter or digit and has few marks',
    (word) => {
      expect(twoFaces(word, word).faults.map(({ code }) => code)).toEqual([
        'malformed',
        'malformed',
      ]);
    },
  );

  it.each(['', ' ', '\t'])('%j: are refused, since there is nothing', (word) => {
    const codes = twoFaces(word, word).faults.map(({ code }) => code);
    expect(codes).toEqual(['not-a-value', 'not-a-value']);
  });

  it('are refused in a choice, in an alternative and beside evidence too', () => {
    for (const value of [
      { is: 'unknown', evidence: { basis: 'measured' } },
      { choose: { of: ['m-4', 'unknown'] } },
    ]) {
      expect(twoFaces(value, 'm-4').faults.map(({ code }) => code)).toEqual(['placeholder-code']);
    }
  });
});

describe('words that tell something', () => {
  const words = [
    'h-2',
    'NA',
    'na',
    'nonex',
    'none-2',
    'unknown-3',
    'anyone',
    'other-side',
    '0',
    'x',
  ];

  it.each(words)('%j may be recorded', (word) => {
    expect(isPlaceholder(word)).toBe(false);
    expect(twoFaces(word, word).faults).toEqual([]);
  });
});

describe('a question that writes both faces out', () => {
  const library = libraryOf(documentOf('m-4', 'm-4'));
  const ask = (pattern: string | undefined) => {
    const inline = { kind: 'plug', ...(pattern === undefined ? {} : { pattern }) };
    return mateFaces(library, {
      edition: null,
      lang: 'en',
      units: 'recorded',
      a: { inline },
      b: { inline },
      adapters: [],
      use: null,
    });
  };

  it.each(['unknown', 'none', 'N/A', '?'])('%j: is refused', (word) => {
    expect(() => ask(word)).toThrow(QuestionError);
  });

  it('with what tells something is answered, and with nothing it is open', () => {
    expect(ask('m-4').state).toBe('holds');
    expect(ask(undefined).state).toBe('open');
  });
});
