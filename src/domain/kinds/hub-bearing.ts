/**
 * One ring of a rolling bearing on its seat: the inner ring on a journal, or the outer ring in a
 * housing. A bearing has one face of this kind for each of its rings.
 *
 * Standards: ISO 15 and ISO 355 for boundary dimensions (bore d, outside diameter D, width B; of
 * tapered bearings the ring widths B and C and the assembled width T), ISO 492 for how far a ring
 * may lie below its nominal size, ISO 286 for seats, ISO 582 for corners, ISO 5753-1 for classes
 * of internal clearance. Boundary dimensions are equal or not; what decides besides is the fit.
 *
 * The load of a wheel stands still, so a ring that turns with the wheel creeps on a seat with
 * play: it needs a press fit. N7 with a ring of normal tolerance, which makers of bearings give
 * for hubs that turn about a fixed axle, still allows 5 thousandths of play, so that much passes.
 * A ring that stands still may have play, as f6 and H7, the loosest fits given for it, allow:
 * 0.05 mm. A press fit of more than 0.10 mm is met nowhere: the tightest that a maker gives for
 * hubs, T7 at 72 mm, has 0.094 mm. Those fits were read in tables of makers of bearings. Where a
 * nut adjusts the bearing, a ring that stands still has to slide; over 0.03 mm of press fit it
 * hardly does (common practice, no source): a caution. Where preload is built in, makers press
 * the outer ring although it stands still, so play there is a caution.
 *
 * Another class of internal clearance in the same size fits no better and no worse to the hand,
 * and only the maker can tell whether it will do: so the answer is open until the class that the
 * maker allows besides is recorded ("none" where there is none). Preload is "built-in", set by the
 * rings, "adjusted" by a nut, set by a "spacer", or "none"; of the first two no class is asked.
 *
 * Left out: preload that remains after pressing, load and life, a magnetic ring in the seal, which
 * is an interface of its own (wheel-speed-target).
 *
 * Length: the fits of two rings, turning or not, are checks of their own, each with its sentence.
 */

import type { BuiltInKind } from './kind.js';

function isRing(ring: string) {
  return { 'one-of': ['seat.ring', [ring]] };
}

function doesRing(motion: string) {
  return { 'one-of': ['seat.motion', [motion]] };
}

function hasPreload(preload: string) {
  return { 'one-of': ['seat.preload', [preload]] };
}

/** Hole less shaft: the play of an inner ring on its journal, of an outer one in its housing. */
const INNER_PLAY = ['bearing.diameter', 'seat.diameter'];
const OUTER_PLAY = ['seat.diameter', 'bearing.diameter'];

/** Where a nut or the rings themselves set the clearance, ISO 5753 has no class for it. */
const HAS_CLASS = { not: { any: [hasPreload('adjusted'), hasPreload('built-in')] } };

export const hubBearing: BuiltInKind = {
  id: 'hub-bearing',
  name: { en: 'bearing ring on its seat', de: 'Lagerring auf seinem Sitz' },
  standard: 'ISO 15, ISO 355, ISO 492, ISO 582, ISO 5753-1; seats: ISO 286',
  sides: ['bearing', 'seat'],
  sideNames: {
    bearing: { en: 'a ring of the bearing', de: 'ein Ring des Lagers' },
    seat: { en: 'the journal or the housing', de: 'der Zapfen oder das Gehäuse' },
  },
  caution: 'wheels',
  parameters: {
    ring: {
      type: 'code',
      name: { en: 'inner or outer ring', de: 'Innenring oder Außenring' },
      tool: 'visual-check',
    },
    motion: {
      type: 'code',
      of: 'seat',
      name: { en: 'turning with the wheel or standing', de: 'mit dem Rad drehend oder stehend' },
      tool: 'visual-check',
    },
    diameter: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'diameter of ring and seat', de: 'Durchmesser von Ring und Sitz' },
      tool: 'micrometer',
      usual: ['25 mm', '100 mm'],
    },
    width: {
      type: 'designation',
      unit: 'mm',
      name: { en: 'width of the ring', de: 'Breite des Rings' },
      tool: 'marking',
      usual: ['8 mm', '60 mm'],
    },
    'assembled-width': {
      type: 'designation',
      unit: 'mm',
      optional: true,
      name: { en: 'assembled width of the bearing', de: 'Gesamtbreite des Lagers' },
      tool: 'marking',
      usual: ['8 mm', '60 mm'],
    },
    preload: {
      type: 'code',
      name: { en: 'how preload is set', de: 'wie die Vorspannung entsteht' },
      tool: 'marking',
    },
    'clearance-class': {
      type: 'code',
      name: { en: 'class of internal clearance', de: 'Lagerluftklasse' },
      tool: 'marking',
    },
    'other-class': {
      type: 'code',
      of: 'seat',
      name: {
        en: 'class of internal clearance that the maker allows besides',
        de: 'Lagerluftklasse, die der Hersteller auch zulässt',
      },
      tool: 'marking',
    },
    seals: {
      type: 'code',
      name: { en: 'sealed sides of the bearing', de: 'abgedichtete Seiten des Lagers' },
      tool: 'visual-check',
    },
    type: {
      type: 'code',
      optional: true,
      name: { en: 'type of bearing', de: 'Bauart des Lagers' },
      tool: 'visual-check',
    },
    chamfer: {
      type: 'measured',
      unit: 'mm',
      of: 'bearing',
      optional: true,
      name: { en: 'corner of the ring', de: 'Kantenabstand des Rings' },
      tool: 'caliper',
      usual: ['0.3 mm', '4 mm'],
    },
    fillet: {
      type: 'measured',
      unit: 'mm',
      of: 'seat',
      optional: true,
      name: { en: 'fillet of the seat', de: 'Hohlkehle des Sitzes' },
      tool: 'caliper',
      usual: ['0.2 mm', '4 mm'],
    },
  },
  checks: [
    {
      equal: 'ring',
      text: {
        en: 'A journal takes an inner ring, a housing an outer one.',
        de: 'Auf den Zapfen gehört ein Innenring, ins Gehäuse ein Außenring.',
      },
    },
    {
      id: 'known-ring',
      'one-of': ['seat.ring', ['inner', 'outer']],
      code: 'neither-inner-nor-outer',
      text: {
        en: 'A ring is the inner or the outer one.',
        de: 'Ein Ring ist der innere oder der äußere.',
      },
    },
    {
      id: 'known-motion',
      'one-of': ['seat.motion', ['turning', 'standing']],
      code: 'neither-turning-nor-standing',
      text: {
        en: 'A ring turns with the wheel or stands still: that decides its fit.',
        de: 'Ein Ring dreht mit dem Rad oder steht: Das bestimmt seine Passung.',
      },
    },
    {
      id: 'inner-goes-on',
      clearance: INNER_PLAY,
      min: '-0.1 mm',
      when: isRing('inner'),
      code: 'journal-too-large',
      text: {
        en: 'No bearing is pressed on with more than 0.10 mm: else the journal is too large.',
        de: 'Über 0,10 mm presst man kein Lager auf: Dann ist der Zapfen zu groß.',
      },
    },
    {
      id: 'outer-goes-in',
      clearance: OUTER_PLAY,
      min: '-0.1 mm',
      when: isRing('outer'),
      code: 'housing-too-small',
      text: {
        en: 'No bearing is pressed in with more than 0.10 mm: else the housing is too small.',
        de: 'Über 0,10 mm presst man kein Lager ein: Dann ist das Gehäuse zu klein.',
      },
    },
    {
      id: 'inner-turning',
      clearance: INNER_PLAY,
      max: '0.005 mm',
      when: { all: [isRing('inner'), doesRing('turning')] },
      code: 'ring-creeps-on-journal',
      text: {
        en: 'An inner ring that turns with the wheel needs a press fit, or it creeps.',
        de: 'Ein drehender Innenring braucht einen Presssitz, sonst wandert er.',
      },
    },
    {
      id: 'outer-turning',
      clearance: OUTER_PLAY,
      max: '0.005 mm',
      when: { all: [isRing('outer'), doesRing('turning')] },
      code: 'ring-creeps-in-housing',
      text: {
        en: 'An outer ring that turns with the wheel needs a press fit, or it creeps.',
        de: 'Ein drehender Außenring braucht einen Presssitz, sonst wandert er.',
      },
    },
    {
      id: 'inner-standing',
      clearance: INNER_PLAY,
      max: '0.05 mm',
      when: { all: [isRing('inner'), doesRing('standing')] },
      code: 'loose-on-journal',
      text: {
        en: 'An inner ring that stands still may have 0.05 mm of play, not more.',
        de: 'Ein stehender Innenring darf 0,05 mm Spiel haben, nicht mehr.',
      },
    },
    {
      id: 'outer-standing',
      clearance: OUTER_PLAY,
      max: '0.05 mm',
      when: { all: [isRing('outer'), doesRing('standing')] },
      code: 'loose-in-housing',
      text: {
        en: 'An outer ring that stands still may have 0.05 mm of play, not more.',
        de: 'Ein stehender Außenring darf 0,05 mm Spiel haben, nicht mehr.',
      },
    },
    {
      id: 'inner-slides',
      clearance: INNER_PLAY,
      min: '-0.03 mm',
      when: { all: [isRing('inner'), doesRing('standing'), hasPreload('adjusted')] },
      severity: 'caution',
      code: 'cannot-be-adjusted',
      text: {
        en: 'The nut must move this ring on its journal to adjust the bearing: it is too tight.',
        de: 'Zum Einstellen muss der Ring auf dem Zapfen gleiten: Er sitzt zu stramm.',
      },
    },
    {
      id: 'outer-pressed',
      clearance: OUTER_PLAY,
      max: '0.005 mm',
      when: { all: [isRing('outer'), doesRing('standing'), hasPreload('built-in')] },
      severity: 'caution',
      code: 'preload-wants-press-fit',
      text: {
        en: 'Bearings with built-in preload are mostly pressed into the knuckle: ask their maker.',
        de: 'Lager mit fester Vorspannung werden meist eingepresst: den Hersteller fragen.',
      },
    },
    {
      equal: 'width',
      text: {
        en: 'The ring must have the width that the seat is made for.',
        de: 'Der Ring muss die Breite haben, für die der Sitz gemacht ist.',
      },
    },
    {
      equal: 'assembled-width',
      text: {
        en: 'Another assembled width moves the hub.',
        de: 'Eine andere Gesamtbreite verschiebt die Nabe.',
      },
    },
    {
      equal: 'preload',
      text: {
        en: 'A bearing that is adjusted does not replace one with built-in preload, nor reversed.',
        de: 'Einstellbare Lager ersetzen keine mit fester Vorspannung, und umgekehrt.',
      },
    },
    {
      id: 'known-preload',
      'one-of': ['seat.preload', ['built-in', 'adjusted', 'spacer', 'none']],
      code: 'no-such-preload',
      text: {
        en: 'Preload is built in, adjusted by a nut, set by a spacer, or there is none.',
        de: 'Vorspannung ist fest, mit der Mutter eingestellt, durch Hülse gegeben oder fehlt.',
      },
    },
    {
      id: 'known-class',
      'one-of': ['seat.clearance-class', ['c2', 'cn', 'c3', 'c4', 'c5']],
      when: HAS_CLASS,
      code: 'no-such-class',
      text: {
        en: 'The classes of internal clearance are C2, CN, C3, C4 and C5; without a mark it is CN.',
        de: 'Die Lagerluftklassen sind C2, CN, C3, C4 und C5; ohne Angabe gilt CN.',
      },
    },
    {
      id: 'other-class',
      equal: ['bearing.clearance-class', 'seat.other-class'],
      when: { all: [HAS_CLASS, { not: { equal: 'clearance-class' } }] },
      code: 'other-clearance-class',
      text: {
        en: 'Another internal clearance in the same size will do only if the maker says so.',
        de: 'Andere Lagerluft bei gleicher Größe geht nur, wenn der Hersteller es sagt.',
      },
    },
    {
      equal: 'seals',
      when: {
        all: [
          { not: { 'one-of': ['seat.seals', ['none']] } },
          { not: { 'one-of': ['bearing.seals', ['both-sides']] } },
        ],
      },
      text: {
        en: 'Where hub and knuckle have no seal, the bearing must bring it.',
        de: 'Wo Nabe und Achsschenkel nicht dichten, muss es das Lager tun.',
      },
    },
    {
      equal: 'type',
      severity: 'caution',
      text: {
        en: 'Another type of bearing carries other loads in the same size: ask its maker.',
        de: 'Eine andere Bauart trägt bei gleicher Größe anders: den Hersteller fragen.',
      },
    },
    {
      id: 'corner',
      'at-least': ['bearing.chamfer', 'seat.fillet'],
      code: 'ring-does-not-seat',
      text: {
        en: 'The corner of the ring must clear the fillet, or it does not reach the shoulder.',
        de: 'Die Kante des Rings muss die Hohlkehle freigeben, sonst liegt er nicht an.',
      },
    },
  ],
  notChecked: [
    { en: 'preload that remains after pressing', de: 'Vorspannung nach dem Einpressen' },
    { en: 'load rating and life', de: 'Tragzahl und Lebensdauer' },
    { en: 'circlip, nut and shoulder height', de: 'Sicherungsring, Mutter, Schulterhöhe' },
    { en: 'a magnetic ring in the seal', de: 'ein Magnetring in der Dichtung' },
    { en: 'roundness and roughness of the seat', de: 'Rundheit und Rauheit des Sitzes' },
  ],
};
