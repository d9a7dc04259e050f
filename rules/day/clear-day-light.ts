import type { CoverGeometry } from '../balance/night-input.ts';
import { MS_PER_MIN } from '../durations.ts';
import type { NightSite } from '../site-and-weather.ts';
import { isBehindHorizon } from '../sun/horizon.ts';
import { incidentLight } from '../sun/incident-light.ts';
import { clearSkyGlobalWPerM2 } from '../sun/radiation.ts';
import { solarPosition } from '../sun/solar-position.ts';

const STEP_MIN = 15;
const STEPS_PER_DAY = 1440 / STEP_MIN;
const MJ_PER_W_STEP = (STEP_MIN * 60) / 1e6;

/**
 * Light that falls on a cover through a clear day, per area of ground under it.
 *
 * @param site - Where, and what hides the sun there.
 * @param geometry - Shape of the cover.
 * @param at - An instant of that day; the 24 hours around it count.
 * @returns Sum of the day. [MJ m⁻²]
 * @throws RangeError when a tilted cover stands upright or steeper.
 * @see `incidentLight`, `clearSkyGlobalWPerM2`
 */
export function clearDayLightMJPerM2(
  site: Pick<NightSite, 'latitudeDeg' | 'longitudeDeg' | 'horizonDeg'>,
  geometry: Pick<CoverGeometry, 'kind' | 'tiltDeg' | 'azimuthDeg'>,
  at: Date,
): number {
  let sumWPerM2 = 0;
  for (let step = -STEPS_PER_DAY / 2; step < STEPS_PER_DAY / 2; step += 1) {
    const instant = new Date(at.getTime() + step * STEP_MIN * MS_PER_MIN);
    const sun = solarPosition(instant, site.latitudeDeg, site.longitudeDeg);
    const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
    if (globalWPerM2 === 0) continue;
    const light = incidentLight(globalWPerM2, sun, geometry);
    const isShaded = isBehindHorizon(sun, site.horizonDeg ?? []);
    sumWPerM2 += light.diffuseWPerM2 + (isShaded ? 0 : light.beamWPerM2);
  }
  return sumWPerM2 * MJ_PER_W_STEP;
}
