/**
 * The torque of a drum brake from its wheel cylinder and its brake factor.
 *
 * The brake factor C* is the drag of all shoes at the drum over the force that spreads one shoe; it
 * holds friction and self-energising, and so it is an input: about 2 for a leading and a trailing
 * shoe, 3 for two leading ones, 5 for two that push one another (from memory).
 *
 * Left out: the geometry of the shoes, fade, the parking brake's lever.
 */

import { type Interval, multiplyIntervals, point, scaleInterval } from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';
import { hydraulics, PEDAL_INPUTS, PEDAL_NEEDS, pedalFaults, pistonArea } from './brake-torque.js';
import { calculation } from './calculation.js';
import { notAbove } from './compare.js';

/** Of shoes that are spread with `force` in N in a drum of so many mm, in N.m. */
export function drumTorque(force: Interval, factor: Interval, diameter: Interval): Interval {
  const drag = multiplyIntervals(force, factor);
  return scaleInterval(multiplyIntervals(drag, diameter), rational('1/2000'));
}

/** From here on a small change of friction changes the factor much. */
const TOUCHY_FACTOR = point(rational(4));

export const drumBrakeTorque = calculation({
  name: 'drum-brake-torque',
  title: { en: 'Torque of a drum brake', de: 'Bremsmoment einer Trommelbremse' },
  about: {
    en: 'With which torque does this drum brake at that pedal force or line pressure?',
    de: 'Mit welchem Moment bremst diese Trommel bei dieser Fußkraft oder diesem Druck?',
  },
  inputs: {
    ...PEDAL_INPUTS,
    wheelCylinder: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      greatest: '200 mm',
      usual: ['14 mm', '32 mm'],
      name: { en: 'bore of the wheel cylinder', de: 'Durchmesser des Radbremszylinders' },
    },
    brakeFactor: {
      type: 'quantity',
      above: '0',
      greatest: '50',
      usual: ['1.5', '6'],
      name: { en: 'brake factor C*', de: 'Bremsenkennwert C*' },
    },
    drumDiameter: {
      type: 'quantity',
      dimension: 'length',
      above: '0 mm',
      greatest: '1000 mm',
      usual: ['150 mm', '420 mm'],
      name: { en: 'inside diameter of the drum', de: 'Innendurchmesser der Trommel' },
    },
  },
  outputs: {
    linePressure: {
      type: 'quantity',
      dimension: 'pressure',
      needs: PEDAL_NEEDS,
      name: { en: 'line pressure', de: 'Leitungsdruck' },
    },
    cylinderArea: {
      type: 'quantity',
      dimension: 'length^2',
      name: { en: 'area of the wheel cylinder', de: 'Fläche des Radbremszylinders' },
    },
    force: {
      type: 'quantity',
      dimension: 'force',
      needs: PEDAL_NEEDS,
      name: { en: 'force that spreads each shoe', de: 'Spreizkraft an jeder Backe' },
    },
    torque: {
      type: 'quantity',
      dimension: 'torque',
      needs: PEDAL_NEEDS,
      name: { en: 'torque of one brake', de: 'Moment einer Bremse' },
    },
  },
  formulas: [
    'linePressure = pedalForce · pedalRatio · boost / (π/4 · masterBore²)',
    'cylinderArea = π/4 · wheelCylinder²',
    'force = linePressure · cylinderArea',
    'torque = brakeFactor · force · drumDiameter / 2',
  ],
  assumptions: [
    {
      en: 'The brake factor is that of these shoes and linings in this direction of rotation.',
      de: 'Der Bremsenkennwert gilt für diese Backen und Beläge in dieser Drehrichtung.',
    },
    {
      en: 'The pressure reaches the cylinder whole, without valve or return spring.',
      de: 'Der Druck kommt ganz am Zylinder an, ohne Ventil und ohne Rückholfeder.',
    },
  ],
  validity: [
    {
      en: 'Not for hot or wet drums, nor for linings that do not lie against the whole drum.',
      de: 'Nicht für heiße oder nasse Trommeln und nicht für Beläge, die nicht ganz anliegen.',
    },
  ],
  sources: [
    { title: 'drum brakes by the brake factor, T = C* F r', basis: 'from-memory' },
    { title: 'brake factors of about 2, 3 and 5 by the layout of the shoes', basis: 'from-memory' },
  ],
  warnings: {
    'factor-is-touchy': {
      en: 'Above a brake factor of 4 a little more friction brakes much more, and may bind.',
      de: 'Über einem Kennwert von 4 bremst wenig mehr Reibung viel mehr und kann blockieren.',
    },
  },
  caution: 'brakes',
  examples: [
    {
      name: 'by-pedal',
      summary: 'From the pedal to a drum with a leading and a trailing shoe',
      given: {
        pedalForce: '300 N',
        pedalRatio: '4.2',
        boost: '4',
        masterBore: '23.81 mm',
        wheelCylinder: '19.05 mm',
        brakeFactor: '1.8 to 2.2',
        drumDiameter: '203 mm',
      },
    },
    {
      name: 'by-pressure',
      summary: 'At 6 MPa with two shoes that push one another',
      given: {
        pressure: '6 MPa',
        wheelCylinder: '22.2 mm',
        brakeFactor: '5',
        drumDiameter: '254 mm',
      },
    },
  ],
  calculate: (given) => {
    const faults = pedalFaults(given);
    if (faults.length > 0) return { found: {}, warnings: [], faults };
    const { wheelCylinder, brakeFactor, drumDiameter } = given;
    const { pressure, force } = hydraulics(given, [wheelCylinder]);
    const isTouchy = notAbove(brakeFactor, TOUCHY_FACTOR) !== 'holds';
    return {
      found: {
        linePressure: pressure,
        cylinderArea: pistonArea([wheelCylinder]),
        force,
        torque: force && drumTorque(force, brakeFactor, drumDiameter),
      },
      warnings: isTouchy ? ['factor-is-touchy'] : [],
    };
  },
});
