/**
 * The words of the command line around the routes of a kit, in English.
 */

import { counted } from './english-show.js';
import type { KitWords } from './kit-words.js';

export const ENGLISH_KITS: KitWords = {
  on: (vehicle) => `On ${vehicle}.`,
  way: (number) => `Way ${number}`,
  wayOf: (number, count) => `Way ${number} of ${count}.`,
  grade: 'Proven',
  grades: { proven: 'yes', open: 'no' },
  beatenBy: (number) => `Way ${number} is no worse on any count, and better on one.`,
  more: 'There are more ways; ask for more with --routes.',
  atLeast: (grade, cost) =>
    `No other ${grade === 'proven' ? 'proven way' : 'way that is open'} costs less than ${cost}.`,
  actions: {
    add: 'Put in:',
    adapter: 'Put between:',
    lot: 'Buy whole:',
    work: 'Have done:',
    extra: 'Use up:',
    remove: 'Take out:',
    open: 'Open, to get at the rest:',
  },
  recommended: 'Worth having besides:',
  piece: (count) => (count === '1' ? '1 piece' : `${count} pieces`),
  notKnownHowMuch: 'nobody knows how much',
  between: (mating) => `in ${mating}`,
  money: (amount, currency) => (currency === null ? amount : `${amount} ${currency}`),
  sources: {
    owned: 'at hand',
    lot: 'comes with what is bought whole',
    present: 'is on the vehicle',
    unpriced: 'price not known',
  },
  hours: (hours) => `${hours} h`,
  labour: (amount) => `labour ${amount}`,
  packs: (packs, pack) => `${counted(packs, 'pack')} of ${pack}`,
  leftOver: (parts) => `Left over: ${parts.join(', ')}.`,
  signOff: (who) => `to be signed for by ${who}`,
  signers: { workshop: 'the workshop', engineer: 'an engineer' },
  notReversible: 'cannot be undone',
  total: (cost, beside) =>
    `Together ${cost} net${beside.length === 0 ? '' : `: ${beside.join(', ')}`}.`,
  parts: (amount) => `parts ${amount}`,
  works: (amount) => `works ${amount}`,
  unpriced: (lines) => `${counted(lines, 'line')} without a price`,
  untimed: (lines) => `${counted(lines, 'line')} without hours`,
  orMore: (sum) => `${sum} or more`,
  why: 'Why, from what is asked for onwards:',
  conflict: 'These demands contradict each other:',
  cannot: 'This cannot be met:',
  notSmallest: 'Fewer of them may be enough to contradict each other.',
  because: 'Because:',
  noPath: 'What breaks them was not found in time.',
  waysOut: 'What would help:',
  moreWaysOut: 'There are more ways out.',
  loses: 'What the vehicle loses:',
  yes: 'yes',
  no: 'no',
  nobody: 'nobody',
  notKnown: 'not known',
  decimal: (text) => text,
  offers: (number) => `Prices of list ${number}.`,
};
