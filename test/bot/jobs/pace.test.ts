import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { Pace } from '../../../bot/jobs/pace.ts';

const nothing = () => Promise.resolve();

/** When each of so many turns came, from the first asking on. [ms] */
async function timesOf(pace: Pace, turns: number): Promise<number[]> {
  const begun = performance.now();
  const one = async () => {
    await pace.inTurn(nothing);
    return performance.now() - begun;
  };
  return Promise.all(Array.from({ length: turns }, one));
}

/** The most of them within any stretch of that length. */
function mostWithin(times: readonly number[], ms: number): number {
  return Math.max(...times.map((from) => times.filter((at) => at >= from && at < from + ms).length));
}

test('posts of one process keep below the pace in every second but for one that catches up', async () => {
  const times = await timesOf(new Pace(100, () => Promise.resolve(1)), 30);
  expect(mostWithin(times, 100)).toBeLessThanOrEqual(12);
  expect(times.at(-1)).toBeGreaterThanOrEqual(270);
});

test('who shares with three others takes a quarter', async () => {
  const times = await timesOf(new Pace(200, () => Promise.resolve(4)), 11);
  expect(times.at(-1)).toBeGreaterThanOrEqual(180);
});

test('after a busy moment they do not all go at once', async () => {
  const pace = new Pace(100, () => Promise.resolve(1));
  const times = timesOf(pace, 20);
  await pause(30);
  const until = performance.now() + 80;
  while (performance.now() < until);
  expect(mostWithin(await times, 20)).toBeLessThanOrEqual(5);
});

test('that the store cannot tell who shares is a fault of each post that asks, for a second', async () => {
  let asked = 0;
  const pace = new Pace(1000, () => {
    asked += 1;
    return Promise.reject(new Error('the store is away'));
  });
  await expect(pace.inTurn(nothing)).rejects.toThrow('the store is away');
  await expect(pace.inTurn(nothing)).rejects.toThrow('the store is away');
  expect(asked).toBe(1);
});

test('posts that the service held back count as sent when it let them go', async () => {
  const pace = new Pace(50, () => Promise.resolve(1));
  const letGo = performance.now() + 900;
  const heldBack = Array.from({ length: 10 }, () => pace.inTurn(() => pause(letGo - performance.now())));
  await Promise.all(heldBack);
  await pace.inTurn(nothing);
  expect(performance.now() - letGo).toBeGreaterThanOrEqual(150);
});

test('a pace without end makes nobody wait and asks nobody', async () => {
  let asked = 0;
  const pace = new Pace(Number.POSITIVE_INFINITY, () => {
    asked += 1;
    return Promise.resolve(9);
  });
  await timesOf(pace, 1000);
  expect(asked).toBe(0);
});
