/**
 * The flared end of a brake or clutch pipe, with its nut, in a port.
 *
 * Standards: ISO 4038 (simple flare, the "bubble"), ISO 13486-1 (double flare), SAE J533 and
 * SAE J512 (45 degrees), ISO 8434-2 and SAE J514 (37 degrees). A flare seals on a seat made for
 * it alone, so form and, for a cone, its angle must agree; the angle is that of one flank to the
 * axis. The thread tells nothing of the flare: m10x1 nuts come with bubble and with double
 * flares, and double flares of 37 and of 45 degrees both exist. A single flare in a seat for a
 * double one splits. A double flare needs a nut with a countersunk end; a flat one crushes it.
 *
 * Pipes agree within 0.1 mm: 4.75 mm and 3/16 in are one size, 5 mm is another (common practice,
 * no source). The reach of a nut, from under its hexagon to the end of the flare, must be more
 * than the depth of the seat, or the hexagon stands on the port before the flare is clamped.
 *
 * Left out: pipe wall and material, push-fit and cutting-ring ends.
 */

import type { BuiltInKind } from './kind.js';

const FORMS = ['bubble', 'double', 'single'];

function isOn(side: 'pipe' | 'port', flare: string) {
  return { 'one-of': [`${side}.flare`, [flare]] };
}

export const flarePort: BuiltInKind = {
  id: 'flare-port',
  name: { en: 'flared pipe end', de: 'Bördelanschluss' },
  standard: 'ISO 4038, ISO 13486-1, SAE J533, ISO 8434-2',
  sides: ['pipe', 'port'],
  sideNames: {
    pipe: { en: 'the pipe, its flare and its nut', de: 'das Rohr mit Bördel und Überwurfschraube' },
    port: {
      en: 'the port that it is screwed into',
      de: 'der Anschluss, in den es geschraubt wird',
    },
  },
  caution: 'brakes',
  parameters: {
    flare: {
      type: 'code',
      name: { en: 'form of the flare', de: 'Bördelform' },
      tool: 'loupe',
    },
    'flare-angle': {
      type: 'designation',
      unit: 'deg',
      name: { en: 'angle of the flare', de: 'Bördelwinkel' },
      tool: 'seat-sample',
      usual: ['37 deg', '45 deg'],
    },
    thread: {
      type: 'code',
      name: { en: 'thread of the nut', de: 'Gewinde der Überwurfschraube' },
      tool: 'pitch-gauge',
    },
    'nut-thread': {
      type: 'code',
      name: {
        en: 'nut threaded outside or inside',
        de: 'Überwurfschraube außen oder Mutter innen mit Gewinde',
      },
      tool: 'visual-check',
    },
    'pipe-diameter': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'outer diameter of the pipe', de: 'Außendurchmesser des Rohrs' },
      tool: 'caliper',
      usual: ['4.75 mm', '8 mm'],
    },
    'nut-end': {
      type: 'code',
      of: 'pipe',
      name: { en: 'end of the nut', de: 'Ende der Überwurfschraube' },
      tool: 'visual-check',
    },
    reach: {
      type: 'measured',
      unit: 'mm',
      of: 'pipe',
      optional: true,
      name: { en: 'hexagon to the end of the flare', de: 'Sechskant bis Ende des Bördels' },
      tool: 'caliper',
      usual: ['8 mm', '30 mm'],
    },
    'seat-depth': {
      type: 'measured',
      unit: 'mm',
      of: 'port',
      optional: true,
      name: { en: 'depth of the seat in the port', de: 'Tiefe des Sitzes im Anschluss' },
      tool: 'depth-gauge',
      usual: ['6 mm', '28 mm'],
    },
  },
  checks: [
    {
      equal: 'flare',
      code: 'another-flare',
      text: {
        en: 'Flare and seat must be of one form: the right thread alone does not seal.',
        de: 'Bördel und Sitz müssen dieselbe Form haben: Das Gewinde allein dichtet nicht.',
      },
    },
    {
      equal: 'flare-angle',
      when: { all: [{ not: isOn('pipe', 'bubble') }, { not: isOn('port', 'bubble') }] },
      code: 'another-angle',
      text: {
        en: 'Cones of 37 and 45 degrees touch on a line only, and leak.',
        de: 'Kegel von 37 und 45 Grad berühren sich nur auf einer Linie und sind undicht.',
      },
    },
    {
      id: 'known-flare',
      'one-of': ['port.flare', FORMS],
      severity: 'caution',
      code: 'other-flare-form',
      text: {
        en: 'Only bubble, double and single flares are known; others go by their name alone.',
        de: 'Bekannt sind Bubble-, Doppel- und Einfachbördel, alles andere nur dem Namen nach.',
      },
    },
    {
      equal: 'thread',
      text: {
        en: 'Nut and port must have the same thread and pitch.',
        de: 'Überwurfschraube und Anschluss müssen dasselbe Gewinde haben.',
      },
    },
    {
      equal: 'nut-thread',
      code: 'both-threads-outside-or-inside',
      text: {
        en: 'A nut with its thread outside needs a port with its thread inside, and vice versa.',
        de: 'Außengewinde am Rohr braucht Innengewinde am Anschluss, und umgekehrt.',
      },
    },
    {
      id: 'known-nut-thread',
      'one-of': ['port.nut-thread', ['outside', 'inside']],
      code: 'neither-outside-nor-inside',
      text: {
        en: 'A nut has its thread outside, as a tube nut, or inside, as a union nut: look.',
        de: 'Das Gewinde ist außen (Überwurfschraube) oder innen (Überwurfmutter): nachsehen.',
      },
    },
    {
      id: 'pipe-diameter',
      within: ['pipe.pipe-diameter', 'port.pipe-diameter'],
      tolerance: '0.1 mm',
      code: 'another-pipe',
      text: {
        en: 'The pipe must have the size that seat and nut are made for, within 0.1 mm.',
        de: 'Das Rohr muss auf 0,1 mm das Maß haben, für das der Sitz gemacht ist.',
      },
    },
    {
      id: 'flat-nut',
      'one-of': ['pipe.nut-end', ['flat']],
      when: isOn('pipe', 'bubble'),
      code: 'nut-does-not-press',
      text: {
        en: 'Behind a bubble flare belongs a nut with a flat end.',
        de: 'Hinter einen Bubble-Bördel gehört eine Überwurfschraube mit flachem Ende.',
      },
    },
    {
      id: 'countersunk-nut',
      'one-of': ['pipe.nut-end', ['countersunk']],
      when: isOn('pipe', 'double'),
      code: 'nut-crushes-flare',
      text: {
        en: 'Behind a double flare belongs a countersunk nut: a flat one crushes the flare.',
        de: 'Hinter einen Doppelbördel gehört eine angesenkte Schraube: Eine flache quetscht ihn.',
      },
    },
    {
      id: 'reach',
      clearance: ['pipe.reach', 'port.seat-depth'],
      min: '0.5 mm',
      code: 'hexagon-stands-on-port',
      text: {
        en: 'The flare must be clamped before the hexagon reaches the port, with 0.5 mm to spare.',
        de: 'Der Bördel muss klemmen, bevor der Sechskant aufsteht, mit 0,5 mm Reserve.',
      },
    },
  ],
  notChecked: [
    { en: 'scores, rust and deformation of flare and seat', de: 'Riefen, Rost, Verformung' },
    { en: 'wall and material of the pipe', de: 'Wandstärke und Werkstoff des Rohrs' },
    { en: 'tightness: test it under pressure', de: 'Dichtheit: unter Druck prüfen' },
    { en: 'routing, clips, bends and bleeding', de: 'Verlegung, Halter, Bögen, Entlüften' },
  ],
};
