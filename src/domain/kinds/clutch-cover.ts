/**
 * A clutch cover bolted to a flywheel: bolts, centring, seat, and room for the disc.
 *
 * Standard: ISO 11055 for the sizes of industrial and truck engines; cars: none, their patterns
 * are the makers' own. The cover is centred by dowels, by its rim in a register of the flywheel,
 * or by fitted bolts ("dowels", "register", "bolts"); plain bolts do not centre, and a cover that
 * is off centre is out of balance. The bolts of many covers stand in pairs: the distance between
 * the nearest two tells three pairs from six that are spaced evenly. Play of up to 0.10 mm on
 * dowels, in a register and on fitted bolts, 0.2 mm between pitch circles and between distances of
 * holes, 0.1 mm between pitch circles of dowels and between steps: common practice, no source.
 *
 * A seat is flat, level with the friction face, or stepped, above it; the step is part of the
 * clutch, since it sets clamp load and finger height. So both are skimmed together, and a step is
 * measured, not looked up, on a flywheel that has been machined. The disc must run on the friction
 * face with 2 mm to spare in diameter (common practice, no source); its sizes are those that the
 * cover is made for. Bolts are screwed into the flywheel; a cover that is sold with bolts names
 * the thread of those, else its holes decide.
 *
 * Left out: clamp load and torque, which are computed; fingers and release (clutch-release); the
 * disc itself (clutch-disc).
 *
 * Length: three ways of centring, each with sizes of its own, in one list of parameters and checks.
 */

import type { BuiltInKind } from './kind.js';

function both(parameter: string, form: string) {
  return {
    all: [
      { 'one-of': [`flywheel.${parameter}`, [form]] },
      { 'one-of': [`cover.${parameter}`, [form]] },
    ],
  };
}

export const clutchCover: BuiltInKind = {
  id: 'clutch-cover',
  name: { en: 'clutch cover on the flywheel', de: 'Kupplungsdruckplatte auf dem Schwungrad' },
  standard: 'ISO 11055 for industrial and truck engines; cars: none',
  sides: ['flywheel', 'cover'],
  sideNames: {
    flywheel: {
      en: 'the flywheel, with its friction face, threads and dowels',
      de: 'das Schwungrad mit Reibfläche, Gewinden und Passstiften',
    },
    cover: {
      en: 'the clutch cover, and the disc that it is made for',
      de: 'die Druckplatte, und die Scheibe, für die sie gemacht ist',
    },
  },
  caution: 'driveline',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of cover bolts', de: 'Anzahl Druckplattenschrauben' },
      tool: 'count',
      usual: [6, 9],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['200 mm', '330 mm'],
    },
    'hole-distance': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'distance between the nearest holes', de: 'Abstand der nächsten Löcher' },
      tool: 'caliper',
      usual: ['20 mm', '170 mm'],
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'diameter of the cover bolts', de: 'Durchmesser der Druckplattenschrauben' },
      tool: 'caliper',
      usual: ['6 mm', '12 mm'],
    },
    'bolt-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['6 mm', '13 mm'],
    },
    bolt: {
      type: 'code',
      optional: true,
      name: { en: 'thread of the cover bolts', de: 'Gewinde der Druckplattenschrauben' },
      tool: 'pitch-gauge',
    },
    centring: {
      type: 'code',
      name: { en: 'what centres the cover', de: 'was die Druckplatte zentriert' },
      tool: 'visual-check',
    },
    dowels: {
      type: 'count',
      name: { en: 'number of dowels', de: 'Anzahl Passstifte' },
      tool: 'count',
      usual: [2, 6],
    },
    'dowel-pcd': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle of the dowels', de: 'Lochkreis der Passstifte' },
      tool: 'caliper',
      usual: ['200 mm', '330 mm'],
    },
    dowel: {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'diameter of the dowels', de: 'Durchmesser der Passstifte' },
      tool: 'micrometer',
      usual: ['5 mm', '12 mm'],
    },
    'dowel-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      name: { en: 'diameter of the dowel holes', de: 'Durchmesser der Passstiftlöcher' },
      tool: 'bore-gauge',
      usual: ['5 mm', '12 mm'],
    },
    register: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'register diameter of the cover', de: 'Zentrierdurchmesser der Druckplatte' },
      tool: 'caliper',
      usual: ['200 mm', '360 mm'],
    },
    seat: {
      type: 'code',
      name: { en: 'flat or stepped seat', de: 'flache oder abgesetzte Auflage' },
      tool: 'visual-check',
    },
    step: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'height of the seat above the friction face',
        de: 'Höhe der Auflage über der Reibfläche',
      },
      tool: 'depth-gauge',
      usual: ['0.2 mm', '40 mm'],
    },
    'friction-outer': {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      name: { en: 'outer diameter of the friction face', de: 'Außendurchmesser der Reibfläche' },
      tool: 'caliper',
      usual: ['162 mm', '290 mm'],
    },
    'friction-inner': {
      type: 'measured',
      unit: 'mm',
      of: 'flywheel',
      optional: true,
      name: { en: 'inner diameter of the friction face', de: 'Innendurchmesser der Reibfläche' },
      tool: 'caliper',
      usual: ['90 mm', '190 mm'],
    },
    'disc-outer': {
      type: 'designation',
      unit: 'mm',
      of: 'cover',
      name: { en: 'outer diameter of the disc', de: 'Außendurchmesser der Scheibe' },
      tool: 'caliper',
      usual: ['160 mm', '260 mm'],
    },
    'disc-inner': {
      type: 'designation',
      unit: 'mm',
      of: 'cover',
      optional: true,
      name: { en: 'inner diameter of the lining', de: 'Innendurchmesser des Belags' },
      tool: 'caliper',
      usual: ['100 mm', '190 mm'],
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Flywheel and cover must have the same number of bolts.',
        de: 'Schwungrad und Druckplatte müssen gleich viele Schrauben haben.',
      },
    },
    {
      id: 'pcd',
      within: ['flywheel.pcd', 'cover.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'hole-distance',
      within: ['flywheel.hole-distance', 'cover.hole-distance'],
      tolerance: '0.2 mm',
      code: 'holes-spaced-otherwise',
      text: {
        en: 'The holes must be spaced alike, evenly or in pairs: the nearest two within 0.2 mm.',
        de: 'Die Löcher müssen gleich verteilt sein: die nächsten zwei auf 0,2 mm gleich.',
      },
    },
    {
      id: 'bolt-hole',
      'at-least': ['cover.bolt-hole', 'flywheel.bolt-diameter'],
      code: 'bolt-hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the cover.',
        de: 'Die Schrauben müssen durch die Löcher der Druckplatte gehen.',
      },
    },
    {
      id: 'bolt-play',
      within: ['flywheel.pcd', 'cover.pcd'],
      tolerance: { sum: ['cover.bolt-hole', ['-1', 'flywheel.bolt-diameter']] },
      code: 'bolts-do-not-enter',
      text: {
        en: 'The bolts must find their threads, even where the pitch circles differ.',
        de: 'Die Schrauben müssen ihr Gewinde finden, auch wo die Lochkreise abweichen.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Bolts that come with the cover must have the thread and pitch of the flywheel.',
        de: 'Zur Druckplatte gelieferte Schrauben brauchen Gewinde und Steigung des Schwungrads.',
      },
    },
    {
      equal: 'centring',
      text: {
        en: 'Plain bolts do not centre: both must have the same dowels, register or fitted bolts.',
        de: 'Schrauben zentrieren nicht: Beide brauchen dieselben Stifte, Bünde, Passschrauben.',
      },
    },
    {
      id: 'known-centring',
      'one-of': ['flywheel.centring', ['dowels', 'register', 'bolts']],
      severity: 'caution',
      code: 'other-centring',
      text: {
        en: 'Dowels, register and fitted bolts are compared in full, any other by its name alone.',
        de: 'Passstifte, Bund und Passschrauben vergleicht man ganz, anderes nur dem Namen nach.',
      },
    },
    {
      equal: 'dowels',
      when: both('centring', 'dowels'),
      text: {
        en: 'Each dowel of the flywheel needs its hole in the cover, and each hole its dowel.',
        de: 'Jeder Passstift braucht sein Loch in der Druckplatte, jedes Loch seinen Passstift.',
      },
    },
    {
      id: 'dowel-pcd',
      within: ['flywheel.dowel-pcd', 'cover.dowel-pcd'],
      tolerance: '0.1 mm',
      when: both('centring', 'dowels'),
      code: 'dowel-pcd-differs',
      text: {
        en: 'The pitch circles of the dowels must agree within 0.1 mm.',
        de: 'Die Lochkreise der Passstifte dürfen höchstens 0,1 mm auseinanderliegen.',
      },
    },
    {
      id: 'dowel',
      clearance: ['cover.dowel-hole', 'flywheel.dowel'],
      min: '0 mm',
      max: '0.1 mm',
      when: both('centring', 'dowels'),
      text: {
        en: 'The dowels centre the cover: they must go in, with at most 0.10 mm of play.',
        de: 'Die Passstifte zentrieren: Sie müssen hineingehen, mit höchstens 0,10 mm Spiel.',
      },
    },
    {
      id: 'register',
      clearance: ['flywheel.register', 'cover.register'],
      min: '0 mm',
      max: '0.1 mm',
      when: both('centring', 'register'),
      text: {
        en: 'The rim of the cover must go into the register, with at most 0.10 mm of play.',
        de: 'Der Rand der Druckplatte muss in den Bund gehen, mit höchstens 0,10 mm Spiel.',
      },
    },
    {
      id: 'fitted-bolts',
      clearance: ['cover.bolt-hole', 'flywheel.bolt-diameter'],
      max: '0.1 mm',
      when: both('centring', 'bolts'),
      code: 'bolts-do-not-centre',
      text: {
        en: 'Fitted bolts centre the cover only with at most 0.10 mm of play in its holes.',
        de: 'Passschrauben zentrieren nur mit höchstens 0,10 mm Spiel in den Löchern.',
      },
    },
    {
      equal: 'seat',
      text: {
        en: 'A cover for a flat flywheel does not clamp on a stepped one, nor the other way round.',
        de: 'Druckplatten für flache Schwungräder klemmen auf abgesetzten nicht, und umgekehrt.',
      },
    },
    {
      id: 'known-seat',
      'one-of': ['flywheel.seat', ['flat', 'stepped']],
      code: 'neither-flat-nor-stepped',
      text: {
        en: 'A seat is flat or stepped: lay a straight-edge across the friction face.',
        de: 'Die Auflage ist flach oder abgesetzt: Haarlineal über die Reibfläche legen.',
      },
    },
    {
      id: 'step',
      within: ['flywheel.step', 'cover.step'],
      tolerance: '0.1 mm',
      when: both('seat', 'stepped'),
      code: 'step-differs',
      text: {
        en: 'The step sets clamp load and finger height: it must agree within 0.1 mm.',
        de: 'Der Absatz bestimmt Anpresskraft und Zungenhöhe: Er muss auf 0,1 mm gleich sein.',
      },
    },
    {
      id: 'disc-room',
      clearance: ['flywheel.friction-outer', 'cover.disc-outer'],
      min: '2 mm',
      code: 'disc-overhangs',
      text: {
        en: 'The friction face must be 2 mm larger than the disc that the cover is made for.',
        de: 'Die Reibfläche muss 2 mm größer sein als die Scheibe, für die die Druckplatte ist.',
      },
    },
    {
      id: 'lining-inside',
      'at-most': ['flywheel.friction-inner', 'cover.disc-inner'],
      code: 'lining-overhangs-inside',
      text: {
        en: 'The friction face must reach in as far as the lining does.',
        de: 'Die Reibfläche muss so weit nach innen reichen wie der Belag.',
      },
    },
  ],
  notChecked: [
    { en: 'angle between dowels and bolts', de: 'Winkel zwischen Passstiften und Schrauben' },
    { en: 'clamp load and torque', de: 'Anpresskraft und Drehmoment' },
    { en: 'height of the fingers', de: 'Höhe der Zungen' },
    {
      en: 'room for the cover in the bell-housing',
      de: 'Platz für die Druckplatte in der Kupplungsglocke',
    },
    { en: 'length and class of the bolts', de: 'Länge und Festigkeitsklasse der Schrauben' },
    { en: 'wear and cracks of the friction face', de: 'Verschleiß und Risse der Reibfläche' },
  ],
};
