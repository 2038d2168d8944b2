/**
 * The signal of the road speed: what gives it, and the instrument or control unit that takes it.
 *
 * Standard: none for the signal, makers' own. How far an instrument may be off is a matter of
 * UN R39 and is not judged here: it follows from pulses, final drive and tyres together.
 *
 * Three sorts are common. A "mechanical" drive turns a cable: nut and core of the cable must be
 * those of the drive, and it must turn the same way, or the needle is pressed on its stop. A
 * "variable-reluctance" sender gives an alternating voltage that grows with speed, a "hall" sender
 * a square wave from a supply: for both the pulses a turn must be equal, counted over a turn of
 * the sender. A Hall sender besides needs its supply, and a receiver for its sort of output
 * ("pulled-low" by an open collector, "pulled-high", "push-pull", or "current" over two wires).
 * None of the sorts replaces another without a converter, which is a part of its own between two
 * faces of this kind. Any other sort is compared by its name and its pulses: a caution.
 *
 * Left out: turns for each kilometre; plug and pins (connector).
 */

import type { BuiltInKind } from './kind.js';

function both(form: string) {
  return {
    all: [{ 'one-of': ['sender.drive', [form]] }, { 'one-of': ['receiver.drive', [form]] }],
  };
}

const MECHANICAL = both('mechanical');
const HALL = both('hall');

export const speedSignal: BuiltInKind = {
  id: 'speed-signal',
  name: { en: 'road speed signal', de: 'Geschwindigkeitssignal' },
  standard: 'none; how right an instrument must show: UN R39, not judged here',
  sides: ['sender', 'receiver'],
  sideNames: {
    sender: {
      en: 'the speedometer drive or sender of the gearbox or axle',
      de: 'der Tachoantrieb oder Geber an Getriebe oder Achse',
    },
    receiver: {
      en: 'the instrument with its cable, or the control unit',
      de: 'das Instrument mit seiner Welle, oder das Steuergerät',
    },
  },
  caution: 'electrical',
  parameters: {
    drive: {
      type: 'code',
      name: { en: 'sort of speed signal', de: 'Art des Geschwindigkeitssignals' },
      tool: 'visual-check',
    },
    pulses: {
      type: 'count',
      name: { en: 'pulses a turn of the sender', de: 'Impulse je Umdrehung des Gebers' },
      tool: 'count',
      usual: [2, 16],
    },
    sense: {
      type: 'code',
      name: {
        en: 'which way the cable turns, seen from the instrument',
        de: 'Drehsinn der Tachowelle, vom Instrument aus',
      },
      tool: 'visual-check',
    },
    'cable-nut': {
      type: 'code',
      name: { en: 'thread or clip of the cable', de: 'Gewinde oder Klemme der Tachowelle' },
      tool: 'pitch-gauge',
    },
    'cable-core': {
      type: 'code',
      name: { en: 'end of the cable core', de: 'Ende der Tachowellenseele' },
      tool: 'caliper',
    },
    supply: {
      type: 'designation',
      unit: 'V',
      name: { en: 'supply voltage of the sender', de: 'Speisespannung des Gebers' },
      tool: 'multimeter',
      usual: ['5 V', '24 V'],
    },
    output: {
      type: 'code',
      name: { en: 'output of the sender', de: 'Ausgang des Gebers' },
      tool: 'wiring-diagram',
    },
  },
  checks: [
    {
      equal: 'drive',
      text: {
        en: 'A cable, a coil and a Hall sender need a converter to replace one another.',
        de: 'Tachowelle, Spule und Hallgeber ersetzen einander nur mit einem Wandler.',
      },
    },
    {
      id: 'known-drive',
      'one-of': ['sender.drive', ['mechanical', 'variable-reluctance', 'hall']],
      severity: 'caution',
      code: 'other-drive',
      text: {
        en: 'Any other sort of signal is compared by its name and its pulses alone.',
        de: 'Andere Arten von Signalen werden nur nach Name und Impulszahl verglichen.',
      },
    },
    {
      equal: 'pulses',
      when: { not: MECHANICAL },
      text: {
        en: 'The receiver must be set up for the pulses that the sender gives in a turn.',
        de: 'Der Empfänger muss auf die Impulse je Umdrehung des Gebers eingestellt sein.',
      },
    },
    {
      equal: 'sense',
      when: MECHANICAL,
      text: {
        en: 'A cable that turns the wrong way presses the needle on its stop.',
        de: 'Eine falsch herum drehende Tachowelle drückt den Zeiger an den Anschlag.',
      },
    },
    {
      equal: 'cable-nut',
      when: MECHANICAL,
      text: {
        en: 'The nut or clip of the cable must be that of the drive.',
        de: 'Mutter oder Klemme der Tachowelle müssen zum Antrieb passen.',
      },
    },
    {
      equal: 'cable-core',
      when: MECHANICAL,
      text: {
        en: 'The core of the cable must have the square or blade that the drive takes.',
        de: 'Die Seele der Tachowelle braucht den Vierkant oder die Klinge des Antriebs.',
      },
    },
    {
      equal: 'supply',
      when: HALL,
      text: {
        en: 'A Hall sender needs the supply that it is made for.',
        de: 'Ein Hallgeber braucht die Speisung, für die er gemacht ist.',
      },
    },
    {
      equal: 'output',
      when: HALL,
      text: {
        en: 'The receiver must be made for the output of the sender, or it sees no pulse.',
        de: 'Der Empfänger muss zum Ausgang des Gebers passen, sonst sieht er keinen Impuls.',
      },
    },
  ],
  notChecked: [
    {
      en: 'shown speed (UN R39), which final drive and tyres decide too',
      de: 'angezeigte Geschwindigkeit (UN R39), auch von Achse und Reifen bestimmt',
    },
    { en: 'plug and pins', de: 'Stecker und Belegung' },
    { en: 'voltage of a coil at low speed', de: 'Spannung einer Spule bei langsamer Fahrt' },
    { en: 'length and run of the cable', de: 'Länge und Verlegung der Tachowelle' },
    { en: 'who else uses the signal', de: 'wer das Signal sonst noch braucht' },
  ],
};
