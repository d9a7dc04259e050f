import { request } from 'undici';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { type PostgresServer, startPostgres } from '../fakes/postgres-server.ts';
import { Surroundings } from './running.ts';
import { Child } from './store/child.ts';

const ANNA = { userId: '471147114711471147' };

/** Two programs behind one address, as signed HTTP allows, on one PostgreSQL. */
describe('two processes on one PostgreSQL', () => {
  let around: Surroundings;
  let server: PostgresServer | undefined;
  let unavailable: string | undefined;
  const children: Child[] = [];
  const doors: string[] = [];

  beforeAll(async () => {
    around = await Surroundings.open();
    const started = await startPostgres();
    if ('unavailable' in started) {
      unavailable = started.unavailable;
      return;
    }
    server = started;
    const DATABASE_URL = await started.freshDatabase();
    // Together, on an empty database: they migrate it once.
    for (const _ of [1, 2]) {
      const settings = await around.settings('signed HTTP', { DATABASE_URL, LOG_LEVEL: 'info' });
      doors.push(around.double.doorUrl ?? '');
      children.push(new Child('bot/main.js', [], settings));
    }
    await Promise.all(children.map(isReady));
  });
  beforeEach((ctx) => {
    if (unavailable !== undefined) ctx.skip(unavailable);
  });
  afterAll(async () => {
    for (const child of children) child.terminate();
    expect(await Promise.all(children.map((child) => child.ended))).toEqual(children.map(() => 0));
    await server?.stop();
    await around.close();
  });

  type Options = Readonly<Record<string, string | boolean>>;

  /** Knocks at one of the two doors. */
  async function say(door: number, command: string, action?: string, options: Options = {}): Promise<string> {
    around.double.doorUrl = doors[door];
    const typed = { command, ...(action !== undefined && { action }), options, ...ANNA };
    return String((await around.double.type(typed).shown()).body['content']);
  }

  test('what one is told, the other knows, and what one erases, the other has not', async () => {
    expect(await say(0, 'site', 'set', { lat: '41.21', lon: '-96.63' })).toContain('**Home is set.**');
    expect(await say(1, 'bed', 'add', { name: 'Frame', crop: 'spinach', covers: 'cold frame' })).toContain(
      'Frame is noted',
    );
    expect(await say(0, 'bed', 'show')).toContain('You have 1 bed.');
    expect(await say(1, 'tonight')).toContain('**Home: ');
    expect(await say(1, 'mydata', 'erase', { sure: true })).toContain('Erased');
    expect(await say(0, 'site', 'list')).toContain('I do not know where you grow yet.');
  });

  test('the same bed told to both at once is kept once', async () => {
    await say(0, 'site', 'set', { lat: '41.21', lon: '-96.63' });
    const told = Array.from({ length: 8 }, (_, index) => say(index % 2, 'bed', 'add', { name: 'Tunnel' }));
    const answers = await Promise.all(told);
    expect(answers.filter((words) => words.includes('Tunnel is noted'))).toHaveLength(1);
    expect(answers.filter((words) => words.includes('A bed of that name is already kept there.'))).toHaveLength(7);
    await say(1, 'mydata', 'erase', { sure: true });
  });

  test('while the database is away both say so, and go on when it is back', async () => {
    await server?.goAway();
    for (const door of [0, 1]) {
      expect(await say(door, 'site', 'list')).toContain('I cannot reach my notes just now, so nothing was changed.');
      expect(await say(door, 'help')).toContain('/tonight: ');
      expect((await request(`${doors[door]}/readyz`)).statusCode).toBe(503);
      expect((await request(`${doors[door]}/healthz`)).statusCode).toBe(200);
    }
    await server?.comeBack();
    for (const door of [0, 1]) {
      expect(await say(door, 'site', 'list')).toContain('I do not know where you grow yet.');
      expect((await request(`${doors[door]}/readyz`)).statusCode).toBe(200);
    }
    for (const child of children) expect(child.lines.join('')).not.toMatch(/postgres:\/\/|loopback-only|41\.21/);
  });
});

async function isReady(child: Child): Promise<void> {
  while (!child.lines.some((line) => line.includes('"msg":"ready"'))) {
    if (child.complaints !== '') throw new Error(child.complaints);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
