import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { request } from 'undici';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { DOORS } from './door-settings.ts';
import { RunningBot, Surroundings } from './running.ts';
import { Child } from './store/child.ts';

let around: Surroundings;
beforeEach(async () => {
  around = await Surroundings.open();
});
afterEach(() => around.close());

const endOf = (bot: RunningBot) =>
  bot.ended.then(
    () => 'it ended well',
    (error: unknown) => String(error),
  );

describe.each(DOORS)('a bot at Discord (%s)', (kind) => {
  test('says what it opens, answers, and closes its database at a stop', async () => {
    const bot = new RunningBot(await around.settings(kind));
    await bot.ready();
    const shown = await around.double.type({ command: 'help' }).shown();
    expect(shown.isPrivate).toBe(true);
    await bot.stop();
    const told = bot.logged.map((line) => JSON.parse(line).msg);
    expect(told[0]).toBe(`Door: Discord over ${kind === 'gateway' ? 'its gateway' : 'signed HTTP'}.`);
    expect(told).toContain('Forecasts: nws in its area, metno, openmeteo.');
    const again = new RunningBot(await around.settings(kind));
    await again.ready();
    await again.stop();
  });

  test('a stop while it is still starting ends it', async () => {
    around.double.fail({
      method: 'GET',
      path: /applications/,
      times: 50,
      how: { kind: 'answer', answer: { status: 503 } },
    });
    const bot = new RunningBot(await around.settings(kind));
    while (!bot.logged.some((line) => line.includes('Trying again')))
      await new Promise((resolve) => setTimeout(resolve, 5));
    await bot.stop();
    expect(bot.logged.join('')).not.toContain('"msg":"ready"');
  });

  test('a token that Discord refuses ends it with what to do', async () => {
    const bot = new RunningBot(await around.settings(kind, { DISCORD_TOKEN: 'not-the-token-of-the-double' }));
    expect(await endOf(bot)).toContain("Discord refused the bot's token");
    expect(bot.logged.join('')).not.toContain('not-the-token');
  });

  test('a second one on the same database file says so, and the first goes on', async () => {
    const first = new RunningBot(await around.settings(kind));
    await first.ready();
    const { doorUrl } = around.double;
    expect(await endOf(new RunningBot(await around.settings(kind)))).toContain(
      'A bot already runs on this database file',
    );
    around.double.doorUrl = doorUrl;
    expect((await around.double.type({ command: 'help' }).first).data['content']).toContain('/tonight: ');
    await first.stop();
  });
});

test('the signed HTTP door tells whether it lives, and whether its database does', async () => {
  const bot = new RunningBot(await around.settings('signed HTTP'));
  await bot.ready();
  const statusOf = async (path: string) => (await request(`${around.double.doorUrl}${path}`)).statusCode;
  expect([await statusOf('/healthz'), await statusOf('/readyz')]).toEqual([200, 200]);
  await bot.stop();
});

describe('at the terminal', () => {
  const settings = () => ({ DATABASE_URL: `sqlite:${join(around.folder, 'terminal.db')}` });

  test('a newcomer sees which door is open and the sample garden, and gets answers', async () => {
    const bot = new RunningBot(settings(), [
      'will spinach survive 14 °F under a blanket?',
      'warnings start',
      'mydata export',
    ]);
    await bot.ended;
    expect(bot.output).toMatch(/^Door: terminal/);
    expect(bot.output).toContain('Tern Lane Garden (sample): ');
    expect(bot.output).toContain('Spinach under a blanket at 14 °F: ');
    expect(bot.output).toContain('There is no channel here to post warnings in');
    expect(bot.output).toContain('I keep nothing about you.');
  });

  test('as a service without a token and without anybody typing, it ends with what to do', async () => {
    await expect(new RunningBot({ ...settings(), NODE_ENV: 'production' }).ended).rejects.toThrow(/Set DISCORD_TOKEN/);
    await expect(new RunningBot(settings()).ended).resolves.toBeUndefined();
  });

  test('what a grower keeps is there at the next start, in place of the sample', async () => {
    const lines = [
      'site set lat:41.2 lon:-96.6',
      'bed add name:Frame crop:spinach covers:"cold frame"',
      'erase it all',
    ];
    await new RunningBot(settings(), lines).ended;
    const forecasts = {
      FORECAST_CONTACT: 'grower@example.org',
      ...{ NWS_BASE: around.forecasts.base, METNO_BASE: around.forecasts.base, OPENMETEO_BASE: around.forecasts.base },
      ...{ CLOCK_START: '2026-01-20T20:00:00Z', CLOCK_RATE: '1' },
    };
    const next = new RunningBot({ ...settings(), ...forecasts }, ['mydata erase', 'erase it all', 'tonight']);
    await next.ended;
    expect(next.output).toMatch(/Home: .* bed at risk tonight|Home: every bed holds tonight/);
    expect(next.output).toContain('Erased: I keep nothing about you any more.');
    expect(next.output.trimEnd()).toContain('Tern Lane Garden (sample)');
  });

  test('it runs beside a bot on the same database file', async () => {
    const bot = new RunningBot(await around.settings('gateway'));
    await bot.ready();
    const { DATABASE_URL } = await around.settings('gateway');
    const here = new RunningBot({ DATABASE_URL: DATABASE_URL ?? '' }, ['site set lat:41.2 lon:-96.6']);
    await here.ended;
    expect(here.output).toContain('Home is set.');
    await bot.stop();
  });
});

describe('as a process of its own', () => {
  test('SIGTERM finishes what is being answered, closes the database and ends with success', async () => {
    const child = new Child('bot/main.js', [], { ...(await around.settings('gateway')), LOG_LEVEL: 'info' });
    await until(() => child.lines.some((line) => line.includes('"msg":"ready"')));
    // The forecast takes some seconds: the services are asked at their own pace.
    const asker = { userId: '471147114711471147' };
    const set = { command: 'site', action: 'set', options: { lat: '41.21', lon: '-96.63' }, ...asker };
    await around.double.type(set).shown();
    const asked = around.double.type({ command: 'tonight', ...asker });
    await asked.first;
    child.terminate();
    expect(String((await asked.shown()).body['content'])).toContain('**Home: ');
    expect(await child.ended).toBe(0);
    expect(existsSync(join(around.folder, 'bot.db'))).toBe(true);
    expect(child.complaints).toBe('');
  });

  test.each([
    [{ HTTP_PORT: '8080' }, 'HTTP_PORT needs DISCORD_PUBLIC_KEY'],
    [{ DATABASE_URL: 'mysql://db' }, 'DATABASE_URL must be sqlite:FILE or postgres://'],
    [{ DISCORD_TOKEN: 'short' }, 'DISCORD_TOKEN looks cut off'],
    [{ NWS_BASE: 'foo' }, 'NWS_BASE must be an address such as https://example.org'],
    [{ METRICS_PORT: 'abc' }, 'METRICS_PORT must be a port'],
    [{ LOG_LEVEL: 'loud' }, 'LOG_LEVEL must be one of fatal'],
  ])('wrong settings end it with one sentence and 1: %o', async (settings, words) => {
    const child = new Child('bot/main.js', [], settings);
    expect(await child.ended).toBe(1);
    expect(child.complaints.trim().split('\n')).toHaveLength(1);
    expect(child.complaints).toContain(words);
    expect(child.complaints).not.toMatch(/short\b|mysql/);
  });
});

async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 10));
}
