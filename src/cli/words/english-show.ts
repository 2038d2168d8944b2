/**
 * The words to show records by on the command line, in English.
 */

import type { Basis } from '../../usecases/answer.js';
import type { ShowWords } from './show-words.js';

const BASIS: Readonly<Record<Basis, string>> = {
  built: 'built so',
  measured: 'measured',
  drawing: 'from a drawing',
  maker: 'by the maker',
  inferred: 'inferred',
  reported: 'reported',
};

/** `1 fault`, `2 faults`. */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}

export const ENGLISH_SHOW: ShowWords = {
  headings: {
    adapters: 'Adapters that the works fitted:',
    askable: 'A question may say otherwise:',
    asks: 'What tells them apart:',
    checks: 'Checks:',
    faces: 'Faces:',
    facts: 'Facts:',
    findOut: 'To find out:',
    fitted: 'What the works fitted:',
    matings: 'What meets:',
    notRecorded: 'Not recorded:',
    parameters: 'What is recorded of a face:',
    positions: 'Positions:',
    terms: 'Computed values:',
    values: 'Values:',
  },
  labels: {
    built: 'Built',
    evidence: 'Recorded',
    faces: 'Faces',
    hand: 'Side',
    layout: 'Layout',
    like: 'Like',
    maker: 'Maker',
    numbers: 'Numbers',
    parts: 'Parts',
    roles: 'Role',
    sides: 'Sides',
    spans: 'Fills',
    standard: 'Standard',
    supersededBy: 'Superseded by',
    values: 'Values',
    vin: 'Identification numbers',
  },
  none: 'None.',
  shownOf: (shown, total) => `${shown} of ${total}.`,
  evidence: ({ basis, by, on, source, times }) => {
    const who = [BASIS[basis], by === null ? '' : `by ${by}`, on === null ? '' : `on ${on}`];
    return [
      who.filter((word) => word !== '').join(' '),
      ...(source === null ? [] : [source]),
      ...(times === null ? [] : [`built so ${counted(times, 'time')}`]),
    ].join(', ');
  },
  occupants: { empty: 'nothing', 'as-found': 'not recorded' },
  toldBy: (fact) => `not recorded; ${fact} would tell`,
  notRecorded: (ids) => `Not recorded: ${ids.join(', ')}.`,
  side: (side) => `side ${side}`,
  builtIn: 'It comes with the program.',
  way: (number) => `Way ${number}:`,
  notes: {
    absent: 'the part has no such face',
    cautionOnly: 'a caution only',
    derived: 'computed',
    facesLeftOpen: 'left open',
    handed: 'left and right',
    list: 'a list',
    mayBeAlone: 'may be left without a partner',
    mayBeEmpty: 'may be empty',
    mayBeLeftOut: 'may be left out',
    noAdapters: 'none',
    rating: 'what it bears',
  },
  usual: (range) => `usually ${range}`,
  unless: (others) => `may be left out for ${others.join(' and ')}`,
  asked: (field) => `a question may say otherwise (${field})`,
  tool: (name) => `by ${name}`,
  pieces: (count) => counted(count, 'piece'),
  behind: (positions) => `behind ${positions.join(' and ')}`,
  labour: (hours) => `${hours} h to change`,
  access: (hours) => `${hours} h to get out of the way`,
  adapters: (most) => (most === 0 ? 'no adapter' : `${counted(most, 'adapter')} at most`),
  and: (names) => names.join(' and '),
};
