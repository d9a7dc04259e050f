import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { snowHarm, snowLoadKgPerM2 } from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';

describe('snow', () => {
  test('weighs what it melts to, whatever its depth', () => {
    expect(snowLoadKgPerM2({ depthM: 0.1, waterKgPerM2: 12, airC: -5 })).toBe(12);
  });

  // R052, general physics: fresh, settled and wet snow are 50 to 400 kg m⁻³, so 10 cm weigh 5 to 40 kg m⁻².
  test('of which only the depth is told weighs between fresh and wet snow', () => {
    fc.assert(
      fc.property(between(0, 1), between(-25, 3), (depthM, airC) => {
        const load = snowLoadKgPerM2({ depthM, airC });
        expect(load).toBeGreaterThanOrEqual(50 * depthM);
        expect(load).toBeLessThanOrEqual(400 * depthM);
      }),
    );
  });

  // R053, extension consensus, from memory: brush over 5 to 8 cm of wet snow off hoops; dry snow on a strong low tunnel insulates.
  test('wet, of 5 to 8 cm, is to come off hoops; a little dry snow may stay', () => {
    expect(snowHarm('low-tunnel', { depthM: 0.05, airC: 0 })?.advice).toBe('clear');
    expect(snowHarm('low-tunnel', { depthM: 0.08, airC: 0 })?.advice).toBe('breaks');
    expect(snowHarm('low-tunnel', { depthM: 0.05, airC: -8 })?.advice).toBe('insulates');
  });

  test('a dusting is not worth a word, nor is snow on fabric', () => {
    expect(snowHarm('low-tunnel', { depthM: 0.01, airC: -8 })).toBeUndefined();
    expect(snowHarm('row-cover', { depthM: 0.2, airC: -8 })).toBeUndefined();
  });
});
