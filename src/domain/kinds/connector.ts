/**
 * An electrical connector: the plug of a loom in the socket of a part or of another loom.
 *
 * Standard: ISO 8092 governs the tabs, pins and tests of connectors for road vehicles; families
 * and their keys are their makers' own. Family, number of poles, key and pinout decide. The same
 * shape with another pinout plugs in and does not work, or does harm: it needs a loom between.
 * A half that takes every key of its family has the key "universal". A pinout has a name; equal
 * names mean that somebody laid both wiring diagrams side by side, pole by pole. The plug may not
 * be turned into a socket: two plugs do not meet.
 *
 * Sealing and current are cautions: the halves go together, but water or heat gets in. Currents
 * are those of one pole.
 *
 * Left out: what the signals mean (a control signal of its own), and what a module is coded to.
 */

import type { BuiltInKind } from './kind.js';

function isUniversal(side: 'plug' | 'socket') {
  return { 'one-of': [`${side}.key`, ['universal']] };
}

export const connector: BuiltInKind = {
  id: 'connector',
  name: { en: 'electrical connector', de: 'Steckverbindung' },
  standard: 'ISO 8092 for contacts and tests; families: none',
  sides: ['plug', 'socket'],
  sideNames: {
    plug: { en: 'the plug, on the loom', de: 'der Stecker, am Kabelbaum' },
    socket: { en: 'the socket that it goes into', de: 'die Buchse, in die er geht' },
  },
  caution: 'electrical',
  parameters: {
    family: {
      type: 'code',
      name: { en: 'connector family', de: 'Steckerfamilie' },
      tool: 'visual-check',
    },
    poles: {
      type: 'count',
      name: { en: 'number of poles', de: 'Polzahl' },
      tool: 'count',
      usual: [1, 120],
    },
    key: {
      type: 'code',
      name: { en: 'key that keeps other plugs out', de: 'Codierung des Steckers' },
      tool: 'visual-check',
    },
    pinout: {
      type: 'code',
      name: { en: 'name of the pinout', de: 'Name der Pinbelegung' },
      tool: 'wiring-diagram',
    },
    'contact-width': {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'width of the contacts', de: 'Breite der Kontakte' },
      tool: 'caliper',
      usual: ['0.5 mm', '9.5 mm'],
    },
    lock: {
      type: 'code',
      optional: true,
      name: { en: 'lock of the plug', de: 'Verriegelung des Steckers' },
      tool: 'visual-check',
    },
    seal: {
      type: 'code',
      optional: true,
      name: { en: 'seal against water', de: 'Abdichtung gegen Wasser' },
      tool: 'visual-check',
    },
    'current-rating': {
      type: 'designation',
      unit: 'A',
      of: 'plug',
      optional: true,
      name: { en: 'current that a pole bears', de: 'Strom, den ein Pol erträgt' },
      tool: 'marking',
      usual: ['1 A', '60 A'],
    },
    'current-drawn': {
      type: 'measured',
      unit: 'A',
      of: 'socket',
      optional: true,
      name: { en: 'current drawn on a pole', de: 'Strom, der über einen Pol fließt' },
      tool: 'multimeter',
      usual: ['1 A', '60 A'],
    },
  },
  checks: [
    {
      equal: 'family',
      text: {
        en: 'Plug and socket must be of one family.',
        de: 'Stecker und Buchse müssen aus derselben Familie sein.',
      },
    },
    {
      equal: 'poles',
      text: {
        en: 'Plug and socket must have the same number of poles.',
        de: 'Stecker und Buchse müssen gleich viele Pole haben.',
      },
    },
    {
      equal: 'key',
      when: { all: [{ not: isUniversal('plug') }, { not: isUniversal('socket') }] },
      code: 'key-keeps-out',
      text: {
        en: 'The keys must be equal: they are there to keep the wrong plug out.',
        de: 'Die Codierungen müssen gleich sein: Sie halten den falschen Stecker fern.',
      },
    },
    {
      equal: 'pinout',
      code: 'another-pinout',
      text: {
        en: 'The same shape with another pinout plugs in and does harm: it needs a loom between.',
        de: 'Gleiche Form, andere Belegung: geht hinein und schadet; es braucht ein Adapterkabel.',
      },
    },
    {
      equal: 'contact-width',
      code: 'contacts-do-not-meet',
      text: {
        en: 'Contacts of different widths do not meet, or lose hold.',
        de: 'Kontakte verschiedener Breite treffen sich nicht oder halten nicht.',
      },
    },
    {
      equal: 'lock',
      severity: 'caution',
      code: 'does-not-lock',
      text: {
        en: 'The plug goes in and does not lock: it will shake loose.',
        de: 'Der Stecker geht hinein und rastet nicht: Er wird sich losrütteln.',
      },
    },
    {
      equal: 'seal',
      severity: 'caution',
      code: 'not-sealed',
      text: {
        en: 'Only one half is sealed, or each in its own way: keep it dry.',
        de: 'Nur eine Hälfte ist abgedichtet, oder jede anders: trocken verlegen.',
      },
    },
    {
      id: 'current',
      'at-least': ['plug.current-rating', 'socket.current-drawn'],
      severity: 'caution',
      code: 'pole-runs-hot',
      text: {
        en: 'More current is drawn than a pole of the plug bears: it runs hot.',
        de: 'Es fließt mehr Strom, als ein Pol des Steckers erträgt: Er wird heiß.',
      },
    },
  ],
  notChecked: [
    { en: 'each single pole and its wire', de: 'jeder einzelne Pol und seine Leitung' },
    {
      en: 'corrosion, bent pins and broken locks',
      de: 'Korrosion, verbogene Stifte, gebrochene Rasten',
    },
    { en: 'length of the loom', de: 'Länge des Kabelbaums' },
    { en: 'coding and immobiliser of the unit', de: 'Codierung und Wegfahrsperre des Geräts' },
    { en: 'fuse and cross-section of the supply', de: 'Sicherung und Querschnitt der Speisung' },
  ],
};
