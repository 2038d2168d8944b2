/**
 * A parking brake of shoes in a drum, by its three joints: the shoes in the drum, the backplate on
 * the knuckle, the lever on its cable.
 *
 * Standard: UN R13-H governs parking brakes as such, not how their parts meet; for that there is
 * none. Backplate and shoes are one set, told by its nominal diameter; the drum is often the hat
 * of the brake disc and wears with it. So a parking brake has up to three faces of this kind, each
 * of which says which joint it is: "drum", "backplate" or "cable".
 *
 * A drum may be 0.3 mm under the nominal diameter of the shoes, which their adjuster takes, and
 * 1 mm over it, beyond which they do not bear: common practice, no source. The limit that is
 * stamped on the drum counts besides: 49 CFR 570 has drums within their embossed limits. The shoes
 * must lie on the braking surface with their whole width. A backplate is centred by its bore on
 * the spigot of the knuckle, with 0.5 mm of play at most (common practice, no source), so that the
 * shoes stand in the middle of the drum; bolts pass where the pitch circles differ by no more than
 * their play in both holes. The cable must end in what the lever takes and pull as far as the
 * lever needs.
 *
 * Left out: backplates whose holes lie on no circle; where the pattern has a name, unequal names
 * refuse it.
 *
 * Length: the three joints of one brake, in a set that is changed together, are one list of words.
 */

import type { BuiltInKind } from './kind.js';

function both(joint: string) {
  return { all: [{ 'one-of': ['brake.joint', [joint]] }, { 'one-of': ['place.joint', [joint]] }] };
}

export const parkingDrum: BuiltInKind = {
  id: 'parking-drum',
  name: { en: 'drum parking brake', de: 'Trommel-Feststellbremse' },
  standard: 'none for its joints; UN R13-H for the brake, 49 CFR 570 for the wear of drums',
  sides: ['brake', 'place'],
  sideNames: {
    brake: {
      en: 'the backplate with its shoes and lever',
      de: 'die Ankerplatte mit Backen und Hebel',
    },
    place: {
      en: 'the drum, the knuckle or the cable that it meets',
      de: 'Trommel, Achsschenkel oder Seil, an die sie kommt',
    },
  },
  caution: 'brakes',
  parameters: {
    joint: {
      type: 'code',
      name: { en: 'drum, backplate or cable', de: 'Trommel, Ankerplatte oder Seil' },
      tool: 'visual-check',
    },
    'shoe-diameter': {
      type: 'designation',
      unit: 'mm',
      of: 'brake',
      name: { en: 'nominal diameter of the shoes', de: 'Nenndurchmesser der Backen' },
      tool: 'caliper',
      usual: ['150 mm', '230 mm'],
    },
    'shoe-width': {
      type: 'measured',
      unit: 'mm',
      of: 'brake',
      name: { en: 'width of the shoes', de: 'Breite der Backen' },
      tool: 'caliper',
      usual: ['15 mm', '60 mm'],
    },
    'drum-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'place',
      name: {
        en: 'inside diameter of the drum today',
        de: 'heutiger Innendurchmesser der Trommel',
      },
      tool: 'caliper',
      usual: ['150 mm', '230 mm'],
    },
    'drum-limit': {
      type: 'designation',
      unit: 'mm',
      of: 'place',
      name: {
        en: 'greatest inside diameter stamped on the drum',
        de: 'eingeschlagener größter Innendurchmesser',
      },
      tool: 'marking',
      usual: ['150 mm', '232 mm'],
    },
    'drum-width': {
      type: 'measured',
      unit: 'mm',
      of: 'place',
      name: { en: 'width of the braking surface', de: 'Breite der Bremsfläche' },
      tool: 'depth-gauge',
      usual: ['15 mm', '70 mm'],
    },
    pattern: {
      type: 'code',
      optional: true,
      name: { en: 'name of the hole pattern', de: 'Name des Lochbilds' },
      tool: 'punch-plate',
    },
    holes: {
      type: 'count',
      name: { en: 'number of bolt holes', de: 'Anzahl Schraubenlöcher' },
      tool: 'count',
      usual: [2, 6],
    },
    pcd: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['60 mm', '180 mm'],
    },
    hole: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['6 mm', '14 mm'],
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
      usual: ['6 mm', '12 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'brake',
      name: { en: 'centre bore of the backplate', de: 'Mittenloch der Ankerplatte' },
      tool: 'bore-gauge',
      usual: ['40 mm', '120 mm'],
    },
    spigot: {
      type: 'measured',
      unit: 'mm',
      of: 'place',
      name: { en: 'spigot for the backplate', de: 'Zentrierung für die Ankerplatte' },
      tool: 'caliper',
      usual: ['40 mm', '120 mm'],
    },
    'cable-end': {
      type: 'code',
      name: { en: 'end of the cable', de: 'Seilende' },
      tool: 'visual-check',
    },
    'travel-needed': {
      type: 'measured',
      unit: 'mm',
      of: 'brake',
      name: { en: 'lever travel that sets the brake', de: 'Hebelweg bis zum Festsitzen' },
      tool: 'caliper',
      usual: ['5 mm', '50 mm'],
    },
    travel: {
      type: 'measured',
      unit: 'mm',
      of: 'place',
      name: { en: 'travel of the cable', de: 'Weg des Seils' },
      tool: 'caliper',
      usual: ['5 mm', '80 mm'],
    },
  },
  checks: [
    {
      equal: 'joint',
      text: {
        en: 'Drum meets drum, backplate knuckle and cable lever: the joints must be the same.',
        de: 'Trommel gehört an Trommel, Ankerplatte an Achsschenkel, Seil an Hebel.',
      },
    },
    {
      id: 'known-joint',
      'one-of': ['brake.joint', ['drum', 'backplate', 'cable']],
      code: 'no-such-joint',
      text: {
        en: 'A parking brake in a drum meets a drum, a knuckle and a cable, and nothing else here.',
        de: 'Verglichen werden Trommel, Ankerplatte und Seil, sonst nichts.',
      },
    },
    {
      id: 'shoes-go-in',
      clearance: ['place.drum-diameter', 'brake.shoe-diameter'],
      min: '-0.3 mm',
      when: both('drum'),
      code: 'drum-too-small',
      text: {
        en: 'The drum must go over the shoes: at most 0.3 mm under their nominal diameter.',
        de: 'Die Trommel muss über die Backen gehen: höchstens 0,3 mm unter dem Nennmaß.',
      },
    },
    {
      id: 'shoes-bear',
      clearance: ['place.drum-diameter', 'brake.shoe-diameter'],
      max: '1 mm',
      when: both('drum'),
      code: 'drum-too-large',
      text: {
        en: 'In a drum more than 1 mm over their diameter the shoes bear in their middle alone.',
        de: 'Mit mehr als 1 mm Übermaß der Trommel tragen die Backen nur in der Mitte.',
      },
    },
    {
      id: 'drum-limit',
      'at-most': ['place.drum-diameter', 'place.drum-limit'],
      when: both('drum'),
      code: 'drum-worn-out',
      text: {
        en: 'A drum beyond the limit stamped on it is refused.',
        de: 'Über dem eingeschlagenen Grenzmaß ist die Trommel Ausschuss.',
      },
    },
    {
      id: 'width',
      'at-least': ['place.drum-width', 'brake.shoe-width'],
      when: both('drum'),
      code: 'shoes-too-wide',
      text: {
        en: 'The shoes must lie on the braking surface with their whole width.',
        de: 'Die Backen müssen mit ihrer ganzen Breite auf der Bremsfläche liegen.',
      },
    },
    {
      equal: 'pattern',
      when: both('backplate'),
      text: {
        en: 'Backplate and knuckle with patterns of different names are not made for each other.',
        de: 'Ankerplatte und Achsschenkel mit anderem Lochbild gehören nicht zusammen.',
      },
    },
    {
      equal: 'holes',
      when: both('backplate'),
      text: {
        en: 'Backplate and knuckle must have the same number of bolt holes.',
        de: 'Ankerplatte und Achsschenkel müssen gleich viele Schraubenlöcher haben.',
      },
    },
    {
      equal: 'bolt',
      when: both('backplate'),
      text: {
        en: 'Backplate and knuckle must be made for the same bolts: thread and pitch.',
        de: 'Ankerplatte und Achsschenkel brauchen dieselben Schrauben: Gewinde und Steigung.',
      },
    },
    {
      id: 'backplate-hole',
      'at-least': ['brake.hole', 'place.bolt-diameter'],
      when: both('backplate'),
      code: 'hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the backplate.',
        de: 'Die Schrauben müssen durch die Löcher der Ankerplatte gehen.',
      },
    },
    {
      id: 'knuckle-hole',
      'at-least': ['place.hole', 'brake.bolt-diameter'],
      when: both('backplate'),
      code: 'thread-too-small',
      text: {
        en: 'The bolts must go into the holes of the knuckle.',
        de: 'Die Schrauben müssen in die Löcher des Achsschenkels gehen.',
      },
    },
    {
      id: 'pcd',
      within: ['brake.pcd', 'place.pcd'],
      tolerance: {
        sum: [
          'brake.hole',
          'place.hole',
          ['-1', 'brake.bolt-diameter'],
          ['-1', 'place.bolt-diameter'],
        ],
      },
      when: both('backplate'),
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles may differ only by the play of the bolts in their holes.',
        de: 'Die Lochkreise dürfen nur um das Spiel der Schrauben in den Löchern abweichen.',
      },
    },
    {
      id: 'bore',
      'at-least': ['brake.bore', 'place.spigot'],
      when: both('backplate'),
      code: 'bore-too-small',
      text: {
        en: 'The backplate must go over the spigot of the knuckle.',
        de: 'Die Ankerplatte muss über die Zentrierung des Achsschenkels gehen.',
      },
    },
    {
      id: 'centring',
      clearance: ['brake.bore', 'place.spigot'],
      max: '0.5 mm',
      when: both('backplate'),
      code: 'not-centred',
      text: {
        en: 'With more than 0.5 mm of play the shoes do not stand in the middle of the drum.',
        de: 'Mit mehr als 0,5 mm Spiel stehen die Backen nicht in der Mitte der Trommel.',
      },
    },
    {
      equal: 'cable-end',
      when: both('cable'),
      text: {
        en: 'The cable must end in what the lever takes.',
        de: 'Das Seil muss so enden, wie der Hebel es aufnimmt.',
      },
    },
    {
      id: 'travel',
      'at-least': ['place.travel', 'brake.travel-needed'],
      when: both('cable'),
      code: 'too-little-travel',
      text: {
        en: 'The cable must pull as far as the lever needs to set the brake.',
        de: 'Das Seil muss so weit ziehen, wie der Hebel zum Festsetzen braucht.',
      },
    },
  ],
  notChecked: [
    { en: 'force at the lever and its ratio', de: 'Kraft am Hebel und seine Übersetzung' },
    { en: 'length, sleeve and way of the cable', de: 'Länge, Hülle und Verlegung des Seils' },
    { en: 'how deep the shoes stand in the drum', de: 'wie tief die Backen in der Trommel stehen' },
    { en: 'turn of the backplate on the knuckle', de: 'Drehlage der Ankerplatte am Achsschenkel' },
    { en: 'whether the brake holds the vehicle', de: 'ob die Bremse das Fahrzeug hält' },
  ],
};
