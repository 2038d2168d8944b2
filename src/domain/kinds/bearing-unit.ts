/**
 * A hub bearing unit that is bolted to a knuckle: bolts, spigot, stand-off, and its cable.
 *
 * Standard: none; car makers' own. The holes lie on one pitch circle, but mostly not evenly: the
 * distance between the two holes that are nearest to each other tells a rectangle from a square.
 * The spigot carries the unit, the bolts only hold it: play of 0 to 0.10 mm in the bore. The
 * stand-off, from the face that lies on the knuckle to the face of the wheel, places wheel, brake
 * disc and track; a unit that bolts on with another one has moved all three, so it must agree
 * within 0.2 mm. These figures, like 0.2 mm between pitch circles and between distances of holes,
 * are common practice, no source. On the knuckle the stand-off is that of the unit which it was
 * made for.
 *
 * The thread is in the unit, in the knuckle, or in nuts, and both ends must mean the same. Where a
 * sensor is built into the unit, its cable leaves at a place for which the knuckle must have room;
 * places have names, such as "top" or "axial", and "none" is no sensor and no room for a cable.
 *
 * Left out: wheel and disc on the unit (wheel-mount), the spline of a driven one, a ring for a
 * sensor in the knuckle (wheel-speed-target), each an interface of its own.
 */

import type { BuiltInKind } from './kind.js';

const UNIT_WITHOUT_CABLE = { 'one-of': ['unit.sensor-exit', ['none']] };

export const bearingUnit: BuiltInKind = {
  id: 'bearing-unit',
  name: { en: 'hub bearing unit on the knuckle', de: 'Radlagereinheit am Achsschenkel' },
  standard: 'none',
  sides: ['unit', 'knuckle'],
  sideNames: {
    unit: { en: 'the bearing unit with its flange', de: 'die Radlagereinheit mit ihrem Flansch' },
    knuckle: { en: 'the knuckle or axle that bears it', de: 'der Achsschenkel oder die Achse' },
  },
  caution: 'wheels',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of bolts', de: 'Anzahl Schrauben' },
      tool: 'count',
      usual: [3, 4],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['80 mm', '150 mm'],
    },
    'hole-distance': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'distance between the nearest holes', de: 'Abstand der nächsten Löcher' },
      tool: 'caliper',
      usual: ['40 mm', '130 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
    'threaded-end': {
      type: 'code',
      name: { en: 'where the thread is', de: 'wo das Gewinde ist' },
      tool: 'visual-check',
    },
    spigot: {
      type: 'measured',
      unit: 'mm',
      of: 'unit',
      name: { en: 'spigot diameter of the unit', de: 'Zentrierdurchmesser der Einheit' },
      tool: 'micrometer',
      usual: ['60 mm', '100 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'knuckle',
      name: { en: 'bore of the knuckle', de: 'Bohrung des Achsschenkels' },
      tool: 'bore-gauge',
      usual: ['60 mm', '100 mm'],
    },
    'spigot-length': {
      type: 'measured',
      unit: 'mm',
      of: 'unit',
      name: { en: 'length of the spigot', de: 'Länge des Zentrierbunds' },
      tool: 'depth-gauge',
      usual: ['5 mm', '60 mm'],
    },
    'bore-depth': {
      type: 'measured',
      unit: 'mm',
      of: 'knuckle',
      name: { en: 'free depth of the bore', de: 'freie Tiefe der Bohrung' },
      tool: 'depth-gauge',
      usual: ['5 mm', '80 mm'],
    },
    'stand-off': {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'stand-off of the wheel face from the knuckle',
        de: 'Abstand der Radanlage vom Achsschenkel',
      },
      tool: 'depth-gauge',
      usual: ['15 mm', '90 mm'],
    },
    'sensor-exit': {
      type: 'code',
      name: { en: 'exit of the sensor cable', de: 'Abgang des Sensorkabels' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Unit and knuckle must have the same number of bolts.',
        de: 'Einheit und Achsschenkel müssen gleich viele Schrauben haben.',
      },
    },
    {
      id: 'pcd',
      within: ['unit.pcd', 'knuckle.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'hole-distance',
      within: ['unit.hole-distance', 'knuckle.hole-distance'],
      tolerance: '0.2 mm',
      code: 'holes-spaced-otherwise',
      text: {
        en: 'The holes must be spaced alike: the nearest two agree within 0.2 mm.',
        de: 'Die Löcher müssen gleich verteilt sein: die nächsten zwei auf 0,2 mm gleich.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Both must be made for the same bolts: thread and pitch.',
        de: 'Beide müssen für dieselben Schrauben gemacht sein: Gewinde und Steigung.',
      },
    },
    {
      equal: 'threaded-end',
      text: {
        en: 'Both must mean the same thread: in the unit, in the knuckle, or in nuts.',
        de: 'Beide müssen dasselbe Gewinde meinen: in der Einheit, im Achsschenkel, in Muttern.',
      },
    },
    {
      id: 'known-threaded-end',
      'one-of': ['unit.threaded-end', ['unit', 'knuckle', 'nuts']],
      code: 'no-such-thread',
      text: {
        en: 'The thread is in the unit, in the knuckle, or in nuts.',
        de: 'Das Gewinde ist in der Einheit, im Achsschenkel oder in Muttern.',
      },
    },
    {
      id: 'spigot',
      clearance: ['knuckle.bore', 'unit.spigot'],
      min: '0 mm',
      max: '0.1 mm',
      text: {
        en: 'The spigot carries the unit: it must go in, with at most 0.10 mm of play.',
        de: 'Der Bund trägt die Einheit: Er muss hineingehen, mit höchstens 0,10 mm Spiel.',
      },
    },
    {
      id: 'spigot-depth',
      'at-least': ['knuckle.bore-depth', 'unit.spigot-length'],
      code: 'spigot-bottoms',
      text: {
        en: 'The bore must be as deep as the spigot is long, or the flange does not close.',
        de: 'Die Bohrung muss so tief sein wie der Bund lang, sonst liegt der Flansch nicht an.',
      },
    },
    {
      id: 'stand-off',
      within: ['unit.stand-off', 'knuckle.stand-off'],
      tolerance: '0.2 mm',
      code: 'moves-wheel-and-disc',
      text: {
        en: 'Another stand-off moves wheel, brake disc and track: it must agree within 0.2 mm.',
        de: 'Anderer Abstand verschiebt Rad, Scheibe und Spur: Er muss auf 0,2 mm gleich sein.',
      },
    },
    {
      equal: 'sensor-exit',
      when: { not: UNIT_WITHOUT_CABLE },
      text: {
        en: 'The knuckle must have room for the sensor cable where it leaves the unit.',
        de: 'Der Achsschenkel muss Platz für das Sensorkabel haben, wo es austritt.',
      },
    },
    {
      id: 'sensor-missing',
      equal: ['unit.sensor-exit', 'knuckle.sensor-exit'],
      when: UNIT_WITHOUT_CABLE,
      severity: 'caution',
      code: 'no-sensor-built-in',
      text: {
        en: 'The knuckle is made for a unit with a sensor: without it a wheel speed is missing.',
        de: 'Der Achsschenkel ist für eine Einheit mit Sensor: Sonst fehlt eine Raddrehzahl.',
      },
    },
  ],
  notChecked: [
    { en: 'length and class of the bolts', de: 'Länge und Festigkeitsklasse der Schrauben' },
    { en: 'order of unevenly spaced holes', de: 'Reihenfolge ungleich verteilter Löcher' },
    { en: 'wheel, brake disc and drive on the unit', de: 'Rad, Bremsscheibe, Antrieb der Einheit' },
    { en: 'signal and plug of a built-in sensor', de: 'Signal und Stecker des Sensors' },
    {
      en: 'backplate between unit and knuckle',
      de: 'Ankerplatte zwischen Einheit und Achsschenkel',
    },
    { en: 'load rating of the bearing', de: 'Tragzahl des Lagers' },
  ],
};
