/**
 * A wheel on its hub: bolt pattern, centring, seats and studs.
 *
 * Standard: none for passenger cars. ISO 4107 and ISO 7575 govern trucks, where a flat seat
 * leaves all centring to the hub; the first says itself that it does not imply
 * interchangeability. Pitch circles agree within 0.2 mm, play on the spigot of up to 0.10 mm
 * centres the wheel, and thread engages by one diameter at least: common practice, no source.
 * 112 mm and 114.3 mm are 2.3 mm apart and never close enough; 4.5 in and 114.3 mm are equal.
 *
 * Seats are a cone, a ball or flat (angle of the cone and radius of the ball must agree); a hub
 * without a spigot has a spigot of 0 mm. A wheel with more play than 0.10 mm goes on, but wants a
 * centring ring, or its nuts centre it alone: a caution. A flat seat cannot centre, so there it
 * fails. Studs and their thread are always asked for: a wheel that passes all else comes off when
 * its nuts hold by too few turns. A thread of the wheel is that of the nuts or bolts that come with
 * it; its thickness counts from the mounting face to the narrow end of the seat.
 *
 * Left out: everything beyond the mounting face (rim, inset, caliper, load).
 */

import type { BuiltInKind } from './kind.js';

function bothSeats(form: string) {
  return { all: [{ 'one-of': ['hub.seat', [form]] }, { 'one-of': ['wheel.seat', [form]] }] };
}

export const wheelMount: BuiltInKind = {
  id: 'wheel-mount',
  name: { en: 'wheel mount', de: 'Radbefestigung' },
  standard: 'cars: none; trucks: ISO 4107 and ISO 7575',
  sides: ['hub', 'wheel'],
  sideNames: {
    hub: { en: 'the hub with its studs or bolts', de: 'die Nabe mit Stehbolzen oder Radschrauben' },
    wheel: { en: 'the wheel, seen from the hub', de: 'das Rad, von der Nabe aus' },
  },
  caution: 'wheels',
  parameters: {
    holes: {
      type: 'count',
      name: { en: 'number of wheel studs or bolts', de: 'Anzahl Radbolzen' },
      tool: 'count',
      usual: [3, 8],
    },
    pcd: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'pitch circle diameter', de: 'Lochkreisdurchmesser' },
      tool: 'caliper',
      usual: ['95 mm', '170 mm'],
    },
    spigot: {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: { en: 'spigot diameter of the hub', de: 'Durchmesser der Nabenzentrierung' },
      tool: 'micrometer',
      usual: ['54 mm', '115 mm'],
    },
    bore: {
      type: 'measured',
      unit: 'mm',
      of: 'wheel',
      name: { en: 'centre bore of the wheel', de: 'Mittenloch des Rads' },
      tool: 'bore-gauge',
      usual: ['54 mm', '115 mm'],
    },
    seat: {
      type: 'code',
      name: { en: 'seat of the nuts or bolts', de: 'Sitz der Muttern oder Schrauben' },
      tool: 'seat-sample',
    },
    'seat-angle': {
      type: 'designation',
      unit: 'deg',
      name: { en: 'angle of the cone seat', de: 'Winkel des Kegelbunds' },
      tool: 'seat-sample',
      usual: ['60 deg', '90 deg'],
    },
    'seat-radius': {
      type: 'designation',
      unit: 'mm',
      name: { en: 'radius of the ball seat', de: 'Radius des Kugelbunds' },
      tool: 'seat-sample',
      usual: ['10 mm', '18 mm'],
    },
    thread: {
      type: 'code',
      optional: true,
      name: { en: 'thread of the wheel bolts', de: 'Gewinde der Radbolzen' },
      tool: 'pitch-gauge',
    },
    stud: {
      type: 'designation',
      unit: 'mm',
      of: 'hub',
      name: { en: 'diameter of the studs or bolts', de: 'Durchmesser der Radbolzen' },
      tool: 'caliper',
      usual: ['10 mm', '16 mm'],
    },
    'stud-hole': {
      type: 'measured',
      unit: 'mm',
      of: 'wheel',
      name: { en: 'diameter of the stud holes', de: 'Durchmesser der Bolzenlöcher' },
      tool: 'caliper',
      usual: ['10 mm', '20 mm'],
    },
    'stud-length': {
      type: 'measured',
      unit: 'mm',
      of: 'hub',
      name: {
        en: 'thread of the studs beyond the mounting face',
        de: 'Gewindelänge der Bolzen über der Anlagefläche',
      },
      tool: 'depth-gauge',
      usual: ['15 mm', '80 mm'],
    },
    'seat-thickness': {
      type: 'measured',
      unit: 'mm',
      of: 'wheel',
      name: {
        en: 'thickness of the wheel under the seat',
        de: 'Materialdicke des Rads unter dem Sitz',
      },
      tool: 'depth-gauge',
      usual: ['3 mm', '40 mm'],
    },
  },
  checks: [
    {
      equal: 'holes',
      text: {
        en: 'Hub and wheel must have the same number of studs or bolts.',
        de: 'Nabe und Rad müssen gleich viele Radbolzen haben.',
      },
    },
    {
      id: 'pcd',
      within: ['hub.pcd', 'wheel.pcd'],
      tolerance: '0.2 mm',
      code: 'pcd-differs',
      text: {
        en: 'The pitch circles must agree within 0.2 mm.',
        de: 'Die Lochkreise dürfen höchstens 0,2 mm auseinanderliegen.',
      },
    },
    {
      id: 'bore',
      'at-least': ['wheel.bore', 'hub.spigot'],
      code: 'bore-too-small',
      text: {
        en: 'The centre bore must go over the spigot of the hub.',
        de: 'Das Mittenloch muss über die Nabenzentrierung gehen.',
      },
    },
    {
      id: 'centring',
      clearance: ['wheel.bore', 'hub.spigot'],
      max: '0.1 mm',
      when: { not: bothSeats('flat') },
      severity: 'caution',
      code: 'needs-centring-ring',
      text: {
        en: 'With more than 0.10 mm of play on the spigot the wheel needs a centring ring.',
        de: 'Mit mehr als 0,10 mm Spiel auf der Nabe braucht das Rad einen Zentrierring.',
      },
    },
    {
      id: 'flat-seat-centring',
      clearance: ['wheel.bore', 'hub.spigot'],
      max: '0.1 mm',
      when: bothSeats('flat'),
      code: 'not-centred',
      text: {
        en: 'Flat seats do not centre: the spigot must, with at most 0.10 mm of play.',
        de: 'Flachbund zentriert nicht: Das muss die Nabe tun, mit höchstens 0,10 mm Spiel.',
      },
    },
    {
      equal: 'seat',
      text: {
        en: 'Nuts or bolts and wheel must have the same form of seat.',
        de: 'Muttern oder Schrauben und Rad müssen dieselbe Sitzform haben.',
      },
    },
    {
      equal: 'seat-angle',
      when: bothSeats('cone'),
      text: {
        en: 'Cone seats must have the same angle.',
        de: 'Kegelbunde müssen denselben Winkel haben.',
      },
    },
    {
      equal: 'seat-radius',
      when: bothSeats('ball'),
      text: {
        en: 'Ball seats must have the same radius.',
        de: 'Kugelbunde müssen denselben Radius haben.',
      },
    },
    {
      id: 'known-seat',
      'one-of': ['hub.seat', ['cone', 'ball', 'flat']],
      severity: 'caution',
      code: 'other-seat-form',
      text: {
        en: 'Cone, ball and flat seats are compared in full, any other by its name alone.',
        de: 'Kegel-, Kugel- und Flachbund werden ganz verglichen, alles andere nur dem Namen nach.',
      },
    },
    {
      equal: 'thread',
      text: {
        en: 'Nuts or bolts that come with the wheel must have the thread of the hub.',
        de: 'Zum Rad gelieferte Muttern oder Schrauben brauchen das Gewinde der Nabe.',
      },
    },
    {
      id: 'stud-hole',
      'at-least': ['wheel.stud-hole', 'hub.stud'],
      code: 'stud-hole-too-small',
      text: {
        en: 'The studs or bolts must pass the holes of the wheel.',
        de: 'Die Radbolzen müssen durch die Löcher des Rads gehen.',
      },
    },
    {
      id: 'engagement',
      clearance: ['hub.stud-length', 'wheel.seat-thickness'],
      min: 'hub.stud',
      code: 'too-little-thread',
      text: {
        en: 'The thread must engage over at least one stud diameter.',
        de: 'Das Gewinde muss mindestens einen Bolzendurchmesser tragen.',
      },
    },
  ],
  notChecked: [
    { en: 'rim width and inset', de: 'Felgenbreite und Einpresstiefe' },
    {
      en: 'room around caliper, strut and body',
      de: 'Platz um Bremssattel, Federbein, Karosserie',
    },
    { en: 'load rating of the wheel', de: 'Traglast des Rads' },
    { en: 'length of the spigot and its cap', de: 'Länge der Nabenzentrierung, Nabenkappe' },
    { en: 'length and depth of the nuts', de: 'Länge und Tiefe der Muttern' },
  ],
};
