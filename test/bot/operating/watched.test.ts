import { mkdtemp, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { request } from 'undici';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Command } from '../../../bot/commands/command.ts';
import type { Services } from '../../../bot/commands/services.ts';
import { PlainProblem } from '../../../bot/ground/errors.ts';
import { Metrics } from '../../../bot/operating/metrics.ts';
import { watchedCommands } from '../../../bot/operating/watched-commands.ts';
import { watchRequests } from '../../../bot/operating/watched-requests.ts';
import { watchedStore } from '../../../bot/operating/watched-store.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import type { Store } from '../../../bot/store/store.ts';
import { StoreProblem } from '../../../bot/store/store-problem.ts';
import type { Reply } from '../../../bot/talk/reply.ts';
import type { Request } from '../../../bot/talk/request.ts';

const DUE = new Date('2026-01-20T20:00:00Z');
let metrics: Metrics;
let folder: string;
let store: Store;
let nowMs: number;

beforeEach(async () => {
  metrics = new Metrics();
  folder = await mkdtemp(join(tmpdir(), 'eiderdown-watched-'));
  nowMs = DUE.getTime();
  const clock = { now: () => new Date(nowMs), rehearsal: false };
  store = watchedStore(await openStore(`sqlite:${join(folder, 'watched.db')}`), metrics, clock);
});
afterEach(async () => {
  await store.close();
  await rm(folder, { recursive: true, force: true });
});

async function plan(kind: string, placeId = 'channel-1'): Promise<void> {
  const giveUpAt = new Date(DUE.getTime() + 3_600_000);
  await store.deliveries.plan([{ placeId, night: '2026-01-20', kind, dueAt: DUE, giveUpAt }]);
}

async function claimed() {
  const [claim] = await store.deliveries.claim({ worker: 'w', now: new Date(nowMs), limit: 1, leaseS: 60 });
  if (claim === undefined) throw new Error('nothing to claim');
  return claim;
}

test('posts are counted as done, late, put off, failed or missed when the ledger is told so', async () => {
  await plan('warning');
  await store.deliveries.settle(await claimed(), 'message');
  await plan('worse-1');
  nowMs += 301_000;
  await store.deliveries.settle(await claimed(), 'message');
  await plan('worse-2');
  await store.deliveries.postpone(await claimed(), new Date(nowMs + 60_000), 'unavailable');
  await plan('opening');
  await store.deliveries.giveUp(await claimed(), 'missing-permission');
  await plan('hardening');
  await store.deliveries.expire(new Date(DUE.getTime() + 7_200_000));
  const text = await metrics.text();
  for (const line of [
    'eiderdown_nightly_total{work="warning",outcome="done"} 1',
    'eiderdown_nightly_total{work="check",outcome="postponed"} 1',
    'eiderdown_nightly_total{work="check",outcome="late"} 1',
    'eiderdown_nightly_total{work="opening",outcome="failed"} 1',
    'eiderdown_nightly_total{work="hardening",outcome="missed"} 1',
    'eiderdown_nightly_delay_seconds_sum{work="check"} 301',
  ]) {
    expect(text).toContain(line);
  }
});

test('what another worker has taken over is counted by that one alone', async () => {
  await plan('warning');
  const claim = await claimed();
  expect(await store.deliveries.settle({ ...claim, worker: 'another' }, 'message')).toBe(false);
  expect(await metrics.text()).not.toContain('eiderdown_nightly_total{');
});

test('work is counted by its kind, never by the channel, member or cell that it is for', async () => {
  await plan('forecast-2026-01-20T20', 'cell:42.90,-78.80,200');
  await store.deliveries.settle(await claimed(), 'none');
  await plan('paused:998877665544332211', 'direct:471147114711471147');
  await store.deliveries.settle(await claimed(), 'none');
  const text = await metrics.text();
  expect(text).toContain('eiderdown_nightly_total{work="gather",outcome="done"} 1');
  expect(text).toContain('eiderdown_nightly_total{work="pause-notice",outcome="done"} 1');
  for (const secret of ['42.9', '78.8', '998877', '471147']) expect(text).not.toContain(secret);
});

test('a store operation that fails is counted by its code, and fails as before', async () => {
  const site = { name: 'Home', latitudeDeg: 95, longitudeDeg: 0, heightM: undefined, exposure: 'open' } as const;
  const facts = { ...site, timeZone: 'UTC', horizonDeg: [] };
  await expect(store.sites.add('m', facts, DUE)).rejects.toThrow(StoreProblem);
  expect(await metrics.text()).toContain('{operation="sites.add",outcome="bad-value"} 1');
  await store.ping();
  expect(await metrics.text()).toContain('{operation="ping",outcome="done"} 1');
});

const reply: Reply = { headline: 'Holds.', sections: [], private: false };
const action = (run: () => Promise<Reply>) => ({ description: 'd', options: [], example: 'e', private: false, run });

test.each([
  ['answered', async () => reply],
  ['refused', async () => ({ ...reply, refused: true })],
  ['refused', () => Promise.reject(new PlainProblem('Name a crop.'))],
  ['refused', () => Promise.reject(new StoreProblem('name-taken', 'Taken.'))],
  ['failed', () => Promise.reject(new StoreProblem('unreachable', 'Away.'))],
  ['failed', () => Promise.reject(new TypeError('ours'))],
] as const)('a command is counted as %s', async (outcome, run) => {
  const commands: readonly Command[] = [
    { name: 'plain', description: 'd', action: action(run) },
    { name: 'bed', description: 'd', actions: { add: action(run) } },
  ];
  const [plain, bed] = watchedCommands(commands, metrics);
  const [asked, services] = [{} as Request, {} as Services];
  const runs = [plain?.action?.run(asked, services), bed?.actions?.['add']?.run(asked, services)];
  await Promise.allSettled(runs);
  const text = await metrics.text();
  expect(text).toContain(`eiderdown_commands_total{command="plain",outcome="${outcome}"} 1`);
  expect(text).toContain(`eiderdown_commands_total{command="bed add",outcome="${outcome}"} 1`);
});

test('requests are counted by server and by how they ended, until counting ends', async () => {
  const server = await listening((status) => status);
  const other = await listening(() => 200);
  const base = (each: Server) => `http://127.0.0.1:${(each.address() as AddressInfo).port}`;
  const end = watchRequests({ metno: `${base(server)}/api`, nws: base(server) }, metrics);
  for (const status of [200, 304, 403, 429, 404, 503]) await (await request(`${base(server)}/${status}`)).body.dump();
  await (await request(`${base(other)}/200`)).body.dump();
  await request(`${base(server)}/cut`).catch(() => undefined);
  end();
  await (await request(`${base(server)}/200`)).body.dump();
  const lines = (await metrics.text()).split('\n').filter((line) => line.startsWith('eiderdown_requests_total{'));
  expect(lines.sort()).toEqual([
    'eiderdown_requests_total{to="metno",outcome="answered"} 2',
    'eiderdown_requests_total{to="metno",outcome="broken"} 1',
    'eiderdown_requests_total{to="metno",outcome="no-answer"} 1',
    'eiderdown_requests_total{to="metno",outcome="not-understood"} 1',
    'eiderdown_requests_total{to="metno",outcome="rate-limited"} 1',
    'eiderdown_requests_total{to="metno",outcome="refused"} 1',
  ]);
  for (const each of [server, other]) {
    each.closeAllConnections();
    each.close();
  }
});

async function listening(statusOf: (asked: number) => number): Promise<Server> {
  const server = createServer((asked, response) => {
    const path = (asked.url ?? '').slice(1);
    if (path === 'cut') asked.socket.destroy();
    else response.writeHead(statusOf(Number(path))).end();
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return server;
}
