/**
 * How many things of each list a document has, in words.
 */

const ONE: ReadonlyMap<string, string> = new Map([
  ['parts', 'part'],
  ['vehicles', 'vehicle'],
  ['layouts', 'layout'],
  ['roles', 'role'],
  ['kinds', 'kind'],
  ['facts', 'fact'],
  ['rules', 'rule'],
  ['statements', 'statement'],
  ['lots', 'lot'],
  ['works', 'work'],
  ['rulesets', 'ruleset'],
  ['offers', 'offer'],
]);

/** `14 parts, 3 vehicles, 1 layout`: what people ask after first, and no list that is empty. */
export function countsText(counts: Readonly<Record<string, number>>): string {
  const known = [...ONE.keys()].filter((list) => Object.hasOwn(counts, list));
  const others = Object.keys(counts).filter((list) => !ONE.has(list));
  const texts = [...known, ...others].flatMap((list) => {
    const count = counts[list] ?? 0;
    if (count === 0) return [];
    return [`${count} ${count === 1 ? (ONE.get(list) ?? list) : list}`];
  });
  return texts.length === 0 ? 'Empty.' : `${texts.join(', ')}.`;
}
