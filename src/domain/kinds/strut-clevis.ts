/**
 * A strut on its knuckle: the two plates of the bracket around the ear, held by two bolts.
 *
 * Standard: none; car makers' own. The two bolts pass both parts only if the bolt spacings differ
 * by no more than the play of a bolt in both holes: geometry, since the parts shift until each
 * bolt carries half of the difference. Of a threaded hole the thread's diameter stands for the
 * hole. A hole more than 1.5 mm wider than its bolt, beyond the medium series of ISO 273 (from
 * memory), was made for a larger one or drilled; an eccentric bolt is thinner on purpose. The joint
 * holds by friction of the plates on the ear, so the gap may be wider than the
 * ear by 0.3 mm at most, else the bolts bend the bracket: common practice, no source. Spacing is
 * that of the bolts, with a slot that of the bolt in its works position, not of the middle of the
 * slot.
 *
 * A bracket that was drilled or filed by hand is an engineered change and never fits. A slot or an
 * eccentric bolt as the works made it fits, but somebody must set the camber: a caution, as are an
 * offset that differs by more than 1 mm and an angle that differs by more than half a degree
 * (common practice, no source), which move the wheel. The offset is the distance of the upper bolt
 * from the axis of the strut, the angle the one between that axis and the line through both bolts:
 * of the strut as it is, of the knuckle as it was made for its own strut.
 *
 * Left out: brackets with two sizes of bolt, clamp and stub mounts.
 */

import type { BuiltInKind } from './kind.js';

export const strutClevis: BuiltInKind = {
  id: 'strut-clevis',
  name: { en: 'strut bracket', de: 'Federbeinlasche' },
  standard: 'none',
  sides: ['strut', 'knuckle'],
  sideNames: {
    strut: { en: 'the strut with its two-bolt bracket', de: 'das Federbein mit zwei Laschen' },
    knuckle: { en: 'the knuckle with the ear for it', de: 'der Achsschenkel mit dem Auge dafür' },
  },
  caution: 'suspension',
  parameters: {
    spacing: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'spacing of the two bolts', de: 'Abstand der zwei Schrauben' },
      tool: 'caliper',
      usual: ['40 mm', '75 mm'],
    },
    hole: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'diameter of the bolt holes', de: 'Durchmesser der Schraubenlöcher' },
      tool: 'caliper',
      usual: ['10 mm', '18 mm'],
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
      usual: ['10 mm', '16 mm'],
    },
    gap: {
      type: 'measured',
      unit: 'mm',
      of: 'strut',
      name: { en: 'gap between the plates', de: 'lichte Weite zwischen den Laschen' },
      tool: 'caliper',
      usual: ['15 mm', '70 mm'],
    },
    ear: {
      type: 'measured',
      unit: 'mm',
      of: 'knuckle',
      name: { en: 'thickness of the ear', de: 'Dicke des Auges' },
      tool: 'caliper',
      usual: ['15 mm', '70 mm'],
    },
    'upper-hole': {
      type: 'code',
      of: 'strut',
      name: { en: 'form of the upper hole', de: 'Form des oberen Lochs' },
      tool: 'visual-check',
    },
    offset: {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: {
        en: 'offset of the upper bolt from the strut axis',
        de: 'Abstand der oberen Schraube von der Federbeinachse',
      },
      tool: 'caliper',
      usual: ['20 mm', '90 mm'],
    },
    angle: {
      type: 'measured',
      unit: 'deg',
      optional: true,
      name: {
        en: 'angle between bolt line and strut axis',
        de: 'Winkel zwischen Schraubenlinie und Federbeinachse',
      },
      tool: 'angle-finder',
      usual: ['0 deg', '15 deg'],
    },
  },
  checks: [
    {
      id: 'strut-hole',
      'at-least': ['strut.hole', 'knuckle.bolt-diameter'],
      code: 'strut-hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the bracket; drilling is an engineered change.',
        de: 'Die Schrauben müssen durch die Laschen gehen; Aufbohren ist Sache des Ingenieurs.',
      },
    },
    {
      id: 'knuckle-hole',
      'at-least': ['knuckle.hole', 'strut.bolt-diameter'],
      code: 'knuckle-hole-too-small',
      text: {
        en: 'The bolts must pass the holes of the knuckle; drilling is an engineered change.',
        de: 'Die Schrauben müssen durch das Auge gehen; Aufbohren ist Sache des Ingenieurs.',
      },
    },
    {
      id: 'strut-play',
      clearance: ['strut.hole', 'knuckle.bolt-diameter'],
      max: '1.5 mm',
      when: { not: { 'one-of': ['strut.upper-hole', ['eccentric']] } },
      code: 'strut-hole-too-wide',
      text: {
        en: 'Bracket: holes with over 1.5 mm of play are for larger bolts, or were drilled.',
        de: 'Lasche: Löcher mit über 1,5 mm Spiel sind für größere Schrauben oder aufgebohrt.',
      },
    },
    {
      id: 'knuckle-play',
      clearance: ['knuckle.hole', 'strut.bolt-diameter'],
      max: '1.5 mm',
      code: 'knuckle-hole-too-wide',
      text: {
        en: 'Knuckle: holes with over 1.5 mm of play are for larger bolts, or were drilled.',
        de: 'Achsschenkel: Löcher über 1,5 mm Spiel sind für größere Schrauben oder aufgebohrt.',
      },
    },
    {
      id: 'spacing',
      within: ['strut.spacing', 'knuckle.spacing'],
      tolerance: {
        sum: [
          'strut.hole',
          'knuckle.hole',
          ['-1', 'strut.bolt-diameter'],
          ['-1', 'knuckle.bolt-diameter'],
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
        en: 'Bracket and knuckle must be made for the same bolts: thread and pitch.',
        de: 'Lasche und Achsschenkel brauchen dieselben Schrauben: Gewinde und Steigung.',
      },
    },
    {
      id: 'ear-goes-in',
      'at-least': ['strut.gap', 'knuckle.ear'],
      code: 'ear-too-thick',
      text: {
        en: 'The ear of the knuckle must go in between the plates.',
        de: 'Das Auge des Achsschenkels muss zwischen die Laschen gehen.',
      },
    },
    {
      id: 'ear-play',
      clearance: ['strut.gap', 'knuckle.ear'],
      max: '0.3 mm',
      code: 'gap-too-wide',
      text: {
        en: 'With more than 0.3 mm of gap the bolts bend the bracket instead of clamping the ear.',
        de: 'Mit mehr als 0,3 mm Luft biegen die Schrauben die Lasche, statt zu klemmen.',
      },
    },
    {
      id: 'as-made',
      'one-of': ['strut.upper-hole', ['round', 'slot', 'eccentric']],
      code: 'not-as-made',
      text: {
        en: 'Round, slot or eccentric as the works made it: a filed hole is an engineered change.',
        de: 'Rund, Langloch oder Exzenter ab Werk: Gefeilte Löcher sind Sache des Ingenieurs.',
      },
    },
    {
      id: 'camber-setting',
      'one-of': ['strut.upper-hole', ['round']],
      severity: 'caution',
      code: 'camber-to-set',
      text: {
        en: 'A slot or an eccentric bolt sets the camber: align the wheels afterwards.',
        de: 'Langloch oder Exzenter bestimmen den Sturz: danach die Achse vermessen lassen.',
      },
    },
    {
      id: 'offset',
      within: ['strut.offset', 'knuckle.offset'],
      tolerance: '1 mm',
      severity: 'caution',
      code: 'wheel-moves',
      text: {
        en: 'Another offset moves the wheel in or out: check its room and the alignment.',
        de: 'Anderer Abstand versetzt das Rad: Platz und Achsvermessung prüfen.',
      },
    },
    {
      id: 'angle',
      within: ['strut.angle', 'knuckle.angle'],
      tolerance: '0.5 deg',
      severity: 'caution',
      code: 'camber-changes',
      text: {
        en: 'Another angle is that much camber: the adjusters must be able to take it back.',
        de: 'Anderer Winkel gibt so viel Sturz: Die Einstellung muss ihn zurückholen können.',
      },
    },
  ],
  notChecked: [
    { en: 'how far the camber can be set', de: 'wie weit sich der Sturz einstellen lässt' },
    {
      en: 'length and strength class of the bolts',
      de: 'Länge und Festigkeitsklasse der Schrauben',
    },
    { en: 'length of the strut, spring and damper', de: 'Länge des Federbeins, Feder, Dämpfer' },
    {
      en: 'room for the wheel, the drive shaft and the stabilizer link',
      de: 'Platz für Rad, Antriebswelle und Stabilisator',
    },
    { en: 'brackets for brake hose and wires', de: 'Halter für Bremsschlauch und Kabel' },
  ],
};
