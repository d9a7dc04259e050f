import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Allowance } from '../../../bot/commands/allowance.ts';

const at = (ms: number) => new Date(ms);

test('so many questions at once, then one more per refill', () => {
  const allowance = new Allowance(3, 1000);
  expect([1, 2, 3, 4].map(() => allowance.take('a', at(0)))).toEqual([true, true, true, false]);
  expect(allowance.take('a', at(999))).toBe(false);
  expect(allowance.take('a', at(1000))).toBe(true);
});

test('one member does not use up the allowance of another', () => {
  const allowance = new Allowance(1, 1000);
  expect([allowance.take('a', at(0)), allowance.take('b', at(0))]).toEqual([true, true]);
});

test('over any stretch of time a member gets at most the bucket plus what was refilled', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(5000), { maxLength: 80 }), (gaps) => {
      const allowance = new Allowance(5, 700);
      let now = 0;
      let taken = 0;
      for (const gap of gaps) {
        now += gap;
        if (allowance.take('a', at(now))) taken += 1;
      }
      expect(taken).toBeLessThanOrEqual(5 + now / 700);
    }),
  );
});

test('a clock that jumps back neither refills nor locks out for good', () => {
  const allowance = new Allowance(1, 1000);
  expect(allowance.take('a', at(10_000))).toBe(true);
  expect(allowance.take('a', at(0))).toBe(false);
  expect(allowance.take('a', at(999))).toBe(false);
  expect(allowance.take('a', at(1000))).toBe(true);
});
