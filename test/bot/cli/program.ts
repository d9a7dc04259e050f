import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { SETTING_NAMES } from '../../../bot/config.ts';

/** So that a developer's own `.env` has no say in tests. */
const NOTHING_SET = Object.fromEntries(SETTING_NAMES.map((name) => [name, '']));
/** As in the scripts of package.json. */
const QUIET = '--disable-warning=ExperimentalWarning';
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a built program of `bot/` as a user would; `npm test` builds before it tests. */
export function ran(
  program: string,
  words: readonly string[],
  more: { readonly input?: string; readonly env?: NodeJS.ProcessEnv; readonly readerLeaves?: boolean } = {},
): Promise<Ran> {
  const { PATH, HOME } = process.env;
  const child = spawn(process.execPath, [QUIET, `dist/bot/${program}.js`, ...words], {
    cwd: ROOT,
    env: { ...NOTHING_SET, PATH, HOME, TZ: 'Pacific/Chatham', LANG: 'en_US.UTF-8', ...more.env },
  });
  let out = '';
  let err = '';
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString();
    if (more.readerLeaves === true) child.stdout.destroy();
  });
  child.stderr.on('data', (chunk: Buffer) => {
    err += chunk.toString();
  });
  // A program that ends early takes no more input.
  child.stdin.on('error', () => undefined);
  child.stdin.end(more.input ?? '');
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}
