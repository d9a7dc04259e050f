import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const COMPILED = new URL('../../../dist/bot/store/backup/on-signal.js', import.meta.url).href;

test.each(['SIGINT', 'SIGTERM'] as const)(
  'work that %s breaks off leaves nothing behind, and ends as usual',
  async (signal) => {
    const folder = await mkdtemp(join(tmpdir(), 'eiderdown-signal-'));
    const file = join(folder, 'copy.db');
    await writeFile(file, 'coordinates');
    const script = `
    const { leavingNothing } = await import(${JSON.stringify(COMPILED)});
    await leavingNothing([${JSON.stringify(file)}], async () => {
      process.stdout.write('begun');
      await new Promise((resolve) => setTimeout(resolve, 60_000));
    });`;
    const child = spawn(process.execPath, ['--input-type=module', '-e', script], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    await once(child.stdout, 'data');
    child.kill(signal);
    const [, endedBy] = (await once(child, 'exit')) as [number | null, string | null];
    expect([endedBy, existsSync(file)]).toEqual([signal, false]);
    await rm(folder, { recursive: true });
  },
);
