import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterOutcome, bookHardiness, OUTCOMES } from '../../../rules/learning/crop-learning.ts';

const NIGHT = { organLowC: -8, sdK: 1.5, firstMarkC: -7, lt50C: -11 };
const night = fc.record({
  organLowC: fc.double({ min: -30, max: 5, noNaN: true }),
  sdK: fc.double({ min: 0.3, max: 4, noNaN: true }),
  firstMarkC: fc.double({ min: -10, max: 0, noNaN: true }),
  lt50C: fc.double({ min: -25, max: -10, noNaN: true }),
});

/** The same posterior by brute force: prior times likelihood on a fine grid. */
function byIntegration(
  sdBookK: number,
  colderThanC: number,
  organLowC: number,
  sdK: number,
): { mean: number; variance: number } {
  const normal = (x: number) => Math.exp(-0.5 * x * x);
  let [weight, first, second] = [0, 0, 0];
  for (let shift = -15; shift <= 15; shift += 0.02) {
    let below = 0;
    for (let e = -8; e <= 8; e += 0.005) if (organLowC + sdK * e < colderThanC - shift) below += normal(e) * 0.005;
    // One answer in twenty is about something else, and agrees by luck half of the time.
    const w = normal(shift / sdBookK) * (0.025 + (0.95 * below) / Math.sqrt(2 * Math.PI));
    weight += w;
    first += w * shift;
    second += w * shift * shift;
  }
  const mean = first / weight;
  return { mean, variance: second / weight - mean * mean };
}

test('losing a crop on a night agrees with integrating prior times likelihood numerically', () => {
  const closed = afterOutcome(bookHardiness(2), NIGHT, 'lost');
  const numeric = byIntegration(2, NIGHT.lt50C, NIGHT.organLowC, NIGHT.sdK);
  expect(closed.hardierK).toBeCloseTo(numeric.mean, 2);
  expect(closed.varianceK2).toBeCloseTo(numeric.variance, 2);
});

test('no mark never makes a crop look more tender, a loss never hardier', () => {
  fc.assert(
    fc.property(night, (cold) => {
      const book = bookHardiness(2);
      expect(afterOutcome(book, cold, 'no-mark').hardierK).toBeGreaterThanOrEqual(0);
      expect(afterOutcome(book, cold, 'lost').hardierK).toBeLessThanOrEqual(0);
    }),
  );
});

test('an outcome never makes the belief less sure, and never certain', () => {
  fc.assert(
    fc.property(night, fc.constantFrom(...OUTCOMES), (cold, seen) => {
      const after = afterOutcome(bookHardiness(2), cold, seen);
      expect(after.varianceK2).toBeGreaterThan(0);
      expect(after.varianceK2).toBeLessThanOrEqual(4 + 1e-9);
    }),
  );
});

test('one outcome, however odd, moves the belief by less than one and a half of the book’s spreads', () => {
  fc.assert(
    fc.property(night, fc.constantFrom(...OUTCOMES), (cold, seen) => {
      expect(Math.abs(afterOutcome(bookHardiness(2), cold, seen).hardierK)).toBeLessThan(1.4 * 2);
    }),
  );
});

test('the same outcome night after night is believed in the end', () => {
  let belief = bookHardiness(2);
  for (let nights = 0; nights < 8; nights += 1) {
    belief = afterOutcome(belief, { ...NIGHT, organLowC: -13, sdK: 1.8 }, 'no-mark');
  }
  expect(belief.hardierK).toBeGreaterThan(4);
});

test('an outcome that was certain anyway teaches next to nothing', () => {
  const mild = afterOutcome(bookHardiness(2), { ...NIGHT, organLowC: 8 }, 'no-mark');
  expect(Math.abs(mild.hardierK)).toBeLessThan(0.001);
});

test('a night with swapped limits is refused', () => {
  expect(() => afterOutcome(bookHardiness(2), { ...NIGHT, lt50C: -3 }, 'lost')).toThrow(RangeError);
});
