/**
 * The gear lever and the gearbox: what carries the hand's movement from one to the other.
 *
 * Standard: none; makers' own. The linkage is taken with the lever: the lever side is the lever
 * with its rods or cables, the gearbox side the levers or rails that stand out of the box. A
 * linkage that is a part of its own has two faces of this kind: to the gearbox it is the lever,
 * to the lever the gearbox.
 *
 * Type: `rods`, `cables`, `direct` (the lever sits on the box), or a maker's own by name. Gates are
 * the planes of the pattern across, reverse included: a six-speed pattern with reverse beside
 * first has four. A lever with too few cannot reach the last gear; one with too many finds stops
 * in the box, but its knob and its gates lie, so that is a caution. Sense is what the end at the
 * box does when the hand moves: forward for the shift, left for the selection, as `push` or `pull`.
 * A linkage with the wrong sense shifts, into the other gear.
 *
 * Reverse must be locked out in one place: a box with `built-in` locks it itself, one with
 * `at-lever` relies on the lever, whose lock has a name (`lift-ring`, `push-down`) or is `none`.
 * Without a lock the driver finds reverse at speed. Of a `direct` lever no sense is asked.
 *
 * A travel up to 25 % over that of the box is what its stops and the lever's stops bear; pins have
 * up to 0.3 mm of play: common practice, no source. A rail moves by 8 to 20 mm, the end of a lever
 * on the box further.
 *
 * Left out: length of rods and cables, the hole in the tunnel, forces, switches.
 */

import type { BuiltInKind } from './kind.js';

const DIRECT = {
  all: [{ 'one-of': ['gearbox.type', ['direct']] }, { 'one-of': ['lever.type', ['direct']] }],
};

export const shiftLinkage: BuiltInKind = {
  id: 'shift-linkage',
  name: { en: 'shift linkage', de: 'Schaltgestänge' },
  standard: 'none',
  sides: ['gearbox', 'lever'],
  sideNames: {
    gearbox: {
      en: 'the gearbox with its shift levers',
      de: 'das Getriebe mit seinen Schalthebeln',
    },
    lever: {
      en: 'the gear lever with its rods or cables',
      de: 'der Schalthebel mit Gestänge oder Seilzügen',
    },
  },
  caution: 'driveline',
  parameters: {
    type: {
      type: 'code',
      name: {
        en: 'way of shifting (rods, cables, direct)',
        de: 'Schaltung (Gestänge, Seilzug, direkt)',
      },
      tool: 'visual-check',
    },
    gates: {
      type: 'count',
      name: { en: 'number of gates', de: 'Anzahl Schaltgassen' },
      tool: 'count',
      usual: [2, 5],
    },
    reverse: {
      type: 'code',
      name: { en: 'place of reverse', de: 'Lage des Rückwärtsgangs' },
      tool: 'visual-check',
    },
    'reverse-lock': {
      type: 'code',
      of: 'gearbox',
      name: { en: 'where reverse is locked out', de: 'wo der Rückwärtsgang gesperrt ist' },
      tool: 'visual-check',
    },
    'lock-out': {
      type: 'code',
      of: 'lever',
      name: { en: 'reverse lock-out at the lever', de: 'Rückwärtsgangsperre am Hebel' },
      tool: 'visual-check',
    },
    'shift-sense': {
      type: 'code',
      name: { en: 'sense of the shift movement', de: 'Richtung der Schaltbewegung' },
      tool: 'visual-check',
    },
    'gate-sense': {
      type: 'code',
      name: { en: 'sense of the selecting movement', de: 'Richtung der Wählbewegung' },
      tool: 'visual-check',
    },
    'shift-travel': {
      type: 'measured',
      unit: 'mm',
      name: { en: 'travel of the shift movement', de: 'Weg der Schaltbewegung' },
      tool: 'caliper',
      usual: ['8 mm', '40 mm'],
    },
    'gate-travel': {
      type: 'measured',
      unit: 'mm',
      optional: true,
      name: { en: 'travel over all gates', de: 'Weg über alle Schaltgassen' },
      tool: 'caliper',
      usual: ['8 mm', '60 mm'],
    },
    end: {
      type: 'code',
      name: { en: 'form of the ends', de: 'Form der Anschlüsse' },
      tool: 'visual-check',
    },
    pin: {
      type: 'measured',
      unit: 'mm',
      of: 'gearbox',
      optional: true,
      name: { en: 'diameter of the pin or ball', de: 'Durchmesser von Zapfen oder Kugel' },
      tool: 'caliper',
      usual: ['4 mm', '20 mm'],
    },
    eye: {
      type: 'measured',
      unit: 'mm',
      of: 'lever',
      optional: true,
      name: { en: 'bore of the eye or socket', de: 'Bohrung von Auge oder Pfanne' },
      tool: 'caliper',
      usual: ['4 mm', '20 mm'],
    },
  },
  checks: [
    {
      equal: 'type',
      text: {
        en: 'Rods, cables and a lever on the box do not replace one another.',
        de: 'Gestänge, Seilzug und direkter Hebel ersetzen einander nicht.',
      },
    },
    {
      id: 'known-type',
      'one-of': ['gearbox.type', ['rods', 'cables', 'direct']],
      severity: 'caution',
      code: 'other-type',
      text: {
        en: 'A linkage of another type is compared by its name and its ends alone.',
        de: 'Eine Schaltung anderer Bauart wird nur nach Name und Anschlüssen verglichen.',
      },
    },
    {
      id: 'gates',
      'at-least': ['lever.gates', 'gearbox.gates'],
      code: 'gate-missing',
      text: {
        en: 'The lever must have all the gates of the gearbox: a sixth gear needs one more.',
        de: 'Der Hebel braucht alle Gassen des Getriebes: Ein sechster Gang braucht eine mehr.',
      },
    },
    {
      id: 'spare-gate',
      'at-most': ['lever.gates', 'gearbox.gates'],
      severity: 'caution',
      code: 'gate-to-spare',
      text: {
        en: 'The lever shows a gate that the gearbox lacks: change the knob, fit a stop.',
        de: 'Der Hebel zeigt eine Gasse, die dem Getriebe fehlt: Knauf ändern, Anschlag setzen.',
      },
    },
    {
      equal: 'reverse',
      text: {
        en: 'Reverse must be where lever and lock-out have it.',
        de: 'Der Rückwärtsgang muss dort liegen, wo Hebel und Sperre ihn haben.',
      },
    },
    {
      id: 'known-reverse-lock',
      'one-of': ['gearbox.reverse-lock', ['built-in', 'at-lever']],
      code: 'reverse-lock-not-named',
      text: {
        en: 'Reverse is locked out in the gearbox or at the lever: look for it.',
        de: 'Der Rückwärtsgang ist im Getriebe oder am Hebel gesperrt: nachsehen.',
      },
    },
    {
      id: 'lock-out',
      'one-of': ['gearbox.reverse-lock', ['built-in']],
      when: { 'one-of': ['lever.lock-out', ['none']] },
      code: 'reverse-not-locked-out',
      text: {
        en: 'Where the lever has no lock-out of reverse, the gearbox must have one.',
        de: 'Wo der Hebel den Rückwärtsgang nicht sperrt, muss es das Getriebe tun.',
      },
    },
    {
      id: 'double-lock',
      'one-of': ['lever.lock-out', ['none']],
      when: { 'one-of': ['gearbox.reverse-lock', ['built-in']] },
      severity: 'caution',
      code: 'locked-out-twice',
      text: {
        en: 'Reverse is locked out twice: try whether both let it go together.',
        de: 'Der Rückwärtsgang ist zweimal gesperrt: prüfen, ob beide zusammen lösen.',
      },
    },
    {
      equal: 'shift-sense',
      when: { not: DIRECT },
      text: {
        en: 'The shift must go the same way, or first gear is second.',
        de: 'Die Schaltbewegung muss gleich gerichtet sein, sonst ist der erste Gang der zweite.',
      },
    },
    {
      equal: 'gate-sense',
      when: { not: DIRECT },
      text: {
        en: 'The selection must go the same way, or first gear is fifth.',
        de: 'Die Wählbewegung muss gleich gerichtet sein, sonst ist der erste Gang der fünfte.',
      },
    },
    {
      id: 'shift-travel',
      'at-least': ['lever.shift-travel', 'gearbox.shift-travel'],
      code: 'too-little-travel',
      text: {
        en: 'The linkage must move the box as far as its gears need, or they jump out.',
        de: 'Das Gestänge muss den ganzen Schaltweg machen, sonst springen Gänge heraus.',
      },
    },
    {
      id: 'shift-over-travel',
      'at-most': ['lever.shift-travel', ['1.25', 'gearbox.shift-travel']],
      severity: 'caution',
      code: 'needs-stop',
      text: {
        en: 'With more than 25 % too much travel the box bears the hand: fit a stop.',
        de: 'Bei über 25 % zu viel Weg fängt das Getriebe die Hand auf: Anschlag setzen.',
      },
    },
    {
      id: 'gate-travel',
      'at-least': ['lever.gate-travel', 'gearbox.gate-travel'],
      code: 'too-little-selection',
      text: {
        en: 'The linkage must reach the outermost gate.',
        de: 'Das Gestänge muss die äußerste Gasse erreichen.',
      },
    },
    {
      equal: 'end',
      text: {
        en: 'Both ends must be made for one another: balls, eyes, clevises.',
        de: 'Beide Anschlüsse müssen zueinander gehören: Kugel, Auge, Gabel.',
      },
    },
    {
      id: 'pin',
      'at-least': ['lever.eye', 'gearbox.pin'],
      code: 'pin-does-not-go-in',
      text: {
        en: 'The pin or ball must go into its eye or socket.',
        de: 'Zapfen oder Kugel müssen in Auge oder Pfanne gehen.',
      },
    },
    {
      id: 'pin-play',
      clearance: ['lever.eye', 'gearbox.pin'],
      max: '0.3 mm',
      severity: 'caution',
      code: 'loose-on-pin',
      text: {
        en: 'With more than 0.3 mm of play the lever rattles and loses travel.',
        de: 'Mit mehr als 0,3 mm Spiel klappert der Hebel und verliert Weg.',
      },
    },
  ],
  notChecked: [
    { en: 'length of rods and cables', de: 'Länge von Gestänge und Seilzügen' },
    { en: 'place of the lever in the tunnel', de: 'Lage des Hebels im Tunnel' },
    { en: 'brackets and clips that hold the cables', de: 'Halter und Klammern der Seilzüge' },
    { en: 'switches for reverse and neutral', de: 'Schalter für Rückwärtsgang und Leerlauf' },
  ],
};
