/**
 * A question in its one form: two that differ in their order alone are one.
 */

/**
 * The same value with the names of each object in the order of their code units. A door
 * asks the use-case in this form too: its answer then depends on nothing that the form does not
 * hold.
 */
export function ordered<Value>(value: Value): Value {
  return orderedValue(value) as Value;
}

function orderedValue(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(orderedValue);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, one]) => [name, orderedValue(one)]));
}

/** JSON, but for the numbers that JSON has no signs for: those are no `null`. */
export function canonicalText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(',')}]`;
  if (typeof value === 'number') return Object.is(value, -0) ? '-0' : String(value);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(
    ([name, one]) => `${JSON.stringify(name)}:${canonicalText(one)}`,
  );
  return `{${fields.join(',')}}`;
}
