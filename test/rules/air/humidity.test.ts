import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dewPointC, dewPointFromHumidityC, saturationSlopeHPaPerK, saturationVapourHPa } from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';

const weatherC = between(-45, 60);

describe('humidity', () => {
  test('a dew point gives back the temperature that its vapour saturates', () => {
    fc.assert(
      fc.property(weatherC, (airC) => {
        expect(dewPointC(saturationVapourHPa(airC))).toBeCloseTo(airC, 9);
      }),
    );
  });

  test('warmer air holds more vapour, by the stated slope', () => {
    fc.assert(
      fc.property(weatherC, (airC) => {
        const stepK = 1e-4;
        const rise = (saturationVapourHPa(airC + stepK) - saturationVapourHPa(airC - stepK)) / (2 * stepK);
        expect(rise).toBeGreaterThan(0);
        expect(saturationSlopeHPaPerK(airC) / rise).toBeCloseTo(1, 6);
      }),
    );
  });

  test('the dew point never passes the air and rises with humidity', () => {
    fc.assert(
      fc.property(weatherC, between(0.01, 1), between(0.01, 1), (airC, one, other) => {
        const drier = dewPointFromHumidityC(airC, Math.min(one, other));
        const damper = dewPointFromHumidityC(airC, Math.max(one, other));
        expect(drier).toBeLessThanOrEqual(damper);
        expect(damper).toBeLessThanOrEqual(airC);
      }),
    );
  });

  test('refuses humidity in per cent, air without vapour and absurd cold', () => {
    expect(() => dewPointFromHumidityC(5, 80)).toThrow('relativeHumidityFraction 80 is outside 0…1, 0 excluded');
    expect(() => dewPointFromHumidityC(5, 0)).toThrow(RangeError);
    expect(() => dewPointC(0)).toThrow(RangeError);
    expect(() => dewPointC(Number.NaN)).toThrow(RangeError);
    expect(() => saturationVapourHPa(-300)).toThrow(RangeError);
  });
});
