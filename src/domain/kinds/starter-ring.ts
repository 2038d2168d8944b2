/**
 * The pinion of a starter in the ring gear of a flywheel.
 *
 * Standards: SAE J543 for gears in inch pitches with Fellows stub teeth, ISO 8123 and ISO 9457 for
 * pinions in inch and metric pitches. The ring gear comes with the flywheel, so a change of
 * flywheel opens this joint. The starter is taken as it sits in its housing, which sets how far
 * the pinion is from the crankshaft.
 *
 * A stub pitch has two numbers: 8/10 has teeth spaced by 8 and as high as those of 10. Spacing is
 * the module (1/8 in), height the second one (1/10 in); on teeth of full height both are equal.
 * Most pinions are enlarged: the one that SAE J543 calls 11/10 has 10 teeth on a blank for 11. The
 * centre distance goes by the blank, not by the count: (z1 + z2) m/2, and 0.020 to 0.040 in more
 * for backlash (SAE J543, read in a secondary summary). Less than that is right only if the teeth
 * are thinned, so it is a caution. The tip diameter tells the blank: m z and two heights.
 *
 * A pinion at rest stays 1.5 mm clear of the ring and engages over two thirds of its width: common
 * practice, no source. Distances count from the face on which the starter is bolted.
 *
 * Left out: the starter's pilot in its housing (SAE J542: 0.03 to 0.25 mm of play), its bolts.
 */

import type { BuiltInKind } from './kind.js';

/** Half the sum of both pitch diameters, by the blanks. */
const PITCH_RADII = {
  sum: [
    ['1/2', 'ring.module', 'ring.blank-teeth'],
    ['1/2', 'starter.module', 'starter.blank-teeth'],
  ],
};

export const starterRing: BuiltInKind = {
  id: 'starter-ring',
  name: { en: 'starter and ring gear', de: 'Anlasser und Zahnkranz' },
  standard: 'SAE J543, ISO 8123 and ISO 9457',
  sides: ['ring', 'starter'],
  sideNames: {
    ring: { en: 'the flywheel with its ring gear', de: 'das Schwungrad mit seinem Zahnkranz' },
    starter: { en: 'the starter in its housing', de: 'der Anlasser an seinem Platz' },
  },
  caution: 'general',
  parameters: {
    module: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'module', de: 'Modul' },
      tool: 'known-mate',
      usual: ['2 mm', '3.5 mm'],
    },
    'height-module': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'module of the tooth height', de: 'Modul der Zahnhöhe' },
      tool: 'known-mate',
      usual: ['1.5 mm', '3.5 mm'],
    },
    'pressure-angle': {
      type: 'designation',
      unit: 'deg',
      optional: true,
      name: { en: 'pressure angle', de: 'Eingriffswinkel' },
      tool: 'known-mate',
      usual: ['12 deg', '20 deg'],
    },
    'blank-teeth': {
      type: 'count',
      name: { en: 'number of teeth of the blank', de: 'Zähnezahl des Radkörpers' },
      tool: 'count',
      usual: [8, 160],
    },
    'tip-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'starter',
      optional: true,
      name: { en: 'tip diameter of the pinion', de: 'Kopfkreisdurchmesser des Ritzels' },
      tool: 'caliper',
      usual: ['20 mm', '50 mm'],
    },
    'centre-distance': {
      type: 'measured',
      unit: 'mm',
      of: 'starter',
      name: {
        en: 'distance from the crankshaft to the pinion',
        de: 'Achsabstand von der Kurbelwelle zum Ritzel',
      },
      tool: 'caliper',
      usual: ['110 mm', '260 mm'],
    },
    'face-distance': {
      type: 'measured',
      unit: 'mm',
      of: 'ring',
      name: {
        en: 'distance from the mounting face to the ring',
        de: 'Abstand von der Anschraubfläche zum Zahnkranz',
      },
      tool: 'depth-gauge',
      usual: ['5 mm', '80 mm'],
    },
    'rest-distance': {
      type: 'measured',
      unit: 'mm',
      of: 'starter',
      name: {
        en: 'distance from the mounting face to the pinion at rest',
        de: 'Abstand von der Anschraubfläche zum ruhenden Ritzel',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '75 mm'],
    },
    'ring-width': {
      type: 'measured',
      unit: 'mm',
      of: 'ring',
      optional: true,
      name: { en: 'width of the ring gear', de: 'Breite des Zahnkranzes' },
      tool: 'caliper',
      usual: ['8 mm', '20 mm'],
    },
    'thrown-distance': {
      type: 'measured',
      unit: 'mm',
      of: 'starter',
      optional: true,
      name: {
        en: 'distance from the mounting face to the pinion thrown out',
        de: 'Abstand von der Anschraubfläche zum ausgerückten Ritzel',
      },
      tool: 'depth-gauge',
      usual: ['15 mm', '100 mm'],
    },
    rotation: {
      type: 'code',
      name: {
        en: 'rotation of the crankshaft, seen from the gearbox',
        de: 'Drehsinn der Kurbelwelle, vom Getriebe aus',
      },
      tool: 'visual-check',
    },
    'lead-in': {
      type: 'code',
      optional: true,
      name: {
        en: 'side from which the pinion comes',
        de: 'Seite, von der das Ritzel einspurt',
      },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'module',
      text: {
        en: 'Both must have exactly the same module; pitch P is the module 1/P in.',
        de: 'Beide müssen genau denselben Modul haben; Pitch P ist der Modul 1/P in.',
      },
    },
    {
      equal: 'height-module',
      text: {
        en: 'Stub teeth and full ones, or stubs of two heights, do not mesh.',
        de: 'Stumpfe und volle Zähne, oder verschieden hohe stumpfe, kämmen nicht.',
      },
    },
    {
      equal: 'pressure-angle',
      text: {
        en: 'The flanks must have the same pressure angle.',
        de: 'Die Flanken müssen denselben Eingriffswinkel haben.',
      },
    },
    {
      id: 'mesh',
      'at-least': ['starter.centre-distance', PITCH_RADII],
      code: 'gears-too-close',
      text: {
        en: 'The pinion must be far enough from the crankshaft for both gears to turn.',
        de: 'Das Ritzel muss so weit von der Kurbelwelle weg sein, dass beide Räder drehen.',
      },
    },
    {
      id: 'depth-of-mesh',
      clearance: ['starter.centre-distance', PITCH_RADII],
      max: '0.040 in',
      code: 'gears-too-far-apart',
      text: {
        en: 'With more than 1.016 mm of spread the teeth hold by their tips and break.',
        de: 'Mit mehr als 1,016 mm Luft tragen nur die Zahnspitzen und brechen.',
      },
    },
    {
      id: 'backlash',
      clearance: ['starter.centre-distance', PITCH_RADII],
      min: '0.020 in',
      severity: 'caution',
      code: 'needs-thinned-teeth',
      text: {
        en: 'Under 0.508 mm of spread only thinned teeth have backlash: measure it.',
        de: 'Unter 0,508 mm Luft haben nur verdünnte Zähne Flankenspiel: messen.',
      },
    },
    {
      id: 'blank',
      within: [
        'starter.tip-diameter',
        {
          sum: [
            ['starter.module', 'starter.blank-teeth'],
            ['2', 'starter.height-module'],
          ],
        },
      ],
      tolerance: '0.5 mm',
      severity: 'caution',
      code: 'not-this-blank',
      text: {
        en: 'The tip diameter belongs to a blank of other teeth: was the pinion only counted?',
        de: 'Der Kopfkreis gehört zu einem anderen Radkörper: Wurde das Ritzel nur gezählt?',
      },
    },
    {
      id: 'rest',
      clearance: ['ring.face-distance', 'starter.rest-distance'],
      min: '1.5 mm',
      code: 'pinion-drags',
      text: {
        en: 'At rest the pinion must stay 1.5 mm clear of the ring.',
        de: 'In Ruhe muss das Ritzel 1,5 mm vom Zahnkranz weg sein.',
      },
    },
    {
      id: 'throw',
      clearance: ['starter.thrown-distance', 'ring.face-distance'],
      min: ['2/3', 'ring.ring-width'],
      code: 'pinion-does-not-reach',
      text: {
        en: 'Thrown out, the pinion must engage over two thirds of the width of the ring.',
        de: 'Ausgerückt muss das Ritzel über zwei Drittel der Kranzbreite eingreifen.',
      },
    },
    {
      equal: 'rotation',
      text: {
        en: 'The starter must turn the engine the way it runs.',
        de: 'Der Anlasser muss den Motor in seinem Drehsinn drehen.',
      },
    },
    {
      equal: 'lead-in',
      severity: 'caution',
      code: 'chamfer-on-the-other-side',
      text: {
        en: 'The chamfers of the ring must face the pinion: turn the ring on the flywheel.',
        de: 'Die Fasen des Kranzes müssen zum Ritzel zeigen: Kranz auf dem Schwungrad wenden.',
      },
    },
  ],
  notChecked: [
    {
      en: 'bolts and pilot of the starter in its housing',
      de: 'Schrauben und Zentrierung des Anlassers',
    },
    { en: 'room for the body of the starter', de: 'Platz für das Gehäuse des Anlassers' },
    { en: 'power of the starter for this engine', de: 'Leistung des Anlassers für diesen Motor' },
    { en: 'wear and hardness of the teeth', de: 'Verschleiß und Härte der Zähne' },
  ],
};
