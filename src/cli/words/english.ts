/**
 * The words of the command line, in English.
 */

import type { CliWords } from './cli-words.js';
import { ENGLISH_KITS } from './english-kits.js';
import { counted, ENGLISH_SHOW } from './english-show.js';

export const ENGLISH: CliWords = {
  quoted: (name) => `“${name}”`,
  hands: { left: 'left', right: 'right' },
  answer: {
    order: 'To order:',
    measure: 'To measure or find out:',
    noTolerance: 'No tolerance is certain to decide: measure as finely as you can.',
    recorded: (value) => `Recorded: ${value}.`,
    settles: (points) => `This alone settles ${points} open points.`,
    notChecked: 'Not looked at:',
    cautions: 'Cautions:',
    from: (edition, engine) => `Edition ${edition}, engine ${engine}.`,
  },
  finding: {
    fails: 'Fails:',
    open: 'Open:',
    holds: 'Holds:',
    againstRecords: 'As built, against the records:',
    notShown: 'As found, and not shown by the records:',
    asBuilt: (places) => `As the works built it: ${counted(places, 'place')}.`,
    side: { left: 'Left: ', right: 'Right: ' },
    saysSide: (sentence, hand) => sentence.includes(`(${hand})`),
    value: 'value',
    against: (sides) => sides.join(' against '),
    ofPart: (value, part) => `${value} of ${part}`,
  },
  names: {
    found: (asked, part) => `“${asked}” is ${part}.`,
    superseded: (part, by) => `${part} has been superseded by ${by}.`,
    ask: 'To find out which one it is:',
    settle: 'To settle it:',
    question: (name, answers, how) =>
      `${name}: ${answers.join('; or ')}.${how === null ? '' : ` ${how}`}`,
  },
  fit: {
    on: (part, vehicle) => `${part} on ${vehicle}.`,
    best: (places) => `The places differ; this is the answer of the best: ${places.join(', ')}.`,
    alone: {
      holds: 'With nothing changed but what the question names, it goes in.',
      open: 'With nothing changed but what the question names, it is not known to go in.',
      fails: 'With nothing changed but what the question names, it does not go in.',
    },
    kit: 'What else is needed.',
    present: 'it is there already',
    replaces: (parts) =>
      parts.length === 0 ? 'replaces nothing on record' : `replaces ${parts.join(', ')}`,
  },
  fits: {
    meant: (part, vehicles) => `${part}; ${counted(vehicles, 'vehicle')} may be meant.`,
    verdicts: {
      fits: 'fits',
      'fits-with-changes': 'fits with changes',
      'does-not-fit': 'does not fit',
      unknown: 'not known to fit',
      depends: 'depends',
    },
    notAlone: 'not as it stands',
    counts: ({ holds, open, fails }) =>
      `As it stands: fits ${holds}, not known to fit ${open}, does not fit ${fails}.`,
    comesWith: (parts) => `comes with ${parts.join(', ')}`,
    alsoNeeded: (parts) => `also needed: ${parts.join(', ')}`,
  },
  identify: {
    left: (vehicles) =>
      vehicles === 0 ? 'No vehicle is left.' : `${counted(vehicles, 'vehicle')} may be meant.`,
    leftOut: 'Left out:',
    excluded: (name, vehicles) => `${name}: ${counted(vehicles, 'vehicle')}.`,
    warnings: 'Look again:',
  },
  identifyPart: {
    nearest: 'These come nearest:',
    excluded: (told, parts) => `${told}: ${counted(parts, 'part')}.`,
    ask: 'Find out next, the best first (in brackets how many are left):',
    outcomes: (text, outcomes, more) =>
      `${text} ${outcomes.join('; ')}${more === 0 ? '' : `; ${more} more`}.`,
  },
  kits: ENGLISH_KITS,
  mate: {
    face: (face, part) => `Face ${face} of ${part ?? 'an unknown part'}`,
    ends: (a, b, adapters) =>
      `${[a, ...adapters.map((one) => `through ${one}`)].join(', ')}, with ${b}.`,
  },
  vehicle: (id) => `Vehicle ${id}.`,
  show: ENGLISH_SHOW,
  driveline: {
    before: 'now',
    after: (change) => (change === null ? 'after' : `after ${change}`),
    unknown: 'not known',
    outcomes: { holds: '', open: '?', fails: 'too much' },
    changes: { better: 'better', worse: 'worse' },
    noFigures: 'The layout of this vehicle says nothing of how it drives.',
  },
  calculations: {
    outcomes: { holds: 'yes', open: 'not known', fails: 'no' },
    given: 'Taken as:',
    formulas: 'By:',
    assumed: 'Assumed:',
    validity: 'Where it holds:',
    sources: 'Sources:',
    bases: {
      read: 'read',
      arithmetic: 'arithmetic',
      'from-memory': 'from memory',
      'common-practice': 'common practice, no source',
    },
    warnings: 'Look again:',
    notFound: 'It would find besides:',
    needs: (output, inputs) => `${output}: with ${inputs.join(', ')}`,
    takes: 'Takes:',
    gives: 'Gives:',
    isOptional: 'may be left out',
    severalAt: (most) => `up to ${most}`,
    example: 'For example:',
    from: (engine) => `Engine ${engine}.`,
  },
  codes: {
    groups: {
      checks: 'Of checks:',
      cautions: 'Of what is warned of although it holds:',
      matings: 'Of joints:',
      constraints: 'Of rules, loops and statements:',
      summaries: 'Of the answer as a whole:',
      kits: 'Of a kit and its ways:',
      lines: 'Of the lines of a kit:',
      instead: 'Of what would do in place of a part:',
      demands: 'Of what is demanded, and of taking it back:',
      conflicts: 'Of demands that contradict each other:',
      losses: 'Of what the vehicle loses:',
      'not-checked': 'Of what is not looked at:',
      measures: 'Of what to measure or find out:',
      orders: 'Of what to order:',
      pieces: 'Of a piece on the bench:',
      'usual-cautions': 'Usual cautions:',
      kinds: 'Of checks of the built-in kinds of face:',
    },
    noData: 'no data',
    ofKind: (kind) => `kind ${kind}`,
    from: (engine) => `Engine ${engine}.`,
  },
};
