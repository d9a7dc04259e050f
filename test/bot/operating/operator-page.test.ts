import { once } from 'node:events';
import { type IncomingMessage, request } from 'node:http';
import { text as textOf } from 'node:stream/consumers';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { PlainProblem } from '../../../bot/ground/errors.ts';
import { Metrics } from '../../../bot/operating/metrics.ts';
import { openOperatorPage } from '../../../bot/operating/operator-page.ts';
import { missingParts } from '../../../bot/operating/readiness.ts';
import { DOORS, freePort } from '../door-settings.ts';
import { RunningBot, Surroundings } from '../running.ts';

let around: Surroundings;
beforeEach(async () => {
  around = await Surroundings.open();
});
afterEach(() => around.close());

/** By Node's own client: undici would put its later version in the way of the one that discord.js brings. */
async function got(port: number, path: string, method: 'GET' | 'POST' = 'GET', host = '127.0.0.1') {
  const asked = request({ host, port, path, method, agent: false });
  asked.end();
  const [answer] = (await once(asked, 'response')) as [IncomingMessage];
  return { status: answer.statusCode, text: await textOf(answer) };
}

describe.each(DOORS)('a bot at the %s door with METRICS_PORT', (kind) => {
  test('tells what was asked and how it went, and no label names a member, a channel or a place', async () => {
    const port = await freePort();
    const bot = new RunningBot(await around.settings(kind, { METRICS_PORT: String(port) }));
    await bot.ready();
    const person = { userId: '471147114711471147' };
    const typed = (command: string, action?: string, options: Record<string, string> = {}) =>
      around.double.type({ command, ...(action !== undefined && { action }), options, ...person }).shown();
    await typed('site', 'set', { lat: '41.2109871, -96.6301234' });
    await typed('site', 'set', { lat: '95', lon: '10' });
    await typed('bed', 'add', { name: 'Tunnel', crop: 'kale', covers: 'low tunnel' });
    await typed('tonight');
    const { status, text } = await got(port, '/metrics');
    expect(status).toBe(200);
    for (const line of [
      'eiderdown_commands_total{command="site set",outcome="answered"} 1',
      'eiderdown_commands_total{command="site set",outcome="refused"} 1',
      'eiderdown_answer_seconds_count{command="tonight"} 1',
      'eiderdown_store_operations_total{operation="sites.add",outcome="done"} 1',
      'process_resident_memory_bytes',
    ]) {
      expect(text).toContain(line);
    }
    expect(text).toMatch(/eiderdown_requests_total\{to="discord",outcome="answered"\} [1-9]/);
    expect(text).toMatch(/eiderdown_requests_total\{to="nws",outcome="answered"\} [1-9]/);
    for (const secret of ['4711471', '41.2', '96.6', 'Tunnel', around.double.token]) expect(text).not.toContain(secret);
    await bot.stop();
    await expect(got(port, '/healthz')).rejects.toThrow('ECONNREFUSED');
  });
});

test('a gateway bot is ready while its connection stands, and says what is missing when not', async () => {
  const port = await freePort();
  const bot = new RunningBot(await around.settings('gateway', { METRICS_PORT: String(port) }));
  await bot.ready();
  expect(await got(port, '/readyz')).toEqual({ status: 200, text: 'ready\n' });
  await around.double.refuse();
  await until(async () => (await got(port, '/readyz')).status === 503);
  expect(await got(port, '/readyz')).toEqual({ status: 503, text: 'not ready: Discord\n' });
  expect(await got(port, '/healthz')).toMatchObject({ status: 200 });
  await around.double.listen();
  await until(async () => (await got(port, '/readyz')).status === 200);
  await bot.stop();
}, 30_000);

test('a bot that is still trying to reach Discord lives but is not ready', async () => {
  around.double.fail({ path: /@me$/, times: 50, how: { kind: 'answer', answer: { status: 503 } } });
  const port = await freePort();
  const bot = new RunningBot(await around.settings('gateway', { METRICS_PORT: String(port) }));
  await until(() =>
    got(port, '/healthz').then(
      ({ status }) => status === 200,
      () => false,
    ),
  );
  expect(await got(port, '/readyz')).toEqual({ status: 503, text: 'not ready: Discord\n' });
  await bot.stop();
});

test('a port that is taken ends the start with a sentence that names the settings', async () => {
  const port = Number(new URL(around.forecasts.base).port);
  const bot = new RunningBot(await around.settings('gateway', { METRICS_PORT: String(port) }));
  await expect(bot.ended).rejects.toThrow(PlainProblem);
  await expect(bot.ended).rejects.toThrow(/METRICS_PORT \d+ on METRICS_HOST/);
});

test('the page listens at the address it was given and at no other, and takes only GET', async () => {
  const page = await openOperatorPage({ port: 0, host: '127.0.0.1', metrics: new Metrics(), missing: async () => [] });
  await expect(got(page.port, '/metrics', 'GET', '127.0.0.2')).rejects.toThrow('ECONNREFUSED');
  expect(await got(page.port, '/metrics', 'POST')).toMatchObject({ status: 405 });
  expect(await got(page.port, '/')).toMatchObject({ status: 404 });
  await page.stop();
});

test('a part that fails, says no, or takes too long is missing', async () => {
  const parts = [
    { name: 'there', isThere: () => true },
    { name: 'failing', isThere: () => Promise.reject(new Error('away')) },
    { name: 'away', isThere: async () => false },
    { name: 'hanging', isThere: () => pause(10_000, true, { ref: false }) },
  ];
  expect(await missingParts(parts, 50)).toEqual(['failing', 'away', 'hanging']);
});

async function until(isSo: () => Promise<boolean>): Promise<void> {
  while (!(await isSo())) await pause(20);
}
