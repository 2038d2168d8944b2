/**
 * Why a line of a route is there, in words: what would not hold with everything before it done and
 * the line itself left out. Nothing is decided here.
 */

import { NOWHERE } from '../domain/check/reading.js';
import type { ReasonData } from '../domain/explain/reason.js';
import type { Line } from '../domain/kit/basket.js';
import type { Route, Why } from '../domain/kit/route.js';
import type { WhyView } from './kit-answer.js';
import type { Speaker } from './speaker.js';
import { ownDataOf, reasonOf } from './views.js';

export function whyViews(line: Line, route: Route, speaker: Speaker): WhyView[] {
  const reasons = route.why.get(line.key) ?? [];
  return reasons.map((why) => {
    const { after, constraint } = why;
    const said = speaker.said(codeOf(why), whyData(why, line, route, speaker));
    return { ...said, after, constraint: constraint?.id ?? null };
  });
}

/** That a face needs what another part has not is not the same as that nothing is there. */
function codeOf({ code, constraint }: Why): string {
  const isAbsent = code === 'needed-empty' && constraint?.code === 'needed-absent';
  return isAbsent ? 'needed-absent' : code;
}

function whyData(why: Why, line: Line, { basket }: Route, speaker: Speaker): ReasonData {
  switch (why.code) {
    case 'wanted':
      return {};
    case 'donor-content':
      return { text: speaker.lotName(why.name ?? line.fromLot ?? '') };
    case 'consumed':
    case 'recommended':
      return ruleData(why.name, speaker);
    case 'in-the-way':
    case 'taken-out':
      return placeData(
        basket.lines.find(({ key }) => key === why.after),
        speaker,
      );
    default:
      return constraintData(why, speaker);
  }
}

function ruleData(id: string | null, speaker: Speaker): ReasonData {
  const rules = [...speaker.catalogue.rules.values()].flat();
  const rule = rules.find((one) => one.id === id);
  return rule === undefined ? {} : { because: speaker.text(rule.because) };
}

/** What the line that made room for, or was in front of, this one is about. */
function placeData(after: Line | undefined, speaker: Speaker): ReasonData {
  if (after === undefined) return {};
  const { position, hand, part } = after;
  return { part: speaker.named({ ...NOWHERE, position, hand, part }) };
}

/** Both values, or both ends where no values are compared; and what is said of them. */
function constraintData({ code, constraint }: Why, speaker: Speaker): ReasonData {
  if (constraint === null) return {};
  const { text } = reasonOf(constraint, speaker);
  const { a, b, left, right, part, missing } = ownDataOf(constraint, speaker);
  const named = {
    ...(a === undefined ? {} : { a }),
    ...(b === undefined ? {} : { b }),
    ...(part === undefined ? {} : { part }),
  };
  if (code === 'needed-empty') return named;
  const compared = { ...(left === undefined ? {} : { left }), ...(right && { right }) };
  return {
    ...(left === undefined ? named : compared),
    ...(missing === undefined ? {} : { missing }),
    because: text,
  };
}
