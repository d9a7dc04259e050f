import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { MANAGE_GUILD, type WorldChannel } from '../../fakes/discord/world.ts';
import { PlainProxy } from '../../fakes/plain-proxy.ts';
import { type PostgresServer, startPostgres } from '../../fakes/postgres-server.ts';
import type { Settings } from '../door-settings.ts';
import { Surroundings } from '../running.ts';
import { Child } from '../store/child.ts';

const THIS_VERSION = 'bot/main.js';
const NEXT_VERSION = 'test/bot/operating/children/next-version.js';
const MANAGER = { userId: '815081508150815081', rights: MANAGE_GUILD };

/** The recipe of the README: two processes answer behind a proxy, one works at night, all on one PostgreSQL. In order. */
describe('three processes on one PostgreSQL', { shuffle: false }, () => {
  let around: Surroundings;
  let server: PostgresServer | undefined;
  let unavailable: string | undefined;
  let proxy: PlainProxy;
  let channel: WorldChannel;
  const answerings: Settings[] = [];
  let nightly: Settings;
  const running: Child[] = [];

  beforeAll(async () => {
    around = await Surroundings.open();
    const started = await startPostgres();
    if ('unavailable' in started) {
      unavailable = started.unavailable;
      return;
    }
    server = started;
    const DATABASE_URL = await started.freshDatabase();
    for (const _ of [1, 2]) answerings.push(await around.settings('signed HTTP', { DATABASE_URL, DUTY: 'answers' }));
    nightly = await around.settings('gateway', { DATABASE_URL, DUTY: 'nights' });
    proxy = await PlainProxy.open(answerings.map(({ HTTP_PORT }) => Number(HTTP_PORT)));
    around.double.doorUrl = proxy.url;
    for (const settings of [...answerings, nightly]) running.push(await ready(THIS_VERSION, settings));
    channel = around.double.world.addChannel(around.double.world.addGuild().id);
  }, 60_000);
  beforeEach((ctx) => {
    if (unavailable !== undefined) ctx.skip(unavailable);
  });
  afterAll(async () => {
    for (const child of running) child.terminate();
    await Promise.all(running.map((child) => child.ended));
    proxy?.close();
    await server?.stop();
    await around.close();
  });

  async function say(command: string, action?: string, options: Record<string, string | number> = {}, userId?: string) {
    const who = { ...MANAGER, ...(userId !== undefined && { userId }), channel };
    const typed = { command, ...(action !== undefined && { action }), options, ...who };
    return String((await around.double.type(typed).shown()).body['content']);
  }

  /** So many questions of so many people at once; why each that had no answer within Discord's three seconds had none. */
  async function unansweredOf(count: number, first: number): Promise<readonly string[]> {
    const asked = Array.from({ length: count }, (_, index) =>
      say('bed', 'show', {}, String(471147114711000000n + BigInt(first + index))),
    );
    return (await Promise.allSettled(asked)).flatMap((each) => (each.status === 'rejected' ? String(each.reason) : []));
  }

  test('both answer in turn', async () => {
    expect(await say('site', 'set', { lat: '41.2109871, -96.6301234' })).toContain('**Home is set.**');
    expect(await say('bed', 'add', { name: 'Frame', crop: 'lettuce', covers: 'none' })).toContain('Frame is noted');
    expect(await unansweredOf(20, 0)).toEqual([]);
    for (const answers of proxy.answered) expect(answers).toBeGreaterThan(5);
  });

  test('the third posts the warnings that were asked for at the others, once each', async () => {
    expect(await say('warnings', 'start', { lead: 4 })).toContain('Warnings come in this channel');
    expect(await say('warnings', 'join')).toContain('look after Home');
    while (channel.messages.length === 0) await pause(50);
    await pause(3000);
    expect(channel.messages).toHaveLength(1);
    expect(String(channel.messages[0]?.body['content'])).toContain('lettuce');
  }, 60_000);

  test('when one is killed while busy, the other answers for both', async () => {
    const [first] = running;
    proxy.leftAlone = 0;
    const busy: Promise<readonly string[]>[] = [];
    // Not all in one moment, or a slow machine has them wait for each other.
    for (let wave = 0; wave < 15; wave += 1) {
      busy.push(unansweredOf(10, 1000 + 10 * wave));
      if (wave === 5) await first?.kill();
      await pause(80);
    }
    expect((await Promise.all(busy)).flat()).toEqual([]);
    expect(proxy.leftAlone).toBeGreaterThan(0);
    expect(await unansweredOf(20, 2000)).toEqual([]);
  }, 60_000);

  test('a next version takes over one by one, brings the database up to date, and nobody waits', async () => {
    running[0] = await ready(NEXT_VERSION, answerings[0] ?? {});
    let isOver = false;
    const unanswered: (readonly string[])[] = [];
    const asking = (async () => {
      for (let round = 0; !isOver; round += 1) {
        unanswered.push(await unansweredOf(5, 3000 + 5 * round));
        await pause(100);
      }
    })();
    for (const index of [1, 2]) {
      const old = running[index];
      old?.terminate();
      expect(await old?.ended).toBe(0);
      running[index] = await ready(NEXT_VERSION, index === 2 ? nightly : (answerings[index] ?? {}));
    }
    isOver = true;
    await asking;
    expect(unanswered.length).toBeGreaterThan(3);
    expect(unanswered.flat()).toEqual([]);
    expect(await say('bed', 'show')).toContain('You have 1 bed.');
    await pause(1500);
    expect(channel.messages).toHaveLength(1);
  }, 60_000);

  test('the old version then refuses to start, and says why', async () => {
    const old = new Child(THIS_VERSION, [], nightly);
    expect(await old.ended).toBe(1);
    expect(old.complaints).toContain('was written by a newer Eiderdown');
    expect(await say('bed', 'show')).toContain('You have 1 bed.');
  });
});

async function ready(program: string, settings: Settings): Promise<Child> {
  const child = new Child(program, [], settings);
  while (!child.lines.some((line) => line.includes('"msg":"ready"'))) {
    if (child.complaints !== '') throw new Error(child.complaints);
    await pause(10);
  }
  return child;
}
