/**
 * Questions about a piece on the bench that nobody who has one would ask.
 */

import { type Inputs, post } from './bytes.js';

const asked = (question: unknown) => post(JSON.stringify(question), { to: '/v1/parts/identify' });

const read = (on: unknown, value: unknown = '24', more: object = {}) =>
  asked({ measured: [{ on, value, ...more }] });

const register = (value: unknown, more: object = {}) =>
  read({ interface: 'rear', parameter: 'register' }, value, more);

export const PIECES: Inputs = {
  'nothing at all of a piece': asked({}),
  'a number of gaps alone': asked({ numbers: ['…*…*…'] }),
  'a number of a hundred gaps': asked({ numbers: ['a…'.repeat(100)] }),
  'a number that is a pattern': asked({ numbers: ['(a+)+$|.*'] }),
  'a thousand numbers': asked({ numbers: Array.from({ length: 1000 }, () => 'x') }),
  'a number as a number': asked({ numbers: [4410] }),
  '`__proto__` as a face': read({ interface: '__proto__', parameter: 'register' }, '60 mm'),
  '`constructor` as a kind of face': read({ kind: 'constructor', parameter: 'register' }),
  '`toString` as a parameter': read({ interface: 'rear', parameter: 'toString' }),
  '`valueOf` as a value of a part': read({ parameter: 'valueOf' }),
  '`__proto__` as a role of a piece': asked({ role: '__proto__' }),
  'a side without a face': read({ side: 'spigot', parameter: 'register' }),
  'a reading of nothing': read({}),
  'a value that is none, of a parameter': register('none'),
  'a size without its unit': register('60'),
  'a size of 10 to the 400': register('1e400 mm'),
  'a size of a thousand digits': register(`${'9'.repeat(1000)} mm`),
  'a size as a list': register(['60 mm', '60 mm']),
  'a tool that is none': register('60 mm', { tool: '__proto__' }),
  'a hundredth face of a kind': read({ kind: 'cart-flange', which: 100, parameter: 'pattern' }),
  'the same read twice, and not the same': asked({
    measured: ['60 mm', '70 mm'].map((value) => ({
      on: { interface: 'rear', parameter: 'register' },
      value,
    })),
  }),
  'a page after a piece that nobody asked for': asked({ cursor: 'x' }),
  'a word for whether to name': asked({ nameExcluded: 'yes' }),
};
