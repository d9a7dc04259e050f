import { StoreProblem } from '../store-problem.ts';

/** The part of the `node:sqlite` API that the store uses; Node's own module and its npm twin both have it. */
export interface SqliteModule {
  readonly DatabaseSync: new (file: string, options?: { readonly readOnly?: boolean }) => SqliteHandle;
}

export interface SqliteHandle {
  exec(sql: string): void;
  prepare(sql: string): SqliteStatementHandle;
  close(): void;
}

export interface SqliteStatementHandle {
  all(...parameters: unknown[]): Record<string, unknown>[];
  run(...parameters: unknown[]): { changes: number | bigint; lastInsertRowid: number | bigint };
  iterate(...parameters: unknown[]): IterableIterator<unknown>;
  columns(): readonly unknown[];
}

/** Earlier ones can lose committed rows when one process checkpoints the log while another commits. */
const OLDEST_SAFE_VERSION = [3, 51, 3] as const;

const TWIN = '@photostructure/sqlite';

type Candidate = () => Promise<SqliteModule | undefined>;

const BUILT_IN: string = 'node:sqlite';

const builtIn: Candidate = async () => process.getBuiltinModule(BUILT_IN) as SqliteModule | undefined;

const twin: Candidate = async () => {
  try {
    return (await import(TWIN)) as SqliteModule;
  } catch {
    return undefined;
  }
};

/** The first SQLite that is new enough: Node's own, else the optional package. */
export async function loadSqlite(candidates: readonly Candidate[] = [builtIn, twin]): Promise<SqliteModule> {
  for (const candidate of candidates) {
    const module = await candidate();
    if (module !== undefined && isSafe(versionOf(module))) return module;
  }
  throw new StoreProblem(
    'no-sqlite',
    `No SQLite of ${OLDEST_SAFE_VERSION.join('.')} or newer was found: run Node 22.23, 24.21 or later, or install the optional package with "npm install ${TWIN}".`,
  );
}

function versionOf(module: SqliteModule): string {
  const handle = new module.DatabaseSync(':memory:');
  try {
    return String(handle.prepare('select sqlite_version() as version').all()[0]?.['version']);
  } finally {
    handle.close();
  }
}

/** By number, not by text: 3.9 is older than 3.51. */
export function isSafe(version: string): boolean {
  const parts = version.split('.').map(Number);
  for (const [index, oldest] of OLDEST_SAFE_VERSION.entries()) {
    const part = parts[index] ?? 0;
    if (part !== oldest) return part > oldest;
  }
  return true;
}
