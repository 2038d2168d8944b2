/**
 * One run of the program: where its answer goes, which database it asks, how it ends.
 */

import type { Command } from 'commander';
import { Library } from '../usecases/library.js';
import { EXIT } from './fault.js';
import { Page } from './page.js';
import type { OpenStore, StoreMode, World } from './world.js';

export interface StoreOptions {
  readonly database?: string;
  readonly json?: true;
}

export function addStoreOptions(command: Command): Command {
  const database = 'the SQLite file; FAYING_DATABASE or ./faying.sqlite where left out';
  return command
    .option('--database <path>', database)
    .option('--json', 'print the answer as JSON, and faults as problem details');
}

export class Session {
  readonly world: World;
  exitCode: number = EXIT.answered;

  constructor(world: World) {
    this.world = world;
  }

  databasePath({ database }: StoreOptions): string {
    return [database, this.world.env.FAYING_DATABASE, './faying.sqlite'].find(isNamed) ?? '';
  }

  /** Opens the store, and closes it again whatever happens. */
  withStore<Result>(
    options: StoreOptions,
    mode: StoreMode,
    ask: (store: OpenStore) => Result,
  ): Result {
    const store = this.world.openStore(this.databasePath(options), mode);
    try {
      return ask(store);
    } finally {
      store.close();
    }
  }

  /** Asks the editions of the database. */
  ask<Answer>(options: StoreOptions, question: (library: Library) => Answer): Answer {
    return this.withStore(options, 'read', (store) =>
      question(new Library(store, this.world.digest)),
    );
  }

  /** The answer as the service sends it, on one line; or as a page for people. */
  tell<Answer>(
    answer: Answer,
    { json }: StoreOptions,
    say: (answer: Answer, page: Page) => void,
  ): void {
    const { out, env } = this.world;
    if (json === true) out.write(`${JSON.stringify(answer)}\n`);
    else say(answer, new Page(out, env));
  }
}

function isNamed(path: string | undefined): path is string {
  return path !== undefined && path !== '';
}
