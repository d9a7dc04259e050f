import { SHELTERED_LEAF_W_PER_M2K } from '../constants.ts';
import type { Bed, Ground } from './bed.ts';
import { straightenSaturation } from './heat-node.ts';
import type { Surroundings } from './surroundings.ts';

/** Leaves transpire once this much sun reaches them (`judgement`). */
const TRANSPIRING_SUN_W_PER_M2 = 1;
/** Stomata in full light, and the sun at which they are half as open (`stomata`). */
const OPEN_STOMATA_S_PER_M = 200;
const HALF_OPEN_SUN_W_PER_M2 = 60;

/**
 * Sets evaporation, transpiration, dew and condensation, about the latest estimates.
 *
 * @param bed - The bed, after convection was set: vapour travels with the same air.
 * @param around - The surroundings.
 */
export function setVapour(bed: Bed, around: Surroundings): void {
  const { outermost, innermost, outerDew, crop, ground, path, latentKPerHPa } = bed;
  if (outermost !== undefined && outerDew !== undefined) {
    straightenSaturation(outermost.upper);
    const isDewy = around.vapourHPa > outermost.upper.saturationHPa;
    outerDew.perHPa = isDewy ? outermost.upperAir.perUnit * latentKPerHPa : 0;
  }
  for (const cover of bed.covers) {
    straightenSaturation(cover.lower);
    const isDewy = cover.below.vapour.nowHPa > cover.lower.saturationHPa;
    cover.lowerDew.perHPa = isDewy ? cover.lowerAir.perUnit * latentKPerHPa : 0;
  }
  setEvaporation(bed, ground);
  if (path !== undefined) setEvaporation(bed, path);
  straightenSaturation(crop.leaves);
  const isDrying = (innermost?.below.vapour.nowHPa ?? around.vapourHPa) < crop.leaves.saturationHPa;
  const leafWPerM2K = innermost === undefined ? around.bareLeafWPerM2K : SHELTERED_LEAF_W_PER_M2K;
  const leafArea = 2 * crop.canopy.leafAreaIndex * crop.floorFraction;
  crop.wet.perHPa = leafArea * leafVapourWPerM2K(bed, leafWPerM2K, isDrying) * latentKPerHPa;
}

function setEvaporation(bed: Bed, ground: Ground): void {
  straightenSaturation(ground.surface);
  const airWPerM2K = ground.air.perUnit;
  ground.evaporation.perHPa = (bed.latentKPerHPa * airWPerM2K) / (1 + airWPerM2K * ground.soilM2KPerW);
}

/**
 * Conductance for vapour between one side of a leaf and the air, in heat units: dew meets only the air, transpiration also the stomata,
 * which shut at night.
 *
 * @param bed - The bed and the sun that its crop gets.
 * @param leafAirWPerM2K - Leaf to air, per side. [W m⁻² K⁻¹]
 * @param isDrying - Whether the leaf gives off vapour, not takes it.
 * @returns Conductance per side. [W m⁻² K⁻¹]
 */
export function leafVapourWPerM2K(bed: Bed, leafAirWPerM2K: number, isDrying: boolean): number {
  if (!isDrying) return leafAirWPerM2K;
  const { sunWPerM2 } = bed.crop;
  if (sunWPerM2 <= TRANSPIRING_SUN_W_PER_M2) return 0;
  const stomataSPerM = OPEN_STOMATA_S_PER_M * (1 + HALF_OPEN_SUN_W_PER_M2 / sunWPerM2);
  return 1 / (1 / leafAirWPerM2K + stomataSPerM / bed.airHeatJPerM3K);
}
