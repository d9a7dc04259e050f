import assert from 'node:assert/strict';
import { once } from 'node:events';
import { connect } from 'node:net';
import fc from 'fast-check';
import { request } from 'undici';
import type { DiscordDouble } from '../fakes/discord/double.ts';
import type { Json } from '../fakes/discord/wire.ts';
import { hostileText } from './hostile-words.ts';

/** An unsigned or broken request must be answered, or the connection closed, within this. [ms] */
const WITHIN_MS = 5000;

/** Bytes that begin like HTTP, or not at all. */
const bytes: fc.Arbitrary<Buffer> = fc
  .record({
    line: fc.constantFrom(
      'POST /interactions HTTP/1.1',
      'GET /readyz HTTP/1.1',
      'PRI * HTTP/2.0',
      'POST  HTTP/9',
      '\0',
    ),
    headers: fc.array(fc.tuple(headerName(), fc.string({ unit: 'binary', maxLength: 40 })), { maxLength: 6 }),
    body: fc.uint8Array({ maxLength: 200 }),
    end: fc.constantFrom('\r\n\r\n', '\n\n', '\r\n', ''),
  })
  .map(({ line, headers, body, end }) => {
    const head = [line, ...headers.map(([name, value]) => `${name}: ${value}`)].join('\r\n');
    return Buffer.concat([Buffer.from(head + end), Buffer.from(body)]);
  });

function headerName(): fc.Arbitrary<string> {
  return fc.constantFrom(
    'Host',
    'Content-Length',
    'Transfer-Encoding',
    'X-Signature-Ed25519',
    'X-Signature-Timestamp',
    'Expect',
    'Connection',
    '__proto__',
  );
}

/** Whatever bytes come, the door never says that it failed, and lives on. */
export function bytesProperty(doorUrl: string): fc.IAsyncProperty<[Buffer]> {
  return fc.asyncProperty(bytes, async (raw) => {
    const answered = await spokenTo(Number(new URL(doorUrl).port), raw);
    assert.doesNotMatch(answered, /^HTTP\/1.1 (?:50[0-24-9]|202)/);
    if (/^HTTP\/1.1 200/.test(answered)) assert.match(raw.toString('latin1'), /^GET \/readyz/);
  });
}

/** What comes back until the door closes, or half a second after we have finished speaking. */
async function spokenTo(port: number, raw: Buffer): Promise<string> {
  const socket = connect(port, '127.0.0.1');
  let text = '';
  socket.on('data', (chunk: Buffer) => {
    text += chunk.toString('latin1');
  });
  socket.on('error', () => undefined);
  socket.setTimeout(WITHIN_MS, () => socket.destroy());
  const closed = once(socket, 'close');
  await Promise.race([once(socket, 'connect'), closed]);
  socket.end(raw);
  await closed;
  return text;
}

/** Fields of an interaction, gone wrong: signed all the same, as if Discord itself had lost its mind. */
const spoiling = fc.array(
  fc.record({ path: fc.array(fc.nat({ max: 12 }), { minLength: 1, maxLength: 4 }), value: fc.option(fc.jsonValue()) }),
  { minLength: 1, maxLength: 4 },
);

/**
 * Whatever Discord signs, the door gives an answer of its own or refuses it.
 *
 * @param typed - A well-formed interaction to start from.
 */
export function signedProperty(double: DiscordDouble, typed: () => Json): fc.IAsyncProperty<[SpoiltFields, string]> {
  return fc.asyncProperty(spoiling, hostileText, async (changes, text) => {
    const id = freshId();
    const interaction: Record<string, unknown> = { ...structuredClone(typed()), id };
    for (const { path, value } of changes) spoil(interaction, path, value === null ? text : value);
    const { status } = await double.deliver(interaction);
    // A signed request with an id of its own is never refused as unsigned or as a repeat.
    const repeat = interaction['id'] === id ? [] : [401];
    assert.ok([200, 202, 400, 413, ...repeat].includes(status), `the door answered ${status}`);
  });
}

let ids = 900_000_000_000_000_000n;
function freshId(): string {
  ids += 1n;
  return String(ids);
}

type SpoiltFields = readonly { readonly path: readonly number[]; readonly value: fc.JsonValue | null }[];

/** Walks by the number of the key, and changes or drops what stands there. */
function spoil(node: Record<string, unknown>, [step = 0, ...rest]: readonly number[], value: unknown): void {
  const keys = Object.keys(node);
  const key = keys[step % Math.max(1, keys.length)];
  if (key === undefined) return;
  const child = node[key];
  if (rest.length > 0 && typeof child === 'object' && child !== null)
    spoil(child as Record<string, unknown>, rest, value);
  else if (value === undefined) delete node[key];
  else node[key] = value;
}

/** Requests without a right signature get 401 whatever they say. */
export function unsignedProperty(doorUrl: string): fc.IAsyncProperty<[string, string, string]> {
  const hex = fc.string({ unit: fc.constantFrom(...'0123456789abcdefABCDEF'), minLength: 126, maxLength: 130 });
  const signature = fc.oneof(hex, fc.string({ unit: 'grapheme-ascii', maxLength: 140 }));
  const seconds = fc.oneof(fc.integer().map(String), fc.constant(String(Math.floor(Date.now() / 1000))));
  return fc.asyncProperty(signature, seconds, hostileText, async (signed, at, body) => {
    const headers = { 'x-signature-ed25519': signed, 'x-signature-timestamp': at };
    const answered = await request(`${doorUrl}/interactions`, { method: 'POST', headers, body });
    await answered.body.dump();
    assert.equal(answered.statusCode, 401);
  });
}
