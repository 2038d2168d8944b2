/**
 * What the commands need from outside: streams, files, the store and the service. The entry
 * gives them the real ones; tests give them others.
 */

import type { Clock, Digest, EditionStore, KeyStore, Notifier } from '../usecases/ports.js';
import type { PreparedEdition } from '../usecases/publish-edition.js';
import type { OutputFile, Placing } from './output-file.js';

/** Where text goes to. */
export interface Output {
  write(text: string): void;
  /** Whether a person reads along: only then is there colour. */
  readonly isTerminal: boolean;
  /** Width in columns; null where it is not a terminal's. */
  readonly columns: number | null;
}

export interface Input {
  /** How many there are; null where nobody knows before the end. */
  readonly bytes: number | null;
  readonly chunks: AsyncIterable<Uint8Array>;
  /** Reads no further. */
  close(): void;
}

/** `write` makes the database where there is none yet; `read` never changes anything. */
export type StoreMode = 'read' | 'write';

export interface OpenStore extends EditionStore, KeyStore {
  close(): void;
}

/** A database; opened for reading only, or made where there is none. */
export interface DatabaseFile {
  readonly database: string;
  readonly readOnly: boolean;
}

/** An edition with all that its publication is to say of it. */
export interface DatedEdition {
  readonly prepared: PreparedEdition;
  /** An instant in RFC 3339. */
  readonly publishedAt: string;
  readonly note: string;
}

export interface ServiceRequest {
  /** What it answers from: a file, or editions that are in memory as long as it runs. */
  readonly catalogue: DatabaseFile | readonly DatedEdition[];
  /** 0 for any free port; null for the one that is configured. */
  readonly port: number | null;
  readonly host: string | null;
}

export interface RunningService {
  /** Where it answers, such as `http://127.0.0.1:8080`. */
  readonly url: string;
  /** The newest edition at the start; null where nothing has been published. */
  readonly edition: number | null;
  /** Answers what it has begun to answer, then ends. */
  stop(): Promise<void>;
}

/** Where documents are read from. */
export interface Files {
  /** The bytes of a file. Throws what `node:fs` throws. */
  readFile(path: string): Promise<Uint8Array>;
  readInput(): Promise<Uint8Array>;
}

export interface World extends Files {
  readonly version: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly out: Output;
  readonly err: Output;
  /** Puts a text in the place of what the file had. Throws what `node:fs` throws. */
  writeFile(path: string, text: string): Promise<void>;
  /** A file that is written bit by bit. Throws what `node:fs` throws. */
  openOutput(path: string, placing: Placing): Promise<OutputFile>;
  /** The bytes of a file, or of the standard input for `-`, as they are asked for. */
  openInput(path: string): Promise<Input>;
  /** Comes true when the text is out; rejects with `EPIPE` where nobody reads any more. */
  writeOut(text: string): Promise<void>;
  /** Throws `StoreFault` where the database cannot be used. */
  openStore(path: string, mode: StoreMode): OpenStore;
  /** Throws `StoreFault`, or `CommandFault` where the port cannot be had. */
  startService(request: ServiceRequest): Promise<RunningService>;
  /**
   * Those who are told of what is published; null where the environment names none. Throws
   * `CommandFault` where it has faults.
   */
  openNotifier(): Promise<Notifier | null>;
  /** Comes true when the process is asked to end; its value is the name of the signal. */
  untilStopped(): Promise<string>;
  readonly clock: Clock;
  readonly digest: Digest;
}
