import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { StoreProblem } from '../store-problem.ts';
import { GuardedDialect } from './guarded-dialect.ts';
import type { OpenedDatabase } from './opened-database.ts';
import { postgresProblem } from './postgres-problem.ts';

const CONNECT_WITHIN_MS = 5000;
const ANSWER_WITHIN_MS = 60_000;

/** Opens a pool of connections, each with its settings read back before it is first used. */
export function openPostgres<Tables>(url: string): OpenedDatabase<Tables> {
  const pool = new pg.Pool({
    connectionString: url,
    connectionTimeoutMillis: CONNECT_WITHIN_MS,
    query_timeout: ANSWER_WITHIN_MS,
    keepAlive: true,
    types: { getTypeParser: typeParser },
    verify: (client, done) => {
      makeDurable(client).then(
        () => done(),
        (thrown: unknown) => done(postgresProblem(thrown)),
      );
    },
  });
  // A connection lost between two queries is noticed by the next one; without listeners it would end the process.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  const db = new Kysely<Tables>({ dialect: new GuardedDialect(new PostgresDialect({ pool }), postgresProblem) });
  return { db, engine: 'postgres', makeDurable: async () => undefined };
}

/** Epoch milliseconds and counts fit a number; pg would hand them over as text. */
const typeParser: typeof pg.types.getTypeParser = (oid: number, format?: 'text' | 'binary') =>
  oid === pg.types.builtins.INT8 ? Number : pg.types.getTypeParser(oid, format);

/** The ledger promises that what was settled stays so; a worker that hangs in a transaction must not hold its rows. */
async function makeDurable(client: pg.ClientBase): Promise<void> {
  await client.query('set synchronous_commit = on; set idle_in_transaction_session_timeout = 60000');
  const { rows } = await client.query<{ synchronous_commit: string }>('show synchronous_commit');
  if (rows[0]?.synchronous_commit === 'on') return;
  throw new StoreProblem(
    'not-durable',
    'The database server does not keep synchronous_commit on; connect without a pooler that rewrites sessions.',
  );
}
