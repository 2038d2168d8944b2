/**
 * A brake caliper on its knuckle: two bolts, and where they put the caliper against the disc.
 *
 * Standard: none; car makers' own. The bolts pass both parts only if their spacings differ by no
 * more than the play of a bolt in both holes (geometry; of a threaded hole the thread's diameter
 * stands for the hole). A hole more than 1.5 mm wider than its bolt, beyond the medium series of
 * ISO 273 (from memory), was made for a larger one or drilled, and lets the caliper shift.
 *
 * The classic mistake is the right spacing at the wrong place: so each end says how far the line
 * through both bolts is from the axis of the hub, and how far the face that
 * the caliper is bolted to (a radial caliper: the middle of its bolts) is from the face of the hub
 * on which disc and wheel sit, measured along the axis, positive towards the car. The knuckle
 * records what is, the caliper what it needs with the disc that it is made for.
 *
 * A disc stands in the middle of the caliper within 0.5 mm, and the radius agrees within 1 mm:
 * common practice, no source. Half of the 0.5 mm is left to the disc, whose hat has a limit of its
 * own. A disc of another diameter lets the pads stand over its rim or run into the caliper: 1 mm
 * of tolerance, common practice, no source. Of the disc that stands in the knuckle's place, the
 * thickness new must be within what the caliper takes.
 *
 * Left out: calipers on more than two bolts; how large the caliper is inside the wheel.
 */

import type { BuiltInKind } from './kind.js';

export const caliperMount: BuiltInKind = {
  id: 'caliper-mount',
  name: { en: 'caliper mount', de: 'Bremssattelaufnahme' },
  standard: 'none',
  sides: ['knuckle', 'caliper'],
  sideNames: {
    knuckle: {
      en: 'the knuckle or bracket, with the disc in its place',
      de: 'Achsschenkel oder Halter, mit der Scheibe an ihrem Platz',
    },
    caliper: {
      en: 'the caliper or its carrier, as its disc needs it',
      de: 'Sattel oder Sattelhalter, wie seine Scheibe es verlangt',
    },
  },
  caution: 'brakes',
  parameters: {
    mounting: {
      type: 'code',
      name: { en: 'radial or axial', de: 'radial oder axial' },
      tool: 'visual-check',
    },
    spacing: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'spacing of the two bolts', de: 'Abstand der zwei Schrauben' },
      tool: 'caliper',
      usual: ['90 mm', '180 mm'],
    },
    hole: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['8 mm', '18 mm'],
    },
    bolt: {
      type: 'code',
      name: { en: 'bolt thread', de: 'Schraubengewinde' },
      tool: 'pitch-gauge',
    },
    'bolt-diameter': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'bolt diameter', de: 'Schraubendurchmesser' },
      tool: 'caliper',
      usual: ['8 mm', '16 mm'],
    },
    radius: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'distance of the bolt line from the hub axis',
        de: 'Abstand der Schraubenlinie von der Nabenachse',
      },
      tool: 'caliper',
      usual: ['60 mm', '220 mm'],
    },
    offset: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'distance of the mount from the hub face',
        de: 'Abstand der Aufnahme von der Nabenfläche',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '120 mm'],
    },
    'disc-diameter': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'diameter of the disc', de: 'Durchmesser der Bremsscheibe' },
      tool: 'caliper',
      usual: ['220 mm', '400 mm'],
    },
    'disc-thickness': {
      type: 'measured',
      unit: 'mm',
      of: 'knuckle',
      name: { en: 'thickness of the disc when new', de: 'Dicke der Scheibe im Neuzustand' },
      tool: 'micrometer',
      usual: ['8 mm', '36 mm'],
    },
    'thinnest-disc': {
      type: 'measured',
      unit: 'mm',
      of: 'caliper',
      name: {
        en: 'thinnest new disc that the caliper takes',
        de: 'dünnste neue Scheibe für den Sattel',
      },
      tool: 'caliper',
      usual: ['6 mm', '36 mm'],
    },
    'thickest-disc': {
      type: 'measured',
      unit: 'mm',
      of: 'caliper',
      name: {
        en: 'thickest new disc that the caliper takes',
        de: 'dickste neue Scheibe für den Sattel',
      },
      tool: 'caliper',
      usual: ['8 mm', '38 mm'],
    },
    place: {
      type: 'code',
      optional: true,
      name: { en: 'before or behind the axle', de: 'vor oder hinter der Achse' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'mounting',
      text: {
        en: 'Both must be made for bolts along the axle, or both for bolts towards it.',
        de: 'Beide müssen axial verschraubt sein, oder beide radial.',
      },
    },
    {
      id: 'known-mounting',
      'one-of': ['knuckle.mounting', ['radial', 'axial']],
      code: 'neither-radial-nor-axial',
      text: {
        en: 'Only radial and axial mounts on two bolts are compared here.',
        de: 'Verglichen werden nur radiale und axiale Aufnahmen mit zwei Schrauben.',
      },
    },
    {
      id: 'knuckle-hole',
      'at-least': ['knuckle.hole', 'caliper.bolt-diameter'],
      code: 'knuckle-hole-too-small',
      text: {
        en: 'The bolts must pass the knuckle; never drill it.',
        de: 'Die Schrauben müssen durch den Achsschenkel gehen; ihn nie aufbohren.',
      },
    },
    {
      id: 'caliper-hole',
      'at-least': ['caliper.hole', 'knuckle.bolt-diameter'],
      code: 'caliper-hole-too-small',
      text: {
        en: 'The bolts must pass the caliper or its carrier; never drill them.',
        de: 'Die Schrauben müssen durch Sattel oder Halter gehen; sie nie aufbohren.',
      },
    },
    {
      id: 'knuckle-play',
      clearance: ['knuckle.hole', 'caliper.bolt-diameter'],
      max: '1.5 mm',
      code: 'knuckle-hole-too-wide',
      text: {
        en: 'Knuckle: holes with over 1.5 mm of play are for larger bolts, or were drilled.',
        de: 'Achsschenkel: Löcher über 1,5 mm Spiel sind für größere Schrauben oder aufgebohrt.',
      },
    },
    {
      id: 'caliper-play',
      clearance: ['caliper.hole', 'knuckle.bolt-diameter'],
      max: '1.5 mm',
      code: 'caliper-hole-too-wide',
      text: {
        en: 'Caliper: holes with over 1.5 mm of play are for larger bolts, or were drilled.',
        de: 'Sattel: Löcher mit über 1,5 mm Spiel sind für größere Schrauben oder aufgebohrt.',
      },
    },
    {
      id: 'spacing',
      within: ['knuckle.spacing', 'caliper.spacing'],
      tolerance: {
        sum: [
          'knuckle.hole',
          'caliper.hole',
          ['-1', 'knuckle.bolt-diameter'],
          ['-1', 'caliper.bolt-diameter'],
        ],
      },
      code: 'spacing-differs',
      text: {
        en: 'The bolt spacings may differ only by the play of the bolts in their holes.',
        de: 'Die Abstände dürfen nur um das Spiel der Schrauben in den Löchern abweichen.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Knuckle and caliper must be made for the same bolts: thread and pitch.',
        de: 'Achsschenkel und Sattel brauchen dieselben Schrauben: Gewinde und Steigung.',
      },
    },
    {
      id: 'radius',
      within: ['knuckle.radius', 'caliper.radius'],
      tolerance: '1 mm',
      code: 'radius-differs',
      text: {
        en: 'The bolts must be as far from the hub axis as the caliper needs, within 1 mm.',
        de: 'Die Schrauben müssen auf 1 mm so weit von der Nabe sein, wie der Sattel braucht.',
      },
    },
    {
      id: 'offset',
      within: ['knuckle.offset', 'caliper.offset'],
      tolerance: '0.25 mm',
      code: 'disc-not-centred',
      text: {
        en: 'The mount must stand to the hub face as the caliper needs it, within 0.25 mm.',
        de: 'Die Aufnahme muss auf 0,25 mm so zur Nabenfläche stehen, wie der Sattel braucht.',
      },
    },
    {
      id: 'disc-diameter',
      within: ['knuckle.disc-diameter', 'caliper.disc-diameter'],
      tolerance: '1 mm',
      code: 'disc-diameter-differs',
      text: {
        en: 'The disc must have the diameter that the caliper is made for, within 1 mm.',
        de: 'Die Scheibe muss auf 1 mm den Durchmesser haben, für den der Sattel gemacht ist.',
      },
    },
    {
      id: 'thick-disc',
      'at-most': ['knuckle.disc-thickness', 'caliper.thickest-disc'],
      code: 'disc-too-thick',
      text: {
        en: 'The disc with new pads must go into the caliper.',
        de: 'Die Scheibe muss mit neuen Belägen in den Sattel gehen.',
      },
    },
    {
      id: 'thin-disc',
      'at-least': ['knuckle.disc-thickness', 'caliper.thinnest-disc'],
      code: 'disc-too-thin',
      text: {
        en: 'On a disc too thin the pistons come out too far as it wears.',
        de: 'Ist die Scheibe zu dünn, kommen die Kolben beim Verschleiß zu weit heraus.',
      },
    },
    {
      equal: 'place',
      severity: 'caution',
      code: 'other-side-of-the-axle',
      text: {
        en: 'A caliper that changes place may have its bleed nipple below: it cannot be bled.',
        de: 'An anderer Stelle liegt der Entlüfter womöglich unten: So lässt sich nicht entlüften.',
      },
    },
  ],
  notChecked: [
    { en: 'room for the caliper inside the wheel', de: 'Platz für den Sattel im Rad' },
    {
      en: 'length and strength class of the bolts',
      de: 'Länge und Festigkeitsklasse der Schrauben',
    },
    { en: 'hose: port, length and way', de: 'Bremsschlauch: Anschluss, Länge und Verlegung' },
    { en: 'piston area and balance of the brakes', de: 'Kolbenfläche und Bremskraftverteilung' },
    { en: 'height of the pads on the disc', de: 'Höhe der Beläge auf der Scheibe' },
  ],
};
