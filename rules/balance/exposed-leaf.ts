import { SHELTERED_LEAF_W_PER_M2K } from '../constants.ts';
import type { Bed } from './bed.ts';
import { straightenEmission, straightenSaturation } from './heat-node.ts';
import type { Surroundings } from './surroundings.ts';
import { leafVapourWPerM2K } from './vapour.ts';

/** A single horizontal leaf absorbs this share of the sun (`judgement`). */
const LEAF_ABSORBED_FRACTION = 0.55;
/** A cover in contact touches at least this much leaf per area of bed (`judgement`). */
const LEAST_CONTACT_LEAF_AREA = 0.3;
/** The tangents are good to 0.001 K over this distance. */
const CLOSE_ENOUGH_K = 0.05;
const MOST_TRIALS = 20;

/**
 * Finds the temperature of an exposed leaf at the top of the crop: horizontal, black and without storage. This is "the leaf" of every
 * answer, the coldest part of a plant on a clear night.
 *
 * @param bed - The bed at the end of a step; its exposed leaf is set.
 * @param around - The surroundings.
 */
export function findExposedLeaf(bed: Bed, around: Surroundings): void {
  const { innermost, crop } = bed;
  const leaf = crop.exposedLeaf;
  const vapourHPa = innermost?.below.vapour.nowHPa ?? around.vapourHPa;
  const sideWPerM2K = innermost === undefined ? around.bareLeafWPerM2K : SHELTERED_LEAF_W_PER_M2K;
  let loss = 2 * sideWPerM2K;
  let gain =
    bed.longwave.cropFluxWPerM2(around.skyWPerM2) +
    LEAF_ABSORBED_FRACTION * crop.sunWPerM2 +
    loss * (innermost?.below.air.nowC ?? around.cropAirC);
  if (innermost !== undefined && innermost.layer.contactWPerM2K > 0) {
    const touch = innermost.layer.contactWPerM2K / Math.max(LEAST_CONTACT_LEAF_AREA, crop.canopy.leafAreaIndex);
    loss += touch;
    gain += touch * innermost.lower.nowC;
  }
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    straightenEmission(leaf);
    straightenSaturation(leaf);
    const isDrying = vapourHPa < leaf.saturationHPa;
    const perHPa = 2 * leafVapourWPerM2K(bed, sideWPerM2K, isDrying) * bed.latentKPerHPa;
    const fixed = gain - 2 * leaf.emissionBaseWPerM2 + perHPa * (vapourHPa - leaf.saturationBaseHPa);
    const foundC = fixed / (loss + 2 * leaf.emissionSlopeWPerM2K + perHPa * leaf.saturationSlopeHPaPerK);
    const moveK = Math.abs(foundC - leaf.nowC);
    leaf.nowC = foundC;
    if (moveK < CLOSE_ENOUGH_K) break;
  }
}
