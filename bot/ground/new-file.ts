import { writeFile } from 'node:fs/promises';

/** Why a file was not written; nothing on the disk has changed then. */
export type NewFileProblem = 'exists' | 'cannot-write';

/**
 * Writes a file that was not there before, for its owner alone: what a person has already is never overwritten.
 *
 * @returns `undefined` once it is written.
 */
export async function newFile(file: string, bytes: Uint8Array): Promise<NewFileProblem | undefined> {
  try {
    await writeFile(file, bytes, { flag: 'wx', mode: 0o600 });
    return undefined;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EEXIST' ? 'exists' : 'cannot-write';
  }
}
