/**
 * Documents that are taken, but with a word of doubt.
 * Each is the sample with what is named here changed; what is said of it stands in
 * `doubtful-documents.txt`.
 *
 * Length: one table, of which each row stands on its own.
 */

import { type Changes, GONE, LAYOUT } from './sample-document.js';

export const DOUBTFUL_DOCUMENTS: Readonly<Record<string, Changes>> = {
  // Values.
  'values outside what is usual': {
    '/parts/0/interfaces/input/teeth': 9,
    '/parts/0/values/length/is': '59.8 mm',
    '/parts/1/interfaces/linkage/pin': { choose: { of: ['8 mm', '80 mm'] } },
  },
  'values that reach into what is usual': {
    '/parts/0/values/length/is': '299.5 mm',
    '/parts/1/values/length': '900.4 ±0.5 mm',
  },
  'codes that differ in letter case, spaces or dashes alone': {
    '/parts/1/interfaces/linkage/pattern': 'Two Rods',
    '/parts/0/interfaces/linkage/pattern': 'two-rods',
  },
  'a coupling without limits': { '/parts/0/values/coupling': 'opne' },
  'a code that there is none, which the checks of the kind ask for, is no doubt': {
    '/kinds/0/checks/2/when': { not: { 'one-of': ['box.pattern', ['none']] } },
    '/parts/0/interfaces/linkage/pattern': 'none',
  },
  // Texts.
  'texts that lack a language that most have, and one that is no word': {
    '/facts/0/name': { de: 'Schild an der Hinterachse' },
    '/facts/0/values/0/name': { de: '3.90' },
    '/layouts/0/termNames': { front: { de: 'Weg nach vorn' }, rear: 'way to the rear' },
    '/layouts/0/checks/4': {
      id: 'said',
      equal: ['gearbox.part', 'gearbox.part'],
      text: { de: 'Immer wahr.' },
    },
  },
  // Offers.
  'one code of two things, and of one thing twice': {
    '/offers': [
      { id: 'o-1', for: 'gb5-a', price: '1.00', sku: 'A-1' },
      { id: 'o-2', for: 'gb5-a', price: '2.00', sku: 'A-1' },
      { id: 'o-3', for: 'gb6-late', price: '3.00', sku: 'A-1' },
      { id: 'o-4', for: 'gb6-late', price: '3.00' },
      { id: 'o-5', for: 'gb5-a', price: '3.00' },
    ],
  },
  // Checks.
  'equal measures': {
    '/kinds/0/checks/3': { equal: ['box.pin', 'lever.bore'] },
    '/kinds/1/checks/2': { equal: 'register' },
    '/layouts/0/checks/4': { equal: ['gearbox.length', 'prop-shaft.length'] },
  },
  'codes that nothing has': {
    '/layouts/0/checks/4': { id: 'a', 'one-of': ['gearbox.part', ['gb6-lat', 'gb5-a']] },
    '/layouts/0/checks/5': { id: 'b', 'one-of': ['gearbox.role', ['gearbx']] },
    '/layouts/0/checks/6': { id: 'c', 'one-of': ['fact.axle-tag', ['lang']] },
  },
  'a code that nothing has, in a rule of no layout in particular': {
    '/layouts/1': { ...LAYOUT, id: 'copy' },
    '/rules/0/when/all/1/one-of/1/0': 'gb7',
    '/rules/0/layouts': GONE,
  },
  // Layouts.
  'a face that meets nothing': {
    '/parts/1/interfaces/rear/optional': true,
    '/layouts/0/matings': [
      { id: 'engine-gearbox', between: ['engine.output', 'gearbox.input'], adapters: 0 },
      { id: 'gearbox-linkage', between: ['gearbox.linkage', 'linkage.box'], adapters: 0 },
      { id: 'gearbox-prop', between: ['gearbox.rear', 'prop-shaft.front'] },
      { id: 'prop-final', between: ['prop-shaft.rear', 'final-drive.input'] },
      { id: 'left-shaft', between: ['final-drive.left', 'half-shaft.inner'], shared: true },
    ],
  },
  'faces of two kinds, without room for an adapter': {
    '/parts/4/interfaces/front/kind': 'spline',
    '/parts/4/interfaces/front/side': 'hub',
    '/parts/4/interfaces/front/teeth': 24,
    '/parts/4/interfaces/front/holes': GONE,
    '/parts/4/interfaces/front/pcd': GONE,
    '/parts/4/interfaces/front/register': GONE,
    '/layouts/0/matings/2/adapters': 0,
    '/vehicles/0/fitted/matings': {},
  },
  'faces of one side, without room for an adapter': {
    '/parts/3/interfaces/box/side': 'box',
    '/parts/3/interfaces/box/bore': GONE,
  },
  'faces that nobody recorded, where the other place may be empty': {
    '/parts/0/interfaces/linkage': GONE,
  },
  'faces that nobody recorded, of several parts': {
    '/roles/0/faces': GONE,
    '/parts/0/interfaces/linkage': GONE,
    '/parts/1/interfaces/linkage': GONE,
  },
  'a face that is known to be absent is no doubt': {
    '/parts/0/interfaces/linkage': { absent: true },
  },
};
