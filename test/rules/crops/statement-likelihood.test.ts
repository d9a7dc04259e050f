import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pullOf } from '../../../rules/crops/statement-likelihood.ts';

const limitC = fc.double({ min: -40, max: 10, noNaN: true });

test('a one-sided statement pulls to its side only, and hardly where the limit lies well on it', () => {
  fc.assert(
    fc.property(limitC, fc.double({ min: 0.5, max: 8, noNaN: true }), (atC, sdK) => {
      const colder = pullOf({ limit: 'colder', organC: -10 }, atC, sdK);
      const warmer = pullOf({ limit: 'warmer', organC: -10 }, atC, sdK);
      expect(colder.slopePerK).toBeLessThanOrEqual(0);
      expect(warmer.slopePerK).toBeGreaterThanOrEqual(0);
      expect(colder.curvePerK2).toBeGreaterThan(0);
    }),
  );
  expect(Math.abs(pullOf({ limit: 'colder', organC: -10 }, -16, 1.5).slopePerK)).toBeLessThan(0.001);
});

test('a statement that contradicts all else by far is taken to be about something else', () => {
  const odd = Math.abs(pullOf({ limit: 'colder', organC: -30 }, -5, 2).slopePerK);
  const near = Math.abs(pullOf({ limit: 'colder', organC: -8 }, -5, 2).slopePerK);
  expect(odd).toBeLessThan(near / 10);
});

test('a softer statement pulls less', () => {
  const pull = (sdK: number) => Math.abs(pullOf({ limit: 'colder', organC: -10 }, -9, sdK).slopePerK);
  expect(pull(4)).toBeLessThan(pull(2));
});
