/**
 * A bell-housing on the block of an engine, or on an adapter plate.
 *
 * Standard: SAE J617 for industrial and truck engines (size 4: pilot 361.95 mm, 12 holes on
 * 381.00 mm), ISO 7648 for their flywheel housings; the latter excludes passenger-car engines, so
 * car patterns are the makers' own and no standard can supply them. A pattern of holes that lie
 * on no circle is told by its name: equal names mean that a punch plate or a scan of one covers
 * the other. Or it is told by where its holes and dowels are, from a scan of both faces; where
 * both ends have those, the name is not needed. Each hole must then have one of the other face
 * within half the play of the bolts in both: of a threaded hole the thread's diameter stands for
 * the hole. Positions are seen from the gearbox, from the axis of the crankshaft, to the right
 * and upwards with the engine upright; those of the holes that are used. Dowels are what is
 * forgotten most: without their positions, their number and diameter are always asked for, and a
 * face without any has 0 of them. Holes, pilot and depth are compared besides, wherever both ends
 * record them.
 *
 * Tolerances: dowels 0.05 mm, pitch circle 0.2 mm, depth 1 mm are common practice, no source. A
 * pilot bore may be up to 0.25 mm over its nominal size (SAE J617, largest size), and nominal
 * sizes are what is named here. The depth is that of the crankshaft flange behind the housing
 * face, as the engine has it and as the gearbox is made for it; where it differs, that is a
 * caution: it moves spline, pilot nose and release bearing, which have limits of their own. Both
 * ends are alike, so no side is named.
 *
 * Left out: "six of eight holes line up", which is no fit.
 */

import type { BuiltInKind } from './kind.js';

function noDowelsOf(side: string) {
  return { 'one-of': [`${side}.dowels`, [0]] };
}

export const bellHousing: BuiltInKind = {
  id: 'bell-housing',
  name: { en: 'bell-housing', de: 'Kupplungsglocke' },
  standard: 'SAE J617 and ISO 7648 for industrial and truck engines; cars: none',
  caution: 'driveline',
  parameters: {
    pattern: {
      type: 'code',
      unless: ['hole-positions', 'bolt-hole', 'bolt-diameter', 'dowel-positions'],
      name: { en: 'name of the hole pattern', de: 'Name des Lochbilds' },
      tool: 'punch-plate',
    },
    'hole-positions': {
      type: 'points',
      unit: 'mm',
      optional: true,
      name: { en: 'positions of the bolt holes', de: 'Lage der Schraubenlöcher' },
      tool: 'coordinate-machine',
    },
    'bolt-hole': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['8 mm', '16 mm'],
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'bolt diameter', de: 'Schraubendurchmesser' },
      tool: 'caliper',
      usual: ['8 mm', '14 mm'],
    },
    'dowel-positions': {
      type: 'points',
      unit: 'mm',
      optional: true,
      name: { en: 'positions of the dowels', de: 'Lage der Passhülsen' },
      tool: 'coordinate-machine',
    },
    holes: {
      type: 'count',
      optional: true,
      name: { en: 'number of bolt holes', de: 'Anzahl Schraubenlöcher' },
      tool: 'count',
      usual: [6, 12],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['250 mm', '900 mm'],
    },
    bolt: {
      type: 'code',
      optional: true,
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
    dowels: {
      type: 'count',
      unless: ['dowel-positions'],
      name: { en: 'number of dowels', de: 'Anzahl Passhülsen' },
      tool: 'count',
      usual: [0, 3],
    },
    dowel: {
      type: 'designation',
      unit: 'mm',
      unless: ['dowel-positions'],
      name: { en: 'dowel diameter', de: 'Durchmesser der Passhülsen' },
      tool: 'micrometer',
      usual: ['8 mm', '16 mm'],
    },
    'dowel-spacing': {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'distance between the dowels', de: 'Abstand der Passhülsen' },
      tool: 'caliper',
      usual: ['150 mm', '600 mm'],
    },
    pilot: {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'pilot diameter', de: 'Zentrierdurchmesser' },
      tool: 'bore-gauge',
      usual: ['250 mm', '800 mm'],
    },
    'face-depth': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'depth to the crankshaft flange', de: 'Tiefe zum Kurbelwellenflansch' },
      tool: 'depth-gauge',
      usual: ['0 mm', '120 mm'],
    },
    'starter-side': {
      type: 'code',
      optional: true,
      name: { en: 'side of the starter', de: 'Seite des Anlassers' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'pattern',
      text: {
        en: 'The hole patterns must be the same: some holes that line up are not enough.',
        de: 'Die Lochbilder müssen gleich sein: Ein paar passende Löcher genügen nicht.',
      },
    },
    {
      id: 'holes-line-up',
      coincide: ['a.hole-positions', 'b.hole-positions'],
      tolerance: [
        '1/2',
        {
          sum: ['a.bolt-hole', 'b.bolt-hole', ['-1', 'a.bolt-diameter'], ['-1', 'b.bolt-diameter']],
        },
      ],
      code: 'holes-do-not-line-up',
      text: {
        en: 'Every bolt must find its hole in both faces: all of them, not most.',
        de: 'Jede Schraube braucht ihr Loch in beiden Flächen: alle, nicht die meisten.',
      },
    },
    {
      id: 'bolts-pass',
      'at-least': [
        { min: ['a.bolt-hole', 'b.bolt-hole'] },
        { max: ['a.bolt-diameter', 'b.bolt-diameter'] },
      ],
      code: 'bolts-do-not-pass',
      text: {
        en: 'The bolts must pass the smaller of both holes.',
        de: 'Die Schrauben müssen durch das kleinere der beiden Löcher gehen.',
      },
    },
    {
      id: 'dowels-line-up',
      coincide: ['a.dowel-positions', 'b.dowel-positions'],
      tolerance: '0.05 mm',
      code: 'dowels-do-not-line-up',
      text: {
        en: 'The dowels must stand in the same places within 0.05 mm: they centre the gearbox.',
        de: 'Die Passhülsen müssen auf 0,05 mm gleich liegen: Sie zentrieren das Getriebe.',
      },
    },
    {
      equal: 'holes',
      text: {
        en: 'Both faces must have the same number of bolt holes.',
        de: 'Beide Flächen müssen gleich viele Schraubenlöcher haben.',
      },
    },
    {
      id: 'pcd',
      within: ['a.pcd', 'b.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Both faces must be made for the same bolts: thread and pitch.',
        de: 'Beide Flächen müssen für dieselben Schrauben gemacht sein: Gewinde und Steigung.',
      },
    },
    {
      equal: 'dowels',
      text: {
        en: 'Both faces must have the same number of dowels.',
        de: 'Beide Flächen müssen gleich viele Passhülsen haben.',
      },
    },
    {
      id: 'dowel',
      within: ['a.dowel', 'b.dowel'],
      tolerance: '0.05 mm',
      when: { not: { all: [noDowelsOf('a'), noDowelsOf('b')] } },
      code: 'dowel-differs',
      text: {
        en: 'The dowels must agree within 0.05 mm: they hold the gearbox in line.',
        de: 'Die Passhülsen müssen auf 0,05 mm gleich sein: Sie halten das Getriebe in Flucht.',
      },
    },
    {
      id: 'dowel-spacing',
      within: ['a.dowel-spacing', 'b.dowel-spacing'],
      tolerance: '0.05 mm',
      code: 'dowel-spacing-differs',
      text: {
        en: 'The distance between the dowels must agree within 0.05 mm.',
        de: 'Der Abstand der Passhülsen muss auf 0,05 mm gleich sein.',
      },
    },
    {
      id: 'pilot',
      within: ['a.pilot', 'b.pilot'],
      tolerance: '0.25 mm',
      code: 'pilot-differs',
      text: {
        en: 'The pilot diameters must be of one nominal size.',
        de: 'Die Zentrierdurchmesser müssen dasselbe Nennmaß haben.',
      },
    },
    {
      id: 'face-depth',
      within: ['a.face-depth', 'b.face-depth'],
      tolerance: '1 mm',
      severity: 'caution',
      code: 'depth-differs',
      text: {
        en: 'A depth that differs moves input shaft, pilot nose and release bearing: check them.',
        de: 'Andere Tiefe verschiebt Eingangswelle, Führungszapfen und Ausrücklager: prüfen.',
      },
    },
    {
      equal: 'starter-side',
      text: {
        en: 'The starter must be on the same side.',
        de: 'Der Anlasser muss auf derselben Seite sitzen.',
      },
    },
  ],
  notChecked: [
    { en: 'bolt lengths', de: 'Schraubenlängen' },
    {
      en: 'reach of the input shaft and pilot nose',
      de: 'Länge von Eingangswelle und Führungszapfen',
    },
    {
      en: 'room for clutch, flywheel and ring gear',
      de: 'Platz für Kupplung, Schwungrad und Zahnkranz',
    },
    { en: 'pitch and depth of the starter pinion', de: 'Verzahnung und Lage des Anlasserritzels' },
  ],
};
