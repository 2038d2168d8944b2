/**
 * The nose of an input shaft in the crankshaft: a bearing or bush that is pressed in, and the
 * nose that runs in it.
 *
 * Standards: ISO 15 gives the boundary sizes of the bearing (6205 is 25 x 52 x 15 mm), ISO 286
 * the classes of bore and nose. The crankshaft's own bore is the makers'.
 *
 * A joint is one of two seats. Where it is `press`, the bore takes the outside of a bearing or
 * bush; where it is `running`, the bearing takes the nose. So a bearing that is a part of its own
 * has two faces of this kind: outside it is the nose, pressed in; inside it is the crankshaft, in
 * which the nose runs. A crankshaft that is recorded with its bearing in place has the second
 * alone. A bare bore and a nose are no joint: a bearing belongs between them.
 *
 * Limits: the nose runs with 0.01 to 0.06 mm of play and reaches over 60 % of the bearing's width,
 * 1 mm short of the bottom: common practice, no source. Bearing handbooks name N7 for an outer
 * ring that turns, and bushes sit in H7 with s6 (from memory): up to 50 mm that is 0.003 mm of
 * play to 0.059 mm of grip, for which 0.005 and 0.06 stand. Depths and reach count from the face
 * on which the bell-housing sits. A loose bearing does not know how deep it sits, so there the
 * reach is not compared here; a layout can. Where the depth of the bearing is known, the reach of
 * the nose is asked for.
 *
 * Left out: internal clearance and seals of the bearing, run-out of the bore.
 */

import type { BuiltInKind } from './kind.js';

function bothSeats(seat: string) {
  return { all: [{ 'one-of': ['crankshaft.seat', [seat]] }, { 'one-of': ['nose.seat', [seat]] }] };
}

export const pilotBearing: BuiltInKind = {
  id: 'pilot-bearing',
  name: { en: 'pilot bearing', de: 'Führungslager' },
  standard: 'ISO 15 and ISO 286 for the bearing; crankshafts: none',
  sides: ['crankshaft', 'nose'],
  sideNames: {
    crankshaft: {
      en: 'the bore of the crankshaft, or of the bearing in it',
      de: 'die Bohrung der Kurbelwelle oder des Lagers darin',
    },
    nose: {
      en: 'the nose of the input shaft, or the bearing from outside',
      de: 'der Zapfen der Eingangswelle, oder das Lager von außen',
    },
  },
  caution: 'driveline',
  parameters: {
    seat: {
      type: 'code',
      name: { en: 'seat: press or running', de: 'Sitz: gepresst oder laufend' },
      tool: 'visual-check',
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      name: { en: 'diameter of the bore', de: 'Durchmesser der Bohrung' },
      tool: 'bore-gauge',
      usual: ['10 mm', '60 mm'],
    },
    diameter: {
      type: 'measured',
      unit: 'mm',
      of: 'nose',
      name: { en: 'outside diameter', de: 'Außendurchmesser' },
      tool: 'micrometer',
      usual: ['10 mm', '60 mm'],
    },
    'bearing-width': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'width of the bearing', de: 'Breite des Lagers' },
      tool: 'caliper',
      usual: ['6 mm', '25 mm'],
    },
    'bearing-depth': {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      optional: true,
      name: {
        en: 'depth from the housing face to the bearing',
        de: 'Tiefe von der Glockenfläche bis zum Lager',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '120 mm'],
    },
    'hole-depth': {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      optional: true,
      name: {
        en: 'depth from the housing face to the bottom of the hole',
        de: 'Tiefe von der Glockenfläche bis zum Grund der Bohrung',
      },
      tool: 'depth-gauge',
      usual: ['10 mm', '180 mm'],
    },
    'seat-length': {
      type: 'measured',
      unit: 'mm',
      of: 'crankshaft',
      optional: true,
      name: { en: 'length of the seat', de: 'Länge des Lagersitzes' },
      tool: 'depth-gauge',
      usual: ['5 mm', '60 mm'],
    },
    reach: {
      type: 'measured',
      unit: 'mm',
      of: 'nose',
      name: {
        en: 'reach of the nose beyond the housing face',
        de: 'Überstand des Zapfens über die Glockenfläche',
      },
      tool: 'depth-gauge',
      usual: ['5 mm', '170 mm'],
    },
  },
  checks: [
    {
      equal: 'seat',
      code: 'bearing-belongs-between',
      text: {
        en: 'A nose runs in a bearing, and a bearing is pressed into the crankshaft.',
        de: 'Ein Zapfen läuft in einem Lager, und ein Lager wird in die Kurbelwelle gepresst.',
      },
    },
    {
      id: 'known-seat',
      'one-of': ['crankshaft.seat', ['press', 'running']],
      code: 'neither-press-nor-running',
      text: {
        en: 'A bore takes a bearing that is pressed in, or a nose that runs.',
        de: 'Eine Bohrung nimmt ein gepresstes Lager auf oder einen laufenden Zapfen.',
      },
    },
    {
      id: 'grip',
      clearance: ['crankshaft.bore', 'nose.diameter'],
      max: '0.005 mm',
      when: bothSeats('press'),
      code: 'loose-in-crankshaft',
      text: {
        en: 'The bearing must sit tight in the crankshaft, or it turns in its bore.',
        de: 'Das Lager muss fest in der Kurbelwelle sitzen, sonst dreht es in der Bohrung.',
      },
    },
    {
      id: 'press',
      clearance: ['crankshaft.bore', 'nose.diameter'],
      min: '-0.06 mm',
      when: bothSeats('press'),
      code: 'too-tight-to-press',
      text: {
        en: 'With more than 0.06 mm of grip the bearing is crushed or does not go in.',
        de: 'Mit mehr als 0,06 mm Übermaß klemmt das Lager oder geht nicht hinein.',
      },
    },
    {
      id: 'goes-in',
      clearance: ['crankshaft.bore', 'nose.diameter'],
      min: '0.01 mm',
      when: bothSeats('running'),
      code: 'nose-does-not-run',
      text: {
        en: 'The nose must go in and run, with at least 0.01 mm of play.',
        de: 'Der Zapfen muss hineingehen und laufen, mit mindestens 0,01 mm Spiel.',
      },
    },
    {
      id: 'guides',
      clearance: ['crankshaft.bore', 'nose.diameter'],
      max: '0.06 mm',
      when: bothSeats('running'),
      code: 'nose-not-guided',
      text: {
        en: 'With more than 0.06 mm of play the bearing does not guide the input shaft.',
        de: 'Mit mehr als 0,06 mm Spiel führt das Lager die Eingangswelle nicht.',
      },
    },
    {
      id: 'reach',
      clearance: ['nose.reach', 'crankshaft.bearing-depth'],
      min: ['0.6', 'crankshaft.bearing-width'],
      when: bothSeats('running'),
      code: 'nose-too-short',
      text: {
        en: 'The nose must reach over at least 60 % of the width of the bearing.',
        de: 'Der Zapfen muss über mindestens 60 % der Lagerbreite reichen.',
      },
    },
    {
      id: 'bottom',
      clearance: ['crankshaft.hole-depth', 'nose.reach'],
      min: '1 mm',
      when: bothSeats('running'),
      code: 'nose-bottoms',
      text: {
        en: 'The nose must stay 1 mm clear of the bottom of the hole, or it pushes the gears.',
        de: 'Der Zapfen muss 1 mm vor dem Grund enden, sonst drückt er auf das Getriebe.',
      },
    },
    {
      id: 'seat-length',
      'at-least': ['crankshaft.seat-length', 'nose.bearing-width'],
      severity: 'caution',
      code: 'bearing-stands-proud',
      text: {
        en: 'A bearing wider than its seat stands proud: check the clutch and the flywheel bolts.',
        de: 'Ein Lager, breiter als sein Sitz, steht vor: Kupplung und Schwungradschrauben prüfen.',
      },
    },
  ],
  notChecked: [
    { en: 'how deep a bearing of its own sits', de: 'wie tief ein einzelnes Lager sitzt' },
    { en: 'internal clearance, grease and seals', de: 'Lagerluft, Fett und Dichtung' },
    { en: 'length of the ground nose', de: 'Länge des geschliffenen Zapfens' },
    {
      en: 'run-out and wear of bore and nose',
      de: 'Rundlauf und Verschleiß von Bohrung und Zapfen',
    },
  ],
};
