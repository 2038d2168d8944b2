/**
 * A flywheel on the flange of a crankshaft: bolts, register, and what fixes its position.
 *
 * Standard: none for cars; the makers' own. SAE J620 and ISO 11055 govern the other face of
 * industrial and truck flywheels, not this one. The register centres the flywheel, not the bolts:
 * its play of 0 to 0.05 mm, the 0.2 mm between pitch circles and between the places of an odd
 * hole are common practice, no source. The bolts are screwed into the crankshaft, so theirs is the
 * thread; a flywheel that is sold with bolts names the thread of those, else its holes decide.
 *
 * Many flywheels go on in one position only, since timing marks or the teeth of a sensor are on
 * them: one bolt hole is out of place ("offset-hole"), or a dowel stands in the crankshaft
 * ("dowel"); "none" has neither. Where the odd hole or the dowel is, is told by its distance to
 * the next bolt hole, clockwise as seen from the gearbox. A dowel is taken to stand on the pitch
 * circle of the bolts. A flywheel with a hole for a dowel goes on a crankshaft without one, but
 * then only its marks tell the position: a caution.
 *
 * The height of the friction face above the flange of the crankshaft is that of the flywheel, and
 * on the crankshaft the one that clutch and release are set up for. Another height moves the
 * fingers to or from the release bearing, which has limits of its own: a caution. Holes more than
 * 1 mm wider than the bolts (ISO 273, coarse series, allows 2.5 mm for M12; from memory) may be
 * meant for larger ones.
 *
 * Left out: a spigot on the flywheel that enters the crankshaft; inertia and balance.
 */

import type { BuiltInKind } from './kind.js';

function both(form: string) {
  return {
    all: [
      { 'one-of': ['crankshaft.position', [form]] },
      { 'one-of': ['flywheel.position', [form]] },
    ],
  };
}

const NO_DOWEL = { 'one-of': ['crankshaft.position', ['none']] };

/** The one pair of unlike ends that goes together: the hole stays empty. */
const EMPTY_DOWEL_HOLE = { all: [NO_DOWEL, { 'one-of': ['flywheel.position', ['dowel']] }] };

export const flywheelCrank: BuiltInKind = {
  id: 'flywheel-crank',
  name: { en: 'flywheel on the crankshaft', de: 'Schwungrad auf der Kurbelwelle' },
  standard: 'none',
  sides: ['crankshaft', 'flywheel'],
  sideNames: {
    crankshaft: {
      en: 'the flange of the crankshaft, with its spigot and threads',
      de: 'der Flansch der Kurbelwelle mit Zentrierbund und Gewinden',
    },
    flywheel: {
      en: 'the flywheel, with its bore and bolt holes',
      de: 'das Schwungrad mit Zentrierbohrung und Schraubenlöchern',
    },
  },
  caution: 'driveline',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of flywheel bolts', de: 'Anzahl Schwungradschrauben' },
      tool: 'count',
      usual: [5, 12],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['55 mm', '110 mm'],
    },
    spigot: {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      name: { en: 'spigot diameter of the crankshaft', de: 'Zentrierdurchmesser der Kurbelwelle' },
      tool: 'micrometer',
      usual: ['30 mm', '90 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'centre bore of the flywheel', de: 'Zentrierbohrung des Schwungrads' },
      tool: 'bore-gauge',
      usual: ['30 mm', '90 mm'],
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      of: 'crankshaft',
      name: { en: 'diameter of the flywheel bolts', de: 'Durchmesser der Schwungradschrauben' },
      tool: 'caliper',
      usual: ['8 mm', '14 mm'],
    },
    'bolt-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['8 mm', '16 mm'],
    },
    bolt: {
      type: 'code',
      optional: true,
      name: { en: 'thread of the flywheel bolts', de: 'Gewinde der Schwungradschrauben' },
      tool: 'pitch-gauge',
    },
    position: {
      type: 'code',
      name: { en: 'what fixes the position', de: 'was die Lage bestimmt' },
      tool: 'visual-check',
    },
    'odd-distance': {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'distance of odd hole or dowel to the next hole, clockwise from the gearbox',
        de: 'Abstand von Versatzloch oder Passstift zum nächsten Loch, vom Getriebe rechtsherum',
      },
      tool: 'caliper',
      usual: ['10 mm', '80 mm'],
    },
    dowel: {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      name: { en: 'diameter of the dowel', de: 'Durchmesser des Passstifts' },
      tool: 'micrometer',
      usual: ['5 mm', '14 mm'],
    },
    'dowel-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'diameter of the dowel hole', de: 'Durchmesser des Passstiftlochs' },
      tool: 'bore-gauge',
      usual: ['5 mm', '14 mm'],
    },
    'friction-height': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: {
        en: 'height of the friction face above the crankshaft flange',
        de: 'Höhe der Reibfläche über dem Kurbelwellenflansch',
      },
      tool: 'depth-gauge',
      usual: ['15 mm', '60 mm'],
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Crankshaft and flywheel must have the same number of bolts.',
        de: 'Kurbelwelle und Schwungrad müssen gleich viele Schrauben haben.',
      },
    },
    {
      id: 'pcd',
      within: ['crankshaft.pcd', 'flywheel.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'register',
      clearance: ['flywheel.bore', 'crankshaft.spigot'],
      min: '0 mm',
      max: '0.05 mm',
      text: {
        en: 'The spigot centres the flywheel: it must go in, with at most 0.05 mm of play.',
        de: 'Der Bund zentriert das Schwungrad: Er muss hineingehen, mit höchstens 0,05 mm Spiel.',
      },
    },
    {
      id: 'bolt-hole',
      'at-least': ['flywheel.bolt-hole', 'crankshaft.bolt-diameter'],
      code: 'bolt-hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the flywheel.',
        de: 'Die Schrauben müssen durch die Löcher des Schwungrads gehen.',
      },
    },
    {
      id: 'bolt-play',
      within: ['crankshaft.pcd', 'flywheel.pcd'],
      tolerance: { sum: ['flywheel.bolt-hole', ['-1', 'crankshaft.bolt-diameter']] },
      code: 'bolts-do-not-enter',
      text: {
        en: 'The bolts must find their threads, even where the pitch circles differ.',
        de: 'Die Schrauben müssen ihr Gewinde finden, auch wo die Lochkreise abweichen.',
      },
    },
    {
      id: 'bolt-hole-width',
      clearance: ['flywheel.bolt-hole', 'crankshaft.bolt-diameter'],
      max: '1 mm',
      severity: 'caution',
      code: 'holes-for-larger-bolts',
      text: {
        en: 'Holes over 1 mm wider than the bolts may be for larger ones: look at the heads.',
        de: 'Löcher über 1 mm weiter als die Schrauben sind wohl für größere: Köpfe ansehen.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Bolts that come with the flywheel must have the thread and pitch of the crankshaft.',
        de: 'Zum Schwungrad gelieferte Schrauben brauchen Gewinde und Steigung der Kurbelwelle.',
      },
    },
    {
      equal: 'position',
      when: { not: EMPTY_DOWEL_HOLE },
      text: {
        en: 'An offset hole needs an offset hole, a dowel the hole for it.',
        de: 'Ein versetztes Loch braucht ein versetztes Loch, ein Passstift sein Loch.',
      },
    },
    {
      id: 'position-free',
      'one-of': ['flywheel.position', ['none', 'offset-hole']],
      when: NO_DOWEL,
      severity: 'caution',
      code: 'position-not-fixed',
      text: {
        en: 'Without the dowel the flywheel goes on anyhow: set it by its timing marks.',
        de: 'Ohne Passstift passt das Schwungrad in jeder Lage: nach den Marken ausrichten.',
      },
    },
    {
      id: 'known-position',
      'one-of': ['crankshaft.position', ['none', 'offset-hole', 'dowel']],
      severity: 'caution',
      code: 'other-position',
      text: {
        en: 'Offset hole and dowel are compared in full, any other by its name alone.',
        de: 'Versatzloch und Passstift werden ganz verglichen, anderes nur dem Namen nach.',
      },
    },
    {
      id: 'odd-hole',
      within: ['crankshaft.odd-distance', 'flywheel.odd-distance'],
      tolerance: '0.2 mm',
      when: { any: [both('offset-hole'), both('dowel')] },
      code: 'odd-hole-elsewhere',
      text: {
        en: 'The odd hole or the dowel must be in the same place within 0.2 mm.',
        de: 'Versatzloch oder Passstift müssen auf 0,2 mm am selben Ort sein.',
      },
    },
    {
      id: 'dowel',
      clearance: ['flywheel.dowel-hole', 'crankshaft.dowel'],
      min: '0 mm',
      when: both('dowel'),
      code: 'dowel-does-not-enter',
      text: {
        en: 'The dowel of the crankshaft must enter its hole in the flywheel.',
        de: 'Der Passstift der Kurbelwelle muss in sein Loch im Schwungrad gehen.',
      },
    },
    {
      id: 'friction-height',
      within: ['crankshaft.friction-height', 'flywheel.friction-height'],
      tolerance: '1 mm',
      severity: 'caution',
      code: 'moves-release-bearing',
      text: {
        en: 'Another height of the friction face moves the fingers: check the release bearing.',
        de: 'Andere Höhe der Reibfläche verschiebt die Zungen: Ausrücklager prüfen.',
      },
    },
  ],
  notChecked: [
    { en: 'length and class of the bolts', de: 'Länge und Festigkeitsklasse der Schrauben' },
    {
      en: 'other holes that are not evenly spaced',
      de: 'weitere ungleich verteilte Löcher',
    },
    { en: 'a dowel off the pitch circle', de: 'ein Passstift neben dem Lochkreis' },
    { en: 'ring gear and starter', de: 'Zahnkranz und Anlasser' },
    { en: 'marks or teeth for engine timing', de: 'Marken oder Zähne für die Motorsteuerung' },
    { en: 'inertia, balance and run-out', de: 'Trägheit, Wuchtung und Rundlauf' },
    { en: 'height of the spigot in the bore', de: 'Höhe des Bunds in der Bohrung' },
  ],
};
