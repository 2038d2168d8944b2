/**
 * Do these two faces meet? In a URL, or in a body.
 */

import { nearestTo } from '../../contract/json-pointer.js';
import {
  type MateQuestion,
  mateFacesOperation,
  mateQuestionSchema,
  mateUrlQuestionSchema,
} from '../../contract/mate.js';
import type { NamingInput } from '../../usecases/asked-parts.js';
import type { MateEndInput, MateInput } from '../../usecases/mate-faces.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import type { Place } from '../problem.js';
import { parameterCalled, questionInUrl } from '../query.js';
import type { Service } from '../service.js';

const { path, query } = mateFacesOperation;

export function mountMate(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, query),
      answer: (exchange) => mateFaces(exchange, service),
    },
    ask: { placeOf: placeInBody, answer: (exchange) => askMate(exchange, service) },
  });
}

function mateFaces(exchange: Exchange, service: Service): Response {
  return answer(exchange, questionInUrl(exchange, query, mateUrlQuestionSchema), service);
}

async function askMate(exchange: Exchange, service: Service): Promise<Response> {
  return answer(exchange, await questionInBody(exchange, mateQuestionSchema), service);
}

function answer(exchange: Exchange, asked: MateQuestion, service: Service): Response {
  const { mateFaces: judge } = service.useCases;
  return answerNaming(service, exchange, { path, query, asked, inputOf, judge });
}

function inputOf(question: MateQuestion, common: NamingInput): MateInput {
  const { a, b, adapters, use, units } = question;
  return {
    ...common,
    a: endOf(a),
    b: endOf(b),
    adapters: adapters ?? [],
    use: use ?? null,
    units: units ?? 'recorded',
  };
}

function endOf(end: MateQuestion['a']): MateEndInput {
  if ('inline' in end) return end;
  return { part: end.part, interface: end.interface ?? null };
}

/** The use-case calls an end `a`, its face `a.face`, and points into a face that is written out. */
function placeInBody(at: string): Place {
  const inside = /^\/([ab])\/interface(.*)$/.exec(at);
  if (inside !== null) return { pointer: nearestTo(`/${inside[1]}/inline${inside[2]}`) };
  if (at === 'a' || at === 'b') return { pointer: `/${at}/part` };
  return pointerCalled(at.replace(/^([ab])\.face$/, '$1.interface'));
}
