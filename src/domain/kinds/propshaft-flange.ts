/**
 * A bolted companion flange of a propeller shaft: holes, register and bolts.
 *
 * Standards: ISO 7646 (type A) and ISO 7647 (type S) for commercial vehicles; passenger cars have
 * flanges of their makers' own, for which nothing is standardized. So the sizes decide, and the
 * name of a pattern, where both ends have one, may only refuse. The register centres the shaft,
 * not the bolts: its play of 0 to 0.10 mm, like the 0.2 mm between pitch circles, is common
 * practice, no source. The register depth is the height of the spigot and the depth of the
 * recess. Where holes and bolts are recorded, the pitch circles must besides lie within the play
 * of the bolts in both holes; of a threaded hole or a stud the thread's diameter stands for the
 * hole.
 *
 * Left out: cross-toothed flanges (ISO 8667, ISO 12667), which centre by their teeth and have no
 * register; holes that are not evenly spaced; flexible couplings between two flanges.
 */

import type { BuiltInKind } from './kind.js';

export const propshaftFlange: BuiltInKind = {
  id: 'propshaft-flange',
  name: { en: 'propeller-shaft flange', de: 'Gelenkwellenflansch' },
  standard: 'ISO 7646 and ISO 7647 for commercial vehicles; cars: none',
  sides: ['spigot', 'recess'],
  sideNames: {
    spigot: { en: 'the flange with the raised register', de: 'der Flansch mit Zentrierbund' },
    recess: { en: 'the flange with the recess for it', de: 'der Flansch mit Zentrierbohrung' },
  },
  caution: 'driveline',
  parameters: {
    pattern: {
      type: 'code',
      optional: true,
      name: { en: 'name of the flange pattern', de: 'Name des Flanschbilds' },
      tool: 'visual-check',
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
      usual: ['50 mm', '130 mm'],
    },
    register: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'register diameter', de: 'Zentrierdurchmesser' },
      tool: 'bore-gauge',
      usual: ['35 mm', '90 mm'],
    },
    'register-depth': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'register depth', de: 'Zentriertiefe' },
      tool: 'depth-gauge',
      usual: ['1 mm', '10 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'bolt diameter', de: 'Schraubendurchmesser' },
      tool: 'caliper',
      usual: ['6 mm', '16 mm'],
    },
    'bolt-hole': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['6 mm', '17 mm'],
    },
  },
  checks: [
    {
      equal: 'pattern',
      text: {
        en: 'Flanges that are named differently are not made for each other.',
        de: 'Flansche mit verschiedenen Namen sind nicht füreinander gemacht.',
      },
    },
    {
      equal: 'holes',
      text: {
        en: 'Both flanges must have the same number of bolt holes.',
        de: 'Beide Flansche müssen gleich viele Schraubenlöcher haben.',
      },
    },
    {
      id: 'pcd',
      within: ['spigot.pcd', 'recess.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'register',
      clearance: ['recess.register', 'spigot.register'],
      min: '0 mm',
      max: '0.1 mm',
      text: {
        en: 'The register centres the shaft: it must go in, with at most 0.10 mm of play.',
        de: 'Der Bund zentriert die Welle: Er muss hineingehen, mit höchstens 0,10 mm Spiel.',
      },
    },
    {
      id: 'register-depth',
      'at-least': ['recess.register-depth', 'spigot.register-depth'],
      code: 'register-bottoms',
      text: {
        en: 'The recess must be as deep as the register is high, or the flanges do not close.',
        de: 'Die Bohrung muss so tief sein wie der Bund hoch, sonst schließen die Flansche nicht.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Both flanges must be made for the same bolts: thread and pitch.',
        de: 'Beide Flansche müssen für dieselben Schrauben gemacht sein: Gewinde und Steigung.',
      },
    },
    {
      id: 'bolts-pass',
      'at-least': [
        { min: ['spigot.bolt-hole', 'recess.bolt-hole'] },
        { max: ['spigot.bolt-diameter', 'recess.bolt-diameter'] },
      ],
      code: 'bolts-do-not-pass',
      text: {
        en: 'The bolts must pass the smaller of both holes.',
        de: 'Die Schrauben müssen durch das kleinere der beiden Löcher gehen.',
      },
    },
    {
      id: 'bolt-play',
      within: ['spigot.pcd', 'recess.pcd'],
      tolerance: {
        sum: [
          'spigot.bolt-hole',
          'recess.bolt-hole',
          ['-1', 'spigot.bolt-diameter'],
          ['-1', 'recess.bolt-diameter'],
        ],
      },
      code: 'bolts-do-not-pass',
      text: {
        en: 'The bolts must pass both flanges, even where the pitch circles differ.',
        de: 'Die Schrauben müssen durch beide Flansche gehen, auch wo die Lochkreise abweichen.',
      },
    },
  ],
  notChecked: [
    { en: 'flange thickness and bolt length', de: 'Flanschdicke und Schraubenlänge' },
    { en: 'room for the bolt heads at the yoke', de: 'Platz für die Schraubenköpfe am Gabelstück' },
    { en: 'holes that are not evenly spaced', de: 'ungleich verteilte Löcher' },
    { en: 'strength class of the bolts', de: 'Festigkeitsklasse der Schrauben' },
    { en: 'run-out and balance', de: 'Rundlauf und Wuchtung' },
  ],
};
