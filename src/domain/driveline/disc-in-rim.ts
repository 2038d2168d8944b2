/**
 * Whether a brake goes into a wheel: around the caliper and beside the spokes.
 *
 * The diameter of a rim says nothing alone: what counts is its inside where the caliper stands, and
 * the spokes. 3 mm are kept free all round, which is common practice.
 *
 * Left out: balance weights, stones, what gives way in a bend, lines and bleed screws.
 */

import { type Interval, point, scaleInterval, subtractIntervals } from '../quantity/interval.js';
import { rational, ZERO } from '../quantity/rational.js';
import { calculation, type GivenFault } from './calculation.js';
import { isBelow, notAbove } from './compare.js';

/** Free between brake and wheel in practice, in mm. */
export const BRAKE_GAP = rational(3);

const NONE = point(ZERO);

/** From what stands inside to what is around it, in mm: none or less is an overlap. */
export function gapTo(outside: Interval, inside: Interval): Interval {
  return subtractIntervals(outside, inside);
}

const LENGTH = {
  type: 'quantity',
  dimension: 'length',
  least: '0 mm',
  greatest: '2000 mm',
} as const;
const REACH = { ...LENGTH, optional: true, least: '-500 mm', greatest: '500 mm' } as const;

export const discInRim = calculation({
  name: 'disc-in-rim',
  title: { en: 'Brake in the wheel', de: 'Bremse im Rad' },
  about: {
    en: 'Does the wheel clear caliper and disc, around them and beside its spokes?',
    de: 'Geht das Rad über Sattel und Scheibe, ringsum und neben den Speichen?',
  },
  inputs: {
    caliperRadius: {
      ...LENGTH,
      usual: ['100 mm', '230 mm'],
      name: {
        en: 'from the wheel axis to the outermost of the caliper',
        de: 'von der Radachse bis zum Äußersten des Sattels',
      },
    },
    rimInnerRadius: {
      ...LENGTH,
      usual: ['130 mm', '260 mm'],
      name: {
        en: 'inner radius of the rim where the caliper stands',
        de: 'Innenhalbmesser der Felge, wo der Sattel steht',
      },
    },
    discDiameter: {
      ...LENGTH,
      optional: true,
      usual: ['200 mm', '420 mm'],
      name: { en: 'outside diameter of the disc', de: 'Außendurchmesser der Scheibe' },
    },
    spokeFace: {
      ...REACH,
      name: {
        en: 'from the hub face outwards to the inside of the spokes',
        de: 'von der Nabenfläche nach außen bis zur Innenseite der Speichen',
      },
    },
    caliperFace: {
      ...REACH,
      name: {
        en: 'from the hub face outwards to the outside of the caliper',
        de: 'von der Nabenfläche nach außen bis zur Außenseite des Sattels',
      },
    },
    gapNeeded: {
      ...LENGTH,
      optional: true,
      name: { en: 'gap that is wanted, else 3 mm', de: 'verlangter Spalt, sonst 3 mm' },
    },
  },
  outputs: {
    radialGap: {
      type: 'quantity',
      dimension: 'length',
      name: { en: 'gap around the caliper', de: 'Spalt um den Sattel' },
    },
    clearsRim: {
      type: 'outcome',
      name: { en: 'The rim clears the caliper.', de: 'Die Felge geht frei über den Sattel.' },
    },
    spokeGap: {
      type: 'quantity',
      dimension: 'length',
      needs: ['spokeFace', 'caliperFace'],
      name: { en: 'gap to the spokes', de: 'Spalt zu den Speichen' },
    },
    clearsSpokes: {
      type: 'outcome',
      needs: ['spokeFace', 'caliperFace'],
      name: {
        en: 'The spokes clear the caliper.',
        de: 'Die Speichen gehen frei am Sattel vorbei.',
      },
    },
  },
  formulas: [
    'radialGap = rimInnerRadius − caliperRadius',
    'spokeGap = spokeFace − caliperFace',
    'clearsRim: radialGap ≥ gapNeeded,   clearsSpokes: spokeGap ≥ gapNeeded',
  ],
  assumptions: [
    {
      en: 'The rim is round inside where the caliper stands, and both run true.',
      de: 'Die Felge ist innen rund, wo der Sattel steht, und beide laufen rund.',
    },
  ],
  validity: [
    {
      en: 'Adhesive balance weights inside the rim take from the gap: turn the wheel by hand.',
      de: 'Klebegewichte innen in der Felge nehmen vom Spalt: das Rad von Hand durchdrehen.',
    },
    {
      en: 'The gap of 3 mm is common practice, no standard; try a template where it is close.',
      de: 'Der Spalt von 3 mm ist übliche Praxis, keine Norm; wo es eng ist, Schablone anhalten.',
    },
  ],
  sources: [{ title: 'gap of 3 mm between brake and wheel', basis: 'common-practice' }],
  warnings: {
    touches: {
      en: 'The brake touches, or may touch, the wheel.',
      de: 'Die Bremse berührt das Rad oder kann es.',
    },
    'spokes-unknown': {
      en: 'Nothing is told of the spokes: the rim alone does not prove that the wheel goes on.',
      de: 'Von den Speichen ist nichts angegeben: Die Felge allein beweist nichts.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'caliper-in-rim',
      summary: 'A disc of 300 mm with its caliper, measured to the spokes as well',
      given: {
        discDiameter: '300 mm',
        caliperRadius: '172 mm',
        rimInnerRadius: '178 mm',
        spokeFace: '48 ±1 mm',
        caliperFace: '44 ±0.5 mm',
        gapNeeded: '3 mm',
      },
    },
    {
      name: 'rim-alone',
      summary: 'Nothing known of the spokes',
      given: { caliperRadius: '172 ±1 mm', rimInnerRadius: '176 ±1 mm' },
    },
  ],
  calculate: ({ caliperRadius, rimInnerRadius, discDiameter, spokeFace, caliperFace, ...rest }) => {
    const faults = discDiameter === null ? [] : caliperFaults(caliperRadius, discDiameter);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const needed = rest.gapNeeded ?? point(BRAKE_GAP);
    const radialGap = gapTo(rimInnerRadius, caliperRadius);
    const spokeGap = spokeFace && caliperFace ? gapTo(spokeFace, caliperFace) : undefined;
    const gaps = [radialGap, ...(spokeGap === undefined ? [] : [spokeGap])];
    const touches = gaps.some((gap) => isBelow(NONE, gap) !== 'holds');
    return {
      found: {
        radialGap,
        clearsRim: notAbove(needed, radialGap),
        spokeGap,
        clearsSpokes: spokeGap && notAbove(needed, spokeGap),
      },
      warnings: [
        ...(touches ? ['touches'] : []),
        ...(spokeGap === undefined ? ['spokes-unknown'] : []),
      ],
    };
  },
});

/** A caliper reaches over the edge of its disc. */
function caliperFaults(caliperRadius: Interval, discDiameter: Interval): GivenFault[] {
  const edge = scaleInterval(discDiameter, rational('0.5'));
  if (isBelow(edge, caliperRadius) !== 'fails') return [];
  const text = {
    en: 'The caliper reaches over the disc: its radius is more than half of the disc.',
    de: 'Der Sattel greift über die Scheibe: Sein Maß ist mehr als ihr halber Durchmesser.',
  };
  return [{ input: 'caliperRadius', text }];
}
