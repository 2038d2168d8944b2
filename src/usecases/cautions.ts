/**
 * The cautions that stand beside every answer: of the groups that the change touches, of works
 * that somebody must sign, of checks and of rules.
 */

import type { Work } from '../domain/catalogue/trade.js';
import { sayCaution } from '../domain/explain/words.js';
import type { Configuration } from '../domain/judge/configuration.js';
import { isChanged } from '../domain/judge/configuration.js';
import type { Constraint } from '../domain/judge/constraint.js';
import type { Judgement } from '../domain/judge/judge.js';
import { namesOf } from '../domain/judge/worked-part.js';
import type { CautionView } from './answer.js';
import type { Speaker } from './speaker.js';
import { checkView } from './views.js';

/**
 * The groups of everything that the changes touch, then what their checks and rules warn of; each
 * once.
 */
export function cautionViews(judgements: readonly Judgement[], speaker: Speaker): CautionView[] {
  const toldBy = (one: Speaker) => judgements.flatMap((judgement) => cautionsIn(judgement, one));
  const told = toldBy(speaker);
  // Two that read alike in other units may differ as recorded, and are two in all units then.
  const plain = speaker.inRecordedUnits();
  return once(told, plain === speaker ? told : toldBy(plain));
}

function cautionsIn(judgement: Judgement, speaker: Speaker): CautionView[] {
  const { configuration, constraints } = judgement;
  const groups = new Set<string>(['general']);
  const { roles } = configuration.catalogue;
  for (const position of configuration.layout.positions.values()) {
    if (!isChanged(configuration, position.id)) continue;
    for (const role of position.roles) {
      const group = roles.get(role)?.caution;
      if (group !== null && group !== undefined) groups.add(group);
    }
  }
  for (const constraint of constraints) {
    if (constraint.form !== 'mating' || constraint.state === 'given') continue;
    for (const { kind } of constraint.joints) {
      if (kind?.caution !== null && kind?.caution !== undefined) groups.add(kind.caution);
    }
  }
  const usual = usualCautions(groups, speaker);
  const own = constraints.flatMap((constraint) => ownCautions(constraint, speaker));
  return [...usual, ...signOffs(configuration, speaker), ...own];
}

export function usualCautions(
  groups: Iterable<string>,
  speaker: Pick<Speaker, 'lang'>,
): CautionView[] {
  return [...groups].map((group) => ({
    code: group,
    group,
    show: 'always',
    text: sayCaution(group, speaker.lang),
  }));
}

/** The cautions of what is shown by itself: the general one too, where there is any. */
export function cautionsOf(
  groups: Iterable<string | null>,
  speaker: Pick<Speaker, 'lang'>,
): CautionView[] {
  const known = new Set([...groups].filter((group) => group !== null));
  return known.size === 0 ? [] : usualCautions(new Set(['general', ...known]), speaker);
}

const SIGNED = {
  engineer: 'engineer-signs',
  workshop: 'workshop-signs',
} as const;

interface WorkOn {
  /** The worked article. */
  readonly part: string;
  readonly work: Work;
}

/** The works on all parts that are in a configuration. */
export function worksIn({ catalogue, judged }: Configuration): WorkOn[] {
  const seated = [...judged.seats.values()].flatMap((seats) =>
    (seats.hands ? [seats.left, seats.right] : [seats.seat]).flatMap(({ occupant }) =>
      occupant.is === 'part' ? [occupant.part] : [],
    ),
  );
  const between = [...judged.adapters.values()].flatMap(({ parts }) => parts);
  return [...new Set([...seated, ...between])].flatMap((id) => {
    const [, ...works] = namesOf(id);
    return works.flatMap((one) => {
      const work = catalogue.works.get(one);
      return work === undefined ? [] : [{ part: id, work }];
    });
  });
}

/** Who must sign for the work on each worked part that is in the question. */
function signOffs(configuration: Configuration, speaker: Speaker): CautionView[] {
  return worksIn(configuration).map(({ part, work: { signOff } }) => {
    const code = signOff === null ? 'work-first' : SIGNED[signOff];
    const { text } = speaker.said(code, { text: speaker.partName(part) ?? part });
    return { code, group: 'general', show: 'always', text };
  });
}

function ownCautions(constraint: Constraint, speaker: Speaker): CautionView[] {
  if (constraint.state === 'given') return [];
  // Where two faces do not meet anyway, what else they would want is noise.
  if (constraint.form === 'mating' && constraint.state === 'fails') return [];
  const cautions = constraint.checks.flatMap((result) => {
    const { caution } = checkView(result, speaker);
    if (caution === null) return [];
    const { code, text } = caution;
    return [{ code, group: 'general', show: 'always' as const, text }];
  });
  if (constraint.form !== 'rule') return cautions;
  const said = [constraint.caution, constraint.note].filter((text) => text !== null);
  const rules = said.map((text) => ({
    code: constraint.id,
    group: 'general',
    show: text === constraint.caution ? ('always' as const) : ('trade' as const),
    text: speaker.text(text),
  }));
  return [...cautions, ...rules];
}

/** What is said twice is said once; `by` are the texts that tell, one for each. */
export function once<Said extends { readonly text: string }>(
  said: readonly Said[],
  by: readonly { readonly text: string }[] = said,
): Said[] {
  const seen = new Set<string>();
  return said.filter((one, index) => {
    const { text } = by[index] ?? one;
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew;
  });
}
