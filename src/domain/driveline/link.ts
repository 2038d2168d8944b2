/**
 * The elements of a driveline as they are told, each with what reaches it and what it bears, and
 * what is amiss with them. The formulas are in `torque-path.ts`, the words in `weakest-link.ts`.
 *
 * Left out: weight that moves between axles or wheels; each wheel carries half of its axle's load.
 */

import type { Outcome } from '../check/state.js';
import {
  addIntervals,
  contains,
  type Interval,
  isWithin,
  multiplyIntervals,
  overlaps,
  POSITIVE,
  point,
  scaleInterval,
} from '../quantity/interval.js';
import { isFault, parseQuantity } from '../quantity/quantity.js';
import { ONE, rational } from '../quantity/rational.js';
import type { GivenFault } from './calculation.js';
import { notAbove } from './compare.js';
import { typeFor } from './read-given.js';
import {
  axleShares,
  type Differential,
  type Drive,
  enginePath,
  greatestTorque,
  torqueAt,
  tyrePath,
  wheelShare,
} from './torque-path.js';

const HALF = rational('1/2');

export type Place = 'all-torque' | 'front-axle' | 'rear-axle' | 'front-wheel' | 'rear-wheel';

export interface Elements {
  readonly engineTorque: Interval;
  readonly drive: Drive;
  readonly frontShare: Interval | null;
  readonly frontAxle: Differential | null;
  readonly rearAxle: Differential | null;
  readonly element: readonly string[];
  readonly place: readonly Place[];
  readonly ratioBefore: readonly Interval[];
  readonly ratioAfter: readonly Interval[] | null;
  readonly rating: readonly string[] | null;
  readonly shockFactor: Interval | null;
  readonly frontLoad: Interval | null;
  readonly rearLoad: Interval | null;
  readonly grip: Interval | null;
  readonly rollingRadius: Interval | null;
}

export interface Link {
  readonly name: string;
  readonly isOneSided: boolean;
  readonly fromEngine: Interval;
  /** Null where too little is told of the tyres. */
  readonly fromTyres: Interval | null;
  /** Null where it is not known. */
  readonly rating: Interval | null;
  /** The engine torque at which it has its rating, were there no tyres; null like the rating. */
  readonly limit: Interval | null;
}

export function linksOf(given: Elements): Link[] {
  return given.element.map((name, index) => {
    const place = given.place[index] ?? 'all-torque';
    const path = {
      ratio: given.ratioBefore[index] ?? point(ONE),
      share: shareOf(place, given),
      shock: given.shockFactor ?? point(ONE),
    };
    const rating = ratingIn(given.rating?.[index] ?? '');
    return {
      name,
      isOneSided: isOneSided(place, given),
      fromEngine: enginePath(given.engineTorque, path),
      fromTyres: fromTyresOf(place, index, given),
      rating: rating === 'unreadable' ? null : rating,
      limit: rating === null || rating === 'unreadable' ? null : greatestTorque(rating, path),
    };
  });
}

function shareOf(place: Place, given: Elements): Interval {
  if (place === 'all-torque') return point(ONE);
  const side = sideOf(place);
  const axle = axleShares(given.drive, given.frontShare)[side];
  if (place.endsWith('axle')) return axle;
  return multiplyIntervals(axle, wheelShare(differentialOf(side, given)));
}

function sideOf(place: Place): 'front' | 'rear' {
  return place.startsWith('front') ? 'front' : 'rear';
}

function differentialOf(side: 'front' | 'rear', { frontAxle, rearAxle }: Elements): Differential {
  return (side === 'front' ? frontAxle : rearAxle) ?? 'open';
}

/** Whether more than its even part of the torque may go this way. */
function isOneSided(place: Place, given: Elements): boolean {
  if (place === 'all-torque') return false;
  const isLockedAxle = differentialOf(sideOf(place), given) === 'locked';
  return given.drive === 'locked' || (place.endsWith('wheel') && isLockedAxle);
}

function fromTyresOf(place: Place, index: number, given: Elements): Interval | null {
  const { grip, rollingRadius: radius } = given;
  const ratio = given.ratioAfter?.[index];
  const load = loadOn(place, given);
  if (grip === null || radius === null || ratio === undefined || load === null) return null;
  return tyrePath({ grip, load, radius, ratio });
}

/** What the driven wheels behind an element carry. */
function loadOn(place: Place, { drive, frontLoad, rearLoad }: Elements): Interval | null {
  if (place === 'all-torque') {
    if (drive === 'front') return frontLoad;
    if (drive === 'rear') return rearLoad;
    return frontLoad === null || rearLoad === null ? null : addIntervals(frontLoad, rearLoad);
  }
  const axle = sideOf(place) === 'front' ? frontLoad : rearLoad;
  return axle === null || place.endsWith('axle') ? axle : scaleInterval(axle, HALF);
}

export function outcomeOf({ fromEngine, fromTyres, rating }: Link): Outcome {
  return rating === null ? 'open' : notAbove(torqueAt(fromEngine, fromTyres), rating);
}

/** What is not known may always be the least; of the rest, what reaches down to the least. */
export function mayBeLeast({ limit }: Link, least: Interval): boolean {
  return limit === null || overlaps(limit, least);
}

export function warningsOf(links: readonly Link[]): string[] {
  const isHeldByTyres = ({ fromEngine, rating, ...link }: Link) =>
    rating !== null &&
    outcomeOf({ ...link, fromEngine, rating }) === 'holds' &&
    notAbove(fromEngine, rating) !== 'holds';
  return [
    ...(links.some(({ rating }) => rating === null) ? ['unrated'] : []),
    ...(links.some(({ fromTyres }) => fromTyres === null) ? ['engine-side-only'] : []),
    ...(links.some(isHeldByTyres) ? ['held-by-tyres'] : []),
    ...(links.some((link) => link.isOneSided) ? ['one-side'] : []),
  ];
}

/** Null where it is not known. */
function ratingIn(text: string): Interval | null | 'unreadable' {
  if (text === '' || /^(unknown|unbekannt)$/i.test(text)) return null;
  const type = typeFor({ type: 'quantity' }, text);
  const read = parseQuantity(text, { type, dimension: 'torque' });
  return isFault(read) || !isWithin(read.interval, POSITIVE) ? 'unreadable' : read.interval;
}

export function faultsOf(given: Elements): GivenFault[] {
  const wrong = (given.rating ?? []).filter((text) => ratingIn(text) === 'unreadable');
  return [
    ...lengthFaults(given),
    ...wrong.map((text) => ({
      input: 'rating',
      text: {
        en: `“${text}” is no torque above 0. Write it as 360 N.m, or “unknown”.`,
        de: `„${text}“ ist kein Drehmoment über 0. Schreiben wie 360 N.m, oder „unbekannt“.`,
      },
    })),
    ...shareFaults(given),
  ];
}

function lengthFaults(given: Elements): GivenFault[] {
  const wanted = given.element.length;
  return (['place', 'ratioBefore', 'ratioAfter', 'rating'] as const).flatMap((input) => {
    const got = given[input]?.length ?? wanted;
    const text = {
      en: `There must be one for each element: ${wanted}, and not ${got}.`,
      de: `Es muss für jedes Bauteil einen Wert geben: ${wanted}, nicht ${got}.`,
    };
    return got === wanted ? [] : [{ input, text }];
  });
}

function shareFaults(given: Elements): GivenFault[] {
  const { drive, frontShare, place } = given;
  const idle = drive === 'front' ? 'rear' : 'front';
  const isIdle = (drive === 'front' || drive === 'rear') && place.some((p) => p.startsWith(idle));
  const shareText = {
    en: 'A planetary centre needs the share of the front axle, above 0 and below 1.',
    de: 'Ein Planeten-Mitteldifferenzial braucht den Anteil der Vorderachse, über 0 und unter 1.',
  };
  const lacksShare = drive === 'planetary' && (frontShare === null || contains(frontShare, ONE));
  return [
    ...(lacksShare ? [{ input: 'frontShare', text: shareText }] : []),
    ...(isIdle
      ? [
          {
            input: 'place',
            text: {
              en: 'An element stands on the way to an axle that is not driven.',
              de: 'Ein Bauteil sitzt auf dem Weg zu einer Achse, die nicht angetrieben wird.',
            },
          },
        ]
      : []),
  ];
}
