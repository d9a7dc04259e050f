import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clearSkyEmissivityFraction,
  saturationVapourHPa,
  skyLongwaveWPerM2,
  totalCloudFraction,
} from '../../../rules/index.ts';

describe('longwave from the sky', () => {
  // Physics page (`rules/balance/README.md`), section 3: air, dew point, clear emissivity, radiation at cloud 0, 0.5, 0.8 and 1; last digit as printed.
  test.each([
    [-4, -7, 0.7187, [213.9, 218.5, 244.5, 288.6]],
    [-15, -18, 0.6923, [174.3, 178.7, 203, 244.3]],
    [5, 3, 0.7577, [257.2, 261.7, 286.7, 329.2]],
  ])('at %d °C with dew point %d °C is as tabled', (screenC, dewPointC, emissivity, radiation) => {
    const vapourHPa = saturationVapourHPa(dewPointC);
    expect(Math.abs(clearSkyEmissivityFraction(screenC, vapourHPa) - emissivity)).toBeLessThan(0.0001);
    for (const [i, cloudFraction] of [0, 0.5, 0.8, 1].entries()) {
      const gapWPerM2 = skyLongwaveWPerM2(screenC, vapourHPa, cloudFraction) - (radiation[i] ?? 0);
      expect(Math.abs(gapWPerM2)).toBeLessThan(0.1);
    }
  });

  test('rises with cloud and vapour and stays below that of a black body', () => {
    const screenC = fc.double({ min: -35, max: 40, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(screenC, share, share, share, share, (airC, humidity, moister, cloud, cloudier) => {
        const vapourHPa = (part: number) => part * saturationVapourHPa(airC);
        const [dull, dark] = [Math.min(cloud, cloudier), Math.max(cloud, cloudier)];
        const [dry, damp] = [Math.min(humidity, moister), Math.max(humidity, moister)];
        const low = skyLongwaveWPerM2(airC, vapourHPa(dry), dull);
        expect(skyLongwaveWPerM2(airC, vapourHPa(dry), dark)).toBeGreaterThanOrEqual(low);
        expect(skyLongwaveWPerM2(airC, vapourHPa(damp), dull)).toBeGreaterThanOrEqual(low - 1e-9);
        expect(low).toBeLessThan(5.670374e-8 * (airC + 273.15) ** 4);
      }),
    );
  });

  test('refuses a cloud cover that is no share, and negative vapour', () => {
    expect(() => skyLongwaveWPerM2(0, 5, 1.1)).toThrow('cloudFraction 1.1');
    expect(() => skyLongwaveWPerM2(0, -1, 0)).toThrow('vapourHPa -1');
  });

  test('takes cloud layers to overlap at random', () => {
    expect(totalCloudFraction(0.5, 0.5, 0)).toBeCloseTo(0.75, 12);
    expect(totalCloudFraction(0, 0, 1)).toBe(1);
    expect(() => totalCloudFraction(0, -0.1, 0)).toThrow('middleFraction -0.1');
  });
});
