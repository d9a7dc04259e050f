import type { Bed, Cover, Ground } from './bed.ts';
import { SHELTERED_LEAF_W_PER_M2K } from './constants.ts';
import type { Surroundings } from './surroundings.ts';

/** Walls: inside and outside surface, radiation included (`judgement`). */
const WALL_INSIDE_W_PER_M2K = 7;
const WALL_RADIATION_W_PER_M2K = 2.3;

/**
 * Adds the exchange of heat by moving air to the balance: faces, leaves, soil and walls.
 *
 * @param bed - The bed; conductances that vapour shares are kept in it.
 * @param around - The surroundings.
 */
export function addConvection(bed: Bed, around: Surroundings): void {
  if (bed.covers.length === 0) {
    addOpenBed(bed, around);
    return;
  }
  const { network } = bed;
  let outer: Cover | undefined;
  for (const cover of bed.covers) {
    network.exchange(cover.upper.row, cover.lower.row, cover.conductanceWPerM2K);
    const area = cover.floorFraction * cover.layer.areaRatio;
    if (outer === undefined) {
      network.exchangeWithFixed(cover.upper.row, area * around.coverAirWPerM2K, around.coverAirC);
    } else {
      const upperAirWPerM2K = area * faceWPerM2K(cover.upper.nowC - outer.below.air.nowC);
      network.exchange(cover.upper.row, outer.below.air.row, upperAirWPerM2K);
    }
    cover.lowerAirWPerM2K = area * faceWPerM2K(cover.lower.nowC - cover.below.air.nowC);
    network.exchange(cover.lower.row, cover.below.air.row, cover.lowerAirWPerM2K);
    outer = cover;
  }
  if (outer !== undefined) addInside(bed, outer, around);
}

function addInside(bed: Bed, innermost: Cover, around: Surroundings): void {
  const { network, ground, path, wall, jugs } = bed;
  const { air } = innermost.below;
  const leafWPerM2K = ground.floorFraction * 2 * bed.canopy.leafAreaIndex * SHELTERED_LEAF_W_PER_M2K;
  network.exchange(bed.leaves.row, air.row, leafWPerM2K);
  const contactWPerM2K = ground.floorFraction * innermost.layer.contactWPerM2K;
  if (contactWPerM2K > 0) network.exchange(bed.leaves.row, innermost.lower.row, contactWPerM2K);
  addShelteredSoil(bed, ground, air.row, air.nowC);
  if (jugs !== undefined) network.exchange(jugs.node.row, air.row, jugs.exchangeWPerM2K);
  const outerAir = bed.covers[0]?.below.air;
  if (outerAir === undefined) return;
  if (path !== undefined) addShelteredSoil(bed, path, outerAir.row, outerAir.nowC);
  if (wall !== undefined) network.exchange(wall.node.row, outerAir.row, wallInsideWPerM2K(bed));
  addWallOutside(bed, around);
}

function addOpenBed(bed: Bed, around: Surroundings): void {
  const { network, ground, wall, jugs, leaves } = bed;
  const leafWPerM2K = 2 * bed.canopy.leafAreaIndex * around.bareLeafWPerM2K;
  network.exchangeWithFixed(leaves.row, leafWPerM2K, around.cropAirC);
  ground.airWPerM2K = around.bareSoilWPerM2K;
  network.exchangeWithFixed(ground.surface.row, ground.airWPerM2K, around.cropAirC);
  if (jugs !== undefined) network.exchangeWithFixed(jugs.node.row, jugs.exchangeWPerM2K, around.cropAirC);
  if (wall !== undefined) network.exchangeWithFixed(wall.node.row, wallInsideWPerM2K(bed), around.cropAirC);
  addWallOutside(bed, around);
}

function addShelteredSoil(bed: Bed, ground: Ground, airRow: number, airC: number): void {
  ground.airWPerM2K = ground.floorFraction * shelteredSoilWPerM2K(ground.surface.nowC - airC);
  bed.network.exchange(ground.surface.row, airRow, ground.airWPerM2K);
}

/** Wall to the air inside. [W m⁻² K⁻¹] */
export function wallInsideWPerM2K(bed: Bed): number {
  if (bed.wall === undefined) return 0;
  const { areaRatio, resistanceM2KPerW } = bed.wall.walls;
  return areaRatio / (1 / WALL_INSIDE_W_PER_M2K + resistanceM2KPerW / 2);
}

/** Wall to the weather. [W m⁻² K⁻¹] */
export function wallOutsideWPerM2K(bed: Bed, around: Surroundings): number {
  if (bed.wall === undefined) return 0;
  const { areaRatio, resistanceM2KPerW } = bed.wall.walls;
  return areaRatio / (resistanceM2KPerW / 2 + 1 / (around.coverAirWPerM2K + WALL_RADIATION_W_PER_M2K));
}

function addWallOutside(bed: Bed, around: Surroundings): void {
  if (bed.wall === undefined) return;
  bed.network.exchangeWithFixed(bed.wall.node.row, wallOutsideWPerM2K(bed, around), around.coverAirC);
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
