/**
 * What each limit is the most of, in English, and what becomes of more where it is not refused.
 */

import type { LimitWords } from './problem-words.js';

export const ENGLISH_LIMITS: LimitWords = {
  urlBytes: 'Path and query of a URL together; POST takes the same questions in a body.',
  headerBytes: 'The URL, and the names and values of all headers, together.',
  headerCount: 'Headers of one request.',
  bodyBytes: 'A body.',
  arrivalMs: 'The time for a request to arrive whole.',
  stallMs: 'The time in which no byte of an answer is taken; then the connection is cut.',
  batchLineBytes:
    'A line of a batch, or a row with all the lines that it goes over; the others are answered.',
  gzipExpansion:
    'How many times its size a compressed batch may come to, once that is more than a megabyte.',
  bodyValues: 'Values in a body, lists and objects among them.',
  bodyLevels: 'Lists and objects in one another in a body.',
  placesInUrl: 'Parameters of one group, such as `with.<position>`, in a URL; POST takes more.',
  placesInBody: 'Positions, matings or facts that one field of a body names.',
  adaptersInRow: 'Adapters in a row in one mating; a mating may take fewer.',
  nameCharacters: 'The name of a vehicle, a part, a face or a value of a fact.',
  placeCharacters: 'The id of a position, a mating or a fact.',
  valueCharacters: 'A value with its unit: a torque, or a size of a face that is written out.',
  languageTagCharacters: 'The language tag in `lang`.',
  numberDigits: 'Digits of one number in a value.',
  faceAlternatives: 'Ways in which a face that is written out can be, each size to choose counted.',
  facePoints: 'Points of a pattern in a face that is written out.',
  wants: 'Things that a kit question wishes for, and parts of which one is wished for.',
  wantsInUrl: 'Things that a kit question in a URL wishes for; POST takes more.',
  kitEntries:
    'What one list of a question names: what was measured; what is kept, avoided or owned; lots.',
  ownOffers: "Prices of one's own that a kit question brings.",
  ownedPieces: 'Pieces of one part that are at hand.',
  stockPieces: "Pieces in stock of an offer of one's own.",
  leadDays: 'Days until something is there.',
  routes: 'Routes that a kit question asks for.',
  drivenRoutes: 'Routes whose driving is told side by side.',
  drivenLines: 'Lines of a kit whose driving is told.',
  routeKeyCharacters: 'The key of a route.',
  kitSteps:
    'Steps that the search for routes takes; an answer that would take more says so in `complete`.',
  listEntries: 'Entries on one page of a list.',
  cursorCharacters: 'The cursor with which a list goes on.',
  requestIdCharacters:
    'An `X-Request-Id` that is taken over; a longer one is replaced by an id of our own.',
  refCharacters: 'The `ref` by which a line of a batch is known again.',
  graphqlTokens: 'Tokens of a document of GraphQL.',
  graphqlBrackets: 'Brackets inside each other, of any sort, in a document of GraphQL.',
  graphqlLevels: 'How deep a document of GraphQL selects, its fragments spread.',
  graphqlFields: 'Fields and directives of a document of GraphQL, its fragments spread.',
  graphqlCost:
    'What the questions of one request of GraphQL cost: a record 1, a part on a vehicle 2, a ' +
    'search for changes 20.',
  namesLookedUp: 'Parts or vehicles that are named at once; a URL may be full before.',
  fitsSolved: 'Entries of a list of fits for which changes are looked for.',
  vehiclesJudged:
    'Vehicles that may be meant where a question says what is known of one: of more it is asked ' +
    'first what tells them apart.',
  vehiclesSolved:
    'Of these, those that something tells apart and for which changes are looked for.',
  wishCharacters: 'What is read of `Accept` and of `Accept-Language`; the rest is left unread.',
  faultsTold: 'Faults of one request that a problem lists in `errors`; the rest is left out.',
};
