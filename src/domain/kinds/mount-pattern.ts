/**
 * The bolts of a mount: a gearbox cross-member or a subframe on the body, a rubber mount on either.
 *
 * Standard: none; car makers' own. A pattern is a rectangle of holes (or two in a line, with a
 * spacing of 0 mm across it), told by the spacings between the middles of its holes or slots along
 * and across the car. The parts shift until each bolt has half of a difference, so a spacing may
 * differ by the play of a bolt in both holes, and by the travel of both slots besides: that is
 * geometry. Where spacings differ both ways at once, what the slots do not take must lie within
 * the round play, which is less than the play each way. A slot is as wide as its hole; its travel
 * is its length less its width, 0 mm for a round hole. Of a threaded hole or a stud the thread's
 * diameter stands for the hole.
 *
 * A bush is pressed in: its outside is 0 to 0.3 mm larger than the eye, common practice, no
 * source. Another height, by more than 2 mm (the same), tilts what it carries: a caution. Holes
 * that somebody would have to drill, slot or weld are an engineered change and no fit.
 *
 * Left out: patterns that are no rectangle; where along the car the pattern lies.
 */

import type { BuiltInKind } from './kind.js';

const PLAY = {
  sum: ['mount.hole', 'body.hole', ['-1', 'mount.bolt-diameter'], ['-1', 'body.bolt-diameter']],
};

/** The play as one value: its square is then exact, whatever it is made of. */
const ROUND_PLAY = { max: ['0 mm', PLAY] };

/** How far the spacings may differ one way: the play and the travel of both slots. */
function reach(way: string) {
  return { sum: [...PLAY.sum, `mount.slot-${way}`, `body.slot-${way}`] };
}

/** What the slots do not take of a difference, 0 mm where they take it all. */
function rest(way: string) {
  const difference = {
    max: [
      { sum: [`mount.${way}`, ['-1', `body.${way}`]] },
      { sum: [`body.${way}`, ['-1', `mount.${way}`]] },
    ],
  };
  const slots = { sum: [`mount.slot-${way}`, `body.slot-${way}`] };
  return { max: ['0 mm', { sum: [difference, ['-1', slots]] }] };
}

export const mountPattern: BuiltInKind = {
  id: 'mount-pattern',
  name: { en: 'mount', de: 'Lagerung' },
  standard: 'none',
  sides: ['mount', 'body'],
  sideNames: {
    mount: {
      en: 'the mount, cross-member or subframe that is bolted on',
      de: 'Lager, Querträger oder Fahrschemel, der angeschraubt wird',
    },
    body: {
      en: 'what it is bolted to: body, subframe or gearbox',
      de: 'woran er kommt: Karosserie, Fahrschemel oder Getriebe',
    },
  },
  caution: 'general',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of bolt holes', de: 'Anzahl Schraubenlöcher' },
      tool: 'count',
      usual: [2, 8],
    },
    along: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'spacing of the holes along the car', de: 'Lochabstand längs' },
      tool: 'caliper',
      usual: ['0 mm', '1000 mm'],
    },
    across: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'spacing of the holes across the car', de: 'Lochabstand quer' },
      tool: 'caliper',
      usual: ['0 mm', '1200 mm'],
    },
    hole: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'diameter of the holes, width of the slots',
        de: 'Durchmesser der Löcher, Breite der Langlöcher',
      },
      tool: 'caliper',
      usual: ['6 mm', '22 mm'],
    },
    'slot-along': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'travel of the slots along the car', de: 'Weg der Langlöcher längs' },
      tool: 'caliper',
      usual: ['0 mm', '40 mm'],
    },
    'slot-across': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'travel of the slots across the car', de: 'Weg der Langlöcher quer' },
      tool: 'caliper',
      usual: ['0 mm', '40 mm'],
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
      usual: ['6 mm', '20 mm'],
    },
    bush: {
      type: 'measured',
      unit: 'mm',
      of: 'mount',
      optional: true,
      name: { en: 'outside diameter of the bush', de: 'Außendurchmesser der Buchse' },
      tool: 'micrometer',
      usual: ['20 mm', '120 mm'],
    },
    eye: {
      type: 'measured',
      unit: 'mm',
      of: 'body',
      optional: true,
      name: { en: 'bore of the eye for the bush', de: 'Bohrung des Auges für die Buchse' },
      tool: 'bore-gauge',
      usual: ['20 mm', '120 mm'],
    },
    height: {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'height of the mount', de: 'Bauhöhe der Lagerung' },
      tool: 'depth-gauge',
      usual: ['0 mm', '200 mm'],
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Both must have the same number of bolt holes.',
        de: 'Beide müssen gleich viele Schraubenlöcher haben.',
      },
    },
    {
      id: 'outer-holes',
      'one-of': ['mount.holes', [2, 4]],
      severity: 'caution',
      code: 'only-outer-holes-compared',
      text: {
        en: 'Two holes or four corners are compared: lay the other holes over one another.',
        de: 'Verglichen werden zwei Löcher oder vier Ecken: die übrigen Löcher aufeinanderlegen.',
      },
    },
    {
      equal: 'bolt',
      text: {
        en: 'Both must be made for the same bolts: thread and pitch.',
        de: 'Beide müssen für dieselben Schrauben gemacht sein: Gewinde und Steigung.',
      },
    },
    {
      id: 'mount-hole',
      'at-least': ['mount.hole', 'body.bolt-diameter'],
      code: 'mount-hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the mount.',
        de: 'Die Schrauben müssen durch die Löcher der Lagerung gehen.',
      },
    },
    {
      id: 'body-hole',
      'at-least': ['body.hole', 'mount.bolt-diameter'],
      code: 'body-hole-too-small',
      text: {
        en: 'The bolts must go into the holes of what the mount is bolted to.',
        de: 'Die Schrauben müssen in die Löcher am Gegenstück gehen.',
      },
    },
    {
      id: 'along',
      within: ['mount.along', 'body.along'],
      tolerance: reach('along'),
      code: 'spacing-differs-along',
      text: {
        en: 'The spacings along the car must agree within bolt play and slots.',
        de: 'Die Abstände längs müssen innerhalb von Spiel und Langlöchern gleich sein.',
      },
    },
    {
      id: 'across',
      within: ['mount.across', 'body.across'],
      tolerance: reach('across'),
      code: 'spacing-differs-across',
      text: {
        en: 'The spacings across the car must agree within bolt play and slots.',
        de: 'Die Abstände quer müssen innerhalb von Spiel und Langlöchern gleich sein.',
      },
    },
    {
      id: 'both-ways',
      'at-most': [
        {
          sum: [
            [rest('along'), rest('along')],
            [rest('across'), rest('across')],
          ],
        },
        [ROUND_PLAY, ROUND_PLAY],
      ],
      code: 'spacing-differs-both-ways',
      text: {
        en: 'Spacings that differ both ways at once need more play: a hole is round.',
        de: 'Weichen die Abstände längs und quer ab, braucht es mehr Spiel: Löcher sind rund.',
      },
    },
    {
      id: 'bush-holds',
      'at-least': ['mount.bush', 'body.eye'],
      code: 'bush-loose',
      text: {
        en: 'A bush must be pressed in: one that is smaller than its eye works loose.',
        de: 'Eine Buchse muss eingepresst sein: Ist sie kleiner als ihr Auge, wandert sie.',
      },
    },
    {
      id: 'bush-goes-in',
      clearance: ['mount.bush', 'body.eye'],
      max: '0.3 mm',
      code: 'bush-too-large',
      text: {
        en: 'A bush more than 0.3 mm over its eye cannot be pressed in without harm.',
        de: 'Mit mehr als 0,3 mm Übermaß lässt sich die Buchse nicht ohne Schaden einpressen.',
      },
    },
    {
      id: 'height',
      within: ['mount.height', 'body.height'],
      tolerance: '2 mm',
      severity: 'caution',
      code: 'height-differs',
      text: {
        en: 'Another height tilts gearbox or axle: check shaft angles and the room around.',
        de: 'Andere Höhe neigt Getriebe oder Achse: Gelenkwinkel und Freigang prüfen.',
      },
    },
  ],
  notChecked: [
    {
      en: 'holes between the corners, or that form no rectangle',
      de: 'Löcher zwischen den Ecken oder nicht im Rechteck',
    },
    { en: 'where along the car the pattern lies', de: 'wo in Längsrichtung das Lochbild liegt' },
    { en: 'whether the pattern is square: its diagonals', de: 'Winkligkeit: die Diagonalen' },
    {
      en: 'length and strength class of the bolts',
      de: 'Länge und Festigkeitsklasse der Schrauben',
    },
    { en: 'hardness and direction of the rubber', de: 'Härte und Einbaulage des Gummis' },
    { en: 'room for exhaust and tunnel', de: 'Platz für Auspuff und Tunnel' },
  ],
};
