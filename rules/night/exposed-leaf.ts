import { saturationSlopeHPaPerK, saturationVapourHPa } from '../air/humidity.ts';
import type { Bed } from './bed.ts';
import { KELVIN_AT_ZERO_C, SHELTERED_LEAF_W_PER_M2K, STEFAN_BOLTZMANN_W_PER_M2K4 } from './constants.ts';
import type { Surroundings } from './surroundings.ts';
import { leafSideVapourWPerM2K } from './vapour.ts';

/** A single horizontal leaf absorbs this share of the sun (`judgement`). */
const LEAF_ABSORBED = 0.55;
/** A cover in contact touches at least this much leaf per area of bed. */
const LEAST_CONTACT_LEAF_AREA = 0.3;
const CLOSE_ENOUGH_K = 0.001;
const MOST_TRIALS = 20;

/**
 * Finds the temperature of an exposed leaf at the top of the crop: horizontal, black and without storage. This is "the leaf" of every
 * answer, the coldest part of a plant on a clear night.
 *
 * @param bed - The bed at the end of a step; `exposedLeafC` is set.
 * @param around - The surroundings.
 */
export function findExposedLeaf(bed: Bed, around: Surroundings): void {
  const innermost = bed.covers[bed.covers.length - 1];
  const sideWPerM2K = innermost === undefined ? around.bareLeafWPerM2K : SHELTERED_LEAF_W_PER_M2K;
  const airC = innermost === undefined ? around.cropAirC : innermost.below.air.nowC;
  const vapourHPa = innermost === undefined ? around.vapourHPa : innermost.below.vapour.nowHPa;
  const contactWPerM2K =
    innermost === undefined
      ? 0
      : innermost.layer.contactWPerM2K / Math.max(LEAST_CONTACT_LEAF_AREA, bed.canopy.leafAreaIndex);
  const contactC = innermost === undefined ? airC : innermost.lower.nowC;
  const fixedGain =
    bed.longwave.cropFluxWPerM2(around.skyWPerM2) +
    LEAF_ABSORBED * bed.cropSunWPerM2 +
    2 * sideWPerM2K * airC +
    contactWPerM2K * contactC;
  const airLoss = 2 * sideWPerM2K + contactWPerM2K;
  let leafC = bed.exposedLeafC;
  for (let trial = 0; trial < MOST_TRIALS; trial++) {
    const kelvin = leafC + KELVIN_AT_ZERO_C;
    const cubed = STEFAN_BOLTZMANN_W_PER_M2K4 * kelvin * kelvin * kelvin;
    const saturation = saturationVapourHPa(leafC);
    const isDrying = vapourHPa < saturation;
    const perHPa = (2 * leafSideVapourWPerM2K(bed, sideWPerM2K, isDrying)) / bed.psychrometricHPaPerK;
    const gain = fixedGain - 2 * cubed * kelvin - airLoss * leafC + perHPa * (vapourHPa - saturation);
    const slope = 8 * cubed + airLoss + perHPa * saturationSlopeHPaPerK(leafC);
    const move = gain / slope;
    leafC += move;
    if (Math.abs(move) < CLOSE_ENOUGH_K) break;
  }
  bed.exposedLeafC = leafC;
}
