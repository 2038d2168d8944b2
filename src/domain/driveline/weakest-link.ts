/**
 * The weakest link of a driveline: what reaches each element, whether its rating bears that, and
 * which engine torque the whole takes. The formulas are in `torque-path.ts`.
 *
 * A rating is what the maker of the element says that it bears at that place. Without one nothing
 * is known of the element: it never holds, and it may be the weakest.
 *
 * Left out: losses, fatigue and heat, the inertia of what turns, load that moves between axles.
 *
 * Length: nearly all of it says in two languages what is taken and given.
 */

import { allOf, type Outcome } from '../check/state.js';
import { calculation } from './calculation.js';
import { faultsOf, linksOf, mayBeLeast, outcomeOf, warningsOf } from './link.js';
import { leastOf, torqueAt } from './torque-path.js';

const MOST = 12;

const DIFFERENTIALS = {
  open: { en: 'open: half to each wheel', de: 'offen: die Hälfte an jedes Rad' },
  locked: { en: 'locked: up to all to one wheel', de: 'gesperrt: bis zu alles an ein Rad' },
} as const;

const AXLE_LOAD = { type: 'quantity', dimension: 'mass', optional: true, above: '0 kg' } as const;

export const weakestLink = calculation({
  name: 'weakest-link',
  title: { en: 'Weakest link of a driveline', de: 'Schwächstes Glied im Antriebsstrang' },
  about: {
    en: 'Which torque reaches each element, and which of them gives way first?',
    de: 'Welches Drehmoment erreicht jedes Bauteil, und welches gibt zuerst nach?',
  },
  inputs: {
    engineTorque: {
      type: 'quantity',
      dimension: 'torque',
      above: '0 N.m',
      usual: ['50 N.m', '800 N.m'],
      name: { en: 'greatest torque of the engine', de: 'größtes Motordrehmoment' },
    },
    drive: {
      type: 'code',
      name: { en: 'driven wheels, and the centre', de: 'angetriebene Räder und Mitte' },
      codes: {
        front: { en: 'front wheels', de: 'Vorderräder' },
        rear: { en: 'rear wheels', de: 'Hinterräder' },
        open: {
          en: 'all, open centre differential with equal halves',
          de: 'alle, offenes Mitteldifferenzial mit gleichen Hälften',
        },
        planetary: {
          en: 'all, planetary centre differential',
          de: 'alle, Planeten-Mitteldifferenzial',
        },
        locked: {
          en: 'all, centre locked or with a clutch that can lock',
          de: 'alle, Mitte gesperrt oder mit einer Kupplung, die sperren kann',
        },
      },
    },
    frontShare: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      greatest: '1',
      usual: ['0.2', '0.6'],
      name: {
        en: 'share of the front axle, with a planetary centre',
        de: 'Anteil der Vorderachse, bei Planeten-Mitteldifferenzial',
      },
    },
    frontAxle: {
      type: 'code',
      optional: true,
      name: { en: 'front differential, else open', de: 'vorderes Differenzial, sonst offen' },
      codes: DIFFERENTIALS,
    },
    rearAxle: {
      type: 'code',
      optional: true,
      name: { en: 'rear differential, else open', de: 'hinteres Differenzial, sonst offen' },
      codes: DIFFERENTIALS,
    },
    element: {
      type: 'text',
      most: MOST,
      form: 'gearbox',
      name: { en: 'elements, from the engine on', de: 'Bauteile, vom Motor an' },
    },
    place: {
      type: 'code',
      most: MOST,
      name: { en: 'where each of them stands', de: 'wo jedes davon sitzt' },
      codes: {
        'all-torque': { en: 'before any split', de: 'vor jeder Verteilung' },
        'front-axle': { en: 'on the way to the front axle', de: 'auf dem Weg zur Vorderachse' },
        'rear-axle': { en: 'on the way to the rear axle', de: 'auf dem Weg zur Hinterachse' },
        'front-wheel': { en: 'at one front wheel', de: 'an einem Vorderrad' },
        'rear-wheel': { en: 'at one rear wheel', de: 'an einem Hinterrad' },
      },
    },
    ratioBefore: {
      type: 'ratio',
      most: MOST,
      usual: ['1/4', '80'],
      name: {
        en: 'overall ratio from the engine to each of them',
        de: 'Gesamtübersetzung vom Motor bis zu jedem davon',
      },
    },
    ratioAfter: {
      type: 'ratio',
      optional: true,
      most: MOST,
      usual: ['1/4', '80'],
      name: {
        en: 'overall ratio from each of them to the wheels',
        de: 'Gesamtübersetzung von jedem davon bis zu den Rädern',
      },
    },
    rating: {
      type: 'text',
      optional: true,
      most: MOST,
      form: '360 N.m',
      name: {
        en: 'torque that each of them bears, or “unknown”',
        de: 'Drehmoment, das jedes davon trägt, oder „unbekannt“',
      },
    },
    shockFactor: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      least: '1',
      usual: ['1', '2'],
      name: {
        en: 'shock factor, 1.5 to 2 where the clutch is dropped, else 1',
        de: 'Stoßfaktor, 1,5 bis 2 bei springender Kupplung, sonst 1',
      },
    },
    frontLoad: {
      ...AXLE_LOAD,
      usual: ['250 kg', '1600 kg'],
      name: { en: 'load on the front axle', de: 'Last auf der Vorderachse' },
    },
    rearLoad: {
      ...AXLE_LOAD,
      usual: ['250 kg', '1600 kg'],
      name: { en: 'load on the rear axle', de: 'Last auf der Hinterachse' },
    },
    grip: {
      type: 'quantity',
      dimension: '1',
      optional: true,
      above: '0',
      usual: ['0.6', '0.9'],
      name: { en: 'grip of the tyres', de: 'Reibwert der Reifen' },
    },
    rollingRadius: {
      type: 'quantity',
      dimension: 'length',
      optional: true,
      above: '0 mm',
      usual: ['220 mm', '420 mm'],
      name: { en: 'rolling radius of the tyres', de: 'Rollradius der Reifen' },
    },
  },
  outputs: {
    fromEngine: {
      type: 'quantity',
      dimension: 'torque',
      list: true,
      name: { en: 'torque from the engine', de: 'Drehmoment vom Motor her' },
    },
    fromTyres: {
      type: 'quantity',
      dimension: 'torque',
      list: true,
      needs: ['ratioAfter', 'frontLoad', 'rearLoad', 'grip', 'rollingRadius'],
      name: { en: 'torque at which the tyres slip', de: 'Drehmoment, bei dem Reifen rutschen' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      list: true,
      name: { en: 'torque that reaches each element', de: 'Drehmoment, das jedes erreicht' },
    },
    holding: {
      type: 'text',
      list: true,
      needs: ['rating'],
      name: { en: 'elements that hold', de: 'Bauteile, die halten' },
    },
    undecided: {
      type: 'text',
      list: true,
      needs: ['rating'],
      name: { en: 'elements that are left open', de: 'Bauteile, bei denen es offen bleibt' },
    },
    overloaded: {
      type: 'text',
      list: true,
      needs: ['rating'],
      name: { en: 'elements that are overloaded', de: 'Bauteile, die überlastet sind' },
    },
    holds: {
      type: 'outcome',
      name: {
        en: 'Every element bears what reaches it.',
        de: 'Jedes Bauteil trägt, was es erreicht.',
      },
    },
    weakest: {
      type: 'text',
      list: true,
      needs: ['rating'],
      name: {
        en: 'weakest, or which may be it, if no tyre slips',
        de: 'schwächstes, oder welche es sein können, wenn kein Reifen rutscht',
      },
    },
    greatestTorque: {
      type: 'quantity',
      dimension: 'torque',
      needs: ['rating'],
      name: {
        en: 'greatest engine torque that they all bear, even if no tyre slips',
        de: 'größtes Motordrehmoment, das alle tragen, auch wenn kein Reifen rutscht',
      },
    },
  },
  formulas: [
    'fromEngine = engineTorque · ratioBefore · share · shockFactor',
    'fromTyres = grip · load · 9.80665 · rollingRadius / ratioAfter   (m/s²)',
    'torque = the smaller of fromEngine and fromTyres',
    'share = 1/2 past an open differential, frontShare or 1 − frontShare past a planetary one,' +
      ' 1 past a locked one',
    'greatestTorque = the least of rating / (ratioBefore · share · shockFactor)',
  ],
  assumptions: [
    {
      en: 'No losses, so that each element gets a little less than is said here.',
      de: 'Keine Verluste: Jedes Bauteil bekommt etwas weniger, als hier steht.',
    },
    {
      en: 'Each wheel carries half of the load of its axle.',
      de: 'Jedes Rad trägt die Hälfte seiner Achslast.',
    },
    {
      en: 'What is locked can send all of the torque one way.',
      de: 'Was gesperrt ist, kann das ganze Drehmoment auf einen Weg schicken.',
    },
  ],
  validity: [
    {
      en: 'Take first gear, and reverse where it is shorter: it sizes all that comes after it.',
      de: 'Im ersten Gang rechnen, oder im Rückwärtsgang, wenn er kürzer ist.',
    },
    {
      en: 'Take each axle load as it is when most of the weight is on it.',
      de: 'Jede Achslast so nehmen, wie sie bei größter Belastung der Achse ist.',
    },
    {
      en: 'A rating counts for its own place: of a gearbox it is mostly the torque at the input.',
      de: 'Eine Angabe gilt nur für ihren Ort: Beim Getriebe meist das Drehmoment am Eingang.',
    },
    {
      en: 'Says nothing of fatigue and heat; in a sudden blow tyres may slip too late to help.',
      de: 'Sagt nichts über Ermüdung und Wärme; bei einem Schlag rutschen Reifen oft zu spät.',
    },
  ],
  sources: [
    { title: 'statics of gears, differentials and wheels', basis: 'arithmetic' },
    {
      title: 'shock of 1.5 to 2 where a clutch is dropped, grip of 0.6 to 0.9 on a dry road',
      basis: 'common-practice',
    },
  ],
  warnings: {
    unrated: {
      en: 'An element without a rating may be the weakest: ask its maker.',
      de: 'Ein Bauteil ohne Angabe kann das schwächste sein: beim Hersteller fragen.',
    },
    'engine-side-only': {
      en: 'Too little is told of the tyres, so only the engine is looked at.',
      de: 'Über die Reifen ist zu wenig gesagt, also zählt allein der Motor.',
    },
    'held-by-tyres': {
      en: 'An element holds only because tyres slip first: more grip or load may break it.',
      de: 'Ein Bauteil hält nur, weil Reifen eher rutschen: Mehr Haftung kann es brechen.',
    },
    'one-side': {
      en: 'Past a locked differential one side may have to bear all of the torque.',
      de: 'Hinter einer Sperre muss vielleicht eine Seite das ganze Drehmoment tragen.',
    },
  },
  caution: 'driveline',
  examples: [
    {
      name: 'all-wheels-first-gear',
      summary: 'An open centre in first gear, one shaft too weak and one not known',
      given: {
        engineTorque: '320 N.m',
        drive: 'open',
        frontAxle: 'open',
        rearAxle: 'open',
        element: ['gearbox input', 'propeller shaft', 'front half-shaft', 'rear half-shaft'],
        place: ['all-torque', 'rear-axle', 'front-wheel', 'rear-wheel'],
        ratioBefore: ['1', '480/121', '1720/121', '1720/121'],
        ratioAfter: ['1720/121', '43/12', '1', '1'],
        rating: ['360 N.m', '500 N.m', '1150 N.m', 'unknown'],
        frontLoad: '700 kg',
        rearLoad: '700 kg',
        grip: '0.9',
        rollingRadius: '298.5 mm',
      },
    },
    {
      name: 'planetary-dropped-clutch',
      summary: 'A planetary centre with 40 % to the front and a dropped clutch',
      given: {
        engineTorque: '320 N.m',
        drive: 'planetary',
        frontShare: '40 %',
        element: ['gearbox output', 'front half-shaft'],
        place: ['all-torque', 'front-wheel'],
        ratioBefore: ['40/11', '1720/121'],
        shockFactor: '1.5 to 2',
      },
    },
  ],
  calculate: (given) => {
    const faults = faultsOf(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const links = linksOf(given);
    const tyres = links.flatMap(({ fromTyres }) => (fromTyres === null ? [] : [fromTyres]));
    const named = (outcome: Outcome) =>
      links.flatMap((link) => (outcomeOf(link) === outcome ? [link.name] : []));
    const found = {
      fromEngine: links.map(({ fromEngine }) => fromEngine),
      fromTyres: tyres.length === links.length ? tyres : undefined,
      torque: links.map(({ fromEngine, fromTyres }) => torqueAt(fromEngine, fromTyres)),
      holds: allOf(links.map(outcomeOf)),
    };
    const warnings = warningsOf(links);
    if (given.rating === null) return { found, warnings };
    const least = leastOf(links.map(({ limit }) => limit));
    return {
      found: {
        ...found,
        holding: named('holds'),
        undecided: named('open'),
        overloaded: named('fails'),
        weakest: links.flatMap((link) => (mayBeLeast(link, least) ? [link.name] : [])),
        greatestTorque: least,
      },
      warnings,
    };
  },
});
