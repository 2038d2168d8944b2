/**
 * The cross of a universal joint in a yoke, by the size of its bearing caps.
 *
 * Standard: none; makers sort their joints into series of their own, which are names for sizes, so
 * the sizes decide. A cross has two such faces, one for each yoke: some crosses have caps of two
 * sizes, or of two styles, to join two series.
 *
 * How the caps are held: `outside-ring` (snap rings in grooves of the yoke, outside the caps),
 * `inside-ring` (rings in grooves of the caps, inside the ears of the yoke), `strap` or `u-bolt`
 * (half bores, the caps between two tabs), `wing` (caps with ears of their own, bolted on). Any
 * other way is compared by name, cap and span, which is said. The span is where the caps are
 * stopped: over the ends of the caps, with inside rings over the outer faces of the rings, with
 * wings over their keys; in the yoke from ring to ring, from tab to tab, over the inner faces of
 * its ears, or between its keyways.
 *
 * Caps sit with 0.05 mm of grip to 0.02 mm of play. Across the span 0 to 0.30 mm may be left,
 * which graded rings take up; more than 0.05 mm of it must be taken up, or the shaft runs out. Bolt
 * holes of wings agree within 0.2 mm. All of these are common practice, no source. Caps of 27 mm
 * and of 1 1/16 in (26.99 mm) go into one bore: it is the span that tells their series apart.
 *
 * Left out: angle and length of the joint (they belong to the shaft), grease, torque.
 */

import type { BuiltInKind } from './kind.js';

const BORED = ['outside-ring', 'inside-ring', 'strap', 'u-bolt'];
const WINGED = {
  all: [{ 'one-of': ['cross.retention', ['wing']] }, { 'one-of': ['yoke.retention', ['wing']] }],
};

export const universalJoint: BuiltInKind = {
  id: 'universal-joint',
  name: { en: 'universal joint', de: 'Kreuzgelenk' },
  standard: 'none',
  sides: ['cross', 'yoke'],
  sideNames: {
    cross: { en: 'the cross with its bearing caps', de: 'das Zapfenkreuz mit seinen Lagerbüchsen' },
    yoke: { en: 'the yoke', de: 'die Gelenkgabel' },
  },
  caution: 'driveline',
  parameters: {
    retention: {
      type: 'code',
      name: { en: 'how the caps are held', de: 'Sicherung der Lagerbüchsen' },
      tool: 'visual-check',
    },
    cap: {
      type: 'measured',
      unit: 'mm',
      of: 'cross',
      name: { en: 'diameter of the caps', de: 'Durchmesser der Lagerbüchsen' },
      tool: 'micrometer',
      usual: ['15 mm', '50 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'yoke',
      name: { en: 'bore of the yoke', de: 'Bohrung der Gabel' },
      tool: 'bore-gauge',
      usual: ['15 mm', '50 mm'],
    },
    span: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'span between the stops', de: 'Maß zwischen den Anschlägen' },
      tool: 'micrometer',
      usual: ['35 mm', '160 mm'],
    },
    'hole-spacing': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'distance of the holes of a wing', de: 'Lochabstand der Flügel' },
      tool: 'caliper',
      usual: ['25 mm', '80 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread of a wing', de: 'Schraubengewinde der Flügel' },
      tool: 'pitch-gauge',
    },
  },
  checks: [
    {
      equal: 'retention',
      text: {
        en: 'Cross and yoke must be made for the same rings, straps or bolts.',
        de: 'Kreuz und Gabel müssen für dieselben Ringe, Bügel oder Schrauben gemacht sein.',
      },
    },
    {
      id: 'known-retention',
      'one-of': ['yoke.retention', [...BORED, 'wing']],
      severity: 'caution',
      code: 'other-retention',
      text: {
        en: 'Caps held in another way are compared by name and size alone: try them on.',
        de: 'Anders gehaltene Büchsen werden nur nach Name und Maß verglichen: anprobieren.',
      },
    },
    {
      id: 'cap-goes-in',
      clearance: ['yoke.bore', 'cross.cap'],
      min: '-0.05 mm',
      when: { not: WINGED },
      code: 'cap-too-large',
      text: {
        en: 'The caps must go into the yoke, with at most 0.05 mm of grip.',
        de: 'Die Büchsen müssen in die Gabel gehen, mit höchstens 0,05 mm Übermaß.',
      },
    },
    {
      id: 'cap-sits',
      clearance: ['yoke.bore', 'cross.cap'],
      max: '0.02 mm',
      when: { not: WINGED },
      code: 'cap-loose',
      text: {
        en: 'The caps must not move in the yoke: at most 0.02 mm of play.',
        de: 'Die Büchsen dürfen sich in der Gabel nicht bewegen: höchstens 0,02 mm Spiel.',
      },
    },
    {
      id: 'span',
      clearance: ['yoke.span', 'cross.span'],
      min: '0 mm',
      max: '0.3 mm',
      code: 'span-differs',
      text: {
        en: 'The cross must go between the stops, with no more play than rings take up.',
        de: 'Das Kreuz muss zwischen die Anschläge, mit nicht mehr Spiel, als Ringe ausgleichen.',
      },
    },
    {
      id: 'end-play',
      clearance: ['yoke.span', 'cross.span'],
      max: '0.05 mm',
      severity: 'caution',
      code: 'needs-thicker-rings',
      text: {
        en: 'More than 0.05 mm of end play: choose thicker rings, or the shaft runs out.',
        de: 'Mehr als 0,05 mm Axialspiel: dickere Ringe wählen, sonst läuft die Welle unrund.',
      },
    },
    {
      id: 'hole-spacing',
      within: ['cross.hole-spacing', 'yoke.hole-spacing'],
      tolerance: '0.2 mm',
      when: WINGED,
      code: 'holes-do-not-meet',
      text: {
        en: 'The holes of the wings must agree with those of the yoke within 0.2 mm.',
        de: 'Die Löcher der Flügel müssen auf 0,2 mm zu denen der Gabel passen.',
      },
    },
    {
      equal: 'bolt',
      when: WINGED,
      text: {
        en: 'Wings and yoke must be made for the same bolts: thread and pitch.',
        de: 'Flügel und Gabel müssen für dieselben Schrauben gemacht sein.',
      },
    },
  ],
  notChecked: [
    { en: 'angle of the joint and phase of the yokes', de: 'Beugewinkel und Lage der Gabeln' },
    { en: 'straps, U-bolts and their threads', de: 'Bügel und ihre Gewinde' },
    { en: 'grease nipple and its room', de: 'Schmiernippel und Platz dafür' },
    { en: 'torque, wear and balance', de: 'Drehmoment, Verschleiß und Wuchtung' },
  ],
};
