import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roundTicks, scale, spreadApart } from '../../../bot/charts/scale.ts';

test('ends of the range go to the ends of the pixels', () => {
  const y = scale([-10, 10], [500, 100]);
  expect([y(-10), y(0), y(10)]).toEqual([500, 300, 100]);
});

test('grid lines are round, inside the range and few', () => {
  const hundredths = (min: number, max: number) => fc.integer({ min: 100 * min, max: 100 * max }).map((n) => n / 100);
  const ends = fc.tuple(hundredths(-60, 60), hundredths(4, 120));
  fc.assert(
    fc.property(ends, ([low, span]) => {
      const ticks = roundTicks([low, low + span]);
      expect(ticks.length).toBeGreaterThanOrEqual(3);
      expect(ticks.length).toBeLessThanOrEqual(9);
      for (const tick of ticks) {
        expect(Number.isInteger(tick)).toBe(true);
        expect(tick).toBeGreaterThanOrEqual(low);
        expect(tick).toBeLessThanOrEqual(low + span);
      }
    }),
  );
});

test('zero is never minus zero', () => {
  expect(roundTicks([-3, 3]).some((tick) => Object.is(tick, -0))).toBe(false);
});

test('labels that fit do not touch, keep their order and stay within bounds', () => {
  const labels = fc.array(
    fc.record({
      wanted: fc.double({ min: -50, max: 1100, noNaN: true }),
      size: fc.double({ min: 10, max: 90, noNaN: true }),
    }),
    { minLength: 1, maxLength: 9 },
  );
  fc.assert(
    fc.property(labels, (wished) => {
      const places = spreadApart(wished, [0, 1000]);
      const order = wished.map((_, index) => index).sort((a, b) => (wished[a]?.wanted ?? 0) - (wished[b]?.wanted ?? 0));
      let free = 0;
      for (const index of order) {
        const half = (wished[index]?.size ?? 0) / 2;
        expect((places[index] ?? 0) - half).toBeGreaterThanOrEqual(free - 1e-6);
        free = (places[index] ?? 0) + half;
      }
      expect(free).toBeLessThanOrEqual(1000 + 1e-6);
    }),
  );
});

test('a label with room stands where it would like to', () => {
  expect(
    spreadApart(
      [
        { wanted: 300, size: 40 },
        { wanted: 100, size: 40 },
      ],
      [0, 1000],
    ),
  ).toEqual([300, 100]);
});
