/**
 * Questions about figures that nobody asks in earnest: values of no size or without end, designs
 * that no workshop has seen, and keys of routes that were made up.
 */

import { get, type Inputs, post } from './bytes.js';

const times = (count: number, text: string) => Array.from({ length: count }, () => text).join(',');
const calculate = (search: string) => get(`/v1/calculate/${search}`);
const shaft = (more: string) =>
  calculate(`propeller-shaft?outerDiameter=70+mm&innerDiameter=66+mm&${more}`);
const disc = (more: string) => calculate(`disc-in-rim?${more}`);

/** Questions to calculators. */
export const CALCULATORS: Inputs = {
  'a calculator that is none': calculate('horoscope'),
  'a calculator by the name of a method': calculate('constructor'),
  'a calculator by `__proto__`': calculate('__proto__'),
  'a calculator without a question': calculate('propeller-shaft'),
  'an input that every object has': shaft('length=1400+mm&constructor=1'),
  'an input on the prototype': shaft('length=1400+mm&__proto__=1'),
  'an input twice that stands once': shaft('length=1400+mm&speed=5000+rpm&speed=1+rpm'),
  'a shaft in a thousand pieces': shaft(`length=${times(1000, '1+mm')}`),
  'a shaft of no length': shaft('length=0+mm'),
  'a shaft of less than no length': shaft('length=-1400+mm'),
  'a shaft with nothing for its length': shaft('length='),
  'a shaft of an infinite length': shaft('length=Infinity+mm'),
  'a shaft of NaN': shaft('length=NaN+mm'),
  'a length with an exponent': shaft('length=1e999+mm'),
  'a length in seconds': shaft('length=1400+s'),
  'a length without a unit': shaft('length=1400'),
  'a length over nothing': shaft('length=1/0+mm'),
  'a length of 2000 digits': shaft(`length=${'9'.repeat(2000)}+mm`),
  'a tolerance wider than the length': shaft('length=1+mm+%C2%B1+5+mm'),
  'a tube that is thicker inside': calculate(
    'propeller-shaft?outerDiameter=60+mm&innerDiameter=66+mm&length=1400+mm',
  ),
  'a duty that every object has': shaft('length=1400+mm&duty=toString'),
  'a calculator in units that are none': shaft('length=1400+mm&units=cubits'),
  'a calculator in an edition': shaft('length=1400+mm&edition=1'),
  'a calculator by POST': post('{"length":"1400 mm"}', { to: '/v1/calculate/propeller-shaft' }),
  'a disc with nothing told': disc(''),
  'a tyre that is a script': calculate('tyre?designation=%3Cscript%3Ealert(1)%3C/script%3E'),
  'a tyre without end': calculate(`tyre?designation=${'195/'.repeat(500)}`),
  'a number of a vehicle in Arabic digits': calculate(
    `vin?vin=${encodeURIComponent('١'.repeat(17))}`,
  ),
};

const asked = (more: string) => post(`{"vehicle":"cart-1",${more}}`, { to: '/v1/driveline' });
const line = (text: string) => asked(`"lines":[${text}]`);

/** Questions how a vehicle drives. */
export const DRIVELINES: Inputs = {
  'a grip that is a number': asked('"grip":0.9'),
  'a grip below nothing': asked('"grip":"-0.9"'),
  'no grip at all': asked('"grip":"0"'),
  'a grip of 3': asked('"grip":"3"'),
  'a grip in metres': asked('"grip":"0.9 m"'),
  'a grip over nothing': asked('"grip":"1/0"'),
  'a line that is a name': line('"box-a"'),
  'a line with nothing in it': line('{}'),
  'a line that does what no line does': line('{"action":"destroy","position":"gearbox"}'),
  'a line at a place that every object has': line('{"position":"constructor","part":"box-a"}'),
  'a line with a part of the prototype': line('{"position":"gearbox","part":"__proto__"}'),
  'a place filled twice': line(
    '{"position":"gearbox","part":"box-a"},{"position":"gearbox","part":"box-b"}',
  ),
  'lines without end': line(times(2000, '{"position":"gearbox","part":"box-a"}')),
  'a route that is a number': asked('"routes":[1]'),
  'a route with an empty key': asked('"routes":[""]'),
  'a key that was made up': asked('"routes":["AAAA"]'),
  'a key that is no text of keys': asked('"routes":["../../etc/passwd"]'),
  'a key of 100 000 signs': asked(`"routes":["${'A'.repeat(100_000)}"]`),
  'keys without end': asked(`"routes":[${times(500, '"AAAA"')}]`),
  'a field that every object has': asked('"constructor":{}'),
};
