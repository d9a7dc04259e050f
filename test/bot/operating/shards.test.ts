import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type PostgresServer, startPostgres } from '../../fakes/postgres-server.ts';
import { ran } from '../cli/program.ts';
import { Surroundings } from '../running.ts';
import { Child } from '../store/child.ts';

let around: Surroundings;
let server: PostgresServer | undefined;
let unavailable: string | undefined;
beforeAll(async () => {
  around = await Surroundings.open();
  const started = await startPostgres();
  if ('unavailable' in started) unavailable = started.unavailable;
  else server = started;
});
afterAll(async () => {
  await server?.stop();
  await around.close();
});

test('two shards share the servers, answer, are started again when they die, and end together', async (ctx) => {
  if (server === undefined) return ctx.skip(unavailable ?? '');
  const settings = await around.settings('gateway', { DATABASE_URL: await server.freshDatabase() });
  const manager = new Child('bot/cli/shards.js', ['2'], settings);
  expect(await manager.says('Shard 1 is ready.')).toBe(true);
  const { gateway } = around.double;
  expect(gateway.identified.map((each) => each['shard'])).toEqual([
    [0, 2],
    [1, 2],
  ]);
  const shown = await around.double.type({ command: 'help' }).shown();
  expect(String(shown.body['content'])).toContain('/tonight');
  gateway.closeAll(4004);
  while (gateway.identified.length < 4) await pause(50);
  expect(gateway.identified.slice(2).map((each) => each['shard'])).toEqual(
    expect.arrayContaining([
      [0, 2],
      [1, 2],
    ]),
  );
  while (gateway.open < 2) await pause(50);
  manager.terminate();
  expect(await manager.ended).toBe(0);
  expect(gateway.open).toBe(0);
}, 60_000);

test.each([
  ['no number', [], {}, 'Say how many shards'],
  ['a word', ['auto'], {}, 'Say how many shards'],
  ['no token', ['2'], { DISCORD_TOKEN: '' }, 'Shards are for the gateway'],
  ['a file for a database', ['2'], { DATABASE_URL: 'sqlite:x.db' }, 'share a PostgreSQL'],
])('with %s it says what is wanted', async (_name, words, more, sentence) => {
  const usual = { DISCORD_TOKEN: around.double.token, DATABASE_URL: 'postgres://a@127.0.0.1:9/b' };
  const { code, err } = await ran('cli/shards', words, { env: { ...usual, ...more } });
  expect([code, err]).toEqual([1, expect.stringContaining(sentence)]);
});
