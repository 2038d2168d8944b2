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
import type { MateEndInput, MateInput } from '../../usecases/mate-faces.js';
import { answerTo } from '../asked.js';
import { pointerAt, pointerCalled, readBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { checkForm } from '../form.js';
import { type App, mount } from '../mount.js';
import { lifetimesOf, type NamingSettled, settleNaming } from '../naming.js';
import type { Place } from '../problem.js';
import { parameterAt, parameterCalled, readQuery, refuseParameters } from '../query.js';
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
  const read = readQuery(exchange.search, query);
  const question = checkForm(mateUrlQuestionSchema, read, (at) => parameterAt(at, query));
  return answer(exchange, question, service);
}

async function askMate(exchange: Exchange, service: Service): Promise<Response> {
  refuseParameters(exchange.search);
  const read = await readBody(exchange);
  const question = checkForm(mateQuestionSchema, read, pointerAt);
  return answer(exchange, question, service);
}

function answer(exchange: Exchange, asked: MateQuestion, service: Service): Response {
  const settled = settleNaming(service, exchange, asked);
  const input = inputOf(asked, settled);
  const { mateFaces: judge } = service.useCases;
  return answerTo(service, exchange, settled, {
    path,
    query,
    asked,
    lifetimes: lifetimesOf(settled),
    input,
    judge,
  });
}

function inputOf(question: MateQuestion, { head, lang, offers }: NamingSettled): MateInput {
  const { a, b, adapters, use, units } = question;
  return {
    edition: head.number,
    lang,
    ...(offers === null ? {} : { offers }),
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
