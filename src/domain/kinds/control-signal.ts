/**
 * A signal that a control unit expects, and the switch, sensor or unit that gives it.
 *
 * Standard: none; control units are their makers' own. The signal has a name ("reverse",
 * "neutral") and a type: a "switch", a "voltage", a "resistance", a "frequency" or a "bus". Of a
 * switch, the sense ("closed" or "open" in the state that the signal is named for) and the level
 * that it switches to ("ground", "battery") must agree: a switch that is closed in reverse lights
 * no lamp where one that opens is expected. Of a value, the sense ("rising" or "falling"), and the
 * range that is given must lie within the range that is taken; one that fills less than nine
 * tenths of it is read as too little, a caution (common practice, no source). Of a bus, the name
 * of the protocol decides, and it stands for the messages too.
 *
 * Voltages have their unit; the numbers of a resistance and of a frequency are plain, in ohms and
 * in hertz. Left out: pulses for each turn or kilometre, how a value runs between its ends, and
 * what a unit is coded to.
 */

import type { BuiltInKind } from './kind.js';

const PLAIN = ['resistance', 'frequency'];
const VALUES = ['voltage', ...PLAIN];

function bothTypes(...types: readonly string[]) {
  return { all: [{ 'one-of': ['unit.type', types] }, { 'one-of': ['source.type', types] }] };
}

/** The range that is given within the range that is taken, under the names of its two ends. */
function rangeChecks(types: readonly string[], lowest: string, highest: string, id: string) {
  const when = bothTypes(...types);
  return [
    {
      id: `${id}lowest`,
      'at-least': [`source.${lowest}`, `unit.${lowest}`],
      when,
      code: 'below-the-range',
      text: {
        en: 'The lowest value must lie within what the unit takes, or it reports a fault.',
        de: 'Der kleinste Wert muss im Bereich des Geräts liegen, sonst meldet es einen Fehler.',
      },
    },
    {
      id: `${id}highest`,
      'at-most': [`source.${highest}`, `unit.${highest}`],
      when,
      code: 'above-the-range',
      text: {
        en: 'The highest value must lie within what the unit takes, or it reports a fault.',
        de: 'Der größte Wert muss im Bereich des Geräts liegen, sonst meldet es einen Fehler.',
      },
    },
    {
      id: `${id}scale`,
      'at-least': [
        { sum: [`source.${highest}`, ['-1', `source.${lowest}`]] },
        {
          sum: [
            ['9/10', `unit.${highest}`],
            ['-9/10', `unit.${lowest}`],
          ],
        },
      ],
      when,
      severity: 'caution' as const,
      code: 'reads-too-little',
      text: {
        en: 'The signal fills less than nine tenths of the range: the unit reads too little.',
        de: 'Das Signal füllt keine neun Zehntel des Bereichs: Das Gerät liest zu wenig.',
      },
    },
  ];
}

export const controlSignal: BuiltInKind = {
  id: 'control-signal',
  name: { en: 'control signal', de: 'Steuersignal' },
  standard: 'none',
  sides: ['unit', 'source'],
  sideNames: {
    unit: {
      en: 'the control unit or lamp that expects it',
      de: 'das Steuergerät oder die Lampe, die es erwartet',
    },
    source: { en: 'the switch or sensor that gives it', de: 'der Schalter oder Geber' },
  },
  caution: 'electrical',
  parameters: {
    signal: {
      type: 'code',
      name: { en: 'name of the signal', de: 'Name des Signals' },
      tool: 'wiring-diagram',
    },
    type: {
      type: 'code',
      name: { en: 'type of the signal', de: 'Art des Signals' },
      tool: 'wiring-diagram',
    },
    sense: {
      type: 'code',
      name: { en: 'sense of the signal', de: 'Wirksinn des Signals' },
      tool: 'wiring-diagram',
    },
    level: {
      type: 'code',
      name: { en: 'level that is switched to', de: 'geschaltetes Potenzial' },
      tool: 'wiring-diagram',
    },
    'lowest-voltage': {
      type: 'measured',
      unit: 'V',
      name: { en: 'lowest voltage', de: 'kleinste Spannung' },
      tool: 'multimeter',
      usual: ['0 V', '12 V'],
    },
    'highest-voltage': {
      type: 'measured',
      unit: 'V',
      name: { en: 'highest voltage', de: 'größte Spannung' },
      tool: 'multimeter',
      usual: ['1 V', '24 V'],
    },
    lowest: {
      type: 'designation',
      name: { en: 'lowest value in ohms or hertz', de: 'kleinster Wert in Ohm oder Hertz' },
      tool: 'marking',
      usual: ['0', '100000'],
    },
    highest: {
      type: 'designation',
      name: { en: 'highest value in ohms or hertz', de: 'größter Wert in Ohm oder Hertz' },
      tool: 'marking',
      usual: ['1', '1000000'],
    },
    protocol: {
      type: 'code',
      name: { en: 'protocol of the bus', de: 'Protokoll des Datenbusses' },
      tool: 'wiring-diagram',
    },
    supply: {
      type: 'designation',
      unit: 'V',
      optional: true,
      name: { en: 'supply of the sensor', de: 'Speisung des Gebers' },
      tool: 'marking',
      usual: ['5 V', '24 V'],
    },
  },
  checks: [
    {
      equal: 'signal',
      text: {
        en: 'The unit must be given the signal that it expects.',
        de: 'Das Gerät muss das Signal bekommen, das es erwartet.',
      },
    },
    {
      equal: 'type',
      text: {
        en: 'A switch, a value and a bus message are no substitutes for one another.',
        de: 'Schalter, Messwert und Busbotschaft ersetzen einander nicht.',
      },
    },
    {
      id: 'known-type',
      'one-of': ['unit.type', ['switch', ...VALUES, 'bus']],
      severity: 'caution',
      code: 'other-signal-type',
      text: {
        en: 'A signal of this type goes by its name alone: compare both wiring diagrams.',
        de: 'Ein solches Signal wird nur dem Namen nach verglichen: beide Schaltpläne vergleichen.',
      },
    },
    {
      equal: 'sense',
      when: bothTypes('switch', ...VALUES),
      code: 'sense-reversed',
      text: {
        en: 'The sense must agree: closed is not open, rising is not falling.',
        de: 'Der Wirksinn muss stimmen: Zu ist nicht offen, steigend ist nicht fallend.',
      },
    },
    {
      equal: 'level',
      when: bothTypes('switch'),
      code: 'switches-the-other-pole',
      text: {
        en: 'One that switches to ground does not replace one that switches to battery.',
        de: 'Was nach Masse schaltet, ersetzt nicht, was nach Plus schaltet.',
      },
    },
    ...rangeChecks(['voltage'], 'lowest-voltage', 'highest-voltage', 'voltage-'),
    ...rangeChecks(PLAIN, 'lowest', 'highest', ''),
    {
      equal: 'protocol',
      when: bothTypes('bus'),
      code: 'another-protocol',
      text: {
        en: 'Both units must speak one protocol, with the same messages.',
        de: 'Beide Geräte müssen dasselbe Protokoll sprechen, mit denselben Botschaften.',
      },
    },
    {
      equal: 'supply',
      code: 'another-supply',
      text: {
        en: 'The sensor must be made for the voltage that the unit supplies.',
        de: 'Der Geber muss für die Spannung gemacht sein, mit der das Gerät ihn speist.',
      },
    },
  ],
  notChecked: [
    { en: 'pulses for each turn or kilometre', de: 'Impulse je Umdrehung oder Kilometer' },
    { en: 'how the value runs between its ends', de: 'Verlauf zwischen den Endwerten' },
    { en: 'coding, calibration and immobiliser', de: 'Codierung, Anlernen, Wegfahrsperre' },
    {
      en: 'plug and wires (a connector of its own)',
      de: 'Stecker und Leitungen (eine eigene Steckverbindung)',
    },
    { en: 'load that a switch bears', de: 'Last, die ein Schalter erträgt' },
  ],
};
