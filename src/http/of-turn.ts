/**
 * What is read once in a turn of the event loop: requests that come together are answered by one
 * look at the store. What another program writes meanwhile is seen in the next turn.
 */

/** @param read is not called again before the turn has ended. */
export function ofTurn<Value>(read: () => Value): () => Value {
  let known: { readonly value: Value } | null = null;
  return () => {
    if (known === null) {
      known = { value: read() };
      setImmediate(() => {
        known = null;
      });
    }
    return known.value;
  };
}
