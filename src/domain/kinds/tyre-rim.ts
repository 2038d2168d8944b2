/**
 * A tyre on a rim: diameter code, width, beads, and what holds the air.
 *
 * Standards: ISO 4000-1 for tyres of cars and ISO 4000-2 for their rims, terms by ISO 3911; the
 * ETRTO's manual and the maker of the tyre give the rim widths that each size may have. The codes
 * of tyre and rim must be the same code, not nearly: a tyre of 16 goes over a rim of 16.5 and
 * bursts when its bead will not seat. Codes in millimetres (365) are of another system and never
 * equal. A width code is in inches: "6 J" is recorded as "6 in" and the flange "j".
 *
 * Flanges decide only where the tyre is bound to one; a tyre that may have several is recorded
 * with alternatives. For tubeless tyres ISO 4000-2:2007 asks for a hump on the mounting side and
 * prefers one on the other (read in an excerpt): "H" is one hump, "H2" are two. A tubeless tyre on
 * a rim that does not hold air, spoked or riveted, needs a tube, and only the maker of the tyre
 * can say whether that is allowed: until it is recorded, the answer is open.
 *
 * Left out: load and speed against the car, circumference (computed elsewhere), the wheel on its
 * hub (wheel-mount), tyres that run flat and the rims that those ask for.
 */

import type { BuiltInKind } from './kind.js';

const TUBELESS_TYRE = { 'one-of': ['tyre.air', ['tubeless']] };
const TUBELESS_RIM = { 'one-of': ['rim.air', ['tubeless']] };
const TUBE_RIM = { 'one-of': ['rim.air', ['tube']] };

export const tyreRim: BuiltInKind = {
  id: 'tyre-rim',
  name: { en: 'tyre on its rim', de: 'Reifen auf der Felge' },
  standard: 'ISO 4000-1, ISO 4000-2; rim widths: ETRTO manual and maker of the tyre',
  sides: ['tyre', 'rim'],
  sideNames: {
    tyre: { en: 'the tyre with its beads', de: 'der Reifen mit seinen Wülsten' },
    rim: { en: 'the rim of the wheel', de: 'die Felge des Rads' },
  },
  caution: 'wheels',
  parameters: {
    'diameter-code': {
      type: 'designation',
      name: { en: 'rim diameter code', de: 'Felgendurchmesser-Kennzahl' },
      tool: 'marking',
      usual: ['12', '22'],
    },
    width: {
      type: 'designation',
      unit: 'mm',
      of: 'rim',
      name: { en: 'rim width', de: 'Maulweite der Felge' },
      tool: 'marking',
      usual: ['101.6 mm', '279.4 mm'],
    },
    'narrowest-rim': {
      type: 'designation',
      unit: 'mm',
      of: 'tyre',
      name: { en: 'narrowest rim of the tyre', de: 'schmalste Felge des Reifens' },
      tool: 'marking',
      usual: ['76.2 mm', '254 mm'],
    },
    'widest-rim': {
      type: 'designation',
      unit: 'mm',
      of: 'tyre',
      name: { en: 'widest rim of the tyre', de: 'breiteste Felge des Reifens' },
      tool: 'marking',
      usual: ['101.6 mm', '330.2 mm'],
    },
    flange: {
      type: 'code',
      optional: true,
      name: { en: 'flange of the rim', de: 'Hornform der Felge' },
      tool: 'marking',
    },
    air: {
      type: 'code',
      name: { en: 'tubeless or with a tube', de: 'schlauchlos oder mit Schlauch' },
      tool: 'marking',
    },
    'tube-allowed': {
      type: 'code',
      of: 'tyre',
      name: { en: 'whether a tube is allowed', de: 'ob ein Schlauch erlaubt ist' },
      tool: 'marking',
    },
    humps: {
      type: 'count',
      of: 'rim',
      name: { en: 'number of humps', de: 'Anzahl Humps' },
      tool: 'marking',
      usual: [1, 2],
    },
  },
  checks: [
    {
      equal: 'diameter-code',
      text: {
        en: 'Tyre and rim must have the same diameter code: half an inch apart, a bead bursts.',
        de: 'Reifen und Felge brauchen dieselbe Kennzahl: ½ Zoll daneben, und der Wulst reißt.',
      },
    },
    {
      id: 'not-too-narrow',
      'at-least': ['rim.width', 'tyre.narrowest-rim'],
      code: 'rim-too-narrow',
      text: {
        en: 'The rim must be as wide as the narrowest that the tyre may have.',
        de: 'Die Felge muss so breit sein wie die schmalste, die der Reifen haben darf.',
      },
    },
    {
      id: 'not-too-wide',
      'at-most': ['rim.width', 'tyre.widest-rim'],
      code: 'rim-too-wide',
      text: {
        en: 'The rim must not be wider than the widest that the tyre may have.',
        de: 'Die Felge darf nicht breiter sein als die breiteste, die der Reifen haben darf.',
      },
    },
    {
      equal: 'flange',
      text: {
        en: 'A tyre that is bound to one form of flange needs a rim with it.',
        de: 'Ein Reifen, der an eine Hornform gebunden ist, braucht eine Felge damit.',
      },
    },
    {
      id: 'known-tyre',
      'one-of': ['tyre.air', ['tubeless', 'tube']],
      code: 'no-such-tyre',
      text: {
        en: 'A tyre is tubeless, or it has a tube: read the side wall.',
        de: 'Ein Reifen ist schlauchlos oder hat einen Schlauch: Seitenwand lesen.',
      },
    },
    {
      id: 'known-rim',
      'one-of': ['rim.air', ['tubeless', 'tube']],
      code: 'no-such-rim',
      text: {
        en: 'A rim holds air by itself, or it needs a tube: spokes and rivets leak.',
        de: 'Eine Felge ist dicht oder braucht einen Schlauch: Speichen und Nieten sind undicht.',
      },
    },
    {
      id: 'hump',
      'at-least': ['rim.humps', '1'],
      when: { all: [TUBELESS_TYRE, TUBELESS_RIM] },
      code: 'no-hump',
      text: {
        en: 'Without a hump the bead of a tubeless tyre can slip off its seat in a bend.',
        de: 'Ohne Hump kann der Wulst eines schlauchlosen Reifens in der Kurve abrutschen.',
      },
    },
    {
      id: 'second-hump',
      'at-least': ['rim.humps', '2'],
      when: { all: [TUBELESS_TYRE, TUBELESS_RIM] },
      severity: 'caution',
      code: 'one-hump-only',
      text: {
        en: 'A second hump on the inner side is preferred.',
        de: 'Ein zweiter Hump auf der Innenseite ist vorzuziehen.',
      },
    },
    {
      id: 'tube',
      'one-of': ['tyre.air', ['tubeless']],
      when: TUBELESS_RIM,
      severity: 'caution',
      code: 'needs-tube',
      text: {
        en: 'This tyre needs a tube, on this rim as on any: check the valve hole.',
        de: 'Dieser Reifen braucht auch auf dieser Felge einen Schlauch: Ventilloch prüfen.',
      },
    },
    {
      id: 'tube-allowed',
      'one-of': ['tyre.tube-allowed', ['yes']],
      when: { all: [TUBELESS_TYRE, TUBE_RIM] },
      code: 'tube-not-allowed',
      text: {
        en: 'On this rim a tubeless tyre needs a tube, which its maker must allow.',
        de: 'Auf dieser Felge braucht der Reifen einen Schlauch: Sein Hersteller muss es erlauben.',
      },
    },
  ],
  notChecked: [
    { en: 'load index and speed symbol', de: 'Lastindex und Geschwindigkeitssymbol' },
    { en: 'load and pressure that the rim bears', de: 'Traglast und Druck der Felge' },
    { en: 'tyres that run flat, and their rims', de: 'Notlaufreifen und ihre Felgen' },
    { en: 'valve, sensor in it and balance', de: 'Ventil, Sensor darin und Wuchtung' },
    { en: 'age, damage and which way it turns', de: 'Alter, Schäden und Laufrichtung' },
  ],
};
