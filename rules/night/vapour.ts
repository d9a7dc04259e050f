import type { Bed, Ground } from './bed.ts';
import { SHELTERED_LEAF_W_PER_M2K } from './constants.ts';
import { straightenSaturation, type VapourNode } from './heat-network.ts';
import type { Surroundings } from './surroundings.ts';

/** Leaves transpire once this much sun reaches them. */
const TRANSPIRING_SUN_W_PER_M2 = 1;

/**
 * Adds evaporation, transpiration, dew and condensation to the balance, with the vapour pressure of each space.
 *
 * @param bed - The bed, after convection and leakage were added.
 * @param around - The surroundings.
 */
export function addVapour(bed: Bed, around: Surroundings): void {
  if (bed.covers.length === 0) {
    addOpenVapour(bed, around);
    return;
  }
  const { network } = bed;
  const perHPa = 1 / bed.psychrometricHPaPerK;
  let outer: VapourNode | undefined;
  for (const cover of bed.covers) {
    const { vapour, leakWPerM2K } = cover.below;
    if (outer === undefined) {
      network.exchangeWithFixed(vapour.row, leakWPerM2K * perHPa, around.vapourHPa);
      if (around.vapourHPa > straightenSaturation(cover.upper)) {
        const dewWPerM2K = cover.layer.areaRatio * around.coverAirWPerM2K;
        network.evaporateOutside(cover.upper, around.vapourHPa, dewWPerM2K * perHPa);
      }
    } else {
      network.exchange(vapour.row, outer.row, leakWPerM2K * perHPa);
    }
    if (vapour.nowHPa > straightenSaturation(cover.lower)) {
      network.evaporate(cover.lower, vapour, cover.lowerAirWPerM2K * perHPa);
    }
    outer = vapour;
  }
  if (outer !== undefined) addInsideVapour(bed, outer, perHPa);
}

function addInsideVapour(bed: Bed, vapour: VapourNode, perHPa: number): void {
  const { network, ground, path, leaves } = bed;
  straightenSaturation(ground.surface);
  setVapourConductance(bed, ground);
  network.evaporate(ground.surface, vapour, ground.vapourWPerM2K * perHPa);
  const isDrying = vapour.nowHPa < straightenSaturation(leaves);
  const leafWPerM2K = ground.floorFraction * leafVapourWPerM2K(bed, SHELTERED_LEAF_W_PER_M2K, isDrying);
  if (leafWPerM2K > 0) network.evaporate(leaves, vapour, leafWPerM2K * perHPa);
  const outerVapour = bed.covers[0]?.below.vapour;
  if (path === undefined || outerVapour === undefined) return;
  straightenSaturation(path.surface);
  setVapourConductance(bed, path);
  network.evaporate(path.surface, outerVapour, path.vapourWPerM2K * perHPa);
}

function addOpenVapour(bed: Bed, around: Surroundings): void {
  const { network, ground, leaves } = bed;
  const perHPa = 1 / bed.psychrometricHPaPerK;
  straightenSaturation(ground.surface);
  setVapourConductance(bed, ground);
  network.evaporateOutside(ground.surface, around.vapourHPa, ground.vapourWPerM2K * perHPa);
  const isDrying = around.vapourHPa < straightenSaturation(leaves);
  const leafWPerM2K = leafVapourWPerM2K(bed, around.bareLeafWPerM2K, isDrying);
  if (leafWPerM2K > 0) network.evaporateOutside(leaves, around.vapourHPa, leafWPerM2K * perHPa);
}

function setVapourConductance(bed: Bed, ground: Ground): void {
  const soilPerArea = bed.soilResistanceSPerM / bed.airHeatJPerM3K;
  ground.vapourWPerM2K = ground.floorFraction / (ground.floorFraction / ground.airWPerM2K + soilPerArea);
}

function leafVapourWPerM2K(bed: Bed, leafAirWPerM2K: number, isDrying: boolean): number {
  const leafArea = 2 * bed.canopy.leafAreaIndex;
  return leafArea * leafSideVapourWPerM2K(bed, leafAirWPerM2K, isDrying);
}

/**
 * Conductance for vapour between one side of a leaf and the air, in heat units: dew meets only the air, transpiration also the stomata,
 * which shut at night.
 *
 * @param bed - The bed and the sun that its crop gets.
 * @param leafAirWPerM2K - Leaf to air, per side. [W m⁻² K⁻¹]
 * @param isDrying - Whether the leaf gives off vapour, not takes it.
 * @returns Conductance per side. [W m⁻² K⁻¹]
 * @see Minimum stomatal resistance 200 s m⁻¹ (`stomata`)
 */
export function leafSideVapourWPerM2K(bed: Bed, leafAirWPerM2K: number, isDrying: boolean): number {
  if (!isDrying) return leafAirWPerM2K;
  if (bed.cropSunWPerM2 <= TRANSPIRING_SUN_W_PER_M2) return 0;
  const stomataSPerM = 200 * (1 + 60 / bed.cropSunWPerM2);
  return 1 / (1 / leafAirWPerM2K + stomataSPerM / bed.airHeatJPerM3K);
}
