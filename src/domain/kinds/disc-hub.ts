/**
 * A brake disc on its hub: centring, stud pattern, and where its ring comes to lie in the caliper.
 *
 * Standards: UN R90 governs replacement discs as such, not how they meet a hub; for that there is
 * none. The hub centres the disc, so the bore goes over the pilot with at most 0.10 mm of play;
 * pitch circles agree within 0.2 mm, and besides within the play of the studs in their holes:
 * common practice, no source. What the caliper of that hub asks of a disc is recorded with the
 * hub: diameter, hat height, the thickest disc, and how far a disc may wear.
 *
 * The hat height counts from the mounting face to the middle of the friction ring: overall height
 * less half the thickness, since equal overall heights with unequal rings stand out of the middle.
 * A disc stands in the middle of its caliper within 0.5 mm, common practice, no source; half of
 * that is left to the caliper's mount. The thickness is that of today. Below the minimum that is
 * stamped on it a disc is refused (49 CFR 570.59, heavy vehicles; the part for light vehicles is
 * alike, from memory); where the caliper's own limit is the greater one, that counts too.
 *
 * Left out: discs in one piece with the hub, two-piece discs on bobbins.
 */

import type { BuiltInKind } from './kind.js';

export const discHub: BuiltInKind = {
  id: 'disc-hub',
  name: { en: 'brake disc on its hub', de: 'Bremsscheibe auf der Nabe' },
  standard: 'none for the joint; UN R90 for replacement discs, 49 CFR 570 for their wear',
  sides: ['hub', 'disc'],
  sideNames: {
    hub: {
      en: 'the hub, with what its caliper asks of a disc',
      de: 'die Nabe, mit dem, was ihr Sattel von der Scheibe verlangt',
    },
    disc: { en: 'the brake disc', de: 'die Bremsscheibe' },
  },
  caution: 'brakes',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of wheel studs or bolts', de: 'Anzahl Radbolzen' },
      tool: 'count',
      usual: [3, 8],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['95 mm', '170 mm'],
    },
    stud: {
      type: 'designation',
      unit: 'mm',
      of: 'hub',
      optional: true,
      name: { en: 'diameter of the studs or bolts', de: 'Durchmesser der Radbolzen' },
      tool: 'caliper',
      usual: ['10 mm', '16 mm'],
    },
    'stud-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      optional: true,
      name: { en: 'diameter of the stud holes', de: 'Durchmesser der Bolzenlöcher' },
      tool: 'caliper',
      usual: ['10 mm', '20 mm'],
    },
    pilot: {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: { en: 'pilot diameter of the hub', de: 'Durchmesser der Nabenzentrierung' },
      tool: 'micrometer',
      usual: ['54 mm', '115 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: { en: 'centre bore of the disc', de: 'Mittenloch der Scheibe' },
      tool: 'bore-gauge',
      usual: ['54 mm', '115 mm'],
    },
    hat: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'hat height to the middle of the ring',
        de: 'Topfhöhe bis zur Mitte des Reibrings',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '80 mm'],
    },
    diameter: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'outside diameter', de: 'Außendurchmesser' },
      tool: 'caliper',
      usual: ['220 mm', '400 mm'],
    },
    thickness: {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: { en: 'thickness of the disc today', de: 'heutige Dicke der Scheibe' },
      tool: 'micrometer',
      usual: ['7 mm', '36 mm'],
    },
    'minimum-thickness': {
      type: 'designation',
      unit: 'mm',
      of: 'disc',
      name: { en: 'minimum thickness stamped on it', de: 'eingeschlagene Mindestdicke' },
      tool: 'marking',
      usual: ['6 mm', '35 mm'],
    },
    'thickest-disc': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: { en: 'thickest disc that the caliper takes', de: 'dickste Scheibe für den Sattel' },
      tool: 'caliper',
      usual: ['8 mm', '38 mm'],
    },
    'wear-limit': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: {
        en: 'thinnest worn disc that the caliper bears',
        de: 'dünnste abgenutzte Scheibe für den Sattel',
      },
      tool: 'caliper',
      usual: ['6 mm', '35 mm'],
    },
    ring: {
      type: 'code',
      optional: true,
      name: { en: 'solid or vented', de: 'massiv oder belüftet' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Hub and disc must have the same number of studs or bolts.',
        de: 'Nabe und Scheibe müssen gleich viele Radbolzen haben.',
      },
    },
    {
      id: 'pcd',
      within: ['hub.pcd', 'disc.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'stud-hole',
      within: ['hub.pcd', 'disc.pcd'],
      tolerance: { sum: ['disc.stud-hole', ['-1', 'hub.stud']] },
      code: 'studs-do-not-pass',
      text: {
        en: 'The studs or bolts must pass the holes, even where the pitch circles differ.',
        de: 'Die Radbolzen müssen durch die Löcher gehen, auch wo die Lochkreise abweichen.',
      },
    },
    {
      id: 'bore',
      'at-least': ['disc.bore', 'hub.pilot'],
      code: 'bore-too-small',
      text: {
        en: 'The bore of the disc must go over the pilot of the hub.',
        de: 'Das Mittenloch der Scheibe muss über die Nabenzentrierung gehen.',
      },
    },
    {
      id: 'centring',
      clearance: ['disc.bore', 'hub.pilot'],
      max: '0.1 mm',
      code: 'not-centred',
      text: {
        en: 'With more than 0.10 mm of play on the pilot the disc runs out of true.',
        de: 'Mit mehr als 0,10 mm Spiel auf der Nabe läuft die Scheibe unrund.',
      },
    },
    {
      id: 'hat',
      within: ['hub.hat', 'disc.hat'],
      tolerance: '0.25 mm',
      code: 'disc-not-centred',
      text: {
        en: 'The hat must bring the ring to the middle of the caliper, within 0.25 mm.',
        de: 'Der Topf muss den Reibring auf 0,25 mm in die Mitte des Sattels bringen.',
      },
    },
    {
      id: 'diameter',
      within: ['hub.diameter', 'disc.diameter'],
      tolerance: '1 mm',
      code: 'diameter-differs',
      text: {
        en: 'The disc must have the diameter that the caliper is made for, within 1 mm.',
        de: 'Die Scheibe muss auf 1 mm den Durchmesser haben, für den der Sattel gemacht ist.',
      },
    },
    {
      id: 'thick-disc',
      'at-most': ['disc.thickness', 'hub.thickest-disc'],
      code: 'disc-too-thick',
      text: {
        en: 'The disc with new pads must go into the caliper.',
        de: 'Die Scheibe muss mit neuen Belägen in den Sattel gehen.',
      },
    },
    {
      id: 'worn-disc',
      'at-least': ['disc.thickness', 'disc.minimum-thickness'],
      code: 'disc-worn-out',
      text: {
        en: 'A disc below its stamped minimum is refused.',
        de: 'Unter der eingeschlagenen Mindestdicke ist die Scheibe Ausschuss.',
      },
    },
    {
      id: 'thin-disc',
      'at-least': ['disc.thickness', 'hub.wear-limit'],
      code: 'disc-too-thin',
      text: {
        en: 'On a disc thinner than the caliper bears the pistons come out too far.',
        de: 'Ist die Scheibe dünner, als der Sattel erträgt, kommen die Kolben zu weit heraus.',
      },
    },
    {
      id: 'wear-limit',
      'at-least': ['disc.minimum-thickness', 'hub.wear-limit'],
      severity: 'caution',
      code: 'wears-past-the-caliper',
      text: {
        en: 'This disc may wear further than its caliper bears: the limit of the caliper counts.',
        de: 'Die Scheibe darf mehr verschleißen, als der Sattel erträgt: Dessen Grenze gilt.',
      },
    },
    {
      equal: 'ring',
      severity: 'caution',
      code: 'other-ring',
      text: {
        en: 'A solid disc in place of a vented one takes less heat; have the brakes assessed.',
        de: 'Massiv statt belüftet nimmt weniger Wärme auf: Bremsanlage beurteilen lassen.',
      },
    },
  ],
  notChecked: [
    {
      en: 'a drum in the hat: it is compared as a parking-brake drum',
      de: 'eine Trommel im Topf: Sie wird als Feststellbremstrommel verglichen',
    },
    { en: 'run-out and unevenness of the disc', de: 'Seitenschlag und Dickenschwankung' },
    { en: 'hole for the locating screw', de: 'Loch der Fixierschraube' },
    { en: 'room for disc and hat inside the wheel', de: 'Platz für Scheibe und Topf im Rad' },
    {
      en: 'how much less stud is left for the wheel',
      de: 'wie viel Bolzenlänge dem Rad übrig bleibt',
    },
  ],
};
