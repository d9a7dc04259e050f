import { describe, expect, test } from 'vitest';
import { nightRun, type WaterMass } from '../../../rules/index.ts';
import { frame, hoops, referenceInput } from '../night/spec-stacks.ts';

function run(waterMass: WaterMass | undefined, changes = {}) {
  return nightRun(referenceInput({ ...hoops('PE'), ...(waterMass && { waterMass }) }, changes));
}

function leafMinC(waterMass: WaterMass | undefined): number {
  return Math.min(...run(waterMass).leafC.slice(60, 151));
}

describe('water jugs', () => {
  // Section 13, night additions on a PE tunnel: +1.1 K with 20 kg m⁻², +3.3 K with 60; surface 0.028 m² per kg, start 8 °C.
  test.each([
    [20, 1.1],
    [60, 3.3],
  ])('of %d kg per square metre warm the leaf minimum as tabled', (kgPerM2, gainK) => {
    const jugs = { kgPerM2, areaRatio: 0.028 * kgPerM2, startC: 8 };
    expect(Math.abs(leafMinC(jugs) - leafMinC(undefined) - gainK)).toBeLessThan(0.3);
  });

  test('that freeze stay between 0 and −0.5 °C while they do, and give off more than their cold', () => {
    const cold = { screenC: Array.from({ length: 34 }, () => -15), soil10CmC: -4 };
    const { end } = run({ kgPerM2: 30, areaRatio: 0.84, startC: 1 }, cold);
    expect(end.waterC).toBeLessThan(0);
    expect(end.waterC).toBeGreaterThan(-0.5);
  });

  test('stay full of ice when the run goes on from them', () => {
    const input = referenceInput({ ...frame('GL', 'wood'), waterMass: { kgPerM2: 30, areaRatio: 0.8, startC: 20 } });
    const { end } = nightRun(
      { ...input, end: new Date('2025-12-01T13:00Z') },
      { from: { soilC: coldSoil(), waterC: -3 } },
    );
    expect(end.waterC).toBeLessThan(-1.5);
  });
});

function coldSoil(): number[] {
  return Array.from({ length: 13 }, () => -5);
}
