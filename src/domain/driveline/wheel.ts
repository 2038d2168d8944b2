/**
 * What another rim width, inset or spacer does: where the wheel stands, inwards and outwards, the
 * track, the scrub radius, and the room that is left to strut and arch.
 *
 * Terms as in ISO 3911: the inset is positive where the mounting face lies outside of the middle of
 * the rim. The kingpin offset (scrub radius) is positive where the steering axis meets the ground
 * inside of the middle of the tyre; a larger tyre lets the axis, which leans inwards at its top,
 * meet the ground further out, and so makes it smaller. Limits of room are common practice.
 *
 * Left out: the bulge of a tyre on another rim, what moves at bump and lock, camber, caliper room.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { tangentInterval } from '../quantity/enclosure.js';
import {
  addIntervals,
  equalIntervals,
  type Interval,
  multiplyIntervals,
  point,
  scaleInterval,
  subtractIntervals,
} from '../quantity/interval.js';
import { rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

const TWO = rational(2);
const HALF = rational('0.5');
const NONE = point(ZERO);

/** How a wheel stands on its hub, in mm. */
export interface WheelPlace {
  readonly width: Interval;
  readonly inset: Interval;
  /** What lies between it and the hub face that was there, positive outwards. */
  readonly outwards: Interval;
}

/** From the hub face inwards to the inner edge, in mm. */
export function innerReach({ width, inset, outwards }: WheelPlace): Interval {
  return subtractIntervals(addIntervals(scaleInterval(width, HALF), inset), outwards);
}

/** From the hub face outwards to the outer edge, in mm. */
export function outerReach({ width, inset, outwards }: WheelPlace): Interval {
  return addIntervals(subtractIntervals(scaleInterval(width, HALF), inset), outwards);
}

/** How far the middle of the wheel moves outwards from one place to another, in mm. */
export function middleMoves(before: WheelPlace, after: WheelPlace): Interval {
  const insets = subtractIntervals(before.inset, after.inset);
  return addIntervals(insets, subtractIntervals(after.outwards, before.outwards));
}

/** By so much the scrub radius grows, in mm; the inclination in degrees. */
export function scrubRadiusChange(
  outwards: Interval,
  {
    radiusChange,
    inclination,
  }: { readonly radiusChange: Interval; readonly inclination: Interval },
): Interval {
  const byRadius = multiplyIntervals(radiusChange, tangentInterval(inclination));
  return subtractIntervals(outwards, byRadius);
}

/** Room that wheels are left in practice, in mm. */
export const ROOM_NEEDED = { inner: rational(5), arch: rational(8) } as const;

const WIDTH = {
  type: 'quantity',
  dimension: 'length',
  above: '0 mm',
  greatest: '1000 mm',
} as const;
const LENGTH = { type: 'quantity', dimension: 'length' } as const;
const INSET = {
  ...LENGTH,
  least: '-400 mm',
  greatest: '400 mm',
  usual: ['-40 mm', '65 mm'],
} as const;
const ROOM = { ...LENGTH, optional: true, least: '0 mm' } as const;

export const wheel = calculation({
  name: 'wheel',
  title: { en: 'Another rim width and inset', de: 'Andere Maulweite und Einpresstiefe' },
  about: {
    en: 'Where does the wheel stand with another rim width, inset or spacer, and is there room?',
    de: 'Wo steht das Rad mit anderer Maulweite, Einpresstiefe oder Distanzscheibe, passt es hin?',
  },
  inputs: {
    oldWidth: {
      ...WIDTH,
      usual: ['4 in', '11 in'],
      name: { en: 'rim width before', de: 'Maulweite bisher' },
    },
    oldInset: { ...INSET, name: { en: 'inset before', de: 'Einpresstiefe bisher' } },
    newWidth: {
      ...WIDTH,
      usual: ['4 in', '11 in'],
      name: { en: 'new rim width', de: 'neue Maulweite' },
    },
    newInset: { ...INSET, name: { en: 'new inset', de: 'neue Einpresstiefe' } },
    oldOverallWidth: {
      ...WIDTH,
      optional: true,
      name: {
        en: 'overall width before, of rim or tyre, the wider',
        de: 'Gesamtbreite bisher, von Felge oder Reifen die größere',
      },
    },
    newOverallWidth: {
      ...WIDTH,
      optional: true,
      name: {
        en: 'new overall width, of rim or tyre, the wider',
        de: 'neue Gesamtbreite, von Felge oder Reifen die größere',
      },
    },
    oldSpacer: {
      ...ROOM,
      greatest: '200 mm',
      name: { en: 'spacer before, none if not told', de: 'Distanzscheibe bisher, sonst keine' },
    },
    newSpacer: {
      ...ROOM,
      greatest: '200 mm',
      name: { en: 'new spacer, none if not told', de: 'neue Distanzscheibe, sonst keine' },
    },
    hubFaceMoves: {
      ...LENGTH,
      optional: true,
      least: '-200 mm',
      greatest: '200 mm',
      name: {
        en: 'how far the new hub face stands further out, 0 if not told',
        de: 'um so viel steht die neue Nabenfläche weiter außen, sonst 0',
      },
    },
    tyreRadiusChange: {
      ...LENGTH,
      optional: true,
      least: '-500 mm',
      greatest: '500 mm',
      usual: ['-40 mm', '40 mm'],
      name: {
        en: 'larger tyre radius by so much, 0 if not told',
        de: 'um so viel größerer Reifenhalbmesser, sonst 0',
      },
    },
    kingpinInclination: {
      type: 'quantity',
      dimension: 'angle',
      optional: true,
      least: '-45 deg',
      greatest: '45 deg',
      usual: ['0 deg', '20 deg'],
      name: { en: 'kingpin inclination', de: 'Spreizung' },
    },
    innerRoom: {
      ...ROOM,
      name: { en: 'room to the strut before', de: 'Freiraum zum Federbein bisher' },
    },
    archRoom: {
      ...ROOM,
      name: { en: 'room to the arch before', de: 'Freiraum zum Radlauf bisher' },
    },
    innerRoomNeeded: {
      ...ROOM,
      name: {
        en: 'room to the strut that is wanted, else 5 mm',
        de: 'verlangter Freiraum zum Federbein, sonst 5 mm',
      },
    },
    archRoomNeeded: {
      ...ROOM,
      name: {
        en: 'room to the arch that is wanted, else 8 mm',
        de: 'verlangter Freiraum zum Radlauf, sonst 8 mm',
      },
    },
  },
  outputs: {
    innerReach: {
      ...LENGTH,
      name: { en: 'reach inwards from the hub face', de: 'Maß von der Nabenfläche nach innen' },
    },
    outerReach: {
      ...LENGTH,
      name: { en: 'reach outwards from the hub face', de: 'Maß von der Nabenfläche nach außen' },
    },
    inwards: {
      ...LENGTH,
      name: { en: 'further in by, negative if less', de: 'weiter innen um, negativ wenn weniger' },
    },
    outwards: {
      ...LENGTH,
      name: {
        en: 'further out by, negative if less',
        de: 'weiter außen um, negativ wenn weniger',
      },
    },
    trackChange: {
      ...LENGTH,
      name: { en: 'wider track by', de: 'breitere Spur um' },
    },
    scrubRadiusChange: {
      ...LENGTH,
      needs: ['kingpinInclination'],
      name: { en: 'greater scrub radius by', de: 'größerer Lenkrollradius um' },
    },
    innerRoomAfter: {
      ...LENGTH,
      needs: ['innerRoom'],
      name: { en: 'room to the strut after', de: 'Freiraum zum Federbein danach' },
    },
    innerRoomEnough: {
      type: 'outcome',
      needs: ['innerRoom'],
      name: {
        en: 'The room to the strut is enough.',
        de: 'Der Freiraum zum Federbein genügt.',
      },
    },
    archRoomAfter: {
      ...LENGTH,
      needs: ['archRoom'],
      name: { en: 'room to the arch after', de: 'Freiraum zum Radlauf danach' },
    },
    archRoomEnough: {
      type: 'outcome',
      needs: ['archRoom'],
      name: { en: 'The room to the arch is enough.', de: 'Der Freiraum zum Radlauf genügt.' },
    },
  },
  formulas: [
    'innerReach = newWidth / 2 + newInset − newSpacer − hubFaceMoves',
    'outerReach = newWidth / 2 − newInset + newSpacer + hubFaceMoves',
    'inwards = innerReach − (oldWidth / 2 + oldInset − oldSpacer)',
    'outwards = outerReach − (oldWidth / 2 − oldInset + oldSpacer)',
    'middle = oldInset − newInset + newSpacer − oldSpacer + hubFaceMoves',
    'trackChange = 2 · middle',
    'scrubRadiusChange = middle − tyreRadiusChange · tan(kingpinInclination)',
    'innerRoomAfter = innerRoom − inwards,   archRoomAfter = archRoom − outwards',
  ],
  assumptions: [
    {
      en: 'Overall widths take the place of rim widths where both are told.',
      de: 'Gesamtbreiten treten an die Stelle der Maulweiten, wo beide angegeben sind.',
    },
    {
      en: 'Rims of the same kind stand out beyond their width by the same, each side alike.',
      de: 'Felgen gleicher Art stehen über ihre Maulweite gleich weit und beiderseits gleich über.',
    },
    {
      en: 'The wheels on both sides are changed alike, and the camber stays.',
      de: 'Beide Seiten werden gleich geändert, und der Sturz bleibt.',
    },
  ],
  validity: [
    {
      en: 'At rest and straight ahead. Check at full bump and full lock on the vehicle.',
      de: 'Im Stand und geradeaus. Bei vollem Einfedern und vollem Einschlag am Fahrzeug prüfen.',
    },
    {
      en: 'A tyre may stand out beyond its rim: then give overall widths of the mounted wheels.',
      de: 'Ein Reifen kann über die Felge stehen: Dann Gesamtbreiten der montierten Räder angeben.',
    },
    {
      en: 'The room of 5 mm and 8 mm is common practice, no standard.',
      de: 'Die Freiräume von 5 mm und 8 mm sind übliche Praxis und keine Norm.',
    },
  ],
  sources: [
    { title: 'geometry of wheel and steering axis', basis: 'arithmetic' },
    { title: 'ISO 3911, terms of wheels and rims', basis: 'read' },
    { title: 'room of 5 mm to the strut and 8 mm to the arch', basis: 'common-practice' },
  ],
  warnings: {
    spacer: {
      en: 'A spacer takes thread engagement and spigot length: check both, and the local rules.',
      de: 'Die Scheibe kostet Einschraubtiefe und Zentrierung: prüfen, auch die Vorschriften.',
    },
    rubs: {
      en: 'The wheel meets, or may meet, the strut or the arch.',
      de: 'Das Rad stößt am Federbein oder Radlauf an oder kann es tun.',
    },
    'short-before': {
      en: 'The room was, or may have been, less than wanted before the change already.',
      de: 'Der Freiraum war schon vor der Änderung kleiner als verlangt oder kann es gewesen sein.',
    },
    'scrub-radius-moves': {
      en: 'The scrub radius changes: steering pull under braking and bearing load change with it.',
      de: 'Der Lenkrollradius ändert sich, damit das Ziehen beim Bremsen und die Last der Lager.',
    },
  },
  caution: 'wheels',
  examples: [
    {
      name: 'wider-rim',
      summary: 'From 7 inches at 45 mm to 8 inches at 35 mm, with a larger tyre',
      given: {
        oldWidth: '7 in',
        oldInset: '45 mm',
        newWidth: '8 in',
        newInset: '35 mm',
        tyreRadiusChange: '6 mm',
        kingpinInclination: '12 deg',
        innerRoom: '9 ±1 mm',
        archRoom: '30 ±1 mm',
      },
    },
    {
      name: 'spacers-and-tyres',
      summary: 'Mounted wheels by their overall width, on a hub that stands further out',
      given: {
        oldWidth: '6 in',
        oldInset: '40 mm',
        newWidth: '7 in',
        newInset: '42 mm',
        oldOverallWidth: '203 mm',
        newOverallWidth: '218 mm',
        oldSpacer: '0 mm',
        newSpacer: '5 mm',
        hubFaceMoves: '1.5 mm',
        innerRoom: '14 mm',
        archRoom: '25 mm',
        innerRoomNeeded: '6 mm',
        archRoomNeeded: '10 mm',
      },
    },
  ],
  calculate: (given) => {
    const faults = widthFaults(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const before: WheelPlace = {
      width: given.oldOverallWidth ?? given.oldWidth,
      inset: given.oldInset,
      outwards: given.oldSpacer ?? NONE,
    };
    const after: WheelPlace = {
      width: given.newOverallWidth ?? given.newWidth,
      inset: given.newInset,
      outwards: addIntervals(given.newSpacer ?? NONE, given.hubFaceMoves ?? NONE),
    };
    const inwards = subtractIntervals(innerReach(after), innerReach(before));
    const outwards = subtractIntervals(outerReach(after), outerReach(before));
    const moves = middleMoves(before, after);
    const scrub = scrubOf(moves, given);
    const inner = roomOf(
      given.innerRoom,
      given.innerRoomNeeded ?? point(ROOM_NEEDED.inner),
      inwards,
    );
    const arch = roomOf(given.archRoom, given.archRoomNeeded ?? point(ROOM_NEEDED.arch), outwards);
    const hasSpacer = given.newSpacer !== null && isBelow(NONE, given.newSpacer) !== 'fails';
    const scrubMoves = scrub !== undefined && !equalIntervals(scrub, NONE);
    return {
      found: {
        innerReach: innerReach(after),
        outerReach: outerReach(after),
        inwards,
        outwards,
        trackChange: scaleInterval(moves, TWO),
        scrubRadiusChange: scrub,
        innerRoomAfter: inner?.after,
        innerRoomEnough: inner?.isEnough,
        archRoomAfter: arch?.after,
        archRoomEnough: arch?.isEnough,
      },
      warnings: [
        ...(inner?.rubs || arch?.rubs ? ['rubs'] : []),
        ...(inner?.wasShort || arch?.wasShort ? ['short-before'] : []),
        ...(hasSpacer ? ['spacer'] : []),
        ...(scrubMoves ? ['scrub-radius-moves'] : []),
      ],
    };
  },
});

interface Scrub {
  readonly tyreRadiusChange: Interval | null;
  readonly kingpinInclination: Interval | null;
}

/** On the same tyre the inclination does not matter; on another it has to be told. */
function scrubOf(moves: Interval, given: Scrub): Interval | undefined {
  const { tyreRadiusChange: radiusChange, kingpinInclination: inclination } = given;
  if (radiusChange === null) return moves;
  return inclination === null ? undefined : scrubRadiusChange(moves, { radiusChange, inclination });
}

function roomOf(before: Interval | null, needed: Interval, taken: Interval) {
  if (before === null) return null;
  const after = subtractIntervals(before, taken);
  return {
    after,
    isEnough: notAbove(needed, after),
    rubs: isBelow(NONE, after) !== 'holds',
    wasShort: notAbove(needed, before) !== 'holds',
  };
}

interface Widths {
  readonly oldWidth: Interval;
  readonly newWidth: Interval;
  readonly oldOverallWidth: Interval | null;
  readonly newOverallWidth: Interval | null;
}

function widthFaults(given: Widths): GivenFault[] {
  const { oldOverallWidth, newOverallWidth } = given;
  if ((oldOverallWidth === null) !== (newOverallWidth === null)) {
    const text = {
      en: 'Give the overall width of both wheels, or of neither.',
      de: 'Die Gesamtbreite beider Räder angeben oder keine.',
    };
    return [{ input: oldOverallWidth === null ? 'newOverallWidth' : 'oldOverallWidth', text }];
  }
  const text = {
    en: 'A wheel is at least as wide overall as between the flanges of its rim.',
    de: 'Ein Rad ist insgesamt mindestens so breit wie die Maulweite seiner Felge.',
  };
  const pairs = [
    ['oldOverallWidth', given.oldWidth, oldOverallWidth],
    ['newOverallWidth', given.newWidth, newOverallWidth],
  ] as const;
  return pairs.flatMap(([input, rim, overall]) =>
    overall !== null && notAbove(rim, overall) === 'fails' ? [{ input, text }] : [],
  );
}
