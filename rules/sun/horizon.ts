import type { SolarPosition } from './solar-position.ts';

const DEG_PER_RAD = 180 / Math.PI;
const FULL_CIRCLE_DEG = 360;

/**
 * Height of what stands in front of the sky in one direction.
 *
 * @param horizonDeg - Heights round the compass, evenly spaced, the first in the north, on through east; one value is the same all
 * round, none is an open horizon. [°, 0…90]
 * @param azimuthDeg - Direction from north through east. [°]
 * @returns Height between the two neighbours, on the line that joins them. [°]
 * @see Geometry
 */
export function horizonAtDeg(horizonDeg: readonly number[], azimuthDeg: number): number {
  const count = horizonDeg.length;
  if (count === 0) return 0;
  const turn = (azimuthDeg / FULL_CIRCLE_DEG) * count;
  const place = ((turn % count) + count) % count;
  const before = Math.floor(place) % count;
  const left = horizonDeg[before] ?? 0;
  const right = horizonDeg[(before + 1) % count] ?? 0;
  return left + (place - Math.floor(place)) * (right - left);
}

/**
 * Whether the sun stands behind a wall, hill or tree.
 *
 * @param sun - Position of the sun.
 * @param horizonDeg - As for `horizonAtDeg`. [°, 0…90]
 * @returns True when the sun is up but lower than what stands in its direction.
 * @see Geometry; the sun counts as a point, and bare twigs as a wall
 */
export function isBehindHorizon(sun: SolarPosition, horizonDeg: readonly number[]): boolean {
  if (horizonDeg.length === 0) return false;
  const azimuthDeg = Math.atan2(sun.east, sun.north) * DEG_PER_RAD;
  return sun.elevationDeg < horizonAtDeg(horizonDeg, azimuthDeg);
}
