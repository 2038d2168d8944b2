/**
 * What each type of problem means, in English: its title, and what whoever meets it should know.
 *
 * Length: one table, with a title and a paragraph for each type.
 */

import { LIMITS } from '../limits.js';
import type { ProblemTypeWords } from './problem-words.js';

export const ENGLISH_PROBLEMS: ProblemTypeWords = {
  'invalid-request': {
    title: 'The request has not the form that it should have',
    about:
      'A parameter or field is missing, unknown, named twice, or not of the type that it should ' +
      'have. "errors" names every one, by parameter of the URL or by JSON pointer into the body.',
  },
  'invalid-cursor': {
    title: 'The list cannot go on from here',
    about:
      'A cursor is `next` of an answer, asked with the same filters, of an edition that is still ' +
      'there. Begin with the first page: ask without `cursor`.',
  },
  'malformed-json': {
    title: 'The body is not JSON',
    about: 'The body is no JSON text in UTF-8 (RFC 8259). "detail" says where it stops being one.',
  },
  'malformed-request': {
    title: 'The request cannot be read',
    about: 'What arrived is no HTTP request, has no valid host or URL, or ended too early.',
  },
  'unknown-path': {
    title: 'There is nothing at this path',
    about: 'No resource of the service has this path. GET /openapi.json lists them.',
  },
  'unknown-problem': {
    title: 'There is no such problem type',
    about: 'GET /problems lists the types of problems that there are.',
  },
  'unknown-edition': {
    title: 'There is no such edition',
    about: 'Editions are numbered 1, 2, 3 and so on; GET /v1/editions lists them.',
  },
  'unknown-vehicle': {
    title: 'There is no such vehicle',
    about: 'This edition has no vehicle of this id.',
  },
  'vehicle-replaced': {
    title: 'More exact vehicles took the place of this one',
    about:
      'The vehicle was recorded roughly, and others took its place since: `candidates` in ' +
      '"errors" has them all. "ask" says what to ask whoever owns it to tell them apart; an ' +
      'edition from before still answers for the old one.',
  },
  'unknown-part': {
    title: 'There is no such part',
    about:
      'This edition has no part of this id, number or order code. A part that nobody recorded ' +
      'is unknown, not unfit.',
  },
  'ambiguous-part': {
    title: 'The name is of more than one part',
    about:
      'Two makers can print the same number, and two parts can be offered under one order code. ' +
      'None of them is taken for granted: `candidates` in "errors" has them all. Name the part ' +
      'by its id, or its number with the maker, as in number:44/10-077@maker.',
  },
  'unknown-layout': {
    title: 'There is no such layout',
    about: 'This edition has no layout of this id; GET /v1/layouts lists them.',
  },
  'unknown-role': {
    title: 'There is no such role',
    about: 'This edition has no role of this id; GET /v1/roles lists them.',
  },
  'unknown-kind': {
    title: 'There is no such kind of interface',
    about:
      'No kind of this id is built in, nor does this edition declare one; GET /v1/kinds lists ' +
      'them.',
  },
  'unknown-calculation': {
    title: 'There is no such calculator',
    about: 'No calculator has this name; GET /v1/calculate lists them all.',
  },
  'unknown-key': {
    title: 'The key is not known',
    about:
      'The header Authorization says `Bearer` and a key, and this is none of this service, or it ' +
      'has ended. Without any key the service answers what is open to everybody.',
  },
  'key-needed': {
    title: 'This takes a key',
    about:
      'It is not open to everybody. Whoever runs the service gives out keys; one is sent as ' +
      '`Authorization: Bearer` and the key, never in a URL.',
  },
  'not-granted': {
    title: 'This is not granted to who asks',
    about:
      'The key has not the scope for it, is for other pages, or the view that was wished for has ' +
      'nothing of the question. "errors" says which scope or view it takes.',
  },
  'method-not-allowed': {
    title: 'This method is not for this path',
    about: 'The header Allow of the answer lists the methods that the path takes.',
  },
  'not-acceptable': {
    title: 'The answer cannot be given in this form',
    about:
      'Answers are application/json, those of a batch application/x-ndjson or text/csv, and the ' +
      'header Accept of the request excludes that.',
  },
  'request-timeout': {
    title: 'The request did not arrive in time',
    about: 'The service waited for the rest of the request and gave up; "limit" says how long.',
  },
  'body-too-large': {
    title: 'The body is too large',
    about:
      `A body has at most ${LIMITS.bodyBytes.value} bytes. A batch may have any number, but no ` +
      `line of more than ${LIMITS.batchLineBytes.value}. "limit" says which was passed.`,
  },
  'url-too-long': {
    title: 'The URL is too long',
    about:
      `Path and query have at most ${LIMITS.urlBytes.value} bytes; "limit" says so. POST takes ` +
      'the same questions in a body.',
  },
  'unsupported-media-type': {
    title: 'The body is not of a type that is read here',
    about:
      'A body is application/json in UTF-8, without a content coding; that of a batch is ' +
      'application/x-ndjson or text/csv, and may be packed with gzip.',
  },
  'expectation-failed': {
    title: 'The expectation cannot be met',
    about: 'The header Expect may say 100-continue and nothing else.',
  },
  'unknown-position': {
    title: 'The vehicle has no such position',
    about: "The layout of this vehicle has no position of this id. 'errors' says which was meant.",
  },
  'unknown-interface': {
    title: 'The part has no such face',
    about: 'No face of this name is recorded of the part.',
  },
  'invalid-question': {
    title: 'The question asks for something that cannot be',
    about:
      'Each field is of the right form, but not all of it can be so: a torque without a unit, ' +
      'three adapters where one goes, or several things that are not there. "errors" says which.',
  },
  'headers-too-large': {
    title: 'The headers are too large',
    about: 'The request line and the headers together are more than the service reads.',
  },
  'internal-error': {
    title: 'Something went wrong inside',
    about:
      'A mistake of the service, not of the question. The log has it under the id that ' +
      '"instance" gives: tell that id to those who run the service.',
  },
  'no-edition': {
    title: 'Nothing has been published yet',
    about:
      'The service has no edition of a catalogue to answer from. Those who run it give it one ' +
      'with "faying publish".',
  },
  'store-fault': {
    title: 'The catalogue cannot be read',
    about:
      'What is stored cannot be used. The log says what is wrong and what mends it, under the id ' +
      'that "instance" gives.',
  },
  stopping: {
    title: 'The service is being stopped',
    about: 'It answers what it has begun and takes nothing new. Ask another replica.',
  },
};
