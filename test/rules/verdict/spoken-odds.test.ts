import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalFraction } from '../../../rules/verdict/normal-fraction.ts';
import { spokenOdds } from '../../../rules/verdict/spoken-odds.ts';

const CHANCE = fc.double({ min: 0, max: 1, noNaN: true });
const RISING = [...Array(1001).keys()].map((thousandth) => spokenOdds(thousandth / 1000));

test.each([
  [0, 'next to none'],
  [0.01, '1 in 100'],
  [0.02, '1 in 50'],
  [0.1, '1 in 10'],
  [0.2, '1 in 5'],
  [0.5, 'about even'],
  [0.58, 'better than even'],
  [0.9, '9 in 10'],
  [1, 'almost certain'],
])('%s is said "%s"', (chance, words) => {
  expect(spokenOdds(chance)).toBe(words);
});

test('each way of saying it is used for one stretch of chances only', () => {
  const stretches = RISING.filter((words, index) => words !== RISING[index - 1]);
  expect(new Set(stretches).size).toBe(stretches.length);
});

test('a number said as a fraction is within a factor of 1.7 of the true odds', () => {
  fc.assert(
    fc.property(CHANCE, (chance) => {
      const said = /^(\d+) in (\d+)$/.exec(spokenOdds(chance));
      if (said === null) return;
      const spoken = Number(said[1]) / Number(said[2]);
      const odds = (value: number) => value / (1 - value);
      expect(Math.abs(Math.log(odds(chance) / odds(spoken)))).toBeLessThan(Math.log(1.7));
    }),
  );
});

test.each([-0.01, 1.01, Number.NaN])('a chance of %s is refused', (chance) => {
  expect(() => spokenOdds(chance)).toThrow(/is outside 0…1/);
});

// Table 26.1 of the same handbook, printed to ten decimals.
test.each([
  [0, 0.5],
  [0.5, 0.691_462_461_3],
  [1, 0.841_344_746_1],
  [1.96, 0.975_002_104_9],
  [-1.64, 0.050_502_583_5],
  [-3, 0.001_349_898],
])('the normal share below %s is %s', (zSds, share) => {
  expect(Math.abs(normalFraction(zSds) - share)).toBeLessThan(1.5e-7);
});

test('the normal share never falls and its two tails add up to one', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 40, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (z, more) => {
        expect(normalFraction(z + more)).toBeGreaterThanOrEqual(normalFraction(z) - 1.5e-7);
        expect(normalFraction(z) + normalFraction(-z)).toBeCloseTo(1, 8);
      },
    ),
  );
});
