import { once } from 'node:events';
import { createServer } from 'node:http';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { request } from 'undici';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import { openHttpDoor } from '../../../../bot/chat/discord/http-door.ts';
import { type BodyProblem, BodyRoom } from '../../../../bot/chat/discord/request-body.ts';
import { Seen } from '../../../../bot/chat/discord/signature.ts';
import { PlainProblem } from '../../../../bot/ground/errors.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { type House, houseBeingOpened, openHouse } from './house.ts';
import { smallDesk } from './small-desk.ts';

const REQUEST_WITHIN_MS = 600;
let house: House;
let isReady = true;
beforeAll(async () => {
  house = await openHouse('signed HTTP', {
    requestWithinMs: REQUEST_WITHIN_MS,
    isReady: async () => isReady,
  });
});
afterAll(() => house.close());

const doorUrl = () => house.double.doorUrl ?? '';
const nowS = () => Math.floor(Date.now() / 1000);

async function got(path: string, method: 'GET' | 'POST' = 'GET') {
  const { statusCode, headers, body } = await request(`${doorUrl()}${path}`, { method });
  return { status: statusCode, text: await body.text(), headers };
}

test('a ping is answered with a pong', async () => {
  expect(await house.double.deliver(house.double.ping())).toEqual({ status: 200, text: '{"type":1}' });
  expect(await house.double.deliver(house.double.ping())).toMatchObject({ status: 200 });
});

test.each([
  ['a signature of another key', () => ({ signature: 'ab'.repeat(64) })],
  ['no hexadecimal signature', () => ({ signature: 'not a signature' })],
  ['a signature that is too short', () => ({ signature: 'abcd' })],
  ['a body changed after signing', () => ({ bodyAfterSigning: '{"id":"1","token":"x","type":1}' })],
  ['a timestamp of six minutes ago', () => ({ timestamp: String(nowS() - 360) })],
  ['a timestamp six minutes ahead', () => ({ timestamp: String(nowS() + 360) })],
  ['a timestamp that is no number', () => ({ timestamp: 'yesterday' })],
])('%s gets 401', async (_name, spoilt) => {
  expect(await house.double.deliver(house.double.ping(), spoilt())).toMatchObject({ status: 401 });
});

test('a request without signature gets 401', async () => {
  expect(await got('/interactions', 'POST')).toMatchObject({ status: 401 });
});

test('a clock four minutes off is borne', async () => {
  expect(await house.double.deliver(house.double.ping(), { timestamp: String(nowS() - 240) })).toMatchObject({
    status: 200,
  });
});

test('a signed request that is sent again gets 401 and is not answered twice', async () => {
  const conversation = house.double.type({ command: 'say', options: { what: 'once' } });
  await conversation.first;
  expect(await house.double.deliver(conversation.interaction)).toMatchObject({ status: 401 });
});

test.each([
  ['no object', '[]' as unknown],
  ['an object without type', {}],
])('signed JSON that is no interaction (%s) gets 400', async (_name, body) => {
  expect(await house.double.deliver(body as Record<string, unknown>)).toMatchObject({ status: 400 });
});

test('an interaction of a kind that is not known gets 400', async () => {
  const unknown = { ...house.double.ping(), id: '123456789012345999', type: 77, user: { id: '123456789012345678' } };
  expect(await house.double.deliver(unknown)).toMatchObject({ status: 400 });
});

test('a command of another kind than typed ones gets 400', async () => {
  const { interaction } = house.double.type({ command: 'say', options: { what: 'x' } });
  const onUser = { ...interaction, id: '123456789012345998', data: { name: 'say', type: 2, target_id: '1' } };
  expect(await house.double.deliver(onUser)).toMatchObject({ status: 400 });
});

test('a body announced as too large gets 413', async () => {
  const headers = { 'x-signature-ed25519': 'ab'.repeat(64), 'x-signature-timestamp': '1' };
  const body = Buffer.alloc(300 * 1024);
  const { statusCode } = await request(`${doorUrl()}/interactions`, { method: 'POST', headers, body });
  expect(statusCode).toBe(413);
});

/** Says to be Discord, which costs nothing. */
const CLAIMED = `POST /interactions HTTP/1.1\r\nhost: x\r\nx-signature-ed25519: ${'ab'.repeat(64)}\r\nx-signature-timestamp: 1\r\n`;

test('nothing is read of a body that does not even claim to be signed', async () => {
  const text = await raw(async (socket) => {
    socket.write('POST /interactions HTTP/1.1\r\nhost: x\r\ncontent-length: 100000\r\n\r\n{');
  });
  expect(text).toMatch(/^HTTP\/1.1 401 [\s\S]*connection: close/i);
});

test('bodies of whom nobody knows yet are held up to so many bytes together', async () => {
  const room = new BodyRoom(1000);
  const outcomes: (Buffer | BodyProblem)[] = [];
  const server = createServer((incoming, response) => {
    room
      .bodyOf(incoming)
      .then((body) => {
        outcomes.push(body);
        response.writeHead(body === 'no-room' ? 503 : 200, { connection: 'close' }).end();
      })
      .catch(() => response.destroy());
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const slow = connect(port, '127.0.0.1');
  slow.on('error', () => undefined);
  slow.write(`POST / HTTP/1.1\r\nhost: x\r\ncontent-length: 700\r\n\r\n${'a'.repeat(600)}`);
  while (room.heldBytes < 600) await pause(5);
  const { statusCode } = await request(`http://127.0.0.1:${port}/`, { method: 'POST', body: 'b'.repeat(500) });
  expect([statusCode, outcomes, room.heldBytes]).toEqual([503, ['no-room'], 600]);
  slow.destroy();
  while (room.heldBytes > 0) await pause(5);
  const { statusCode: after } = await request(`http://127.0.0.1:${port}/`, { method: 'POST', body: 'b'.repeat(500) });
  expect(after).toBe(200);
  server.close();
});

/** Writes raw bytes to the door and gives back what comes until it closes. */
async function raw(write: (socket: Socket) => Promise<void>): Promise<string> {
  const { port } = new URL(doorUrl());
  const socket = connect(Number(port), '127.0.0.1');
  let text = '';
  socket.on('data', (chunk) => {
    text += chunk.toString();
  });
  socket.on('error', () => undefined);
  await once(socket, 'connect');
  const closed = once(socket, 'close');
  await write(socket);
  await closed;
  return text;
}

test('a body that grows too large without saying so gets 413', async () => {
  const text = await raw(async (socket) => {
    socket.write(`${CLAIMED}transfer-encoding: chunked\r\n\r\n`);
    const kib = `400\r\n${'a'.repeat(1024)}\r\n`;
    for (let sent = 0; sent < 400 && !socket.destroyed; sent += 1) socket.write(kib);
  });
  expect(text).toMatch(/^HTTP\/1.1 413 /);
});

test('a body that dribbles in is cut off', async () => {
  const begun = performance.now();
  const text = await raw(async (socket) => {
    socket.write(`${CLAIMED}content-length: 1000\r\n\r\n{`);
    while (!socket.destroyed && performance.now() - begun < 10_000) {
      await pause(50);
      if (!socket.destroyed) socket.write(' ');
    }
  });
  expect(text).toMatch(/^HTTP\/1.1 408 /);
  expect(performance.now() - begun).toBeLessThan(6 * REQUEST_WITHIN_MS);
});

test('headers that dribble in are cut off', async () => {
  const text = await raw(async (socket) => void socket.write('POST /interactions HTTP/1.1\r\n'));
  expect(text).toMatch(/^HTTP\/1.1 408 /);
});

test('a request cut short does not harm the next', async () => {
  await raw(async (socket) => {
    socket.write(`${CLAIMED}content-length: 1000\r\n\r\n{`);
    socket.destroy();
  });
  expect(await got('/healthz')).toMatchObject({ status: 200 });
});

test('the health page tells life, the readiness page tells whether the database is there', async () => {
  expect(await got('/healthz')).toMatchObject({ status: 200, text: 'alive\n' });
  expect(await got('/readyz?x=1')).toMatchObject({ status: 200 });
  isReady = false;
  expect(await got('/readyz')).toMatchObject({ status: 503 });
  isReady = true;
});

test('connections beyond so many are refused, and the door is open again once they are gone', async () => {
  const { desk } = smallDesk();
  const { apiBase, publicKey } = house.double;
  const door = openHttpDoor({
    desk,
    api: house.api,
    apiBase,
    publicKey,
    port: 0,
    host: '127.0.0.1',
    mostConnections: 2,
  });
  await door.ready;
  const sockets = Array.from({ length: 6 }, () => connect(door.port(), '127.0.0.1').on('error', () => undefined));
  await Promise.all(sockets.slice(2).map((socket) => (socket.destroyed ? undefined : once(socket, 'close'))));
  for (const socket of sockets) socket.destroy();
  await pause(50);
  expect((await request(`http://127.0.0.1:${door.port()}/healthz`)).statusCode).toBe(200);
  await door.stop();
});

test('other paths and other methods are refused', async () => {
  expect(await got('/')).toMatchObject({ status: 404 });
  expect(await got('/interactions')).toMatchObject({ status: 405, headers: { allow: 'POST' } });
  expect(await got('/healthz', 'POST')).toMatchObject({ status: 405, headers: { allow: 'GET' } });
});

test('a port that is taken ends the start with a sentence', async () => {
  const { desk } = smallDesk();
  const { apiBase, publicKey } = house.double;
  const port = Number(new URL(doorUrl()).port);
  const door = openHttpDoor({ desk, api: house.api, apiBase, publicKey, port, host: '127.0.0.1' });
  const problem = await door.ready.catch((error: unknown) => error);
  expect(problem).toBeInstanceOf(PlainProblem);
  expect(String(problem)).toContain('HTTP_PORT');
});

test('a door whose commands are not yet at Discord is alive but not ready', async () => {
  const double = await DiscordDouble.open();
  double.fail({ path: /@me$/, how: { kind: 'answer', answer: { status: 503 } } });
  const being = await houseBeingOpened('signed HTTP', { double });
  const ready = being.door.ready.catch(() => undefined);
  while (double.requests.length === 0) await pause(10);
  const url = `http://127.0.0.1:${being.httpPort()}`;
  expect((await request(`${url}/healthz`)).statusCode).toBe(200);
  expect((await request(`${url}/readyz`)).statusCode).toBe(503);
  await being.close();
  await ready;
});

test('a refused token ends the start with what to do', async () => {
  const double = await DiscordDouble.open();
  const { desk } = smallDesk();
  const { apiBase, publicKey } = double;
  const api = new DiscordApi({ token: 'a-wrong-one', apiBase, onTokenRefused: () => undefined });
  const door = openHttpDoor({ desk, api, apiBase, publicKey, port: 0, host: '127.0.0.1' });
  await expect(door.ready).rejects.toThrow('DISCORD_TOKEN');
  await door.stop();
  api.close();
  await double.close();
});

test('a request is known again for as long as its signature could be fresh, and forgotten after', () => {
  const seen = new Seen();
  expect(seen.isNew('1', 0)).toBe(true);
  expect(seen.isNew('1', 599_000)).toBe(false);
  expect(seen.isNew('1', 601_000)).toBe(true);
});
