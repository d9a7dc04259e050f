import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { type Shard, ShardingManager } from 'discord.js';
import { processConfig } from '../config.ts';
import { doorChoice } from '../door-choice.ts';
import { PlainProblem } from '../ground/errors.ts';

const MAIN = fileURLToPath(new URL('../main.js', import.meta.url));
/** Discord takes one new connection in five seconds. */
const BETWEEN_STARTS_MS = 5500;
const READY_WITHIN_MS = 120_000;

/** Shares the servers of one bot among several processes, each started again when it dies: `npm run shards -- COUNT`. */
async function main([count = '', ...more]: readonly string[]): Promise<void> {
  const config = processConfig();
  const door = doorChoice(config);
  if (door.kind !== 'gateway')
    throw new PlainProblem('Shards are for the gateway: set DISCORD_TOKEN and no HTTP_PORT.');
  if (config.DATABASE_URL.startsWith('sqlite:')) {
    throw new PlainProblem('Shards are several processes, which share a PostgreSQL: set DATABASE_URL to postgres://….');
  }
  // A number, always: the library would ask its usual host for one, whatever DISCORD_API_BASE says.
  if (!/^[1-9]\d{0,2}$/.test(count) || more.length > 0) {
    throw new PlainProblem('Say how many shards: npm run shards -- 2');
  }
  const manager = new ShardingManager(MAIN, {
    ...{ token: door.token, totalShards: Number(count) },
    execArgv: process.execArgv,
  });
  let stopping = false;
  manager.on('shardCreate', (shard) => {
    process.stdout.write(`Shard ${shard.id} starts.\n`);
    shard.on('ready', () => process.stdout.write(`Shard ${shard.id} is ready.\n`));
  });
  const stop = async () => {
    if (stopping) return;
    stopping = true;
    manager.respawn = false;
    await Promise.all(manager.shards.map(ended));
    process.exit(0);
  };
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => void stop());
  try {
    await manager.spawn({ delay: BETWEEN_STARTS_MS, timeout: READY_WITHIN_MS });
  } catch {
    if (stopping) return;
    await Promise.all(manager.shards.map(ended));
    throw new PlainProblem('A shard did not become ready; the lines above tell why.');
  }
}

/** Lets a shard finish what it is answering. */
async function ended(shard: Shard): Promise<void> {
  const child = shard.process;
  if (child === null || child.exitCode !== null) return;
  const exited = once(child, 'exit');
  child.kill('SIGTERM');
  await exited;
}

try {
  await main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${error instanceof PlainProblem ? error.message : 'The shards could not be started.'}\n`);
  process.exit(1);
}
