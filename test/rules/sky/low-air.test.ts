import { describe, expect, test } from 'vitest';
import { inversionHeightFraction, inversionStrengthFraction } from '../../../rules/sky/inversion.ts';
import { windFactor, windShareFraction } from '../../../rules/sky/wind-profile.ts';

describe('the lowest air', () => {
  test('on level ground on a clear night with 1 m/s is 2 K below the screen', () => {
    // Physics page (`rules/balance/README.md`), section 3: site number 3, −4 °C with dew point −7 °C.
    const strength = inversionStrengthFraction(-4, 213.9, 1, -30);
    expect(Math.abs(3 * strength * inversionHeightFraction(0.1) - 2)).toBeLessThan(0.1);
  });

  test('is the air of the screen at 2 m and by day', () => {
    expect(inversionHeightFraction(2)).toBe(0);
    expect(inversionHeightFraction(3)).toBe(0);
    expect(inversionHeightFraction(0.05)).toBe(1);
    expect(inversionStrengthFraction(-4, 213.9, 1, 10)).toBe(0);
    expect(inversionStrengthFraction(-4, 400, 1, -30)).toBe(0);
  });

  test('is stirred by wind: half the inversion is gone at 2 m/s', () => {
    const calm = inversionStrengthFraction(-4, 213.9, 0, -30);
    expect(inversionStrengthFraction(-4, 213.9, 2, -30)).toBeCloseTo(calm / 2, 12);
  });

  test('has the logarithmic share of the wind at 10 m', () => {
    expect(windShareFraction(10, 1)).toBeCloseTo(1, 12);
    expect(windShareFraction(0.3, 0.5)).toBeCloseTo((0.5 * Math.log(10)) / Math.log(1000 / 3), 12);
    expect(windShareFraction(0.01, 1)).toBe(windShareFraction(0.1, 1));
    expect(windFactor(2 * 3)).toBeCloseTo(windFactor(2) * windFactor(3), 12);
  });
});
