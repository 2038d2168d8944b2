/**
 * A bolt in the joint that it clamps: thread, strength, and the lengths that decide whether it
 * clamps at all.
 *
 * Standards: ISO 898-1 (strength classes of bolts), ISO 898-2 (nuts); the thread is a code such as
 * "m10x1.5". The class must be at least the original's. Its first figure is the tensile strength
 * and its two figures together the yield stress; both rise from class to class but for one pair:
 * 5.6 yields before 4.8 (proof stress 280 against 310 MPa). Grades of SAE J429 are another scale,
 * so a class that ISO 898-1 does not know is refused.
 *
 * Lengths: the bolt's from under its head to its tip (of a stud, from the face that it stands in),
 * its grip with all washers, and the depth to which a bolt can be screwed in. The thread must
 * engage over one diameter in steel, one and a half in cast iron or aluminium (common handbook
 * practice, from memory), two in magnesium (common practice, no source); a nut by ISO 898-2 must
 * only be filled. Left out: torque and preload, which are the maker's figures.
 *
 * Length: one table; each of its checks says itself in two languages.
 */

import type { BuiltInKind } from './kind.js';

const CLASSES = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'];

/** What of the bolt is left for the thread. */
const REACH = { sum: ['bolt.length', ['-1', 'joint.grip']] };

function cutIn(...materials: readonly string[]) {
  return { 'one-of': ['joint.material', materials] };
}

/** The diameters of thread that materials need: of the bolt, and of what it is screwed into. */
function engagedIn(name: string, materials: readonly string[], diameters: string, says: Says) {
  const needed = [diameters, 'bolt.diameter'];
  const when = cutIn(...materials);
  return [
    {
      id: `reach-in-${name}`,
      'at-least': [REACH, needed],
      when,
      code: 'stays-short',
      text: {
        en: `In ${says.en} the bolt must reach ${says.length.en} into the thread.`,
        de: `In ${says.de} muss die Schraube ${says.length.de} ins Gewinde reichen.`,
      },
    },
    {
      id: `depth-in-${name}`,
      'at-least': ['joint.thread-depth', needed],
      when,
      code: 'too-little-thread',
      text: {
        en: `In ${says.en} the thread must be ${says.length.en} deep.`,
        de: `In ${says.de} muss das Gewinde ${says.length.de} tief sein.`,
      },
    },
  ];
}

interface Says {
  readonly en: string;
  readonly de: string;
  readonly length: { readonly en: string; readonly de: string };
}

export const boltedJoint: BuiltInKind = {
  id: 'bolted-joint',
  name: { en: 'bolted joint', de: 'Schraubenverbindung' },
  standard: 'ISO 898-1 and ISO 898-2',
  sides: ['bolt', 'joint'],
  sideNames: {
    bolt: { en: 'the bolt, screw or stud', de: 'die Schraube oder der Stehbolzen' },
    joint: { en: 'what it clamps, and its thread', de: 'was sie klemmt, samt Gewinde oder Mutter' },
  },
  caution: 'general',
  parameters: {
    thread: {
      type: 'code',
      name: { en: 'thread and pitch', de: 'Gewinde und Steigung' },
      tool: 'pitch-gauge',
    },
    diameter: {
      type: 'designation',
      unit: 'mm',
      of: 'bolt',
      name: { en: 'nominal diameter', de: 'Nenndurchmesser' },
      tool: 'caliper',
      usual: ['6 mm', '16 mm'],
    },
    'strength-class': {
      type: 'designation',
      name: { en: 'strength class', de: 'Festigkeitsklasse' },
      tool: 'marking',
      usual: ['4.6', '12.9'],
    },
    length: {
      type: 'measured',
      unit: 'mm',
      of: 'bolt',
      name: { en: 'length under the head', de: 'Länge unter dem Kopf' },
      tool: 'caliper',
      usual: ['10 mm', '180 mm'],
    },
    'thread-length': {
      type: 'measured',
      unit: 'mm',
      of: 'bolt',
      name: { en: 'length of the full thread', de: 'Länge des vollen Gewindes' },
      tool: 'caliper',
      usual: ['8 mm', '120 mm'],
    },
    grip: {
      type: 'measured',
      unit: 'mm',
      of: 'joint',
      name: { en: 'grip: all that is clamped', de: 'Klemmlänge mit allen Scheiben' },
      tool: 'caliper',
      usual: ['5 mm', '150 mm'],
    },
    'thread-depth': {
      type: 'measured',
      unit: 'mm',
      of: 'joint',
      name: { en: 'usable depth of the thread', de: 'nutzbare Gewindetiefe' },
      tool: 'depth-gauge',
      usual: ['5 mm', '80 mm'],
    },
    material: {
      type: 'code',
      of: 'joint',
      name: { en: 'material of the thread, or nut', de: 'Werkstoff des Gewindes, oder Mutter' },
      tool: 'visual-check',
    },
    hole: {
      type: 'code',
      of: 'joint',
      name: { en: 'blind or through hole', de: 'Sackloch oder Durchgangsloch' },
      tool: 'visual-check',
    },
    'clearance-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'joint',
      optional: true,
      name: { en: 'hole in what is clamped', de: 'Loch im geklemmten Teil' },
      tool: 'caliper',
      usual: ['6 mm', '19 mm'],
    },
    'head-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'bolt',
      optional: true,
      name: { en: 'diameter over head or washer', de: 'Durchmesser über Kopf oder Scheibe' },
      tool: 'caliper',
      usual: ['9 mm', '40 mm'],
    },
    'seat-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'joint',
      optional: true,
      name: { en: 'diameter of the seat for the head', de: 'Durchmesser der Kopfauflage' },
      tool: 'caliper',
      usual: ['9 mm', '60 mm'],
    },
    'head-height': {
      type: 'measured',
      unit: 'mm',
      of: 'bolt',
      optional: true,
      name: { en: 'height of the head', de: 'Höhe des Kopfs' },
      tool: 'caliper',
      usual: ['3 mm', '20 mm'],
    },
    'head-room': {
      type: 'measured',
      unit: 'mm',
      of: 'joint',
      optional: true,
      name: { en: 'room over the seat', de: 'Platz über der Auflage' },
      tool: 'feeler-gauge',
      usual: ['3 mm', '60 mm'],
    },
  },
  checks: [
    {
      equal: 'thread',
      text: {
        en: 'Bolt and thread must be equal in size and pitch: a near pitch starts and strips.',
        de: 'Gewinde und Steigung müssen gleich sein: Eine ähnliche fasst an und reißt aus.',
      },
    },
    {
      id: 'strength-class',
      'at-least': ['bolt.strength-class', 'joint.strength-class'],
      code: 'weaker-than-original',
      text: {
        en: 'The strength class must be at least that of the original bolt.',
        de: 'Die Festigkeitsklasse muss mindestens die der originalen Schraube sein.',
      },
    },
    {
      id: 'yield',
      'one-of': ['bolt.strength-class', CLASSES.filter((one) => one !== '5.6')],
      when: { 'one-of': ['joint.strength-class', ['4.8']] },
      code: 'yields-earlier',
      text: {
        en: 'In place of class 4.8 a bolt of 5.6 breaks later but stretches earlier.',
        de: 'Anstelle von 4.8 reißt eine Schraube 5.6 später, dehnt sich aber früher.',
      },
    },
    {
      id: 'bolt-class',
      'one-of': ['bolt.strength-class', CLASSES],
      code: 'not-an-iso-class',
      text: {
        en: 'The mark on the bolt must be a class of ISO 898-1; inch grades are another scale.',
        de: 'Die Schraube muss eine Klasse nach ISO 898-1 tragen; Zollgrade zählen anders.',
      },
    },
    {
      id: 'joint-class',
      'one-of': ['joint.strength-class', CLASSES],
      code: 'not-an-iso-class-asked',
      text: {
        en: 'The class asked for must be one of ISO 898-1; inch grades are another scale.',
        de: 'Die verlangte Klasse muss eine nach ISO 898-1 sein; Zollgrade zählen anders.',
      },
    },
    {
      id: 'harder',
      'at-most': ['bolt.strength-class', 'joint.strength-class'],
      severity: 'caution',
      code: 'harder-than-original',
      text: {
        en: "A higher class does not raise the torque: the maker's figure holds for the thread.",
        de: 'Eine höhere Klasse erlaubt nicht mehr Drehmoment: Die Angabe des Herstellers gilt.',
      },
    },
    {
      id: 'shank',
      'at-least': [{ sum: ['joint.grip', 'bolt.thread-length'] }, 'bolt.length'],
      code: 'runs-out-of-thread',
      text: {
        en: 'The plain shank may not be longer than the grip, or the bolt tightens on nothing.',
        de: 'Der Schaft darf nicht länger sein als die Klemmlänge, sonst klemmt nichts.',
      },
    },
    {
      id: 'known-hole',
      'one-of': ['joint.hole', ['blind', 'through']],
      code: 'neither-blind-nor-through',
      text: {
        en: 'A hole is blind, or it goes through: probe it with a wire.',
        de: 'Ein Loch ist ein Sackloch oder geht durch: mit einem Draht abtasten.',
      },
    },
    {
      id: 'bottom',
      'at-most': [REACH, 'joint.thread-depth'],
      when: { 'one-of': ['joint.hole', ['blind']] },
      code: 'bottoms',
      text: {
        en: 'The bolt may not come to the end of a blind thread: tight, it would not clamp.',
        de: 'Die Schraube darf im Sackloch nicht anstehen: Sie wäre fest und klemmte nicht.',
      },
    },
    {
      id: 'known-material',
      'one-of': ['joint.material', ['steel', 'cast-iron', 'aluminium', 'magnesium', 'nut']],
      code: 'no-rule-for-this-material',
      text: {
        en: 'The material must be one whose need of thread is known: else ask its maker.',
        de: 'Wie viel Gewinde der Werkstoff braucht, muss bekannt sein: sonst Hersteller fragen.',
      },
    },
    ...engagedIn('steel', ['steel'], '1', {
      en: 'steel',
      de: 'Stahl',
      length: { en: 'one diameter', de: 'einen Durchmesser' },
    }),
    ...engagedIn('casting', ['cast-iron', 'aluminium'], '3/2', {
      en: 'cast iron or aluminium',
      de: 'Guss oder Aluminium',
      length: { en: 'one and a half diameters', de: 'anderthalb Durchmesser' },
    }),
    ...engagedIn('magnesium', ['magnesium'], '2', {
      en: 'magnesium',
      de: 'Magnesium',
      length: { en: 'two diameters', de: 'zwei Durchmesser' },
    }),
    {
      id: 'through-the-nut',
      'at-least': [REACH, 'joint.thread-depth'],
      when: cutIn('nut'),
      code: 'nut-not-filled',
      text: {
        en: 'The bolt must reach through the whole nut.',
        de: 'Die Schraube muss durch die ganze Mutter reichen.',
      },
    },
    {
      id: 'clearance-hole',
      'at-least': ['joint.clearance-hole', 'bolt.diameter'],
      code: 'bolt-does-not-pass',
      text: {
        en: 'The bolt must pass the hole in what it clamps.',
        de: 'Die Schraube muss durch das Loch im geklemmten Teil gehen.',
      },
    },
    {
      id: 'head-seat',
      'at-least': ['joint.seat-diameter', 'bolt.head-diameter'],
      code: 'head-does-not-sit',
      text: {
        en: 'Head or washer must lie flat on the seat.',
        de: 'Kopf oder Scheibe müssen flach auf der Auflage liegen.',
      },
    },
    {
      id: 'head-room',
      'at-least': ['joint.head-room', 'bolt.head-height'],
      code: 'head-fouls',
      text: {
        en: 'The head must clear what stands or turns above it.',
        de: 'Der Kopf muss frei sein von allem, was darüber steht oder sich dreht.',
      },
    },
  ],
  notChecked: [
    { en: 'tightening torque or angle', de: 'Anziehdrehmoment oder Drehwinkel' },
    { en: 'bolts to be used once only', de: 'Schrauben für einmaligen Gebrauch' },
    { en: 'class of the nut', de: 'Festigkeitsklasse der Mutter' },
    { en: 'form of the head seat, locking, sealing', de: 'Form der Auflage, Sicherung, Dichtung' },
    { en: 'room for the spanner', de: 'Platz für den Schlüssel' },
  ],
};
