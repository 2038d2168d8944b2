/**
 * What figures are called before people, in every language.
 */

import type { Use } from '../check/coupling.js';
import type { FigureCode, Section } from './figure.js';

/** What a name is made of: who it is of, as the layout calls it, and which gear or use. */
export interface NamedFigure {
  readonly of: string;
  readonly gear: number;
  readonly use: Use;
}

type Say = (named: NamedFigure) => string;

export interface FigureWords {
  readonly sections: Readonly<Record<Section, string>>;
  readonly figures: Readonly<Record<FigureCode, Say>>;
}

const ENGLISH_USES: Readonly<Record<Use, string>> = {
  road: 'on the road',
  'off-road': 'on loose ground',
  competition: 'in competition',
};

const GERMAN_USES: Readonly<Record<Use, string>> = {
  road: 'auf der Straße',
  'off-road': 'im Gelände',
  competition: 'im Wettbewerb',
};

const ENGLISH: FigureWords = {
  sections: {
    gearing: 'Gears',
    loops: 'Axles in step',
    loads: 'Loads',
    torque: 'Greatest engine torque',
    shafts: 'Propeller shafts',
    joints: 'Universal joints',
    speedometer: 'Speedometer',
    brakes: 'Brakes',
    wheels: 'Wheels and tyres',
  },
  figures: {
    'gear-ratio': ({ gear }) => `ratio of gear ${gear}`,
    'gear-speed': ({ gear }) => `speed in gear ${gear} at the greatest engine speed`,
    'gear-step': ({ gear }) => `step from gear ${gear} to ${gear + 1}`,
    'cruising-speed': () => 'engine speed at 100 km/h in the highest gear',
    'speed-spread': () => 'spread of the gears',
    'axle-mismatch': ({ of }) => `${of}: first path faster than the second`,
    'load-reserve': ({ of }) => `${of}: rated torque over torque`,
    'mass-reserve': ({ of }) => `${of}: rated load over load`,
    'speed-reserve': ({ of }) => `${of}: rated speed over top speed`,
    'slip-torque': ({ of }) => `${of}: torque at which the tyres slip`,
    'clutch-reserve': () => 'clutch: holding torque over engine torque',
    'greatest-torque': ({ use }) => `before the weakest part ${ENGLISH_USES[use]}`,
    'shaft-speed': ({ of }) => `${of}: speed at the top speed of the vehicle`,
    'shaft-limit': ({ of }) => `${of}: 0.7 of its critical speed`,
    'joint-angle': ({ of }) => `${of}: angle`,
    'joint-irregularity': ({ of }) => `${of}: irregularity`,
    'joint-difference': ({ of }) => `${of}: difference to the joint that evens it out`,
    'speedometer-error': () => 'shows more than true',
    'front-braking-share': () => 'share of the front brakes',
    'pedal-travel': () => 'travel of the brake pedal',
    'wheel-inner-reach': ({ of }) => `${of}: tyre inwards of the hub face`,
    'wheel-outer-reach': ({ of }) => `${of}: tyre outwards of the hub face`,
    'tyre-diameter': ({ of }) => `${of}: diameter of the tyre`,
  },
};

const GERMAN: FigureWords = {
  sections: {
    gearing: 'Gänge',
    loops: 'Gleichlauf der Achsen',
    loads: 'Belastungen',
    torque: 'Größtes Motordrehmoment',
    shafts: 'Gelenkwellen',
    joints: 'Kreuzgelenke',
    speedometer: 'Tachometer',
    brakes: 'Bremsen',
    wheels: 'Räder und Reifen',
  },
  figures: {
    'gear-ratio': ({ gear }) => `Übersetzung im ${gear}. Gang`,
    'gear-speed': ({ gear }) => `Geschwindigkeit im ${gear}. Gang bei größter Motordrehzahl`,
    'gear-step': ({ gear }) => `Stufensprung vom ${gear}. zum ${gear + 1}. Gang`,
    'cruising-speed': () => 'Motordrehzahl bei 100 km/h im höchsten Gang',
    'speed-spread': () => 'Spreizung der Gänge',
    'axle-mismatch': ({ of }) => `${of}: erster Weg schneller als der zweite`,
    'load-reserve': ({ of }) => `${of}: Nennmoment durch Moment`,
    'mass-reserve': ({ of }) => `${of}: Traglast durch Last`,
    'speed-reserve': ({ of }) => `${of}: Nenn- durch Höchstgeschwindigkeit`,
    'slip-torque': ({ of }) => `${of}: Moment, bei dem die Reifen rutschen`,
    'clutch-reserve': () => 'Kupplung: Haltemoment durch Motordrehmoment',
    'greatest-torque': ({ use }) => `bis zum schwächsten Teil ${GERMAN_USES[use]}`,
    'shaft-speed': ({ of }) => `${of}: Drehzahl bei Höchstgeschwindigkeit`,
    'shaft-limit': ({ of }) => `${of}: 0,7 der kritischen Drehzahl`,
    'joint-angle': ({ of }) => `${of}: Beugewinkel`,
    'joint-irregularity': ({ of }) => `${of}: Ungleichförmigkeit`,
    'joint-difference': ({ of }) => `${of}: Unterschied zum ausgleichenden Gelenk`,
    'speedometer-error': () => 'zeigt mehr als wahr',
    'front-braking-share': () => 'Anteil der vorderen Bremsen',
    'pedal-travel': () => 'Weg des Bremspedals',
    'wheel-inner-reach': ({ of }) => `${of}: Reifen nach innen ab Nabenfläche`,
    'wheel-outer-reach': ({ of }) => `${of}: Reifen nach außen ab Nabenfläche`,
    'tyre-diameter': ({ of }) => `${of}: Durchmesser des Reifens`,
  },
};

export const FIGURE_WORDS: Readonly<Record<'en' | 'de', FigureWords>> = {
  en: ENGLISH,
  de: GERMAN,
};
