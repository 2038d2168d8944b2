/**
 * The end of a brake or clutch hose at a caliper, cylinder, pipe or union.
 *
 * Standards: ISO 3996 and SAE J1401 govern the hose, ISO 4038 and ISO 13486-1 its male and female
 * ends; banjo rings and their hollow bolts are makers' own. The style is that of the hose's end,
 * and of the end that the port takes: "banjo", "male" or "female". A male or female end seals on a
 * cone ("bubble", "double") or on a washer under its shoulder ("washer"): a male end for a washer
 * bottoms or leaks where the port has a cone. A banjo ring seals with a washer on either side, and
 * its thickness is that for which the hollow bolt is made: within 0.5 mm, common practice, no
 * source. A thicker ring takes thread from the bolt, a thinner one lets it bottom and takes its
 * cross hole out of the groove. The peg that keeps a ring from turning has one name on the hose
 * and in the recess of the port, or is "none" on the hose.
 *
 * Left out: length and routing of the hose; the hollow bolt in its thread is a bolted joint.
 */

import type { BuiltInKind } from './kind.js';

function bothStyles(style: string) {
  return { all: [isStyle('hose', style), isStyle('port', style)] };
}

function isStyle(side: 'hose' | 'port', style: string) {
  return { 'one-of': [`${side}.style`, [style]] };
}

const NEITHER_BANJO = {
  all: [{ not: isStyle('hose', 'banjo') }, { not: isStyle('port', 'banjo') }],
};

export const hoseEnd: BuiltInKind = {
  id: 'hose-end',
  name: { en: 'brake or clutch hose end', de: 'Ende des Brems- oder Kupplungsschlauchs' },
  standard: 'ISO 3996, SAE J1401, ISO 4038, ISO 13486-1; banjo rings none',
  sides: ['hose', 'port'],
  sideNames: {
    hose: { en: 'the end of the hose', de: 'das Ende des Schlauchs' },
    port: { en: 'the port, with its hollow bolt', de: 'der Anschluss, mit seiner Hohlschraube' },
  },
  caution: 'brakes',
  parameters: {
    style: {
      type: 'code',
      name: { en: 'style of the hose end', de: 'Bauart des Schlauchendes' },
      tool: 'visual-check',
    },
    thread: {
      type: 'code',
      name: { en: 'thread, of a banjo its bolt', de: 'Gewinde, beim Ringstück der Hohlschraube' },
      tool: 'pitch-gauge',
    },
    seat: {
      type: 'code',
      name: { en: 'what the end seals on', de: 'worauf das Ende dichtet' },
      tool: 'loupe',
    },
    'ring-thickness': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'thickness of the banjo ring', de: 'Dicke des Ringstücks' },
      tool: 'caliper',
      usual: ['6 mm', '16 mm'],
    },
    'ring-bore': {
      type: 'measured',
      unit: 'mm',
      of: 'hose',
      optional: true,
      name: { en: 'bore of the banjo ring', de: 'Bohrung des Ringstücks' },
      tool: 'caliper',
      usual: ['8 mm', '15 mm'],
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      of: 'port',
      optional: true,
      name: { en: 'diameter of the hollow bolt', de: 'Durchmesser der Hohlschraube' },
      tool: 'caliper',
      usual: ['8 mm', '14 mm'],
    },
    peg: {
      type: 'code',
      of: 'hose',
      optional: true,
      name: { en: 'peg that keeps the ring from turning', de: 'Nase, die das Ringstück hält' },
      tool: 'visual-check',
    },
    'peg-recess': {
      type: 'code',
      of: 'port',
      name: { en: 'recess for the peg', de: 'Aussparung für die Nase' },
      tool: 'visual-check',
    },
    washers: {
      type: 'count',
      of: 'hose',
      optional: true,
      name: { en: 'new sealing washers with the hose', de: 'neue Dichtringe beim Schlauch' },
      tool: 'count',
      usual: [0, 4],
    },
    'washer-outer': {
      type: 'measured',
      unit: 'mm',
      of: 'hose',
      optional: true,
      name: { en: 'outer diameter of the washers', de: 'Außendurchmesser der Dichtringe' },
      tool: 'caliper',
      usual: ['12 mm', '22 mm'],
    },
    'face-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'port',
      optional: true,
      name: { en: 'diameter of the sealing face', de: 'Durchmesser der Dichtfläche' },
      tool: 'caliper',
      usual: ['12 mm', '30 mm'],
    },
  },
  checks: [
    {
      equal: 'style',
      code: 'another-style',
      text: {
        en: 'A banjo, a male and a female end each need a port made for them.',
        de: 'Ringstück, Außengewinde und Innengewinde brauchen je ihren eigenen Anschluss.',
      },
    },
    {
      id: 'known-style',
      'one-of': ['port.style', ['banjo', 'male', 'female']],
      severity: 'caution',
      code: 'other-style',
      text: {
        en: 'Only banjo, male and female ends are known; others go by their name alone.',
        de: 'Bekannt sind Ringstück, Außen- und Innengewinde, alles andere nur dem Namen nach.',
      },
    },
    {
      equal: 'thread',
      text: {
        en: 'Thread and pitch must be equal: a near pitch starts and strips.',
        de: 'Gewinde und Steigung müssen gleich sein: Eine ähnliche fasst an und reißt aus.',
      },
    },
    {
      equal: 'seat',
      when: NEITHER_BANJO,
      code: 'does-not-seal',
      text: {
        en: 'Both ends must seal in one way, on one form of cone or on a washer.',
        de: 'Beide müssen gleich dichten, auf derselben Kegelform oder auf einem Dichtring.',
      },
    },
    {
      id: 'known-seat',
      'one-of': ['port.seat', ['bubble', 'double', 'washer']],
      when: NEITHER_BANJO,
      severity: 'caution',
      code: 'other-seat',
      text: {
        en: 'Bubble, double and washer seats are known; another goes by its name alone.',
        de: 'Bekannt sind Bubble- und Doppelbördelsitz und Dichtring, anderes nur dem Namen nach.',
      },
    },
    {
      id: 'ring-thickness',
      within: ['hose.ring-thickness', 'port.ring-thickness'],
      tolerance: '0.5 mm',
      when: bothStyles('banjo'),
      code: 'ring-thickness-differs',
      text: {
        en: 'A thicker ring takes thread from the bolt, a thinner one lets it bottom.',
        de: 'Ein dickeres Ringstück nimmt der Schraube Gewinde, bei dünnerem steht sie auf.',
      },
    },
    {
      id: 'ring-bore',
      'at-least': ['hose.ring-bore', 'port.bolt-diameter'],
      when: bothStyles('banjo'),
      code: 'bolt-does-not-pass',
      text: {
        en: 'The hollow bolt must pass the ring.',
        de: 'Die Hohlschraube muss durch das Ringstück gehen.',
      },
    },
    {
      id: 'peg',
      equal: ['hose.peg', 'port.peg-recess'],
      when: { not: { 'one-of': ['hose.peg', ['none']] } },
      code: 'peg-in-the-way',
      text: {
        en: 'A ring with a peg needs the recess for it, or it does not lie flat.',
        de: 'Ein Ringstück mit Nase braucht die Aussparung, sonst liegt es nicht auf.',
      },
    },
    {
      id: 'two-washers',
      'at-least': ['hose.washers', '2'],
      when: bothStyles('banjo'),
      severity: 'caution',
      code: 'needs-two-new-washers',
      text: {
        en: 'A banjo needs two new sealing washers, one on either side.',
        de: 'Ein Ringstück braucht zwei neue Dichtringe, einen auf jeder Seite.',
      },
    },
    {
      id: 'one-washer',
      'at-least': ['hose.washers', '1'],
      when: { all: [...NEITHER_BANJO.all, { 'one-of': ['hose.seat', ['washer']] }] },
      severity: 'caution',
      code: 'needs-a-new-washer',
      text: {
        en: 'An end that seals on a washer needs a new one.',
        de: 'Ein Ende, das auf einem Dichtring dichtet, braucht einen neuen.',
      },
    },
    {
      id: 'washer-face',
      'at-least': ['port.face-diameter', 'hose.washer-outer'],
      code: 'washer-overhangs',
      text: {
        en: 'The washer must lie on the sealing face with all its width.',
        de: 'Der Dichtring muss in ganzer Breite auf der Dichtfläche liegen.',
      },
    },
  ],
  notChecked: [
    { en: 'length and routing from lock to lock', de: 'Länge und Verlegung bei vollem Einschlag' },
    { en: 'angle at which the end leaves', de: 'Winkel, in dem der Schlauch abgeht' },
    { en: 'bracket, clip and hexagon that it is held by', de: 'Halter, Klammer und Sechskant' },
    {
      en: 'age, approval and fluid of the hose',
      de: 'Alter, Prüfzeichen und Flüssigkeit des Schlauchs',
    },
    { en: 'two rings on one bolt', de: 'zwei Ringstücke auf einer Schraube' },
  ],
};
