/**
 * Questions about a piece on the bench, one for each code that only they lead to.
 */

import type { PIECE_CODES } from '../../src/domain/explain/reason.js';
import { asked, read } from '../domain/identify/bench.js';

const input = (parameter: string, value: string) => read({ interface: 'input', parameter }, value);

const rear = (value: string) => read({ interface: 'rear', parameter: 'pcd' }, value);

const spline = (which: number, value: string) =>
  read({ kind: 'spline', which, parameter: 'teeth' }, value);

const named = { nameExcluded: true };

export const PIECE_CASES: Readonly<Record<(typeof PIECE_CODES)[number], () => unknown>> = {
  'one-part-left': () => asked({ role: 'box', measured: [read({ interface: 'plug' }, 'none')] }),
  'several-parts-left': () => asked({ role: 'box' }),
  'no-part-left': () => asked({ role: 'shaft', measured: [spline(1, '25')] }),
  'match-is-no-proof': () => asked({}),
  'number-of-no-part': () => asked({ numbers: ['X 1'] }),
  'role-agrees': () => asked({ role: 'box' }),
  'other-role': () => asked({ role: 'box', ...named }),
  'hand-agrees': () => asked({ hand: 'left' }),
  'hand-not-recorded': () => asked({ hand: 'left' }),
  'other-hand': () => asked({ hand: 'left', ...named }),
  'fitted-by-works': () => asked({ vehicle: 'car' }),
  'not-fitted-by-works': () => asked({ vehicle: 'car' }),
  'number-agrees': () => asked({ numbers: ['bx10*'] }),
  'number-not-recorded': () => asked({ numbers: ['bx10*'] }),
  'other-number': () => asked({ numbers: ['bx10*'], ...named }),
  'value-agrees': () => asked({ measured: [input('teeth', '24')] }),
  'value-not-recorded': () => asked({ measured: [input('teeth', '24')] }),
  'value-only-inferred': () => asked({ measured: [rear('120 mm')] }),
  'value-only-reported': () => asked({ measured: [read({ parameter: 'length' }, '650 mm')] }),
  'value-differs': () => asked({ measured: [input('teeth', '24')], ...named }),
  'face-absent': () => asked({ measured: [read({ interface: 'plug' }, 'none')] }),
  'face-there': () => asked({ measured: [read({ interface: 'plug' }, 'none')], ...named }),
  'told-face-not-recorded': () => asked({ measured: [spline(1, '24')] }),
  'no-such-face': () => asked({ measured: [input('teeth', '24')], ...named }),
  'no-face-agrees': () => asked({ measured: [spline(1, '24'), spline(2, '30')], ...named }),
  'other-kind': () =>
    asked({
      measured: [read({ interface: 'rear', kind: 'spline', parameter: 'teeth' }, '24')],
      ...named,
    }),
  'other-side': () =>
    asked({
      measured: [read({ interface: 'input', side: 'hub', parameter: 'teeth' }, '24')],
      ...named,
    }),
  'tell-role': () => asked({}),
  'tell-hand': () => asked({ role: 'box' }),
  'read-number': () => asked({ role: 'odd' }),
  'find-next': () => asked({ role: 'box', hand: 'left', numbers: ['X 1'] }),
  'measure-next': () => asked({ role: 'shaft' }),
};
