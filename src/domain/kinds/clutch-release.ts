/**
 * The release of a clutch: the fingers of its cover, and what pushes or pulls them.
 *
 * Standard: none; car makers' own. The bearing belongs to the end that it is bought with. Comes it
 * with the cover, its bore has to suit the guide tube of the gearbox; comes it with the gearbox (a
 * concentric cylinder), its ring has to meet the tips of the fingers. A bearing that is a part of
 * its own has two faces of this kind: to the cover it is the actuator, to the gearbox the cover.
 * One of the two meetings must be recorded in full: a cover and a fork that both know of no bearing
 * prove nothing.
 *
 * A push bearing on a pull cover does not work and no adapter helps. Travel is that of the
 * bearing, an amount without a sign, since push or pull already says which way. Usual travel of
 * 6 to 12 mm and play on the guide tube of up to 0.5 mm are common practice, no source. Travel
 * beyond what the cover bears damages its spring, but a stop cures it, so it is a caution.
 *
 * Left out: how the travel comes about (cylinders, lever and pedal ratios), the load of the
 * fingers, the height at which fingers and bearing stand.
 */

import type { BuiltInKind } from './kind.js';

/** The bearing comes with the cover and slides on the guide tube of the gearbox. */
const ON_THE_QUILL = ['bearing-bore', 'quill'];
/** The bearing belongs to the gearbox, or is a part, and meets the tips of the fingers. */
const ON_THE_TIPS = ['contact-diameter', 'tips-inner', 'tips-outer'];

export const clutchRelease: BuiltInKind = {
  id: 'clutch-release',
  name: { en: 'clutch release', de: 'Kupplungsausrückung' },
  standard: 'none',
  sides: ['cover', 'actuator'],
  sideNames: {
    cover: {
      en: 'the clutch cover with its fingers, and the bearing that comes with it',
      de: 'die Druckplatte mit ihren Zungen und dem Lager, das dazugehört',
    },
    actuator: {
      en: 'what moves them: fork and guide tube, or concentric cylinder with its bearing',
      de: 'was sie bewegt: Gabel und Führungshülse, oder Zentralausrücker mit Lager',
    },
  },
  caution: 'driveline',
  parameters: {
    type: {
      type: 'code',
      name: { en: 'push or pull', de: 'gedrückt oder gezogen' },
      tool: 'visual-check',
    },
    'travel-needed': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      name: { en: 'bearing travel that frees the disc', de: 'Ausrückweg bis zum Trennen' },
      tool: 'depth-gauge',
      usual: ['6 mm', '12 mm'],
    },
    'travel-limit': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      optional: true,
      name: {
        en: 'bearing travel that the cover bears',
        de: 'größter Ausrückweg, den die Kupplung erträgt',
      },
      tool: 'depth-gauge',
      usual: ['7 mm', '16 mm'],
    },
    travel: {
      type: 'measured',
      unit: 'mm',
      of: 'actuator',
      name: { en: 'bearing travel available', de: 'verfügbarer Ausrückweg' },
      tool: 'depth-gauge',
      usual: ['6 mm', '16 mm'],
    },
    'bearing-bore': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      unless: ON_THE_TIPS,
      name: { en: 'bore of the release bearing', de: 'Bohrung des Ausrücklagers' },
      tool: 'bore-gauge',
      usual: ['20 mm', '60 mm'],
    },
    quill: {
      type: 'measured',
      unit: 'mm',
      of: 'actuator',
      unless: ON_THE_TIPS,
      name: { en: 'diameter of the guide tube (quill)', de: 'Durchmesser der Führungshülse' },
      tool: 'caliper',
      usual: ['20 mm', '60 mm'],
    },
    'contact-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'actuator',
      unless: ON_THE_QUILL,
      name: { en: 'contact circle of the bearing', de: 'Anlaufkreis des Ausrücklagers' },
      tool: 'caliper',
      usual: ['30 mm', '90 mm'],
    },
    'tips-inner': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      unless: ON_THE_QUILL,
      name: { en: 'inner diameter of the finger tips', de: 'Innendurchmesser der Zungenspitzen' },
      tool: 'caliper',
      usual: ['20 mm', '80 mm'],
    },
    'tips-outer': {
      type: 'measured',
      unit: 'mm',
      of: 'cover',
      unless: ON_THE_QUILL,
      name: { en: 'outer diameter of the finger tips', de: 'Außendurchmesser der Zungenspitzen' },
      tool: 'caliper',
      usual: ['30 mm', '100 mm'],
    },
    latch: {
      type: 'code',
      unless: ON_THE_QUILL,
      name: { en: 'latch of a pull bearing', de: 'Verriegelung des gezogenen Lagers' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'type',
      text: {
        en: 'Cover and release must both push, or both pull; no adapter turns one into the other.',
        de: 'Beide müssen drücken oder beide ziehen; kein Adapter macht das eine zum anderen.',
      },
    },
    {
      id: 'known-type',
      'one-of': ['cover.type', ['push', 'pull']],
      code: 'neither-push-nor-pull',
      text: {
        en: 'A cover is pushed or pulled: look for the collar that a pull cover has.',
        de: 'Gedrückt oder gezogen: Gezogene Kupplungen haben einen Kragen in der Mitte.',
      },
    },
    {
      id: 'travel',
      'at-least': ['actuator.travel', 'cover.travel-needed'],
      code: 'too-little-travel',
      text: {
        en: 'The release must move the bearing as far as the clutch needs to come free.',
        de: 'Die Ausrückung muss das Lager so weit bewegen, wie die Kupplung zum Trennen braucht.',
      },
    },
    {
      id: 'over-travel',
      'at-most': ['actuator.travel', 'cover.travel-limit'],
      severity: 'caution',
      code: 'needs-stop',
      text: {
        en: 'More travel than the cover bears damages its spring: fit a stop.',
        de: 'Mehr Weg, als die Kupplung erträgt, schadet der Feder: Anschlag setzen.',
      },
    },
    {
      id: 'quill',
      'at-least': ['cover.bearing-bore', 'actuator.quill'],
      code: 'bearing-does-not-go-on',
      text: {
        en: 'The release bearing must slide on the guide tube.',
        de: 'Das Ausrücklager muss auf der Führungshülse gleiten.',
      },
    },
    {
      id: 'quill-play',
      clearance: ['cover.bearing-bore', 'actuator.quill'],
      max: '0.5 mm',
      severity: 'caution',
      code: 'loose-on-quill',
      text: {
        en: 'With more than 0.5 mm of play on the guide tube the bearing tilts.',
        de: 'Mit mehr als 0,5 mm Spiel auf der Führungshülse verkantet das Lager.',
      },
    },
    {
      id: 'contact-inner',
      'at-least': ['actuator.contact-diameter', 'cover.tips-inner'],
      code: 'misses-the-tips',
      text: {
        en: 'The bearing must touch the tips of the fingers, not pass between them.',
        de: 'Das Lager muss die Zungenspitzen treffen, nicht dazwischen durchgehen.',
      },
    },
    {
      id: 'contact-outer',
      'at-most': ['actuator.contact-diameter', 'cover.tips-outer'],
      code: 'outside-the-tips',
      text: {
        en: 'The bearing must touch the fingers at their tips, not further out.',
        de: 'Das Lager muss die Zungen an den Spitzen berühren, nicht weiter außen.',
      },
    },
    {
      equal: 'latch',
      when: {
        all: [{ 'one-of': ['cover.type', ['pull']] }, { 'one-of': ['actuator.type', ['pull']] }],
      },
      text: {
        en: 'A pull bearing latches into the cover: both need the same latch.',
        de: 'Ein gezogenes Lager rastet in der Kupplung ein: Beide brauchen dieselbe Verriegelung.',
      },
    },
  ],
  notChecked: [
    { en: 'height of the fingers against the bearing', de: 'Höhe der Zungen zum Lager' },
    { en: 'how fork or cylinder hold the bearing', de: 'wie Gabel oder Zylinder das Lager halten' },
    { en: 'pedal force, cylinders and ratios', de: 'Pedalkraft, Zylinder und Übersetzungen' },
  ],
};
