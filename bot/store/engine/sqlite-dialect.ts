import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type DialectAdapter,
  type Driver,
  type Kysely,
  type QueryCompiler,
  SqliteAdapter,
  type SqliteDatabase,
  SqliteDriver,
  SqliteIntrospector,
  SqliteQueryCompiler,
  type SqliteStatement,
} from 'kysely';
import type { SqliteHandle } from './sqlite-engine.ts';

/** Without it, preparing in a tight loop holds hundreds of megabytes until the event loop turns. */
const MOST_STATEMENTS_KEPT = 200;

/**
 * kysely's SQLite with two changes that its own lacks: a transaction takes the write lock at once, so that one that
 * reads before it writes waits instead of failing; and a migration is a transaction, so that a kill leaves nothing half done.
 */
export class SqliteDialect implements Dialect {
  readonly #handle: SqliteHandle;

  constructor(handle: SqliteHandle) {
    this.#handle = handle;
  }

  createDriver(): Driver {
    return new ImmediateDriver({ database: new CachedStatements(this.#handle) });
  }

  createQueryCompiler(): QueryCompiler {
    return new SqliteQueryCompiler();
  }

  createAdapter(): DialectAdapter {
    return new TransactionalDdlAdapter();
  }

  createIntrospector(db: Kysely<unknown>): SqliteIntrospector {
    return new SqliteIntrospector(db);
  }
}

class ImmediateDriver extends SqliteDriver {
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('begin immediate'));
  }
}

class TransactionalDdlAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/** Speaks to kysely's driver; keeps the statements used last. */
export class CachedStatements implements SqliteDatabase {
  readonly #handle: SqliteHandle;
  readonly #kept = new Map<string, SqliteStatement>();

  constructor(handle: SqliteHandle) {
    this.#handle = handle;
  }

  get size(): number {
    return this.#kept.size;
  }

  prepare(sql: string): SqliteStatement {
    const statement = this.#kept.get(sql) ?? this.#prepared(sql);
    this.#kept.delete(sql);
    this.#kept.set(sql, statement);
    if (this.#kept.size > MOST_STATEMENTS_KEPT) {
      const [oldest] = this.#kept.keys();
      if (oldest !== undefined) this.#kept.delete(oldest);
    }
    return statement;
  }

  close(): void {
    this.#kept.clear();
    // The npm twin closes the file only when its statements are collected; until then the file must be whole without its log.
    try {
      this.#handle.exec('pragma busy_timeout = 0; pragma wal_checkpoint(truncate)');
    } catch {
      // Another program is using the file, or it is no database; the log stays and nothing is lost.
    }
    this.#handle.close();
  }

  #prepared(sql: string): SqliteStatement {
    const statement = this.#handle.prepare(sql);
    return {
      reader: statement.columns().length > 0,
      all: (parameters) => statement.all(...parameters),
      run: (parameters) => statement.run(...parameters),
      iterate: (parameters) => statement.iterate(...parameters),
    };
  }
}
