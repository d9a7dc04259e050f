import { setTimeout as pause } from 'node:timers/promises';
import { pino } from 'pino';
import { afterEach, expect, test } from 'vitest';
import { PlainProblem } from '../../../../bot/ground/errors.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { tooMany } from '../../../fakes/discord/faults.ts';
import { type House, type HouseOptions, houseBeingOpened, openHouse } from './house.ts';
import { smallDesk } from './small-desk.ts';

const houses: House[] = [];
afterEach(async () => {
  await Promise.all(houses.splice(0).map((house) => house.close()));
});

async function open(options: HouseOptions = {}): Promise<House> {
  const house = await openHouse('gateway', options);
  houses.push(house);
  return house;
}

async function beingOpened(double: DiscordDouble, more: HouseOptions = {}): Promise<House> {
  const house = await houseBeingOpened('gateway', { double, ...more });
  houses.push(house);
  return house;
}

const say = (house: House, what: string) => house.double.type({ command: 'say', options: { what } });

/** Looks again until it is so; the test's own time limit ends it. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await pause(10);
}

test('a command typed while the socket is down is answered after a resume', async () => {
  const house = await open();
  house.double.gateway.drop();
  await until(() => house.double.gateway.open === 0);
  const first = await say(house, 'still here').first;
  expect(first.data['content']).toContain('still here');
  expect(house.double.gateway.resumed).toHaveLength(1);
  expect(house.double.gateway.identified).toHaveLength(1);
});

test('a request to reconnect is followed, and nothing is lost', async () => {
  const house = await open();
  house.double.gateway.askToReconnect();
  const first = await say(house, 'moved').first;
  expect(first.data['content']).toContain('moved');
  await until(() => house.double.gateway.resumed.length === 1);
});

test.each([
  ['an invalid session', (house: House) => house.double.gateway.invalidate(false)],
  [
    'a refused resume',
    (house: House) => {
      house.double.gateway.refusesResume = true;
      house.double.gateway.drop();
    },
  ],
])('after %s the bot logs in anew and answers', async (_name, spoil) => {
  const house = await open();
  spoil(house);
  await until(() => house.double.gateway.identified.length === 2);
  const first = await say(house, 'back').first;
  expect(first.data['content']).toContain('back');
});

test('a connection that has died silently is noticed and replaced', async () => {
  const double = await DiscordDouble.open();
  double.gateway.heartbeatIntervalMs = 60;
  double.gateway.acknowledges = false;
  const house = await beingOpened(double);
  await house.door.ready;
  await until(() => double.gateway.resumed.length > 0);
  double.gateway.acknowledges = true;
  expect((await say(house, 'alive').first).data['content']).toContain('alive');
});

test('Discord being away for a while is outlasted', async () => {
  const house = await open();
  await house.double.refuse();
  await pause(700);
  await house.double.listen();
  await until(() => house.double.gateway.identified.length + house.double.gateway.resumed.length > 1);
  expect((await say(house, 'again').first).data['content']).toContain('again');
});

test('a start while Discord refuses connections succeeds once it listens', async () => {
  const double = await DiscordDouble.open();
  await double.refuse();
  const house = await beingOpened(double);
  await pause(150);
  await double.listen();
  await house.door.ready;
  expect((await say(house, 'at last').first).data['content']).toContain('at last');
});

test('a start through faults and rate limits of Discord succeeds', async () => {
  const double = await DiscordDouble.open();
  double.fail({ path: /^\/applications\/@me$/, times: 4, how: { kind: 'answer', answer: { status: 503 } } });
  double.fail({ path: /^\/gateway\/bot$/, times: 5, how: { kind: 'answer', answer: { status: 500 } } });
  double.fail({ path: /commands$/, times: 1, how: { kind: 'answer', answer: tooMany(1) } });
  const house = await beingOpened(double);
  await house.door.ready;
  expect((await say(house, 'through').first).data['content']).toContain('through');
});

test('a token that Discord refuses ends the start with what to do, and is not shown', async () => {
  const double = await DiscordDouble.open();
  const house = await beingOpened(double, { token: 'a-wrong-token-that-is-secret' });
  const problem = await house.door.ready.catch((error: unknown) => error);
  expect(problem).toBeInstanceOf(PlainProblem);
  expect(String(problem)).toContain('DISCORD_TOKEN');
  expect(String(problem)).not.toContain('secret');
  expect(house.tokenRefusals).toBe(1);
});

test('a token that the gateway alone refuses ends the start too', async () => {
  const double = await DiscordDouble.open();
  double.gatewayToken = 'another';
  const house = await beingOpened(double);
  await expect(house.door.ready).rejects.toThrow('DISCORD_TOKEN');
  expect(house.fatal).toEqual([]);
});

test.each([
  [4004, 'DISCORD_TOKEN'],
  [4014, 'does not allow'],
  [4013, '4013'],
])('a closing with %i while running ends the program with a sentence', async (code, words) => {
  const house = await open();
  house.double.gateway.closeAll(code);
  await until(() => house.fatal.length > 0);
  expect(house.fatal[0]?.message).toContain(words);
});

test('an application whose commands go to a web address is refused with both ways out', async () => {
  const double = await DiscordDouble.open();
  double.interactionsUrl = 'https://example.org/interactions';
  const house = await beingOpened(double);
  await expect(house.door.ready).rejects.toThrow('HTTP_PORT');
});

test('a stop during a start that cannot succeed ends at once', async () => {
  const double = await DiscordDouble.open();
  await double.refuse();
  const house = await beingOpened(double);
  const ready = house.door.ready.catch((error: unknown) => error);
  await pause(100);
  await house.door.stop();
  expect(await ready).toBeInstanceOf(PlainProblem);
});

test('a stop while the gateway does not greet ends at once', async () => {
  const double = await DiscordDouble.open();
  double.gateway.silent = true;
  const house = await beingOpened(double);
  const ready = house.door.ready.catch((error: unknown) => error);
  await until(() => double.gateway.open === 1);
  await house.door.stop();
  expect(await ready).toBeInstanceOf(PlainProblem);
});

test('commands are sent at the first start and not again', async () => {
  const house = await open();
  const again = await beingOpened(house.double);
  await again.door.ready;
  expect(house.double.asked('PUT', /commands$/)).toHaveLength(1);
  expect(house.double.problems).toEqual([]);
});

test('an answer that comes too late for Discord harms nothing', async () => {
  const house = await open();
  const how = {
    kind: 'answer',
    answer: { status: 404, json: { code: 10062, message: 'Unknown interaction' } },
  } as const;
  house.double.fail({ path: /callback$/, times: 1, how });
  say(house, 'lost');
  await until(() => house.double.asked('POST', /callback$/).length === 1);
  expect((await say(house, 'next').first).data['content']).toContain('next');
});

test('the bot asks for no events beyond commands', async () => {
  const house = await open();
  expect(house.double.gateway.identified[0]?.['intents']).toBe(0);
});

test('the log holds no token, no text and no member, whatever goes wrong', async () => {
  const lines: string[] = [];
  const log = pino({ level: 'debug' }, { write: (line: string) => void lines.push(line) });
  const { desk } = smallDesk();
  const house = await open({ desk: { services: { ...desk.services, log } } });
  const how = { kind: 'answer', answer: { status: 400, json: { code: 50035, message: 'Invalid Form Body' } } } as const;
  house.double.fail({ path: /callback$/, times: 3, how });
  const secret = house.double.type({
    command: 'say',
    options: { what: 'a secret word' },
    userId: '123456789012345678',
  });
  await until(() => house.double.asked('POST', /callback$/).length === 2);
  house.double.gateway.drop();
  await until(() => house.double.gateway.resumed.length === 1);
  await until(() => lines.some((line) => line.includes('did not arrive')));
  const text = lines.join('');
  for (const hidden of [house.double.token, String(secret.interaction['token']), 'secret word', '123456789012345678']) {
    expect(text).not.toContain(hidden);
  }
});
