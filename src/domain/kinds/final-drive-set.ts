/**
 * A crown wheel and pinion in an axle: the crown wheel on its carrier, the pinion in its housing.
 *
 * Standard: none; gear data of the makers. The two places are two joints of this kind, told apart
 * by `place`: `crown` for the crown wheel on the carrier, `pinion` for the pinion in the housing.
 * A set has both faces, and so has a complete axle; a carrier that is a part of its own has the
 * first alone. So the carrier can change while the housing stays.
 *
 * The ratio alone proves nothing, and is needed all the same: the higher it is, the smaller the
 * pinion and the nearer the crown wheel must stand to it. Carriers therefore come for spans of
 * ratios, the carrier break, as their maker lists them. What counts is the ratio whose carrier the
 * crown wheel is made for: its own, except for a thick or thin crown wheel, which is made for the
 * carrier of another. Ends of a span are ratios as makers list them, to two decimals, so 0.01 is
 * left at each: 41/11 belongs to a carrier "from 3.73".
 *
 * An offset is that of the pinion below or above the crown wheel, 0 in a spiral bevel set; its
 * direction goes with the hand of the spiral. Crown wheels sit on the register with 0.05 mm of
 * play to 0.05 mm of grip; the bearing at the pinion's head sits with 0 to 0.06 mm of grip, that
 * at its tail with 0.03 mm of play to 0.03 mm of grip; shims take up 0.6 mm of mounting distance:
 * common practice, no source. A taper roller bearing of 35 mm, 0/-0.012, on a journal of m6 has
 * 0.009 to 0.037 mm of grip (ISO 286, tolerances of bearings from memory).
 *
 * Left out: contact pattern, backlash and preload, which are set when it is built; the spline of
 * the pinion, which has an interface of its own. Wheel and pinion are lapped together: a pair is
 * one part and never made up out of two.
 */

import type { BuiltInKind } from './kind.js';

function both(place: string) {
  return { all: [{ 'one-of': ['set.place', [place]] }, { 'one-of': ['axle.place', [place]] }] };
}

const CROWN = both('crown');
const PINION = both('pinion');

export const finalDriveSet: BuiltInKind = {
  id: 'final-drive-set',
  name: { en: 'crown wheel and pinion', de: 'Teller- und Kegelrad' },
  standard: 'none',
  sides: ['set', 'axle'],
  sideNames: {
    set: { en: 'the crown wheel and pinion', de: 'der Satz aus Teller- und Kegelrad' },
    axle: { en: 'the carrier or the axle housing', de: 'das Ausgleichsgehäuse oder Achsgehäuse' },
  },
  caution: 'driveline',
  parameters: {
    place: {
      type: 'code',
      name: { en: 'place: crown or pinion', de: 'Ort: Tellerrad oder Kegelrad' },
      tool: 'visual-check',
    },
    'crown-bolts': {
      type: 'count',
      name: { en: 'number of crown-wheel bolts', de: 'Anzahl Tellerradschrauben' },
      tool: 'count',
      usual: [6, 16],
    },
    'crown-pcd': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle of the crown wheel', de: 'Lochkreis des Tellerrads' },
      tool: 'caliper',
      usual: ['80 mm', '200 mm'],
    },
    'crown-thread': {
      type: 'code',
      name: { en: 'thread of the crown-wheel bolts', de: 'Gewinde der Tellerradschrauben' },
      tool: 'pitch-gauge',
    },
    register: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'register of the crown wheel', de: 'Zentrierung des Tellerrads' },
      tool: 'bore-gauge',
      usual: ['70 mm', '180 mm'],
    },
    'carrier-ratio': {
      type: 'ratio',
      of: 'set',
      name: {
        en: 'ratio whose carrier the crown wheel is made for',
        de: 'Übersetzung, für deren Gehäuse das Tellerrad gemacht ist',
      },
      tool: 'count',
      usual: ['2.5', '6'],
    },
    'lowest-ratio': {
      type: 'ratio',
      of: 'axle',
      name: {
        en: 'lowest ratio of this carrier',
        de: 'kleinste Übersetzung dieses Ausgleichsgehäuses',
      },
      tool: 'marking',
      usual: ['2', '6'],
    },
    'highest-ratio': {
      type: 'ratio',
      of: 'axle',
      name: {
        en: 'highest ratio of this carrier',
        de: 'größte Übersetzung dieses Ausgleichsgehäuses',
      },
      tool: 'marking',
      usual: ['2.5', '8'],
    },
    spiral: {
      type: 'code',
      name: { en: 'hand of the spiral of the pinion', de: 'Spiralrichtung des Kegelrads' },
      tool: 'visual-check',
    },
    offset: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'offset of the pinion', de: 'Achsversatz des Kegelrads' },
      tool: 'caliper',
      usual: ['0 mm', '50 mm'],
    },
    head: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'bearing seat at the head', de: 'Lagersitz am Kopf des Kegelrads' },
      tool: 'micrometer',
      usual: ['25 mm', '60 mm'],
    },
    tail: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'bearing seat at the tail', de: 'Lagersitz am Schaft des Kegelrads' },
      tool: 'micrometer',
      usual: ['20 mm', '50 mm'],
    },
    'mounting-distance': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'mounting distance of the pinion', de: 'Einbaumaß des Kegelrads' },
      tool: 'depth-gauge',
      usual: ['60 mm', '160 mm'],
    },
  },
  checks: [
    {
      equal: 'place',
      text: {
        en: 'The crown wheel goes on the carrier, the pinion into the housing.',
        de: 'Das Tellerrad gehört ans Ausgleichsgehäuse, das Kegelrad ins Achsgehäuse.',
      },
    },
    {
      id: 'known-place',
      'one-of': ['axle.place', ['crown', 'pinion']],
      code: 'neither-crown-nor-pinion',
      text: {
        en: 'A set meets an axle at its crown wheel and at its pinion.',
        de: 'Ein Satz trifft die Achse am Tellerrad und am Kegelrad.',
      },
    },
    {
      equal: 'crown-bolts',
      when: CROWN,
      text: {
        en: 'Crown wheel and carrier must have the same number of bolts.',
        de: 'Tellerrad und Ausgleichsgehäuse müssen gleich viele Schrauben haben.',
      },
    },
    {
      id: 'crown-pcd',
      within: ['set.crown-pcd', 'axle.crown-pcd'],
      tolerance: '0.2 mm',
      when: CROWN,
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      equal: 'crown-thread',
      when: CROWN,
      text: {
        en: 'Crown wheel and carrier must be made for the same bolts: thread, pitch and hand.',
        de: 'Beide müssen für dieselben Schrauben gemacht sein: Gewinde, Steigung, Drehsinn.',
      },
    },
    {
      id: 'register',
      within: ['set.register', 'axle.register'],
      tolerance: '0.05 mm',
      when: CROWN,
      code: 'register-differs',
      text: {
        en: 'The register centres the crown wheel: play or grip of 0.05 mm at most.',
        de: 'Die Zentrierung führt das Tellerrad: höchstens 0,05 mm Spiel oder Übermaß.',
      },
    },
    {
      id: 'above-lowest',
      clearance: ['set.carrier-ratio', 'axle.lowest-ratio'],
      min: '-0.01',
      when: CROWN,
      code: 'below-carrier-break',
      text: {
        en: 'The ratio may not lie below the span of the carrier: else it takes another one.',
        de: 'Liegt die Übersetzung unter dem Bereich des Gehäuses, braucht es ein anderes.',
      },
    },
    {
      id: 'below-highest',
      clearance: ['set.carrier-ratio', 'axle.highest-ratio'],
      max: '0.01',
      when: CROWN,
      code: 'above-carrier-break',
      text: {
        en: 'The ratio may not lie above the span of the carrier: else it takes another one.',
        de: 'Liegt die Übersetzung über dem Bereich des Gehäuses, braucht es ein anderes.',
      },
    },
    {
      equal: 'spiral',
      when: PINION,
      text: {
        en: 'The spiral must have the hand that the housing is made for.',
        de: 'Die Spirale muss die Richtung haben, für die das Gehäuse gemacht ist.',
      },
    },
    {
      equal: 'offset',
      when: PINION,
      text: {
        en: 'The offset of the pinion must be that of the housing.',
        de: 'Der Achsversatz des Kegelrads muss der des Gehäuses sein.',
      },
    },
    {
      id: 'head',
      clearance: ['axle.head', 'set.head'],
      min: '-0.06 mm',
      max: '0 mm',
      when: PINION,
      code: 'head-bearing-differs',
      text: {
        en: 'The bearing must press on at the head of the pinion, with up to 0.06 mm of grip.',
        de: 'Das Lager muss am Kopf des Kegelrads fest sitzen, mit bis zu 0,06 mm Übermaß.',
      },
    },
    {
      id: 'tail',
      within: ['axle.tail', 'set.tail'],
      tolerance: '0.03 mm',
      when: PINION,
      code: 'tail-bearing-differs',
      text: {
        en: 'The bearing at the tail of the pinion must sit within 0.03 mm.',
        de: 'Das Lager am Schaft des Kegelrads muss auf 0,03 mm passend sitzen.',
      },
    },
    {
      id: 'mounting-distance',
      within: ['set.mounting-distance', 'axle.mounting-distance'],
      tolerance: '0.6 mm',
      when: PINION,
      code: 'beyond-shims',
      text: {
        en: 'The mounting distance must be one that shims reach.',
        de: 'Das Einbaumaß muss mit Ausgleichsscheiben erreichbar sein.',
      },
    },
  ],
  notChecked: [
    { en: 'contact pattern, backlash and preload', de: 'Tragbild, Flankenspiel, Vorspannung' },
    { en: 'spline and nut of the pinion', de: 'Verzahnung und Mutter des Kegelrads' },
    { en: 'carrier bearings and their bores', de: 'Lager des Ausgleichsgehäuses' },
    { en: 'room for the crown wheel in the housing', de: 'Platz für das Tellerrad im Gehäuse' },
    { en: 'that wheel and pinion are one lapped pair', de: 'ob beide ein geläpptes Paar sind' },
    {
      en: 'ratio against the other axle and the speedometer',
      de: 'Übersetzung gegen die andere Achse und den Tacho',
    },
  ],
};
