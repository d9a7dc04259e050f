import { StoreProblem } from '../store-problem.ts';
import { chunks, type Db } from './row-values.ts';

/** Which of the beds are the member's. */
export async function ownBeds(db: Db, memberId: string, bedIds: readonly string[]): Promise<ReadonlySet<string>> {
  const own = new Set<string>();
  for (const part of chunks([...new Set(bedIds)])) {
    const rows = await db
      .selectFrom('bed')
      .select('id')
      .where('member_id', '=', memberId)
      .where('id', 'in', part)
      .execute();
    for (const row of rows) own.add(row.id);
  }
  return own;
}

/** Another member's bed looks the same as one that does not exist. */
export async function requireOwnBeds(db: Db, memberId: string, bedIds: readonly string[]): Promise<void> {
  const own = await ownBeds(db, memberId, bedIds);
  if (bedIds.some((id) => !own.has(id))) throw new StoreProblem('not-found', 'There is no such bed.');
}
