import { once } from 'node:events';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import * as ours from 'undici';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import { DiscordPoster } from '../../../../bot/chat/discord/poster.ts';
import { uploadedFile } from '../../../../bot/chat/discord/uploaded-file.ts';
import { clockFindings } from '../../../../bot/doctor/clock-check.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { DOT_PNG, said } from './small-desk.ts';

const fromHere = createRequire(import.meta.url);
const theirs = createRequire(fromHere.resolve('discord.js'))('undici') as typeof ours;

let double: DiscordDouble;
let api: DiscordApi;
let before: ours.Dispatcher;
beforeAll(async () => {
  before = ours.getGlobalDispatcher();
  double = await DiscordDouble.open();
  api = new DiscordApi({ token: double.token, apiBase: double.apiBase, onTokenRefused: () => undefined });
});
afterAll(async () => {
  ours.setGlobalDispatcher(before);
  api.close();
  await double.close();
});

test('two undicis of different ages are loaded', () => {
  expect(ours.Agent).not.toBe(theirs.Agent);
});

describe.each([
  ['ours', ours],
  ["the Discord library's", theirs],
])('where both send through %s', (_whose, { Agent, setGlobalDispatcher }) => {
  beforeAll(() => setGlobalDispatcher(new Agent()));

  test('a picture reaches the channel whole, with its kind', async () => {
    const channel = double.world.addChannel(double.world.addGuild().id);
    const picture = { name: 'night.png', png: DOT_PNG, altText: 'The night.' };
    await new DiscordPoster(api).send(channel.id, { ...said('Cover the kale.'), picture }, 'a-nonce-of-this-test');
    expect(channel.messages.map(({ body }) => body['content'])).toEqual([expect.stringContaining('Cover the kale.')]);
    const posted = double.requests.findLast(({ method }) => method === 'POST');
    expect(posted?.files.map(({ name, bytes }) => [name, Buffer.compare(bytes, DOT_PNG)])).toEqual([['night.png', 0]]);
    expect(double.problems).toEqual([]);
  });

  test('files and the time are fetched', async () => {
    const server = createServer((_request, response) => response.end('5,-1.5')).listen(0, '127.0.0.1');
    await once(server, 'listening');
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    const attachment = { id: '1', filename: 'r.csv', size: 6, url, proxy_url: url };
    expect(await uploadedFile(attachment, double.apiBase).text(100)).toBe('5,-1.5');
    const wish = { userAgent: 'test', wallMs: Date.now, zoneDataVersion: undefined };
    const [clock] = await clockFindings({ ...wish, timeUrl: url });
    expect(clock?.state).toBe('good');
    server.close();
    await once(server, 'close');
  });
});
