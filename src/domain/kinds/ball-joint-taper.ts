/**
 * The stem of a ball joint in the eye of a knuckle or an arm: a taper drawn tight by a nut, or a
 * straight stem held by a pinch bolt that lies in its groove.
 *
 * Standard: none; car makers' own. Tapers of 1 in 10 and of 1 in 8 (an inch and a half a foot) are
 * met, from memory: a taper is recorded as that ratio, "1/10", told by two diameters and the
 * distance between them. The large end is the diameter of the stem where its taper begins, below
 * the ball, and that of the eye at its mouth; the seat is the length of the taper in each.
 *
 * With taper T, a stem whose large end is larger than the mouth by D stands out by s = D/T. So its
 * taper ends at (length - s) in the eye. Beyond the eye the nut would meet the thread's end before
 * it draws the taper tight; and three quarters of the eye must carry, common practice, no source.
 * The hole for the split pin and the centre of the ball move by s too; both are distances from the
 * large end of the stem, and of the eye distances from its mouth at which they belong. They agree
 * within 1 mm: common practice, no source. All of it is multiplied by T, so that nothing is
 * divided. Play of 0 to 0.05 mm of a pinched stem and 0.5 mm of its groove: common practice, no
 * source.
 *
 * Left out: joints that are bolted, riveted or pressed in with their housing.
 */

import type { BuiltInKind } from './kind.js';

function both(form: string) {
  return { all: [{ 'one-of': ['stem.form', [form]] }, { 'one-of': ['eye.form', [form]] }] };
}

export const ballJointTaper: BuiltInKind = {
  id: 'ball-joint-taper',
  name: { en: 'ball-joint stem', de: 'Traggelenkzapfen' },
  standard: 'none',
  sides: ['stem', 'eye'],
  sideNames: {
    stem: { en: 'the ball joint with its stem', de: 'das Traggelenk mit seinem Zapfen' },
    eye: { en: 'the knuckle or arm with the eye for it', de: 'Achsschenkel oder Lenker mit Auge' },
  },
  caution: 'suspension',
  parameters: {
    form: {
      type: 'code',
      name: { en: 'taper or pinch', de: 'Konus oder Klemmung' },
      tool: 'visual-check',
    },
    taper: {
      type: 'ratio',
      name: {
        en: 'ratio of the taper, diameter over length',
        de: 'Kegelverhältnis, Durchmesser zu Länge',
      },
      tool: 'known-mate',
      usual: ['1/16', '1/6'],
    },
    'large-end': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'large diameter of the taper', de: 'großer Durchmesser des Konus' },
      tool: 'micrometer',
      usual: ['8 mm', '22 mm'],
    },
    'seat-length': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'length of the taper', de: 'Länge des Konus' },
      tool: 'depth-gauge',
      usual: ['8 mm', '40 mm'],
    },
    'nut-thread': {
      type: 'code',
      optional: true,
      name: { en: 'thread of the nut', de: 'Gewinde der Mutter' },
      tool: 'pitch-gauge',
    },
    'pin-hole': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: {
        en: 'distance from the large end to the split pin',
        de: 'Abstand vom großen Ende zum Splint',
      },
      tool: 'depth-gauge',
      usual: ['15 mm', '70 mm'],
    },
    'ball-height': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: {
        en: 'distance from the large end to the centre of the ball',
        de: 'Abstand vom großen Ende zur Kugelmitte',
      },
      tool: 'caliper',
      usual: ['5 mm', '60 mm'],
    },
    'pinch-diameter': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'diameter of the pinched stem', de: 'Durchmesser des geklemmten Zapfens' },
      tool: 'micrometer',
      usual: ['8 mm', '22 mm'],
    },
    groove: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'distance from the shoulder to the groove or pinch bolt',
        de: 'Abstand von der Schulter zu Nut oder Klemmschraube',
      },
      tool: 'depth-gauge',
      usual: ['5 mm', '40 mm'],
    },
    'pinch-bolt': {
      type: 'code',
      name: { en: 'thread of the pinch bolt', de: 'Gewinde der Klemmschraube' },
      tool: 'pitch-gauge',
    },
  },
  checks: [
    {
      equal: 'form',
      text: {
        en: 'Both must be made for a taper, or both for a pinch bolt.',
        de: 'Beide müssen einen Konus haben, oder beide eine Klemmung.',
      },
    },
    {
      id: 'known-form',
      'one-of': ['stem.form', ['taper', 'pinch']],
      code: 'neither-taper-nor-pinch',
      text: {
        en: 'Only tapers and pinched stems are compared here: any other joint is another kind.',
        de: 'Verglichen werden hier nur Konus und Klemmung: Anderes ist eine andere Art.',
      },
    },
    {
      equal: 'taper',
      when: both('taper'),
      text: {
        en: 'The tapers must be equal: 1 in 8 in 1 in 10 sits on a ring and works loose.',
        de: 'Die Kegel müssen gleich sein: 1:8 in 1:10 sitzt nur auf einem Ring und löst sich.',
      },
    },
    {
      id: 'nut-draws',
      'at-most': [
        { sum: [['stem.taper', 'stem.seat-length'], 'eye.large-end'] },
        { sum: [['stem.taper', 'eye.seat-length'], 'stem.large-end'] },
      ],
      when: both('taper'),
      code: 'taper-passes-through',
      text: {
        en: 'The taper must end inside the eye, or the nut is tight before the taper is.',
        de: 'Der Konus muss im Auge enden, sonst steht die Mutter an, bevor er festsitzt.',
      },
    },
    {
      id: 'seat',
      'at-least': [
        { sum: [['stem.taper', 'stem.seat-length'], 'eye.large-end'] },
        { sum: [['3/4', 'stem.taper', 'eye.seat-length'], 'stem.large-end'] },
      ],
      when: both('taper'),
      code: 'too-little-seat',
      text: {
        en: 'The taper must go deep enough to carry over three quarters of the eye.',
        de: 'Der Konus muss so tief sitzen, dass er auf drei Vierteln des Auges trägt.',
      },
    },
    {
      id: 'stem-length',
      'at-least': ['stem.seat-length', ['3/4', 'eye.seat-length']],
      when: both('taper'),
      code: 'taper-too-short',
      text: {
        en: 'The taper of the stem must be at least three quarters as long as the eye.',
        de: 'Der Konus des Zapfens muss mindestens drei Viertel so lang sein wie das Auge.',
      },
    },
    {
      id: 'pin-hole',
      within: [
        { sum: [['stem.taper', 'stem.pin-hole'], 'eye.large-end'] },
        { sum: [['stem.taper', 'eye.pin-hole'], 'stem.large-end'] },
      ],
      tolerance: ['stem.taper', '1 mm'],
      when: both('taper'),
      code: 'pin-misses-the-nut',
      text: {
        en: 'The split-pin hole must come to lie in the slots of the nut.',
        de: 'Das Splintloch muss in den Schlitzen der Kronenmutter liegen.',
      },
    },
    {
      id: 'ball-height',
      within: [
        { sum: [['stem.taper', 'stem.ball-height'], 'stem.large-end'] },
        { sum: [['stem.taper', 'eye.ball-height'], 'eye.large-end'] },
      ],
      tolerance: ['stem.taper', '1 mm'],
      when: both('taper'),
      severity: 'caution',
      code: 'ball-centre-moves',
      text: {
        en: 'A ball that sits higher or lower changes the geometry of the axle: have it checked.',
        de: 'Sitzt die Kugel höher oder tiefer, ändert das die Achsgeometrie: prüfen lassen.',
      },
    },
    {
      equal: 'nut-thread',
      when: both('taper'),
      text: {
        en: 'A nut that comes with the knuckle must have the thread of the stem.',
        de: 'Eine Mutter, die zum Achsschenkel gehört, braucht das Gewinde des Zapfens.',
      },
    },
    {
      id: 'stem-goes-in',
      'at-least': ['eye.pinch-diameter', 'stem.pinch-diameter'],
      when: both('pinch'),
      code: 'stem-too-thick',
      text: {
        en: 'The stem must go into the eye without force; never spread the eye with a chisel.',
        de: 'Der Zapfen muss ohne Gewalt ins Auge gehen; das Auge nie aufkeilen.',
      },
    },
    {
      id: 'pinch-play',
      clearance: ['eye.pinch-diameter', 'stem.pinch-diameter'],
      max: '0.05 mm',
      when: both('pinch'),
      code: 'stem-too-thin',
      text: {
        en: 'With more than 0.05 mm of play the eye does not clamp the stem.',
        de: 'Mit mehr als 0,05 mm Spiel klemmt das Auge den Zapfen nicht.',
      },
    },
    {
      id: 'groove',
      within: ['stem.groove', 'eye.groove'],
      tolerance: '0.5 mm',
      when: both('pinch'),
      code: 'groove-misses-the-bolt',
      text: {
        en: 'The groove must lie at the pinch bolt, within 0.5 mm: the bolt holds the stem.',
        de: 'Die Nut muss auf 0,5 mm bei der Klemmschraube liegen: Die hält den Zapfen.',
      },
    },
    {
      equal: 'pinch-bolt',
      when: both('pinch'),
      text: {
        en: 'The groove must be made for the pinch bolt of the eye: thread and pitch.',
        de: 'Die Nut muss zur Klemmschraube des Auges passen: Gewinde und Steigung.',
      },
    },
  ],
  notChecked: [
    { en: 'contact pattern: blue the taper', de: 'Tragbild: Konus mit Tuschierfarbe prüfen' },
    { en: 'from which side the stem goes in', de: 'von welcher Seite der Zapfen eingesetzt wird' },
    { en: 'how the joint is held in the other arm', de: 'wie das Gelenk im anderen Lenker sitzt' },
    {
      en: 'swing of the ball and room for its boot',
      de: 'Ausschlag der Kugel, Platz der Manschette',
    },
    { en: 'load that the joint may carry', de: 'Last, die das Gelenk trägt' },
  ],
};
