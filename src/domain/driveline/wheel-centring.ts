/**
 * Whether a wheel goes over the spigot of its hub and is centred by it.
 *
 * A bore that is smaller than the spigot does not go on. With up to 0.10 mm of play the hub centres
 * the wheel; with more a ring has to fill the gap, or tapered seats centre it alone. Flat seats
 * never centre (ISO 4107 leaves all centring to the hub there). The play is common practice.
 *
 * Left out: the length of the spigot and its chamfer, bolt pattern, seats; the interface kind
 * "wheel-mount" decides those.
 */

import { allOf, type Outcome } from '../check/state.js';
import { closed, type Interval, NON_NEGATIVE, subtractIntervals } from '../quantity/interval.js';
import { rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove, within } from './compare.js';

/** Play in mm with which a spigot still centres. */
export const CENTRING_PLAY: Interval = closed(ZERO, rational('0.1'));

/** Of a bore over what stands in it, in mm: less than none is an overlap. */
export function playIn(bore: Interval, shaft: Interval): Interval {
  return subtractIntervals(bore, shaft);
}

export type Centring = 'hub' | 'ring-or-seats' | 'ring' | 'none' | 'open';

export function centringOf(play: Interval, seat: 'tapered' | 'flat' | null): Centring {
  const goesOn = within(play, NON_NEGATIVE);
  if (goesOn === 'fails') return 'none';
  const byHub = within(play, CENTRING_PLAY);
  if (byHub === 'holds') return 'hub';
  if (goesOn === 'open' || byHub === 'open') return 'open';
  return seat === 'flat' ? 'ring' : 'ring-or-seats';
}

const DIAMETER = {
  type: 'quantity',
  dimension: 'length',
  above: '0 mm',
  greatest: '1000 mm',
} as const;

export const wheelCentring = calculation({
  name: 'wheel-centring',
  title: { en: 'Centring of a wheel on its hub', de: 'Mittenzentrierung eines Rades' },
  about: {
    en: 'Does the wheel go over the spigot of the hub, and what centres it?',
    de: 'Geht das Rad über den Zentrierbund der Nabe, und was zentriert es?',
  },
  inputs: {
    spigot: {
      ...DIAMETER,
      usual: ['50 mm', '290 mm'],
      name: { en: 'spigot diameter of the hub', de: 'Durchmesser der Nabenzentrierung' },
    },
    bore: {
      ...DIAMETER,
      usual: ['50 mm', '290 mm'],
      name: { en: 'centre bore of the wheel', de: 'Mittenloch des Rades' },
    },
    seat: {
      type: 'code',
      optional: true,
      name: { en: 'seats of the nuts or bolts', de: 'Sitze der Muttern oder Schrauben' },
      codes: {
        tapered: { en: 'tapered or ball seats', de: 'Kegel- oder Kugelsitze' },
        flat: { en: 'flat seats', de: 'Flachsitze' },
      },
    },
    ringInner: {
      ...DIAMETER,
      optional: true,
      name: { en: 'inner diameter of a centring ring', de: 'Innendurchmesser eines Zentrierrings' },
    },
    ringOuter: {
      ...DIAMETER,
      optional: true,
      name: { en: 'outer diameter of that ring', de: 'Außendurchmesser dieses Rings' },
    },
  },
  outputs: {
    borePasses: {
      type: 'outcome',
      name: {
        en: 'The bore goes over the spigot.',
        de: 'Das Mittenloch geht über den Zentrierbund.',
      },
    },
    play: {
      type: 'quantity',
      dimension: 'length',
      name: {
        en: 'play in diameter, an overlap if negative',
        de: 'Spiel im Durchmesser, Übermaß wenn negativ',
      },
    },
    isHubCentric: {
      type: 'outcome',
      name: { en: 'The hub centres the wheel.', de: 'Die Nabe zentriert das Rad.' },
    },
    centring: {
      type: 'code',
      name: { en: 'what centres the wheel', de: 'was das Rad zentriert' },
      codes: {
        hub: { en: 'the hub itself', de: 'die Nabe selbst' },
        'ring-or-seats': {
          en: 'a centring ring, or tapered seats alone',
          de: 'ein Zentrierring oder Kegelsitze allein',
        },
        ring: { en: 'only a centring ring', de: 'nur ein Zentrierring' },
        none: {
          en: 'nothing: the wheel does not go on',
          de: 'nichts: Das Rad geht nicht auf die Nabe',
        },
        open: {
          en: 'open: measure spigot and bore more closely',
          de: 'offen: Zentrierbund und Mittenloch genauer messen',
        },
      },
    },
    ringCentres: {
      type: 'outcome',
      needs: ['ringInner', 'ringOuter'],
      name: {
        en: 'The ring fills the gap with at most 0.10 mm of play inside and outside.',
        de: 'Der Ring füllt den Spalt, innen und außen mit höchstens 0,10 mm Spiel.',
      },
    },
  },
  formulas: [
    'play = bore − spigot',
    'isHubCentric: 0 ≤ play ≤ 0.10 mm',
    'ringCentres: 0 ≤ ringInner − spigot ≤ 0.10 mm   and   0 ≤ bore − ringOuter ≤ 0.10 mm',
  ],
  assumptions: [
    {
      en: 'Spigot and bore are round and undamaged, without rust or paint.',
      de: 'Zentrierbund und Mittenloch sind rund und unbeschädigt, ohne Rost und Lack.',
    },
  ],
  validity: [
    {
      en: 'Not for the length of the spigot, nor for bolt pattern, seats and threads.',
      de: 'Nicht für die Länge des Zentrierbunds, nicht für Lochkreis, Sitze und Gewinde.',
    },
    {
      en: 'The play of 0.10 mm is common practice, no standard.',
      de: 'Das Spiel von 0,10 mm ist übliche Praxis und keine Norm.',
    },
  ],
  sources: [
    { title: 'play of at most 0.10 mm on the spigot', basis: 'common-practice' },
    { title: 'ISO 4107, flat seats with centring on the bore', basis: 'read' },
  ],
  warnings: {
    'bore-too-small': {
      en: 'The bore is, or may be, too small. Opening it up is a case for an engineer.',
      de: 'Das Mittenloch ist oder kann zu klein sein. Es aufzudrehen entscheidet ein Ingenieur.',
    },
    'flat-seats-do-not-centre': {
      en: 'Flat seats do not centre: without a hub or ring that does, the wheel runs out.',
      de: 'Flachsitze zentrieren nicht: Ohne Nabe oder Ring, die es tun, läuft das Rad unrund.',
    },
    'seats-centre-alone': {
      en: 'Without a ring the seats alone centre the wheel: tighten it unloaded and crosswise.',
      de: 'Ohne Ring zentrieren allein die Sitze: Rad unbelastet und über Kreuz anziehen.',
    },
  },
  caution: 'wheels',
  examples: [
    {
      name: 'bore-larger',
      summary: 'A bore two millimetres larger than the spigot, with a ring',
      given: {
        spigot: '54.1 mm',
        bore: '56.1 mm',
        seat: 'tapered',
        ringInner: '54.15 mm',
        ringOuter: '56.05 mm',
      },
    },
    {
      name: 'bore-smaller',
      summary: 'A bore smaller than the spigot: the wheel does not go on',
      given: { spigot: '56.1 mm', bore: '54.1 mm' },
    },
  ],
  calculate: ({ spigot, bore, seat, ringInner, ringOuter }) => {
    const faults = ringFaults(ringInner, ringOuter);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const play = playIn(bore, spigot);
    const borePasses = notAbove(spigot, bore);
    const centring = centringOf(play, seat);
    const ringCentres = ringOf({ spigot, bore, ringInner, ringOuter });
    const isCentred = centring === 'hub' || ringCentres === 'holds';
    return {
      found: {
        borePasses,
        play,
        isHubCentric: within(play, CENTRING_PLAY),
        centring,
        ringCentres,
      },
      warnings: [
        ...(borePasses === 'holds' ? [] : ['bore-too-small']),
        ...(seat === 'flat' && !isCentred ? ['flat-seats-do-not-centre'] : []),
        ...(centring === 'ring-or-seats' && !isCentred ? ['seats-centre-alone'] : []),
      ],
    };
  },
});

interface Ring {
  readonly spigot: Interval;
  readonly bore: Interval;
  readonly ringInner: Interval | null;
  readonly ringOuter: Interval | null;
}

function ringOf({ spigot, bore, ringInner, ringOuter }: Ring): Outcome | undefined {
  if (ringInner === null || ringOuter === null) return undefined;
  return allOf([
    within(playIn(ringInner, spigot), CENTRING_PLAY),
    within(playIn(bore, ringOuter), CENTRING_PLAY),
  ]);
}

function ringFaults(inner: Interval | null, outer: Interval | null): GivenFault[] {
  if (inner === null || outer === null || isBelow(inner, outer) === 'holds') return [];
  const text = {
    en: 'The inner diameter of a ring is smaller than its outer one.',
    de: 'Der Innendurchmesser eines Rings ist kleiner als sein Außendurchmesser.',
  };
  return [{ input: 'ringInner', text }];
}
