/**
 * The ring that a wheel speed sensor reads: what it is made of, how many pulses, how near.
 *
 * Standard: none; makers' own. A ring has teeth or windows of steel, or magnetic poles in the seal
 * of a bearing. A tooth gives one pulse a turn, a pair of poles one: so a ring of 96 poles counts
 * like one of 48 teeth. The number that a control unit expects is a matter of its program, so it
 * must be equal, and all wheels alike. A passive sensor has a magnet and a coil and needs steel
 * teeth; an active one is fed with current and is made for teeth (with a magnet behind it) or for
 * poles, which the sensor's own target says.
 *
 * The air gap of 0.3 to 1.5 mm is common practice, no source; the maker's is mostly narrower. A
 * sensor reads a ring from outside ("radial"): then the gap is half of what the circle on which
 * its tip stands is larger than the ring. Or it reads the face of a ring ("axial"): then both are
 * measured from the face of the hub that the wheel lies on, and the tip must stand over the track.
 *
 * Left out: rings that are read from inside; whether the control unit is made for that sort of
 * sensor, which plug and wiring tell (connector).
 */

import type { BuiltInKind } from './kind.js';

const TOOTHED = { 'one-of': ['ring.target', ['toothed']] };
const MAGNETIC = { 'one-of': ['ring.target', ['magnetic']] };
const RADIAL = { 'one-of': ['ring.direction', ['radial']] };
const AXIAL = { 'one-of': ['ring.direction', ['axial']] };

/** Twice the gap of a radial sensor, and the gap of an axial one. */
const RADIAL_PLAY = ['sensor.tip-circle', 'ring.diameter'];
const AXIAL_PLAY = ['sensor.face-distance', 'ring.face-distance'];

export const wheelSpeedTarget: BuiltInKind = {
  id: 'wheel-speed-target',
  name: { en: 'wheel speed ring and sensor', de: 'Impulsring und Raddrehzahlsensor' },
  standard: 'none',
  sides: ['ring', 'sensor'],
  sideNames: {
    ring: {
      en: 'the ring with its teeth or poles',
      de: 'der Impulsring mit Zähnen oder Magnetpolen',
    },
    sensor: {
      en: 'the sensor in its place, and the control unit behind it',
      de: 'der Sensor an seinem Platz, und das Steuergerät dahinter',
    },
  },
  caution: 'brakes',
  parameters: {
    target: {
      type: 'code',
      name: { en: 'steel teeth or magnetic poles', de: 'Stahlzähne oder Magnetpole' },
      tool: 'visual-check',
    },
    teeth: {
      type: 'count',
      of: 'ring',
      name: { en: 'number of teeth or windows', de: 'Anzahl Zähne oder Fenster' },
      tool: 'count',
      usual: [29, 100],
    },
    poles: {
      type: 'count',
      of: 'ring',
      name: { en: 'number of magnetic poles', de: 'Anzahl Magnetpole' },
      tool: 'count',
      usual: [58, 200],
    },
    pulses: {
      type: 'count',
      of: 'sensor',
      name: { en: 'pulses a turn that are expected', de: 'erwartete Impulse je Umdrehung' },
      tool: 'count',
      usual: [29, 100],
    },
    sensor: {
      type: 'code',
      of: 'sensor',
      name: { en: 'passive or active sensor', de: 'passiver oder aktiver Sensor' },
      tool: 'wiring-diagram',
    },
    direction: {
      type: 'code',
      name: { en: 'radial or axial reading', de: 'radiale oder axiale Abtastung' },
      tool: 'visual-check',
    },
    diameter: {
      type: 'measured',
      unit: 'mm',
      of: 'ring',
      name: { en: 'outer diameter of the ring', de: 'Außendurchmesser des Rings' },
      tool: 'caliper',
      usual: ['40 mm', '180 mm'],
    },
    'inner-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'ring',
      name: { en: 'inner diameter of the track', de: 'Innendurchmesser der Spur' },
      tool: 'caliper',
      usual: ['30 mm', '170 mm'],
    },
    'tip-circle': {
      type: 'measured',
      unit: 'mm',
      of: 'sensor',
      name: {
        en: 'diameter of the circle on which the tip stands',
        de: 'Durchmesser des Kreises, auf dem die Spitze steht',
      },
      tool: 'caliper',
      usual: ['40 mm', '185 mm'],
    },
    'face-distance': {
      type: 'measured',
      unit: 'mm',
      name: {
        en: 'distance of ring or tip from the face of the hub',
        de: 'Abstand von Ring oder Spitze zur Anlagefläche der Nabe',
      },
      tool: 'depth-gauge',
      usual: ['10 mm', '120 mm'],
    },
  },
  checks: [
    {
      equal: 'target',
      text: {
        en: 'A sensor for poles does not see teeth, and one for teeth no poles.',
        de: 'Ein Sensor für Magnetpole sieht keine Zähne, einer für Zähne keine Pole.',
      },
    },
    {
      id: 'known-target',
      'one-of': ['ring.target', ['toothed', 'magnetic']],
      code: 'neither-teeth-nor-poles',
      text: {
        en: 'A ring has steel teeth or magnetic poles: hold a bit of iron to it.',
        de: 'Ein Ring hat Stahlzähne oder Magnetpole: ein Stück Eisen daran halten.',
      },
    },
    {
      id: 'teeth',
      equal: ['ring.teeth', 'sensor.pulses'],
      when: TOOTHED,
      code: 'teeth-differ',
      text: {
        en: 'The control unit must get as many pulses a turn as it expects: one a tooth.',
        de: 'Das Steuergerät braucht die Impulse je Umdrehung, die es erwartet: einen je Zahn.',
      },
    },
    {
      id: 'poles',
      equal: ['ring.poles', ['2', 'sensor.pulses']],
      when: MAGNETIC,
      code: 'poles-differ',
      text: {
        en: 'The control unit must get as many pulses a turn as it expects: one a pair of poles.',
        de: 'Das Steuergerät braucht die Impulse je Umdrehung, die es erwartet: einen je Polpaar.',
      },
    },
    {
      id: 'known-sensor',
      'one-of': ['sensor.sensor', ['passive', 'active']],
      code: 'neither-passive-nor-active',
      text: {
        en: 'A sensor is passive, a coil, or active, fed with current.',
        de: 'Ein Sensor ist passiv, eine Spule, oder aktiv, mit Strom gespeist.',
      },
    },
    {
      id: 'sensor-for-poles',
      'one-of': ['sensor.sensor', ['active']],
      when: MAGNETIC,
      code: 'passive-on-poles',
      text: {
        en: 'Magnetic poles need an active sensor.',
        de: 'Magnetpole brauchen einen aktiven Sensor.',
      },
    },
    {
      equal: 'direction',
      text: {
        en: 'The sensor must look at the side of the ring that has the teeth or poles.',
        de: 'Der Sensor muss auf die Seite des Rings sehen, die Zähne oder Pole hat.',
      },
    },
    {
      id: 'known-direction',
      'one-of': ['ring.direction', ['radial', 'axial']],
      code: 'neither-radial-nor-axial',
      text: {
        en: 'A ring is read from outside, radially, or on its face, axially.',
        de: 'Ein Ring wird von außen, radial, oder an der Stirn, axial, abgetastet.',
      },
    },
    {
      id: 'radial-room',
      clearance: RADIAL_PLAY,
      min: '0.6 mm',
      when: RADIAL,
      code: 'radial-gap-too-narrow',
      text: {
        en: 'The air gap must be 0.3 mm at least, half of the difference of diameters.',
        de: 'Der Luftspalt muss mindestens 0,3 mm sein, die halbe Differenz der Durchmesser.',
      },
    },
    {
      id: 'radial-gap',
      clearance: RADIAL_PLAY,
      max: '3 mm',
      when: RADIAL,
      code: 'radial-gap-too-wide',
      text: {
        en: 'The air gap must be 1.5 mm at most, half of the difference of diameters.',
        de: 'Der Luftspalt darf höchstens 1,5 mm sein, die halbe Differenz der Durchmesser.',
      },
    },
    {
      id: 'axial-room',
      clearance: AXIAL_PLAY,
      min: '0.3 mm',
      when: AXIAL,
      code: 'axial-gap-too-narrow',
      text: {
        en: 'The air gap before the face of the ring must be 0.3 mm at least.',
        de: 'Der Luftspalt vor der Stirn des Rings muss mindestens 0,3 mm sein.',
      },
    },
    {
      id: 'axial-gap',
      clearance: AXIAL_PLAY,
      max: '1.5 mm',
      when: AXIAL,
      code: 'axial-gap-too-wide',
      text: {
        en: 'The air gap before the face of the ring must be 1.5 mm at most.',
        de: 'Der Luftspalt vor der Stirn des Rings darf höchstens 1,5 mm sein.',
      },
    },
    {
      id: 'track-outside',
      'at-most': ['sensor.tip-circle', 'ring.diameter'],
      when: AXIAL,
      code: 'outside-the-track',
      text: {
        en: 'The tip must stand over the track of the ring, not outside it.',
        de: 'Die Spitze muss über der Spur des Rings stehen, nicht außerhalb.',
      },
    },
    {
      id: 'track-inside',
      'at-least': ['sensor.tip-circle', 'ring.inner-diameter'],
      when: AXIAL,
      code: 'inside-the-track',
      text: {
        en: 'The tip must stand over the track of the ring, not inside it.',
        de: 'Die Spitze muss über der Spur des Rings stehen, nicht innerhalb.',
      },
    },
  ],
  notChecked: [
    { en: 'sensor and control unit: plug and signal', de: 'Stecker und Signal zum Steuergerät' },
    { en: 'the same number on all wheels', de: 'dieselbe Anzahl an allen Rädern' },
    { en: 'place of a radial sensor along the ring', de: 'Lage des Sensors über die Ringbreite' },
    { en: 'run-out, rust and missing teeth', de: 'Rundlauf, Rost und fehlende Zähne' },
    { en: 'a bearing put in with its poles inwards', de: 'ein verkehrt eingepresstes Lager' },
  ],
};
