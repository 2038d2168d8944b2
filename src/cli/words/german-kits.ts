/**
 * The words of the command line around the routes of a kit, in German.
 */

import type { KitWords } from './kit-words.js';

function counted(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`;
}

export const GERMAN_KITS: KitWords = {
  on: (vehicle) => `An ${vehicle}.`,
  way: (number) => `Weg ${number}`,
  wayOf: (number, count) => `Weg ${number} von ${count}.`,
  grade: 'Belegt',
  grades: { proven: 'ja', open: 'nein' },
  leadsTo: {
    proven: 'belegte Wege',
    open: 'Wege, keiner belegt',
    none: 'kein Weg',
    depends: 'kommt darauf an',
    unknown: 'nicht bekannt',
  },
  beatenBy: (number) => `Weg ${number} ist nirgends schlechter und in einem besser.`,
  more: 'Es gibt mehr Wege; --routes fragt nach mehr.',
  atLeast: (grade, cost) =>
    `Kein anderer ${grade === 'proven' ? 'belegter' : 'offener'} Weg kostet weniger als ${cost}.`,
  actions: {
    add: 'Einzubauen:',
    adapter: 'Dazwischen:',
    lot: 'Als Ganzes zu kaufen:',
    work: 'Zu bearbeiten:',
    extra: 'Wird verbraucht:',
    remove: 'Kommt heraus:',
    open: 'Zu öffnen, um heranzukommen:',
  },
  recommended: 'Außerdem ratsam:',
  piece: (count) => `${count} Stück`,
  notKnownHowMuch: 'niemand weiß, wie viel',
  between: (mating) => `in ${mating}`,
  money: (amount, currency) => (currency === null ? amount : `${amount} ${currency}`),
  sources: {
    owned: 'vorhanden',
    lot: 'gehört zu dem, was als Ganzes gekauft wird',
    present: 'ist am Fahrzeug',
    unpriced: 'Preis nicht bekannt',
  },
  hours: (hours) => `${hours} h`,
  labour: (amount) => `Arbeit ${amount}`,
  packs: (packs, pack) => `${counted(packs, 'Packung', 'Packungen')} zu ${pack}`,
  leftOver: (parts) => `Bleibt übrig: ${parts.join(', ')}.`,
  signOff: (who) => `zu unterschreiben: ${who}`,
  signers: { workshop: 'Werkstatt', engineer: 'Ingenieur' },
  notReversible: 'nicht rückgängig zu machen',
  total: (cost, beside) =>
    `Zusammen ${cost} netto${beside.length === 0 ? '' : `: ${beside.join(', ')}`}.`,
  parts: (amount) => `Teile ${amount}`,
  works: (amount) => `Bearbeitung ${amount}`,
  unpriced: (lines) => `${counted(lines, 'Zeile', 'Zeilen')} ohne Preis`,
  untimed: (lines) => `${counted(lines, 'Zeile', 'Zeilen')} ohne Stunden`,
  limitNotKnown: (limit, why) =>
    `Nicht bekannt, ob die Grenze ${limit} eingehalten wird: ${why.join(', ')}.`,
  limits: { cost: 'der Kosten', labourHours: 'der Arbeit', leadDays: 'der Tage' },
  leadNotKnown: 'niemand weiß, wann alles da ist',
  orMore: (sum) => `${sum} oder mehr`,
  why: 'Warum, vom Gewünschten an:',
  conflict: 'Diese Forderungen widersprechen sich:',
  cannot: 'Das lässt sich nicht erfüllen:',
  notSmallest: 'Vielleicht widersprechen sich schon weniger davon.',
  because: 'Denn:',
  noPath: 'Die Gründe wurden nicht rechtzeitig gefunden.',
  waysOut: 'Was helfen würde:',
  moreWaysOut: 'Es gibt weitere Auswege.',
  outOfStep: 'Nicht im Gleichlauf:',
  better: 'Fährt besser:',
  worse: 'Fährt schlechter:',
  loses: 'Was das Fahrzeug verliert:',
  yes: 'ja',
  no: 'nein',
  nobody: 'niemand',
  notKnown: 'nicht bekannt',
  decimal: (text) => text.replace('.', ','),
  offers: (number) => `Preise der Liste ${number}.`,
};
