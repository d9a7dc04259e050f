import fc from 'fast-check';
import { expect, test } from 'vitest';
import { trackRecord } from '../../../rules/index.ts';

const told = (toldLowC: number, measuredLowC: number, toldSdK = 2) => ({ toldLowC, toldSdK, measuredLowC });

test('without nights there is no record', () => {
  expect(trackRecord([])).toBeUndefined();
});

test('errors count as measured minus told', () => {
  expect(trackRecord([told(-4, -3), told(-4, -8)])).toEqual({
    nights: 2,
    meanErrorK: -1.5,
    meanAbsoluteErrorK: 2.5,
    insideFraction: 0.5,
  });
});

test('the range holds four nights in five of those that scatter as stated', () => {
  // Even quantiles of a normal distribution, from a table: deciles 5 %, 15 % … 95 %.
  const deciles = [-1.645, -1.036, -0.674, -0.385, -0.126, 0.126, 0.385, 0.674, 1.036, 1.645];
  expect(trackRecord(deciles.map((z) => told(0, 2 * z)))?.insideFraction).toBe(0.8);
});

test('the mean error never exceeds the mean absolute error', () => {
  const low = fc.double({ min: -40, max: 20, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(low, low), { minLength: 1 }), (pairs) => {
      const record = trackRecord(pairs.map(([one, other]) => told(one, other)));
      expect(Math.abs(record?.meanErrorK ?? Number.NaN)).toBeLessThanOrEqual((record?.meanAbsoluteErrorK ?? 0) + 1e-9);
    }),
  );
});

test('a spread of nothing is refused', () => {
  expect(() => trackRecord([told(0, 0, 0)])).toThrow(RangeError);
});
