/**
 * One document with more than thirty assorted faults, all of which are said at once, in the order
 * of the document, as `ruined-document.txt` has them. Many of them are faults of what others name,
 * of which those others are not told.
 */

import { type Changes, GONE } from './sample-document.js';

export const RUINED: Readonly<Record<string, Changes>> = {
  'everything at once': {
    '/currency': 'Euro',
    '/evidence/basis': 'drawings',
    '/couplings/slow-clutch/warn': '0.1 %',
    // A value of a fact that a vehicle has.
    '/facts/0/values/1/id': 'Long',
    // Parameters that checks and faces name; the sides are gone that "of" names.
    '/kinds/0/sides': ['box'],
    '/kinds/0/parameters/pattern/type': 'word',
    '/kinds/0/parameters/hole/unit': 'mmm',
    '/kinds/1/parameters/holes': 'count',
    '/kinds/1/checks/1/tolerance': '0.2 kg',
    // Values of roles that terms and parts name.
    '/roles/0/values/gears/list': 'yes',
    '/roles/0/values/length/unit': GONE,
    '/roles/0/values/first-gear/term': { max: 'torqe' },
    '/roles/2/faces': 'box',
    '/roles/5': 'half-shaft',
    // Parts that vehicles, statements and offers name.
    '/parts/0/roles': ['gearbx'],
    '/parts/0/values/front-drive': 3.583,
    '/parts/1/values/torqe': '250 N.m',
    '/parts/1/id': 'GB6 late',
    '/parts/1/interfaces/rear/alternatives/0/holes': 4.5,
    '/parts/1/interfaces/input/side': 'shft',
    '/parts/3/interfaces/box/bore': '8 H99',
    '/parts/4/values/length': { choose: ['1900 mm', '600 mm'] },
    '/parts/5/interfaces/left': 5,
    '/parts/8/interfaces/two/kind': 'flanje',
    // Positions, matings and terms that others name.
    '/layouts/0/positions/4/name': '',
    '/layouts/0/positions/5/behind/1': 'half-shft',
    '/layouts/0/positions/6/handed': 'yes',
    '/layouts/0/matings/2/between': ['gearbox.rear'],
    '/layouts/0/matings/5/shared': 1,
    '/layouts/0/terms/rear': ['rear'],
    '/layouts/0/checks/0/coupling': 'final-drive.ratio',
    '/layouts/0/checks/2/tolerance': GONE,
    '/vehicles/0/built': ['2005-08', '2002-09'],
    '/vehicles/0/fitted/engine': 'prop-5',
    '/vehicles/0/fitted/gearbux': 'gb5-a',
    '/vehicles/0/fitted/matings/prop-final': 'stubb',
    '/rules/0/needs': { 'at-lest': ['gearbox.gear-count', 6] },
    '/rules/1/because': GONE,
    '/statements/0/verdict': 'fit',
    '/statements/0/with/prop-shaft': 'prop-6',
    '/offers/0/price': '-1',
    '/offers/0/for': 'gb7',
  },
};
