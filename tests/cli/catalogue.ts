/**
 * A small cart: a gearbox with a shaft behind it, a lever above, and a shaft to either wheel.
 * Enough for one answer of each sort; every name is invented.
 */

const flange = (pattern: string, register?: string, side = 'spigot') => ({
  kind: 'cart-flange',
  side,
  pattern,
  ...(register === undefined ? {} : { register }),
});

const box = (id: string, rear: object, more: object = {}) => ({
  id,
  name: `box ${id.slice(-1)}`,
  roles: ['gearbox'],
  interfaces: { rear, ...more },
  values: { torque: '200 N.m' },
});

export const CART = {
  catalogue: 1,
  lang: 'en',
  currency: 'EUR',
  evidence: { basis: 'measured' },
  kinds: [
    {
      id: 'cart-flange',
      name: 'cart flange',
      sides: ['spigot', 'recess'],
      parameters: {
        pattern: { type: 'code' },
        register: { type: 'measured', unit: 'mm', tool: 'caliper' },
      },
      checks: [
        { equal: 'pattern' },
        {
          id: 'register',
          clearance: ['recess.register', 'spigot.register'],
          min: '0 mm',
          max: '0.2 mm',
          code: 'register-jams',
          text: 'The register must go in.',
        },
        { 'one-of': ['spigot.pattern', ['f1']], severity: 'caution', text: 'An old pattern.' },
      ],
      notChecked: ['length of the bolts'],
      caution: 'driveline',
    },
  ],
  roles: [
    {
      id: 'gearbox',
      name: 'Gearbox',
      caution: 'driveline',
      faces: ['rear'],
      values: { torque: { type: 'measured', unit: 'N.m', rating: true } },
    },
    { id: 'engine', name: 'Engine', values: { torque: { type: 'measured', unit: 'N.m' } } },
    { id: 'shaft', name: 'Shaft', caution: 'driveline', faces: ['front'] },
    { id: 'wheel-shaft', name: 'Wheel shaft', caution: 'driveline' },
    { id: 'plate', name: 'Plate', faces: ['one', 'other'] },
  ],
  layouts: [
    {
      id: 'cart',
      positions: [
        { id: 'engine', name: 'Engine', roles: ['engine'] },
        { id: 'gearbox', name: 'Gearbox', roles: ['gearbox'] },
        { id: 'prop-shaft', name: 'Long shaft', roles: ['shaft'] },
        { id: 'wheel-shaft', name: 'Wheel shaft', roles: ['wheel-shaft'], count: 2, handed: true },
      ],
      matings: [{ id: 'box-shaft', between: ['gearbox.rear', 'prop-shaft.front'], adapters: 1 }],
      checks: [
        {
          id: 'box-torque',
          'at-least': ['gearbox.torque', 'engine.torque'],
          text: 'Strong enough.',
        },
      ],
    },
  ],
  parts: [
    { id: 'motor', name: 'motor', roles: ['engine'], values: { torque: '150 N.m' } },
    box('box-a', flange('f1', '60.00 ±0.02 mm')),
    box('box-b', flange('f2', '70.00 ±0.02 mm')),
    box('box-c', flange('f1')),
    box('box-d', flange('f1', '60.05 ±0.02 mm')),
    {
      id: 'shaft-a',
      name: 'long shaft a',
      roles: ['shaft'],
      interfaces: { front: flange('f1', '60.10 ±0.02 mm', 'recess') },
    },
    {
      id: 'plate-ab',
      name: 'plate f2 to f1',
      roles: ['plate'],
      interfaces: {
        one: flange('f2', '70.10 ±0.02 mm', 'recess'),
        other: flange('f1', '60.00 ±0.02 mm'),
      },
    },
    { id: 'wheel-shaft-l', name: 'left one', roles: ['wheel-shaft'], hand: 'left' },
    { id: 'wheel-shaft-r', name: 'right one', roles: ['wheel-shaft'], hand: 'right' },
  ],
  vehicles: [
    {
      id: 'cart-1',
      make: 'Wainer',
      model: 'Cart',
      layout: 'cart',
      fitted: {
        engine: 'motor',
        gearbox: 'box-a',
        'prop-shaft': 'shaft-a',
        'wheel-shaft': { left: 'wheel-shaft-l', right: 'wheel-shaft-r' },
      },
    },
  ],
  offers: [{ id: 'offer-1', for: 'box-b', price: '100.00' }],
};

/** The document as its author would write it, with parts of it replaced. */
export function cartText(changes: object = {}): string {
  return JSON.stringify({ ...CART, ...changes }, null, 2);
}
