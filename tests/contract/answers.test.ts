/**
 * Every answer that the demo catalogue gives, against the shapes that the contract promises: no
 * field is missing, none is there that the contract does not name.
 */

import { describe, expect, test } from 'vitest';
import { editionsAnswerSchema } from '../../src/contract/editions.js';
import { fitAnswerSchema } from '../../src/contract/fit-answer.js';
import { inspectAnswerSchema } from '../../src/contract/inspect.js';
import { kitAnswerSchema } from '../../src/contract/kit-answer.js';
import { kitFields } from '../../src/contract/kit-input.js';
import { type KitQuestion, kitQuestionSchema } from '../../src/contract/kit-question.js';
import { mateAnswerSchema } from '../../src/contract/mate.js';
import { vehicleInput } from '../../src/contract/vehicle-input.js';
import { USUAL_KIT } from '../../src/usecases/kit-input.js';
import { resolveKitQuestion } from '../../src/usecases/resolve-kits.js';
import { fits, inspections, matings } from '../demo/questions.js';
import { demoDocument, libraryOf } from '../memory-store.js';

/** As it goes over the wire, where nothing is undefined. */
function onWire(answer: object): unknown {
  return JSON.parse(JSON.stringify(answer));
}

const library = libraryOf(demoDocument());

/** With works, lots, oil by the litre, open routes, and none at all. */
const KITS: Readonly<Record<string, KitQuestion>> = {
  'a clutch kit': {
    vehicle: 'gallivet',
    want: [{ lot: 'clutch-kit-215' }],
    labourRate: '60.00',
    lang: 'de',
  },
  'a hub that is turned down': {
    vehicle: 'gallivet-4',
    want: [{ part: ['hub-rear-pellory+turn-rear-spigot'] }],
    units: 'imperial',
    routes: 2,
  },
  'a hub at a reading': {
    vehicle: 'lirren-1',
    want: [{ part: ['front-hub-used'] }],
    measured: [
      {
        on: { part: 'front-hub-used', interface: 'wheel', parameter: 'spigot' },
        value: '56.10 ±0.05 mm',
      },
    ],
    routes: 1,
  },
  'no way': {
    vehicle: 'lirren-1',
    want: [{ part: ['gearbox-6-late'] }],
    keep: ['rear-final-drive', 'front-half-shaft', 'prop-shaft'],
  },
};

describe('the answers of the demo', () => {
  test.each(Object.entries(fits))('fit: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(fitAnswerSchema.parse(answer)).toEqual(answer);
  });

  test.each(Object.entries(inspections))('inspect: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(inspectAnswerSchema.parse(answer)).toEqual(answer);
  });

  test.each(Object.entries(matings))('mate: %s', (_, ask) => {
    const answer = onWire(ask());
    expect(mateAnswerSchema.parse(answer)).toEqual(answer);
  });

  test.each(Object.entries(KITS))('kits: %s', (_, question) => {
    const { vehicle = '' } = question;
    const asked = { ...question, vehicle };
    const common = vehicleInput(asked, { edition: 1, lang: question.lang ?? 'en' });
    const input = { ...common, ...kitFields(question, USUAL_KIT) };
    const answer = onWire(resolveKitQuestion(library, input)) as { question: unknown };
    expect(kitAnswerSchema.parse(answer)).toEqual(answer);
    expect(kitQuestionSchema.parse(answer.question)).toEqual(answer.question);
  });

  test('a field that the contract does not name is refused, however deep', () => {
    const [ask] = Object.values(fits);
    const answer = onWire(ask?.() ?? {}) as { positions: { matings: object[] }[] };
    const [position] = answer.positions;
    position?.matings.push({ ...position.matings[0], extra: 1 });
    expect(fitAnswerSchema.safeParse(answer).success).toBe(false);
    expect(editionsAnswerSchema.safeParse({}).success).toBe(false);
  });
});
