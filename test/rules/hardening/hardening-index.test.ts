import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type HardeningDay, hardeningIndex } from '../../../rules/hardening/hardening-index.ts';

const DAY = fc
  .record({ lowC: fc.double({ min: -25, max: 22, noNaN: true }), aboveK: fc.double({ min: 0, max: 15, noNaN: true }) })
  .map(({ lowC, aboveK }) => ({ lowC, meanC: lowC + aboveK }));
const DAYS = fc.array(DAY, { minLength: 1, maxLength: 40 });
const START = fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined });
/** Rounding of a few dozen steps. */
const ROUNDING = 1e-12;

test('the index stays between grown warm and fully hardened', () => {
  fc.assert(
    fc.property(DAYS, START, (days, start) => {
      const index = hardeningIndex(days, start);
      expect(index).toBeGreaterThanOrEqual(0);
      expect(index).toBeLessThanOrEqual(1);
    }),
  );
});

test('colder days never leave plants softer', () => {
  fc.assert(
    fc.property(DAYS, START, fc.double({ min: 0, max: 10, noNaN: true }), (days, start, colderK) => {
      const colder = days.map(({ lowC, meanC }) => ({ lowC: lowC - colderK, meanC: meanC - colderK }));
      expect(hardeningIndex(colder, start)).toBeGreaterThanOrEqual(hardeningIndex(days, start) - ROUNDING);
    }),
  );
});

test('a day warmer than 15 °C on average never adds hardness', () => {
  fc.assert(
    fc.property(DAYS, START, fc.double({ min: 15, max: 35, noNaN: true }), (days, start, meanC) => {
      const warmDay = { lowC: Math.min(meanC, 5), meanC };
      expect(hardeningIndex([...days, warmDay], start)).toBeLessThanOrEqual(hardeningIndex(days, start) + ROUNDING);
    }),
  );
});

test('three cold days bring half of the hardness, fourteen nearly all', () => {
  expect(hardeningIndex(same({ lowC: 0, meanC: 4 }, 3), 0)).toBeCloseTo(0.5, 6);
  expect(hardeningIndex(same({ lowC: 0, meanC: 4 }, 14), 0)).toBeGreaterThan(0.95);
});

test('between 2 and 8 °C plants harden slowly, above not at all', () => {
  const slow = hardeningIndex(same({ lowC: 5, meanC: 8 }, 14), 0);
  expect(slow).toBeGreaterThan(0.1);
  expect(slow).toBeLessThan(0.5);
  expect(hardeningIndex(same({ lowC: 8, meanC: 9 }, 14), 0)).toBe(0);
});

test('two days near 20 °C take most of the hardness away', () => {
  expect(hardeningIndex(same({ lowC: 17, meanC: 18.5 }, 2), 1)).toBeLessThan(0.2);
});

test('without a start, plants are taken as used to such nights', () => {
  expect(hardeningIndex(same({ lowC: -3, meanC: 2 }, 1))).toBe(1);
  expect(hardeningIndex(same({ lowC: 12, meanC: 14 }, 1))).toBe(0);
});

test.each([
  ['no day', [], undefined, /days is empty/],
  ['a mean below the low', [{ lowC: 2, meanC: 1 }], undefined, /meanC 1 is below lowC 2/],
  ['a low that is not a number', [{ lowC: Number.NaN, meanC: 1 }], 0, /meanC 1 is below lowC NaN/],
  ['a start above 1', [{ lowC: 0, meanC: 1 }], 1.5, /startIndex 1.5 is outside 0…1/],
])('%s is refused', (_what, days, start, message) => {
  expect(() => hardeningIndex(days, start)).toThrow(message);
});

function same(day: HardeningDay, count: number): readonly HardeningDay[] {
  return Array.from({ length: count }, () => day);
}
