/**
 * Levers and gearboxes that go together, and the two faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

const common = {
  kind: 'shift-linkage',
  type: 'cables',
  gates: 4,
  reverse: 'left-forward',
  'shift-sense': 'push',
  'gate-sense': 'pull',
  end: 'ball',
} as const;

/** Six gears, and reverse in a gate of its own beside the first. */
export const gearbox = {
  ...common,
  side: 'gearbox',
  'reverse-lock': 'built-in',
  'shift-travel': '24.0 ±0.5 mm',
} as const;

export const lever = {
  ...common,
  side: 'lever',
  'lock-out': 'none',
  'shift-travel': '26.0 ±0.5 mm',
} as const;

export const held: Expected = {
  'equal-type': 'holds',
  'known-type': 'holds',
  gates: 'holds',
  'spare-gate': 'holds',
  'equal-reverse': 'holds',
  'known-reverse-lock': 'holds',
  'lock-out': 'holds',
  'double-lock': 'holds',
  'equal-shift-sense': 'holds',
  'equal-gate-sense': 'holds',
  'shift-travel': 'holds',
  'shift-over-travel': 'holds',
  'equal-end': 'holds',
};

const { 'lock-out': _, ...heldWithLever } = held;
const { 'double-lock': __, ...heldAtLever } = heldWithLever;
const { 'double-lock': ___, ...unlocked } = held;
const { 'equal-shift-sense': ____, 'equal-gate-sense': _____, ...heldDirect } = held;

/** The lever locks reverse out, and the gearbox relies on it. */
export const heldWithLockAtLever: Expected = heldAtLever;
/** The gearbox relies on the lever, which has no lock. */
export const heldUnlocked: Expected = unlocked;

export const fixtures: readonly Fixture[] = [
  {
    says: 'two cables, four gates, reverse locked out in the box',
    faces: [gearbox, lever],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'reverse locked out by a ring at the lever',
    faces: [
      { ...gearbox, 'reverse-lock': 'at-lever' },
      { ...lever, 'lock-out': 'lift-ring' },
    ],
    outcome: 'holds',
    checks: heldWithLockAtLever,
  },
  {
    says: 'reverse locked out twice goes, but somebody must try it',
    faces: [gearbox, { ...lever, 'lock-out': 'lift-ring' }],
    outcome: 'holds',
    checks: { ...heldWithLever, 'double-lock': 'fails locked-out-twice' },
  },
  {
    says: 'rods with their pins, where they are recorded',
    faces: [
      { ...gearbox, type: 'rods', end: 'eye', pin: '10.0 ±0.05 mm', 'gate-travel': '30 ±0.5 mm' },
      { ...lever, type: 'rods', end: 'eye', eye: '10.1 ±0.05 mm', 'gate-travel': '32 ±0.5 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'gate-travel': 'holds', pin: 'holds', 'pin-play': 'holds' },
  },
  {
    says: 'a lever that sits on the box has no sense of its own',
    faces: [
      without({ ...gearbox, type: 'direct' }, 'shift-sense', 'gate-sense'),
      without({ ...lever, type: 'direct' }, 'shift-sense', 'gate-sense'),
    ],
    outcome: 'holds',
    checks: heldDirect,
  },
  {
    says: 'a six-speed lever on a five-speed box shows a gate too many',
    faces: [{ ...gearbox, gates: 3 }, lever],
    outcome: 'holds',
    checks: { ...held, 'spare-gate': 'fails gate-to-spare' },
  },
  {
    says: 'a worn eye rattles',
    faces: [
      { ...gearbox, pin: '10.0 ±0.05 mm' },
      { ...lever, eye: '10.6 ±0.05 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, pin: 'holds', 'pin-play': 'fails loose-on-pin' },
  },
];
