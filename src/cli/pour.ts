/**
 * Writes what comes in pieces, each when the one before it is out, until all is or nobody takes any
 * more.
 */

interface Pouring {
  readonly write: (piece: string) => Promise<void>;
  /** Comes true with the name of the signal by which the program is asked to end. */
  readonly stopped: Promise<string>;
  /** What may be waited for then is to come no more. */
  readonly onStopped?: () => void;
  readonly onWritten: () => void;
}

/** Why it ended before its end, as a sentence; null where it did not. */
export async function pour(
  pieces: AsyncIterable<string>,
  { write, stopped, onStopped, onWritten }: Pouring,
): Promise<string | null> {
  const told: { signal: string | null } = { signal: null };
  void stopped.then((name) => {
    told.signal = name;
    onStopped?.();
  });
  try {
    for await (const piece of pieces) {
      if (told.signal !== null) return whyOf(told.signal);
      await write(piece);
      onWritten();
    }
    return null;
  } catch (error) {
    if (told.signal !== null && isOf(error, 'ERR_STREAM_PREMATURE_CLOSE')) {
      return whyOf(told.signal);
    }
    // A reader that has seen enough, such as `head`, closes the pipe: that is no failure.
    if (isOf(error, 'EPIPE')) return 'Nobody reads the answers any more.';
    throw error;
  }
}

function isOf(error: unknown, code: string): boolean {
  return error instanceof Error && 'code' in error && error.code === code;
}

function whyOf(signal: string): string {
  return `Stopped by ${signal}.`;
}
