/**
 * An involute spline: a toothed shaft in a toothed hub, which share the torque by their flanks.
 *
 * Standards: ISO 4156-1 (metric, 30, 37.5 and 45 degrees; modules 0.5 to 10 mm, at 45 degrees
 * 0.25 to 2.5 mm), ANSI B92.2M (the same system), ANSI B92.1 (inch), DIN 5480-1 (metric, by
 * reference diameter). Teeth, module and angle alone tell too little: 24 teeth of module 1 at 30
 * degrees exist in ISO 4156 and, with another profile shift, in DIN 5480. So the family is always
 * needed; with it, teeth, module and angle fix all else in ISO 4156 and ANSI, and what DIN 5480
 * needs instead of its one angle is the reference diameter. Diameters, tooth thickness and length
 * are compared where both ends record them; the major diameter is that of the shaft's tips and
 * the hub's roots, the minor one that of the shaft's roots and the hub's tips.
 *
 * An inch spline of diametral pitch P has the module 1/P in: 24/48 is recorded as "1/24 in". A
 * maker's own form is named by the maker's series: no standard vouches for it, which is said. A
 * blocked tooth space of the hub and a missing tooth of the shaft have one name, say "one", or
 * are "none"; the shaft is asked for it only where the hub has one.
 *
 * Least length: about one pitch diameter for hardened parts, common practice, no source; what a
 * torque needs is computed elsewhere. Left out: fit classes, root forms, helical splines.
 */

import type { BuiltInKind } from './kind.js';

/** ANSI B92.2M takes its system over from ISO 4156 (secondary sources); either may be recorded. */
const ISO_METRIC = ['iso-4156', 'ansi-b92-2m'];
const STANDARDS = [...ISO_METRIC, 'ansi-b92-1', 'din-5480'];

function bothOf(families: readonly string[]) {
  return {
    all: [{ 'one-of': ['shaft.family', families] }, { 'one-of': ['hub.family', families] }],
  };
}

/** Two names of one system: the one case in which unequal names are no difference. */
const TWO_NAMES_OF_ONE = {
  all: [...bothOf(ISO_METRIC).all, { not: { equal: 'family' } }],
};

export const involuteSpline: BuiltInKind = {
  id: 'involute-spline',
  name: { en: 'involute spline', de: 'Zahnwellenverbindung' },
  standard: 'ISO 4156-1, ANSI B92.1, ANSI B92.2M, DIN 5480-1',
  sides: ['shaft', 'hub'],
  sideNames: {
    shaft: { en: 'the shaft, teeth outside', de: 'die Welle, Zähne außen' },
    hub: { en: 'the hub or sleeve, teeth inside', de: 'die Nabe oder Muffe, Zähne innen' },
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
      usual: [10, 60],
    },
    module: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'module', de: 'Modul' },
      tool: 'known-mate',
      usual: ['0.5 mm', '3 mm'],
    },
    'pressure-angle': {
      type: 'designation',
      unit: 'deg',
      name: { en: 'pressure angle', de: 'Eingriffswinkel' },
      tool: 'known-mate',
      usual: ['30 deg', '45 deg'],
    },
    'reference-diameter': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'reference diameter', de: 'Bezugsdurchmesser' },
      tool: 'known-mate',
      usual: ['12 mm', '60 mm'],
    },
    'major-diameter': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'major diameter', de: 'großer Durchmesser' },
      tool: 'caliper',
      usual: ['12 mm', '63 mm'],
    },
    'minor-diameter': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'minor diameter', de: 'kleiner Durchmesser' },
      tool: 'caliper',
      usual: ['10 mm', '60 mm'],
    },
    'tooth-thickness': {
      type: 'measured',
      unit: 'mm',
      of: 'shaft',
      optional: true,
      name: { en: 'effective tooth thickness', de: 'wirksame Zahndicke' },
      tool: 'micrometer',
      usual: ['0.7 mm', '5 mm'],
    },
    'space-width': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      optional: true,
      name: { en: 'effective space width', de: 'wirksame Lückenweite' },
      tool: 'micrometer',
      usual: ['0.7 mm', '5 mm'],
    },
    length: {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'length of the full teeth', de: 'Länge der vollen Zähne' },
      tool: 'caliper',
      usual: ['8 mm', '120 mm'],
    },
    'blocked-tooth': {
      type: 'code',
      of: 'hub',
      optional: true,
      name: { en: 'blocked tooth spaces', de: 'verschlossene Zahnlücken' },
      tool: 'visual-check',
    },
    'missing-tooth': {
      type: 'code',
      of: 'shaft',
      name: { en: 'missing teeth', de: 'fehlende Zähne' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'family',
      when: { not: TWO_NAMES_OF_ONE },
      text: {
        en: 'Both splines must be of one standard: others share teeth and module, not flanks.',
        de: 'Beide brauchen eine Norm: Andere gleichen sich in Zähnen und Modul, nicht Flanken.',
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
        en: 'The modules must be exactly equal; an inch pitch P is the module 1/P in.',
        de: 'Die Module müssen genau gleich sein; Diametral Pitch P ist der Modul 1/P in.',
      },
    },
    {
      equal: 'pressure-angle',
      // DIN 5480 knows 30 degrees only.
      when: { not: bothOf(['din-5480']) },
      text: {
        en: 'The flanks must have the same pressure angle.',
        de: 'Die Flanken müssen denselben Eingriffswinkel haben.',
      },
    },
    {
      equal: 'reference-diameter',
      when: bothOf(['din-5480']),
      text: {
        en: 'In DIN 5480 the reference diameter fixes the profile shift and must be equal.',
        de: 'Nach DIN 5480 bestimmt der Bezugsdurchmesser die Verschiebung: Er muss gleich sein.',
      },
    },
    {
      id: 'known-family',
      'one-of': ['shaft.family', STANDARDS],
      severity: 'caution',
      code: 'not-a-standard-form',
      text: {
        en: 'No standard vouches for this form, only its name: try it on before the job.',
        de: 'Für diese Form steht keine Norm, nur ihr Name: vor der Arbeit von Hand probieren.',
      },
    },
    {
      id: 'major-diameter',
      'at-least': ['hub.major-diameter', 'shaft.major-diameter'],
      code: 'tips-touch-hub',
      text: {
        en: "The tips of the shaft's teeth must clear the roots of the hub.",
        de: 'Die Zahnköpfe der Welle müssen im Zahngrund der Nabe Platz haben.',
      },
    },
    {
      id: 'minor-diameter',
      'at-least': ['hub.minor-diameter', 'shaft.minor-diameter'],
      code: 'tips-touch-shaft',
      text: {
        en: "The tips of the hub's teeth must clear the roots of the shaft.",
        de: 'Die Zahnköpfe der Nabe müssen im Zahngrund der Welle Platz haben.',
      },
    },
    {
      id: 'flank-play',
      'at-least': ['hub.space-width', 'shaft.tooth-thickness'],
      code: 'tight-on-flanks',
      text: {
        en: "The narrowest tooth space of the hub must take the shaft's thickest tooth.",
        de: 'Die engste Zahnlücke der Nabe muss den dicksten Zahn der Welle aufnehmen.',
      },
    },
    {
      id: 'blocked-tooth',
      equal: ['hub.blocked-tooth', 'shaft.missing-tooth'],
      when: { not: { 'one-of': ['hub.blocked-tooth', ['none']] } },
      code: 'blocked-tooth-in-the-way',
      text: {
        en: 'Where the hub has a blocked space, the shaft must lack that tooth.',
        de: 'Wo die Nabe eine Lücke verschlossen hat, muss der Welle der Zahn fehlen.',
      },
    },
    {
      id: 'engaged-length',
      'at-least': [{ min: ['shaft.length', 'hub.length'] }, ['shaft.module', 'shaft.teeth']],
      severity: 'caution',
      code: 'short-engagement',
      text: {
        en: 'Teeth shorter than one pitch diameter carry less: check the torque.',
        de: 'Zähne kürzer als ein Teilkreisdurchmesser tragen weniger: Drehmoment prüfen.',
      },
    },
  ],
  notChecked: [
    { en: 'fit class and root form', de: 'Passung und Fußform' },
    {
      en: 'how far the hub sits on the teeth once everything is mounted',
      de: 'wie weit die Nabe im eingebauten Zustand auf den Zähnen sitzt',
    },
    { en: 'wear, run-out, hardness and coating', de: 'Verschleiß, Rundlauf, Härte, Beschichtung' },
    {
      en: 'a missing tooth that only marks the position',
      de: 'ein Zahn, der nur die Lage markiert',
    },
  ],
};
