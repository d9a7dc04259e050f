import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import { REFERENCE_SCREEN_C } from '../covers/reference-night.ts';

const REFERENCE = { lowC: -4, rangeK: 12, peakAfterH: 7 };

describe('the air through a day', () => {
  test('is the model’s reference weather, hour by hour, for its low, range and peak', () => {
    expect(REFERENCE_SCREEN_C).toHaveLength(34);
    for (const [hour, screenC] of REFERENCE_SCREEN_C.entries()) {
      expect(dailyCurveC(REFERENCE, hour), `hour ${hour}`).toBeCloseTo(screenC, 2);
    }
  });

  test('stays between low and high, joins without a jump, and repeats each day', () => {
    const curve = fc.record({
      lowC: fc.double({ min: -40, max: 20, noNaN: true }),
      rangeK: fc.double({ min: 0, max: 25, noNaN: true }),
      peakAfterH: fc.double({ min: 1, max: 20, noNaN: true }),
    });
    fc.assert(
      fc.property(curve, fc.double({ min: -48, max: 48, noNaN: true }), (shape, hour) => {
        const airC = dailyCurveC(shape, hour);
        expect(airC).toBeGreaterThanOrEqual(shape.lowC - 1e-9);
        expect(airC).toBeLessThanOrEqual(shape.lowC + shape.rangeK + 1e-9);
        expect(Math.abs(dailyCurveC(shape, hour + 0.001) - airC)).toBeLessThan(0.05);
        expect(dailyCurveC(shape, hour + 24)).toBeCloseTo(airC, 6);
      }),
    );
  });
});
