import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Turns, URGENCIES, type Urgency } from '../../../bot/forecast/turns.ts';

const SPACING_MS = 1000;
let turns: Turns;
beforeEach(() => {
  vi.useFakeTimers();
  turns = new Turns(SPACING_MS, () => Date.now());
});
afterEach(() => vi.useRealTimers());

/** Asks at once and tells in which order and when each came to its turn. */
async function served(wishes: readonly (readonly [Urgency, number])[]) {
  const begun = Date.now();
  const order: { index: number; isOn: boolean; afterMs: number }[] = [];
  for (const [index, [urgency, patienceMs]] of wishes.entries()) {
    void turns.turn(urgency, patienceMs).then((isOn) => order.push({ index, isOn, afterMs: Date.now() - begun }));
  }
  await vi.advanceTimersByTimeAsync(wishes.length * SPACING_MS + 1);
  return order;
}

test('a club’s night goes before what members ask, and official warnings come last', async () => {
  const order = await served([
    ['aside', 60_000],
    ['aside', 60_000],
    ['asked', 60_000],
    ['nightly', 60_000],
  ]);
  expect(order.map(({ index }) => index)).toEqual([0, 3, 2, 1]);
});

test('whose wait would be too long is told so at once', async () => {
  const order = await served(Array.from({ length: 6 }, () => ['asked', 2500] as const));
  expect(order.filter(({ isOn }) => !isOn).map(({ index, afterMs }) => [index, afterMs])).toEqual([
    [3, 0],
    [4, 0],
    [5, 0],
  ]);
});

test('each is answered once within its patience, and no two begin within the spacing', async () => {
  const wish = fc.tuple(fc.constantFrom(...URGENCIES), fc.integer({ min: 0, max: 12_000 }));
  await fc.assert(
    fc.asyncProperty(fc.array(wish, { maxLength: 20 }), async (wishes) => {
      turns = new Turns(SPACING_MS, () => Date.now());
      const order = await served(wishes);
      expect(order.map(({ index }) => index).toSorted((a, b) => a - b)).toEqual(wishes.map((_, index) => index));
      const starts = order.filter(({ isOn }) => isOn).map(({ afterMs }) => afterMs);
      for (const [i, ms] of starts.entries())
        if (i > 0) expect(ms - (starts[i - 1] ?? 0)).toBeGreaterThanOrEqual(SPACING_MS);
      for (const { index, isOn, afterMs } of order)
        if (isOn) expect(afterMs).toBeLessThanOrEqual(wishes[index]?.[1] ?? 0);
    }),
    { numRuns: 60 },
  );
});
