import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airHeatCapacityJPerM3K, pressureFraction, psychrometricHPaPerK } from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';

const gardenElevationM = between(-500, 5000);

describe('thin air', () => {
  test('thins steadily with height, and heat capacity and psychrometric constant with it', () => {
    fc.assert(
      fc.property(gardenElevationM, between(1, 500), (elevationM, higherM) => {
        const ratio = pressureFraction(elevationM + higherM) / pressureFraction(elevationM);
        expect(ratio).toBeLessThan(1);
        expect(psychrometricHPaPerK(elevationM + higherM) / psychrometricHPaPerK(elevationM)).toBeCloseTo(ratio, 9);
        expect(airHeatCapacityJPerM3K(elevationM + higherM) / airHeatCapacityJPerM3K(elevationM)).toBeCloseTo(ratio, 9);
      }),
    );
  });

  test('is whole at the sea', () => {
    expect(pressureFraction(0)).toBe(1);
  });

  test('refuses a height that is no number', () => {
    expect(() => pressureFraction(Number.NaN)).toThrow('elevationM NaN is not a number of metres');
  });
});
