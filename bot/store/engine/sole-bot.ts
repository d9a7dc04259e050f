import { StoreProblem } from '../store-problem.ts';
import { guarded, IN_MEMORY, makePrivate } from './open-sqlite.ts';
import { loadSqlite } from './sqlite-engine.ts';

/**
 * Makes this process the only bot on a database file until the returned function is called. The lock is an exclusive
 * one on an empty database beside the file; the system drops it when the process dies, however that happens. Programs
 * that do not ask for it may still open the file.
 */
export async function becomeSoleBot(file: string): Promise<() => void> {
  if (file === IN_MEMORY) return () => undefined;
  const { DatabaseSync } = await loadSqlite();
  const lock = guarded(() => {
    // Whoever may read it could hold a lock on it that keeps the bot from starting.
    makePrivate(`${file}-running`);
    return new DatabaseSync(`${file}-running`);
  });
  try {
    guarded(() => lock.exec('pragma busy_timeout = 0; begin exclusive'));
  } catch (problem) {
    lock.close();
    if (!(problem instanceof StoreProblem) || problem.code !== 'busy') throw problem;
    throw new StoreProblem(
      'already-running',
      'A bot already runs on this database file; stop it first, or give this one a file of its own.',
    );
  }
  return () => lock.close();
}
