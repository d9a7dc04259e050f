export const STORE_PROBLEM_CODES = [
  'bad-address',
  'no-sqlite',
  'not-durable',
  'not-a-database',
  'newer-schema',
  'older-schema',
  'already-running',
  'unreachable',
  'busy',
  'full',
  'name-taken',
  'not-found',
  'bad-value',
  'file-exists',
  'not-empty',
  'failed',
] as const;

export type StoreProblemCode = (typeof STORE_PROBLEM_CODES)[number];

/**
 * Why the store could not do something. The message is one plain sentence without any value from the database: what a
 * driver says may quote a whole row, coordinates and all, so drivers' errors are never kept as a cause.
 */
export class StoreProblem extends Error {
  override readonly name = 'StoreProblem';
  readonly code: StoreProblemCode;

  constructor(code: StoreProblemCode, message: string) {
    super(message);
    this.code = code;
  }
}
