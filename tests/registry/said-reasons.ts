/**
 * Every reason that answers give: those to all questions that the demo catalogue is asked in tests,
 * and to the small cases for what none of them leads to.
 */

import type { ReasonCode } from '../../src/domain/explain/reason.js';
import type { SaidReason } from '../../src/usecases/answer.js';
import { askFit, askKits } from '../demo/ask.js';
import { frame4x4 } from '../demo/frame-4x4.js';
import { fits, inspections, matings } from '../demo/questions.js';
import { rearIrs } from '../demo/rear-irs.js';
import { transverse } from '../demo/transverse.js';
import { REASON_CASES } from './reason-cases.js';

/** What an answer says with a code: reasons, and cautions, which have no data. */
export type Said = Pick<SaidReason, 'code' | 'text'> & Partial<Pick<SaidReason, 'data'>>;

/** Everything in an answer that has a code and a sentence. */
export function saidIn(value: unknown): Said[] {
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.values(value).flatMap(saidIn);
  return 'code' in value && 'text' in value ? [value as Said, ...inner] : inner;
}

/** What it takes, as a kit question and beside the verdict. */
const KITS: readonly (() => unknown)[] = [
  askKits('lirren-1', ['gearbox-6-late'], { routes: 6 }),
  askKits('lirren-1', ['gearbox-6-late'], { keep: ['rear-final-drive', 'front-half-shaft'] }),
  askKits('lirren-1', ['clutch-late'], { fitted: { gearbox: 'gearbox-6-late' } }),
  askKits('ordale-1', ['tyre-205-80-16@front-tyre']),
  askKits('lirren-1', ['front-hub-used'], { unknowns: 'refuse' }),
  // Another part on either side stays.
  askKits('vessimer-20', ['final-drive-vessimer-plates'], { keep: ['rear-half-shaft'] }),
  askFit('lirren-1', 'front-hub-117', { changes: 'yes' }),
  askFit('lirren-1', 'prop-remade', { changes: 'yes' }),
];

const QUESTIONS: readonly (() => unknown)[] = [
  ...Object.values(fits),
  ...Object.values(inspections),
  ...Object.values(matings),
  ...KITS,
  ...[frame4x4, rearIrs, transverse].flatMap((told) => Object.values(told).map(({ ask }) => ask)),
];

/** To the demo catalogue. */
export function saidOfDemo(): Said[] {
  return QUESTIONS.flatMap((ask) => saidIn(ask()));
}

/** To the small case of a code. */
export function saidOfCase(code: ReasonCode): Said[] {
  return saidIn(REASON_CASES[code]?.());
}
