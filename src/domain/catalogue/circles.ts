/**
 * Things that name one another in a circle: parts that took one another's place, positions behind
 * one another, vehicles that are like one another.
 */

/**
 * The circles of a graph, each as its names in order with the first at the end again. A node that
 * several circles share may hide all but one of them.
 */
export function circlesOf(graph: ReadonlyMap<string, readonly string[]>): string[][] {
  const circles: string[][] = [];
  const done = new Set<string>();
  for (const start of graph.keys()) {
    if (done.has(start)) continue;
    // Each step with how many of those that it names have been followed.
    const path = [{ id: start, next: 0 }];
    const onPath = new Set([start]);
    for (let here = path.at(-1); here !== undefined; here = path.at(-1)) {
      const other = graph.get(here.id)?.[here.next];
      here.next += 1;
      if (other === undefined) {
        done.add(here.id);
        onPath.delete(here.id);
        path.pop();
      } else if (onPath.has(other)) {
        const from = path.findIndex(({ id }) => id === other);
        circles.push([...path.slice(from).map(({ id }) => id), other]);
      } else if (!done.has(other)) {
        path.push({ id: other, next: 0 });
        onPath.add(other);
      }
    }
  }
  return circles;
}
