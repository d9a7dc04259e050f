import { describe, expect, test } from 'vitest';
import { MULCH_KINDS, SOIL_KINDS, SOILS, soilOf } from '../../../rules/index.ts';
import { SOURCES } from '../../../rules/sources.ts';

describe('soils that a grower can tell apart', () => {
  test('lie between dry sand or peat and saturated sand in conductivity and heat', () => {
    // de Vries 1963 as tabulated: peat dry 0.04 to saturated sand 2.5 W m⁻¹ K⁻¹; 1.3 to 3.0 MJ m⁻³ K⁻¹.
    for (const { soil, source } of Object.values(SOILS)) {
      expect(soil.conductivityWPerMK).toBeGreaterThan(0.04);
      expect(soil.conductivityWPerMK).toBeLessThan(2.5);
      expect(soil.heatCapacityJPerM3K).toBeGreaterThanOrEqual(1.3e6);
      expect(soil.heatCapacityJPerM3K).toBeLessThanOrEqual(3.0e6);
      expect(SOURCES).toHaveProperty([source]);
    }
  });

  test('conduct the better the wetter', () => {
    const [dry, moist, wet] = (['dry', 'moist', 'wet'] as const).map((kind) => soilOf(kind).conductivityWPerMK);
    expect(dry).toBeLessThan(moist ?? 0);
    expect(moist).toBeLessThan(wet ?? 0);
  });

  test('evaporate no more under mulch than without', () => {
    for (const kind of SOIL_KINDS) {
      for (const mulch of MULCH_KINDS) {
        expect(soilOf(kind, mulch).surfaceResistanceSPerM).toBeGreaterThanOrEqual(soilOf(kind).surfaceResistanceSPerM);
      }
      expect(soilOf(kind, 'none')).toEqual(soilOf(kind));
    }
  });
});
