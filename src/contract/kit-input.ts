/**
 * A kit question as the use-case takes it: what is left out, filled in.
 */

import type { KitInput, OwnOfferInput, USUAL_KIT, WantInput } from '../usecases/kit-input.js';
import type { KitQuestion } from './kit-question.js';

type Usual = typeof USUAL_KIT;
type OwnFields = Pick<KitInput, keyof Usual>;

/** What a kit question has beside the vehicle; `usual` is what it is where it says nothing. */
export function kitFields(question: KitQuestion, usual: Usual): OwnFields {
  const { want = [], owned = [], limits = {}, offers = [] } = question;
  return {
    want: want.map(wantOf),
    keep: question.keep ?? usual.keep,
    avoid: question.avoid ?? usual.avoid,
    owned: owned.map(({ part, quantity = null }) => ({ part, quantity })),
    lots: question.lots ?? usual.lots,
    workUpTo: question.workUpTo ?? usual.workUpTo,
    limits: {
      cost: limits.cost ?? null,
      changedPositions: limits.changedPositions ?? null,
      labourHours: limits.labourHours ?? null,
      leadDays: limits.leadDays ?? null,
      inStock: limits.inStock ?? usual.limits.inStock,
    },
    labourRate: question.labourRate ?? usual.labourRate,
    ruleset: question.ruleset ?? usual.ruleset,
    unknowns: question.unknowns ?? usual.unknowns,
    from: question.from ?? usual.from,
    ownOffers: offers.map(offerOf),
    offersMode: question.offersMode ?? usual.offersMode,
    prefer: question.prefer ?? usual.prefer,
    routes: question.routes ?? usual.routes,
    undominated: question.undominated ?? usual.undominated,
    steps: question.steps ?? usual.steps,
  };
}

type Field<Name extends keyof KitQuestion> = NonNullable<KitQuestion[Name]>;

function wantOf(want: Field<'want'>[number]): WantInput {
  if ('lot' in want) return { lot: want.lot, whole: want.whole ?? null };
  if (!('part' in want)) return want;
  const { part, position = null, hand = null, renew = false } = want;
  return { part, position, hand, renew };
}

function offerOf(offer: Field<'offers'>[number]): OwnOfferInput {
  const { price, stock = null, leadDays = null, pack = null } = offer;
  return { ...goodsOf(offer), price, stock, leadDays, pack };
}

function goodsOf(offer: Field<'offers'>[number]): Pick<OwnOfferInput, 'of' | 'name'> {
  if ('part' in offer) return { of: 'part', name: offer.part };
  if ('lot' in offer) return { of: 'lot', name: offer.lot };
  if ('work' in offer) return { of: 'work', name: offer.work };
  return { of: 'sku', name: offer.sku };
}
