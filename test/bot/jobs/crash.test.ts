import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openStore } from '../../../bot/store/open-store.ts';
import { MS_PER_DAY } from '../../../rules/index.ts';
import { DiscordDouble } from '../../fakes/discord/double.ts';
import { Child } from '../store/child.ts';
import { postgresEngine, sqliteEngine } from '../store/engines.ts';
import { looking } from '../store/looking.ts';
import { addClub, addGrower, HOME } from './club.ts';

const CHANNELS = 400;
const GROWERS = 20;
const LEASE_S = 2;
/** Long enough for a kill to fall between a message and its answer. */
const ANSWER_MS = 60;
const KILLS = 6;
const PATIENCE_MS = 120_000;
/** A few minutes after the warnings of that evening are due. */
const EVENING = new Date('2026-12-01T16:40:00Z');
const BEFORE = new Date('2026-11-01T12:00:00Z');

describe.each([sqliteEngine(), postgresEngine()])('400 channel-nights on $name', (engine) => {
  let unavailable: string | undefined;
  let double: DiscordDouble;
  beforeAll(async () => {
    unavailable = await engine.start();
    double = await DiscordDouble.open();
    double.fail({ method: 'POST', path: /messages$/, how: { kind: 'slow', ms: ANSWER_MS } });
  });
  afterAll(async () => {
    await double.close();
    await engine.stop();
  });
  beforeEach((test) => {
    if (unavailable !== undefined) test.skip(unavailable);
  });

  it('are told exactly once each, through kills of one worker and then of four', { timeout: PATIENCE_MS }, async () => {
    const url = await engine.freshUrl();
    await addClubs(url);
    const first = await run(url, { evening: EVENING, workers: 1, atOnce: 8 });
    const second = await run(url, { evening: new Date(EVENING.getTime() + MS_PER_DAY), workers: 4, atOnce: 3 });
    for (const { copies, open, kills } of [first, second]) {
      expect(copies.filter((count) => count !== 1)).toEqual([]);
      expect(copies).toHaveLength(CHANNELS);
      expect(open).toBe(0);
      expect(kills).toBe(KILLS);
    }
    expect(double.problems).toEqual([]);
  });

  async function addClubs(url: string): Promise<void> {
    const guild = double.world.addGuild();
    const store = await openStore(url);
    for (let n = 0; n < GROWERS; n += 1) {
      const { id } = double.world.addChannel(guild.id);
      await addClub(store, { id }, [], BEFORE);
      const site = { latitudeDeg: HOME.latitudeDeg + (n % 5) * 0.05 };
      await addGrower(store, id, { id: `3000000000000000${n + 10}`, bedCount: 1, site }, BEFORE);
    }
    for (let n = GROWERS; n < CHANNELS; n += 1) {
      const { id } = double.world.addChannel(guild.id);
      await addClub(store, { id }, [], BEFORE);
      const memberId = `3000000000000000${(n % GROWERS) + 10}`;
      await store.channels.join(id, memberId, { siteId: undefined, wantsDirect: false }, BEFORE);
    }
    await store.close();
  }

  interface Wish {
    readonly evening: Date;
    readonly workers: number;
    readonly atOnce: number;
  }

  /** Lets workers work and kills them at random moments, one at a time; each is followed by another. */
  async function run(url: string, { evening, workers, atOnce }: Wish) {
    const channels = [...double.world.channels.values()];
    const before = new Map(channels.map(({ id, messages }) => [id, messages.length]));
    const copies = () => channels.map(({ id, messages }) => messages.length - (before.get(id) ?? 0));
    const aheadMs = evening.getTime() - Date.now();
    const start = () =>
      new Child('test/bot/jobs/children/work-for-ever.js', [
        ...[url, double.apiBase, double.token],
        ...[aheadMs, LEASE_S, atOnce].map(String),
      ]);
    const state = { kills: 0, isDone: false };
    const lane = async () => {
      while (!state.isDone) await life(start(), state);
    };
    const night = evening.toISOString().slice(0, 10);
    const watch = async () => {
      while ((await openRows(url, night)) !== 0 || copies().includes(0)) await pause(300);
      state.isDone = true;
    };
    await Promise.all([watch(), ...Array.from({ length: workers }, lane)]);
    return { copies: copies(), open: await openRows(url, night), kills: state.kills };
  }
});

/** One worker from its start to its end, by a kill after a random while or when all is done. */
async function life(child: Child, state: { kills: number; readonly isDone: boolean }): Promise<void> {
  expect(await child.says('works'), child.complaints).toBe(true);
  if (state.kills < KILLS) {
    state.kills += 1;
    await pause(100 + Math.random() * 900);
  } else {
    while (!state.isDone) await pause(50);
  }
  await child.kill();
  expect(child.complaints).toBe('');
}

/** Warnings of a night that are not settled; undefined while none are planned. */
async function openRows(url: string, night: string): Promise<number | undefined> {
  const states = await looking(url, (db) =>
    db.selectFrom('delivery').select('state').where('kind', '=', 'warning').where('night', '=', night).execute(),
  );
  return states.length === 0 ? undefined : states.filter(({ state }) => state !== 'sent').length;
}
