import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type PostgresServer, startPostgres } from '../../fakes/postgres-server.ts';

/** An engine to run the specification over. */
export interface TestEngine {
  readonly name: 'SQLite' | 'PostgreSQL';
  /** Returns why it cannot run here, if so. */
  start(): Promise<string | undefined>;
  /** `DATABASE_URL` of a database that nobody has used. */
  freshUrl(): Promise<string>;
  stop(): Promise<void>;
}

export function sqliteEngine(): TestEngine {
  let folder = '';
  let files = 0;
  return {
    name: 'SQLite',
    start: async () => {
      folder = await mkdtemp(join(tmpdir(), 'eiderdown-store-'));
      return undefined;
    },
    freshUrl: async () => {
      files += 1;
      return `sqlite:${join(folder, `fresh-${files}.db`)}`;
    },
    stop: () => rm(folder, { recursive: true, force: true }),
  };
}

export function postgresEngine(): TestEngine {
  let server: PostgresServer | undefined;
  return {
    name: 'PostgreSQL',
    start: async () => {
      const started = await startPostgres();
      if ('unavailable' in started) return started.unavailable;
      server = started;
      return undefined;
    },
    freshUrl: async () => {
      if (server === undefined) throw new Error('The server was not started.');
      return server.freshDatabase();
    },
    stop: async () => server?.stop(),
  };
}
