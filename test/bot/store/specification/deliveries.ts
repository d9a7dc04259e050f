import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { openStore } from '../../../../bot/store/open-store.ts';
import type { Claim, Deliveries } from '../../../../bot/store/port/deliveries.ts';
import { minute, planned, type World } from './world.ts';

const LEASE_S = 60;
/** Short enough to wait for, long enough to act in. */
const SHORT_LEASE_S = 0.5;

async function claimOne(deliveries: Deliveries, worker = 'w1', leaseS = LEASE_S): Promise<Claim> {
  const [claim] = await deliveries.claim({ worker, now: minute(1), limit: 1, leaseS });
  if (claim === undefined) throw new Error('There was nothing to claim.');
  return claim;
}

export function deliveriesSpecification(world: World): void {
  it('plans a channel-night once, whoever plans it again', async () => {
    const { deliveries } = world.store;
    expect(await deliveries.plan([planned('a'), planned('b')])).toBe(2);
    expect(await deliveries.plan([planned('a', { dueAt: minute(30) }), planned('a', { kind: 'opening' })])).toBe(1);
    const rows = await deliveries.ofNight('a', '2026-12-01');
    expect(rows.find((row) => row.kind === 'warning')).toMatchObject({ ...planned('a'), state: 'due', attempts: 0 });
    expect(await deliveries.plan([])).toBe(0);
  });

  it('claims nothing before its time and nothing that has become stale', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([
      planned('later', { dueAt: minute(5) }),
      planned('stale', { giveUpAt: minute(1) }),
      planned('now', { dueAt: minute(1) }),
    ]);
    const claims = await deliveries.claim({ worker: 'w1', now: minute(1), limit: 10, leaseS: LEASE_S });
    expect(claims.map((claim) => claim.placeId)).toEqual(['now']);
    expect(claims[0]).toMatchObject({ worker: 'w1', attempts: 1, dueAt: minute(1), giveUpAt: minute(59) });
  });

  it('takes the oldest first and no more than asked for', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([3, 1, 2, 0].map((n) => planned(`p${n}`, { dueAt: minute(n) })));
    const wish = { worker: 'w1', now: minute(9), limit: 3, leaseS: LEASE_S };
    expect((await deliveries.claim(wish)).map((claim) => claim.placeId)).toEqual(['p0', 'p1', 'p2']);
    expect((await deliveries.claim(wish)).map((claim) => claim.placeId)).toEqual(['p3']);
  });

  it('gives no row to two workers, however many claim at once', async () => {
    const others = [await openStore(world.url), await openStore(world.url), await openStore(world.url)];
    const workers = [world.store, ...others];
    await world.store.deliveries.plan(Array.from({ length: 120 }, (_, n) => planned(`p${n}`)));
    const claimed: string[] = [];
    await Promise.all(
      workers.map(async ({ deliveries }, n) => {
        for (;;) {
          const wish = { worker: `w${n}`, now: minute(1), limit: 7, leaseS: LEASE_S };
          const claims = await deliveries.claim(wish);
          if (claims.length === 0) return;
          claimed.push(...claims.map((claim) => claim.placeId));
        }
      }),
    );
    await Promise.all(others.map((store) => store.close()));
    expect(new Set(claimed).size).toBe(120);
    expect(claimed).toHaveLength(120);
  });

  it('keeps what was settled, with the message that was made', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    const claim = await claimOne(deliveries);
    expect(await deliveries.mayPost(claim)).toBe(true);
    expect(await deliveries.settle(claim, 'message-1')).toBe(true);
    expect(await deliveries.settle(claim, 'message-2')).toBe(false);
    expect(await deliveries.mayPost(claim)).toBe(false);
    const [row] = await deliveries.ofNight('a', '2026-12-01');
    expect(row).toMatchObject({ state: 'sent', messageId: 'message-1', attempts: 1 });
  });

  it('lets another worker take over once the lease has ended, and shuts the first one out', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    const first = await claimOne(deliveries, 'w1', SHORT_LEASE_S);
    expect(await deliveries.claim({ worker: 'w2', now: minute(1), limit: 1, leaseS: LEASE_S })).toEqual([]);
    await pause(SHORT_LEASE_S * 1000 + 50);
    const second = await claimOne(deliveries, 'w2');
    expect(second).toMatchObject({ worker: 'w2', attempts: 2, firstClaimedAt: first.firstClaimedAt });
    expect(await deliveries.mayPost(first)).toBe(false);
    expect(await deliveries.settle(first, 'late')).toBe(false);
    expect(await deliveries.postpone(first, minute(2), 'late')).toBe(false);
    expect(await deliveries.giveUp(first, 'late')).toBe(false);
    expect(await deliveries.settle(second, 'in time')).toBe(true);
  });

  it('also shuts out an earlier attempt of the very same worker', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    const first = await claimOne(deliveries, 'w1', 0);
    const second = await claimOne(deliveries, 'w1');
    expect(await deliveries.settle(first, 'late')).toBe(false);
    expect(await deliveries.settle(second, 'in time')).toBe(true);
  });

  it('forbids posting past six tenths of the lease, but still lets the holder settle', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    const claim = await claimOne(deliveries, 'w1', SHORT_LEASE_S);
    await pause(SHORT_LEASE_S * 600 + 50);
    expect(await deliveries.mayPost(claim)).toBe(false);
    expect(await deliveries.settle(claim, 'message-1')).toBe(true);
  });

  it('counts the workers that hold rows, each once, and the dead no longer than their leases', async () => {
    const { deliveries } = world.store;
    await deliveries.plan(['a', 'b', 'c', 'd'].map((place) => planned(place)));
    expect(await deliveries.busyWorkers()).toBe(0);
    await claimOne(deliveries, 'w1');
    const second = await claimOne(deliveries, 'w1');
    await claimOne(deliveries, 'dead', 0);
    expect(await deliveries.busyWorkers()).toBe(1);
    await claimOne(deliveries, 'w2');
    expect(await deliveries.busyWorkers()).toBe(2);
    await deliveries.settle(second, 'message-1');
    expect(await deliveries.busyWorkers()).toBe(2);
  });

  it('tries again when a delivery was put off, and counts the attempts', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    expect(await deliveries.postpone(await claimOne(deliveries), minute(4), 'busy')).toBe(true);
    const wish = { worker: 'w2', limit: 1, leaseS: LEASE_S };
    expect(await deliveries.claim({ ...wish, now: minute(3) })).toEqual([]);
    const [again] = await deliveries.claim({ ...wish, now: minute(4) });
    expect(again).toMatchObject({ attempts: 2, worker: 'w2' });
    const [row] = await deliveries.ofNight('a', '2026-12-01');
    expect(row).toMatchObject({ state: 'sending', lastProblem: 'busy' });
  });

  it('ends what came too late: missed if nobody tried, given up with its last problem if somebody did', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([
      planned('tried', { dueAt: minute(0) }),
      planned('untried', { dueAt: minute(5) }),
      planned('not yet', { dueAt: minute(6), giveUpAt: minute(90) }),
    ]);
    await deliveries.postpone(await claimOne(deliveries), minute(2), 'no answer');
    const ended = await deliveries.expire(minute(60));
    expect(ended.map(({ placeId, state, lastProblem }) => [placeId, state, lastProblem]).toSorted()).toEqual([
      ['tried', 'gave_up', 'no answer'],
      ['untried', 'missed', 'too-late'],
    ]);
    expect(await deliveries.expire(minute(60))).toEqual([]);
    expect(await deliveries.claim({ worker: 'w1', now: minute(60), limit: 9, leaseS: LEASE_S })).toHaveLength(1);
  });

  it('ends nothing under the hands of a worker that still holds it', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([planned('a')]);
    const claim = await claimOne(deliveries);
    expect(await deliveries.expire(minute(60))).toEqual([]);
    expect(await deliveries.settle(claim, 'just in time')).toBe(true);
  });

  it('forgets finished nights of long ago, never open ones', async () => {
    const { deliveries } = world.store;
    await deliveries.plan([
      planned('a'),
      planned('b', { dueAt: minute(9) }),
      planned('a', { night: '2026-12-02', dueAt: minute(9) }),
    ]);
    await deliveries.settle(await claimOne(deliveries), 'message-1');
    expect(await deliveries.forget('2026-12-03')).toBe(1);
    expect(await deliveries.ofNight('a', '2026-12-01')).toEqual([]);
    expect(await deliveries.ofNight('b', '2026-12-01')).toHaveLength(1);
  });
}
