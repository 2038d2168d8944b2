/**
 * Documents whose form is right: only the reader can tell that they mean nothing.
 * Each is the sample with what is named here changed; what is said of it stands in
 * `broken-meanings.txt`.
 *
 * Length: one table, of which each row stands on its own.
 */

import { type Changes, from, GONE, LAYOUT } from './sample-document.js';

/** A value in so many layers of something. */
function nested(layers: number, around: (inner: unknown) => unknown, inner: unknown): unknown {
  let value = inner;
  for (let layer = 0; layer < layers; layer += 1) value = around(value);
  return value;
}

/** Terms that name one another in a row, from the innermost, `t0`, to the outermost. */
function chainOfTerms(length: number): [pointer: string, term: unknown][] {
  return Array.from({ length }, (_, index) => {
    return [`/layouts/0/terms/t${index}`, index === 0 ? '1' : { sum: [`t${index - 1}`, '1'] }];
  });
}

export const BROKEN_MEANINGS: Readonly<Record<string, Changes>> = {
  // The head of the document.
  'prices without a currency': { '/currency': GONE },
  'limits of a coupling in no order, and of no share': {
    '/couplings': {
      a: { pass: '1 %', warn: '0.5 %', refuse: '2 %' },
      b: { pass: '1 mm', warn: 'some', refuse: '-1 %' },
    },
  },
  // Facts, kinds and roles.
  'a fact with one value twice': { '/facts/0/values/1/id': 'short' },
  'a fact twice': {
    '/facts/1': {
      id: 'axle-tag',
      name: { en: 'Tag on the rear axle', de: 'Schild an der Hinterachse' },
      values: [{ id: 'other', name: 'X' }],
      how: 'Read the tag under the lower bolt of the cover.',
    },
  },
  'a kind with one side twice': { '/kinds/0/sides/1': 'box' },
  'a kind that leaves its sides out': { '/kinds/0/sides': GONE },
  'a kind with the name of one that is built in': { '/kinds/0/id': 'spline' },
  'a kind with the name of another': { '/kinds/1/id': 'shift-coupling' },
  'a parameter of a side that there is not': { '/kinds/0/parameters/pin/of': 'boxx' },
  'a parameter with the name of a field': { '/kinds/0/parameters/side': { type: 'code' } },
  'units that there are not, that are lacking or not wanted': {
    '/kinds/0/parameters/pattern/unit': 'mm',
    '/kinds/0/parameters/pin/unit': 'mmm',
    '/kinds/0/parameters/bore/unit': GONE,
    '/kinds/1/parameters/holes/unit': 'piece',
    '/roles/0/values/front-drive/unit': '%',
  },
  'tools that there are not or that cannot tell it': {
    '/kinds/0/parameters/pin/tool': 'calliper',
    '/kinds/0/parameters/bore/tool': 'angle-finder',
  },
  'usual ranges that are none': {
    '/kinds/0/parameters/pattern/usual': ['a', 'b'],
    '/kinds/0/parameters/pin/usual': ['20 mm', '4 mm'],
    '/kinds/0/parameters/bore/usual': ['20 mm', '4 kg'],
  },
  'points that are none, too many, or not in a list': {
    '/kinds/0/parameters/spots': { type: 'points', unit: 'mm', usual: ['1 mm', '9 mm'] },
    '/kinds/0/parameters/marks': { type: 'points' },
    '/kinds/0/parameters/holes': { type: 'points', unit: 'mm' },
    '/kinds/0/parameters/dowels': { type: 'points', unit: 'mm' },
    '/kinds/0/parameters/studs': { type: 'points', unit: 'mm' },
    '/parts/0/interfaces/linkage/holes': ['1.0, 2.0 mm', '1.0 mm', '1, 2, 3 mm', '1.0, 2.0'],
    '/parts/0/interfaces/linkage/dowels': '1.0, 2.0 mm',
    '/parts/0/interfaces/linkage/studs': Array.from({ length: 65 }, () => '1.0, 2.0 mm'),
  },
  'a number of more digits than are read': {
    '/parts/0/values/length': `${'5'.repeat(31)} mm`,
  },
  'points that are compared as numbers, and numbers as points': {
    '/kinds/0/parameters/spots': { type: 'points', unit: 'mm' },
    '/kinds/0/checks/3': { equal: 'spots' },
    '/kinds/0/checks/4': { coincide: ['lever.bore', 'box.pin'], tolerance: '1 mm' },
    '/kinds/0/checks/5': { coincide: ['lever.spots', 'box.spots'] },
    '/kinds/0/checks/6': { coincide: ['lever.spots', 'box.spots'], tolerance: '1 kg' },
    '/kinds/0/checks/7': { 'at-most': [{ sum: ['lever.spots', 'lever.bore'] }, 'box.pin'] },
    '/kinds/0/checks/8': { 'one-of': ['lever.spots', ['a']] },
  },
  'points that one may choose': {
    '/kinds/0/parameters/spots': { type: 'points', unit: 'mm' },
    '/parts/0/interfaces/linkage/spots': { choose: { of: ['1, 2 mm', '2, 3 mm'] } },
  },
  'what stands in for a parameter and cannot': {
    '/kinds/0/parameters/pattern/unless': ['pins', 'pattern', 'bore'],
  },
  'two checks of one name': { '/kinds/0/checks/3': { equal: 'pattern' } },
  'a value of a role without a type': { '/roles/0/values/length/type': GONE },
  'a value of a role with the name of the part itself': {
    '/roles/0/values/part': { type: 'code' },
  },
  'a derived value with a type, of a name that there is not': {
    '/roles/0/values/first-gear/term/max': 'gearz',
    '/roles/0/values/first-gear/type': 'ratio',
  },
  'derived values that are no numbers': {
    '/roles/0/values/first-gear/term': 'gears',
    '/roles/0/values/gear-count/term': 'coupling',
  },
  'a value that questions give in another unit': { '/roles/1/values/torque/unit': 'mm' },
  'a role with the name of another': { '/roles/1/id': 'gearbox' },
  // Parts and their faces.
  'a part twice': { '/parts/1/id': 'gb5-a' },
  'a role that there is not': { '/parts/0/roles/0': 'gearbx' },
  'a successor that there is not': { '/parts/0/supersededBy': 'gb6-lat' },
  "parts that took one another's place": { '/parts/1/supersededBy': 'gb5-a' },
  'a part that took its own place': { '/parts/1/supersededBy': 'gb6-late' },
  'months in the wrong order': { '/parts/0/built': ['2005-12', '1998-01'] },
  'a face that no role has': {
    '/parts/0/interfaces/reer': from('/parts/0/interfaces/rear'),
    '/parts/0/interfaces/rear': GONE,
  },
  'a kind that there is not': { '/parts/0/interfaces/rear/kind': 'flanje' },
  'a face of no kind': { '/parts/0/interfaces/rear/kind': GONE },
  'sides that there are not, not wanted and lacking': {
    '/parts/0/interfaces/input/side': 'shft',
    '/parts/0/interfaces/rear/side': 'a',
    '/parts/0/interfaces/linkage/side': GONE,
  },
  'an absent face with values': { '/parts/0/interfaces/rear/absent': true },
  'parameters that there are not, or at the other side': {
    '/parts/0/interfaces/input/teeths': 5,
    '/parts/0/interfaces/input/module': '1 mm',
    '/parts/0/interfaces/linkage/bore': '8 mm',
  },
  'a fault that alternatives have in common is said once': {
    '/parts/1/interfaces/rear/register': '57,0 mm',
  },
  'faults of one alternative': {
    '/parts/1/interfaces/rear/alternatives': [
      { holes: 4, pcd: '80 mm', hole: 4 },
      { holes: 'six', pcd: { choose: { of: ['86 mm', '90 mm'] } } },
    ],
  },
  'more alternatives than are tried': {
    '/parts/1/interfaces/rear/alternatives': [
      { pcd: { choose: { of: Array.from({ length: 60 }, (_, index) => `${index + 20} mm`) } } },
      { pcd: { choose: { of: Array.from({ length: 60 }, (_, index) => `${index + 90} mm`) } } },
    ],
  },
  'values that there are not, and that are derived': {
    '/parts/0/values/lenght': '598 mm',
    '/parts/0/values/first-gear': '40/11',
  },
  // What values mean.
  'a list where one is wanted, and the other way round': {
    '/parts/0/values/gears': '40/11',
    '/parts/0/values/length': ['598 mm'],
  },
  'units that are lacking, wrong or unknown': {
    '/parts/0/values/length': '598',
    '/parts/1/values/length': '612 kg',
    '/parts/1/values/torque': '360 Nmm',
  },
  'numbers that are none': {
    '/parts/0/interfaces/rear/holes': '4.5',
    '/parts/0/values/gears': ['40/11', '1:1', '0'],
    '/parts/0/values/torque': '1/0 N.m',
  },
  'a torque below nothing': { '/parts/0/values/torque': '-250 N.m' },
  'fit classes that there are not, or where one value is wanted': {
    '/parts/0/interfaces/rear/pcd': '80 H7',
    '/parts/3/interfaces/box/bore': '8 H99',
  },
  'tools that cannot tell it, or are not wanted': {
    '/parts/0/values/coupling': { is: 'open', tool: 'tape' },
    '/parts/0/values/length/tool': 'tag',
    '/parts/1/values/length': { is: '612 mm', tool: 'tapes' },
  },
  'a range the wrong way round': { '/parts/4/values/length/choose': ['1900 mm', '600 mm'] },
  'a range with ends that are not exact': { '/parts/4/values/length/choose/0': '600 ±1 mm' },
  'a range of codes': { '/parts/0/values/coupling': { choose: ['open', 'locked'] } },
  'a choice of lists': { '/parts/0/values/gears': { choose: { of: ['1', '2'] } } },
  'a choice of what is no length': { '/parts/4/values/length/choose': { of: ['600 mm', 'long'] } },
  'codes that tell nothing': {
    '/parts/0/values/coupling': 'unknown',
    '/parts/1/values/coupling': { choose: { of: ['open', ' N/A '] } },
    '/parts/0/interfaces/linkage/pattern': 'T.B.D.',
    '/parts/1/interfaces/linkage/pattern': 'Not_recorded',
    '/parts/3/interfaces/box/pattern': { is: 'unbekannt', evidence: { basis: 'measured' } },
  },
  'codes that there is none, of which two would meet': {
    '/parts/0/interfaces/linkage/pattern': 'none',
    '/parts/1/interfaces/linkage/pattern': { choose: { of: ['two-cable', 'None'] } },
  },
  // Layouts.
  'a role that there is not, where its values are named': {
    '/layouts/0/positions/2/roles/0': 'gearbx',
  },
  'two positions of one name': { '/layouts/0/positions/4/id': 'gearbox' },
  'a position called fact': {
    '/layouts/0/positions/7': { id: 'fact', name: 'Fact', roles: ['body'] },
  },
  'three pieces for two hands': { '/layouts/0/positions/6/count': 3 },
  'pieces that cannot be shared out': {
    '/layouts/0/positions/5/count': 2,
    '/layouts/0/positions/6/count': 3,
    '/layouts/0/positions/6/handed': GONE,
    '/vehicles/0/fitted/half-shaft': 'hs-l',
  },
  'positions behind what there is not, and behind themselves': {
    '/layouts/0/positions/5/behind': ['prop-shft', 'final-drive'],
  },
  'positions behind one another': { '/layouts/0/positions/4/behind/0': 'final-drive' },
  'times that are none': {
    '/layouts/0/positions/1/labour': 'six hours',
    '/layouts/0/positions/2/labour': '-6 h',
    '/layouts/0/positions/2/access': '6 mm',
    '/layouts/0/positions/3/access': 6,
  },
  'ends of a mating that are none': {
    '/layouts/0/matings/2/between': ['gearbox', 'prop-shaft.front.x'],
    '/layouts/0/matings/3/between/0': 'prop-shaft.Rear',
  },
  'a mating of positions that there are not': {
    '/layouts/0/matings/2/between': ['gearbx.rear', 'propshaft.front'],
  },
  'a mating of a face that no role has': { '/layouts/0/matings/2/between/0': 'gearbox.raer' },
  'a mating that names its own position twice': {
    '/layouts/0/matings/0/shared': true,
    '/layouts/0/matings/2/between/1': 'gearbox.input',
    '/layouts/0/matings/2/shared': true,
  },
  'a face that is used twice': { '/layouts/0/matings/5/shared': GONE },
  'two matings of one name': { '/layouts/0/matings/3/id': 'gearbox-prop' },
  'a check with the name of a mating, and two with one name': {
    '/layouts/0/checks/1/id': 'gearbox-prop',
    '/layouts/0/checks/2/id': 'axle-match',
  },
  'names of terms that there are not': {
    '/layouts/0/termNames': { front: 'front', reer: 'rear', $: 'none' },
  },
  'a term with the name of a position': { '/layouts/0/terms/gearbox': '1' },
  'a layout twice': {
    '/layouts/1': LAYOUT,
  },
  // Terms, checks and conditions.
  'terms that are computed from one another': {
    '/layouts/0/terms/front': ['rear', '2'],
    '/layouts/0/terms/rear': [{ sum: ['front', '1'] }],
  },
  'a term that is computed from itself': { '/layouts/0/terms/front': ['front', '2'] },
  'terms that nest too deep': {
    '/layouts/0/terms/x': nested(17, (inner) => ({ sum: [inner, '1'] }), '1'),
    '/layouts/0/terms/y': nested(1000, (inner) => [inner], 'gearbox.length'),
    '/layouts/0/terms/z': nested(17, (inner) => ({ count: inner }), 'gearbox.gears'),
  },
  'terms that name one another too deep': Object.fromEntries(chainOfTerms(12)),
  'terms that name one another too deep, the outermost first': Object.fromEntries(
    chainOfTerms(20).reverse(),
  ),
  'a term of too many values, and one that names it': {
    '/layouts/0/terms/wide': { sum: Array.from({ length: 41 }, () => '1') },
    '/layouts/0/terms/wider': ['wide', '2'],
    '/layouts/0/terms/half': { max: Array.from({ length: 21 }, () => '1') },
    '/layouts/0/terms/twice': ['half', 'half'],
  },
  'conditions that nest too deep': {
    '/rules/0/when': nested(17, (inner) => ({ not: inner }), { changed: 'gearbox' }),
    '/rules/0/needs': nested(1000, (inner) => ({ all: [inner] }), { changed: 'gearbox' }),
    '/layouts/0/checks/3/when': nested(
      17,
      (when) => ({ equal: ['gearbox.part', 'gearbox.part'], when }),
      { kept: 'engine' },
    ),
  },
  'names that mean nothing': {
    '/layouts/0/terms/front': [
      'fronnt',
      'gearbox.front-drve',
      'gearbx.front-drive',
      'prop-shaft.gears',
      'gearbox.rear.hols',
      'gearbox.reer.holes',
      'fact.axletag',
      'gearbox-prp.adapter.thickness',
      'gearbox-prop.adapter.thicknes',
      'a.b.c.d',
      'gearbox..x',
    ],
  },
  'values that are none': {
    '/layouts/0/terms/front': ['4mm', '5 furlongs', '1/0', '1.5/2', '4x.length', '9'.repeat(65)],
  },
  'names in a kind that mean nothing': {
    '/kinds/0/checks/0/equal': 'patern',
    '/kinds/0/checks/1': { equal: ['box.pattern', 'leever.pattern'] },
    '/kinds/0/checks/2': { 'at-least': ['lever.pin', 'pin'] },
    '/kinds/0/checks/3': { 'at-most': 'pin' },
  },
  'what cannot be joined': {
    '/layouts/0/terms/front': [
      { sum: ['1 mm', '1 kg'] },
      { product: 'gearbox.gears' },
      'gearbox.coupling',
      { count: 'gearbox.length' },
      { min: 'gearbox.coupling' },
    ],
  },
  'what cannot be compared': {
    '/layouts/0/checks/0': { equal: 'front' },
    '/layouts/0/checks/1': { equal: ['gearbox.part', 'gearbox.length'] },
    '/layouts/0/checks/2/within': ['gearbox.part', 'gearbox.role'],
    '/layouts/0/checks/2/tolerance': '1 mm',
    '/layouts/0/checks/2/id': GONE,
    '/layouts/0/checks/3': { 'at-least': ['gearbox.length', 'gearbox.torque'] },
    '/layouts/0/checks/4': { 'at-most': ['gearbox.gears', 'gearbox.gears'] },
  },
  'limits of another sort, and the wrong way round': {
    '/layouts/0/checks/0': { within: ['gearbox.length', 'body.span'], tolerance: '1 kg' },
    '/layouts/0/checks/1/id': 'b',
    '/layouts/0/checks/1/within': ['gearbox.length', 'body.span'],
    '/layouts/0/checks/1/tolerance': '-1 mm',
    '/layouts/0/checks/1/carries': GONE,
    '/layouts/0/checks/1/demand': GONE,
    '/layouts/0/checks/2': { clearance: ['gearbox.length', 'body.span'], min: '2 mm', max: '1 mm' },
    '/layouts/0/checks/3': {
      clearance: ['gearbox.length', 'body.spann'],
      min: 'gearbox.gears',
      max: '1 mmm',
    },
  },
  'a coupling that is no code, and factors of no position': {
    '/layouts/0/checks/0/coupling': 'front',
    '/layouts/0/checks/0/whenEmpty': { gearbx: '1', gearbox: 'gearbox.coupling' },
    '/layouts/0/checks/0/id': GONE,
  },
  'a rating that cannot carry it': {
    '/layouts/0/checks/1/demand': 'front',
    '/layouts/0/checks/1/id': GONE,
    '/layouts/0/checks/4': { carries: 'gearbox.coupling', demand: 'gearbox.coupling' },
  },
  'one of several that are none': {
    '/layouts/0/checks': [
      { 'one-of': ['gearbox.gears', ['1']] },
      { 'one-of': ['gearbox.part', [5]] },
      { 'one-of': ['gearbox.length', ['598 mm', '5 kg', 'x', 5]] },
    ],
  },
  'conditions about what there is not': {
    '/rules/0/when': { changed: 'gearbx' },
    '/rules/0/needs': { not: { kept: 'engin' } },
    '/rules/0/excludes': { mating: 'gearbox-prp', adapter: 'stubb' },
  },
  // Vehicles, rules, statements and offers.
  'a layout that there is not, and what does not hang on it': {
    '/vehicles/0/built': ['2005-08', '2002-09'],
    '/vehicles/0/facts': { 'axel-tag': 'long' },
    '/vehicles/0/layout': 'long-adw',
    '/vehicles/0/fitted/engine': 'engin-2',
  },
  'facts that there are not, and what they cannot be': {
    '/vehicles/0/facts/axle-tag': 'lang',
    '/vehicles/0/facts/axle-tagg': 'long',
  },
  'positions and parts that there are not': {
    '/vehicles/0/fitted/body': 'body-lng',
    '/vehicles/0/fitted/engin': 'engine-2',
  },
  'parts that cannot stand there': {
    '/vehicles/0/fitted/prop-shaft': { left: 'prop-5', right: 'prop-5' },
    '/vehicles/0/fitted/final-drive': 'prop-5',
    '/vehicles/0/fitted/half-shaft/left': 'hs-r',
    '/vehicles/0/fitted/half-shaft/right': 'fd-39',
  },
  'one part for both hands': { '/vehicles/0/fitted/half-shaft': 'hs-l' },
  'one part for both hands that there is not': { '/vehicles/0/fitted/half-shaft': 'hs-x' },
  'adapters that are none, where there are none, and too many': {
    '/vehicles/0/fitted/matings/gearbox-prop/1': 'stub',
    '/vehicles/0/fitted/matings/gearbox-prop/2': 'stubb',
    '/vehicles/0/fitted/matings/gearbox-prp': 'stub',
    '/vehicles/0/fitted/matings/prop-final': 'fd-39',
    '/vehicles/0/fitted/matings/engine-gearbox': 'stub',
  },
  'a part that spans what is not filled': { '/parts/0/spans': ['gearbox', 'linkage'] },
  'a part that spans what there is not': { '/parts/0/spans': ['gearbox', 'transfer'] },
  'a vehicle twice': {
    '/vehicles/1': {
      id: 'tarn-2',
      make: 'Orrin',
      model: 'Tarn',
      variant: '2.0 long',
      built: ['2002-09', '2005-08'],
      facts: { 'axle-tag': 'long' },
      layout: 'long-awd',
      fitted: {
        body: 'body-long',
        engine: 'engine-2',
        gearbox: 'gb5-a',
        linkage: 'link-rod',
        'prop-shaft': 'prop-5',
        'final-drive': 'fd-39',
        'half-shaft': { left: 'hs-l', right: 'hs-r' },
        matings: { 'gearbox-prop': ['stub'] },
      },
    },
  },
  'a vehicle without a layout, like none': {
    '/vehicles/0/layout': GONE,
    '/vehicles/0/fitted': GONE,
    '/vehicles/0/like': null,
  },
  'a vehicle that is like none that there is, and took the place of such': {
    '/vehicles/1/like': 'tarn-3',
    '/vehicles/1/replacedBy': ['tarn-2x'],
    '/vehicles/1/layout': GONE,
    '/vehicles/1/facts': { 'axle-tg': 'short' },
    '/vehicles/1/fitted/engine': 'engin-2',
  },
  'vehicles that are like one another': { '/vehicles/0/like': 'tarn-2-any' },
  'a vehicle that is like itself, and took its own place': {
    '/vehicles/0/like': 'tarn-2',
    '/vehicles/0/replacedBy': ['tarn-2'],
  },
  "vehicles that took one another's place": {
    '/vehicles/0/replacedBy': ['tarn-2-any'],
    '/vehicles/1/replacedBy': ['tarn-2'],
  },
  'a vehicle of another layout than that which it is like': {
    '/layouts/1': {
      id: 'short',
      positions: [
        { id: 'engine', name: 'Engine', roles: ['engine'] },
        { id: 'gearbox', name: 'Gearbox', roles: ['gearbox'] },
      ],
    },
    '/vehicles/1/layout': 'short',
    '/vehicles/1/fitted': { gearbox: 'gb5-a' },
  },
  'options of facts and values that there are not, and of no value': {
    '/vehicles/1/fitted/gearbox': { by: 'shft', rod: 'gb5-a', cable: 'gb6-lat' },
    '/vehicles/1/fitted/linkage': { by: 'shift', rodd: 'link-rod', cable: null },
    '/vehicles/1/fitted/half-shaft': { by: 'axle-tag' },
  },
  'options that cannot stand there': {
    '/vehicles/1/fitted/gearbox': {
      by: 'shift',
      rod: 'link-rod',
      cable: { left: 'gb6-late', right: 'gb6-late' },
    },
    '/vehicles/1/fitted/half-shaft': { by: 'axle-tag', short: { left: 'hs-r', right: 'hs-l' } },
  },
  'a part that spans what another value of the fact fills': {
    '/parts/0/spans': ['gearbox', 'linkage'],
    '/vehicles/0/fitted/linkage': 'gb5-a',
    '/layouts/0/positions/3/roles/1': 'gearbox',
  },
  'a part that spans, one place of which is inherited': {
    '/parts/5/spans': ['final-drive', 'prop-shaft'],
    '/parts/5/roles/1': 'prop-shaft',
    '/vehicles/0/fitted/prop-shaft': 'fd-39',
    '/vehicles/2/fitted': { 'prop-shaft': 'prop-5' },
  },
  'identification numbers that are none, of one vehicle, and ranges that are none': {
    '/vehicles/0/vin': [
      'XKR45678901234567',
      { pattern: 'XKR**************', from: '100000', to: '99999' },
      { pattern: 'XKR**************', from: '200000', to: '149999' },
      { pattern: 'XKR************12', from: '100000', to: '149999' },
    ],
  },
  'a rule without an effect, of a layout that there is not': {
    '/rules/0/layouts/0': 'lung-awd',
    '/rules/0/when': { changed: 'gearbox' },
    '/rules/0/because': 'It is so.',
    '/rules/0/needs': GONE,
  },
  'a rule that no layout understands, in the words of the nearest': {
    '/layouts/1': { id: 'short', positions: [{ id: 'engine', name: 'Engine', roles: ['engine'] }] },
    '/rules/0/when/all': [{ changed: 'gearbox' }, { changed: 'linkge' }],
    '/rules/0/because': 'It is so.',
    '/rules/0/note': 'Mind the linkage.',
    '/rules/0/layouts': GONE,
    '/rules/0/needs': GONE,
  },
  'a rule that one of its layouts does not understand': {
    '/layouts/1': { id: 'short', positions: [{ id: 'engine', name: 'Engine', roles: ['engine'] }] },
    '/rules/0/layouts/1': 'short',
    '/rules/0/when/all': [{ changed: 'gearbox' }, { changed: 'gearbx' }],
    '/rules/0/because': 'It is so.',
    '/rules/0/note': 'Mind the linkage.',
    '/rules/0/needs': GONE,
  },
  'effects that name what there is not, and amounts of it': {
    '/rules/2/recommends': { position: 'linkge', part: 'link-rd', quantity: 'gearbox.coupling' },
    '/rules/2/consumes': { part: 'stubb', quantity: 'gearbox.torque' },
  },
  'effects that say nothing, too little, or less than nothing': {
    '/rules/0/recommends': {},
    '/rules/1/recommends': { position: 'linkage', quantity: '2' },
    '/rules/2/consumes/quantity': '0 l',
    '/rules/2/recommends/quantity': 'gearbox.gears',
  },
  'a rule that only one of two layouts can use up': {
    '/layouts/1': { id: 'short', positions: [{ id: 'engine', name: 'Engine', roles: ['engine'] }] },
    '/rules/2/layouts': ['long-awd', 'short'],
  },
  'a statement about nothing': {
    '/statements/0/part': 'gb6-lat',
    '/statements/0/vehicles/1': 'tarn-3',
    '/statements/0/position': 'gearbx',
    '/statements/0/with': { 'prop-shft': 'prop-5', engine: 'engin-2' },
  },
  'a statement about parts that cannot stand there': {
    '/statements/0/position': 'engine',
    '/statements/0/with/prop-shaft': 'gb5-a',
  },
  'a lot of what there is not': {
    '/lots/0/contains': [
      { part: 'hs-x' },
      { part: 'stub', quantity: '1.5' },
      { part: 'stub', quantity: '2 h' },
      { part: 'stub', quantity: 'some' },
      { part: 'stub', quantity: 0 },
      { vehicle: 'tarn-3', position: 'gearbox' },
      { vehicle: 'tarn-2', position: 'gearbx' },
      { vehicle: 'tarn-2', position: 'gearbox' },
      { vehicle: 'tarn-2', position: 'gearbox' },
    ],
  },
  'a work on what there is not': {
    '/works/0/on': {
      all: [
        { 'one-of': ['rle', ['gearbox']] },
        { 'at-least': ['lenght', '1 mm'] },
        { 'at-least': ['rear.pdc', '1 mm'] },
        { 'at-least': ['reer.pcd', '1 mm'] },
        { 'at-least': ['gearbox.rear.pcd', '1 mm'] },
        { changed: 'gearbox' },
        { 'at-least': ['torque', '1 mm'] },
      ],
    },
  },
  'a work that gives what there is not, and voids what is no rating': {
    '/works/0/gives': {
      interfaces: { rear: { holez: 6, pcd: '86 kg' }, reer: { pcd: '86 mm' } },
      values: { lenght: '600 mm', 'first-gear': '40/11', torque: '200 N.m' },
    },
    '/works/0/voids': ['coupling', 'torqe', 'torque'],
    '/works/0/labour': '-2 h',
  },
  'a work that gives nothing': { '/works/0/gives': { interfaces: { rear: {} } } },
  'a ruleset that demands nothing, of months in the wrong order': {
    '/rulesets/0/valid': ['2007-01', '2006-12'],
    '/rulesets/0/demands': { keep: [] },
  },
  'a ruleset that no layout understands, and two checks of one name': {
    '/rulesets/0/demands': {
      keep: ['engin', 'gearbox'],
      checks: [
        { 'at-most': ['gearbox.gear-count', 6] },
        { 'at-most': ['gearbox.gear-count', 5] },
        { 'at-most': ['gearbox.gear-cont', 6] },
      ],
    },
  },
  'a part, a lot and a work of one name': {
    '/lots/0/id': 'gb5-a',
    '/works/0/id': 'gb5-a',
  },
  'offers of packs that are none': {
    '/offers/0/pack': 'a box',
    '/offers/1': { id: 'offer-2', for: 'shaft-set', price: '1.00', pack: '1.5' },
    '/offers/2': { id: 'offer-3', for: 're-drill', price: '0', pack: '2 h' },
    '/offers/3': { id: 'offer-4', for: 're-dril', price: '0' },
  },
  'an offer of what there is not, and twice': {
    '/offers/0/for': 'gb6-lat',
    '/offers/1': {
      id: 'offer-1',
      for: 'gb5-a',
      price: '1850.00',
      condition: 'used',
      stock: 2,
      leadDays: 3,
      supplier: 'own',
      sku: 'GB-6',
      pack: '1',
    },
  },
  // What a layout says of how it drives.
  'a driveline of wrong dimensions, places, axles and loads': {
    '/layouts/0/driveline': {
      engineTorque: 'gearbox.length',
      engineSpeed: 'gearbox.speeed',
      gears: 'gearbox.first-gear',
      axles: [{ id: 'rear', name: 'rear', drive: 'gearbox.rear-drive', circumference: '2 kg' }],
      slips: [
        { load: 'no-load', axle: 'rear', after: '2' },
        { load: 'no-load', axle: 'front', after: '2 mm' },
      ],
      shafts: [
        {
          position: 'prop',
          axle: 'rear',
          drive: '1',
          outer: '76 mm',
          inner: '70 mm',
          length: '1 m',
        },
      ],
      joints: [{ id: 'joint', name: 'joint', angle: '2 mm' }],
      speedometer: { shows: '1 1/m', turns: '1' },
      brakes: { front: '1 mm', rear: '1 mm2' },
      pedal: { master: '1 mm', ratio: '4', wheels: [{ area: '1 mm2', travel: '1 mm2' }] },
      wheels: [{ position: 'wheell', inset: '1 mm', width: '1 mm', diameter: '1 N' }],
    },
  },
  // Names that every object has, where they are good ids.
  'a value, a face, a kind, a position and a fact called constructor': {
    '/parts/0/values/constructor': '5',
    '/parts/1/interfaces/constructor': { kind: 'constructor' },
    '/layouts/0/terms/front': [
      'constructor',
      'gearbox.constructor',
      'fact.constructor',
      'gearbox.rear.constructor',
      'toString',
      '__proto__',
    ],
    '/vehicles/0/facts/constructor': 'long',
    '/vehicles/0/fitted/constructor': 'gb5-a',
  },
};
