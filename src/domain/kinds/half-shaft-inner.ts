/**
 * The inner end of a half-shaft at the differential: a splined stub or a bolted flange.
 *
 * Standard: none for the joint; splines by ISO 4156, ANSI B92 or DIN 5480, the seal by ISO 6194-1.
 * Styles: `stub` (the shaft has a stub that goes into the side gear), `cup` (the side gear has the
 * stub, the shaft's joint goes over it) and `flange` (bolted). Any other style is compared by its
 * name, spline and retention, which is said. Retention is what keeps a splined shaft from coming
 * out: `circlip` (a ring on the stub that springs into a recess of the gear), or a maker's own
 * way by name.
 *
 * The journal that a stub runs in the seal may be up to 0.16 mm under the size of the seal, never
 * over it: ISO 6194-1 asks for h11, which is that much over 30 up to 50 mm (read in a secondary
 * table). The ring must land in its recess within 0.3 mm, and pitch circles agree within 0.2 mm:
 * common practice, no source. Distances of ring and recess count from where the shoulder of the
 * stub stops.
 *
 * Left out: length and angles of the whole shaft, side and hand, the register of a flange.
 *
 * Length: three styles of one joint, each check with its sentence in two languages.
 */

import type { BuiltInKind } from './kind.js';

/** ANSI B92.2M takes its system over from ISO 4156 (secondary sources); either may be recorded. */
const ISO_METRIC = ['iso-4156', 'ansi-b92-2m'];

function both(parameter: string, codes: readonly string[]) {
  return {
    all: [
      { 'one-of': [`differential.${parameter}`, codes] },
      { 'one-of': [`shaft.${parameter}`, codes] },
    ],
  };
}

const SPLINED = { not: both('style', ['flange']) };
const BOLTED = both('style', ['flange']);
const STUB = both('style', ['stub']);
const CLIPPED = both('retention', ['circlip']);
/** Two names of one system: the one case in which unequal names are no difference. */
const TWO_NAMES_OF_ONE = {
  all: [...both('family', ISO_METRIC).all, { not: { equal: 'family' } }],
};

export const halfShaftInner: BuiltInKind = {
  id: 'half-shaft-inner',
  name: { en: 'inner end of a half-shaft', de: 'inneres Ende der Antriebswelle' },
  standard: 'none; seal by ISO 6194-1, splines by their own standards',
  sides: ['differential', 'shaft'],
  sideNames: {
    differential: {
      en: 'the differential with its side gear or flange, and the seal',
      de: 'das Differenzial mit Achswellenrad oder Flansch, und der Dichtring',
    },
    shaft: {
      en: 'the half-shaft with its inner joint',
      de: 'die Antriebswelle mit ihrem inneren Gelenk',
    },
  },
  caution: 'driveline',
  parameters: {
    style: {
      type: 'code',
      name: { en: 'style: stub, cup or flange', de: 'Bauform: Zapfen, Topf oder Flansch' },
      tool: 'visual-check',
    },
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
    retention: {
      type: 'code',
      name: { en: 'retention of the shaft', de: 'Sicherung der Welle' },
      tool: 'visual-check',
    },
    recess: {
      type: 'measured',
      unit: 'mm',
      of: 'differential',
      name: {
        en: 'distance from the stop to the recess of the ring',
        de: 'Abstand vom Anschlag zur Nut des Sicherungsrings',
      },
      tool: 'depth-gauge',
      usual: ['5 mm', '150 mm'],
    },
    ring: {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      name: {
        en: 'distance from the shoulder to the ring',
        de: 'Abstand von der Schulter zum Sicherungsring',
      },
      tool: 'caliper',
      usual: ['5 mm', '150 mm'],
    },
    seal: {
      type: 'designation',
      unit: 'mm',
      of: 'differential',
      name: { en: 'shaft size of the seal', de: 'Wellenmaß des Dichtrings' },
      tool: 'marking',
      usual: ['30 mm', '60 mm'],
    },
    journal: {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      name: { en: 'journal for the seal', de: 'Lauffläche für den Dichtring' },
      tool: 'micrometer',
      usual: ['30 mm', '60 mm'],
    },
    depth: {
      type: 'measured',
      unit: 'mm',
      of: 'differential',
      optional: true,
      name: { en: 'depth from the stop to the bottom', de: 'Tiefe vom Anschlag bis zum Grund' },
      tool: 'depth-gauge',
      usual: ['10 mm', '200 mm'],
    },
    'stub-length': {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      optional: true,
      name: { en: 'length of the stub from its shoulder', de: 'Länge des Zapfens ab Schulter' },
      tool: 'caliper',
      usual: ['10 mm', '200 mm'],
    },
    holes: {
      type: 'count',
      name: { en: 'number of bolt holes', de: 'Anzahl Schraubenlöcher' },
      tool: 'count',
      usual: [3, 8],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['60 mm', '130 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
  },
  checks: [
    {
      equal: 'style',
      text: {
        en: 'A stub goes into a side gear, a cup over a stub, a flange onto a flange.',
        de: 'Zapfen gehört ins Achswellenrad, Topf auf Zapfen, Flansch an Flansch.',
      },
    },
    {
      id: 'known-style',
      'one-of': ['shaft.style', ['stub', 'cup', 'flange']],
      severity: 'caution',
      code: 'other-style',
      text: {
        en: 'Stubs, cups and flanges are compared in full, any other style by name and spline.',
        de: 'Zapfen, Topf und Flansch werden ganz verglichen, anderes nach Name und Verzahnung.',
      },
    },
    {
      equal: 'family',
      when: { all: [SPLINED, { not: TWO_NAMES_OF_ONE }] },
      text: {
        en: 'Both splines must be of one standard.',
        de: 'Beide Verzahnungen brauchen dieselbe Norm.',
      },
    },
    {
      id: 'known-family',
      'one-of': ['shaft.family', ['iso-4156', 'ansi-b92-2m', 'ansi-b92-1', 'din-5480']],
      when: SPLINED,
      severity: 'caution',
      code: 'not-a-standard-form',
      text: {
        en: 'No standard vouches for this form, only its name: try it on before the job.',
        de: 'Für diese Form steht keine Norm, nur ihr Name: vor der Arbeit von Hand probieren.',
      },
    },
    {
      equal: 'teeth',
      when: SPLINED,
      text: {
        en: 'Shaft and side gear must have the same number of teeth.',
        de: 'Welle und Achswellenrad müssen gleich viele Zähne haben.',
      },
    },
    {
      equal: 'module',
      when: SPLINED,
      text: {
        en: 'The modules must be exactly equal.',
        de: 'Die Module müssen genau gleich sein.',
      },
    },
    {
      equal: 'retention',
      when: SPLINED,
      text: {
        en: 'Shaft and differential must be made for the same retention, or the shaft comes out.',
        de: 'Beide müssen dieselbe Sicherung haben, sonst kommt die Welle heraus.',
      },
    },
    {
      id: 'known-retention',
      'one-of': ['differential.retention', ['circlip']],
      when: SPLINED,
      severity: 'caution',
      code: 'other-retention',
      text: {
        en: 'Only a ring is compared in full, any other retention by its name: pull at the shaft.',
        de: 'Nur ein Ring wird ganz verglichen, anderes dem Namen nach: an der Welle ziehen.',
      },
    },
    {
      id: 'ring',
      within: ['shaft.ring', 'differential.recess'],
      tolerance: '0.3 mm',
      when: { all: [SPLINED, CLIPPED] },
      code: 'ring-misses-recess',
      text: {
        en: 'The ring must land in its recess within 0.3 mm, or it does not hold the shaft.',
        de: 'Der Ring muss auf 0,3 mm in seine Nut treffen, sonst hält er die Welle nicht.',
      },
    },
    {
      id: 'seal',
      clearance: ['differential.seal', 'shaft.journal'],
      min: '0 mm',
      max: '0.16 mm',
      when: STUB,
      code: 'seal-does-not-suit',
      text: {
        en: 'The journal must be of the size of the seal, at most 0.16 mm under it.',
        de: 'Die Lauffläche muss das Maß des Dichtrings haben, höchstens 0,16 mm darunter.',
      },
    },
    {
      id: 'depth',
      'at-least': ['differential.depth', 'shaft.stub-length'],
      code: 'stub-bottoms',
      text: {
        en: 'The stub must not touch the bottom before its shoulder stops.',
        de: 'Der Zapfen darf nicht aufstehen, bevor die Schulter anliegt.',
      },
    },
    {
      equal: 'holes',
      when: BOLTED,
      text: {
        en: 'Both flanges must have the same number of bolt holes.',
        de: 'Beide Flansche müssen gleich viele Schraubenlöcher haben.',
      },
    },
    {
      id: 'pcd',
      within: ['differential.pcd', 'shaft.pcd'],
      tolerance: '0.2 mm',
      when: BOLTED,
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      equal: 'bolt',
      when: BOLTED,
      text: {
        en: 'Both flanges must be made for the same bolts: thread and pitch.',
        de: 'Beide Flansche müssen für dieselben Schrauben gemacht sein: Gewinde und Steigung.',
      },
    },
  ],
  notChecked: [
    {
      en: 'pressure angle and flanks: an involute-spline interface of its own compares them',
      de: 'Eingriffswinkel und Flanken: Die vergleicht eine eigene Zahnwellen-Schnittstelle',
    },
    { en: 'length, plunge and angles of the shaft', de: 'Länge, Verschiebeweg, Beugewinkel' },
    { en: 'left or right', de: 'links oder rechts' },
    {
      en: 'register, thickness and bolt length of a flange',
      de: 'Zentrierung, Flanschdicke, Schraubenlänge',
    },
    { en: 'wear of journal and seal; the seal is renewed', de: 'Verschleiß; Dichtring erneuern' },
  ],
};
