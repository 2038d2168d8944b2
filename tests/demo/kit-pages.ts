/**
 * Kit questions to the demo catalogue as the command line puts them, in the order in which its
 * README tells them, by layout and name. What is printed is in `golden/kits` and `golden/de/kits`.
 */

export const KIT_PAGES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'long-awd': {
    'late-gearbox': 'lirren-1 gearbox-6-late --routes 1',
    'late-gearbox-and-old-axle': 'lirren-1 gearbox-6-late --keep rear-final-drive --keep linkage',
    'late-gearbox-for-2500': 'lirren-1 gearbox-6-late --max-cost 2500 --unknowns refuse',
    'used-hub': 'lirren-1 front-hub-used',
    'used-hub-without-doubt': 'lirren-1 front-hub-used --unknowns refuse',
  },
  'frame-4x4': {
    'set-alone': 'ordale-1 set-45-11@rear-gear-set --keep front-gear-set',
  },
  'rear-irs': {
    'slip-plates-and-old-shafts': 'vessimer-20 final-drive-vessimer-plates --keep rear-half-shaft',
    'limited-slip-and-old-shaft': 'vessimer-20 final-drive-vessimer-28 --keep prop-shaft',
  },
  transverse: {
    'drive-without-take-off': 'gallivet rear-drive-pellory --keep take-off',
  },
};
