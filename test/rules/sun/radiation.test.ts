import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearSkyGlobalWPerM2, cloudedGlobalWPerM2, diffuseFraction } from '../../../rules/index.ts';
import { between } from './arbitrary-places.ts';

describe('clear-sky radiation', () => {
  test('rises with the sun and never passes what arrives above the air', () => {
    fc.assert(
      fc.property(between(-1, 1), between(-1, 1), (one, other) => {
        const [lower, higher] = [Math.min(one, other), Math.max(one, other)];
        expect(clearSkyGlobalWPerM2(lower)).toBeLessThanOrEqual(clearSkyGlobalWPerM2(higher));
        expect(clearSkyGlobalWPerM2(higher)).toBeLessThanOrEqual(1367 * Math.max(0, higher));
      }),
    );
  });

  test('is nothing while the sun is down', () => {
    fc.assert(fc.property(between(-1, 0.01), (cosZenith) => clearSkyGlobalWPerM2(cosZenith) === 0));
  });

  test('refuses what is no cosine', () => {
    expect(() => clearSkyGlobalWPerM2(1.01)).toThrow('cosZenith 1.01 is outside −1…1');
    expect(() => clearSkyGlobalWPerM2(Number.NaN)).toThrow(RangeError);
  });
});

describe('clouded radiation', () => {
  test('falls as cloud grows, from all of it to a quarter', () => {
    fc.assert(
      fc.property(between(0, 1000), between(0, 1), between(0, 1), (clear, one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        expect(cloudedGlobalWPerM2(clear, more)).toBeLessThanOrEqual(cloudedGlobalWPerM2(clear, less));
      }),
    );
    expect(cloudedGlobalWPerM2(800, 0)).toBe(800);
    expect(cloudedGlobalWPerM2(800, 1)).toBe(200);
  });

  test('refuses cloud in per cent and negative light', () => {
    expect(() => cloudedGlobalWPerM2(800, 60)).toThrow('cloudFraction 60 is outside 0…1');
    expect(() => cloudedGlobalWPerM2(-1, 0)).toThrow('clearWPerM2 -1 is below 0');
  });
});

describe('diffuse share', () => {
  test('lies between that of the clearest sky and all of the light', () => {
    fc.assert(
      fc.property(between(0, 1400), between(-1, 1), between(0.966, 1.035), (globalWPerM2, cosZenith, eccentricity) => {
        const share = diffuseFraction(globalWPerM2, cosZenith, eccentricity);
        expect(share).toBeGreaterThanOrEqual(0.12);
        expect(share).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('does not jump where its three pieces meet', () => {
    const overAtmosphereWPerM2 = 1367 * 0.6;
    for (const clearness of [0.22, 0.8]) {
      const below = diffuseFraction((clearness - 1e-6) * overAtmosphereWPerM2, 0.6, 1);
      const above = diffuseFraction((clearness + 1e-6) * overAtmosphereWPerM2, 0.6, 1);
      expect(Math.abs(above - below)).toBeLessThan(0.005);
    }
  });

  test('refuses negative radiation and a sun without distance', () => {
    expect(() => diffuseFraction(-1, 0.5, 1)).toThrow('globalWPerM2 -1 is below 0');
    expect(() => diffuseFraction(100, 0.5, 0)).toThrow('eccentricity 0 is not above 0');
  });
});
