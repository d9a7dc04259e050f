import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { CHECKOUT } from './plant.ts';

const OUTSIDE = new Set(['node_modules', 'dist', '.git', 'coverage']);

/** Every file of the project as git knows it or, in a copy without git, every file but what is installed or built. */
export function trackedFiles(): string[] {
  if (existsSync(join(CHECKOUT, '.git'))) {
    const listed = execFileSync('git', ['ls-files', '-z'], { cwd: CHECKOUT, encoding: 'utf8' });
    return listed.split('\0').filter((file) => file !== '' && existsSync(join(CHECKOUT, file)));
  }
  return readdirSync(CHECKOUT, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(CHECKOUT.length))
    .filter((file) => !file.split('/').some((folder) => OUTSIDE.has(folder)));
}
