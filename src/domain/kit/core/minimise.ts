/**
 * The one loop in which elimination spends its time: the least of a sum of tables over the values
 * of one variable, for each combination of the classes of the others. Kept small and by itself, so
 * that it is compiled soon.
 */

export interface Operand {
  readonly costs: Float64Array;
  /** By class of the variable that goes: how far into `costs` it leads. */
  readonly own: Int32Array | null;
  /** By other variable, by its class: the same; null where the table does not have it. */
  readonly others: readonly (Int32Array | null)[];
}

/** By combination of the classes of the others, those of the last counting fastest. */
export function minimise(
  counts: readonly number[],
  unary: Float64Array,
  operands: readonly Operand[],
): Float64Array {
  const cells = counts.reduce((product, count) => product * count, 1);
  const found = new Float64Array(cells);
  const bases = operands.map(({ others }) => basesOf(counts, others, cells));
  const [first, second, third, ...more] = operands;
  if (first === undefined) return found.fill(leastOf(unary));
  const a = first.costs;
  const ownA = first.own as Int32Array;
  const baseA = bases[0] as Int32Array;
  if (second === undefined) {
    ofOne(found, unary, a, ownA, baseA);
    return found;
  }
  const b = second.costs;
  const ownB = second.own as Int32Array;
  const baseB = bases[1] as Int32Array;
  if (third === undefined) {
    ofTwo(found, unary, a, ownA, baseA, b, ownB, baseB);
    return found;
  }
  const rest = [third, ...more];
  ofMany(found, unary, a, ownA, baseA, b, ownB, baseB, rest, bases.slice(2));
  return found;
}

/** By combination: where the table begins for it. */
function basesOf(
  counts: readonly number[],
  others: readonly (Int32Array | null)[],
  cells: number,
): Int32Array {
  const bases = new Int32Array(cells);
  let filled = 1;
  for (let at = counts.length - 1; at >= 0; at -= 1) {
    const count = counts[at] as number;
    const offsets = others[at] ?? null;
    for (let name = count - 1; name >= 0; name -= 1) {
      const offset = offsets === null ? 0 : (offsets[name] as number);
      const start = name * filled;
      for (let cell = 0; cell < filled; cell += 1) {
        bases[start + cell] = (bases[cell] as number) + offset;
      }
    }
    filled *= count;
  }
  return bases;
}

function ofOne(
  found: Float64Array,
  unary: Float64Array,
  a: Float64Array,
  ownA: Int32Array,
  baseA: Int32Array,
): void {
  for (let cell = 0; cell < found.length; cell += 1) {
    const atA = baseA[cell] as number;
    let least = Number.POSITIVE_INFINITY;
    for (let name = 0; name < unary.length; name += 1) {
      const sum = (unary[name] as number) + (a[atA + (ownA[name] as number)] as number);
      if (sum < least) least = sum;
    }
    found[cell] = least;
  }
}

function ofTwo(
  found: Float64Array,
  unary: Float64Array,
  a: Float64Array,
  ownA: Int32Array,
  baseA: Int32Array,
  b: Float64Array,
  ownB: Int32Array,
  baseB: Int32Array,
): void {
  for (let cell = 0; cell < found.length; cell += 1) {
    const atA = baseA[cell] as number;
    const atB = baseB[cell] as number;
    let least = Number.POSITIVE_INFINITY;
    for (let name = 0; name < unary.length; name += 1) {
      const sum =
        (unary[name] as number) +
        (a[atA + (ownA[name] as number)] as number) +
        (b[atB + (ownB[name] as number)] as number);
      if (sum < least) least = sum;
    }
    found[cell] = least;
  }
}

/** The first two tables as above; of the others each is summed up where the first two allow it. */
function ofMany(
  found: Float64Array,
  unary: Float64Array,
  a: Float64Array,
  ownA: Int32Array,
  baseA: Int32Array,
  b: Float64Array,
  ownB: Int32Array,
  baseB: Int32Array,
  rest: readonly Operand[],
  bases: readonly Int32Array[],
): void {
  const [{ costs: c, own }] = rest as [Operand];
  const ownC = own as Int32Array;
  const baseC = bases[0] as Int32Array;
  for (let cell = 0; cell < found.length; cell += 1) {
    const atA = baseA[cell] as number;
    const atB = baseB[cell] as number;
    const atC = baseC[cell] as number;
    let least = Number.POSITIVE_INFINITY;
    for (let name = 0; name < unary.length; name += 1) {
      let sum =
        (unary[name] as number) +
        (a[atA + (ownA[name] as number)] as number) +
        (b[atB + (ownB[name] as number)] as number) +
        (c[atC + (ownC[name] as number)] as number);
      // Costs are never negative: what is too dear already stays so.
      for (let index = 1; sum < least && index < rest.length; index += 1) {
        const { costs, own: names } = rest[index] as Operand;
        const base = (bases[index] as Int32Array)[cell] as number;
        sum += costs[base + ((names as Int32Array)[name] as number)] as number;
      }
      if (sum < least) least = sum;
    }
    found[cell] = least;
  }
}

function leastOf(costs: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let at = 0; at < costs.length; at += 1) {
    if ((costs[at] as number) < least) least = costs[at] as number;
  }
  return least;
}
