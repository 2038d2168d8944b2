/**
 * A track-rod end by its two joints: its tapered stem in the steering arm of a knuckle, and its
 * thread on the track rod.
 *
 * Standard: none; car makers' own. Each face says which joint it is: "taper" or "thread". A taper
 * is recorded as a ratio of diameter to length, "1/10", the large end of the stem where its taper
 * begins, below the ball, that of the arm at the mouth of its eye. With taper T, a stem whose
 * large end is larger than the mouth by D stands out by D/T. Its taper must end in the eye, or the
 * nut meets the thread's end before it draws, and three quarters of the eye must carry: common
 * practice, no source. All of it is multiplied by T, so that nothing is divided.
 *
 * What fits into the eye may still steer wrongly, and a knuckle of another model almost always
 * moves this point. So the end records what the steering it belongs to was built for: the length
 * of the steering arm, from the axis about which the knuckle turns to the middle of the eye, else
 * steering ratio and inner angle change; from which side the stem goes in; and the height at which
 * its large end lies over the centre of the lower ball joint, with the wheel upright, else the
 * wheels steer as they spring. The arm records the height of its mouth. 1 mm of length and 2 mm of
 * height: common practice, no source; more is an engineer's case and no fit. A rod is set by
 * turning it, for which its two ends have threads of opposite hand.
 *
 * Left out: ends that are pinched, and rods in one piece with their ends.
 */

import type { BuiltInKind } from './kind.js';

function both(form: string) {
  return { all: [{ 'one-of': ['end.form', [form]] }, { 'one-of': ['carrier.form', [form]] }] };
}

/** A stem in its eye that goes in from this side, as both ends have it. */
function enters(entry: string) {
  return {
    all: [
      ...both('taper').all,
      { 'one-of': ['end.entry', [entry]] },
      { 'one-of': ['carrier.entry', [entry]] },
    ],
  };
}

export const trackRodEnd: BuiltInKind = {
  id: 'track-rod-end',
  name: { en: 'track-rod end', de: 'Spurstangenkopf' },
  standard: 'none',
  sides: ['end', 'carrier'],
  sideNames: {
    end: {
      en: 'the track-rod end, as its steering needs it',
      de: 'der Spurstangenkopf, wie seine Lenkung ihn verlangt',
    },
    carrier: {
      en: 'the steering arm or the track rod',
      de: 'der Spurhebel oder die Spurstange',
    },
  },
  caution: 'steering',
  parameters: {
    form: {
      type: 'code',
      name: { en: 'taper or thread', de: 'Konus oder Gewinde' },
      tool: 'visual-check',
    },
    taper: {
      type: 'ratio',
      name: { en: 'taper, diameter over length', de: 'Kegelverhältnis, Durchmesser zu Länge' },
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
    entry: {
      type: 'code',
      name: { en: 'stem from above or below', de: 'Zapfen von oben oder unten' },
      tool: 'visual-check',
    },
    'arm-length': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'length of the steering arm', de: 'Länge des Spurhebels' },
      tool: 'caliper',
      usual: ['90 mm', '170 mm'],
    },
    height: {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'height of the large end over the lower ball joint',
        de: 'Höhe des großen Endes über dem unteren Traggelenk',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '200 mm'],
    },
    'nut-thread': {
      type: 'code',
      optional: true,
      name: { en: 'thread of the nut', de: 'Gewinde der Mutter' },
      tool: 'pitch-gauge',
    },
    thread: {
      type: 'code',
      name: { en: 'thread on the track rod', de: 'Gewinde zur Spurstange' },
      tool: 'pitch-gauge',
    },
    hand: {
      type: 'code',
      name: { en: 'right-hand or left-hand thread', de: 'Rechts- oder Linksgewinde' },
      tool: 'visual-check',
    },
  },
  checks: [
    {
      equal: 'form',
      text: {
        en: 'The stem belongs into the arm and the thread onto the rod.',
        de: 'Der Zapfen gehört in den Spurhebel, das Gewinde an die Spurstange.',
      },
    },
    {
      id: 'known-form',
      'one-of': ['end.form', ['taper', 'thread']],
      code: 'neither-taper-nor-thread',
      text: {
        en: 'Only tapered stems and threads are compared here.',
        de: 'Verglichen werden hier nur Konus und Gewinde.',
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
        { sum: [['end.taper', 'end.seat-length'], 'carrier.large-end'] },
        { sum: [['end.taper', 'carrier.seat-length'], 'end.large-end'] },
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
        { sum: [['end.taper', 'end.seat-length'], 'carrier.large-end'] },
        { sum: [['3/4', 'end.taper', 'carrier.seat-length'], 'end.large-end'] },
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
      'at-least': ['end.seat-length', ['3/4', 'carrier.seat-length']],
      when: both('taper'),
      code: 'taper-too-short',
      text: {
        en: 'The taper of the stem must be at least three quarters as long as the eye.',
        de: 'Der Konus des Zapfens muss mindestens drei Viertel so lang sein wie das Auge.',
      },
    },
    {
      equal: 'entry',
      when: both('taper'),
      text: {
        en: 'The mouth of the eye must be on the side from which the stem goes in.',
        de: 'Das Auge muss dort weit sein, wo der Zapfen eingesetzt wird.',
      },
    },
    {
      id: 'known-entry',
      'one-of': ['carrier.entry', ['from-above', 'from-below']],
      when: both('taper'),
      code: 'neither-above-nor-below',
      text: {
        en: 'Only with a stem from above or from below can the height be compared.',
        de: 'Nur mit einem Zapfen von oben oder unten lässt sich die Höhe vergleichen.',
      },
    },
    {
      id: 'arm-length',
      within: ['carrier.arm-length', 'end.arm-length'],
      tolerance: '1 mm',
      when: both('taper'),
      code: 'arm-length-differs',
      text: {
        en: 'Another arm length changes ratio and angles of the steering: a case for an engineer.',
        de: 'Andere Hebellänge ändert Lenkübersetzung und Winkel: Sache des Ingenieurs.',
      },
    },
    {
      id: 'height-below',
      within: [
        { sum: [['end.taper', 'carrier.height'], 'carrier.large-end'] },
        { sum: [['end.taper', 'end.height'], 'end.large-end'] },
      ],
      tolerance: ['end.taper', '2 mm'],
      when: enters('from-below'),
      code: 'steers-as-it-springs',
      text: {
        en: 'An end higher or lower makes the wheels steer as they spring; a case for an engineer.',
        de: 'Liegt der Kopf höher oder tiefer, lenkt das Rad beim Federn: Sache des Ingenieurs.',
      },
    },
    {
      id: 'height-above',
      within: [
        { sum: [['end.taper', 'carrier.height'], 'end.large-end'] },
        { sum: [['end.taper', 'end.height'], 'carrier.large-end'] },
      ],
      tolerance: ['end.taper', '2 mm'],
      when: enters('from-above'),
      code: 'steers-as-it-springs',
      text: {
        en: 'An end lower or higher makes the wheels steer as they spring; a case for an engineer.',
        de: 'Liegt der Kopf tiefer oder höher, lenkt das Rad beim Federn: Sache des Ingenieurs.',
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
      equal: 'thread',
      when: both('thread'),
      text: {
        en: 'End and track rod must have the same thread: diameter and pitch.',
        de: 'Kopf und Spurstange brauchen dasselbe Gewinde: Durchmesser und Steigung.',
      },
    },
    {
      equal: 'hand',
      when: both('thread'),
      text: {
        en: 'End and track rod must have threads of the same hand.',
        de: 'Kopf und Spurstange brauchen beide Rechts- oder beide Linksgewinde.',
      },
    },
    {
      id: 'known-hand',
      'one-of': ['carrier.hand', ['right', 'left']],
      when: both('thread'),
      code: 'neither-right-nor-left',
      text: {
        en: 'A thread is right-hand or left-hand: hold it upright and see which way it climbs.',
        de: 'Ein Gewinde ist rechts- oder linksgängig: senkrecht halten, sehen, wohin es steigt.',
      },
    },
  ],
  notChecked: [
    { en: 'contact pattern: blue the taper', de: 'Tragbild: Konus mit Tuschierfarbe prüfen' },
    { en: 'split-pin hole against the nut', de: 'Splintloch gegen die Kronenmutter' },
    {
      en: 'length of the rod, and how far the end is screwed in once the track is set',
      de: 'Länge der Spurstange, Einschraubtiefe nach dem Einstellen der Spur',
    },
    {
      en: 'swing of the ball and room for its boot',
      de: 'Ausschlag der Kugel, Platz der Manschette',
    },
    { en: 'room inside the wheel at full lock', de: 'Platz im Rad bei vollem Einschlag' },
  ],
};
