import type { OutsideInstant } from '../sky/prepared-weather.ts';
import { incidentLight } from '../sun/incident-light.ts';
import type { Bed, Cover } from './bed.ts';
import { snowLightFraction } from './cover-dress.ts';
import type { SnowOnCover } from './night-input.ts';

/** How fast light fades in a canopy with leaf area, and what dense leaves keep of it (`canopy-light`). */
const CANOPY_EXTINCTION = 0.6;
const CANOPY_ABSORBED_FRACTION = 0.78;
/** Walls take a tenth; jugs a quarter per area of theirs, at most 0.3, and keep 0.8 of it (`judgement`). */
const WALL_FRACTION = 0.1;
const JUG_FRACTION_PER_AREA = 0.25;
const MOST_JUG_FRACTION = 0.3;
const JUG_ABSORBED_FRACTION = 0.8;
/** Diffuse light passes less well than a beam square on; so does a beam through arches, fabrics and inner covers (`ashrae-incidence`). */
const DIFFUSE_FRACTION = 0.92;
const CURVED_FRACTION = 0.97;
/** Open ground. */
const LEVEL = { kind: 'flat', tiltDeg: 0, azimuthDeg: 0 } as const;

/**
 * Sets what the sun warms in a bed: covers, walls, jugs, leaves, soil and path.
 *
 * @param bed - The `sunWPerM2` of its nodes and crop is set.
 * @param outside - Weather and sun of the instant.
 * @param isBlanketed - Whether a blanket shuts out the light.
 * @param snow - Snow on the outermost cover.
 */
export function setSun(bed: Bed, outside: OutsideInstant, isBlanketed: boolean, snow: SnowOnCover | undefined): void {
  const isDark = outside.globalWPerM2 === 0 || (isBlanketed && bed.outermost !== undefined);
  if (isDark) {
    for (const cover of bed.covers) absorb(cover, 0);
    shareOut(bed, 0, 0);
    return;
  }
  const geometry = bed.outermost === undefined ? LEVEL : bed.stack.geometry;
  const light = incidentLight(outside.globalWPerM2, outside.sun, geometry);
  let beam = light.beamWPerM2;
  let diffuse = light.diffuseWPerM2;
  let pathLight = 0;
  let snowShare = snowLightFraction(snow);
  let beamShare = geometry.kind === 'arch' ? CURVED_FRACTION : paneFraction(light.cosIncidence);
  for (const cover of bed.covers) {
    const { layer } = cover;
    absorb(cover, beam + diffuse);
    const passed = layer.sunTransmittedFraction * snowShare;
    diffuse *= passed * DIFFUSE_FRACTION;
    if (layer.diffusing) {
      diffuse += beam * passed * CURVED_FRACTION;
      beam = 0;
    } else {
      beam *= passed * beamShare;
    }
    if (cover === bed.outermost) pathLight = beam + diffuse;
    snowShare = 1;
    beamShare = CURVED_FRACTION;
  }
  shareOut(bed, beam + diffuse, pathLight);
}

function absorb({ layer, floorFraction, upper, lower }: Cover, lightWPerM2: number): void {
  const halfWPerM2 = (floorFraction * layer.sunAbsorbedFraction * lightWPerM2) / 2;
  upper.sunWPerM2 = halfWPerM2;
  lower.sunWPerM2 = halfWPerM2;
}

function shareOut(bed: Bed, insideWPerM2: number, pathWPerM2: number): void {
  const { crop, ground, path, wall, jugs } = bed;
  const { floorFraction } = crop;
  let light = insideWPerM2;
  if (wall !== undefined) {
    wall.node.sunWPerM2 = floorFraction * WALL_FRACTION * light;
    light *= 1 - WALL_FRACTION;
  }
  if (jugs !== undefined) {
    const share = Math.min(MOST_JUG_FRACTION, JUG_FRACTION_PER_AREA * jugs.areaRatio);
    jugs.node.sunWPerM2 = floorFraction * JUG_ABSORBED_FRACTION * share * light;
    light *= 1 - share;
  }
  crop.sunWPerM2 = light;
  const passed = light === 0 ? 0 : Math.exp(-CANOPY_EXTINCTION * crop.canopy.leafAreaIndex);
  crop.leaves.sunWPerM2 = floorFraction * CANOPY_ABSORBED_FRACTION * (1 - passed) * light;
  const soilAbsorbed = 1 - bed.soilAlbedoFraction;
  ground.surface.sunWPerM2 = floorFraction * (soilAbsorbed * passed * light + bed.heatWPerM2);
  if (path !== undefined) path.surface.sunWPerM2 = path.floorFraction * soilAbsorbed * pathWPerM2;
}

function paneFraction(cosIncidence: number): number {
  return cosIncidence > 0.17 ? Math.max(0, 1 - 0.1 * (1 / cosIncidence - 1)) : 0;
}
