/**
 * The words of the command line, in German. Names of parts stand in quotes or behind a colon, so
 * that nobody need know their gender.
 */

import type { Hand } from '../../usecases/answer.js';
import type { CliWords } from './cli-words.js';
import { GERMAN_KITS } from './german-kits.js';
import { GERMAN_SHOW } from './german-show.js';

const HANDS: Readonly<Record<Hand, string>> = { left: 'links', right: 'rechts' };

function counted(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`;
}

export const GERMAN: CliWords = {
  quoted: (name) => `„${name}“`,
  hands: HANDS,
  answer: {
    order: 'Zu bestellen:',
    measure: 'Zu messen oder herauszufinden:',
    noTolerance: 'Keine Genauigkeit entscheidet es sicher: so fein messen, wie es geht.',
    recorded: (value) => `Erfasst: ${value}.`,
    settles: (points) => `Das allein klärt ${points} offene Punkte.`,
    notChecked: 'Nicht geprüft:',
    cautions: 'Hinweise:',
    from: (edition, engine) => `Ausgabe ${edition}, Programm ${engine}.`,
  },
  finding: {
    fails: 'Nicht erfüllt:',
    open: 'Offen:',
    holds: 'Erfüllt:',
    againstRecords: 'So gebaut, aber gegen die Erfassung:',
    notShown: 'So vorgefunden, von der Erfassung nicht belegt:',
    asBuilt: (places) => `Wie ab Werk gebaut: ${counted(places, 'Stelle', 'Stellen')}.`,
    side: { left: 'Links: ', right: 'Rechts: ' },
    saysSide: (sentence, hand) => sentence.includes(`${HANDS[hand]})`),
    value: 'Wert',
    against: (sides) => sides.join(' gegen '),
    ofPart: (value, part) => `${value} von ${part}`,
  },
  names: {
    found: (asked, part) => `„${asked}“ ist ${part}.`,
    superseded: (part, by) => `${part} ist durch ${by} abgelöst.`,
    ask: 'Um herauszufinden, welches es ist:',
    settle: 'Damit es sich entscheidet:',
    question: (name, answers, how) =>
      `${name}: ${answers.join('; oder ')}.${how === null ? '' : ` ${how}`}`,
  },
  fit: {
    on: (part, vehicle) => `${part} an ${vehicle}.`,
    best: (places) =>
      `Die Einbauplätze unterscheiden sich; dies gilt für den besten: ${places.join(', ')}.`,
    alone: {
      holds: 'Ohne weitere Änderung als die genannten passt es hinein.',
      open: 'Ohne weitere Änderung als die genannten ist nicht bekannt, ob es hineinpasst.',
      fails: 'Ohne weitere Änderung als die genannten passt es nicht hinein.',
    },
    kit: 'Was dazugehört.',
    present: 'ist schon dort',
    replaces: (parts) =>
      parts.length === 0 ? 'ersetzt nichts Erfasstes' : `ersetzt ${parts.join(', ')}`,
  },
  fits: {
    meant: (part, vehicles) =>
      vehicles === 1
        ? `${part}; 1 Fahrzeug kann gemeint sein.`
        : `${part}; ${vehicles} Fahrzeuge können gemeint sein.`,
    verdicts: {
      fits: 'passt',
      'fits-with-changes': 'passt mit Änderungen',
      'does-not-fit': 'passt nicht',
      unknown: 'unbekannt, ob es passt',
      depends: 'kommt darauf an',
    },
    notAlone: 'so, wie es ist, nicht',
    counts: ({ holds, open, fails }) =>
      `So, wie es ist: passt ${holds}, unbekannt ${open}, passt nicht ${fails}.`,
    comesWith: (parts) => `dazu kommt ${parts.join(', ')}`,
    alsoNeeded: (parts) => `außerdem nötig: ${parts.join(', ')}`,
  },
  identify: {
    left: (vehicles) => {
      if (vehicles === 0) return 'Kein Fahrzeug bleibt übrig.';
      return vehicles === 1
        ? '1 Fahrzeug kann gemeint sein.'
        : `${vehicles} Fahrzeuge können gemeint sein.`;
    },
    leftOut: 'Ausgeschieden:',
    excluded: (name, vehicles) =>
      vehicles === 1 ? `${name}: 1 Fahrzeug.` : `${name}: ${vehicles} Fahrzeuge.`,
    warnings: 'Noch einmal hinsehen:',
  },
  identifyPart: {
    nearest: 'Am nächsten kommen:',
    excluded: (told, parts) => `${told}: ${parts === 1 ? '1 Teil' : `${parts} Teile`}.`,
    ask: 'Als Nächstes zu klären, das Beste zuerst (in Klammern, wie viele bleiben):',
    outcomes: (text, outcomes, more) =>
      `${text} ${outcomes.join('; ')}${more === 0 ? '' : `; ${more} weitere`}.`,
  },
  kits: GERMAN_KITS,
  mate: {
    face: (face, part) => `Anschluss ${face} (${part ?? 'unbekanntes Teil'})`,
    ends: (a, b, adapters) =>
      `${[a, ...adapters.map((one) => `über ${one}`)].join(', ')}, mit ${b}.`,
  },
  vehicle: (id) => `Fahrzeug ${id}.`,
  show: GERMAN_SHOW,
  driveline: {
    before: 'jetzt',
    after: (change) => (change === null ? 'danach' : `danach ${change}`),
    unknown: 'nicht bekannt',
    outcomes: { holds: '', open: '?', fails: 'zu viel' },
    changes: { better: 'besser', worse: 'schlechter' },
    noFigures: 'Die Bauweise dieses Fahrzeugs sagt nichts darüber, wie es fährt.',
  },
  calculations: {
    outcomes: { holds: 'ja', open: 'nicht bekannt', fails: 'nein' },
    given: 'Genommen als:',
    formulas: 'Nach:',
    assumed: 'Angenommen:',
    validity: 'Wo es gilt:',
    sources: 'Quellen:',
    bases: {
      read: 'gelesen',
      arithmetic: 'Rechnung',
      'from-memory': 'aus dem Gedächtnis',
      'common-practice': 'übliche Praxis, ohne Quelle',
    },
    warnings: 'Noch einmal hinsehen:',
    notFound: 'Was sich außerdem fände:',
    needs: (output, inputs) => `${output}: mit ${inputs.join(', ')}`,
    takes: 'Nimmt:',
    gives: 'Gibt:',
    isOptional: 'kann fehlen',
    severalAt: (most) => `bis zu ${most}`,
    example: 'Zum Beispiel:',
    from: (engine) => `Programm ${engine}.`,
  },
  codes: {
    groups: {
      checks: 'Zu Prüfungen:',
      cautions: 'Wovor gewarnt wird, obwohl es aufgeht:',
      matings: 'Zu Verbindungen:',
      constraints: 'Zu Regeln, Wegen und Angaben:',
      summaries: 'Zur Antwort im Ganzen:',
      kits: 'Zu einem Umbau und seinen Wegen:',
      lines: 'Zu den Posten eines Umbaus:',
      instead: 'Zu dem, was statt eines Teils ginge:',
      demands: 'Zu Forderungen, und wie man sie zurücknimmt:',
      conflicts: 'Zu Forderungen, die sich widersprechen:',
      losses: 'Zu dem, was dem Fahrzeug verloren geht:',
      'not-checked': 'Zu dem, was nicht geprüft wird:',
      measures: 'Zu dem, was zu messen oder zu klären ist:',
      orders: 'Zu dem, was zu bestellen ist:',
      pieces: 'Zu einem Stück auf der Werkbank:',
      'usual-cautions': 'Übliche Hinweise:',
      kinds: 'Zu Prüfungen der eingebauten Anschlussarten:',
    },
    noData: 'keine Daten',
    ofKind: (kind) => `Anschlussart ${kind}`,
    from: (engine) => `Programm ${engine}.`,
  },
};
