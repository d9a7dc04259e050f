import { expect, it } from 'vitest';
import { AnswerCache } from '../../../bot/forecast/answer-cache.ts';
import { BoundedMap } from '../../../bot/ground/bounded-map.ts';

type Value = Parameters<AnswerCache['createWriteStream']>[1];

const key = (path: string, headers: Record<string, string> = {}) => ({
  origin: 'https://example.org',
  method: 'GET',
  path,
  headers,
});
const value = (more: Partial<Value> = {}): Value => ({
  statusCode: 200,
  statusMessage: 'OK',
  headers: {},
  cachedAt: 0,
  staleAt: 1000,
  deleteAt: 2000,
  ...more,
});
const open = (maxBytes: number, trustLastModified = true) =>
  new AnswerCache({ maxBytes, keepStaleMs: 10_000, trustLastModified });

async function put(cache: AnswerCache, path: string, body: string, more: Partial<Value> = {}): Promise<void> {
  await new Promise<void>((done) => {
    cache.createWriteStream(key(path), value(more)).end(body, () => done());
  });
}
const has = (cache: AnswerCache, path: string) => cache.get(key(path)) !== undefined;

it('gives back what was written whole', async () => {
  const cache = open(100);
  await put(cache, '/a', 'frost');
  expect(String(cache.get(key('/a'))?.body)).toBe('frost');
  expect(has(cache, '/b')).toBe(false);
});

it('stays within its bytes when every address is another one, dropping those used longest ago', async () => {
  const cache = open(30);
  for (const path of ['/1', '/2', '/3']) await put(cache, path, 'x'.repeat(10));
  expect(has(cache, '/1')).toBe(true);
  await put(cache, '/4', 'x'.repeat(10));
  expect(['/1', '/2', '/3', '/4'].map((path) => has(cache, path))).toEqual([true, false, true, true]);
  expect(cache.bytes).toBe(30);
});

it('replaces an answer and does not count it twice', async () => {
  const cache = open(30);
  await put(cache, '/1', 'x'.repeat(20));
  await put(cache, '/1', 'x'.repeat(10));
  expect(cache.bytes).toBe(10);
  cache.delete(key('/1'));
  expect(cache.bytes).toBe(0);
});

it('does not keep what is larger than all its room', async () => {
  const cache = open(5);
  await put(cache, '/1', 'x'.repeat(6));
  expect([cache.bytes, has(cache, '/1')]).toEqual([0, false]);
});

it('gives an answer only to requests that vary as the first one did', async () => {
  const cache = open(100);
  await put(cache, '/1', 'geo', { vary: { accept: 'application/geo+json' } });
  expect(cache.get(key('/1', { accept: 'application/geo+json' }))).toBeDefined();
  expect(cache.get(key('/1', { accept: 'text/html' }))).toBeUndefined();
});

it('keeps a stale answer with a Last-Modified for longer, and forgets a date it cannot trust', async () => {
  const headers = { 'last-modified': 'Tue, 20 Jan 2026 19:31:07 GMT', 'content-type': 'application/json' };
  const trusting = open(100);
  await put(trusting, '/1', 'x', { headers });
  expect(trusting.get(key('/1'))).toMatchObject({ deleteAt: 11_000, headers });
  const wary = open(100, false);
  await put(wary, '/1', 'x', { headers });
  expect(wary.get(key('/1'))?.headers).toEqual({ 'content-type': 'application/json' });
  await put(wary, '/2', 'x');
  expect(wary.get(key('/2'))?.deleteAt).toBe(2000);
});

it('is fresh for six hours at most, whatever the service says', async () => {
  const cache = open(100);
  const year = 365 * 86_400_000;
  await put(cache, '/1', 'x', { cachedAt: 1000, staleAt: 1000 + year, deleteAt: 1000 + year });
  expect(cache.get(key('/1'))).toMatchObject({ staleAt: 1000 + 6 * 3_600_000, deleteAt: 1000 + 48 * 3_600_000 });
});

it('gives back nothing of a clock that ran ahead', async () => {
  const cache = new AnswerCache({ maxBytes: 100, keepStaleMs: 0, trustLastModified: true, nowMs: () => 5000 });
  await put(cache, '/1', 'x', { cachedAt: 5001 });
  expect([has(cache, '/1'), cache.bytes]).toEqual([false, 0]);
});

it('forgets places used longest ago', () => {
  const map = new BoundedMap<string, number>(2);
  map.set('a', 1);
  map.set('b', 2);
  map.get('a');
  map.set('c', 3);
  expect([map.get('a'), map.get('b'), map.get('c'), map.size]).toEqual([1, undefined, 3, 2]);
});
