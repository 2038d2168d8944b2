/**
 * The faults of requests, in English: one sentence for each code, with what was probably meant.
 */

import type { NamedPart } from '../../usecases/question-fault.js';
import { echo } from '../json-pointer.js';
import type { JsonExpected, JsonFound, JsonStop, RowFault, ValueType } from './fault.js';
import type { FaultWords } from './problem-words.js';

function quoted(name: string): string {
  return `"${echo(name)}"`;
}

/** A name that nothing has. */
function none(what: string, name: string, meant: string | null): string {
  return `There is no ${what} ${quoted(name)}.${hint(meant)}`;
}

/** `seal-70 (Corrablyn)`. */
function candidate({ part, maker }: NamedPart): string {
  return maker === null ? part : `${part} (${maker})`;
}

function hint(meant: string | null): string {
  return meant === null ? '' : ` Did you mean '${meant}'?`;
}

const TYPES: Readonly<Record<ValueType, string>> = {
  text: 'a text',
  integer: 'a whole number',
  boolean: 'true or false',
  object: 'an object',
  list: 'a list',
};

const ROWS: Readonly<Record<RowFault, string>> = {
  'quote-inside': 'a field with a quotation mark in it stands in quotation marks itself',
  'after-quote': 'after the closing quotation mark comes a comma or the end of the row',
  'unclosed-quote': 'a quotation mark is opened and not closed',
  'count-of-fields': 'it has not as many fields as there are columns',
};

const EXPECTED: Readonly<Record<JsonExpected, string>> = {
  value: 'a value',
  name: 'a name in double quotes',
  colon: 'a colon',
  'comma-or-brace': 'a comma or "}"',
  'comma-or-bracket': 'a comma or "]"',
  'closing-quote': 'a closing double quote',
  escape: 'an escape such as \\n or \\u00e9',
  end: 'the end of the document',
};

const FOUND: Readonly<Record<Exclude<JsonFound, 'sign'>, string>> = {
  'end-of-text': 'the end of the text',
  'end-of-line': 'the end of the line',
  space: 'a space',
  'control-character': 'a control character',
  'single-quote': 'a single quote',
  'double-quote': 'a double quote',
};

export function englishStop({ expected, found, sign }: JsonStop): string {
  const there = found === 'sign' ? `"${sign ?? ''}"` : FOUND[found];
  return `${EXPECTED[expected]} is expected, not ${there}`;
}

export const ENGLISH_FAULTS: FaultWords = {
  'no-edition': () => 'Nothing has been published yet.',
  'unknown-edition': ({ edition }) => `There is no edition ${edition}.`,
  'unknown-vehicle': ({ name, meant }) => none('vehicle', name, meant),
  'unknown-part': ({ name, meant }) => none('part', name, meant),
  'vehicle-replaced': ({ name, candidates }) =>
    `${quoted(name)} is kept up no more: ` +
    `${candidates.map(({ vehicle }) => vehicle).join(', ')} took its place.`,
  'ambiguous-part': ({ name, candidates }) =>
    `${quoted(name)} is of more than one part: ${candidates.map(candidate).join(', ')}. ` +
    'Name the part by its id.',
  'sku-of-lot': ({ name, lot }) => `${quoted(name)} is no part but the lot ${quoted(lot)}.`,
  'sku-of-work': ({ name, work }) => `${quoted(name)} is no part but the work ${quoted(work)}.`,
  'plus-read-as-space': ({ name }) => `${none('part', name, null)} In a URL, write "%2B" for "+".`,
  'unknown-work': ({ name, meant }) => none('work', name, meant),
  'work-not-for-part': ({ work }) => `${quoted(work)} cannot be done on this part.`,
  'work-may-not-apply': ({ work }) =>
    `${quoted(work)} is not known to be possible on this part: its record lacks values.`,
  'work-changes-nothing': ({ work, what }) =>
    `${quoted(work)} changes ${quoted(what)}, which is not recorded of this part.`,
  'unknown-lot': ({ name, meant }) => none('lot', name, meant),
  'unknown-ruleset': ({ name, meant }) => none('ruleset', name, meant),
  'unknown-sku': ({ name, meant }) => `Nothing is offered under ${quoted(name)}.${hint(meant)}`,
  'ambiguous-sku': ({ name, candidates }) =>
    `${quoted(name)} is of several things: ${candidates.join(', ')}. Name the one that is meant.`,
  'unknown-layout': ({ name, meant }) => none('layout', name, meant),
  'unknown-role': ({ name, meant }) => none('role', name, meant),
  'unknown-kind': ({ name, meant }) => none('kind', name, meant),
  'unknown-fact': ({ name, meant }) => none('fact', name, meant),
  'not-a-value-of-fact': ({ fact, value, meant }) =>
    `${quoted(fact)} cannot be ${quoted(value)}.${hint(meant)}`,
  'unknown-position': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} has no position ${quoted(name)}.${hint(meant)}`,
  'unknown-mating': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} has no mating ${quoted(name)}.${hint(meant)}`,
  'unknown-load': ({ vehicle, name, meant }) =>
    `${quoted(vehicle)} has no load ${quoted(name)}.${hint(meant)}`,
  'not-handed': ({ position }) => `${quoted(position)} has no left and right; name one part.`,
  'place-of-the-part': ({ position }) =>
    `${quoted(position)} is the place of the part itself; name what is beside it.`,
  'too-many-adapters': ({ mating, most }) =>
    `${quoted(mating)} takes ${most} adapter${most === 1 ? '' : 's'} in a row, not more.`,
  'not-an-adapter': ({ part }) => `${quoted(part)} is no adapter: it has not two faces.`,
  'unknown-interface': ({ part, name, meant }) =>
    `${quoted(part)} has no recorded face ${quoted(name)}.${hint(meant)}`,
  'no-interface-recorded': ({ part }) => `No face of ${quoted(part)} is recorded.`,
  'no-sign-of-a-vin': ({ place }) =>
    `Character ${place} is in no vehicle identification number: they have letters and digits, ` +
    'and none of I, O and Q, which look like digits. Write * for one that cannot be read.',
  'wrong-length-of-vin': ({ length }) =>
    `A vehicle identification number has 17 characters, and this has ${length}. Leave out one of ` +
    'before 1981, which may have another length.',
  'not-a-torque': ({ text }) => text,
  'negative-torque': () => 'A torque is not negative.',
  'not-a-price': () => 'It is no amount of money such as 1850.00, never below zero.',
  'not-a-margin': () => 'It is no margin such as 1.25: a decimal above zero.',
  'not-hours': () => 'It is no number of hours such as 8 or 8.5.',
  'amount-at-fault': ({ text }) => text,
  'condition-at-fault': ({ text }) => text,
  'reading-of-nothing': () =>
    'What was measured is one value of a part, one fact, or what stands at a position: name which.',
  'reading-at-fault': ({ text }) => text,
  'reading-of-no-part': () => 'What stands at a position is one part by its name, or "none".',
  'measured-twice': () => 'It was measured twice, and the two differ: say the one that counts.',
  'reading-of-no-face': () =>
    'Name the parameter, and where it is of a face, the face or its kind; "none" says of a named ' +
    'face that the piece has none.',
  'two-faces-in-one': () =>
    'One face is of one kind and side: tell several of a kind apart with "which".',
  'face-of-no-part': ({ name, meant }) => none('face', name, meant),
  'side-of-no-kind': ({ name, meant }) => none('side of such a face', name, meant),
  'parameter-of-no-kind': ({ name, meant }) => none('parameter of such a face', name, meant),
  'value-of-no-role': ({ name, meant }) => none('value of a part', name, meant),
  'number-says-nothing': () => 'Nothing of it could be read: leave it out.',
  'which-hand': ({ position }) =>
    `Left and right of ${quoted(position)} differ: say which was measured.`,
  'no-part-there': ({ position }) =>
    `No part is recorded at ${quoted(position)}: say in "fitted" which one it is.`,
  'incomplete-line': ({ action, needs }) =>
    `A line with the action ${quoted(action)} says its ${quoted(needs)} too.`,
  'work-of-no-line': ({ work }) => `No line puts in the part that ${quoted(work)} is done on.`,
  'filled-twice': ({ position }) => `Two lines put different things at ${quoted(position)}.`,
  'not-a-route-key': () => 'It is no key of a route.',
  'route-of-another-vehicle': ({ vehicle }) => `It is the key of a route of ${quoted(vehicle)}.`,
  'not-a-grip': () => 'It is no friction of tyres such as 0.9: above 0, and 2 at most.',
  'unknown-calculation': ({ name, meant }) => none('calculator', name, meant),
  'input-at-fault': ({ text }) => text,
  'impossible-input': ({ bounds }) => `There is no such value; there can be ${bounds}.`,
  'face-at-fault': ({ text }) => text,
  'unknown-parameter': ({ name }) => `There is no parameter ${quoted(name)} here.`,
  'repeated-parameter': () => 'It is there more than once.',
  'too-many-parameters': ({ most }) => `A URL has at most ${most} of them.`,
  'malformed-encoding': () => 'Its percent-encoding is no text in UTF-8.',
  'unknown-field': ({ name }) => `There is no field ${quoted(name)} here.`,
  missing: () => 'It is missing.',
  'wrong-type': ({ type }) => `It is not ${TYPES[type]}.`,
  'empty-text': () => 'It is empty.',
  'empty-list': () => 'It is an empty list.',
  'too-long': ({ most }) => `It has more than ${most} characters.`,
  'too-many-items': ({ most }) => `It has more than ${most} items.`,
  'too-many-places': ({ most }) => `It names more than ${most} places.`,
  'too-small': ({ least }) => `It is less than ${least}.`,
  'too-large': ({ most }) => `It is more than ${most}.`,
  'not-one-of': ({ values }) => `It is none of ${values.join(', ')}.`,
  'unseen-characters': () => 'It has characters in it that no text for people has.',
  'not-a-place': ({ most }) =>
    `Positions, matings and facts have small letters, digits and hyphens, at most ${most}.`,
  'not-a-language-tag': () => 'It is no language tag such as en or de-AT.',
  'not-a-month': () => 'It is no month such as 2004-06.',
  'not-an-edition': () => 'It is no number of an edition such as 3, and not "latest".',
  'repeated-name': ({ name }) =>
    `${quoted(name)} stands here twice; only one of the two would count.`,
  'reserved-name': ({ name }) => `${quoted(name)} is the name of nothing.`,
  'too-deep': ({ most }) => `Nothing is nested more than ${most} deep.`,
  'too-many-values': ({ most }) => `There are more than ${most} values in it.`,
  'not-beside-vehicle': () => 'Where "vehicle" names the vehicle, there is nothing to find it by.',
  'not-beside-names': () => 'Where "part" names what to look up, there is nothing to filter.',
  'not-a-cursor': () => 'It is none that was given out. Begin with the first page.',
  'cursor-of-another-list': () => 'It is of another list. Begin with the first page.',
  'cursor-of-another-edition': () => 'It is of another edition. Begin with the first page.',
  'not-json': (stop) =>
    `The body is no JSON: at line ${stop.line}, column ${stop.column}, ${englishStop(stop)}.`,
  'not-utf-8': () => 'The body is no text in UTF-8.',
  'body-ended-early': () => 'The body ended before all of it had arrived.',
  'body-too-large': ({ most }) => `The body is larger than ${most} bytes.`,
  'body-not-json-type': () =>
    'The body is to be application/json in UTF-8, and Content-Type is to say so.',
  'body-encoded': () => 'The body is to come without a content coding.',
  'body-type-not-taken': ({ types }) =>
    `The body is to be one of ${types} in UTF-8, and Content-Type is to say which.`,
  'coding-not-taken': ({ codings }) => `A body comes in no content coding but ${codings}.`,
  'not-gzip': () => 'The body is not gzip, although Content-Encoding says so.',
  'expands-too-far': ({ most }) => `The body comes to more than ${most} times its size.`,
  'line-too-long': ({ most }) => `The line is longer than ${most} bytes.`,
  'row-not-utf-8': () => 'The row is no text in UTF-8.',
  'malformed-row': ({ rule }) => `The row is no row of this table: ${ROWS[rule]}.`,
  'repeated-column': ({ name }) => `There are two columns ${quoted(name)}.`,
  'unknown-column': ({ name }) => `There is no column ${quoted(name)} here.`,
  'key-not-known': () => 'The key in Authorization is none of this service, or has ended.',
  'no-key': ({ scope }) => `This takes a key with the scope ${scope}, and none came with it.`,
  'scope-not-granted': ({ scope }) => `This takes a key with the scope ${scope}, unlike this one.`,
  'origin-not-granted': () => 'This key is for other pages: Origin is none of them.',
  'question-not-in-view': ({ view, least }) =>
    `The view ${view} has nothing of this question; ${least} has.`,
  'edition-not-in-view': ({ edition }) =>
    `Edition ${edition} is not the newest one, and older ones are not open to everybody.`,
  'list-not-in-view': ({ view, field }) =>
    `The view ${view} has no whole list here: name what is asked about with ${quoted(field)}.`,
  'wish-not-in-view': ({ view, field }) =>
    `What ${quoted(field)} asks for would tell what the view ${view} does not show.`,
  'url-too-long': ({ most }) =>
    `The URL has more than ${most} bytes; POST takes the same questions in a body.`,
  'nothing-at-path': ({ path }) => `There is nothing at ${echo(path)}.`,
  'unknown-problem': ({ path }) => `There is no problem type ${echo(path)}.`,
  'method-not-taken': ({ path, method, allow }) => `${echo(path)} takes ${allow}, not ${method}.`,
  'type-not-accepted': ({ type }) => `The answer is ${type}, which Accept excludes.`,
};
