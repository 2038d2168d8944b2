/**
 * A bolted companion flange of a propeller shaft: pattern, register and bolts.
 *
 * Standard: ISO 7646 (type A) and ISO 7647 (type S) for commercial vehicles; passenger cars use
 * flanges of their makers' own, for which nothing is standardized. Cross-toothed flanges
 * (ISO 8667, ISO 12667) are named by their pattern and compared by it alone. The register
 * centres the shaft, not the bolts: its clearance of 0 to 0.10 mm is common practice, no source.
 */

import type { BuiltInKind } from './kind.js';

export const propshaftFlange: BuiltInKind = {
  id: 'propshaft-flange',
  name: { en: 'propeller-shaft flange', de: 'Gelenkwellenflansch' },
  standard: 'ISO 7646, ISO 7647 and ISO 8667 for commercial vehicles; cars: none',
  sides: ['spigot', 'recess'],
  caution: 'driveline',
  parameters: {
    pattern: { type: 'code', name: { en: 'type', de: 'Bauart' } },
    holes: { type: 'count', name: { en: 'holes', de: 'Löcher' }, tool: 'count', usual: [3, 8] },
    'pitch-circle': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle', de: 'Lochkreis' },
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
      name: { en: 'register depth', de: 'Zentriertiefe' },
      optional: true,
      tool: 'depth-gauge',
      usual: ['1 mm', '10 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
  },
  checks: [
    { equal: 'pattern' },
    { equal: 'holes' },
    {
      id: 'equal-pitch-circle',
      within: ['spigot.pitch-circle', 'recess.pitch-circle'],
      tolerance: '0.2 mm',
    },
    {
      id: 'register',
      clearance: ['recess.register', 'spigot.register'],
      min: '0 mm',
      max: '0.1 mm',
    },
    { id: 'register-depth', 'at-least': ['recess.register-depth', 'spigot.register-depth'] },
    { equal: 'bolt' },
  ],
  notChecked: [
    { en: 'flange thickness and bolt length', de: 'Flanschdicke und Schraubenlänge' },
    { en: 'room for the bolt heads at the yoke', de: 'Platz für die Schraubenköpfe am Gabelstück' },
    { en: 'run-out and balance', de: 'Rundlauf und Wuchtung' },
  ],
};
