/**
 * The outer end of a half-shaft in the hub: the spline, and the nut that clamps the bearing.
 *
 * Standard: none for the joint; splines by ISO 4156, ANSI B92 or DIN 5480. The nut pulls the
 * shoulder of the outer joint against the inner ring of the wheel bearing, so the shoulder counts
 * as much as the spline: too large it rubs on the seal, too small it stands on nothing, and either
 * way the bearing is not held together. The hub is taken with its bearing and with the nut that
 * comes with it. Lengths count from the shoulder, which is the face of the inner ring: the clamped
 * length goes to where the nut or its washer sits, the stem to the end of its full thread.
 *
 * The nut must find thread over its whole height, and the thread must begin under it, or the nut
 * stops on the plain stem before it clamps. A shoulder must cover the inner ring by 2 mm over the
 * diameter: common practice, no source. The wheel-speed ring is counted only where the hub has a
 * sensor for it; 0 teeth say that there is none.
 *
 * Left out: torque and locking of the nut, preload and class of the bearing, the joint's angle.
 */

import type { BuiltInKind } from './kind.js';

/** ANSI B92.2M takes its system over from ISO 4156 (secondary sources); either may be recorded. */
const ISO_METRIC = ['iso-4156', 'ansi-b92-2m'];

/** Two names of one system: the one case in which unequal names are no difference. */
const TWO_NAMES_OF_ONE = {
  all: [
    { 'one-of': ['shaft.family', ISO_METRIC] },
    { 'one-of': ['hub.family', ISO_METRIC] },
    { not: { equal: 'family' } },
  ],
};

export const halfShaftOuter: BuiltInKind = {
  id: 'half-shaft-outer',
  name: { en: 'outer end of a half-shaft', de: 'äußeres Ende der Antriebswelle' },
  standard: 'none; splines by their own standards',
  sides: ['shaft', 'hub'],
  sideNames: {
    shaft: {
      en: 'the half-shaft with its outer joint',
      de: 'die Antriebswelle mit ihrem äußeren Gelenk',
    },
    hub: {
      en: 'the hub with its bearing and its nut',
      de: 'die Nabe mit ihrem Lager und ihrer Mutter',
    },
  },
  caution: 'driveline',
  parameters: {
    family: {
      type: 'code',
      name: { en: 'spline family', de: 'Verzahnungsnorm' },
      tool: 'known-mate',
    },
    teeth: {
      type: 'count',
      name: { en: 'number of teeth', de: 'Zähnezahl' },
      tool: 'count',
      usual: [20, 40],
    },
    module: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'module', de: 'Modul' },
      tool: 'known-mate',
      usual: ['0.5 mm', '3 mm'],
    },
    'nut-thread': {
      type: 'code',
      name: { en: 'thread of the hub nut', de: 'Gewinde der Nabenmutter' },
      tool: 'pitch-gauge',
    },
    shoulder: {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      name: { en: 'diameter of the shoulder', de: 'Durchmesser der Schulter' },
      tool: 'caliper',
      usual: ['28 mm', '80 mm'],
    },
    'ring-bore': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: {
        en: 'bore of the inner ring at its face',
        de: 'Bohrung des Innenrings an der Stirnseite',
      },
      tool: 'caliper',
      usual: ['25 mm', '60 mm'],
    },
    'ring-face': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: {
        en: 'outside diameter of the inner ring inside the seal',
        de: 'Außendurchmesser des Innenrings innerhalb der Dichtung',
      },
      tool: 'caliper',
      usual: ['30 mm', '80 mm'],
    },
    'stem-length': {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      name: {
        en: 'stem from the shoulder to the end of the full thread',
        de: 'Zapfen ab Schulter bis zum Ende des vollen Gewindes',
      },
      tool: 'caliper',
      usual: ['40 mm', '140 mm'],
    },
    'thread-start': {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      name: {
        en: 'stem from the shoulder to the beginning of the full thread',
        de: 'Zapfen ab Schulter bis zum Anfang des vollen Gewindes',
      },
      tool: 'caliper',
      usual: ['20 mm', '120 mm'],
    },
    'clamped-length': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: {
        en: 'clamped length from the inner ring to the seat of the nut',
        de: 'Klemmlänge vom Innenring bis zur Auflage der Mutter',
      },
      tool: 'depth-gauge',
      usual: ['30 mm', '120 mm'],
    },
    'nut-height': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: { en: 'height of the nut', de: 'Höhe der Mutter' },
      tool: 'caliper',
      usual: ['8 mm', '30 mm'],
    },
    'speed-ring': {
      type: 'count',
      name: { en: 'teeth of the wheel-speed ring', de: 'Zähne des Impulsrings' },
      tool: 'count',
      usual: [0, 100],
    },
  },
  checks: [
    {
      equal: 'family',
      when: { not: TWO_NAMES_OF_ONE },
      text: {
        en: 'Both splines must be of one standard.',
        de: 'Beide Verzahnungen brauchen dieselbe Norm.',
      },
    },
    {
      id: 'known-family',
      'one-of': ['shaft.family', ['iso-4156', 'ansi-b92-2m', 'ansi-b92-1', 'din-5480']],
      severity: 'caution',
      code: 'not-a-standard-form',
      text: {
        en: 'No standard vouches for this form, only its name: try it on before the job.',
        de: 'Für diese Form steht keine Norm, nur ihr Name: vor der Arbeit von Hand probieren.',
      },
    },
    {
      equal: 'teeth',
      text: {
        en: 'Shaft and hub must have the same number of teeth.',
        de: 'Welle und Nabe müssen gleich viele Zähne haben.',
      },
    },
    {
      equal: 'module',
      text: {
        en: 'The modules must be exactly equal.',
        de: 'Die Module müssen genau gleich sein.',
      },
    },
    {
      equal: 'nut-thread',
      text: {
        en: 'The nut must have the thread of the stem: diameter, pitch and hand.',
        de: 'Die Mutter muss das Gewinde des Zapfens haben: Durchmesser, Steigung, Drehsinn.',
      },
    },
    {
      id: 'shoulder-on-ring',
      clearance: ['shaft.shoulder', 'hub.ring-bore'],
      min: '2 mm',
      code: 'shoulder-too-small',
      text: {
        en: 'The shoulder must stand on the inner ring, or the nut clamps nothing.',
        de: 'Die Schulter muss am Innenring anliegen, sonst klemmt die Mutter nichts.',
      },
    },
    {
      id: 'shoulder-in-seal',
      'at-most': ['shaft.shoulder', 'hub.ring-face'],
      code: 'shoulder-on-seal',
      text: {
        en: 'The shoulder must not press on the seal or the outer ring.',
        de: 'Die Schulter darf nicht auf Dichtung oder Außenring drücken.',
      },
    },
    {
      id: 'nut-engages',
      clearance: ['shaft.stem-length', 'hub.clamped-length'],
      min: 'hub.nut-height',
      code: 'too-little-thread',
      text: {
        en: 'The thread must fill the nut over its whole height.',
        de: 'Das Gewinde muss die Mutter auf ihrer ganzen Höhe füllen.',
      },
    },
    {
      id: 'nut-clamps',
      'at-most': ['shaft.thread-start', 'hub.clamped-length'],
      code: 'nut-stops-on-stem',
      text: {
        en: 'The thread must begin under the nut, or the nut stops before it clamps the bearing.',
        de: 'Das Gewinde muss unter der Mutter beginnen, sonst steht sie auf, bevor sie klemmt.',
      },
    },
    {
      equal: 'speed-ring',
      when: { not: { 'one-of': ['hub.speed-ring', [0]] } },
      code: 'speed-ring-differs',
      text: {
        en: 'The sensor in the hub needs a ring with its number of teeth on the shaft.',
        de: 'Der Sensor an der Nabe braucht einen Impulsring mit seiner Zähnezahl auf der Welle.',
      },
    },
  ],
  notChecked: [
    {
      en: 'pressure angle and flanks: an involute-spline interface of its own compares them',
      de: 'Eingriffswinkel und Flanken: Die vergleicht eine eigene Zahnwellen-Schnittstelle',
    },
    {
      en: 'torque and locking of the nut; it is renewed',
      de: 'Drehmoment und Sicherung der Mutter; sie wird erneuert',
    },
    { en: 'room for the joint in the knuckle', de: 'Platz für das Gelenk im Achsschenkel' },
    { en: 'place and air gap of the speed ring', de: 'Lage und Luftspalt des Impulsrings' },
    { en: 'length and angles of the shaft', de: 'Länge und Beugewinkel der Welle' },
  ],
};
