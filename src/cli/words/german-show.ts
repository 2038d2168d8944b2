/**
 * The words to show records by on the command line, in German.
 */

import type { Basis } from '../../usecases/answer.js';
import type { ShowWords } from './show-words.js';

const BASIS: Readonly<Record<Basis, string>> = {
  built: 'so gebaut',
  measured: 'gemessen',
  drawing: 'aus einer Zeichnung',
  maker: 'laut Hersteller',
  inferred: 'abgeleitet',
  reported: 'berichtet',
};

function comma(decimal: string): string {
  return decimal.replace('.', ',');
}

export const GERMAN_SHOW: ShowWords = {
  headings: {
    adapters: 'Adapter ab Werk:',
    askable: 'Eine Frage darf anderes nennen:',
    asks: 'Was sie unterscheidet:',
    checks: 'Prüfungen:',
    faces: 'Anschlüsse:',
    facts: 'Merkmale:',
    findOut: 'Herauszufinden:',
    fitted: 'Ab Werk eingebaut:',
    matings: 'Was zusammentrifft:',
    notRecorded: 'Nicht erfasst:',
    parameters: 'Was von einem Anschluss erfasst wird:',
    positions: 'Einbauplätze:',
    terms: 'Berechnete Werte:',
    values: 'Werte:',
  },
  labels: {
    built: 'Gebaut',
    evidence: 'Erfasst',
    faces: 'Anschlüsse',
    hand: 'Seite',
    layout: 'Bauweise',
    like: 'Wie',
    maker: 'Hersteller',
    numbers: 'Nummern',
    parts: 'Teile',
    roles: 'Rolle',
    sides: 'Seiten',
    spans: 'Füllt',
    standard: 'Norm',
    supersededBy: 'Abgelöst durch',
    values: 'Werte',
    vin: 'Fahrgestellnummern',
  },
  none: 'Keine.',
  shownOf: (shown, total) => `${shown} von ${total}.`,
  evidence: ({ basis, by, on, source, times }) => {
    const who = [BASIS[basis], by === null ? '' : `von ${by}`, on === null ? '' : `am ${on}`];
    return [
      who.filter((word) => word !== '').join(' '),
      ...(source === null ? [] : [source]),
      ...(times === null ? [] : [`${times}-mal so gebaut`]),
    ].join(', ');
  },
  occupants: { empty: 'nichts', 'as-found': 'nicht erfasst' },
  toldBy: (fact) => `nicht erfasst; das sagt ${fact}`,
  notRecorded: (ids) => `Nicht erfasst: ${ids.join(', ')}.`,
  side: (side) => `Seite ${side}`,
  builtIn: 'Gehört zum Programm.',
  way: (number) => `Ausführung ${number}:`,
  notes: {
    absent: 'das Teil hat keinen solchen Anschluss',
    cautionOnly: 'nur ein Hinweis',
    derived: 'berechnet',
    facesLeftOpen: 'offen gelassen',
    handed: 'links und rechts',
    list: 'eine Liste',
    mayBeAlone: 'darf ohne Gegenstück bleiben',
    mayBeEmpty: 'darf leer sein',
    mayBeLeftOut: 'darf fehlen',
    noAdapters: 'keiner',
    rating: 'was es aushält',
  },
  usual: (range) => `üblich ${range}`,
  unless: (others) => `darf fehlen, wenn ${others.join(' und ')} erfasst sind`,
  asked: (field) => `eine Frage darf anderes nennen (${field})`,
  tool: (name) => `Messmittel: ${name}`,
  pieces: (count) => `${count} Stück`,
  behind: (positions) => `hinter ${positions.join(' und ')}`,
  labour: (hours) => `${comma(hours)} h zum Wechseln`,
  access: (hours) => `${comma(hours)} h, um es aus dem Weg zu räumen`,
  adapters: (most) => (most === 0 ? 'kein Adapter' : `höchstens ${most} Adapter`),
  and: (names) => names.join(' und '),
};
