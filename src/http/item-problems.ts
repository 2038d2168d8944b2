/**
 * Lists in which a name may lead to nothing: the faults of such an item as a problem, which is
 * this door's to write, and takes nothing from the others.
 */

import type { Operation } from '../contract/operation.js';
import { QuestionError } from '../usecases/errors.js';
import type { QuestionFault } from '../usecases/question-fault.js';
import { spokenTo } from './negotiation.js';
import { itemProblemOf, refusalOf } from './problem.js';
import { parameterCalled } from './query.js';

interface Lost {
  readonly asked: string;
  readonly faults: readonly QuestionFault[];
}

/** The answer of a list that is asked by a URL. */
export function withItemProblems<
  Item extends object,
  Answer extends { readonly lang: string; readonly items: readonly (Item | Lost)[] },
>({ items, ...answer }: Answer, { query }: Pick<Operation, 'query'>) {
  const lang = spokenTo(answer.lang, null);
  return {
    ...answer,
    items: items.map((item) => {
      if (!('faults' in item)) return item;
      const [first, ...others] = item.faults;
      if (first === undefined) throw new Error(`"${item.asked}" is lost without a fault`);
      const error = new QuestionError([first, ...others]);
      const refusal = refusalOf(error, (at) => parameterCalled(at, query));
      return { asked: item.asked, error: itemProblemOf(refusal, lang) };
    }),
  };
}
