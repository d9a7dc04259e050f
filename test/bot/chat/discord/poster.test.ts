import fc from 'fast-check';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import { DiscordPoster } from '../../../../bot/chat/discord/poster.ts';
import { PostError } from '../../../../bot/talk/channel-poster.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { type FaultKind, tooMany } from '../../../fakes/discord/faults.ts';
import type { WorldChannel } from '../../../fakes/discord/world.ts';
import { DOT_PNG, said } from './small-desk.ts';

let double: DiscordDouble;
let api: DiscordApi;
let poster: DiscordPoster;
let refusals = 0;
let count = 0;
beforeAll(async () => {
  double = await DiscordDouble.open();
  api = new DiscordApi({ token: double.token, apiBase: double.apiBase, onTokenRefused: () => (refusals += 1) });
  poster = new DiscordPoster(api);
});
afterEach(() => {
  double.faults.clear();
  double.messages.limit = undefined;
});
afterAll(async () => {
  expect(double.problems).toEqual([]);
  api.close();
  await double.close();
});

const VIEW = 1n << 10n;
const SEND = 1n << 11n;
const ATTACH = 1n << 15n;
const HISTORY = 1n << 16n;
const IN_THREADS = 1n << 38n;

const channel = () => double.world.addChannel(double.world.addGuild().id);
const nonce = () => {
  count += 1;
  return `n${String(count).padStart(6, '0')}-of-these-tests`;
};
const warning = said('Cover the kale before 16:10.', { sections: [{ lines: ['Leaf low about 21 °F.'] }] });
const withPicture = { ...warning, picture: { name: 'night.png', png: DOT_PNG, altText: 'The night.' } };

async function failure(work: Promise<unknown>): Promise<PostError> {
  const error = await work.catch((thrown: unknown) => thrown);
  if (!(error instanceof PostError)) throw new Error(`expected a PostError, got ${String(error)}`);
  return error;
}

function failPosts(how: FaultKind, times?: number): void {
  double.fail({ method: 'POST', path: /messages$/, how, ...(times === undefined ? {} : { times }) });
}

test('a post arrives once with its nonce, and tells its id', async () => {
  const there = channel();
  const { messageId } = await poster.send(there.id, withPicture, 'the-nonce-of-this-test');
  expect(there.messages.map((message) => message.id)).toEqual([messageId]);
  const [message] = there.messages;
  expect(message?.body).toMatchObject({ nonce: 'the-nonce-of-this-test', enforce_nonce: true });
  expect(message?.body['content']).toBe('**Cover the kale before 16:10.**\nLeaf low about 21 °F.\n-# Notice the-nonc');
  expect(message?.body['flags']).toBeUndefined();
});

test.each<[string, FaultKind]>([
  ['a fault after the message was made', { kind: 'done-but-answer', answer: { status: 500 } }],
  ['a connection that closed without an answer', { kind: 'done-but-closed' }],
  ['a connection that was reset', { kind: 'reset' }],
  ['an answer that takes its time', { kind: 'slow', ms: 300 }],
  ['a fault before the message was made', { kind: 'answer', answer: { status: 502 } }],
])('after %s there is one message', async (_name, how) => {
  const there = channel();
  failPosts(how, 2);
  const { messageId } = await poster.send(there.id, warning, nonce());
  expect(there.messages.map((message) => message.id)).toEqual([messageId]);
});

test('a fault that stays is told after three attempts', async () => {
  const there = channel();
  failPosts({ kind: 'answer', answer: { status: 503 } });
  const before = double.requests.length;
  expect((await failure(poster.send(there.id, warning, nonce()))).code).toBe('unavailable');
  expect(double.requests.length - before).toBe(3);
});

test('a post that is repeated later with its nonce gives back the first', async () => {
  const there = channel();
  const same = nonce();
  expect(await poster.send(there.id, warning, same)).toEqual(await poster.send(there.id, warning, same));
  expect(there.messages).toHaveLength(1);
});

test('each way of not arriving has its own code', async () => {
  const hidden = channel();
  hidden.overwrites = [{ id: hidden.guildId ?? '', deny: VIEW }];
  const mute = channel();
  mute.overwrites = [{ id: mute.guildId ?? '', deny: SEND }];
  const gone = channel();
  gone.deleted = true;
  double.world.closedTo.add('123456789012345670');
  const codes = [
    await failure(poster.send(hidden.id, warning, nonce())),
    await failure(poster.send(mute.id, warning, nonce())),
    await failure(poster.send(gone.id, warning, nonce())),
    await failure(poster.direct('123456789012345670', warning, nonce())),
  ].map(({ code }) => code);
  expect(codes).toEqual(['missing-access', 'missing-permission', 'channel-gone', 'dm-closed']);
});

test('a long wait that Discord asks for is told at once instead of waited for', async () => {
  failPosts({ kind: 'answer', answer: tooMany(30) }, 1);
  const begun = performance.now();
  const { code, retryAfterS } = await failure(poster.send(channel().id, warning, nonce()));
  expect(code).toBe('rate-limited');
  expect(retryAfterS).toBeGreaterThanOrEqual(30);
  expect(retryAfterS).toBeLessThan(32);
  expect(performance.now() - begun).toBeLessThan(5000);
});

test('a short wait is waited for', async () => {
  const there = channel();
  failPosts({ kind: 'answer', answer: tooMany(1) }, 1);
  await poster.send(there.id, warning, nonce());
  expect(there.messages).toHaveLength(1);
});

test('twelve posts at once into one channel keep to its limit', async () => {
  const there = channel();
  double.messages.limit = { most: 5, windowMs: 300 };
  await Promise.all(Array.from({ length: 12 }, () => poster.send(there.id, warning, nonce())));
  expect(there.messages).toHaveLength(12);
  expect(double.messages.limitViolations).toBe(0);
});

test('without the right to attach, the words come without the picture', async () => {
  const there = channel();
  there.overwrites = [{ id: there.guildId ?? '', deny: ATTACH }];
  await poster.send(there.id, withPicture, nonce());
  expect(there.messages.map((message) => message.files.length)).toEqual([0]);
});

test('a nonce that Discord would refuse is refused here', async () => {
  await expect(poster.send(channel().id, warning, 'x'.repeat(26))).rejects.toThrow(RangeError);
  await expect(poster.send(channel().id, warning, '')).rejects.toThrow(RangeError);
});

test('direct posts go to the member’s own channel, which is opened once', async () => {
  const memberId = '123456789012345671';
  const opened = () => double.asked('POST', /^\/users\/@me\/channels$/).length;
  const before = opened();
  await poster.direct(memberId, warning, nonce());
  await poster.direct(memberId, warning, nonce());
  expect(opened() - before).toBe(1);
  const own = double.world.directChannel(memberId);
  expect(own.messages).toHaveLength(2);
  expect(await poster.directChannelId(memberId)).toBe(own.id);
  expect(await poster.rights(own.id)).toEqual([]);
});

test('an earlier post is found again by its nonce, and nothing else is taken for it', async () => {
  const there = channel();
  const since = new Date();
  const own = nonce();
  await poster.send(there.id, warning, nonce());
  const { messageId } = await poster.send(there.id, warning, own);
  const [template] = there.messages;
  if (template === undefined) throw new Error('nothing was posted');
  const copied = there.messages.find((message) => message.id === messageId) ?? template;
  there.messages.push({ ...copied, id: `9${copied.id.slice(1)}`, authorId: '123456789012345672' });
  expect(await poster.findRecent(there.id, since, own)).toEqual({ messageId });
  expect(await poster.findRecent(there.id, since, 'never-posted')).toBeUndefined();
  const anHourOn = new Date(since.getTime() + 3_600_000);
  expect(await poster.findRecent(there.id, anHourOn, own)).toBeUndefined();
});

test('an earlier post is found behind more than a page of other talk', async () => {
  const there = channel();
  const since = new Date();
  await poster.send(there.id, warning, nonce());
  const [first] = there.messages;
  if (first === undefined) throw new Error('nothing was posted');
  const body = { content: 'talk' };
  for (let extra = 1n; extra <= 250n; extra += 1n) {
    there.messages.push({ ...first, id: String(BigInt(first.id) + extra), body });
  }
  const own = nonce();
  const { messageId } = await poster.send(there.id, warning, own);
  const last = there.messages.pop();
  if (last === undefined) throw new Error('nothing was posted');
  there.messages.push({ ...last, id: String(BigInt(first.id) + 251n) });
  expect(messageId).toBe(last.id);
  expect(await poster.findRecent(there.id, since, own)).toEqual({ messageId: String(BigInt(first.id) + 251n) });
});

test('missing rights are told by the names in Discord’s settings', async () => {
  const there = channel();
  expect(await poster.rights(there.id)).toEqual([]);
  there.overwrites = [{ id: there.guildId ?? '', deny: SEND | ATTACH }];
  expect(await poster.rights(there.id)).toEqual(['Send Messages', 'Attach Files']);
  there.overwrites = [{ id: there.guildId ?? '', deny: VIEW }];
  expect(await poster.rights(there.id)).toEqual([
    'View Channel',
    'Send Messages',
    'Attach Files',
    'Read Message History',
  ]);
});

test('a thread takes its rights from its channel, and writing in it is a right of its own', async () => {
  const parent = channel();
  const thread = double.world.addChannel(parent.guildId ?? '', { type: 11, parentId: parent.id });
  expect(await poster.rights(thread.id)).toEqual([]);
  parent.overwrites = [{ id: parent.guildId ?? '', deny: IN_THREADS }];
  expect(await poster.rights(thread.id)).toEqual(['Send Messages in Threads']);
});

test('a channel that is gone is told when its rights are asked', async () => {
  const there = channel();
  there.deleted = true;
  expect((await failure(poster.rights(there.id))).code).toBe('channel-gone');
});

/** Rights by roles and exceptions, as servers mix them. */
const bits = fc.subarray([VIEW, SEND, ATTACH, HISTORY]).map((chosen) => chosen.reduce((sum, bit) => sum | bit, 0n));
const exception = fc.record({ allow: bits, deny: bits });

test('what the bot says it lacks is what Discord refuses, for any roles and exceptions', async () => {
  const property = fc.asyncProperty(
    bits,
    bits,
    fc.tuple(exception, exception, exception),
    async (all, role, [a, b, c]) => {
      const guild = double.world.addGuild(all);
      const roleId = '123456789012345673';
      guild.roles.push({ id: roleId, permissions: role });
      guild.botRoleIds = [roleId];
      const there: WorldChannel = double.world.addChannel(guild.id);
      there.overwrites = [
        { id: guild.id, ...a },
        { id: roleId, ...b },
        { id: double.world.botId, ...c },
      ];
      const lacks = await poster.rights(there.id);
      const refused = await poster.send(there.id, warning, nonce()).then(
        () => undefined,
        (error: PostError) => error.code,
      );
      expect(refused === 'missing-access').toBe(lacks.includes('View Channel'));
      expect(refused === undefined).toBe(!lacks.includes('Send Messages'));
    },
  );
  await fc.assert(property, { numRuns: 60 });
});

test('a refused token is told once, and every later call says the same', async () => {
  const lapsed = new DiscordApi({ token: 'lapsed', apiBase: double.apiBase, onTokenRefused: () => (refusals += 1) });
  const other = new DiscordPoster(lapsed);
  const there = channel();
  expect((await failure(other.send(there.id, warning, nonce()))).code).toBe('token-refused');
  expect((await failure(other.rights(there.id))).code).toBe('token-refused');
  expect(refusals).toBe(1);
  lapsed.close();
});
