import type {
  CompiledQuery,
  DatabaseConnection,
  Dialect,
  DialectAdapter,
  Driver,
  Kysely,
  QueryCompiler,
  QueryResult,
  TransactionSettings,
} from 'kysely';
import { StoreProblem } from '../store-problem.ts';

/** Turns what a driver throws into a sentence without values. */
export type Translate = (thrown: unknown) => StoreProblem;

/**
 * A dialect of which nothing escapes but `StoreProblem`, and into which nothing goes that the two engines would keep
 * differently: SQLite makes NaN null and cuts text at NUL, PostgreSQL refuses both.
 */
export class GuardedDialect implements Dialect {
  readonly #inner: Dialect;
  readonly #translate: Translate;

  /** @param told - Hears of every problem. */
  constructor(inner: Dialect, translate: Translate, told: (problem: StoreProblem) => void = () => undefined) {
    this.#inner = inner;
    this.#translate = (thrown) => {
      const problem = translate(thrown);
      told(problem);
      return problem;
    };
  }

  createDriver(): Driver {
    return new GuardedDriver(this.#inner.createDriver(), this.#translate);
  }

  createQueryCompiler(): QueryCompiler {
    return this.#inner.createQueryCompiler();
  }

  createAdapter(): DialectAdapter {
    return this.#inner.createAdapter();
  }

  createIntrospector(db: Kysely<unknown>): ReturnType<Dialect['createIntrospector']> {
    return this.#inner.createIntrospector(db);
  }
}

class GuardedDriver implements Driver {
  readonly #inner: Driver;
  readonly #translate: Translate;

  constructor(inner: Driver, translate: Translate) {
    this.#inner = inner;
    this.#translate = translate;
  }

  async init(): Promise<void> {
    await this.#guard(() => this.#inner.init());
  }

  async acquireConnection(): Promise<DatabaseConnection> {
    const inner = await this.#guard(() => this.#inner.acquireConnection());
    return new GuardedConnection(inner, this.#translate);
  }

  async beginTransaction(connection: DatabaseConnection, settings: TransactionSettings): Promise<void> {
    await this.#guard(() => this.#inner.beginTransaction(innerOf(connection), settings));
  }

  async commitTransaction(connection: DatabaseConnection): Promise<void> {
    await this.#guard(() => this.#inner.commitTransaction(innerOf(connection)));
  }

  async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    // SQLite has rolled back by itself where the disk is full, and a broken connection is closed: what went wrong before
    // is what must be told.
    await this.#inner.rollbackTransaction(innerOf(connection)).catch(() => undefined);
  }

  async releaseConnection(connection: DatabaseConnection): Promise<void> {
    await this.#guard(() => this.#inner.releaseConnection(innerOf(connection)));
  }

  async destroy(): Promise<void> {
    await this.#guard(() => this.#inner.destroy());
  }

  async #guard<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (thrown) {
      throw this.#translate(thrown);
    }
  }
}

class GuardedConnection implements DatabaseConnection {
  readonly inner: DatabaseConnection;
  readonly #translate: Translate;

  constructor(inner: DatabaseConnection, translate: Translate) {
    this.inner = inner;
    this.#translate = translate;
  }

  async executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
    for (const value of query.parameters) refuseUnstorable(value);
    try {
      return await this.inner.executeQuery<R>(query);
    } catch (thrown) {
      throw this.#translate(thrown);
    }
  }

  // Tables are read page by page; a stream would hold SQLite's only connection.
  streamQuery<R>(): AsyncIterableIterator<QueryResult<R>> {
    throw new StoreProblem('failed', 'The store does not stream.');
  }
}

function innerOf(connection: DatabaseConnection): DatabaseConnection {
  return connection instanceof GuardedConnection ? connection.inner : connection;
}

const BROKEN_TEXT = /\0|\p{Surrogate}/u;

function refuseUnstorable(value: unknown): void {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new StoreProblem('bad-value', 'A number to be stored is not finite; only finite numbers can be kept.');
  }
  if (typeof value === 'string' && BROKEN_TEXT.test(value)) {
    throw new StoreProblem('bad-value', 'A text to be stored has a NUL or half a character in it; take it out.');
  }
}
