/**
 * Kit questions that nobody asks in earnest: wishes that are none, prices that are no money,
 * conditions without end, and names that an object has of itself.
 */

import { get, type Inputs, post } from './bytes.js';

const asked = (more: string) => post(`{"vehicle":"cart-1",${more}}`, { to: '/v1/kits' });
const more = (search: string) => get(`/v1/kits?vehicle=cart-1&${search}`);
const wish = (text: string) => asked(`"want":[${text}]`);
const condition = (text: string) => wish(`{"position":"gearbox","condition":${text}}`);
const offer = (text: string) => asked(`"offers":[{"part":"box-a",${text}}]`);
const measured = (on: string, value = '"60 mm"') =>
  asked(`"measured":[{"on":${on},"value":${value}}]`);

const times = (count: number, text: string) => Array.from({ length: count }, () => text).join(',');

export const KITS: Inputs = {
  'a wish for nothing': wish('{}'),
  'a wish that is a name': wish('"box-a"'),
  'a wish for a part and a lot at once': wish('{"part":"box-a","lot":"crate"}'),
  'a wish for none of several parts': wish('{"part":[]}'),
  'a wish for a list of lists': wish('{"part":[["box-a"]]}'),
  'a lot that every object has': wish('{"lot":"__proto__"}'),
  'wishes in a URL without end': more(`want=${times(500, 'box-a')}`),
  'a wish in a URL with a place and no part': more('want=@gearbox'),
  'a wish in a URL with two places': more('want=box-b@gearbox@engine'),
  'a wish in a URL for no lot': more('want=lot:'),
  'a limit that nobody knows': more('limits.patience=9'),
  'a limit on the prototype': more('limits.__proto__=9'),
  'a limit below zero': more('limits.changedPositions=-1'),
  'a limit that is a fraction': more('limits.leadDays=1.5'),
  'steps without end': more('steps=9007199254740993'),
  'no steps at all': more('steps=0'),
  'a price that is a number': offer('"price":9.5'),
  'a price below zero': offer('"price":"-1.00"'),
  'a price with an exponent': offer('"price":"1e9"'),
  'a price of more digits than money has': offer('"price":"99999999999.99"'),
  'a price of 65 characters': offer(`"price":"${'9'.repeat(65)}"`),
  'a price in Arabic digits': offer('"price":"٩٫٥"'),
  'a pack of minus one': offer('"price":"9","pack":"-1"'),
  'a pack by the hour': offer('"price":"9","pack":"2 h"'),
  'an order code that every object has': asked('"offers":[{"sku":"constructor","price":"9"}]'),
  'a ruleset that every object has': asked('"ruleset":"toString"'),
  'a condition that is a list': condition('[]'),
  'a condition without anything in it': condition('{}'),
  'a condition on the prototype': condition('{"changed":"__proto__"}'),
  'a condition with a value of the prototype': condition('{"equal":["gearbox.constructor","a"]}'),
  'a condition 27 deep': condition(`${'{"not":'.repeat(27)}{}${'}'.repeat(27)}`),
  'a condition of 2000 that nothing has': condition(
    `{"all":[${times(2000, '{"changed":"gear-box"}')}]}`,
  ),
  'a sum of 2000 terms': condition(
    `{"at-least":[{"sum":[${times(2000, '"gearbox.torque"')}]},"9 N.m"]}`,
  ),
  'a reading of nothing': measured('{}'),
  'a reading of a face that every object has': measured(
    '{"part":"box-a","interface":"constructor","parameter":"x"}',
  ),
  'a reading of a parameter that every object has': measured(
    '{"part":"box-a","interface":"rear","parameter":"constructor"}',
  ),
  'a reading of no size': measured(
    '{"part":"box-a","interface":"rear","parameter":"register"}',
    '"1/0 mm"',
  ),
  'a reading of a fact that every object has': measured('{"fact":"__proto__"}', '"a"'),
  'a tool that every object has': asked(
    '"measured":[{"on":{"part":"box-a","interface":"rear","parameter":"register"},' +
      '"value":"60 mm","tool":"toString"}]',
  ),
  'pieces at hand without end': asked('"owned":[{"part":"box-a","quantity":1e15}]'),
  '501 prices': asked(`"offers":[${times(501, '{"part":"box-a","price":"9.00"}')}]`),
};
