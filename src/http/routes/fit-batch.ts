/**
 * Does this part fit this vehicle, for any number of lines in one request: answered as they come.
 */

import { FitLines } from '../../batch/fit-lines.js';
import { LineRefused } from '../../batch/line-refused.js';
import { answersTo } from '../../batch/stream.js';
import {
  CSV_TYPE,
  fitBatchOperation,
  fitBatchSchema,
  LINE_TYPES,
  type LineType,
  NDJSON_TYPE,
} from '../../contract/fit-batch.js';
import type { ItemProblemWire } from '../../contract/problem.js';
import type { View } from '../../contract/view.js';
import type { FitAnswer } from '../../usecases/answer.js';
import type { FitBatch } from '../../usecases/fit-batch.js';
import { settle } from '../asked.js';
import { type Exchange, vary } from '../exchange.js';
import { lineBody } from '../line-body.js';
import { LINE_VARIES, lineReply, logged, type Pieces } from '../line-reply.js';
import { type App, mount } from '../mount.js';
import { acceptsCoding, wishedType } from '../negotiation.js';
import { itemProblemOf, type PlaceOf, Refusal, refusalOf } from '../problem.js';
import { parameterCalled, questionInUrl } from '../query.js';
import type { Service } from '../service.js';

const { path, query } = fitBatchOperation;

export function mountFitBatch(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: LINE_TYPES,
    ask: {
      placeOf: (at) => parameterCalled(at, query),
      answer: (exchange) => askFitBatch(exchange, service),
    },
  });
}

/** The other of the two comes second: what the client wishes for decides, and else what it sent. */
const OFFERED: Readonly<Record<LineType, readonly [LineType, LineType]>> = {
  [NDJSON_TYPE]: [NDJSON_TYPE, CSV_TYPE],
  [CSV_TYPE]: [CSV_TYPE, NDJSON_TYPE],
};

async function askFitBatch(exchange: Exchange, service: Service): Promise<Response> {
  const { request } = exchange;
  const asked = questionInUrl(exchange, query, fitBatchSchema);
  const { head, lang, view } = settle(service, exchange, asked, { path });
  const { type: questions, chunks } = lineBody(request);
  const answers = wishedType(request.headers.get('accept'), OFFERED[questions]);
  const { units = 'recorded', changes = 'no', form = 'short' } = asked;
  // The number and not "the newest": another edition may be published in between.
  const common = { edition: head.number, lang, units, changes, form };
  const batch = shownIn(view, service.useCases.startFitBatch(service.library, common), service);
  const problemOf = (error: unknown, placeOf: PlaceOf): ItemProblemWire => {
    const refusal = error instanceof LineRefused ? refused(error) : refusalOf(error, placeOf);
    if (refusal.code === 'internal-error' || refusal.code === 'store-fault') {
      service.log.error({ err: error, requestId: exchange.id }, refusal.code);
    }
    return itemProblemOf(refusal, lang);
  };
  const lines = new FitLines({ batch, questions, answers, problemOf });
  const pieces = await begun(answersTo(chunks, lines));
  const isPacked = acceptsCoding(request.headers.get('accept-encoding'), 'gzip');
  const told = logged(pieces, exchange, service, {
    word: 'batch ended',
    counts: () => ({ answers: lines.counts.answers, errors: lines.counts.errors }),
  });
  return lineReply(
    exchange,
    told,
    { type: answers, isPacked },
    {
      'faying-edition': String(head.number),
      'faying-view': view,
      'content-language': lang,
      'cache-control': 'no-store',
      ...vary(exchange, [...LINE_VARIES, ...(asked.lang === undefined ? ['Accept-Language'] : [])]),
    },
  );
}

/** The same batch, with no more of its answers than a view shows. */
function shownIn(view: View, batch: FitBatch, { shown }: Service): FitBatch {
  return {
    start: batch.start,
    answer: (line) => {
      const answer = batch.answer(line);
      // Of a short one every view shows all. What is cut is written out, and not looked at again.
      return 'codes' in answer ? answer : (shown.object('FitAnswer', view, answer) as FitAnswer);
    },
  };
}

function refused({ code, faults, cause }: LineRefused): Refusal {
  return new Refusal(code, faults, { cause });
}

/** With the first piece at hand: until then a batch can still be refused as a whole. */
async function begun(pieces: Pieces): Promise<Pieces> {
  try {
    const first = await pieces.next();
    return resumed(first, pieces);
  } catch (error) {
    throw error instanceof LineRefused ? refused(error) : error;
  }
}

async function* resumed(first: IteratorResult<string, void>, pieces: Pieces): Pieces {
  try {
    if (first.done !== true) yield first.value;
    yield* pieces;
  } finally {
    // Where nobody has taken the first one yet.
    await pieces.return();
  }
}
