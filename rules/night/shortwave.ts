import type { OutsideInstant } from '../sky/prepared-weather.ts';
import { incidentLight } from '../sun/incident-light.ts';
import type { Bed } from './bed.ts';
import { snowLightFraction } from './cover-dress.ts';
import type { SnowOnCover } from './night-input.ts';

const CANOPY_EXTINCTION = 0.6;
const CANOPY_ABSORBED = 0.78;
const WALL_SHARE = 0.1;
const JUG_SHARE_PER_AREA = 0.25;
const LARGEST_JUG_SHARE = 0.3;
const JUG_ABSORBED = 0.8;
/** Diffuse light passes less well than light at right angles; so does a beam through arches, fabrics and inner covers. */
const DIFFUSE_SHARE = 0.92;
const CURVED_SHARE = 0.97;

/**
 * Sets what the sun warms in a bed: covers, walls, jugs, leaves, soil and path.
 *
 * @param bed - Its `sunWPerM2` fields are set.
 * @param outside - Weather and sun of the instant.
 * @param isBlanketed - Whether a blanket shuts out the light.
 * @param snow - Snow on the outermost cover.
 *
 * @see Beam through a pane: ASHRAE incidence modifier (`ashrae-incidence`); shares: `judgement`
 */
export function setSun(bed: Bed, outside: OutsideInstant, isBlanketed: boolean, snow: SnowOnCover | undefined): void {
  bed.isSunlit = outside.globalWPerM2 > 0 && !(isBlanketed && bed.covers.length > 0);
  if (!bed.isSunlit) {
    darken(bed);
    return;
  }
  const { geometry } = bed.stack;
  const level = bed.covers.length === 0 ? { ...geometry, kind: 'flat' as const } : geometry;
  const light = incidentLight(outside.globalWPerM2, outside.sun, level);
  let beam = light.beamWPerM2;
  let diffuse = light.diffuseWPerM2;
  let pathLight = 0;
  let snowShare = snowLightFraction(snow);
  let beamShare = geometry.kind === 'arch' ? CURVED_SHARE : paneShare(light.cosIncidence);
  for (const cover of bed.covers) {
    const { layer } = cover;
    cover.sunWPerM2 = cover.floorFraction * layer.sunAbsorbedFraction * (beam + diffuse);
    const passed = layer.sunTransmittedFraction * snowShare;
    diffuse *= passed * DIFFUSE_SHARE;
    if (layer.diffusing) {
      diffuse += beam * passed * CURVED_SHARE;
      beam = 0;
    } else {
      beam *= passed * beamShare;
    }
    if (cover === bed.covers[0]) pathLight = beam + diffuse;
    snowShare = 1;
    beamShare = CURVED_SHARE;
  }
  shareOut(bed, beam + diffuse, pathLight);
}

function shareOut(bed: Bed, insideWPerM2: number, pathWPerM2: number): void {
  const { ground, path, wall, jugs, canopy } = bed;
  let light = insideWPerM2;
  if (wall !== undefined) {
    wall.sunWPerM2 = ground.floorFraction * WALL_SHARE * light;
    light *= 1 - WALL_SHARE;
  }
  if (jugs !== undefined) {
    const share = Math.min(LARGEST_JUG_SHARE, JUG_SHARE_PER_AREA * jugs.areaRatio);
    jugs.sunWPerM2 = ground.floorFraction * JUG_ABSORBED * share * light;
    light *= 1 - share;
  }
  bed.cropSunWPerM2 = light;
  const passed = Math.exp(-CANOPY_EXTINCTION * canopy.leafAreaIndex);
  bed.leafSunWPerM2 = ground.floorFraction * CANOPY_ABSORBED * (1 - passed) * light;
  ground.sunWPerM2 = ground.floorFraction * (1 - bed.soilAlbedoFraction) * passed * light;
  if (path !== undefined) path.sunWPerM2 = path.floorFraction * (1 - bed.soilAlbedoFraction) * pathWPerM2;
}

function darken(bed: Bed): void {
  for (const cover of bed.covers) cover.sunWPerM2 = 0;
  shareOut(bed, 0, 0);
}

function paneShare(cosIncidence: number): number {
  return cosIncidence > 0.17 ? Math.max(0, 1 - 0.1 * (1 / cosIncidence - 1)) : 0;
}
