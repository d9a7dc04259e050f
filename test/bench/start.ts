import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { HOST_FLAGS } from './host-flags.ts';
import type { Row } from './row.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const ROUNDS = 5;

/** From the command to the first line on the screen: of the built program, and of `npm start`, which builds first. */
export async function benchStart(): Promise<readonly Row[]> {
  const bare = await median(() => firstLine(process.execPath, ['-e', 'console.log(1)']));
  const program = await median(() => firstLine(process.execPath, [...HOST_FLAGS, 'dist/bot/main.js']));
  const npm = await median(() => firstLine('npm', ['--silent', 'start']));
  return [
    { name: 'bare node', value: bare, unit: 'ms' },
    { name: 'program to first line', value: program, unit: 'ms', ratio: program / bare },
    { name: 'npm start to first line', value: npm, unit: 'ms', ratio: npm / bare },
  ];
}

async function median(once: () => Promise<number>): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) times.push(await once());
  return times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? 0;
}

function firstLine(command: string, words: readonly string[]): Promise<number> {
  const begun = performance.now();
  const child = spawn(command, words, { cwd: ROOT, stdio: ['pipe', 'pipe', 'ignore'] });
  child.stdin.end();
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.stdout.once('data', () => resolve(performance.now() - begun));
    child.on('close', () => reject(new Error(`${command} printed nothing`)));
  });
}
