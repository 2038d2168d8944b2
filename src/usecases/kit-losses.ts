/**
 * What a vehicle loses by a change, in words.
 */

import { NOWHERE, type NumberReading } from '../domain/check/reading.js';
import type { NamedValue } from '../domain/explain/reason.js';
import type { Configuration } from '../domain/judge/configuration.js';
import { type Loss, lossesOf } from '../domain/kit/losses.js';
import type { SaidReason } from './answer.js';
import { once } from './cautions.js';
import type { Speaker } from './speaker.js';

export function lossViews(configuration: Configuration, speaker: Speaker): SaidReason[] {
  return once(lossesOf(configuration).map((loss) => lossView(loss, speaker)));
}

function lossView(loss: Loss, speaker: Speaker): SaidReason {
  switch (loss.is) {
    case 'place-emptied': {
      const { position, hand, part } = loss;
      return speaker.said(loss.is, { part: speaker.named({ ...NOWHERE, position, hand, part }) });
    }
    case 'joint-lost': {
      const [a, b] = loss.ends.map((end) => ({ ...speaker.namedEnd(end), hand: loss.hand }));
      if (a === undefined || b === undefined) throw new Error('a joint has two ends');
      return speaker.said(loss.is, { a, b });
    }
    default: {
      const left = namedNumber(loss.after, speaker);
      return speaker.said(loss.is, { left, right: namedNumber(loss.before, speaker) });
    }
  }
}

function namedNumber(reading: NumberReading, speaker: Speaker): NamedValue {
  const { address, recorded, domain, dimension } = reading;
  const text = speaker.readingText(reading);
  const computed = speaker.values.known(domain, dimension);
  const value = recorded ? { ...computed, text: text ?? computed.text } : null;
  return speaker.namedValue(address, value, null);
}
