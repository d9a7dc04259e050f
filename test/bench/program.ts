import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DOORS, type DoorKind, doorSettings, type Settings } from '../bot/door-settings.ts';
import { DiscordDouble } from '../fakes/discord/double.ts';
import { HOST_FLAGS } from './host-flags.ts';
import type { Row } from './row.ts';

/** Commands as a club types them; answered from the store and the models. */
const MIX = [
  { command: 'check', options: { crop: 'spinach', low: '14F', covers: 'blanket over low tunnel' } },
  { command: 'ask', options: { question: 'how cold can leeks go under fleece?' } },
  { command: 'bed', action: 'show' },
  { command: 'help', options: { command: 'bed' } },
  { command: 'site', action: 'list' },
] as const;
const WARM_UP = 200;
const ALONE = 1000;
const MANY = 10_000;
const AT_ONCE = 20;
/** So many that nobody asks more than is allowed. */
const MEMBERS = 500;
const FIRST_MEMBER = 471_147_114_711_000_000n;

/** The whole program with its own commands, as a process of its own beside the loopback Discord. */
export async function benchProgram(): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const kind of DOORS) rows.push(...(await doorRows(kind)));
  return rows;
}

async function doorRows(kind: DoorKind): Promise<readonly Row[]> {
  const folder = await mkdtemp(join(tmpdir(), 'eiderdown-bench-'));
  const double = await DiscordDouble.open();
  const bot = await started({
    ...(await doorSettings(kind, double)),
    DATABASE_URL: `sqlite:${join(folder, 'bench.db')}`,
  });
  const row = (name: string, value: number, unit: string): Row => ({ name: `${kind}: ${name}`, value, unit });
  const rows = [row('start to ready', bot.readyMs, 'ms'), row('resident, idle', bot.rssMiB(), 'MiB')];
  await latenciesMs(double, WARM_UP, 1);
  const alone = await latenciesMs(double, ALONE, 1);
  rows.push(row('command to first answer, median', share(alone, 0.5), 'ms'));
  rows.push(row('command to first answer, 99th percentile', share(alone, 0.99), 'ms'));
  const busy = await latenciesMs(double, MANY, AT_ONCE);
  rows.push(row(`the same, ${AT_ONCE} at once, median`, share(busy, 0.5), 'ms'));
  rows.push(row(`the same, ${AT_ONCE} at once, 99th percentile`, share(busy, 0.99), 'ms'));
  rows.push(row(`resident after ${MANY} commands`, bot.rssMiB(), 'MiB'));
  rows.push(row("breaches of Discord's description", double.problems.length, ''));
  await bot.stop();
  await double.close();
  await rm(folder, { recursive: true, force: true });
  return rows;
}

/** What the compiler made, run as a host runs it. */
async function started(settings: Settings) {
  const file = fileURLToPath(new URL('../../bot/main.js', import.meta.url));
  const begun = performance.now();
  const stdio = ['ignore', 'pipe', 'inherit'] as const;
  const child = spawn(process.execPath, [...HOST_FLAGS, file], {
    env: { ...process.env, ...settings },
    stdio: [...stdio],
  });
  let readyMs = Number.NaN;
  await new Promise<void>((resolve, reject) => {
    child.on('exit', () => reject(new Error('the bot ended before it was ready')));
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      if (!text.includes('"msg":"ready"')) return;
      readyMs = performance.now() - begun;
      resolve();
    });
  });
  return {
    readyMs,
    rssMiB: () => Number(execFileSync('ps', ['-o', 'rss=', '-p', String(child.pid)], { encoding: 'utf8' })) / 1024,
    stop: async () => {
      child.kill('SIGTERM');
      await once(child, 'exit');
    },
  };
}

/** From sending each interaction to its first answer, sorted. */
async function latenciesMs(double: DiscordDouble, count: number, atOnce: number): Promise<readonly number[]> {
  const found: number[] = [];
  for (let first = 0; first < count; first += atOnce) {
    const asked = Array.from({ length: Math.min(atOnce, count - first) }, (_, index) => {
      const typed = MIX[(first + index) % MIX.length] ?? MIX[0];
      const userId = String(FIRST_MEMBER + BigInt((first + index) % MEMBERS));
      return double.type({ ...typed, userId }).first;
    });
    for (const { afterMs } of await Promise.all(asked)) found.push(afterMs);
    double.forget();
  }
  return found.sort((a, b) => a - b);
}

function share(sorted: readonly number[], fraction: number): number {
  return sorted[Math.floor(fraction * (sorted.length - 1))] ?? Number.NaN;
}
