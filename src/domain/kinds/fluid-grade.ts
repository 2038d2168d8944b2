/**
 * A fluid, and the part or circuit that it fills.
 *
 * Standards: FMVSS 116 (49 CFR 571.116) and ISO 4925 for brake fluids, SAE J306 for the viscosity
 * of gear oils, API GL-4 and GL-5 for their additives. The base comes first: "glycol" (DOT 3, 4
 * and 5.1), "silicone" (DOT 5) and "mineral" are never mixed, whatever else agrees, and "gear-oil"
 * is no other oil. Brake fluids are compared by their boiling points, which must be at least those
 * asked: DOT 3 205 and 140, DOT 4 230 and 155, DOT 5 and 5.1 260 and 180 degrees Celsius.
 *
 * Gear oils are compared by the number of the SAE grade (90 of 75W-90; a thicker oil than asked
 * shifts hard, so only a caution), by the class (4 or 5) and by the friction modifier that a
 * limited-slip differential with plates needs and a synchroniser does not want ("limited-slip" or
 * "none"); an axle with an open differential and no synchronisers bears it, which is said. Class 5
 * meets class 4, but its additives attack brass and bronze: where synchronisers are of these, class
 * 5 fails (common practice) unless the part's maker asks for it, as for a gearbox that shares its
 * oil with a hypoid final drive. Of other synchronisers only those known to bear class 5 take it in
 * place of class 4. A part without synchronisers says "none". A winter grade is compared where both
 * record it. Any other base is compared by specification, by name.
 *
 * Left out: quantity; what is left of the old fluid; seals that were made for another base.
 */

import type { BuiltInKind } from './kind.js';

const BRAKE = ['glycol', 'silicone'];
const GEAR = ['gear-oil'];
const YELLOW_METALS = ['brass', 'bronze'];

function bothOf(bases: readonly string[]) {
  return { all: [{ 'one-of': ['fluid.base', bases] }, { 'one-of': ['part.base', bases] }] };
}

const CLASS_AS_ASKED = { 'at-most': ['fluid.gear-oil-class', 'part.gear-oil-class'] };
const NO_SYNCHRONISER = { 'one-of': ['part.synchroniser', ['none']] };
const UNMODIFIED = [
  ...bothOf(GEAR).all,
  { not: { 'one-of': ['part.friction-modifier', ['limited-slip']] } },
];

const NEITHER_BRAKE_NOR_GEAR = {
  all: [
    { not: { 'one-of': ['fluid.base', [...BRAKE, ...GEAR]] } },
    { not: { 'one-of': ['part.base', [...BRAKE, ...GEAR]] } },
  ],
};

export const fluidGrade: BuiltInKind = {
  id: 'fluid-grade',
  name: { en: 'fluid', de: 'Betriebsflüssigkeit' },
  standard: 'FMVSS 116 and ISO 4925 for brakes; SAE J306 and API GL for gear oils',
  sides: ['fluid', 'part'],
  sideNames: {
    fluid: { en: 'the fluid as its can is marked', de: 'die Flüssigkeit laut Gebinde' },
    part: { en: 'the part that it fills', de: 'das Bauteil, das sie füllt' },
  },
  caution: 'general',
  parameters: {
    base: {
      type: 'code',
      name: { en: 'base of the fluid', de: 'Basis der Flüssigkeit' },
      tool: 'marking',
    },
    'dry-boiling-point': {
      type: 'designation',
      unit: 'degC',
      name: { en: 'dry boiling point', de: 'Trockensiedepunkt' },
      tool: 'marking',
      usual: ['205 degC', '330 degC'],
    },
    'wet-boiling-point': {
      type: 'designation',
      unit: 'degC',
      name: { en: 'wet boiling point', de: 'Nasssiedepunkt' },
      tool: 'marking',
      usual: ['140 degC', '220 degC'],
    },
    'cold-viscosity': {
      type: 'designation',
      unit: 'mm2/s',
      optional: true,
      name: {
        en: 'viscosity at -40 degrees Celsius',
        de: 'Viskosität bei -40 Grad Celsius',
      },
      tool: 'marking',
      usual: ['400 mm2/s', '1800 mm2/s'],
    },
    'sae-grade': {
      type: 'designation',
      name: { en: 'SAE grade when hot', de: 'SAE-Klasse des warmen Öls' },
      tool: 'marking',
      usual: ['65', '250'],
    },
    'winter-grade': {
      type: 'designation',
      optional: true,
      name: { en: 'SAE winter grade', de: 'SAE-Winterklasse' },
      tool: 'marking',
      usual: ['70', '85'],
    },
    'gear-oil-class': {
      type: 'designation',
      name: { en: 'API GL class', de: 'API-GL-Klasse' },
      tool: 'marking',
      usual: ['4', '5'],
    },
    synchroniser: {
      type: 'code',
      of: 'part',
      name: { en: 'material of the synchronisers', de: 'Werkstoff der Synchronringe' },
      tool: 'visual-check',
    },
    'friction-modifier': {
      type: 'code',
      name: { en: 'friction modifier', de: 'Reibwertzusatz' },
      tool: 'marking',
    },
    specification: {
      type: 'code',
      name: { en: 'specification', de: 'Spezifikation' },
      tool: 'marking',
    },
  },
  checks: [
    {
      equal: 'base',
      code: 'never-mixed',
      text: {
        en: 'Fluids of different bases are never mixed: seals swell, brakes and clutches fail.',
        de: 'Verschiedene Basen nie mischen: Dichtungen quellen, Bremse und Kupplung versagen.',
      },
    },
    {
      id: 'dry-boiling-point',
      'at-least': ['fluid.dry-boiling-point', 'part.dry-boiling-point'],
      when: bothOf(BRAKE),
      code: 'boils-too-early',
      text: {
        en: 'The dry boiling point must be at least the one asked for.',
        de: 'Der Trockensiedepunkt muss mindestens der verlangte sein.',
      },
    },
    {
      id: 'wet-boiling-point',
      'at-least': ['fluid.wet-boiling-point', 'part.wet-boiling-point'],
      when: bothOf(BRAKE),
      code: 'boils-too-early-when-wet',
      text: {
        en: 'The wet boiling point must be at least the one asked for.',
        de: 'Der Nasssiedepunkt muss mindestens der verlangte sein.',
      },
    },
    {
      id: 'cold-viscosity',
      'at-most': ['fluid.cold-viscosity', 'part.cold-viscosity'],
      when: bothOf(BRAKE),
      code: 'too-thick-in-the-cold',
      text: {
        en: 'Stability control needs a fluid that is thin enough in the cold.',
        de: 'Die Fahrdynamikregelung braucht eine Flüssigkeit, die kalt dünn genug ist.',
      },
    },
    {
      id: 'sae-grade',
      'at-least': ['fluid.sae-grade', 'part.sae-grade'],
      when: bothOf(GEAR),
      code: 'too-thin',
      text: {
        en: 'The oil must be at least as thick when hot as the one asked for.',
        de: 'Das Öl muss warm mindestens so dick sein wie das verlangte.',
      },
    },
    {
      id: 'thicker',
      'at-most': ['fluid.sae-grade', 'part.sae-grade'],
      when: bothOf(GEAR),
      severity: 'caution',
      code: 'thicker-than-asked',
      text: {
        en: 'A thicker oil than asked for shifts hard in the cold and costs fuel.',
        de: 'Mit dickerem Öl als verlangt schaltet es sich kalt schwer; es kostet Kraftstoff.',
      },
    },
    {
      id: 'winter-grade',
      'at-most': ['fluid.winter-grade', 'part.winter-grade'],
      when: bothOf(GEAR),
      code: 'too-thick-in-winter',
      text: {
        en: 'The winter grade may not be higher than the one asked for.',
        de: 'Die Winterklasse darf nicht höher sein als die verlangte.',
      },
    },
    {
      id: 'gear-oil-class',
      'at-least': ['fluid.gear-oil-class', 'part.gear-oil-class'],
      when: bothOf(GEAR),
      code: 'too-little-additive',
      text: {
        en: 'Hypoid gears that ask for GL-5 scuff in an oil of GL-4.',
        de: 'Hypoidräder, die GL-5 verlangen, fressen in einem Öl GL-4.',
      },
    },
    {
      id: 'synchroniser',
      'at-most': ['fluid.gear-oil-class', { max: ['part.gear-oil-class', '4'] }],
      when: { all: [...bothOf(GEAR).all, { 'one-of': ['part.synchroniser', YELLOW_METALS] }] },
      code: 'attacks-synchronisers',
      text: {
        en: 'GL-5 that is not asked for attacks synchronisers of brass or bronze: they grate.',
        de: 'Nicht verlangtes GL-5 greift Synchronringe aus Messing oder Bronze an: Sie kratzen.',
      },
    },
    {
      id: 'known-synchroniser',
      'one-of': ['part.synchroniser', ['none', ...YELLOW_METALS, 'molybdenum', 'carbon']],
      when: { all: [...bothOf(GEAR).all, { not: CLASS_AS_ASKED }] },
      code: 'unheard-of-synchroniser',
      text: {
        en: 'Whether this synchroniser bears more additive than asked, its maker must say.',
        de: 'Ob diese Synchronisierung mehr Zusatz erträgt als verlangt, sagt ihr Hersteller.',
      },
    },
    {
      id: 'friction-modifier',
      'one-of': ['fluid.friction-modifier', ['limited-slip']],
      when: {
        all: [...bothOf(GEAR).all, { 'one-of': ['part.friction-modifier', ['limited-slip']] }],
      },
      code: 'plates-judder',
      text: {
        en: 'A limited-slip differential with plates judders without its friction modifier.',
        de: 'Ein Lamellensperrdifferenzial rattert ohne seinen Reibwertzusatz.',
      },
    },
    {
      id: 'no-friction-modifier',
      equal: 'friction-modifier',
      when: { all: [...UNMODIFIED, { not: NO_SYNCHRONISER }] },
      code: 'synchronisers-slip',
      text: {
        en: 'A friction modifier that is not asked for makes synchronisers slip and grate.',
        de: 'Ein Reibwertzusatz, der nicht verlangt ist, lässt Synchronringe rutschen und kratzen.',
      },
    },
    {
      id: 'spare-friction-modifier',
      equal: 'friction-modifier',
      when: { all: [...UNMODIFIED, NO_SYNCHRONISER] },
      severity: 'caution',
      code: 'friction-modifier-to-spare',
      text: {
        en: 'An open differential does without this friction modifier, and bears it.',
        de: 'Ein offenes Differenzial braucht diesen Reibwertzusatz nicht und erträgt ihn.',
      },
    },
    {
      equal: 'specification',
      when: NEITHER_BRAKE_NOR_GEAR,
      text: {
        en: 'Only its specification tells such a fluid: it must be the one asked for.',
        de: 'Diese Flüssigkeit kennzeichnet nur ihre Spezifikation: Es muss die verlangte sein.',
      },
    },
  ],
  notChecked: [
    { en: 'quantity, age and water', de: 'Menge, Alter und Wassergehalt' },
    { en: 'what is left of the old fluid', de: 'Reste der alten Flüssigkeit' },
    {
      en: 'seals and hoses made for another base',
      de: 'Dichtungen und Schläuche für eine andere Basis',
    },
    { en: "the maker's own approval", de: 'Freigabe des Herstellers im Einzelnen' },
  ],
};
