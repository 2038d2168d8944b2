/**
 * A screw thread: an external thread in an internal one.
 *
 * Standards: ISO 68-1 and ISO 724 (ISO metric form and its diameters), ISO 965-1 (tolerances),
 * ASME B1.1 (unified, UN). Form, nominal diameter, pitch and hand fix the thread and must be
 * exactly equal: M12x1.25 starts in M12x1.5 and strips. A pitch in threads per inch is recorded as
 * "1/20 in". UNC, UNF, UNEF and UNS name one form with several pitches, so the names may differ
 * where the sizes do not. No standard form is vouched for but those two; any other is compared by
 * its name alone, which is said. A class of ISO 965-1 or ASME B1.1 always leaves play; a class
 * that is none of these (interference fits, allowances for galvanizing) may bind, which is said.
 *
 * The thread must engage over one diameter in steel, over one and a half in cast iron or aluminium
 * (common handbook practice, from memory). A nut by ISO 898-2 is as high as its class needs: it
 * must only be filled. So the internal thread's length is recorded under what it is cut in.
 * Diameters are compared where both ends record them; the minor diameter is that of the internal
 * thread's crests and of the external thread's roots.
 *
 * Left out: tapered pipe threads, which seal by their flanks, and threads of several starts.
 */

import type { BuiltInKind } from './kind.js';

const UNIFIED = ['un', 'unc', 'unf', 'unef', 'uns'];

/** ISO 965-1 and ASME B1.1, from memory. */
const EXTERNAL_CLASSES =
  '3h4h 4g 4h 5g6g 5h4h 5h6h 6e 6f 6g 6h 7e6e 7g6g 7h6h 8e 8g 9e8e 9g8g 1A 2A 3A'.split(' ');
const INTERNAL_CLASSES = '4H 5G 5H 6G 6H 7G 7H 8G 8H 1B 2B 3B'.split(' ');

export const screwThread: BuiltInKind = {
  id: 'screw-thread',
  name: { en: 'screw thread', de: 'Schraubengewinde' },
  standard: 'ISO 68-1, ISO 724 and ISO 965-1; ASME B1.1',
  sides: ['external', 'internal'],
  sideNames: {
    external: { en: 'the bolt, stud or stub', de: 'die Schraube oder der Zapfen, Gewinde außen' },
    internal: { en: 'the nut or tapped hole', de: 'die Mutter oder Bohrung, Gewinde innen' },
  },
  caution: 'general',
  parameters: {
    form: {
      type: 'code',
      name: { en: 'thread form', de: 'Gewindeform' },
      tool: 'pitch-gauge',
    },
    diameter: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'nominal diameter', de: 'Nenndurchmesser' },
      tool: 'caliper',
      usual: ['6 mm', '30 mm'],
    },
    pitch: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch', de: 'Steigung' },
      tool: 'pitch-gauge',
      usual: ['0.75 mm', '3.5 mm'],
    },
    hand: {
      type: 'code',
      name: { en: 'hand of the thread', de: 'Gewinderichtung' },
      tool: 'visual-check',
    },
    class: {
      type: 'code',
      optional: true,
      name: { en: 'tolerance class', de: 'Toleranzklasse' },
      tool: 'marking',
    },
    'pitch-diameter': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'pitch diameter', de: 'Flankendurchmesser' },
      tool: 'micrometer',
      usual: ['5 mm', '30 mm'],
    },
    'minor-diameter': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'minor diameter', de: 'Kerndurchmesser' },
      tool: 'caliper',
      usual: ['4 mm', '29 mm'],
    },
    length: {
      type: 'measured',
      unit: 'mm',
      of: 'external',
      optional: true,
      name: { en: 'length of thread that goes in', de: 'Gewindelänge, die hineingeht' },
      tool: 'depth-gauge',
      usual: ['4 mm', '80 mm'],
    },
    'length-in-steel': {
      type: 'measured',
      unit: 'mm',
      of: 'internal',
      optional: true,
      name: { en: 'length of a thread cut in steel', de: 'Länge eines Gewindes in Stahl' },
      tool: 'depth-gauge',
      usual: ['4 mm', '80 mm'],
    },
    'length-in-casting': {
      type: 'measured',
      unit: 'mm',
      of: 'internal',
      optional: true,
      name: {
        en: 'length of a thread cut in cast iron or aluminium',
        de: 'Länge eines Gewindes in Guss oder Aluminium',
      },
      tool: 'depth-gauge',
      usual: ['6 mm', '80 mm'],
    },
    'nut-height': {
      type: 'measured',
      unit: 'mm',
      of: 'internal',
      optional: true,
      name: { en: 'height of the nut', de: 'Höhe der Mutter' },
      tool: 'caliper',
      usual: ['4 mm', '30 mm'],
    },
  },
  checks: [
    {
      equal: 'form',
      when: {
        not: {
          all: [{ 'one-of': ['external.form', UNIFIED] }, { 'one-of': ['internal.form', UNIFIED] }],
        },
      },
      text: {
        en: 'Both threads must be of one form: others have another flank angle.',
        de: 'Beide Gewinde müssen dieselbe Form haben: Andere haben andere Flankenwinkel.',
      },
    },
    {
      equal: 'diameter',
      text: {
        en: 'The nominal diameters must be equal.',
        de: 'Die Nenndurchmesser müssen gleich sein.',
      },
    },
    {
      equal: 'pitch',
      code: 'starts-and-strips',
      text: {
        en: 'The pitches must be equal: a near one starts, jams after some turns and strips.',
        de: 'Die Steigungen müssen gleich sein: Eine ähnliche fasst an, klemmt und reißt aus.',
      },
    },
    {
      equal: 'hand',
      text: {
        en: 'Both threads must be right-hand, or both left-hand.',
        de: 'Beide müssen Rechtsgewinde sein oder beide Linksgewinde.',
      },
    },
    {
      id: 'known-hand',
      'one-of': ['external.hand', ['right', 'left']],
      code: 'neither-right-nor-left',
      text: {
        en: 'A thread is right-hand or left-hand: hold it upright and see which way it climbs.',
        de: 'Ein Gewinde ist rechts- oder linksgängig: senkrecht halten, sehen, wohin es steigt.',
      },
    },
    {
      id: 'known-form',
      'one-of': ['external.form', ['iso-metric', ...UNIFIED]],
      severity: 'caution',
      code: 'not-a-standard-form',
      text: {
        en: 'This form is compared by its name alone: lay a pitch gauge on both threads.',
        de: 'Diese Form wird nur dem Namen nach verglichen: Gewindelehre an beide Gewinde halten.',
      },
    },
    {
      id: 'external-class',
      'one-of': ['external.class', EXTERNAL_CLASSES],
      severity: 'caution',
      code: 'may-bind',
      text: {
        en: 'This class of the external thread may leave no play: try it on by hand.',
        de: 'Diese Klasse des Außengewindes lässt vielleicht kein Spiel: von Hand probieren.',
      },
    },
    {
      id: 'internal-class',
      'one-of': ['internal.class', INTERNAL_CLASSES],
      severity: 'caution',
      code: 'not-a-standard-class',
      text: {
        en: 'This class of the internal thread may be tight or loose: try it on by hand.',
        de: 'Diese Klasse des Innengewindes ist vielleicht eng oder lose: von Hand probieren.',
      },
    },
    {
      id: 'flanks',
      'at-least': ['internal.pitch-diameter', 'external.pitch-diameter'],
      code: 'flanks-bind',
      text: {
        en: 'The flanks must clear: the internal pitch diameter may not be the smaller one.',
        de: 'Die Flanken müssen Spiel haben: Innen darf der Flankendurchmesser nicht kleiner sein.',
      },
    },
    {
      id: 'crests',
      'at-least': ['internal.minor-diameter', 'external.minor-diameter'],
      code: 'crests-touch-roots',
      text: {
        en: 'The crests of the internal thread must clear the roots of the external one.',
        de: 'Die Spitzen des Innengewindes müssen im Grund des Außengewindes Platz haben.',
      },
    },
    {
      id: 'engaged-in-steel',
      'at-least': [{ min: ['external.length', 'internal.length-in-steel'] }, 'external.diameter'],
      code: 'too-little-thread',
      text: {
        en: 'In steel the thread must engage over one diameter at least.',
        de: 'In Stahl muss das Gewinde mindestens einen Durchmesser tragen.',
      },
    },
    {
      id: 'engaged-in-casting',
      'at-least': [
        { min: ['external.length', 'internal.length-in-casting'] },
        ['3/2', 'external.diameter'],
      ],
      code: 'pulls-out-of-the-casting',
      text: {
        en: 'In cast iron or aluminium the thread must engage over one and a half diameters.',
        de: 'In Guss oder Aluminium muss das Gewinde anderthalb Durchmesser tragen.',
      },
    },
    {
      id: 'through-the-nut',
      'at-least': ['external.length', 'internal.nut-height'],
      code: 'nut-not-filled',
      text: {
        en: 'The thread must reach through the whole nut.',
        de: 'Das Gewinde muss durch die ganze Mutter reichen.',
      },
    },
  ],
  notChecked: [
    { en: 'wear, damage and repair inserts', de: 'Verschleiß, Schäden, Gewindeeinsätze' },
    { en: 'locking patch, glue or staking', de: 'Klebung, Klemmteil oder Verstemmung' },
    { en: 'strength class, thin nuts', de: 'Festigkeitsklasse, flache Muttern' },
    {
      en: 'length of threads in materials softer than aluminium',
      de: 'Länge von Gewinden in weicherem Werkstoff als Aluminium',
    },
    { en: 'whether the bolt bottoms in the hole', de: 'ob die Schraube im Loch aufsteht' },
    { en: 'thickness of the coating', de: 'Dicke der Beschichtung' },
  ],
};
