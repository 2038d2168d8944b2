/**
 * A straight-sided spline: a shaft with parallel splines in a hub with parallel grooves.
 *
 * Standard: ISO 14 (identical in BS 5686 and IS 2327), which names a shaft by splines x inner x
 * outer diameter, "6 x 23 x 26", and centres it on the inner diameter. Sizes decide, not the
 * name: a light shaft of 6 x 23 x 26 goes into a medium hub of 6 x 23 x 28, but 6 x 26 x 30, with
 * the same six splines of 6 mm, turns freely around it. Both diameters and the width are those of
 * the splines on the shaft and of the grooves in the hub.
 *
 * Something must centre: a diameter or, in older forms of makers, the flanks alone, which is a
 * caution. The limits are the loosest fits of ISO 14 (read in a secondary table) at its largest
 * size, computed by ISO 286: 112 H7/f7 leaves 0.106 mm on the diameter, a width of 18 H11/d10
 * leaves 0.230 mm on the width. That splines must reach at least 1 mm past the bore of the hub,
 * measured over the diameter, is common practice, no source: the shallowest of ISO 14 reach 2.5.
 *
 * Left out: chamfers and fillets, symmetry of the splines, length and load.
 */

import type { BuiltInKind } from './kind.js';

const ON_INNER = { sum: ['hub.inner-diameter', ['-1', 'shaft.inner-diameter']] };
const ON_OUTER = { sum: ['hub.outer-diameter', ['-1', 'shaft.outer-diameter']] };
const ON_FLANKS = { sum: ['hub.width', ['-1', 'shaft.width']] };
const LOOSEST_CENTRING = '0.106 mm';
const LOOSEST_FLANKS = '0.23 mm';

export const straightSpline: BuiltInKind = {
  id: 'straight-spline',
  name: { en: 'straight-sided spline', de: 'Keilwellenverbindung' },
  standard: 'ISO 14',
  sides: ['shaft', 'hub'],
  sideNames: {
    shaft: { en: 'the shaft with its splines', de: 'die Keilwelle' },
    hub: { en: 'the hub with its grooves', de: 'die Keilnabe' },
  },
  caution: 'driveline',
  parameters: {
    splines: {
      type: 'count',
      name: { en: 'number of splines or grooves', de: 'Anzahl Keile oder Nuten' },
      tool: 'count',
      usual: [6, 20],
    },
    'inner-diameter': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'inner diameter', de: 'Innendurchmesser' },
      tool: 'caliper',
      usual: ['11 mm', '60 mm'],
    },
    'outer-diameter': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'outer diameter', de: 'Außendurchmesser' },
      tool: 'caliper',
      usual: ['14 mm', '65 mm'],
    },
    width: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'width of the splines or grooves', de: 'Breite der Keile oder Nuten' },
      tool: 'caliper',
      usual: ['3 mm', '12 mm'],
    },
  },
  checks: [
    {
      equal: 'splines',
      text: {
        en: 'The hub must have as many grooves as the shaft has splines.',
        de: 'Die Nabe muss so viele Nuten haben wie die Welle Keile.',
      },
    },
    {
      id: 'inner-diameter',
      'at-least': ['hub.inner-diameter', 'shaft.inner-diameter'],
      code: 'bore-too-small',
      text: {
        en: 'The bore of the hub must go over the shaft between its splines.',
        de: 'Die Bohrung der Nabe muss über die Welle zwischen den Keilen gehen.',
      },
    },
    {
      id: 'outer-diameter',
      'at-least': ['hub.outer-diameter', 'shaft.outer-diameter'],
      code: 'splines-too-high',
      text: {
        en: 'The grooves of the hub must be as deep as the splines of the shaft are high.',
        de: 'Die Nuten der Nabe müssen so tief sein wie die Keile der Welle hoch.',
      },
    },
    {
      id: 'width',
      'at-least': ['hub.width', 'shaft.width'],
      code: 'splines-too-wide',
      text: {
        en: 'The splines of the shaft must go into the grooves of the hub.',
        de: 'Die Keile der Welle müssen in die Nuten der Nabe gehen.',
      },
    },
    {
      id: 'flank-play',
      clearance: ['hub.width', 'shaft.width'],
      max: LOOSEST_FLANKS,
      code: 'loose-on-flanks',
      text: {
        en: 'Splines with more than 0.23 mm of play knock at every change of load.',
        de: 'Keile mit mehr als 0,23 mm Spiel schlagen bei jedem Lastwechsel.',
      },
    },
    {
      id: 'reach',
      clearance: ['shaft.outer-diameter', 'hub.inner-diameter'],
      min: '1 mm',
      code: 'splines-do-not-reach',
      text: {
        en: 'The splines must reach into the grooves, or the shaft turns in the hub.',
        de: 'Die Keile müssen in die Nuten reichen, sonst dreht die Welle in der Nabe leer.',
      },
    },
    {
      id: 'centring',
      'at-most': [{ min: [ON_INNER, ON_OUTER, ON_FLANKS] }, LOOSEST_CENTRING],
      code: 'not-centred',
      text: {
        en: 'One diameter or the flanks must centre the hub, with at most 0.106 mm of play.',
        de: 'Ein Durchmesser oder die Flanken müssen zentrieren, mit höchstens 0,106 mm Spiel.',
      },
    },
    {
      id: 'centring-diameter',
      'at-most': [{ min: [ON_INNER, ON_OUTER] }, LOOSEST_CENTRING],
      severity: 'caution',
      code: 'centred-by-flanks',
      text: {
        en: 'Neither diameter centres the hub, only the flanks: check the run-out.',
        de: 'Kein Durchmesser zentriert die Nabe, nur die Flanken: Rundlauf prüfen.',
      },
    },
  ],
  notChecked: [
    { en: 'chamfers, fillets and symmetry of the splines', de: 'Fasen, Radien, Lage der Keile' },
    {
      en: 'whether the fit is to slide or to sit fast',
      de: 'ob die Passung gleiten oder fest sitzen soll',
    },
    { en: 'length of the teeth and torque', de: 'tragende Länge und Drehmoment' },
    { en: 'wear, run-out and hardness', de: 'Verschleiß, Rundlauf und Härte' },
  ],
};
