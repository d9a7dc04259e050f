import { StoreProblem, type StoreProblemCode } from '../store-problem.ts';

/** How SQLite's own words begin, and what to say instead. By words: the npm twin does not always hand over the code. */
const PROBLEMS: readonly (readonly [words: string, code: StoreProblemCode, message: string])[] = [
  ['CHECK constraint failed', 'bad-value', 'A value to be stored lies outside what is allowed.'],
  ['FOREIGN KEY constraint failed', 'not-found', 'What this belongs to is no longer kept.'],
  ['UNIQUE constraint failed: site.member_id, site.name_key', 'name-taken', 'A site of that name is already kept.'],
  [
    'UNIQUE constraint failed: bed.member_id, bed.site_id, bed.name_key',
    'name-taken',
    'A bed of that name is already kept there.',
  ],
  ['database is locked', 'busy', 'Another program has held the database file too long; try again.'],
  ['database or disk is full', 'full', 'The disk is full; nothing was changed. Make room and it goes on.'],
  ['file is not a database', 'not-a-database', 'The file is not an SQLite database; name another one.'],
  ['database disk image is malformed', 'not-a-database', 'The database file is damaged; restore it from a backup.'],
  ['attempt to write a readonly database', 'unreachable', 'The database file may not be written; check its rights.'],
  [
    'unable to open database file',
    'unreachable',
    'The database file cannot be opened; check its folder and its rights.',
  ],
  ['disk I/O error', 'unreachable', 'The disk of the database file does not work; check it.'],
];

/** SQLite's messages name columns but quote no values; still none of them is passed on. */
export function sqliteProblem(thrown: unknown): StoreProblem {
  if (thrown instanceof StoreProblem) return thrown;
  const words = thrown instanceof Error ? thrown.message : '';
  const known = PROBLEMS.find(([pattern]) => words.includes(pattern));
  if (known === undefined) return new StoreProblem('failed', `The database refused a statement (${codeOf(thrown)}).`);
  const [, code, message] = known;
  return new StoreProblem(code, message);
}

function codeOf(thrown: unknown): string {
  const code = thrown instanceof Error && 'errcode' in thrown ? thrown.errcode : undefined;
  return typeof code === 'number' ? `SQLite code ${code}` : 'no code';
}
