import type { CoverGeometry } from '../balance/night-input.ts';
import { diffuseFraction } from './radiation.ts';
import type { SolarPosition } from './solar-position.ts';

const RAD_PER_DEG = Math.PI / 180;
/** A low sun on a steep light: the ratio to level ground is capped, since its two parts both vanish. */
const LARGEST_BEAM_RATIO = 4;
const LOWEST_COS_ZENITH = 0.05;
const LOWEST_COS_INCIDENCE = 0.01;

/** Sun and sky light that falls on the outermost cover, each per square metre of ground below it. */
export interface IncidentLight {
  /** Straight from the sun. [W m⁻²] */
  readonly beamWPerM2: number;
  /** From the whole sky. [W m⁻²] */
  readonly diffuseWPerM2: number;
  /** Cosine of the angle at which the beam meets the cover, from square on. [0…1] */
  readonly cosIncidence: number;
}

/**
 * Sun and sky light on a cover. A tilted frame light catches more of a low sun than level ground does; arches and flat covers count
 * as level.
 *
 * @param globalWPerM2 - Radiation on level ground. [W m⁻², at least 0]
 * @param sun - Position of the sun at that instant.
 * @param geometry - Shape of the cover; a tilt is given from level and the azimuth it faces from north through east. [°]
 * @returns Beam and diffuse light on the cover, per area of ground.
 * @throws RangeError when the radiation is negative or a tilted cover stands upright or steeper.
 *
 * @remarks The sky's share is not changed by a tilt: frame lights lie within 30° of level.
 * @see Erbs, Klein & Duffie 1982 (`erbs-1982`) for the split; the cap of 4 is judgement
 */
export function incidentLight(
  globalWPerM2: number,
  sun: SolarPosition,
  geometry: Pick<CoverGeometry, 'kind' | 'tiltDeg' | 'azimuthDeg'>,
): IncidentLight {
  const diffuseWPerM2 = globalWPerM2 * diffuseFraction(globalWPerM2, sun.cosZenith, sun.eccentricity);
  const levelBeamWPerM2 = globalWPerM2 - diffuseWPerM2;
  if (geometry.kind !== 'tilt') {
    const cosIncidence = Math.max(LOWEST_COS_INCIDENCE, sun.cosZenith);
    return { beamWPerM2: levelBeamWPerM2, diffuseWPerM2, cosIncidence };
  }
  if (!(geometry.tiltDeg >= 0 && geometry.tiltDeg < 90)) {
    throw new RangeError(`tiltDeg ${geometry.tiltDeg} is outside 0…90, 90 excluded`);
  }
  const tiltRad = geometry.tiltDeg * RAD_PER_DEG;
  const azimuthRad = geometry.azimuthDeg * RAD_PER_DEG;
  const towardsSun = sun.north * Math.cos(azimuthRad) + sun.east * Math.sin(azimuthRad);
  const cosIncidence = Math.max(0, Math.cos(tiltRad) * sun.cosZenith + Math.sin(tiltRad) * towardsSun);
  const ratio = cosIncidence / (Math.max(sun.cosZenith, LOWEST_COS_ZENITH) * Math.cos(tiltRad));
  return { beamWPerM2: levelBeamWPerM2 * Math.min(LARGEST_BEAM_RATIO, ratio), diffuseWPerM2, cosIncidence };
}
