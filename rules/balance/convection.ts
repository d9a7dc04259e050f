import { SHELTERED_LEAF_W_PER_M2K } from '../constants.ts';
import type { Bed, Ground } from './bed.ts';
import type { Surroundings } from './surroundings.ts';

/** Walls: inside and outside surface, radiation included (`judgement`). */
const WALL_INSIDE_W_PER_M2K = 7;
const WALL_RADIATION_W_PER_M2K = 2.3;

/**
 * Sets what follows from the weather alone in the exchange of heat by moving air: once a step.
 *
 * @param bed - The bed.
 * @param around - The surroundings.
 */
export function setOuterConvection(bed: Bed, around: Surroundings): void {
  const { outermost, crop, ground, wall, jugs } = bed;
  if (outermost !== undefined) {
    outermost.upperAir.perUnit = outermost.layer.areaRatio * around.coverAirWPerM2K;
    outermost.upperAir.outsideValue = around.coverAirC;
  }
  const leafWPerM2K = outermost === undefined ? around.bareLeafWPerM2K : SHELTERED_LEAF_W_PER_M2K;
  crop.air.perUnit = crop.floorFraction * 2 * crop.canopy.leafAreaIndex * leafWPerM2K;
  crop.air.outsideValue = around.cropAirC;
  if (outermost === undefined) ground.air.perUnit = around.bareSoilWPerM2K;
  ground.air.outsideValue = around.cropAirC;
  if (jugs !== undefined) jugs.air.outsideValue = around.cropAirC;
  if (wall === undefined) return;
  const { areaRatio, resistanceM2KPerW } = wall.walls;
  wall.inside.perUnit = areaRatio / (1 / WALL_INSIDE_W_PER_M2K + resistanceM2KPerW / 2);
  wall.inside.outsideValue = around.cropAirC;
  const outerFace = 1 / (around.coverAirWPerM2K + WALL_RADIATION_W_PER_M2K);
  wall.outside.perUnit = areaRatio / (resistanceM2KPerW / 2 + outerFace);
  wall.outside.outsideValue = around.coverAirC;
}

/**
 * Sets the exchange of heat between the air inside and what it touches, about the latest estimates.
 *
 * @param bed - The bed.
 */
export function setInnerConvection(bed: Bed): void {
  const { outermost, innermost, ground, path } = bed;
  if (outermost === undefined || innermost === undefined) return;
  let outer = outermost;
  for (const cover of bed.covers) {
    const areaRatio = cover.floorFraction * cover.layer.areaRatio;
    if (cover !== outermost) {
      cover.upperAir.perUnit = areaRatio * faceWPerM2K(cover.upper.nowC - outer.below.air.nowC);
    }
    cover.lowerAir.perUnit = areaRatio * faceWPerM2K(cover.lower.nowC - cover.below.air.nowC);
    outer = cover;
  }
  setSoilAir(ground, innermost.below.air.nowC);
  if (path !== undefined) setSoilAir(path, outermost.below.air.nowC);
}

function setSoilAir(ground: Ground, airC: number): void {
  ground.air.perUnit = ground.floorFraction * shelteredSoilWPerM2K(ground.surface.nowC - airC);
}

/**
 * Still air against the face of a cover.
 *
 * @param differenceK - Face minus air. [K]
 * @returns Coefficient; the law of the cube root, with a floor for the smallest differences. [W m⁻² K⁻¹]
 * @see Vanthoor et al. 2011 (`vanthoor-2011`)
 */
export function faceWPerM2K(differenceK: number): number {
  return 1.86 * Math.cbrt(smoothedK(differenceK));
}

/**
 * Still air against the soil under a cover: warm soil stirs it, cold soil lets it lie.
 *
 * @param differenceK - Soil surface minus air. [K]
 * @returns Coefficient. [W m⁻² K⁻¹]
 * @see De Zwart 1996 (`de-zwart-1996`)
 */
export function shelteredSoilWPerM2K(differenceK: number): number {
  if (differenceK > 0) return 1.7 * Math.cbrt(smoothedK(differenceK));
  return 1.3 * Math.sqrt(Math.sqrt(smoothedK(differenceK)));
}

/** Rounds off the tip of |x| so that no coefficient falls to nought. */
function smoothedK(differenceK: number): number {
  return Math.sqrt(differenceK * differenceK + 0.01);
}
